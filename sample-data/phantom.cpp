#include "sample-data/phantom.h"

#include "sample-data/random.h"
#include "sample-data/scene/parts.h"
#include "sample-data/scene/ridge.h"

#include <Eigen/Geometry>
#include <cassert>
#include <cmath>
#include <cstdio>
#include <numbers>

namespace gauge::sample_case {
namespace {

constexpr double radians(double degrees) {
    return degrees * std::numbers::pi / 180.0;
}

/// The scene before it is posed has the patient's axes; directions seen from the atrium's centre.
const Eigen::Vector3d kTowardsAppendage = Eigen::Vector3d(0.75, -0.55, 0.35).normalized();
const Eigen::Vector3d kTowardsVein = Eigen::Vector3d(0.70, 0.45, 0.50).normalized();
const Eigen::Vector3d kTowardsMitralValve = Eigen::Vector3d(0.42, -0.45, -0.79).normalized();
const Eigen::Vector3d kTowardsApex = Eigen::Vector3d(0.60, -0.55, -0.58).normalized();

/// Where lobe 0 begins inside the atrium, s in mm; s = 0 is the atrium's surface.
constexpr double kBaseS = -14.0;
/// How deep in the fold the ridge is marked, mm.
constexpr double kRidgeMarkDepthMm = 1.0;

/// What a shape asks of the appendage; lengths in mm, along lobe 0's s.
struct Plan {
    double semiLong = 11.0; ///< half the longest width at the mouth, along the ridge
    double semiShort = 9.0; ///< half the width across, towards the vein
    double length = 30.0;   ///< from the atrium's surface to the apex
    double exponent = 2.0;
    double twistDeg = 0.0, twistPerMmDeg = 0.0;
    double tipShare = 0.85; ///< width before the cap against the width at the mouth
    double neck = 8.0;      ///< straight part before a bend
    double turnDeg = 0.0, bendRadius = 20.0;
    double bendTowardsDeg = 90.0; ///< 0: along the ridge; 90: away from the vein
    double fadeTo = 1.0;          ///< contrast at the tip against the atrium's
    int sideLobes = 0;
    bool veinAlongside = false;
};

Plan planFor(Shape shape, Random& random) {
    Plan plan;
    plan.twistDeg = random.uniform(-12.0, 12.0);
    plan.tipShare = random.uniform(0.75, 0.95);
    plan.length = random.uniform(26.0, 38.0);
    const auto oval = [&](double leastLong, double mostLong, double leastRatio, double mostRatio) {
        plan.semiLong = 0.5 * random.uniform(leastLong, mostLong);
        plan.semiShort = plan.semiLong * random.uniform(leastRatio, mostRatio);
    };
    switch (shape) {
    case Shape::RoundStraight:
        oval(16.0, 26.0, 0.96, 1.0);
        break;
    case Shape::Oval:
        oval(19.0, 29.0, 0.62, 0.8);
        plan.exponent = random.uniform(2.0, 2.4);
        plan.twistPerMmDeg = random.uniform(-0.8, 0.8);
        break;
    case Shape::SharplyBent:
        oval(17.0, 24.0, 0.62, 0.8);
        plan.semiShort = std::min(plan.semiShort, 7.6);
        plan.neck = random.uniform(8.5, 11.5);
        plan.turnDeg = random.uniform(84.0, 112.0);
        plan.bendRadius = plan.semiShort + random.uniform(2.6, 4.0);
        plan.bendTowardsDeg = 90.0 + random.uniform(-15.0, 15.0);
        plan.twistDeg = random.uniform(-6.0, 6.0);
        plan.tipShare = random.uniform(0.85, 1.0);
        plan.length = plan.neck + plan.bendRadius * radians(plan.turnDeg) + random.uniform(8.0, 12.0);
        break;
    case Shape::MultiLobed:
        oval(20.0, 28.0, 0.7, 0.9);
        plan.neck = random.uniform(11.5, 14.0);
        plan.turnDeg = random.uniform(20.0, 38.0);
        plan.bendRadius = random.uniform(16.0, 22.0);
        plan.sideLobes = random.whole(1, 2);
        plan.bendTowardsDeg = random.sign() * random.uniform(0.0, 35.0) + (random.unit() < 0.5 ? 0.0 : 180.0);
        plan.length = random.uniform(31.0, 40.0);
        break;
    case Shape::ShortWide:
        oval(24.0, 30.0, 0.72, 0.95);
        plan.exponent = random.uniform(2.0, 2.3);
        plan.length = random.uniform(19.0, 23.0);
        break;
    case Shape::NeighbourVein:
        oval(18.0, 26.0, 0.62, 0.85);
        plan.twistDeg = 0.0;
        plan.veinAlongside = true;
        plan.length = random.uniform(28.0, 38.0);
        break;
    case Shape::Faded:
        oval(18.0, 27.0, 0.65, 0.85);
        plan.fadeTo = random.uniform(0.52, 0.60);
        break;
    case Shape::WindsockCurved:
        oval(17.0, 25.0, 0.65, 0.9);
        plan.length = random.uniform(32.0, 42.0);
        plan.neck = random.uniform(6.5, 9.0);
        plan.turnDeg = random.uniform(28.0, 55.0);
        plan.bendRadius = (plan.length - plan.neck - 6.0) / radians(plan.turnDeg);
        plan.bendTowardsDeg = random.uniform(-10.0, 190.0);
        plan.tipShare = random.uniform(0.6, 0.8);
        break;
    case Shape::Funnel:
        oval(26.0, 30.0, 0.75, 0.95);
        plan.tipShare = random.uniform(0.4, 0.5);
        plan.length = random.uniform(30.0, 38.0);
        break;
    }
    return plan;
}

/// Lobe 0: from inside the atrium along the mouth's direction, round the bend, to the tip. Its frame's normal
/// lies along the ridge, its binormal points away from the vein.
Tube mainLobe(const Mouth& mouth, const Plan& plan) {
    std::vector<CurvePiece> pieces;
    if (plan.turnDeg > 0.0) {
        const double arc = plan.bendRadius * radians(plan.turnDeg);
        pieces = {{plan.neck - kBaseS, 0.0, 0.0},
                  {arc, radians(plan.turnDeg), radians(plan.bendTowardsDeg)},
                  {plan.length - plan.neck - arc, 0.0, 0.0}};
    } else {
        pieces = {{plan.length - kBaseS, 0.0, 0.0}};
    }
    Tube lobe;
    lobe.curve =
        CentreCurve(mouth.point + kBaseS * mouth.outward, mouth.outward, mouth.alongRidge, kBaseS, pieces);
    lobe.baseCapMm = 5.0;
    lobe.tipCapMm = std::min(0.35 * plan.length, 0.9 * plan.semiShort * plan.tipShare + 1.0);
    const double cap = plan.length - lobe.tipCapMm;
    const auto widths = [&](double atMouth) -> SmoothTable {
        double tip = plan.tipShare * atMouth;
        if (plan.sideLobes > 0) // the trunk parts into lobes of much the same width
            return {{{plan.neck - 4.0, atMouth}, {plan.neck + 6.0, 0.68 * atMouth}, {cap, 0.62 * atMouth}}};
        if (plan.veinAlongside) return {{{18.0, atMouth}, {std::max(cap, 20.0), tip}}};
        return {{{3.0, atMouth}, {0.5 * (cap + 3.0), 0.5 * (atMouth + tip) * 1.02}, {cap, tip}}};
    };
    lobe.semiA = widths(plan.semiLong);
    lobe.semiB = widths(plan.semiShort);
    lobe.exponent = plan.exponent;
    lobe.twistRad = radians(plan.twistDeg);
    lobe.twistPerMm = radians(plan.twistPerMmDeg);
    return lobe;
}

/// Side lobes leave the trunk near its end, to the side away from the main lobe's bend and from the vein.
void addSideLobes(Scene& scene, const Plan& plan, Random& random) {
    const CentreCurve trunk = scene.lobes.front().curve; // a copy: the list grows below
    for (int i = 0; i < plan.sideLobes; ++i) {
        // Opposite to the main lobe first; a second one away from the vein.
        const double towards = i == 0 ? radians(plan.bendTowardsDeg + 180.0 + random.uniform(-15.0, 15.0))
                                      : radians(90.0 + random.uniform(-15.0, 15.0));
        const double s = plan.neck - random.uniform(3.0, 5.0);
        const double angle = radians(random.uniform(38.0, 50.0));
        const double length = random.uniform(20.0, 26.0);
        Tube lobe = branchOf(trunk, s, towards, angle, length);
        const double width = random.uniform(4.8, 6.0);
        lobe.semiA = {{{4.0, width}, {length - 4.0, 0.9 * width}}};
        lobe.semiB = {{{4.0, 0.9 * width}, {length - 4.0, 0.8 * width}}};
        lobe.baseCapMm = 2.0;
        lobe.tipCapMm = 0.8 * width;
        scene.lobes.push_back(lobe);
    }
}

/// Upper left vein: leaves beside the appendage and runs to beyond the volume's border.
void addUpperLeftVein(Scene& scene, const Mouth& mouth, const Plan& plan, Phantom& phantom, Random& random) {
    const double radius = random.uniform(6.5, 8.5), flat = random.uniform(0.88, 1.0);
    const auto tube = [&](const Eigen::Vector3d& start, const Eigen::Vector3d& direction,
                          const std::vector<CurvePiece>& pieces) {
        Tube vein;
        vein.curve = CentreCurve(start, direction, mouth.alongRidge, 0.0, pieces);
        vein.semiA = radius;
        vein.semiB = radius * flat;
        vein.baseCapMm = 14.0;
        vein.tipCapMm = 4.0;
        return vein;
    };
    if (plan.veinAlongside) {
        phantom.veinGapMm = random.uniform(0.9, 1.5);
        const double alongside = random.uniform(13.0, 16.0);
        const double offset = plan.semiShort + phantom.veinGapMm + radius * flat;
        constexpr double kStartS = -18.0;
        // The vein's frame has its binormal away from the vein's side, like lobe 0: turn towards -90 degrees.
        scene.veins = {tube(mouth.point + kStartS * mouth.outward + offset * mouth.towardsVein, mouth.outward,
                            {{alongside - kStartS, 0.0, 0.0},
                             {22.0, radians(random.uniform(45.0, 60.0)), radians(-90.0)},
                             {60.0, 0.0, 0.0}})};
        scene.ridgeFilletMm = 0.4; // must not thin the wall between the lumens
        return;
    }
    const double angle = radians(random.uniform(36.0, 54.0));
    const Eigen::Vector3d direction = std::cos(angle) * mouth.outward + std::sin(angle) * mouth.towardsVein;
    const double bend = radians(random.uniform(5.0, 25.0)),
                 bendTowards = random.uniform(-std::numbers::pi, 0.0);
    const auto veinAt = [&](double offset) {
        constexpr double kBack = 17.0;
        return tube(mouth.point + offset * mouth.towardsVein - kBack * direction, direction,
                    {{kBack + 12.0, 0.0, 0.0}, {50.0, bend, bendTowards}, {40.0, 0.0, 0.0}});
    };
    placeVeinForCrest(scene, mouth.towardsVein, random.uniform(-0.6, 0.6), plan.semiShort,
                      plan.semiShort + 24.0, veinAt);
}

void addOtherVeins(Scene& scene, Random& random) {
    const auto vein = [&](const Eigen::Vector3d& direction) {
        const double radius = random.uniform(6.0, 8.0);
        const Eigen::Vector3d d = direction.normalized();
        Tube tube;
        tube.curve = CentreCurve(scene.atrium.surfacePoint(d) - 10.0 * d, d,
                                 Eigen::Vector3d::UnitZ().cross(d), 0.0, {{90.0, 0.0, 0.0}});
        tube.semiA = radius;
        tube.semiB = 0.9 * radius;
        tube.baseCapMm = tube.tipCapMm = 4.0;
        scene.veins.push_back(tube);
    };
    vein({0.62, 0.72, -0.30}); // lower left
    vein({-0.86, 0.35, 0.37}); // upper right
}

/// Circumflex artery: passes the ostium on the side away from the vein, in the groove below the appendage.
Eigen::Vector3d addCircumflex(Scene& scene, const Mouth& mouth, double ostiumS, Random& random) {
    PassingArtery artery;
    artery.radiusMm = random.uniform(1.4, 1.8);
    artery.turnedRad = radians(random.uniform(-25.0, 25.0));
    artery.s = ostiumS + random.uniform(0.0, 2.0);
    artery.gapMm = random.uniform(0.2, 1.5);
    artery.tilt = 0.25 * random.uniform(-1.0, 1.0);
    artery.hu = random.uniform(0.85, 1.0) * scene.levels.atriumHu;
    return addPassingArtery(scene, mouth, artery);
}

void addVentricle(Scene& scene, Random& random) {
    const Eigen::Vector3d valve = scene.atrium.surfacePoint(kTowardsMitralValve);
    Ellipsoid ventricle;
    const double width = random.uniform(22.0, 26.0), length = random.uniform(40.0, 46.0);
    ventricle.centre = valve + (length - 3.0) * kTowardsApex;
    ventricle.axes.col(2) = kTowardsApex;
    ventricle.axes.col(0) = kTowardsApex.unitOrthogonal();
    ventricle.axes.col(1) = kTowardsApex.cross(ventricle.axes.col(0));
    ventricle.semiAxes = {width, width, length};
    scene.cavities.push_back({"left ventricle", ventricle, random.uniform(0.9, 1.05) * scene.levels.atriumHu,
                              random.uniform(8.0, 10.0), 2.2, true});
}

/// @return a point on the ascending aorta's axis beside the atrium.
Eigen::Vector3d addAortaAndSpine(Scene& scene, Random& random) {
    const Eigen::Vector3d ascending{-18.0, -scene.atrium.semiAxes.y() - 17.0, 8.0};
    const double radius = random.uniform(13.0, 15.5);
    scene.cavities.push_back({"ascending aorta", straightVessel(ascending, {-0.08, 0.12, 1.0}, radius, 70.0),
                              random.uniform(0.95, 1.1) * scene.levels.atriumHu, 2.0, 4.0, true});
    const Eigen::Vector3d descending{14.0, scene.atrium.semiAxes.y() + 15.0, 0.0};
    scene.cavities.push_back({"descending aorta", straightVessel(descending, {0.0, 0.02, 1.0}, 11.5, 90.0),
                              random.uniform(0.9, 1.05) * scene.levels.atriumHu, 1.8, 4.0, true});
    scene.bones.push_back(
        {straightVessel({-14.0, scene.atrium.semiAxes.y() + 30.0, 0.0}, {0.0, 0.0, 1.0}, 16.0, 100.0)});
    return ascending;
}

/// Turns the whole scene by up to 25 degrees about each axis and puts it somewhere in the patient.
Eigen::Isometry3d randomPose(Random& random) {
    Eigen::Isometry3d pose = Eigen::Isometry3d::Identity();
    pose.translate(Eigen::Vector3d(random.uniform(-30.0, 30.0), random.uniform(-60.0, 20.0),
                                   random.uniform(-300.0, 100.0)));
    for (const Eigen::Vector3d& axis :
         {Eigen::Vector3d(Eigen::Vector3d::UnitX()), Eigen::Vector3d(Eigen::Vector3d::UnitY()),
          Eigen::Vector3d(Eigen::Vector3d::UnitZ())})
        pose.rotate(Eigen::AngleAxisd(radians(random.uniform(-25.0, 25.0)), axis));
    return pose;
}

/// First place along a ray from `from` whose tissue is `wanted`, `marginMm` deep in it.
std::optional<Eigen::Vector3d> find(const Scene& scene, Tissue wanted, const Eigen::Vector3d& from,
                                    const Eigen::Vector3d& direction, double marginMm) {
    for (double t = 0.0; t < 70.0; t += 0.25)
        if (scene.tissueAt(from + t * direction) == wanted &&
            scene.tissueAt(from + (t + 2.0 * marginMm) * direction) == wanted)
            return from + (t + marginMm) * direction;
    return std::nullopt;
}

void chooseWrongSeeds(Phantom& phantom, const Mouth& mouth, const Eigen::Vector3d& circumflex) {
    const Scene& scene = phantom.scene;
    const auto place = [&](const Eigen::Vector3d& x) { return scene.patientFrom(x); };
    const CentreCurve& vein = scene.veins.front().curve;
    double s = vein.nearest(scene.sceneFrom(phantom.ridgeCrest)).s;
    while (scene.atrium.distance(vein.at(s).point) < 25.0)
        s += 0.5;
    phantom.wrong.vein = place(vein.at(s).point);
    const auto& ventricle = std::get<Ellipsoid>(scene.cavities[1].solid);
    phantom.wrong.ventricle = place(ventricle.centre - (ventricle.semiAxes.z() - 19.0) * kTowardsApex);
    phantom.wrong.artery = place(circumflex);
    const CentreCurve::Frame middle = scene.lobes.front().curve.at(0.45 * scene.lobes.front().curve.lastS());
    phantom.wrong.wall = place(placeClearOfPool(scene, middle.point, middle.binormal, 0.5 * scene.wallMm));
    const std::array<Eigen::Vector3d, 5> ways{mouth.outward, middle.binormal,
                                              Eigen::Vector3d(-mouth.alongRidge), mouth.alongRidge,
                                              Eigen::Vector3d::UnitZ()};
    const Eigen::Vector3d apex = scene.lobes.front().curve.at(scene.lobes.front().curve.lastS()).point;
    for (const Eigen::Vector3d& way : ways)
        for (const auto& [tissue, margin, seed] :
             {std::tuple{Tissue::Fat, 0.35 * scene.fatMm, &phantom.wrong.fat},
              std::tuple{Tissue::Lung, 2.5, &phantom.wrong.lung}})
            if (const auto found = find(scene, tissue, apex, way, margin); found && seed->mm.isZero())
                seed->mm = place(*found).mm;
    const Eigen::Vector3d half =
        0.5 * (phantom.grid.size.cast<double>().cwiseProduct(phantom.grid.spacingMm));
    phantom.wrong.outside = {phantom.grid.firstVoxelMm +
                             phantom.grid.axes * Eigen::Vector3d(-15.0, half.y(), half.z())};
}

Marks chooseMarks(const Scene& scene, const Eigen::Vector3d& circumflex, const RidgeCrest& ridge,
                  const Eigen::Vector3d& aorta, Random& random) {
    Marks marks;
    const Eigen::Vector3d anywhere(random.uniform(-1.0, 1.0), random.uniform(-1.0, 1.0),
                                   random.uniform(-1.0, 1.0));
    marks.atrium = scene.patientFrom(scene.atrium.centre + 6.0 * anywhere);
    const CentreCurve& curve = scene.lobes.front().curve;
    const double s = curve.lastS() - random.uniform(3.2, 5.5);
    const CentreCurve::Frame frame = curve.at(s);
    const double a = scene.lobes.front().semiA(s), b = scene.lobes.front().semiB(s);
    marks.tip = scene.patientFrom(frame.point + 0.25 * a * random.uniform(-1.0, 1.0) * frame.normal +
                                  0.25 * b * random.uniform(-1.0, 1.0) * frame.binormal);
    marks.circumflex = scene.patientFrom(circumflex);
    marks.ridge = scene.patientFrom(ridge.inside);
    marks.aorta = scene.patientFrom(aorta);
    return marks;
}

void chooseImaging(Phantom& phantom, const PhantomOptions& options, const Eigen::Vector3d& centre,
                   Random& random) {
    const double inPlane = random.uniform(0.35, 0.6), between = random.uniform(0.35, 0.6);
    const double blur = random.uniform(0.5, 0.9), noise = random.uniform(15.0, 40.0);
    const Eigen::Vector3d offset(random.unit(), random.unit(), random.unit());
    const Eigen::Vector3d spacing = options.spacingMm.value_or(Eigen::Vector3d(inPlane, inPlane, between));
    Eigen::Matrix3d axes = Eigen::Matrix3d::Identity();
    if (options.obliqueGrid)
        axes = (Eigen::AngleAxisd(radians(random.uniform(-30.0, 30.0)), Eigen::Vector3d::UnitX()) *
                Eigen::AngleAxisd(radians(random.uniform(-30.0, 30.0)), Eigen::Vector3d::UnitY()))
                   .toRotationMatrix();
    const core::PatientPoint middle{phantom.scene.patientFrom(centre).mm + offset.cwiseProduct(spacing)};
    phantom.grid = RasterGrid::centredOn(middle, options.extentMm, spacing, axes);
    phantom.imaging.blurFwhmMm = options.blurFwhmMm.value_or(std::max(blur, 0.7 * spacing.maxCoeff()));
    phantom.imaging.noiseSdHu = options.noiseSdHu.value_or(noise);
    phantom.imaging.noiseGrainFwhmMm = options.noiseGrainFwhmMm;
    phantom.imaging.noiseSeed = random.bits();
    phantom.imaging.frameOfReferenceUid = "2.25." + std::to_string(random.bits());
}

TissueLevels drawLevels(Random& random) {
    TissueLevels levels;
    levels.atriumHu = random.uniform(300.0, 450.0);
    levels.muscleHu = random.uniform(60.0, 110.0);
    levels.fatHu = random.uniform(-105.0, -80.0);
    levels.lungHu = random.uniform(-880.0, -820.0);
    return levels;
}

std::optional<Phantom> draw(Shape shape, std::uint64_t seed, std::uint64_t attempt,
                            const PhantomOptions& options) {
    Random random(seed, 1000 * static_cast<std::uint64_t>(shape) + attempt);
    const Plan plan = planFor(shape, random);
    Phantom phantom;
    phantom.shape = shape;
    phantom.seed = seed;
    Scene& scene = phantom.scene;
    scene.levels = drawLevels(random);
    scene.wallMm = random.uniform(1.5, 2.5);
    scene.fatMm = random.uniform(1.5, 5.0);
    scene.atrium.semiAxes = {random.uniform(25.0, 31.0), random.uniform(22.0, 27.0),
                             random.uniform(26.0, 32.0)};
    const Mouth mouth = mouthOf(scene.atrium, kTowardsAppendage, kTowardsVein);
    scene.lobes = {mainLobe(mouth, plan)};
    addSideLobes(scene, plan, random);
    addUpperLeftVein(scene, mouth, plan, phantom, random);
    addOtherVeins(scene, random);
    scene.veinHu = scene.levels.atriumHu + random.uniform(-10.0, 30.0);
    const double share = plan.fadeTo < 1.0 ? plan.fadeTo : random.uniform(0.9, 1.0);
    scene.appendageShare =
        SmoothTable({{0.0, 1.0}, {0.5 * plan.length, 0.5 * (1.0 + share)}, {plan.length, share}});

    const RidgeCrest ridge = findRidgeCrest(scene, mouth.towardsVein, kRidgeMarkDepthMm);
    const Eigen::Vector3d circumflex = addCircumflex(scene, mouth, ridge.s + kRidgeMarkDepthMm, random);
    addVentricle(scene, random);
    const Eigen::Vector3d aorta = addAortaAndSpine(scene, random);
    scene.patientFromScene = randomPose(random);

    phantom.marks = chooseMarks(scene, circumflex, ridge, aorta, random);
    phantom.ridgeCrest = scene.patientFrom(ridge.crest);
    const auto ostium = trueOstium(scene, phantom.marks.circumflex, phantom.marks.ridge);
    if (!ostium || ostium->section.metrics.longestDiameterMm > 2.0 * plan.semiLong + 4.0) return std::nullopt;
    phantom.ostium = *ostium;
    phantom.turnDeg = plan.turnDeg;
    if (plan.turnDeg > 0.0)
        phantom.bendAtMm = plan.neck + 0.5 * plan.bendRadius * radians(plan.turnDeg) - ostium->axisS;
    chooseImaging(phantom, options, mouth.point - 2.0 * mouth.outward, random);
    chooseWrongSeeds(phantom, mouth, circumflex);
    return phantom;
}

} // namespace

std::string_view name(Shape shape) {
    switch (shape) {
    case Shape::RoundStraight:
        return "round-straight";
    case Shape::Oval:
        return "oval";
    case Shape::SharplyBent:
        return "sharply-bent";
    case Shape::MultiLobed:
        return "multi-lobed";
    case Shape::ShortWide:
        return "short-wide";
    case Shape::NeighbourVein:
        return "neighbour-vein";
    case Shape::Faded:
        return "faded";
    case Shape::WindsockCurved:
        return "windsock-curved";
    case Shape::Funnel:
        return "funnel";
    }
    return "";
}

std::optional<Shape> shapeNamed(std::string_view wanted) {
    for (const Shape shape : kShapes)
        if (name(shape) == wanted) return shape;
    return std::nullopt;
}

Phantom makePhantom(Shape shape, std::uint64_t seed, const PhantomOptions& options) {
    for (std::uint64_t attempt = 0;; ++attempt)
        if (auto phantom = draw(shape, seed, attempt, options)) return *std::move(phantom);
}

std::string Phantom::description() const {
    char text[160];
    std::snprintf(text, sizeof text,
                  "%s seed %llu: voxels %.2f x %.2f x %.2f mm, blur %.2f mm, noise %.0f HU",
                  std::string(name(shape)).c_str(), static_cast<unsigned long long>(seed), grid.spacingMm.x(),
                  grid.spacingMm.y(), grid.spacingMm.z(), imaging.blurFwhmMm, imaging.noiseSdHu);
    return text;
}

std::shared_ptr<const core::Volume> Phantom::rasterise(std::uint64_t noiseDraw) const {
    RasterOptions drawn = imaging;
    drawn.noiseSeed += noiseDraw * 0x9E3779B97F4A7C15ull;
    auto volume = sample_case::rasterise(scene, grid, drawn);
    assert(volume);
    return volume ? *volume : nullptr;
}

} // namespace gauge::sample_case
