// What a person might do next to a case, from a random number: for tests of files.
#pragma once

#include "app/commands/entry_command.h"
#include "app/commands/landing_commands.h"
#include "app/commands/mark_commands.h"

#include <random>

namespace gauge::fixture {

/// Does, undoes or redoes something; the next sequence number grows by one at most (a merged drag too).
inline void editAtRandom(app::CaseDocument& document, std::mt19937& random) {
    const auto number = [&](int least, int most) { return std::uniform_int_distribution(least, most)(random); };
    const double mm = number(1, 500) / 10.0;
    switch (number(0, 6)) {
    case 0:
        document.push(std::make_unique<app::PlaceMark>(document, core::kMarkKinds[static_cast<std::size_t>(number(0, 4))],
                                                       core::PatientPoint{{mm, -mm, number(0, 90) / 7.0}}));
        return;
    case 1:
        document.push(std::make_unique<app::MoveLanding>(document, mm, number(1, 3)));
        return;
    case 2:
    case 3: {
        core::Drawing drawing;
        drawing.role = core::DrawingRole::LandingWidth;
        drawing.site = core::PictureSite{"2.25.77", number(0, 20)};
        drawing.points = {{mm, 1.0 / 3.0}, {mm + 20, number(0, 9) * 0.1}};
        drawing.label = "Öffnung";
        document.push(std::make_unique<app::EntryCommand<core::Drawing>>(document, "draw", std::to_string(number(1, 9)),
                                                                         drawing, number(0, 2)));
        return;
    }
    case 4:
        if (document.undoStack().canUndo()) document.undoStack().undo();
        return;
    case 5:
        if (document.undoStack().canRedo()) document.undoStack().redo();
        return;
    default: {
        core::Decision decision;
        decision.text = "draft " + std::to_string(number(0, 1000));
        document.push(std::make_unique<app::SingleCommand<core::Decision>>(document, "decide", decision));
    }
    }
}

} // namespace gauge::fixture
