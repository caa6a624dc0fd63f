// What was taken, read and seen in the patient's course: evidence, moments, typed readings, looks at the implant, stasis.
#include "core/record/record_json.h"

#include <array>
#include <utility>

namespace gauge::core::record_json {

using namespace json_writer;
using namespace std::string_view_literals;

namespace {

constexpr std::array kEvidenceKinds{std::pair{EvidenceKind::Ct, "ct"sv},
                                    std::pair{EvidenceKind::EchoCine, "echo-cine"sv},
                                    std::pair{EvidenceKind::EchoVolume, "echo-volume"sv},
                                    std::pair{EvidenceKind::Doppler, "doppler"sv},
                                    std::pair{EvidenceKind::Fluoroscopy, "fluoroscopy"sv},
                                    std::pair{EvidenceKind::Other, "other"sv}};
constexpr std::array kBeatPhases{std::pair{BeatPhase::EndSystole, "end-systole"sv},
                                 std::pair{BeatPhase::EndDiastole, "end-diastole"sv},
                                 std::pair{BeatPhase::Other, "other"sv}, std::pair{BeatPhase::Unknown, "unknown"sv}};
constexpr std::array kEnhancementPhases{std::pair{EnhancementPhase::Early, "early"sv},
                                        std::pair{EnhancementPhase::Delayed, "delayed"sv},
                                        std::pair{EnhancementPhase::Unknown, "unknown"sv}};

/// Pairs of the values and the words that their own header gives them.
template <class Enum> std::vector<std::pair<Enum, std::string_view>> wordsUpTo(Enum last) {
    std::vector<std::pair<Enum, std::string_view>> words;
    for (int i = 0; i <= static_cast<int>(last); ++i)
        words.emplace_back(static_cast<Enum>(i), word(static_cast<Enum>(i)));
    return words;
}

const auto& stages() {
    static const auto words = [] {
        std::vector<std::pair<Stage, std::string_view>> list;
        for (const Stage stage : kStages)
            list.emplace_back(stage, name(stage));
        return list;
    }();
    return words;
}

const auto& releaseQuantities() {
    static const auto words = [] {
        std::vector<std::pair<ReleaseQuantity, std::string_view>> list;
        for (std::size_t i = 0; i < kReleaseQuantityCount; ++i)
            list.emplace_back(static_cast<ReleaseQuantity>(i), name(static_cast<ReleaseQuantity>(i)));
        return list;
    }();
    return words;
}

// Each with the last value of its enum.
const auto kRhythms = wordsUpTo(Rhythm::Paced);
const auto kVentilations = wordsUpTo(Ventilation::Controlled);
const auto kGrades = wordsUpTo(RegurgitationGrade::Severe);
const auto kVeinFlows = wordsUpTo(PulmonaryVeinFlow::Reversed);
const auto kGradientSources = wordsUpTo(GradientSource::Typed);
const auto kPressureSources = wordsUpTo(PressureSource::ProcedureStart);
const auto kConditions = wordsUpTo(Condition::Other);
const auto kQuantities = wordsUpTo(Quantity::Depth);
const auto kModalities = wordsUpTo(Modality::Fluoroscopy);
const auto kDerivations = wordsUpTo(Derivation::SingleView);
const auto kPhases = wordsUpTo(Phase::Unknown);

Json written(const HaemodynamicState& s) {
    return {{"stage", word(stages(), s.stage)},
            {"state", s.state},
            {"time", s.time},
            {"mean_pressure_mmHg", orNull(s.meanPressureMmHg)},
            {"pressure_source", optionalWord(kPressureSources, s.pressureSource)},
            {"v_wave_mmHg", orNull(s.vWaveMmHg)},
            {"mean_mitral_gradient_mmHg", orNull(s.meanMitralGradientMmHg)},
            {"gradient_source", optionalWord(kGradientSources, s.gradientSource)},
            {"heart_rate_per_minute", orNull(s.heartRatePerMinute)},
            {"rhythm", optionalWord(kRhythms, s.rhythm)},
            {"ventilation", optionalWord(kVentilations, s.ventilation)},
            {"regurgitation", optionalWord(kGrades, s.regurgitation)},
            {"pulmonary_vein_flow", optionalWord(kVeinFlows, s.pulmonaryVeinFlow)}};
}

HaemodynamicState readCirculation(Object o) {
    HaemodynamicState s;
    s.stage = o.choice("stage", stages());
    s.state = o.text("state");
    s.time = o.text("time", true);
    s.meanPressureMmHg = o.optionalNumber("mean_pressure_mmHg");
    s.pressureSource = o.optionalChoice("pressure_source", kPressureSources);
    s.vWaveMmHg = o.optionalNumber("v_wave_mmHg");
    s.meanMitralGradientMmHg = o.optionalNumber("mean_mitral_gradient_mmHg");
    s.gradientSource = o.optionalChoice("gradient_source", kGradientSources);
    s.heartRatePerMinute = o.optionalNumber("heart_rate_per_minute");
    s.rhythm = o.optionalChoice("rhythm", kRhythms);
    s.ventilation = o.optionalChoice("ventilation", kVentilations);
    s.regurgitation = o.optionalChoice("regurgitation", kGrades);
    s.pulmonaryVeinFlow = o.optionalChoice("pulmonary_vein_flow", kVeinFlows);
    return s;
}

Json written(const ReleaseFinding& f) {
    return {{"quantity", word(releaseQuantities(), f.quantity)},
            {"value", f.value},
            {"standard_uncertainty", orNull(f.standardUncertainty)},
            {"view", f.view},
            {"side", f.side},
            {"seen_by", f.seenBy},
            {"source", f.source}};
}

ReleaseFinding readFinding(Object o) {
    ReleaseFinding f;
    f.quantity = o.choice("quantity", releaseQuantities());
    f.value = o.number("value");
    f.standardUncertainty = o.optionalNumber("standard_uncertainty");
    f.view = o.text("view", true);
    f.side = o.text("side", true);
    f.seenBy = o.text("seen_by", true);
    f.source = o.text("source", true);
    return f;
}

} // namespace

Json written(const Evidence& e) {
    return {{"kind", word(kEvidenceKinds, e.kind)},
            {"series_uid", e.seriesUid},
            {"sop_instance_uid", e.sopInstanceUid},
            {"stage", word(stages(), e.stage)},
            {"moment", e.moment},
            {"probe_angle_deg", orNull(e.probeAngleDeg)},
            {"beat_phase", word(kBeatPhases, e.phase)},
            {"acquired", e.acquired},
            {"description", e.description}};
}

void read(Object& o, Evidence& e) {
    e.kind = o.choice("kind", kEvidenceKinds);
    e.seriesUid = o.text("series_uid", true);
    e.sopInstanceUid = o.text("sop_instance_uid", true);
    e.stage = o.choice("stage", stages());
    e.moment = o.text("moment", true);
    e.probeAngleDeg = o.optionalNumber("probe_angle_deg");
    e.phase = o.choice("beat_phase", kBeatPhases);
    e.acquired = o.text("acquired", true);
    e.description = o.text("description", true);
}

Json written(const Moment& m) {
    return {{"circulation", written(m.circulation)},
            {"condition", word(kConditions, m.condition)},
            {"pressure_uncertainty_mmHg", orNull(m.pressureUncertaintyMmHg)}};
}

void read(Object& o, Moment& m) {
    m.circulation = readCirculation(o.object("circulation"));
    m.condition = o.choice("condition", kConditions);
    m.pressureUncertaintyMmHg = o.optionalNumber("pressure_uncertainty_mmHg");
}

Json written(const TypedReading& r) {
    const Observation& b = r.observation;
    return {{"quantity", word(kQuantities, b.quantity)},
            {"modality", word(kModalities, b.modality)},
            {"derivation", word(kDerivations, b.derivation)},
            {"stage", word(stages(), b.stage)},
            {"moment", b.state},
            {"condition", word(kConditions, b.condition)},
            {"phase", word(kPhases, b.phase)},
            {"value_mm", b.valueMm},
            {"standard_uncertainty_mm", orNull(b.standardUncertaintyMm)},
            {"pressure_mmHg", orNull(b.pressureMmHg)},
            {"pressure_source", optionalWord(kPressureSources, b.pressureSource)},
            {"pressure_uncertainty_mmHg", orNull(b.pressureUncertaintyMmHg)},
            {"v_wave_mmHg", orNull(b.vWaveMmHg)},
            {"contour_per_view", orNull(b.contourPerView)},
            {"mixed_beats", r.mixedBeats},
            {"note", r.note}};
}

void read(Object& o, TypedReading& r) {
    Observation& b = r.observation;
    b.quantity = o.choice("quantity", kQuantities);
    b.modality = o.choice("modality", kModalities);
    b.derivation = o.choice("derivation", kDerivations);
    b.stage = o.choice("stage", stages());
    b.state = o.text("moment", true);
    b.condition = o.optionalChoice("condition", kConditions).value_or(Condition::Other);
    b.phase = o.optionalChoice("phase", kPhases).value_or(Phase::Unknown);
    b.valueMm = o.number("value_mm");
    b.standardUncertaintyMm = o.optionalNumber("standard_uncertainty_mm");
    b.pressureMmHg = o.optionalNumber("pressure_mmHg");
    b.pressureSource = o.optionalChoice("pressure_source", kPressureSources);
    b.pressureUncertaintyMmHg = o.optionalNumber("pressure_uncertainty_mmHg");
    b.vWaveMmHg = o.optionalNumber("v_wave_mmHg");
    b.contourPerView = o.optionalNumber("contour_per_view");
    r.mixedBeats = o.optionalFlag("mixed_beats").value_or(false);
    r.note = o.text("note", true);
}

Json written(const ReleaseState& s) {
    Json findings = Json::array();
    for (const auto& finding : s.findings)
        findings.push_back(written(finding));
    return {{"stage", word(stages(), s.stage)},
            {"time", s.time},
            {"inner_catheter_withdrawn", s.innerCatheterWithdrawn},
            {"findings", std::move(findings)}};
}

/// Whether it can be judged is not asked here (validate() in release_finding.h): a case is read whatever was typed.
void read(Object& o, ReleaseState& s) {
    s.stage = o.choice("stage", stages());
    s.time = o.text("time", true);
    s.innerCatheterWithdrawn = o.optionalFlag("inner_catheter_withdrawn").value_or(false);
    for (const auto& item : o.array("findings"))
        s.findings.push_back(readFinding({item, o.pathOf("findings[" + std::to_string(s.findings.size()) + "]")}));
}

Json written(const StasisFinding& f) {
    return {{"stage", word(stages(), f.stage)},
            {"echo_contrast_grade", orNull(f.echoContrastGrade)},
            {"sludge", orNull(f.sludge)},
            {"thrombus", orNull(f.thrombus)},
            {"emptying_velocity_cm_per_s", orNull(f.emptyingVelocityCmPerS)},
            {"enhancement_ratio", orNull(f.enhancementRatio)},
            {"enhancement_phase", word(kEnhancementPhases, f.enhancementPhase)},
            {"looked_at_again", f.lookedAtAgain},
            {"seen_by", f.seenBy}};
}

void read(Object& o, StasisFinding& f) {
    f.stage = o.choice("stage", stages());
    f.echoContrastGrade = o.optionalInteger("echo_contrast_grade");
    f.sludge = o.optionalFlag("sludge");
    f.thrombus = o.optionalFlag("thrombus");
    f.emptyingVelocityCmPerS = o.optionalNumber("emptying_velocity_cm_per_s");
    f.enhancementRatio = o.optionalNumber("enhancement_ratio");
    f.enhancementPhase = o.choice("enhancement_phase", kEnhancementPhases);
    f.lookedAtAgain = o.flag("looked_at_again");
    f.seenBy = o.text("seen_by", true);
}

} // namespace gauge::core::record_json
