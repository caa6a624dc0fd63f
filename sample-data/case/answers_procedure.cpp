#include "sample-data/case/answers_parts.h"
#include "sample-data/case/write_procedure.h"
#include "sample-data/dicom/ct_writer.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::sample_case {
namespace {

using nlohmann::json;

json seriesJson(const Procedure& procedure, std::size_t state, const ImageFacts& facts) {
    const PressureState& pressure = procedure.law.states[state];
    return {{"file", fileOf(facts).generic_string()},
            {"study_instance_uid", facts.studyInstanceUid()},
            {"series_instance_uid", facts.seriesInstanceUid()},
            {"sop_instance_uid", facts.sopInstanceUid()},
            {"state", pressure.id},
            {"stage", pressure.stage},
            {"pressure_mmhg", pressure.meanMmHg}};
}

/// Ostium and landing zones of one moment.
json sectionsJson(const Heart& heart, double percent, const std::vector<double>& depths) {
    json all = {{"percent", percent}};
    if (const auto ostium = trueOstium(heart.scene, heart.marks.circumflex, heart.marks.ridge))
        all["ostium"] = sectionJson(ostium->section);
    all["landing_zones"] = json::array();
    for (const double depth : depths) {
        const core::Plane plane = landingPlane(heart, depth);
        if (const auto section = trueSection(heart.scene, plane, plane.point))
            all["landing_zones"].push_back({{"depth_mm", depth}, {"section", sectionJson(*section)}});
    }
    return all;
}

json chordJson(const std::optional<ViewChord>& view) {
    if (!view) return nullptr;
    return {{"width_mm", rounded(view->chord.lengthMm)},
            {"first_px", pixelJson(view->firstPixel)},
            {"second_px", pixelJson(view->secondPixel)},
            {"first_lps_mm", vectorJson(view->chord.first.mm)},
            {"second_lps_mm", vectorJson(view->chord.second.mm)},
            {"beam_depth_mm", rounded(view->depthMm)}};
}

json viewJson(const Procedure& procedure, const EchoSet& set, std::size_t view) {
    const EchoPlane& plane = set.views[view];
    const BeatingHeart beating = procedure.heartIn(set.state);
    json frames = json::array();
    for (int frame = 0; frame < set.times.frames; ++frame) {
        const Heart heart = beating.at(set.times.percentAt(frame));
        frames.push_back({{"time_ms", rounded(frame * set.times.frameMs)},
                          {"percent", rounded(set.times.percentAt(frame))},
                          {"ostium", chordJson(viewChord(heart, plane, ostiumPlane(heart).plane))},
                          {"landing_zone",
                           chordJson(viewChord(heart, plane, landingPlane(heart, procedure.law.landingDepthMm)))}});
    }
    json result = seriesJson(procedure, set.state, set.facts[view]);
    result["angle_deg"] = plane.angleDeg;
    result["angle_in_file"] = set.angleInFile;
    result["mm_per_pixel"] = plane.fan.mmPerPixel;
    result["apex_px"] = pixelJson(plane.fan.apexPixel);
    result["lateral_lps"] = vectorJson(plane.lateral().mm);
    result["r_waves_ms"] = set.times.rWavesMs();
    result["frames"] = frames;
    return result;
}

json echoJson(const Procedure& procedure, const EchoSet& set, const std::vector<double>& depths) {
    const double percent = procedure.law.percent;
    const Heart heart = procedure.heartIn(set.state).at(percent);
    const EchoProbe& probe = set.views.front().probe;
    const double cosine = probe.beam.dot(landingPlane(heart, procedure.law.landingDepthMm).normal);
    json views = json::array();
    for (std::size_t view = 0; view < set.views.size(); ++view)
        views.push_back(viewJson(procedure, set, view));
    json widths = json::array();
    const auto byAngle = landingWidths(procedure, set, percent);
    for (const auto& [angle, width] : byAngle)
        widths.push_back({{"angle_deg", angle}, {"width_mm", rounded(width)}});
    json result = {{"state", procedure.law.states[set.state].id},
                   {"stage", procedure.law.states[set.state].stage},
                   {"pressure_mmhg", procedure.law.states[set.state].meanMmHg},
                   {"probe",
                    {{"apex_lps_mm", vectorJson(probe.apex.mm)},
                     {"beam_lps", vectorJson(probe.beam.mm)},
                     {"left_lps", vectorJson(probe.left.mm)},
                     {"up_lps", vectorJson(probe.up.mm)}}},
                   {"beam_to_landing_axis_deg",
                    rounded(std::acos(std::clamp(cosine, -1.0, 1.0)) * 180.0 / std::numbers::pi)},
                   {"landing_depth_mm", procedure.law.landingDepthMm},
                   {"end_systolic_frame", set.times.frameNearest(percent)},
                   {"end_systolic_landing_widths", widths},
                   {"sections", sectionsJson(heart, percent, depths)},
                   {"views", views}};
    if (const auto ellipse = ellipseThrough(byAngle))
        result["ellipse_through_widths"] = {
            {"longest_diameter_mm", rounded(ellipse->longestMm)},
            {"shortest_diameter_mm", rounded(ellipse->shortestMm)},
            {"perimeter_derived_diameter_mm", rounded(ellipse->perimeterDerivedMm)}};
    return result;
}

json dopplerJson(const Procedure& procedure, const DopplerImage& image) {
    json beats = json::array();
    for (const InflowBeat& beat : image.wholeBeats())
        beats.push_back({{"start_ms", beat.startMs},
                         {"end_ms", beat.endMs},
                         {"peak_m_per_s", beat.peakMPerS},
                         {"mean_gradient_mmhg", rounded(meanGradientMmHg(beat))},
                         {"velocity_time_integral_cm", rounded(velocityTimeIntegralCm(beat))}});
    json result = seriesJson(procedure, image.state, image.facts);
    result["mean_gradient_mmhg"] = rounded(image.meanGradientMmHg());
    result["heart_rate_per_min"] = rounded(image.heartRatePerMin());
    result["r_waves_ms"] = image.still.rWavesMs;
    result["beats"] = beats;
    return result;
}

json volumeJson(const Procedure& procedure, const EchoVolumeSeries& series, const std::vector<double>& depths) {
    const Eigen::Matrix4d matrix = series.patientFromVolume().matrix();
    json rows = json::array(), sections = json::array();
    for (int row = 0; row < 4; ++row)
        rows.push_back({rounded(matrix(row, 0)), rounded(matrix(row, 1)), rounded(matrix(row, 2)), rounded(matrix(row, 3))});
    for (const double percent : series.percents)
        sections.push_back(sectionsJson(procedure.heartIn(series.state).at(percent), percent, depths));
    json result = seriesJson(procedure, series.state, series.facts);
    result["volume_frame_of_reference_uid"] = series.volumeFrameOfReferenceUid;
    result["ct_from_volume"] = rows;
    result["spacing_mm"] = vectorJson(series.grid.spacingMm);
    result["times"] = sections; // lengths in the CT's frame of reference
    return result;
}

json widthJson(const TrueSection& section, const CArm& arm) {
    const ProjectedWidth width = projectedWidth(section, arm);
    return {{"width_mm", rounded(width.widthMm)},
            {"distance_mm", rounded(width.distanceMm)},
            {"first_px", pixelJson(width.firstPixel)},
            {"second_px", pixelJson(width.secondPixel)},
            {"source_to_centre_mm", rounded(width.centreDepthMm)},
            {"from_edge_on_deg", rounded(width.fromEdgeOnDeg)}};
}

json fluoroJson(const Procedure& procedure, const FluoroRun& run) {
    const CArm& arm = run.arm;
    const Heart heart = procedure.heartIn(run.state).at(procedure.law.percent);
    const int frame = run.fullFrameNearest(procedure.law.percent);
    json result = seriesJson(procedure, run.state, run.facts);
    result["primary_deg"] = arm.primaryDeg;
    result["secondary_deg"] = arm.secondaryDeg;
    result["isocentre_lps_mm"] = vectorJson(arm.isocentre.mm);
    result["source_lps_mm"] = vectorJson(arm.source().mm);
    result["towards_detector_lps"] = vectorJson(arm.towardsDetector().mm);
    result["right_lps"] = vectorJson(arm.right().mm);
    result["down_lps"] = vectorJson(arm.down().mm);
    result["sid_mm"] = arm.sidMm;
    result["sod_mm"] = arm.sodMm;
    result["imager_spacing_mm"] = arm.imagerSpacingMm;
    result["percent"] = procedure.law.percent;
    result["full_end_systolic_frame"] = frame;
    if (const auto ostium = trueOstium(heart.scene, heart.marks.circumflex, heart.marks.ridge))
        result["ostium"] = widthJson(ostium->section, arm);
    const core::Plane plane = landingPlane(heart, procedure.law.landingDepthMm);
    if (const auto landing = trueSection(heart.scene, plane, plane.point))
        result["landing_zone"] = widthJson(*landing, arm);
    const CatheterEdges edges = catheterEdges(run.catheter, arm, run.stationBeforeTipMm);
    result["catheter"] = {{"french", run.catheterFrench},
                          {"outer_diameter_mm", rounded(run.catheter.outerDiameterMm)},
                          {"before_tip_mm", run.stationBeforeTipMm},
                          {"centre_lps_mm", vectorJson(edges.centre.mm)},
                          {"first_px", pixelJson(edges.firstPixel)},
                          {"second_px", pixelJson(edges.secondPixel)},
                          {"source_to_centre_mm", rounded(arm.sidMm / arm.magnificationAt(edges.centre))},
                          {"tip_px", pixelJson(arm.pixelOf(run.catheter.course.back()))}};
    result["marks_px"] = {{"circumflex", pixelJson(arm.pixelOf(heart.marks.circumflex))},
                          {"ridge", pixelJson(arm.pixelOf(heart.marks.ridge))},
                          {"tip", pixelJson(arm.pixelOf(heart.marks.tip))}};
    return result;
}

json pressureJson(const PressureLaw& law) {
    json states = json::array();
    for (const PressureState& state : law.states)
        states.push_back({{"id", state.id},
                          {"stage", state.stage},
                          {"how", state.how},
                          {"date", state.date},
                          {"time", state.time},
                          {"mean_mmhg", state.meanMmHg},
                          {"v_wave_mmhg", state.vWaveMmHg},
                          {"landing_zone_perimeter_derived_diameter_mm", rounded(state.landingDiameterMm)}});
    return {{"law", "log"},
            {"slope_mm_per_mmhg_at_12", law.slopeAt12MmPerMmHg},
            {"landing_depth_mm", law.landingDepthMm},
            {"percent", law.percent},
            {"states", states}};
}

} // namespace

