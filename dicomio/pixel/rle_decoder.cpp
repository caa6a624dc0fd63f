// RLE of greyscale frames (PS3.5 Annex G): a segment for each byte of the words, the most significant first, each packed as
// runs (PackBits). Written out here because the toolkit's decoder takes several times as long as reading the file; the tests
// hold it to that decoder.
#include "dicomio/pixel/decoders.h"

#include "dicomio/scan/tag.h"

#include <algorithm>
#include <cstring>
#include <string>

namespace gauge::dicomio {
namespace {

std::uint32_t offsetAt(std::span<const std::byte> frame, std::size_t place) {
    std::uint32_t value = 0;
    std::memcpy(&value, frame.data() + place, sizeof value); // little endian, as the machine (native_pixels.cpp)
    return value;
}

/// Fills `out`; false when the segment ends before.
bool unpack(std::span<const std::byte> segment, std::span<std::uint8_t> out) {
    const auto* in = reinterpret_cast<const std::uint8_t*>(segment.data());
    const std::uint8_t* const end = in + segment.size();
    std::uint8_t* to = out.data();
    std::uint8_t* const full = to + out.size();
    while (to < full && in < end) {
        const std::uint8_t control = *in++;
        if (control == 128) continue; // means nothing
        if (control < 128) {
            const auto count = std::min({static_cast<std::ptrdiff_t>(control) + 1, end - in, full - to});
            std::memcpy(to, in, static_cast<std::size_t>(count));
            in += count;
            to += count;
        } else if (in < end) {
            const auto count = std::min(static_cast<std::ptrdiff_t>(257 - control), full - to);
            std::memset(to, *in++, static_cast<std::size_t>(count));
            to += count;
        }
    }
    return to == full;
}

} // namespace

core::Result<void> decodeGreyRle(std::span<const std::byte> frame, const PixelFormat& format, std::span<std::uint16_t> out) {
    constexpr std::size_t kHeaderBytes = 64;
    const auto damaged = [](const std::string& finding) {
        return core::failure(core::ErrorCode::FileDamaged, "Its RLE pixels cannot be decoded: " + finding + ".",
                             {{"tag", describe(tags::PixelData)}});
    };
    const auto segments = static_cast<std::size_t>(format.bitsAllocated) / 8;
    if (segments < 1 || segments > 2 || frame.size() < kHeaderBytes || offsetAt(frame, 0) != segments)
        return damaged("its header does not tell " + std::to_string(segments) + " segments");
    std::vector<std::uint8_t> bytes(segments * out.size());
    for (std::size_t s = 0; s < segments; ++s) {
        const std::size_t begin = offsetAt(frame, 4 + 4 * s),
                          end = s + 1 < segments ? offsetAt(frame, 8 + 4 * s) : frame.size();
        if (begin < kHeaderBytes || begin > end || end > frame.size())
            return damaged("segment " + std::to_string(s + 1) + " lies outside of it");
        if (!unpack(frame.subspan(begin, end - begin), std::span(bytes).subspan(s * out.size(), out.size())))
            return damaged("segment " + std::to_string(s + 1) + " ends before its last pixel");
    }
    const std::uint8_t* high = bytes.data();
    const std::uint8_t* low = bytes.data() + (segments - 1) * out.size();
    std::uint16_t* words = out.data();
    if (segments == 1)
        std::copy(low, low + out.size(), words);
    else
        for (std::size_t i = 0; i < out.size(); ++i)
            words[i] = static_cast<std::uint16_t>(high[i] << 8 | low[i]);
    return {};
}

} // namespace gauge::dicomio
