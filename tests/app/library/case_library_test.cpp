// One suite for both databases.
#include "app/library/checksum.h"
#include "tests/app/library/library_backends.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;
using namespace std::chrono_literals;
using testing::HasSubstr;

namespace {

std::string messageOf(const core::Error& error) {
    return error.message;
}

#define ASSERT_OK(...)                                                                                                             \
    do {                                                                                                                           \
        if (const auto& outcome_ = (__VA_ARGS__); !outcome_.has_value()) FAIL() << messageOf(outcome_.error());                     \
    } while (false)

CaseFacts facts(const QString& name = "Óstium^Näme", const QString& id = "X-4711") {
    return {"Before closure", name, id, "19400229", "20260310", "before-repair", {"teaching", "oval"}};
}

StoredEdit edit(qint64 sequence, const QByteArray& text = "{\"kind\": \"mark\"}") {
    return {sequence, text + QByteArray::number(sequence)};
}

template <class Backend> class CaseLibraryOn : public testing::Test {
protected:
    void SetUp() override {
        const std::string reason = Backend::whyNot();
        if (reason.starts_with("FAILED")) FAIL() << reason;
        if (!reason.empty()) GTEST_SKIP() << reason;
        place = backend.place();
        ann = person("ann");
        ben = person("ben");
    }
    std::unique_ptr<CaseLibrary> person(const QString& name) {
        LibraryClock clock{[this] { return wall; }, [this] { return steady; }};
        auto opened = CaseLibrary::open(place, name, "station of " + name, clock);
        if (!opened) ADD_FAILURE() << opened.error().message;
        return opened ? std::move(*opened) : nullptr;
    }
    /// Lets the lease of a person look as if its program ran elsewhere, so that only time tells.
    void onAnotherComputer() { sql("UPDATE leases SET process = 'another computer'"); }
    void sql(const QString& statement) {
        auto database = Database::open(place);
        ASSERT_OK(database);
        const auto done = (*database)->change(statement);
        ASSERT_OK(done);
    }

    Backend backend;
    LibraryPlace place;
    QDateTime wall = QDateTime::fromString("2026-03-10T10:00:00Z", Qt::ISODate);
    std::chrono::milliseconds steady{1000};
    std::unique_ptr<CaseLibrary> ann, ben;
};

struct Names {
    template <class Backend> static std::string GetName(int) {
        return std::is_same_v<Backend, fixture::Sqlite> ? "Sqlite" : "Postgres";
    }
};
using Backends = testing::Types<fixture::Sqlite, fixture::Postgres>;
TYPED_TEST_SUITE(CaseLibraryOn, Backends, Names);

} // namespace

TYPED_TEST(CaseLibraryOn, ReturnsTheBytesAndFactsThatWereStored) {
    const QByteArray text = QByteArray::fromHex("00ff0a5c2700c3a4") + "{\"\\u0000\": 'x'}";
    const auto editing = this->ann->create(facts(), text, 7);
    ASSERT_OK(editing);
    const auto stored = this->ben->open(editing->caseId);
    ASSERT_OK(stored);
    EXPECT_EQ(stored->content, text);
    EXPECT_EQ(stored->facts, facts());
    EXPECT_EQ(stored->version.number, 1);
    EXPECT_EQ(stored->version.lastSequence, 7);
    EXPECT_EQ(stored->version.author, "ann");
    EXPECT_EQ(stored->version.sha256, sha256Of(text));
    EXPECT_TRUE(stored->edits.empty());
}

