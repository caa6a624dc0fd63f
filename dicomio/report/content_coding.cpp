#include <dcmtk/config/osconfig.h>

#include "dicomio/report/content_coding.h"

#include "dicomio/scan/character_set.h"

#include <dcmtk/dcmdata/dcdeftag.h>
#include <dcmtk/dcmdata/dcitem.h>
#include <dcmtk/dcmdata/dcsequen.h>
#include <dcmtk/dcmdata/dcvrfd.h>
#include <dcmtk/dcmdata/dcvrfl.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdio>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;
using core::Result;

constexpr std::size_t kShortString = 16, kLongString = 64;

/// Collects whether the toolkit took every value.
class Put {
public:
    explicit Put(DcmItem& into) : m_into(into) {}

    Put& text(const DcmTagKey& tag, const std::string& value) {
        return check(m_into.putAndInsertOFStringArray(tag, value.c_str()), tag);
    }
    DcmItem* item(const DcmTagKey& tag, long place = -2) { // -2 appends
        DcmItem* made = nullptr;
        check(m_into.findOrCreateSequenceItem(tag, made, place), tag);
        return made;
    }
    Put& check(const OFCondition& condition, const DcmTagKey& tag) {
        if (condition.bad() && m_fault.empty())
            m_fault = std::string(tag.toString().c_str()) + ": " + condition.text();
        return *this;
    }
    Result<void> result() const {
        if (m_fault.empty()) return {};
        return failure(ErrorCode::Internal,
                       "Cannot put an attribute into a structured report: " + m_fault + ".");
    }

private:
    DcmItem& m_into;
    std::string m_fault;
};

std::string validText(const std::string& text) {
    static const std::vector<std::string> kUtf8{"ISO_IR 192"};
    std::string out;
    std::size_t start = 0;
    for (std::size_t at = 0; at <= text.size();
         ++at) { // line ends stay; toUtf8 makes other control characters blank
        if (at < text.size() && text[at] != '\n') continue;
        out += toUtf8(std::string_view(text).substr(start, at - start), kUtf8);
        if (at < text.size()) out += "\r\n";
        start = at + 1;
    }
    return out;
}

Result<void> encodeValue(const ContentItem& item, Put& put) {
    switch (item.type) {
    case ValueType::Container:
        put.text(DCM_ContinuityOfContent, "SEPARATE");
        if (!item.templateId.empty()) {
            Put entry(*put.item(DCM_ContentTemplateSequence));
            entry.text(DCM_MappingResource, "DCMR").text(DCM_TemplateIdentifier, item.templateId);
            if (auto done = entry.result(); !done) return done;
        }
        break;
    case ValueType::Text:
        put.text(DCM_TextValue, validText(item.text));
        break;
    case ValueType::UidRef:
        put.text(DCM_UID, item.text);
        break;
    case ValueType::PName:
        put.text(DCM_PersonName, oneLine(item.text, kLongString));
        break;
    case ValueType::DateTime:
        put.text(DCM_DateTime, item.text);
        break;
    case ValueType::Date:
        put.text(DCM_Date, item.text);
        break;
    case ValueType::Time:
        put.text(DCM_Time, item.text);
        break;
    case ValueType::Code:
        return encodeCode(*item.code, *put.item(DCM_ConceptCodeSequence));
    case ValueType::Num: {
        DcmItem* value = put.item(DCM_MeasuredValueSequence);
        Put number(*value);
        number.text(DCM_NumericValue, decimalString(*item.number));
        number.check(value->putAndInsertFloat64(DCM_FloatingPointValue, *item.number),
                     DCM_FloatingPointValue);
        if (auto done = number.result(); !done) return done;
        return encodeCode(*item.code, *number.item(DCM_MeasurementUnitsCodeSequence));
    }
    case ValueType::Image:
    case ValueType::Composite: {
        Put reference(*put.item(DCM_ReferencedSOPSequence));
        reference.text(DCM_ReferencedSOPClassUID, item.sopClassUid)
            .text(DCM_ReferencedSOPInstanceUID, item.sopInstanceUid);
        std::string frames;
        for (const int frame : item.frames)
            frames += (frames.empty() ? "" : "\\") + std::to_string(frame);
        if (!frames.empty()) reference.text(DCM_ReferencedFrameNumber, frames);
        return reference.result();
    }
    case ValueType::Scoord:
    case ValueType::Scoord3d:
        put.text(DCM_GraphicType, item.graphicType);
        if (item.type == ValueType::Scoord3d)
            put.text(DCM_ReferencedFrameOfReferenceUID, item.frameOfReferenceUid);
        break;
    case ValueType::Other:
        break;
    }
    return {};
}

