#include "core/anatomy/appendage.h"

#include "core/anatomy/appendage_cut.h"
#include "core/anatomy/appendage_trace.h"
#include "core/anatomy/axis.h"
#include "core/anatomy/edge_blur.h"
#include "core/anatomy/findings.h"
#include "core/anatomy/landing.h"
#include "core/anatomy/mask_walks.h"
#include "core/anatomy/neck.h"
#include "core/anatomy/ostium.h"
#include "core/anatomy/seed_checks.h"
#include "core/anatomy/refit.h"
#include "core/measure/section_measure.h"
#include "core/parallel/cancelled.h"
#include "core/parallel/parallel_for.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>
#include <utility>

namespace gauge::core {
namespace {

constexpr double kMarginMm = 35.0, kWiderMarginMm = 70.0; // of blood looked at around the seeds
constexpr double kSlowMm = 1.0;           // slices farther apart than this are coarse for this job
/// Standard uncertainty of the axis' length from its course and from where the tip's wall is called the end; found on
/// phantoms (DEVELOPERS.md, "Accuracy").
constexpr double kAxisCourseMm = 0.5;
constexpr double kFarthestPlaceMm = 0.2;
/// Standard uncertainty of the wall's mean place in the counted volume, mm.
constexpr double kVolumeWallMm = 0.05;

std::string lps(const PatientPoint& p) {
    const auto whole = [](double v) { return std::to_string(std::lround(v)); };
    return "(" + whole(p.mm.x()) + ", " + whole(p.mm.y()) + ", " + whole(p.mm.z()) + ") mm";
}

Result<void> checkInputs(const Volume& volume, const AppendageMarks& marks, const AppendageOptions& options) {
    const auto inside = [&](const char* name, const PatientPoint& p) -> Result<void> {
        if (!p.mm.allFinite())
            return failure(ErrorCode::InvalidArgument,
                           std::string("Cannot measure: the ") + name + " point is not a finite place.");
        if (volume.contains(p))
            return {};
        const PatientPoint a = volume.patientFrom({Eigen::Vector3d::Zero()});
        const PatientPoint b = volume.patientFrom({(volume.size().array() - 1).cast<double>().matrix()});
        return failure(ErrorCode::SeedOutsideVolume,
                       std::string("Cannot measure: the ") + name + " point " + lps(p) +
                           " lies outside the images, which reach from " + lps(a) + " to " + lps(b) +
                           ". Mark it on the images of this series.",
                       {{"point", lps(p)}});
    };
    if (auto r = inside("atrium", marks.atrium); !r)
        return r;
    if (auto r = inside("tip", marks.tip); !r)
        return r;
    if (marks.aorta)
        if (auto r = inside("aorta", *marks.aorta); !r)
            return r;
    if (marks.circumflex.has_value() != marks.ridge.has_value())
        return failure(ErrorCode::InvalidArgument,
                       "Cannot place the ostium: circumflex and ridge points are needed together; one was given.");
    if (options.plugLandingMm && !marks.circumflex)
        return failure(ErrorCode::InvalidArgument,
                       "Cannot place the plug plane: it needs the circumflex and ridge points.");
    const bool badDepth = std::any_of(options.landingDepthsMm.begin(), options.landingDepthsMm.end(),
                                      [](double d) { return !(d > 0.0) || !std::isfinite(d); });
    if (badDepth || (options.plugLandingMm && !(*options.plugLandingMm > 0.0)) || !(options.profileStepMm > 0.0))
        return failure(ErrorCode::InvalidArgument,
                       "Cannot measure: landing depths and the profile's step must be positive lengths in mm.");
    return {};
}

/// Pool, line and ostium of one try with a given margin.
struct Traced {
    BloodPool pool;
    Neck neck;
    OstiumPlane ostium;
    Section ostiumSection;
    AppendageCut cut;
};

/// The lobe's far end as seen from the atrium: where the way through the middle starts.
std::size_t farEnd(const BloodPool& pool) {
    return farthestOfLobe(pool.mask, {pool.atriumNode}, pool.tipNode);
}

std::vector<PatientPoint> placesOf(const BoxGrid& grid, const std::vector<std::size_t>& nodes) {
    std::vector<PatientPoint> places;
    places.reserve(nodes.size());
    for (const std::size_t n : nodes)
        places.push_back(grid.patientFrom(n));
    return places;
}

Result<OstiumPlane> ostiumPlane(const Neck& neck, const AppendageMarks& marks) {
    if (marks.ostium)
        return ostiumFromPlane(neck, *marks.ostium);
    if (marks.circumflex && marks.ridge)
        return ostiumFromLandmarks(neck, *marks.circumflex, *marks.ridge);
    return proposeOstium(neck);
}

PlacementSpread spreadOf(const OstiumPlane& ostium) {
    return ostium.proposed ? PlacementSpread::proposed() : PlacementSpread::confirmed();
}

/// A place for the ostium and what it cuts off.
struct OstiumCut {
    Section section;
    AppendageCut cut;
};

Result<OstiumCut> cutAt(const Volume& volume, const BloodPool& pool, const OstiumPlane& ostium) {
    SectionOptions options;
    options.placement = spreadOf(ostium);
    auto section = measureSection(volume, frameOf(ostium.plane), pool.guideAt(ostium.plane.point), options);
    if (!section)
        return failure(section.error().code == ErrorCode::SectionOpen ? ErrorCode::OstiumNotFound
                                                                      : section.error().code,
                       "Cannot measure the ostium: " +
                           std::string(ostium.proposed
                                           ? "no closed section was found where the appendage seems to begin. Mark the "
                                             "circumflex and ridge points. "
                                           : "the section in its plane is not closed. Move the plane or the marks "
                                             "towards the tip. ") +
                           section.error().message,
                       section.error());
    auto cut = cutAppendage(volume, pool, *section, pool.tipNode);
    if (!cut)
        return tl::make_unexpected(std::move(cut.error()));
    return OstiumCut{std::move(*section), std::move(*cut)};
}

/// Whether a proposed section belongs to a tube: its centre lies near the axis, and a little deeper the tube is about as
/// wide.
bool continuesTheNeck(const Volume& volume, const BloodPool& pool, const Polyline& axis, const OstiumPlane& ostium,
                      const Section& section) {
    constexpr double kDeeperMm = 2.0, kWiderThanDeeper = 1.12, kAside = 0.15;
    const double width = section.metrics.areaDerivedDiameterMm.value;
    if (distanceMm(section.center, ostium.plane.point) > kAside * width)
        return false;
    const double s = std::max(0.0, ostium.axisMm - kDeeperMm);
    const SectionFrame frame = frameOf({axis.pointAt(s), -axis.tangentAt(s, 1.0)});
    const auto deeper = measureSection(volume, frame, pool.guideAt(frame.origin), {std::nullopt, false});
    return deeper && width <= kWiderThanDeeper * deeper->metrics.areaDerivedDiameterMm.value;
}

/// The cut at the ostium. A proposal that opens into the atrium or a vein steps towards the tip until it is a section
/// of the neck; each step makes it less sure.
Result<OstiumCut> cutAtOstium(const Volume& volume, const BloodPool& pool, const Neck& neck, OstiumPlane& ostium) {
    constexpr double kStepMm = 0.5, kTipMm = 3.0, kLessSure = 0.95;
    constexpr int kMostSteps = 24;
    const auto axis = Polyline::make(neck.axis);
    if (!axis)
        return tl::make_unexpected(axis.error());
    for (int step = 0;; ++step) {
        auto result = cutAt(volume, pool, ostium);
        const bool good =
            result && !result->cut.leavesBox && continuesTheNeck(volume, pool, *axis, ostium, result->section);
        if (good || !ostium.proposed || step >= kMostSteps || ostium.axisMm <= kTipMm)
            return result;
        ostium.axisMm -= kStepMm;
        ostium.plane = {axis->pointAt(ostium.axisMm), -axis->tangentAt(ostium.axisMm, 1.0)};
        ostium.confidence = *ostium.confidence * kLessSure;
    }
}

/// Centre line and neck from the far end `far` of the lobe.
Result<Neck> neckFrom(const BloodPool& pool, std::size_t far) {
    const auto way = middleWay(pool.depth, far, pool.atriumNode);
    if (way.size() < 8)
        return failure(ErrorCode::NoNeckBetweenSeeds,
                       "Cannot measure: the two seeds lie in the same place of the blood; put the tip seed into the "
                       "appendage's lobe and the atrium seed into the atrium.");
    if (auto ok = checkAtriumSeed(pool, way); !ok)
        return tl::make_unexpected(std::move(ok.error()));
    const auto line = centreLine(pool, placesOf(pool.mask.grid, way));
    if (!line)
        return tl::make_unexpected(line.error());
    const auto whole = Polyline::make(prolongedToWall(pool, line->points()));
    if (!whole)
        return tl::make_unexpected(whole.error());
    return findNeck(pool, *whole);
}

bool nearBoxFace(const BoxGrid& grid, std::size_t node) {
    const Eigen::Vector3i n = grid.node(node);
    return (n.array() < 2).any() || (n.array() >= grid.size.array() - 2).any();
}

bool nearVolumeEdge(const Volume& volume, const PatientPoint& p) {
    constexpr double kVoxels = 3.0;
    const Eigen::Array3d c = volume.voxelFrom(p).ijk.array();
    const Eigen::Array3d last = (volume.size().array() - 1).cast<double>();
    return (c < kVoxels).any() || (c > last - kVoxels).any();
}

tl::unexpected<Error> runsOutOfImages() {
    return failure(ErrorCode::SeedInVein,
                   "Cannot measure: the blood beyond the tip seed runs on to the edge of the images. Either the seed "
                   "lies in a pulmonary vein, or the appendage is not wholly in the images; put the seed into the "
                   "appendage or choose a series that holds all of it.");
}

Result<Traced> traceOnce(const Volume& volume, const AppendageMarks& marks, double marginMm, const WorkContext& work) {
    auto found = findBloodPool(volume, marks.atrium, marks.tip, marginMm, work);
    if (!found)
        return tl::make_unexpected(std::move(found.error()));
    Traced traced;
    traced.pool = std::move(*found);
    work.report(0.4);
    if (auto ok = checkTipSeed(traced.pool); !ok)
        return tl::make_unexpected(std::move(ok.error()));

    std::size_t far = farEnd(traced.pool);
    if (nearBoxFace(traced.pool.mask.grid, far)) {
        if (nearVolumeEdge(volume, traced.pool.mask.grid.patientFrom(far)))
            return runsOutOfImages();
        if (marginMm < kWiderMarginMm)
            return traceOnce(volume, marks, kWiderMarginMm, work);
    }
    // Again: the first ostium tells what is appendage, and with it where its lobe really ends.
    constexpr int kRounds = 3;
    for (int round = 0; round < kRounds; ++round) {
        if (work.stopped())
            return cancelled("Measuring");
        auto neck = neckFrom(traced.pool, far);
        if (!neck)
            return tl::make_unexpected(std::move(neck.error()));
        traced.neck = std::move(*neck);
        if (round == 0)
            traced.pool.edgeSigmaMm = edgeBlurMm(volume, traced.pool, traced.neck);
        auto ostium = ostiumPlane(traced.neck, marks);
        if (!ostium)
            return tl::make_unexpected(std::move(ostium.error()));
        traced.ostium = std::move(*ostium);
        auto result = cutAtOstium(volume, traced.pool, traced.neck, traced.ostium);
        if (!result)
            return tl::make_unexpected(std::move(result.error()));
        traced.ostiumSection = std::move(result->section);
        traced.cut = std::move(result->cut);
        const std::size_t end = farthestOfLobe(traced.cut.mask, traced.cut.threshold, traced.pool.tipNode);
        const auto& grid = traced.pool.mask.grid;
        if (distanceMm(grid.patientFrom(end), grid.patientFrom(far)) < 1.5)
            break;
        far = end;
    }
    return traced;
}

Result<Traced> trace(const Volume& volume, const AppendageMarks& marks, const WorkContext& work) {
    auto traced = traceOnce(volume, marks, kMarginMm, work);
    if (traced && traced->cut.leavesBox && !traced->cut.leavesVolume)
        traced = traceOnce(volume, marks, kWiderMarginMm, work);
    if (!traced)
        return traced;
    if (traced->cut.leavesVolume)
        return runsOutOfImages();
    constexpr double kLongestMm = 95.0;
    if (traced->ostium.axisMm > kLongestMm)
        return failure(ErrorCode::SeedInVein,
                       "Cannot measure: the tube from the atrium to the tip seed is longer than any appendage (" +
                           std::to_string(std::lround(traced->ostium.axisMm)) +
                           " mm). The tip seed seems to lie in a vein; put it into the appendage.");
    return traced;
}

AppendageTrace traceOf(Traced traced) {
    // From the neck's axis (tip first) to one that runs to the tip.
    std::vector<PatientPoint> points(traced.neck.axis.rbegin(), traced.neck.axis.rend());
    auto axis = Polyline::make(points).value(); // made from a polyline that stood
    const double ostiumAt = axis.lengthMm() - traced.ostium.axisMm;
    return AppendageTrace{std::move(traced.pool),
                          std::move(traced.cut.mask),
                          std::move(axis),
                          ostiumAt,
                          Plane{traced.ostiumSection.center, traced.ostium.plane.normal},
                          spreadOf(traced.ostium)};
}

Estimate estimate(double value, double edge, double plane, std::string method) {
    Estimate e;
    e.value = value;
    e.components.edge = edge;
    e.components.plane = plane;
    e.method = std::move(method);
    return e;
}

void fillDepthAndVolume(const AppendageTrace& t, const AppendageCut& cut, AppendageMeasurement& m) {
    const double shift = t.spread.shiftMm;
    const double tilt = t.spread.tiltDeg * std::numbers::pi / 180.0;
    m.depthAlongAxisMm = estimate(t.lengthMm(), kAxisCourseMm, shift,
                                  "length of the axis from the ostium to the wall at the lobe's far end");
    const PatientVector aside = (cut.farthest - t.ostium.point) - cut.farthestMm * t.ostium.normal;
    m.depthFromOstiumPlaneMm =
        estimate(cut.farthestMm, kFarthestPlaceMm, std::hypot(shift, tilt * aside.norm()),
                 "greatest distance from the ostium plane to the wall of the appendage");
    const double area = m.ostium.section.metrics.areaMm2.value;
    // A tilt about the centroid moves as much in as out; what is left is second order and not counted.
    m.volumeMl = estimate(cut.volumeMl, cut.surfaceMm2 * kVolumeWallMm / 1000.0, area * shift / 1000.0,
                          "voxels above the local half value beyond the ostium");
}

void fillProfile(const Volume& volume, const AppendageTrace& t, double stepMm, const WorkContext& work,
                 AppendageMeasurement& m) {
    const auto count = static_cast<std::size_t>(t.lengthMm() / stepMm) + 1;
    std::vector<std::optional<Section>> sections(count);
    parallelFor(count, 2, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end && !work.stopped(); ++i) {
            auto section = sectionAt(volume, t, static_cast<double>(i) * stepMm);
            if (section)
                sections[i] = std::move(*section);
        }
    });
    std::size_t missing = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const double s = static_cast<double>(i) * stepMm;
        if (sections[i])
            m.profile.push_back({s, std::move(*sections[i])});
        else if (s > 3.0 && s < t.lengthMm() - 2.0)
            ++missing; // the first may open into the atrium, the last are smaller than a voxel
    }
    if (missing > 0)
        m.notices.push_back({"profile-gaps",
                             std::to_string(missing) +
                                 " of the profile's sections could not be measured (they open sideways or are too "
                                 "small) and are left out.",
                             {{"missing", std::to_string(missing)}}});
}

