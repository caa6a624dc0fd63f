#include "app/window/start_watch.h"

#include <QCoreApplication>
#include <QEvent>
#include <QTimer>
#include <iostream>

namespace gauge::app {
namespace {

/// Waits for the first paint, then for the first moment at which the event loop has nothing else to do.
class StartWatch : public QObject {
public:
    explicit StartWatch(QWidget& window) : QObject(&window) { window.installEventFilter(this); }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint && !m_painted) {
            m_painted = true;
            QTimer::singleShot(0, this, [this] { QTimer::singleShot(0, this, tellAndQuit); }); // after what the paint set off
        }
        return QObject::eventFilter(watched, event);
    }

private:
    static void tellAndQuit() {
        std::cout << kUsableLine << std::endl;
        QCoreApplication::quit();
    }
    bool m_painted = false;
};

} // namespace

void watchStart(QWidget& window) {
    if (qEnvironmentVariableIsSet(kStartOnlyVariable)) new StartWatch(window); // the window's child
}

} // namespace gauge::app