Result<void> encodeGraphic(const ContentItem& item, DcmItem& into) {
    if (item.type != ValueType::Scoord && item.type != ValueType::Scoord3d) return {};
    std::vector<Float32> numbers(item.graphicData.begin(), item.graphicData.end());
    Put put(into);
    put.check(into.putAndInsertFloat32Array(DCM_GraphicData, numbers.data(),
                                            static_cast<unsigned long>(numbers.size())),
              DCM_GraphicData);
    return put.result();
}

// -----------------------------------------------------------------------------------------------------------
// reading

class Decoder {
public:
    Decoder(const std::vector<std::string>& sets, const DecodeLimits& limits, std::size_t& ignored)
        : m_sets(sets), m_limits(limits), m_ignored(ignored) {}

    Result<ContentItem> item(DcmItem& from, int level) {
        if (level > m_limits.levels)
            return failure(ErrorCode::FileDamaged, "its content is nested more than " +
                                                       std::to_string(m_limits.levels) + " levels deep");
        if (++m_count > m_limits.items)
            return failure(ErrorCode::FileDamaged,
                           "it has more than " + std::to_string(m_limits.items) + " content items");
        ContentItem out;
        out.relation = level == 0 ? Relation::Root : relationFrom(text(from, DCM_RelationshipType));
        out.type = valueTypeFrom(text(from, DCM_ValueType));
        out.name = code(from, DCM_ConceptNameCodeSequence);
        out.observationTime = text(from, DCM_ObservationDateTime);
        if (DcmItem* templ = first(from, DCM_ContentTemplateSequence))
            out.templateId = text(*templ, DCM_TemplateIdentifier);
        if (auto done = value(from, out); !done) return tl::unexpected(done.error());
        if (auto done = children(from, out, level); !done) return tl::unexpected(done.error());
        return out;
    }

private:
    std::string text(DcmItem& from, const DcmTagKey& tag) const {
        OFString value;
        if (from.findAndGetOFStringArray(tag, value).bad()) return {};
        std::string out = toUtf8(std::string_view(value.c_str(), value.length()), m_sets);
        out.erase(out.find_last_not_of(std::string(" \0", 2)) + 1);
        out.erase(0, out.find_first_not_of(' '));
        return out;
    }

    /// Keeps line ends.
    std::string longText(DcmItem& from, const DcmTagKey& tag) const {
        OFString value;
        if (from.findAndGetOFStringArray(tag, value).bad()) return {};
        std::string out, line;
        const auto flush = [&] {
            out += toUtf8(line, m_sets);
            line.clear();
        };
        for (const char c : value) {
            if (c == '\n') {
                flush();
                out += '\n';
            } else if (c != '\r')
                line += c;
        }
        flush();
        out.erase(out.find_last_not_of(std::string(" \0", 2)) + 1);
        return out;
    }

    static DcmItem* first(DcmItem& from, const DcmTagKey& tag) {
        DcmItem* found = nullptr;
        return from.findAndGetSequenceItem(tag, found, 0).good() ? found : nullptr;
    }

    std::optional<Code> code(DcmItem& from, const DcmTagKey& tag) const {
        DcmItem* entry = first(from, tag);
        if (entry == nullptr) return std::nullopt;
        Code out{text(*entry, DCM_CodeValue), text(*entry, DCM_CodingSchemeDesignator),
                 text(*entry, DCM_CodeMeaning)};
        if (out.value.empty()) out.value = text(*entry, DCM_LongCodeValue);
        if (out.value.empty()) out.value = text(*entry, DCM_URNCodeValue);
        if (out.value.empty() && out.meaning.empty()) return std::nullopt;
        return out;
    }

    static std::string where(const ContentItem& item) {
        return item.name ? "\"" + item.name->meaning + "\"" : std::string("an item without concept name");
    }

