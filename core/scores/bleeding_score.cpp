#include "core/scores/bleeding_score.h"

#include <array>
#include <cmath>
#include <string>

namespace gauge::core {

namespace {

constexpr std::array kBleedingRates = {1.13, 1.02, 1.88, 3.74, 8.70, 12.50}; // major bleeds per 100 patient-years, by score

tl::unexpected<Error> refused(const std::string& why) {
    return failure(ErrorCode::InvalidArgument, "Cannot give HAS-BLED: " + why);
}

std::string whole(double value) { return std::to_string(std::lround(value)); }

Result<void> checkNumbers(const BleedingItems& items) {
    for (const double value : {items.ageYears, items.systolicMmHg.value_or(0.0), items.drinksPerWeek.value_or(0.0)})
        if (!std::isfinite(value))
            return failure(ErrorCode::NonFinite, "Cannot give HAS-BLED: a value is no finite number.");
    if (items.ageYears < 18.0 || items.ageYears > 120.0)
        return refused("an age of " + whole(items.ageYears) + " years is outside 18 to 120; the score is for adults.");
    if (items.systolicMmHg && (*items.systolicMmHg < 40.0 || *items.systolicMmHg > 300.0))
        return refused("a systolic pressure of " + whole(*items.systolicMmHg) + " mmHg is outside 40 to 300.");
    if (items.drinksPerWeek && *items.drinksPerWeek < 0.0) return refused("the number of drinks a week is below 0.");
    return {};
}

Result<void> checkContradictions(const BleedingItems& items) {
    if (items.labileInr && !items.takesVitaminKAntagonist)
        return refused("a labile INR is marked, but no vitamin K antagonist is taken; the item counts only under one.");
    if (items.systolicMmHg && items.uncontrolledHypertension != (*items.systolicMmHg > 160.0))
        return refused("a systolic pressure of " + whole(*items.systolicMmHg) + " mmHg and hypertension marked as " +
                       (items.uncontrolledHypertension ? "uncontrolled" : "controlled") +
                       " contradict each other; uncontrolled means above 160 mmHg.");
    if (items.drinksPerWeek && items.alcohol != (*items.drinksPerWeek >= 8.0))
        return refused(whole(*items.drinksPerWeek) + " drinks a week and alcohol marked as " +
                       (items.alcohol ? "counting" : "not counting") +
                       " contradict each other; it counts from 8 drinks a week.");
    return {};
}

} // namespace

Result<BleedingScore> hasBled(const BleedingItems& items) {
    if (auto checked = checkNumbers(items); !checked) return tl::make_unexpected(checked.error());
    if (auto checked = checkContradictions(items); !checked) return tl::make_unexpected(checked.error());
    BleedingScore score;
    const auto count = [&score](bool applies, const char* item) {
        if (!applies) return;
        ++score.points;
        score.counted.push_back(std::string(item) + " 1");
    };
    count(items.uncontrolledHypertension, "uncontrolled hypertension");
    count(items.abnormalRenalFunction, "abnormal renal function");
    count(items.abnormalLiverFunction, "abnormal liver function");
    count(items.stroke, "stroke");
    count(items.bleeding, "bleeding or predisposition");
    count(items.labileInr, "labile INR");
    count(items.ageYears > 65.0, "age over 65");
    count(items.antiplateletOrNsaid, "antiplatelet drug or NSAID");
    count(items.alcohol, "alcohol");
    score.isHigh = score.points >= 3;
    if (score.points < static_cast<int>(kBleedingRates.size()))
        score.rate = PublishedRate{kBleedingRates[score.points], "major bleeding", "Pisters et al., Chest 2010;138:1093-1100",
                                   Basis::Read};
    return score;
}

Result<void> checkTogether(const StrokeItems& stroke, const BleedingItems& bleeding) {
    if (stroke.ageYears != bleeding.ageYears)
        return failure(ErrorCode::InvalidArgument, "The two scores were given different ages, " +
                                                       whole(stroke.ageYears) + " and " + whole(bleeding.ageYears) +
                                                       " years.");
    if (bleeding.stroke && !stroke.strokeOrEmbolism)
        return failure(ErrorCode::InvalidArgument,
                       "A stroke is marked for HAS-BLED but not for the stroke score; mark it in both.");
    if (bleeding.uncontrolledHypertension && !stroke.hypertension)
        return failure(ErrorCode::InvalidArgument, "Uncontrolled hypertension is marked for HAS-BLED, but no hypertension for "
                                                   "the stroke score; mark it in both.");
    return {};
}

} // namespace gauge::core
