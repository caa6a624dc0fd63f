#include "sample-data/blur_kernel.h"
#include "sample-data/phantom.h"
#include "sample-data/random.h"
#include "sample-data/rasterise.h"

#include <gtest/gtest.h>

#include <numbers>

namespace gauge::sample_case {
namespace {

/// Voxels that are also summed directly; few under sanitizers, which slow that down tenfold.
#ifdef __SANITIZE_ADDRESS__
constexpr int kDirectSums = 8;
#else
constexpr int kDirectSums = 40;
#endif

/// A ball of blood in an even surrounding; the appendage is hidden in it.
Scene ballScene(double radius, const Eigen::Vector3d& centre, double bloodHu, double surroundingHu) {
    Scene scene;
    scene.atrium.centre = centre;
    scene.atrium.semiAxes = {radius, radius, radius};
    Tube hidden;
    hidden.curve = CentreCurve(centre, {0, 0, 1}, {1, 0, 0}, 0.0, {{3.0, 0.0, 0.0}});
    hidden.semiA = hidden.semiB = 1.0;
    scene.lobes = {hidden};
    scene.levels = {bloodHu, surroundingHu, surroundingHu, surroundingHu, surroundingHu};
    scene.veinHu = bloodHu;
    return scene;
}

std::shared_ptr<const core::Volume> scanned(const Scene& scene, const RasterGrid& grid,
                                            const RasterOptions& options) {
    auto volume = rasterise(scene, grid, options);
    EXPECT_TRUE(volume) << (volume ? "" : volume.error().message);
    return volume ? *volume : nullptr;
}

/// A ball of 4 m radius whose surface passes through the origin with normal `n`: flat to 1e-4 mm over the
/// grid.
Scene flatEdge(const Eigen::Vector3d& n) {
    constexpr double kRadiusMm = 4000.0;
    return ballScene(kRadiusMm, -kRadiusMm * n, 1000.0, 0.0);
}

struct EdgeCase {
    Eigen::Vector3d normal, spacing;
    double blur;
};

class FlatEdge : public testing::TestWithParam<EdgeCase> {};

TEST_P(FlatEdge, HasTheGaussiansWidthAndItsTruePlace) {
    const EdgeCase& given = GetParam();
    const Eigen::Vector3d n = given.normal.normalized();
    RasterOptions options;
    options.blurFwhmMm = given.blur;
    options.noiseSdHu = 0.0;
    const RasterGrid grid = RasterGrid::centredOn({{0.07, -0.11, 0.05}}, {9, 9, 9}, given.spacing);
    const auto volume = scanned(flatEdge(n), grid, options);
    ASSERT_TRUE(volume);
    // Fit place and width of a Gaussian edge to every voxel (Gauss-Newton).
    double place = 0.0, sigma = gaussianSigmaFromFwhm(given.blur);
    for (int step = 0; step < 8; ++step) {
        Eigen::Matrix2d normal = Eigen::Matrix2d::Zero();
        Eigen::Vector2d right = Eigen::Vector2d::Zero();
        for (int k = 0; k < volume->size().z(); ++k)
            for (int j = 0; j < volume->size().y(); ++j)
                for (int i = 0; i < volume->size().x(); ++i) {
                    const double d =
                        volume->patientFrom({{double(i), double(j), double(k)}}).mm.dot(n) - place;
                    const double z = d / sigma;
                    const double model = 500.0 * std::erfc(z / std::numbers::sqrt2);
                    const double density =
                        1000.0 * std::exp(-0.5 * z * z) / (sigma * std::sqrt(2.0 * std::numbers::pi));
                    const Eigen::Vector2d gradient(density, density * z);
                    normal += gradient * gradient.transpose();
                    right += gradient * (volume->at(i, j, k) - model);
                }
        const Eigen::Vector2d change = normal.ldlt().solve(right);
        place += change.x();
        sigma += change.y();
    }
    EXPECT_NEAR(place, 0.0, 0.005); // mm
    EXPECT_NEAR(sigma / gaussianSigmaFromFwhm(given.blur), 1.0, 0.02);
}

INSTANTIATE_TEST_SUITE_P(Directions, FlatEdge,
                         testing::Values(EdgeCase{{1, 0, 0}, {0.45, 0.45, 0.45}, 0.7},
                                         EdgeCase{{0, 1, 0}, {0.6, 0.6, 0.35}, 0.5},
                                         EdgeCase{{0, 0, 1}, {0.35, 0.35, 0.6}, 0.9},
                                         EdgeCase{{0.48, -0.6, 0.64}, {0.4, 0.4, 0.55}, 0.6},
                                         EdgeCase{{1, 1, 1}, {0.5, 0.5, 0.5}, 0.5}));

TEST(Rasterise, KeepsTheAmountOfContrast) {
    const double radius = 6.0;
    RasterOptions options;
    options.noiseSdHu = 0.0;
    const RasterGrid grid = RasterGrid::centredOn({{0.3, 0.1, -0.2}}, {18, 18, 18}, {0.45, 0.45, 0.5});
    const auto volume = scanned(ballScene(radius, {0.1, 0.2, 0.3}, 1000.0, 0.0), grid, options);
    ASSERT_TRUE(volume);
    double sum = 0.0;
    for (std::size_t i = 0; i < volume->voxelCount(); ++i)
        sum += volume->data()[i];
    const double found = sum / 1000.0 * grid.spacingMm.prod();
    EXPECT_NEAR(found / (4.0 / 3.0 * std::numbers::pi * std::pow(radius, 3)), 1.0, 0.001);
}

TEST(Rasterise, AgreesWithDirectSummationOfTheBlur) {
    PhantomOptions small;
    small.extentMm = {48.0, 40.0, 36.0};
    small.noiseSdHu = 0.0;
    small.obliqueGrid = true;
    for (const Shape shape : {Shape::NeighbourVein, Shape::MultiLobed}) {
        const Phantom phantom = makePhantom(shape, 2, small);
        const auto volume = phantom.rasterise();
        ASSERT_TRUE(volume);
        const double sigma = gaussianSigmaFromFwhm(phantom.imaging.blurFwhmMm);
        Random random(3);
        for (int trial = 0; trial < kDirectSums; ++trial) {
            // Places close to a boundary of the blood: where mistakes would show.
            Eigen::Vector3i at;
            double pool = 1e9;
            while (std::abs(pool) > 1.5) {
                at = {random.whole(0, volume->size().x() - 1), random.whole(0, volume->size().y() - 1),
                      random.whole(0, volume->size().z() - 1)};
                pool = phantom.scene.pool(phantom.scene.sceneFrom(volume->patientFrom({at.cast<double>()})));
            }
            const Eigen::Vector3d x = phantom.scene.sceneFrom(volume->patientFrom({at.cast<double>()}));
            double weights = 0.0, sum = 0.0;
            const double step = 0.35 * sigma;
            for (int a = -10; a <= 10; ++a)
                for (int b = -10; b <= 10; ++b)
                    for (int c = -10; c <= 10; ++c) {
                        const Eigen::Vector3d offset = step * Eigen::Vector3d(a, b, c);
                        const double weight = std::exp(-0.5 * offset.squaredNorm() / (sigma * sigma));
                        weights += weight;
                        sum += weight * phantom.scene.huAt(x + offset);
                    }
            // The sum's own grain on a step of 1200 HU (lung to blood) is about 8 HU; most edges are lower.
            EXPECT_NEAR(volume->at(at.x(), at.y(), at.z()), sum / weights, 15.0)
                << phantom.description() << " voxel " << at.transpose() << " pool " << pool;
        }
    }
}

TEST(Rasterise, AddsNoiseOfTheAskedSpread) {
    for (const double grain : {0.0, 0.9}) {
        RasterOptions options;
        options.noiseSdHu = 30.0;
        options.noiseGrainFwhmMm = grain;
        const RasterGrid grid = RasterGrid::centredOn({{0, 0, 0}}, {25, 25, 20}, {0.5, 0.5, 0.5});
        const auto volume = scanned(ballScene(500.0, {0, 0, 0}, 300.0, 0.0), grid, options);
        ASSERT_TRUE(volume);
        double sum = 0.0, squares = 0.0, neighbours = 0.0;
        const auto n = static_cast<double>(volume->voxelCount());
        for (std::size_t i = 0; i < volume->voxelCount(); ++i) {
            const double value = volume->data()[i] - 300.0;
            sum += value;
            squares += value * value;
            if (i > 0) neighbours += value * (volume->data()[i - 1] - 300.0);
        }
        // 100 000 voxels: white noise gives its SD to 0.2 %, grained noise with fewer free values to about 1
        // %.
        EXPECT_NEAR(std::sqrt(squares / n), 30.0, grain > 0.0 ? 1.0 : 0.3);
        EXPECT_NEAR(sum / n, 0.0, grain > 0.0 ? 1.5 : 0.5);
        const double correlation = neighbours / squares;
        if (grain > 0.0) {
            // White noise through a Gaussian of SD s: exp(-d^2 / (4 s^2)) at distance d.
            const double s = gaussianSigmaFromFwhm(grain);
            EXPECT_NEAR(correlation, std::exp(-0.25 / (4.0 * s * s)), 0.05);
        } else {
            EXPECT_NEAR(correlation, 0.0, 0.02);
        }
    }
}

TEST(Rasterise, RefusesGridsAndBlursThatCannotBe) {
    const Scene scene = ballScene(10.0, {0, 0, 0}, 300.0, 0.0);
    RasterGrid grid = RasterGrid::centredOn({{0, 0, 0}}, {5, 5, 5}, {0.5, 0.5, 0.5});
    RasterOptions narrow;
    narrow.blurFwhmMm = 0.2;
    const auto tooNarrow = rasterise(scene, grid, narrow);
    ASSERT_FALSE(tooNarrow);
    EXPECT_NE(tooNarrow.error().message.find("too narrow for voxels"), std::string::npos);
    grid.axes.col(0) *= 2.0;
    const auto skewed = rasterise(scene, grid);
    ASSERT_FALSE(skewed);
    EXPECT_NE(skewed.error().message.find("right angles"), std::string::npos);
    grid = RasterGrid::centredOn({{0, 0, 0}}, {5, 5, 5}, {0.5, 0.5, 0.5});
    grid.size.z() = 0;
    EXPECT_EQ(rasterise(scene, grid).error().code, core::ErrorCode::InvalidArgument);
    grid.size.z() = 4;
    grid.spacingMm.x() = -1.0;
    EXPECT_NE(rasterise(scene, grid).error().message.find("spacing must be above 0"), std::string::npos);
}

TEST(Rasterise, StopsWhenAsked) {
    std::stop_source source;
    source.request_stop();
    const auto stopped =
        rasterise(ballScene(10.0, {0, 0, 0}, 300.0, 0.0), RasterGrid{}, {}, {source.get_token(), {}});
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().code, core::ErrorCode::Cancelled);
}

} // namespace
} // namespace gauge::sample_case
