#include "sample-data/case/sample_case.h"

#include "sample-data/scene/parts.h"
#include "sample-data/scene/ridge.h"

#include <nlohmann/json.hpp>

#include <numbers>

namespace gauge::sample_case {
namespace {

using nlohmann::json;

/// A section wider than this share of the mouth reaches into the atrium.
constexpr double kWidestFlare = 1.25;
constexpr std::string_view kFormat = "ostium-gauge/sample-case/1";

double radians(double degrees) {
    return degrees * std::numbers::pi / 180.0;
}

Eigen::Vector3d vector(const json& value) {
    const auto numbers = value.get<std::array<double, 3>>();
    return {numbers[0], numbers[1], numbers[2]};
}

/// Knots [[s, value], …] with both members scaled, or a number that holds everywhere.
SmoothTable table(const json& value, double along = 1.0, double across = 1.0) {
    if (value.is_number()) return across * value.get<double>();
    std::vector<std::pair<double, double>> knots;
    for (const auto& [s, width] : value.get<std::vector<std::pair<double, double>>>())
        knots.emplace_back(along * s, across * width);
    return knots;
}

/// How one phase differs from the described heart; factors.
struct Breathing {
    double width, length, atrium, ventricle;
};

Tube mainLobe(const json& given, const Mouth& mouth, const Breathing& breath) {
    const double begins = given.at("begins_at_s").get<double>();
    std::vector<CurvePiece> pieces;
    for (const json& piece : given.at("pieces"))
        pieces.push_back({piece.at("length").get<double>() * breath.length,
                          radians(piece.at("turn").get<double>()),
                          radians(piece.at("towards").get<double>())});
    Tube lobe;
    lobe.curve =
        CentreCurve(mouth.point + begins * mouth.outward, mouth.outward, mouth.alongRidge, begins, pieces);
    lobe.semiA = table(given.at("half_width_long"), breath.length, breath.width);
    lobe.semiB = table(given.at("half_width_short"), breath.length, breath.width);
    lobe.exponent = given.at("squareness").get<double>();
    lobe.twistRad = radians(given.at("twist").get<double>());
    lobe.twistPerMm = radians(given.at("twist_per_mm").get<double>());
    lobe.baseCapMm = 5.0;
    lobe.tipCapMm = given.at("tip_cap").get<double>() * breath.length;
    return lobe;
}

Tube sideLobe(const json& given, const CentreCurve& trunk, const Breathing& breath) {
    const double length = given.at("length").get<double>() * breath.length;
    Tube lobe = branchOf(trunk, given.at("at_s").get<double>() * breath.length,
                         radians(given.at("towards").get<double>()), radians(given.at("angle").get<double>()),
                         length);
    const double cap = given.at("tip_cap").get<double>();
    const double a = given.at("half_width_long").get<double>() * breath.width;
    const double b = given.at("half_width_short").get<double>() * breath.width;
    lobe.semiA = SmoothTable({{0.3 * length, a}, {length - cap, 0.85 * a}});
    lobe.semiB = SmoothTable({{0.3 * length, b}, {length - cap, 0.85 * b}});
    lobe.baseCapMm = 2.0;
    lobe.tipCapMm = cap;
    return lobe;
}

Tube veinTube(const Eigen::Vector3d& start, const Eigen::Vector3d& direction, const Eigen::Vector3d& normal,
              const std::vector<CurvePiece>& pieces, const json& halfWidths) {
    Tube vein;
    vein.curve = CentreCurve(start, direction, normal, 0.0, pieces);
    vein.semiA = halfWidths.at(0).get<double>();
    vein.semiB = halfWidths.at(1).get<double>();
    vein.baseCapMm = 14.0;
    vein.tipCapMm = 4.0;
    return vein;
}

void addVeins(Scene& scene, const json& given, const Mouth& mouth, double shortHalfWidth) {
    const json& left = given.at("upper_left");
    const double angle = radians(left.at("angle_from_appendage").get<double>());
    const Eigen::Vector3d direction = std::cos(angle) * mouth.outward + std::sin(angle) * mouth.towardsVein;
    const double bend = radians(left.at("bend").get<double>());
    const double bendTowards = radians(left.at("bend_towards").get<double>());
    const auto veinAt = [&](double offset) {
        constexpr double kBack = 17.0;
        return veinTube(
            mouth.point + offset * mouth.towardsVein - kBack * direction, direction, mouth.alongRidge,
            {{kBack + 12.0, 0.0, 0.0}, {50.0, bend, bendTowards}, {60.0, 0.0, 0.0}}, left.at("half_widths"));
    };
    placeVeinForCrest(scene, mouth.towardsVein, left.at("ridge_crest_s").get<double>(), shortHalfWidth,
                      shortHalfWidth + 24.0, veinAt);
    for (const json& other : given.at("others")) {
        const Eigen::Vector3d d = vector(other.at("direction")).normalized();
        scene.veins.push_back(veinTube(scene.atrium.surfacePoint(d) - 14.0 * d, d,
                                       Eigen::Vector3d::UnitZ().cross(d), {{110.0, 0.0, 0.0}},
                                       other.at("half_widths")));
    }
}

void addVentricle(Scene& scene, const json& given, const Breathing& breath) {
    const Eigen::Vector3d apex = vector(given.at("towards_apex")).normalized();
    const double width = given.at("half_width").get<double>() * breath.ventricle;
    const double length = given.at("half_length").get<double>() * breath.ventricle;
    Ellipsoid ventricle;
    ventricle.centre =
        scene.atrium.surfacePoint(vector(given.at("towards_valve")).normalized()) + (length - 3.0) * apex;
    ventricle.axes.col(2) = apex;
    ventricle.axes.col(0) = apex.unitOrthogonal();
    ventricle.axes.col(1) = apex.cross(ventricle.axes.col(0));
    ventricle.semiAxes = {width, width, length};
    scene.cavities.push_back({"left ventricle", ventricle, given.at("hu").get<double>(),
                              given.at("wall").get<double>() / breath.ventricle,
                              given.at("valve").get<double>(), true});
}

void addSurroundings(Scene& scene, const json& given) {
    for (const json& vessel : given.at("vessels")) {
        const Eigen::Vector3d from = vector(vessel.at("from")), to = vector(vessel.at("to"));
        scene.cavities.push_back({vessel.at("name").get<std::string>(),
                                  straightVessel(0.5 * (from + to), to - from,
                                                 vessel.at("radius").get<double>(), 0.5 * (to - from).norm()),
                                  vessel.at("hu").get<double>(), vessel.at("wall").get<double>(),
                                  vessel.at("keep_off").get<double>(), true});
    }
    for (const json& chamber : given.at("chambers"))
        scene.cavities.push_back({chamber.at("name").get<std::string>(),
                                  Ellipsoid{vector(chamber.at("centre")), Eigen::Matrix3d::Identity(),
                                            vector(chamber.at("half_axes"))},
                                  chamber.at("hu").get<double>(), chamber.at("wall").get<double>(),
                                  chamber.at("keep_off").get<double>(), true});
    for (const json& bone : given.at("bones"))
        scene.bones.push_back({straightVessel(vector(bone.at("through")), vector(bone.at("direction")),
                                              bone.at("radius").get<double>(), 140.0)});
    for (const json& fat : given.at("fat_bodies"))
        scene.fatBodies.push_back(
            {vector(fat.at("centre")), Eigen::Matrix3d::Identity(), vector(fat.at("half_axes"))});
    const json& chest = given.at("chest");
    const auto shell = [&](const char* name) {
        return Ellipsoid{vector(chest.at("centre")), Eigen::Matrix3d::Identity(), vector(chest.at(name))};
    };
    scene.chest = {{shell("inner"), shell("muscle"), shell("outer")}};
}

void setTissues(Scene& scene, const json& given) {
    const json& levels = given.at("levels_hu");
    scene.levels = {levels.at("atrium").get<double>(), levels.at("muscle").get<double>(),
                    levels.at("fat").get<double>(), levels.at("lung").get<double>(),
                    levels.at("soft_tissue").get<double>()};
    scene.veinHu = levels.at("veins").get<double>();
    scene.appendageShare = table(levels.at("appendage_share"));
    const json& tissue = given.at("tissue_mm");
    scene.wallMm = tissue.at("atrial_wall").get<double>();
    scene.fatMm = tissue.at("fat_around_heart").get<double>();
    scene.junctionFilletMm = tissue.at("junction_fillet").get<double>();
    scene.lobeFilletMm = tissue.at("lobe_fillet").get<double>();
    scene.ridgeFilletMm = tissue.at("ridge_fillet").get<double>();
}

Eigen::Isometry3d pose(const json& patient) {
    Eigen::Isometry3d placed = Eigen::Isometry3d::Identity();
    placed.translate(vector(patient.at("heart_centre_lps_mm")));
    const Eigen::Vector3d turned = vector(patient.at("heart_turned_deg"));
    for (int axis = 0; axis < 3; ++axis)
        placed.rotate(Eigen::AngleAxisd(radians(turned[axis]), Eigen::Vector3d(Eigen::Vector3d::Unit(axis))));
    return placed;
}

PassingArtery circumflexOf(const json& given, double ridgeMarkS) {
    PassingArtery artery;
    artery.s = ridgeMarkS + given.at("above_ridge_mark").get<double>();
    artery.turnedRad = radians(given.at("turned").get<double>());
    artery.tilt = given.at("tilt").get<double>();
    artery.gapMm = given.at("gap").get<double>();
    artery.radiusMm = given.at("radius").get<double>();
    artery.wallMm = given.at("wall").get<double>();
    artery.hu = given.at("hu").get<double>();
    return artery;
}

void setImaging(SamplePhase& phase, const json& given, const CtSeries& series, std::size_t index) {
    const json& imaging = given.at("imaging");
    const auto size = imaging.at("size").get<std::array<int, 3>>();
    phase.grid.size = {size[0], size[1], size[2]};
    phase.grid.spacingMm = vector(imaging.at("spacing_mm"));
    const Eigen::Vector3d middle =
        vector(given.at("patient").at("heart_centre_lps_mm")) + vector(imaging.at("centre_from_heart_mm"));
    phase.grid.firstVoxelMm =
        middle - 0.5 * ((phase.grid.size.array() - 1).cast<double>() * phase.grid.spacingMm.array()).matrix();
    phase.imaging.blurFwhmMm = imaging.at("blur_fwhm_mm").get<double>();
    phase.imaging.noiseSdHu = imaging.at("noise_sd_hu").get<double>();
    phase.imaging.noiseGrainFwhmMm = imaging.at("noise_grain_fwhm_mm").get<double>();
    phase.imaging.noiseSeed = imaging.at("noise_seed").get<std::uint64_t>() + index;
    phase.imaging.frameOfReferenceUid = uidFrom(series.uidText + "/frame of reference");
}

core::Result<SamplePhase> buildPhase(const json& given, const json& phaseGiven, const CtSeries& series,
                                     std::size_t index) {
    const Breathing breath{phaseGiven.at("appendage_width").get<double>(),
                           phaseGiven.at("appendage_length").get<double>(),
                           phaseGiven.at("atrium").get<double>(), phaseGiven.at("ventricle").get<double>()};
    SamplePhase phase;
    phase.percent = phaseGiven.at("percent").get<double>();
    Scene& scene = phase.scene;
    setTissues(scene, given);
    scene.atrium.semiAxes = breath.atrium * vector(given.at("atrium").at("half_axes"));
    const json& appendage = given.at("appendage");
    const Mouth mouth =
        mouthOf(scene.atrium, vector(appendage.at("outward")), vector(appendage.at("towards_vein")));
    scene.lobes = {mainLobe(appendage, mouth, breath)};
    const CentreCurve trunk = scene.lobes.front().curve;
    for (const json& lobe : appendage.at("side_lobes"))
        scene.lobes.push_back(sideLobe(lobe, trunk, breath));
    addVeins(scene, given.at("veins"), mouth, scene.lobes.front().semiB(0.0));
    const json& marks = given.at("marks");
    const double below = marks.at("ridge_below_crest").get<double>();
    const RidgeCrest ridge = findRidgeCrest(scene, mouth.towardsVein, below);
    const Eigen::Vector3d circumflex =
        addPassingArtery(scene, mouth, circumflexOf(given.at("circumflex"), ridge.s + below));
    addVentricle(scene, given.at("ventricle"), breath);
    addSurroundings(scene, given);
    scene.patientFromScene = pose(given.at("patient"));

    phase.ridgeCrest = scene.patientFrom(ridge.crest);
    phase.marks.atrium = scene.patientFrom(vector(marks.at("atrium_from_centre")));
    phase.marks.tip =
        scene.patientFrom(trunk.at(trunk.lastS() - marks.at("tip_before_end").get<double>()).point);
    phase.marks.circumflex = scene.patientFrom(circumflex);
    phase.marks.ridge = scene.patientFrom(ridge.inside);
    phase.marks.aorta = scene.patientFrom(vector(marks.at("aorta_from_centre")));
    const auto ostium = trueOstium(scene, phase.marks.circumflex, phase.marks.ridge);
    if (!ostium ||
        ostium->section.metrics.longestDiameterMm > kWidestFlare * 2.0 * scene.lobes.front().semiA(0.0))
        return core::failure(core::ErrorCode::InvalidArgument,
                             "Cannot build the sample case: at phase " + std::to_string(phase.percent) +
                                 " % the section through ridge and circumflex artery opens into the atrium.");
    phase.ostium = *ostium;
    setImaging(phase, given, series, index);
    return phase;
}

CtSeries seriesOf(const json& given) {
    CtSeries series;
    const json &patient = given.at("patient"), &study = given.at("study");
    series.patientName = patient.at("name").get<std::string>();
    series.patientId = patient.at("id").get<std::string>();
    series.birthDate = patient.at("birth_date").get<std::string>();
    series.sex = patient.at("sex").get<std::string>();
    series.studyDescription = study.at("description").get<std::string>();
    series.seriesDescription = study.at("series_description").get<std::string>();
    series.date = study.at("date").get<std::string>();
    series.time = study.at("time").get<std::string>();
    series.heartRatePerMin = study.at("heart_rate_per_min").get<double>();
    series.uidText = "ostium gauge sample case " + series.patientId + " " + series.date + series.time;
    return series;
}

} // namespace

core::Result<SampleCase> readSampleCase(std::string_view description) {
    try {
        const json given = json::parse(description);
        if (const auto format = given.at("format").get<std::string>(); format != kFormat)
            return core::failure(core::ErrorCode::InvalidArgument,
                                 "Cannot read the sample case: its format is \"" + format + "\" where \"" +
                                     std::string(kFormat) + "\" is needed.");
        SampleCase sample;
        sample.about = given.at("about").get<std::string>();
        sample.story = given.at("patient").at("story").get<std::string>();
        sample.series = seriesOf(given);
        sample.landingDepthsMm = given.at("landing_depths_mm").get<std::vector<double>>();
        for (const json& phaseGiven : given.at("phases")) {
            auto phase = buildPhase(given, phaseGiven, sample.series, sample.phases.size());
            if (!phase) return tl::unexpected(phase.error());
            sample.phases.push_back(*std::move(phase));
        }
        return sample;
    } catch (const json::exception& problem) {
        return core::failure(core::ErrorCode::InvalidArgument,
                             std::string("Cannot read the sample case: ") + problem.what() + ".");
    }
}

} // namespace gauge::sample_case
