// Claims about the posterior that need no brute force.
#include "core/pressure/posterior.h"

#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <limits>

using namespace gauge::core;
using testing::HasSubstr;

namespace {

constexpr Quantity kQuantity = Quantity::LandingZonePerimeterDerivedDiameter;
constexpr double kInfinity = std::numeric_limits<double>::infinity();
// Low-discrepancy integration of quantities of order 1 mm.
constexpr double kIntegrationMm = 0.005;

Observation reading(Modality modality, const char* state, double mm, double u, std::optional<double> pressure = {}) {
    Observation o;
    o.quantity = kQuantity;
    o.modality = modality;
    o.derivation = modality == Modality::Echo2d       ? Derivation::EllipseFromAngles
                   : modality == Modality::Fluoroscopy ? Derivation::SingleView
                                                       : Derivation::Contour;
    o.state = state;
    o.phase = Phase::Other;
    o.valueMm = mm;
    o.standardUncertaintyMm = u;
    o.pressureMmHg = pressure;
    if (pressure) o.pressureUncertaintyMmHg = 0.0;
    return o;
}

Posterior solve(const std::vector<Observation>& all, double decision = 12.0,
                PressureLaw law = PressureLaw::Logarithmic, const Priors& priors = {}) {
    auto made = posterior(all, kQuantity, Pressure::fromMmHg(decision), law, priors);
    EXPECT_TRUE(made) << made.error().message;
    return *made;
}

Error refusal(const std::vector<Observation>& all, double decision = 12.0, const Priors& priors = {}) {
    auto made = posterior(all, kQuantity, Pressure::fromMmHg(decision), PressureLaw::Logarithmic, priors);
    EXPECT_FALSE(made);
    return made ? Error{} : made.error();
}

bool hasNotice(const Posterior& p, const std::string& code) {
    return std::any_of(p.notices().begin(), p.notices().end(), [&](const Notice& n) { return n.code == code; });
}

double sensitivitySum(const Posterior& p) {
    double sum = 0.0;
    for (const auto& w : p.weights())
        sum += w.sensitivity;
    return sum;
}

} // namespace

// Precision-weighted means (worked by hand, as in any textbook): 20.0 +/- 1.0 and 22.0 +/- 2.0 give 20.4 +/- 0.8944; with
// 21 +/- 1.5 instead of the pair's mean: three (20 +/- 1, 22 +/- 2, 21 +/- 1.5) give 20.5574 +/- 0.7682.
TEST(Posterior, IsTheWeightedMeanOfContoursAtTheDecisionPressure) {
    const auto two = solve({reading(Modality::Ct, "a", 20, 1, 12), reading(Modality::Ct, "b", 22, 2, 12)});
    EXPECT_NEAR(two.at(12).medianMm, 20.4, 5e-5 + 1e-6);
    EXPECT_NEAR(two.at(12).sdMm, 0.8944, 5e-5);
    EXPECT_NEAR(two.weights()[0].weight, 0.8, 1e-6);
    EXPECT_NEAR(two.weights()[1].weight, 0.2, 1e-6);
    const auto three = solve({reading(Modality::Ct, "a", 20, 1, 12), reading(Modality::Ct, "b", 22, 2, 12),
                              reading(Modality::Ct, "c", 21, 1.5, 12)});
    EXPECT_NEAR(three.at(12).medianMm, 20.5574, 5e-5);
    EXPECT_NEAR(three.at(12).sdMm, 0.7682, 5e-5);
}

// One CT at 8 mmHg, pressure exact: D(16) = y + k 12 ln 2, k normal (0.35, 0.2) cut at 0. By hand: mean of k
// 0.35 + 0.2 h, variance 0.04 (1 - 1.75 h - h^2), h = phi(1.75) / Phi(1.75) = 0.0898778.
TEST(Posterior, CarriesOneReadingAlongTheLawWithTheCutPrior) {
    const auto p = solve({reading(Modality::Ct, "a", 20, 0.5, 8)}, 16);
    const double h = 0.0898778, mean = 0.35 + 0.2 * h, variance = 0.04 * (1.0 - 1.75 * h - h * h);
    const double term = 12.0 * std::log(2.0);
    EXPECT_NEAR(p.at(16).meanMm, 20.0 + mean * term, kIntegrationMm);
    EXPECT_NEAR(p.at(16).sdMm, std::sqrt(0.25 + variance * term * term), kIntegrationMm);
    EXPECT_NEAR(p.slope().meanMmPerMmHg, mean, 1e-6);
    EXPECT_NEAR(p.slope().patientShare, 0.0, 1e-6);
    EXPECT_TRUE(hasNotice(p, "slope-assumed"));
    const auto line = solve({reading(Modality::Ct, "a", 20, 0.5, 8)}, 16, PressureLaw::StraightLine);
    EXPECT_NEAR(line.at(16).meanMm, 20.0 + mean * 8.0, kIntegrationMm);
}

