// Scales by PS3.3 10.7 and C.8.7.5; expected numbers by hand.
#include "dicomio/angiography/scale_choice.h"

#include "tests/dicomio/angiography/header.h"

#include <cmath>
#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

constexpr double kRounding = 1e-12;

Header geometry(const std::string& sid = "1080", const std::string& sod = "720") {
    return Header()
        .text(tags::ImagerPixelSpacing, "0.3\\0.3")
        .text(tags::DistanceSourceToDetector, sid)
        .text(tags::DistanceSourceToPatient, sod);
}

double mmOf(const XrayFacts& facts) {
    return facts.frames[0].scale ? facts.frames[0].scale->planar.mmPerPixel.x() : 0.0;
}

} // namespace

TEST(XrayScale, AtTheIsocentreIsTheDetectorsSpacingReducedBySodOverSid) {
    const auto facts = geometry().facts(2);
    EXPECT_NEAR(mmOf(facts), 0.2, kRounding); // 0.3 x 720 / 1080
    EXPECT_EQ(facts.scaleSource, XrayScaleSource::Isocentre);
    const auto& scale = *facts.frames[1].scale;
    EXPECT_EQ(scale.planar.origin, core::ScaleOrigin::ImagerAtIsocentre);
    EXPECT_NEAR(scale.ownRelative, std::sqrt(2.0) * 0.01, kRounding);
    EXPECT_NEAR(scale.depthRelative, 30.0 / 720.0, kRounding);
    EXPECT_NEAR(scale.planar.relativeUncertainty, std::sqrt(2.0 * 1e-4 + 900.0 / (720.0 * 720.0)), kRounding);
    EXPECT_THAT(facts.scaleText, HasSubstr("720 / 1080 mm"));
    EXPECT_TRUE(facts.notices.empty());
}

TEST(XrayScale, TakesTheMagnificationWhereDistancesAreNotTold) {
    const auto facts = Header()
                           .text(tags::ImagerPixelSpacing, "0.3\\0.15")
                           .text(tags::EstimatedRadiographicMagnificationFactor, "1.5")
                           .facts();
    ASSERT_TRUE(facts.frames[0].scale);
    // The attribute gives the distance between rows first.
    EXPECT_NEAR(facts.frames[0].scale->planar.mmPerPixel.x(), 0.1, kRounding);
    EXPECT_NEAR(facts.frames[0].scale->planar.mmPerPixel.y(), 0.2, kRounding);
}

TEST(XrayScale, IsNoneWithTheDetectorsSpacingAlone) {
    const auto facts = Header().text(tags::ImagerPixelSpacing, "0.3\\0.3").facts();
    EXPECT_FALSE(facts.frames[0].scale);
    EXPECT_EQ(facts.scaleSource, XrayScaleSource::None);
    EXPECT_THAT(facts.scaleText, HasSubstr("measures at the detector"));
    EXPECT_FALSE(Header().facts().frames[0].scale);
    EXPECT_THAT(Header().facts().scaleText, HasSubstr("Calibrate on a catheter"));
}

TEST(XrayScale, IsNotMadeOfAMagnificationThatContradictsTheDistances) {
    auto header = geometry();
    const auto facts = header.text(tags::EstimatedRadiographicMagnificationFactor, "1.3").facts();
    EXPECT_FALSE(facts.frames[0].scale);
    EXPECT_THAT(noticeText(facts.notices, "xray-geometry-contradictory"), HasSubstr("give 1.5"));
    auto rounded = geometry("1080", "715"); // 1.5105 told as 1.5
    EXPECT_TRUE(rounded.text(tags::EstimatedRadiographicMagnificationFactor, "1.5").facts().frames[0].scale);
}

TEST(XrayScale, NeedsTheIsocentreBetweenSourceAndDetector) {
    const auto facts = geometry("700", "720").facts();
    EXPECT_FALSE(facts.frames[0].scale);
    EXPECT_THAT(noticeText(facts.notices, "xray-geometry-contradictory"), HasSubstr("must lie between"));
}

