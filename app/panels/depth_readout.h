// Beside the depth strip: the widths at the depth under the pointer, or at the shown depth; as read on CT, and at three
// pressures once those are known.
#pragma once

#include "app/document/session.h"
#include "app/models/strip_answer.h"
#include "app/models/view_state.h"

#include <QPen>
#include <QWidget>
#include <optional>
#include <vector>

namespace gauge::app {

class DepthReadout : public QWidget {
    Q_OBJECT
public:
    DepthReadout(Session& session, ViewState& state, QWidget* parent = nullptr);

    void setAnswers(Answers& answers);
    void setHover(std::optional<double> mm);
    /// What is written, line by line.
    QStringList lines() const;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Session& m_session;
    ViewState& m_state;
    struct Line {
        std::optional<QPen> pen; ///< of a sample before the words
        QString words, value;
        QString shortWords; ///< where `words` do not fit beside the value; may be empty
    };
    struct Content {
        QString title;
        std::vector<Line> lines;
    };
    std::optional<Content> content() const;

    Answers* m_answers = nullptr;
    std::optional<double> m_hover;
};

} // namespace gauge::app
