// Where the case library is: a SQLite file of one person, or a PostgreSQL database of a team.
#pragma once

#include <QCoreApplication>
#include <QString>

namespace gauge::app {

/// There is no password here, on purpose: for PostgreSQL it comes from the person's password file (~/.pgpass, mode 0600)
/// or from a service file (~/.pg_service.conf), both read by PostgreSQL's own client library. So no password reaches
/// our settings, logs or messages.
struct LibraryPlace {
    Q_DECLARE_TR_FUNCTIONS(LibraryPlace)
public:
    enum class Kind { Sqlite, Postgres };
    Kind kind = Kind::Sqlite;
    QString path;     ///< SQLite: the file; made, with its folder, when it is not there
    QString host;     ///< PostgreSQL: a host, or the folder of a Unix socket
    int port = 5432;  ///< PostgreSQL
    QString database; ///< PostgreSQL
    QString user;     ///< PostgreSQL; empty: as the service file or the system say
    QString service;  ///< PostgreSQL: a name in the service file; what it sets need not be set here
    QString tlsMode = QStringLiteral("require"); ///< PostgreSQL: sslmode; plays no part on a Unix socket

    /// As messages name it: the file, or "database on host". Holds no identity of a patient.
    QString shown() const;

    bool operator==(const LibraryPlace&) const = default;
};

/// The file used unless the settings name another: cases.library in the person's data folder.
LibraryPlace usualLibraryPlace();

} // namespace gauge::app
