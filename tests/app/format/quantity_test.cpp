#include "app/format/evaluated.h"

#include <gtest/gtest.h>
#include <limits>

namespace {

using namespace gauge::app;
using gauge::core::Estimate;

Estimate with(double value, double edge, double plane = 0.0) {
    return {value, {edge, plane, 0.0, 0.0}, "by hand"};
}

std::string shown(const QString& text) {
    return plainSpaces(text).toStdString();
}

struct Rounding {
    double value, u;
    Unit unit;
    const char* text;
};

} // namespace

// JCGM 100:2008, 7.2.6: "In reporting final results, it may sometimes be appropriate to round uncertainties
// up rather than to the nearest digit. For example, uc(y) = 10,47 mΩ might be rounded up to 11 mΩ."
TEST(EstimateText, RoundsByTheTable) {
    const Rounding table[] = {
        {24.34, 0.36, Unit::Millimetre, "24.3 ± 0.4 mm"},
        {24.35, 0.40, Unit::Millimetre, "24.4 ± 0.4 mm"},
        {24.0, 0.31, Unit::Millimetre, "24.0 ± 0.4 mm"},
        {10.47, 0.01, Unit::Millimetre, "10.5 ± 0.1 mm"},
        {430.4, 10.47, Unit::SquareMillimetre, "430 ± 11 mm²"},
        {6.449, 0.2, Unit::Millilitre, "6.4 ± 0.2 mL"},
        {82.5, 3.0, Unit::Degree, "83 ± 3°"},
        {301.2, 12.0, Unit::Hounsfield, "301 ± 12 HU"},
        {0.254, 0.011, Unit::Index, "0.25 ± 0.02"},
        {-0.04, 0.3, Unit::Millimetre, "0.0 ± 0.3 mm"},
        {-3.25, 0.3, Unit::Millimetre, "−3.3 ± 0.3 mm"},
        {0.3, 0.1 + 0.2, Unit::Millimetre, "0.3 ± 0.3 mm"},
    };
    for (const auto& row : table)
        EXPECT_EQ(shown(estimate(with(row.value, row.u), row.unit)), row.text) << row.value << " u " << row.u;
}

TEST(EstimateText, AddsComponentsInQuadrature) {
    EXPECT_EQ(shown(estimate(with(20.0, 0.3, 0.4), Unit::Millimetre)), "20.0 ± 0.5 mm");
}

TEST(EstimateText, SaysWhenTheUncertaintyWasNotEvaluated) {
    EXPECT_EQ(shown(estimate(with(20.0, 0.0), Unit::Millimetre)), "20.0 ± ? mm");
    EXPECT_EQ(shown(evaluated(with(20.0, 0.0), Unit::Millimetre)), "20.0 mm") << "nothing moved it";
    EXPECT_EQ(shown(evaluated(with(20.0, 0.2), Unit::Millimetre)), "20.0 ± 0.2 mm");
}

TEST(EstimateText, SaysWhenNothingWasMeasured) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    EXPECT_EQ(estimate(with(nan, 0.1), Unit::Millimetre), "not measured");
    EXPECT_EQ(quantity(nan, Unit::Millimetre), "not measured");
    EXPECT_EQ(quantity(std::numeric_limits<double>::infinity(), Unit::Millilitre), "not measured");
}

TEST(EstimateText, DoesNotWrap) {
    EXPECT_FALSE(estimate(with(20.0, 0.3), Unit::Millimetre).contains(QLatin1Char(' ')));
}

TEST(UncertaintyParts, NamesOnlyThePartsThatAreThere) {
    EXPECT_EQ(shown(uncertaintyParts(with(20.0, 0.12, 0.3), Unit::Millimetre)), "edge 0.2, plane 0.3 mm");
    EXPECT_TRUE(uncertaintyParts(with(20.0, 0.0), Unit::Millimetre).isEmpty());
}
