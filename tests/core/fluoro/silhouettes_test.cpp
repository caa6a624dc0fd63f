#include "core/fluoro/silhouettes.h"

#include "tests/core/fluoro/expect.h"

#include <cmath>
#include <gmock/gmock.h>
#include <numbers>

using namespace gauge::core;
using namespace gauge::test;
using Eigen::Vector3d;
using testing::HasSubstr;

namespace {

struct Bodies {
    SurfaceMesh mesh;
    std::vector<std::uint8_t> beyond;
};

void addSphere(Bodies& bodies, const Vector3d& centre, double radius, bool beyond) {
    constexpr int kRings = 48, kAround = 96;
    const auto first = static_cast<std::uint32_t>(bodies.mesh.points.size());
    for (int i = 0; i <= kRings; ++i)
        for (int j = 0; j < kAround; ++j) {
            const double t = std::numbers::pi * i / kRings, p = 2.0 * std::numbers::pi * j / kAround;
            const Vector3d out(std::sin(t) * std::cos(p), std::sin(t) * std::sin(p), std::cos(t));
            bodies.mesh.points.push_back((centre + radius * out).cast<float>());
            bodies.mesh.normals.push_back(out.cast<float>());
            bodies.beyond.push_back(beyond ? 1 : 0);
        }
    const auto at = [&](int i, int j) { return first + static_cast<std::uint32_t>(i * kAround + j % kAround); };
    for (int i = 0; i < kRings; ++i)
        for (int j = 0; j < kAround; ++j) {
            bodies.mesh.triangles.push_back({at(i, j), at(i + 1, j), at(i + 1, j + 1)});
            bodies.mesh.triangles.push_back({at(i, j), at(i + 1, j + 1), at(i, j + 1)});
        }
}

/// Area common to two discs whose centres lie `d` apart: the lens of two circular segments.
double lens(double r, double s, double d) {
    if (d >= r + s) return 0.0;
    if (d <= std::abs(r - s)) return std::numbers::pi * std::min(r, s) * std::min(r, s);
    const double a = std::acos((d * d + r * r - s * s) / (2 * d * r)), b = std::acos((d * d + s * s - r * r) / (2 * d * s));
    return r * r * (a - 0.5 * std::sin(2 * a)) + s * s * (b - 0.5 * std::sin(2 * b));
}

constexpr double kPixelsShare = 0.01; // pixels of 1 mm on a disc of 24 mm: the border's 75 pixels are right to about 1/20 each

} // namespace

TEST(Silhouettes, OfTwoSpheresOverlapAsTheirLens) {
    const Vector3d appendage(10, -20, 5), atrium(-4, 8, 12);
    Bodies bodies;
    addSphere(bodies, appendage, 12.0, true);
    addSphere(bodies, atrium, 20.0, false);
    const auto pair = valueOf(Silhouettes::make(bodies.mesh, bodies.beyond));
    int between = 0;
    for (double primary = -90; primary <= 90; primary += 15)
        for (double secondary = -45; secondary <= 45; secondary += 15) {
            const CArmAngles view{primary, secondary};
            const Vector3d d = beamDirection(view).mm, apart = appendage - atrium;
            const double seen = (apart - apart.dot(d) * d).norm();
            const double share = lens(12.0, 20.0, seen) / (std::numbers::pi * 144.0);
            EXPECT_NEAR(pair.hiddenShare(view), share, kPixelsShare) << words(view);
            between += share > 0.05 && share < 0.95 ? 1 : 0;
        }
    EXPECT_GT(between, 10); // the comparison is about partial covers, not only all and nothing
}

TEST(Silhouettes, TurnWithThePatient) {
    Bodies bodies;
    addSphere(bodies, {10, -20, 5}, 12.0, true);
    addSphere(bodies, {-4, 8, 12}, 20.0, false);
    const Eigen::Matrix3d turn = Eigen::AngleAxisd(0.3, Vector3d::UnitZ()).toRotationMatrix();
    const auto lying = valueOf(Silhouettes::make(bodies.mesh, bodies.beyond)),
               turned = valueOf(Silhouettes::make(bodies.mesh, bodies.beyond, turn));
    const CArmAngles view{20, 10};
    const CArmAngles same = anglesOf({turn * beamDirection(view).mm});
    EXPECT_NEAR(turned.hiddenShare(same), lying.hiddenShare(view), kPixelsShare);
    EXPECT_GT(std::abs(turned.hiddenShare(view) - lying.hiddenShare(view)), 0.05);
}

TEST(Silhouettes, RefuseWhatHasNoTwoParts) {
    Bodies bodies;
    addSphere(bodies, {0, 0, 0}, 12.0, true);
    EXPECT_THAT(errorOf(Silhouettes::make(bodies.mesh, bodies.beyond)).message, HasSubstr("no part in the atrium"));
    EXPECT_THAT(errorOf(Silhouettes::make({}, {})).message, HasSubstr("no part beyond the ostium"));
    bodies.beyond.pop_back();
    EXPECT_EQ(errorOf(Silhouettes::make(bodies.mesh, bodies.beyond)).code, ErrorCode::InvalidArgument);
}
