#include "app/panels/decision_tabs.h"

#include "app/panels/card_panel.h"
#include "app/panels/seat_panel.h"
#include "app/panels/sizes_panel.h"
#include "app/panels/what_next_panel.h"

namespace gauge::app {

DecisionTabs::DecisionTabs(Answers& answers, QWidget* parent)
    : QTabWidget(parent), m_sizes(new SizesPanel(answers)), m_seat(new SeatPanel(answers)), m_card(new CardPanel(answers)) {
    setDocumentMode(true);
    setAccessibleName(tr("Sizes, seat, what next, card for the room"));
    addTab(m_sizes, tr("Sizes"));
    addTab(m_seat, tr("Seat"));
    addTab(new WhatNextPanel(answers), tr("What next"));
    addTab(m_card, tr("Card for the room"));
}

QList<QAction*> DecisionTabs::actions() const {
    return m_sizes->actions() + m_seat->actions() + m_card->actions();
}

} // namespace gauge::app
