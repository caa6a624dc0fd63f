// The two databases that the library's tests run on: a SQLite file, and a PostgreSQL server of the test's own.
#pragma once

#include "app/library/case_library.h"

#include <QTemporaryDir>
#include <memory>
#include <string>

namespace gauge::app::fixture {

/// A real PostgreSQL server from the system's packages, started by the first that asks and ended with the test program
/// (also when that is killed). Only a Unix socket, in a folder of its own; run by the user "postgres" where the tests run
/// as root, since it refuses root.
class PostgresServer {
public:
    /// Null when it cannot be started; whyNot() says why.
    static PostgresServer* instance();
    static const std::string& whyNot();

    ~PostgresServer();
    QString socketFolder() const { return m_folder->path(); }
    /// A new, empty database. Its name.
    QString makeDatabase();
    LibraryPlace place(const QString& database) const;
    /// As a crash ends it: no checkpoint, connections cut; started again from its log.
    bool crashAndRestart();

private:
    PostgresServer() = default;
    bool start();
    bool run();
    bool isReady() const;
    class Process;
    std::unique_ptr<QTemporaryDir> m_folder;
    std::unique_ptr<Process> m_process;
    int m_databases = 0;
};

struct Sqlite {
    static std::string whyNot() { return {}; }
    LibraryPlace place() const;
    QTemporaryDir folder;
};

struct Postgres {
    static std::string whyNot();
    LibraryPlace place() const;
    mutable QString database;
};

} // namespace gauge::app::fixture
