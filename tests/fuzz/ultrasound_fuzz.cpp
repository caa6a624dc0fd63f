// Ultrasound: regions, times, frames in colour, and volumes.
#include "dicomio/ultrasound/us_reader.h"
#include "dicomio/ultrasound/us_volume.h"
#include "tests/fuzz/fuzz_file.h"

#include <algorithm>

namespace {
constexpr std::uint64_t kLargestFrameBytes = 1 << 22; // larger ones only cost time here
constexpr std::uint64_t kLargestVolumeBytes = 1 << 24;
constexpr int kFrames = 2;
} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace gauge::dicomio;
    auto scanned = scanFile(gauge::test::FuzzFile::instance().fill(data, size));
    if (!scanned || !scanned->format || scanned->format->frameBytes() > kLargestFrameBytes)
        return 0;
    const auto shared = std::make_shared<const ScannedFile>(std::move(*scanned));
    if (const auto cine = readUltrasound(shared)) {
        for (int frame = 0; frame < std::min(cine->frames->count(), kFrames); ++frame)
            (void)cine->frames->rgb(frame);
    }
    if (shared->format->nativeBytes() > kLargestVolumeBytes)
        return 0;
    if (const auto volume = UltrasoundVolume::open(shared))
        (void)volume->read(0);
    return 0;
}
