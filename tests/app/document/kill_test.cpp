// A program that edits is killed (SIGKILL) at random moments; whatever it reported as saved must be there when the case is
// opened again, whole. 30 kills; 300 with GAUGE_LONG=1 in the environment.
#include "app/document/case_document.h"
#include "core/record/case_checksum.h"

#include <QElapsedTimer>
#include <QProcess>
#include <QTemporaryDir>
#include <gtest/gtest.h>
#include <iostream>
#include <map>
#include <random>

using namespace gauge;
using namespace gauge::app;

namespace {

int kills() {
    return qEnvironmentVariableIntValue("GAUGE_LONG") != 0 ? 300 : 30;
}

/// What one life of the child said.
struct Life {
    core::Revision begun = 0, saved = 0, done = 0;
    bool wasSaving = false; ///< killed while it wrote the case file
    std::map<core::Revision, std::string> digests;
};

Life liveAndDie(const QStringList& arguments, int milliseconds) {
    QProcess child;
    child.start(QStringLiteral(GAUGE_CASE_CHILD), arguments);
    QByteArray said;
    QElapsedTimer clock;
    const auto take = [&] { said += child.readAllStandardOutput(); };
    while (!said.contains("begun") && child.waitForReadyRead(10000))
        take();
    clock.start();
    while (clock.elapsed() < milliseconds)
        if (child.waitForReadyRead(std::max(1, milliseconds - static_cast<int>(clock.elapsed())))) take();
    child.kill();
    child.waitForFinished(10000);
    take();
    EXPECT_EQ(child.exitStatus(), QProcess::CrashExit) << said.toStdString();
    Life life;
    for (const QByteArray& line : said.split('\n')) {
        const QList<QByteArray> words = line.split(' ');
        EXPECT_FALSE(line.startsWith("failed") || line.startsWith("cannot")) << line.toStdString();
        const auto number = [&] { return static_cast<core::Revision>(words.value(1).toULongLong()); };
        if (words[0] == "begun") life.begun = number();
        if (words[0] == "saved") life.saved = std::max(life.saved, number());
        if (words[0] == "saving") life.wasSaving = true;
        if (words[0] == "kept") life.wasSaving = false;
        // A digest that was cut short by the kill is no digest.
        if (words[0] == "done" && words.value(2).size() == 64) {
            life.done = number();
            life.digests[life.done] = words[2].toStdString();
        }
    }
    return life;
}

struct Figures {
    int kills = 0, whileSaving = 0;
    core::Revision edits = 0, reportedSaved = 0, lost = 0, beyond = 0;
    core::Revision mostBehind = 0;
};

/// Every edit reported saved is there, and the record is the one that the child had at that edit: never half of one.
void judge(const CaseDocument& document, const Life& life, Figures& figures) {
    const core::Revision last = document.journal().nextSequence() - 1;
    EXPECT_GE(last, life.saved) << "edits that were reported saved are lost";
    if (const auto digest = life.digests.find(last); digest != life.digests.end()) {
        EXPECT_EQ(core::sha256(core::toJson(document.record()).dump()), digest->second) << "at edit " << last;
    }
    EXPECT_TRUE(document.record() == core::replay(document.journal()));
    ++figures.kills;
    std::cout << "kill " << figures.kills << ": edit " << life.done << " was done, edit " << life.saved
              << " had been reported saved" << (life.wasSaving ? ", the case file was being written" : "") << "; edit " << last
              << " is there\n";
    figures.whileSaving += life.wasSaving;
    figures.edits += life.done - std::min(life.done, life.begun);
    figures.reportedSaved += life.saved - std::min(life.saved, life.begun);
    figures.lost += life.saved - std::min(life.saved, last);
    figures.beyond += last - std::min(last, std::max(life.saved, life.begun));
    figures.mostBehind = std::max(figures.mostBehind, life.done - std::min(life.done, std::max(life.saved, life.begun)));
}

void print(const char* what, const Figures& f) {
    std::cout << what << ": " << f.kills << " kills (" << f.whileSaving << " while the case file was being written), "
              << f.edits << " edits made, " << f.reportedSaved << " reported saved, " << f.lost << " of these lost, " << f.beyond
              << " not yet reported but kept; at most " << f.mostBehind << " edits behind\n";
}

} // namespace

TEST(Killed, ACaseFileHasEveryEditThatWasReportedSaved) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("killed.case.json");
    std::random_device device;
    const unsigned first = device();
    SCOPED_TRACE("random number to begin with: " + std::to_string(first));
    std::mt19937 random(first);
    Figures figures;
    for (int kill = 0; kill < kills() && !HasFailure(); ++kill) {
        const int milliseconds = std::uniform_int_distribution(0, 200)(random);
        const Life life = liveAndDie({"file", file, QString::number(random())}, milliseconds);
        if (kill == 0 && !QFileInfo::exists(file)) continue; // killed before it was first saved
        CaseDocument document;
        const auto opened = document.open(file);
        ASSERT_TRUE(opened) << opened.error().message;
        EXPECT_FALSE(document.isReadOnly()) << document.readOnlyReason().toStdString();
        for (const auto& notice : *opened)
            EXPECT_TRUE(notice.code == "edits-recovered" || notice.code == "edit-torn") << notice.text;
        judge(document, life, figures);
    }
    EXPECT_GT(figures.reportedSaved, 0u);
    print("case file", figures);
}

TEST(Killed, ACaseThatWasNeverSavedIsOfferedWithEveryEditThatWasReportedSaved) {
    std::random_device device;
    const unsigned first = device();
    SCOPED_TRACE("random number to begin with: " + std::to_string(first));
    std::mt19937 random(first);
    Figures figures;
    for (int kill = 0; kill < kills() / 3 && !HasFailure(); ++kill) {
        const QTemporaryDir folder;
        const int milliseconds = std::uniform_int_distribution(0, 200)(random);
        const Life life = liveAndDie({"lone", folder.path(), QString::number(random())}, milliseconds);
        const auto left = leftCases(folder.path().toStdString());
        if (life.saved == 0 && left.empty()) continue;
        ASSERT_EQ(left.size(), 1u);
        CaseDocument document;
        const auto opened = document.openLeft(QString::fromStdString(left[0].journal.string()));
        ASSERT_TRUE(opened) << opened.error().message;
        judge(document, life, figures);
    }
    EXPECT_GT(figures.reportedSaved, 0u);
    print("never saved", figures);
}
