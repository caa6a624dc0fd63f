// A row of buttons that arm the marking of the septum's points, each with its count.
#pragma once

#include "app/document/session.h"
#include "app/models/view_state.h"

#include <QAction>
#include <QList>
#include <QWidget>
#include <map>

class QToolButton;

namespace gauge::app {

class SeptumMarkBar : public QWidget {
    Q_OBJECT
public:
    SeptumMarkBar(Session& session, ViewState& state, QWidget* parent = nullptr);

    /// One a kind: arms it and shows the scanner-axis sections, a second time disarms; then: remove the points of the armed kind.
    /// The page adds them to itself: their keys (Shift+A, C, F, R) hold there.
    QList<QAction*> markActions() const { return m_actions; }

private:
    void toggle(SeptumPoint kind);
    void refresh();

    Session& m_session;
    ViewState& m_state;
    std::map<SeptumPoint, QAction*> m_kinds;
    QAction* m_clear;
    QList<QAction*> m_actions;
};

} // namespace gauge::app
