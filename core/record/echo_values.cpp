#include "core/record/echo_values.h"

#include <algorithm>
#include <set>

namespace gauge::core {
namespace {

const Evidence& viewOf(const CaseRecord& record, const DrawnReading& reading) {
    return record.evidence.find(reading.evidence)->second.content;
}

void addToStudy(EchoReadings& study, const DrawnReading& reading, const Evidence& evidence) {
    EchoView view;
    view.angleDeg = *evidence.probeAngleDeg;
    view.phase = evidence.phase;
    view.source = evidence.sopInstanceUid;
    const double mm = reading.lengthMm.value;
    if (reading.role == DrawingRole::OstiumWidth) view.ostiumMm = mm;
    if (reading.role == DrawingRole::LandingWidth) view.landingZoneMm = mm;
    if (reading.role == DrawingRole::Depth) view.depthMm = mm;
    study.views.push_back(std::move(view));
}

/// The hand and the scale, as the drawings tell them.
void addUncertainty(EchoReadings& study, const DrawnReading& reading) {
    const UncertaintyComponents& parts = reading.lengthMm.components;
    const double hand = std::hypot(parts.observer, parts.edge, parts.plane);
    if (reading.role == DrawingRole::Depth)
        study.depthUncertaintyMm = std::max(study.depthUncertaintyMm, hand);
    else if (hand > study.widthUncertaintyMm.value_or(kAssumedWidthUncertaintyMm))
        study.widthUncertaintyMm = hand;
    if (reading.lengthMm.value > 0.0)
        study.section.scaleUncertainty =
            std::max(study.section.scaleUncertainty, parts.scale / reading.lengthMm.value);
}

bool hasAngle(const CaseRecord& record, const DrawnReading& reading) {
    return viewOf(record, reading).probeAngleDeg.has_value();
}

class EchoValueList {
public:
    EchoValueList(const CaseRecord& record, std::string_view key, const EchoMoment& moment, const Provenance& provenance)
        : m_record(record), m_moment(moment), m_group(std::string(kEchoValues).append(key)), m_provenance(provenance) {
        m_provenance.state = stateWords(record, EvidenceKind::EchoCine, key);
    }

    /// Values added from now on rest on the readings of this role.
    void restOn(DrawingRole role) {
        std::vector<const DrawnReading*> used;
        std::set<std::string> uids;
        std::set<BeatPhase> phases;
        for (const DrawnReading& reading : m_moment.readings) {
            if (reading.role != role || !hasAngle(m_record, reading)) continue;
            used.push_back(&reading);
            uids.insert(viewOf(m_record, reading).sopInstanceUid);
            phases.insert(viewOf(m_record, reading).phase);
        }
        m_inputs = unionOfInputs(used);
        Provenance provenance = m_provenance;
        provenance.sopInstanceUids.assign(uids.begin(), uids.end());
        provenance.phase = phases.size() == 1 ? std::string(words(*phases.begin())) : "phases differ";
        m_shared = std::make_shared<const Provenance>(std::move(provenance));
    }

    void add(std::string id, const char* unit, const Estimate& estimate) {
        RecordedValue value;
        value.id = std::move(id);
        value.group = m_group;
        value.unit = unit;
        value.estimate = estimate;
        value.inputs = m_inputs;
        value.provenance = m_shared;
        m_values.push_back(std::move(value));
    }

    void addSection(const std::string& where, DrawingRole role, const std::optional<Result<EchoSection>>& section,
                    const std::optional<LargestOfViews>& largest) {
        if (!section) return;
        restOn(role);
        const auto put = [&](const char* what, const char* unit, const Estimate& e) { add(where + "/" + what, unit, e); };
        if (*section) {
            const SectionMetrics& m = (**section).metrics;
            put("longest-diameter", "mm", m.longestDiameterMm);
            put("shortest-diameter", "mm", m.shortestDiameterMm);
            put("mean-diameter", "mm", m.meanDiameterMm);
            put("perimeter-derived-diameter", "mm", m.perimeterDerivedDiameterMm);
            put("area-derived-diameter", "mm", m.areaDerivedDiameterMm);
            put("perimeter", "mm", m.perimeterMm);
            put("area", "mm2", m.areaMm2);
            put("eccentricity-index", "1", m.eccentricityIndex);
            put("direction", "deg", (**section).directionDeg);
        }
        if (largest) put(viewCount(role) > 1 ? "largest-of-views" : "single-view", "mm", largest->valueMm);
    }

    std::vector<RecordedValue> take() { return std::move(m_values); }

private:
    std::size_t viewCount(DrawingRole role) const {
        std::set<double> angles;
        for (const DrawnReading& reading : m_moment.readings)
            if (reading.role == role && hasAngle(m_record, reading))
                angles.insert(probeAngleIn180(*viewOf(m_record, reading).probeAngleDeg));
        return angles.size();
    }

    const CaseRecord& m_record;
    const EchoMoment& m_moment;
    std::string m_group;
    Provenance m_provenance;
    std::vector<InputRevision> m_inputs;
    std::shared_ptr<const Provenance> m_shared;
    std::vector<RecordedValue> m_values;
};

} // namespace

EchoMoment echoMoment(const CaseRecord& record, std::string_view key) {
    EchoMoment moment;
    moment.readings = drawnReadings(record, EvidenceKind::EchoCine, key);
    std::set<std::string> withoutAngle;
    for (const DrawnReading& reading : moment.readings) {
        const Evidence& evidence = viewOf(record, reading);
        moment.study.stage = evidence.stage;
        if (!evidence.probeAngleDeg) {
            withoutAngle.insert(reading.evidence);
            continue;
        }
        addToStudy(moment.study, reading, evidence);
        addUncertainty(moment.study, reading);
    }
    for (const std::string& id : withoutAngle)
        moment.notices.push_back({"probe-angle-unknown",
                                  "The view \"" + record.evidence.find(id)->second.content.description +
                                      "\" is left out: its probe angle is not known. Read it off the picture and enter it.",
                                  {{"evidence", id}}});
    if (!moment.study.views.empty()) moment.measurement = measureEcho(moment.study);
    if (moment.measurement && moment.measurement->depth) { // one calibration served all views
        Estimate& depth = moment.measurement->depth->greatestMm;
        depth.components.scale = moment.study.section.scaleUncertainty * depth.value;
    }
    return moment;
}

std::vector<RecordedValue> echoValues(const CaseRecord& record, std::string_view key, Provenance provenance) {
    const EchoMoment moment = echoMoment(record, key);
    if (!moment.measurement) return {};
    EchoValueList values(record, key, moment, provenance);
    const EchoMeasurement& m = *moment.measurement;
    values.addSection("ostium", DrawingRole::OstiumWidth, m.ostium, m.largestOstium);
    values.addSection("landing", DrawingRole::LandingWidth, m.landingZone, m.largestLandingZone);
    if (m.depth) {
        values.restOn(DrawingRole::Depth);
        values.add("depth", "mm", m.depth->greatestMm);
    }
    return values.take();
}

} // namespace gauge::core
