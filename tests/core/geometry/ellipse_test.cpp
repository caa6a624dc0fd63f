#include "core/geometry/ellipse.h"

#include "core/geometry/planar_contour.h"
#include "tests/core/geometry/shape_zoo.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

using namespace gauge::core;
using namespace gauge::test;

namespace {

constexpr double kPi = std::numbers::pi;
// What the header claims for E, relative.
constexpr double kEllipticTolerance = 1e-14;
// Figures printed with 14 decimals.
constexpr double kPrintedTolerance = 1e-14;

Ellipse anyEllipse() {
    const double a = *reals(0.5, 40.0), b = a * *reals(0.02, 1.0);
    return {{*reals(-100, 100), *reals(-100, 100)}, a, b, *reals(-kPi / 2, kPi / 2)};
}

} // namespace

// E(m) with m = 1 - q^2. Values: computed independently with arbitrary-precision arithmetic, printed to 14 decimals.
// E(0.5) = 1.350643881 is also the figure of Abramowitz and Stegun, table 17.1 (from memory).
TEST(CompleteEllipticE, MatchesTheTable) {
    const struct {
        double m, e;
    } rows[] = {{0.0, 1.57079632679490},
                {0.1, 1.53075763689776},
                {0.2, 1.48903505809585},
                {0.3, 1.44536306441267},
                {0.4, 1.39939213889743},
                {0.5, 1.35064388104768},
                {0.6, 1.29842803504691},
                {0.7, 1.24167056794582},
                {0.8, 1.17848992432784},
                {0.9, 1.10477473270407},
                {1.0, 1.0}};
    for (const auto& row : rows)
        EXPECT_NEAR(completeEllipticE(std::sqrt(1.0 - row.m)), row.e, kPrintedTolerance) << "m = " << row.m;
}

TEST(CompleteEllipticE, AgreesWithTheStandardLibrary) {
    constexpr double kLibraryTolerance = 1e-12; // libstdc++ itself is off by up to 3e-13 (against 40 digits)
    for (int i = 1; i <= 1000; ++i) {
        const double q = i / 1000.0;
        EXPECT_NEAR(completeEllipticE(q), std::comp_ellint_2(std::sqrt((1.0 - q) * (1.0 + q))), kLibraryTolerance)
            << q;
    }
}

// Computed with 40 digits (mpmath.ellipe).
TEST(CompleteEllipticE, KeepsItsDigitsForFlatEllipses) {
    EXPECT_NEAR(completeEllipticE(0.01), 1.0002745824306629652, kEllipticTolerance);
    EXPECT_NEAR(completeEllipticE(0.02), 1.0009597899535768399, kEllipticTolerance);
    EXPECT_NEAR(completeEllipticE(0.001), 1.0000038970261720612, kEllipticTolerance);
}

TEST(CompleteEllipticE, IsContinuousWhereTheSeriesTakesOver) {
    const double below = completeEllipticE(std::nextafter(1e-3, 0.0)), above = completeEllipticE(1e-3);
    EXPECT_NEAR(below, above, kEllipticTolerance);
}

TEST(CompleteEllipticE, ReachesBothEnds) {
    EXPECT_EQ(completeEllipticE(0.0), 1.0);
    EXPECT_EQ(completeEllipticE(std::numeric_limits<double>::min()), 1.0);
    EXPECT_NEAR(completeEllipticE(1.0), kPi / 2, 1e-15);
}

// P(a, b): computed independently with arbitrary-precision arithmetic, printed to double precision.
TEST(EllipsePerimeter, MatchesTheTable) {
    const struct {
        double a, b, perimeter;
    } rows[] = {{1, 0.5, 4.844224110273838}, {5, 3, 25.52699886339813},  {10, 8, 56.72333577794897},
                {12, 8, 63.46175835716236},  {13, 9, 69.68742708723019}, {15, 10, 79.32719794645295},
                {10, 9.5, 61.27112636604973}};
    for (const auto& row : rows)
        EXPECT_NEAR(perimeterMm(Ellipse{{3, 4}, row.a, row.b, 0.3}), row.perimeter,
                    kEllipticTolerance * row.perimeter)
            << row.a << " x " << row.b;
}

// Ramanujan's second approximation for 12 x 8: 63.46175835700494, relative error 2.5e-12 (computed).
TEST(EllipsePerimeter, ShowsTheErrorOfRamanujansApproximation) {
    const double h = std::pow((12.0 - 8.0) / (12.0 + 8.0), 2);
    const double ramanujan = kPi * 20.0 * (1.0 + 3.0 * h / (10.0 + std::sqrt(4.0 - 3.0 * h)));
    EXPECT_NEAR(ramanujan, 63.46175835700494, 1e-13 * 64);
    EXPECT_NEAR(1.0 - ramanujan / perimeterMm(Ellipse{{0, 0}, 12, 8, 0}), 2.5e-12, 0.05e-12);
}

// Derived diameters of a 30 x 20 mm and a 24 x 16 mm ellipse, printed to 4 decimals (computed).
TEST(EllipsePerimeter, GivesThePerimeterDerivedDiameters) {
    EXPECT_NEAR(perimeterMm(Ellipse{{0, 0}, 15, 10, 0}) / kPi, 25.2506, 5e-5);
    EXPECT_NEAR(perimeterMm(Ellipse{{0, 0}, 12, 8, 0}) / kPi, 20.2005, 5e-5);
    EXPECT_NEAR(2 * std::sqrt(areaMm2(Ellipse{{0, 0}, 15, 10, 0}) / kPi), 24.4949, 5e-5);
    EXPECT_NEAR(2 * std::sqrt(areaMm2(Ellipse{{0, 0}, 12, 8, 0}) / kPi), 19.5959, 5e-5);
}

