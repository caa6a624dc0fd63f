#include "core/geometry/planar_contour.h"

#include "tests/core/geometry/shape_zoo.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <limits>
#include <numbers>
#include <random>
#include <rapidcheck/gtest.h>

using namespace gauge::core;
using namespace gauge::test;

namespace {

// Rounding of sums over tens of terms of a few tens of mm, with shifts of up to 3e4 mm.
constexpr double kRoundingMm = 1e-7;

Contour reversed(Contour c) {
    std::reverse(c.begin(), c.end());
    return c;
}

Contour withRepeatsAndMidpoints(const Contour& c) {
    Contour out;
    for (std::size_t i = 0; i < c.size(); ++i) {
        out.push_back(c[i]);
        out.push_back(c[i]);
        out.push_back(0.5 * (c[i] + c[(i + 1) % c.size()]));
    }
    return out;
}

/// Brute-force twin of maximumCaliper.
double greatestVertexDistance(const Contour& c) {
    double best = 0.0;
    for (const auto& a : c)
        for (const auto& b : c)
            best = std::max(best, (a - b).norm());
    return best;
}

/// Brute-force twin of minimumCaliper: the least extent across any line through two vertices. (The least width of
/// a polygon lies across a side of its hull, and each such side joins two vertices.)
double leastExtentAcrossVertexPairs(const Contour& c) {
    double best = std::numeric_limits<double>::infinity();
    for (const auto& a : c)
        for (const auto& b : c) {
            if (a == b) continue;
            const Eigen::Vector2d u = (b - a).normalized();
            best = std::min(best, extentAlong(c, {-u.y(), u.x()}).lengthMm);
        }
    return best;
}

/// Plain twins, root by root: every pair and every width that rotating calipers look at, on a hull from sorted points.
Contour plainHull(Contour points) {
    std::sort(points.begin(), points.end(),
              [](const auto& a, const auto& b) { return a.x() != b.x() ? a.x() < b.x() : a.y() < b.y(); });
    points.erase(std::unique(points.begin(), points.end()), points.end());
    if (points.size() < 3) return points;
    const auto turn = [](const auto& a, const auto& b, const auto& c) {
        const Eigen::Vector2d p = b - a, q = c - a;
        return p.x() * q.y() - p.y() * q.x();
    };
    Contour hull;
    const auto push = [&](std::size_t floor, const Eigen::Vector2d& p) {
        while (hull.size() >= floor + 2 && turn(hull[hull.size() - 2], hull.back(), p) <= 0.0)
            hull.pop_back();
        hull.push_back(p);
    };
    for (const auto& p : points)
        push(0, p);
    const std::size_t lower = hull.size() - 1;
    for (auto p = points.rbegin() + 1; p != points.rend(); ++p)
        push(lower, *p);
    hull.pop_back();
    return hull;
}

double plainLongest(const Contour& hull) {
    double best = 0.0;
    for (std::size_t i = 0; i < hull.size(); ++i)
        for (std::size_t j = i + 1; j < hull.size(); ++j)
            best = std::max(best, (hull[j] - hull[i]).norm());
    return best;
}

double plainLeastWidth(const Contour& hull) {
    double best = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < hull.size(); ++i) {
        const Eigen::Vector2d side = hull[(i + 1) % hull.size()] - hull[i], u = side / side.norm();
        double width = 0.0;
        for (const auto& p : hull)
            width = std::max(width, (p - hull[i]).dot(Eigen::Vector2d(-u.y(), u.x())));
        best = std::min(best, width);
    }
    return best;
}

double distanceToBoundary(const Contour& c, const Eigen::Vector2d& p) {
    double best = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < c.size(); ++i) {
        const Eigen::Vector2d a = c[i], side = c[(i + 1) % c.size()] - a;
        const double t = side.norm() > 0 ? std::clamp((p - a).dot(side) / side.squaredNorm(), 0.0, 1.0) : 0.0;
        best = std::min(best, (a + t * side - p).norm());
    }
    return best;
}

} // namespace

TEST(SignedArea, HandValues) {
    EXPECT_DOUBLE_EQ(signedAreaMm2(Contour{{0, 0}, {4, 0}, {4, 3}, {0, 3}}), 12.0);
    EXPECT_DOUBLE_EQ(signedAreaMm2(Contour{{0, 0}, {0, 3}, {4, 0}}), -6.0) << "clockwise";
    EXPECT_DOUBLE_EQ(signedAreaMm2(Contour{{0, 0}, {3, 0}, {3, 1}, {1, 1}, {1, 3}, {0, 3}}), 5.0) << "L shape";
}

