#include "core/agreement/bland_altman.h"
#include "core/agreement/intraclass.h"
#include "core/agreement/line_fit.h"
#include "core/agreement/published_limits.h"
#include "core/agreement/repeatability.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace gauge::core;
using testing::HasSubstr;

namespace {

// Bland and Altman, Lancet 1986;i:307-310: peak expiratory flow, l/min.
const std::vector<double> kWright1 = {494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427};
const std::vector<double> kWright2 = {490, 397, 512, 401, 470, 611, 415, 431, 638, 429, 420, 633, 275, 492, 165, 372, 421};
const std::vector<double> kMini1 = {512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451};
const std::vector<double> kMini2 = {525, 415, 508, 444, 500, 625, 460, 390, 642, 432, 420, 605, 227, 467, 268, 370, 443};

// Shrout and Fleiss, Psychol Bull 1979;86:420-428, table 2.
Eigen::MatrixXd shroutFleiss() {
    Eigen::MatrixXd m(6, 4);
    m << 9, 2, 5, 8, 6, 1, 3, 2, 8, 4, 6, 8, 7, 1, 2, 6, 10, 5, 6, 9, 6, 2, 4, 7;
    return m;
}

} // namespace

// Published: mean -2.1, SD 38.8, SE of the mean 9.4, of a limit 16.3, interval of the mean -22.0 to 17.8. The digits beyond
// follow from the data by the paper's formulae.
TEST(BlandAltman, GivesThePublishedPeakFlows) {
    const auto a = blandAltman(kWright1, kMini1);
    ASSERT_TRUE(a);
    EXPECT_EQ(a->pairs, 17);
    EXPECT_NEAR(a->bias, -2.117647059, 1e-9);
    EXPECT_NEAR(a->sd, 38.765129874, 1e-9);
    EXPECT_NEAR(a->biasStandardError, 9.401925004, 1e-9);
    EXPECT_NEAR(a->limitStandardError, 16.284611795, 1e-9);
    EXPECT_NEAR(a->biasInterval.lower, -22.04883769, 1e-8);
    EXPECT_NEAR(a->biasInterval.upper, 17.81354358, 1e-8);
    // With 1.96 for the paper's rounded 2; the published limits -79.7 and 75.5 come from rounded figures.
    EXPECT_NEAR(a->lowerLimit, -78.097301611, 2e-3);
    EXPECT_NEAR(a->upperLimit, 73.862007493, 2e-3);
    // Published -114.3 to -45.1 about -79.7: 34.6 on both sides; t(16) = 2.12 times 16.3.
    EXPECT_NEAR(a->lowerLimitInterval.upper - a->lowerLimit, 34.6, 0.1);
    EXPECT_NEAR(a->upperLimit - a->upperLimitInterval.lower, 34.6, 0.1);
}

TEST(BlandAltman, MeetsTheSecondPartOfThePaper) {
    std::vector<double> wright, mini;
    for (std::size_t i = 0; i < kWright1.size(); ++i) {
        wright.push_back(0.5 * (kWright1[i] + kWright2[i]));
        mini.push_back(0.5 * (kMini1[i] + kMini2[i]));
    }
    const auto a = blandAltman(wright, mini);
    EXPECT_NEAR(a->bias, -6.0294, 5e-5);
    EXPECT_NEAR(a->sd, 33.2041, 5e-5);
    EXPECT_NEAR(blandAltman(kWright1, kWright2)->bias, 4.941, 5e-4);
    EXPECT_NEAR(blandAltman(kMini1, kMini2)->sd, 28.872, 5e-4);
}

TEST(BlandAltman, TurnsWithTheOrderAndSeesGrowingDifferences) {
    const auto a = blandAltman(kWright1, kMini1), b = blandAltman(kMini1, kWright1);
    EXPECT_NEAR(a->bias, -b->bias, 1e-12);
    EXPECT_NEAR(a->lowerLimit, -b->upperLimit, 1e-12);
    std::vector<double> x, y;
    for (int i = 0; i < 20; ++i) {
        x.push_back(15 + i + 0.1 * std::sin(7 * i));
        y.push_back(15 + 0.9 * i);
    }
    EXPECT_NEAR(blandAltman(x, y)->proportionalSlope, 0.105, 0.01);
    EXPECT_LT(blandAltman(x, y)->proportionalChance, 1e-6);
    const std::vector<double> same(5, 3.0);
    EXPECT_EQ(blandAltman(same, same)->proportionalChance, 1.0);
}

TEST(BlandAltman, RefusesInWords) {
    const std::vector<double> two = {1, 2}, three = {1, 2, 3}, bad = {1, 2, std::nan("")};
    EXPECT_THAT(blandAltman(two, three).error().message, HasSubstr("2 readings with 3"));
    EXPECT_EQ(blandAltman(two, two).error().code, ErrorCode::TooFewPoints);
    EXPECT_EQ(blandAltman(three, bad).error().code, ErrorCode::NonFinite);
    EXPECT_EQ(blandAltman(three, three, 1.0).error().code, ErrorCode::InvalidArgument);
}

