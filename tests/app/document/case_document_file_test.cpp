#include "core/record/case_checksum.h"
#include "tests/app/document/case_edits.h"
#include "tests/app/support/synthetic_session.h"

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <csignal>
#include <filesystem>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/resource.h>
#include <unistd.h>

using namespace gauge;
using namespace gauge::app;
using fixture::waitUntil;
using ::testing::HasSubstr;

namespace {

namespace fs = std::filesystem;

bool place(CaseDocument& document, double x, core::MarkKind kind = core::MarkKind::Tip) {
    return document.push(std::make_unique<PlaceMark>(document, kind, core::PatientPoint{{x, 2, 3}}));
}

double tipX(const CaseDocument& document) {
    const auto& marks = document.record().marks;
    const auto tip = marks.find(core::MarkKind::Tip);
    return tip == marks.end() ? -1.0 : tip->second.point.mm.x();
}

QByteArray bytes(const QString& file) {
    QFile f(file);
    return f.open(QIODevice::ReadOnly) ? f.readAll() : QByteArray();
}

void writeBytes(const QString& file, const QByteArray& content) {
    QFile f(file);
    ASSERT_TRUE(f.open(QIODevice::WriteOnly | QIODevice::Truncate));
    f.write(content);
}

std::vector<std::string> codes(const std::vector<core::Notice>& notices) {
    std::vector<std::string> list;
    for (const auto& notice : notices)
        list.push_back(notice.code);
    return list;
}

/// A file size that no write may pass: stands for a full disk.
class FullDisk {
public:
    explicit FullDisk(rlim_t bytes) {
        m_handler = std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &m_before);
        rlimit limit = m_before;
        limit.rlim_cur = bytes;
        setrlimit(RLIMIT_FSIZE, &limit);
    }
    ~FullDisk() { freed(); }
    void freed() {
        setrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, m_handler);
    }

private:
    rlimit m_before{};
    void (*m_handler)(int) = SIG_DFL;
};

/// The administrator may write everywhere; nobody may not.
class AsNobody {
public:
    AsNobody() : m_self(::geteuid()) {
        if (m_self == 0) m_isNobody = ::seteuid(65534) == 0;
    }
    ~AsNobody() {
        if (m_isNobody) std::ignore = ::seteuid(m_self);
    }

private:
    uid_t m_self;
    bool m_isNobody = false;
};

struct Folder {
    QTemporaryDir dir;
    QString file = dir.filePath("a.case.json");
    QString working = file + ".edits";
};

} // namespace

TEST(CaseDocumentFile, SavesAndOpensAgain) {
    const Folder folder;
    CaseDocument document;
    place(document, 1);
    place(document, 2);
    document.undoStack().undo();
    EXPECT_FALSE(document.isSaved());
    ASSERT_TRUE(document.saveAs(folder.file));
    EXPECT_TRUE(document.isSaved() && document.isInCaseFile());
    EXPECT_EQ(core::checksumOf(bytes(folder.file).toStdString()), core::Checksum::Matches);

    CaseDocument other;
    document.clear();
    const auto opened = other.open(folder.file);
    ASSERT_TRUE(opened) << opened.error().message;
    EXPECT_TRUE(opened->empty());
    EXPECT_EQ(tipX(other), 1);
    EXPECT_EQ(other.journal().entries().size(), 3u);
    EXPECT_EQ(other.nextRevision(), 4u);
}

TEST(CaseDocumentFile, EveryEditIsOnDiskAtOnceAndTakenUpAgain) {
    const Folder folder;
    {
        CaseDocument document;
        ASSERT_TRUE(document.saveAs(folder.file));
        QSignalSpy saved(&document, &CaseDocument::saved);
        place(document, 7);
        ASSERT_TRUE(waitUntil([&] { return document.isSaved(); }));
        EXPECT_EQ(saved.back().at(0).toULongLong(), 1u);
        EXPECT_FALSE(document.isInCaseFile());
        EXPECT_GT(bytes(folder.working).size(), 0);
        // As after the end of the program: another process would find these two files.
        QFile::copy(folder.file, folder.dir.filePath("b.case.json"));
        QFile::copy(folder.working, folder.dir.filePath("b.case.json.edits"));
    }
    EXPECT_FALSE(QFile::exists(folder.working)) << "folded into the case file at the end";
    CaseDocument recovered;
    const auto opened = recovered.open(folder.dir.filePath("b.case.json"));
    ASSERT_TRUE(opened);
    EXPECT_EQ(codes(*opened), std::vector<std::string>{"edits-recovered"});
    EXPECT_EQ(tipX(recovered), 7);
    EXPECT_FALSE(recovered.isInCaseFile());
    recovered.clear();
    EXPECT_EQ(recovered.open(folder.dir.filePath("b.case.json"))->size(), 0u) << "folded when it was left";
    EXPECT_EQ(tipX(recovered), 7);
}

