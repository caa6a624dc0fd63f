#!/usr/bin/env bash
# From a bare Debian 12 to the program at work: installs what is missing, builds, makes the invented teaching case and
# opens the workstation on it. Without a display it measures that case instead and leaves values and pictures.
#
#   bash app/run.sh               all of it
#   bash app/run.sh --build DIR   installs, builds into DIR and stops; the program is DIR/app/ostium-gauge
set -euo pipefail

usage() {
    sed -n '2,/^[^#]/{s/^# \{0,1\}//p}' "$0"
}

build=
case "${1-}" in
    "") ;;
    --build)
        if [ $# -ne 2 ] || [ -z "$2" ]; then
            echo "--build needs the folder to build into: bash app/run.sh --build DIR" >&2
            exit 2
        fi
        build=$(realpath -m -- "$2")
        ;;
    -h | --help) usage; exit 0 ;;
    *) echo "Unknown argument: $1" >&2; usage >&2; exit 2 ;;
esac

cd "$(dirname "$0")/.."
. app/debian.sh
install_missing "${BUILD_PACKAGES[@]}" "${WINDOW_PACKAGES[@]}"

folder=${build:-$PWD/build/run}
mkdir -p "$folder"
cmake -S . -B "$folder" -G Ninja -DCMAKE_BUILD_TYPE=Release -DBUILD_TESTING=OFF -DGAUGE_WARNINGS_AS_ERRORS=OFF -DGAUGE_PCH=ON -DGAUGE_UNITY=ON \
    >"$folder/configure.log" 2>&1 || { cat "$folder/configure.log" >&2; exit 1; }
cmake --build "$folder" -j "$(nproc)"
program=$folder/app/ostium-gauge
if [ -n "$build" ]; then
    echo "Built: $program"
    exit 0
fi

sample=$PWD/build/sample
said=$sample/said.txt
if [ ! -e "$said" ] || [ "$program" -nt "$said" ]; then
    echo "Making the teaching case in $sample"
    rm -rf "$sample"
    mkdir -p "$sample"
    "$program" sample "$sample" | tee "$said.new"
    mv "$said.new" "$said"
fi

if [ -n "${DISPLAY-}" ] || [ -n "${WAYLAND_DISPLAY-}" ]; then
    exec "$program" "$sample/sample.case.json"
fi

# `ostium-gauge sample` prints the command that measures what it wrote; its marks are in there.
mapfile -t marks < <(grep -oE -- '--(atrium|tip|circumflex|ridge|aorta) +[-0-9.,]+' "$said" | sort -u | tr -s ' ' '\n')
if [ "${#marks[@]}" -lt 4 ]; then
    echo "The teaching case came without its marks; see $said" >&2
    exit 1
fi
results=$PWD/build/sample-results
rm -rf "$results"
mkdir -p "$results"
echo "No display: measuring the teaching case without a window."
QT_QPA_PLATFORM=offscreen "$program" measure "$sample/dicom" "${marks[@]}" \
    --json "$results/measurement.json" --pictures "$results/pictures"
echo "Values and pictures are in $results"
