#include "tests/app/support/synthetic_case.h"

#include "core/anatomy/appendage_trace.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::fixture {
namespace {

using core::Estimate;
using core::PatientPoint;
using core::Section;

/// Half axes along y and z of the tube at distance x from the ostium.
Eigen::Vector2d halfAxes(double x) {
    const double share = std::clamp(1.0 - x / kSyntheticLengthMm, 0.0, 1.0);
    const double shape = std::pow(share, 0.45);
    return {12.0 * shape, 9.0 * shape};
}

double bendMm(double x) {
    return x <= 0 ? 0.0 : 0.006 * x * x;
}

bool inBlood(const Eigen::Vector3d& p) {
    if ((p - Eigen::Vector3d(-22, 0, 0)).norm() < 24.0) return true;
    if (p.x() < -3 || p.x() > kSyntheticLengthMm) return false;
    const Eigen::Vector2d half = halfAxes(std::max(0.0, p.x()));
    if (half.y() < 0.05) return false;
    const double y = (p.y() - bendMm(p.x())) / half.x(), z = p.z() / half.y();
    return y * y + z * z < 1.0;
}

/// The tube beyond the ostium, nodes of 1 mm.
core::BoxMask appendageMask() {
    core::BoxGrid grid;
    grid.origin = {{0.0, -14.0, -12.0}};
    grid.size = {40, 36, 25};
    core::BoxMask mask(grid);
    for (std::size_t i = 0; i < grid.count(); ++i)
        mask[i] = inBlood(grid.patientFrom(i).mm);
    return mask;
}

Estimate about(double value, double edge = 0.15, double plane = 0.3) {
    return {value, {edge, plane, 0, 0}, "formula"};
}

PatientPoint axisPoint(double s) {
    return {Eigen::Vector3d(s, bendMm(s), 0)};
}

Section sectionAt(double s) {
    const Eigen::Vector2d half = halfAxes(s);
    const core::PatientVector normal =
        core::PatientVector{Eigen::Vector3d(1, s > 0 ? 0.012 * s : 0, 0)}.normalized();
    Section section;
    section.frame = core::frameOf({axisPoint(s), normal}, {Eigen::Vector3d::UnitY()});
    section.center = axisPoint(s);
    constexpr int kPoints = 120;
    for (int i = 0; i < kPoints; ++i) {
        const double a = 2 * std::numbers::pi * i / kPoints;
        section.contour.emplace_back(half.x() * std::cos(a), half.y() * std::sin(a));
    }
    section.longestFrom = {-half.x(), 0};
    section.longestTo = {half.x(), 0};
    section.shortestFrom = {0, -half.y()};
    section.shortestTo = {0, half.y()};
    const double area = std::numbers::pi * half.x() * half.y();
    // Ramanujan's first approximation is enough for a stand-in.
    const double perimeter =
        std::numbers::pi *
        (3 * (half.x() + half.y()) - std::sqrt((3 * half.x() + half.y()) * (half.x() + 3 * half.y())));
    auto& m = section.metrics;
    m.areaMm2 = about(area, 3, 6);
    m.perimeterMm = about(perimeter, 0.4, 0.9);
    m.longestDiameterMm = about(2 * half.x());
    m.shortestDiameterMm = about(2 * half.y());
    m.leastWidthMm = about(2 * half.y());
    m.meanDiameterMm = about(half.x() + half.y());
    m.perimeterDerivedDiameterMm = about(perimeter / std::numbers::pi, 0.1, 0.25);
    m.areaDerivedDiameterMm = about(2 * std::sqrt(area / std::numbers::pi), 0.1, 0.25);
    m.eccentricityIndex = about(half.x() > 0 ? 1 - half.y() / half.x() : 0, 0.01, 0.01);
    section.bloodHu = 380;
    section.wallHu = 60;
    return section;
}

} // namespace

std::shared_ptr<const core::Volume> syntheticVolume() {
    constexpr int kSize = 120;
    constexpr double kStep = 0.9;
    std::vector<std::int16_t> voxels;
    voxels.reserve(kSize * kSize * kSize);
    Eigen::Affine3d affine = Eigen::Affine3d::Identity();
    affine.linear() *= kStep;
    affine.translation() = Eigen::Vector3d(-50, -50, -50);
    unsigned noise = 1;
    for (int k = 0; k < kSize; ++k)
        for (int j = 0; j < kSize; ++j)
            for (int i = 0; i < kSize; ++i) {
                noise = noise * 1664525u + 1013904223u;
                const int grain = static_cast<int>(noise >> 26) - 32;
                const Eigen::Vector3d p = affine * Eigen::Vector3d(i, j, k);
                const int hu = inBlood(p) ? 380 : (p.norm() < 45 ? 40 : -80);
                voxels.push_back(static_cast<std::int16_t>(hu + grain));
            }
    return core::Volume::make({kSize, kSize, kSize}, std::move(voxels), affine,
                              core::VoxelQuantity::HounsfieldUnits, "2.25.1")
        .value();
}

core::AppendageMarks syntheticMarks() {
    core::AppendageMarks marks;
    marks.atrium = {Eigen::Vector3d(-20, 0, 0)};
    marks.tip = {Eigen::Vector3d(32, 6, 0)};
    marks.circumflex = PatientPoint{Eigen::Vector3d(0, 0, -11)};
    marks.ridge = PatientPoint{Eigen::Vector3d(0, 0, 10)};
    return marks;
}

core::AppendageMeasurement syntheticMeasurement() {
    core::AppendageMeasurement m;
    m.ostium.section = sectionAt(0);
    m.ostium.proposed = true;
    m.ostium.confidence = 0.84;
    for (double s = 0; s <= kSyntheticLengthMm + 1e-9; s += 0.5)
        m.axis.points.push_back(axisPoint(s));
    for (double s = -20; s <= 0; s += 0.5)
        m.axis.approach.push_back(axisPoint(s));
    m.axis.lengthMm = kSyntheticLengthMm;
    std::vector<core::PatientPoint> whole(m.axis.approach);
    whole.insert(whole.end(), m.axis.points.begin() + 1, m.axis.points.end());
    core::BloodPool noPool{
        core::BoxField<float>(), core::BoxMask(), core::BoxField<float>(), {}, {}, 0.4, 0, 0, {}, false};
    core::AppendageTrace trace{
        std::move(noPool), appendageMask(), core::Polyline::make(whole).value(), 20.0, {}, {}};
    m.trace = std::make_shared<const core::AppendageTrace>(std::move(trace));
    for (double s = 0; s < kSyntheticLengthMm - 1.0; s += 0.5)
        m.profile.push_back({s, sectionAt(s)});
    m.landingZones.push_back({core::LandingKind::Axis, 10.0, sectionAt(10.0), about(24.3, 0.3, 0.9)});
    m.depthAlongAxisMm = about(kSyntheticLengthMm, 0.4, 1.0);
    m.depthFromOstiumPlaneMm = about(35.1, 0.4, 1.0);
    m.volumeMl = about(6.4, 0.1, 0.2);
    m.turn = core::Turn{about(23, 1, 2), about(18.5, 0.5, 0.8)};
    m.enhancement = {380, 365, 301, std::nullopt, std::nullopt};
    m.notices.push_back(
        {"ostium-proposed",
         "The ostium is a proposal of the program: confirm it, or mark the circumflex artery and the ridge.",
         {}});
    return m;
}

} // namespace gauge::fixture