TEST(SignedArea, RegularPolygonMatchesItsClosedForm) {
    for (const int n : {3, 6, 32, 1000}) {
        const double expected = 0.5 * n * 25.0 * std::sin(2.0 * std::numbers::pi / n);
        EXPECT_NEAR(signedAreaMm2(ellipseContour(5, 5, 0.3, {-7, 40}, n)), expected, 1e-9) << n;
    }
}

TEST(Perimeter, HandValues) {
    EXPECT_DOUBLE_EQ(perimeterMm(Contour{{0, 0}, {4, 0}, {0, 3}}), 12.0);
    EXPECT_DOUBLE_EQ(perimeterMm(Contour{{0, 0}, {3, 0}, {3, 1}, {1, 1}, {1, 3}, {0, 3}}), 12.0);
}

TEST(Perimeter, SampledCircleReadsLowAsTheHeaderSays) {
    const double truth = 2.0 * std::numbers::pi * 10.0;
    const double read = perimeterMm(ellipseContour(10, 10, 0, {0, 0}, 32));
    const double x = std::numbers::pi / 32;
    EXPECT_NEAR((truth - read) / truth, 1.0 - std::sin(x) / x, 1e-12);
    EXPECT_NEAR((truth - read) / truth, 0.0016, 0.0001);
}

TEST(AreaCentroid, HandValues) {
    EXPECT_TRUE(areaCentroid(Contour{{0, 0}, {4, 0}, {0, 3}}).isApprox(Eigen::Vector2d(4.0 / 3.0, 1.0), 1e-12));
    // L shape: (3x1 at (1.5, 0.5)) + (1x2 at (0.5, 2)), area 5.
    EXPECT_TRUE(areaCentroid(Contour{{0, 0}, {3, 0}, {3, 1}, {1, 1}, {1, 3}, {0, 3}})
                    .isApprox(Eigen::Vector2d(5.5 / 5.0, 5.5 / 5.0), 1e-12));
}

TEST(AreaCentroid, IsNotPulledByCrowdedVertices) {
    Contour c{{0, 0}, {2, 0}, {2, 2}};
    for (int i = 0; i <= 50; ++i) // 51 vertices along one side
        c.push_back({2.0 - 2.0 * i / 50.0, 2.0});
    EXPECT_LT((areaCentroid(c) - Eigen::Vector2d(1, 1)).norm(), kRoundingMm);
}

TEST(Contains, TellsTheNotchOfAnLShape) {
    const Contour l{{0, 0}, {3, 0}, {3, 1}, {1, 1}, {1, 3}, {0, 3}};
    EXPECT_TRUE(contains(l, {0.5, 2.5}));
    EXPECT_TRUE(contains(l, {2.5, 0.5}));
    EXPECT_FALSE(contains(l, {2.0, 2.0}));
    EXPECT_FALSE(contains(l, {-0.1, 1.0})) << "level with a vertex, outside";
    EXPECT_TRUE(contains(reversed(l), {0.5, 2.5})) << "either sense of rotation";
}

TEST(ConvexHull, DropsInnerCollinearAndRepeatedPoints) {
    const Contour hull = convexHull(Contour{{0, 0}, {1, 0}, {2, 0}, {2, 0}, {2, 2}, {1, 1}, {0, 2}, {0, 1}});
    ASSERT_EQ(hull.size(), 4u);
    EXPECT_DOUBLE_EQ(signedAreaMm2(hull), 4.0) << "counter-clockwise";
}

TEST(ConvexHull, OfPointsOnALineHasTheTwoEnds) {
    EXPECT_EQ(convexHull(Contour{{0, 0}, {1, 1}, {3, 3}, {2, 2}}).size(), 2u);
    EXPECT_EQ(convexHull(Contour{{1, 1}, {1, 1}}).size(), 1u);
    EXPECT_TRUE(convexHull(Contour{}).empty());
}

