#include "dicomio/ultrasound/region_reader.h"

#include "core/cine/region_caliper.h"
#include "core/cine/spectral.h"
#include "tests/dicomio/ultrasound/us_bytes.h"

#include <cstdlib>
#include <gmock/gmock.h>
#include <limits>
#include <random>

using namespace gauge;
using namespace gauge::core;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

namespace {

constexpr double kRounding = 1e-12;

EchoRegion only(const UltrasoundFacts& facts) {
    if (facts.regions.size() != 1)
        throw std::runtime_error(std::to_string(facts.regions.size()) + " regions");
    return facts.regions[0];
}

/// The one region, which must have no scale, with the notice that says why.
void expectRefused(const RegionBytes& made, const std::string& code, const std::string& reason) {
    const auto facts = factsOf(std::vector{made});
    const EchoRegion region = only(facts);
    EXPECT_FALSE(region.scale);
    EXPECT_THAT(region.scaleFault, HasSubstr(reason));
    EXPECT_THAT(textOf(facts.notices, code), HasSubstr("Ultrasound region 1 of 1: "));
    EXPECT_THAT(textOf(facts.notices, code), HasSubstr(reason));
    EXPECT_THAT(codesOf(facts.notices), Contains("no-length-scale"));
    const Eigen::Vector2d a(region.box.minX + 1, region.box.minY + 1),
        b(region.box.minX + 30, region.box.minY + 9);
    const auto length = regionDistance(facts.regions, {}, a, b);
    ASSERT_FALSE(length);
    EXPECT_EQ(length.error().code, ErrorCode::ScaleMissing);
    EXPECT_THAT(length.error().message, HasSubstr(reason));
}

} // namespace

TEST(ReadRegions, TakesBoxUnitsDeltasAndReferencePixel) {
    RegionBytes made;
    made.referenceX = 40;
    made.referenceY = -7;
    made.valueX = 1.5;
    made.flags = 3;
    for (const Encoding encoding : {Encoding::ExplicitLittle, Encoding::ImplicitLittle}) {
        DatasetBytes dataset = usDataset();
        const auto facts = factsOf(addRegions(dataset, {made}), encoding);
        const EchoRegion r = only(facts);
        EXPECT_EQ(r.kind, EchoRegionKind::Tissue);
        EXPECT_EQ(r.box, (PixelBox{10, 20, 109, 119}));
        EXPECT_EQ(r.x.unit, PhysicalUnit::Centimetre);
        EXPECT_EQ(r.x.delta, 0.05);
        EXPECT_EQ(r.y.delta, 0.025);
        EXPECT_EQ(r.x.referencePixel, 50.0) << "counted from the region's corner";
        EXPECT_EQ(r.y.referencePixel, 13.0);
        EXPECT_EQ(r.x.referenceValue, 1.5);
        EXPECT_TRUE(r.highPriority);
        ASSERT_TRUE(r.scale);
        EXPECT_NEAR(r.scale->mmPerPixel.x(), 0.5, kRounding);
        EXPECT_NEAR(r.scale->mmPerPixel.y(), 0.25, kRounding);
        EXPECT_EQ(r.scale->origin, ScaleOrigin::RegionCalibration);
        EXPECT_TRUE(r.scaleFault.empty());
    }
}

TEST(ReadRegions, ReadsBigEndianFilesAlike) {
    DatasetBytes dataset = usDataset();
    const EchoRegion r = only(factsOf(addRegions(dataset, {RegionBytes{}}), Encoding::ExplicitBig));
    EXPECT_EQ(r.box, (PixelBox{10, 20, 109, 119}));
    ASSERT_TRUE(r.scale);
    EXPECT_NEAR(r.scale->mmPerPixel.y(), 0.25, kRounding);
}

TEST(ReadRegions, NegativeDeltasAreLengthsAllTheSame) {
    RegionBytes made;
    made.deltaX = -0.05;
    made.deltaY = -0.05;
    const EchoRegion r = only(factsOf(std::vector{made}));
    ASSERT_TRUE(r.scale);
    EXPECT_NEAR(r.scale->mmPerPixel.x(), 0.5, kRounding);
    EXPECT_EQ(r.y.delta, -0.05) << "the sign stays with the axis";
}

