// Simulated radiographs of bodies whose line integrals have closed forms, and of beads at known places.
#include "core/volume/radiograph.h"

#include "core/fluoro/c_arm.h"
#include "tests/core/volume/convex_bodies.h"

#include <gtest/gtest.h>
#include <numbers>

using namespace gauge::core;
using namespace gauge::test;

namespace {

// What is asked of the pictures: 1 % of the line integral.
constexpr double kRelativeTolerance = 0.01;
// Whole pictures: edges that a voxel blurs move attenuation to a neighbouring pixel, not away.
constexpr double kSumTolerance = 0.003;
// What is asked of projected places, in the plane of the isocentre.
constexpr double kPlaceToleranceMm = 0.2;
constexpr double kInsideHu = 400.0;

const Eigen::Vector3d kMiddle(-31.0, 52.0, 1180.0);
// Voxels and bodies as large as those of a gated CT and its atrium: what a grid can tell of a body depends on their ratio.
const Eigen::Vector3i kSize(180, 176, 150);

struct Grid {
    std::string name;
    Eigen::Affine3d placement;
};
std::vector<Grid> grids(const Eigen::Vector3i& size = kSize) {
    return {{"upright", gridAbout(kMiddle, size, {0.4, 0.4, 0.5}, Eigen::AngleAxisd(0.0, Eigen::Vector3d::UnitX()), 0.0)},
            {"turned", gridAbout(kMiddle, size, {0.4, 0.42, 0.55},
                                 Eigen::AngleAxisd(0.6, Eigen::Vector3d(1, -1, 2).normalized()), 0.0)},
            {"sheared", gridAbout(kMiddle, size, {0.4, 0.4, 0.5}, Eigen::AngleAxisd(0.2, Eigen::Vector3d::UnitZ()), 0.2)}};
}

std::vector<std::pair<std::string, ConvexBody>> bodies() {
    const Eigen::Matrix3d turned = Eigen::AngleAxisd(0.7, Eigen::Vector3d(2, 1, -1).normalized()).toRotationMatrix();
    const Eigen::Vector3d off = kMiddle + Eigen::Vector3d(3.1, -2.3, 1.7);
    using Kind = ConvexBody::Kind;
    return {{"ball", {Kind::Ball, off, Eigen::Matrix3d::Identity(), Eigen::Vector3d::Constant(26.0)}},
            {"cylinder", {Kind::Cylinder, off, turned, {16.0, 16.0, 22.0}}},
            {"box", {Kind::Box, off, turned, {17.0, 15.0, 19.0}}}};
}

PinholeCamera cameraAt(double primaryDeg, double secondaryDeg, int pixels) {
    CArm arm;
    arm.angles = {primaryDeg, secondaryDeg};
    arm.isocentre = {kMiddle + Eigen::Vector3d(5, -4, 2)};
    arm.sourceToIsocentreMm = 720.0;
    arm.sourceToDetectorMm = 1050.0;
    arm.imagerSpacingMm = Eigen::Vector2d::Constant(126.0 / pixels);
    arm.columns = arm.rows = pixels;
    return cameraOf(arm).value();
}

/// True when the rays around it, three voxels away, go in and out by the same faces: no silhouette and no edge of the body
/// between them. A grid blurs those by as much (a voxel's share of a body, and the interpolation between two), which is not
/// what is judged.
bool awayFromEdges(const ConvexBody& body, const PinholeCamera& camera, int column, int row) {
    const auto faces = [&](double dx, double dy) {
        return body.facesOf(camera.source.mm, camera.rayThrough({column + dx, row + dy}).mm);
    };
    const double beside = 1.5 * camera.magnificationAt({body.centre}).value() / camera.columnStep.norm();
    const auto here = faces(0, 0);
    for (int direction = 0; direction < 8; ++direction) {
        const double angle = direction * std::numbers::pi / 4;
        if (!here || faces(beside * std::cos(angle), beside * std::sin(angle)) != here) return false;
    }
    return true;
}

/// The body's line integrals in closed form.
std::vector<double> exactPicture(const ConvexBody& body, const PinholeCamera& camera) {
    std::vector<double> exact;
    for (int row = 0; row < camera.rows; ++row)
        for (int column = 0; column < camera.columns; ++column)
            exact.push_back((kInsideHu + 1000.0) / 1000.0 *
                            body.chordMm(camera.source.mm, camera.rayThrough({column * 1.0, row * 1.0}).mm));
    return exact;
}

struct Errors {
    double ofRay =
        0.0; ///< greatest of a ray away from edges and through at least half of the body, as a share of its integral
    double ofSum = 0.0; ///< of the whole picture's sum: edges that are blurred lose nothing
    int judged = 0, met = 0;
};
Errors errorsOf(const Radiograph& picture, const ConvexBody& body) {
    const std::vector<double> exact = exactPicture(body, picture.camera);
    const double greatest = *std::max_element(exact.begin(), exact.end());
    Errors errors;
    double sum = 0.0, exactSum = 0.0;
    for (std::size_t i = 0; i < exact.size(); ++i) {
        sum += picture.waterMm[i];
        exactSum += exact[i];
        errors.met += exact[i] > 0.0;
        const int columns = picture.camera.columns;
        if (exact[i] < 0.5 * greatest) continue;
        if (!awayFromEdges(body, picture.camera, static_cast<int>(i) % columns, static_cast<int>(i) / columns)) continue;
        errors.ofRay = std::max(errors.ofRay, std::abs(picture.waterMm[i] - exact[i]) / exact[i]);
        ++errors.judged;
    }
    errors.ofSum = std::abs(sum / exactSum - 1.0);
    return errors;
}

} // namespace

