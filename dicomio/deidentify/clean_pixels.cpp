#include "dicomio/deidentify/clean_pixels.h"

#include "dicomio/pixel/colour.h"
#include "dicomio/ultrasound/us_facts.h"

#include <algorithm>

namespace gauge::dicomio {

bool mayHaveBurnedInText(const ScannedFile& scanned, const std::string& burnedIn) {
    if (burnedIn == "YES") return true;
    if (burnedIn == "NO") return false;
    const std::string modality = scanned.dataset.text(tags::Modality), uid = scanned.sopClassUid();
    constexpr std::string_view kSecondaryCapture = "1.2.840.10008.5.1.4.1.1.7"; // and its multi-frame kinds
    const bool volume = scanned.dataset.has(tags::SharedFunctionalGroupsSequence); // scan lines only, no screen
    return (modality == "US" && !volume) || uid.starts_with(kSecondaryCapture);
}

std::vector<core::PixelBox> calibratedBoxes(const ScannedFile& scanned) {
    std::vector<core::PixelBox> boxes;
    const PixelFormat& f = *scanned.format;
    for (const core::EchoRegion& region : usFacts(scanned.dataset, f.columns, f.rows, f.frames).regions)
        boxes.push_back(region.box);
    return boxes;
}

core::Result<CleanFrames> framesWithin(const ScannedFile& scanned, const std::vector<core::PixelBox>& boxes) {
    constexpr std::uint64_t kMostBytes = std::uint64_t{1} << 31;
    const auto reader = ColourReader::open(scanned);
    if (!reader) return tl::make_unexpected(reader.error());
    CleanFrames clean{reader->columns(), reader->rows(), reader->count(), {}};
    const std::uint64_t frameBytes = 3 * scanned.format->pixelsPerFrame();
    if (frameBytes * static_cast<std::uint64_t>(clean.frames) > kMostBytes)
        return core::failure(core::ErrorCode::ObjectUnsupported,
                             "The pictures take more than 2 GiB without compression; their burned-in text is not cleaned.");
    clean.samples.assign(static_cast<std::size_t>(frameBytes) * static_cast<std::size_t>(clean.frames), 0);
    const auto columns = static_cast<std::size_t>(clean.columns);
    for (int frame = 0; frame < clean.frames; ++frame) {
        const auto rgb = reader->readRgb(frame);
        if (!rgb) return tl::make_unexpected(rgb.error());
        std::uint8_t* out = clean.samples.data() + static_cast<std::size_t>(frameBytes) * static_cast<std::size_t>(frame);
        for (const core::PixelBox& box : boxes) {
            const int minX = std::max(0, box.minX), maxX = std::min(clean.columns - 1, box.maxX);
            if (maxX < minX) continue;
            for (int y = std::max(0, box.minY); y <= std::min(clean.rows - 1, box.maxY); ++y) {
                const std::size_t at = 3 * (static_cast<std::size_t>(y) * columns + static_cast<std::size_t>(minX));
                std::copy_n(rgb->samples.data() + at, 3 * static_cast<std::size_t>(maxX - minX + 1), out + at);
            }
        }
    }
    return clean;
}

} // namespace gauge::dicomio
