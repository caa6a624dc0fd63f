#!/usr/bin/env bash
# Runs one fuzz target.   run.sh PROGRAM NAME replay|SECONDS|xRUNS [libFuzzer's options]
#   replay   every kept input once: corpus/NAME and regressions/NAME
#   60       new inputs for 60 seconds;  x1000000 a million of them. They start from the kept ones; what they find is
#            kept in the build folder (found/NAME) and, when it fails, as failed-NAME-…: move it to regressions/NAME.
set -euo pipefail
program=$1 name=$2 what=$3
shift 3
here=$(cd "$(dirname "$0")" && pwd)
kept=()
for folder in "$here/corpus/$name" "$here/regressions/$name"; do
    [ -d "$folder" ] && kept+=("$folder")
done
[ "${#kept[@]}" -gt 0 ] || { echo "No kept inputs for $name: corpus/$name is missing." >&2; exit 1; }
options=(-dict="$here/dicom.dict")
case $name in case_fuzz | *_json_fuzz) options=(-dict="$here/json.dict") ;; esac
export ASAN_OPTIONS=detect_leaks=1:allocator_may_return_null=1:max_allocation_size_mb=2048

if [ "$what" = replay ]; then
    mapfile -t files < <(find "${kept[@]}" -type f | sort)
    exec "$program" "$@" "${files[@]}"
fi
found=$(dirname "$program")/found/$name
mkdir -p "$found"
case $what in
    x*) length=(-runs="${what#x}") ;;
    *) length=(-max_total_time="$what") ;;
esac
exec "$program" "$@" "${options[@]}" "${length[@]}" -artifact_prefix="$(dirname "$program")/failed-$name-" "$found" "${kept[@]}"