TEST(XrayScale, DoesNotBelieveImpossibleLengths) {
    const auto facts = geometry("108", "72").facts(); // centimetres
    EXPECT_FALSE(facts.frames[0].scale);
    EXPECT_THAT(noticeText(facts.notices, "xray-geometry-unusable"),
                HasSubstr("108 mm, outside 200 to 3000"));
    for (const char* spacing : {"0\\0", "-0.3\\0.3", "0.3", "0.3\\0.9", "30\\30", "a\\b"}) {
        const auto bad = Header()
                             .text(tags::ImagerPixelSpacing, spacing)
                             .text(tags::EstimatedRadiographicMagnificationFactor, "1.5")
                             .facts();
        EXPECT_FALSE(bad.frames[0].scale) << spacing;
        EXPECT_THAT(noticeText(bad.notices, "xray-geometry-unusable"), HasSubstr("ImagerPixelSpacing"))
            << spacing;
    }
}

TEST(XrayScale, NamesEveryAttributeThatCannotBeUsed) {
    const auto facts = geometry("108", "72").facts();
    std::string said;
    for (const auto& notice : facts.notices)
        said += notice.text;
    EXPECT_THAT(said, HasSubstr("DistanceSourceToDetector is 108"));
    EXPECT_THAT(said, HasSubstr("DistanceSourceToPatient is 72"));
}

TEST(XrayScale, DoesNotBelieveADetectorLongerThanThereAre) {
    const auto facts = Header() // 512 pixels of 1.5 mm
                           .text(tags::ImagerPixelSpacing, "1.5\\1.5")
                           .text(tags::EstimatedRadiographicMagnificationFactor, "1.5")
                           .facts();
    EXPECT_FALSE(facts.frames[0].scale);
    EXPECT_THAT(noticeText(facts.notices, "xray-geometry-unusable"), HasSubstr("768 mm long"));
}

TEST(XrayScale, PrefersTheObjectThatTheDeviceCalibratedOn) {
    const auto facts = geometry()
                           .text(tags::PixelSpacing, "0.21\\0.21")
                           .text(tags::PixelSpacingCalibrationType, "FIDUCIAL", "CS")
                           .text(tags::PixelSpacingCalibrationDescription, "6F catheter", "LO")
                           .facts();
    EXPECT_EQ(mmOf(facts), 0.21);
    EXPECT_EQ(facts.scaleSource, XrayScaleSource::Fiducial);
    EXPECT_EQ(facts.frames[0].scale->ownRelative, core::kCatheterRelativeUncertainty);
    EXPECT_THAT(facts.scaleText, HasSubstr("6F catheter"));
}

TEST(XrayScale, TakesTheDevicesGeometry) {
    const auto facts = geometry()
                           .text(tags::PixelSpacing, "0.195\\0.195")
                           .text(tags::PixelSpacingCalibrationType, "GEOMETRY", "CS")
                           .facts();
    EXPECT_EQ(mmOf(facts), 0.195);
    EXPECT_EQ(facts.scaleSource, XrayScaleSource::Geometry);
    EXPECT_EQ(facts.frames[0].scale->planar.origin, core::ScaleOrigin::DeviceGeometry);
}

TEST(XrayScale, AnnouncesTwoScalesThatNoDepthExplains) {
    const auto facts = geometry()
                           .text(tags::PixelSpacing, "0.12\\0.12")
                           .text(tags::PixelSpacingCalibrationType, "GEOMETRY", "CS")
                           .facts();
    EXPECT_EQ(mmOf(facts), 0.12);
    EXPECT_THAT(noticeText(facts.notices, "xray-scales-differ"), HasSubstr("0.12 x 0.12 mm"));
}

TEST(XrayScale, IsNotAPixelSpacingEqualToTheDetectors) {
    const auto plain =
        Header().text(tags::ImagerPixelSpacing, "0.3\\0.3").text(tags::PixelSpacing, "0.30\\0.30").facts();
    EXPECT_FALSE(plain.frames[0].scale);
    EXPECT_THAT(noticeText(plain.notices, "xray-spacing-at-detector"), HasSubstr("no scale of the patient"));
    const auto typed = Header()
                           .text(tags::ImagerPixelSpacing, "0.3\\0.3")
                           .text(tags::PixelSpacing, "0.3\\0.3")
                           .text(tags::PixelSpacingCalibrationType, "FIDUCIAL", "CS")
                           .facts();
    EXPECT_FALSE(typed.frames[0].scale);
    EXPECT_THAT(noticeText(typed.notices, "xray-calibration-contradictory"), HasSubstr("although"));
}

