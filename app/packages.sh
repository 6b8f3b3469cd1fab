# Debian packages that Warmbench needs, and how they are installed; sourced by app/start and tests/run.

# To build and run the program.
program_packages="g++ cmake ninja-build pkg-config qt6-base-dev libqt6opengl6-dev qt6-charts-dev qt6-svg-dev
    qt6-tools-dev qt6-l10n-tools qt6-translations-l10n
    libqt6sql6-sqlite libqt6sql6-psql qtkeychain-qt6-dev nlohmann-json3-dev libboost-dev libcli11-dev fonts-dejavu-core libqrencode-dev libical-dev libxlsxwriter-dev"

# To build and run the tests as well.
test_packages="qt6-base-private-dev catch2 librapidcheck-dev libvalijson-dev poppler-utils zbar-tools unzip postgresql-15 openssl python3 python3-icalendar xvfb openbox xdotool dbus-daemon gnome-keyring"

# To build the benchmark that runs the planner beside another solver (tests/speed).
speed_packages="coinor-libcbc-dev"

# To run the checks of .ci/run besides.
check_packages="clang-format"

# To run .ci/fuzz besides, which .ci/run does at its end; libFuzzer is in the second, which is only recommended by the first.
fuzz_packages="clang libclang-rt-dev"

# To run .ci/lint besides.
lint_packages="clang-tidy"

# install_missing PACKAGE...: installs those that are not there; says nothing when all are.
install_missing() {
    local package missing=()
    for package in "$@"; do
        dpkg-query -W -f='${db:Status-Status}' "$package" 2>/dev/null | grep -qx installed || missing+=("$package")
    done
    [ ${#missing[@]} -eq 0 ] && return 0
    local run=()
    if [ "$(id -u)" -ne 0 ]; then
        command -v sudo >/dev/null || {
            echo "these packages are missing, and installing them needs root or sudo: ${missing[*]}" >&2
            return 1
        }
        run=(sudo)
    fi
    echo "installing ${missing[*]}"
    "${run[@]}" apt-get update -qq
    "${run[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
}