    Result<void> number(DcmItem& from, ContentItem& out) const {
        DcmItem* value = first(from, DCM_MeasuredValueSequence);
        if (value == nullptr) return {}; // a number that was not obtained
        out.code = code(*value, DCM_MeasurementUnitsCodeSequence);
        const std::string decimal = text(*value, DCM_NumericValue);
        double coded = 0.0;
        const char* start = decimal.c_str() + (!decimal.empty() && decimal[0] == '+');
        const auto parsed = std::from_chars(start, decimal.c_str() + decimal.size(), coded);
        if (decimal.empty() || parsed.ec != std::errc{} || parsed.ptr != decimal.c_str() + decimal.size() ||
            !std::isfinite(coded))
            return failure(ErrorCode::AttributeInvalid, where(out) + ": NumericValue (0040,A30A) is \"" +
                                                            decimal + "\", which is no number");
        out.number = coded;
        Float64 exact = 0.0;
        if (value->findAndGetFloat64(DCM_FloatingPointValue, exact).good()) {
            if (!(std::abs(exact - coded) <= lastDigit(decimal)))
                return failure(ErrorCode::AttributeInvalid,
                               where(out) + ": NumericValue (0040,A30A) is " + decimal +
                                   ", but FloatingPointValue (0040,A161) " +
                                   decimalString(std::isfinite(exact) ? exact : 0.0));
            out.number = exact;
        }
        return {};
    }

    /// One unit of the last digit of a decimal string.
    static double lastDigit(const std::string& decimal) {
        const auto e = decimal.find_first_of("eE");
        const std::string mantissa = decimal.substr(0, e);
        const auto point = mantissa.find('.');
        double power = point == std::string::npos ? 0.0 : -static_cast<double>(mantissa.size() - point - 1);
        if (e != std::string::npos) power += std::strtod(decimal.c_str() + e + 1, nullptr);
        return std::pow(10.0, power);
    }

    Result<void> graphic(DcmItem& from, ContentItem& out) const {
        out.graphicType = text(from, DCM_GraphicType);
        out.frameOfReferenceUid = text(from, DCM_ReferencedFrameOfReferenceUID);
        const Float32* data = nullptr;
        unsigned long count = 0;
        const std::size_t tuple = out.type == ValueType::Scoord ? 2 : 3;
        if (from.findAndGetFloat32Array(DCM_GraphicData, data, &count).bad() || data == nullptr ||
            count == 0 || count % tuple != 0)
            return failure(ErrorCode::AttributeInvalid,
                           where(out) + ": GraphicData (0070,0022) holds " + std::to_string(count) +
                               " numbers; a multiple of " + std::to_string(tuple) + " is needed");
        out.graphicData.assign(data, data + count);
        if (!std::all_of(out.graphicData.begin(), out.graphicData.end(),
                         [](double d) { return std::isfinite(d); }))
            return failure(ErrorCode::AttributeInvalid,
                           where(out) +
                               ": GraphicData (0070,0022) holds a coordinate that is no finite number");
        return {};
    }

    Result<void> image(DcmItem& from, ContentItem& out) const {
        DcmItem* reference = first(from, DCM_ReferencedSOPSequence);
        if (reference == nullptr)
            return failure(ErrorCode::AttributeInvalid,
                           where(out) + ": ReferencedSOPSequence (0008,1199) is absent");
        out.sopClassUid = text(*reference, DCM_ReferencedSOPClassUID);
        out.sopInstanceUid = text(*reference, DCM_ReferencedSOPInstanceUID);
        return frames(text(*reference, DCM_ReferencedFrameNumber), out);
    }

    /// Read in one go: the toolkit would parse the whole string for each of its values.
    static Result<void> frames(const std::string& list, ContentItem& out) {
        for (std::size_t at = 0; at < list.size();) {
            const std::size_t end = std::min(list.find('\\', at), list.size());
            std::size_t start = list.find_first_not_of(" +", at);
            start = std::min(start, end);
            int frame = 0;
            std::from_chars(list.data() + start, list.data() + end, frame);
            if (frame < 1)
                return failure(ErrorCode::AttributeInvalid,
                               where(out) + ": ReferencedFrameNumber (0008,1160) is " +
                                   list.substr(at, std::min<std::size_t>(end - at, 20)) +
                                   "; frames count from 1");
            out.frames.push_back(frame);
            at = end + 1;
        }
        return {};
    }

