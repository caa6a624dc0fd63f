// Work for a widget that nobody sees waits until somebody does: a hidden page must not cost a frame of the page in use.
#pragma once

#include <QObject>
#include <functional>

class QWidget;

namespace gauge::app {

class WhenShown : public QObject {
    Q_OBJECT
public:
    /// `work` brings `widget` up to date; both outlive this, as members of the widget's class do.
    WhenShown(QWidget& widget, std::function<void()> work);

    /// Works now where the widget is on screen, else once, when it is shown next.
    void want();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget& m_widget;
    std::function<void()> m_work;
    bool m_isBehind = false;
};

} // namespace gauge::app
