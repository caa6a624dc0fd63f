#include "sample-data/case/sample_case.h"
#include "sample-data/case/write_procedure.h"

#include <gtest/gtest.h>

#include <cmath>

namespace gauge::sample_case {
namespace {

const Procedure& procedure() {
    static const auto sample = readSampleCase(builtInDescription());
    return *sample->procedure;
}

TEST(CArm, LooksAsTheStandardSays) {
    CArm arm;
    arm.isocentre = {{10.0, -20.0, 30.0}};
    // PS3.3 C.8.7.5: at 0/0 the detector is anterior; LAO 90 is at the patient's left; cranial leans to the head.
    EXPECT_NEAR(arm.towardsDetector().mm.y(), -1.0, 1e-12);
    EXPECT_NEAR((arm.pixelOf(arm.isocentre) - Eigen::Vector2d(255.5, 255.5)).norm(), 0.0, 1e-9);
    const double perMm = 1100.0 / 750.0 / 0.3;
    EXPECT_NEAR(arm.pixelOf({{20.0, -20.0, 30.0}}).x(), 255.5 + 10.0 * perMm, 1e-9) << "left on the right";
    EXPECT_NEAR(arm.pixelOf({{10.0, -20.0, 40.0}}).y(), 255.5 - 10.0 * perMm, 1e-9) << "head at the top";
    // Nearer to the detector (75 mm in front): less enlarged.
    EXPECT_NEAR(arm.pixelOf({{20.0, -95.0, 30.0}}).x(), 255.5 + 10.0 * 1100.0 / 825.0 / 0.3, 1e-9);
    arm.primaryDeg = 90.0;
    EXPECT_NEAR(arm.towardsDetector().mm.x(), 1.0, 1e-12);
    arm.primaryDeg = 0.0;
    arm.secondaryDeg = 30.0;
    EXPECT_NEAR(arm.towardsDetector().mm.z(), 0.5, 1e-12);
}

TEST(CArm, ProjectsAlongStraightLines) {
    for (const FluoroRun& run : procedure().fluoro) {
        const Heart heart = procedure().heartIn(run.state).at(45.0);
        // model: d = (sin a cos b, -cos a cos b, sin b); a place, its image and the source lie on one line.
        for (const auto& mark : {heart.marks.circumflex, heart.marks.ridge, heart.marks.tip}) {
            const Eigen::Vector3d ray = mark.mm - run.arm.source().mm;
            const Eigen::Vector3d image = run.arm.detectorPoint(run.arm.pixelOf(mark)).mm - run.arm.source().mm;
            EXPECT_LT(ray.normalized().cross(image.normalized()).norm(), 1e-12);
            const double a = run.arm.primaryDeg * M_PI / 180.0, b = run.arm.secondaryDeg * M_PI / 180.0;
            const Eigen::Vector3d d(std::sin(a) * std::cos(b), -std::cos(a) * std::cos(b), std::sin(b));
            EXPECT_NEAR(image.dot(d), run.arm.sidMm, 1e-9);
        }
    }
}

TEST(ContrastLengths, AgreeWithABruteForceWalk) {
    const FluoroRun& run = procedure().fluoro.front();
    const Heart heart = procedure().heartIn(run.state).at(45.0);
    const Scene& scene = heart.scene;
    const LineIntegrals lengths = contrastLengths(scene, run.arm);
    const CentreCurve::Frame mouth = scene.lobes.front().curve.at(0.0);
    const Eigen::Vector3d source = scene.sceneFrom(run.arm.source());
    constexpr double kStepMm = 0.02, kToleranceMm = 0.05;
    int filled = 0;
    for (int y = 100; y < 320; y += 23)
        for (int x = 200; x < 480; x += 23) {
            const Eigen::Vector3d direction =
                (scene.sceneFrom(run.arm.detectorPoint(Eigen::Vector2d(x, y))) - source).normalized();
            double sum = 0.0;
            for (double t = 660.0; t < 860.0; t += kStepMm) {
                const Eigen::Vector3d at = source + t * direction;
                if (scene.appendage(at) >= 0.0) continue;
                const double share = std::clamp(1.0 + (at - mouth.point).dot(mouth.tangent) / 12.0, 0.0, 1.0);
                sum += kStepMm * share * share * (3.0 - 2.0 * share);
            }
            filled += sum > 0.0 ? 1 : 0;
            EXPECT_NEAR(lengths[static_cast<std::size_t>(y * run.arm.columns + x)], sum, kToleranceMm) << x << ", " << y;
        }
    EXPECT_GT(filled, 15);
}

/// Where the contrast ends along a line in the picture, pixels from `from`.
double silhouette(const LineIntegrals& lengths, const CArm& arm, const Eigen::Vector2d& from,
                  const Eigen::Vector2d& direction) {
    double last = 0.0;
    for (double t = 0.0; t < 120.0; t += 0.1) {
        const Eigen::Vector2d at = from + t * direction;
        const auto x = static_cast<std::size_t>(std::lround(at.x())), y = static_cast<std::size_t>(std::lround(at.y()));
        if (lengths[y * static_cast<std::size_t>(arm.columns) + x] > 0.0f) last = t;
    }
    return last;
}

TEST(ProjectedWidth, IsThatOfTheSilhouetteWhereTheTubeIsSmooth) {
    // The ostium is seen nearly edge-on: the silhouette there is the section's, to within what the tube widens or
    // narrows over the few millimetres that the slant spans. 0.2 mm in the patient.
    constexpr double kToleranceMm = 0.2;
    for (const FluoroRun& run : procedure().fluoro) {
        const Heart heart = procedure().heartIn(run.state).at(45.0);
        const LineIntegrals lengths = contrastLengths(heart.scene, run.arm);
        const core::Plane plane = landingPlane(heart, 4.0); // between mouth and the first side lobe
        const auto section = trueSection(heart.scene, plane, plane.point);
        ASSERT_TRUE(section);
        const ProjectedWidth width = projectedWidth(*section, run.arm);
        const double mmPerPixel = run.arm.imagerSpacingMm / run.arm.magnificationAt(section->center);
        const Eigen::Vector2d middle = 0.5 * (width.firstPixel + width.secondPixel);
        const Eigen::Vector2d along = (width.secondPixel - width.firstPixel).normalized();
        const double seen = silhouette(lengths, run.arm, middle, along) + silhouette(lengths, run.arm, middle, -along);
        EXPECT_NEAR(seen * mmPerPixel, width.distanceMm, kToleranceMm) << run.arm.secondaryDeg;
    }
}

TEST(CatheterEdges, AreThoseOfThePicture) {
    for (const FluoroRun& run : procedure().fluoro) {
        const CatheterEdges edges = catheterEdges(run.catheter, run.arm, run.stationBeforeTipMm);
        EXPECT_NEAR(run.catheter.outerDiameterMm, run.catheterFrench / 3.0, 1e-9);
        const double perPixel = run.arm.imagerSpacingMm / run.arm.magnificationAt(edges.centre);
        const double pixels = (edges.secondPixel - edges.firstPixel).norm();
        // A caliper across reads the diameter; a thousandth for the catheter's slant against the detector.
        EXPECT_NEAR(pixels * perPixel, run.catheter.outerDiameterMm, 0.01 * run.catheter.outerDiameterMm);
        EXPECT_GT(pixels, 10.0) << "wide enough to be a scale";
        const LineIntegrals lengths = catheterLengths(run.catheter, run.arm);
        const Eigen::Vector2d along = (edges.secondPixel - edges.firstPixel).normalized();
        const Eigen::Vector2d middle = 0.5 * (edges.firstPixel + edges.secondPixel);
        const double seen = silhouette(lengths, run.arm, middle, along) + silhouette(lengths, run.arm, middle, -along);
        EXPECT_NEAR(seen, pixels, 1.0);
    }
}

TEST(ExposeFrame, WeakensLightByTheLineIntegrals) {
    const FluoroRun& run = procedure().fluoro.front();
    const Heart heart = procedure().heartIn(run.state).at(45.0);
    const LineIntegrals background = backgroundIntegrals(heart.scene, run.arm, run.options);
    const LineIntegrals catheter = catheterLengths(run.catheter, run.arm);
    const LineIntegrals nothing(background.size(), 0.0f);
    // Across a catheter the lost light sums up to its cross-section's area: pi r^2, whatever the blur.
    const CatheterEdges edges = catheterEdges(run.catheter, run.arm, run.stationBeforeTipMm);
    const Eigen::Vector2d middle = 0.5 * (edges.firstPixel + edges.secondPixel);
    const Eigen::Vector2d across = (edges.secondPixel - edges.firstPixel).normalized(), along(-across.y(), across.x());
    RadiographOptions options = run.options;
    options.photons = 1e9; // without noise
    const Picture with = exposeFrame(background, nothing, catheter, 0.0, run.arm, options, 0);
    const Picture without = exposeFrame(background, nothing, nothing, 0.0, run.arm, options, 0);
    double sum = 0.0;
    constexpr double kStep = 0.25;
    for (int k = -8; k <= 8; ++k)
        for (double t = -16.0; t <= 16.0; t += kStep) {
            const Eigen::Vector2d at = middle + t * across + 1.0 * k * along;
            const int x = static_cast<int>(std::lround(at.x())), y = static_cast<int>(std::lround(at.y()));
            sum += kStep * (without.at(x, y).red - with.at(x, y).red) / 17.0;
        }
    const double mmPerPixel = run.arm.imagerSpacingMm / run.arm.magnificationAt(edges.centre);
    const double area = sum * mmPerPixel / (options.greyPerUnit * options.catheterPerMm);
    const double radius = 0.5 * run.catheter.outerDiameterMm;
    // Slant lengthens the paths, scatter and blur in light rather than its logarithm shorten them: 8 %.
    EXPECT_NEAR(area, M_PI * radius * radius, 0.08 * M_PI * radius * radius);
}

TEST(FluoroFrames, FillTheAppendageOverTime) {
    const FluoroRun& run = procedure().fluoro.front();
    EXPECT_EQ(run.fillingAt(0), 0.0);
    EXPECT_EQ(run.fillingAt(run.times.frames - 1), 1.0);
    for (int frame = 1; frame < run.times.frames; ++frame)
        EXPECT_GE(run.fillingAt(frame), run.fillingAt(frame - 1));
}

} // namespace
} // namespace gauge::sample_case