TEST(Posterior, TakesTheBiasOfTheKindOff) {
    // 2D echo ellipse: -0.5 +/- 1.5 against the contour.
    const auto p = solve({reading(Modality::Echo2d, "a", 20, 0.8, 12)});
    EXPECT_NEAR(p.at(12).meanMm, 20.5, 1e-6);
    EXPECT_NEAR(p.at(12).sdMm, std::hypot(0.8, 1.5), 1e-6);
    EXPECT_TRUE(hasNotice(p, "no-ct-contour"));
}

TEST(Posterior, SharesTheBiasAmongReadingsOfOneKind) {
    // The mean of a hundred echo readings still carries the whole bias.
    std::vector<Observation> all(100, reading(Modality::Echo2d, "a", 20, 0.8, 12));
    const auto p = solve(all);
    EXPECT_NEAR(p.at(12).sdMm, std::hypot(0.08, 1.5), 1e-5);
    EXPECT_NEAR(p.weights()[7].weight, 0.01, 1e-6);
}

TEST(Posterior, LearnsTheSlopeFromTwoStatesOfOneModality) {
    const auto p = solve({reading(Modality::Echo2d, "dry", 18, 0.1, 6), reading(Modality::Echo2d, "filled", 22, 0.1, 15)});
    EXPECT_NEAR(p.slope().meanMmPerMmHg, 4.0 / (12.0 * std::log(15.0 / 6.0)), 0.005);
    EXPECT_GT(p.slope().patientShare, 0.98);
    EXPECT_FALSE(hasNotice(p, "slope-assumed"));
}

TEST(Posterior, SharesOnePressureErrorWithinAState) {
    // Two readings in one state with the pressure unknown stay as far from the decision pressure as one.
    Observation a = reading(Modality::Ct, "a", 20, 0.05), b = a;
    const double one = solve({a}).at(12).sdMm, two = solve({a, b}).at(12).sdMm;
    EXPECT_NEAR(two, one, 0.01);
    b.state = "b";
    EXPECT_LT(solve({a, b}).at(12).sdMm, 0.9 * one);
}

TEST(Posterior, WeightsAddToOneAndAreTheDerivativeOfTheAnswer) {
    std::vector<Observation> all = {reading(Modality::Ct, "a", 23, 0.5), reading(Modality::Echo2d, "b", 20.5, 0.8, 7),
                                    reading(Modality::Echo3d, "b", 21.0, 0.7, 7)};
    all[0].condition = Condition::MitralRegurgitation;
    const auto p = solve(all);
    EXPECT_NEAR(sensitivitySum(p), 1.0, 1e-12);
    double weights = 0.0;
    for (std::size_t i = 0; i < all.size(); ++i) {
        weights += p.weights()[i].weight;
        auto moved = all;
        moved[i].valueMm += 0.05;
        const double up = solve(moved).at(12).meanMm;
        moved[i].valueMm -= 0.1;
        const double slope = (up - solve(moved).at(12).meanMm) / 0.1;
        EXPECT_NEAR(p.weights()[i].sensitivity, slope, 0.01) << i; // the integration's noise over u^2
    }
    EXPECT_NEAR(weights, 1.0, 1e-12);
}