TEST(XrayScale, IsNotAPixelSpacingLargerThanTheDetectors) {
    const auto facts =
        Header().text(tags::ImagerPixelSpacing, "0.3\\0.3").text(tags::PixelSpacing, "0.4\\0.4").facts();
    EXPECT_FALSE(facts.frames[0].scale);
    EXPECT_THAT(noticeText(facts.notices, "xray-calibration-contradictory"),
                HasSubstr("magnified, not reduced"));
}

TEST(XrayScale, WithoutAWayOfCalibrationIsTakenWithTenPercentOnlyBesideTheDetectors) {
    const auto facts =
        Header().text(tags::ImagerPixelSpacing, "0.3\\0.3").text(tags::PixelSpacing, "0.2\\0.2").facts();
    EXPECT_EQ(facts.scaleSource, XrayScaleSource::Untold);
    EXPECT_EQ(facts.frames[0].scale->ownRelative, 0.10);
    EXPECT_THAT(noticeText(facts.notices, "xray-spacing-unexplained"), HasSubstr("10 %"));
    const auto alone = Header().text(tags::PixelSpacing, "0.2\\0.2").facts();
    EXPECT_FALSE(alone.frames[0].scale);
    EXPECT_THAT(noticeText(alone.notices, "xray-spacing-unexplained"), HasSubstr("neither"));
}

TEST(XrayScale, AnnouncesACalibrationTypeWithoutSpacingAndOneThatIsNone) {
    const auto without = Header().text(tags::PixelSpacingCalibrationType, "GEOMETRY", "CS").facts();
    EXPECT_FALSE(without.frames[0].scale);
    EXPECT_THAT(noticeText(without.notices, "xray-calibration-contradictory"), HasSubstr("no usable"));
    const auto unknown = Header()
                             .text(tags::ImagerPixelSpacing, "0.3\\0.3")
                             .text(tags::PixelSpacing, "0.2\\0.2")
                             .text(tags::PixelSpacingCalibrationType, "RULER", "CS")
                             .facts();
    EXPECT_EQ(unknown.scaleSource, XrayScaleSource::Untold);
    EXPECT_THAT(noticeText(unknown.notices, "xray-calibration-contradictory"), HasSubstr("RULER"));
}

TEST(XrayScale, OfEnhancedFramesFollowsEachFramesGroups) {
    const auto frame = [](const std::string& sid) {
        return Header().sequence(tags::XRayGeometrySequence,
                                 {Header()
                                      .text(tags::DistanceSourceToDetector, sid)
                                      .text(tags::DistanceSourceToIsocenter, "720")});
    };
    const auto facts =
        Header()
            .sequence(tags::SharedFunctionalGroupsSequence,
                      {Header().sequence(tags::FramePixelDataPropertiesSequence,
                                         {Header().text(tags::ImagerPixelSpacing, "0.3\\0.3")})})
            .sequence(tags::PerFrameFunctionalGroupsSequence, {frame("1080"), frame("1200")})
            .facts(2);
    EXPECT_NEAR(facts.frames[0].scale->planar.mmPerPixel.x(), 0.2, kRounding);
    EXPECT_NEAR(facts.frames[1].scale->planar.mmPerPixel.x(), 0.18, kRounding);
}

TEST(XrayScale, InTheMiddleOfTheBeamMustBeSmallerThanTheDetectors) {
    const auto groups = [](const std::string& object) {
        return Header().sequence(
            tags::SharedFunctionalGroupsSequence,
            {Header()
                 .sequence(tags::FramePixelDataPropertiesSequence,
                           {Header().text(tags::ImagerPixelSpacing, "0.3\\0.3")})
                 .sequence(tags::ProjectionPixelCalibrationSequence,
                           {Header().text(tags::ObjectPixelSpacingInCenterOfBeam, object)})});
    };
    EXPECT_EQ(mmOf(groups("0.19\\0.19").facts()), 0.19);
    const auto contradictory = groups("0.3\\0.3").facts();
    EXPECT_FALSE(contradictory.frames[0].scale);
    EXPECT_THAT(noticeText(contradictory.notices, "xray-calibration-contradictory"),
                HasSubstr("is not smaller"));
}
