#include "core/echo/width_ellipse.h"

#include "tests/core/echo/simulated_widths.h"

#include <gmock/gmock.h>

using namespace gauge::core;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

constexpr double kExactMm = 1e-9; // what the command line promises for exact chords

} // namespace

TEST(FitWidthEllipse, FindsTheEllipseOfExactChords) {
    std::mt19937_64 random(4);
    std::uniform_real_distribution<double> size(8, 40), ratio(0.25, 1.0), angle(0, 180);
    for (int i = 0; i < 2000; ++i) {
        const double longest = size(random), shortest = longest * ratio(random), direction = angle(random);
        for (const auto& angles : {std::vector<double>{0, 45, 90, 135}, {0, 60, 120}, {10, 50, 95}, {0, 30, 70, 110, 150}}) {
            const auto fit = fitWidthEllipse(angled(readingsOf(longest, shortest, direction, angles), 0.8));
            ASSERT_TRUE(fit) << fit.error().message;
            EXPECT_NEAR(fit->ellipse.longestMm(), longest, kExactMm) << longest << " x " << shortest << " at " << direction;
            EXPECT_NEAR(fit->ellipse.shortestMm(), shortest, kExactMm);
            if (longest - shortest > 0.1) {
                EXPECT_NEAR(std::remainder(fit->ellipse.directionRad() / kRad - direction, 180.0), 0.0, 1e-6);
            }
            EXPECT_NEAR(fit->rmsResidualMm, 0.0, kExactMm);
        }
    }
}

TEST(FitWidthEllipse, TakesACircle) {
    const auto fit = fitWidthEllipse(angled(readingsOf(20, 20, 0, {0, 45, 90, 135}), 1.0));
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->ellipse.longestMm(), 20.0, kExactMm);
    EXPECT_NEAR(fit->ellipse.shortestMm(), 20.0, kExactMm);
    // Four evenly spread widths of a circle: M is their mean, p and q their first harmonic.
    EXPECT_NEAR(fit->covariance(0, 0), 0.25, 1e-9);
    EXPECT_NEAR(fit->covariance(1, 1), 0.5, 1e-9);
    EXPECT_NEAR(fit->covariance(2, 2), 0.5, 1e-9);
}

TEST(FitWidthEllipse, TurnsWithItsAngles) {
    std::mt19937_64 random(5);
    const auto readings = readingsOf(25, 18, 30, {0, 45, 90, 135}, &random, 0.8);
    const auto fit = fitWidthEllipse(angled(readings, 0.8));
    auto turned = angled(readings, 0.8);
    for (auto& w : turned)
        w.angleRad += 0.7;
    const auto other = fitWidthEllipse(turned);
    ASSERT_TRUE(fit && other);
    EXPECT_NEAR(other->ellipse.longestMm(), fit->ellipse.longestMm(), kExactMm);
    EXPECT_NEAR(other->rmsResidualMm, fit->rmsResidualMm, kExactMm);
    EXPECT_NEAR(std::remainder(other->ellipse.directionRad() - fit->ellipse.directionRad() - 0.7, std::numbers::pi), 0.0, 1e-9);
}

TEST(FitWidthEllipse, CovarianceIsTheScatterOfRepeats) {
    // First order in noise / size: 1 mm on 18 to 24 mm bends it by a few percent.
    const std::vector<double> angles{0, 40, 80, 130, 160};
    std::mt19937_64 random(6);
    const auto exact = fitWidthEllipse(angled(readingsOf(24, 18, 25, angles), 0.5));
    ASSERT_TRUE(exact);
    Eigen::Matrix3d scatter = Eigen::Matrix3d::Zero();
    const int n = cases(20000);
    for (int i = 0; i < n; ++i) {
        const auto fit = fitWidthEllipse(angled(readingsOf(24, 18, 25, angles, &random, 0.5), 0.5));
        ASSERT_TRUE(fit);
        Eigen::Vector3d d;
        d << fit->ellipse.meanMm - 21.0, fit->ellipse.ovalityMm - exact->ellipse.ovalityMm;
        scatter += d * d.transpose() / n;
    }
    EXPECT_LT((scatter - exact->covariance).norm(), 0.05 * exact->covariance.norm()) << scatter << "\n" << exact->covariance;
}

TEST(FitWidthEllipse, RefusesWidthsThatCloseToNoEllipse) {
    const auto fit = fitWidthEllipse(std::vector<AngledWidth>{{0, 40, 1}, {45 * kRad, 10, 1}, {90 * kRad, 40, 1}});
    ASSERT_FALSE(fit);
    EXPECT_EQ(fit.error().code, ErrorCode::NotAnEllipse);
    EXPECT_THAT(fit.error().message, HasSubstr("Cannot draw an ellipse through the echo widths (40.0 mm at 0 degrees"));
    EXPECT_THAT(fit.error().message, HasSubstr("does not close"));
}

TEST(FitWidthEllipse, RefusesWhatNoEllipseComesNear) {
    const auto fit = fitWidthEllipse(
        std::vector<AngledWidth>{{0, 30, 1}, {45 * kRad, 8, 1}, {90 * kRad, 30, 1}, {135 * kRad, 8, 1}});
    ASSERT_FALSE(fit);
    EXPECT_EQ(fit.error().code, ErrorCode::NotAnEllipse);
    EXPECT_THAT(fit.error().message, HasSubstr("more than a quarter of the mean width"));
}

TEST(FitWidthEllipse, RefusesTooFewWidthsAndAnglesTooClose) {
    const auto few = fitWidthEllipse(std::vector<AngledWidth>{{0, 20, 1}, {1, 20, 1}});
    ASSERT_FALSE(few);
    EXPECT_EQ(few.error().code, ErrorCode::TooFewPoints);
    EXPECT_THAT(few.error().message, HasSubstr("through 2 echo width(s)"));
    const auto close = fitWidthEllipse(std::vector<AngledWidth>{{0, 20, 1}, {0.05, 20, 1}, {0.1, 20, 1}});
    ASSERT_FALSE(close);
    EXPECT_EQ(close.error().code, ErrorCode::Degenerate);
    EXPECT_THAT(close.error().message, HasSubstr("close together"));
}

TEST(AgreeingWidths, FollowTheRelationOfTheFourUsualViews) {
    // Sources: 1/r^2 at right angles sums to the same for every pair (DEVELOPERS.md, "Echo").
    const std::vector<AngledWidth> w{{0, 21.0, 1}, {45 * kRad, 23.5, 1}, {90 * kRad, 25.1, 1}, {135 * kRad, 22.4, 1}};
    const auto agreeing = agreeingWidthsMm(w);
    const auto inverse = [&](int i) { return 1.0 / (w[i].widthMm * w[i].widthMm); };
    const double straight = inverse(0) + inverse(2), oblique = inverse(1) + inverse(3);
    EXPECT_NEAR(*agreeing[0], 1 / std::sqrt(oblique - inverse(2)), kExactMm);
    EXPECT_NEAR(*agreeing[1], 1 / std::sqrt(straight - inverse(3)), kExactMm);
    EXPECT_NEAR(*agreeing[2], 1 / std::sqrt(oblique - inverse(0)), kExactMm);
    EXPECT_NEAR(*agreeing[3], 1 / std::sqrt(straight - inverse(1)), kExactMm);
}

TEST(AgreeingWidths, AreNoneForThree) {
    for (const auto& w : agreeingWidthsMm(angled(readingsOf(24, 18, 10, {0, 60, 120}), 1)))
        EXPECT_FALSE(w);
}