TEST(Posterior, KeepsWhatCannotCountWithWeightZeroAndTheReason) {
    auto ct = reading(Modality::Ct, "a", 23, 0.5, 12);
    auto largest = reading(Modality::Echo2d, "a", 25, 0.8, 12);
    largest.derivation = Derivation::LargestOfViews;
    auto single = reading(Modality::Fluoroscopy, "a", 22, 1.0, 12);
    auto other = ct;
    other.quantity = Quantity::LandingZoneLongestDiameter;
    auto implanted = ct;
    implanted.stage = Stage::AfterRelease;
    const auto p = solve({ct, largest, single, other, implanted});
    EXPECT_NEAR(p.weights()[0].weight, 1.0, 1e-12);
    const char* words[] = {"largest of several views", "single view", "another quantity", "implant"};
    for (std::size_t i = 1; i < 5; ++i) {
        EXPECT_EQ(p.weights()[i].weight, 0.0);
        EXPECT_THAT(p.weights()[i].reason, HasSubstr(words[i - 1]));
        EXPECT_FALSE(p.weights()[i].residualMm);
    }
    EXPECT_NEAR(p.at(12).medianMm, 23.0, 1e-6);
}

TEST(Posterior, TakesAViewWhoseWidthCtPredicts) {
    auto view = reading(Modality::Fluoroscopy, "a", 20, 1.0, 12);
    view.contourPerView = 1.1; // the contour's diameter is a tenth more than its width in that view
    const auto p = solve({view});
    EXPECT_NEAR(p.at(12).meanMm, 22.0 + 0.5, 1e-6);
    EXPECT_NEAR(p.at(12).sdMm, std::hypot(1.1, 2.0), 1e-6);
}

TEST(Posterior, JointChanceIsBoundedByItsParts) {
    const auto p = solve({reading(Modality::Ct, "a", 22, 0.5), reading(Modality::Echo2d, "b", 20, 0.8, 7)});
    for (const double high : {19.0, 24.0}) { // inside the valid range, and outside
        const double one = p.probabilityWithin(6, 19, 22), two = p.probabilityWithin(high, 20, 26);
        const double both = p.probabilityBothWithin(6, 19, 22, high, 20, 26);
        EXPECT_LE(both, std::min(one, two) + 1e-4);
        EXPECT_GE(both, one + two - 1.0 - 1e-4);
        EXPECT_NEAR(p.probabilityBothWithin(6, 19, 22, high, -kInfinity, kInfinity), one, 1e-3);
        EXPECT_NEAR(p.probabilityBothWithin(6, 19, 22, 6, 20, 24), p.probabilityWithin(6, 20, 22), 1e-3);
    }
}

TEST(Posterior, WidensAndAnnouncesOutsideTheValidRange) {
    const auto p = solve({reading(Modality::Ct, "a", 20, 0.1, 12)});
    // SD of the pressure term at 25 mmHg: 1.5 times k's SD times 12 ln(25 / 12).
    const double sd = 0.18272 * 12.0 * std::log(25.0 / 12.0) * 1.5;
    EXPECT_NEAR(p.at(25).sdMm, std::hypot(sd, 0.1), 0.01);
    EXPECT_TRUE(p.at(25).extrapolated);
    EXPECT_FALSE(p.at(20).extrapolated);
    EXPECT_FALSE(hasNotice(p, "extrapolated"));
    // The same reading, carried from inside to a decision pressure outside: as wide.
    const auto outside = solve({reading(Modality::Ct, "a", 20, 0.1, 12)}, 25);
    EXPECT_NEAR(outside.at(25).sdMm, p.at(25).sdMm, 0.01);
    EXPECT_TRUE(hasNotice(outside, "extrapolated"));
    EXPECT_TRUE(hasNotice(solve({reading(Modality::Ct, "a", 20, 0.1, 26)}), "extrapolated"));
}

