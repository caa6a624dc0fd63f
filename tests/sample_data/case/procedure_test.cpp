#include "sample-data/case/answers_parts.h"
#include "sample-data/case/observations.h"
#include "sample-data/case/sample_case.h"

#include <gtest/gtest.h>

#include <cmath>

namespace gauge::sample_case {
namespace {

using nlohmann::json;

/// A widening is found to 1e-4 mm; two sections of one scene differ by less than as much again on their grids.
constexpr double kLawMm = 5e-4;
/// Ends of chords lie on the boundary to 1e-6 mm; answers are printed to as much.
constexpr double kEndMm = 1e-5;

const SampleCase& builtIn() {
    static const auto sample = readSampleCase(builtInDescription());
    return *sample;
}
const Procedure& procedure() {
    return *builtIn().procedure;
}

TEST(Procedure, FollowsThePressureLawAtTheLandingZone) {
    const PressureLaw& law = procedure().law;
    ASSERT_EQ(law.states.size(), 3u);
    const double ctMm = law.states[0].landingDiameterMm, ctMmHg = law.states[0].meanMmHg;
    for (std::size_t state = 0; state < law.states.size(); ++state) {
        const Heart heart = procedure().heartIn(state).at(law.percent);
        const core::Plane plane = landingPlane(heart, law.landingDepthMm);
        const auto section = trueSection(heart.scene, plane, plane.point);
        ASSERT_TRUE(section);
        const double wanted = ctMm + law.slopeAt12MmPerMmHg * 12.0 * std::log(law.states[state].meanMmHg / ctMmHg);
        EXPECT_NEAR(section->metrics.perimeterDerivedDiameterMm, wanted, kLawMm) << law.states[state].id;
    }
    // The story: fasting under anaesthesia the appendage reads smaller.
    EXPECT_LT(law.states[1].landingDiameterMm, ctMm - 2.0);
}

TEST(BeatingHeart, EqualsTheCtAtItsPhases) {
    const BeatingHeart heart = procedure().heartIn(0);
    for (const SamplePhase& phase : builtIn().phases) {
        const Heart now = heart.at(phase.percent);
        // The vein keeps its gap instead of the ridge its height: tenths of a millimetre.
        EXPECT_LT(core::distanceMm(now.marks.ridge, phase.marks.ridge), 0.3);
        EXPECT_LT(core::distanceMm(now.marks.tip, phase.marks.tip), 1e-9);
    }
    EXPECT_LT(core::distanceMm(heart.at(0.0).marks.tip, heart.at(100.0).marks.tip), 1e-9) << "periodic";
}

TEST(OstiumPlane, IsThePlaneOfTheTrueOstium) {
    const Heart heart = procedure().heartIn(1).at(45.0);
    const auto ostium = trueOstium(heart.scene, heart.marks.circumflex, heart.marks.ridge);
    ASSERT_TRUE(ostium);
    const OstiumPlane plane = ostiumPlane(heart);
    EXPECT_NEAR(plane.plane.normal.dot(ostium->plane.normal), 1.0, 1e-12);
    EXPECT_NEAR(core::signedDistanceMm(plane.plane, ostium->plane.point), 0.0, 1e-9);
    EXPECT_EQ(plane.axisS, ostium->axisS);
}

TEST(ViewChord, EndsOnTheBoundaryInBothPlanes) {
    for (const EchoSet& set : procedure().echo)
        for (const EchoPlane& view : set.views)
            for (const double percent : {5.0, 45.0, 85.0}) {
                const Heart heart = procedure().heartIn(set.state).at(percent);
                for (const core::Plane& across : {ostiumPlane(heart).plane, landingPlane(heart, 10.0)}) {
                    const auto chord = viewChord(heart, view, across);
                    ASSERT_TRUE(chord) << view.angleDeg << " at " << percent << " %";
                    for (const auto& end : {chord->chord.first, chord->chord.second}) {
                        EXPECT_NEAR(heart.scene.pool(heart.scene.sceneFrom(end)), 0.0, kEndMm);
                        EXPECT_NEAR(view.outOfPlaneMm(end), 0.0, 1e-9);
                        EXPECT_NEAR(core::signedDistanceMm(across, end), 0.0, 1e-9);
                    }
                    // A caliper between the pixels, times the pixel's size, is the width.
                    EXPECT_NEAR((chord->secondPixel - chord->firstPixel).norm() * view.fan.mmPerPixel,
                                chord->chord.lengthMm, 1e-9);
                    EXPECT_LT(chord->firstPixel.x(), chord->secondPixel.x());
                    EXPECT_TRUE(view.inFan(chord->firstPixel) && view.inFan(chord->secondPixel));
                }
            }
}

TEST(EchoSet, ShowsTheOstiumBeating) {
    const EchoSet& set = procedure().echo.front();
    const auto width = [&](double percent) {
        const Heart heart = procedure().heartIn(set.state).at(percent);
        return viewChord(heart, set.views.front(), ostiumPlane(heart).plane)->chord.lengthMm;
    };
    EXPECT_GT(width(45.0), width(75.0));
    EXPECT_GT(width(75.0), width(5.0));
    EXPECT_NEAR(set.times.percentAt(set.times.frameNearest(45.0)), 45.0, 1e-9) << "a frame at end-systole";
}

TEST(CineTimes, CountsFromTheRWave) {
    const CineTimes times{24, 40.0, 120.0, 800.0};
    EXPECT_NEAR(times.percentAt(3), 0.0, 1e-9);
    EXPECT_NEAR(times.percentAt(0), 85.0, 1e-9);
    EXPECT_NEAR(times.percentAt(12), 45.0, 1e-9);
    EXPECT_EQ(times.frameNearest(45.0), 12);
    EXPECT_EQ(times.rWavesMs(), (std::vector<double>{120.0, 920.0}));
}

TEST(EllipseThrough, FindsAnEllipseFromItsChords) {
    // Half axes 12 and 9 mm, turned by 30 degrees; perimeter 2 pi 12 times the mean of sqrt(1 - e^2 sin^2).
    const double turn = M_PI / 6.0;
    std::vector<std::pair<double, double>> widths;
    for (const double angle : {0.0, 45.0, 90.0, 135.0}) {
        const double t = angle * M_PI / 180.0 - turn;
        widths.emplace_back(angle, 2.0 / std::sqrt(std::pow(std::cos(t) / 12.0, 2) + std::pow(std::sin(t) / 9.0, 2)));
    }
    const auto ellipse = ellipseThrough(widths);
    ASSERT_TRUE(ellipse);
    EXPECT_NEAR(ellipse->longestMm, 24.0, 1e-9);
    EXPECT_NEAR(ellipse->shortestMm, 18.0, 1e-9);
    // Ramanujan's second formula, exact to 1e-9 here.
    const double h = std::pow(3.0 / 21.0, 2);
    EXPECT_NEAR(ellipse->perimeterDerivedMm, 21.0 * (1.0 + 3.0 * h / (10.0 + std::sqrt(4.0 - 3.0 * h))), 1e-6);
    EXPECT_FALSE(ellipseThrough({{0, 20}, {90, 18}})) << "two widths are not enough";
    EXPECT_FALSE(ellipseThrough({{0, 40}, {45, 4}, {90, 40}, {135, 40}})) << "no ellipse";
}

TEST(Observations, TellTheTwoStories) {
    const auto stories = observations(builtIn());
    ASSERT_EQ(stories.size(), 2u);
    for (const Observations& story : stories) {
        EXPECT_EQ(story.content["format"], "ostium-gauge/observations/1");
        ASSERT_EQ(story.content["observations"].size(), 3u);
        for (const json& one : story.content["observations"])
            for (const char* key : {"quantity", "modality", "derivation", "stage", "state", "condition", "phase", "value_mm",
                                    "standard_uncertainty_mm", "pressure_mmHg", "pressure_source",
                                    "pressure_uncertainty_mmHg", "v_wave_mmHg"})
                EXPECT_TRUE(one.contains(key)) << key;
        EXPECT_GT(story.content["depth_mm"].get<double>(), 20.0);
    }
    const json& passing = stories[0].content["observations"];
    EXPECT_EQ(passing[1]["pressure_mmHg"], 7.0);
    EXPECT_EQ(passing[1]["stage"], "before-repair");
    const json& lasting = stories[1].content["observations"];
    EXPECT_TRUE(lasting[0]["pressure_mmHg"].is_null());
    EXPECT_EQ(lasting[0]["condition"], "mitral-regurgitation");
    EXPECT_EQ(lasting[1]["stage"], "after-repair");
    // Four exact widths give the section's perimeter-derived diameter to a few tenths: it is nearly an ellipse.
    EXPECT_NEAR(passing[1]["value_mm"].get<double>(), procedure().law.states[1].landingDiameterMm, 0.3);
}

std::string complaint(const json& description) {
    const auto sample = readSampleCase(description.dump());
    return sample ? "" : sample.error().message;
}

TEST(ReadProcedure, NamesWhatIsWrongWithADescription) {
    const json good = json::parse(builtInDescription());
    json bad = good;
    bad["echo"]["sets"][0]["state"] = "asleep";
    EXPECT_NE(complaint(bad).find("\"asleep\" is not described"), std::string::npos);
    bad = good;
    bad["echo"].erase("frame_ms");
    EXPECT_NE(complaint(bad).find("frame_ms"), std::string::npos);
    bad = good;
    bad["pressure"]["percent"] = 50.0;
    EXPECT_NE(complaint(bad).find("no phase of the CT"), std::string::npos);
    bad = good;
    bad["pressure"]["states"][1]["mean_mmhg"] = 0.0;
    EXPECT_NE(complaint(bad).find("must be above 0"), std::string::npos);
    bad = good;
    bad["procedure"]["probe_from_centre"] = {0.0, 10.0, 0.0};
    EXPECT_NE(complaint(bad).find("the probe lies in the atrium"), std::string::npos);
}

} // namespace
} // namespace gauge::sample_case
