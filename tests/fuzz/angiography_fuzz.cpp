// X-ray runs: angles, scale, times, masks and frames.
#include "dicomio/angiography/xray_reader.h"
#include "tests/fuzz/fuzz_file.h"

#include <algorithm>

namespace {
constexpr std::uint64_t kLargestFrameBytes = 1 << 22; // larger ones only cost time here
constexpr int kFrames = 2;
} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace gauge::dicomio;
    auto scanned = scanFile(gauge::test::FuzzFile::instance().fill(data, size));
    if (!scanned || !scanned->format || scanned->format->frameBytes() > kLargestFrameBytes)
        return 0;
    const auto run = readXray(std::make_shared<const ScannedFile>(std::move(*scanned)));
    if (!run)
        return 0;
    for (int frame = 0; frame < std::min(run->frames->count(), kFrames); ++frame)
        (void)run->frames->rgb(frame);
    return 0;
}
