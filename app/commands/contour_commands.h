// A contour of a section corrected by hand (core::CorrectedContour); ids "ostium", "landing-1".
#pragma once

#include "app/commands/entry_command.h"

namespace gauge::app {

/// The contour as the hand has it now. Corrections of one gesture are one step of undo.
class CorrectContour : public EntryCommand<core::CorrectedContour> {
public:
    CorrectContour(CaseDocument& document, std::string id, core::CorrectedContour contour, int gesture);
};

/// Gives the correction up: the contour that the program finds holds again.
class RestoreContour : public EntryCommand<core::CorrectedContour> {
public:
    RestoreContour(CaseDocument& document, std::string id);
};

/// The person says that the corrected contour still holds on its plane, which has moved to `frame`.
class ConfirmContour : public EntryCommand<core::CorrectedContour> {
public:
    /// Precondition: the record has a contour `id`.
    ConfirmContour(CaseDocument& document, const std::string& id, const core::SectionFrame& frame);
};

} // namespace gauge::app
