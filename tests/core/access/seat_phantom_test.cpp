// Seats in measured scans of invented hearts, against the formulas of these hearts.
#include "core/geometry/planar_contour.h"
#include "core/geometry/polyline.h"
#include "core/sizing/seat.h"

#include "sample-data/phantom.h"

#include <gtest/gtest.h>
#include <numbers>

using namespace gauge::core;
using namespace gauge::sample_case;

namespace {

// The wall is known to about 0.1 mm (DEVELOPERS.md, "Accuracy"); between rays and points it bulges by a few hundredths. Along the sheath
// that becomes more the less the wall leans, so reaches are compared with those in slightly narrower and wider hearts.
constexpr double kWallMm = 0.15;
constexpr double kStepMm = 0.1; // of the search for the truth

struct SeatedHeart {
    Phantom phantom;
    AppendageMeasurement measurement;
    SeatWall wall;
    SeatQuestion question;
};

SeatedHeart seatedHeart(Shape shape, std::uint64_t seed) {
    SeatedHeart heart;
    heart.phantom = makePhantom(shape, seed);
    const auto volume = heart.phantom.rasterise();
    AppendageOptions options;
    options.profileStepMm = 5.0;
    const auto& marks = heart.phantom.marks;
    heart.measurement =
        measureAppendage(volume, {marks.atrium, marks.tip, marks.circumflex, marks.ridge, {}, {}}, options).value();
    heart.wall = seatWallOf(heart.measurement).value();
    heart.question = seatQuestionOf(heart.measurement).value();
    heart.question.direction = heart.question.axisAtLanding; // square to the landing zone, whose area is known
    const SectionMetrics& landing = heart.measurement.landingZones.front().section.metrics;
    heart.question.chart.depthFrom = DepthFrom::LandingZone;
    for (const double share : {0.75, 0.85, 0.95}) {
        ChartSize size;
        size.name = std::to_string(share);
        size.nominalMm = landing.shortestDiameterMm.value * share / 0.7; // narrowest: that share of the shortest diameter
        size.compressionPercent = {3.0, 30.0};
        size.leastDepthMm = 8.0;
        heart.question.chart.sizes.push_back(size);
    }
    return heart;
}

/// How far a ray of the heart's own formula reaches from its wall, at most `most`.
double trueRayMm(const SeatedHeart& heart, const PatientPoint& from, const PatientVector& to, double most) {
    double lo = 0.0;
    while (lo < most && heart.phantom.insidePool(from + lo * to))
        lo += 0.2;
    if (lo == 0.0 || lo >= most) return std::min(lo, most);
    double hi = lo;
    lo -= 0.2;
    while (hi - lo > 0.01) {
        const double mid = 0.5 * (lo + hi);
        (heart.phantom.insidePool(from + mid * to) ? lo : hi) = mid;
    }
    return lo;
}

/// The least depth at which the model's body is stopped by the heart's own wall, moved outwards by `outwards`: seat.h, points 3 and 4.
double trueReachMm(const SeatedHeart& heart, const Seat& seat, double outwards) {
    constexpr std::size_t kRays = 120;
    const SectionFrame f = frameOf(Plane{heart.question.landingCentre, heart.question.direction});
    const double free = 0.5 * seat.freeMm, play = 0.5 * (seat.freeMm - seat.narrowestMm);
    std::vector<double> start;
    for (double t = 0.0; t < 60.0; t += kStepMm) {
        std::vector<Eigen::Vector2d> wide, near;
        std::vector<double> sides;
        for (std::size_t i = 0; i < kRays; ++i) {
            const double angle = 2.0 * std::numbers::pi * static_cast<double>(i) / kRays;
            const Eigen::Vector2d to(std::cos(angle), std::sin(angle));
            const double most = 0.5 * std::numbers::pi * free;
            const double ray = trueRayMm(heart, f.origin + t * f.normal, to.x() * f.u + to.y() * f.v, most + 1.0);
            if (ray + std::min(0.0, outwards) <= 0.0) return t;
            wide.push_back(std::min(most, ray + outwards) * to);
            sides.push_back(std::min(free, ray + outwards));
            near.push_back(sides.back() * to);
        }
        if (start.empty()) start = sides;
        if (perimeterMm(convexHull(wide)) / std::numbers::pi < seat.narrowestMm) return t;
        const auto hull = convexHull(near);
        for (std::size_t i = 0; i < kRays; ++i) {
            const std::size_t j = (i + kRays / 2) % kRays;
            if (0.5 * (sides[j] - sides[i] - start[j] + start[i]) > play) return t;
            if (sides[i] + play < free && contains(hull, near[i] * ((sides[i] + play) / sides[i]))) return t;
        }
    }
    return 60.0;
}

} // namespace

TEST(SeatSizes, InScansOfInventedHeartsReachAsFarAsTheFormulasSay) {
    for (const auto& [shape, seed] : {std::pair{Shape::SharplyBent, 2u}, {Shape::WindsockCurved, 4u}}) {
        const SeatedHeart heart = seatedHeart(shape, seed);
        const auto answer = seatSizes(heart.wall, heart.question);
        ASSERT_TRUE(answer) << answer.error().message;
        for (const Seat& seat : answer->sizes) {
            ASSERT_TRUE(seat.hasRoom) << heart.phantom.description();
            EXPECT_GT(seat.reachMm->value, trueReachMm(heart, seat, -kWallMm) - kStepMm)
                << heart.phantom.description() << ", narrowest " << seat.narrowestMm << " mm";
            EXPECT_LT(seat.reachMm->value, trueReachMm(heart, seat, kWallMm) + kStepMm)
                << heart.phantom.description() << ", narrowest " << seat.narrowestMm << " mm";
        }
        // By the chart's own measure, as the section itself says it (square to the axis, as no crossing is chosen).
        const double perimeter = heart.measurement.landingZones.front().section.metrics.perimeterDerivedDiameterMm.value;
        EXPECT_NEAR(answer->sizes.back().landingWidthMm->value, std::min(answer->sizes.back().freeMm, perimeter), 0.1)
            << heart.phantom.description();
    }
}
