#include "app/settings/library_settings.h"

#include <QSettings>

namespace gauge::app {
namespace {

const QString kKind = QStringLiteral("cases/library"), kPath = QStringLiteral("library/path"),
              kService = QStringLiteral("library/service"), kHost = QStringLiteral("library/host"),
              kPort = QStringLiteral("library/port"), kDatabase = QStringLiteral("library/database"),
              kUser = QStringLiteral("library/user"), kTls = QStringLiteral("library/tls");
const QString kPostgres = QStringLiteral("postgresql"), kUsualDatabase = QStringLiteral("cases");

} // namespace

LibraryPlace libraryPlaceOfSettings() {
    const QSettings settings;
    LibraryPlace place = usualLibraryPlace();
    if (settings.value(kKind).toString() != kPostgres) {
        if (const QString path = settings.value(kPath).toString(); !path.isEmpty()) place.path = path;
        return place;
    }
    place.kind = LibraryPlace::Kind::Postgres;
    place.path.clear();
    place.service = settings.value(kService).toString();
    place.host = settings.value(kHost).toString();
    place.port = settings.value(kPort, place.port).toInt();
    place.database = settings.value(kDatabase, place.service.isEmpty() ? kUsualDatabase : QString()).toString();
    place.user = settings.value(kUser).toString();
    place.tlsMode = settings.value(kTls, place.tlsMode).toString();
    return place;
}

void setLibraryPlaceInSettings(const LibraryPlace& place) {
    QSettings settings;
    const LibraryPlace usual;
    const bool isServer = place.kind == LibraryPlace::Kind::Postgres;
    const auto store = [&](const QString& key, const QVariant& value, const QVariant& standard) {
        if (value == standard || value.toString().isEmpty())
            settings.remove(key);
        else
            settings.setValue(key, value);
    };
    store(kKind, isServer ? kPostgres : QString(), QString());
    store(kPath, place.path, usualLibraryPlace().path);
    store(kService, place.service, QString());
    store(kHost, place.host, QString());
    store(kPort, place.port, usual.port);
    store(kDatabase, place.database, place.service.isEmpty() ? kUsualDatabase : QString());
    store(kUser, place.user, QString());
    store(kTls, place.tlsMode, usual.tlsMode);
}

} // namespace gauge::app
