#include "core/sizing/device_outline.h"

#include <gtest/gtest.h>

using namespace gauge::core;

namespace {

const std::vector<ProfileWidth> kProfile{{0.0, 26.0, 0.0}, {10.0, 20.0, 0.0}, {20.0, 12.0, 0.0}};

PressureBand band() {
    PressureBand b{12.0, false, {}};
    for (const auto& at : kProfile)
        b.widths.push_back({at.widthMm, at.widthMm, at.widthMm});
    return b;
}

ChartSize size() {
    ChartSize s;
    s.name = "23 (invented)";
    s.nominalMm = 23.0;
    s.leastDepthMm = 14.0;
    s.landingOffsetMm = 8.0;
    return s;
}

} // namespace

TEST(DeviceOutline, OfAPlugReachesFromItsSeatOverTheLeastDepthAndIsCompressedToTheAppendage) {
    DeviceChart chart;
    const auto outline = deviceOutline(chart, size(), 10.0, kProfile, band());
    ASSERT_TRUE(outline);
    EXPECT_EQ(outline->seatMm, 2.0);
    EXPECT_EQ(outline->body.front().depthMm, 2.0);
    EXPECT_EQ(outline->body.back().depthMm, 14.0) << "the chart measures from the ostium";
    EXPECT_EQ(outline->body.front().widthMm, 23.0) << "the appendage is wider (24.8 mm): free";
    for (const auto& at : outline->body)
        EXPECT_LE(at.widthMm, 23.0);
    EXPECT_EQ(outline->body[16].depthMm, 10.0);
    EXPECT_NEAR(outline->body[16].widthMm, 20.0, 1e-9) << "as wide as the landing zone";
    EXPECT_NEAR(outline->body.back().widthMm, 16.8, 1e-9); // 20 - 8 x 4/10
    EXPECT_FALSE(outline->discMm);
}

TEST(DeviceOutline, OfALobeAndDiscBeginsAtTheLandingPlaneWithItsDiscAtTheSeat) {
    DeviceChart chart;
    chart.kind = DeviceKind::LobeAndDisc;
    ChartSize s = size();
    s.lobeDiameterMm = 22.0;
    s.discDiameterMm = 28.0;
    const auto outline = deviceOutline(chart, s, 10.0, kProfile, band());
    ASSERT_TRUE(outline);
    EXPECT_EQ(outline->body.front().depthMm, 10.0);
    EXPECT_EQ(outline->freeMm, 22.0);
    EXPECT_EQ(outline->discMm, 28.0);
    chart.depthFrom = DepthFrom::LandingZone;
    EXPECT_EQ(deviceOutline(chart, s, 10.0, kProfile, band())->body.back().depthMm, 24.0);
    EXPECT_EQ(deviceOutline(chart, s, 10.0, kProfile, band())->body.back().widthMm, 22.0) << "beyond the profile: free";
}

TEST(DeviceOutline, RefusesWhatCannotBeDrawn) {
    DeviceChart chart;
    chart.kind = DeviceKind::LobeAndDisc;
    ChartSize s = size();
    s.leastDepthMm = 8.0; // ends at the landing plane, where the lobe begins
    EXPECT_EQ(deviceOutline(chart, s, 10.0, kProfile, band()).error().message,
              "Cannot draw size 23 (invented): its least depth ends before it begins; check the chart.");
    PressureBand shorter = band();
    shorter.widths.pop_back();
    EXPECT_EQ(deviceOutline(chart, size(), 10.0, kProfile, shorter).error().message,
              "Cannot draw the size: the profile has 3 depths and the band 2 widths.");
}
