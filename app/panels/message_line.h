// The message line: what is going on, what went wrong and what to do; never a dialog. With progress and
// cancel while something runs.
#pragma once

#include "app/document/session.h"

#include <QFrame>

class QLabel;
class QProgressBar;
class QToolButton;

namespace gauge::app {

class MessageLine : public QFrame {
    Q_OBJECT
public:
    explicit MessageLine(Session& session, QWidget* parent = nullptr);
    QString text() const;
    /// Without names paths are left out: names of folders and files often tell the patient.
    void setNamesHidden(bool hidden);

private:
    void refresh();

    Session& m_session;
    bool m_namesHidden = false;
    QLabel* m_sign;
    QLabel* m_text;
    QLabel* m_work;
    QProgressBar* m_progress;
    QToolButton* m_cancel;
};

} // namespace gauge::app
