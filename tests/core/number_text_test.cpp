#include "core/number_text.h"

#include <clocale>
#include <gtest/gtest.h>
#include <limits>

using namespace gauge::core;

TEST(Fixed, RoundsToTheDigitsAskedFor) {
    EXPECT_EQ(fixed(12.0, 1), "12.0");
    EXPECT_EQ(fixed(-0.55, 0), "-1");
    EXPECT_EQ(fixed(2.345678, 3), "2.346");
    EXPECT_EQ(fixed(1e300, 0).size(), 301u);
}

TEST(Fixed, GivesZeroNoSign) {
    EXPECT_EQ(fixed(-0.04, 1), "0.0");
    EXPECT_EQ(fixed(-0.06, 1), "-0.1");
    EXPECT_EQ(fixed(-0.0, 0), "0");
}

TEST(Fixed, NamesWhatIsNoNumber) {
    EXPECT_EQ(fixed(std::numeric_limits<double>::infinity(), 1), "inf");
    EXPECT_EQ(fixed(-std::numeric_limits<double>::infinity(), 1), "-inf");
    EXPECT_EQ(fixed(std::numeric_limits<double>::quiet_NaN(), 1), "nan");
}

TEST(General, HasNoNeedlessDigits) {
    EXPECT_EQ(general(12.0), "12");
    EXPECT_EQ(general(0.25), "0.25");
    EXPECT_EQ(general(1.0 / 3.0), "0.333333");
    EXPECT_EQ(general(1.0 / 3.0, 2), "0.33");
}

TEST(NumberText, HasAPointInAnyLanguage) {
    const std::string before = std::setlocale(LC_NUMERIC, nullptr);
    // Where none of these is installed the check is that of the language at hand.
    for (const char* name : {"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8", ""})
        if (std::setlocale(LC_NUMERIC, name)) break;
    EXPECT_EQ(fixed(0.5, 1), "0.5");
    EXPECT_EQ(general(0.5), "0.5");
    std::setlocale(LC_NUMERIC, before.c_str());
}
