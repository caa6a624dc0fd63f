// Contours and curves against SciPy and scikit-image.
#include "core/geometry/planar_contour.h"
#include "core/geometry/plane_fit.h"
#include "core/geometry/smooth_line.h"
#include "core/geometry/smoothing_spline.h"

#include "tests/outside/python_reference.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <random>

using namespace gauge::core;
using namespace gauge::test;

namespace {

constexpr double kPixelMm = 0.25;
constexpr int kSide = 160;

/// A shape as the level set 0 of a function of mm about the middle, positive inside.
struct Shape {
    std::string name;
    double (*level)(double x, double y);
    double areaMm2;
};

const Shape kShapes[] = {
    {"circle of radius 11", [](double x, double y) { return 11.0 - std::hypot(x, y); }, std::numbers::pi * 121.0},
    {"ellipse 14 x 9, turned",
     [](double x, double y) {
         const double u = 0.8 * x + 0.6 * y, v = -0.6 * x + 0.8 * y;
         return 9.0 * (1.0 - std::hypot(u / 14.0, v / 9.0));
     },
     std::numbers::pi * 14.0 * 9.0},
    // r = 10 + 2 cos 3t: area = pi (100 + 2).
    {"three lobes",
     [](double x, double y) { return 10.0 + 2.0 * std::cos(3.0 * std::atan2(y, x)) - std::hypot(x, y); },
     std::numbers::pi * 102.0},
};

std::vector<std::vector<double>> picture(const Shape& shape) {
    std::vector<std::vector<double>> rows(kSide, std::vector<double>(kSide));
    for (int r = 0; r < kSide; ++r)
        for (int c = 0; c < kSide; ++c)
            rows[static_cast<std::size_t>(r)][static_cast<std::size_t>(c)] =
                shape.level((c - kSide / 2) * kPixelMm, (r - kSide / 2) * kPixelMm);
    return rows;
}

std::vector<Eigen::Vector2d> pointsOf(const nlohmann::json& json) {
    std::vector<Eigen::Vector2d> out;
    for (const auto& p : json)
        out.emplace_back(p[0].get<double>(), p[1].get<double>());
    return out;
}

} // namespace

TEST(ContourOutside, LengthAndAreaEqualThoseOfScikitImagesContour) {
    for (const auto& shape : kShapes) {
        SCOPED_TRACE(shape.name);
        const auto other = askPython(
            "contour_of_level", {{"image", picture(shape)}, {"level", 0.0}, {"point", {kSide / 2.0, kSide / 2.0}}});
        const auto contour = pointsOf(other["points"]);
        EXPECT_NEAR(perimeterMm(contour), other["length"].get<double>(), 1e-9);
        EXPECT_NEAR(std::abs(signedAreaMm2(contour)), other["area"].get<double>(), 1e-6);
        // And both are near the shape itself: linear interpolation between pixels of 0.25 mm.
        EXPECT_NEAR(std::abs(signedAreaMm2(contour)) * kPixelMm * kPixelMm, shape.areaMm2, 0.001 * shape.areaMm2);
    }
}

// Counting pixels, another way to the same figures: Crofton's formula on four directions and Feret's diameter are
// good to a pixel or two, which catches a gross error of either side.
TEST(ContourOutside, AgreesWithPixelMeasuresToAPixelOrTwo) {
    for (const auto& shape : kShapes) {
        SCOPED_TRACE(shape.name);
        const auto image = picture(shape);
        const auto contour = pointsOf(askPython(
            "contour_of_level", {{"image", image}, {"level", 0.0}, {"point", {kSide / 2.0, kSide / 2.0}}})["points"]);
        const auto pixels = askPython("pixel_measures", {{"image", image}, {"level", 0.0}});
        EXPECT_NEAR(std::abs(signedAreaMm2(contour)) / pixels["area"].get<double>(), 1.0, 0.005);
        EXPECT_NEAR(perimeterMm(contour) / pixels["perimeter"].get<double>(), 1.0, 0.03);
        EXPECT_NEAR(maximumCaliper(contour).lengthMm, pixels["feret"].get<double>(), 2.0);
    }
}

TEST(ContourOutside, HullAndMaximumCaliperEqualThoseOfScipy) {
    std::mt19937 random(8);
    std::normal_distribution<double> spread(0.0, 12.0);
    for (const int n : {3, 10, 500, 3000}) {
        std::vector<Eigen::Vector2d> points;
        for (int i = 0; i < n; ++i)
            points.emplace_back(spread(random), spread(random));
        const auto other = askPython("hull", {{"points", toJson(points)}});
        const auto hull = convexHull(points);
        EXPECT_NEAR(signedAreaMm2(hull), other["area"].get<double>(), 1e-9) << n;
        EXPECT_NEAR(perimeterMm(hull), other["perimeter"].get<double>(), 1e-9) << n;
        EXPECT_NEAR(maximumCaliper(points).lengthMm, other["greatest"].get<double>(), 1e-12) << n;
    }
}

