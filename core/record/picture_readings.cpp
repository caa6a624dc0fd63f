#include "core/record/picture_readings.h"

#include <algorithm>
#include <set>

namespace gauge::core {
namespace {

bool isReading(DrawingRole role) {
    return role == DrawingRole::OstiumWidth || role == DrawingRole::LandingWidth || role == DrawingRole::Depth;
}

const Evidence* evidenceOf(const CaseRecord& record, const Drawing& drawing, EvidenceKind kind) {
    const auto found = record.evidence.find(drawing.evidence);
    return found != record.evidence.end() && found->second.content.kind == kind ? &found->second.content : nullptr;
}

const RecordedValue* lengthOf(const CaseRecord& record, const std::string& drawing) {
    const std::string group = entryInput<Drawing>(drawing);
    const auto found = std::find_if(record.values.begin(), record.values.end(), [&](const RecordedValue& value) {
        return value.group == group && value.unit == "mm";
    });
    return found == record.values.end() ? nullptr : &*found;
}

void addInput(std::vector<InputRevision>& inputs, InputRevision input) {
    const bool known =
        std::any_of(inputs.begin(), inputs.end(), [&](const InputRevision& other) { return other.id == input.id; });
    if (!known) inputs.push_back(std::move(input));
}

} // namespace

std::string momentKey(const Evidence& evidence) {
    return evidence.moment.empty() ? std::string(name(evidence.stage)) : evidence.moment;
}

std::vector<DrawnReading> drawnReadings(const CaseRecord& record, EvidenceKind kind, std::string_view key) {
    std::vector<DrawnReading> readings;
    for (const auto& [id, entry] : record.drawings) {
        const Drawing& drawing = entry.content;
        if (!isReading(drawing.role)) continue;
        const Evidence* evidence = evidenceOf(record, drawing, kind);
        if (!evidence || momentKey(*evidence) != key) continue;
        const RecordedValue* length = lengthOf(record, id);
        if (!length || isStale(record, *length)) continue;
        DrawnReading reading{id, drawing.evidence, drawing.role, length->estimate, length->inputs};
        for (const std::string& input : {entryInput<Drawing>(id), entryInput<Evidence>(drawing.evidence)})
            addInput(reading.inputs, {input, revisionOf(record, input)});
        readings.push_back(std::move(reading));
    }
    return readings;
}

std::vector<std::string> drawnMoments(const CaseRecord& record, EvidenceKind kind) {
    std::set<std::string> keys;
    for (const auto& [id, entry] : record.drawings)
        if (isReading(entry.content.role))
            if (const Evidence* evidence = evidenceOf(record, entry.content, kind)) keys.insert(momentKey(*evidence));
    return {keys.begin(), keys.end()};
}

std::string stateWords(const CaseRecord& record, EvidenceKind kind, std::string_view key) {
    for (const auto& [id, entry] : record.evidence) {
        const Evidence& evidence = entry.content;
        if (evidence.kind != kind || momentKey(evidence) != key) continue;
        const std::string stage(plainName(evidence.stage));
        return evidence.moment.empty() ? stage : stage + ", " + evidence.moment;
    }
    return std::string(key);
}

std::vector<InputRevision> unionOfInputs(const std::vector<const DrawnReading*>& readings) {
    std::vector<InputRevision> inputs;
    for (const DrawnReading* reading : readings)
        for (const InputRevision& input : reading->inputs)
            addInput(inputs, input);
    return inputs;
}

} // namespace gauge::core
