// One content item of a Structured Report (PS3.3 C.17.3) without the toolkit: what the writer encodes and the
// reader decodes (content_coding.h).
#pragma once

#include "dicomio/report/report_content.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace gauge::dicomio {

enum class Relation {
    Root,
    Contains,
    HasObsContext,
    HasAcqContext,
    HasConceptMod,
    HasProperties,
    InferredFrom,
    SelectedFrom,
    Other
};
enum class ValueType {
    Container,
    Text,
    Code,
    Num,
    UidRef,
    PName,
    DateTime,
    Date,
    Time,
    Image,
    Composite,
    Scoord,
    Scoord3d,
    Other
};

/// The words of the file: "HAS OBS CONTEXT", "SCOORD3D"… Other is "".
std::string_view word(Relation relation);
std::string_view word(ValueType type);
Relation relationFrom(std::string_view word);
ValueType valueTypeFrom(std::string_view word);

struct ContentItem {
    Relation relation = Relation::Contains;
    ValueType type = ValueType::Container;
    std::optional<Code> name;
    std::string text;                        ///< TEXT, UIDREF, PNAME, DATETIME, DATE, TIME
    std::optional<Code> code;                ///< value of CODE, unit of NUM
    std::optional<double> number;            ///< NUM
    std::string sopClassUid, sopInstanceUid; ///< IMAGE, COMPOSITE
    std::vector<int> frames;                 ///< 1-based, as in the file
    std::string graphicType;                 ///< SCOORD, SCOORD3D
    std::vector<double> graphicData;
    std::string frameOfReferenceUid;
    std::string observationTime; ///< DT of the file
    std::string templateId;      ///< of a CONTAINER: "1500"
    std::vector<ContentItem> children;

    ContentItem& add(ContentItem child) { return children.emplace_back(std::move(child)); }
};

// Makers, by value type.
ContentItem container(Relation relation, const Code& name, std::string templateId = {});
ContentItem textItem(Relation relation, const Code& name, std::string text);
ContentItem codeItem(Relation relation, const Code& name, const Code& value);
ContentItem numItem(Relation relation, const Code& name, double value, const Code& unit);
ContentItem uidItem(Relation relation, const Code& name, std::string uid);
ContentItem nameItem(Relation relation, const Code& name, std::string person);

/// ISO 8601 ("2026-01-05T10:15:00.25+01:00", or a part of it) as DICOM writes moments, and back. Empty for
/// what is no time.
struct DicomTime {
    std::string date;   ///< YYYYMMDD
    std::string time;   ///< HHMMSS.FFFFFF
    std::string offset; ///< +0100, or empty
    std::string dateTime() const { return date + time + offset; }
};
DicomTime dicomTime(std::string_view iso);
std::string isoTime(std::string_view dicomDateTime);

} // namespace gauge::dicomio
