#include "dicomio/pixel/frame_reader.h"

#include "dicomio/pixel/codestream_header.h"
#include "dicomio/pixel/decoders.h"

#include <algorithm>
#include <cstring>
#include <utility>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;

constexpr std::size_t kPieceBytes = std::size_t{1} << 18;

/// The format as a decoder fills it: everything but RLE puts samples into the low bits.
core::Result<void> checkFormat(const ScannedFile& scanned) {
    const PixelFormat& format = *scanned.format;
    if (format.bitsAllocated > 32)
        return failure(ErrorCode::ObjectUnsupported,
                       describe(tags::BitsAllocated) + " is " + std::to_string(format.bitsAllocated) +
                           "; at most 32 can be read.",
                       {{"tag", describe(tags::BitsAllocated)}});
    const bool native = !scanned.syntax.encapsulated();
    const std::uint64_t most = native ? kMaxNativeSamples : kMaxCompressedSamples;
    const std::uint64_t samples =
        format.pixelsPerFrame() * static_cast<std::uint64_t>(format.samplesPerPixel);
    if (samples > most)
        return failure(ErrorCode::ObjectUnsupported,
                       "A frame of " + std::to_string(format.columns) + " x " + std::to_string(format.rows) +
                           " pixels with " + std::to_string(format.samplesPerPixel) +
                           " samples is larger than what is read here (" + std::to_string(most) +
                           " samples).",
                       {{"tag", describe(tags::Rows)}});
    if (!native && scanned.syntax.coding != PixelCoding::Rle && format.highBit + 1 != format.bitsStored)
        return failure(ErrorCode::AttributeInvalid,
                       describe(tags::HighBit) + " is " + std::to_string(format.highBit) + " and " +
                           describe(tags::BitsStored) + " is " + std::to_string(format.bitsStored) +
                           ", but " + scanned.syntax.name + " has its samples in the lowest bits.",
                       {{"tag", describe(tags::HighBit)}});
    return {};
}

std::uint32_t wordAt(const std::byte* p, std::size_t size) {
    std::uint32_t word = 0;
    std::memcpy(&word, p, size);
    return word;
}

tl::unexpected<core::Error> noSuchFrame(int frame, int count) {
    return failure(ErrorCode::InvalidArgument, "Frame " + std::to_string(frame + 1) +
                                                   " does not exist; the image has " + std::to_string(count) +
                                                   (count == 1 ? " frame." : " frames."));
}

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
        return failure(
            ErrorCode::TransferSyntaxUnsupported,
            describe(tags::TransferSyntaxUid) + " is " + scanned.syntax.uid + " (" + scanned.syntax.name +
                "), which cannot be decoded; have the image sent uncompressed, or as JPEG, JPEG-LS, "
                "JPEG 2000 or RLE.",
            {{"tag", describe(tags::TransferSyntaxUid)}, {"value", scanned.syntax.uid}});
    if (auto checked = checkFormat(scanned); !checked) return tl::make_unexpected(checked.error());
    FrameReader reader(scanned);
    if (auto prepared = reader.prepare(); !prepared) return tl::make_unexpected(prepared.error());
    return reader;
}

core::Result<void> FrameReader::prepare() {
    if (!m_scanned->pixels->encapsulated) {
        auto native = NativePixels::open(*m_scanned);
        if (!native) return tl::make_unexpected(native.error());
        m_native.emplace(std::move(*native));
        m_colour = dicomio::codedColour(*m_scanned, {}, m_notices);
        return {};
    }
    auto file = RegularFile::open(m_scanned->path);
    if (!file) return tl::make_unexpected(file.error());
    m_file.emplace(std::move(*file));
    auto frames = fragmentsOfFrames(*m_scanned, *m_file);
    if (!frames) return tl::make_unexpected(frames.error());
    m_frames = std::move(*frames);
    if (m_scanned->format->samplesPerPixel == 1) return {};
    const auto first = compressedFrame(0);
    if (!first) return tl::make_unexpected(first.error());
    m_colour = dicomio::codedColour(*m_scanned, *first, m_notices);
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
        if (!m_file->read(fragments[f].offset, std::span(bytes).subspan(at, length)))
            return failure(ErrorCode::FileUnreadable,
                           describe(tags::PixelData) +
                               " cannot be read: the file changed or the disk failed.",
                           {{"tag", describe(tags::PixelData)}});
        at += length;
    }
    return bytes;
}

core::Result<std::vector<std::int32_t>> FrameReader::decode(int frame) const {
    const auto bytes = compressedFrame(frame);
    if (!bytes) return tl::make_unexpected(bytes.error());
    const PixelCoding coding = m_scanned->syntax.coding;
    if (auto checked = checkCodestream(*bytes, coding, *m_scanned->format); !checked)
        return tl::make_unexpected(checked.error());
    return coding == PixelCoding::Jpeg2000
               ? decodeJpeg2000(withoutWrapper(*bytes, coding), *m_scanned->format)
               : decodeByToolkit(*bytes, m_scanned->syntax, *m_scanned->format);
}

