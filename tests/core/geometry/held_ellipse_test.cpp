#include "core/geometry/held_ellipse.h"

#include "core/geometry/smooth_line.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

using namespace gauge::core;

namespace {

const HeldEllipse kTilted{{3.0, -2.0}, 12.0, 9.0, 0.4};
constexpr double kHandleRounding = 1e-9; // mm, of a few products and roots

} // namespace

TEST(HeldEllipse, IsLeftAsItIsByAHandleThatIsNotMoved) {
    for (const EllipseHandle handle : kEllipseHandles) {
        const HeldEllipse same = dragged(kTilted, handle, placeOf(kTilted, handle));
        EXPECT_LT((same.center - kTilted.center).norm(), kHandleRounding);
        EXPECT_NEAR(same.alongMm, kTilted.alongMm, kHandleRounding);
        EXPECT_NEAR(same.acrossMm, kTilted.acrossMm, kHandleRounding);
        EXPECT_NEAR(same.directionRad, kTilted.directionRad, kHandleRounding);
    }
}

TEST(HeldEllipse, ChangesOnlyWhatItsHandleIsFor) {
    const HeldEllipse moved = dragged(kTilted, EllipseHandle::Center, {5.0, 5.0});
    EXPECT_EQ(moved, (HeldEllipse{{5.0, 5.0}, 12.0, 9.0, 0.4}));

    // Two millimetres out and one aside: the half-axis takes the two.
    const Eigen::Vector2d out(std::cos(0.4), std::sin(0.4)), aside(-std::sin(0.4), std::cos(0.4));
    const HeldEllipse longer = dragged(kTilted, EllipseHandle::Along, placeOf(kTilted, EllipseHandle::Along) + 2.0 * out + aside);
    EXPECT_NEAR(longer.alongMm, 14.0, kHandleRounding);
    EXPECT_EQ(longer.acrossMm, 9.0);
    EXPECT_EQ(longer.directionRad, 0.4);
    const HeldEllipse wider = dragged(kTilted, EllipseHandle::Across, placeOf(kTilted, EllipseHandle::Across) + 6.0 * aside + out);
    EXPECT_NEAR(wider.acrossMm, 15.0, kHandleRounding) << "past the other half-axis";

    const HeldEllipse turned = dragged(kTilted, EllipseHandle::Turn, kTilted.center + 20.0 * aside);
    EXPECT_NEAR(turned.directionRad, 0.4 + std::numbers::pi / 2.0, kHandleRounding);
    EXPECT_EQ(turned.alongMm, 12.0);
    EXPECT_EQ(dragged(kTilted, EllipseHandle::Turn, kTilted.center), kTilted) << "no direction";
}

TEST(HeldEllipse, KeepsALeastWidthWhenAnEndIsDraggedThroughTheCentre) {
    EXPECT_EQ(dragged(kTilted, EllipseHandle::Along, kTilted.center - Eigen::Vector2d(30, 0)).alongMm, kLeastHalfAxisMm);
}

TEST(HeldEllipse, ItsPointsDrawTheEllipse) {
    // pi a b, and Ramanujan's second perimeter formula (good to 1e-9 here).
    for (const HeldEllipse& e : {kTilted, HeldEllipse{{0, 0}, 14.0, 7.0, -1.0}}) {
        const auto line = SmoothLine::through(pointsOn(e, 24), SmoothLine::Ends::Closed).value();
        const double h = std::pow((e.alongMm - e.acrossMm) / (e.alongMm + e.acrossMm), 2);
        const double perimeter =
            std::numbers::pi * (e.alongMm + e.acrossMm) * (1.0 + 3.0 * h / (10.0 + std::sqrt(4.0 - 3.0 * h)));
        constexpr double kAsStated = 1e-4; // 0.01 %
        EXPECT_NEAR(line.signedArea() / (std::numbers::pi * e.alongMm * e.acrossMm), 1.0, kAsStated);
        EXPECT_NEAR(line.length() / perimeter, 1.0, kAsStated);
    }
}

TEST(HeldEllipse, IsFoundAgainFromItsPoints) {
    const auto found = ellipseOf(pointsOn(kTilted, 24)).value();
    EXPECT_LT((found.ellipse.center - kTilted.center).norm(), 1e-6);
    EXPECT_NEAR(found.ellipse.alongMm, 12.0, 1e-6);
    EXPECT_NEAR(found.ellipse.acrossMm, 9.0, 1e-6);
    EXPECT_NEAR(found.ellipse.directionRad, 0.4, 1e-6);
    EXPECT_LT(found.rmsDistanceMm, 1e-6);
    const std::vector<Eigen::Vector2d> three{{0, 0}, {1, 0}, {0, 1}};
    EXPECT_EQ(ellipseOf(three).error().code, ErrorCode::TooFewPoints);
}