void addOpeningNotices(AppendageMeasurement& m) {
    const auto add = [&](const std::string& what) {
        m.notices.push_back({"plane-near-opening",
                             "Moved or tilted within the uncertainty of its place, the " + what +
                                 " opens into a neighbouring cavity or leaves the lumen; its stated uncertainty rests on "
                                 "the other side alone. Check the plane.",
                             {{"plane", what}}});
    };
    if (m.ostium.section.opensWithinSpread)
        add("ostium plane");
    for (const LandingZone& zone : m.landingZones)
        if (zone.section.opensWithinSpread)
            add(zone.kind == LandingKind::Plug ? "plug plane" : "landing plane");
}

void addImageNotices(const Volume& volume, AppendageMeasurement& m) {
    const double coarsest = volume.edgesMm().maxCoeff();
    if (coarsest <= kSlowMm)
        return;
    const auto tenths = std::lround(coarsest * 10.0);
    const std::string text = std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " mm";
    m.notices.push_back({"voxels-coarse",
                         "The voxels are up to " + text +
                             " long: too coarse for sizing. Stated uncertainties hold for voxels up to 1 mm; use a "
                             "thin-slice reconstruction.",
                         {{"voxel_mm", text}}});
}

} // namespace

Result<AppendageMeasurement> measureAppendage(const std::shared_ptr<const Volume>& volume, const AppendageMarks& marks,
                                              const AppendageOptions& options, const WorkContext& work) {
    if (auto ok = checkInputs(*volume, marks, options); !ok)
        return tl::make_unexpected(std::move(ok.error()));
    auto traced = trace(*volume, marks, work);
    if (!traced)
        return tl::make_unexpected(std::move(traced.error()));
    work.report(0.7);

    AppendageMeasurement m;
    m.ostium = {traced->ostiumSection, traced->ostium.proposed, traced->ostium.confidence};
    const AppendageCut cut = traced->cut;
    const auto t = std::make_shared<const AppendageTrace>(traceOf(std::move(*traced)));
    m.trace = t;
    for (double s = 0.0; s < t->lengthMm(); s += 0.5)
        m.axis.points.push_back(t->pointAt(s));
    m.axis.points.push_back(t->pointAt(t->lengthMm()));
    for (double s = -t->ostiumAtMm; s < 0.0; s += 0.5)
        m.axis.approach.push_back(t->pointAt(s));
    m.axis.lengthMm = t->lengthMm();

    for (const double depth : options.landingDepthsMm) {
        auto zone = axisLanding(*volume, *t, depth);
        if (!zone)
            return tl::make_unexpected(std::move(zone.error()));
        m.landingZones.push_back(std::move(*zone));
    }
    if (options.plugLandingMm) {
        auto zone = plugLanding(*volume, *t, *marks.circumflex, *marks.ridge, *options.plugLandingMm);
        if (!zone)
            return tl::make_unexpected(std::move(zone.error()));
        m.landingZones.push_back(std::move(*zone));
    }
    fillDepthAndVolume(*t, cut, m);
    m.turn = turnOf(*t);
    m.enhancement = enhancementOf(*volume, *t, marks);
    if (m.ostium.proposed)
        m.notices.push_back({"ostium-proposed",
                             "The ostium is a proposal and not confirmed: its place is uncertain by 2 mm and 5 degrees. "
                             "Confirm or move it, or mark the circumflex and ridge points.",
                             {}});
    if (auto notice = unfilledTip(*volume, *t))
        m.notices.push_back(std::move(*notice));
    if (auto notice = weakFilling(m.enhancement, t->pool.contrast))
        m.notices.push_back(std::move(*notice));
    addOpeningNotices(m);
    addImageNotices(*volume, m);
    fillProfile(*volume, *t, options.profileStepMm, work, m);
    if (work.stopped())
        return cancelled("Measuring");
    work.report(1.0);
    return m;
}

