// The drawing tools and what can be done with the selected drawing, as actions for menus and toolbars: the same in every
// view. The views' own mouse and keys: drawing_layer.h.
#pragma once

#include "app/document/session.h"
#include "app/models/view_state.h"

#include <QAction>
#include <QList>

namespace gauge::app {

/// Straight line, curved line, angle, area, ellipse; of Doppler velocity, interval, envelope. Checkable, at most one on; the
/// shortcut arms the tool and a second time leaves it.
QList<QAction*> drawingToolActions(ViewState& state, QObject* parent);

/// Roles of the selected drawing: one key puts its value into the comparison table (F3 … F8, F9 takes it out). Enabled
/// while a drawing is selected.
QList<QAction*> drawingRoleActions(Session& session, ViewState& state, QObject* parent);

/// Windows by tissue, slab of maximum or mean and its thickness.
QList<QAction*> pictureActions(ViewState& state, QObject* parent);

/// Of the planes and contours: move, tilt the shown plane by keys; restore or confirm a corrected contour, refit it.
QList<QAction*> planeActions(Session& session, ViewState& state, QObject* parent);

} // namespace gauge::app
