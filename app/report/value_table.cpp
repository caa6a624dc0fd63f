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
    for (const core::RecordedValue& value : record.values) {
        const Json one = lineOf(record, value);
        line(valueColumns(), [&one](const std::string& head) {
            return csvCell(one.contains(head) ? one.at(head) : one.at("components").at(head));
        });
    }
    return csv;
}

Json valuesJson(const core::CaseRecord& record) {
    Json lines = Json::array();
    for (const core::RecordedValue& value : record.values)
        lines.push_back(lineOf(record, value));
    return lines;
}

} // namespace gauge::app