TYPED_TEST(CaseLibraryOn, FindsByNameIdDateTagAndTitleWhateverCaseAndAccents) {
    ASSERT_OK(this->ann->create(facts(), "a", 0));
    CaseFacts other = facts("Quill^Orla", "Z_9%");
    other.studyDate = "20250101";
    other.tags = {"Follow up"};
    other.title = "Later";
    ASSERT_OK(this->ann->create(other, "b", 0));
    const auto count = [&](const CaseQuery& query) { return this->ben->list(query).value().size(); };
    EXPECT_EQ(count({}), 2u);
    for (const char* text : {"ostium", "NAME ostium", "x-4711", "closure", "2026-03-10", "20260310", "teaching"})
        EXPECT_EQ(count({text, {}, {}, {}}), 1u) << text;
    EXPECT_EQ(count({"orla before", {}, {}, {}}), 1u) << "the stage is before-repair in both";
    EXPECT_EQ(count({"orla ostium", {}, {}, {}}), 0u) << "all words in one case";
    EXPECT_EQ(count({"z_9%", {}, {}, {}}), 1u);
    EXPECT_EQ(count({"_", {}, {}, {}}), 1u) << "no wildcard";
    EXPECT_EQ(count({{}, "follow UP", {}, {}}), 1u);
    EXPECT_EQ(count({{}, "follow", {}, {}}), 0u) << "a tag is found whole";
    EXPECT_EQ(count({{}, {}, "20260101", {}}), 1u);
    EXPECT_EQ(count({{}, {}, {}, "20251231"}), 1u);
    EXPECT_EQ(count({{}, {}, "20250101", "20260310"}), 2u);
    EXPECT_EQ(this->ben->tags().value(), (QStringList{"Follow up", "oval", "teaching"}));
}

TYPED_TEST(CaseLibraryOn, KeepsEditsInOrderOnThePresentVersion) {
    auto editing = this->ann->create(facts(), "text", 3).value();
    const auto outcome = this->ann->append(editing, {edit(4), edit(5)});
    ASSERT_OK(outcome);
    EXPECT_EQ(outcome->kind, WriteOutcome::Kind::Saved);
    ASSERT_OK(this->ann->append(editing, {edit(6)}));
    EXPECT_EQ(editing.lastSequence, 6);
    const auto stored = this->ben->open(editing.caseId);
    ASSERT_OK(stored);
    EXPECT_EQ(stored->edits, (std::vector{edit(4), edit(5), edit(6)}));
    EXPECT_EQ(this->ben->find(editing.caseId)->editsSince, 3);
}

TYPED_TEST(CaseLibraryOn, PassesOverEditsThatAreThereAlready) {
    auto editing = this->ann->create(facts(), "text", 0).value();
    ASSERT_OK(this->ann->append(editing, {edit(1)}));
    ASSERT_OK(this->ann->append(editing, {edit(1), edit(2)}));
    EXPECT_EQ(this->ann->open(editing.caseId)->edits.size(), 2u);
    const auto other = this->ann->append(editing, {edit(2, "other")});
    ASSERT_FALSE(other.has_value());
    EXPECT_THAT(other.error().message, HasSubstr("another edit 2 is stored already"));
}

TYPED_TEST(CaseLibraryOn, RefusesAGapInTheEdits) {
    auto editing = this->ann->create(facts(), "text", 0).value();
    const auto gap = this->ann->append(editing, {edit(1), edit(3)});
    ASSERT_FALSE(gap.has_value());
    EXPECT_EQ(gap.error().code, core::ErrorCode::InvalidArgument);
    EXPECT_THAT(gap.error().message, HasSubstr("edit 3 does not follow edit 1"));
    EXPECT_TRUE(this->ann->open(editing.caseId)->edits.empty()) << "all or nothing";
}

TYPED_TEST(CaseLibraryOn, SavesVersionsAndKeepsTheLastTenWithTheirEdits) {
    auto editing = this->ann->create(facts(), "text 1", 1).value();
    for (int n = 2; n <= 13; ++n) {
        ASSERT_OK(this->ann->append(editing, {edit(n)}));
        CaseFacts changed = facts();
        changed.title = QString("saved %1").arg(n);
        ASSERT_OK(this->ann->save(editing, changed, "text " + QByteArray::number(n), n));
    }
    const auto versions = this->ann->versions(editing.caseId).value();
    ASSERT_EQ(versions.size(), 10u);
    EXPECT_EQ(versions.front().number, 13);
    EXPECT_EQ(versions.back().number, 4);
    EXPECT_EQ(this->ann->open(editing.caseId)->content, "text 13");
    EXPECT_EQ(this->ann->open(editing.caseId)->facts.title, "saved 13");
    const auto earlier = this->ann->openVersion(editing.caseId, 12);
    ASSERT_OK(earlier);
    EXPECT_EQ(earlier->content, "text 12");
    EXPECT_EQ(earlier->edits, std::vector{edit(13)});
    const auto gone = this->ann->openVersion(editing.caseId, 3);
    ASSERT_FALSE(gone.has_value());
    EXPECT_THAT(gone.error().message, HasSubstr("version 3 is not kept any more"));
}

