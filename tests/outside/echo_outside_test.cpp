// The ellipse through echo widths and the pose of the probe against SciPy's optimiser on other formulations.
#include "core/echo/probe_pose.h"
#include "core/echo/width_ellipse.h"

#include "tests/core/echo/simulated_widths.h"
#include "tests/outside/python_reference.h"

#include <Eigen/Geometry>
#include <gtest/gtest.h>

using namespace gauge::core;
using namespace gauge::test;

namespace {

// A sum of squares is flat to rounding within about 1e-7 of the size.
constexpr double kOptimumMm = 1e-5;

} // namespace

TEST(EchoOutside, EllipseEqualsScipysLeastSquares) {
    std::mt19937_64 random(21);
    for (const auto& angles : {std::vector<double>{0, 45, 90, 135}, {0, 20, 60, 100, 140}, {5, 30, 65, 90, 120, 170}})
        for (const auto& [longest, shortest] : {std::pair{24.0, 18.0}, {20.5, 20.0}, {30.0, 14.0}}) {
            auto widths = angled(readingsOf(longest, shortest, 40, angles, &random, 0.7), 0.7);
            for (std::size_t i = 0; i < widths.size(); ++i)
                widths[i].standardUncertaintyMm = 0.4 + 0.2 * static_cast<double>(i);
            const auto fit = fitWidthEllipse(widths);
            ASSERT_TRUE(fit);
            std::vector<double> t, w, u;
            for (const auto& one : widths) {
                t.push_back(one.angleRad);
                w.push_back(one.widthMm);
                u.push_back(one.standardUncertaintyMm);
            }
            const auto other = askPython("ellipse_from_widths", {{"angles", t}, {"widths", w}, {"sigmas", u}});
            EXPECT_NEAR(fit->chiSquared, other["squares"].get<double>(), 1e-9);
            EXPECT_NEAR(fit->ellipse.longestMm(), other["longest"].get<double>(), kOptimumMm);
            EXPECT_NEAR(fit->ellipse.shortestMm(), other["shortest"].get<double>(), kOptimumMm);
        }
}

TEST(EchoOutside, ProbePoseEqualsScipysLeastSquares) {
    std::mt19937_64 random(22);
    std::normal_distribution<double> normal;
    for (int run = 0; run < 3; ++run) {
        Eigen::Isometry3d truth = Eigen::Isometry3d::Identity();
        truth.linear() = Eigen::Quaterniond(normal(random), normal(random), normal(random), normal(random)).normalized().toRotationMatrix();
        truth.translation() = Eigen::Vector3d(10, 50, -20);
        std::vector<SharedLandmark> landmarks;
        nlohmann::json echo = nlohmann::json::array(), angles = echo, view = echo, ct = echo;
        for (int i = 0; i < 8; ++i) {
            const double angle = 45.0 * (i % 4);
            const Eigen::Vector2d seen(20 * normal(random), 45 + 8 * normal(random));
            const Eigen::Vector3d e(seen.x() * std::cos(angle * kRad), seen.x() * std::sin(angle * kRad), seen.y());
            const Eigen::Vector3d p = truth * e + 1.5 * Eigen::Vector3d(normal(random), normal(random), normal(random));
            landmarks.push_back({"point", angle, seen, {p}});
            echo.push_back({seen.x(), seen.y()});
            angles.push_back(angle * kRad);
            view.push_back(i % 4);
            ct.push_back({p.x(), p.y(), p.z()});
        }
        const auto pose = fitProbePose(landmarks);
        ASSERT_TRUE(pose) << pose.error().message;
        const PoseUncertainties u;
        const auto other = askPython("probe_pose", {{"echo", echo}, {"angles", angles}, {"view", view}, {"ct", ct},
                                                    {"in_plane", std::hypot(u.echoMm, u.ctMm)},
                                                    {"across", std::hypot(u.elevationMm, u.ctMm)},
                                                    {"angle_sigma", u.angleDeg * kRad}});
        EXPECT_NEAR(pose->chiSquared, other["squares"].get<double>(), 1e-8);
        for (int i = 0; i < 3; ++i)
            for (int j = 0; j < 4; ++j)
                EXPECT_NEAR(pose->patientFromEcho.matrix()(i, j), other["pose"][i][j].get<double>(), j == 3 ? 1e-4 : 1e-6);
    }
}
