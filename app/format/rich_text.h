// Plain words inside rich text.
#pragma once

#include <QString>

namespace gauge::app {

/// One paragraph of HTML that shows `text` as it is written.
inline QString paragraph(const QString& text) {
    return QStringLiteral("<p>%1</p>").arg(text.toHtmlEscaped());
}

} // namespace gauge::app
