#include "core/fluoro/width_comparison.h"

#include "tests/core/fluoro/bodies.h"
#include "tests/core/fluoro/expect.h"

#include <cmath>
#include <gmock/gmock.h>

using namespace gauge::core;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

Estimate reading(double mm, double observer, double scale) {
    Estimate estimate;
    estimate.value = mm;
    estimate.components.observer = observer;
    estimate.components.scale = scale;
    return estimate;
}

/// Edge-on from the left (LAO 90): 20 mm there.
const auto kContour = ellipseFrom({0, 0, 0}, {15, 0, 0}, {0, 0, 10});

} // namespace

TEST(CompareWidth, GivesTheDifferenceWithBothUncertainties) {
    PredictionOptions exact;
    exact.contourUncertaintyMm = 0.5;
    exact.angleUncertaintyDeg = 0.0;
    const auto compared = valueOf(compareWidth(reading(18.8, 0.6, 0.9), {90, 0}, kContour, exact));
    EXPECT_NEAR(compared.predicted.value, 20.0, 1e-3);
    EXPECT_NEAR(compared.differenceMm, -1.2, 1e-3);
    EXPECT_NEAR(compared.standardUncertaintyMm, std::sqrt(0.36 + 0.81 + 0.25), 1e-9);
    EXPECT_FALSE(compared.unexplained); // -1.2 against -0.5 within 2 sqrt(1.42 + 4)
    EXPECT_EQ(compared.text,
              "At LAO 90, CRA 0 the fluoroscopy reads 18.8 ± 1.1 mm, the CT contour predicts 20.0 ± 0.5 mm: "
              "-1.2 ± 1.2 mm, as the modality explains.");
}

TEST(CompareWidth, SaysWhenTheModalityDoesNotExplainIt) {
    const auto compared = valueOf(compareWidth(reading(13.0, 0.6, 0.5), {90, 0}, kContour));
    EXPECT_TRUE(compared.unexplained);
    EXPECT_THAT(compared.text, HasSubstr("more than the modality explains"));
    EXPECT_EQ(compared.biasMm, -0.5);
    EXPECT_EQ(compared.biasSdMm, 2.0);
}

TEST(CompareWidth, RefusesWhatCannotBeCompared) {
    EXPECT_EQ(errorOf(compareWidth(reading(std::nan(""), 0, 0), {90, 0}, kContour)).code,
              ErrorCode::NonFinite);
    EXPECT_THAT(errorOf(compareWidth(reading(0.0, 0, 0), {90, 0}, kContour)).message,
                HasSubstr("not above zero"));
    EXPECT_THAT(errorOf(compareWidth(reading(20, 0, 0), {0, 0}, kContour)).message,
                HasSubstr("closer to edge-on"));
}