TEST(CaseDocumentFile, ATornLastLineIsLeftOut) {
    const Folder folder;
    CaseDocument document;
    ASSERT_TRUE(document.saveAs(folder.file));
    place(document, 7);
    place(document, 8);
    ASSERT_TRUE(document.flush());
    const QByteArray journal = bytes(folder.working);
    const QString copy = folder.dir.filePath("b.case.json");
    QFile::copy(folder.file, copy);
    writeBytes(copy + ".edits", journal.left(journal.size() - 30));
    CaseDocument other;
    const auto opened = other.open(copy);
    ASSERT_TRUE(opened);
    EXPECT_EQ(codes(*opened), (std::vector<std::string>{"edits-recovered", "edit-torn"}));
    EXPECT_EQ(tipX(other), 7);
    place(other, 9);
    EXPECT_TRUE(other.flush());
    EXPECT_EQ(readCaseFile(copy.toStdString())->file.record.marks.at(core::MarkKind::Tip).point.mm.x(), 9)
        << "goes on after the last whole line";
}

TEST(CaseDocumentFile, ADamagedLineIsToldAndTheJournalKept) {
    const Folder folder;
    CaseDocument document;
    ASSERT_TRUE(document.saveAs(folder.file));
    for (const double x : {7.0, 8.0, 9.0})
        place(document, x);
    ASSERT_TRUE(document.flush());
    QByteArray journal = bytes(folder.working);
    const auto second = journal.indexOf("\"sequence\":2");
    ASSERT_GT(second, 0);
    journal[second + 13] = static_cast<char>(journal[second + 13] ^ 4);
    const QString copy = folder.dir.filePath("b.case.json");
    QFile::copy(folder.file, copy);
    writeBytes(copy + ".edits", journal);
    CaseDocument other;
    const auto opened = other.open(copy);
    ASSERT_TRUE(opened) << opened.error().message;
    EXPECT_EQ(codes(*opened), (std::vector<std::string>{"edits-recovered", "edits-damaged"}));
    EXPECT_THAT(opened->back().text, HasSubstr("a line is damaged: 2 edits from there on could not be taken"));
    EXPECT_EQ(tipX(other), 7);
    EXPECT_EQ(bytes(copy + ".edits.kept-1"), journal);
    EXPECT_TRUE(other.isInCaseFile()) << "what was taken does not hang on a damaged file";
}

TEST(CaseDocumentFile, EditsOfAnotherCaseAreNotMixedIn) {
    const Folder folder;
    CaseDocument one, two;
    place(one, 1);
    place(two, 2);
    ASSERT_TRUE(one.saveAs(folder.file));
    place(one, 3);
    ASSERT_TRUE(one.flush());
    const QString other = folder.dir.filePath("b.case.json");
    ASSERT_TRUE(two.saveAs(other));
    two.clear();
    QFile::copy(folder.working, other + ".edits");
    CaseDocument document;
    const auto opened = document.open(other);
    ASSERT_TRUE(opened);
    EXPECT_EQ(codes(*opened), std::vector<std::string>{"edits-of-another-case"});
    EXPECT_EQ(tipX(document), 2);
    EXPECT_TRUE(QFile::exists(other + ".edits.kept-1"));
}

TEST(CaseDocumentFile, AFileThatWasAlteredIsOpenedForReadingOnly) {
    const Folder folder;
    CaseDocument document;
    place(document, 1.25);
    ASSERT_TRUE(document.saveAs(folder.file));
    document.clear();
    QByteArray text = bytes(folder.file);
    ASSERT_GT(text.indexOf("1.25"), 0);
    writeBytes(folder.file, text.replace("1.25", "9.25"));
    const auto opened = document.open(folder.file);
    ASSERT_TRUE(opened);
    EXPECT_EQ(codes(*opened), std::vector<std::string>{"case-file-altered"});
    EXPECT_THAT(opened->front().text, HasSubstr("its checksum does not match its content"));
    EXPECT_THAT(opened->front().text, HasSubstr("save it under another name to go on with it"));
    EXPECT_TRUE(document.isReadOnly());
    QSignalSpy refused(&document, &CaseDocument::refused);
    EXPECT_FALSE(place(document, 3));
    EXPECT_EQ(refused.size(), 1);
    EXPECT_EQ(tipX(document), 9.25);
    EXPECT_FALSE(document.save());
    EXPECT_FALSE(document.saveAs(folder.file));
    EXPECT_FALSE(QFile::exists(folder.working));
    ASSERT_TRUE(document.saveAs(folder.dir.filePath("c.case.json")));
    EXPECT_TRUE(place(document, 3));
}

