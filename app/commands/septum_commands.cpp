#include "app/commands/septum_commands.h"

#include "core/record/septum_values.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

core::SeptumMarks marksOf(const CaseDocument& document) {
    return core::septumMarks(document.record());
}

core::SeptumMarks changedPoints(const CaseDocument& document, SeptumPoint kind, const auto& change) {
    const core::SeptumMarks marks = marksOf(document);
    auto points = pointsOf(marks, kind);
    change(points);
    return withPoints(marks, kind, std::move(points));
}

core::SeptumPlan withLimits(const CaseDocument& document, const core::CrossingLimits& limits) {
    core::SeptumPlan plan = core::septumPlan(document.record());
    plan.limits = limits;
    return plan;
}

core::SeptumPlan withCrossing(const CaseDocument& document, const std::optional<core::PatientPoint>& place) {
    core::SeptumPlan plan = core::septumPlan(document.record());
    plan.crossing = place;
    return plan;
}

} // namespace

SeptumMarksCommand::SeptumMarksCommand(CaseDocument& document, const QString& text, core::SeptumMarks marks, int gesture)
    : SingleCommand(document, text, std::move(marks)), m_gesture(gesture) {}

bool SeptumMarksCommand::mergeWith(const QUndoCommand* other) {
    const auto* next = static_cast<const SeptumMarksCommand*>(other);
    if (m_gesture == 0 || next->m_gesture != m_gesture) return false;
    replaceEdit(next->EditCommand::edit());
    return true;
}

AddSeptumPoint::AddSeptumPoint(CaseDocument& document, SeptumPoint kind, const core::PatientPoint& point)
    : SeptumMarksCommand(document, QCoreApplication::translate("Edit", "Mark a point: %1").arg(wordOf(kind)),
                         changedPoints(document, kind, [&](auto& points) { points.push_back(point); })) {}

MoveSeptumPoint::MoveSeptumPoint(CaseDocument& document, SeptumPoint kind, std::size_t index, const core::PatientPoint& to, int gesture)
    : SeptumMarksCommand(document, QCoreApplication::translate("Edit", "Move a point: %1").arg(wordOf(kind)),
                         changedPoints(document, kind, [&](auto& points) { points.at(index) = to; }), gesture) {}

RemoveSeptumPoint::RemoveSeptumPoint(CaseDocument& document, SeptumPoint kind, std::size_t index)
    : SeptumMarksCommand(document, QCoreApplication::translate("Edit", "Remove a point: %1").arg(wordOf(kind)),
                         changedPoints(document, kind, [&](auto& points) {
                             points.erase(points.begin() + static_cast<std::ptrdiff_t>(index));
                         })) {}

ClearSeptumPoints::ClearSeptumPoints(CaseDocument& document, SeptumPoint kind)
    : SeptumMarksCommand(document, QCoreApplication::translate("Edit", "Remove all points: %1").arg(wordOf(kind)),
                         changedPoints(document, kind, [](auto& points) { points.clear(); })) {}

SetCrossingLimits::SetCrossingLimits(CaseDocument& document, const core::CrossingLimits& limits)
    : SingleCommand(document, QCoreApplication::translate("Edit", "Set the limits of the crossing"), withLimits(document, limits)) {}

ChooseCrossing::ChooseCrossing(CaseDocument& document, const std::optional<core::PatientPoint>& place, int gesture)
    : SingleCommand(document,
                    place ? QCoreApplication::translate("Edit", "Choose the septal crossing")
                          : QCoreApplication::translate("Edit", "Give the septal crossing up"),
                    withCrossing(document, place)),
      m_gesture(gesture) {}

bool ChooseCrossing::mergeWith(const QUndoCommand* other) {
    const auto* next = static_cast<const ChooseCrossing*>(other);
    if (m_gesture == 0 || next->m_gesture != m_gesture) return false;
    replaceEdit(next->EditCommand::edit());
    return true;
}

} // namespace gauge::app
