#include "core/anatomy/axis.h"

#include "core/geometry/smoothing_spline.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {

constexpr double kKnotStepMm = 1.0;
constexpr int kRounds = 4;
constexpr double kTangentHalfWindowMm = 2.5;
// Undulations of 12 mm keep 90 % (SpaceSpline::smooth): voxel steps go, bends stay.
constexpr double kSmoothing = 1.5;
constexpr double kRayStepMm = 0.4;
constexpr double kOpenShare = 0.04;   // more open rays than one in 32
constexpr double kOpenWeight = 0.1;
constexpr double kDepthKept = 0.97;
constexpr double kSideLobeWeight = 0.03;
constexpr double kDomeShare = 0.8, kDomeAheadMm = 8.0, kLongestDomeMm = 12.0;
constexpr double kDomeWeight = 0.02;
constexpr double kSideLobe = 1.6;     // a ray longer than this many median rays looks into a side lobe

/// Distance from `from` along the unit `direction` to the first place below `level`.
double rayToWall(const BloodPool& pool, const PatientPoint& from, const Eigen::Vector3d& direction, double level,
                 double reachMm, bool& open) {
    double before = interpolate(pool.hu, from);
    if (before < level)
        return 0.0;
    for (double t = kRayStepMm; t <= reachMm; t += kRayStepMm) {
        const double v = interpolate(pool.hu, {from.mm + t * direction});
        if (v < level)
            return t - kRayStepMm * (level - v) / (before - v);
        before = v;
    }
    open = true;
    return reachMm;
}

/// Points of a way thinned to the knots of the smoothing, both ends kept.
std::vector<PatientPoint> knotsOf(const std::vector<PatientPoint>& way) {
    const auto line = Polyline::make(way);
    return line ? line->resampled(kKnotStepMm) : way;
}

/// Index of the first point, from the first end, past the dome in which the lumen closes: there the line comes from
/// somewhere on the wall, and slices across it lean with it.
std::size_t domeEnd(const BoxField<float>& depth, const std::vector<PatientPoint>& line) {
    double walked = 0.0;
    std::size_t i = 0;
    for (; i + 1 < line.size(); ++i) {
        double ahead = 0.0, widest = 0.0;
        for (std::size_t n = i; n + 1 < line.size() && ahead < kDomeAheadMm; ++n) {
            widest = std::max(widest, interpolate(depth, line[n]));
            ahead += distanceMm(line[n], line[n + 1]);
        }
        if (interpolate(depth, line[i]) >= kDomeShare * widest || walked > kLongestDomeMm)
            break;
        walked += distanceMm(line[i], line[i + 1]);
    }
    return i;
}

/// One round: each inner knot moves to the centroid of its slice where the slice is closed.
void recentre(const BloodPool& pool, std::vector<PatientPoint>& knots, std::vector<double>& weights) {
    const auto line = Polyline::make(knots);
    if (!line)
        return;
    weights.assign(knots.size(), 1.0);
    const auto& s = line->distancesMm();
    std::vector<PatientPoint> moved(knots);
    const std::size_t dome = domeEnd(pool.depth, knots);
    for (std::size_t i = 0; i < knots.size() && i < s.size(); ++i) {
        if (i < dome) {
            weights[i] = kDomeWeight;
            continue;
        }
        const double depth = interpolate(pool.depth, knots[i]);
        const PatientVector along = line->tangentAt(s[i], std::max(kTangentHalfWindowMm, 0.5 * depth));
        const double reach = 2.4 * depth + 3.0;
        const AxisSlice slice = sliceAt(pool, frameOf({knots[i], along}), reach);
        // A slice that opens (into the atrium, a side lobe) says nothing about the middle of this lumen.
        const bool opens = slice.openShare > kOpenShare;
        weights[i] = opens ? kOpenWeight : 1.0;
        Eigen::Vector2d shift = Eigen::Vector2d::Zero();
        if (!opens)
            shift = slice.centroidWithin(kSideLobe * slice.medianRayMm());
        const double most = 0.6 * std::max(depth, 1.0);
        if (shift.norm() > most)
            shift *= most / shift.norm();
        // The middle of a lumen is deep: a centroid drawn towards a side lobe is not, and is approached less.
        for (int half = 0; half < 4; ++half, shift *= 0.5) {
            moved[i] = slice.frame.patientFromSection(shift);
            if (interpolate(pool.depth, moved[i]) >= kDepthKept * depth)
                break;
            weights[i] = kSideLobeWeight;
        }
        if (interpolate(pool.hu, moved[i]) < halfLevelAt(pool, moved[i]))
            moved[i] = knots[i];
    }
    knots = moved;
}

bool liesInBlood(const BloodPool& pool, const std::vector<PatientPoint>& points) {
    return std::all_of(points.begin(), points.end(), [&](const PatientPoint& p) {
        return interpolate(pool.hu, p) >= halfLevelAt(pool, p);
    });
}

} // namespace

double halfLevelAt(const BloodPool& pool, const PatientPoint& p) {
    return 0.5 * (pool.levels.nearestTo(p) + pool.contrast.wallHu);
}

std::optional<double> distanceToWallMm(const BloodPool& pool, const PatientPoint& from,
                                       const PatientVector& direction, double reachMm) {
    bool open = false;
    const double t = rayToWall(pool, from, direction.mm, halfLevelAt(pool, from), reachMm, open);
    return open ? std::nullopt : std::optional(t);
}

