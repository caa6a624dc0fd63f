#include "core/echo/beam_tilt.h"

#include "core/echo/width_ellipse.h"
#include "core/units/angle.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace gauge::core {
namespace {

constexpr int kDirections = 36;

/// tan scaled by `factor`, keeping the quadrant.
double scaledTangent(double angle, double factor) { return std::atan2(factor * std::sin(angle), std::cos(angle)); }

} // namespace

double sectionDirectionRad(const BeamTilt& tilt, double probeAngle) {
    const double towards = tilt.towardsDeg * kRadPerDegree, c = std::cos(tilt.tiltDeg * kRadPerDegree);
    // Drawn across the beam and carried along the axis into the cross-section, the part along the tilt shrinks instead.
    return towards + scaledTangent(probeAngle - towards, tilt.drawnAcrossBeam ? 1.0 / c : c);
}

double probeAngleRad(const BeamTilt& tilt, double direction) {
    const double towards = tilt.towardsDeg * kRadPerDegree, c = std::cos(tilt.tiltDeg * kRadPerDegree);
    return towards + scaledTangent(direction - towards, tilt.drawnAcrossBeam ? c : 1.0 / c);
}

double sectionWidthMm(const BeamTilt& tilt, double probeAngle, double widthMm) {
    if (!tilt.drawnAcrossBeam) return widthMm;
    const double t = probeAngle - tilt.towardsDeg * kRadPerDegree, c = std::cos(tilt.tiltDeg * kRadPerDegree);
    return widthMm * std::hypot(c * std::cos(t), std::sin(t));
}

BeamTilt tiltOf(const PatientVector& axis, const PatientVector& beam, const PatientVector& lateral0) {
    const double along = axis.dot(beam);
    const PatientVector lateral90 = beam.cross(lateral0);
    double x = axis.dot(lateral0), y = axis.dot(lateral90);
    if (along < 0.0) { // the axis as a line: its sense does not matter
        x = -x;
        y = -y;
    }
    BeamTilt tilt;
    tilt.tiltDeg = std::atan2(std::hypot(x, y), std::abs(along)) / kRadPerDegree;
    const double towards = std::atan2(y, x) / kRadPerDegree;
    tilt.towardsDeg = towards < 0.0 ? towards + 360.0 : towards;
    return tilt;
}

Result<BeamTilt> tiltFromViews(std::span<const double> probeAnglesDeg, std::span<const double> seenDeg) {
    const std::size_t n = std::min(probeAnglesDeg.size(), seenDeg.size());
    Eigen::MatrixXd design(static_cast<Eigen::Index>(n), 2);
    Eigen::VectorXd rhs(static_cast<Eigen::Index>(n));
    for (std::size_t i = 0; i < n; ++i) {
        if (!(std::abs(seenDeg[i]) < 90.0) || !std::isfinite(probeAnglesDeg[i]))
            return failure(ErrorCode::InvalidArgument,
                           "Cannot tell the beam's tilt: an angle between appendage and beam below 90 degrees is "
                           "needed in each view.");
        const auto row = static_cast<Eigen::Index>(i);
        design.row(row) << std::cos(probeAnglesDeg[i] * kRadPerDegree), std::sin(probeAnglesDeg[i] * kRadPerDegree);
        rhs[row] = std::tan(seenDeg[i] * kRadPerDegree);
    }
    const Eigen::Matrix2d normal = design.transpose() * design;
    if (n < 2 || normal.determinant() < 1e-4 * normal.trace() * normal.trace())
        return failure(ErrorCode::TooFewPoints,
                       "Cannot tell the beam's tilt: the appendage's direction is needed in two views at different "
                       "probe angles.");
    const Eigen::Vector2d t = normal.ldlt().solve(design.transpose() * rhs);
    BeamTilt tilt;
    tilt.tiltDeg = std::atan(t.norm()) / kRadPerDegree;
    const double towards = std::atan2(t.y(), t.x()) / kRadPerDegree;
    tilt.towardsDeg = towards < 0.0 ? towards + 360.0 : towards;
    return tilt;
}

TiltEffect longestErrorFromTilt(double longestMm, double shortestMm, double tiltDeg,
                                std::span<const double> probeAnglesDeg) {
    TiltEffect effect;
    const double mean = 0.5 * (longestMm + shortestMm), half = 0.5 * (longestMm - shortestMm);
    bool first = true;
    for (int i = 0; i < kDirections; ++i)
        for (int j = 0; j < kDirections; ++j) {
            const double direction = std::numbers::pi * i / kDirections;
            const BeamTilt tilt{tiltDeg, 180.0 * j / kDirections};
            const WidthEllipse truth{mean, half * Eigen::Vector2d(std::cos(2 * direction), std::sin(2 * direction))};
            std::vector<AngledWidth> read;
            for (const double t : probeAnglesDeg)
                read.push_back({t * kRadPerDegree, truth.widthMm(sectionDirectionRad(tilt, t * kRadPerDegree))});
            const auto fit = fitWidthEllipse(read);
            if (!fit) continue;
            const double error = fit->ellipse.longestMm() - longestMm;
            effect.leastMm = first ? error : std::min(effect.leastMm, error);
            effect.greatestMm = first ? error : std::max(effect.greatestMm, error);
            first = false;
        }
    return effect;
}

} // namespace gauge::core
