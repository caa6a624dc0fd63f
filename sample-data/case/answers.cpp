#include "sample-data/case/answers_parts.h"
#include "sample-data/case/observations.h"
#include "sample-data/case/sample_case.h"

#include <cmath>

namespace gauge::sample_case {

using nlohmann::json;

double rounded(double value) {
    return std::round(value * 1e6) / 1e6;
}

json vectorJson(const Eigen::Vector3d& v) {
    return {rounded(v.x()), rounded(v.y()), rounded(v.z())};
}

json pixelJson(const Eigen::Vector2d& pixel) {
    return {rounded(pixel.x()), rounded(pixel.y())};
}

json sectionJson(const TrueSection& section) {
    const TrueMetrics& m = section.metrics;
    json contour = json::array();
    // Every fifth point: about every 0.6 mm.
    for (std::size_t i = 0; i < section.contour.size(); i += 5)
        contour.push_back(vectorJson(section.frame.patientFromSection(section.contour[i]).mm));
    return {{"center_lps_mm", vectorJson(section.center.mm)},
            {"normal_lps", vectorJson(section.frame.normal.mm)},
            {"area_mm2", rounded(m.areaMm2)},
            {"perimeter_mm", rounded(m.perimeterMm)},
            {"longest_diameter_mm", rounded(m.longestDiameterMm)},
            {"shortest_diameter_mm", rounded(m.shortestDiameterMm)},
            {"least_width_mm", rounded(m.leastWidthMm)},
            {"mean_diameter_mm", rounded(m.meanDiameterMm)},
            {"perimeter_derived_diameter_mm", rounded(m.perimeterDerivedDiameterMm)},
            {"area_derived_diameter_mm", rounded(m.areaDerivedDiameterMm)},
            {"eccentricity_index", rounded(m.eccentricityIndex)},
            {"contour_lps_mm", contour}};
}

namespace {

json phaseJson(const SamplePhase& phase, const std::vector<double>& landingDepths) {
    json axis = json::array();
    for (const core::PatientPoint& p : trueAxis(phase.scene, phase.ostium))
        axis.push_back(vectorJson(p.mm));
    json landings = json::array();
    for (const double depth : landingDepths) {
        const core::Plane plane = trueAxisPlane(phase.scene, phase.ostium, depth);
        if (const auto section = trueSection(phase.scene, plane, plane.point))
            landings.push_back({{"depth_mm", depth}, {"section", sectionJson(*section)}});
    }
    const TrueInterior interior = trueInterior(phase.scene, phase.ostium);
    return {{"percent", phase.percent},
            {"marks_lps_mm",
             {{"atrium", vectorJson(phase.marks.atrium.mm)},
              {"tip", vectorJson(phase.marks.tip.mm)},
              {"circumflex", vectorJson(phase.marks.circumflex.mm)},
              {"ridge", vectorJson(phase.marks.ridge.mm)},
              {"aorta", vectorJson(phase.marks.aorta.mm)}}},
            {"ridge_crest_lps_mm", vectorJson(phase.ridgeCrest.mm)},
            {"ostium", sectionJson(phase.ostium.section)},
            {"axis",
             {{"points_lps_mm", axis}, {"length_mm", rounded(trueAxisLengthMm(phase.scene, phase.ostium))}}},
            {"landing_zones", landings},
            {"depth",
             {{"along_axis_mm", rounded(trueAxisLengthMm(phase.scene, phase.ostium))},
              {"from_ostium_plane_mm", rounded(interior.farthestFromPlaneMm)}}},
            {"volume_ml", std::round(interior.volumeMl * 1e3) / 1e3}};
}

} // namespace

json answers(const SampleCase& sample) {
    json phases = json::array();
    for (const SamplePhase& phase : sample.phases)
        phases.push_back(phaseJson(phase, sample.landingDepthsMm));
    json all = {{"format", "ostium-gauge/sample-answers/1"},
            {"about", sample.about},
            {"story", sample.story},
            {"patient_id", sample.series.patientId},
            {"study_instance_uid", uidFrom(sample.series.uidText + "/study")},
            {"series_instance_uid", uidFrom(sample.series.uidText + "/series")},
            {"phases", phases}};
    if (sample.procedure) {
        addProcedureAnswers(*sample.procedure, sample.landingDepthsMm, all);
        for (const Observations& story : observations(sample))
            all["observations"][story.name] = story.content;
    }
    return all;
}

} // namespace gauge::sample_case
