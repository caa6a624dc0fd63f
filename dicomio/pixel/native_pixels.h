// Uncompressed pixels at any place of the file, also of deflated and big-endian ones. Part of frame_reader.
#pragma once

#include "core/result.h"
#include "dicomio/scan/byte_stream.h"
#include "dicomio/scan/scanner.h"

#include <cstdint>
#include <memory>
#include <mutex>
#include <span>
#include <vector>

namespace gauge::dicomio {

/// Safe to use from several threads at once. Holds no more than the small part of the pixels that is asked
/// for; a deflated file, which can only be read forwards, is kept inflated as a whole when it is small and is
/// inflated again from its start when a later part is followed by an earlier one.
class NativePixels {
public:
    /// @param scanned  must outlive this, with pixels that are not encapsulated.
    static core::Result<NativePixels> open(const ScannedFile& scanned);

    /// Fills `out` from byte `offset` of the pixels on, as words of BitsAllocated in the machine's byte
    /// order.
    /// @errors FileUnreadable.
    core::Result<void> read(std::uint64_t offset, std::span<std::byte> out) const;

private:
    /// The one inflating stream of a large deflated file.
    struct Inflating {
        explicit Inflating(RegularFile f) : file(std::move(f)) {}
        RegularFile file;
        std::mutex mutex;
        std::unique_ptr<InflateStream> stream;
    };

    NativePixels(const ScannedFile& scanned, RegularFile file)
        : m_scanned(&scanned), m_file(std::move(file)) {}
    bool fill(std::uint64_t offset, std::span<std::byte> out) const;
    bool inflate(std::uint64_t offset, std::span<std::byte> out) const;

    const ScannedFile* m_scanned;
    RegularFile m_file;
    std::vector<std::byte> m_whole; ///< all pixels of a small deflated file
    std::unique_ptr<Inflating> m_inflating;
};

} // namespace gauge::dicomio
