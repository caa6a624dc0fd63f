#include "app/library/library_place.h"

#include <QDir>
#include <QStandardPaths>

namespace gauge::app {

QString LibraryPlace::shown() const {
    if (kind == Kind::Sqlite) return QDir::toNativeSeparators(path);
    if (!service.isEmpty()) return tr("service %1").arg(service);
    return tr("%1 on %2").arg(database, host);
}

LibraryPlace usualLibraryPlace() {
    LibraryPlace place;
    place.path = QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation))
                     .filePath(QStringLiteral("cases.library"));
    return place;
}

} // namespace gauge::app
