// A program that writes is ended by SIGKILL at a random moment: every edit that it reported saved is there, whole, in order.
// This proves that nothing is reported early and that no half of a transaction is seen. What a loss of power does rests on
// SQLite's and PostgreSQL's own syncing, and on the disk.
#include "tests/app/library/library_backends.h"

#include <QElapsedTimer>
#include <QProcess>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <iostream>
#include <random>
#include <sys/stat.h>
#include <unistd.h>

using namespace gauge::app;
using testing::HasSubstr;

namespace {

struct Ended {
    qint64 reported = 0;
    QByteArray failure;
};

Ended readReports(QProcess& writer) {
    Ended ended;
    for (const QByteArray& line : writer.readAllStandardOutput().split('\n')) {
        if (line.startsWith("saved ")) ended.reported = line.mid(6).toLongLong();
        if (line.startsWith("failed ")) ended.failure = line.mid(7);
    }
    return ended;
}

/// Runs the writer for a random while, then kills it. The last line may be torn: a shorter number is never larger.
Ended writeUntilKilled(const QStringList& arguments, std::mt19937& random) {
    QProcess writer;
    writer.start(QStringLiteral(GAUGE_LIBRARY_WRITER), arguments);
    writer.waitForStarted();
    writer.waitForReadyRead(10000);
    ::usleep(static_cast<useconds_t>(std::uniform_int_distribution<>(0, 150000)(random)));
    writer.kill();
    writer.waitForFinished(10000);
    return readReports(writer);
}

/// The last edit in the library, after looking at each.
qint64 lastWhole(const LibraryPlace& place) {
    const auto library = CaseLibrary::open(place, "reader", "here");
    if (!library) {
        ADD_FAILURE() << library.error().message;
        return -1;
    }
    EXPECT_EQ((*library)->damage(), "");
    const auto cases = (*library)->list();
    if (!cases || cases->empty()) return 0;
    const auto stored = (*library)->open(cases->front().id);
    if (!stored) {
        ADD_FAILURE() << stored.error().message;
        return -1;
    }
    const QByteArray text = "up to " + QByteArray::number(stored->version.lastSequence);
    EXPECT_EQ(stored->content, stored->version.lastSequence > 0 ? text : QByteArray("begin"));
    qint64 last = stored->version.lastSequence;
    for (const StoredEdit& edit : stored->edits) {
        EXPECT_EQ(edit.sequence, ++last);
        EXPECT_TRUE(edit.content.startsWith(QByteArray::number(last) + ' '));
        EXPECT_TRUE(edit.content.endsWith(' ' + QByteArray::number(last)));
    }
    return last;
}

void killAgainAndAgain(const LibraryPlace& place, const QStringList& arguments, int times) {
    std::mt19937 random(20261125);
    qint64 before = 0, extra = 0;
    for (int n = 0; n < times; ++n) {
        const Ended ended = writeUntilKilled(arguments, random);
        ASSERT_EQ(ended.failure, "") << "run " << n;
        const qint64 last = lastWhole(place);
        ASSERT_GE(last, std::max(ended.reported, before)) << "an edit that was reported saved is lost, run " << n;
        ASSERT_LE(last, std::max(ended.reported, before) + 1) << "more than the one that was under way, run " << n;
        extra += last > ended.reported;
        before = last;
    }
    EXPECT_GT(before, times) << "hardly anything was written, so hardly anything was tested";
    std::cout << times << " kills: " << before << " edits reported saved or under way, none lost, none half; " << extra
              << " times the edit under way was whole too\n";
}

int howOften(int usually, int at_length) {
    return qEnvironmentVariableIsSet("GAUGE_LONG") ? at_length : usually;
}

} // namespace

TEST(KilledWriter, LosesNothingThatWasReportedSavedOnSqlite) {
    fixture::Sqlite backend;
    killAgainAndAgain(backend.place(), {"sqlite", backend.place().path}, howOften(30, 300));
}

TEST(KilledWriter, LosesNothingThatWasReportedSavedOnPostgres) {
    if (const std::string reason = fixture::Postgres::whyNot(); !reason.empty()) {
        ASSERT_FALSE(reason.starts_with("FAILED")) << reason;
        GTEST_SKIP() << reason;
    }
    fixture::Postgres backend;
    const LibraryPlace place = backend.place();
    killAgainAndAgain(place, {"postgres", place.host, place.database}, howOften(10, 50));
}

TEST(KilledServer, LosesNothingThatWasReportedSavedOnPostgres) {
    if (!fixture::Postgres::whyNot().empty()) GTEST_SKIP() << fixture::Postgres::whyNot();
    fixture::Postgres backend;
    const LibraryPlace place = backend.place();
    QProcess writer;
    writer.start(QStringLiteral(GAUGE_LIBRARY_WRITER), {"postgres", place.host, place.database});
    writer.waitForReadyRead(10000);
    ::usleep(200000);
    ASSERT_TRUE(fixture::PostgresServer::instance()->crashAndRestart()) << fixture::PostgresServer::whyNot();
    ASSERT_TRUE(writer.waitForFinished(10000));
    const Ended ended = readReports(writer);
    EXPECT_THAT(ended.failure.toStdString(), HasSubstr("the connection to the server is lost"));
    EXPECT_GT(ended.reported, 0);
    EXPECT_GE(lastWhole(place), ended.reported);
}

TEST(FullDisk, IsToldAndKeepsWhatWasSaved) {
    for (const int limit : {40000, 120000, 400000}) {
        fixture::Sqlite backend;
        QProcess writer;
        writer.start(QStringLiteral(GAUGE_LIBRARY_WRITER), {"sqlite", backend.place().path, "limit", QString::number(limit)});
        ASSERT_TRUE(writer.waitForFinished(30000));
        const Ended ended = readReports(writer);
        EXPECT_THAT(ended.failure.toStdString(),
                    HasSubstr("the disk is full"));
        EXPECT_GE(lastWhole(backend.place()), ended.reported);
        std::cout << "file size limit " << limit << ": " << ended.reported << " edits saved, then: "
                  << ended.failure.constData() << '\n';
    }
}

TEST(ReadOnlyFolder, IsRefusedInWords) {
    fixture::Sqlite backend;
    { ASSERT_TRUE(CaseLibrary::open(backend.place(), "a", "b").has_value()); }
    ::chmod(backend.folder.path().toLocal8Bit().constData(), 0555);
    QStringList arguments{"sqlite", backend.place().path};
    if (geteuid() == 0) arguments << "nobody"; // root may write anywhere
    QProcess writer;
    writer.start(QStringLiteral(GAUGE_LIBRARY_WRITER), arguments);
    ASSERT_TRUE(writer.waitForFinished(10000));
    EXPECT_THAT(readReports(writer).failure.toStdString(), HasSubstr("its folder is read-only for you"));
    ::chmod(backend.folder.path().toLocal8Bit().constData(), 0755);
}
