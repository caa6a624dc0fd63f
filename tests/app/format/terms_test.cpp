#include "app/format/terms.h"

#include <gtest/gtest.h>

using namespace gauge;

namespace {

std::string english(const QString& text) {
    return text.toStdString();
}

} // namespace

// Without a translation the words are core's own, so that screen, sentences and files agree.
TEST(Terms, SayInEnglishWhatCoreSays) {
    for (const core::Stage stage : core::kStages)
        EXPECT_EQ(english(app::stageName(stage)), core::plainName(stage));
    for (const auto modality : {core::Modality::Ct, core::Modality::Echo2d, core::Modality::Echo3d, core::Modality::Fluoroscopy})
        EXPECT_EQ(english(app::modalityName(modality)), core::plainName(modality));
    for (int n = 0; n < 6; ++n)
        EXPECT_EQ(english(app::quantityName(static_cast<core::Quantity>(n))), core::plainName(static_cast<core::Quantity>(n)));
    for (int n = 0; n < 4; ++n)
        EXPECT_EQ(english(app::derivationName(static_cast<core::Derivation>(n))), core::plainName(static_cast<core::Derivation>(n)));
}

TEST(Terms, NameEveryReleaseQuantity) {
    for (std::size_t n = 0; n < core::kReleaseQuantityCount; ++n)
        EXPECT_FALSE(app::releaseQuantityName(static_cast<core::ReleaseQuantity>(n)).isEmpty()) << n;
}

TEST(MetricName, ReadsTheLastPartOfAnId) {
    EXPECT_EQ(english(app::metricName("landing-1/longest-diameter")), "longest diameter");
    EXPECT_EQ(english(app::metricName("depth")), "depth");
    EXPECT_EQ(english(app::metricName("depth/along-axis")), "depth along the axis");
    EXPECT_EQ(english(app::metricName("something/new")), "something/new");
    EXPECT_EQ(english(app::metricName("landing-1/longest-width/primary")), "longest width, C-arm, LAO above 0°");
    EXPECT_EQ(english(app::metricName("ostium/en-face/secondary")), "en face, C-arm, cranial above 0°");
    EXPECT_EQ(english(app::metricName("landing-1/one-for-all/width")), "one view for all, width");
}

TEST(PlaceName, TellsLandingZonesApart) {
    EXPECT_EQ(english(app::placeName("ostium/area")), "ostium");
    EXPECT_EQ(english(app::placeName("landing-1/area")), "landing zone");
    EXPECT_EQ(english(app::placeName("landing/area")), "landing zone");
    EXPECT_EQ(english(app::placeName("landing-2/area")), "landing zone 2");
    EXPECT_EQ(english(app::placeName("volume")), "appendage");
}

TEST(UnitOf, KnowsTheUnitsOfTheRecord) {
    EXPECT_EQ(app::unitOf("mm"), app::Unit::Millimetre);
    EXPECT_EQ(app::unitOf("mm2"), app::Unit::SquareMillimetre);
    EXPECT_EQ(app::unitOf("mL"), app::Unit::Millilitre);
    EXPECT_EQ(app::unitOf("deg"), app::Unit::Degree);
    EXPECT_EQ(app::unitOf("HU"), app::Unit::Hounsfield);
    EXPECT_EQ(app::unitOf("1"), app::Unit::Index);
}
