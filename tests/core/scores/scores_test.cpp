#include "core/scores/bleeding_score.h"
#include "core/scores/stroke_score.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace gauge::core;
using testing::HasSubstr;

namespace {

StrokeItems all(double age, Sex sex) {
    return {age, sex, true, true, true, true, true};
}

} // namespace

// Items and points: Lip et al., Chest 2010;137:263-272.
TEST(StrokeScore, CountsEveryItemWithItsPoints) {
    EXPECT_EQ(cha2ds2Vasc(all(80, Sex::Female))->points, 9);
    EXPECT_EQ(cha2ds2Vasc(all(80, Sex::Male))->points, 8);
    EXPECT_EQ(cha2ds2Vasc(all(70, Sex::Male))->points, 7);
    EXPECT_EQ(cha2ds2Vasc(all(50, Sex::Male))->points, 6);
    EXPECT_EQ(cha2ds2Va(all(80, Sex::Female))->points, 8);
    StrokeItems one{40, Sex::Male};
    EXPECT_EQ(cha2ds2Vasc(one)->points, 0);
    one.strokeOrEmbolism = true;
    EXPECT_EQ(cha2ds2Vasc(one)->points, 2);
    EXPECT_THAT(cha2ds2Vasc(one)->counted, testing::ElementsAre("stroke, transient attack or embolism 2"));
    StrokeItems ages{0, Sex::Male};
    for (const auto& [age, points] : {std::pair{64.9, 0}, {65.0, 1}, {74.9, 1}, {75.0, 2}}) {
        ages.ageYears = age;
        EXPECT_EQ(cha2ds2Vasc(ages)->points, points) << age;
    }
}

TEST(StrokeScore, CarriesPublishedRatesWithTheirSourceAndTag) {
    StrokeItems items{76, Sex::Female, false, true}; // 4
    const auto s = cha2ds2Vasc(items);
    ASSERT_EQ(s->points, 4);
    ASSERT_EQ(s->rates.size(), 3u);
    EXPECT_EQ(s->rates[0].perHundredYears, 4.0);
    EXPECT_EQ(s->rates[1].perHundredYears, 4.8);
    EXPECT_EQ(s->rates[2].perHundredYears, 6.7);
    EXPECT_THAT(s->rates[1].source, HasSubstr("Friberg"));
    EXPECT_EQ(s->rates[1].basis, Basis::Read);
    EXPECT_EQ(cha2ds2Vasc(all(80, Sex::Female))->rates[0].basis, Basis::Memory);
    EXPECT_EQ(cha2ds2Vasc({40, Sex::Male})->rates[2].basis, Basis::Memory);
    EXPECT_TRUE(cha2ds2Va(items)->rates.empty()) << "no rate is made up";
}

TEST(StrokeScore, RefusesInWords) {
    EXPECT_THAT(cha2ds2Vasc({70, std::nullopt}).error().message, HasSubstr("the sex is not stated"));
    EXPECT_TRUE(cha2ds2Va({70, std::nullopt}));
    EXPECT_THAT(cha2ds2Va({7, Sex::Male}).error().message, HasSubstr("7 years is outside 18 to 120"));
    EXPECT_EQ(cha2ds2Vasc({std::nan(""), Sex::Male}).error().code, ErrorCode::NonFinite);
}

// Items and rates: Pisters et al., Chest 2010;138:1093-1100.
TEST(BleedingScore, CountsEveryItemOnce) {
    BleedingItems items;
    items.ageYears = 66;
    EXPECT_EQ(hasBled(items)->points, 1);
    items.ageYears = 65;
    EXPECT_EQ(hasBled(items)->points, 0);
    EXPECT_EQ(hasBled(items)->rate->perHundredYears, 1.13);
    items = {80, 170.0, true, true, true, true, true, true, true, true, true, 10.0};
    const auto nine = hasBled(items);
    ASSERT_TRUE(nine) << nine.error().message;
    EXPECT_EQ(nine->points, 9);
    EXPECT_TRUE(nine->isHigh);
    EXPECT_FALSE(nine->rate) << "above 5 too few patients were seen";
    items = {};
    items.ageYears = 80;
    items.abnormalRenalFunction = items.bleeding = true;
    EXPECT_EQ(hasBled(items)->points, 3);
    EXPECT_EQ(hasBled(items)->rate->perHundredYears, 3.74);
    EXPECT_TRUE(hasBled(items)->isHigh);
}

TEST(BleedingScore, RefusesImpossibleCombinationsInWords) {
    BleedingItems items;
    items.ageYears = 70;
    items.labileInr = true;
    EXPECT_THAT(hasBled(items).error().message, HasSubstr("no vitamin K antagonist is taken"));
    items.labileInr = false;
    items.systolicMmHg = 150.0;
    items.uncontrolledHypertension = true;
    EXPECT_THAT(hasBled(items).error().message, HasSubstr("150 mmHg and hypertension marked as uncontrolled"));
    items.systolicMmHg = 170.0;
    items.uncontrolledHypertension = false;
    EXPECT_THAT(hasBled(items).error().message, HasSubstr("marked as controlled"));
    items.systolicMmHg = 400.0;
    EXPECT_THAT(hasBled(items).error().message, HasSubstr("outside 40 to 300"));
    items.systolicMmHg.reset();
    items.drinksPerWeek = 3.0;
    items.alcohol = true;
    EXPECT_THAT(hasBled(items).error().message, HasSubstr("counts from 8 drinks"));
    items.drinksPerWeek = -1.0;
    EXPECT_THAT(hasBled(items).error().message, HasSubstr("below 0"));
    items.drinksPerWeek = std::nan("");
    EXPECT_EQ(hasBled(items).error().code, ErrorCode::NonFinite);
    items = {};
    items.ageYears = 10;
    EXPECT_THAT(hasBled(items).error().message, HasSubstr("for adults"));
}

TEST(Scores, MustAgreeOnWhatBothAsk) {
    StrokeItems stroke{70, Sex::Male};
    BleedingItems bleeding;
    bleeding.ageYears = 70;
    EXPECT_TRUE(checkTogether(stroke, bleeding));
    bleeding.stroke = true;
    EXPECT_THAT(checkTogether(stroke, bleeding).error().message, HasSubstr("mark it in both"));
    stroke.strokeOrEmbolism = true;
    EXPECT_TRUE(checkTogether(stroke, bleeding));
    bleeding.uncontrolledHypertension = true;
    EXPECT_THAT(checkTogether(stroke, bleeding).error().message, HasSubstr("no hypertension"));
    bleeding.ageYears = 71;
    EXPECT_THAT(checkTogether(stroke, bleeding).error().message, HasSubstr("70 and 71"));
}
