#include "dicomio/scan/pixel_format.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <string_view>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;

struct Range {
    int low;
    int high;
};

core::Result<int> inRange(const Dataset& dataset, Tag tag, Range range, std::optional<int> otherwise = {}) {
    const auto value = dataset.integer(tag);
    if (!value) return tl::make_unexpected(value.error());
    if (!*value && otherwise) return *otherwise;
    if (!*value)
        return failure(ErrorCode::AttributeMissing,
                       describe(tag) + (dataset.has(tag) ? " is empty." : " is absent."),
                       {{"tag", describe(tag)}});
    if (**value < range.low || **value > range.high)
        return failure(ErrorCode::AttributeInvalid,
                       describe(tag) + " is " + std::to_string(**value) + "; it must lie between " +
                           std::to_string(range.low) + " and " + std::to_string(range.high) + ".",
                       {{"tag", describe(tag)}, {"value", std::to_string(**value)}});
    return **value;
}

struct Wanted {
    Tag tag;
    Range range;
    std::optional<int> otherwise;
    int PixelFormat::*field;
};

core::Result<PixelFormat> readFields(const Dataset& dataset) {
    const std::array<Wanted, 7> wanted{{
        {tags::Rows, {1, 65535}, {}, &PixelFormat::rows},
        {tags::Columns, {1, 65535}, {}, &PixelFormat::columns},
        {tags::NumberOfFrames, {1, kMaxFrames}, 1, &PixelFormat::frames},
        {tags::SamplesPerPixel, {1, 4}, 1, &PixelFormat::samplesPerPixel},
        {tags::BitsAllocated, {1, 64}, {}, &PixelFormat::bitsAllocated},
        {tags::BitsStored, {1, 64}, {}, &PixelFormat::bitsStored},
        {tags::HighBit, {0, 63}, {}, &PixelFormat::highBit},
    }};
    PixelFormat format;
    for (const Wanted& w : wanted) {
        const auto value = inRange(dataset, w.tag, w.range, w.otherwise);
        if (!value) return tl::make_unexpected(value.error());
        format.*w.field = *value;
    }
    const auto representation = inRange(dataset, tags::PixelRepresentation, {0, 1}, 0);
    if (!representation) return tl::make_unexpected(representation.error());
    const auto planar = inRange(dataset, tags::PlanarConfiguration, {0, 1}, 0);
    if (!planar) return tl::make_unexpected(planar.error());
    format.isSigned = *representation == 1;
    format.planar = *planar == 1 && format.samplesPerPixel > 1;
    format.photometric = dataset.text(tags::PhotometricInterpretation);
    return format;
}

core::Result<PixelFormat> agreeing(PixelFormat format) {
    const int bits = format.bitsAllocated;
    if (bits != 1 && bits % 8 != 0)
        return failure(ErrorCode::AttributeInvalid,
                       describe(tags::BitsAllocated) + " is " + std::to_string(bits) +
                           "; only 1 and whole bytes are possible.",
                       {{"tag", describe(tags::BitsAllocated)}});
    if (format.bitsStored > bits || format.highBit >= bits || format.highBit + 1 < format.bitsStored)
        return failure(ErrorCode::AttributeInvalid,
                       describe(tags::BitsStored) + " is " + std::to_string(format.bitsStored) + " and " +
                           describe(tags::HighBit) + " is " + std::to_string(format.highBit) +
                           ", which does not fit into " + describe(tags::BitsAllocated) + " " +
                           std::to_string(bits) + ".",
                       {{"tag", describe(tags::BitsStored)}});
    if (format.nativeBytes() > kMaxNativeBytes || format.frameBytes() > kMaxFrameBytes)
        return failure(ErrorCode::AttributeInvalid,
                       describe(tags::Rows) + " x " + describe(tags::Columns) + " x " +
                           describe(tags::NumberOfFrames) + " ask for " +
                           std::to_string(format.nativeBytes()) + " bytes, which no image of this kind has.",
                       {{"tag", describe(tags::Rows)}});
    return format;
}

} // namespace

std::uint64_t PixelFormat::samplesPerFrame() const {
    if (samplesPerPixel == 3 && photometric == "YBR_FULL_422") return 2 * pixelsPerFrame();
    return pixelsPerFrame() * static_cast<std::uint64_t>(samplesPerPixel);
}

std::uint64_t PixelFormat::nativeBytes() const {
    const std::uint64_t samples = samplesPerFrame() * static_cast<std::uint64_t>(frames);
    return bitsAllocated == 1 ? (samples + 7) / 8 : samples * static_cast<std::uint64_t>(bitsAllocated) / 8;
}

core::Result<PixelFormat> pixelFormat(const Dataset& dataset) {
    return readFields(dataset).and_then(agreeing);
}

} // namespace gauge::dicomio
