// Seats in measured scans of invented hearts, against the formulas of these hearts.
#include "core/geometry/polyline.h"
#include "core/sizing/seat.h"

#include "sample-data/phantom.h"

#include <gtest/gtest.h>
#include <numbers>

using namespace gauge::core;
using namespace gauge::sample_case;

namespace {

// The wall is known to about 0.1 mm (DEVELOPERS.md, "Accuracy"); between rays and points it bulges by a few hundredths. Along the sheath
// that becomes more the less the wall leans, so reaches are compared with those of slightly wider and narrower bodies.
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

/// The least depth at which any of many points of the narrowest disc lies in the heart's wall.
double trueReachMm(const SeatedHeart& heart, double radius) {
    const SectionFrame f = frameOf(Plane{heart.question.landingCentre, heart.question.direction});
    for (double t = 0.0; t < 60.0; t += kStepMm)
        for (const double part : {1.0, 0.6, 0.2})
            for (int i = 0; i < 120; ++i) {
                const double angle = 2.0 * std::numbers::pi * i / 120;
                const Eigen::Vector2d at = part * radius * Eigen::Vector2d(std::cos(angle), std::sin(angle));
                if (!heart.phantom.insidePool(f.patientFromSection(at) + t * f.normal)) return t;
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
            const double radius = 0.5 * seat.narrowestMm;
            EXPECT_GT(seat.reachMm.value, trueReachMm(heart, radius + kWallMm) - kStepMm)
                << heart.phantom.description() << ", narrowest " << seat.narrowestMm << " mm";
            EXPECT_LT(seat.reachMm.value, trueReachMm(heart, radius - kWallMm) + kStepMm)
                << heart.phantom.description() << ", narrowest " << seat.narrowestMm << " mm";
        }
        // The circle of equal area, as the section itself says it (square to the axis, as no crossing is chosen).
        const double area = heart.measurement.landingZones.front().section.metrics.areaDerivedDiameterMm.value;
        EXPECT_NEAR(answer->sizes.back().landingWidthMm.value, std::min(answer->sizes.back().freeMm, area), 0.2)
            << heart.phantom.description();
    }
}
