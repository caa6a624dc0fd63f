// What follows from the septum's marks of a case: geometry, map, answer, the chosen crossing. For the page, the report and tests.
#pragma once

#include "core/access/crossing_answer.h"
#include "core/anatomy/appendage.h"
#include "core/record/case_record.h"

#include <optional>

namespace gauge::app {

struct SeptumState {
    core::SeptumMarks marks;
    core::SeptumPlan plan;
    /// An error says what to mark or correct.
    core::Result<core::CrossingScene> scene = core::failure(core::ErrorCode::NotFound, "Nothing is marked on the septum.");
    std::optional<core::CrossingMap> map;        ///< with `scene`
    std::optional<core::CrossingAnswer> answer;  ///< with `scene`
    std::optional<core::Error> problem;          ///< of limits that cannot be used
    std::optional<core::CrossingValues> crossing; ///< the chosen one, at its foot in the septum's plane

    /// Nothing is marked yet.
    bool isEmpty() const;
    /// The ways to the ostium from a place; nothing without an appendage. `steered` has an error where no bend fits.
    std::optional<core::SheathCourse> straight(const Eigen::Vector2d& place) const;
    std::optional<core::Result<core::SheathCourse>> steered(const Eigen::Vector2d& place) const;
};

/// @param measurement  null while there is none.
SeptumState septumState(const core::CaseRecord& record, const core::AppendageMeasurement* measurement);

} // namespace gauge::app
