#include "dicomio/scan/walker.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;

constexpr std::uint32_t kUndefinedLength = 0xFFFFFFFF;
constexpr std::uint32_t kMaxKeptBytes = 64 * 1024;
constexpr std::uint32_t kMaxLookupBytes = 256 * 1024; // 65536 entries of 16 bits, and room for segments
// What all kept attributes together may take, values and their places in memory.
constexpr std::size_t kKeptBudgetBytes = std::size_t{160} << 20;
constexpr std::size_t kPlaceBytes = 200;
constexpr std::uint32_t kMaxTableBytes = 8 * 1024 * 1024;

constexpr std::string_view kLongVrs[] = {"OB", "OD", "OF", "OL", "OV", "OW", "SQ",
                                         "SV", "UC", "UN", "UR", "UT", "UV"};
constexpr std::string_view kShortVrs[] = {"AE", "AS", "AT", "CS", "DA", "DS", "DT", "FD", "FL", "IS", "LO",
                                          "LT", "PN", "SH", "SL", "SS", "ST", "TM", "UI", "UL", "US"};

bool contains(std::span<const std::string_view> all, std::string_view vr) {
    return std::find(all.begin(), all.end(), vr) != all.end();
}

/// Bytes of one value, for turning big-endian values round; 1 for text and bytes.
std::size_t valueSize(std::string_view vr) {
    if (vr == "US" || vr == "SS" || vr == "OW" || vr == "AT") return 2;
    if (vr == "UL" || vr == "SL" || vr == "FL" || vr == "OF" || vr == "OL") return 4;
    if (vr == "FD" || vr == "OD" || vr == "OV" || vr == "UV" || vr == "SV") return 8;
    return 1;
}

std::uint32_t mostBytes(Tag tag) {
    using namespace tags;
    if (tag == ExtendedOffsetTable || tag == ExtendedOffsetTableLengths) return kMaxTableBytes;
    for (const Tag lookup : {RedPaletteData, GreenPaletteData, BluePaletteData, SegmentedRedPaletteData,
                             SegmentedGreenPaletteData, SegmentedBluePaletteData, LutData})
        if (tag == lookup) return kMaxLookupBytes;
    return kMaxKeptBytes;
}

void turnRound(std::string& bytes, std::size_t size) {
    for (std::size_t at = 0; at + size <= bytes.size(); at += size)
        std::reverse(bytes.begin() + static_cast<std::ptrdiff_t>(at),
                     bytes.begin() + static_cast<std::ptrdiff_t>(at + size));
}

std::string printable(const std::byte* p) {
    std::string s;
    for (int i = 0; i < 2; ++i) {
        const auto c = static_cast<char>(p[i]);
        s += (c >= 0x20 && c < 0x7f) ? c : '?';
    }
    return s;
}

} // namespace

std::uint16_t Walker::u16(const std::byte* p) const {
    const auto a = static_cast<unsigned>(p[0]), b = static_cast<unsigned>(p[1]);
    return static_cast<std::uint16_t>(m_encoding.bigEndian ? (a << 8 | b) : (b << 8 | a));
}

std::uint32_t Walker::u32(const std::byte* p) const {
    const std::uint32_t a = u16(p), b = u16(p + 2);
    return m_encoding.bigEndian ? (a << 16 | b) : (b << 16 | a);
}

tl::unexpected<core::Error> Walker::damaged(const std::string& finding) const {
    return failure(ErrorCode::FileDamaged, finding, {{"offset", std::to_string(m_in.position())}});
}

tl::unexpected<core::Error> Walker::endsInside(const std::string& what) const {
    return damaged("The file ends, or its part ends, inside " + what + " at byte " +
                   std::to_string(m_in.position()) + ": it is truncated or a length in it is wrong.");
}

bool Walker::readBounded(std::span<std::byte> out, const Frame& frame) {
    if (frame.end && (m_in.position() > *frame.end || out.size() > *frame.end - m_in.position()))
        return false;
    return m_in.read(out);
}

