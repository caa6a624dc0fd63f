#include "dicomio/pixel/codestream_header.h"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>

namespace gauge::dicomio {
namespace {

using core::failure;

tl::unexpected<core::Error> damaged(const std::string& finding) {
    return failure(core::ErrorCode::FileDamaged, finding, {{"tag", describe(tags::PixelData)}});
}

/// Big-endian numbers at places of a span, nullopt beyond its end.
class Bytes {
public:
    explicit Bytes(std::span<const std::byte> data) : m_data(data) {}
    std::size_t size() const { return m_data.size(); }
    std::optional<std::uint32_t> at(std::size_t place, int count) const {
        if (place > m_data.size() || static_cast<std::size_t>(count) > m_data.size() - place)
            return std::nullopt;
        std::uint32_t value = 0;
        for (int i = 0; i < count; ++i)
            value = value << 8 | static_cast<std::uint32_t>(m_data[place + static_cast<std::size_t>(i)]);
        return value;
    }

private:
    std::span<const std::byte> m_data;
};

struct FrameHeader {
    std::uint32_t width = 0;
    std::uint32_t height = 0;
    std::uint32_t components = 0;
    std::uint32_t bits = 0;
};

core::Result<void> agrees(const FrameHeader& found, const PixelFormat& format, const std::string& coding) {
    const auto wanted = [&](int v) { return static_cast<std::uint32_t>(v); };
    if (found.width == wanted(format.columns) && found.height == wanted(format.rows) &&
        found.components == wanted(format.samplesPerPixel) && found.bits >= 1 &&
        found.bits <= wanted(format.bitsAllocated))
        return {};
    return damaged("The " + coding + " frame is " + std::to_string(found.width) + " x " +
                   std::to_string(found.height) + " with " + std::to_string(found.components) +
                   " components of " + std::to_string(found.bits) + " bits, but the attributes say " +
                   std::to_string(format.columns) + " x " + std::to_string(format.rows) + " with " +
                   std::to_string(format.samplesPerPixel) + " samples in " +
                   std::to_string(format.bitsAllocated) + " bits.");
}

bool isFrameStart(std::uint32_t marker) {
    if (marker == 0xFFF7) // JPEG-LS
        return true;
    return marker >= 0xFFC0 && marker <= 0xFFCF && marker != 0xFFC4 && marker != 0xFFC8 && marker != 0xFFCC;
}

/// Of the markers, those that T.81 B.2.1 allows before the frame header and that have a length: neither TEM and the reserved
/// ones (FF01 to FFBF; Debian's toolkit turns for ever at TEM) nor restarts, SOI and EOI (FFD0 to FFD9).
bool startsSegment(std::uint32_t marker) {
    return marker >= 0xFFC0 && (marker < 0xFFD0 || marker > 0xFFD9);
}

/// Visits the marker segments of JPEG (ITU-T T.81 annex B) and JPEG-LS (T.87 annex C) up to the frame header,
/// the first scan or a marker that may not stand there. @param visit  gets the marker and the place of its length field; stops the walk by
/// returning true.
template <class Visit> void walkJpeg(const Bytes& bytes, Visit&& visit) {
    if (bytes.at(0, 2) != 0xFFD8u) return;
    std::size_t place = 2;
    while (true) {
        const auto marker = bytes.at(place, 2);
        if (!marker) return;
        if (*marker == 0xFFFF) { // fill byte
            ++place;
            continue;
        }
        if (!startsSegment(*marker)) return;
        const auto length = bytes.at(place + 2, 2);
        if (*marker == 0xFFDA || !length || *length < 2) return; // the scan starts
        if (visit(*marker, place + 2)) return;
        place += 2 + *length;
    }
}

std::optional<FrameHeader> jpegHeader(const Bytes& bytes) {
    std::optional<FrameHeader> header;
    walkJpeg(bytes, [&](std::uint32_t marker, std::size_t place) {
        if (!isFrameStart(marker)) return false;
        const auto bits = bytes.at(place + 2, 1), height = bytes.at(place + 3, 2),
                   width = bytes.at(place + 5, 2), components = bytes.at(place + 7, 1);
        if (bits && height && width && components) header = FrameHeader{*width, *height, *components, *bits};
        return true;
    });
    return header;
}

StreamColour jpegColour(const Bytes& bytes) {
    StreamColour colour;
    walkJpeg(bytes, [&](std::uint32_t marker, std::size_t place) {
        if (marker == 0xFFEE && bytes.at(place + 2, 4) == 0x41646F62u) { // "Adob"
            if (const auto transform = bytes.at(place + 13, 1))
                colour.adobeTransform = static_cast<int>(*transform);
        }
        if (!isFrameStart(marker)) return false;
        const auto name = [&](std::size_t c) { return bytes.at(place + 8 + 3 * c, 1).value_or(0); };
        const auto sampling = [&](std::size_t c) { return bytes.at(place + 9 + 3 * c, 1).value_or(0); };
        if (bytes.at(place + 7, 1) == 3u) {
            colour.rgbNames = name(0) == 'R' && name(1) == 'G' && name(2) == 'B';
            colour.subsampled = sampling(0) != sampling(1) || sampling(0) != sampling(2);
        }
        return true;
    });
    return colour;
}

/// The marker segments of a JPEG 2000 main header up to the first tile part; COD tells (T.800 A.6.1).
StreamColour jpeg2000Colour(const Bytes& bytes) {
    StreamColour colour;
    if (bytes.at(0, 2) != 0xFF4Fu) return colour;
    for (std::size_t place = 2;;) {
        const auto marker = bytes.at(place, 2), length = bytes.at(place + 2, 2);
        if (!marker || !length || *length < 2 || *marker == 0xFF90) return colour;
        if (*marker == 0xFF52) colour.multipleComponentTransform = bytes.at(place + 8, 1) == 1u;
        place += 2 + *length;
    }
}

core::Result<void> checkJpeg(const Bytes& bytes, const PixelFormat& format, const std::string& coding) {
    const auto header = jpegHeader(bytes);
    if (!header) return damaged("The " + coding + " frame has no frame header.");
    return agrees(*header, format, coding);
}

/// The SIZ segment, which follows SOC (ITU-T T.800 A.5.1).
core::Result<void> checkJpeg2000(const Bytes& bytes, const PixelFormat& format) {
    constexpr std::size_t kSiz = 4; // after SOC and the SIZ marker: Lsiz
    if (bytes.at(0, 4) != 0xFF4FFF51u)
        return damaged("The JPEG 2000 frame does not start with a code stream.");
    const auto field = [&](std::size_t place, int count) {
        return bytes.at(kSiz + place, count).value_or(0);
    };
    const std::uint32_t x = field(4, 4), y = field(8, 4), x0 = field(12, 4), y0 = field(16, 4);
    const std::uint32_t tileX = field(20, 4), tileY = field(24, 4), tileX0 = field(28, 4),
                        tileY0 = field(32, 4);
    const std::uint32_t components = field(36, 2);
    if (x <= x0 || y <= y0 || tileX == 0 || tileY == 0 || tileX0 > x0 || tileY0 > y0 || components == 0)
        return damaged("The JPEG 2000 frame has an impossible size segment.");
    FrameHeader header{x - x0, y - y0, components, 0};
    for (std::uint32_t c = 0; c < components && c < 4; ++c) {
        const std::size_t place = 38 + 3 * static_cast<std::size_t>(c);
        header.bits = std::max(header.bits, (field(place, 1) & 0x7F) + 1);
        if (field(place + 1, 1) != 1 || field(place + 2, 1) != 1)
            return damaged("The JPEG 2000 frame has subsampled components, which is not supported.");
    }
    if (auto same = agrees(header, format, "JPEG 2000"); !same) return same;
    constexpr std::uint64_t kMaxTiles = 4096; // T.800 A.4.2 allows 65535, each of which costs a decoder 7 KB
    const std::uint64_t across = (std::uint64_t{x} - tileX0 + tileX - 1) / tileX;
    const std::uint64_t down = (std::uint64_t{y} - tileY0 + tileY - 1) / tileY;
    if (across * down > kMaxTiles)
        return damaged("The JPEG 2000 frame claims " + std::to_string(across * down) + " tiles.");
    return {};
}

/// Every tile part must lie within the frame, and one that leaves its length open must end with the stream's
/// EOC (T.800 A.4.2, A.4.4; padding may follow). Decoders take a cut stream for a blank or coarse picture.
core::Result<void> isWhole(std::span<const std::byte> frame) {
    const Bytes bytes(frame);
    std::size_t place = 2;
    while (bytes.at(place, 2).value_or(0xFF90) != 0xFF90) // the main header
        place += 2 + std::max(2u, bytes.at(place + 2, 2).value_or(0xFFFF));
    for (int parts = 0;; ++parts) {
        const auto mark = bytes.at(place, 2), length = bytes.at(place + 6, 4);
        if (mark != 0xFF90u && parts > 0) return {};
        if (mark != 0xFF90u || !length || (*length != 0 && (*length < 14 || *length > frame.size() - place)))
            return damaged("The JPEG 2000 frame ends within its tiles: it is truncated.");
        if (*length == 0) break;
        place += *length;
    }
    std::size_t end = frame.size();
    while (end > 0 && frame[end - 1] == std::byte{0})
        --end;
    if (end >= 2 && frame[end - 2] == std::byte{0xFF} && frame[end - 1] == std::byte{0xD9}) return {};
    return damaged("The JPEG 2000 frame does not end as one must: it is truncated.");
}

/// PS3.5 G.3: the bytes that a segment makes, at most `most`.
std::uint64_t unpackedBytes(std::span<const std::byte> segment, std::uint64_t most) {
    std::uint64_t made = 0;
    for (std::size_t at = 0; at < segment.size() && made < most;) {
        const auto code = static_cast<unsigned>(segment[at]);
        if (code < 128) { // literal bytes
            made += std::min<std::size_t>(code + 1, segment.size() - at - 1);
            at += code + 2;
        } else { // one byte repeated; 128 does nothing
            if (code > 128 && at + 1 < segment.size()) made += 257 - code;
            at += code > 128 ? 2 : 1;
        }
    }
    return made;
}

/// PS3.5 G.5: the number of segments and their offsets, little endian, in 64 bytes.
core::Result<void> checkRle(std::span<const std::byte> frame, const PixelFormat& format) {
    const auto u32 = [&](std::size_t place) {
        std::uint32_t value = 0;
        for (std::size_t i = 0; i < 4; ++i)
            value |= static_cast<std::uint32_t>(frame[place + i]) << (8 * i);
        return value;
    };
    constexpr std::size_t kHeaderBytes = 64;
    constexpr std::uint64_t kBestRatio = 64; // two bytes make at most 128
    if (frame.size() < kHeaderBytes) return damaged("The RLE frame is shorter than its header.");
    const auto segments = static_cast<std::uint32_t>(format.samplesPerPixel * (format.bitsAllocated / 8));
    if (u32(0) != segments || segments > 15)
        return damaged("The RLE frame has " + std::to_string(u32(0)) +
                       " segments where its attributes need " + std::to_string(segments) + ".");
    for (std::uint32_t s = 0; s < segments; ++s) {
        const std::uint32_t begin = u32(4 + 4 * s);
        if (begin < kHeaderBytes || begin > frame.size() || (s > 0 && begin < u32(4 * s)))
            return damaged("The RLE frame has its segment " + std::to_string(s + 1) + " outside of itself.");
    }
    if (format.frameBytes() > kBestRatio * frame.size())
        return damaged("The RLE frame of " + std::to_string(frame.size()) + " bytes cannot hold " +
                       std::to_string(format.frameBytes()) + " bytes of pixels.");
    const std::uint64_t perSegment = format.pixelsPerFrame();
    for (std::uint32_t s = 0; s < segments; ++s) {
        const std::size_t begin = u32(4 + 4 * s), end = s + 1 < segments ? u32(8 + 4 * s) : frame.size();
        const std::uint64_t made = unpackedBytes(frame.subspan(begin, end - begin), perSegment);
        if (made < perSegment)
            return damaged("The RLE frame ends after " + std::to_string(made) + " of " +
                           std::to_string(perSegment) + " bytes of its segment " + std::to_string(s + 1) +
                           ".");
    }
    return {};
}

/// Blank images shrink without limit, but a large one that hardly holds a byte is more likely a trap.
core::Result<void> isPlausible(std::span<const std::byte> frame, const PixelFormat& format) {
    constexpr std::uint64_t kLarge = std::uint64_t{1} << 24;
    constexpr std::uint64_t kBestRatio = 2000;
    const std::uint64_t decoded = format.pixelsPerFrame() *
                                  static_cast<std::uint64_t>(format.samplesPerPixel) *
                                  static_cast<std::uint64_t>(format.bitsAllocated) / 8;
    if (decoded < kLarge || decoded / kBestRatio <= frame.size()) return {};
    return damaged("A compressed frame of " + std::to_string(frame.size()) + " bytes cannot hold " +
                   std::to_string(decoded) + " bytes of pixels.");
}

core::Result<void> checkHeader(std::span<const std::byte> frame, PixelCoding coding,
                               const PixelFormat& format) {
    switch (coding) {
    case PixelCoding::Native:
        return {};
    case PixelCoding::Rle:
        return checkRle(frame, format);
    case PixelCoding::Jpeg:
        return checkJpeg(Bytes(frame), format, "JPEG");
    case PixelCoding::JpegLs:
        return checkJpeg(Bytes(frame), format, "JPEG-LS");
    case PixelCoding::Jpeg2000:
        return checkJpeg2000(Bytes(frame), format);
    case PixelCoding::Unsupported:
        break;
    }
    return failure(core::ErrorCode::TransferSyntaxUnsupported,
                   "Its pixels are coded in a way that cannot be decoded.");
}

} // namespace

std::span<const std::byte> withoutWrapper(std::span<const std::byte> frame, PixelCoding coding) {
    const Bytes bytes(frame);
    if (coding != PixelCoding::Jpeg2000 || bytes.at(4, 4) != 0x6A502020u) return frame; // "jP  "
    for (std::size_t place = 0;;) {
        const auto length = bytes.at(place, 4), kind = bytes.at(place + 4, 4);
        if (!length || !kind) return frame;
        if (*kind == 0x6A703263u) // "jp2c"; length 0: to the end
            return *length < 8 ? frame.subspan(place + 8)
                               : frame.subspan(place + 8,
                                               std::min<std::size_t>(*length - 8, frame.size() - place - 8));
        if (*length < 8) return frame;
        place += *length;
    }
}

StreamColour streamColour(std::span<const std::byte> frame, PixelCoding coding) {
    const Bytes bytes(withoutWrapper(frame, coding));
    if (coding == PixelCoding::Jpeg) return jpegColour(bytes);
    return coding == PixelCoding::Jpeg2000 ? jpeg2000Colour(bytes) : StreamColour{};
}

core::Result<void> checkCodestream(std::span<const std::byte> frame, PixelCoding coding,
                                   const PixelFormat& format) {
    const auto stream = withoutWrapper(frame, coding);
    if (auto checked = checkHeader(stream, coding, format); !checked) return checked;
    if (auto plausible = isPlausible(frame, format); !plausible) return plausible;
    return coding == PixelCoding::Jpeg2000 ? isWhole(stream) : core::Result<void>{};
}

} // namespace gauge::dicomio
