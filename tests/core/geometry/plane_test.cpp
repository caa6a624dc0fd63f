#include "core/geometry/plane.h"

#include "tests/core/geometry/shape_zoo.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

using namespace gauge::core;
using gauge::test::reals;

TEST(Plane, DistanceIsPositiveTowardsTheNormal) {
    const Plane plane{{{1, 2, 3}}, {{0, 0, 1}}};
    EXPECT_DOUBLE_EQ(signedDistanceMm(plane, {{9, 9, 7}}), 4.0);
    EXPECT_DOUBLE_EQ(signedDistanceMm(plane, {{9, 9, 1}}), -2.0);
}

TEST(FrameOf, AxialPlaneHasThePatientsAxes) {
    const SectionFrame frame = frameOf(Plane{{{1, 2, 3}}, {{0, 0, 2}}}); // normal need not be unit
    EXPECT_TRUE(frame.u.mm.isApprox(Eigen::Vector3d::UnitX()));
    EXPECT_TRUE(frame.v.mm.isApprox(Eigen::Vector3d::UnitY()));
    EXPECT_TRUE(frame.normal.mm.isApprox(Eigen::Vector3d::UnitZ()));
    EXPECT_TRUE(frame.patientFromSection({10, 20}).mm.isApprox(Eigen::Vector3d(11, 22, 3)));
}

TEST(FrameOf, SagittalPlaneTakesPosteriorForU) {
    EXPECT_TRUE(frameOf(Plane{{}, {{1, 0, 0}}}).u.mm.isApprox(Eigen::Vector3d::UnitY()));
}

RC_GTEST_PROP(FrameOf, IsRightHandedOrthonormalAndInvertible, ()) {
    const Eigen::Vector3d n(*reals(-1, 1), *reals(-1, 1), *reals(-1, 1));
    RC_PRE(n.norm() > 0.01);
    const SectionFrame frame = frameOf(Plane{{{5, -6, 7}}, {n}});
    Eigen::Matrix3d axes;
    axes << frame.u.mm, frame.v.mm, frame.normal.mm;
    RC_ASSERT((axes.transpose() * axes - Eigen::Matrix3d::Identity()).norm() < 1e-12);
    RC_ASSERT(std::abs(axes.determinant() - 1.0) < 1e-12);
    RC_ASSERT(frame.normal.mm.dot(n) > 0.0);
    const Eigen::Vector2d ab(*reals(-50, 50), *reals(-50, 50));
    const PatientPoint p = frame.patientFromSection(ab);
    RC_ASSERT(std::abs(signedDistanceMm(frame.plane(), p)) < 1e-9);
    RC_ASSERT((frame.sectionFromPatient(p) - ab).norm() < 1e-9);
}

RC_GTEST_PROP(FrameOf, FollowsItsHint, ()) {
    const Eigen::Vector3d n(*reals(-1, 1), *reals(-1, 1), *reals(-1, 1));
    const Eigen::Vector3d hint(*reals(-1, 1), *reals(-1, 1), *reals(-1, 1));
    RC_PRE(n.cross(hint).norm() > 0.01);
    const SectionFrame frame = frameOf(Plane{{}, {n}}, {hint});
    RC_ASSERT(frame.u.mm.dot(hint) > 0.0);
    RC_ASSERT(std::abs(frame.v.mm.dot(hint)) < 1e-12);
}
