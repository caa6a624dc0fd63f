// Seeds in the wrong place are refused in words that name the place.
#include "core/anatomy/appendage.h"
#include "sample-data/phantom.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace gauge::tests {
namespace {

using core::ErrorCode;
using testing::AnyOf;
using testing::HasSubstr;

class WrongSeed : public testing::Test {
protected:
    static const sample_case::Phantom& phantom() {
        static const auto p = sample_case::makePhantom(sample_case::Shape::Oval, 41);
        return p;
    }
    static const std::shared_ptr<const core::Volume>& volume() {
        static const auto v = phantom().rasterise();
        return v;
    }
    core::AppendageMarks marks;
    core::AppendageOptions options;

    WrongSeed() {
        marks.atrium = phantom().marks.atrium;
        marks.tip = phantom().marks.tip;
    }
    core::Error refusal() {
        auto measured = core::measureAppendage(volume(), marks, options);
        if (measured) return {ErrorCode::Internal, "it measured", {}, nullptr};
        return measured.error();
    }
};

TEST_F(WrongSeed, TipInAirIsRefused) {
    marks.tip = phantom().wrong.lung;
    const auto e = refusal();
    EXPECT_EQ(e.code, ErrorCode::SeedNotInBlood);
    EXPECT_THAT(e.message, HasSubstr("tip seed lies in air or lung"));
}

TEST_F(WrongSeed, TipInFatIsRefused) {
    marks.tip = phantom().wrong.fat;
    EXPECT_THAT(refusal().message, HasSubstr("tip seed lies in fat"));
}

TEST_F(WrongSeed, TipInWallIsRefused) {
    marks.tip = phantom().wrong.wall;
    const auto e = refusal();
    EXPECT_EQ(e.code, ErrorCode::SeedNotInBlood) << e.message;
    EXPECT_THAT(e.message, HasSubstr("wall"));
}

TEST_F(WrongSeed, TipInVentricleIsRefused) {
    marks.tip = phantom().wrong.ventricle;
    const auto e = refusal();
    EXPECT_EQ(e.code, ErrorCode::SeedsNotConnected) << e.message;
    EXPECT_THAT(e.message, HasSubstr("another cavity (a ventricle"));
}

TEST_F(WrongSeed, TipInCircumflexArteryIsRefused) {
    marks.tip = phantom().wrong.artery;
    EXPECT_THAT(refusal().message, HasSubstr("another cavity"));
}

TEST_F(WrongSeed, TipInVeinIsRefused) {
    marks.tip = phantom().wrong.vein;
    const auto e = refusal();
    EXPECT_EQ(e.code, ErrorCode::SeedInVein) << e.message;
    EXPECT_THAT(e.message, HasSubstr("pulmonary vein"));
}

TEST_F(WrongSeed, TipInVeinIsRefusedWithLandmarksToo) {
    marks.tip = phantom().wrong.vein;
    marks.circumflex = phantom().marks.circumflex;
    marks.ridge = phantom().marks.ridge;
    EXPECT_THAT(refusal().message, AnyOf(HasSubstr("pulmonary vein"), HasSubstr("move the tip seed")));
}

TEST_F(WrongSeed, TipInAtriumIsRefused) {
    marks.tip = marks.atrium + core::PatientVector{{2.0, 0.0, 0.0}};
    EXPECT_THAT(refusal().message, HasSubstr("as in a chamber"));
}

TEST_F(WrongSeed, AtriumSeedInVeinIsRefused) {
    marks.atrium = phantom().wrong.vein;
    const auto e = refusal();
    EXPECT_EQ(e.code, ErrorCode::SeedInVein) << e.message;
    EXPECT_THAT(e.message, HasSubstr("around the atrium seed"));
}

TEST_F(WrongSeed, AtriumSeedInAirIsRefused) {
    marks.atrium = phantom().wrong.lung;
    EXPECT_THAT(refusal().message, HasSubstr("atrium seed lies in air or lung"));
}

TEST_F(WrongSeed, AtriumSeedInVentricleIsRefused) {
    marks.atrium = phantom().wrong.ventricle;
    EXPECT_EQ(refusal().code, ErrorCode::SeedsNotConnected);
}

TEST_F(WrongSeed, SeedOutsideTheImagesIsRefused) {
    marks.tip = phantom().wrong.outside;
    const auto e = refusal();
    EXPECT_EQ(e.code, ErrorCode::SeedOutsideVolume);
    EXPECT_THAT(e.message, HasSubstr("lies outside the images"));
}

TEST_F(WrongSeed, LandingBeyondTheTipIsRefused) {
    options.landingDepthsMm = {90.0};
    const auto e = refusal();
    EXPECT_EQ(e.code, ErrorCode::LandingOutsideAppendage);
    EXPECT_THAT(e.message, HasSubstr("90.0 mm beyond the ostium"));
}

TEST_F(WrongSeed, LandmarksInOnePlaceAreRefused) {
    marks.circumflex = phantom().marks.circumflex;
    marks.ridge = *marks.circumflex + core::PatientVector{{1.0, 0.0, 0.0}};
    const auto e = refusal();
    EXPECT_EQ(e.code, ErrorCode::LandmarksUnusable);
    EXPECT_THAT(e.message, HasSubstr("apart"));
}

TEST_F(WrongSeed, HalfAPairIsRefused) {
    marks.ridge = phantom().marks.ridge;
    EXPECT_THAT(refusal().message, HasSubstr("needed together"));
}

TEST_F(WrongSeed, PlaneFarFromTheAxisIsRefused) {
    marks.ostium = core::Plane{marks.atrium + core::PatientVector{{400.0, 0.0, 0.0}}, {{1.0, 0.0, 0.0}}};
    EXPECT_EQ(refusal().code, ErrorCode::OstiumNotFound);
}

TEST_F(WrongSeed, StopIsAnswered) {
    std::stop_source stop;
    stop.request_stop();
    const auto measured = core::measureAppendage(volume(), marks, options, {stop.get_token(), {}});
    ASSERT_FALSE(measured);
    EXPECT_EQ(measured.error().code, ErrorCode::Cancelled);
}

TEST(UnenhancedScan, IsRefusedForItsContrast) {
    const auto phantom = sample_case::makePhantom(sample_case::Shape::Oval, 41);
    const auto bright = phantom.rasterise();
    // The same heart without contrast medium: blood like muscle.
    std::vector<std::int16_t> dark(bright->data(), bright->data() + bright->voxelCount());
    for (auto& v : dark)
        v = std::min<std::int16_t>(v, 60);
    const auto volume = *core::Volume::make(bright->size(), std::move(dark), bright->patientFromVoxel(),
                                            core::VoxelQuantity::HounsfieldUnits, "");
    core::AppendageMarks marks;
    marks.atrium = phantom.marks.atrium;
    marks.tip = phantom.marks.tip;
    const auto measured = core::measureAppendage(volume, marks, {});
    ASSERT_FALSE(measured);
    EXPECT_EQ(measured.error().code, ErrorCode::ContrastPoor);
    EXPECT_THAT(measured.error().message, HasSubstr("Contrast is too poor"));
}

} // namespace
} // namespace gauge::tests
