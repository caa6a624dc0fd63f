#include "app/panels/what_next_panel.h"

#include "app/format/core_sentences.h"
#include "app/format/decision_words.h"
#include "app/format/sizing_sentences.h"
#include "app/panels/editor_parts.h"

#include <QLabel>
#include <QProgressBar>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

QLabel* wrapped(const QString& text, const char* name, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setObjectName(QString::fromLatin1(name));
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

/// Title, chance as bar and number, and what was simulated.
QWidget* actWidget(const core::NextAct& act, QWidget* parent) {
    auto* part = new QWidget(parent);
    auto* layout = new QVBoxLayout(part);
    layout->setContentsMargins(0, 0, 0, 6);
    layout->setSpacing(3);
    layout->addWidget(wrapped(actWords(act.act), "heading", part));
    auto* row = new QHBoxLayout;
    auto* bar = new QProgressBar(part);
    bar->setRange(0, 1000);
    bar->setValue(static_cast<int>(std::lround(1000.0 * act.chance)));
    bar->setTextVisible(false);
    bar->setMaximumHeight(8);
    bar->setAccessibleName(WhatNextPanel::tr("Chance to change the size"));
    row->addWidget(bar, 1);
    row->addWidget(new QLabel(WhatNextPanel::tr("changes the size: %1").arg(chanceWords(act.chance)), part));
    layout->addLayout(row);
    layout->addWidget(wrapped(sentence(act.text), "soft", part));
    return part;
}

} // namespace

WhatNextPanel::WhatNextPanel(Answers& answers, QWidget* parent) : QWidget(parent), m_answers(answers) {
    setAutoFillBackground(true);
    auto* inner = new QWidget;
    inner->setAutoFillBackground(true);
    auto* whole = new QVBoxLayout(inner);
    whole->setContentsMargins(10, 8, 10, 8);
    m_note = wrapped({}, "soft", inner);
    whole->addWidget(m_note);
    m_list = new QVBoxLayout;
    m_list->setSpacing(8);
    whole->addLayout(m_list);
    whole->addStretch(1);
    auto* scroll = scrolled(inner);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(scroll);
    connect(&answers, &Answers::sizingChanged, this, &WhatNextPanel::refresh);
    connect(&answers, &Answers::workChanged, this, &WhatNextPanel::refresh);
    refresh();
}

void WhatNextPanel::refresh() {
    while (QLayoutItem* item = m_list->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const core::SizingAnswer* answer = m_answers.sizing();
    if (!answer) {
        m_note->setText(m_answers.missing().join(QStringLiteral("\n\n")));
        return;
    }
    if (!m_answers.hasWhatNext()) {
        m_note->setText(m_answers.isWorking() ? tr("The acts are being simulated …")
                                              : tr("The acts were not simulated: the work was cancelled."));
        return;
    }
    if (answer->whatNext.empty()) {
        m_note->setText(tr("No size has a chance to fit, so there is none that a further reading could change."));
        return;
    }
    m_note->setText(tr("For each act, readings that it may give were drawn from what is known, and the sizes judged again "
                       "with each. A chance is right to about 4 in a hundred."));
    std::vector<core::NextAct> acts = answer->whatNext;
    std::stable_sort(acts.begin(), acts.end(), [](const auto& a, const auto& b) { return a.chance > b.chance; });
    for (const core::NextAct& act : acts)
        m_list->addWidget(actWidget(act, this));
}

} // namespace gauge::app
