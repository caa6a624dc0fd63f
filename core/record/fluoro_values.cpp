#include "core/record/fluoro_values.h"

#include "core/echo/width_reading.h"

#include <algorithm>
#include <set>

namespace gauge::core {
namespace {

std::vector<const DrawnReading*> ofRole(const std::vector<DrawnReading>& readings, DrawingRole role) {
    std::vector<const DrawnReading*> found;
    for (const DrawnReading& reading : readings)
        if (reading.role == role) found.push_back(&reading);
    return found;
}

/// What the value of these readings says of its pictures.
Provenance withPictures(const CaseRecord& record, Provenance provenance, const std::vector<const DrawnReading*>& used) {
    std::set<std::string> uids;
    std::set<BeatPhase> phases;
    for (const DrawnReading* reading : used) {
        const Evidence& evidence = record.evidence.find(reading->evidence)->second.content;
        uids.insert(evidence.sopInstanceUid);
        phases.insert(evidence.phase);
    }
    provenance.sopInstanceUids.assign(uids.begin(), uids.end());
    provenance.phase = phases.size() == 1 ? std::string(words(*phases.begin())) : "phases differ";
    return provenance;
}

} // namespace

std::vector<RecordedValue> fluoroValues(const CaseRecord& record, std::string_view key, Provenance provenance) {
    const auto readings = drawnReadings(record, EvidenceKind::Fluoroscopy, key);
    provenance.state = stateWords(record, EvidenceKind::Fluoroscopy, key);
    std::vector<RecordedValue> values;
    const auto add = [&](DrawingRole role, const std::string& one, const std::string& several) {
        const auto used = ofRole(readings, role);
        if (used.empty()) return;
        const DrawnReading* greatest = *std::max_element(used.begin(), used.end(), [](const auto* a, const auto* b) {
            return a->lengthMm.value < b->lengthMm.value;
        });
        RecordedValue value;
        value.id = used.size() == 1 ? one : several;
        value.group = std::string(kFluoroValues).append(key);
        value.unit = "mm";
        value.estimate = greatest->lengthMm;
        value.inputs = unionOfInputs(used);
        value.provenance = std::make_shared<const Provenance>(withPictures(record, provenance, used));
        values.push_back(std::move(value));
    };
    add(DrawingRole::OstiumWidth, "ostium/single-view", "ostium/largest-of-views");
    add(DrawingRole::LandingWidth, "landing/single-view", "landing/largest-of-views");
    add(DrawingRole::Depth, "depth", "depth");
    return values;
}

} // namespace gauge::core
