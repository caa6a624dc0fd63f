#include "core/fluoro/object_scale.h"

#include "tests/core/fluoro/expect.h"

#include <cmath>
#include <gmock/gmock.h>
#include <numbers>
#include <random>

using namespace gauge::core;
using Eigen::Vector2d;
using gauge::test::errorOf;
using gauge::test::valueOf;
using testing::HasSubstr;

namespace {

constexpr double kRounding = 1e-12;
constexpr double kSpreadTolerance = 0.04; // of an SD: 30,000 draws give 0.5 %, the rest is second order
constexpr int kDraws = 30000;

KnownDiameter known(double mm, double relative) {
    return {mm, relative, "6 F catheter, 2.00 mm outside", {}};
}

/// An object at the depth of what is measured.
ObjectScaleOptions sameDepth() {
    ObjectScaleOptions options;
    options.offDepthMm = 0.0;
    return options;
}

} // namespace

TEST(BetweenClicks, IsTheDistanceWithBothClicksError) {
    const auto length = betweenClicks({10, 10}, {13, 14});
    EXPECT_NEAR(length.px, 5.0, kRounding);
    EXPECT_NEAR(length.standardUncertaintyPx, std::sqrt(2.0), kRounding);
    // Pixels twice as high as wide: 4 rows are 8 widths, and so is a click's error.
    const auto high = betweenClicks({10, 10}, {10, 14}, 2.0);
    EXPECT_NEAR(high.px, 8.0, kRounding);
    EXPECT_NEAR(high.standardUncertaintyPx, 2.0 * std::sqrt(2.0), kRounding);
}

TEST(ObjectScale, IsTheDiameterOverTheWidth) {
    const auto scale = valueOf(objectScale({12.5, 0.25}, known(2.0, 0.03), sameDepth()));
    EXPECT_NEAR(scale.planar.mmPerPixel.x(), 0.16, kRounding);
    EXPECT_NEAR(scale.ownRelative, std::hypot(0.03, 0.02), kRounding);
    EXPECT_EQ(scale.planar.origin, ScaleOrigin::Catheter);
    EXPECT_THAT(scale.planar.detail, HasSubstr("6 F catheter"));
    EXPECT_THAT(scale.planar.detail, HasSubstr("12.5 pixels"));
    EXPECT_FALSE(scale.rough);
}

TEST(ObjectScale, AtAnotherDepthIsLessSure) {
    const auto scale = valueOf(objectScale({12.5, 0.25}, known(2.0, 0.03)));
    EXPECT_NEAR(scale.depthRelative, 30.0 / 750.0, kRounding);
    EXPECT_NEAR(scale.planar.relativeUncertainty, std::sqrt(0.03 * 0.03 + 0.02 * 0.02 + 0.04 * 0.04),
                kRounding);
}

TEST(ObjectScale, RefusesNarrowObjectsOrMarksThemRough) {
    const auto error = errorOf(objectScale({9.9, 0.2}, known(2.0, 0.03)));
    EXPECT_EQ(error.code, ErrorCode::Degenerate);
    EXPECT_THAT(error.message, HasSubstr("9.9 pixels wide in the picture: at least 10"));
    ObjectScaleOptions options;
    options.acceptRough = true;
    const auto scale = valueOf(objectScale({9.9, 0.2}, known(2.0, 0.03), options));
    EXPECT_TRUE(scale.rough);
    EXPECT_EQ(scale.notices.at(0).code, "scale-object-small");
    EXPECT_THAT(scale.planar.detail, HasSubstr("rough"));
}

TEST(ObjectScale, RefusesWidthsWithinTheirOwnErrorAndImpossiblePixels) {
    EXPECT_EQ(errorOf(objectScale({12.0, 12.5}, known(2.0, 0.03))).code, ErrorCode::Degenerate);
    EXPECT_EQ(errorOf(objectScale({std::nan(""), 1.0}, known(2.0, 0.03))).code, ErrorCode::NonFinite);
    ObjectScaleOptions options;
    options.pixelAspect = 0.0;
    EXPECT_THAT(errorOf(objectScale({12.0, 0.2}, known(2.0, 0.03), options)).message,
                HasSubstr("above zero"));
}

