// What is seen while a CT is being loaded: one slice of it, which one, and how far loading has come. Nothing can be measured on
// it: where its slices lie is proved only when all of them are there.
#pragma once

#include "app/document/session.h"
#include "app/models/view_state.h"

#include <QWidget>

namespace gauge::app {

class FirstPictureView : public QWidget {
    Q_OBJECT
public:
    FirstPictureView(Session& session, ViewState& state, QWidget* parent = nullptr);

    /// "slice 120 of 240 of “…”, phase 45 %"; empty while there is none.
    QString title() const;
    /// "43 % loaded. Nothing can be measured before …"
    QString progressWords() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Session& m_session;
    ViewState& m_state;
    double m_share = 0.0;
};

} // namespace gauge::app
