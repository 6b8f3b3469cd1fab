#!/bin/sh
# Writes pictures of the window's states into a folder, at 100 and at 200 %: pictures.sh BUILD FOLDER
set -eu
[ $# -eq 2 ] || { echo "pictures.sh: expected the build folder and a folder for the pictures" >&2; exit 2; }
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
export XDG_CONFIG_HOME="$scratch" XDG_RUNTIME_DIR="$scratch"
mkdir -p "$2/100" "$2/200"
"$1/tests/ui/ui_pictures" "$2/100"
# Those of the user guide, which stand in resources/picture.
QT_QPA_PLATFORM=offscreen WARMBENCH_GUIDE_PICTURES="$2/100" "$1/tests/ui/tests_ui" "The guide*"
QT_SCALE_FACTOR=2 "$1/tests/ui/ui_pictures" "$2/200"
