#include "core/cine/region_caliper.h"

#include <cstdlib>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <limits>
#include <random>

using namespace gauge::core;
using testing::HasSubstr;

namespace {

// A few roundings of numbers up to 1e3.
constexpr double kRounding = 1e-9;

EchoRegion region(EchoRegionKind kind, PixelBox box) {
    EchoRegion out;
    out.kind = kind;
    out.box = box;
    return out;
}

EchoRegion tissue(PixelBox box, double xMm, double yMm) {
    EchoRegion out = region(EchoRegionKind::Tissue, box);
    out.x = {PhysicalUnit::Centimetre, xMm / 10, 0.0, 0.0};
    out.y = {PhysicalUnit::Centimetre, yMm / 10, 0.0, 0.0};
    out.scale = PlanarScale{{xMm, yMm}, kRegionScaleUncertainty, ScaleOrigin::RegionCalibration, ""};
    return out;
}

Error refusal(const std::vector<EchoRegion>& regions, Eigen::Vector2d a, Eigen::Vector2d b,
              const std::optional<HandScale>& hand = {}) {
    const auto result = regionDistance(regions, hand, a, b);
    if (result) {
        ADD_FAILURE() << "measured " << result->value;
        return {};
    }
    return result.error();
}

} // namespace

TEST(RegionDistance, MeasuresInsideOneRegion) {
    const std::vector<EchoRegion> regions{tissue({0, 0, 99, 99}, 0.2, 0.3),
                                          tissue({100, 0, 199, 99}, 0.5, 0.5)};
    EXPECT_NEAR(regionDistance(regions, {}, {10, 10}, {20, 10})->value, 2.0, kRounding);
    EXPECT_NEAR(regionDistance(regions, {}, {10, 10}, {10, 20})->value, 3.0, kRounding);
    const Estimate other = regionDistance(regions, {}, {110, 10}, {120, 10}).value();
    EXPECT_NEAR(other.value, 5.0, kRounding) << "each region has its own scale";
    EXPECT_NEAR(other.components.scale, 5.0 * kRegionScaleUncertainty, kRounding);
}

TEST(RegionDistance, RefusesEndsInTwoRegions) {
    const std::vector<EchoRegion> regions{tissue({0, 0, 99, 99}, 0.2, 0.2),
                                          tissue({100, 0, 199, 99}, 0.2, 0.2)};
    const Error error = refusal(regions, {50, 50}, {150, 50});
    EXPECT_EQ(error.code, ErrorCode::RegionsMixed);
    EXPECT_THAT(error.message, HasSubstr("from region 1 of 2 (tissue) to region 2 of 2 (tissue)"));
    EXPECT_THAT(error.message, HasSubstr("Place both ends in one region"));
}

TEST(RegionDistance, RefusesEndsOutsideAllRegions) {
    const std::vector<EchoRegion> regions{tissue({0, 0, 99, 99}, 0.2, 0.2)};
    const Error error = refusal(regions, {50, 50}, {150.0, 50});
    EXPECT_EQ(error.code, ErrorCode::ScaleMissing);
    EXPECT_THAT(error.message, HasSubstr("the end at (150.0, 50.0) lies outside every calibrated region"));
}

TEST(RegionDistance, SaysWhyARegionHasNoLengths) {
    EchoRegion spectral = region(EchoRegionKind::Spectral, {0, 0, 99, 99});
    spectral.x.unit = PhysicalUnit::Second;
    spectral.y.unit = PhysicalUnit::CentimetrePerSecond;
    EchoRegion bare = region(EchoRegionKind::Tissue, {0, 0, 99, 99});
    bare.x.unit = PhysicalUnit::None;
    bare.y.unit = PhysicalUnit::Percent;
    EchoRegion faulty = region(EchoRegionKind::Tissue, {0, 0, 99, 99});
    faulty.scaleFault = "its pixels would be 12.00000 x 12.00000 mm, where 0.02 to 2 mm can be true";
    const struct {
        EchoRegion region;
        std::string reason;
    } cases[] = {
        {spectral, "it shows velocities against time; use the velocity and time calipers there"},
        {region(EchoRegionKind::Ecg, {0, 0, 99, 99}), "it shows the electrocardiogram, which has no lengths"},
        {region(EchoRegionKind::MMode, {0, 0, 99, 99}), "its horizontal axis is time"},
        {bare, "its axes are none and %, not two lengths in cm"},
        {faulty, "its pixels would be 12.00000 x 12.00000 mm"},
    };
    for (const auto& [made, reason] : cases) {
        const Error error = refusal({made}, {10, 10}, {20, 20});
        EXPECT_EQ(error.code, ErrorCode::ScaleMissing);
        EXPECT_THAT(error.message, HasSubstr(reason));
    }
}