core::Result<void> FrameReader::decodeGrey(int frame, std::span<std::uint16_t> out) const {
    const PixelCoding coding = m_scanned->syntax.coding;
    if (coding == PixelCoding::Jpeg2000) {
        const auto decoded = decode(frame);
        if (!decoded) return tl::make_unexpected(decoded.error());
        std::transform(decoded->begin(), decoded->end(), out.begin(),
                       [](std::int32_t word) { return static_cast<std::uint16_t>(word); });
        return {};
    }
    const auto bytes = compressedFrame(frame);
    if (!bytes) return tl::make_unexpected(bytes.error());
    if (auto checked = checkCodestream(*bytes, coding, *m_scanned->format); !checked) return checked;
    return coding == PixelCoding::Rle ? decodeGreyRle(*bytes, *m_scanned->format, out)
                                      : decodeGreyByToolkit(*bytes, m_scanned->syntax, *m_scanned->format, out);
}

core::Result<void> FrameReader::readWords(int frame, std::span<std::uint16_t> out) const {
    return readWords(frame, out, [](std::span<std::uint16_t>) {});
}

core::Result<void> FrameReader::readWords(int frame, std::span<std::uint16_t> out,
                                          const std::function<void(std::span<std::uint16_t>)>& done) const {
    constexpr std::size_t kPieceWords = 32768; // 64 KiB
    const PixelFormat& format = *m_scanned->format;
    const bool fits =
        format.samplesPerPixel == 1 && (format.bitsAllocated == 8 || format.bitsAllocated == 16);
    if (!fits || frame < 0 || frame >= format.frames || out.size() != format.pixelsPerFrame())
        return failure(ErrorCode::ObjectUnsupported,
                       "Its pixels are not greyscale in 8 or 16 bits, or frame " + std::to_string(frame + 1) +
                           " does not exist.");
    if (!m_native) {
        auto decoded = decodeGrey(frame, out);
        if (decoded) done(out);
        return decoded;
    }
    const std::uint64_t offset = static_cast<std::uint64_t>(frame) * format.frameBytes();
    for (std::size_t at = 0; format.bitsAllocated == 16 && at < out.size(); at += kPieceWords) {
        const auto piece = out.subspan(at, std::min(kPieceWords, out.size() - at));
        if (auto read = m_native->read(offset + 2 * at, std::as_writable_bytes(piece)); !read) return read;
        done(piece);
    }
    if (format.bitsAllocated == 16) return {};
    std::vector<std::byte> bytes(out.size());
    if (auto read = m_native->read(offset, bytes); !read) return read;
    std::transform(bytes.begin(), bytes.end(), out.begin(),
                   [](std::byte b) { return static_cast<std::uint16_t>(b); });
    done(out);
    return {};
}

core::Result<std::vector<std::int32_t>> FrameReader::readValues(int frame) const {
    if (frame < 0 || frame >= m_scanned->format->frames) return noSuchFrame(frame, m_scanned->format->frames);
    if (!m_native) return compressedValues(frame);
    return m_scanned->format->bitsAllocated == 1 ? oneBitValues(frame) : nativeValues(frame);
}

core::Result<std::vector<std::int32_t>> FrameReader::oneBitValues(int frame) const {
    // PS3.5 8.1.1: packed without gaps, also between frames.
    const std::uint64_t samples = m_scanned->format->samplesPerFrame();
    const std::uint64_t firstBit = static_cast<std::uint64_t>(frame) * samples;
    std::vector<std::int32_t> values(static_cast<std::size_t>(samples));
    std::vector<std::byte> bytes(static_cast<std::size_t>((firstBit + samples + 7) / 8 - firstBit / 8));
    if (auto read = m_native->read(firstBit / 8, bytes); !read) return tl::make_unexpected(read.error());
    for (std::size_t i = 0; i < values.size(); ++i) {
        const std::uint64_t bit = firstBit % 8 + i;
        values[i] = (static_cast<int>(bytes[static_cast<std::size_t>(bit / 8)]) >> (bit % 8)) & 1;
    }
    return values;
}

core::Result<std::vector<std::int32_t>> FrameReader::nativeValues(int frame) const {
    const PixelFormat& format = *m_scanned->format;
    const auto samples = static_cast<std::size_t>(format.samplesPerFrame());
    const auto size = static_cast<std::size_t>(format.bitsAllocated) / 8;
    const bool halved =
        samples != format.pixelsPerFrame() * static_cast<std::uint64_t>(format.samplesPerPixel);
    const auto planes = format.planar && !halved ? static_cast<std::size_t>(format.samplesPerPixel) : 1;
    const std::size_t perPlane = samples / planes;
    std::vector<std::int32_t> values(samples);
    std::vector<std::byte> piece(std::min(kPieceBytes, samples * size) / size * size);
    std::uint64_t offset = static_cast<std::uint64_t>(frame) * format.frameBytes();
    for (std::size_t done = 0; done < samples;) {
        const std::size_t count = std::min(piece.size() / size, samples - done);
        const auto bytes = std::span(piece).first(count * size);
        if (auto read = m_native->read(offset, bytes); !read) return tl::make_unexpected(read.error());
        for (std::size_t i = 0; i < count; ++i) {
            const std::size_t from = done + i;
            values[from % perPlane * planes + from / perPlane] =
                storedValue(wordAt(piece.data() + i * size, size), format);
        }
        done += count;
        offset += bytes.size();
    }
    return values;
}

core::Result<std::vector<std::int32_t>> FrameReader::compressedValues(int frame) const {
    auto values = decode(frame);
    if (!values) return values;
    for (std::int32_t& value : *values)
        value = storedValue(static_cast<std::uint32_t>(value), *m_scanned->format);
    return values;
}

} // namespace gauge::dicomio