TEST(CaseDocumentFile, AnyFlippedBitIsFoundAndAnEarlierVersionIsOffered) {
    const Folder folder;
    CaseDocument document;
    place(document, 1);
    ASSERT_TRUE(document.saveAs(folder.file));
    place(document, 2);
    ASSERT_TRUE(document.save());
    document.clear();
    const QByteArray good = bytes(folder.file);
    int readOnly = 0, refused = 0;
    for (qsizetype at = 0; at < good.size(); at += 7) {
        QByteArray bad = good;
        bad[at] = static_cast<char>(bad[at] ^ (1 << (at % 8)));
        writeBytes(folder.file, bad);
        const auto opened = readCaseFile(folder.file.toStdString());
        const std::string earlier = (folder.file + ".1").toStdString();
        if (opened) {
            ++readOnly;
            EXPECT_TRUE(!opened->readOnlyReason.empty() || codes(opened->notices)[0] == "case-file-without-checksum") << at;
            if (!opened->readOnlyReason.empty()) {
                EXPECT_THAT(opened->notices[0].text, HasSubstr(earlier)) << at;
            }
        } else {
            ++refused;
            EXPECT_THAT(opened.error().message, HasSubstr(earlier)) << opened.error().message;
        }
    }
    EXPECT_GT(readOnly, 10);
    EXPECT_GT(refused, 10);
    ASSERT_TRUE(document.open(folder.file + ".1"));
    EXPECT_EQ(tipX(document), 1);
    EXPECT_TRUE(document.isReadOnly()) << "an earlier version is not written over";
}

TEST(CaseDocumentFile, KeepsThreeEarlierVersions) {
    const Folder folder;
    CaseDocument document;
    ASSERT_TRUE(document.saveAs(folder.file));
    for (const double x : {1.0, 2.0, 3.0, 4.0, 5.0}) {
        place(document, x);
        ASSERT_TRUE(document.save());
    }
    for (int n = 1; n <= 3; ++n) {
        const auto earlier = readCaseFile((folder.file + "." + QString::number(n)).toStdString());
        ASSERT_TRUE(earlier);
        EXPECT_EQ(earlier->file.record.marks.at(core::MarkKind::Tip).point.mm.x(), 5 - n);
    }
    EXPECT_FALSE(QFile::exists(folder.file + ".4"));
}

TEST(CaseDocumentFile, AFullDiskLosesNothing) {
    const Folder folder;
    CaseDocument document;
    place(document, 1);
    ASSERT_TRUE(document.saveAs(folder.file));
    place(document, 2);
    ASSERT_TRUE(document.flush());
    const QByteArray file = bytes(folder.file), journal = bytes(folder.working);
    QSignalSpy failed(&document, &CaseDocument::savingFailed);
    {
        FullDisk full(static_cast<rlim_t>(journal.size() + 40)); // ends in the middle of the next line
        place(document, 3);
        ASSERT_TRUE(waitUntil([&] { return !failed.isEmpty(); }));
        EXPECT_THAT(failed[0][0].toString().toStdString(), HasSubstr("make space on the disk, or save elsewhere"));
        EXPECT_FALSE(document.isSaved());
        EXPECT_EQ(bytes(folder.working), journal) << "no half edit";
        const auto saved = document.save();
        ASSERT_FALSE(saved);
        EXPECT_EQ(saved.error().code, core::ErrorCode::OutputUnwritable);
        EXPECT_THAT(saved.error().message, HasSubstr("Cannot save the case as " + folder.file.toStdString()));
        EXPECT_EQ(bytes(folder.file), file);
        EXPECT_EQ(QDir(folder.dir.path()).entryList({"*.next*"}).size(), 0);
    }
    ASSERT_TRUE(waitUntil([&] { return document.isSaved(); })) << "tried again by itself";
    EXPECT_EQ(readCaseFile(folder.file.toStdString())->file.record.marks.at(core::MarkKind::Tip).point.mm.x(), 3);
    EXPECT_TRUE(document.save());
}

TEST(CaseDocumentFile, AFolderThatCannotBeWrittenIsToldAndEditsAreKeptElsewhere) {
    const Folder folder;
    const QTemporaryDir unsaved;
    fs::permissions(unsaved.path().toStdString(), fs::perms::all);
    CaseDocument document;
    place(document, 1);
    ASSERT_TRUE(document.saveAs(folder.file));
    document.clear();
    fs::permissions(folder.file.toStdString(), fs::perms(0444));
    fs::permissions(folder.dir.path().toStdString(), fs::perms(0555));
    const AsNobody nobody;
    document.keepUnsavedIn(unsaved.path());
    const auto opened = document.open(folder.file);
    ASSERT_TRUE(opened);
    EXPECT_EQ(codes(*opened), std::vector<std::string>{"case-folder-not-writable"});
    place(document, 2);
    ASSERT_TRUE(document.flush());
    EXPECT_FALSE(document.save());
    document.clear();
    const auto left = leftCases(unsaved.path().toStdString());
    ASSERT_EQ(left.size(), 1u);
    EXPECT_EQ(left[0].casePath, folder.file.toStdString());
    ASSERT_TRUE(document.openLeft(QString::fromStdString(left[0].journal.string())));
    EXPECT_EQ(tipX(document), 2);
    document.clear();
    std::error_code onlyAsOwner;
    fs::permissions(folder.dir.path().toStdString(), fs::perms(0755), onlyAsOwner);
}

