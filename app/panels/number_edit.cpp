#include "app/panels/number_edit.h"

#include "app/format/decision_words.h"

#include <QLocale>
#include <cmath>

namespace gauge::app {

NumberEdit::NumberEdit(double least, double most, const QString& accessibleName, QWidget* parent)
    : QLineEdit(parent), m_least(least), m_most(most) {
    setAccessibleName(accessibleName);
    setAlignment(Qt::AlignRight);
    setToolTip(tr("%1: %2 to %3; empty: not recorded").arg(accessibleName, plainNumber(least), plainNumber(most)));
    connect(this, &QLineEdit::editingFinished, this, &NumberEdit::take);
}

void NumberEdit::setValue(std::optional<double> value) {
    m_value = value;
    m_good = true;
    const bool blocked = blockSignals(true);
    setText(value ? plainNumber(*value) : QString());
    blockSignals(blocked);
}

void NumberEdit::take() {
    QString words = text().trimmed();
    words.replace(QLatin1Char(','), QLatin1Char('.')).replace(QChar(0x2212), QLatin1Char('-'));
    std::optional<double> number;
    m_good = true;
    if (!words.isEmpty()) {
        const double read = QLocale::c().toDouble(words, &m_good);
        m_good = m_good && std::isfinite(read) && read >= m_least && read <= m_most;
        if (m_good) number = read;
    }
    if (!m_good) {
        // The field goes back to what is recorded; the tooltip says what may stand here.
        const QString refused = text();
        setValue(m_value);
        m_good = false;
        setToolTip(tr("“%1” was not taken. %2: %3 to %4; empty: not recorded")
                       .arg(refused, accessibleName(), plainNumber(m_least), plainNumber(m_most)));
        return;
    }
    if (number == m_value) return;
    m_value = number;
    emit edited(number);
}

QSize NumberEdit::sizeHint() const {
    const QSize usual = QLineEdit::sizeHint();
    return {fontMetrics().horizontalAdvance(QStringLiteral("0000.00")) + 22, usual.height()};
}

} // namespace gauge::app