TEST(MaximumCaliper, HandValues) {
    EXPECT_DOUBLE_EQ(maximumCaliper(Contour{{0, 0}, {4, 0}, {4, 3}, {0, 3}}).lengthMm, 5.0);
    EXPECT_DOUBLE_EQ(maximumCaliper(Contour{{0, 0}, {4, 0}, {0, 3}}).lengthMm, 5.0);
    EXPECT_NEAR(maximumCaliper(ellipseContour(12, 8, 0.7, {3, 4}, 360)).lengthMm, 24.0, kRoundingMm);
}

TEST(MinimumCaliper, HandValues) {
    EXPECT_DOUBLE_EQ(minimumCaliper(Contour{{0, 0}, {4, 0}, {4, 3}, {0, 3}}).lengthMm, 3.0);
    EXPECT_DOUBLE_EQ(minimumCaliper(Contour{{0, 0}, {4, 0}, {0, 3}}).lengthMm, 2.4) << "height on the long side";
    EXPECT_DOUBLE_EQ(minimumCaliper(Contour{{0, 0}, {10, 0}, {10, 1e-3}, {0, 1e-3}}).lengthMm, 1e-3);
    // The inscribed polygon's sides lie inside the ellipse by up to b (1 - cos(pi/n)) at each end.
    const double inset = 2 * 8 * (1 - std::cos(std::numbers::pi / 360));
    EXPECT_NEAR(minimumCaliper(ellipseContour(12, 8, 0.7, {3, 4}, 360)).lengthMm, 16.0 - inset / 2, inset / 2 + 1e-9);
}

TEST(MinimumCaliper, StandsInTheMiddleOfParallelSides) {
    // A parallelogram's shared stretch of its long sides: x from 2 to 10.
    const Caliper c = minimumCaliper(Contour{{0, 0}, {10, 0}, {12, 3}, {2, 3}});
    EXPECT_DOUBLE_EQ(c.lengthMm, 3.0);
    EXPECT_NEAR(c.from.x(), 6.0, kRoundingMm);
    EXPECT_NEAR(c.to.x(), 6.0, kRoundingMm);
}

TEST(Calipers, OfAContourThatIsALineAreItsLengthAndZero) {
    const Contour line{{0, 0}, {1, 1}, {3, 3}};
    EXPECT_DOUBLE_EQ(maximumCaliper(line).lengthMm, std::sqrt(18.0));
    EXPECT_EQ(minimumCaliper(line).lengthMm, 0.0);
}

TEST(ExtentAlong, HandValues) {
    const Contour l{{0, 0}, {3, 0}, {3, 1}, {1, 1}, {1, 3}, {0, 3}};
    const Caliper c = extentAlong(l, {0, 1});
    EXPECT_DOUBLE_EQ(c.lengthMm, 3.0);
    EXPECT_DOUBLE_EQ(c.from.y(), 0.0);
    EXPECT_DOUBLE_EQ(c.to.y(), 3.0);
    EXPECT_DOUBLE_EQ(c.from.x(), c.to.x()) << "parallel to the direction asked for";
    EXPECT_DOUBLE_EQ(extentAlong(l, Eigen::Vector2d(1, 1).normalized()).lengthMm, 4.0 / std::sqrt(2.0));
}

TEST(ResampleByArcLength, StepsEquallyAndStartsAtTheFirstVertex) {
    const Contour square{{0, 0}, {2, 0}, {2, 2}, {0, 2}};
    const Contour out = resampleByArcLength(square, 8);
    const Contour expected{{0, 0}, {1, 0}, {2, 0}, {2, 1}, {2, 2}, {1, 2}, {0, 2}, {0, 1}};
    ASSERT_EQ(out.size(), 8u);
    for (std::size_t i = 0; i < 8; ++i)
        EXPECT_LT((out[i] - expected[i]).norm(), kRoundingMm) << i;
}

TEST(ValidateContour, NamesWhatIsWrong) {
    const auto few = validateContour(Contour{{0, 0}, {1, 0}});
    ASSERT_FALSE(few);
    EXPECT_EQ(few.error().code, ErrorCode::TooFewPoints);
    EXPECT_EQ(few.error().message, "Cannot measure the contour: it has 2 points; a closed contour needs at least 3.");

    const auto nan = validateContour(Contour{{0, 0}, {1, std::nan("")}, {1, 1}});
    ASSERT_FALSE(nan);
    EXPECT_EQ(nan.error().code, ErrorCode::NonFinite);
    EXPECT_EQ(nan.error().message, "Cannot measure the contour: point 2 of 3 is not a finite number.");

    const auto flat = validateContour(Contour{{0, 0}, {1, 1}, {2, 2}});
    ASSERT_FALSE(flat);
    EXPECT_EQ(flat.error().code, ErrorCode::Degenerate);
    EXPECT_EQ(flat.error().message,
              "Cannot measure the contour: its 3 points enclose no area (all in one place or on one line).");

    for (const auto& shape : shapeZoo())
        EXPECT_TRUE(validateContour(shape.points)) << shape.name;
}

