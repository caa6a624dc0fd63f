#include "sample-data/case/heart.h"

#include "sample-data/case/json_vector.h"
#include "sample-data/scene/parts.h"
#include "sample-data/scene/ridge.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <numbers>

namespace gauge::sample_case {
namespace {

using nlohmann::json;

/// A section wider than this share of the mouth reaches into the atrium.
constexpr double kWidestFlare = 1.25;

double radians(double degrees) {
    return degrees * std::numbers::pi / 180.0;
}

/// Knots [[s, value], …] with both members scaled, or a number that holds everywhere.
SmoothTable table(const json& value, double along = 1.0, double across = 1.0) {
    if (value.is_number()) return across * value.get<double>();
    std::vector<std::pair<double, double>> knots;
    for (const auto& [s, width] : value.get<std::vector<std::pair<double, double>>>())
        knots.emplace_back(along * s, across * width);
    return knots;
}

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

/// @return the gap between `shortHalfWidth` and the upper left vein's offset.
double addVeins(Scene& scene, const json& given, const Mouth& mouth, double shortHalfWidth,
                std::optional<double> gapMm) {
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
    if (gapMm)
        scene.veins = {veinAt(shortHalfWidth + *gapMm)};
    else
        gapMm = placeVeinForCrest(scene, mouth.towardsVein, left.at("ridge_crest_s").get<double>(),
                                  shortHalfWidth, shortHalfWidth + 24.0, veinAt) -
                shortHalfWidth;
    for (const json& other : given.at("others")) {
        const Eigen::Vector3d d = vectorFrom(other.at("direction")).normalized();
        scene.veins.push_back(veinTube(scene.atrium.surfacePoint(d) - 14.0 * d, d,
                                       Eigen::Vector3d::UnitZ().cross(d), {{110.0, 0.0, 0.0}},
                                       other.at("half_widths")));
    }
    return *gapMm;
}

void addVentricle(Scene& scene, const json& given, const Breathing& breath) {
    const Eigen::Vector3d apex = vectorFrom(given.at("towards_apex")).normalized();
    const double width = given.at("half_width").get<double>() * breath.ventricle;
    const double length = given.at("half_length").get<double>() * breath.ventricle;
    Ellipsoid ventricle;
    ventricle.centre =
        scene.atrium.surfacePoint(vectorFrom(given.at("towards_valve")).normalized()) + (length - 3.0) * apex;
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
        const Eigen::Vector3d from = vectorFrom(vessel.at("from")), to = vectorFrom(vessel.at("to"));
        scene.cavities.push_back({vessel.at("name").get<std::string>(),
                                  straightVessel(0.5 * (from + to), to - from,
                                                 vessel.at("radius").get<double>(), 0.5 * (to - from).norm()),
                                  vessel.at("hu").get<double>(), vessel.at("wall").get<double>(),
                                  vessel.at("keep_off").get<double>(), true});
    }
    for (const json& chamber : given.at("chambers"))
        scene.cavities.push_back({chamber.at("name").get<std::string>(),
                                  Ellipsoid{vectorFrom(chamber.at("centre")), Eigen::Matrix3d::Identity(),
                                            vectorFrom(chamber.at("half_axes"))},
                                  chamber.at("hu").get<double>(), chamber.at("wall").get<double>(),
                                  chamber.at("keep_off").get<double>(), true});
    for (const json& bone : given.at("bones"))
        scene.bones.push_back({straightVessel(vectorFrom(bone.at("through")), vectorFrom(bone.at("direction")),
                                              bone.at("radius").get<double>(), 140.0)});
    for (const json& fat : given.at("fat_bodies"))
        scene.fatBodies.push_back(
            {vectorFrom(fat.at("centre")), Eigen::Matrix3d::Identity(), vectorFrom(fat.at("half_axes"))});
    const json& chest = given.at("chest");
    const auto shell = [&](const char* name) {
        return Ellipsoid{vectorFrom(chest.at("centre")), Eigen::Matrix3d::Identity(), vectorFrom(chest.at(name))};
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
    placed.translate(vectorFrom(patient.at("heart_centre_lps_mm")));
    const Eigen::Vector3d turned = vectorFrom(patient.at("heart_turned_deg"));
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

/// A periodic course through the described phases.
SmoothTable course(const json& phases, const char* key) {
    std::vector<std::pair<double, double>> knots;
    for (const double beat : {-100.0, 0.0, 100.0})
        for (const json& phase : phases)
            knots.emplace_back(phase.at("percent").get<double>() + beat, phase.at(key).get<double>());
    std::sort(knots.begin(), knots.end());
    return knots;
}

} // namespace

Heart buildHeart(const json& given, const Breathing& breath, std::optional<double> veinGapMm) {
    Heart heart;
    Scene& scene = heart.scene;
    setTissues(scene, given);
    scene.atrium.semiAxes = breath.atrium * vectorFrom(given.at("atrium").at("half_axes"));
    const json& appendage = given.at("appendage");
    const Mouth mouth =
        mouthOf(scene.atrium, vectorFrom(appendage.at("outward")), vectorFrom(appendage.at("towards_vein")));
    scene.lobes = {mainLobe(appendage, mouth, breath)};
    const CentreCurve trunk = scene.lobes.front().curve;
    for (const json& lobe : appendage.at("side_lobes"))
        scene.lobes.push_back(sideLobe(lobe, trunk, breath));
    heart.veinGapMm = addVeins(scene, given.at("veins"), mouth, scene.lobes.front().semiB(0.0), veinGapMm);
    const json& marks = given.at("marks");
    const double below = marks.at("ridge_below_crest").get<double>();
    const RidgeCrest ridge = findRidgeCrest(scene, mouth.towardsVein, below);
    const Eigen::Vector3d circumflex =
        addPassingArtery(scene, mouth, circumflexOf(given.at("circumflex"), ridge.s + below));
    addVentricle(scene, given.at("ventricle"), breath);
    addSurroundings(scene, given);
    scene.patientFromScene = pose(given.at("patient"));

    heart.ridgeCrest = scene.patientFrom(ridge.crest);
    heart.marks.atrium = scene.patientFrom(vectorFrom(marks.at("atrium_from_centre")));
    heart.marks.tip =
        scene.patientFrom(trunk.at(trunk.lastS() - marks.at("tip_before_end").get<double>()).point);
    heart.marks.circumflex = scene.patientFrom(circumflex);
    heart.marks.ridge = scene.patientFrom(ridge.inside);
    heart.marks.aorta = scene.patientFrom(vectorFrom(marks.at("aorta_from_centre")));
    heart.widestMm = kWidestFlare * 2.0 * scene.lobes.front().semiA(0.0);
    return heart;
}

Heart BeatingHeart::at(double percent) const {
    const json& phases = m_given->at("phases");
    return buildHeart(*m_given,
                      {m_widthFactor * course(phases, "appendage_width")(percent),
                       course(phases, "appendage_length")(percent), course(phases, "atrium")(percent),
                       course(phases, "ventricle")(percent)},
                      m_veinGapMm);
}

OstiumPlane ostiumPlane(const Heart& heart) {
    const auto [normal, s] = ostiumDirection(heart.scene, heart.marks.circumflex, heart.marks.ridge);
    return {{heart.scene.patientFrom(heart.scene.lobes.front().curve.at(s).point),
             heart.scene.patientFromDirection(normal)},
            s};
}

core::Plane landingPlane(const Heart& heart, double depthMm) {
    const CentreCurve::Frame frame =
        heart.scene.lobes.front().curve.at(ostiumPlane(heart).axisS + depthMm);
    return {heart.scene.patientFrom(frame.point), heart.scene.patientFromDirection(frame.tangent)};
}

} // namespace gauge::sample_case