TEST(ObjectScale, CarriesNoticesOfTheObject) {
    KnownDiameter diameter = known(2.0, 0.03);
    diameter.notices.push_back({"scale-object-contrast-filled", "text", {}});
    EXPECT_EQ(valueOf(objectScale({12.0, 0.2}, diameter)).notices.size(), 1u);
}

TEST(ObjectScale, StatesTheSpreadOfLengthsMeasuredWithIt) {
    // Monte Carlo through clicks, diameter and depth, then a 100-pixel length read with the scale: realised
    // spread against the stated scale component.
    std::mt19937 random(5);
    std::normal_distribution<double> normal;
    const double truth = 0.16, widthPx = 25.0;
    double sum = 0.0, squares = 0.0, stated = 0.0;
    for (int i = 0; i < kDraws; ++i) {
        const Vector2d a(normal(random), normal(random)), b(widthPx + normal(random), normal(random));
        const double actualMm = widthPx * truth, toldMm = actualMm * (1.0 + 0.03 * normal(random));
        const auto scale = valueOf(objectScale(betweenClicks(a, b), known(toldMm, 0.03)));
        const double depth =
            1.0 + 30.0 / 750.0 * normal(random); // object nearer or farther: fewer or more pixels
        const double read = 100.0 / depth * scale.planar.mmPerPixel.x();
        sum += read;
        squares += read * read;
        stated += 100.0 * truth * scale.planar.relativeUncertainty / kDraws;
    }
    const double mean = sum / kDraws, sd = std::sqrt(squares / kDraws - mean * mean);
    EXPECT_NEAR(sd / stated, 1.0, kSpreadTolerance);
    EXPECT_NEAR(mean, 100.0 * truth, 0.01 * 100.0 * truth); // second order only
}

TEST(MarkerScale, OfTiltedMarkersIsCorrectedByTheCosine) {
    MarkerTilt tilt;
    tilt.deg = 60.0;
    tilt.uncertaintyDeg = 0.0;
    const Vector2d markers[] = {{0, 0}, {20, 0}};
    // 10 mm apart, seen as 5 mm at 60 degrees: 5 / 20.
    const auto scale = valueOf(markerScale(markers, 10.0, tilt, sameDepth()));
    EXPECT_NEAR(scale.planar.mmPerPixel.x(), 0.25, kRounding);
    EXPECT_EQ(scale.planar.origin, ScaleOrigin::MarkerSpacing);
    EXPECT_THAT(scale.planar.detail, HasSubstr("60 degrees"));
}

TEST(MarkerScale, OfSeveralMarkersIsTheirLeastSquaresStep) {
    MarkerTilt flat;
    flat.deg = 0.0;
    flat.uncertaintyDeg = 0.0;
    const Vector2d four[] = {{0, 0}, {30, 40}, {60, 80}, {90, 120}}; // 50 pixels a step
    const auto scale = valueOf(markerScale(four, 10.0, flat, sameDepth()));
    EXPECT_NEAR(scale.planar.mmPerPixel.x(), 0.2, kRounding);
    // Slope of four even places: SD of a click over sqrt(5), against a step of 50 pixels; spacing 1 %.
    EXPECT_NEAR(scale.ownRelative, std::hypot(0.01, 1.0 / std::sqrt(5.0) / 50.0), 1e-9);
}

