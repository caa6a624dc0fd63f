#include "core/access/septal_face.h"

#include "core/geometry/planar_contour.h"
#include "core/geometry/smooth_line.h"
#include "core/number_text.h"
#include "core/units/angle.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <string>

namespace gauge::core {
namespace {

constexpr double kLeastSuperior = 0.26;  // sine of 15 degrees
constexpr double kLeastPosterior = 0.10; // sine of 6 degrees
constexpr double kLeastSideMm = 1.0;
constexpr int kPiecesPerSpan = 24;

tl::unexpected<Error> noFace(const std::string& why) {
    return failure(ErrorCode::Degenerate, "Cannot set up the septal face: " + why);
}

/// In the order of the angles about the mean of the points.
std::vector<Eigen::Vector2d> aroundTheMiddle(std::vector<Eigen::Vector2d> points) {
    Eigen::Vector2d middle = Eigen::Vector2d::Zero();
    for (const auto& p : points)
        middle += p / static_cast<double>(points.size());
    std::sort(points.begin(), points.end(), [&](const auto& a, const auto& b) {
        const Eigen::Vector2d p = a - middle, q = b - middle;
        return std::atan2(p.y(), p.x()) < std::atan2(q.y(), q.x());
    });
    return points;
}

double crossOf(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    return a.x() * b.y() - a.y() * b.x();
}

bool sidesCross(ContourView contour) {
    const auto crosses = [](const Eigen::Vector2d& a, const Eigen::Vector2d& b, const Eigen::Vector2d& c, const Eigen::Vector2d& d) {
        return crossOf(b - a, c - a) * crossOf(b - a, d - a) < 0.0 && crossOf(d - c, a - c) * crossOf(d - c, b - c) < 0.0;
    };
    const std::size_t n = contour.size();
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = i + 2; j < n; ++j)
            if (!(i == 0 && j + 1 == n) && crosses(contour[i], contour[i + 1], contour[j], contour[(j + 1) % n])) return true;
    return false;
}

/// Normal into the left atrium, v to the head.
Result<SectionFrame> facing(const Plane& fitted, const PatientPoint& leftAtrium) {
    const double side = signedDistanceMm(fitted, leftAtrium);
    if (!(std::abs(side) >= kLeastSideMm))
        return noFace("the left atrium's mark lies in the plane of the fossa, so its two sides cannot be told apart. Check the points "
                      "of the fossa's rim.");
    SectionFrame frame;
    frame.origin = fitted.point;
    frame.normal = side < 0.0 ? -fitted.normal : fitted.normal;
    const Eigen::Vector3d up = Eigen::Vector3d::UnitZ() - frame.normal.mm.z() * frame.normal.mm;
    if (up.norm() < kLeastSuperior)
        return noFace("the plane through the fossa's rim lies almost across the body, which no septum does. Check the points of the "
                      "fossa's rim.");
    frame.v = {up.normalized()};
    frame.u = frame.v.cross(frame.normal);
    return frame;
}

Result<void> outlineFace(SeptalFace& face, std::span<const PatientPoint> fossa) {
    std::vector<Eigen::Vector2d> feet;
    for (const PatientPoint& point : fossa)
        feet.push_back(face.frame.sectionFromPatient(point));
    const auto line = SmoothLine::through(aroundTheMiddle(std::move(feet)), SmoothLine::Ends::Closed);
    if (!line) return tl::unexpected(line.error());
    face.outline = line->sampled(kPiecesPerSpan);
    if (auto valid = validateContour(face.outline); !valid) return valid;
    if (sidesCross(face.outline))
        return noFace("the line through the points of the fossa's rim crosses itself. Mark the rim with more points, evenly spaced.");
    const Eigen::Vector2d middle = areaCentroid(face.outline);
    face.frame.origin = face.frame.patientFromSection(middle);
    face.low = face.high = face.outline.front() - middle;
    for (auto& p : face.outline) {
        p -= middle;
        face.low = face.low.cwiseMin(p);
        face.high = face.high.cwiseMax(p);
    }
    return {};
}

/// Which way the root and the back lie.
Result<void> orient(SeptalFace& face, const std::optional<PatientPoint>& aorticRoot) {
    const double back = face.frame.u.mm.y();
    if (aorticRoot) {
        if (!aorticRoot->mm.allFinite())
            return failure(ErrorCode::NonFinite, "Cannot set up the septal face: the aortic root is not a finite point.");
        face.root = face.frame.sectionFromPatient(*aorticRoot);
        if (face.root->norm() < kLeastSideMm)
            return noFace("the aortic root is marked square before the middle of the fossa, so it shows no side. Check its mark.");
        face.towardsRoot = face.root->normalized();
    } else if (std::abs(back) < kLeastPosterior) {
        return noFace("the plane through the fossa's rim faces the front, so front and back of it cannot be told apart. Mark the middle of "
                      "the aortic root.");
    }
    // The root shows the front where it does not lie straight above or below; else the patient's axes do.
    constexpr double kClearlySideways = 0.2;
    const bool rootTells = face.root && (std::abs(face.towardsRoot.x()) > kClearlySideways || std::abs(back) < kLeastPosterior);
    face.posteriorSign = rootTells ? (face.towardsRoot.x() < 0.0 ? 1.0 : -1.0) : (back > 0.0 ? 1.0 : -1.0);
    if (!face.root) face.towardsRoot = {-face.posteriorSign, 0.0};
    return {};
}

} // namespace

