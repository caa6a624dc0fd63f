#include "app/commands/ostium_commands.h"

#include "app/document/case_document.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

core::SetOstium confirming(const CaseDocument& document, const core::Plane& plane) {
    core::OstiumPlane ostium;
    ostium.plane = {plane.point, plane.normal.normalized()};
    ostium.confirmed = true;
    ostium.revision = document.nextRevision();
    return {ostium};
}

} // namespace

ConfirmOstium::ConfirmOstium(CaseDocument& document, const core::Plane& plane)
    : EditCommand(document, QCoreApplication::translate("Edit", "Confirm the ostium"), confirming(document, plane)) {}

MoveOstiumPlane::MoveOstiumPlane(CaseDocument& document, const QString& text, const core::Plane& plane, int gesture)
    : EditCommand(document, text, confirming(document, plane)), m_gesture(gesture) {}

MoveOstiumPlane::MoveOstiumPlane(CaseDocument& document, const core::Plane& plane, int gesture)
    : MoveOstiumPlane(document, QCoreApplication::translate("Commands", "Move the ostium plane"), plane, gesture) {}

bool MoveOstiumPlane::mergeWith(const QUndoCommand* other) {
    const auto* next = static_cast<const MoveOstiumPlane*>(other); // the same id()
    if (next->m_gesture != m_gesture) return false;
    replaceEdit(next->edit());
    return true;
}

TiltOstiumPlane::TiltOstiumPlane(CaseDocument& document, const core::Plane& plane, int gesture)
    : MoveOstiumPlane(document, QCoreApplication::translate("Commands", "Tilt the ostium plane"), plane, gesture) {}

ReleaseOstium::ReleaseOstium(CaseDocument& document)
    : EditCommand(document, QCoreApplication::translate("Edit", "Release the ostium"), core::SetOstium{std::nullopt}) {}

} // namespace gauge::app
