#include "app/settings/settings.h"

namespace gauge::app {
namespace {

const QString kGeometry = QStringLiteral("window/geometry");
const QString kCautions = QStringLiteral("window/cautions-dismissed");
const QString kLastFolder = QStringLiteral("folders/last");

} // namespace

QByteArray Settings::windowGeometry() const {
    return m_store.value(kGeometry).toByteArray();
}
void Settings::setWindowGeometry(const QByteArray& geometry) {
    store(kGeometry, geometry, QByteArray());
}
QString Settings::cautionsDismissed() const {
    return m_store.value(kCautions).toString();
}
void Settings::setCautionsDismissed(const QString& version) {
    store(kCautions, version, QString());
}
QString Settings::lastFolder() const {
    return m_store.value(kLastFolder).toString();
}
void Settings::setLastFolder(const QString& folder) {
    store(kLastFolder, folder, QString());
}

void Settings::store(const QString& key, const QVariant& value, const QVariant& standard) {
    if (value == standard)
        m_store.remove(key);
    else
        m_store.setValue(key, value);
}

} // namespace gauge::app
