// What is shown before anything is open: what the program does, how to begin, and the cautions.
#pragma once

#include <QWidget>

namespace gauge::app {

class StartPage : public QWidget {
    Q_OBJECT
public:
    explicit StartPage(QWidget* parent = nullptr);

signals:
    void openRequested();
};

} // namespace gauge::app