std::optional<WidthEllipse> ellipseThrough(const std::vector<std::pair<double, double>>& widths) {
    if (widths.size() < 3) return std::nullopt;
    Eigen::MatrixX3d design(static_cast<Eigen::Index>(widths.size()), 3);
    Eigen::VectorXd values(static_cast<Eigen::Index>(widths.size()));
    for (std::size_t i = 0; i < widths.size(); ++i) {
        const double twice = 2.0 * widths[i].first * std::numbers::pi / 180.0;
        design.row(static_cast<Eigen::Index>(i)) << 1.0, std::cos(twice), std::sin(twice);
        values[static_cast<Eigen::Index>(i)] = 4.0 / (widths[i].second * widths[i].second);
    }
    const Eigen::Vector3d fit = design.colPivHouseholderQr().solve(values);
    const double oval = std::hypot(fit[1], fit[2]);
    if (!(fit[0] > oval)) return std::nullopt;
    const double a = 1.0 / std::sqrt(fit[0] - oval), b = 1.0 / std::sqrt(fit[0] + oval);
    double perimeter = 0.0; // the trapezoidal rule converges geometrically on a period
    constexpr int kSteps = 256;
    for (int i = 0; i < kSteps; ++i) {
        const double t = 2.0 * std::numbers::pi * i / kSteps;
        perimeter += std::hypot(a * std::sin(t), b * std::cos(t)) * 2.0 * std::numbers::pi / kSteps;
    }
    return WidthEllipse{2.0 * a, 2.0 * b, perimeter / std::numbers::pi};
}

