#include "tests/app/library/library_backends.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QProcess>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QStandardPaths>
#include <QThread>
#include <csignal>
#include <filesystem>
#include <pwd.h>
#include <unistd.h>

namespace gauge::app::fixture {
namespace {

constexpr int kStartMs = 120000; // a crashed server first syncs and replays; the machine may be busy

std::string reason;

QString binaries() {
    const QDir versions(QStringLiteral("/usr/lib/postgresql"));
    for (const QString& version : versions.entryList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name | QDir::Reversed))
        if (QFile::exists(versions.filePath(version + "/bin/initdb"))) return versions.filePath(version + "/bin");
    return {};
}

/// The command as the server's own user, ended with this program.
QStringList asServer(const QStringList& command) {
    QStringList all{QStringLiteral("setpriv"), QStringLiteral("--pdeathsig"), QStringLiteral("INT")};
    if (geteuid() == 0)
        all << QStringLiteral("--reuid=postgres") << QStringLiteral("--regid=postgres") << QStringLiteral("--clear-groups");
    return all + command;
}

} // namespace

class PostgresServer::Process : public QProcess {};

PostgresServer* PostgresServer::instance() {
    static std::unique_ptr<PostgresServer> server = []() -> std::unique_ptr<PostgresServer> {
        std::unique_ptr<PostgresServer> made(new PostgresServer);
        if (!made->start()) made.reset();
        return made;
    }();
    return server.get();
}

const std::string& PostgresServer::whyNot() {
    instance();
    return reason;
}

bool PostgresServer::start() {
    if (binaries().isEmpty()) {
        reason = "no PostgreSQL server is installed (Debian's package postgresql)";
        return false;
    }
    if (!QSqlDatabase::isDriverAvailable(QStringLiteral("QPSQL"))) {
        reason = "Qt's PostgreSQL driver is not installed (Debian's package libqt6sql6-psql)";
        return false;
    }
    m_folder = std::make_unique<QTemporaryDir>(QStringLiteral("/tmp/library-server-XXXXXX")); // socket paths must be short
    if (geteuid() == 0) {
        const passwd* user = getpwnam("postgres");
        if (!user || chown(m_folder->path().toLocal8Bit().constData(), user->pw_uid, user->pw_gid) != 0) {
            reason = "there is no user postgres, and the server refuses root";
            return false;
        }
    }
    QProcess init;
    QStringList command = asServer({binaries() + "/initdb", "-D", m_folder->path() + "/data", "-U", "library", "--auth=trust",
                                    "--encoding=UTF8", "--locale=C", "--no-instructions"});
    init.setWorkingDirectory(m_folder->path());
    init.start(command.takeFirst(), command);
    init.waitForFinished(kStartMs);
    if (init.exitStatus() != QProcess::NormalExit || init.exitCode() != 0) {
        reason = "FAILED: initdb: " + init.readAllStandardError().toStdString();
        return false;
    }
    return run();
}

bool PostgresServer::run() {
    m_process = std::make_unique<Process>();
    QStringList command = asServer({binaries() + "/postgres", "-D", m_folder->path() + "/data", "-c", "listen_addresses=", "-c",
                                    "recovery_init_sync_method=syncfs", "-c", "unix_socket_directories=" + m_folder->path()});
    m_process->setWorkingDirectory(m_folder->path());
    m_process->setStandardErrorFile(QProcess::nullDevice());
    m_process->setStandardOutputFile(QProcess::nullDevice());
    m_process->start(command.takeFirst(), command);
    QElapsedTimer time;
    time.start();
    while (time.elapsed() < kStartMs && m_process->state() != QProcess::NotRunning) {
        if (isReady()) return true;
        QThread::msleep(50);
        m_process->waitForFinished(1);
    }
    reason = "FAILED: the server does not answer; state " + std::to_string(m_process->state()) + ", exit " + std::to_string(m_process->exitCode());
    return false;
}

bool PostgresServer::isReady() const {
    const QString name = QStringLiteral("ready");
    bool ready = false;
    {
        auto connection = QSqlDatabase::addDatabase(QStringLiteral("QPSQL"), name);
        connection.setHostName(m_folder->path());
        connection.setUserName(QStringLiteral("library"));
        connection.setDatabaseName(QStringLiteral("postgres"));
        ready = connection.open();
    }
    QSqlDatabase::removeDatabase(name);
    return ready;
}

PostgresServer::~PostgresServer() {
    if (!m_process) return;
    m_process->terminate(); // SIGTERM waits for clients; there are none any more
    if (!m_process->waitForFinished(5000)) {
        m_process->kill();
        m_process->waitForFinished(5000);
    }
    std::error_code ignored;
    std::filesystem::remove_all(m_folder->path().toStdString(), ignored);
}

bool PostgresServer::crashAndRestart() {
    ::kill(static_cast<pid_t>(m_process->processId()), SIGQUIT); // immediate shutdown
    m_process->waitForFinished(kStartMs);
    return run();
}

QString PostgresServer::makeDatabase() {
    const QString made = QStringLiteral("library_%1").arg(++m_databases);
    const QString name = QStringLiteral("make");
    {
        auto connection = QSqlDatabase::addDatabase(QStringLiteral("QPSQL"), name);
        connection.setHostName(m_folder->path());
        connection.setUserName(QStringLiteral("library"));
        connection.setDatabaseName(QStringLiteral("postgres"));
        connection.open();
        QSqlQuery(connection).exec(QStringLiteral("CREATE DATABASE %1").arg(made));
    }
    QSqlDatabase::removeDatabase(name);
    return made;
}

LibraryPlace PostgresServer::place(const QString& database) const {
    LibraryPlace place;
    place.kind = LibraryPlace::Kind::Postgres;
    place.host = m_folder->path();
    place.database = database;
    place.user = QStringLiteral("library");
    return place;
}

LibraryPlace Sqlite::place() const {
    LibraryPlace place;
    place.path = folder.filePath(QStringLiteral("cases.library"));
    return place;
}

std::string Postgres::whyNot() {
    return PostgresServer::whyNot();
}

LibraryPlace Postgres::place() const {
    if (database.isEmpty()) database = PostgresServer::instance()->makeDatabase();
    return PostgresServer::instance()->place(database);
}

} // namespace gauge::app::fixture