TEST(MarkerScale, WithoutAKnownTiltTakesTheMeanAndAddsTheSpread) {
    // Simulated: tilt uniform within 20 degrees. [Koning2001]: below 20 degrees the error stays under
    // 7 %.
    std::mt19937 random(3);
    std::normal_distribution<double> normal;
    std::uniform_real_distribution<double> tilt(0.0, 20.0 * std::numbers::pi / 180.0);
    double sum = 0.0, squares = 0.0, stated = 0.0, worst = 0.0;
    const double truth = 0.2; // mm a pixel
    for (int i = 0; i < kDraws; ++i) {
        const double seenPx = 30.0 * std::cos(tilt(random)) / truth;
        const Vector2d markers[] = {{normal(random), normal(random)},
                                    {seenPx + normal(random), normal(random)}};
        const double spacing = 30.0 * (1.0 + 0.01 * normal(random));
        const auto scale = valueOf(markerScale(markers, spacing, {}, sameDepth()));
        const double relative = scale.planar.mmPerPixel.x() / truth - 1.0;
        sum += relative;
        squares += relative * relative;
        stated += scale.ownRelative / kDraws;
        worst = std::max(worst, std::abs(relative));
    }
    const double mean = sum / kDraws, sd = std::sqrt(squares / kDraws - mean * mean);
    EXPECT_NEAR(mean, 0.0, 0.002);
    EXPECT_NEAR(sd / stated, 1.0, kSpreadTolerance);
    EXPECT_LT(1.0 - std::cos(20.0 * std::numbers::pi / 180.0), 0.07);
}

TEST(MarkerScale, OfAKnownTiltStatesItsSpread) {
    std::mt19937 random(9);
    std::normal_distribution<double> normal;
    for (const double tiltDeg : {0.0, 20.0, 45.0}) {
        MarkerTilt tilt;
        tilt.deg = tiltDeg;
        double sum = 0.0, squares = 0.0, stated = 0.0;
        for (int i = 0; i < kDraws; ++i) {
            const double actual = (tiltDeg + tilt.uncertaintyDeg * normal(random)) * std::numbers::pi / 180.0;
            const double seenPx = 150.0 * std::cos(actual);
            const Vector2d markers[] = {{normal(random), 0.0}, {seenPx + normal(random), 0.0}};
            const auto scale = valueOf(markerScale(markers, 30.0, tilt, sameDepth(), 0.0));
            sum += scale.planar.mmPerPixel.x() / 0.2;
            squares += scale.planar.mmPerPixel.x() / 0.2 * scale.planar.mmPerPixel.x() / 0.2;
            stated += scale.ownRelative / kDraws;
        }
        const double mean = sum / kDraws, sd = std::sqrt(squares / kDraws - mean * mean);
        EXPECT_NEAR(sd / stated, 1.0, 0.08) << tiltDeg; // the cosine is curved: a few per cent of the SD
    }
}

TEST(MarkerScale, RefusesWhatCannotBe) {
    const Vector2d one[] = {{0, 0}};
    EXPECT_EQ(errorOf(markerScale(one, 10.0)).code, ErrorCode::TooFewPoints);
    const Vector2d two[] = {{0, 0}, {30, 0}};
    EXPECT_THAT(errorOf(markerScale(two, 0.0)).message, HasSubstr("spacing of 0 mm"));
    MarkerTilt steep;
    steep.deg = 70.0;
    EXPECT_THAT(errorOf(markerScale(two, 10.0, steep)).message, HasSubstr("70 degrees out"));
    const Vector2d gap[] = {{0, 0}, {30, 0}, {90, 0}}; // one marker left out
    EXPECT_THAT(errorOf(markerScale(gap, 10.0)).message, HasSubstr("every marker in it"));
    const Vector2d close[] = {{0, 0}, {8, 0}};
    EXPECT_THAT(errorOf(markerScale(close, 10.0)).message, HasSubstr("8.0 pixels wide"));
    const Vector2d broken[] = {{0, 0}, {std::nan(""), 0}};
    EXPECT_EQ(errorOf(markerScale(broken, 10.0)).code, ErrorCode::NonFinite);
    const Vector2d same[] = {{5, 5}, {5, 5}};
    EXPECT_FALSE(markerScale(same, 10.0));
}
