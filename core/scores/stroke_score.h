// Stroke risk in atrial fibrillation from its items. The scores know nothing of a mitral repair or a closed appendage: no
// adjusted rate is made up.
#pragma once

#include "core/pressure/priors.h"
#include "core/result.h"

#include <optional>
#include <string>
#include <vector>

namespace gauge::core {

enum class Sex { Female, Male };

struct StrokeItems {
    double ageYears = 0.0; ///< 18 to 120; 65 to 74 counts 1, 75 and over 2
    std::optional<Sex> sex; ///< needed for CHA2DS2-VASc only
    bool heartFailure = false; ///< congestive heart failure or left ventricular dysfunction: 1
    bool hypertension = false;
    bool diabetes = false;
    bool strokeOrEmbolism = false; ///< stroke, transient attack or systemic embolism: 2
    bool vascularDisease = false;  ///< myocardial infarction, peripheral artery disease or aortic plaque: 1

    bool operator==(const StrokeItems&) const = default;
};

/// A published rate for one score.
struct PublishedRate {
    double perHundredYears = 0.0;
    std::string outcome; ///< "ischaemic stroke", "stroke, adjusted"…
    std::string source;
    Basis basis = Basis::Read;
};

struct StrokeScore {
    int points = 0;
    int most = 9;
    std::vector<std::string> counted; ///< items with their points, in words
    std::vector<PublishedRate> rates; ///< none where none is published
};

/// CHA2DS2-VASc, 0 to 9. @errors NonFinite, InvalidArgument (age outside 18 to 120; sex not stated).
/// Sources: Lip et al., Chest 2010;137:263-272; Friberg et al., Eur Heart J 2012;33:1500-1510.
Result<StrokeScore> cha2ds2Vasc(const StrokeItems&);

/// CHA2DS2-VA: the same without sex, 0 to 8. No rates: those published count sex.
/// Source: European guideline of 2024 (from memory).
Result<StrokeScore> cha2ds2Va(const StrokeItems&);

} // namespace gauge::core
