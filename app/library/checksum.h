// The library's checksums: SHA-256, in lower-case hexadecimal.
#pragma once

#include <QByteArray>
#include <QList>
#include <QString>

namespace gauge::app {

/// Of plain bytes; what `sha256sum` prints for a file that holds them.
QString sha256Of(const QByteArray& bytes);

/// Of several parts in order. Each part is preceded by its length, so that no two lists share one input.
QString sha256OfParts(const QList<QByteArray>& parts);

} // namespace gauge::app
