// Edge-on and en-face views, and projected widths, against SciPy's rotations and root finding.
#include "core/fluoro/view_planning.h"

#include "tests/core/fluoro/bodies.h"
#include "tests/outside/python_reference.h"

#include <gtest/gtest.h>
#include <random>

using namespace gauge::core;
using namespace gauge::test;

namespace {

constexpr double kRootDeg = 1e-6; // brentq's tolerance, and rounding near steep views
constexpr double kMinimumCos = 1e-9; // of a minimum found to 1e-10 degrees
constexpr double kWidthMm = 1e-9;

std::vector<Eigen::Vector3d> randomNormals(int count) {
    std::mt19937 random(7);
    std::normal_distribution<double> part;
    std::vector<Eigen::Vector3d> normals{{0.60402277, -0.71984631, 0.34202014}, {0.78145041, -0.56775696, -0.25881905}};
    while (static_cast<int>(normals.size()) < count) {
        const Eigen::Vector3d n(part(random), part(random), part(random));
        if (std::abs(n.normalized().z()) > 0.05) normals.push_back(n);
    }
    return normals;
}

} // namespace

TEST(ProjectionOutside, EdgeOnAndEnFaceViewsEqualScipysSearch) {
    const auto normals = randomNormals(8);
    std::vector<double> primary;
    for (double a = -90.0; a <= 90.0; a += 5.0)
        primary.push_back(a);
    const auto theirs = askPython("edge_on_views", {{"normals", toJson(std::span(normals))}, {"primary", primary}});
    for (std::size_t k = 0; k < normals.size(); ++k) {
        const auto table = edgeOnTable({normals[k]});
        ASSERT_EQ(table.size(), primary.size());
        for (std::size_t i = 0; i < primary.size(); ++i)
            EXPECT_NEAR(table[i].secondaryDeg, theirs[k]["secondary"][i].get<double>(), kRootDeg) << k << " at " << primary[i];
        const auto found = theirs[k]["en_face"];
        const Eigen::Vector3d d(found[0], found[1], found[2]);
        EXPECT_NEAR(std::abs(beamDirection(enFace({normals[k]})).mm.dot(d)), 1.0, kMinimumCos);
    }
}

TEST(ProjectionOutside, ProjectedWidthsEqualThoseOfRotatedPoints) {
    const Eigen::Vector3d normal = Eigen::Vector3d(0.6, -0.7, 0.3).normalized();
    const auto contour = ellipseIn3d({10, -20, 30}, normal, 13.0, 9.0, 90);
    std::vector<Eigen::Vector3d> points;
    for (const auto& p : contour)
        points.push_back(p.mm);
    std::vector<std::array<double, 2>> views;
    for (double a = -80; a <= 80; a += 20)
        for (double b = -60; b <= 60; b += 20)
            if (projectedWidth(contour, CArmAngles{a, b})->widthMm) views.push_back({a, b});
    ASSERT_GT(views.size(), 40u);
    const std::vector<double> n{normal.x(), normal.y(), normal.z()};
    const auto theirs = askPython("widths_in_views", {{"points", toJson(std::span(points))}, {"normal", n}, {"views", views}});
    for (std::size_t i = 0; i < views.size(); ++i)
        EXPECT_NEAR(*projectedWidth(contour, CArmAngles{views[i][0], views[i][1]})->widthMm, theirs[i].get<double>(), kWidthMm);
}
