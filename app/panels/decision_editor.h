// The decision in the words of the person who signs. Signing refuses what must not be signed, and says why.
#pragma once

#include "app/document/answers.h"

#include <QWidget>

class QAction;
class QLabel;
class QLineEdit;
class QPlainTextEdit;

namespace gauge::app {

class DecisionEditor : public QWidget {
    Q_OBJECT
public:
    explicit DecisionEditor(Answers& answers, QWidget* parent = nullptr);

    /// Signs in that name; true when signed. Otherwise the reasons are shown.
    bool sign(const QString& name);
    QList<QAction*> actions() const { return {m_sign, m_withdraw}; }
    QPlainTextEdit& text() { return *m_text; }
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void takeText();
    void refresh();

    Answers& m_answers;
    QLabel* m_state;
    QPlainTextEdit* m_text;
    QLineEdit* m_name;
    QLabel* m_reasons;
    QAction* m_sign;
    QAction* m_withdraw;
};

} // namespace gauge::app
