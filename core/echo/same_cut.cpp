#include "core/echo/same_cut.h"

#include "core/volume/sampling.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <optional>

namespace gauge::core {
namespace {

constexpr double kReachMm = 40.0, kStepMm = 0.1;

std::string degrees(double value) {
    char text[40];
    std::snprintf(text, sizeof text, "%.0f degrees", value);
    return text;
}

/// Length of the part of the view's plane inside the contour that holds, or lies nearest to, the centroid.
Result<double> chordInView(const Section& ct, const ProbePose& pose, double angleDeg) {
    const SectionFrame view = pose.viewFrame(angleDeg);
    std::vector<Eigen::Vector2d> crossings;
    const std::size_t n = ct.contour.size();
    for (std::size_t i = 0; i < n; ++i) {
        const auto &a = ct.contour[i], &b = ct.contour[(i + 1) % n];
        const double da = signedDistanceMm(view.plane(), ct.frame.patientFromSection(a));
        const double db = signedDistanceMm(view.plane(), ct.frame.patientFromSection(b));
        if ((da < 0.0) != (db < 0.0)) crossings.push_back(a + (b - a) * (da / (da - db)));
    }
    if (crossings.size() < 2)
        return failure(ErrorCode::SectionNotFound, "Cannot read the CT in the echo view at " + degrees(angleDeg) +
                                                       ": the view passes beside the section. Check the landmarks.");
    const Eigen::Vector3d line = view.normal.mm.cross(ct.frame.normal.mm);
    if (line.norm() < 0.05)
        return failure(ErrorCode::SectionNotFound, "Cannot read the CT in the echo view at " + degrees(angleDeg) +
                                                       ": the view is parallel to the section.");
    const Eigen::Vector2d along(line.dot(ct.frame.u.mm), line.dot(ct.frame.v.mm));
    std::sort(crossings.begin(), crossings.end(),
              [&](const auto& p, const auto& q) { return p.dot(along) < q.dot(along); });
    const double middle = ct.frame.sectionFromPatient(ct.center).dot(along);
    double best = 0.0, nearest = INFINITY;
    for (std::size_t i = 0; i + 1 < crossings.size(); i += 2) { // pairs enclose the inside
        const double from = crossings[i].dot(along), to = crossings[i + 1].dot(along);
        const double off = std::max({0.0, from - middle, middle - to});
        if (off < nearest) {
            nearest = off;
            best = (crossings[i + 1] - crossings[i]).norm();
        }
    }
    return best;
}

/// Spread of `read(pose)` over the pose's covariance: symmetric pairs of points at one standard deviation along its
/// main directions (first order exact, second order in the mean of each pair left out).
template <class Read> double poseSpread(const ProbePose& pose, double value, Read&& read) {
    const Eigen::SelfAdjointEigenSolver<Eigen::Matrix<double, 6, 6>> solved(pose.covariance);
    double squares = 0.0;
    for (int k = 0; k < 6; ++k) {
        const Eigen::Matrix<double, 6, 1> step =
            solved.eigenvectors().col(k) * std::sqrt(std::max(solved.eigenvalues()[k], 0.0));
        double pair = 0.0;
        int seen = 0;
        for (const double sign : {-1.0, 1.0})
            if (const auto other = read(moved(pose, sign * step))) {
                pair += std::pow(*other - value, 2);
                ++seen;
            }
        if (seen > 0) squares += pair / seen;
    }
    return std::sqrt(squares);
}

/// Distance from `start` along the unit vector to the falling crossing of `halfHu`; nothing within reach.
std::optional<double> toWall(const Volume& volume, const TrilinearSampler& sample, double halfHu, const PatientPoint& start, const PatientVector& way) {
    double before = sample(start);
    for (double r = kStepMm; r <= kReachMm; r += kStepMm) {
        const PatientPoint p = start + way * r;
        if (!volume.contains(p)) return std::nullopt;
        const double now = sample(p);
        if (now < halfHu) return r - kStepMm * (halfHu - now) / (before - now);
        before = now;
    }
    return std::nullopt;
}

Result<double> widthAlong(const Volume& volume, double halfHu, const ProbePose& pose, const EchoLine& line) {
    const PatientPoint from = pose.patientFrom(line.probeAngleDeg, line.fromMm);
    const PatientPoint to = pose.patientFrom(line.probeAngleDeg, line.toMm);
    const PatientVector way = (to - from).normalized();
    const PatientPoint middle = from + (to - from) * 0.5;
    const TrilinearSampler sample(volume);
    if (!volume.contains(middle) || sample(middle) < halfHu)
        return failure(ErrorCode::SectionNotFound, "Cannot read the CT along the echo's width at " +
                                                       degrees(line.probeAngleDeg) +
                                                       ": its middle lies in no blood on CT. Check the landmarks.");
    const auto right = toWall(volume, sample, halfHu, middle, way);
    const auto left = toWall(volume, sample, halfHu, middle, -way);
    if (!right || !left)
        return failure(ErrorCode::SectionOpen, "Cannot read the CT along the echo's width at " +
                                                   degrees(line.probeAngleDeg) + ": no wall within 40 mm.");
    return *left + *right;
}

} // namespace

Result<Estimate> ctWidthInView(const Section& ct, const ProbePose& pose, double probeAngleDeg) {
    const auto width = chordInView(ct, pose, probeAngleDeg);
    if (!width) return tl::make_unexpected(width.error());
    Estimate e;
    e.value = *width;
    e.components.edge = ct.metrics.longestDiameterMm.components.edge;
    e.components.plane =
        poseSpread(pose, *width, [&](const ProbePose& p) { return chordInView(ct, p, probeAngleDeg); });
    e.method = "chord of the CT contour in the echo view";
    return e;
}

Result<Estimate> ctWidthAlongLine(const Volume& volume, double halfHu, const ProbePose& pose, const EchoLine& line) {
    if ((line.toMm - line.fromMm).norm() < 1.0)
        return failure(ErrorCode::InvalidArgument, "Cannot read the CT along the echo's width at " +
                                                       degrees(line.probeAngleDeg) + ": the line is shorter than 1 mm.");
    const auto width = widthAlong(volume, halfHu, pose, line);
    if (!width) return tl::make_unexpected(width.error());
    Estimate e;
    e.value = *width;
    e.components.plane =
        poseSpread(pose, *width, [&](const ProbePose& p) { return widthAlong(volume, halfHu, p, line); });
    e.method = "CT along the echo's line, to half value";
    return e;
}

Result<EchoSection> ctAsEchoWouldRead(const Section& ct, const ProbePose& pose, std::span<const double> probeAnglesDeg) {
    std::vector<WidthReading> readings;
    for (const double angle : probeAnglesDeg) {
        const auto width = ctWidthInView(ct, pose, angle);
        if (!width) return tl::make_unexpected(width.error());
        readings.push_back({angle, width->value, std::max(width->standardUncertainty(), 0.05), BeatPhase::Other});
    }
    EchoSectionOptions options;
    options.correctOvality = false; // the chords carry no error of reading that differs from view to view
    return measureEchoSection(readings, options);
}

Result<Estimate> depthBeyondSection(const Section& ct, const ProbePose& pose, std::span<const EchoLine> lines) {
    if (lines.empty())
        return failure(ErrorCode::TooFewPoints, "Cannot tell at which depth echo was read: no width is drawn on its views.");
    const auto depthOf = [&](const ProbePose& p, const EchoLine& line) {
        return signedDistanceMm(ct.frame.plane(), p.patientFrom(line.probeAngleDeg, 0.5 * (line.fromMm + line.toMm)));
    };
    const auto mean = [&](const ProbePose& p) {
        double sum = 0.0;
        for (const EchoLine& line : lines)
            sum += depthOf(p, line);
        return std::optional(sum / static_cast<double>(lines.size()));
    };
    Estimate e;
    e.value = *mean(pose);
    if (!std::isfinite(e.value))
        return failure(ErrorCode::NonFinite, "Cannot tell at which depth echo was read: an end of a line is no number.");
    double squares = 0.0;
    for (const EchoLine& line : lines)
        squares += std::pow(depthOf(pose, line) - e.value, 2);
    const auto n = static_cast<double>(lines.size());
    if (lines.size() > 1) e.components.observer = std::sqrt(squares / (n - 1.0) / n);
    e.components.plane = poseSpread(pose, e.value, mean);
    e.method = "middles of the echo's lines against the plane of the CT section";
    return e;
}

Estimate planePart(const Estimate& contour, const Estimate& asEchoWouldRead) {
    Estimate e;
    e.value = contour.value - asEchoWouldRead.value;
    e.components.plane = std::hypot(contour.components.plane, asEchoWouldRead.standardUncertainty());
    e.method = "CT contour against the CT as echo would read it";
    return e;
}

} // namespace gauge::core
