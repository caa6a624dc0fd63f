// The card for the room: which widths to expect at which pressure, and which reading would overturn the plan. Large, and
// printable on one page.
#pragma once

#include "app/document/answers.h"

#include <QWidget>

class QAction;
class QTextBrowser;
class QTextDocument;

namespace gauge::app {

/// The card as a document: headings, a table by pressure, sentences. `large`: type to be read across the room.
QString cardHtml(const Answers& answers, bool large);

class CardPanel : public QWidget {
    Q_OBJECT
public:
    explicit CardPanel(Answers& answers, QWidget* parent = nullptr);
    /// Copy the card as plain text; save it as PDF; show it in large type.
    QList<QAction*> actions() const { return {m_copy, m_save, m_large}; }
    /// Writes the card as PDF; true when done, else the message line says why not.
    bool savePdf(const QString& path);

protected:
    void changeEvent(QEvent* event) override;

private:
    void refresh();

    Answers& m_answers;
    QTextBrowser* m_text;
    QAction* m_copy;
    QAction* m_save;
    QAction* m_large;
};

} // namespace gauge::app
