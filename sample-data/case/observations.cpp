#include "sample-data/case/observations.h"

#include "sample-data/case/answers_parts.h"
#include "sample-data/case/sample_case.h"

#include <algorithm>
#include <cmath>

namespace gauge::sample_case {
namespace {

using nlohmann::json;

struct Reading {
    std::string quantity, modality, derivation;
    double valueMm;
};

json observation(const Reading& reading, const PressureState& state, const std::string& condition,
                 const json& pressure, const json& source) {
    return {{"quantity", reading.quantity},
            {"modality", reading.modality},
            {"derivation", reading.derivation},
            {"stage", state.stage},
            {"state", state.id},
            {"condition", condition},
            {"phase", "end-systole"},
            {"value_mm", rounded(reading.valueMm)},
            {"standard_uncertainty_mm", nullptr},
            {"pressure_mmHg", pressure},
            {"pressure_source", source},
            {"pressure_uncertainty_mmHg", nullptr},
            {"v_wave_mmHg", nullptr}};
}

/// The four widths' ellipse and the largest of the views.
std::vector<Reading> echoReadings(const Procedure& procedure, const EchoSet& set) {
    const auto widths = landingWidths(procedure, set, procedure.law.percent);
    std::vector<Reading> readings;
    if (const auto ellipse = ellipseThrough(widths))
        readings.push_back({"landing_zone_perimeter_derived_diameter", "echo-2d", "ellipse-from-angles",
                            ellipse->perimeterDerivedMm});
    double largest = 0.0;
    for (const auto& [angle, width] : widths)
        largest = std::max(largest, width);
    if (largest > 0.0)
        readings.push_back({"landing_zone_longest_diameter", "echo-2d", "largest-of-views", largest});
    return readings;
}

} // namespace

std::vector<Observations> observations(const SampleCase& sample) {
    const Procedure& procedure = *sample.procedure;
    const auto phase = std::find_if(sample.phases.begin(), sample.phases.end(), [&](const SamplePhase& p) {
        return std::abs(p.percent - procedure.law.percent) < 1e-9;
    });
    const PressureState& ct = procedure.law.states.front();
    const Reading contour{"landing_zone_perimeter_derived_diameter", "CT", "contour", ct.landingDiameterMm};
    const double ostium = phase->ostium.section.metrics.longestDiameterMm;
    const auto story = [&](const std::string& name, const EchoSet& set, const json& ctObservation) {
        json list = json::array({ctObservation});
        const PressureState& state = procedure.law.states[set.state];
        for (const Reading& reading : echoReadings(procedure, set))
            list.push_back(observation(reading, state, "other", state.meanMmHg, "direct"));
        return Observations{name,
                            {{"format", "ostium-gauge/observations/1"},
                             {"invented_for", kInventedFor},
                             {"observations", list},
                             {"depth_mm", rounded(trueAxisLengthMm(phase->scene, phase->ostium))},
                             {"ostium_longest_mm", rounded(ostium)}}};
    };
    return {story("passing", procedure.echo.front(), observation(contour, ct, "hydrated", ct.meanMmHg, "echo")),
            story("lasting", procedure.echo.back(),
                  observation(contour, ct, "mitral-regurgitation", nullptr, nullptr))};
}

} // namespace gauge::sample_case
