// Walks over the structure of a data set, keeping wanted attributes and locating the pixels. Part of the
// scanner.
#pragma once

#include "core/result.h"
#include "dicomio/scan/byte_stream.h"
#include "dicomio/scan/scanner.h"

#include <optional>

namespace gauge::dicomio {

class Walker {
public:
    struct Encoding {
        bool explicitVr = true;
        bool bigEndian = false;
    };

    Walker(ByteStream& stream, Encoding encoding) : m_in(stream), m_encoding(encoding) {}

    /// Group 0002 from the stream's place on; stops before the first other group.
    core::Result<void> walkMeta(const RegularFile& file, Dataset& meta);
    /// The data set from the stream's place to its end.
    core::Result<void> walk(Dataset& dataset);

    std::optional<PixelLocation> takePixels() { return std::move(m_pixels); }
    /// True when something after the pixels could not be understood and was left alone.
    bool leftTrailingBytes() const { return m_trailing; }

private:
    struct Header {
        Tag tag;
        std::string vr; ///< empty in implicit encoding
        std::uint32_t length = 0;
    };
    struct Frame {
        std::optional<std::uint64_t> end; ///< where the enclosing item, sequence or file ends, if known
        int depth = 0;
        bool explicitVr = true;
        bool delimited = false; ///< an item of undefined length, closed by a delimiter
    };

    std::uint16_t u16(const std::byte* p) const;
    std::uint32_t u32(const std::byte* p) const;
    bool readBounded(std::span<std::byte> out, const Frame& frame);
    core::Result<Header> readHeader(const Frame& frame);
    core::Result<void> walkElements(Dataset* keep, const Frame& frame);
    core::Result<void> walkElement(const Header& header, Dataset* keep, const Frame& frame);
    core::Result<void> walkSequence(const Header& header, std::vector<Dataset>* keep, const Frame& frame);
    core::Result<void> walkUnknownImplicit(const Header& header, const Frame& frame);
    core::Result<void> walkFragments(const Header& header, PixelLocation* keep, const Frame& frame);
    core::Result<void> takeOffsets(std::uint32_t length, PixelLocation& pixels, const Frame& frame);
    core::Result<void> keepValue(const Header& header, Dataset& keep, const Frame& frame);
    core::Result<void> takeNativePixels(const Header& header);
    std::optional<std::uint64_t> endOf(std::uint32_t length) const;
    core::Result<void> fits(const Header& header, const Frame& frame) const;
    tl::unexpected<core::Error> damaged(const std::string& finding) const;
    tl::unexpected<core::Error> endsInside(const std::string& what) const;

    ByteStream& m_in;
    Encoding m_encoding;
    std::optional<PixelLocation> m_pixels;
    std::size_t m_keptItems = 0;
    std::size_t m_keptBytes = 0;
    bool m_tooDeep = false;
    bool m_trailing = false;
};

} // namespace gauge::dicomio
