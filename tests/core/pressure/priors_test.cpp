#include "core/pressure/practice_figures.h"
#include "core/pressure/pressure_law.h"
#include "core/pressure/priors.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <limits>
#include <set>

using namespace gauge::core;
using testing::HasSubstr;

TEST(Observation, WordsAreThoseOfTheFileAndReadBack) {
    EXPECT_EQ(word(Quantity::LandingZonePerimeterDerivedDiameter), "landing_zone_perimeter_derived_diameter");
    EXPECT_EQ(word(Modality::Ct), "CT");
    EXPECT_EQ(word(Derivation::EllipseFromAngles), "ellipse-from-angles");
    EXPECT_EQ(word(PressureSource::ProcedureStart), "procedure-start");
    for (int i = 0; i < 6; ++i)
        EXPECT_EQ(fromWord<Quantity>(word(static_cast<Quantity>(i))), static_cast<Quantity>(i));
    for (int i = 0; i < 4; ++i) {
        EXPECT_EQ(fromWord<Modality>(word(static_cast<Modality>(i))), static_cast<Modality>(i));
        EXPECT_EQ(fromWord<Derivation>(word(static_cast<Derivation>(i))), static_cast<Derivation>(i));
        EXPECT_EQ(fromWord<PressureSource>(word(static_cast<PressureSource>(i))), static_cast<PressureSource>(i));
    }
    for (int i = 0; i < 8; ++i)
        EXPECT_EQ(fromWord<Stage>(word(static_cast<Stage>(i))), static_cast<Stage>(i));
    for (int i = 0; i < 3; ++i) {
        EXPECT_EQ(fromWord<Condition>(word(static_cast<Condition>(i))), static_cast<Condition>(i));
        EXPECT_EQ(fromWord<Phase>(word(static_cast<Phase>(i))), static_cast<Phase>(i));
    }
    EXPECT_FALSE(fromWord<Modality>("ct"));
    EXPECT_EQ(allWords<Phase>(), "end-systole, other, unknown");
}

TEST(Priors, HoldTheStatedDefaults) {
    const Priors p;
    EXPECT_EQ(slopePrior(p, Quantity::LandingZoneLongestDiameter).mean, 0.35);
    EXPECT_EQ(slopePrior(p, Quantity::Depth).mean, 0.45);
    EXPECT_EQ(slopePrior(p, Quantity::Depth).sd, 0.3);
    EXPECT_EQ(pressurePrior(p, Condition::MitralRegurgitation).mean, 17.0);
    EXPECT_EQ(pressurePrior(p, Condition::Hydrated).sd, 3.9);
    EXPECT_EQ(pressurePrior(p, Condition::Other).mean, 11.0);
    EXPECT_EQ(pressureUncertaintyMmHg(p, PressureSource::Direct), 1.5);
    EXPECT_EQ(pressureUncertaintyMmHg(p, PressureSource::Wedge), 3.0);
    EXPECT_EQ(pressureUncertaintyMmHg(p, std::nullopt), 4.0);
    EXPECT_EQ(biasPrior(p, Modality::Ct, Derivation::Contour).sd, 0.0);
    EXPECT_EQ(biasPrior(p, Modality::Echo3d, Derivation::Contour).mean, -0.2);
    EXPECT_EQ(biasPrior(p, Modality::Echo2d, Derivation::EllipseFromAngles).sd, 1.5);
    EXPECT_EQ(biasPrior(p, Modality::Fluoroscopy, Derivation::SingleView).sd, 2.0);
    EXPECT_EQ(biasPrior(p, Modality::Echo2d, Derivation::Contour).sd, p.otherBias.sd);
    EXPECT_EQ(defaultReadingUncertaintyMm(p, Modality::Ct), 0.5);
    EXPECT_EQ(defaultReadingUncertaintyMm(p, Modality::Echo2d), 0.8);
    EXPECT_EQ(defaultReadingUncertaintyMm(p, Modality::Fluoroscopy), 1.0);
    EXPECT_TRUE(validate(p));
    EXPECT_EQ(PracticeFigures{}.advisedPressureMmHg.basis, Basis::Memory);
}

TEST(Priors, EveryRowHasAKeyOfItsOwnAndSaysWhatItRestsOn) {
    std::set<std::string> keys;
    for (const auto& row : rows({})) {
        EXPECT_TRUE(keys.insert(row.key).second) << row.key;
        EXPECT_FALSE(row.name.empty());
        EXPECT_FALSE(row.words.empty()) << row.key;
        EXPECT_EQ(fromWord<Basis>(word(row.basis)), row.basis);
    }
    EXPECT_GE(keys.size(), 20u);
}

TEST(Priors, ChangeByKeyAndThenCallThemselvesAssumed) {
    const auto changed = withFigure({}, "diameter-slope", 0.5, 0.1);
    ASSERT_TRUE(changed);
    EXPECT_EQ(changed->diameterSlope.mean, 0.5);
    EXPECT_EQ(changed->diameterSlope.basis, Basis::Assumption);
    EXPECT_EQ(changed->diameterSlope.words, "set here");
    EXPECT_EQ(withFigure({}, "bias-echo-2d-ellipse-from-angles", -1.0)->biases[1].bias.mean, -1.0);
    EXPECT_EQ(withFigure({}, "no-such", 1).error().code, ErrorCode::NotFound);
    EXPECT_THAT(withFigure({}, "ct-reading", 1, 2).error().message, HasSubstr("this figure has none"));
    EXPECT_THAT(withFigure({}, "diameter-slope", -1).error().message, HasSubstr("it is -1; it must be above 0"));
    EXPECT_EQ(withFigure({}, "widening", std::nan("")).error().code, ErrorCode::NonFinite);
    EXPECT_THAT(withFigure({}, "lowest-valid-pressure", 25).error().message, HasSubstr("is not below its highest"));
}

TEST(PressureLaw, HasTheSlopeAtTwelveAndIsCutAtThree) {
    for (const auto law : {PressureLaw::Logarithmic, PressureLaw::StraightLine}) {
        EXPECT_NEAR((pressureTerm(law, 12.001, 12) - pressureTerm(law, 11.999, 12)) / 0.002, 1.0, 1e-6);
        EXPECT_EQ(pressureTerm(law, 9, 9), 0.0);
        EXPECT_EQ(pressureTerm(law, 1, 12), pressureTerm(law, 3, 12));
        EXPECT_EQ(pressureLawFromWord(word(law)), law);
    }
    EXPECT_NEAR(pressureTerm(PressureLaw::Logarithmic, 24, 12), 12 * std::log(2.0), 1e-14);
    EXPECT_EQ(pressureTerm(PressureLaw::StraightLine, 20, 12), 8.0);
    EXPECT_FALSE(pressureLawFromWord("cubic"));
}

TEST(PressureLaw, WidensOutsideByATenthPerMmHg) {
    const Priors p;
    EXPECT_EQ(wideningFactor(p, 5), 1.0);
    EXPECT_EQ(wideningFactor(p, 20), 1.0);
    EXPECT_NEAR(wideningFactor(p, 3), 1.2, 1e-15);
    EXPECT_NEAR(wideningFactor(p, 25), 1.5, 1e-15);
}

TEST(PressureLaw, TheVWaveDistendsByItsShare) {
    EXPECT_EQ(distendingPressure(12, 30, 0.0), 12.0);
    EXPECT_EQ(distendingPressure(12, 30, 0.5), 21.0);
    EXPECT_EQ(distendingPressure(1, 2, 0.5), 3.0);
}
