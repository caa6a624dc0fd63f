// The patient's course in the report: pressures, typed readings, looks at the implant, stasis, scores and the
// chosen size.
#include "core/scores/bleeding_score.h"
#include "core/scores/stroke_score.h"
#include "dicomio/report/report_codes.h"
#include "dicomio/report/report_groups.h"

#include <cmath>

namespace gauge::dicomio {
namespace {

ReportFinding words(const char* code, const char* meaning, std::string_view text) {
    return {codes::own(code, meaning), std::nullopt, std::string(text)};
}

ReportFinding yesNo(const Code& name, bool yes) {
    return {name, yes ? codes::kYes : codes::kNo, {}};
}

std::string_view sourceWords(core::PressureSource source) {
    switch (source) {
    case core::PressureSource::Direct:
        return "measured directly in the left atrium";
    case core::PressureSource::Wedge:
        return "pulmonary wedge pressure";
    case core::PressureSource::Echo:
        return "estimated by echo";
    case core::PressureSource::ProcedureStart:
        return "measured at the start of the procedure";
    }
    return "";
}

std::optional<Code> phaseCode(core::Phase phase) {
    if (phase == core::Phase::EndSystole) return codes::kEndSystole;
    if (phase == core::Phase::Other) return codes::beatPhaseCode(core::BeatPhase::Other);
    return std::nullopt;
}

Code quantitySite(core::Quantity quantity) {
    using core::Quantity;
    return quantity == Quantity::OstiumPerimeterDerivedDiameter || quantity == Quantity::OstiumLongestDiameter
               ? codes::kOstium
               : codes::kAppendage;
}

bool isLandingZone(core::Quantity quantity) {
    using core::Quantity;
    return quantity == Quantity::LandingZonePerimeterDerivedDiameter ||
           quantity == Quantity::LandingZoneAreaDerivedDiameter ||
           quantity == Quantity::LandingZoneLongestDiameter;
}

void addTo(std::string& list, const std::string& what, const std::string& text) {
    if (!text.empty()) list += (list.empty() ? "" : "; ") + what + text;
}

} // namespace

void GroupMaker::addMoments() {
    for (const auto& [id, entry] : m_record.moments) {
        const core::HaemodynamicState& state = entry.content.circulation;
        MeasurementGroup group = started("moment/" + id);
        group.finding = codes::own("circulation", "State of the circulation");
        setStage(group, state.stage);
        const auto put = [&](const Code& name, std::optional<double> value, const char* unit, const char* key,
                             const Code& site) {
            if (!value) return;
            ReportMeasurement m = number(group, name, *value, unit, key);
            m.site = site;
            m.time = state.time;
            group.measurements.push_back(std::move(m));
        };
        put(codes::kMeanPressure, state.meanPressureMmHg, "mmHg", "mean-pressure", codes::kLeftAtrium);
        if (state.meanPressureMmHg) {
            ReportMeasurement& mean = group.measurements.back();
            mean.standardUncertainty = entry.content.pressureUncertaintyMmHg;
            if (state.pressureSource) mean.method = std::string(sourceWords(*state.pressureSource));
        }
        put(codes::kVWave, state.vWaveMmHg, "mmHg", "v-wave", codes::kLeftAtrium);
        put(codes::kMeanGradient, state.meanMitralGradientMmHg, "mmHg", "mitral-gradient",
            codes::kMitralValve);
        if (state.meanMitralGradientMmHg && state.gradientSource)
            group.measurements.back().method = std::string(core::word(*state.gradientSource));
        put(codes::kHeartRate, state.heartRatePerMinute, "/min", "heart-rate",
            codes::sct("80891009", "Heart"));
        if (state.rhythm) group.findings.push_back(words("rhythm", "Rhythm", core::word(*state.rhythm)));
        if (state.ventilation)
            group.findings.push_back(words("ventilation", "Ventilation", core::word(*state.ventilation)));
        if (state.regurgitation)
            group.findings.push_back(
                words("mr-grade-words", "Mitral regurgitation", core::word(*state.regurgitation)));
        if (state.pulmonaryVeinFlow)
            group.findings.push_back(
                words("vein-flow", "Pulmonary vein flow", core::word(*state.pulmonaryVeinFlow)));
        m_groups.push_back(std::move(group));
    }
}

void GroupMaker::addReadings() {
    for (const auto& [id, entry] : m_record.readings) {
        const core::Observation& reading = entry.content.observation;
        MeasurementGroup group = started("reading/" + id);
        setStage(group, reading.stage);
        setMoment(group, reading.state);
        group.beatPhase = phaseCode(reading.phase);
        group.sites = {quantitySite(reading.quantity)};
        if (isLandingZone(reading.quantity)) group.finding = codes::kLandingZone;
        ReportMeasurement m =
            number(group, codes::quantityConcept(reading.quantity), reading.valueMm, "mm", "value");
        m.standardUncertainty = reading.standardUncertaintyMm;
        m.derivation = codes::derivationCode(reading.derivation);
        m.method = "typed in: " + std::string(core::plainName(reading.quantity)) + ", " +
                   std::string(core::plainName(reading.modality)) + ", " +
                   std::string(core::plainName(reading.derivation));
        group.measurements.push_back(std::move(m));
        if (reading.contourPerView)
            group.measurements.push_back(number(
                group, codes::own("contour-per-view", "Contour's value over the width in the same view"),
                *reading.contourPerView, "1", "contour-per-view"));
        if (entry.content.mixedBeats) group.comments.emplace_back("Read on mixed beats.");
        if (!entry.content.note.empty()) group.comments.push_back(entry.content.note);
        m_groups.push_back(std::move(group));
    }
}

void GroupMaker::addRelease() {
    for (const auto& [id, entry] : m_record.release) {
        const core::ReleaseState& state = entry.content;
        MeasurementGroup group = started("release/" + id);
        group.finding = codes::kClosureDevice;
        group.sites = {codes::kAppendage};
        setStage(group, state.stage);
        if (state.innerCatheterWithdrawn)
            group.findings.push_back(yesNo(codes::own("catheter-out", "Inner catheter withdrawn"), true));
        int n = 0;
        for (const core::ReleaseFinding& finding : state.findings) {
            const codes::ValueConcept is = codes::releaseConcept(finding.quantity);
            std::string how;
            addTo(how, "view ", finding.view);
            addTo(how, "", finding.side);
            addTo(how, "seen by ", finding.seenBy);
            const std::string key = std::string(core::name(finding.quantity)) + "/" + std::to_string(++n);
            if (finding.quantity == core::ReleaseQuantity::VeinFlowFree ||
                finding.quantity == core::ReleaseQuantity::DeviceThrombus) {
                group.findings.push_back(yesNo(is.name, finding.value != 0.0));
                group.comments.push_back(is.name.meaning + ": " + how);
                continue;
            }
            ReportMeasurement m = number(group, is.name, finding.value, core::unitOf(finding.quantity), key);
            m.site = is.site;
            m.derivation = is.derivation;
            m.standardUncertainty = finding.standardUncertainty;
            m.time = state.time;
            if (auto image = imageOf(finding.source.substr(0, finding.source.find(' ')), std::nullopt))
                m.images = {*image};
            else
                addTo(how, "source ", finding.source);
            m.method = how;
            group.measurements.push_back(std::move(m));
        }
        m_groups.push_back(std::move(group));
    }
}

void GroupMaker::addStasis() {
    for (const auto& [id, entry] : m_record.stasis) {
        const core::StasisFinding& finding = entry.content;
        MeasurementGroup group = started("stasis/" + id);
        group.sites = {codes::kAppendage};
        group.finding = codes::own("stasis", "Flow and thrombus in the appendage");
        setStage(group, finding.stage);
        if (finding.emptyingVelocityCmPerS)
            group.measurements.push_back(number(group, codes::kEmptyingVelocity,
                                                *finding.emptyingVelocityCmPerS, "cm/s",
                                                "emptying-velocity"));
        if (finding.echoContrastGrade)
            group.measurements.push_back(
                number(group, codes::own("echo-contrast", "Grade of spontaneous echo contrast, 0 to 4"),
                       *finding.echoContrastGrade, "1", "echo-contrast"));
        if (finding.enhancementRatio) {
            ReportMeasurement m = number(
                group, codes::own("enhance-ratio", "Attenuation of the appendage tip over that of the aorta"),
                *finding.enhancementRatio, "1", "enhancement-ratio");
            m.method = finding.enhancementPhase == core::EnhancementPhase::Early ? "early phase of contrast"
                       : finding.enhancementPhase == core::EnhancementPhase::Delayed
                           ? "delayed phase of contrast"
                           : "phase of contrast not stated";
            group.measurements.push_back(std::move(m));
        }
        if (finding.sludge)
            group.findings.push_back(yesNo(codes::own("sludge", "Sludge in the appendage"), *finding.sludge));
        if (finding.thrombus)
            group.findings.push_back(
                yesNo(codes::own("thrombus", "Thrombus in the appendage"), *finding.thrombus));
        if (finding.lookedAtAgain)
            group.findings.push_back(
                yesNo(codes::own("looked-again", "Appendage looked at on purpose"), true));
        group.author = finding.seenBy;
        m_groups.push_back(std::move(group));
    }
}

void GroupMaker::addSizing() {
    if (!m_record.sizing) return;
    const core::SizingChoice& choice = m_record.sizing->content;
    MeasurementGroup group = started("sizing");
    group.finding = codes::own("sizing", "Choice of a device size");
    const auto put = [&](const char* code, const char* meaning, std::optional<double> value) {
        if (value)
            group.measurements.push_back(number(group, codes::own(code, meaning), *value, "mmHg", code));
    };
    put("decision-press", "Mean left atrial pressure at which the size is decided",
        choice.decisionPressureMmHg);
    put("lowest-press", "Lowest mean left atrial pressure expected", choice.lowestMmHg);
    put("highest-press", "Highest mean left atrial pressure expected", choice.highestMmHg);
    if (!choice.size.empty()) group.findings.push_back(words("size-chosen", "Size chosen", choice.size));
    if (!choice.chartSource.empty())
        group.findings.push_back(words("chart-source", "Source of the device chart", choice.chartSource));
    if (choice.regurgitationMayRecur)
        group.findings.push_back(yesNo(codes::own("mr-may-recur", "Mitral regurgitation may recur"), true));
    m_groups.push_back(std::move(group));
}

void GroupMaker::addScores() {
    if (!m_record.scores) return;
    MeasurementGroup group = started("scores");
    group.finding = codes::own("scores", "Risk scores");
    const auto put = [&](const char* code, const char* meaning, int points) {
        group.measurements.push_back(number(group, codes::own(code, meaning), points, "1", code));
    };
    if (const auto& items = m_record.scores->content.stroke) {
        if (const auto score = core::cha2ds2Vasc(*items))
            put("cha2ds2-vasc", "CHA2DS2-VASc score", score->points);
        if (const auto score = core::cha2ds2Va(*items)) put("cha2ds2-va", "CHA2DS2-VA score", score->points);
    }
    if (const auto& items = m_record.scores->content.bleeding)
        if (const auto score = core::hasBled(*items)) put("has-bled", "HAS-BLED score", score->points);
    if (!group.measurements.empty()) m_groups.push_back(std::move(group));
}

} // namespace gauge::dicomio
