#include "app/library/database.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QSqlRecord>
#include <atomic>

namespace gauge::app {
namespace {

using core::ErrorCode;

constexpr int kBusyTimeoutMs = 5000;
constexpr qint64 kApplicationId = 0x4f474c42; // "OGLB": tells our files from other SQLite databases

std::atomic<int> connectionCount = 0;

core::Error errorWith(ErrorCode code, const QString& text) {
    return core::Error{code, text.toStdString(), {}, nullptr};
}

tl::unexpected<core::Error> failed(ErrorCode code, const QString& text) {
    return core::failure(code, text.toStdString());
}

/// Null texts and bytes would be stored as NULL; here absent is empty.
QVariant bound(const QVariant& value) {
    if (value.typeId() == QMetaType::QString && value.toString().isNull()) return QStringLiteral("");
    if (value.typeId() == QMetaType::QByteArray && value.toByteArray().isNull()) return QByteArray("");
    return value;
}

} // namespace

Database::Database(LibraryPlace place)
    : m_place(std::move(place)), m_name(QStringLiteral("case-library-%1").arg(++connectionCount)) {}

Database::~Database() {
    {
        QSqlDatabase connection = QSqlDatabase::database(m_name, false);
        if (connection.isOpen()) connection.close();
    }
    if (QSqlDatabase::contains(m_name)) QSqlDatabase::removeDatabase(m_name);
}

core::Result<std::unique_ptr<Database>> Database::open(const LibraryPlace& place) {
    const QString driver = place.kind == LibraryPlace::Kind::Sqlite ? QStringLiteral("QSQLITE") : QStringLiteral("QPSQL");
    const QString package =
        place.kind == LibraryPlace::Kind::Sqlite ? QStringLiteral("libqt6sql6-sqlite") : QStringLiteral("libqt6sql6-psql");
    if (!QSqlDatabase::isDriverAvailable(driver))
        return failed(ErrorCode::FileUnreadable, tr("Cannot open the case library at %1: the database driver %2 is not installed. "
                                                    "Install the package %3.")
                                                     .arg(place.shown(), driver, package));
    std::unique_ptr<Database> database(new Database(place));
    QSqlDatabase::addDatabase(driver, database->m_name);
    const auto connected = database->isSqlite() ? database->connectSqlite() : database->connectPostgres();
    if (!connected) {
        const core::Error& cause = connected.error();
        return core::failure(cause.code,
                             tr("Cannot open the case library at %1: %2")
                                 .arg(place.shown(), QString::fromStdString(cause.message))
                                 .toStdString(),
                             cause);
    }
    return database;
}

core::Result<void> Database::connectSqlite() {
    const QFileInfo info(m_place.path);
    if (!QDir().mkpath(info.absolutePath()))
        return failed(ErrorCode::OutputUnwritable, tr("its folder cannot be made. Choose a folder that you may write to."));
    if (!QFileInfo(info.absolutePath()).isWritable())
        return failed(ErrorCode::OutputUnwritable, tr("its folder is read-only for you, so nothing could be saved. "
                                                      "Choose a folder that you may write to."));
    if (info.exists() && !info.isWritable())
        return failed(ErrorCode::OutputUnwritable, tr("the file is read-only for you, so nothing could be saved. "
                                                      "Have its permissions changed, or choose another file."));
    QFile file(m_place.path);
    if (!info.exists() && !file.open(QIODevice::WriteOnly | QIODevice::NewOnly))
        return failed(ErrorCode::OutputUnwritable, tr("the file cannot be made. Choose a folder that you may write to."));
    if (file.isOpen()) file.setPermissions(QFile::ReadOwner | QFile::WriteOwner); // its log inherits them

    QSqlDatabase connection = QSqlDatabase::database(m_name, false);
    connection.setDatabaseName(m_place.path);
    connection.setConnectOptions(QStringLiteral("QSQLITE_BUSY_TIMEOUT=%1").arg(kBusyTimeoutMs));
    if (!connection.open()) return tl::make_unexpected(errorOf(connection.lastError()));

    const auto id = rows(QStringLiteral("PRAGMA application_id"));
    if (!id) return tl::make_unexpected(id.error());
    const qint64 found = id->empty() ? 0 : id->front().front().toLongLong();
    if (found != kApplicationId && !connection.tables().isEmpty())
        return failed(ErrorCode::FileDamaged, tr("the file is a database, but not a case library, or its first page is damaged. "
                                                 "Nothing was changed in it. Choose another file, or bring back a copy."));
    const auto mode = rows(QStringLiteral("PRAGMA journal_mode = WAL"));
    if (!mode) return tl::make_unexpected(mode.error());
    if (mode->empty() || mode->front().front().toString() != QLatin1String("wal"))
        return failed(ErrorCode::OutputUnwritable, tr("this file system does not allow a write-ahead log. Keep the file on a "
                                                      "local disk; for several computers use PostgreSQL."));
    if (found != kApplicationId)
        if (auto set = change(QStringLiteral("PRAGMA application_id = %1").arg(kApplicationId)); !set)
            return tl::make_unexpected(set.error());
    for (const char* pragma : {"PRAGMA synchronous = FULL", "PRAGMA foreign_keys = ON", "PRAGMA temp_store = MEMORY",
                               "PRAGMA secure_delete = ON", "PRAGMA trusted_schema = OFF", "PRAGMA cell_size_check = ON"})
        if (auto set = change(QString::fromLatin1(pragma)); !set) return tl::make_unexpected(set.error());
    return {};
}

core::Result<void> Database::connectPostgres() {
    QSqlDatabase connection = QSqlDatabase::database(m_name, false);
    QStringList options{QStringLiteral("connect_timeout=5"), QStringLiteral("tcp_user_timeout=10000"),
                        QStringLiteral("application_name=ostium-gauge")};
    if (!m_place.service.isEmpty())
        options << QStringLiteral("service=%1").arg(m_place.service);
    else
        options << QStringLiteral("sslmode=%1").arg(m_place.tlsMode);
    connection.setConnectOptions(options.join(QLatin1Char(';')));
    connection.setHostName(m_place.host);
    if (m_place.service.isEmpty()) connection.setPort(m_place.port);
    connection.setDatabaseName(m_place.database);
    if (!m_place.user.isEmpty()) connection.setUserName(m_place.user);
    if (!connection.open()) // no statement was sent yet: the text tells of server and permission only
        return failed(ErrorCode::FileUnreadable,
                      tr("the server does not let us in (%1). Check host, database and user in the settings, and that the "
                         "password stands in your password file or service file.")
                          .arg(connection.lastError().databaseText().simplified()));
    for (const char* setting : {"SET synchronous_commit TO on", "SET lock_timeout TO '5s'", "SET statement_timeout TO '20s'",
                                "SET idle_in_transaction_session_timeout TO '60s'"})
        if (auto set = change(QString::fromLatin1(setting)); !set) return tl::make_unexpected(set.error());
    return {};
}

core::Result<int> Database::change(const QString& sql, const QVariantList& values) {
    QString text = sql;
    text.replace(QLatin1String("{blob}"), isSqlite() ? QLatin1String("BLOB") : QLatin1String("BYTEA"));
    QSqlQuery query(QSqlDatabase::database(m_name, false));
    query.setForwardOnly(true);
    bool done = false;
    if (values.isEmpty()) {
        done = query.exec(text);
    } else if (query.prepare(text)) {
        for (const QVariant& value : values) query.addBindValue(bound(value));
        done = query.exec();
    }
    if (!done) return tl::make_unexpected(errorOf(query.lastError()));
    return query.numRowsAffected();
}

core::Result<Database::Rows> Database::rows(const QString& sql, const QVariantList& values) {
    QString text = sql;
    text.replace(QLatin1String("{lock}"), isSqlite() ? QLatin1String("") : QLatin1String("FOR UPDATE"));
    QSqlQuery query(QSqlDatabase::database(m_name, false));
    query.setForwardOnly(true);
    if (!query.prepare(text)) return tl::make_unexpected(errorOf(query.lastError()));
    for (const QVariant& value : values) query.addBindValue(bound(value));
    if (!query.exec()) return tl::make_unexpected(errorOf(query.lastError()));
    Rows found;
    while (query.next()) {
        Row row;
        for (int column = 0; column < query.record().count(); ++column) row << query.value(column);
        found.push_back(std::move(row));
    }
    if (query.lastError().isValid()) return tl::make_unexpected(errorOf(query.lastError()));
    return found;
}

core::Result<void> Database::inTransaction(const std::function<core::Result<void>()>& work) {
    // IMMEDIATE: a writer that must wait does so here, not half way with a stale view.
    if (auto begun = change(isSqlite() ? QStringLiteral("BEGIN IMMEDIATE") : QStringLiteral("BEGIN")); !begun)
        return tl::make_unexpected(begun.error());
    auto outcome = work();
    if (outcome) {
        if (auto committed = change(QStringLiteral("COMMIT")); !committed) outcome = tl::make_unexpected(committed.error());
    }
    if (!outcome) change(QStringLiteral("ROLLBACK")); // the first error is the one to tell
    return outcome;
}

bool Database::hasTable(const QString& name) const {
    return QSqlDatabase::database(m_name, false).tables().contains(name);
}

core::Result<QString> Database::damageFound() {
    if (!isSqlite()) return QString();
    const auto found = rows(QStringLiteral("PRAGMA integrity_check(1)"));
    if (!found) return tl::make_unexpected(found.error());
    const QString text = found->empty() ? QStringLiteral("no answer") : found->front().front().toString();
    return text == QLatin1String("ok") ? QString() : text;
}

core::Result<QString> Database::serverTime() {
    if (isSqlite()) return QString();
    const auto time = rows(QStringLiteral(
        "SELECT to_char(clock_timestamp() AT TIME ZONE 'UTC', 'YYYY-MM-DD\"T\"HH24:MI:SS.MS\"Z\"')"));
    if (!time) return tl::make_unexpected(time.error());
    return time->front().front().toString();
}

qint64 Database::size() const {
    return isSqlite() ? QFileInfo(m_place.path).size() : 0;
}

core::Error Database::errorOf(const QSqlError& error) const {
    return isSqlite() ? sqliteError(error.nativeErrorCode().toInt()) : postgresError(error.nativeErrorCode());
}

core::Error Database::sqliteError(int code) const {
    // Result codes: sqlite.org/rescode.html. The low byte is the group.
    if (code == 778) // SQLITE_IOERR_WRITE: a quota or a limit on the size of files, where the disk itself has space
        return errorWith(ErrorCode::OutputUnwritable, tr("the disk is full for you, or does not let us write. Free some space, then "
                                                         "try again."));
    switch (code & 0xff) {
    case 5:
    case 6:
        return errorWith(ErrorCode::OutputUnwritable, tr("another program has held the library for more than 5 s. Try again."));
    case 8:
        return errorWith(ErrorCode::OutputUnwritable, tr("the library is read-only. Have its permissions changed, then try again."));
    case 10:
        return errorWith(ErrorCode::OutputUnwritable,
                         tr("the disk does not read or write (SQLite code %1). Check that it is there and has space, then try "
                            "again.")
                             .arg(code));
    case 11:
    case 26: {
        core::Error error = errorWith(
            ErrorCode::FileDamaged, tr("the library's file is damaged (SQLite code %1). Nothing was changed. Rescue the whole cases "
                                       "into a new library, or bring back a copy.")
                                        .arg(code));
        error.facts.push_back({kPagesDamaged, place().shown().toStdString()});
        return error;
    }
    case 13:
        return errorWith(ErrorCode::OutputUnwritable, tr("the disk is full. Free some space, then try again."));
    case 14:
        return errorWith(ErrorCode::FileUnreadable, tr("the file cannot be opened. Check the folder's permissions."));
    default:
        return errorWith(ErrorCode::Internal, tr("the database refused the statement (SQLite code %1).").arg(code));
    }
}

core::Error Database::postgresError(const QString& state) const {
    // SQLSTATE classes: PostgreSQL 15, appendix A.
    const QString group = state.left(2);
    if (state.isEmpty() || group == QLatin1String("08") || group == QLatin1String("57"))
        return errorWith(ErrorCode::OutputUnwritable,
                         tr("the connection to the server is lost or was ended. Check the network, then open the library again."));
    if (group == QLatin1String("53"))
        return errorWith(ErrorCode::OutputUnwritable, tr("the server is out of disk space or memory (code %1).").arg(state));
    if (group == QLatin1String("55") || group == QLatin1String("40"))
        return errorWith(ErrorCode::OutputUnwritable, tr("another person's change held this case too long. Try again."));
    if (group == QLatin1String("XX") || group == QLatin1String("58"))
        return errorWith(ErrorCode::FileDamaged,
                         tr("the server found damaged data (code %1). Tell who looks after it.").arg(state));
    if (state == QLatin1String("42501") || state == QLatin1String("25006"))
        return errorWith(ErrorCode::OutputUnwritable, tr("you may not write to this library (code %1).").arg(state));
    return errorWith(ErrorCode::Internal, tr("the database refused the statement (code %1).").arg(state));
}

} // namespace gauge::app
