// What follows from the readings, one part at a time: the sizes, what could be done next, the card for the room.
#pragma once

#include "app/document/answers.h"

#include <QTabWidget>

namespace gauge::app {

class CardPanel;
class SizesPanel;

class DecisionTabs : public QTabWidget {
    Q_OBJECT
public:
    explicit DecisionTabs(Answers& answers, QWidget* parent = nullptr);

    SizesPanel& sizes() { return *m_sizes; }
    CardPanel& card() { return *m_card; }
    /// Those of the sizes and of the card.
    QList<QAction*> actions() const;

private:
    SizesPanel* m_sizes;
    CardPanel* m_card;
};

} // namespace gauge::app
