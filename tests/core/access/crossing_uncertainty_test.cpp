#include "core/access/crossing_uncertainty.h"

#include "tests/core/access/upright_septum.h"

#include <gmock/gmock.h>
#include <random>

using namespace gauge::core;
using namespace gauge::test;
using testing::HasSubstr;

// In closed form: the height over a plane through n = 12 points on a circle of radius 15, each uncertain by 1 mm, at a place
// that lies r beside the centroid: u2 = 1/n + r2 / (n 15^2 / 2). Here r2 = 20^2 + 15^2 (the septum stands beside the valve): 0.7388.
// The fossa's marks move the crossing along x only, level with the annulus.
TEST(CrossingEstimates, HeightOverTheAnnulusIsThatOfARegression) {
    const auto marks = uprightMarks();
    const auto estimates =
        need(crossingEstimates(marks, uprightTarget(20), {{0, 0, 0}}, {{-20, 5, 0}}, {}, PlacementSpread::confirmed()));
    ASSERT_TRUE(estimates.overAnnulusMm);
    EXPECT_NEAR(estimates.overAnnulusMm->value, 35.0, kAccessRounding);
    EXPECT_NEAR(estimates.overAnnulusMm->components.observer, std::sqrt(1.0 / 12 + 625.0 / 1350.0), 0.01); // second order left out
    EXPECT_EQ(estimates.overAnnulusMm->components.plane, 0.0);
}

/// The distance along x: the ostium's centre moves it by 1 mm, the tilt of the axis does not; the angle to an axis tilted by
/// 3 degrees moves by that, and by 1 mm over 40 mm.
TEST(CrossingEstimates, OstiumAndAxisCount) {
    const auto estimates =
        need(crossingEstimates(uprightMarks(), uprightTarget(20), {{0, 0, 0}}, {{-20, 5, 0}}, {}, PlacementSpread::confirmed()));
    EXPECT_NEAR(estimates.distanceMm->components.plane, 1.0, 1e-3);
    EXPECT_NEAR(estimates.angleDeg->value, 20.0, 1e-6);
    EXPECT_NEAR(estimates.angleDeg->components.plane, std::hypot(3.0, std::atan(1.0 / 40.0) * 180 / std::numbers::pi), 0.01);
    EXPECT_EQ(estimates.steeredAngleDeg->value, 0.0);
    const auto proposed =
        need(crossingEstimates(uprightMarks(), uprightTarget(20), {{0, 0, 0}}, {{-20, 5, 0}}, {}, PlacementSpread::proposed()));
    EXPECT_GT(proposed.angleDeg->components.plane, estimates.angleDeg->components.plane);
}

/// Against draws: marks moved at random by 0.5 mm spread the heights half as far as stated for 1 mm.
TEST(CrossingEstimates, AgreesWithRandomMarks) {
    const auto marks = uprightMarks();
    const PatientPoint crossing{{-20, 8, -4}};
    const auto stated = need(crossingEstimates(marks, uprightTarget(20), {{0, 0, 0}}, crossing, {}, PlacementSpread::confirmed()));
    std::mt19937 random(5);
    std::normal_distribution<double> noise;
    double sum = 0.0, squares = 0.0, angles = 0.0, angleSquares = 0.0;
    constexpr int kDraws = 1000;
    constexpr double kHand = 0.5; // with 1 mm one rim in some thousands crosses itself, which is refused
    for (int i = 0; i < kDraws; ++i) {
        auto drawn = marks;
        for (auto* list : {&drawn.annulus, &drawn.coaptation, &drawn.fossa})
            for (auto& point : *list)
                for (double& coordinate : point.mm)
                    coordinate += kHand * noise(random);
        const auto scene = need(crossingScene(drawn, uprightTarget(20), {{0, 0, 0}}));
        const auto values = crossingAt(scene, scene.face.frame.sectionFromPatient(crossing), {});
        sum += *values.overCoaptationMm;
        squares += std::pow(*values.overCoaptationMm, 2);
        angles += *values.angleDeg;
        angleSquares += std::pow(*values.angleDeg, 2);
    }
    const auto spread = [](double s, double q) { return std::sqrt(q / kDraws - std::pow(s / kDraws, 2)); };
    // The spread of 1000 draws is known to 2.2 % (one standard deviation): three of them.
    EXPECT_NEAR(spread(sum, squares) / kHand / stated.overCoaptationMm->components.observer, 1.0, 0.07);
    // The angle hardly moves (0.03 degrees), so that terms of second order show: up to 6 % in 12 series of draws.
    EXPECT_NEAR(spread(angles, angleSquares) / kHand / stated.angleDeg->components.observer, 1.0, 0.12);
}

TEST(CrossingEstimates, RefusesAPlaceOutside) {
    const Error error =
        refused(crossingEstimates(uprightMarks(), uprightTarget(20), {{0, 0, 0}}, {{-20, -9, 3}}, {}, PlacementSpread::confirmed()));
    EXPECT_EQ(error.code, ErrorCode::OutsideFossa);
    EXPECT_THAT(error.message, HasSubstr("aortic-root side"));
}
