#pragma once

#include "app/commands/edit_command.h"

namespace gauge::app {

/// Measures another series or phase.
class ChooseImages : public EditCommand {
public:
    ChooseImages(CaseDocument& document, core::ImagesUsed images);
};

/// The images of a newly opened folder: the first edit of a case, not undoable.
void setFirstImages(CaseDocument& document, core::ImagesUsed images);

/// Who the images say the case is about; nothing when they name nobody. Not undoable.
void setPatient(CaseDocument& document, core::Patient patient);

} // namespace gauge::app
