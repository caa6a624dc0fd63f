// What a person does to drawings (core/record/entries.h): each a step of undo.
#pragma once

#include "app/commands/entry_command.h"

#include <cstddef>

namespace gauge::app {

class PlaceDrawing : public EntryCommand<core::Drawing> {
public:
    PlaceDrawing(CaseDocument& document, std::string id, core::Drawing drawing);
};

/// Points moved, with the site on which they were moved. Moves of one gesture are one step.
class MoveDrawingPoint : public EntryCommand<core::Drawing> {
public:
    MoveDrawingPoint(CaseDocument& document, std::string id, core::Drawing moved, int gesture);
};

class LabelDrawing : public EntryCommand<core::Drawing> {
public:
    /// Precondition of this and those below: the record has a drawing `id`.
    LabelDrawing(CaseDocument& document, const std::string& id, std::string label);
};

/// Says what the drawing measures of the appendage: that puts it into the comparison table.
class GiveRole : public EntryCommand<core::Drawing> {
public:
    GiveRole(CaseDocument& document, const std::string& id, core::DrawingRole role);
};

class RemoveDrawing : public EntryCommand<core::Drawing> {
public:
    RemoveDrawing(CaseDocument& document, const std::string& id);
};

/// The person says that the drawing still holds on its plane, which has moved: it is put onto `site`.
class ConfirmPlaneOf : public EntryCommand<core::Drawing> {
public:
    ConfirmPlaneOf(CaseDocument& document, const std::string& id, const core::SectionSite& site);
};

} // namespace gauge::app
