#include "core/volume/volume.h"

#include <gtest/gtest.h>
#include <limits>
#include <numeric>

using namespace gauge::core;

namespace {

std::vector<std::int16_t> counting(std::size_t n) {
    std::vector<std::int16_t> out(n);
    std::iota(out.begin(), out.end(), std::int16_t{0});
    return out;
}

Eigen::Affine3d affine(const Eigen::Matrix3d& linear, const Eigen::Vector3d& origin) {
    Eigen::Affine3d out = Eigen::Affine3d::Identity();
    out.linear() = linear;
    out.translation() = origin;
    return out;
}

Result<std::shared_ptr<const Volume>> make(const Eigen::Vector3i& size, std::size_t voxels,
                                           const Eigen::Affine3d& placement = Eigen::Affine3d::Identity()) {
    return Volume::make(size, counting(voxels), placement, VoxelQuantity::HounsfieldUnits, "1.2.3");
}

void expectFailure(const Result<std::shared_ptr<const Volume>>& result, ErrorCode code, const std::string& message) {
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error().code, code);
    EXPECT_EQ(result.error().message, message);
}

} // namespace

TEST(Volume, KeepsItsVoxelsRowByRowSliceBySlice) {
    const auto volume = make({4, 3, 2}, 24).value();
    EXPECT_EQ(volume->at(1, 0, 0), 1);
    EXPECT_EQ(volume->at(0, 1, 0), 4);
    EXPECT_EQ(volume->at(0, 0, 1), 12);
    EXPECT_EQ(volume->at(3, 2, 1), 23);
    EXPECT_EQ(volume->voxelCount(), 24u);
    EXPECT_EQ(volume->frameOfReferenceUid(), "1.2.3");
}

TEST(Volume, PlacesVoxelCentresByItsAffine) {
    const auto volume =
        make({4, 3, 2}, 24, affine(Eigen::Vector3d(0.5, 0.4, 2.0).asDiagonal(), {10, -20, 30})).value();
    EXPECT_TRUE(volume->patientFrom(VoxelCoord{{2, 1, 1}}).mm.isApprox(Eigen::Vector3d(11, -19.6, 32)));
    EXPECT_TRUE(volume->voxelFrom({{11, -19.6, 32}}).ijk.isApprox(Eigen::Vector3d(2, 1, 1)));
    EXPECT_TRUE(volume->edgesMm().isApprox(Eigen::Vector3d(0.5, 0.4, 2.0)));
}

// A gantry tilt of 30 degrees: slices 2 mm apart along z, each shifted along y by 2 tan 30.
TEST(Volume, KeepsTheShearOfATiltedStack) {
    const double shift = 2.0 * std::tan(30.0 * M_PI / 180.0);
    Eigen::Matrix3d linear = Eigen::Vector3d(0.5, 0.5, 2.0).asDiagonal();
    linear(1, 2) = shift;
    const auto volume = make({4, 3, 2}, 24, affine(linear, {0, 0, 0})).value();
    EXPECT_TRUE(volume->patientFrom(VoxelCoord{{0, 0, 1}}).mm.isApprox(Eigen::Vector3d(0, shift, 2)));
    EXPECT_NEAR(volume->edgesMm().z(), 2.0 / std::cos(30.0 * M_PI / 180.0), 1e-12) << "the slanted edge";
    EXPECT_TRUE(volume->contains({{0, shift, 2}}));
    EXPECT_FALSE(volume->contains({{0, 0, 2}})) << "where the untilted stack would be";
}

TEST(Volume, ContainsTheBlockOfVoxelCentresOnly) {
    const auto volume = make({4, 3, 2}, 24).value();
    EXPECT_TRUE(volume->contains({{0, 0, 0}}));
    EXPECT_TRUE(volume->contains({{3, 2, 1}}));
    EXPECT_FALSE(volume->contains({{3.01, 2, 1}}));
    EXPECT_FALSE(volume->contains({{0, -0.01, 0}}));
}

TEST(Volume, NamesWhatIsWrong) {
    expectFailure(make({4, 3, 2}, 23), ErrorCode::InvalidArgument,
                  "Cannot make a volume: 23 voxels were given where the size needs 24.");
    expectFailure(make({4, 0, 2}, 0), ErrorCode::InvalidArgument,
                  "Cannot make a volume: each of its sizes must be at least 1.");
    Eigen::Matrix3d flat = Eigen::Matrix3d::Identity();
    flat(2, 2) = 0.0;
    expectFailure(make({4, 3, 2}, 24, affine(flat, {0, 0, 0})), ErrorCode::Degenerate,
                  "Cannot make a volume: its axes do not span space.");
    expectFailure(
        make({4, 3, 2}, 24, affine(Eigen::Matrix3d::Identity(), {0, std::numeric_limits<double>::infinity(), 0})),
        ErrorCode::NonFinite, "Cannot make a volume: its placement in the patient is not finite.");
}
