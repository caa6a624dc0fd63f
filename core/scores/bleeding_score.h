// Bleeding risk under anticoagulation from its items.
#pragma once

#include "core/result.h"
#include "core/scores/stroke_score.h"

#include <optional>

namespace gauge::core {

struct BleedingItems {
    double ageYears = 0.0; ///< 18 to 120; over 65 counts
    std::optional<double> systolicMmHg; ///< with uncontrolledHypertension it must agree: above 160
    bool uncontrolledHypertension = false;
    bool abnormalRenalFunction = false; ///< dialysis, transplant or creatinine above 200 umol/L
    bool abnormalLiverFunction = false; ///< cirrhosis, or bilirubin above twice and enzymes above three times normal
    bool stroke = false;
    bool bleeding = false; ///< history of bleeding or predisposition (anaemia)
    bool takesVitaminKAntagonist = false;
    bool labileInr = false; ///< time in range below 60 %; only under a vitamin K antagonist
    bool antiplateletOrNsaid = false;
    bool alcohol = false; ///< eight drinks a week or more
    std::optional<double> drinksPerWeek;

    bool operator==(const BleedingItems&) const = default;
};

struct BleedingScore {
    int points = 0; ///< 0 to 9
    bool isHigh = false; ///< 3 and more
    std::vector<std::string> counted;
    std::optional<PublishedRate> rate; ///< none above 5: too few patients
};

/// HAS-BLED. Refused in words where the items contradict each other: labile INR without a vitamin K antagonist, hypertension
/// called uncontrolled at 160 mmHg or less (or not so called above), alcohol against the number of drinks.
/// @errors NonFinite, InvalidArgument. Source: Pisters et al., Chest 2010;138:1093-1100.
Result<BleedingScore> hasBled(const BleedingItems&);

/// Items that both scores ask for and that must agree: age, stroke. @errors InvalidArgument naming the first that differs.
Result<void> checkTogether(const StrokeItems&, const BleedingItems&);

} // namespace gauge::core
