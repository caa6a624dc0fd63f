// The sample case's fluoroscopies against what the program predicts of them: widths by the catheter's scale against those of the
// contour in space, and the simulated radiograph laid over the frame. The sample's projector and the program's share no code.
#include "core/fluoro/catheter_profile.h"
#include "core/fluoro/object_scale.h"
#include "core/fluoro/width_comparison.h"
#include "core/parallel/parallel_for.h"
#include "core/volume/radiograph.h"
#include "sample-data/case/sample_case.h"

#include <gtest/gtest.h>

#include <cmath>

namespace gauge::sample_case {
namespace {

// What is asked of projected places, in the plane of the isocentre.
constexpr double kPlaceToleranceMm = 0.2;
// Of lengths of contrast medium: the sample's own 0.05 mm, and a grid of 0.5 mm at both walls.
constexpr double kLengthToleranceMm = 0.5;

const Procedure& described() {
    static const auto sample = readSampleCase(builtInDescription());
    return *sample->procedure;
}

core::CArm programsArm(const CArm& arm) {
    core::CArm same;
    same.angles = {arm.primaryDeg, arm.secondaryDeg};
    same.isocentre = arm.isocentre;
    same.sourceToIsocentreMm = arm.sodMm;
    same.sourceToDetectorMm = arm.sidMm;
    same.imagerSpacingMm = Eigen::Vector2d::Constant(arm.imagerSpacingMm);
    same.columns = arm.columns;
    same.rows = arm.rows;
    return same;
}

struct LandingWidth {
    std::vector<core::PatientPoint> contour;
    ProjectedWidth seen;
};
LandingWidth landingOf(const FluoroRun& run) {
    const Heart heart = described().heartIn(run.state).at(described().law.percent);
    const core::Plane plane = landingPlane(heart, described().law.landingDepthMm);
    const TrueSection section = trueSection(heart.scene, plane, plane.point).value();
    LandingWidth landing{{}, projectedWidth(section, run.arm)};
    for (std::size_t i = 0; i < section.contour.size(); i += 5)
        landing.contour.push_back(section.frame.patientFromSection(section.contour[i]));
    return landing;
}

core::KnownDiameter catheterOf(const FluoroRun& run) {
    return core::outerDiameter({core::ScaleObjectKind::Catheter, run.catheterFrench, run.catheter.outerDiameterMm, false}).value();
}

core::GreyFrame greyOf(const Picture& picture) {
    core::GreyFrame frame{picture.columns(), picture.rows(), {}};
    frame.values.assign(picture.bytes().begin(), picture.bytes().end());
    return frame;
}

/// Expects the width read with this scale to be the predicted one within twice the scale's uncertainty.
void expectPredicted(const FluoroRun& run, const core::FluoroScale& scale) {
    const LandingWidth landing = landingOf(run);
    const core::CArmAngles angles{run.arm.primaryDeg, run.arm.secondaryDeg};
    const auto measured = core::planarDistance(landing.seen.firstPixel, landing.seen.secondPixel, scale.planar).value();
    const auto predicted = core::predictedWidth(landing.contour, angles).value();
    EXPECT_GT(measured.components.scale, 0.0);
    EXPECT_LT(std::abs(measured.value - predicted.value), 2.0 * measured.components.scale)
        << "measured " << measured.value << ", predicted " << predicted.value << ", scale " << measured.components.scale;
    const auto comparison = core::compareWidth(measured, angles, landing.contour).value();
    EXPECT_FALSE(comparison.unexplained) << comparison.text;
    std::cout << comparison.text << "\n";
}

/// Contrast medium as the sample's projector has it, as a volume: full from the mouth on, fading over 12 mm into the atrium.
std::shared_ptr<const core::Volume> contrastVolume(const Scene& scene) {
    constexpr double kStepMm = 0.5, kFadeMm = 12.0;
    const Eigen::Vector3i size(150, 150, 150);
    const CentreCurve::Frame mouth = scene.lobes.front().curve.at(0.0);
    const Eigen::Vector3d middle = scene.patientFrom(scene.lobes.front().curve.at(14.0).point).mm;
    Eigen::Affine3d placement = Eigen::Affine3d::Identity();
    placement.linear() = kStepMm * Eigen::Matrix3d::Identity();
    placement.translation() = middle - 0.5 * kStepMm * (size.array() - 1).cast<double>().matrix();
    std::vector<std::int16_t> voxels(static_cast<std::size_t>(size.prod()));
    core::parallelFor(150, 1, [&](std::size_t begin, std::size_t end) {
        for (std::size_t k = begin; k < end; ++k)
            for (int j = 0; j < 150; ++j)
                for (int i = 0; i < 150; ++i) {
                    const Eigen::Vector3d x = scene.sceneFrom({placement * Eigen::Vector3d(i, j, static_cast<double>(k))});
                    const double inside = std::clamp(0.5 - scene.appendage(x) / kStepMm, 0.0, 1.0);
                    const double t = std::clamp(1.0 + (x - mouth.point).dot(mouth.tangent) / kFadeMm, 0.0, 1.0);
                    voxels[(k * 150 + static_cast<std::size_t>(j)) * 150 + static_cast<std::size_t>(i)] =
                        static_cast<std::int16_t>(std::lround(1000.0 * inside * t * t * (3.0 - 2.0 * t)) - 1000);
                }
    });
    return core::Volume::make(size, std::move(voxels), placement, core::VoxelQuantity::HounsfieldUnits, "").value();
}

double correlation(const std::vector<float>& a, const std::vector<float>& b) {
    double sa = 0, sb = 0, saa = 0, sbb = 0, sab = 0;
    const auto n = static_cast<double>(a.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        sa += a[i], sb += b[i];
        saa += a[i] * a[i], sbb += b[i] * b[i], sab += a[i] * b[i];
    }
    return (sab - sa * sb / n) / std::sqrt((saa - sa * sa / n) * (sbb - sb * sb / n));
}

} // namespace

TEST(PredictedWidthOnTheSample, AgreesWithWidthsByTwoClicksOnTheCatheter) {
    ASSERT_EQ(described().fluoro.size(), 2u);
    for (const FluoroRun& run : described().fluoro) {
        const CatheterEdges edges = catheterEdges(run.catheter, run.arm, run.stationBeforeTipMm);
        const auto scale = core::objectScale(core::betweenClicks(edges.firstPixel, edges.secondPixel), catheterOf(run));
        ASSERT_TRUE(scale) << scale.error().message;
        expectPredicted(run, *scale);
    }
}

TEST(PredictedWidthOnTheSample, AgreesWithWidthsByTheDeviceGeometry) {
    for (const FluoroRun& run : described().fluoro)
        expectPredicted(run, core::isocentreScale(Eigen::Vector2d::Constant(run.arm.imagerSpacingMm), run.arm.sodMm, run.arm.sidMm).value());
}

TEST(PredictedWidthOnTheSample, AgreesWithWidthsByTheCathetersShadowOnTheFrame) {
    for (const FluoroRun& run : described().fluoro) {
        const LineIntegrals nothing(static_cast<std::size_t>(run.arm.columns) * static_cast<std::size_t>(run.arm.rows), 0.0f);
        const Heart heart = described().heartIn(run.state).at(described().law.percent);
        const Picture frame = exposeFrame(backgroundIntegrals(heart.scene, run.arm, run.options), nothing,
                                          catheterLengths(run.catheter, run.arm), 0.0, run.arm, run.options, 0);
        // A piece of the straight end, clear of the tip.
        const core::PatientPoint tip = run.catheter.course.back();
        const core::PatientVector along = (tip - run.catheter.course[run.catheter.course.size() - 2]).normalized();
        const auto profile = core::catheterProfile(greyOf(frame), run.arm.pixelOf(tip - 0.85 * run.catheter.straightMm * along),
                                                   run.arm.pixelOf(tip - 0.25 * run.catheter.straightMm * along));
        ASSERT_TRUE(profile) << profile.error().message;
        const auto scale = core::objectScale(profile->width, catheterOf(run));
        ASSERT_TRUE(scale) << scale.error().message;
        expectPredicted(run, *scale);
    }
}

TEST(SimulatedRadiographOnTheSample, PutsLandmarksWhereTheSamplesProjectorDoes) {
    for (const FluoroRun& run : described().fluoro) {
        const core::PinholeCamera camera = core::cameraOf(programsArm(run.arm)).value();
        const Heart heart = described().heartIn(run.state).at(described().law.percent);
        const double isocentrePixelMm = run.arm.imagerSpacingMm * run.arm.sodMm / run.arm.sidMm;
        for (const core::PatientPoint& mark : {heart.marks.circumflex, heart.marks.ridge, heart.marks.tip, run.catheter.course.back()}) {
            const Eigen::Vector2d off = camera.project(mark).value() - run.arm.pixelOf(mark);
            EXPECT_LT(off.norm() * isocentrePixelMm, kPlaceToleranceMm);
        }
    }
}

TEST(SimulatedRadiographOnTheSample, LiesOverTheFrame) {
    const FluoroRun& run = described().fluoro.front();
    const Heart heart = described().heartIn(run.state).at(described().law.percent);
    const auto volume = contrastVolume(heart.scene);
    const auto picture = core::simulateRadiograph(*volume, core::cameraOf(programsArm(run.arm)).value()).value();
    const LineIntegrals contrast = contrastLengths(heart.scene, run.arm);
    ASSERT_EQ(contrast.size(), picture.waterMm.size());
    // Lengths along the same rays, but where a ray grazes a wall.
    double worst = 0.0, squares = 0.0;
    int filled = 0;
    for (std::size_t i = 0; i < contrast.size(); ++i) {
        if (contrast[i] < 5.0f) continue;
        const double off = picture.waterMm[i] - contrast[i];
        worst = std::max(worst, std::abs(off));
        squares += off * off;
        ++filled;
    }
    ASSERT_GT(filled, 5000);
    std::cout << filled << " pixels: root mean square " << std::sqrt(squares / filled) << " mm, greatest " << worst << " mm\n";
    EXPECT_LT(std::sqrt(squares / filled), kLengthToleranceMm);
    EXPECT_GT(correlation(contrast, picture.waterMm), 0.998);
    // The silhouette: inside and outside alike for nearly every pixel.
    int both = 0, either = 0;
    for (std::size_t i = 0; i < contrast.size(); ++i) {
        both += contrast[i] > 1.0f && picture.waterMm[i] > 1.0f;
        either += contrast[i] > 1.0f || picture.waterMm[i] > 1.0f;
    }
    EXPECT_GT(static_cast<double>(both) / either, 0.98);
    // The frame itself, noise and blur and all: what the contrast medium darkened.
    const LineIntegrals background = backgroundIntegrals(heart.scene, run.arm, run.options), catheter = catheterLengths(run.catheter, run.arm);
    const Picture full = exposeFrame(background, contrast, catheter, 1.0, run.arm, run.options, 3);
    const Picture empty = exposeFrame(background, contrast, catheter, 0.0, run.arm, run.options, 3);
    std::vector<float> darkened;
    for (std::size_t i = 0; i < full.bytes().size(); ++i)
        darkened.push_back(static_cast<float>(empty.bytes()[i]) - static_cast<float>(full.bytes()[i]));
    const double alike = correlation(darkened, picture.waterMm);
    std::cout << "correlation with the frame " << alike << "\n";
    EXPECT_GT(alike, 0.9);
}

} // namespace gauge::sample_case
