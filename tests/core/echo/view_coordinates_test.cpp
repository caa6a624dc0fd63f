#include "core/echo/view_coordinates.h"

#include <gtest/gtest.h>

using namespace gauge::core;

namespace {

EchoRegion region() {
    EchoRegion r;
    r.box = {100, 50, 299, 249};
    r.scale = PlanarScale{{0.5, 0.25}, 0.01, ScaleOrigin::RegionCalibration, {}};
    return r;
}

} // namespace

TEST(ViewCoordinates, CountFromTheTipThatTheFileTells) {
    EchoRegion r = region();
    r.x.referencePixel = 180.0;
    r.y.referencePixel = 40.0;
    const auto view = viewCoordinates(r);
    ASSERT_TRUE(view);
    EXPECT_TRUE(view->tipIsTold);
    EXPECT_EQ(view->mmFromPixel({200.0, 80.0}), Eigen::Vector2d(10.0, 10.0));
    EXPECT_EQ(view->pixelFromMm({10.0, 10.0}), Eigen::Vector2d(200.0, 80.0));
}

TEST(ViewCoordinates, WithoutATipTheMiddleOfTheUpperEdgeStandsForItAndSaysSo) {
    const auto view = viewCoordinates(region());
    ASSERT_TRUE(view);
    EXPECT_FALSE(view->tipIsTold);
    EXPECT_EQ(view->tipPixel, Eigen::Vector2d(199.5, 50.0));
}

TEST(ViewCoordinates, AreNoneWithoutABelievableScale) {
    EchoRegion r = region();
    r.scale.reset();
    EXPECT_FALSE(viewCoordinates(r));
}