TEST(RegionDistance, RefusesWithoutAnyRegion) {
    const Error error = refusal({}, {10, 10}, {20, 20});
    EXPECT_EQ(error.code, ErrorCode::ScaleMissing);
    EXPECT_THAT(error.message, HasSubstr("the file calibrates no region of this picture"));
    EXPECT_THAT(error.message, HasSubstr("Mark a scale of known length"));
}

TEST(RegionDistance, RefusesAnEndThatIsNoNumber) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    EXPECT_EQ(refusal({tissue({0, 0, 99, 99}, 0.2, 0.2)}, {10, nan}, {20, 20}).code, ErrorCode::NonFinite);
}

TEST(RegionDistance, CrossesTheRimOfAColourBoxOfTheSameScale) {
    EchoRegion colour = tissue({40, 40, 60, 60}, 0.2, 0.2);
    colour.kind = EchoRegionKind::Colour;
    const std::vector<EchoRegion> nested{tissue({0, 0, 99, 99}, 0.2, 0.2), colour};
    EXPECT_NEAR(regionDistance(nested, {}, {50, 50}, {80, 50})->value, 6.0, kRounding);
    EXPECT_NEAR(regionDistance(nested, {}, {80, 50}, {50, 50})->value, 6.0, kRounding);
    const std::vector<EchoRegion> zoomed{nested[0], tissue({40, 40, 60, 60}, 0.1, 0.1)};
    EXPECT_EQ(refusal(zoomed, {50, 50}, {80, 50}).code, ErrorCode::RegionsMixed)
        << "another scale: a zoomed inset";
}

TEST(RegionDistance, EqualsTheDifferenceOfPhysicalValues) {
    // Two routes: through the scale, and through the axes' values at both ends, signs and reference pixels
    // included.
    const unsigned seeds = std::getenv("GAUGE_LONG") ? 200000 : 500;
    for (unsigned seed = 1; seed <= seeds; ++seed) {
        std::mt19937 random(seed);
        const auto real = [&](double a, double b) {
            return std::uniform_real_distribution<double>(a, b)(random);
        };
        const auto sign = [&] { return real(-1, 1) < 0 ? -1.0 : 1.0; };
        const int minX = static_cast<int>(real(0, 300)), minY = static_cast<int>(real(0, 300));
        EchoRegion made = tissue({minX, minY, minX + 200, minY + 150}, real(0.02, 2), real(0.02, 2));
        made.x.delta *= sign();
        made.y.delta *= sign();
        made.x.referencePixel = real(-500, 500);
        made.y.referencePixel = real(-500, 500);
        made.x.referenceValue = real(-10, 10);
        const auto inside = [&] { return Eigen::Vector2d(minX + real(0, 200), minY + real(0, 150)); };
        const Eigen::Vector2d a = inside(), b = inside();
        const auto cm = [](const RegionAxis& axis, double pixel) {
            return axis.referenceValue + (pixel - *axis.referencePixel) * axis.delta;
        };
        const double expectedMm =
            10.0 * std::hypot(cm(made.x, a.x()) - cm(made.x, b.x()), cm(made.y, a.y()) - cm(made.y, b.y()));
        const double there = regionDistance(std::vector{made}, {}, a, b)->value;
        EXPECT_NEAR(there, expectedMm, kRounding) << "seed " << seed;
        EXPECT_NEAR(regionDistance(std::vector{made}, {}, b, a)->value, there, kRounding) << "seed " << seed;
        const Eigen::Vector2d c = inside();
        EXPECT_LE(there, regionDistance(std::vector{made}, {}, a, c)->value +
                             regionDistance(std::vector{made}, {}, c, b)->value + kRounding)
            << "seed " << seed;
    }
}

