// Beside the depth strip: the widths at the depth under the pointer, or at the shown depth.
#pragma once

#include "app/document/session.h"
#include "app/models/view_state.h"

#include <QWidget>
#include <optional>

namespace gauge::app {

class DepthReadout : public QWidget {
    Q_OBJECT
public:
    DepthReadout(Session& session, ViewState& state, QWidget* parent = nullptr);

    void setHover(std::optional<double> mm);
    /// What is written, line by line.
    QStringList lines() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Session& m_session;
    ViewState& m_state;
    std::optional<double> m_hover;
};

} // namespace gauge::app
