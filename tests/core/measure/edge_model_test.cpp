#include "core/measure/edge_model.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace gauge::core;

namespace {

/// The model of edge_profile.h, in closed form.
Eigen::VectorXd profile(double blood, double wall, double beyond, double edge, double thickness, double sigma) {
    const auto f = [&](double z) { return 0.5 * std::erfc(-z / std::sqrt(2.0)); };
    Eigen::VectorXd v(kProfileCount);
    for (int c = 0; c < kProfileCount; ++c) {
        const double t = profileTime(c);
        v(c) = blood - (blood - wall) * f((t - edge) / sigma) + (beyond - wall) * f((t - edge - thickness) / sigma);
    }
    return v;
}

} // namespace

TEST(EdgeModel, FindsTheWallBehindWhichThereIsLung) {
    const EdgeModel model(0.4);
    for (const double thickness : {1.2, 1.7, 2.0}) {
        // The prior is 20 HU off; a wall read off its plateau would be up to 150 HU off here.
        const EdgeFit fit = model.fit(profile(380, 100, -850, 0.1, thickness, 0.4), 380, 80, 30, 5);
        EXPECT_NEAR(fit.wallHu, 100.0, 8.0) << thickness; // 8 HU move the border by 0.015 mm
        EXPECT_NEAR(fit.edgeMm, 0.1, 0.051);              // half a step of the grid
        EXPECT_NEAR(fit.thicknessMm, thickness, 0.21);
    }
}

TEST(EdgeModel, FindsTheWallBesideAnotherLumen) {
    const EdgeFit fit = EdgeModel(0.4).fit(profile(380, 90, 360, 0.0, 1.2, 0.4), 380, 80, 30, 5);
    EXPECT_NEAR(fit.wallHu, 90.0, 8.0);
}

TEST(EdgeModel, SeesNoEndOfAThickWall) {
    const EdgeFit fit = EdgeModel(0.4).fit(profile(380, 95, 95, 0.2, 9.0, 0.4), 380, 80, 30, 5);
    EXPECT_NEAR(fit.wallHu, 95.0, 2.0);
    EXPECT_NEAR(fit.edgeMm, 0.2, 0.051);
}

TEST(EdgeModel, MisfitIsLeastAtTheTrueBlur) {
    const auto v = profile(380, 90, -90, 0.0, 2.0, 0.45);
    const auto misfit = [&](double sigma) { return EdgeModel(sigma).fit(v, 380, 80, 30, 5).misfitHu; };
    EXPECT_LT(misfit(0.45), misfit(0.35));
    EXPECT_LT(misfit(0.45), misfit(0.55));
}