TEST(EllipsePerimeter, OfASegmentIsTwiceItsLength) {
    EXPECT_EQ(perimeterMm(Ellipse{{0, 0}, 7, 0, 0}), 28.0);
    EXPECT_EQ(perimeterMm(Ellipse{}), 0.0);
}

RC_GTEST_PROP(EllipsePerimeter, IsTheLimitOfInscribedPolygons, ()) {
    const Ellipse e = anyEllipse();
    const int n = 20000;
    Contour polygon;
    for (int i = 0; i < n; ++i)
        polygon.push_back(pointAt(e, 2 * kPi * i / n));
    const double read = perimeterMm(polygon), truth = perimeterMm(e);
    RC_ASSERT(read < truth * (1 + 1e-12));
    RC_ASSERT(read > truth * (1 - 1e-6));
}

TEST(EllipseChord, HandValues) {
    const Ellipse e{{5, 5}, 12, 8, kPi / 6};
    EXPECT_DOUBLE_EQ(chordMm(e, kPi / 6), 24.0);
    EXPECT_DOUBLE_EQ(chordMm(e, kPi / 6 + kPi / 2), 16.0);
    const double halfAt45 = 1.0 / std::sqrt(0.5 / 144.0 + 0.5 / 64.0);
    EXPECT_NEAR(chordMm(e, kPi / 6 + kPi / 4), 2 * halfAt45, 1e-12);
    EXPECT_EQ(chordMm(Ellipse{{0, 0}, 3, 0, 0}, 0.0), 6.0);
    EXPECT_EQ(chordMm(Ellipse{{0, 0}, 3, 0, 0}, 1.0), 0.0);
}

RC_GTEST_PROP(EllipseChord, EndsOnTheEllipse, ()) {
    const Ellipse e = anyEllipse();
    const double direction = *reals(-4, 4);
    const Eigen::Vector2d end =
        e.center + 0.5 * chordMm(e, direction) * Eigen::Vector2d(std::cos(direction), std::sin(direction));
    const Eigen::Vector2d q = Eigen::Rotation2Dd(-e.angleRad) * (end - e.center);
    const double level = std::pow(q.x() / e.semiMajorMm, 2) + std::pow(q.y() / e.semiMinorMm, 2);
    RC_ASSERT(std::abs(level - 1.0) < 1e-9);
}

TEST(EllipseNearestPoint, HandValues) {
    const Ellipse e{{0, 0}, 5, 3, 0};
    EXPECT_TRUE(nearestPoint(e, {9, 0}).isApprox(Eigen::Vector2d(5, 0)));
    EXPECT_TRUE(nearestPoint(e, {0, -7}).isApprox(Eigen::Vector2d(0, -3)));
    EXPECT_NEAR((nearestPoint(e, {0, 0}) - Eigen::Vector2d(0, 0)).norm(), 3.0, 1e-12) << "centre: either minor end";
    // Inside the evolute on the major axis (3.2 = (25 - 9)/5 from the centre): two nearest points, x = 25 * 1 / 16.
    EXPECT_NEAR(nearestPoint(e, {1, 0}).x(), 25.0 / 16.0, 1e-12);
    EXPECT_TRUE(nearestPoint(e, {4, 0}).isApprox(Eigen::Vector2d(5, 0)));
}

RC_GTEST_PROP(EllipseNearestPoint, LiesOnTheEllipseWithTheNormalThroughThePoint, ()) {
    const Ellipse e = anyEllipse();
    const Eigen::Vector2d p = e.center + Eigen::Vector2d(*reals(-80, 80), *reals(-80, 80));
    const Eigen::Vector2d foot = nearestPoint(e, p);
    const Eigen::Rotation2Dd back(-e.angleRad);
    const Eigen::Vector2d q = back * (foot - e.center);
    const double a2 = e.semiMajorMm * e.semiMajorMm, b2 = e.semiMinorMm * e.semiMinorMm;
    RC_ASSERT(std::abs(q.x() * q.x() / a2 + q.y() * q.y() / b2 - 1.0) < 1e-9);
    const Eigen::Vector2d normal = Eigen::Vector2d(q.x() / a2, q.y() / b2).normalized(), d = back * (p - foot);
    RC_ASSERT(std::abs(normal.x() * d.y() - normal.y() * d.x()) < 1e-7);
    // No sampled point of the ellipse is nearer.
    for (int i = 0; i < 720; ++i)
        RC_ASSERT((pointAt(e, 2 * kPi * i / 720) - p).norm() > (foot - p).norm() - 1e-9);
}

TEST(EllipseNearestPoint, SurvivesPointsAlmostOnTheAxes) {
    const Ellipse e{{0, 0}, 5, 3, 0};
    for (const double tiny : {1e-300, 1e-100, 1e-16, 1e-8})
        for (const double x : {0.0, tiny, 1.0, 3.2, 5.0, 8.0}) {
            const Eigen::Vector2d foot = nearestPoint(e, {x, tiny});
            EXPECT_NEAR(std::pow(foot.x() / 5, 2) + std::pow(foot.y() / 3, 2), 1.0, 1e-9) << x << ' ' << tiny;
        }
}
