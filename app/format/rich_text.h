// Plain words inside rich text.
#pragma once

#include <QString>

namespace gauge::app {

/// One paragraph of HTML that shows `text` as it is written.
inline QString paragraph(const QString& text) {
    return QStringLiteral("<p>%1</p>").arg(text.toHtmlEscaped());
}

/// The lines of a table's cell; a value may be broken before its uncertainty, so that tables fit narrow panels.
inline QString cellHtml(const QString& text) {
    QString words = text.toHtmlEscaped();
    words.replace(QStringLiteral("\u00a0\u00b1"), QStringLiteral(" \u00b1"));
    return words.replace(QLatin1Char('\n'), QStringLiteral("<br>"));
}

} // namespace gauge::app
