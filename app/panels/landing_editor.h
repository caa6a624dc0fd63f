// The landing planes as numbers: the landing zone, a second plane along the axis, and the plug plane beyond the ridge. An empty
// field: there is no such plane. The button beside a field shows its cross-section.
#pragma once

#include "app/document/session.h"
#include "app/models/view_state.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace gauge::app {

class NumberEdit;

class LandingEditor : public QWidget {
    Q_OBJECT
public:
    LandingEditor(Session& session, ViewState& state, QWidget* parent = nullptr);

private:
    void refresh();

    Session& m_session;
    ViewState& m_state;
    NumberEdit* m_first;
    NumberEdit* m_second;
    NumberEdit* m_plug;
    QPushButton* m_showFirst;
    QPushButton* m_showSecond;
    QPushButton* m_showPlug;
};

} // namespace gauge::app
