// Marking points of the septum on a section of the CT: a click adds one of the armed kind, a drag moves one that is there, Delete
// removes the one under the pointer. The kind stays armed until Escape, so that a rim is marked point by point.
#pragma once

#include "app/document/session.h"
#include "app/drawing/grey_image.h"
#include "app/models/view_state.h"

#include <QPointF>
#include <optional>

namespace gauge::app {

class SeptumMarking {
public:
    /// The press of the left button while a kind is armed: true when it was taken.
    bool press(Session& session, ViewState& state, const SectionMap& map, const QPointF& at);
    void move(Session& session, const SectionMap& map, const QPointF& at);
    void release() { m_held.reset(); }
    bool isDragging() const { return m_held.has_value(); }
    /// Removes the armed kind's point under the pointer; true when there was one.
    static bool remove(Session& session, const ViewState& state, const SectionMap& map, const QPointF& at);

private:
    struct Held {
        SeptumPoint kind;
        std::size_t index;
        int gesture;
    };
    std::optional<Held> m_held;
};

} // namespace gauge::app