std::vector<std::pair<double, double>> landingWidths(const Procedure& procedure, const EchoSet& set, double percent) {
    const Heart heart =
        procedure.heartIn(set.state).at(set.times.percentAt(set.times.frameNearest(percent)));
    std::vector<std::pair<double, double>> widths;
    for (const EchoPlane& view : set.views)
        if (const auto chord = viewChord(heart, view, landingPlane(heart, procedure.law.landingDepthMm)))
            widths.emplace_back(view.angleDeg, chord->chord.lengthMm);
    return widths;
}

void addProcedureAnswers(const Procedure& procedure, const std::vector<double>& depths, json& answers) {
    answers["pixels"] = "x = column, y = row, counted from 0 at the centre of the top left pixel";
    answers["pressure"] = pressureJson(procedure.law);
    for (const EchoSet& set : procedure.echo)
        answers["echo"].push_back(echoJson(procedure, set, depths));
    for (const DopplerImage& image : procedure.doppler)
        answers["doppler"].push_back(dopplerJson(procedure, image));
    for (const EchoVolumeSeries& volume : procedure.volumes)
        answers["echo_volumes"].push_back(volumeJson(procedure, volume, depths));
    for (const FluoroRun& run : procedure.fluoro)
        answers["fluoroscopy"].push_back(fluoroJson(procedure, run));
}

} // namespace gauge::sample_case