    Result<void> value(DcmItem& from, ContentItem& out) {
        switch (out.type) {
        case ValueType::Container:
            return {};
        case ValueType::Text:
            out.text = longText(from, DCM_TextValue);
            return {};
        case ValueType::UidRef:
            out.text = text(from, DCM_UID);
            return {};
        case ValueType::PName:
            out.text = text(from, DCM_PersonName);
            return {};
        case ValueType::DateTime:
            out.text = text(from, DCM_DateTime);
            return {};
        case ValueType::Date:
            out.text = text(from, DCM_Date);
            return {};
        case ValueType::Time:
            out.text = text(from, DCM_Time);
            return {};
        case ValueType::Code:
            out.code = code(from, DCM_ConceptCodeSequence);
            return {};
        case ValueType::Num:
            return number(from, out);
        case ValueType::Image:
        case ValueType::Composite:
            return image(from, out);
        case ValueType::Scoord:
        case ValueType::Scoord3d:
            return graphic(from, out);
        case ValueType::Other:
            ++m_ignored;
            return {};
        }
        return {};
    }

    Result<void> children(DcmItem& from, ContentItem& out, int level) {
        DcmSequenceOfItems* sequence = nullptr;
        if (from.findAndGetSequence(DCM_ContentSequence, sequence).bad() || sequence == nullptr) return {};
        out.children.reserve(std::min<std::size_t>(sequence->card(), m_limits.items));
        // nextInContainer walks a list; getItem(i) would search it anew each time.
        DcmObject* object = nullptr;
        while ((object = sequence->nextInContainer(object)) != nullptr) {
            auto child = item(*static_cast<DcmItem*>(object), level + 1);
            if (!child) return tl::unexpected(child.error());
            out.children.push_back(std::move(*child));
        }
        return {};
    }

    const std::vector<std::string>& m_sets;
    const DecodeLimits& m_limits;
    std::size_t& m_ignored;
    std::size_t m_count = 0;
};

} // namespace

std::string decimalString(double value) {
    char text[40];
    for (int digits = 17; digits > 0; --digits) {
        const int length = std::snprintf(text, sizeof text, "%.*g", digits, value);
        if (length > 0 && length <= static_cast<int>(kShortString)) break;
    }
    return text;
}

std::string oneLine(const std::string& text, std::size_t longest) {
    std::string valid = toUtf8(text, {"ISO_IR 192"});
    std::replace(valid.begin(), valid.end(), '\\', '/');
    std::size_t characters = 0, at = 0;
    for (; at < valid.size(); ++at) {
        if ((static_cast<unsigned char>(valid[at]) & 0xC0) == 0x80) continue; // within a character
        if (++characters > longest) break;
    }
    return valid.substr(0, at);
}

Result<void> encodeCode(const Code& code, DcmItem& into) {
    Put put(into);
    put.text(code.value.size() <= kShortString ? DCM_CodeValue : DCM_LongCodeValue, code.value);
    put.text(DCM_CodingSchemeDesignator, code.scheme)
        .text(DCM_CodeMeaning, oneLine(code.meaning, kLongString));
    return put.result();
}

Result<void> encode(const ContentItem& item, DcmItem& into) {
    Put put(into);
    if (item.relation != Relation::Root) put.text(DCM_RelationshipType, std::string(word(item.relation)));
    put.text(DCM_ValueType, std::string(word(item.type)));
    if (!item.observationTime.empty()) put.text(DCM_ObservationDateTime, item.observationTime);
    if (item.name)
        if (auto done = encodeCode(*item.name, *put.item(DCM_ConceptNameCodeSequence)); !done) return done;
    if (auto done = encodeValue(item, put); !done) return done;
    if (auto done = encodeGraphic(item, into); !done) return done;
    for (const ContentItem& child : item.children)
        if (auto done = encode(child, *put.item(DCM_ContentSequence)); !done) return done;
    return put.result();
}

Result<ContentItem> decode(DcmItem& item, const std::vector<std::string>& characterSets,
                           const DecodeLimits& limits, std::size_t& ignored) {
    return Decoder(characterSets, limits, ignored).item(item, 0);
}

} // namespace gauge::dicomio