TYPED_TEST(CaseLibraryOn, RefusesATextThatLacksSavedEdits) {
    auto editing = this->ann->create(facts(), "text", 0).value();
    ASSERT_OK(this->ann->append(editing, {edit(1), edit(2)}));
    const auto saved = this->ann->save(editing, facts(), "old text", 1);
    ASSERT_FALSE(saved.has_value());
    EXPECT_THAT(saved.error().message, HasSubstr("ends at edit 1, but edit 2 was saved already"));
}

TYPED_TEST(CaseLibraryOn, LetsOnePersonEditAndTellsTheOthers) {
    const auto editing = this->ann->create(facts(), "text", 0).value();
    const auto answer = this->ben->beginEditing(editing.caseId);
    ASSERT_OK(answer);
    EXPECT_FALSE(answer->editing.has_value());
    EXPECT_EQ(answer->lease.holder, "ann");
    EXPECT_EQ(answer->lease.station, "station of ann");
    EXPECT_EQ(this->ben->list()->front().lease->holder, "ann");
    ASSERT_OK(this->ben->open(editing.caseId)); // reading is free
    ASSERT_OK(this->ann->endEditing(editing));
    EXPECT_TRUE(this->ben->beginEditing(editing.caseId)->editing.has_value());
}

TYPED_TEST(CaseLibraryOn, KeepsALeaseThatIsRenewed) {
    const auto editing = this->ann->create(facts(), "text", 0).value();
    this->onAnotherComputer();
    for (int beat = 0; beat < 20; ++beat) {
        EXPECT_FALSE(this->ben->beginEditing(editing.caseId)->editing.has_value());
        this->steady += kHeartbeat;
        EXPECT_TRUE(this->ann->renew(editing).value());
    }
}

TYPED_TEST(CaseLibraryOn, TakesALeaseThatWasSeenUnrenewedForAMinute) {
    const auto editing = this->ann->create(facts(), "text", 0).value();
    this->onAnotherComputer();
    EXPECT_FALSE(this->ben->beginEditing(editing.caseId)->editing.has_value());
    this->steady += kLeaseDead;
    EXPECT_FALSE(this->ben->beginEditing(editing.caseId)->editing.has_value());
    this->steady += 1ms;
    EXPECT_TRUE(this->ben->beginEditing(editing.caseId)->editing.has_value());
    EXPECT_FALSE(this->ann->renew(editing).value());
}

TYPED_TEST(CaseLibraryOn, TakesTheLeaseOfAProgramThatHasEndedAtOnce) {
    const auto editing = this->ann->create(facts(), "text", 0).value();
    // As this process's mark, but of a process that started at another tick.
    this->sql("UPDATE leases SET process = process || '1'");
    EXPECT_TRUE(this->ben->beginEditing(editing.caseId)->editing.has_value());
}

TYPED_TEST(CaseLibraryOn, NeitherLosesNorKeepsALeaseBySettingAClock) {
    const auto editing = this->ann->create(facts(), "text", 0).value();
    this->onAnotherComputer();
    EXPECT_FALSE(this->ben->beginEditing(editing.caseId)->editing.has_value());
    for (const int days : {-400, 400}) {
        this->wall = this->wall.addDays(days);
        EXPECT_FALSE(this->ben->beginEditing(editing.caseId)->editing.has_value()) << "stolen by a clock";
        EXPECT_TRUE(this->ann->renew(editing).value());
    }
    this->ben->list();
    this->wall = this->wall.addDays(-4000); // and the holder is gone
    this->steady += kLeaseDead + 1ms;
    EXPECT_TRUE(this->ben->beginEditing(editing.caseId)->editing.has_value()) << "kept for ever by a clock";
}

