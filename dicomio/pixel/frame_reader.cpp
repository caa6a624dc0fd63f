#include "dicomio/pixel/frame_reader.h"

#include "dicomio/pixel/codestream_header.h"
#include "dicomio/pixel/decoders.h"

#include <algorithm>
#include <bit>
#include <cstring>
#include <utility>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;

tl::unexpected<core::Error> endsEarly() {
    return failure(ErrorCode::FileUnreadable,
                   describe(tags::PixelData) + " cannot be read: the file changed or the disk failed.",
                   {{"tag", describe(tags::PixelData)}});
}

core::Result<DecodedSamples> decode(std::span<const std::byte> frame, const ScannedFile& scanned) {
    if (auto checked = checkCodestream(frame, scanned.syntax.coding, *scanned.format); !checked)
        return tl::make_unexpected(checked.error());
    return scanned.syntax.coding == PixelCoding::Jpeg2000
               ? decodeJpeg2000(frame, *scanned.format)
               : decodeByToolkit(frame, scanned.syntax, *scanned.format);
}

void swapBytes(std::span<std::byte> bytes, std::size_t size) {
    for (std::size_t at = 0; at + size <= bytes.size(); at += size)
        std::reverse(bytes.begin() + static_cast<std::ptrdiff_t>(at),
                     bytes.begin() + static_cast<std::ptrdiff_t>(at + size));
}

std::uint32_t wordAt(const std::byte* p, std::size_t size) {
    std::uint32_t word = 0;
    std::memcpy(&word, p, size);
    return word;
}

static_assert(std::endian::native == std::endian::little, "words are read as little endian");

} // namespace

std::int32_t storedValue(std::uint32_t word, const PixelFormat& format) {
    const int unused = 32 - (format.highBit + 1);
    const std::uint32_t high = word << unused; // the stored bits moved to the top
    const int down = 32 - format.bitsStored;
    return format.isSigned ? static_cast<std::int32_t>(high) >> down
                           : static_cast<std::int32_t>(high >> down);
}

core::Result<FrameReader> FrameReader::open(const ScannedFile& scanned) {
    if (!scanned.pixels || !scanned.format)
        return failure(ErrorCode::ObjectUnsupported,
                       describe(tags::PixelData) + " is absent: the file holds no image.",
                       {{"tag", describe(tags::PixelData)}});
    if (scanned.syntax.coding == PixelCoding::Unsupported)
        return failure(ErrorCode::TransferSyntaxUnsupported,
                       describe(tags::TransferSyntaxUid) + " is " + scanned.syntax.uid +
                           ", which cannot be decoded.",
                       {{"tag", describe(tags::TransferSyntaxUid)}, {"value", scanned.syntax.uid}});
    if (scanned.format->bitsAllocated > 32)
        return failure(ErrorCode::ObjectUnsupported,
                       describe(tags::BitsAllocated) + " is " +
                           std::to_string(scanned.format->bitsAllocated) + "; at most 32 can be read.",
                       {{"tag", describe(tags::BitsAllocated)}});
    auto file = RegularFile::open(scanned.path);
    if (!file) return tl::make_unexpected(file.error());
    FrameReader reader(scanned, std::move(*file));
    if (scanned.pixels->encapsulated) {
        auto frames = fragmentsOfFrames(scanned, reader.m_file);
        if (!frames) return tl::make_unexpected(frames.error());
        reader.m_frames = std::move(*frames);
    } else if (auto loaded = reader.loadWhole(); !loaded) {
        return tl::make_unexpected(loaded.error());
    }
    return reader;
}

core::Result<void> FrameReader::loadWhole() {
    const auto& native = m_scanned->pixels->native;
    const bool swapped =
        m_scanned->syntax.bigEndian && m_scanned->format->bitsAllocated <= 8 && m_scanned->pixels->vr == "OW";
    if (!m_scanned->syntax.deflated && !swapped) return {};
    m_whole.resize(static_cast<std::size_t>(native.length));
    if (m_scanned->syntax.deflated) {
        InflateStream stream(m_file, m_scanned->datasetOffset,
                             native.offset + native.length + kInflateBudgetBytes);
        if (!stream.skip(native.offset) || !stream.read(m_whole)) return endsEarly();
    } else if (!m_file.read(native.offset, m_whole)) {
        return endsEarly();
    }
    if (swapped) swapBytes(m_whole, 2);
    return {};
}

core::Result<void> FrameReader::readNative(std::uint64_t offset, std::span<std::byte> out) const {
    const auto& native = m_scanned->pixels->native;
    if (offset > native.length || out.size() > native.length - offset) return endsEarly();
    if (!m_whole.empty())
        std::memcpy(out.data(), m_whole.data() + offset, out.size());
    else if (!m_file.read(native.offset + offset, out))
        return endsEarly();
    const std::size_t wordBytes = static_cast<std::size_t>(m_scanned->format->bitsAllocated) / 8;
    if (m_scanned->syntax.bigEndian && wordBytes > 1) swapBytes(out, wordBytes);
    return {};
}

