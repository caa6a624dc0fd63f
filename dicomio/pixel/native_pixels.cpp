#include "dicomio/pixel/native_pixels.h"

#include <algorithm>
#include <bit>
#include <cstring>
#include <utility>

namespace gauge::dicomio {
namespace {

static_assert(std::endian::native == std::endian::little, "words are read as little endian");

core::Result<void> unreadable() {
    return core::failure(core::ErrorCode::FileUnreadable,
                         describe(tags::PixelData) + " cannot be read: the file changed or the disk failed.",
                         {{"tag", describe(tags::PixelData)}});
}

void swapBytes(std::span<std::byte> bytes, std::size_t size) {
    for (std::size_t at = 0; at + size <= bytes.size(); at += size)
        std::reverse(bytes.begin() + static_cast<std::ptrdiff_t>(at),
                     bytes.begin() + static_cast<std::ptrdiff_t>(at + size));
}

} // namespace

core::Result<NativePixels> NativePixels::open(const ScannedFile& scanned) {
    auto file = RegularFile::open(scanned.path);
    if (!file) return tl::make_unexpected(file.error());
    NativePixels pixels(scanned, std::move(*file));
    if (!scanned.syntax.deflated) return pixels;
    auto again = RegularFile::open(scanned.path);
    if (!again) return tl::make_unexpected(again.error());
    pixels.m_inflating = std::make_unique<Inflating>(std::move(*again));
    if (scanned.pixels->native.length > kInflateBudgetBytes) return pixels;
    std::vector<std::byte> whole(static_cast<std::size_t>(scanned.pixels->native.length));
    if (!pixels.inflate(0, whole)) return tl::make_unexpected(unreadable().error());
    pixels.m_whole = std::move(whole);
    pixels.m_inflating.reset();
    return pixels;
}

bool NativePixels::inflate(std::uint64_t offset, std::span<std::byte> out) const {
    const ByteRange& native = m_scanned->pixels->native;
    const std::uint64_t place = native.offset + offset;
    const std::lock_guard lock(m_inflating->mutex);
    auto& stream = m_inflating->stream;
    if (!stream || stream->position() > place)
        stream = std::make_unique<InflateStream>(m_inflating->file, m_scanned->datasetOffset,
                                                 native.offset + native.length + kInflateBudgetBytes);
    return stream->skip(place - stream->position()) && stream->read(out);
}

bool NativePixels::fill(std::uint64_t offset, std::span<std::byte> out) const {
    if (m_inflating) return inflate(offset, out);
    if (m_whole.empty()) return m_file.read(m_scanned->pixels->native.offset + offset, out);
    std::memcpy(out.data(), m_whole.data() + offset, out.size());
    return true;
}

core::Result<void> NativePixels::read(std::uint64_t offset, std::span<std::byte> out) const {
    const std::uint64_t length = m_scanned->pixels->native.length;
    if (offset > length || out.size() > length - offset) return unreadable();
    const auto wordBytes = static_cast<std::size_t>(m_scanned->format->bitsAllocated) / 8;
    const bool inWords = wordBytes <= 1 && m_scanned->pixels->vr == "OW";
    if (!m_scanned->syntax.bigEndian || !inWords) {
        if (!fill(offset, out)) return unreadable();
        if (m_scanned->syntax.bigEndian && wordBytes > 1) swapBytes(out, wordBytes);
        return {};
    }
    // PS3.5 8.1.2: two bytes to a word, whose bytes are swapped, so whole words are read.
    const std::uint64_t begin = offset / 2 * 2, end = std::min(length, (offset + out.size() + 1) / 2 * 2);
    std::vector<std::byte> words(static_cast<std::size_t>(end - begin));
    if (!fill(begin, words)) return unreadable();
    swapBytes(words, 2);
    std::memcpy(out.data(), words.data() + (offset - begin), out.size());
    return {};
}

} // namespace gauge::dicomio