double SeptalFace::areaMm2() const {
    return signedAreaMm2(outline);
}

bool SeptalFace::contains(const Eigen::Vector2d& place) const {
    return gauge::core::contains(outline, place);
}

Result<SeptalFace> septalFace(std::span<const PatientPoint> fossa, const PatientPoint& leftAtrium,
                              const std::optional<PatientPoint>& aorticRoot) {
    if (fossa.size() < kLeastFossaPoints)
        return failure(ErrorCode::TooFewPoints, "Cannot outline the fossa: points marked on its rim: " + std::to_string(fossa.size()) +
                                                    "; at least " + std::to_string(kLeastFossaPoints) + " around it are needed. Mark more.");
    auto fit = fitPlane(fossa, "the rim of the fossa", {kLeastFossaSpreadMm});
    if (!fit) return tl::unexpected(fit.error());
    auto frame = facing(fit->plane, leftAtrium);
    if (!frame) return tl::unexpected(frame.error());
    SeptalFace face;
    face.frame = *frame;
    face.fit = *fit;
    face.fit.plane.normal = face.frame.normal;
    face.count = fossa.size();
    if (auto drawn = outlineFace(face, fossa); !drawn) return tl::unexpected(drawn.error());
    if (auto oriented = orient(face, aorticRoot); !oriented) return tl::unexpected(oriented.error());
    return face;
}

SeptalSide sideOf(const SeptalFace& face, const Eigen::Vector2d& place) {
    const std::array<std::pair<SeptalSide, Eigen::Vector2d>, 4> sides{
        {{SeptalSide::AorticRoot, face.towardsRoot},
         {SeptalSide::PosteriorWall, {face.posteriorSign, 0.0}},
         {SeptalSide::Superior, {0.0, 1.0}},
         {SeptalSide::Inferior, {0.0, -1.0}}}};
    SeptalSide best = SeptalSide::AorticRoot;
    double nearest = -std::numeric_limits<double>::infinity();
    for (const auto& [side, direction] : sides)
        if (const double along = place.dot(direction); along > nearest + 1e-12) {
            nearest = along;
            best = side;
        }
    return best;
}

std::string_view words(SeptalSide side) {
    constexpr std::array<std::string_view, 4> kWords{"aortic-root side (anterior)", "posterior wall", "superior side", "inferior side"};
    return kWords[static_cast<std::size_t>(side)];
}

double distanceToOutlineMm(const SeptalFace& face, const Eigen::Vector2d& place) {
    double least = std::numeric_limits<double>::infinity();
    const std::size_t n = face.outline.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Eigen::Vector2d& a = face.outline[i];
        const Eigen::Vector2d side = face.outline[(i + 1) % n] - a;
        const double t = std::clamp((place - a).dot(side) / std::max(side.squaredNorm(), 1e-18), 0.0, 1.0);
        least = std::min(least, (place - a - t * side).norm());
    }
    return least;
}

Result<void> insideFossa(const SeptalFace& face, const Eigen::Vector2d& place) {
    if (!place.allFinite()) return failure(ErrorCode::NonFinite, "Cannot place the crossing: its place is not a finite number.");
    if (face.contains(place)) return {};
    const std::string basis = face.root ? "told by the marked aortic root" : "told by the patient's axes: no aortic root is marked";
    return failure(ErrorCode::OutsideFossa,
                   "Cannot cross the septum there: the place lies " + fixed(distanceToOutlineMm(face, place), 1) +
                       " mm outside the fossa's outline, towards the " + std::string(words(sideOf(face, place))) + " (" + basis +
                       "). Choose a place within the outline, or correct the marks of the rim.",
                   {{"side", std::string(words(sideOf(face, place)))}});
}

SeptalPosition positionOf(const SeptalFace& face, const Eigen::Vector2d& place) {
    const auto third = [](double value, double low, double high) { return 3.0 * (value - low) / (high - low); };
    const double up = third(place.y(), face.low.y(), face.high.y());
    const double toU = third(place.x(), face.low.x(), face.high.x());
    const double front = face.posteriorSign > 0.0 ? 3.0 - toU : toU;
    return {up < 1.0 ? SeptalHeight::Inferior : up > 2.0 ? SeptalHeight::Superior : SeptalHeight::Middle,
            front < 1.0 ? SeptalDepth::Posterior : front > 2.0 ? SeptalDepth::Anterior : SeptalDepth::Central};
}

std::string_view words(const SeptalPosition& position) {
    constexpr std::array<std::array<std::string_view, 3>, 3> kWords{
        {{"inferior-posterior", "inferior-central", "inferior-anterior"},
         {"posterior", "central", "anterior"},
         {"superior-posterior", "superior-central", "superior-anterior"}}};
    return kWords[static_cast<std::size_t>(position.height)][static_cast<std::size_t>(position.depth)];
}

} // namespace gauge::core
