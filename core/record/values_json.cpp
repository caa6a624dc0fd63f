// Recorded values with the list of their sources.
#include "core/record/record_json.h"

#include <algorithm>
#include <limits>

namespace gauge::core::record_json {

using namespace json_writer;

namespace {

Json writtenSource(const Provenance& p) {
    return {{"sop_instance_uids", p.sopInstanceUids},
            {"frame_of_reference_uid", p.frameOfReferenceUid},
            {"phase", p.phase},
            {"state", p.state},
            {"author", p.author},
            {"time", p.time},
            {"frame", orNull(p.frame)}};
}

Json writtenValue(const RecordedValue& value, std::size_t source) {
    Json inputs = Json::array();
    for (const auto& used : value.inputs)
        inputs.push_back({{"id", used.id}, {"revision", used.revision}});
    const auto& c = value.estimate.components;
    return over(value.unknown, {{"id", value.id},
                                {"group", value.group},
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

Provenance readSource(Object o) {
    Provenance p{o.texts("sop_instance_uids"), o.text("frame_of_reference_uid", true),
                 o.text("phase", true),        o.text("state", true),
                 o.text("author", true),       o.text("time", true)};
    p.frame = o.optionalInteger("frame");
    return p;
}

RecordedValue readValue(Object o, const std::vector<std::shared_ptr<const Provenance>>& sources) {
    constexpr double kNotMeasured = std::numeric_limits<double>::quiet_NaN();
    RecordedValue value;
    value.id = o.text("id");
    // Version 1 had values of the CT only, without a word for it.
    value.group = o.has("group") ? o.text("group") : std::string(kCtValues);
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

} // namespace

Json written(const std::vector<RecordedValue>& values) {
    Json sources = Json::array(), list = Json::array();
    const Provenance* last = nullptr;
    for (const auto& value : values) {
        if (!last || !(*last == *value.provenance)) sources.push_back(writtenSource(*value.provenance));
        last = value.provenance.get();
        list.push_back(writtenValue(value, sources.size() - 1));
    }
    return {{"sources", sources}, {"list", list}};
}

std::vector<RecordedValue> readValues(Object o) {
    std::vector<std::shared_ptr<const Provenance>> sources;
    for (const auto& item : o.array("sources"))
        sources.push_back(std::make_shared<const Provenance>(
            readSource({item, o.pathOf("sources[" + std::to_string(sources.size()) + "]")})));
    std::vector<RecordedValue> values;
    for (const auto& item : o.array("list"))
        values.push_back(readValue({item, o.pathOf("list[" + std::to_string(values.size()) + "]")}, sources));
    // In the record, values of one group stand together, in the order of the groups (edit.cpp).
    std::stable_sort(values.begin(), values.end(), [](const auto& a, const auto& b) { return a.group < b.group; });
    return values;
}

} // namespace gauge::core::record_json
