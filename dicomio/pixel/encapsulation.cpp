#include "dicomio/pixel/encapsulation.h"

#include <algorithm>
#include <array>
#include <cstring>
#include <optional>

namespace gauge::dicomio {
namespace {

using Ranges = std::vector<FragmentRange>;

Ranges rangesFromStarts(const std::vector<std::size_t>& starts, std::size_t fragments) {
    Ranges ranges;
    for (std::size_t f = 0; f < starts.size(); ++f)
        ranges.push_back({starts[f], f + 1 < starts.size() ? starts[f + 1] : fragments});
    return ranges;
}

/// Frames by a table of offsets from the first fragment's item header.
std::optional<Ranges> byTable(const std::vector<std::uint64_t>& offsets, const PixelLocation& pixels) {
    const std::uint64_t base = pixels.fragments.front().offset;
    std::vector<std::size_t> starts;
    for (const std::uint64_t offset : offsets) {
        const auto at =
            std::lower_bound(pixels.fragments.begin(), pixels.fragments.end(), base + offset,
                             [](const ByteRange& r, std::uint64_t place) { return r.offset < place; });
        if (at == pixels.fragments.end() || at->offset != base + offset) return std::nullopt;
        starts.push_back(static_cast<std::size_t>(at - pixels.fragments.begin()));
    }
    if (starts.front() != 0 ||
        std::adjacent_find(starts.begin(), starts.end(), std::greater_equal<>()) != starts.end())
        return std::nullopt;
    return rangesFromStarts(starts, pixels.fragments.size());
}

std::vector<std::uint64_t> extendedOffsets(const Dataset& dataset) {
    const Attribute* table = dataset.find(tags::ExtendedOffsetTable);
    std::vector<std::uint64_t> offsets(table ? table->value.size() / sizeof(std::uint64_t) : 0);
    if (!offsets.empty())
        std::memcpy(offsets.data(), table->value.data(), offsets.size() * sizeof(std::uint64_t));
    return offsets;
}

/// Frames by the marks with which code streams start: SOI (JPEG, JPEG-LS) or SOC (JPEG 2000).
std::optional<Ranges> byMarks(const ScannedFile& scanned, const RegularFile& file, std::size_t frames) {
    const PixelCoding coding = scanned.syntax.coding;
    if (coding != PixelCoding::Jpeg && coding != PixelCoding::JpegLs && coding != PixelCoding::Jpeg2000)
        return std::nullopt;
    const std::byte second = coding == PixelCoding::Jpeg2000 ? std::byte{0x4F} : std::byte{0xD8};
    std::vector<std::size_t> starts;
    for (std::size_t i = 0; i < scanned.pixels->fragments.size(); ++i) {
        const ByteRange& fragment = scanned.pixels->fragments[i];
        std::array<std::byte, 2> first{};
        if (fragment.length >= 2 && file.read(fragment.offset, first) && first[0] == std::byte{0xFF} &&
            first[1] == second)
            starts.push_back(i);
    }
    if (starts.size() != frames || starts.front() != 0) return std::nullopt;
    return rangesFromStarts(starts, scanned.pixels->fragments.size());
}

} // namespace

core::Result<Ranges> fragmentsOfFrames(const ScannedFile& scanned, const RegularFile& file) {
    const PixelLocation& pixels = *scanned.pixels;
    const auto frames = static_cast<std::size_t>(scanned.format->frames);
    const std::size_t fragments = pixels.fragments.size();
    if (frames == 1) return Ranges{{0, fragments}};
    if (fragments >= frames) {
        const auto extended = extendedOffsets(scanned.dataset);
        if (extended.size() == frames)
            if (auto ranges = byTable(extended, pixels)) return *ranges;
        if (pixels.frameOffsets.size() == frames)
            if (auto ranges = byTable(pixels.frameOffsets, pixels)) return *ranges;
        if (fragments == frames) {
            Ranges ranges;
            for (std::size_t f = 0; f < frames; ++f)
                ranges.push_back({f, f + 1});
            return ranges;
        }
        if (auto ranges = byMarks(scanned, file, frames)) return *ranges;
    }
    return core::failure(core::ErrorCode::FileDamaged,
                         describe(tags::PixelData) + " has " + std::to_string(fragments) + " fragments for " +
                             std::to_string(frames) +
                             " frames, and nothing tells which belong to which frame.",
                         {{"tag", describe(tags::PixelData)}});
}

} // namespace gauge::dicomio
