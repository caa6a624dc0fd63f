// The caution shown on start above the work; it can be dismissed and stays readable under Help.
#pragma once

#include <QFrame>

namespace gauge::app {

class CautionStrip : public QFrame {
    Q_OBJECT
public:
    explicit CautionStrip(QWidget* parent = nullptr);

signals:
    void dismissed();
};

} // namespace gauge::app
