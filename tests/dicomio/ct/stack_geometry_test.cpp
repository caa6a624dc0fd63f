#include "dicomio/ct/stack_geometry.h"

#include "tests/dicomio/support/result_of.h"

#include <cmath>
#include <gmock/gmock.h>
#include <limits>
#include <numbers>
#include <random>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using core::ErrorCode;
using testing::HasSubstr;

namespace {

constexpr double kExactMm = 1e-9; // arithmetic on a few hundred millimetres in double

std::vector<SliceFacts> stack(const std::vector<double>& places) {
    std::vector<SliceFacts> slices;
    for (std::size_t k = 0; k < places.size(); ++k) {
        SliceFacts slice;
        slice.file = "slice" + std::to_string(k) + ".dcm";
        slice.rows = 300;
        slice.columns = 400;
        slice.position = {-100.0, -120.0, places[k]};
        slice.alongRowMm = 0.4;
        slice.alongColumnMm = 0.5;
        slices.push_back(slice);
    }
    return slices;
}

std::vector<std::string> codes(const StackGeometry& geometry) {
    std::vector<std::string> all;
    for (const auto& notice : geometry.notices)
        all.push_back(notice.code);
    return all;
}

core::Error refusal(const std::vector<SliceFacts>& slices) {
    return errorOf(proveStack(slices));
}

} // namespace

TEST(ProveStack, SortsByPositionWhateverTheOrder) {
    auto slices = stack({3, 0, 2, 1});
    const auto geometry = valueOf(proveStack(slices));
    EXPECT_EQ(geometry.order, (std::vector<std::size_t>{1, 3, 2, 0}));
    EXPECT_EQ(geometry.size, Eigen::Vector3i(400, 300, 4));
    EXPECT_TRUE(geometry.notices.empty());
}

TEST(ProveStack, PlacesVoxelsByTheStandardsEquation) {
    // PS3.3 equation C.7.6.2.1-1: P = S + X * (column spacing) * i + Y * (row spacing) * j, for each slice of
    // its own.
    const Eigen::Vector3d x = Eigen::Vector3d(2, 1, 0.5).normalized();
    const Eigen::Vector3d y = x.cross(Eigen::Vector3d(0, 0, 1)).normalized() * -1.0;
    auto slices = stack({0, 0, 0, 0, 0});
    for (std::size_t k = 0; k < slices.size(); ++k) {
        slices[k].rowDirection = x;
        slices[k].columnDirection = y;
        slices[k].position = Eigen::Vector3d(7, -3, 11) + 0.6 * static_cast<double>(k) * x.cross(y);
    }
    const auto geometry = valueOf(proveStack(slices));
    for (std::size_t k = 0; k < slices.size(); ++k) {
        const Eigen::Vector3d expected = slices[k].position + x * 0.4 * 123 + y * 0.5 * 45;
        const Eigen::Vector3d found =
            geometry.patientFromVoxel * Eigen::Vector3d(123, 45, static_cast<double>(k));
        EXPECT_LT((found - expected).norm(), kExactMm);
    }
    EXPECT_LT((geometry.spacingMm - Eigen::Vector3d(0.4, 0.5, 0.6)).norm(), kExactMm);
}

TEST(ProveStack, KeepsATiltExactly) {
    // Slices tilted by 20 degrees about the row axis, the table moving along z by 1 mm.
    const double tilt = 20.0 * std::numbers::pi / 180.0;
    auto slices = stack({0, 1, 2, 3});
    for (auto& slice : slices) {
        slice.columnDirection = {0, std::cos(tilt), std::sin(tilt)};
        slice.tiltTagDeg = -20.0;
    }
    const auto geometry = valueOf(proveStack(slices));
    EXPECT_NEAR(geometry.tiltDeg, 20.0, 1e-6); // acos loses half the digits near 1
    EXPECT_NEAR(geometry.spacingMm.z(), std::cos(tilt), kExactMm);
    EXPECT_LT((geometry.patientFromVoxel.linear().col(2) - Eigen::Vector3d(0, 0, 1)).norm(), kExactMm);
    EXPECT_THAT(codes(geometry), testing::ElementsAre("tilted"));
}

