#include "app/commands/contour_commands.h"

#include "core/record/carried_drawing.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Commands", text);
}

core::CorrectedContour confirmed(const CaseDocument& document, const std::string& id, const core::SectionFrame& frame) {
    core::CorrectedContour contour = core::carriedTo(document.record().contours.at(id).content, frame);
    contour.planeRevision = core::revisionOf(document.record(), core::input::placeOf(contour.plane));
    return contour;
}

} // namespace

CorrectContour::CorrectContour(CaseDocument& document, std::string id, core::CorrectedContour contour, int gesture)
    : EntryCommand(document, tr("Correct a contour"), std::move(id), std::move(contour), gesture) {}

RestoreContour::RestoreContour(CaseDocument& document, std::string id)
    : EntryCommand(document, tr("Restore the contour that was found"), std::move(id), std::nullopt) {}

ConfirmContour::ConfirmContour(CaseDocument& document, const std::string& id, const core::SectionFrame& frame)
    : EntryCommand(document, tr("Confirm a corrected contour on its moved plane"), id, confirmed(document, id, frame)) {}

} // namespace gauge::app
