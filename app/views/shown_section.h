// Which cross-section the views show now: the ostium, the landing zone, or the profile's nearest to a free
// depth.
#pragma once

#include "app/document/session.h"
#include "app/drawing/palette.h"
#include "app/models/view_state.h"

#include <optional>

namespace gauge::app {

struct ShownSection {
    const core::Section* section = nullptr;
    Role role = Role::Section;
    double depthMm = 0.0;
    QString title; ///< "ostium", "landing zone 10.0 mm", "at 14.5 mm"
    bool measured = true; ///< false: the outline alone is known, and no value of it may be told
};

/// Nothing while there is no measurement.
std::optional<ShownSection> shownSection(const Session& session, const ViewState& state);

/// One step of depth from what is shown (0.5 mm each), as arrow keys and wheel make it.
void scrollDepth(const Session& session, ViewState& state, int steps);

} // namespace gauge::app