// Published .17, .29, .71, .44, .62, .91 (from memory); mean squares and further digits computed from the table.
TEST(IntraclassCorrelations, GiveThePublishedSixForms) {
    const auto c = intraclassCorrelations(shroutFleiss());
    ASSERT_TRUE(c) << c.error().message;
    EXPECT_NEAR(c->betweenTargets, 11.2416667, 1e-7);
    EXPECT_NEAR(c->withinTargets, 6.2638889, 1e-7);
    EXPECT_NEAR(c->betweenJudges, 32.4861111, 1e-7);
    EXPECT_NEAR(c->residual, 1.0194444, 1e-7);
    EXPECT_NEAR(c->single1.value, 0.165741768, 1e-9);
    EXPECT_NEAR(c->single2.value, 0.289763780, 1e-9);
    EXPECT_NEAR(c->single3.value, 0.714840715, 1e-9);
    EXPECT_NEAR(c->mean1.value, 0.442797134, 1e-9);
    EXPECT_NEAR(c->mean2.value, 0.620050548, 1e-9);
    EXPECT_NEAR(c->mean3.value, 0.909315542, 1e-9);
    // Intervals as statistics programs print them for this table, to two or three figures (from memory).
    EXPECT_NEAR(c->single1.interval.lower, -0.133, 1e-3);
    EXPECT_NEAR(c->single1.interval.upper, 0.723, 1e-3);
    EXPECT_NEAR(c->single2.interval.lower, 0.019, 1e-3);
    EXPECT_NEAR(c->single2.interval.upper, 0.761, 1e-3);
    EXPECT_NEAR(c->single3.interval.lower, 0.342, 1e-3);
    EXPECT_NEAR(c->single3.interval.upper, 0.946, 1e-3);
    EXPECT_NEAR(c->mean2.interval.lower, 0.071, 1e-3);
    EXPECT_NEAR(c->mean2.interval.upper, 0.927, 1e-3);
}

TEST(IntraclassCorrelations, IgnoreConstantsOfJudgesInForm3Only) {
    Eigen::MatrixXd moved = shroutFleiss();
    moved.col(1).array() += 7.0;
    const auto a = intraclassCorrelations(shroutFleiss()), b = intraclassCorrelations(moved);
    EXPECT_NEAR(a->single3.value, b->single3.value, 1e-12);
    EXPECT_GT(std::abs(a->single2.value - b->single2.value), 0.005);
}

TEST(IntraclassCorrelations, RefuseInWords) {
    EXPECT_EQ(intraclassCorrelations(Eigen::MatrixXd::Zero(1, 3)).error().code, ErrorCode::TooFewPoints);
    EXPECT_THAT(intraclassCorrelations(Eigen::MatrixXd::Constant(4, 3, 21.0)).error().message, HasSubstr("all targets read alike"));
    Eigen::MatrixXd m = shroutFleiss();
    m.col(1) = m.col(0).array() + 1.0;
    m.col(2) = m.col(3) = m.col(0);
    EXPECT_THAT(intraclassCorrelations(m).error().message, HasSubstr("differ by constants only"));
    m(0, 0) = INFINITY;
    EXPECT_EQ(intraclassCorrelations(m).error().code, ErrorCode::NonFinite);
}

// Same paper: within-subject SD 15.3 (Wright) and 19.9 (mini meter).
TEST(Repeatability, GivesThePublishedWithinSubjectSds) {
    const auto wright = repeatabilityOfPairs(kWright1, kWright2), mini = repeatabilityOfPairs(kMini1, kMini2);
    EXPECT_NEAR(wright->withinSubjectSd, 15.307, 5e-4);
    EXPECT_NEAR(mini->withinSubjectSd, 19.911, 5e-4);
    EXPECT_NEAR(wright->coefficient, 2.7718 * 15.307, 0.01);
    EXPECT_EQ(wright->degrees, 17.0);
    // SciPy 1.10: chi2.ppf([0.975, 0.025], 17) = 30.19100912, 7.56418645.
    EXPECT_NEAR(wright->withinSubjectSdInterval.lower, 15.307 * std::sqrt(17 / 30.19100912), 1e-3);
    EXPECT_NEAR(wright->withinSubjectSdInterval.upper, 15.307 * std::sqrt(17 / 7.56418645), 1e-3);
}

TEST(Repeatability, PoolsUnequalNumbersByDegreesAndRefuses) {
    // Sums of squares 2 and 2 on 2 and 1 degrees.
    const auto r = repeatability({{1, 2, 3}, {5, 7}, {9}});
    EXPECT_EQ(r->subjects, 2);
    EXPECT_NEAR(r->withinSubjectSd, std::sqrt(4.0 / 3.0), 1e-12);
    EXPECT_THAT(repeatability({{1}, {2}}).error().message, HasSubstr("none of the 2 subjects was read twice"));
    EXPECT_EQ(repeatability({{1, std::nan("")}}).error().code, ErrorCode::NonFinite);
    const std::vector<double> one = {1}, two = {1, 2};
    EXPECT_EQ(repeatabilityOfPairs(one, two).error().code, ErrorCode::InvalidArgument);
}

