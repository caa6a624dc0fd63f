#!/usr/bin/env bash
# Installs what is missing, builds, and runs every test: the release build with all of them, and the sanitized build
# of core, dicomio, the sample case and their tests. Ends with ctest's summary; fails when a test fails or none ran.
# Extra arguments go to ctest, for example:  bash tests/run.sh -R Ellipse
set -euo pipefail
cd "$(dirname "$0")/.."
. app/debian.sh

install_missing "${BUILD_PACKAGES[@]}" "${TEST_PACKAGES[@]}"

jobs=$(nproc)
for preset in release asan; do
    echo "== Building $preset"
    mkdir -p "build/$preset"
    log=build/$preset/configure.log
    cmake --preset "$preset" >"$log" 2>&1 || { cat "$log" >&2; exit 1; }
    cmake --build --preset "$preset" -j "$jobs"
done

# One ctest run over both build folders, so that there is one summary. The sanitized tests are named asan/….
mkdir -p build/all
printf 'subdirs("../release" "../asan")\n' >build/all/CTestTestfile.cmake

# Pictures without a screen; figures that do not depend on the person's language.
export QT_QPA_PLATFORM=offscreen LC_ALL=C.UTF-8
export UBSAN_OPTIONS=${UBSAN_OPTIONS:-print_stacktrace=1}
echo "== Testing"
exec ctest --test-dir build/all --output-on-failure --no-tests=error -j "$jobs" "$@"