TEST(MarkedScale, HandValues) {
    const PlanarScale s = markedScale({100, 100}, {100, 300}, 50.0).value();
    EXPECT_NEAR(s.mmPerPixel.x(), 0.25, kRounding);
    EXPECT_NEAR(s.mmPerPixel.y(), 0.25, kRounding);
    EXPECT_NEAR(s.relativeUncertainty, std::sqrt(2.0) / 200.0, kRounding); // one pixel at each end
    EXPECT_EQ(s.origin, ScaleOrigin::HandCalibration);
    EXPECT_EQ(s.detail, "50.0 mm over 200.0 pixels");
}

TEST(MarkedScale, KeepsTheAspectOfPixels) {
    // Pixels twice as high as wide: 30 across and 40 down are 30 and 80 widths, so 85.44 widths are 17.088
    // mm.
    const PlanarScale s = markedScale({0, 0}, {30, 40}, 0.2 * std::hypot(30, 80), 2.0).value();
    EXPECT_NEAR(s.mmPerPixel.x(), 0.2, kRounding);
    EXPECT_NEAR(s.mmPerPixel.y(), 0.4, kRounding);
}

TEST(MarkedScale, PerAxisTakesTheLargerUncertainty) {
    const PlanarScale s = markedScalePerAxis(AxisMark{300, 100, 40.0}, AxisMark{10, 60, 15.0}).value();
    EXPECT_NEAR(s.mmPerPixel.x(), 0.2, kRounding);
    EXPECT_NEAR(s.mmPerPixel.y(), 0.3, kRounding);
    EXPECT_NEAR(s.relativeUncertainty, std::sqrt(2.0) / 50.0, kRounding);
    EXPECT_THAT(s.detail, HasSubstr("across: 40.0 mm over 200.0 pixels; down: 15.0 mm over 50.0 pixels"));
}

TEST(MarkedScale, UncertaintyIsTheSpreadOfRepeatedMarks) {
    std::mt19937 random(77);
    std::normal_distribution<double> jitter(0.0, kHandSetPixels);
    constexpr int kCount = 20000;
    double sum = 0.0, squares = 0.0;
    for (int i = 0; i < kCount; ++i) {
        const double mm = markedScale({50 + jitter(random), 60 + jitter(random)},
                                      {170 + jitter(random), 220 + jitter(random)}, 30.0)
                              ->mmPerPixel.x();
        sum += mm;
        squares += mm * mm;
    }
    const double mean = sum / kCount, relative = std::sqrt(squares / kCount - mean * mean) / mean;
    // The SD of kCount draws is sure within 0.5 %; four of that.
    EXPECT_NEAR(markedScale({50, 60}, {170, 220}, 30.0)->relativeUncertainty, relative, 0.02 * relative);
}

TEST(MarkedScale, RefusesWhatGivesNoScale) {
    const auto near = markedScale({0, 0}, {10, 10}, 5.0);
    ASSERT_FALSE(near);
    EXPECT_EQ(near.error().code, ErrorCode::InvalidArgument);
    EXPECT_THAT(near.error().message,
                HasSubstr("two marks that are 14.1 pixels apart: at least 20 are needed"));
    const auto zero = markedScale({0, 0}, {100, 0}, 0.0);
    ASSERT_FALSE(zero);
    EXPECT_THAT(zero.error().message, HasSubstr("a known length of 0.00 mm: it must be above zero"));
    EXPECT_FALSE(markedScale({0, 0}, {100, 0}, -3.0));
    const auto nan = markedScale({0, 0}, {std::numeric_limits<double>::quiet_NaN(), 0}, 3.0);
    ASSERT_FALSE(nan);
    EXPECT_EQ(nan.error().code, ErrorCode::NonFinite);
    EXPECT_THAT(nan.error().message, HasSubstr("Mark the scale again"));
    EXPECT_FALSE(markedScalePerAxis(AxisMark{0, 100, 10}, AxisMark{0, 5, 10}));
}