TYPED_TEST(CaseLibraryOn, TreatsAServersOwnClockSetBackAsNoAnswer) {
    const auto editing = this->ann->create(facts(), "text", 0).value();
    this->onAnotherComputer();
    this->sql("UPDATE leases SET renewed_at = '2999-01-01T00:00:00.000Z'"); // as after setting it back
    EXPECT_FALSE(this->ben->beginEditing(editing.caseId)->editing.has_value());
    this->steady += kLeaseDead + 1ms;
    EXPECT_TRUE(this->ben->beginEditing(editing.caseId)->editing.has_value());
}

TYPED_TEST(CaseLibraryOn, KeepsARefusedTextAsABranchAndOffersBoth) {
    auto editing = this->ann->create(facts(), "text 1", 0).value();
    this->onAnotherComputer();
    this->ben->list();
    this->steady += kLeaseDead + 1ms;
    auto bens = *this->ben->beginEditing(editing.caseId)->editing;
    ASSERT_OK(this->ben->save(bens, facts(), "text of ben", 5));

    const auto refusedEdit = this->ann->append(editing, {edit(1)});
    ASSERT_OK(refusedEdit);
    EXPECT_EQ(refusedEdit->kind, WriteOutcome::Kind::Refused);
    EXPECT_EQ(refusedEdit->by->holder, "ben");
    const auto refused = this->ann->save(editing, facts(), "text of ann", 3);
    ASSERT_OK(refused);
    EXPECT_EQ(refused->kind, WriteOutcome::Kind::Refused);
    EXPECT_EQ(refused->branch, 3);
    EXPECT_EQ(refused->version, 2);
    EXPECT_EQ(this->ann->open(editing.caseId)->content, "text of ben");
    EXPECT_EQ(this->ann->openVersion(editing.caseId, 3)->content, "text of ann");
    EXPECT_EQ(this->ann->list()->front().branches, 1);

    for (int n = 0; n < 12; ++n) ASSERT_OK(this->ben->save(bens, facts(), "later", 6)); // branches outlive pruning
    ASSERT_OK(this->ben->restore(bens, 3));
    EXPECT_EQ(this->ben->open(editing.caseId)->content, "text of ann");
    ASSERT_OK(this->ben->discardBranch(editing.caseId, 3));
    EXPECT_EQ(this->ben->list()->front().branches, 0);
    EXPECT_FALSE(this->ben->discardBranch(editing.caseId, bens.version).has_value()) << "no branch";
}

TYPED_TEST(CaseLibraryOn, RefusesASaveOnAnotherVersionAlsoUnderALease) {
    auto editing = this->ann->create(facts(), "text 1", 0).value();
    Editing stale = editing;
    ASSERT_OK(this->ann->save(editing, facts(), "text 2", 0));
    EXPECT_EQ(this->ann->save(stale, facts(), "from 1", 0)->kind, WriteOutcome::Kind::Refused);
}

TYPED_TEST(CaseLibraryOn, RestoresAnEarlierVersionAsANewOne) {
    auto editing = this->ann->create(facts(), "text 1", 4).value();
    ASSERT_OK(this->ann->save(editing, facts(), "text 2", 9));
    const auto outcome = this->ann->restore(editing, 1);
    ASSERT_OK(outcome);
    EXPECT_EQ(outcome->version, 3);
    ASSERT_OK(this->ann->append(editing, {edit(5)}));
    const auto stored = this->ann->open(editing.caseId);
    EXPECT_EQ(stored->content, "text 1");
    EXPECT_EQ(stored->edits.size(), 1u);
    const auto pending = this->ann->restore(editing, 2);
    ASSERT_FALSE(pending.has_value());
    EXPECT_THAT(pending.error().message, HasSubstr("edits since the present version"));
    EXPECT_EQ(this->ann->openVersion(editing.caseId, 2)->content, "text 2");
}