TEST(ReadRegions, ReferencePixelMayBeUntold) {
    const EchoRegion r = only(factsOf(std::vector{RegionBytes{}}));
    EXPECT_EQ(r.x.referencePixel, std::nullopt);
    EXPECT_TRUE(r.scale) << "lengths need none";
}

TEST(ReadRegions, KindsFollowFormatAndDataType) {
    const struct {
        int format, type;
        EchoRegionKind kind;
    } cases[] = {
        {1, 1, EchoRegionKind::Tissue}, {1, 2, EchoRegionKind::Colour},   {1, 13, EchoRegionKind::Other},
        {2, 1, EchoRegionKind::MMode},  {3, 3, EchoRegionKind::Spectral}, {3, 4, EchoRegionKind::Spectral},
        {4, 10, EchoRegionKind::Ecg},   {5, 10, EchoRegionKind::Ecg},     {4, 7, EchoRegionKind::Other},
        {5, 13, EchoRegionKind::Other}, {0, 0, EchoRegionKind::Other},    {99, 99, EchoRegionKind::Other}};
    for (const auto& c : cases) {
        RegionBytes made;
        made.format = c.format;
        made.type = c.type;
        made.unitX = 4;
        const EchoRegion r = only(factsOf(std::vector{made}));
        EXPECT_EQ(r.kind, c.kind) << c.format << " " << c.type;
        EXPECT_FALSE(r.scale) << c.format << " " << c.type;
    }
}

TEST(ReadRegions, OnlyCentimetresAreLengths) {
    for (const int unit : {0, 1, 2, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 65535}) {
        RegionBytes made;
        made.unitY = unit;
        const auto facts = factsOf(std::vector{made});
        EXPECT_FALSE(only(facts).scale) << unit;
        EXPECT_THAT(codesOf(facts.notices), Contains("no-length-scale"));
        const auto length = regionDistance(facts.regions, {}, {20, 30}, {40, 50});
        ASSERT_FALSE(length);
        EXPECT_THAT(length.error().message, HasSubstr("not two lengths in cm")) << unit;
    }
    RegionBytes made;
    made.unitX.reset();
    EXPECT_EQ(only(factsOf(std::vector{made})).x.unit, PhysicalUnit::Unknown);
}

TEST(ReadRegions, AnnouncesAScaleThatCannotBeTrue) {
    RegionBytes made;
    made.deltaX = made.deltaY = 0.25; // mm written as cm
    expectRefused(made, "region-scale-refused",
                  "its pixels would be 2.50000 x 2.50000 mm, where 0.02 to 2 mm");
    made.deltaX = made.deltaY = 0.0001;
    expectRefused(made, "region-scale-refused", "its pixels would be 0.00100 x 0.00100 mm");
    made.deltaX = 0.1;
    made.deltaY = 0.01;
    expectRefused(made, "region-scale-refused", "one side 10.0 times the other, which cannot be true");
    made.deltaX = 0.0;
    expectRefused(made, "region-scale-refused", "its pixels would be 0.00000 x 0.10000 mm");
    made.deltaX.reset();
    expectRefused(made, "region-scale-refused", "PhysicalDeltaX is absent");
    made.deltaX = std::numeric_limits<double>::quiet_NaN();
    expectRefused(made, "region-scale-refused", "PhysicalDeltaX holds \"a value that is not finite\"");
}

TEST(ReadRegions, BelievesThePlausibleRangeToItsEnds) {
    for (const double mm : {0.021, 0.2, 1.9}) {
        RegionBytes made;
        made.deltaX = made.deltaY = mm / 10;
        const auto facts = factsOf(std::vector{made});
        EXPECT_TRUE(only(facts).scale) << mm;
        EXPECT_THAT(codesOf(facts.notices), IsEmpty()) << mm;
    }
}

TEST(ReadRegions, AnnouncesUnusualAspectsButMeasuresThem) {
    const auto facts = factsOf(std::vector{RegionBytes{}});
    EXPECT_TRUE(only(facts).scale);
    EXPECT_THAT(textOf(facts.notices, "region-aspect"), HasSubstr("0.5000 mm wide and 0.2500 mm high"));
}