core::Result<Walker::Header> Walker::readHeader(const Frame& frame) {
    std::array<std::byte, 8> bytes{};
    if (!readBounded(bytes, frame)) return endsInside("the head of an attribute");
    Header header;
    header.tag = {u16(bytes.data()), u16(bytes.data() + 2)};
    if (header.tag.group == tags::Item.group || !frame.explicitVr) {
        header.length = u32(bytes.data() + 4);
        return header;
    }
    header.vr = printable(bytes.data() + 4);
    if (contains(kShortVrs, header.vr)) {
        header.length = u16(bytes.data() + 6);
        return header;
    }
    // PS3.5 7.1.2: every other value representation, later ones included, has a length of 32 bits.
    const auto capital = [](char c) { return c >= 'A' && c <= 'Z'; };
    if (!contains(kLongVrs, header.vr) && !(capital(header.vr[0]) && capital(header.vr[1])))
        return damaged(describe(header.tag) + " has the value representation \"" + header.vr + "\" at byte " +
                       std::to_string(m_in.position() - 4) +
                       ", which is none of the standard's (PS3.5 6.2).");
    std::array<std::byte, 4> length{};
    if (!readBounded(length, frame)) return endsInside("the head of " + describe(header.tag));
    header.length = u32(length.data());
    return header;
}

core::Result<void> Walker::fits(const Header& header, const Frame& frame) const {
    if (header.length == kUndefinedLength) return {};
    const auto end = frame.end ? frame.end : m_in.length();
    if (!end || header.length <= *end - std::min(*end, m_in.position())) return {};
    return damaged(
        describe(header.tag) + " claims " + std::to_string(header.length) + " bytes at byte " +
        std::to_string(m_in.position()) + ", but only " +
        std::to_string(*end - std::min(*end, m_in.position())) + " are left in " +
        (frame.depth > 0 ? "its sequence item." : "the file: it is truncated or the length is wrong."));
}

std::optional<std::uint64_t> Walker::endOf(std::uint32_t length) const {
    return length == kUndefinedLength ? std::nullopt : std::optional(m_in.position() + length);
}

core::Result<void> Walker::walkMeta(const RegularFile& file, Dataset& meta) {
    const Frame frame{m_in.length(), 0, true, false};
    std::array<std::byte, 2> next{};
    while (!m_in.atEnd()) {
        if (!file.read(m_in.position(), next) || u16(next.data()) != 0x0002) return {};
        const auto header = readHeader(frame);
        if (!header) return tl::make_unexpected(header.error());
        if (auto done = walkElement(*header, &meta, frame); !done) return done;
    }
    return {};
}

core::Result<void> Walker::walk(Dataset& dataset) {
    return walkElements(&dataset, {m_in.length(), 0, m_encoding.explicitVr, false});
}

core::Result<void> Walker::walkElements(Dataset* keep, const Frame& frame) {
    for (;;) {
        if (!frame.delimited && (frame.end && frame.depth > 0 ? m_in.position() >= *frame.end : m_in.atEnd()))
            return {};
        const bool afterPixels = frame.depth == 0 && m_pixels.has_value();
        const auto header = readHeader(frame);
        core::Result<void> done;
        if (!header)
            done = tl::make_unexpected(header.error());
        else if (frame.delimited && header->tag == tags::ItemDelimitation)
            return {};
        else
            done = walkElement(*header, keep, frame);
        if (!done && afterPixels && !m_tooDeep) {
            m_trailing = true; // everything that is needed stands before the pixels
            return {};
        }
        if (!done) return done;
    }
}

