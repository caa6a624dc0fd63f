// The parts of a case as JSON, one subject a source file: inputs_json.cpp, values_json.cpp, course_json.cpp,
// drawing_json.cpp, choice_json.cpp, access_json.cpp, projection_json.cpp. Put together in edit_json.cpp and case_json.cpp. Private to core/record.
// Readers throw json_reader::Finding.
#pragma once

#include "core/record/edit.h"
#include "core/record/json_reader.h"
#include "core/record/json_writer.h"

#include <optional>
#include <vector>

namespace gauge::core::record_json {

using Json = nlohmann::json;
using json_reader::Finding;
using json_reader::Object;

// Inputs of the CT measurement.
Json written(const Mark& mark);
Json written(const ImagesUsed& images);
Json written(const OstiumPlane& ostium);
Json written(const LandingPlanes& landing);
Mark readMark(Object o);
ImagesUsed readImages(Object o);
OstiumPlane readOstium(Object o);
LandingPlanes readLanding(Object o);

// Values with the list of their sources, each source written once.
Json written(const std::vector<RecordedValue>& values);
std::vector<RecordedValue> readValues(Object o);

// Contents of entries. Every field is written, absent ones as null, so that what a file has beyond them is known.
Json written(const Evidence& evidence);
Json written(const Moment& moment);
Json written(const TypedReading& reading);
Json written(const ReleaseState& state);
Json written(const StasisFinding& finding);
Json written(const Drawing& drawing);
Json written(const CorrectedContour& contour);
Json written(const PictureScale& scale);
Json written(const PoseLandmark& landmark);
Json written(const SizingChoice& choice);
Json written(const ProjectionChoice& choice);
Json written(const Scores& scores);
Json written(const Patient& patient);
Json written(const Decision& decision);
Json written(const SeptumMarks& marks);
Json written(const SeptumPlan& plan);
void read(Object& o, Evidence& evidence);
void read(Object& o, Moment& moment);
void read(Object& o, TypedReading& reading);
void read(Object& o, ReleaseState& state);
void read(Object& o, StasisFinding& finding);
void read(Object& o, Drawing& drawing);
void read(Object& o, CorrectedContour& contour);
void read(Object& o, PictureScale& scale);
void read(Object& o, PoseLandmark& landmark);
void read(Object& o, SizingChoice& choice);
void read(Object& o, ProjectionChoice& choice);
void read(Object& o, Scores& scores);
void read(Object& o, Patient& patient);
void read(Object& o, Decision& decision);
void read(Object& o, SeptumMarks& marks);
void read(Object& o, SeptumPlan& plan);

template <class Content> Json writtenEntry(const Entry<Content>& entry) {
    Json json = written(entry.content);
    json["revision"] = entry.revision;
    return json_writer::over(entry.unknown, std::move(json));
}

template <class Content> Entry<Content> readEntry(Object o) {
    Entry<Content> entry;
    read(o, entry.content);
    entry.revision = o.count("revision");
    Json known = written(entry.content);
    known["revision"] = entry.revision;
    entry.unknown = json_writer::beyond(o.json(), known);
    return entry;
}

template <class T> Json writtenOptional(const std::optional<T>& value) {
    return value ? written(*value) : Json(nullptr);
}

template <class Content> Json writtenEntry(const std::optional<Entry<Content>>& entry) {
    return entry ? writtenEntry(*entry) : Json(nullptr);
}

template <class Content> std::optional<Entry<Content>> readOptionalEntry(Object& o, const char* key) {
    return o.has(key) ? std::optional(readEntry<Content>(o.object(key))) : std::nullopt;
}

/// A moment is known by the state that its circulation names: another id in the file would part readings from it.
template <class Content> void checkId(const std::string&, const Content&, const std::string&) {}
inline void checkId(const std::string& id, const Moment& moment, const std::string& path) {
    if (moment.circulation.state != id)
        throw Finding{path + " describes the moment \"" + moment.circulation.state + "\", not \"" + id + "\""};
}

// edit_json.cpp
Edit readEdit(Object& o);

} // namespace gauge::core::record_json
