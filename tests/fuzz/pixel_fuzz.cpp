// Decoding: every transfer syntax and colour model behind the scanner.
#include "dicomio/pixel/colour.h"
#include "dicomio/pixel/frame_reader.h"
#include "dicomio/scan/scanner.h"
#include "tests/fuzz/fuzz_file.h"

#include <algorithm>

namespace {
// A short file can honestly declare a large frame (RLE, JPEG of one colour); such inputs only cost time here.
constexpr std::uint64_t kLargestFrameBytes = 1 << 22;
constexpr int kFrames = 2;
} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace gauge::dicomio;
    const auto scanned = scanFile(gauge::test::FuzzFile::instance().fill(data, size));
    if (!scanned || !scanned->format || scanned->format->frameBytes() > kLargestFrameBytes)
        return 0;
    const auto reader = FrameReader::open(*scanned);
    if (!reader)
        return 0;
    for (int frame = 0; frame < std::min(scanned->format->frames, kFrames); ++frame)
        (void)reader->readValues(frame);
    const auto colours = ColourReader::open(*scanned);
    for (int frame = 0; colours && frame < std::min(scanned->format->frames, kFrames); ++frame)
        (void)colours->readRgb(frame);
    return 0;
}