TEST(ProveStack, RefusesAMissingSliceByNameAndPlace) {
    const auto error = refusal(stack({0, 1, 2, 4, 5}));
    EXPECT_EQ(error.code, ErrorCode::SliceMissing);
    EXPECT_THAT(error.message, HasSubstr("(0020,0032) ImagePositionPatient"));
    EXPECT_THAT(error.message, HasSubstr("between slice2.dcm and slice3.dcm is 2.000 mm where others are "
                                         "1.000 mm: 1 slice(s) are missing"));
    EXPECT_THAT(refusal(stack({0, 1, 4})).message, HasSubstr("2 slice(s) are missing there"));
}

TEST(ProveStack, RefusesARepeatedPlaceByBothFiles) {
    const auto error = refusal(stack({0, 1, 1, 2}));
    EXPECT_EQ(error.code, ErrorCode::SliceDuplicate);
    EXPECT_THAT(
        error.message,
        HasSubstr("of slice1.dcm and of slice2.dcm is at the same place along the slice normal (1.000 mm)"));
}

TEST(ProveStack, EvensOutMildlyUnevenSpacingAndSaysSo) {
    const auto geometry = valueOf(proveStack(stack({0, 0.6, 1.3, 1.9, 2.6})));
    EXPECT_THAT(codes(geometry), testing::ElementsAre("spacing-evened"));
    EXPECT_THAT(geometry.notices[0].text, HasSubstr("0.600 mm to 0.700 mm apart"));
    ASSERT_EQ(geometry.resampleAt.size(), static_cast<std::size_t>(geometry.size.z()));
    EXPECT_DOUBLE_EQ(geometry.resampleAt.front(), 0.0);
    EXPECT_DOUBLE_EQ(geometry.resampleAt.back(), 4.0);
    EXPECT_LE(geometry.spacingMm.z(), 0.6 + kExactMm);
    const Eigen::Vector3d last = geometry.patientFromVoxel * Eigen::Vector3d(0, 0, geometry.size.z() - 1);
    EXPECT_NEAR(last.z(), 2.6, kExactMm);
}

TEST(ProveStack, RefusesWildlyUnevenSpacing) {
    const auto error = refusal(stack({0, 1, 2, 3.7, 4.7}));
    EXPECT_EQ(error.code, ErrorCode::SpacingUneven);
    EXPECT_THAT(
        error.message,
        HasSubstr("the slices are 1.000 mm to 1.700 mm apart, most between slice2.dcm and slice3.dcm"));
    EXPECT_EQ(refusal(stack({0, 1, 1.3, 2.3, 3.3})).code, ErrorCode::SpacingUneven);
}

TEST(ProveStack, SeesMissingSlicesEvenWhereTheyAreTheMost) {
    const auto error = refusal(stack({0, 1, 3, 5}));
    EXPECT_EQ(error.code, ErrorCode::SliceMissing);
    EXPECT_THAT(error.message,
                HasSubstr("is 2.000 mm where others are 1.000 mm: 1 slice(s) are missing there"));
}

TEST(ProveStack, AcceptsRoundedPositionsAsEven) {
    const auto geometry = valueOf(proveStack(stack({0, 0.63, 1.25, 1.88, 2.5}))); // 0.625 rounded to 0.01 mm
    EXPECT_TRUE(geometry.resampleAt.empty());
    EXPECT_NEAR(geometry.spacingMm.z(), 0.625, kExactMm);
}

TEST(ProveStack, RefusesMixedSizes) {
    auto slices = stack({0, 1, 2});
    slices[2].rows = 256;
    const auto error = refusal(slices);
    EXPECT_EQ(error.code, ErrorCode::SizesMixed);
    EXPECT_THAT(
        error.message,
        HasSubstr(
            "(0028,0010) Rows x (0028,0011) Columns is 300 x 400 in slice0.dcm but 256 x 400 in slice2.dcm"));
    slices = stack({0, 1, 2});
    slices[1].alongRowMm = 0.41;
    EXPECT_THAT(refusal(slices).message, HasSubstr("(0028,0030) PixelSpacing is 0.500 mm x 0.400 mm in "
                                                   "slice0.dcm but 0.500 mm x 0.410 mm in slice1.dcm"));
}

TEST(ProveStack, RefusesMixedOrientations) {
    auto slices = stack({0, 1, 2});
    slices[1].rowDirection = {0, 1, 0};
    slices[1].columnDirection = {0, 0, -1};
    const auto error = refusal(slices);
    EXPECT_EQ(error.code, ErrorCode::OrientationsMixed);
    EXPECT_THAT(error.message, HasSubstr("(0020,0037) ImageOrientationPatient is (1, 0, 0), (0, 1, 0) in "
                                         "slice0.dcm but (0, 1, 0), (0, 0, -1) in slice1.dcm"));
}

