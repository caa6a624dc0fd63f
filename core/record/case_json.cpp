#include "core/record/case_json.h"

#include "core/record/json_reader.h"

#include <cmath>
#include <limits>

namespace gauge::core {
namespace {

using json_reader::Finding;
using json_reader::Object;
using Json = nlohmann::json;

constexpr std::string_view kFormat = "ostium-gauge/case/";
constexpr unsigned long kVersion = 1;

// --- writing ---

Json triple(const Eigen::Vector3d& v) {
    return {v.x(), v.y(), v.z()};
}

template <class T> Json optionalJson(const std::optional<T>& value) {
    return value ? Json(*value) : Json(nullptr);
}

/// The known fields over the unknown ones.
Json over(const UnknownFields& unknown, Json known) {
    Json all = unknown;
    all.update(known);
    return all;
}

Json written(const Mark& mark) {
    return over(mark.unknown, {{"point_lps_mm", triple(mark.point.mm)}, {"revision", mark.revision}});
}

Json written(const ImagesUsed& images) {
    return over(images.unknown, {{"series_uid", images.seriesUid},
                                 {"phase_percent", optionalJson(images.phasePercent)},
                                 {"phase", images.phaseLabel},
                                 {"frame_of_reference_uid", images.frameOfReferenceUid},
                                 {"revision", images.revision}});
}

Json written(const OstiumPlane& ostium) {
    return over(ostium.unknown, {{"point_lps_mm", triple(ostium.plane.point.mm)},
                                 {"normal_lps", triple(ostium.plane.normal.mm)},
                                 {"confirmed", ostium.confirmed},
                                 {"revision", ostium.revision}});
}

Json written(const LandingPlanes& landing) {
    return over(landing.unknown, {{"depths_mm", landing.depthsMm},
                                  {"plug_mm", optionalJson(landing.plugMm)},
                                  {"revision", landing.revision}});
}

Json written(const Provenance& p) {
    return {{"sop_instance_uids", p.sopInstanceUids},
            {"frame_of_reference_uid", p.frameOfReferenceUid},
            {"phase", p.phase},
            {"state", p.state},
            {"author", p.author},
            {"time", p.time}};
}

/// A value that is not finite has no JSON number; null stands for it.
Json numberOrNull(double value) {
    return std::isfinite(value) ? Json(value) : Json(nullptr);
}

Json written(const RecordedValue& value, std::size_t source) {
    Json inputs = Json::array();
    for (const auto& used : value.inputs)
        inputs.push_back({{"id", used.id}, {"revision", used.revision}});
    const auto& c = value.estimate.components;
    return over(value.unknown, {{"id", value.id},
                                {"unit", value.unit},
                                {"value", numberOrNull(value.estimate.value)},
                                {"components",
                                 {{"edge", numberOrNull(c.edge)},
                                  {"plane", numberOrNull(c.plane)},
                                  {"observer", numberOrNull(c.observer)},
                                  {"scale", numberOrNull(c.scale)}}},
                                {"method", value.estimate.method},
                                {"inputs", inputs},
                                {"source", source}});
}

/// Values with the list of their sources, each source written once.
Json written(const std::vector<RecordedValue>& values) {
    Json sources = Json::array(), list = Json::array();
    const Provenance* last = nullptr;
    for (const auto& value : values) {
        if (!last || !(*last == *value.provenance)) sources.push_back(written(*value.provenance));
        last = value.provenance.get();
        list.push_back(written(value, sources.size() - 1));
    }
    return {{"sources", sources}, {"list", list}};
}

template <class T> Json writtenOptional(const std::optional<T>& value) {
    return value ? written(*value) : Json(nullptr);
}

struct EditWriter {
    Json operator()(const SetImages& e) const {
        return {{"edit", "set-images"}, {"images", writtenOptional(e.images)}};
    }
    Json operator()(const SetMark& e) const {
        return {{"edit", "set-mark"}, {"mark", name(e.kind)}, {"content", writtenOptional(e.mark)}};
    }
    Json operator()(const SetOstium& e) const {
        return {{"edit", "set-ostium"}, {"ostium", writtenOptional(e.ostium)}};
    }
    Json operator()(const SetLanding& e) const {
        return {{"edit", "set-landing"}, {"landing", written(e.landing)}};
    }
    Json operator()(const SetValues& e) const {
        return {{"edit", "set-values"}, {"group", e.group}, {"values", written(e.values)}};
    }
    template <class Content> Json operator()(const SetEntry<Content>& e) const {
        return {{"edit", "set-entry"}, {"id", entryInput<Content>(e.id)}};
    }
    template <class Content> Json operator()(const SetSingle<Content>&) const {
        return {{"edit", "set-entry"}, {"id", kEntryName<Content>}};
    }
};

// --- reading ---

Mark readMark(Object o) {
    Mark mark;
    mark.point.mm = o.triple("point_lps_mm");
    mark.revision = o.count("revision");
    mark.unknown = o.unknown();
    return mark;
}

ImagesUsed readImages(Object o) {
    ImagesUsed images;
    images.seriesUid = o.text("series_uid");
    images.phasePercent = o.optionalNumber("phase_percent");
    images.phaseLabel = o.text("phase", true);
    images.frameOfReferenceUid = o.text("frame_of_reference_uid", true);
    images.revision = o.count("revision");
    images.unknown = o.unknown();
    return images;
}

OstiumPlane readOstium(Object o) {
    OstiumPlane ostium;
    ostium.plane.point.mm = o.triple("point_lps_mm");
    ostium.plane.normal.mm = o.triple("normal_lps");
    constexpr double kUnitTolerance = 1e-6; // written with all digits; anything else is another vector
    if (std::abs(ostium.plane.normal.norm() - 1.0) > kUnitTolerance)
        throw Finding{o.pathOf("normal_lps") + " has the length " +
                      std::to_string(ostium.plane.normal.norm()) + " where a unit vector is needed"};
    ostium.confirmed = o.flag("confirmed");
    ostium.revision = o.count("revision");
    ostium.unknown = o.unknown();
    return ostium;
}

LandingPlanes readLanding(Object o) {
    LandingPlanes landing;
    landing.depthsMm = o.numbers("depths_mm");
    landing.plugMm = o.optionalNumber("plug_mm");
    landing.revision = o.count("revision");
    landing.unknown = o.unknown();
    return landing;
}

Provenance readProvenance(Object o) {
    return {o.texts("sop_instance_uids"), o.text("frame_of_reference_uid", true),
            o.text("phase", true),        o.text("state", true),
            o.text("author", true),       o.text("time", true)};
}

RecordedValue readValue(Object o, const std::vector<std::shared_ptr<const Provenance>>& sources) {
    constexpr double kNotMeasured = std::numeric_limits<double>::quiet_NaN();
    RecordedValue value;
    value.id = o.text("id");
    value.unit = o.text("unit");
    value.estimate.value = o.optionalNumber("value").value_or(kNotMeasured);
    Object c = o.object("components");
    value.estimate.components = {c.optionalNumber("edge").value_or(kNotMeasured),
                                 c.optionalNumber("plane").value_or(kNotMeasured),
                                 c.optionalNumber("observer").value_or(kNotMeasured),
                                 c.optionalNumber("scale").value_or(kNotMeasured)};
    value.estimate.method = o.text("method", true);
    std::size_t n = 0;
    for (const auto& item : o.array("inputs")) {
        Object used(item, o.pathOf("inputs[" + std::to_string(n++) + "]"));
        value.inputs.push_back({used.text("id"), used.count("revision")});
    }
    const std::uint64_t source = o.count("source");
    if (source >= sources.size())
        throw Finding{o.pathOf("source") + " is " + std::to_string(source) + " where there are " +
                      std::to_string(sources.size()) + " sources"};
    value.provenance = sources[source];
    value.unknown = o.unknown();
    return value;
}

std::vector<RecordedValue> readValues(Object o) {
    std::vector<std::shared_ptr<const Provenance>> sources;
    for (const auto& item : o.array("sources"))
        sources.push_back(std::make_shared<const Provenance>(
            readProvenance({item, o.pathOf("sources[" + std::to_string(sources.size()) + "]")})));
    std::vector<RecordedValue> values;
    for (const auto& item : o.array("list"))
        values.push_back(readValue({item, o.pathOf("list[" + std::to_string(values.size()) + "]")}, sources));
    return values;
}

MarkKind readMarkKind(const std::string& word, const std::string& path) {
    if (const auto kind = markKindFrom(word)) return *kind;
    throw Finding{path + " is \"" + word + "\", which is no mark that this version knows"};
}

Edit readEdit(Object& o) {
    const std::string kind = o.text("edit");
    if (kind == "set-images")
        return SetImages{o.has("images") ? std::optional(readImages(o.object("images"))) : std::nullopt};
    if (kind == "set-mark")
        return SetMark{readMarkKind(o.text("mark"), o.pathOf("mark")),
                       o.has("content") ? std::optional(readMark(o.object("content"))) : std::nullopt};
    if (kind == "set-ostium")
        return SetOstium{o.has("ostium") ? std::optional(readOstium(o.object("ostium"))) : std::nullopt};
    if (kind == "set-landing") return SetLanding{readLanding(o.object("landing"))};
    if (kind == "set-values") return SetValues{readValues(o.object("values"))};
    throw Finding{o.pathOf("edit") + " is \"" + kind + "\", which is no edit that this version knows"};
}

CaseRecord readRecord(Object o) {
    CaseRecord record;
    if (o.has("images")) record.images = readImages(o.object("images"));
    Object marks = o.object("marks");
    for (const MarkKind kind : kMarkKinds)
        if (const std::string key(name(kind)); marks.has(key.c_str()))
            record.marks.emplace(kind, readMark(marks.object(key.c_str())));
    if (const Json others = marks.unknown(); !others.empty())
        throw Finding{marks.pathOf(others.begin().key()) + " is no mark that this version knows"};
    if (o.has("ostium")) record.ostium = readOstium(o.object("ostium"));
    record.landing = readLanding(o.object("landing"));
    record.values = readValues(o.object("values"));
    record.unknown = o.unknown();
    return record;
}

JournalEntry readEntry(Object o) {
    JournalEntry entry;
    entry.sequence = o.count("sequence");
    entry.author = o.text("author", true);
    entry.time = o.text("time", true);
    Object change = o.object("change");
    entry.edit = readEdit(change);
    entry.unknown = o.unknown();
    return entry;
}

/// Refuses what is no case, and newer versions.
void checkFormat(const std::string& format) {
    if (!format.starts_with(kFormat))
        throw Finding{"its format is \"" + format + "\", not a case of Ostium Gauge"};
    const std::string version = format.substr(kFormat.size());
    const bool isNumber = !version.empty() && version.size() < 6 &&
                          version.find_first_not_of("0123456789") == std::string::npos;
    if (!isNumber || version == "0")
        throw Finding{"its format is \"" + format + "\", whose version is no number from 1 on"};
    if (std::stoul(version) > kVersion)
        throw Finding{"it was written in version " + version +
                      " of the format, and this program reads up to version " + std::to_string(kVersion) +
                      ". Open it with a newer Ostium Gauge"};
}

tl::unexpected<Error> unreadable(const Finding& finding) {
    return failure(ErrorCode::RecordUnreadable, "Cannot read the case: " + finding.text + ".");
}

} // namespace

Json toJson(const Edit& edit) {
    return std::visit(EditWriter{}, edit);
}

Json toJson(const CaseRecord& record) {
    Json marks = Json::object();
    for (const auto& [kind, mark] : record.marks)
        marks[std::string(name(kind))] = written(mark);
    return over(record.unknown, {{"images", writtenOptional(record.images)},
                                 {"marks", marks},
                                 {"ostium", writtenOptional(record.ostium)},
                                 {"landing", written(record.landing)},
                                 {"values", written(record.values)}});
}

Json toJson(const CaseFile& file) {
    Json entries = Json::array();
    for (const auto& entry : file.journal.entries())
        entries.push_back(over(entry.unknown, {{"sequence", entry.sequence},
                                               {"author", entry.author},
                                               {"time", entry.time},
                                               {"change", toJson(entry.edit)}}));
    return over(file.unknown, {{"format", std::string(kFormat) + std::to_string(kVersion)},
                               {"record", toJson(file.record)},
                               {"journal", entries}});
}

std::string caseText(const CaseFile& file) {
    return toJson(file).dump(1, ' ', false, Json::error_handler_t::replace) + "\n";
}

Result<Edit> editFromJson(const Json& json) {
    try {
        Object o(json, "");
        return readEdit(o);
    } catch (const Finding& finding) {
        return unreadable(finding);
    }
}

Result<CaseFile> caseFromJson(std::string_view text) {
    const Json json = Json::parse(text, nullptr, /*allow_exceptions=*/false);
    if (json.is_discarded()) return unreadable({"the file is no JSON; it may be damaged or cut short"});
    try {
        Object o(json, "");
        checkFormat(o.text("format"));
        CaseFile file;
        file.record = readRecord(o.object("record"));
        std::vector<JournalEntry> entries;
        for (const auto& item : o.array("journal"))
            entries.push_back(readEntry({item, "journal[" + std::to_string(entries.size()) + "]"}));
        auto journal = Journal::fromEntries(std::move(entries));
        if (!journal) return tl::unexpected(journal.error());
        file.journal = std::move(*journal);
        file.unknown = o.unknown();
        return file;
    } catch (const Finding& finding) {
        return unreadable(finding);
    }
}

} // namespace gauge::core