core::Result<void> Walker::walkElement(const Header& header, Dataset* keep, const Frame& frame) {
    if (header.tag.group == tags::Item.group)
        return damaged("A sequence mark " + describe(header.tag) +
                       " stands outside of a sequence, before byte " + std::to_string(m_in.position()) + ".");
    if (auto fitting = fits(header, frame); !fitting) return fitting;
    const bool topPixels = header.tag == tags::PixelData && frame.depth == 0;
    const bool bytes = header.vr == "OB" || header.vr == "OW";
    if (header.length == kUndefinedLength && (bytes || (topPixels && header.vr != "SQ"))) {
        if (!topPixels) return walkFragments(header, nullptr, frame);
        if (m_pixels) return damaged(describe(header.tag) + " occurs twice.");
        m_pixels.emplace();
        return walkFragments(header, &*m_pixels, frame);
    }
    if (topPixels) return takeNativePixels(header);
    const bool wanted = keep && isWanted(header.tag);
    if (header.vr == "SQ" || header.length == kUndefinedLength ||
        (header.vr.empty() && isSequence(header.tag))) {
        if (!header.vr.empty() && header.vr != "SQ" && header.vr != "UN")
            return damaged(describe(header.tag) + " of value representation " + header.vr +
                           " has no length, which only sequences may lack.");
        const bool known = wanted && isSequence(header.tag) && !keep->has(header.tag);
        std::vector<Dataset>* items = known ? &keep->add(header.tag, {"SQ", {}, {}}).items : nullptr;
        return walkSequence(header, items, frame);
    }
    if (wanted && !isSequence(header.tag) && !keep->has(header.tag)) return keepValue(header, *keep, frame);
    if ((header.vr.empty() || header.vr == "UN") && header.length >= 8)
        return walkUnknownImplicit(header, frame);
    return m_in.skip(header.length) ? core::Result<void>{}
                                    : core::Result<void>(endsInside(describe(header.tag)));
}

core::Result<void> Walker::keepValue(const Header& header, Dataset& keep, const Frame&) {
    if (header.length > mostBytes(header.tag))
        return damaged(describe(header.tag) + " claims a value of " + std::to_string(header.length) +
                       " bytes, far more than it can need.");
    m_keptBytes += header.length + kPlaceBytes;
    if (m_keptBytes > kKeptBudgetBytes)
        return damaged("The attributes of the file take more than " + std::to_string(kKeptBudgetBytes) +
                       " bytes, far more than an image can need.");
    std::string value(header.length, '\0');
    if (!m_in.read(std::as_writable_bytes(std::span(value)))) return endsInside(describe(header.tag));
    if (m_encoding.bigEndian) turnRound(value, valueSize(header.vr));
    keep.add(header.tag, {header.vr.empty() ? "UN" : header.vr, std::move(value), {}});
    return {};
}

core::Result<void> Walker::takeNativePixels(const Header& header) {
    if (m_pixels) return damaged(describe(header.tag) + " occurs twice.");
    m_pixels.emplace();
    m_pixels->native = {m_in.position(), header.length};
    m_pixels->vr = header.vr;
    return m_in.skip(header.length) ? core::Result<void>{}
                                    : core::Result<void>(endsInside(describe(header.tag)));
}

core::Result<void> Walker::walkSequence(const Header& header, std::vector<Dataset>* keep,
                                        const Frame& frame) {
    if (frame.depth >= kMaxNesting) {
        m_tooDeep = true;
        return damaged("Sequences are nested deeper than " + std::to_string(kMaxNesting) +
                       " levels, at byte " + std::to_string(m_in.position()) + ".");
    }
    const bool open = header.length == kUndefinedLength;
    const auto end = open ? frame.end : endOf(header.length);
    // PS3.5 6.2.2: a sequence hidden in UN is encoded implicitly.
    const bool explicitVr = frame.explicitVr && header.vr != "UN";
    while (open || m_in.position() < *end) {
        const auto item = readHeader({end, frame.depth + 1, explicitVr, false});
        if (!item) return endsInside("the sequence " + describe(header.tag));
        if (open && item->tag == tags::SequenceDelimitation) return {};
        if (item->tag != tags::Item)
            return damaged("The sequence " + describe(header.tag) + " holds " + describe(item->tag) +
                           " before byte " + std::to_string(m_in.position()) +
                           " where an item must start: a length before it is wrong.");
        const Frame inside{end, frame.depth + 1, explicitVr, false};
        if (auto fitting = fits(*item, inside); !fitting) return fitting;
        Dataset* kept = nullptr;
        if (keep) {
            if (++m_keptItems > kMaxKeptItems)
                return damaged("The file has more than " + std::to_string(kMaxKeptItems) +
                               " sequence items.");
            kept = &keep->emplace_back();
        }
        const bool delimited = item->length == kUndefinedLength;
        const auto itemEnd = delimited ? end : endOf(item->length);
        if (auto walked = walkElements(kept, {itemEnd, frame.depth + 1, explicitVr, delimited}); !walked)
            return walked;
    }
    return {};
}

