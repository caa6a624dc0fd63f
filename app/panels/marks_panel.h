// The marks: one row each with key, shape, word and whether it is placed; and the ostium with its
// confirmation.
#pragma once

#include "app/document/session.h"
#include "app/models/view_state.h"

#include <QWidget>
#include <map>

class QLabel;
class QPushButton;
class QToolButton;

namespace gauge::app {

class MarksPanel : public QWidget {
    Q_OBJECT
public:
    MarksPanel(Session& session, ViewState& state, QWidget* parent = nullptr);

    /// Number key of a mark: 1 to 5.
    static int keyOf(core::MarkKind kind);
    /// Arms the mark and shows the scanner-axis sections; a second time disarms.
    void toggle(core::MarkKind kind);

private:
    struct Row {
        QToolButton* arm = nullptr;
        QLabel* state = nullptr;
        QToolButton* remove = nullptr;
    };
    void refresh();
    void refreshOstium();

    Session& m_session;
    ViewState& m_state;
    std::map<core::MarkKind, Row> m_rows;
    QLabel* m_ostium;
    QPushButton* m_confirm;
};

} // namespace gauge::app
