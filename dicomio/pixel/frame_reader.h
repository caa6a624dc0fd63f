// The pixels of a scanned file, frame by frame, whatever their transfer syntax.
#pragma once

#include "core/result.h"
#include "dicomio/pixel/encapsulation.h"
#include "dicomio/scan/byte_stream.h"
#include "dicomio/scan/scanner.h"

#include <cstdint>
#include <span>
#include <vector>

namespace gauge::dicomio {

/// The stored value within a word: bits HighBit - BitsStored + 1 to HighBit, signed or not (PS3.5 8.1.1).
std::int32_t storedValue(std::uint32_t word, const PixelFormat& format);

/// Safe to use from several threads at once.
class FrameReader {
public:
    /// @param scanned  must outlive the reader and have pixels.
    /// @errors FileUnreadable, FileDamaged, TransferSyntaxUnsupported, ObjectUnsupported (no pixels).
    static core::Result<FrameReader> open(const ScannedFile& scanned);

    /// The words of one frame of a greyscale image with 8 or 16 bits allocated, in the machine's byte order;
    /// see storedValue(). Uncompressed words are read straight into place.
    /// @param frame  0-based. @param out  rows x columns words.
    /// @errors FileDamaged, FileUnreadable, ObjectUnsupported.
    core::Result<void> readWords(int frame, std::span<std::uint16_t> out) const;

    /// The stored values of one frame, any format, pixel by pixel.
    /// @errors as readWords.
    core::Result<std::vector<std::int32_t>> readValues(int frame) const;

private:
    FrameReader(const ScannedFile& scanned, RegularFile file)
        : m_scanned(&scanned), m_file(std::move(file)) {}
    core::Result<void> loadWhole();
    core::Result<void> readNative(std::uint64_t offset, std::span<std::byte> out) const;
    core::Result<std::vector<std::byte>> compressedFrame(int frame) const;
    core::Result<std::vector<std::int32_t>> nativeValues(int frame) const;
    core::Result<std::vector<std::int32_t>> compressedValues(int frame) const;

    const ScannedFile* m_scanned;
    RegularFile m_file;
    std::vector<FragmentRange> m_frames; ///< of encapsulated pixels
    std::vector<std::byte>
        m_whole; ///< all pixels, where they cannot be read in place (deflated, swapped bytes)
};

} // namespace gauge::dicomio
