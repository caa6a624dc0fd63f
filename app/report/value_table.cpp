#include "app/report/value_table.h"

#include <cmath>

namespace gauge::app {
namespace {

using Json = nlohmann::ordered_json;

Json numberOrNull(double value) {
    return std::isfinite(value) ? Json(value) : Json(nullptr);
}

Json lineOf(const core::CaseRecord& record, const core::RecordedValue& value) {
    const core::Estimate& e = value.estimate;
    const core::UncertaintyComponents& c = e.components;
    const core::Provenance& p = *value.provenance;
    return {{"group", value.group},
            {"id", value.id},
            {"value", numberOrNull(e.value)},
            {"unit", value.unit},
            {"standard_uncertainty", numberOrNull(e.standardUncertainty())},
            {"components",
             {{"edge", numberOrNull(c.edge)},
              {"plane", numberOrNull(c.plane)},
              {"observer", numberOrNull(c.observer)},
              {"scale", numberOrNull(c.scale)}}},
            {"method", e.method},
            {"stale", core::isStale(record, value)},
            {"phase", p.phase},
            {"state", p.state},
            {"sop_instance_uids", p.sopInstanceUids},
            {"frame", p.frame ? Json(*p.frame) : Json(nullptr)},
            {"frame_of_reference_uid", p.frameOfReferenceUid},
            {"author", p.author},
            {"time", p.time}};
}

/// A number that was typed in, or read from somebody's report: the same columns, with what is known of it.
Json lineOf(const core::CaseRecord& record, const std::string& id, const core::TypedReading& reading) {
    const core::Observation& o = reading.observation;
    const auto moment = record.moments.find(o.state);
    const core::Stage stage = moment == record.moments.end() ? o.stage : moment->second.content.circulation.stage;
    Json line{{"group", "reading/" + id},
              {"id", std::string(core::word(o.quantity))},
              {"value", numberOrNull(o.valueMm)},
              {"unit", "mm"},
              {"standard_uncertainty", o.standardUncertaintyMm ? numberOrNull(*o.standardUncertaintyMm) : Json(nullptr)},
              {"components", {{"edge", nullptr}, {"plane", nullptr}, {"observer", nullptr}, {"scale", nullptr}}},
              {"method", "typed in: " + std::string(core::plainName(o.modality)) + ", " + std::string(core::plainName(o.derivation)) +
                             (reading.note.empty() ? "" : "; " + reading.note)},
              {"stale", false},
              {"phase", std::string(core::word(o.phase))},
              {"state", std::string(core::plainName(stage))},
              {"sop_instance_uids", Json::array()},
              {"frame", nullptr},
              {"frame_of_reference_uid", ""},
              {"author", ""},
              {"time", ""}};
    return line;
}

/// Every line of the table: what was measured, then what was typed in.
std::vector<Json> linesOf(const core::CaseRecord& record) {
    std::vector<Json> lines;
    for (const core::RecordedValue& value : record.values)
        lines.push_back(lineOf(record, value));
    for (const auto& [id, entry] : record.readings)
        lines.push_back(lineOf(record, id, entry.content));
    return lines;
}

std::string joined(const Json& texts) {
    std::string all;
    for (const Json& text : texts)
        all.append(all.empty() ? "" : " ").append(text.get<std::string>());
    return all;
}

std::string csvCell(const Json& content) {
    if (content.is_null()) return {};
    if (content.is_boolean()) return content.get<bool>() ? "yes" : "no";
    if (content.is_number()) return content.dump(); // the shortest text that reads back as the same number
    if (content.is_array()) return csvText(joined(content));
    return csvText(content.get<std::string>());
}

} // namespace

const std::vector<std::string>& valueColumns() {
    static const std::vector<std::string> columns{
        "group", "id", "value", "unit", "standard_uncertainty", "edge", "plane", "observer", "scale", "method", "stale", "phase",
        "state", "frame", "frame_of_reference_uid", "author", "time", "sop_instance_uids"};
    return columns;
}

std::string csvText(std::string text) {
    constexpr std::string_view kFormulaStarts = "=+-@\t\r";
    if (!text.empty() && kFormulaStarts.find(text.front()) != std::string_view::npos) text.insert(text.begin(), '\'');
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    std::string quoted = "\"";
    for (const char c : text) {
        if (c == '"') quoted += '"';
        quoted += c;
    }
    return quoted + '"';
}

std::string valuesCsv(const core::CaseRecord& record) {
    std::string csv = "\xEF\xBB\xBF";
    const auto line = [&csv](const auto& cells, const auto& textOf) {
        bool first = true;
        for (const auto& cell : cells) {
            if (!first) csv += ',';
            csv += textOf(cell);
            first = false;
        }
        csv += "\r\n";
    };
    line(valueColumns(), [](const std::string& head) { return head; });
    for (const Json& one : linesOf(record)) {
        line(valueColumns(), [&one](const std::string& head) {
            return csvCell(one.contains(head) ? one.at(head) : one.at("components").at(head));
        });
    }
    return csv;
}

Json valuesJson(const core::CaseRecord& record) {
    Json lines = Json::array();
    for (Json& line : linesOf(record))
        lines.push_back(std::move(line));
    return lines;
}

void forgetPersons(core::CaseRecord& record) {
    for (core::RecordedValue& value : record.values) {
        core::Provenance source = *value.provenance;
        source.author.clear();
        value.provenance = std::make_shared<const core::Provenance>(std::move(source));
    }
    for (auto& [id, entry] : record.readings)
        entry.content.note.clear();
}

} // namespace gauge::app