TEST(Posterior, LetsTheVWaveStretchEndSystolicReadingsOnly) {
    auto systole = reading(Modality::Ct, "a", 23, 0.3, 12);
    systole.phase = Phase::EndSystole;
    systole.vWaveMmHg = 20.0;
    auto other = systole;
    other.phase = Phase::Other;
    auto unknown = systole;
    unknown.phase = Phase::Unknown;
    const double atSystole = solve({systole}).at(12).meanMm, atOther = solve({other}).at(12).meanMm;
    EXPECT_NEAR(atOther, 23.0, 1e-6);
    // w uniform: mean of 12 ln((12 + 8 w) / 12) over w = 3.3850 (by hand: 12 (20/8 ln(20/12) - 1)); k's mean 0.36798.
    EXPECT_NEAR(atSystole, 23.0 - 0.36798 * 12.0 * (2.5 * std::log(20.0 / 12.0) - 1.0), kIntegrationMm);
    const auto mixed = solve({unknown});
    EXPECT_NEAR(mixed.at(12).meanMm, 0.5 * (atSystole + atOther), 2 * kIntegrationMm);
    EXPECT_TRUE(hasNotice(mixed, "phase-unknown"));
    systole.vWaveMmHg.reset();
    const auto without = solve({systole});
    EXPECT_NEAR(without.at(12).meanMm, 23.0, 1e-6);
    EXPECT_TRUE(hasNotice(without, "v-wave-missing"));
}

TEST(Posterior, TakesTheAssumedPressureOfTheConditionAndSaysSo) {
    auto o = reading(Modality::Ct, "a", 23, 0.5);
    o.condition = Condition::MitralRegurgitation;
    const auto p = solve({o});
    EXPECT_NEAR(p.states()[0].meanMmHg, 17.0, 0.1); // a little more: pressures below 3 count as 3
    EXPECT_NEAR(p.states()[0].sdMmHg, 6.0, 0.1);
    EXPECT_FALSE(p.states()[0].measured);
    EXPECT_TRUE(hasNotice(p, "pressure-unknown"));
    o.vWaveMmHg = 30.0;
    const auto v = solve({o});
    EXPECT_NEAR(v.states()[0].meanMmHg, 18.0, 0.1);
    EXPECT_TRUE(hasNotice(v, "mean-from-v-wave"));
}

TEST(Posterior, SaysWhenReadingsContradictEachOther) {
    const auto p = solve({reading(Modality::Ct, "a", 17, 0.3, 12), reading(Modality::Ct, "b", 23, 0.3, 12)});
    EXPECT_TRUE(hasNotice(p, "readings-contradict"));
    EXPECT_NEAR(p.at(12).medianMm, 20.0, 1e-6);
    EXPECT_FALSE(hasNotice(solve({reading(Modality::Ct, "a", 20, 0.3, 12), reading(Modality::Ct, "b", 20.5, 0.3, 12)}),
                           "readings-contradict"));
    // Wider at the lower pressure: against the law's sign.
    EXPECT_TRUE(hasNotice(solve({reading(Modality::Ct, "a", 24, 0.3, 6), reading(Modality::Ct, "b", 20, 0.3, 16)}),
                          "readings-contradict"));
}

TEST(Posterior, StandsExtremes) {
    std::vector<std::vector<Observation>> zoo;
    zoo.push_back(std::vector<Observation>(5, reading(Modality::Ct, "a", 20, 1e-9))); // identical, no uncertainty
    zoo.push_back({reading(Modality::Echo2d, "a", 20, 0.001, 6), reading(Modality::Echo2d, "b", 30, 0.001, 15),
                   reading(Modality::Ct, "c", 10, 0.001, 20)});        // hopelessly contradictory
    zoo.push_back({reading(Modality::Ct, "a", 24, 0.02, 3), reading(Modality::Ct, "b", 12, 0.02, 20)}); // slope cut hard
    zoo.push_back({reading(Modality::Ct, "a", 20, 0.5, 0.5)});         // pressure below the cut
    zoo.push_back({reading(Modality::Ct, "a", 20, 50.0, 60)});
    for (std::size_t i = 0; i < zoo.size(); ++i) {
        const auto p = solve(zoo[i]);
        for (const double at : {1.0, 3.0, 12.0, 40.0}) {
            const DiameterAt d = p.at(at);
            EXPECT_TRUE(std::isfinite(d.medianMm) && std::isfinite(d.sdMm)) << i;
            EXPECT_LE(d.lower95Mm, d.medianMm) << i;
            EXPECT_LE(d.medianMm, d.upper95Mm) << i;
        }
        EXPECT_GE(p.slope().meanMmPerMmHg, 0.0) << i;
        EXPECT_TRUE(std::isfinite(p.weights()[0].weight)) << i;
    }
    EXPECT_TRUE(hasNotice(solve(zoo[0]), "uncertainty-raised"));
}

