#include "core/scores/stroke_score.h"

#include <array>
#include <cmath>

namespace gauge::core {

namespace {

struct Rates {
    double adjusted, ischaemic, anyEmbolism;
};
// By score 0 to 9. Adjusted: Lip 2010 as tabulated in JABFM; the others: Friberg 2012.
constexpr std::array<Rates, 10> kRates = {{{0.0, 0.2, 0.3},
                                           {1.3, 0.6, 0.9},
                                           {2.2, 2.2, 2.9},
                                           {3.2, 3.2, 4.6},
                                           {4.0, 4.8, 6.7},
                                           {6.7, 7.2, 10.0},
                                           {9.8, 9.7, 13.6},
                                           {9.6, 11.2, 15.7},
                                           {6.7, 10.8, 15.2},
                                           {15.2, 12.2, 17.4}}};

Result<void> checkAge(double age, const char* score) {
    if (!std::isfinite(age))
        return failure(ErrorCode::NonFinite, std::string("Cannot give ") + score + ": the age is no finite number.");
    if (age >= 18.0 && age <= 120.0) return {};
    return failure(ErrorCode::InvalidArgument, std::string("Cannot give ") + score + ": an age of " +
                                                   std::to_string(static_cast<int>(age)) +
                                                   " years is outside 18 to 120; the score is for adults.");
}

void count(StrokeScore& score, bool applies, int points, const char* item) {
    if (!applies) return;
    score.points += points;
    score.counted.push_back(std::string(item) + " " + std::to_string(points));
}

StrokeScore withoutSex(const StrokeItems& items) {
    StrokeScore score;
    count(score, items.heartFailure, 1, "heart failure or left ventricular dysfunction");
    count(score, items.hypertension, 1, "hypertension");
    count(score, items.ageYears >= 75.0, 2, "age 75 and over");
    count(score, items.diabetes, 1, "diabetes");
    count(score, items.strokeOrEmbolism, 2, "stroke, transient attack or embolism");
    count(score, items.vascularDisease, 1, "vascular disease");
    count(score, items.ageYears >= 65.0 && items.ageYears < 75.0, 1, "age 65 to 74");
    return score;
}

} // namespace

Result<StrokeScore> cha2ds2Vasc(const StrokeItems& items) {
    if (auto checked = checkAge(items.ageYears, "CHA2DS2-VASc"); !checked) return tl::make_unexpected(checked.error());
    if (!items.sex)
        return failure(ErrorCode::InvalidArgument,
                       "Cannot give CHA2DS2-VASc: the sex is not stated and counts a point. State it, or use CHA2DS2-VA.");
    StrokeScore score = withoutSex(items);
    count(score, items.sex == Sex::Female, 1, "female sex");
    const Rates& rates = kRates[score.points];
    score.rates = {
        {rates.adjusted, "stroke, adjusted", "Lip et al., Chest 2010;137:263-272",
         score.points == 9 ? Basis::Memory : Basis::Read},
        {rates.ischaemic, "ischaemic stroke", "Friberg et al., Eur Heart J 2012;33:1500-1510",
         score.points == 0 ? Basis::Memory : Basis::Read},
        {rates.anyEmbolism, "stroke, transient attack or embolism", "Friberg et al., Eur Heart J 2012;33:1500-1510",
         score.points == 0 ? Basis::Memory : Basis::Read},
    };
    return score;
}

Result<StrokeScore> cha2ds2Va(const StrokeItems& items) {
    if (auto checked = checkAge(items.ageYears, "CHA2DS2-VA"); !checked) return tl::make_unexpected(checked.error());
    StrokeScore score = withoutSex(items);
    score.most = 8;
    return score;
}

} // namespace gauge::core
