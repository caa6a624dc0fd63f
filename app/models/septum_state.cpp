#include "app/models/septum_state.h"

#include "core/record/septum_values.h"

namespace gauge::app {

bool SeptumState::isEmpty() const {
    return marks == core::SeptumMarks{};
}

std::optional<core::SheathCourse> SeptumState::straight(const Eigen::Vector2d& place) const {
    if (!scene || !scene->target) return std::nullopt;
    const auto course = core::straightCourse(scene->face.frame.patientFromSection(place), *scene->target, scene->face.frame.normal);
    return course ? std::optional(*course) : std::nullopt;
}

std::optional<core::Result<core::SheathCourse>> SeptumState::steered(const Eigen::Vector2d& place) const {
    if (!scene || !scene->target) return std::nullopt;
    return core::steeredCourse(scene->face.frame.patientFromSection(place), *scene->target, scene->face.frame.normal,
                               plan.limits.steering);
}

SeptumState septumState(const core::CaseRecord& record, const core::AppendageMeasurement* measurement) {
    SeptumState state;
    state.marks = core::septumMarks(record);
    state.plan = core::septumPlan(record);
    if (state.marks.fossa.empty()) return state;
    state.scene = core::crossingScene(record, measurement);
    if (!state.scene) return state;
    if (state.plan.crossing)
        state.crossing = core::crossingAt(*state.scene, state.scene->face.frame.sectionFromPatient(*state.plan.crossing),
                                          state.plan.limits.steering);
    auto map = core::crossingMap(*state.scene, state.plan.limits.steering);
    if (!map) {
        state.problem = map.error();
        return state;
    }
    state.map = std::move(*map);
    auto answer = core::crossingAnswer(*state.scene, *state.map, state.plan.limits);
    if (answer)
        state.answer = std::move(*answer);
    else
        state.problem = answer.error();
    return state;
}

} // namespace gauge::app
