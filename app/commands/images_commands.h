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

} // namespace gauge::app
