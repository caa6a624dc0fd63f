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

ReleaseOstium::ReleaseOstium(CaseDocument& document)
    : EditCommand(document, QCoreApplication::translate("Edit", "Release the ostium"), core::SetOstium{std::nullopt}) {}

} // namespace gauge::app
