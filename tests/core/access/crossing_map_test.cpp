#include "core/access/crossing_map.h"

#include "tests/core/access/upright_septum.h"

#include <gmock/gmock.h>

using namespace gauge::core;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

const CrossingField kHeight = [](const CrossingValues& v) { return v.overAnnulusMm; };
const CrossingField kAngle = [](const CrossingValues& v) { return v.angleDeg; };

/// Area of a disc of radius r between the heights a and b about its middle.
double slice(double r, double a, double b) {
    const auto until = [r](double h) { return h * std::sqrt(r * r - h * h) + r * r * std::asin(h / r); };
    return until(b) - until(a);
}

} // namespace

TEST(CrossingMap, CoversTheFossaOnARegularGrid) {
    const auto scene = uprightScene(20.0);
    const auto map = need(crossingMap(scene, {}, 1.0));
    double inside = 0.0;
    for (int row = 0; row < map.rows; ++row)
        for (int column = 0; column < map.columns; ++column) {
            const CrossingValues& node = map.at(column, row);
            EXPECT_LT((node.place - (map.origin + Eigen::Vector2d(column, row))).norm(), 1e-12);
            EXPECT_NEAR(*node.overAnnulusMm, 35.0 + node.place.y(), kOutlineMm);
            inside += map.inside[static_cast<std::size_t>(row * map.columns + column)];
        }
    EXPECT_NEAR(inside, 100.0 * std::numbers::pi, 10.0); // cells of 1 mm2 along a border of 63 mm
    const auto range = rangeOf(map, kHeight);
    ASSERT_TRUE(range);
    EXPECT_NEAR(range->first, 25.0, 0.02); // places on the outline every millimetre
    EXPECT_NEAR(range->second, 45.0, 0.02);
}

TEST(CrossingMap, LinesLieWhereTheFieldHasTheirValue) {
    const auto scene = uprightScene(20.0, -10.0);
    const auto map = need(crossingMap(scene, {}, 1.0));
    int checked = 0;
    for (const double height : {30.0, 35.0, 40.0})
        for (const auto& line : linesOfEqual(map, kHeight, height))
            for (const auto& place : line)
                if (scene.face.contains(place)) {
                    EXPECT_NEAR(*crossingAt(scene, place, {}).overAnnulusMm, height, 1e-4); // floats
                    ++checked;
                }
    EXPECT_GT(checked, 40);
    checked = 0;
    for (const double angle : {15.0, 20.0, 25.0})
        for (const auto& line : linesOfEqual(map, kAngle, angle))
            for (const auto& place : line)
                if (scene.face.contains(place)) {
                    EXPECT_NEAR(*crossingAt(scene, place, {}).angleDeg, angle, 0.1); // as the header says
                    ++checked;
                }
    EXPECT_GT(checked, 20);
}

// The axis points up by atan(1/2): the line from (b, h) makes an angle with it that grows with h. With the band 35 to 45 mm the
// places that serve the repair are the upper half of the disc.
TEST(ServingRegion, RepairIsTheUpperHalf) {
    const auto scene = uprightScene(26.565);
    const auto map = need(crossingMap(scene, {}, 0.25));
    const auto region = servingRegion(map, scene.face, {}, Service::Repair);
    EXPECT_NEAR(region.areaMm2, slice(10, 0, 10), 3.0); // half a cell along a border of 51 mm
    ASSERT_TRUE(region.middle && region.lowestMm && region.highestMm);
    EXPECT_NEAR(region.middle->x(), 0.0, 0.3);
    EXPECT_NEAR(region.middle->y(), 5.0, 0.3); // the middle of the greatest circle in a half disc
    EXPECT_NEAR(region.roomMm, 5.0, 0.3);
    EXPECT_NEAR(*region.lowestMm, 35.0, 0.26);
    EXPECT_NEAR(*region.highestMm, 45.0, 0.26);
}

TEST(ServingRegion, SharedPlacesMeetBothLimits) {
    const auto scene = uprightScene(26.565);
    const auto map = need(crossingMap(scene, {}, 0.5));
    const CrossingLimits limits;
    const auto both = servingRegion(map, scene.face, limits, Service::Both);
    const auto repair = servingRegion(map, scene.face, limits, Service::Repair);
    const auto closure = servingRegion(map, scene.face, limits, Service::Closure);
    const auto steered = servingRegion(map, scene.face, limits, Service::BothSteered);
    EXPECT_GT(both.areaMm2, 10.0);
    EXPECT_LT(both.areaMm2, std::min(repair.areaMm2, closure.areaMm2));
    EXPECT_GE(steered.areaMm2, both.areaMm2);
    ASSERT_TRUE(both.middle);
    const auto values = crossingAt(scene, *both.middle, limits.steering);
    EXPECT_EQ(servesRepair(values, limits), true);
    EXPECT_EQ(servesClosure(values, limits), true);
    // Every vertex of the border inside the fossa lies on one of the limits.
    for (const auto& line : regionBorder(map, limits, Service::Both))
        for (const auto& place : line)
            if (scene.face.contains(place)) {
                EXPECT_NEAR(*marginOf(crossingAt(scene, place, limits.steering), limits, Service::Both), 0.0, 0.35);
            }
}

TEST(ServingRegion, IsEmptyWithoutHeights) {
    auto marks = uprightMarks();
    marks.annulus.clear();
    marks.coaptation.clear();
    const auto scene = need(crossingScene(marks, uprightTarget(20.0), {{0, 0, 0}}));
    const auto map = need(crossingMap(scene, {}, 1.0));
    EXPECT_EQ(servingRegion(map, scene.face, {}, Service::Both).areaMm2, 0.0);
    EXPECT_FALSE(servingRegion(map, scene.face, {}, Service::Both).middle);
    EXPECT_FALSE(rangeOf(map, kHeight));
}

TEST(CrossingMap, RefusesAnUnusableStep) {
    const auto scene = uprightScene(20.0);
    EXPECT_THAT(refused(crossingMap(scene, {}, 0.0)).message, HasSubstr("the step is 0 mm"));
    EXPECT_EQ(refused(crossingMap(scene, {-3.0, 45.0}, 1.0)).code, ErrorCode::InvalidArgument);
}
