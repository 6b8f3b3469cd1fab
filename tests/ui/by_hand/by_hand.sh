#!/usr/bin/env bash
# Runs ui_by_hand with a real pointer and keys: in an X server of its own (Xvfb) with a window manager
# (openbox), `mouse` and `keys` each followed by a restart that looks whether all is still there.
#   bash by_hand.sh PROGRAM
# Fails where one of the three programs is missing. It ends what it started, and always ends.
set -uo pipefail
program="${1:?the program ui_by_hand}"
for needed in Xvfb openbox xdotool; do
    command -v "$needed" >/dev/null || { echo "by_hand: $needed is not installed"; exit 1; }
done
folder="$(mktemp -d)"
server="" manager=""
finish() {
    [ -n "$manager" ] && kill "$manager" 2>/dev/null
    [ -n "$server" ] && kill "$server" 2>/dev/null
    rm -rf "$folder"
}
trap finish EXIT
# The server chooses a free display itself and writes its number.
mkfifo "$folder/display"
timeout 400 Xvfb -displayfd 3 -screen 0 1280x800x24 -nolisten tcp 3>"$folder/display" 2>"$folder/xvfb.log" &
server=$!
read -r -t 20 number <"$folder/display" || { echo "by_hand: Xvfb did not start"; cat "$folder/xvfb.log"; exit 1; }
export DISPLAY=":$number" QT_QPA_PLATFORM=xcb XDG_CONFIG_HOME="$folder/config" XDG_RUNTIME_DIR="$folder/run"
mkdir -m 700 "$folder/run" "$folder/config"
timeout 400 openbox >"$folder/openbox.log" 2>&1 &
manager=$!
result=0
for how in mouse keys; do
    for step in "$how" check; do
        timeout 120 "$program" "$step" "$folder/$how.warmbench" || { result=1; echo "by_hand: $how, $step failed"; }
    done
done
exit "$result"
