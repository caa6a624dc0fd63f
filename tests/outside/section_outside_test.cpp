// The contour of a measured section against scikit-image's contour of the same picture.
#include "core/geometry/ellipse.h"
#include "core/geometry/planar_contour.h"
#include "core/measure/marching_squares.h"
#include "core/measure/section_measure.h"
#include "core/volume/section_image.h"

#include "tests/outside/python_reference.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <random>

using namespace gauge::core;
using namespace gauge::test;

namespace {

constexpr double kBloodHu = 400, kWallHu = 60, kBlurMm = 0.4, kVoxelMm = 0.4, kPixelMm = 0.2;

/// A tube along z through a thick wall; its section at z = 0 is `ellipse`, whose border is blurred normally.
std::shared_ptr<const Volume> tube(const Ellipse& ellipse, double noiseHu, unsigned seed) {
    const Eigen::Vector3i size(90, 90, 41);
    Eigen::Affine3d placement = Eigen::Affine3d::Identity();
    placement.linear() *= kVoxelMm;
    placement.translation() = -0.5 * kVoxelMm * (size.cast<double>() - Eigen::Vector3d::Ones());
    std::mt19937 random(seed);
    std::normal_distribution<double> noise(0.0, 1.0);
    std::vector<std::int16_t> voxels;
    for (int k = 0; k < size.z(); ++k)
        for (int j = 0; j < size.y(); ++j)
            for (int i = 0; i < size.x(); ++i) {
                const Eigen::Vector3d p = placement * Eigen::Vector3d(i, j, k);
                const Eigen::Vector2d foot = nearestPoint(ellipse, p.head<2>());
                const bool inside = (p.head<2>() - ellipse.center).norm() < (foot - ellipse.center).norm();
                const double outwards = (p.head<2>() - foot).norm() * (inside ? -1.0 : 1.0);
                const double share = 0.5 * std::erfc(outwards / (std::sqrt(2.0) * kBlurMm));
                voxels.push_back(static_cast<std::int16_t>(
                    std::lround(kWallHu + (kBloodHu - kWallHu) * share + noiseHu * noise(random))));
            }
    return Volume::make(size, voxels, placement, VoxelQuantity::HounsfieldUnits, "").value();
}

SectionGrid gridAbout(const SectionFrame& frame) {
    return {frame, 161, 161, kPixelMm};
}

std::vector<std::vector<double>> rowsOf(const SectionImage& image) {
    std::vector<std::vector<double>> rows(static_cast<std::size_t>(image.grid.rows));
    for (int r = 0; r < image.grid.rows; ++r)
        for (int c = 0; c < image.grid.columns; ++c)
            rows[static_cast<std::size_t>(r)].push_back(image.at(c, r));
    return rows;
}

nlohmann::json contourByScikitImage(const SectionImage& image) {
    return askPython("contour_of_level",
                     {{"image", rowsOf(image)}, {"level", 0.5 * (kBloodHu + kWallHu)}, {"point", {80.0, 80.0}}});
}

Result<Section> measured(const Volume& volume, const SectionFrame& frame) {
    SectionGuide guide;
    guide.bloodHu = kBloodHu;
    guide.wallHu = kWallHu;
    guide.edgeSigmaMm = std::hypot(kBlurMm, 0.4 * kVoxelMm);
    return measureSection(volume, frame, guide, {.placement = std::nullopt, .edgeUncertainty = false});
}

const Ellipse kNeck{{0.3, -0.2}, 10.5, 7.0, 0.6};

// Planes across the tube: straight, and tilted by 25 degrees.
const Plane kPlanes[] = {{{{0, 0, 0}}, {{0, 0, 1}}}, {{{0, 0, 0.3}}, {{0.3, 0.296, 0.906}}}};

} // namespace

TEST(SectionOutside, IsoContourEqualsScikitImagesPointForPoint) {
    const auto volume = tube(kNeck, 0.0, 1);
    const SectionImage image = cutSection(*volume, gridAbout(frameOf(kPlanes[1])));
    const auto contours = isoContours(image.values, 161, 161, static_cast<float>(0.5 * (kBloodHu + kWallHu)));
    ASSERT_EQ(contours.size(), 1u);
    const auto other = contourByScikitImage(image);
    EXPECT_EQ(contours[0].size(), other["points"].size());
    EXPECT_NEAR(perimeterMm(contours[0]), other["length"].get<double>(), 1e-3);
    EXPECT_NEAR(std::abs(signedAreaMm2(contours[0])), other["area"].get<double>(), 1e-2);
}

TEST(SectionOutside, LengthAndAreaEqualThoseOfScikitImagesHalfValueContour) {
    const auto volume = tube(kNeck, 0.0, 1);
    for (const Plane& plane : kPlanes) {
        const SectionFrame frame = frameOf(plane);
        const auto section = measured(*volume, frame);
        ASSERT_TRUE(section) << section.error().message;
        const auto other = contourByScikitImage(cutSection(*volume, gridAbout(frame)));
        const double area = other["area"].get<double>() * kPixelMm * kPixelMm;
        const double length = other["length"].get<double>() * kPixelMm;
        // Two ways to the half value on voxels of 0.4 mm: within 0.02 mm of each other on a radius of 8.5 mm.
        EXPECT_NEAR(section->metrics.areaMm2.value / area, 1.0, 0.005);
        EXPECT_NEAR(section->metrics.perimeterMm.value / length, 1.0, 0.005);
    }
}

// With noise the plain contour grows longer; the measured perimeter must not.
TEST(SectionOutside, PerimeterDoesNotGrowWithNoiseWhereThePlainContourDoes) {
    const auto clean = tube(kNeck, 0.0, 1), noisy = tube(kNeck, 40.0, 2);
    const SectionFrame frame = frameOf(kPlanes[0]);
    const double truth = perimeterMm(kNeck);
    const double plain =
        contourByScikitImage(cutSection(*noisy, gridAbout(frame)))["length"].get<double>() * kPixelMm;
    const auto section = measured(*noisy, frame);
    ASSERT_TRUE(section) << section.error().message;
    EXPECT_GT(plain, 1.01 * truth);
    EXPECT_NEAR(section->metrics.perimeterMm.value, truth, 0.005 * truth);
    EXPECT_NEAR(section->metrics.areaMm2.value, areaMm2(kNeck), 0.01 * areaMm2(kNeck));
    EXPECT_NEAR(section->metrics.longestDiameterMm.value, 21.0, 0.2);
    EXPECT_NEAR(section->metrics.shortestDiameterMm.value, 14.0, 0.2);
}