TEST(ReadRegions, ARegionOutsideThePictureHasNoScale) {
    RegionBytes made;
    made.maxX = 595; // of a picture that is 320 wide: it was halved after calibration
    made.deltaY = 0.05;
    expectRefused(
        made, "region-scale-refused",
        "it reaches from (10, 20) to (595, 119) in a picture of 320 x 240 pixels: the picture was scaled "
        "or cut after it was calibrated");
    made.maxX = 320; // one past the end, as some scanners count
    const auto facts = factsOf(std::vector{made});
    EXPECT_TRUE(only(facts).scale);
    EXPECT_EQ(only(facts).box.maxX, 319);
}

TEST(ReadRegions, LeavesOutWhatCannotBePlaced) {
    RegionBytes turned, good;
    turned.maxX = 5; // left of minX
    const auto facts = factsOf(std::vector{turned, good});
    ASSERT_EQ(facts.regions.size(), 1u);
    EXPECT_THAT(
        textOf(facts.notices, "region-unreadable"),
        HasSubstr("Ultrasound region 1 of 2: it reaches from (10, 20) to (5, 119), which is no rectangle"));
    DatasetBytes dataset = usDataset(), item = RegionBytes{}.dataset();
    item.remove(0x0018601C);
    const auto bare = factsOf(dataset.sequence(0x00186011, {item}));
    EXPECT_THAT(bare.regions, IsEmpty());
    EXPECT_THAT(textOf(bare.notices, "region-unreadable"),
                HasSubstr("(0018,601c) RegionLocationMaxX1 is absent"));
    RegionBytes huge;
    huge.maxX = 0xFFFFFFFF;
    EXPECT_THAT(factsOf(std::vector{huge}).regions, IsEmpty());
}

TEST(ReadRegions, AnnouncesContradictoryKinds) {
    RegionBytes made;
    made.type = 3; // spectral Doppler in a flat picture
    made.deltaX = 0.025;
    expectRefused(made, "region-contradictory", "its spatial format and its data type contradict each other");
    made.format = 4;
    made.type = 10;
    expectRefused(made, "region-contradictory", "it calls both axes lengths but shows no flat picture (ecg)");
    made.format.reset();
    EXPECT_THAT(codesOf(factsOf(std::vector{made}).notices), Contains("region-unreadable"));
}

TEST(ReadRegions, SpectralRegionsKeepTheirBaseline) {
    const auto facts = factsOf(std::vector{spectralRegion()});
    const EchoRegion r = only(facts);
    EXPECT_EQ(r.kind, EchoRegionKind::Spectral);
    EXPECT_EQ(r.y.unit, PhysicalUnit::CentimetrePerSecond);
    EXPECT_EQ(r.y.referencePixel, 180.0);
    EXPECT_EQ(r.y.delta, -1.5);
    EXPECT_TRUE(r.scaleFault.empty());
    RegionBytes wild = spectralRegion();
    wild.deltaY = 9000.0;
    EXPECT_THAT(textOf(factsOf(std::vector{wild}).notices, "region-scale-refused"),
                HasSubstr("a pixel of its velocity axis would be 9000.00000 cm/s"));
    wild = spectralRegion();
    wild.deltaX = 0.0;
    EXPECT_THAT(textOf(factsOf(std::vector{wild}).notices, "region-scale-refused"),
                HasSubstr("a pixel of its time axis would be 0.00000 s"));
}

TEST(ReadRegions, AnEcgNeedsNoVerticalScaleForItsTimes) {
    RegionBytes ecg;
    ecg.format = 4;
    ecg.type = 10;
    ecg.unitX = 4;
    ecg.deltaX = 0.005;
    ecg.unitY = 0;
    ecg.deltaY.reset();
    const EchoRegion r = only(factsOf(std::vector{ecg}));
    EXPECT_DOUBLE_EQ(intervalMs(r, {20, 30}, {100, 90}).value().value, 400.0);
    ecg.maxX = 700; // scaled after calibration: its times are no longer true either
    EXPECT_EQ(errorOf(intervalMs(only(factsOf(std::vector{ecg})), {20, 30}, {100, 90})).code,
              ErrorCode::ScaleMissing);
}

