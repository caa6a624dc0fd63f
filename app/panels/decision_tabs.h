// What follows from the readings, one part at a time: the sizes, how they would sit, what could be done next, the card for the room.
#pragma once

#include "app/document/answers.h"

#include <QTabWidget>

namespace gauge::app {

class CardPanel;
class SeatPanel;
class SizesPanel;

class DecisionTabs : public QTabWidget {
    Q_OBJECT
public:
    explicit DecisionTabs(Answers& answers, QWidget* parent = nullptr);

    SizesPanel& sizes() { return *m_sizes; }
    SeatPanel& seat() { return *m_seat; }
    CardPanel& card() { return *m_card; }
    /// Those of the sizes, of the seats and of the card.
    QList<QAction*> actions() const;

private:
    SizesPanel* m_sizes;
    SeatPanel* m_seat;
    CardPanel* m_card;
};

} // namespace gauge::app