// NIST StRD, Norris: certified values.
TEST(FitLine, MeetsNistNorris) {
    const std::vector<double> x = {0.2,   337.4, 118.2, 884.6, 10.1,  226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4,
                                   0.6,   775.5, 666.9, 338.0, 447.5, 11.6,  556.0, 228.1, 995.8, 887.6, 120.2, 0.3,
                                   0.3,   556.8, 339.1, 887.2, 999.0, 779.0, 11.1,  118.3, 229.2, 669.1, 448.9, 0.5};
    const std::vector<double> y = {0.1,   338.8, 118.1, 888.0, 9.2,   228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3,
                                   0.1,   778.1, 668.8, 339.3, 448.9, 10.8,  557.7, 228.3, 998.0, 888.8, 119.6, 0.3,
                                   0.6,   557.6, 339.3, 888.0, 998.5, 778.9, 10.2,  117.6, 228.9, 668.4, 449.2, 0.2};
    const auto f = fitLine(x, y);
    ASSERT_TRUE(f);
    EXPECT_NEAR(f->intercept, -0.262323073774029, 1e-11);
    EXPECT_NEAR(f->slope, 1.00211681802045, 1e-13);
    EXPECT_NEAR(f->interceptStandardError, 0.232818234301152, 1e-11);
    EXPECT_NEAR(f->slopeStandardError, 0.429796848199937e-3, 1e-14);
    EXPECT_NEAR(f->residualSquares, 26.6173985294224, 1e-10);
}

// Pearson's points with York's weights: slope -0.48053340745, intercept 5.47991022403 (published).
TEST(FitLineWithErrors, MeetsPearsonWithYorksWeights) {
    const std::vector<double> x = {0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4};
    const std::vector<double> y = {5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5};
    std::vector<double> ux, uy;
    for (const double w : {1000., 1000., 500., 800., 200., 80., 60., 20., 1.8, 1.})
        ux.push_back(1 / std::sqrt(w));
    for (const double w : {1., 1.8, 4., 8., 20., 20., 70., 70., 100., 500.})
        uy.push_back(1 / std::sqrt(w));
    const auto f = fitLineWithErrors(x, ux, y, uy);
    ASSERT_TRUE(f) << f.error().message;
    EXPECT_NEAR(f->slope, -0.48053340745, 1e-10);
    EXPECT_NEAR(f->intercept, 5.47991022403, 1e-9);
    EXPECT_NEAR(f->slopeStandardError, 0.057985009, 1e-6);
    EXPECT_NEAR(f->interceptStandardError, 0.294970735, 1e-6);
    EXPECT_NEAR(f->residualSquares, 11.8663532, 1e-6);
    EXPECT_NEAR(fitLine(x, y)->slope, -0.5395772755, 1e-9);
    uy[3] = 0;
    EXPECT_THAT(fitLineWithErrors(x, ux, y, uy).error().message, HasSubstr("two standard uncertainties above 0"));
}

TEST(FitLine, RefusesInWords) {
    const std::vector<double> same = {2, 2, 2}, three = {1, 2, 3}, two = {1, 2};
    EXPECT_EQ(fitLine(same, three).error().code, ErrorCode::Degenerate);
    EXPECT_EQ(fitLine(two, two).error().code, ErrorCode::TooFewPoints);
    EXPECT_EQ(fitLine(two, three).error().code, ErrorCode::InvalidArgument);
}

TEST(PublishedLimits, SpeakOnlyBeyondThem) {
    Observation ct, echo;
    ct.state = "ct";
    ct.valueMm = 25.0;
    echo.state = "echo";
    echo.modality = Modality::Echo2d;
    echo.derivation = Derivation::EllipseFromAngles;
    echo.valueMm = 19.0; // -6.0; limits -6.4 to 1.8
    EXPECT_FALSE(beyondPublishedLimits(echo, ct));
    echo.valueMm = 18.0;
    const auto notice = beyondPublishedLimits(echo, ct);
    ASSERT_TRUE(notice);
    EXPECT_EQ(notice->code, "beyond-published-limits");
    EXPECT_THAT(notice->text, HasSubstr("by -7 mm; published differences lie between -6.4 and 1.8 mm (computed"));
    echo.modality = Modality::Echo3d;
    echo.derivation = Derivation::Contour;
    echo.valueMm = 22.0; // -3.0; limits -2.7 to 2.3
    EXPECT_TRUE(beyondPublishedLimits(echo, ct));
    echo.derivation = Derivation::LargestOfViews;
    EXPECT_FALSE(beyondPublishedLimits(echo, ct));
    echo.modality = Modality::Fluoroscopy;
    echo.derivation = Derivation::EllipseFromAngles;
    EXPECT_FALSE(beyondPublishedLimits(echo, ct));
    EXPECT_EQ(observerSpreads().front().basis, Basis::Memory);
}
