// One connection to the library's database, SQLite or PostgreSQL, with the few things that differ between them.
// Belongs to the thread that opened it.
//
// What "saved" rests on: SQLite in write-ahead mode with synchronous=FULL syncs the log at each commit before it reports
// it; PostgreSQL does with synchronous_commit=on. A change is reported only after COMMIT has returned.
//
// Messages never quote the driver's text about a statement, which can hold values (a patient's name): they say what the
// database's code means, and give the code.
#pragma once

#include "app/library/library_place.h"
#include "core/result.h"

#include <QCoreApplication>
#include <QSqlError>
#include <QVariant>
#include <functional>
#include <memory>
#include <vector>

namespace gauge::app {

/// Fact of an error that says: not one row but the file's own structure is damaged.
inline constexpr char kPagesDamaged[] = "pages-damaged";

class Database {
    Q_DECLARE_TR_FUNCTIONS(Database)
public:
    using Row = QVariantList;
    using Rows = std::vector<Row>;

    /// Connects and makes the connection safe; the file and its folder are made for SQLite, readable by their owner only.
    /// @errors FileUnreadable: no driver, no such server, refused, no permission; FileDamaged: no database of ours, or
    /// one whose pages are damaged; OutputUnwritable: the folder or the file cannot be written.
    static core::Result<std::unique_ptr<Database>> open(const LibraryPlace& place);
    ~Database();
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    bool isSqlite() const { return m_place.kind == LibraryPlace::Kind::Sqlite; }
    const LibraryPlace& place() const { return m_place; }

    /// Runs a statement; `{blob}` and `{lock}` stand for what the two databases call differently. The number of rows
    /// changed. @errors OutputUnwritable, FileDamaged, FileUnreadable by the database's code.
    core::Result<int> change(const QString& sql, const QVariantList& values = {});
    /// All rows of a query. Errors as above.
    core::Result<Rows> rows(const QString& sql, const QVariantList& values = {});

    /// Runs `work` in a transaction that is known to write: committed when it succeeds, rolled back when it fails.
    /// The error is that of `work` or of the commit.
    core::Result<void> inTransaction(const std::function<core::Result<void>()>& work);

    bool hasTable(const QString& name) const;
    /// SQLite: what PRAGMA integrity_check finds, empty when all is well. PostgreSQL: always empty; its own page
    /// checksums answer.
    core::Result<QString> damageFound();
    /// The server's time in UTC, ISO 8601 with milliseconds; empty for SQLite, which has none.
    core::Result<QString> serverTime();
    /// Bytes of the database; 0 for PostgreSQL.
    qint64 size() const;

private:
    explicit Database(LibraryPlace place);
    core::Result<void> connectSqlite();
    core::Result<void> connectPostgres();
    core::Error errorOf(const QSqlError& error) const;
    core::Error sqliteError(int code) const;
    core::Error postgresError(const QString& state) const;

    LibraryPlace m_place;
    QString m_name; ///< of the connection
};

} // namespace gauge::app
