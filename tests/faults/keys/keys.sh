#!/usr/bin/env bash
# Keeps passwords of shared books in a true key store (the Secret Service of gnome-keyring, on message buses of its own,
# its folder thrown away), each call a process of its own, and prints how many were found again.
#   bash keys.sh PROGRAM
set -uo pipefail

program="${1:?the program faults_keys}"
stage="${2:-}"
wrong=0
say() { echo "keys: $*"; wrong=$((wrong + 1)); }
keep() { timeout 90 "$program" keep "$1" "$2"; }
find_kept() { timeout 90 "$program" find "$1"; }

# What is locked and can't be opened, or is not there, refuses with words, and nothing is found.
locked() {
    local words
    words=$(keep postgresql://ann@example.org/house sesame 2>&1) && say "kept in a key store that is locked"
    case "$words" in *"no key store that is open"*) ;; *) say "refused with other words: $words" ;; esac
    [ -z "$(find_kept postgresql://ann@example.org/house)" ] || say "found in a key store that is locked"
}

# Opened with its owner's password, as at login.
opened() {
    local kept=0 found=0 address password
    printf 'owner' | gnome-keyring-daemon --unlock --components=secrets >/dev/null || say "the key store did not start"
    declare -A passwords=(
        [postgresql://ann@example.org/house]='sesame-7391'
        [postgresql://ann@example.org:5433/house]='other port 5520'
        [postgresql://bert@example.org/house]='ümläut "quoted" $x;--'
    )
    for address in "${!passwords[@]}"; do
        if keep "$address" "${passwords[$address]}"; then kept=$((kept + 1)); else say "$address was not kept"; fi
    done
    for address in "${!passwords[@]}"; do
        if [ "$(find_kept "$address")" = "${passwords[$address]}" ]; then found=$((found + 1)); else say "$address: another password was found"; fi
    done
    [ -z "$(find_kept postgresql://ann@example.org/garden)" ] || say "found what was never kept"
    keep postgresql://ann@example.org/house 'changed-1187' || say "could not be changed"
    [ "$(find_kept postgresql://ann@example.org/house)" = 'changed-1187' ] || say "the old password was found after a change"
    [ -n "$(ls "$folder/data/keyrings")" ] || say "the key store has written no file"
    for password in "${passwords[@]}" 'changed-1187'; do
        grep -rqF -- "$password" "$folder" && say "a file holds a password in the clear"
    done
    echo "keys: $kept kept, $found found again"
    [ "$found" -eq "${#passwords[@]}" ] || wrong=$((wrong + 1))
}

case "$stage" in
locked | opened)
    folder="$HOME"
    "$stage"
    exit "$((wrong > 0))"
    ;;
esac

for needed in dbus-run-session gnome-keyring-daemon; do
    command -v "$needed" >/dev/null || { echo "keys: $needed is not installed"; exit 1; }
done
# Short: a socket lies in it.
folder=$(mktemp -d /tmp/keys.XXXXXX)
trap 'rm -rf "$folder"' EXIT
export HOME="$folder" XDG_DATA_HOME="$folder/data" XDG_CONFIG_HOME="$folder/config" XDG_RUNTIME_DIR="$folder/run" \
    XDG_CURRENT_DESKTOP=GNOME
unset DISPLAY WAYLAND_DISPLAY DBUS_SESSION_BUS_ADDRESS
bash "$0" "$program" locked 2>"$folder/none.log" || { wrong=$((wrong + 1)); echo "keys: without a bus"; cat "$folder/none.log"; }
for stage in locked opened; do
    rm -rf "$folder/run"
    mkdir -m 700 "$folder/run"
    dbus-run-session -- bash "$0" "$program" "$stage" 2>"$folder/$stage.log" || { wrong=$((wrong + 1)); cat "$folder/$stage.log"; }
done
echo "keys: $wrong of 3 stages went wrong"
[ "$wrong" -eq 0 ]
