// What the person does to pictures besides drawing on them (drawing_commands.h): a scale by hand, and places seen on both CT and echo.
#pragma once

#include "app/commands/entry_command.h"

namespace gauge::app {

/// Id: the SOP Instance UID of the picture.
class CalibratePicture : public EntryCommand<core::PictureScale> {
public:
    CalibratePicture(CaseDocument& document, const std::string& sopInstanceUid, const core::PictureScale& scale);
};

/// The picture's own scale, if its file tells one, holds again.
class RemoveCalibration : public EntryCommand<core::PictureScale> {
public:
    RemoveCalibration(CaseDocument& document, const std::string& sopInstanceUid);
};

class MarkPoseLandmark : public EntryCommand<core::PoseLandmark> {
public:
    MarkPoseLandmark(CaseDocument& document, const std::string& id, const core::PoseLandmark& landmark);
};

class RemovePoseLandmark : public EntryCommand<core::PoseLandmark> {
public:
    RemovePoseLandmark(CaseDocument& document, const std::string& id);
};

} // namespace gauge::app
