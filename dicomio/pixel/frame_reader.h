// The pixels of a scanned file, frame by frame, whatever their transfer syntax. Neighbour: colour.h for
// pictures.
#pragma once

#include "core/result.h"
#include "dicomio/pixel/coded_colour.h"
#include "dicomio/pixel/encapsulation.h"
#include "dicomio/pixel/native_pixels.h"
#include "dicomio/scan/scanner.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <vector>

namespace gauge::dicomio {

/// The stored value within a word: bits HighBit - BitsStored + 1 to HighBit, signed or not (PS3.5 8.1.1).
std::int32_t storedValue(std::uint32_t word, const PixelFormat& format);

/// Most samples of one frame that are read: what decoding takes stays within a quarter of a gigabyte above
/// them.
inline constexpr std::uint64_t kMaxNativeSamples = std::uint64_t{1} << 26;
inline constexpr std::uint64_t kMaxCompressedSamples = std::uint64_t{1} << 25;

/// Reads one frame at a time; nothing is kept between frames. Safe to use from several threads at once.
class FrameReader {
public:
    /// @param scanned  must outlive the reader and have pixels.
    /// @errors FileUnreadable, FileDamaged, AttributeInvalid, TransferSyntaxUnsupported, ObjectUnsupported
    /// (no pixels, or a depth or size that is not read).
    static core::Result<FrameReader> open(const ScannedFile& scanned);

    /// The words of one frame of a greyscale image with 8 or 16 bits allocated, in the machine's byte order;
    /// see storedValue(). Uncompressed words are read straight into place.
    /// @param frame  0-based. @param out  rows x columns words.
    /// @errors FileDamaged, FileUnreadable, ObjectUnsupported.
    core::Result<void> readWords(int frame, std::span<std::uint16_t> out) const;
    /// The same, calling done(piece) for every piece of `out` once its words are there: while the processor's cache still
    /// holds it.
    core::Result<void> readWords(int frame, std::span<std::uint16_t> out,
                                 const std::function<void(std::span<std::uint16_t>)>& done) const;

    /// The stored values of one frame, any format, pixel by pixel, before any conversion of colour. JPEG
    /// gives full chroma; uncompressed YBR_FULL_422 stays as stored, Y1 Y2 Cb Cr for two pixels.
    /// @errors as readWords.
    core::Result<std::vector<std::int32_t>> readValues(int frame) const;

    /// What three samples of a pixel are, as the first frame tells.
    CodedColour codedColour() const { return m_colour; }
    /// Where attributes and code stream contradict each other about colours.
    const std::vector<core::Notice>& notices() const { return m_notices; }

private:
    explicit FrameReader(const ScannedFile& scanned) : m_scanned(&scanned) {}
    core::Result<void> prepare();
    core::Result<std::vector<std::byte>> compressedFrame(int frame) const;
    core::Result<std::vector<std::int32_t>> decode(int frame) const;
    core::Result<void> decodeGrey(int frame, std::span<std::uint16_t> out) const;
    core::Result<std::vector<std::int32_t>> oneBitValues(int frame) const;
    core::Result<std::vector<std::int32_t>> nativeValues(int frame) const;
    core::Result<std::vector<std::int32_t>> compressedValues(int frame) const;

    const ScannedFile* m_scanned;
    std::optional<RegularFile> m_file;    ///< of encapsulated pixels
    std::vector<FragmentRange> m_frames;  ///< likewise
    std::optional<NativePixels> m_native; ///< of the others
    CodedColour m_colour = CodedColour::None;
    std::vector<core::Notice> m_notices;
};

} // namespace gauge::dicomio
