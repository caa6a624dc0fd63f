#include "app/library/checksum.h"

#include <QCryptographicHash>
#include <QtEndian>

namespace gauge::app {

QString sha256Of(const QByteArray& bytes) {
    return QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
}

QString sha256OfParts(const QList<QByteArray>& parts) {
    QCryptographicHash hash(QCryptographicHash::Sha256);
    for (const QByteArray& part : parts) {
        const quint64 length = qToBigEndian(static_cast<quint64>(part.size()));
        hash.addData(QByteArrayView(reinterpret_cast<const char*>(&length), sizeof length));
        hash.addData(part);
    }
    return QString::fromLatin1(hash.result().toHex());
}

} // namespace gauge::app
