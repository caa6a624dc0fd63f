// What could be done next, each with the chance that it would change the size with the greatest fit chance.
#pragma once

#include "app/document/answers.h"

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace gauge::app {

class WhatNextPanel : public QWidget {
    Q_OBJECT
public:
    explicit WhatNextPanel(Answers& answers, QWidget* parent = nullptr);

private:
    void refresh();

    Answers& m_answers;
    QVBoxLayout* m_list;
    QLabel* m_note;
};

} // namespace gauge::app
