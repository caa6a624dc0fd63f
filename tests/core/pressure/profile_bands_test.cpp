#include "core/pressure/profile_bands.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace gauge::core;

namespace {

constexpr double kExact = 1e-9;

/// A landing zone read as 20 mm, 2 mm wider at 20 mmHg, that change known to 0.5 mm.
CarriedValue landing() {
    CarriedValue value;
    value.pressureMmHg = 20.0;
    value.valueMm = 22.0;
    value.changeMm = 2.0;
    value.changeSdMm = 0.5;
    return value;
}

} // namespace

TEST(CarriedProfile, WidensEveryDepthInTheProportionOfTheLandingZone) {
    const std::vector<ProfileWidth> profile{{0.0, 25.0, 0.3}, {10.0, 20.0, 0.2}, {25.0, 10.0, 0.4}};
    const auto band = carriedProfile(profile, landing());
    ASSERT_TRUE(band);
    EXPECT_EQ(band->pressureMmHg, 20.0);
    EXPECT_NEAR(band->widths[0].medianMm, 27.5, kExact);
    EXPECT_NEAR(band->widths[1].medianMm, 22.0, kExact) << "at the landing zone: the carried reading";
    EXPECT_NEAR(band->widths[2].medianMm, 11.0, kExact);
}

// By hand: u = 0.2 x 1.1 = 0.22 and 20/20 x 0.5 = 0.5 in quadrature 0.546260; 1.959964 of it 1.070650.
TEST(CarriedProfile, AddsReadingAndChangeInQuadrature) {
    const std::vector<ProfileWidth> profile{{10.0, 20.0, 0.2}};
    const auto band = carriedProfile(profile, landing());
    ASSERT_TRUE(band);
    EXPECT_NEAR(band->widths[0].upper95Mm - 22.0, 1.070650, 1e-5);
    EXPECT_NEAR(22.0 - band->widths[0].lower95Mm, 1.070650, 1e-5);
}

TEST(CarriedProfile, AtTheReadingsOwnPressureIsTheProfileItself) {
    CarriedValue same = landing();
    same.valueMm = 20.0;
    same.changeMm = same.changeSdMm = 0.0;
    const std::vector<ProfileWidth> profile{{0.0, 25.0, 0.0}, {30.0, 4.0, 0.0}};
    const auto band = carriedProfile(profile, same);
    ASSERT_TRUE(band);
    for (std::size_t i = 0; i < profile.size(); ++i) {
        EXPECT_NEAR(band->widths[i].medianMm, profile[i].widthMm, kExact);
        EXPECT_NEAR(band->widths[i].upper95Mm, band->widths[i].lower95Mm, kExact);
    }
}

TEST(CarriedProfile, NeverGoesBelowNothing) {
    CarriedValue unsure = landing();
    unsure.changeSdMm = 30.0;
    const std::vector<ProfileWidth> profile{{10.0, 3.0, 2.0}};
    EXPECT_EQ(carriedProfile(profile, unsure)->widths[0].lower95Mm, 0.0);
}

TEST(CarriedProfile, RefusesWhatHasNoProportion) {
    CarriedValue none = landing();
    none.changeMm = none.valueMm;
    const std::vector<ProfileWidth> profile{{10.0, 20.0, 0.2}};
    EXPECT_EQ(carriedProfile(profile, none).error().message,
              "Cannot carry the profile over pressure: the landing zone's width was read as 0.000000 mm, but must be "
              "above 0.");
    const std::vector<ProfileWidth> broken{{10.0, std::nan(""), 0.2}};
    EXPECT_EQ(carriedProfile(broken, landing()).error().code, ErrorCode::NonFinite);
    EXPECT_EQ(carriedProfile(broken, landing()).error().message,
              "Cannot carry the profile over pressure: the width at depth 10.000000 mm is not a finite number.");
}
