#include "dicomio/pixel/palette.h"

#include "dicomio/pixel/palette_segments.h"

#include <algorithm>
#include <cstring>
#include <string>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;

struct Channel {
    Tag descriptor;
    Tag data;
    Tag segments;
};

constexpr std::array<Channel, 3> kChannels{{
    {tags::RedPaletteDescriptor, tags::RedPaletteData, tags::SegmentedRedPaletteData},
    {tags::GreenPaletteDescriptor, tags::GreenPaletteData, tags::SegmentedGreenPaletteData},
    {tags::BluePaletteDescriptor, tags::BluePaletteData, tags::SegmentedBluePaletteData},
}};

struct Descriptor {
    std::size_t entries = 0;
    int firstMapped = 0;
    int bits = 0;
};

tl::unexpected<core::Error> invalid(Tag tag, const std::string& finding) {
    return failure(ErrorCode::AttributeInvalid, describe(tag) + " " + finding, {{"tag", describe(tag)}});
}

tl::unexpected<core::Error> missing(Tag tag) {
    return failure(ErrorCode::AttributeMissing,
                   describe(tag) + " is absent or empty: the colours of the palette are not known.",
                   {{"tag", describe(tag)}});
}

std::uint16_t wordAt(const std::string& bytes, std::size_t index) {
    std::uint16_t word = 0;
    std::memcpy(&word, bytes.data() + 2 * index, sizeof word);
    return word;
}

core::Result<Descriptor> descriptorOf(const Dataset& dataset, Tag tag, const PixelFormat& format) {
    const Attribute* attribute = dataset.find(tag);
    if (!attribute || attribute->value.empty()) return missing(tag);
    if (attribute->value.size() != 6)
        return invalid(tag, "has " + std::to_string(attribute->value.size()) +
                                " bytes; three numbers are needed.");
    // PS3.3 C.7.6.3.1.5: 0 entries stand for 65536; the first mapped value is signed as the pixels are.
    const std::uint16_t count = wordAt(attribute->value, 0), first = wordAt(attribute->value, 1);
    const Descriptor descriptor{count == 0 ? 65536u : count,
                                format.isSigned ? static_cast<std::int16_t>(first) : int{first},
                                wordAt(attribute->value, 2)};
    if (descriptor.bits < 8 || descriptor.bits > 16)
        return invalid(tag, "says that entries have " + std::to_string(descriptor.bits) +
                                " bits; 8 to 16 are possible.");
    return descriptor;
}

/// Entries as they stand in the file, each in a word.
core::Result<std::vector<std::uint16_t>> plainEntries(const std::string& bytes, Tag tag,
                                                      const Descriptor& descriptor) {
    const std::size_t count = descriptor.entries;
    const bool wide = descriptor.bits > 8 || bytes.size() >= 2 * count;
    const std::size_t needed = wide ? 2 * count : count;
    if (bytes.size() < needed)
        return invalid(tag, "holds " + std::to_string(bytes.size()) + " bytes where " +
                                std::to_string(count) + " entries of " + std::to_string(descriptor.bits) +
                                " bits need " + std::to_string(needed) +
                                ": the palette is shorter than declared.");
    std::vector<std::uint16_t> entries(count);
    for (std::size_t i = 0; i < count; ++i)
        entries[i] = wide ? wordAt(bytes, i) : static_cast<unsigned char>(bytes[i]);
    return entries;
}

core::Result<std::vector<std::uint16_t>> entriesOf(const Dataset& dataset, const Channel& channel,
                                                   const Descriptor& descriptor) {
    if (const Attribute* plain = dataset.find(channel.data); plain && !plain->value.empty())
        return plainEntries(plain->value, channel.data, descriptor);
    const Attribute* segments = dataset.find(channel.segments);
    if (!segments || segments->value.empty()) return missing(channel.data);
    auto expanded = expandSegments(segments->value, descriptor.bits == 8, descriptor.entries);
    if (!expanded) return invalid(channel.segments, expanded.error());
    return *expanded;
}

} // namespace

const std::array<std::uint8_t, 3>& Palette::at(std::int32_t value) const {
    const std::int64_t index = std::int64_t{value} - firstMapped;
    return entries[static_cast<std::size_t>(
        std::clamp<std::int64_t>(index, 0, static_cast<std::int64_t>(entries.size()) - 1))];
}

core::Result<Palette> readPalette(const Dataset& dataset, const PixelFormat& format,
                                  std::vector<core::Notice>& notices) {
    Palette palette;
    for (std::size_t c = 0; c < kChannels.size(); ++c) {
        const Channel& channel = kChannels[c];
        auto descriptor = descriptorOf(dataset, channel.descriptor, format);
        if (!descriptor) return tl::make_unexpected(descriptor.error());
        if (c == 0) {
            palette.firstMapped = descriptor->firstMapped;
            palette.entries.resize(descriptor->entries);
        } else if (descriptor->entries != palette.entries.size() ||
                   descriptor->firstMapped != palette.firstMapped) {
            return invalid(channel.descriptor, "says otherwise than " + describe(kChannels[0].descriptor) +
                                                   " how many entries there are or where they begin.");
        }
        auto entries = entriesOf(dataset, channel, *descriptor);
        if (!entries) return tl::make_unexpected(entries.error());
        const auto largest = *std::max_element(entries->begin(), entries->end());
        if (largest >= 1 << descriptor->bits) {
            notices.push_back({"palette-bits-contradicted",
                               describe(channel.descriptor) + " says " + std::to_string(descriptor->bits) +
                                   " bits, but entries use 16; the upper 8 are shown.",
                               {}});
            descriptor->bits = 16;
        }
        for (std::size_t i = 0; i < entries->size(); ++i)
            palette.entries[i][c] = static_cast<std::uint8_t>((*entries)[i] >> (descriptor->bits - 8));
    }
    return palette;
}

} // namespace gauge::dicomio