Result<LandingZone> landingZoneAt(const Volume& volume, const AppendageMeasurement& measurement, double depthMm,
                                  const std::optional<PatientVector>& normal) {
    return axisLanding(volume, *measurement.trace, depthMm, normal);
}

Result<void> checkLandingPlane(const AppendageMeasurement& measurement, double depthMm, const std::optional<PatientVector>& normal) {
    return checkAxisLanding(*measurement.trace, depthMm, normal);
}

std::optional<LandingZone> unmeasuredLanding(const AppendageMeasurement& measurement, double depthMm,
                                             const std::optional<PatientVector>& normal) {
    const auto& profile = measurement.profile;
    const auto nearest = std::min_element(profile.begin(), profile.end(), [&](const auto& a, const auto& b) {
        return std::abs(a.sMm - depthMm) < std::abs(b.sMm - depthMm);
    });
    if (nearest == profile.end()) return std::nullopt;
    LandingZone zone;
    zone.depthMm = depthMm;
    zone.section = nearest->section;
    const PatientVector along = axisDirectionAt(measurement, depthMm);
    const SectionFrame& neighbour = nearest->section.frame;
    zone.section.frame = frameOf({axisPointAt(measurement, depthMm), normal.value_or(along)}, neighbour.u);
    zone.section.center = zone.section.frame.patientFromSection(neighbour.sectionFromPatient(nearest->section.center));
    if (normal) zone.tiltDeg = angleBetweenDeg(*normal, along);
    return zone;
}

Result<Section> sectionOnPlane(const Volume& volume, const AppendageMeasurement& measurement, const Plane& plane) {
    SectionOptions options;
    options.placement.reset();
    options.edgeUncertainty = false;
    return measureSection(volume, frameOf(plane), measurement.trace->pool.guideAt(plane.point), options);
}

Result<std::vector<Eigen::Vector2d>> refitContour(const Volume& volume, const AppendageMeasurement& measurement,
                                                  const SectionFrame& frame, std::span<const Eigen::Vector2d> contour) {
    return refitContour(volume, frame, contour, measurement.trace->pool.guideAt(frame.origin));
}

PatientPoint axisPointAt(const AppendageMeasurement& measurement, double sMm) {
    return measurement.trace->pointAt(sMm);
}

PatientVector axisDirectionAt(const AppendageMeasurement& measurement, double sMm) {
    return measurement.trace->directionAt(sMm);
}

} // namespace gauge::core
