#include "app/commands/picture_commands.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("PictureCommands", text);
}

} // namespace

CalibratePicture::CalibratePicture(CaseDocument& document, const std::string& sopInstanceUid,
                                   const core::PictureScale& scale)
    : EntryCommand(document, tr("Calibrate the picture"), sopInstanceUid, scale) {}

RemoveCalibration::RemoveCalibration(CaseDocument& document, const std::string& sopInstanceUid)
    : EntryCommand(document, tr("Remove the scale given by hand"), sopInstanceUid, std::nullopt) {}

MarkPoseLandmark::MarkPoseLandmark(CaseDocument& document, const std::string& id, const core::PoseLandmark& landmark)
    : EntryCommand(document, tr("Mark a place on CT and echo"), id, landmark) {}

RemovePoseLandmark::RemovePoseLandmark(CaseDocument& document, const std::string& id)
    : EntryCommand(document, tr("Remove a place on CT and echo"), id, std::nullopt) {}

} // namespace gauge::app