TEST(Contours, MeasuresOfTheZooStandRepeatsMidpointsAndReversal) {
    for (const auto& shape : shapeZoo()) {
        SCOPED_TRACE(shape.name);
        const Contour dense = withRepeatsAndMidpoints(shape.points), back = reversed(shape.points);
        EXPECT_NEAR(signedAreaMm2(dense), signedAreaMm2(shape.points), kRoundingMm);
        EXPECT_NEAR(signedAreaMm2(back), -signedAreaMm2(shape.points), kRoundingMm);
        for (const Contour& other : {dense, back}) {
            EXPECT_NEAR(perimeterMm(other), perimeterMm(shape.points), kRoundingMm);
            EXPECT_LT((areaCentroid(other) - areaCentroid(shape.points)).norm(), kRoundingMm);
            EXPECT_NEAR(maximumCaliper(other).lengthMm, maximumCaliper(shape.points).lengthMm, kRoundingMm);
            EXPECT_NEAR(minimumCaliper(other).lengthMm, minimumCaliper(shape.points).lengthMm, kRoundingMm);
        }
    }
}

RC_GTEST_PROP(Contours, MeasuresFollowRigidMotionAndScale, ()) {
    const Contour c = *starContours();
    const Motion move = anyMotion();
    const double scale = *reals(0.1, 10.0);
    Contour moved = move(c);
    for (auto& p : moved)
        p *= scale;
    const double tolerance = kRoundingMm * scale * scale;
    RC_ASSERT(std::abs(signedAreaMm2(moved) - scale * scale * signedAreaMm2(c)) < 100 * tolerance);
    RC_ASSERT(std::abs(perimeterMm(moved) - scale * perimeterMm(c)) < tolerance + kRoundingMm);
    RC_ASSERT((areaCentroid(moved) - scale * move(areaCentroid(c))).norm() < 10 * (tolerance + kRoundingMm));
    RC_ASSERT(std::abs(maximumCaliper(moved).lengthMm - scale * maximumCaliper(c).lengthMm) <
              tolerance + kRoundingMm);
    RC_ASSERT(std::abs(minimumCaliper(moved).lengthMm - scale * minimumCaliper(c).lengthMm) <
              tolerance + kRoundingMm);
}

RC_GTEST_PROP(Calipers, EqualTheirBruteForceTwins, ()) {
    const Contour c = anyMotion()(*starContours());
    RC_ASSERT(std::abs(maximumCaliper(c).lengthMm - greatestVertexDistance(c)) < kRoundingMm);
    RC_ASSERT(std::abs(minimumCaliper(c).lengthMm - leastExtentAcrossVertexPairs(c)) < kRoundingMm);
}

RC_GTEST_PROP(Calipers, EqualTheirPlainTwinsToTheLastBit, ()) {
    const Contour c = anyMotion()(*starContours());
    const Contour hull = plainHull(c);
    RC_ASSERT(convexHull(c) == hull);
    const Calipers both = calipers(c);
    const Caliper longest = maximumCaliper(c), least = minimumCaliper(c);
    RC_ASSERT(both.longest.from == longest.from && both.longest.to == longest.to && both.longest.lengthMm == longest.lengthMm);
    RC_ASSERT(both.leastWidth.from == least.from && both.leastWidth.to == least.to && both.leastWidth.lengthMm == least.lengthMm);
    RC_ASSERT(longest.lengthMm == plainLongest(hull));
    // Two corners of a parallel side are equally far but for rounding, and the walk stops at the first.
    RC_ASSERT(std::abs(least.lengthMm - plainLeastWidth(hull)) <= 1e-15 * longest.lengthMm + 1e-12 * least.lengthMm);
}

