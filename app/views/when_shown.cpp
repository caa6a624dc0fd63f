#include "app/views/when_shown.h"

#include <QEvent>
#include <QWidget>
#include <utility>

namespace gauge::app {

WhenShown::WhenShown(QWidget& widget, std::function<void()> work) : m_widget(widget), m_work(std::move(work)) {
    widget.installEventFilter(this);
}

void WhenShown::want() {
    m_isBehind = !m_widget.isVisible();
    if (!m_isBehind) m_work();
}

bool WhenShown::eventFilter(QObject*, QEvent* event) {
    if (event->type() == QEvent::Show && std::exchange(m_isBehind, false)) m_work();
    return false;
}

} // namespace gauge::app
