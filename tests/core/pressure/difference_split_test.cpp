#include "core/pressure/difference_split.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace gauge::core;
using testing::HasSubstr;

namespace {

Observation make(Modality modality, const char* state, double mm, std::optional<double> pressure) {
    Observation o;
    o.modality = modality;
    o.derivation = modality == Modality::Echo2d ? Derivation::EllipseFromAngles : Derivation::Contour;
    o.state = state;
    o.phase = Phase::Other;
    o.valueMm = mm;
    o.pressureMmHg = pressure;
    if (pressure) o.pressureUncertaintyMmHg = 0.0;
    return o;
}

const auto kLog = PressureLaw::Logarithmic;

} // namespace

// By hand: k 0.36798 (SD 0.18272) times 12 ln(14 / 7) = 8.3178; modality 0.5 +/- 1.5.
TEST(SplitDifference, NamesPressureAndModalityAndLeavesTheRest) {
    const auto s = splitDifference(make(Modality::Ct, "ct", 25, 14), make(Modality::Echo2d, "echo", 20, 7), kLog, {},
                                   DifferencePart{0.6, 0.4}, DifferencePart{0.3, 0.2});
    ASSERT_TRUE(s) << s.error().message;
    EXPECT_NEAR(s->difference.valueMm, 5.0, 1e-12);
    EXPECT_NEAR(s->difference.standardUncertaintyMm, std::hypot(0.5, 0.8), 1e-12);
    EXPECT_NEAR(s->pressure.valueMm, 0.36798 * 8.3178, 0.003);
    EXPECT_NEAR(s->pressure.standardUncertaintyMm, 0.18272 * 8.3178, 0.003);
    EXPECT_NEAR(s->modality.valueMm, 0.5, 1e-12);
    EXPECT_NEAR(s->modality.standardUncertaintyMm, 1.5, 1e-12);
    EXPECT_NEAR(s->plane->valueMm + s->phase->valueMm + s->pressure.valueMm + s->modality.valueMm + s->remainder.valueMm,
                5.0, 1e-12);
    const double u2 = 0.25 + 0.64 + 0.16 + 0.04 + 2.25 + std::pow(s->pressure.standardUncertaintyMm, 2);
    EXPECT_NEAR(s->remainder.standardUncertaintyMm, std::sqrt(u2), 1e-12);
}

TEST(SplitDifference, OfTwoReadingsOfOneStateAndKindIsRemainderOnly) {
    const auto s = splitDifference(make(Modality::Echo2d, "a", 21, {}), make(Modality::Echo2d, "a", 20, {}), kLog);
    ASSERT_TRUE(s);
    EXPECT_EQ(s->pressure.valueMm, 0.0);
    EXPECT_EQ(s->pressure.standardUncertaintyMm, 0.0);
    EXPECT_EQ(s->modality.standardUncertaintyMm, 0.0);
    EXPECT_NEAR(s->remainder.valueMm, 1.0, 1e-12);
    EXPECT_FALSE(s->plane);
}

TEST(SplitDifference, CarriesUnknownPressuresAndTheirNotices) {
    auto ct = make(Modality::Ct, "ct", 25, {});
    ct.condition = Condition::MitralRegurgitation;
    const auto s = splitDifference(ct, make(Modality::Echo2d, "echo", 20, 7), kLog);
    ASSERT_TRUE(s);
    EXPECT_GT(s->pressure.valueMm, 2.0);
    EXPECT_GT(s->pressure.standardUncertaintyMm, 1.5);
    ASSERT_FALSE(s->notices.empty());
    EXPECT_EQ(s->notices[0].code, "pressure-unknown");
}

TEST(SplitDifference, WidensThePressurePartOutsideTheValidRange) {
    const auto inside = splitDifference(make(Modality::Ct, "a", 25, 20), make(Modality::Ct, "b", 20, 10), kLog);
    const auto outside = splitDifference(make(Modality::Ct, "a", 25, 25), make(Modality::Ct, "b", 20, 10), kLog);
    EXPECT_NEAR(inside->pressure.standardUncertaintyMm, 0.18272 * 12 * std::log(2.0), 0.003);
    EXPECT_NEAR(outside->pressure.standardUncertaintyMm, 1.5 * 0.18272 * 12 * std::log(2.5), 0.005);
}

TEST(SplitDifference, RefusesUnlikeQuantitiesAndViews) {
    auto a = make(Modality::Ct, "a", 25, 12), b = a;
    b.quantity = Quantity::Depth;
    EXPECT_THAT(splitDifference(a, b, kLog).error().message, HasSubstr("two different quantities"));
    b = a;
    b.modality = Modality::Echo2d;
    b.derivation = Derivation::LargestOfViews;
    EXPECT_THAT(splitDifference(a, b, kLog).error().message, HasSubstr("no counterpart in a contour"));
    b.valueMm = 0;
    EXPECT_FALSE(splitDifference(a, b, kLog));
}