double AxisSlice::areaDerivedRadiusMm() const {
    return std::sqrt(areaMm2 / std::numbers::pi);
}

double AxisSlice::medianRayMm() const {
    auto sorted = radiusMm;
    std::nth_element(sorted.begin(), sorted.begin() + kRays / 2, sorted.end());
    return sorted[kRays / 2];
}

Eigen::Vector2d AxisSlice::centroidWithin(double mostMm) const {
    double twice = 0.0;
    Eigen::Vector2d moment = Eigen::Vector2d::Zero();
    const auto end = [&](std::size_t i) -> Eigen::Vector2d {
        const double angle = 2.0 * std::numbers::pi * static_cast<double>(i) / kRays;
        return Eigen::Vector2d(std::cos(angle), std::sin(angle)) * std::min(radiusMm[i], mostMm);
    };
    for (std::size_t i = 0; i < radiusMm.size(); ++i) {
        const Eigen::Vector2d a = end(i), b = end((i + 1) % radiusMm.size());
        const double cross = a.x() * b.y() - a.y() * b.x();
        twice += cross;
        moment += cross * (a + b);
    }
    if (twice > 1e-6)
        moment /= 3.0 * twice;
    return moment;
}

AxisSlice sliceAt(const BloodPool& pool, const SectionFrame& frame, double reachMm) {
    AxisSlice slice;
    slice.frame = frame;
    const double level = halfLevelAt(pool, frame.origin);
    int open = 0;
    std::array<Eigen::Vector2d, AxisSlice::kRays> ends;
    for (int i = 0; i < AxisSlice::kRays; ++i) {
        const double angle = 2.0 * std::numbers::pi * i / AxisSlice::kRays;
        const Eigen::Vector2d d(std::cos(angle), std::sin(angle));
        bool isOpen = false;
        const auto n = static_cast<std::size_t>(i);
        slice.radiusMm[n] =
            rayToWall(pool, frame.origin, d.x() * frame.u.mm + d.y() * frame.v.mm, level, reachMm, isOpen);
        slice.open[n] = isOpen;
        open += isOpen;
        ends[n] = slice.radiusMm[n] * d;
    }
    slice.openShare = static_cast<double>(open) / AxisSlice::kRays;
    double twice = 0.0;
    for (std::size_t i = 0; i < ends.size(); ++i) {
        const auto& a = ends[i];
        const auto& b = ends[(i + 1) % ends.size()];
        twice += a.x() * b.y() - a.y() * b.x();
    }
    slice.areaMm2 = 0.5 * twice;
    return slice;
}

Result<Polyline> centreLine(const BloodPool& pool, const std::vector<PatientPoint>& way) {
    std::vector<PatientPoint> knots = knotsOf(way);
    std::vector<double> weights(knots.size(), 1.0);
    const std::vector<PatientPoint> original = knots;
    for (int round = 0; round < kRounds; ++round) {
        recentre(pool, knots, weights);
        auto smooth = smoothPolyline(knots, weights, kSmoothing);
        if (!smooth)
            return tl::make_unexpected(std::move(smooth.error()));
        // Where smoothing would leave the blood (a sharp fold), the way that never left it is kept.
        for (std::size_t i = 0; i < smooth->size() && i < original.size(); ++i)
            if (interpolate(pool.hu, (*smooth)[i]) < halfLevelAt(pool, (*smooth)[i]))
                (*smooth)[i] = original[std::min(i, original.size() - 1)];
        const auto even = Polyline::make(*smooth);
        if (!even)
            return tl::make_unexpected(even.error());
        knots = round + 1 < kRounds ? even->resampled(kKnotStepMm) : *smooth;
    }
    auto line = Polyline::make(knots);
    if (!line)
        return tl::make_unexpected(std::move(line.error()));
    auto fine = Polyline::make(line->resampled(0.5));
    if (!fine)
        return tl::make_unexpected(std::move(fine.error()));
    if (!liesInBlood(pool, fine->points()))
        return failure(ErrorCode::SectionNotFound,
                       "Cannot measure: no line through the middle of the appendage stays in its blood. The lumen is "
                       "thinner than the image can show somewhere between the seeds; check the marks and the filling.");
    return *fine;
}

std::vector<PatientPoint> prolongedToWall(const BloodPool& pool, const std::vector<PatientPoint>& line) {
    if (line.size() < 2)
        return line;
    constexpr double kDirectionMm = 4.0, kReachMm = 25.0, kStepMm = 0.5;
    const std::size_t first = std::min(domeEnd(pool.depth, line), line.size() - 2);
    const auto rest = Polyline::make(std::span(line).subspan(first));
    if (!rest)
        return line;
    const PatientVector out = -rest->tangentAt(0.5 * kDirectionMm, 0.5 * kDirectionMm);
    const auto length = distanceToWallMm(pool, line[first], out, kReachMm);
    std::vector<PatientPoint> result;
    if (length && *length > 0.05) {
        const auto steps = static_cast<int>(std::ceil(*length / kStepMm));
        for (int i = steps; i >= 1; --i)
            result.push_back(line[first] + (*length * i / steps) * out);
    }
    result.insert(result.end(), rest->points().begin(), rest->points().end());
    return result;
}

} // namespace gauge::core
