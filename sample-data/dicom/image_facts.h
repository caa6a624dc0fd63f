// Who, when and what an image of the sample case belongs to.
#pragma once

#include <string>

namespace gauge::sample_case {

struct CodedWord {
    std::string value, scheme, meaning;
};

/// All of it invented. UIDs come from the texts, so that the same text gives the same UIDs.
struct ImageFacts {
    std::string studyText = "gauge study";   ///< of the study's UID
    std::string seriesText = "gauge series"; ///< of series and image
    std::string patientName = "Invented^Patient";
    std::string patientId = "INVENTED";
    std::string birthDate, sex;
    std::string studyDescription = "Invented study";
    std::string studyId = "2";
    std::string studyTime = "080000";
    std::string modality = "US";
    std::string seriesDescription = "Invented images";
    int seriesNumber = 1;
    std::string date = "20260113"; ///< of study, series and image, YYYYMMDD
    std::string time = "091500";   ///< of series and image, HHMMSS
    std::string comments = "Invented images made by formula; no patient.";
    std::string frameOfReferenceUid; ///< empty: none

    std::string sopInstanceUid() const;
    std::string seriesInstanceUid() const;
    std::string studyInstanceUid() const;
};

} // namespace gauge::sample_case