TEST(SmoothingSplineOutside, EqualsThatOfScipy) {
    std::mt19937 random(4);
    std::normal_distribution<double> noise(0.0, 0.4);
    std::vector<PatientPoint> points;
    std::vector<Eigen::Vector3d> plain;
    std::vector<double> weights;
    for (int i = 0; i < 80; ++i) {
        const double t = 0.05 * i;
        plain.emplace_back(15 * std::cos(t) + noise(random), 15 * std::sin(t) + noise(random), 8 * t + noise(random));
        points.push_back({plain.back()});
        weights.push_back(0.5 + i % 5);
    }
    for (const double lambda : {0.1, 5.0, 200.0}) {
        const auto spline = SpaceSpline::smooth(points, weights, lambda);
        ASSERT_TRUE(spline);
        const auto other =
            askPython("smoothing_spline",
                      {{"t", spline->knots()}, {"y", toJson(plain)}, {"weights", weights}, {"lam", lambda}});
        for (std::size_t i = 0; i < points.size(); ++i)
            for (int k = 0; k < 3; ++k)
                EXPECT_NEAR(spline->values()[i].mm[k], other[i][static_cast<std::size_t>(k)].get<double>(), 1e-6)
                    << "lambda " << lambda << ", knot " << i;
    }
}

// The line drawn through points against SciPy's CubicSpline (not-a-knot and periodic) over the same parameter, its length by
// adaptive quadrature.
TEST(SmoothLineOutside, EqualsScipysCubicSpline) {
    std::mt19937 random(11);
    std::normal_distribution<double> off(0.0, 1.5);
    for (const int n : {3, 4, 5, 12, 40}) {
        std::vector<Eigen::Vector2d> points;
        for (int i = 0; i < n; ++i) {
            const double t = 2.0 * std::numbers::pi * i / n;
            points.emplace_back(12.0 * std::cos(t) + off(random), 9.0 * std::sin(t) + off(random));
        }
        for (const bool closed : {false, true}) {
            SCOPED_TRACE(std::to_string(n) + (closed ? " points, closed" : " points, open"));
            constexpr int kPieces = 7;
            const auto other = askPython("cubic_spline", {{"points", toJson(points)}, {"closed", closed}, {"pieces", kPieces}});
            const auto line =
                SmoothLine::through(points, closed ? SmoothLine::Ends::Closed : SmoothLine::Ends::Open).value();
            EXPECT_NEAR(line.length() / other["length"].get<double>(), 1.0, 1e-9);
            const auto sampled = line.sampled(kPieces), theirs = pointsOf(other["sampled"]);
            ASSERT_EQ(sampled.size(), theirs.size());
            for (std::size_t i = 0; i < sampled.size(); ++i)
                EXPECT_LT((sampled[i] - theirs[i]).norm(), 1e-9);
            if (closed) {
                EXPECT_NEAR(line.signedArea(), other["area"].get<double>(), 1e-6);
            }
        }
    }
}

TEST(GeometryOutside, PlaneFitEqualsNumpyAndScipy) {
    std::mt19937 random(31);
    std::normal_distribution<double> noise;
    for (int run = 0; run < 4; ++run) {
        std::vector<PatientPoint> marked;
        std::vector<Eigen::Vector3d> plain;
        for (int i = 0; i < 5 + 3 * run; ++i) {
            const double t = 2.0 * std::numbers::pi * i / (5 + 3 * run);
            const double x = 18 * std::cos(t), y = 14 * std::sin(t);
            plain.emplace_back(20 + x + noise(random), -12 + y + noise(random), -140 + 0.4 * x - 0.3 * y + noise(random));
            marked.push_back({plain.back()});
        }
        const auto fit = fitPlane(marked);
        ASSERT_TRUE(fit);
        const auto other = askPython("plane_by_svd", {{"points", toJson(std::span<const Eigen::Vector3d>(plain))}});
        const auto vector = [&](const char* key) { return Eigen::Vector3d(other[key][0], other[key][1], other[key][2]); };
        EXPECT_LT((fit->plane.point.mm - vector("centre")).norm(), 1e-9);
        EXPECT_NEAR(std::abs(fit->plane.normal.mm.dot(vector("normal"))), 1.0, 1e-12);
        EXPECT_NEAR(fit->rmsMm, other["rms"].get<double>(), 1e-9);
        EXPECT_NEAR(fit->largestMm, other["largest"].get<double>(), 1e-9);
        EXPECT_NEAR(fit->longSpreadMm, other["spreads"][0].get<double>(), 1e-9);
        EXPECT_NEAR(fit->shortSpreadMm, other["spreads"][1].get<double>(), 1e-9);
        // An iteration that stops at relative changes of about 1e-8.
        EXPECT_NEAR(std::abs(fit->plane.normal.mm.dot(vector("odr_normal"))), 1.0, 1e-9);
    }
}