TEST(Posterior, PredictsAReadingAndDrawsPatientsAlike) {
    const auto p = solve({reading(Modality::Ct, "a", 23, 0.5), reading(Modality::Echo2d, "b", 20.5, 0.8, 7)});
    FurtherReading again{Modality::Echo2d, Derivation::EllipseFromAngles, "b", Phase::Other, {}, 0.5};
    FurtherReading fresh{Modality::Fluoroscopy, Derivation::SingleView, "", Phase::Other, 10.0, {}};
    const FurtherReading asked[] = {again, fresh};
    const double pressures[] = {12.0, 6.0};
    const auto draws = p.draws(pressures, asked, 4000);
    ASSERT_TRUE(draws) << draws.error().message;
    for (int j = 0; j < 2; ++j) {
        const auto expected = p.predictive(asked[j]);
        ASSERT_TRUE(expected);
        double sum = 0, squares = 0, width = 0;
        for (const auto& d : *draws) {
            sum += d.readingsMm[j];
            squares += d.readingsMm[j] * d.readingsMm[j];
            width += d.diametersMm[j];
        }
        const double mean = sum / 4000, sd = std::sqrt(squares / 4000 - mean * mean);
        EXPECT_NEAR(mean, expected->mean(), 0.03 * expected->sd()); // evenly spread: better than 1 / sqrt(4000)
        EXPECT_NEAR(sd, expected->sd(), 0.05 * expected->sd());
        EXPECT_NEAR(width / 4000, p.at(pressures[j]).meanMm, 0.03 * p.at(pressures[j]).sdMm);
    }
    // Read again by the same echo in the same state: its bias and pressure are already in the first reading.
    EXPECT_LT(p.predictive(again)->sd(), 1.2);
    EXPECT_GT(p.predictive(fresh)->sd(), 2.0);
    EXPECT_EQ(p.draws(pressures, asked, 10)->at(3).readingsMm, p.draws(pressures, asked, 10)->at(3).readingsMm);
}

TEST(Posterior, RefusesWhatItCannotPredict) {
    const auto p = solve({reading(Modality::Ct, "a", 23, 0.5)});
    FurtherReading further;
    EXPECT_THAT(p.predictive(further).error().message, HasSubstr("without a state or a pressure"));
    further.state = "elsewhere";
    EXPECT_EQ(p.predictive(further).error().code, ErrorCode::NotFound);
    EXPECT_THAT(p.predictive(further).error().message, HasSubstr("\"elsewhere\""));
    EXPECT_THAT(p.draws({}, {}, 0).error().message, HasSubstr("at least one"));
}

TEST(Posterior, RefusesUnusableReadingsInWords) {
    const auto good = reading(Modality::Ct, "a", 23, 0.5, 12);
    auto bad = good;
    bad.valueMm = -1;
    EXPECT_THAT(refusal({good, bad}).message, HasSubstr("reading 2: its value in mm is -1, which must be above 0"));
    bad.valueMm = std::nan("");
    EXPECT_EQ(refusal({bad}).code, ErrorCode::NonFinite);
    bad = good;
    bad.state = "";
    EXPECT_THAT(refusal({bad}).message, HasSubstr("names no state"));
    bad = good;
    bad.pressureMmHg = 13;
    EXPECT_THAT(refusal({good, bad}).message, HasSubstr("State \"a\" has two different values of its pressure"));
    bad = good;
    bad.condition = Condition::Hydrated;
    EXPECT_THAT(refusal({good, bad}).message, HasSubstr("two different values of its condition"));
    EXPECT_EQ(refusal({}).code, ErrorCode::NothingUsable);
    bad = good;
    bad.quantity = Quantity::Depth;
    EXPECT_THAT(refusal({bad}).message, HasSubstr("none of the 1 readings counts. Reading 1: It is the depth"));
    EXPECT_THAT(refusal({good}, 2.0).message, HasSubstr("3 mmHg and more"));
    Priors priors;
    priors.diameterSlope.sd = 0.0;
    EXPECT_THAT(refusal({good}, 12, priors).message, HasSubstr("slope of a diameter"));
    EXPECT_FALSE(posterior(std::vector{good}, kQuantity, Pressure::fromMmHg(12), PressureLaw::Logarithmic, {}, {8}));
}