TEST(SimulateRadiograph, GivesTheLineIntegralsOfBallsCylindersAndBoxesWithinOnePerCent) {
    Errors worst;
    for (const Grid& grid : grids())
        for (const auto& [name, body] : bodies()) {
            const auto volume = volumeWith({body}, kInsideHu, kSize, grid.placement);
            for (const auto& [primary, secondary] :
                 {std::pair{0.0, 0.0}, {-30.0, -20.0}, {45.0, 10.0}, {90.0, 0.0}, {20.0, 65.0}}) {
                SCOPED_TRACE(grid.name + ", " + name + " at " + words(CArmAngles{primary, secondary}));
                const auto picture = simulateRadiograph(*volume, cameraAt(primary, secondary, 160));
                ASSERT_TRUE(picture) << picture.error().message;
                const Errors errors = errorsOf(*picture, body);
                EXPECT_LT(errors.ofRay, kRelativeTolerance);
                EXPECT_LT(errors.ofSum, kSumTolerance);
                EXPECT_GT(errors.judged, errors.met / 20);
                worst.judged += errors.judged;
                worst.met += errors.met;
                worst.ofRay = std::max(worst.ofRay, errors.ofRay);
                worst.ofSum = std::max(worst.ofSum, errors.ofSum);
            }
        }
    std::cout << "greatest error of a ray: " << 100.0 * worst.ofRay << " % (" << worst.judged << " of " << worst.met
              << " rays, those through half of the body and away from its edges); of a picture's sum: "
              << 100.0 * worst.ofSum << " %\n";
}

TEST(SimulateRadiograph, EverySecondSliceStaysWithinTwoPerCent) {
    constexpr double kCoarseTolerance = 0.02; // for pictures that move: the ends of a ray fall between slices
    double worst = 0.0;
    for (const auto& [name, body] : bodies()) {
        const auto volume = volumeWith({body}, kInsideHu, kSize, grids()[1].placement);
        const Errors errors =
            errorsOf(simulateRadiograph(*volume, cameraAt(-30.0, 20.0, 128), {.everySlice = 2}).value(), body);
        EXPECT_LT(errors.ofRay, kCoarseTolerance) << name;
        EXPECT_LT(errors.ofSum, kSumTolerance) << name;
        worst = std::max(worst, errors.ofRay);
    }
    std::cout << "every second slice: " << 100.0 * worst << " %\n";
}

// The pinhole formula with DICOM's angles (PS3.3 C.8.7.5), written out here and not taken from core/fluoro: the ray through
// P meets the detector, SID from the source, at SID/(SOD + (P - I).d) times P's offset from the central ray.
TEST(SimulateRadiograph, BeadsLieWhereThePinholeFormulaPutsThem) {
    const std::vector<Eigen::Vector3d> beads{{-14.2, 3.3, 8.1}, {11.7, -9.6, -12.4}, {2.3, 15.1, -3.9}, {15.9, 12.2, 14.8}};
    std::vector<ConvexBody> balls;
    for (const Eigen::Vector3d& bead : beads)
        balls.push_back(
            {ConvexBody::Kind::Ball, kMiddle + bead, Eigen::Matrix3d::Identity(), Eigen::Vector3d::Constant(1.3)});
    double worst = 0.0;
    const Eigen::Vector3i size(130, 130, 110);
    for (const Grid& grid : grids(size)) {
        std::vector<std::shared_ptr<const Volume>> volumes;
        for (const ConvexBody& ball : balls)
            volumes.push_back(volumeWith({ball}, 3000.0, size, grid.placement));
        for (const auto& [primary, secondary] :
             {std::pair{0.0, 0.0}, {-30.0, -20.0}, {-25.0, 18.0}, {50.0, 5.0}, {88.0, -3.0}}) {
            SCOPED_TRACE(grid.name + " at " + words(CArmAngles{primary, secondary}));
            const PinholeCamera camera = cameraAt(primary, secondary, 240);
            const double a = primary * std::numbers::pi / 180.0, b = secondary * std::numbers::pi / 180.0;
            const Eigen::Vector3d d(std::sin(a) * std::cos(b), -std::cos(a) * std::cos(b), std::sin(b));
            const Eigen::Vector3d right(std::cos(a), std::sin(a), 0.0), up = d.cross(right);
            const Eigen::Vector3d isocentre = kMiddle + Eigen::Vector3d(5, -4, 2);
            for (std::size_t n = 0; n < beads.size(); ++n) {
                const auto picture = simulateRadiograph(*volumes[n], camera).value();
                double sum = 0.0;
                Eigen::Vector2d centroid = Eigen::Vector2d::Zero();
                for (int row = 0; row < camera.rows; ++row)
                    for (int column = 0; column < camera.columns; ++column) {
                        sum += picture.at(column, row);
                        centroid += picture.at(column, row) * Eigen::Vector2d(column, row);
                    }
                ASSERT_GT(sum, 0.0);
                centroid /= sum;
                const Eigen::Vector3d fromCentre = balls[n].centre - isocentre;
                const double magnified = 1050.0 / (720.0 + fromCentre.dot(d)), pixelMm = 126.0 / 240;
                const Eigen::Vector2d expected(0.5 * 239 + magnified * fromCentre.dot(right) / pixelMm,
                                               0.5 * 239 - magnified * fromCentre.dot(up) / pixelMm);
                const double offMm = (centroid - expected).norm() * pixelMm * 720.0 / 1050.0;
                worst = std::max(worst, offMm);
                EXPECT_LT(offMm, kPlaceToleranceMm) << "bead " << n;
                EXPECT_LT((camera.project({balls[n].centre}).value() - expected).norm(), 1e-9);
            }
        }
    }
    std::cout << "worst place of a bead: " << worst << " mm\n";
}
