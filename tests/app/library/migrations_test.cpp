// Libraries of earlier steps are built here by SQL, as their program left them.
#include "app/library/migrations.h"
#include "app/library/search_text.h"
#include "tests/app/library/library_backends.h"

#include <gtest/gtest.h>

using namespace gauge::app;

namespace {

/// The tables of step 1, written out: not those of the program, which may change by mistake.
const char* const kStep1[] = {
    "CREATE TABLE library_schema (number BIGINT PRIMARY KEY, applied_at TEXT NOT NULL)",
    "CREATE TABLE cases (id TEXT PRIMARY KEY, title TEXT NOT NULL, patient_name TEXT NOT NULL, patient_id TEXT NOT NULL, "
    "birth_date TEXT NOT NULL, study_date TEXT NOT NULL, stage TEXT NOT NULL, tags TEXT NOT NULL, created_at TEXT NOT NULL, "
    "changed_at TEXT NOT NULL, binned_at TEXT NOT NULL, current_version BIGINT NOT NULL, edit_count BIGINT NOT NULL, "
    "last_edit TEXT NOT NULL, sha256 TEXT NOT NULL)",
    "CREATE TABLE versions (case_id TEXT NOT NULL REFERENCES cases (id) ON DELETE CASCADE, number BIGINT NOT NULL, kind TEXT "
    "NOT NULL, base BIGINT NOT NULL, last_sequence BIGINT NOT NULL, saved_at TEXT NOT NULL, author TEXT NOT NULL, content {blob} "
    "NOT NULL, content_sha256 TEXT NOT NULL, sha256 TEXT NOT NULL, PRIMARY KEY (case_id, number))",
    "CREATE TABLE edits (case_id TEXT NOT NULL REFERENCES cases (id) ON DELETE CASCADE, base BIGINT NOT NULL, sequence BIGINT "
    "NOT NULL, saved_at TEXT NOT NULL, content {blob} NOT NULL, previous TEXT NOT NULL, sha256 TEXT NOT NULL, "
    "PRIMARY KEY (case_id, base, sequence))",
    "CREATE TABLE leases (case_id TEXT PRIMARY KEY REFERENCES cases (id) ON DELETE CASCADE, token TEXT NOT NULL, holder TEXT "
    "NOT NULL, station TEXT NOT NULL, process TEXT NOT NULL, beat BIGINT NOT NULL, taken_at TEXT NOT NULL, renewed_at TEXT NOT "
    "NULL)",
    "INSERT INTO library_schema VALUES (1, '2026-01-01T00:00:00Z')",
    // Checksums computed apart from the program, by Python's hashlib: SHA-256 over the parts, each after its length in
    // eight bytes, most significant first.
    "INSERT INTO cases VALUES ('old', 'Old case', 'Älter^Fall', 'P1', '19390101', '20251224', '', '', '2026-01-01T00:00:00Z', "
    "'2026-01-02T00:00:00Z', '', 1, 0, '', '57d6ce99b6bdcb1e7cd885195be83af9e455af305731dca0c7c94057f83680f5')",
    "INSERT INTO versions VALUES ('old', 1, 'main', 0, 5, '2026-01-01T00:00:00Z', 'ann', 'old text', "
    "'c9fbd865f5b1419c9e65d4381bfee26fb252a303d4cdd689aed446bf252ca847', '0ba14a3865b7a61d6e54deaf97723e9bddc56324f1e146fe02681fad09a94546')",
};

template <class Backend> class MigrateOn : public testing::Test {
protected:
    void SetUp() override {
        const std::string reason = Backend::whyNot();
        if (reason.starts_with("FAILED")) FAIL() << reason;
        if (!reason.empty()) GTEST_SKIP() << reason;
    }
    Backend backend;
};
struct Names {
    template <class Backend> static std::string GetName(int) {
        return std::is_same_v<Backend, fixture::Sqlite> ? "Sqlite" : "Postgres";
    }
};
using Backends = testing::Types<fixture::Sqlite, fixture::Postgres>;
TYPED_TEST_SUITE(MigrateOn, Backends, Names);

} // namespace

TYPED_TEST(MigrateOn, OpensALibraryOfTheFirstStepWithAllThatIsInIt) {
    {
        auto database = Database::open(this->backend.place());
        ASSERT_TRUE(database.has_value()) << database.error().message;
        for (const char* statement : kStep1) {
            const auto done = (*database)->change(QString::fromUtf8(statement));
            ASSERT_TRUE(done.has_value()) << statement << done.error().message;
        }
    }
    auto library = CaseLibrary::open(this->backend.place(), "ann", "here");
    ASSERT_TRUE(library.has_value()) << library.error().message;
    const auto found = (*library)->list({"alter 2025-12-24", {}, {}, {}});
    ASSERT_TRUE(found.has_value()) << found.error().message;
    ASSERT_EQ(found->size(), 1u) << "found by its search text, which step 2 made";
    EXPECT_FALSE(found->front().damaged);
    const auto stored = (*library)->open("old");
    ASSERT_TRUE(stored.has_value()) << stored.error().message;
    EXPECT_EQ(stored->content, "old text");
    auto editing = (*library)->beginEditing("old")->editing;
    ASSERT_TRUE(editing.has_value());
    EXPECT_TRUE((*library)->append(*editing, {{6, "edit"}}).has_value());
}

TYPED_TEST(MigrateOn, LeavesALibraryAtItsStepWhenAStepFails) {
    {
        auto database = Database::open(this->backend.place()).value();
        for (const char* statement : kStep1) ASSERT_TRUE(database->change(QString::fromUtf8(statement)).has_value());
        // Step 2 adds the column first and then meets this.
        ASSERT_TRUE(database->change("CREATE INDEX cases_by_study_date ON cases (title)").has_value());
    }
    const auto failed = CaseLibrary::open(this->backend.place(), "ann", "here");
    ASSERT_FALSE(failed.has_value());
    EXPECT_NE(failed.error().message.find("to step 2 of its tables"), std::string::npos) << failed.error().message;
    {
        auto database = Database::open(this->backend.place()).value();
        EXPECT_FALSE(database->rows("SELECT search_text FROM cases").has_value()) << "half a step was kept";
        ASSERT_TRUE(database->change("DROP INDEX cases_by_study_date").has_value());
    }
    EXPECT_TRUE(CaseLibrary::open(this->backend.place(), "ann", "here").has_value());
}

TEST(SearchText, ForgetsCaseAccentsAndDicomsSeparators) {
    EXPECT_EQ(searchText({"Óstium^NÄME", "20260310", ""}), "ostium name\n20260310\n2026-03-10");
    EXPECT_EQ(searchWords("  Straße  ÉA "), (QStringList{"strasse", "ea"}));
    EXPECT_EQ(likePattern("a%_!"), "%a!%!_!!%");
}
