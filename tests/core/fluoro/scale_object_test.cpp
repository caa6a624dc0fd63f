#include "core/fluoro/scale_object.h"

#include "tests/core/fluoro/expect.h"

#include <gmock/gmock.h>

using namespace gauge::core;
using gauge::test::errorOf;
using gauge::test::valueOf;
using testing::HasSubstr;

namespace {
constexpr double kPrinted = 0.005; // mm, as printed
}

TEST(OuterDiameter, OfACatheterIsAThirdOfAMillimetreAFrench) {
    // From memory, universally used: 6F 2.00, 8F 2.67, 12F 4.00, 14F 4.67 mm.
    const double expected[][2] = {{6, 2.00}, {8, 2.67}, {12, 4.00}, {14, 4.67}};
    for (const auto& [french, mm] : expected) {
        const auto known = valueOf(outerDiameter({ScaleObjectKind::Catheter, french, {}}));
        EXPECT_NEAR(known.mm, mm, kPrinted);
        EXPECT_EQ(known.relativeUncertainty, kFrenchDiameterRelative);
    }
}

TEST(OuterDiameter, OfASheathIsNotItsFrench) {
    const auto error = errorOf(outerDiameter({ScaleObjectKind::Sheath, 14.0, {}}));
    EXPECT_EQ(error.code, ErrorCode::InvalidArgument);
    EXPECT_THAT(error.message, HasSubstr("is the bore inside it"));
    EXPECT_THAT(error.message, HasSubstr("Enter the outer diameter in mm"));
}

TEST(OuterDiameter, OfASheathMustLeaveAWallAroundItsBore) {
    // The trap itself: 14 F typed as 4.67 mm outside.
    EXPECT_THAT(errorOf(outerDiameter({ScaleObjectKind::Sheath, 14.0, 4.67})).message,
                HasSubstr("leaves no wall"));
    const auto known = valueOf(outerDiameter({ScaleObjectKind::Sheath, 14.0, 5.4}));
    EXPECT_EQ(known.mm, 5.4);
    EXPECT_EQ(known.relativeUncertainty, kPrintedDiameterRelative);
    EXPECT_TRUE(known.notices.empty());
}

TEST(OuterDiameter, OfASheathThatIsAWholeFrenchIsQuestioned) {
    const auto known = valueOf(outerDiameter({ScaleObjectKind::Sheath, {}, 4.67}));
    ASSERT_EQ(known.notices.size(), 1u);
    EXPECT_EQ(known.notices[0].code, "sheath-french-suspected");
    EXPECT_THAT(known.notices[0].text, HasSubstr("14 F"));
    EXPECT_TRUE(valueOf(outerDiameter({ScaleObjectKind::Sheath, {}, 5.4})).notices.empty());
}

TEST(OuterDiameter, OfACatheterWithTwoSizesMustAgree) {
    EXPECT_EQ(valueOf(outerDiameter({ScaleObjectKind::Catheter, 6.0, 1.95})).mm, 1.95);
    EXPECT_THAT(errorOf(outerDiameter({ScaleObjectKind::Catheter, 6.0, 2.6})).message,
                HasSubstr("for a sheath, say"));
}

TEST(OuterDiameter, FilledWithContrastIsLessSureAndSaysSo) {
    const auto known = valueOf(outerDiameter({ScaleObjectKind::Catheter, 6.0, {}, true}));
    EXPECT_GT(known.relativeUncertainty, kContrastFilledRelative);
    EXPECT_EQ(known.notices.at(0).code, "scale-object-contrast-filled");
}

TEST(OuterDiameter, NeedsASizeInRange) {
    EXPECT_THAT(errorOf(outerDiameter({})).message, HasSubstr("no size was entered"));
    EXPECT_THAT(errorOf(outerDiameter({ScaleObjectKind::Catheter, 2.0, {}})).message,
                HasSubstr("2 French lies outside"));
    EXPECT_THAT(errorOf(outerDiameter({ScaleObjectKind::Catheter, {}, 20.0})).message,
                HasSubstr("20 mm lies outside"));
}