// An implicit file does not say which of its attributes are sequences, nor does an attribute of unknown
// representation (UN). One that the readers do not know, and whose value starts like a sequence, is walked
// for its depth; bytes that merely look alike are no fault.
core::Result<void> Walker::walkUnknownImplicit(const Header& header, const Frame& frame) {
    const std::uint64_t end = m_in.position() + header.length;
    std::array<std::byte, 4> first{};
    if (!m_in.read(first)) return endsInside(describe(header.tag));
    if (Tag{u16(first.data()), u16(first.data() + 2)} == tags::Item) {
        const Frame inside{end, frame.depth + 1, false, false};
        std::array<std::byte, 4> length{};
        if (!readBounded(length, inside)) return endsInside(describe(header.tag));
        const std::uint32_t itemLength = u32(length.data());
        const bool delimited = itemLength == kUndefinedLength;
        core::Result<void> walked;
        if (frame.depth >= kMaxNesting) {
            m_tooDeep = true;
            walked = damaged("Sequences are nested deeper than " + std::to_string(kMaxNesting) + " levels.");
        } else if (delimited || itemLength <= end - m_in.position()) {
            const auto itemEnd = delimited ? end : m_in.position() + itemLength;
            walked = walkElements(nullptr, {itemEnd, frame.depth + 1, false, delimited});
            if (walked && m_in.position() < end)
                walked = walkSequence({header.tag, {}, static_cast<std::uint32_t>(end - m_in.position())},
                                      nullptr, frame);
        }
        if (!walked && m_tooDeep) return walked;
    }
    const std::uint64_t at = m_in.position();
    if (at > end || !m_in.skip(end - at)) return endsInside(describe(header.tag));
    return {};
}

core::Result<void> Walker::walkFragments(const Header& header, PixelLocation* keep, const Frame& frame) {
    if (keep) keep->encapsulated = true;
    bool first = true;
    for (;; first = false) {
        const auto item = readHeader({frame.end, frame.depth + 1, true, false});
        if (!item) return endsInside("the encapsulated " + describe(header.tag));
        if (item->tag == tags::SequenceDelimitation) return {};
        if (item->tag != tags::Item || item->length == kUndefinedLength)
            return damaged("The encapsulated " + describe(header.tag) + " holds " + describe(item->tag) +
                           " before byte " + std::to_string(m_in.position()) +
                           " where a fragment must start.");
        if (auto fitting = fits(*item, {frame.end, frame.depth, true, false}); !fitting) return fitting;
        if (keep && first) {
            if (auto taken = takeOffsets(item->length, *keep, frame); !taken) return taken;
            continue;
        }
        if (keep && keep->fragments.size() >= kMaxFragments)
            return damaged(describe(header.tag) + " has more than " + std::to_string(kMaxFragments) +
                           " fragments.");
        if (keep) keep->fragments.push_back({m_in.position(), item->length});
        if (!m_in.skip(item->length)) return endsInside("a fragment of " + describe(header.tag));
    }
}

core::Result<void> Walker::takeOffsets(std::uint32_t length, PixelLocation& pixels, const Frame& frame) {
    if (length > kMaxTableBytes || length % 4 != 0)
        return damaged("The basic offset table has " + std::to_string(length) +
                       " bytes, which is no table of offsets.");
    std::vector<std::byte> bytes(length);
    if (!readBounded(bytes, frame)) return endsInside("the basic offset table");
    for (std::size_t at = 0; at < bytes.size(); at += 4)
        pixels.frameOffsets.push_back(u32(bytes.data() + at));
    return {};
}

} // namespace gauge::dicomio