TEST(ProveStack, RefusesDirectionsThatAreNoUnitVectorsOrNotAtRightAngles) {
    auto slices = stack({0, 1});
    slices[0].rowDirection = {1.01, 0, 0};
    EXPECT_THAT(
        refusal(slices).message,
        HasSubstr("(0020,0037) ImageOrientationPatient of slice0.dcm has direction cosines of length 1.01"));
    slices = stack({0, 1});
    slices[1].columnDirection = Eigen::Vector3d(0.01, 1, 0).normalized();
    const auto error = refusal(slices);
    EXPECT_EQ(error.code, ErrorCode::GeometryContradictory);
    EXPECT_THAT(error.message,
                HasSubstr("of slice1.dcm has a row and a column direction that are not at right angles"));
}

TEST(ProveStack, RefusesSpacingThatIsZeroNegativeOrNotANumber) {
    for (const double bad :
         {0.0, -0.5, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
        auto slices = stack({0, 1});
        slices[1].alongColumnMm = bad;
        const auto error = refusal(slices);
        EXPECT_EQ(error.code, ErrorCode::SpacingInvalid);
        EXPECT_THAT(error.message,
                    HasSubstr("(0028,0030) PixelSpacing of slice1.dcm is not two finite numbers above zero"));
    }
}

TEST(ProveStack, RefusesAPositionThatIsNotANumber) {
    auto slices = stack({0, 1});
    slices[0].position.x() = std::numeric_limits<double>::quiet_NaN();
    EXPECT_EQ(refusal(slices).code, ErrorCode::AttributeInvalid);
}

TEST(ProveStack, RefusesASliceBesideTheLineOfTheOthers) {
    auto slices = stack({0, 1, 2, 3});
    slices[2].position.x() += 0.5;
    const auto error = refusal(slices);
    EXPECT_EQ(error.code, ErrorCode::GeometryContradictory);
    EXPECT_THAT(error.message, HasSubstr("of slice2.dcm is 0.500 mm beside the line"));
}

TEST(ProveStack, RefusesAShearThatNoGantryMakes) {
    auto slices = stack({0, 1, 2});
    for (std::size_t k = 0; k < 3; ++k)
        slices[k].position.y() += 1.5 * static_cast<double>(k);
    EXPECT_THAT(refusal(slices).message, HasSubstr("more than any scanner tilts"));
}

TEST(ProveStack, RefusesASingleSliceAndNone) {
    EXPECT_THAT(refusal(stack({0})).message, HasSubstr("slice0.dcm is the only slice"));
    EXPECT_EQ(refusal({}).code, ErrorCode::SliceMissing);
}

TEST(ProveStack, NeverTrustsTheTagsOverThePositions) {
    auto slices = stack({0, 1, 2});
    for (auto& slice : slices) {
        slice.spacingTagMm = 3.0;
        slice.tiltTagDeg = 12.0;
        slice.thicknessMm = 0.5;
    }
    const auto geometry = valueOf(proveStack(slices));
    EXPECT_DOUBLE_EQ(geometry.spacingMm.z(), 1.0);
    EXPECT_THAT(codes(geometry),
                testing::UnorderedElementsAre("spacing-tag-disagrees", "tilt-tag-disagrees", "slices-apart"));
    EXPECT_THAT(geometry.notices[0].text,
                HasSubstr("(0018,0088) SpacingBetweenSlices says 3.000 mm, the positions say 1.000 mm"));
}

TEST(ProveStack, IsUnchangedByTheOrderOfItsInput) {
    auto slices = stack({0, 0.6, 1.3, 1.9, 2.6, 3.2});
    const auto expected = valueOf(proveStack(slices));
    std::mt19937 random(7);
    for (int round = 0; round < 20; ++round) {
        std::shuffle(slices.begin(), slices.end(), random);
        const auto found = valueOf(proveStack(slices));
        EXPECT_TRUE(found.patientFromVoxel.isApprox(expected.patientFromVoxel, 1e-15));
        EXPECT_EQ(found.resampleAt, expected.resampleAt);
    }
}
