#include "app/commands/drawing_commands.h"

#include "core/record/carried_drawing.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Commands", text);
}

core::Drawing present(const CaseDocument& document, const std::string& id) {
    return document.record().drawings.at(id).content;
}

core::Drawing labelled(core::Drawing drawing, std::string label) {
    drawing.label = std::move(label);
    return drawing;
}

core::Drawing withRole(core::Drawing drawing, core::DrawingRole role) {
    drawing.role = role;
    return drawing;
}

} // namespace

PlaceDrawing::PlaceDrawing(CaseDocument& document, std::string id, core::Drawing drawing)
    : EntryCommand(document, tr("Draw a measurement"), std::move(id), std::move(drawing)) {}

MoveDrawingPoint::MoveDrawingPoint(CaseDocument& document, std::string id, core::Drawing moved, int gesture)
    : EntryCommand(document, tr("Move a point of a measurement"), std::move(id), std::move(moved), gesture) {}

LabelDrawing::LabelDrawing(CaseDocument& document, const std::string& id, std::string label)
    : EntryCommand(document, tr("Label a measurement"), id, labelled(present(document, id), std::move(label))) {}

GiveRole::GiveRole(CaseDocument& document, const std::string& id, core::DrawingRole role)
    : EntryCommand(document, tr("Put a measurement into the table"), id, withRole(present(document, id), role)) {}

RemoveDrawing::RemoveDrawing(CaseDocument& document, const std::string& id)
    : EntryCommand(document, tr("Remove a measurement"), id, std::nullopt) {}

ConfirmPlaneOf::ConfirmPlaneOf(CaseDocument& document, const std::string& id, const core::SectionSite& site)
    : EntryCommand(document, tr("Confirm a measurement on its moved plane"), id, core::carriedTo(present(document, id), site)) {}

} // namespace gauge::app