TEST(HandScale, HoldsWhereItWasMarkedAndComesFirst) {
    const HandScale hand{markedScale({0, 0}, {100, 0}, 50.0).value(), PixelBox{0, 0, 99, 99}};
    const std::vector<EchoRegion> regions{tissue({0, 0, 99, 99}, 0.2, 0.2),
                                          tissue({100, 0, 199, 99}, 0.3, 0.3)};
    const Estimate marked = regionDistance(regions, hand, {10, 10}, {20, 10}).value();
    EXPECT_NEAR(marked.value, 5.0, kRounding);
    EXPECT_THAT(marked.method, HasSubstr("scale marked by hand (50.0 mm over 100.0 pixels)"));
    EXPECT_NEAR(marked.components.scale, 5.0 * std::sqrt(2.0) / 100.0, kRounding);
    EXPECT_NEAR(regionDistance(regions, hand, {110, 10}, {120, 10})->value, 3.0, kRounding)
        << "not elsewhere";
    EXPECT_EQ(refusal(regions, {50, 50}, {150, 50}, hand).code, ErrorCode::RegionsMixed);
    const HandScale whole{hand.scale, std::nullopt};
    EXPECT_NEAR(regionDistance({}, whole, {500, 10}, {510, 10})->value, 5.0, kRounding)
        << "without any region";
}

TEST(HandScale, HoldsNeitherInSpectraNorFromRegionToRegion) {
    const HandScale whole{markedScale({0, 0}, {100, 0}, 50.0).value(), std::nullopt};
    const std::vector<EchoRegion> regions{tissue({0, 0, 99, 99}, 0.2, 0.2),
                                          region(EchoRegionKind::Spectral, {100, 0, 199, 99}),
                                          region(EchoRegionKind::Tissue, {200, 0, 299, 99})};
    EXPECT_EQ(refusal(regions, {110, 10}, {120, 10}, whole).code, ErrorCode::ScaleMissing);
    EXPECT_EQ(refusal(regions, {10, 10}, {120, 10}, whole).code, ErrorCode::RegionsMixed);
    EXPECT_EQ(refusal(regions, {10, 10}, {220, 10}, whole).code, ErrorCode::RegionsMixed)
        << "two sizes, perhaps";
    EXPECT_NEAR(regionDistance(regions, whole, {210, 10}, {220, 10})->value, 5.0, kRounding);
    const HandScale boxed{whole.scale, PixelBox{0, 0, 299, 99}};
    EXPECT_EQ(refusal(regions, {110, 10}, {120, 10}, boxed).code, ErrorCode::ScaleMissing);
}

TEST(ScaleContradiction, SpeaksWhenHandAndScannerDiffer) {
    const EchoRegion made = tissue({0, 0, 99, 99}, 0.25, 0.25);
    EXPECT_EQ(scaleContradiction(markedScale({0, 0}, {200, 0}, 50.5).value(), made), std::nullopt)
        << "1 % off";
    const auto notice = scaleContradiction(markedScale({0, 0}, {200, 0}, 60.0).value(), made);
    ASSERT_TRUE(notice);
    EXPECT_EQ(notice->code, "scale-marked-differs");
    EXPECT_THAT(notice->text, HasSubstr("0.3000 x 0.3000 mm a pixel"));
    EXPECT_THAT(notice->text, HasSubstr("differs by 20.0 %"));
    EXPECT_EQ(
        scaleContradiction(markedScale({0, 0}, {200, 0}, 60.0).value(), region(EchoRegionKind::Tissue, {})),
        std::nullopt);
}