TEST(ReadRegions, SaysThatVelocitiesWereCorrectedForAnAngle) {
    DatasetBytes dataset = usDataset(), item = spectralRegion().dataset();
    item.fd(0x00186034, 30.0);
    const auto facts = factsOf(dataset.sequence(0x00186011, {item}));
    EXPECT_THAT(textOf(facts.notices, "region-angle-corrected"), HasSubstr("for an angle of 30 degrees"));
}

TEST(ReadRegions, AnnouncesOverlapsOfDifferentScales) {
    RegionBytes tissue, inset, colour;
    tissue.deltaY = inset.deltaY = colour.deltaY = 0.05;
    inset.minX = inset.minY = 50;
    inset.deltaX = inset.deltaY = 0.02;
    colour.minX = colour.minY = 60;
    colour.type = 2;
    const auto facts = factsOf(std::vector{tissue, inset});
    EXPECT_THAT(
        textOf(facts.notices, "regions-overlap"),
        HasSubstr("Ultrasound region 1 of 2 and Ultrasound region 2 of 2 share pixels but not their scale"));
    EXPECT_THAT(codesOf(factsOf(std::vector{tissue, colour}).notices), Not(Contains("regions-overlap")))
        << "a colour box has its picture's scale";
}

TEST(ReadRegions, ReadsAFewHundredRegionsAtMost) {
    const auto facts = factsOf(std::vector<RegionBytes>(300));
    EXPECT_EQ(facts.regions.size(), 256u);
    EXPECT_THAT(textOf(facts.notices, "region-unreadable"), HasSubstr("has 300 items; only the first 256"));
}

TEST(ReadRegions, RandomRegionsGiveTheirPhysicalDistances) {
    // Whatever box, deltas and reference pixels: a caliper reads the difference of the places' physical
    // values, and a scale is given exactly where it can be true.
    const unsigned seeds = std::getenv("GAUGE_LONG") ? 6000 : 60;
    for (unsigned seed = 1; seed <= seeds; ++seed) {
        std::mt19937 random(seed);
        const auto real = [&](double a, double b) {
            return std::uniform_real_distribution<double>(a, b)(random);
        };
        const auto whole = [&](int a, int b) { return std::uniform_int_distribution<int>(a, b)(random); };
        RegionBytes made;
        made.minX = static_cast<std::uint32_t>(whole(0, 200));
        made.minY = static_cast<std::uint32_t>(whole(0, 150));
        made.maxX = made.minX + static_cast<std::uint32_t>(whole(1, 140));
        made.maxY = made.minY + static_cast<std::uint32_t>(whole(1, 110));
        made.deltaX = (whole(0, 1) ? 1 : -1) * std::pow(10.0, real(-3.2, -0.4));
        made.deltaY = (whole(0, 1) ? 1 : -1) * std::pow(10.0, real(-3.2, -0.4));
        const auto facts = factsOf(std::vector{made});
        const double w = 10 * std::abs(*made.deltaX), h = 10 * std::abs(*made.deltaY);
        const bool inside = made.maxX <= 320 && made.maxY <= 240;
        const bool believable =
            inside && std::min(w, h) >= 0.02 && std::max(w, h) <= 2.0 && std::max(w / h, h / w) <= 4.0;
        const EchoRegion r = only(facts);
        ASSERT_EQ(r.scale.has_value(), believable) << "seed " << seed << ": " << w << " x " << h;
        if (!believable) continue;
        const Eigen::Vector2d a(real(r.box.minX, r.box.maxX), real(r.box.minY, r.box.maxY));
        const Eigen::Vector2d b(real(r.box.minX, r.box.maxX), real(r.box.minY, r.box.maxY));
        constexpr double kSums = 1e-9;
        EXPECT_NEAR(regionDistance(facts.regions, {}, a, b)->value,
                    std::hypot((a.x() - b.x()) * w, (a.y() - b.y()) * h), kSums)
            << "seed " << seed;
        const Eigen::Vector2d beside(r.box.maxX + 0.6, b.y());
        EXPECT_FALSE(regionDistance(facts.regions, {}, a, beside)) << "seed " << seed;
    }
}
