#include "app/panels/wrapped_check.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMouseEvent>

namespace gauge::app {

WrappedCheck::WrappedCheck(const QString& text, QWidget* parent) : QWidget(parent), m_box(new QCheckBox(this)), m_words(new QLabel(text, this)) {
    m_box->setAccessibleName(text);
    m_words->setWordWrap(true);
    m_words->installEventFilter(this);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_box, 0, Qt::AlignTop);
    row->addWidget(m_words, 1);
    setFocusProxy(m_box);
    connect(m_box, &QCheckBox::clicked, this, &WrappedCheck::clicked);
}

bool WrappedCheck::isChecked() const {
    return m_box->isChecked();
}

void WrappedCheck::setChecked(bool on) {
    m_box->setChecked(on);
}

void WrappedCheck::setToolTip(const QString& text) {
    QWidget::setToolTip(text);
    m_box->setToolTip(text);
}

bool WrappedCheck::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_words && event->type() == QEvent::MouseButtonRelease && static_cast<QMouseEvent*>(event)->button() == Qt::LeftButton &&
        m_box->isEnabled()) {
        m_box->click();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace gauge::app
