// Size and coding of an image's pixels, as its attributes declare them (PS3.3 C.7.6.3), proved plausible.
#pragma once

#include "core/result.h"
#include "dicomio/scan/dataset.h"

#include <cstdint>
#include <string>

namespace gauge::dicomio {

struct PixelFormat {
    int rows = 0;
    int columns = 0;
    int frames = 1;
    int samplesPerPixel = 1;
    int bitsAllocated = 16;
    int bitsStored = 16;
    int highBit = 15;
    bool isSigned = false;
    bool planar = false; ///< samples in planes (PlanarConfiguration 1) rather than pixel by pixel
    std::string photometric;

    std::uint64_t pixelsPerFrame() const {
        return static_cast<std::uint64_t>(rows) * static_cast<std::uint64_t>(columns);
    }
    /// Samples kept per frame when not compressed: 2 per pixel for YBR_FULL_422, whose chroma is halved.
    std::uint64_t samplesPerFrame() const;
    /// Bytes of one frame when not compressed. One-bit images count whole bytes over all frames, see
    /// nativeBytes().
    std::uint64_t frameBytes() const {
        return samplesPerFrame() * static_cast<std::uint64_t>(bitsAllocated) / 8;
    }
    /// Bytes of all frames when not compressed, without the padding to an even length.
    std::uint64_t nativeBytes() const;
};

/// Largest image that is believed: 65535 is the attribute's own limit; frames and total bytes bound what a
/// file with a few bytes could make us wait for.
inline constexpr int kMaxFrames = 100000;
inline constexpr std::uint64_t kMaxNativeBytes = std::uint64_t{1} << 36;
inline constexpr std::uint64_t kMaxFrameBytes = std::uint64_t{1} << 29;

/// @errors AttributeMissing or AttributeInvalid naming the tag, when the attributes are absent, out of their
/// range or contradict each other.
core::Result<PixelFormat> pixelFormat(const Dataset& dataset);

} // namespace gauge::dicomio