TYPED_TEST(CaseLibraryOn, PutsCasesIntoTheBinAndBack) {
    const auto editing = this->ann->create(facts(), "text", 0).value();
    const auto busy = this->ben->moveToBin(editing.caseId);
    ASSERT_FALSE(busy.has_value());
    EXPECT_THAT(busy.error().message, HasSubstr("ann is editing it"));
    ASSERT_OK(this->ann->endEditing(editing));
    EXPECT_FALSE(this->ben->removeForGood(editing.caseId).has_value());
    ASSERT_OK(this->ben->moveToBin(editing.caseId));
    EXPECT_TRUE(this->ann->list()->empty());
    EXPECT_EQ(this->ann->list({{}, {}, {}, {}, true})->size(), 1u);
    const auto binned = this->ann->beginEditing(editing.caseId);
    ASSERT_FALSE(binned.has_value());
    EXPECT_THAT(binned.error().message, HasSubstr("lies in the bin"));
    ASSERT_OK(this->ann->takeFromBin(editing.caseId));
    EXPECT_EQ(this->ann->open(editing.caseId)->content, "text");
    ASSERT_OK(this->ben->moveToBin(editing.caseId));
    ASSERT_OK(this->ben->removeForGood(editing.caseId));
    const auto gone = this->ann->open(editing.caseId);
    ASSERT_FALSE(gone.has_value());
    EXPECT_EQ(gone.error().code, core::ErrorCode::NotFound);
}

TYPED_TEST(CaseLibraryOn, ExportsAndImportsACaseAsOneFile) {
    auto editing = this->ann->create(facts(), QByteArray("text\0 1", 7), 0).value();
    ASSERT_OK(this->ann->append(editing, {edit(1)}));
    ASSERT_OK(this->ann->save(editing, facts(), "text 2", 1));
    ASSERT_OK(this->ann->append(editing, {edit(2), edit(3)}));
    QTemporaryDir folder;
    const QString path = folder.filePath("one.library-case");
    ASSERT_OK(this->ann->exportCase(editing.caseId, path));
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files).size(), 1) << "nothing but the file";

    const auto id = this->ben->importCase(path);
    ASSERT_OK(id);
    EXPECT_NE(*id, editing.caseId);
    const auto copy = this->ben->open(*id);
    ASSERT_OK(copy);
    EXPECT_EQ(copy->content, "text 2");
    EXPECT_EQ(copy->facts, facts());
    EXPECT_EQ(copy->edits, (std::vector{edit(2), edit(3)}));
    EXPECT_EQ(this->ben->openVersion(*id, 1)->content, QByteArray("text\0 1", 7));
    EXPECT_EQ(this->ben->openVersion(*id, 1)->edits, std::vector{edit(1)});

    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    QByteArray bytes = file.readAll();
    const auto at = bytes.indexOf("before-repair");
    bytes[at] = 'B';
    file.resize(0);
    file.write(bytes);
    file.close();
    const auto damaged = this->ben->importCase(path);
    ASSERT_FALSE(damaged.has_value());
    EXPECT_THAT(damaged.error().message, HasSubstr("does not agree with its checksum"));
    EXPECT_EQ(this->ben->list()->size(), 2u) << "nothing half imported";
    EXPECT_FALSE(this->ann->exportCase(editing.caseId, "/no such folder/x").has_value());
}

TYPED_TEST(CaseLibraryOn, RefusesDamagedTextsAndNamesAWholeVersion) {
    auto editing = this->ann->create(facts(), "text 1", 0).value();
    ASSERT_OK(this->ann->append(editing, {edit(1)}));
    ASSERT_OK(this->ann->save(editing, facts(), "text 2", 1));
    this->sql("UPDATE versions SET content = 'text 3' WHERE number = 2");
    const auto opened = this->ben->open(editing.caseId);
    ASSERT_FALSE(opened.has_value());
    EXPECT_EQ(opened.error().code, core::ErrorCode::FileDamaged);
    EXPECT_THAT(opened.error().message, HasSubstr("Version 1 is whole"));
    const auto whole = this->ben->openAsFarAsWhole(editing.caseId);
    ASSERT_OK(whole);
    EXPECT_EQ(whole->content, "text 1");
    EXPECT_EQ(whole->edits, std::vector{edit(1)});
    EXPECT_THAT(whole->damage.toStdString(), HasSubstr("version 2 is damaged"));
    EXPECT_FALSE(this->ben->check()->isEmpty());
}

