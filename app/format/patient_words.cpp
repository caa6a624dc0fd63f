#include "app/format/patient_words.h"

#include <QStringList>

namespace gauge::app {

QString personName(const std::string& dicomName) {
    // Family^Given^Middle^Prefix^Suffix (PS3.5 6.2.1.1); the first component group only.
    const QString group = QString::fromStdString(dicomName).section(QLatin1Char('='), 0, 0);
    const QStringList parts = group.split(QLatin1Char('^'));
    const QString given = (parts.value(1) + QLatin1Char(' ') + parts.value(2)).simplified();
    return given.isEmpty() ? parts.value(0).trimmed() : parts.value(0).trimmed() + QStringLiteral(", ") + given;
}

QString isoDate(const std::string& dicomDate) {
    const QString date = QString::fromStdString(dicomDate);
    if (date.size() != 8) return date;
    return date.left(4) + QLatin1Char('-') + date.mid(4, 2) + QLatin1Char('-') + date.mid(6);
}

} // namespace gauge::app
