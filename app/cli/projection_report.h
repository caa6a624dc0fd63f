// The answer of `ostium-gauge projection` as text and as JSON, "ostium-gauge/projection/1".
#pragma once

#include "core/fluoro/view_planning.h"
#include "core/record/projection_values.h"

#include <string>
#include <vector>

namespace gauge::app {

std::string projectionText(const core::PatientVector& normal);
std::string projectionJson(const core::PatientVector& normal);

/// What was planned for a case. Without its images only `recorded` is there: directions as the case holds them.
struct CaseProjection {
    core::ViewPlanOptions options;
    std::string patientPosition;
    bool offsetStated = false;
    std::vector<core::SectionPlan> plans;
    struct Recorded {
        std::string section;
        core::CArmAngles enFace;
    };
    std::vector<Recorded> recorded;
    struct Chosen {
        core::ChosenView view;
        bool isStale = false; ///< its plane moved since it was chosen
    };
    std::vector<Chosen> chosen;
    std::vector<core::Notice> notices;

    /// In the room's axes, of the section that stands first: the landing zone, or without one the ostium.
    core::PatientVector normal() const;
};

std::string projectionText(const CaseProjection& projection);
std::string projectionJson(const CaseProjection& projection);

} // namespace gauge::app