TEST(CaseDocumentFile, ASecondProgramMayOnlyRead) {
    const Folder folder;
    CaseDocument first, second;
    place(first, 1);
    ASSERT_TRUE(first.saveAs(folder.file));
    const auto opened = second.open(folder.file);
    ASSERT_TRUE(opened);
    EXPECT_EQ(codes(*opened), std::vector<std::string>{"case-in-use"});
    EXPECT_FALSE(place(second, 5));
    second.clear();
    EXPECT_TRUE(place(first, 2));
    EXPECT_TRUE(first.flush());
    EXPECT_TRUE(first.save());
}

TEST(CaseDocumentFile, DoesNotWriteOverWhatSomebodyElseWrote) {
    const Folder folder;
    CaseDocument document;
    place(document, 1);
    ASSERT_TRUE(document.saveAs(folder.file));
    const QByteArray theirs = bytes(folder.file).replace("\"1", "\"2");
    writeBytes(folder.file, theirs + " ");
    place(document, 2);
    const auto saved = document.save();
    ASSERT_FALSE(saved);
    EXPECT_THAT(saved.error().message, HasSubstr("another program has written this file since it was opened here"));
    EXPECT_EQ(bytes(folder.file), theirs + " ");
}

TEST(CaseDocumentFile, ACaseThatWasNeverSavedIsOfferedAgain) {
    const QTemporaryDir unsaved;
    {
        CaseDocument document;
        document.keepUnsavedIn(unsaved.path());
        document.apply(core::SetSingle<core::Patient>{core::Entry<core::Patient>{{"Invented^Ida", "7", "", "", "", {}}, 1, {}}});
        EXPECT_TRUE(leftCases(unsaved.path().toStdString()).empty());
        EXPECT_FALSE(document.hasUnsavedWork()) << "opening images is no work";
        place(document, 1);
        EXPECT_TRUE(document.hasUnsavedWork());
        ASSERT_TRUE(document.flush());
        EXPECT_TRUE(leftCases(unsaved.path().toStdString()).empty()) << "it is still open";
    }
    const auto left = leftCases(unsaved.path().toStdString());
    ASSERT_EQ(left.size(), 1u);
    EXPECT_EQ(left[0].patientName, "Invented^Ida");
    CaseDocument again;
    again.keepUnsavedIn(unsaved.path());
    ASSERT_TRUE(again.openLeft(QString::fromStdString(left[0].journal.string())));
    EXPECT_EQ(tipX(again), 1);
    place(again, 2);
    const Folder folder;
    ASSERT_TRUE(again.saveAs(folder.file));
    EXPECT_TRUE(leftCases(unsaved.path().toStdString()).empty());
    EXPECT_EQ(QDir(unsaved.path()).entryList(QDir::Files).size(), 0);
}

TEST(CaseDocumentFile, WhatIsThrownAwayIsGone) {
    const QTemporaryDir unsaved;
    CaseDocument document;
    document.keepUnsavedIn(unsaved.path());
    place(document, 1);
    ASSERT_TRUE(document.flush());
    document.discard();
    EXPECT_TRUE(document.record().marks.empty());
    EXPECT_EQ(QDir(unsaved.path()).entryList(QDir::Files).size(), 0);
}

TEST(CaseDocumentFile, RemembersTheImagesFolderRelativeToTheFile) {
    const Folder folder;
    CaseDocument document;
    document.setImagesFolder(folder.dir.filePath("images/ct"));
    ASSERT_TRUE(document.saveAs(folder.file));
    EXPECT_GT(bytes(folder.file).indexOf("\"images_folder\": \"images/ct\""), 0);
    EXPECT_EQ(document.imagesFolder(), QDir::cleanPath(folder.dir.filePath("images/ct")));
}

TEST(CaseDocumentFile, NamesAFileThatIsNotThere) {
    const Folder folder;
    CaseDocument document;
    const auto opened = document.open(folder.file);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().code, core::ErrorCode::FileUnreadable);
    EXPECT_THAT(opened.error().message, HasSubstr("Cannot read " + folder.file.toStdString()));
    EXPECT_FALSE(QFile::exists(folder.working));
}
