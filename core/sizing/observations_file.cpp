#include "core/sizing/observations_file.h"

#include "core/number_text.h"
#include "core/sizing/json_fields.h"
#include "core/sizing/json_words.h"

#include <cmath>

namespace gauge::core {
namespace {

using json_fields::Fields;
using json_fields::Finding;
using json_fields::kGreatestPressureMmHg;
using json_fields::wordOf;

// Nothing of an appendage is outside these; a value that is was written in another unit, or at another place.
constexpr double kLeastMm = 1.0;
constexpr double kGreatestMm = 120.0;
constexpr double kLeastUncertaintyMm = 0.001;
constexpr double kGreatestUncertaintyMm = 20.0;
constexpr double kLeastGivenMmHg = 0.1; // a mean pressure of nothing was not measured
constexpr double kGreatestVWaveMmHg = 120.0;

const std::vector<std::pair<const char*, bool>> kBeats{{"alike", false}, {"mixed", true}};
const std::vector<std::pair<const char*, Clearance::From>> kFrom{
    {"landing-zone-wall", Clearance::From::LandingZoneWall},
    {"ostium-centre", Clearance::From::OstiumCentre}};
const std::vector<std::pair<const char*, EnhancementPhase>> kEnhancement{
    {"early", EnhancementPhase::Early},
    {"delayed", EnhancementPhase::Delayed},
    {"unknown", EnhancementPhase::Unknown}};

void readPressure(const Fields& f, Observation& o) {
    o.pressureMmHg = f.optionalNumber("pressure_mmHg", kLeastGivenMmHg, kGreatestPressureMmHg);
    if (f.has("pressure_source")) o.pressureSource = wordOf<PressureSource>(f, "pressure_source");
    o.pressureUncertaintyMmHg = f.optionalNumber("pressure_uncertainty_mmHg", 0.0, kGreatestPressureMmHg);
    o.vWaveMmHg = f.optionalNumber("v_wave_mmHg", kLeastGivenMmHg, kGreatestVWaveMmHg);
    if (o.vWaveMmHg && o.pressureMmHg && *o.vWaveMmHg < *o.pressureMmHg)
        throw Finding{f.pathOf("v_wave_mmHg") + " holds " + general(*o.vWaveMmHg) +
                      ", below the mean pressure of " + general(*o.pressureMmHg) +
                      " mmHg; the v wave is the pressure's peak"};
}

Observation observationOf(const Fields& f) {
    Observation o;
    o.quantity = wordOf<Quantity>(f, "quantity");
    o.modality = wordOf<Modality>(f, "modality");
    o.derivation = wordOf<Derivation>(f, "derivation");
    o.stage = wordOf<Stage>(f, "stage");
    o.state = f.text("state");
    o.condition = wordOf<Condition>(f, "condition", Condition::Other);
    o.phase = wordOf<Phase>(f, "phase", Phase::Unknown);
    o.valueMm = f.number("value_mm", kLeastMm, kGreatestMm);
    o.standardUncertaintyMm =
        f.optionalNumber("standard_uncertainty_mm", kLeastUncertaintyMm, kGreatestUncertaintyMm);
    o.contourPerView = f.optionalNumber("contour_per_view", 0.2, 5.0);
    readPressure(f, o);
    return o;
}

/// Readings of one state were taken under one pressure.
void checkState(const std::vector<Observation>& all, std::size_t i) {
    const auto differs = [](const std::optional<double>& a, const std::optional<double>& b) {
        return a && b && std::abs(*a - *b) > 1e-9;
    };
    const Observation& b = all[i];
    for (std::size_t j = 0; j < i; ++j) {
        const Observation& a = all[j];
        if (a.state != b.state) continue;
        const auto clash = [&](const char* field, const std::string& here, const std::string& there) {
            throw Finding{
                "observations[" + std::to_string(i) + "]." + field + " holds " + here + ", observations[" +
                std::to_string(j) + "]." + field + " of the same state \"" + a.state + "\" holds " + there +
                "; readings of one state share one pressure, so give both the same or name two states"};
        };
        if (differs(a.pressureMmHg, b.pressureMmHg))
            clash("pressure_mmHg", general(*b.pressureMmHg), general(*a.pressureMmHg));
        if (differs(a.vWaveMmHg, b.vWaveMmHg)) clash("v_wave_mmHg", general(*b.vWaveMmHg), general(*a.vWaveMmHg));
        if (differs(a.pressureUncertaintyMmHg, b.pressureUncertaintyMmHg))
            clash("pressure_uncertainty_mmHg", general(*b.pressureUncertaintyMmHg),
                  general(*a.pressureUncertaintyMmHg));
        if (a.pressureSource && b.pressureSource && *a.pressureSource != *b.pressureSource)
            clash("pressure_source", std::string(word(*b.pressureSource)),
                  std::string(word(*a.pressureSource)));
        if (a.condition != b.condition)
            clash("condition", std::string(word(b.condition)), std::string(word(a.condition)));
    }
}

void readReadings(const Fields& document, ObservationsFile& file) {
    document.list("observations"); // absent or no list: said as such
    for (const Fields& f : document.objects("observations")) {
        file.observations.push_back(observationOf(f));
        const std::size_t i = file.observations.size() - 1;
        checkState(file.observations, i);
        if (f.wordOr("beats", false, kBeats)) file.facts.mixedBeats.push_back(i);
    }
}

LandingSection sectionOf(const Fields& f) {
    LandingSection s;
    s.longestMm = f.number("longest_mm", kLeastMm, kGreatestMm);
    s.shortestMm = f.number("shortest_mm", kLeastMm, kGreatestMm);
    if (s.shortestMm > s.longestMm)
        throw Finding{f.pathOf("shortest_mm") + " holds " + general(s.shortestMm) +
                      ", more than the longest diameter of " + general(s.longestMm) + " mm"};
    const auto angle = f.optionalNumber("longest_at_deg", 0.0, 180.0);
    s.longestAtDeg = angle.value_or(0.0);
    s.angleKnown = angle.has_value();
    return s;
}

Bend bendOf(const Fields& f) {
    return {f.number("turn_deg", 0.0, 180.0), f.number("neck_length_mm", 0.0, kGreatestMm),
            f.optionalNumber("width_mm", kLeastMm, kGreatestMm),
            f.optionalNumber("depth_mm", 0.0, kGreatestMm)};
}

std::optional<bool> optionalFlag(const Fields& f, const char* key) {
    return f.has(key) ? std::optional(f.flagOr(key, false)) : std::nullopt;
}

StasisFinding stasisOf(const Fields& f) {
    StasisFinding s;
    s.stage = wordOf<Stage>(f, "stage");
    if (const auto grade = f.optionalNumber("echo_contrast_grade", 0.0, 4.0)) {
        if (*grade != std::floor(*grade)) f.wrong("echo_contrast_grade", "a whole number from 0 to 4");
        s.echoContrastGrade = static_cast<int>(*grade);
    }
    s.sludge = optionalFlag(f, "sludge");
    s.thrombus = optionalFlag(f, "thrombus");
    s.emptyingVelocityCmPerS = f.optionalNumber("emptying_velocity_cm_s", 0.0, 200.0);
    s.enhancementRatio = f.optionalNumber("enhancement_ratio", 0.0, 3.0);
    s.enhancementPhase = f.wordOr("enhancement_phase", EnhancementPhase::Unknown, kEnhancement);
    s.lookedAtAgain = f.flagOr("looked_at_again", false);
    s.seenBy = f.textOr("seen_by", "");
    return s;
}

void readFacts(const Fields& f, AppendageFacts& facts) {
    facts.depthMm = f.optionalNumber("depth_mm", 0.0, kGreatestMm);
    facts.depthFromLandingZoneMm = f.optionalNumber("depth_from_landing_zone_mm", 0.0, kGreatestMm);
    facts.depthIsLowerBound = f.flagOr("depth_is_lower_bound", false);
    facts.ostiumLongestMm = f.optionalNumber("ostium_longest_mm", kLeastMm, kGreatestMm);
    facts.regurgitationMayRecur = f.flagOr("regurgitation_may_recur", false);
    if (f.has("section")) facts.section = sectionOf(f.object("section"));
    if (f.has("bend")) facts.bend = bendOf(f.object("bend"));
    for (const Fields& item : f.objects("clearances"))
        facts.clearances.push_back({item.word("structure", json_fields::kStructures),
                                    item.word("from", kFrom), item.number("distance_mm", 0.0, kGreatestMm)});
    for (const Fields& item : f.objects("stasis"))
        facts.stasis.push_back(stasisOf(item));
}

void readDocument(const Fields& document, ObservationsFile& file) {
    if (const std::string format = document.text("format"); format != "ostium-gauge/observations/1")
        throw Finding{"format holds \"" + format + "\"; ostium-gauge/observations/1 is needed"};
    readReadings(document, file);
    readFacts(document, file.facts);
}

} // namespace

Result<ObservationsFile> readObservations(std::string_view json, std::string_view name) {
    ObservationsFile file;
    const std::string finding =
        json_fields::guarded(json, [&](const Fields& document) { readDocument(document, file); });
    if (!finding.empty())
        return failure(ErrorCode::ObservationsInvalid,
                       "Cannot use the observations in " + std::string(name) + ": " + finding + ".");
    return file;
}

} // namespace gauge::core
