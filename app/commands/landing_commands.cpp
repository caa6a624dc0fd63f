#include "app/commands/landing_commands.h"

#include "app/document/case_document.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

core::SetLanding moving(const CaseDocument& document, double depthMm) {
    core::LandingPlanes landing = document.record().landing;
    if (landing.depthsMm.empty()) landing.depthsMm.push_back(depthMm);
    landing.depthsMm.front() = depthMm;
    landing.revision = document.nextRevision();
    return {landing};
}

core::SetLanding plugging(const CaseDocument& document, std::optional<double> beyondRidgeMm) {
    core::LandingPlanes landing = document.record().landing;
    landing.plugMm = beyondRidgeMm;
    landing.revision = document.nextRevision();
    return {landing};
}

} // namespace

MoveLanding::MoveLanding(CaseDocument& document, double depthMm, int gesture)
    : EditCommand(document, QCoreApplication::translate("Edit", "Move the landing zone"), moving(document, depthMm)),
      m_gesture(gesture) {}

bool MoveLanding::mergeWith(const QUndoCommand* other) {
    const auto* next = static_cast<const MoveLanding*>(other); // the same id()
    if (next->m_gesture != m_gesture) return false;
    replaceEdit(next->edit());
    return true;
}

SetPlugPlane::SetPlugPlane(CaseDocument& document, std::optional<double> beyondRidgeMm, int gesture)
    : EditCommand(document, QCoreApplication::translate("Commands", "Set the plug plane"), plugging(document, beyondRidgeMm)),
      m_gesture(gesture) {}

bool SetPlugPlane::mergeWith(const QUndoCommand* other) {
    const auto* next = static_cast<const SetPlugPlane*>(other); // the same id()
    if (next->m_gesture != m_gesture) return false;
    replaceEdit(next->edit());
    return true;
}

} // namespace gauge::app
