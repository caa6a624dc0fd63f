// Agreement statistics against SciPy.
#include "core/agreement/bland_altman.h"
#include "core/agreement/intraclass.h"
#include "core/agreement/line_fit.h"

#include "tests/outside/python_reference.h"

#include <gtest/gtest.h>
#include <random>

using namespace gauge::core;
using namespace gauge::test;

namespace {

constexpr double kDigits = 1e-9; // both sides in double, few operations

} // namespace

TEST(AgreementOutside, BlandAltmanEqualsScipy) {
    std::mt19937 random(11);
    std::normal_distribution<double> noise;
    std::vector<double> a, b;
    for (int i = 0; i < 23; ++i) {
        const double width = 20 + 4 * noise(random);
        a.push_back(width + 0.8 * noise(random));
        b.push_back(0.95 * width - 0.5 + noise(random));
    }
    const auto ours = blandAltman(a, b);
    const auto theirs = askPython("paired_differences", {{"first", a}, {"second", b}});
    EXPECT_NEAR(ours->bias, theirs["mean"].get<double>(), kDigits);
    EXPECT_NEAR(ours->biasInterval.lower, theirs["interval"][0].get<double>(), kDigits);
    EXPECT_NEAR(ours->biasInterval.upper, theirs["interval"][1].get<double>(), kDigits);
    EXPECT_NEAR(ours->proportionalSlope, theirs["slope"].get<double>(), kDigits);
    EXPECT_NEAR(ours->proportionalChance, theirs["chance"].get<double>(), kDigits);
}

TEST(AgreementOutside, IntraclassCorrelationEqualsATwoWayFit) {
    std::mt19937 random(12);
    std::normal_distribution<double> noise;
    Eigen::MatrixXd m(9, 3);
    std::vector<std::vector<double>> rows(9, std::vector<double>(3));
    for (int i = 0; i < 9; ++i) {
        const double target = 22 + 3 * noise(random);
        for (int j = 0; j < 3; ++j)
            rows[i][j] = m(i, j) = target + 0.7 * j + 1.1 * noise(random);
    }
    const auto ours = intraclassCorrelations(m);
    const auto theirs = askPython("consistency_correlation", {{"readings", rows}});
    EXPECT_NEAR(ours->single3.value, theirs[0].get<double>(), kDigits);
    EXPECT_NEAR(ours->single3.interval.lower, theirs[1].get<double>(), kDigits);
    EXPECT_NEAR(ours->single3.interval.upper, theirs[2].get<double>(), kDigits);
}
