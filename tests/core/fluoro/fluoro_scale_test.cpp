#include "core/fluoro/fluoro_scale.h"

#include "tests/core/fluoro/expect.h"

#include <cmath>
#include <gmock/gmock.h>
#include <random>
#include <vector>

using namespace gauge::core;
using gauge::test::errorOf;
using gauge::test::valueOf;
using testing::HasSubstr;

namespace {
constexpr double kRounding = 1e-12;
}

TEST(IsocentreScale, IsTheDetectorsSpacingTimesSodOverSid) {
    // Hand value: 0.308 x 765 / 1020 = 0.231 mm.
    const auto scale = valueOf(isocentreScale({0.308, 0.154}, 765.0, 1020.0, 0.0));
    EXPECT_NEAR(scale.planar.mmPerPixel.x(), 0.231, kRounding);
    EXPECT_NEAR(scale.planar.mmPerPixel.y(), 0.1155, kRounding);
    EXPECT_EQ(scale.planar.origin, ScaleOrigin::ImagerAtIsocentre);
    EXPECT_EQ(scale.depthRelative, 0.0);
}

TEST(IsocentreScale, TravelsWithEveryLengthMeasuredWithIt) {
    const auto scale = valueOf(isocentreScale({0.308, 0.308}, 765.0, 1020.0));
    const auto width = valueOf(planarDistance({100, 100}, {200, 100}, scale.planar));
    EXPECT_NEAR(width.value, 23.1, kRounding);
    EXPECT_NEAR(width.components.scale, 23.1 * scale.planar.relativeUncertainty, kRounding);
    EXPECT_NEAR(width.components.observer, std::sqrt(2.0) * 0.231, 1e-9); // a pixel at either end
    EXPECT_THAT(width.method, HasSubstr("magnified 1.333 times"));
}

TEST(IsocentreScale, RefusesWhatCannotBe) {
    EXPECT_EQ(errorOf(isocentreScale({0.0, 0.3}, 700, 1000)).code, ErrorCode::SpacingInvalid);
    const auto error = errorOf(isocentreScale({0.3, 0.3}, 1000, 1000));
    EXPECT_EQ(error.code, ErrorCode::GeometryContradictory);
    EXPECT_THAT(error.message, HasSubstr("must lie between them"));
}

TEST(AtDepth, AddsTheDistanceOverSodInQuadrature) {
    FluoroScale scale;
    scale.planar.mmPerPixel = {0.2, 0.2};
    scale.ownRelative = 0.03;
    const auto moved = valueOf(atDepth(scale, 30.0, 750.0)); // 0.04
    EXPECT_NEAR(moved.planar.relativeUncertainty, 0.05, kRounding);
    EXPECT_NEAR(valueOf(atDepth(moved, 0.0, 750.0)).planar.relativeUncertainty, 0.03,
                kRounding); // in place, not on top
}

TEST(AtDepth, RefusesImpossibleDistances) {
    EXPECT_EQ(errorOf(atDepth({}, -1.0, 750.0)).code, ErrorCode::InvalidArgument);
    EXPECT_THAT(errorOf(atDepth({}, 800.0, 750.0)).message, HasSubstr("must be less"));
    EXPECT_EQ(errorOf(atDepth({}, std::nan(""), 750.0)).code, ErrorCode::NonFinite);
}

TEST(IsocentreScale, StatesTheSpreadThatTheCamerasGeometryGives) {
    // Monte Carlo: distances with 1 % error each, object off the isocentre by a normal distance; what an
    // object of 20 mm would be read as, through the thin geometry of the ray itself. Stated against realised
    // spread.
    constexpr double kSpreadTolerance = 0.03; // of the SD: 40,000 draws give 0.4 %, the rest is second order
    std::mt19937 random(11);
    std::normal_distribution<double> normal;
    for (const double offMm : {0.0, 15.0, 30.0}) {
        const auto scale = valueOf(isocentreScale({0.3, 0.3}, 720.0, 1080.0, offMm));
        double sum = 0.0, squares = 0.0;
        constexpr int kDraws = 40000;
        for (int i = 0; i < kDraws; ++i) {
            const double sod = 720.0 * (1.0 + 0.01 * normal(random)),
                         sid = 1080.0 * (1.0 + 0.01 * normal(random));
            const double depth = sod + offMm * normal(random);
            const double pixels = 20.0 * sid / depth / 0.3;           // what the picture shows
            const double read = pixels * scale.planar.mmPerPixel.x(); // what the told distances make of it
            sum += read;
            squares += read * read;
        }
        const double mean = sum / kDraws, sd = std::sqrt(squares / kDraws - mean * mean);
        EXPECT_NEAR(sd / (20.0 * scale.planar.relativeUncertainty), 1.0, kSpreadTolerance) << offMm;
    }
}
