# Sourced by app/run.sh and tests/run.sh: which of Debian 12's packages each needs, and how to install what is missing.

readonly BUILD_PACKAGES=(
    g++ make cmake ninja-build ccache pkg-config
    qt6-base-dev qt6-base-dev-tools qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools libqt6opengl6-dev qt6-svg-dev libgl-dev libvulkan-dev libxkbcommon-dev
    libdcmtk-dev libopenjp2-7-dev libeigen3-dev libexpected-dev nlohmann-json3-dev libboost-dev zlib1g-dev
    libssl-dev
)
readonly WINDOW_PACKAGES=(fonts-dejavu-core qt6-translations-l10n qt6-wayland libqt6sql6-sqlite libqt6sql6-psql libgl1-mesa-dri)
readonly TEST_PACKAGES=(
    clang libclang-rt-14-dev llvm-14
    postgresql
    xvfb xauth libgl1-mesa-dri
    libgtest-dev libgmock-dev librapidcheck-dev libvalijson-dev fonts-dejavu-core
    dcmtk dicom3tools libgdcm-tools poppler-utils python3-numpy python3-scipy python3-skimage python3-pydicom python3-pil python3-gdcm
)

# Prints those of the named packages that are not installed.
missing_packages() {
    local package
    for package in "$@"; do
        [ "$(dpkg-query -W -f='${db:Status-Status}' "$package" 2>/dev/null)" = installed ] || printf '%s\n' "$package"
    done
}

# Installs those of the named packages that are missing; as root, or through sudo. Says what to do where neither works.
install_missing() {
    if ! command -v dpkg-query >/dev/null || ! command -v apt-get >/dev/null; then
        echo "This system has no apt-get, so nothing was installed. Needed, by Debian's names: $*" >&2
        return 0 # perhaps all is there: the build will tell
    fi
    local missing
    mapfile -t missing < <(missing_packages "$@")
    [ "${#missing[@]}" -gt 0 ] || return 0

    local as_root=()
    if [ "$(id -u)" -ne 0 ]; then
        if ! command -v sudo >/dev/null || ! { sudo -n true 2>/dev/null || [ -t 0 ]; }; then
            echo "Missing packages, and neither root nor sudo to install them. Have an administrator run:" >&2
            echo "    apt-get install ${missing[*]}" >&2
            return 1
        fi
        as_root=(sudo)
    fi
    echo "Installing: ${missing[*]}"
    local install=("${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -qq -y --no-install-recommends
                   -o Dpkg::Use-Pty=0 install "${missing[@]}")
    "${as_root[@]}" apt-get -qq update || echo "The package lists could not be refreshed; trying with those at hand." >&2
    if ! "${install[@]}" >/dev/null; then
        echo "Could not install: ${missing[*]}. Debian 12 (bookworm) has them all; see the message of apt-get above." >&2
        return 1
    fi
}
