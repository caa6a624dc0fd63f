// How the sizes would sit: what they slide along, the chosen size (or that with the greatest fit chance) in sentences, and all of them
// side by side.
#pragma once

#include "app/document/answers.h"
#include "app/models/seat_model.h"

#include <QWidget>

class QAction;
class QLabel;

namespace gauge::app {

class SeatPanel : public QWidget {
    Q_OBJECT
public:
    explicit SeatPanel(Answers& answers, QWidget* parent = nullptr);
    /// Copies the table as text for a spreadsheet.
    QList<QAction*> actions() const { return {m_copy}; }
    /// What is shown, without markup.
    QString text() const;

private:
    void refresh();
    QString sizeWords() const;
    QString tableWords() const;

    Answers& m_answers;
    SeatModel m_model;
    QLabel* m_words;
    QAction* m_copy;
};

} // namespace gauge::app