TYPED_TEST(CaseLibraryOn, NoticesMovedRenamedAndMissingRows) {
    auto editing = this->ann->create(facts(), "text", 0).value();
    ASSERT_OK(this->ann->append(editing, {edit(1), edit(2), edit(3)}));
    auto other = this->ann->create(facts("Other^One"), "other", 0).value();
    for (const char* damage :
         {"DELETE FROM edits WHERE sequence = 3", "UPDATE cases SET patient_name = 'Wrong^Person' WHERE edit_count = 0",
          "UPDATE edits SET content = 'x' WHERE sequence = 2"}) {
        this->sql(damage);
        const bool first = QByteArray(damage).contains("edit_count");
        const auto opened = this->ben->open(first ? other.caseId : editing.caseId);
        ASSERT_FALSE(opened.has_value()) << damage;
        EXPECT_EQ(opened.error().code, core::ErrorCode::FileDamaged);
        EXPECT_THAT(opened.error().message, testing::Not(HasSubstr("Wrong")));
    }
    const auto whole = this->ben->openAsFarAsWhole(editing.caseId);
    ASSERT_OK(whole);
    EXPECT_EQ(whole->edits, std::vector{edit(1)});
    EXPECT_THAT(whole->damage.toStdString(), HasSubstr("edit 2"));
    int damaged = 0;
    const auto all = this->ben->list().value();
    for (const ListedCase& listed : all) damaged += listed.damaged;
    EXPECT_EQ(damaged, 1);
}

TYPED_TEST(CaseLibraryOn, RescuesWhatIsWholeIntoAnotherLibrary) {
    auto editing = this->ann->create(facts(), "text 1", 0).value();
    ASSERT_OK(this->ann->save(editing, facts(), "text 2", 0));
    ASSERT_OK(this->ann->create(facts("Two"), "second", 0));
    this->sql("UPDATE versions SET content = 'bad' WHERE number = 2");
    QTemporaryDir folder;
    LibraryPlace other;
    other.path = folder.filePath("new.library");
    auto rescued = CaseLibrary::open(other, "ann", "x").value();
    EXPECT_EQ(this->ann->rescueInto(*rescued).value(), 2);
    const auto found = rescued->list({"naeme nothing", {}, {}, {}});
    EXPECT_TRUE(found->empty());
    const auto cases = rescued->list({"ostium", {}, {}, {}});
    ASSERT_EQ(cases->size(), 1u);
    const ListedCase& first = cases->front();
    EXPECT_EQ(rescued->open(first.id)->content, "text 1");
    EXPECT_TRUE(rescued->check()->isEmpty());
}

TYPED_TEST(CaseLibraryOn, RefusesALibraryOfANewerProgramInWords) {
    this->sql("INSERT INTO library_schema (number, applied_at) VALUES (99, '')");
    const auto opened = CaseLibrary::open(this->place, "ann", "x");
    ASSERT_FALSE(opened.has_value());
    EXPECT_EQ(opened.error().code, core::ErrorCode::RecordUnreadable);
    EXPECT_THAT(opened.error().message, HasSubstr("a newer version of this program wrote it (its tables are at step 99"));
}

TYPED_TEST(CaseLibraryOn, SaysNoIdentityInErrors) {
    auto editing = this->ann->create(facts("Secret^Name", "SECRET-ID"), "text", 0).value();
    this->sql("DROP TABLE edits");
    testing::internal::CaptureStderr();
    const auto failed = this->ann->append(editing, {edit(1, "Secret^Name")});
    const auto opened = this->ann->open(editing.caseId);
    const std::string log = testing::internal::GetCapturedStderr();
    ASSERT_FALSE(failed.has_value());
    ASSERT_FALSE(opened.has_value());
    for (const std::string& text : {failed.error().message, opened.error().message, log})
        EXPECT_EQ(QString::fromStdString(text).indexOf("secret", 0, Qt::CaseInsensitive), -1) << text;
}