TEST(ConvexHull, SortsPointsInAnyOrder) {
    std::mt19937 random(8);
    for (const int count : {1, 2, 3, 10, 200})
        for (int round = 0; round < 20; ++round) {
            Contour points;
            for (int i = 0; i < count; ++i)
                points.emplace_back(static_cast<double>(random() % 12), static_cast<double>(random() % 12));
            if (round % 2) std::sort(points.begin(), points.end(), [](const auto& a, const auto& b) { return a.x() > b.x(); });
            EXPECT_EQ(convexHull(points), plainHull(points));
        }
}

// Long ones lose their inner points before they are sorted.
TEST(ConvexHull, OfLongNoisyContoursIsThatOfAllTheirPoints) {
    std::mt19937 random(9);
    std::uniform_real_distribution<double> unit(0.0, 1.0);
    for (const std::size_t count : {128, 129, 500, 2000})
        for (int round = 0; round < 60; ++round) {
            const double noise = 0.03 * (round % 4), flat = 0.1 + 0.9 * unit(random), far = round % 3 == 0 ? 3e4 : 5.0;
            const int lobes = round % 5;
            Contour points;
            for (std::size_t i = 0; i < count; ++i) {
                const double t = 2.0 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(count);
                const double r = (12.0 + (lobes > 1 ? 5.0 * std::cos(lobes * t) : 0.0)) * (1.0 + noise * (unit(random) - 0.5));
                points.emplace_back(far + r * std::cos(t), r * flat * std::sin(t) - far);
            }
            const Contour sparse(points.begin(), points.begin() + static_cast<std::ptrdiff_t>(count / 2));
            const Contour doubled = withRepeatsAndMidpoints(points);
            EXPECT_EQ(convexHull(points), plainHull(points)) << count << " points, round " << round;
            EXPECT_EQ(convexHull(reversed(points)), plainHull(points)) << count << " points, round " << round;
            EXPECT_EQ(convexHull(sparse), plainHull(sparse)) << count << " points, round " << round;
            EXPECT_EQ(convexHull(doubled), plainHull(doubled)) << count << " points, round " << round;
            std::shuffle(points.begin(), points.end(), random);
            EXPECT_EQ(convexHull(points), plainHull(points)) << count << " points, round " << round;
        }
}

RC_GTEST_PROP(Calipers, EndOnTheHullAndKeepOrder, ()) {
    const Contour c = anyMotion()(*starContours());
    const Contour hull = convexHull(c);
    const Caliper longest = maximumCaliper(c), least = minimumCaliper(c);
    RC_ASSERT(std::abs((longest.to - longest.from).norm() - longest.lengthMm) < kRoundingMm);
    RC_ASSERT(std::abs((least.to - least.from).norm() - least.lengthMm) < kRoundingMm);
    for (const auto& end : {longest.from, longest.to, least.from, least.to})
        RC_ASSERT(distanceToBoundary(hull, end) < kRoundingMm);
    const Eigen::Vector2d u = (longest.to - longest.from) / longest.lengthMm;
    const double across = extentAlong(c, {-u.y(), u.x()}).lengthMm;
    RC_ASSERT(least.lengthMm <= across + kRoundingMm);
    RC_ASSERT(across <= longest.lengthMm + kRoundingMm);
    RC_ASSERT(std::abs(extentAlong(c, u).lengthMm - longest.lengthMm) < kRoundingMm);
}

RC_GTEST_PROP(ConvexHull, HoldsEveryPointAndTurnsLeft, ()) {
    const Contour c = anyMotion()(*starContours());
    const Contour hull = convexHull(c);
    for (std::size_t i = 0; i < hull.size(); ++i) {
        const Eigen::Vector2d a = hull[i], side = hull[(i + 1) % hull.size()] - a;
        for (const auto& p : c)
            RC_ASSERT(side.x() * (p - a).y() - side.y() * (p - a).x() > -kRoundingMm * side.norm());
    }
}

RC_GTEST_PROP(ResampleByArcLength, StaysOnTheContourAtEqualSteps, ()) {
    const Contour c = *starContours();
    const auto count = static_cast<std::size_t>(*rc::gen::inRange(3, 400));
    const Contour out = resampleByArcLength(c, count);
    RC_ASSERT(out.size() == count);
    const double step = perimeterMm(c) / static_cast<double>(count);
    for (std::size_t i = 0; i < count; ++i) {
        RC_ASSERT(distanceToBoundary(c, out[i]) < kRoundingMm);
        RC_ASSERT((out[(i + 1) % count] - out[i]).norm() < step + kRoundingMm);
    }
}