core::Result<std::vector<std::byte>> FrameReader::compressedFrame(int frame) const {
    const FragmentRange range = m_frames[static_cast<std::size_t>(frame)];
    const auto& fragments = m_scanned->pixels->fragments;
    std::uint64_t total = 0;
    for (std::size_t f = range.begin; f < range.end; ++f)
        total += fragments[f].length;
    std::vector<std::byte> bytes(static_cast<std::size_t>(total));
    std::size_t at = 0;
    for (std::size_t f = range.begin; f < range.end; ++f) {
        const auto length = static_cast<std::size_t>(fragments[f].length);
        if (!m_file.read(fragments[f].offset, std::span(bytes).subspan(at, length))) return endsEarly();
        at += length;
    }
    return bytes;
}

core::Result<void> FrameReader::readWords(int frame, std::span<std::uint16_t> out) const {
    const PixelFormat& format = *m_scanned->format;
    const bool fits =
        format.samplesPerPixel == 1 && (format.bitsAllocated == 8 || format.bitsAllocated == 16);
    if (!fits || frame < 0 || frame >= format.frames || out.size() != format.pixelsPerFrame())
        return failure(ErrorCode::ObjectUnsupported,
                       "Its pixels are not greyscale in 8 or 16 bits, or frame " + std::to_string(frame + 1) +
                           " does not exist.");
    if (m_scanned->pixels->encapsulated) {
        const auto bytes = compressedFrame(frame);
        if (!bytes) return tl::make_unexpected(bytes.error());
        const auto decoded = decode(*bytes, *m_scanned);
        if (!decoded) return tl::make_unexpected(decoded.error());
        std::copy(decoded->words.begin(), decoded->words.end(), out.begin());
        return {};
    }
    const std::uint64_t offset = static_cast<std::uint64_t>(frame) * format.frameBytes();
    if (format.bitsAllocated == 16) return readNative(offset, std::as_writable_bytes(out));
    std::vector<std::byte> bytes(out.size());
    if (auto read = readNative(offset, bytes); !read) return read;
    std::transform(bytes.begin(), bytes.end(), out.begin(),
                   [](std::byte b) { return static_cast<std::uint16_t>(b); });
    return {};
}

core::Result<std::vector<std::int32_t>> FrameReader::readValues(int frame) const {
    if (frame < 0 || frame >= m_scanned->format->frames)
        return failure(ErrorCode::NotFound, "Frame " + std::to_string(frame + 1) + " does not exist.");
    return m_scanned->pixels->encapsulated ? compressedValues(frame) : nativeValues(frame);
}

core::Result<std::vector<std::int32_t>> FrameReader::nativeValues(int frame) const {
    const PixelFormat& format = *m_scanned->format;
    const std::uint64_t samples = format.samplesPerFrame();
    std::vector<std::int32_t> values(static_cast<std::size_t>(samples));
    if (format.bitsAllocated == 1) { // PS3.5 8.1.1: packed without gaps, also between frames
        const std::uint64_t firstBit = static_cast<std::uint64_t>(frame) * samples;
        std::vector<std::byte> bytes(static_cast<std::size_t>((firstBit + samples + 7) / 8 - firstBit / 8));
        if (auto read = readNative(firstBit / 8, bytes); !read) return tl::make_unexpected(read.error());
        for (std::size_t i = 0; i < values.size(); ++i) {
            const std::uint64_t bit = firstBit % 8 + i;
            values[i] = (static_cast<int>(bytes[static_cast<std::size_t>(bit / 8)]) >> (bit % 8)) & 1;
        }
        return values;
    }
    const auto size = static_cast<std::size_t>(format.bitsAllocated) / 8;
    std::vector<std::byte> bytes(values.size() * size);
    if (auto read = readNative(static_cast<std::uint64_t>(frame) * format.frameBytes(), bytes); !read)
        return tl::make_unexpected(read.error());
    const bool planes = format.planar && samples == format.pixelsPerFrame() *
                                                        static_cast<std::uint64_t>(format.samplesPerPixel);
    const auto perPixel = planes ? static_cast<std::size_t>(format.samplesPerPixel) : std::size_t{1};
    const auto pixels = values.size() / perPixel;
    for (std::size_t i = 0; i < values.size(); ++i) {
        const std::size_t from = planes ? (i % perPixel) * pixels + i / perPixel : i;
        values[i] = storedValue(wordAt(bytes.data() + from * size, size), format);
    }
    return values;
}

core::Result<std::vector<std::int32_t>> FrameReader::compressedValues(int frame) const {
    const auto bytes = compressedFrame(frame);
    if (!bytes) return tl::make_unexpected(bytes.error());
    auto decoded = decode(*bytes, *m_scanned);
    if (!decoded) return tl::make_unexpected(decoded.error());
    std::vector<std::int32_t> values = std::move(decoded->wide);
    if (values.empty()) values.assign(decoded->words.begin(), decoded->words.end());
    for (std::int32_t& value : values)
        value = storedValue(static_cast<std::uint32_t>(value), *m_scanned->format);
    return values;
}

} // namespace gauge::dicomio
