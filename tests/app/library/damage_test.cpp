// Bits of the library's file are flipped: it is noticed, or what is handed out is what was stored.
#include "tests/app/library/library_backends.h"

#include <QFile>
#include <gtest/gtest.h>
#include <iostream>
#include <random>

using namespace gauge::app;

namespace {

struct Stored {
    CaseFacts facts;
    std::vector<QByteArray> versions;
    std::vector<StoredEdit> edits;
};

CaseFacts factsOf(int n) {
    return {QString("title %1").arg(n), QString("Name%1^Given").arg(n), QString("ID%1").arg(n), "19500101", "20260101",
            "follow-up", {"a", "b"}};
}

/// A library with some cases, closed; what is in it by id.
std::map<QString, Stored> fill(const LibraryPlace& place) {
    std::map<QString, Stored> all;
    auto library = CaseLibrary::open(place, "ann", "here").value();
    for (int n = 0; n < 6; ++n) {
        Stored stored{factsOf(n), {}, {}};
        stored.versions.push_back("first " + QByteArray(3000 + 500 * n, static_cast<char>('a' + n)));
        auto editing = library->create(stored.facts, stored.versions.back(), 0).value();
        stored.versions.push_back("second " + QByteArray(9000, static_cast<char>('A' + n)));
        EXPECT_TRUE(library->save(editing, stored.facts, stored.versions.back(), 0).has_value());
        for (int e = 1; e <= 4; ++e) stored.edits.push_back({e, "edit " + QByteArray(200, static_cast<char>('0' + e))});
        EXPECT_TRUE(library->append(editing, stored.edits).has_value());
        EXPECT_TRUE(library->endEditing(editing).has_value());
        all[editing.caseId] = stored;
    }
    return all;
}

struct Tally {
    int harmless = 0, noticedAtOpening = 0, noticedAtReading = 0, refused = 0, cases = 0, offered = 0;
};

/// Looks at everything the library hands out. Wrong data without a word fails.
void judge(const LibraryPlace& place, const std::map<QString, Stored>& truth, Tally& tally, const std::string& what) {
    const auto library = CaseLibrary::open(place, "ben", "there");
    if (!library) {
        EXPECT_FALSE(library.error().message.empty());
        ++tally.refused;
        return;
    }
    const bool told = !(*library)->damage().isEmpty();
    bool noticed = told;
    const auto list = (*library)->list();
    if (!list) noticed = true;
    if (list) {
        std::size_t seen = 0;
        for (const ListedCase& listed : *list) {
            const auto known = truth.find(listed.id);
            if (listed.damaged) {
                noticed = true;
            } else {
                ASSERT_NE(known, truth.end()) << what << ": a case that never was";
                ASSERT_EQ(listed.facts, known->second.facts) << what << ": wrong facts without a word";
                ++seen;
            }
        }
        ASSERT_TRUE(noticed || seen == truth.size()) << what << ": a case left out without a word";
    }
    for (const auto& [id, stored] : truth) {
        const auto opened = (*library)->open(id);
        if (opened) {
            ASSERT_EQ(opened->facts, stored.facts) << what;
            ASSERT_EQ(opened->content, stored.versions[1]) << what;
            ASSERT_EQ(opened->edits, stored.edits) << what;
            continue;
        }
        noticed = true;
        ++tally.cases;
        const auto whole = (*library)->openAsFarAsWhole(id);
        if (!whole) continue;
        ++tally.offered;
        ASSERT_FALSE(whole->damage.isEmpty()) << what;
        ASSERT_TRUE(whole->version.number == 1 || whole->version.number == 2) << what;
        ASSERT_EQ(whole->content, stored.versions[static_cast<std::size_t>(whole->version.number - 1)]) << what;
        ASSERT_TRUE(whole->facts == stored.facts || whole->facts == CaseFacts{}) << what;
        for (std::size_t e = 0; e < whole->edits.size(); ++e) ASSERT_EQ(whole->edits[e], stored.edits[e]) << what;
    }
    (told ? tally.noticedAtOpening : noticed ? tally.noticedAtReading : tally.harmless) += 1;
}

} // namespace

TEST(FlippedBits, AreNoticedOrHarmless) {
    fixture::Sqlite backend;
    const LibraryPlace place = backend.place();
    const auto truth = fill(place);
    QFile original(place.path);
    ASSERT_TRUE(original.open(QIODevice::ReadOnly));
    const QByteArray bytes = original.readAll();
    ASSERT_FALSE(QFile::exists(place.path + "-wal")) << "the log was folded in when the library was closed";
    Tally tally;
    const int files = qEnvironmentVariableIsSet("GAUGE_LONG") ? 3000 : 300;
    for (int seed = 0; seed < files; ++seed) {
        std::mt19937 random(static_cast<unsigned>(seed));
        QByteArray damaged = bytes;
        const int flips = seed % 3 == 0 ? 1 : seed % 3 == 1 ? 4 : 20;
        for (int flip = 0; flip < flips; ++flip) {
            const auto bit = std::uniform_int_distribution<qint64>(0, bytes.size() * 8 - 1)(random);
            damaged[static_cast<qsizetype>(bit / 8)] = static_cast<char>(damaged[static_cast<qsizetype>(bit / 8)] ^ (1 << (bit % 8)));
        }
        LibraryPlace copy = place;
        copy.path = backend.folder.filePath("copy.library");
        for (const char* suffix : {"", "-wal", "-shm"}) QFile::remove(copy.path + suffix);
        QFile file(copy.path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(damaged);
        file.close();
        judge(copy, truth, tally, "seed " + std::to_string(seed));
        if (HasFatalFailure()) return;
    }
    std::cout << files << " damaged files of " << bytes.size() << " bytes: " << tally.refused << " refused, "
              << tally.noticedAtOpening << " noticed at opening, " << tally.noticedAtReading << " by a checksum at reading, "
              << tally.harmless << " without effect; of " << tally.cases << " damaged cases " << tally.offered
              << " were offered as far as whole\n";
    EXPECT_GT(tally.noticedAtReading, files / 10) << "page checks do not see flipped contents: checksums must";
}

TEST(DamagedLibrary, IsReadButNotWritten) {
    fixture::Sqlite backend;
    const LibraryPlace place = backend.place();
    const auto truth = fill(place);
    QFile file(place.path);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    // Page 1 holds the schema; its freelist count (bytes 36-39, sqlite.org/fileformat2.html section 1.3) is made wrong.
    file.seek(39);
    file.write("\x7f", 1);
    file.close();
    auto library = CaseLibrary::open(place, "ann", "here");
    ASSERT_TRUE(library.has_value()) << library.error().message;
    EXPECT_TRUE((*library)->damage().contains("is damaged. It is read only as far as it is whole"));
    const auto made = (*library)->create({}, "x", 0);
    ASSERT_FALSE(made.has_value());
    EXPECT_EQ(made.error().code, gauge::core::ErrorCode::FileDamaged);
    LibraryPlace other;
    other.path = backend.folder.filePath("other.library");
    auto rescued = CaseLibrary::open(other, "ann", "here").value();
    EXPECT_EQ((*library)->rescueInto(*rescued).value(), 6);
    EXPECT_EQ(rescued->list()->size(), 6u);
}

TEST(ForeignFile, IsRefusedInWordsAndLeftAlone) {
    fixture::Sqlite backend;
    QFile file(backend.place().path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    const QByteArray text("This is no database at all, but a text of somebody's that must not be touched. ");
    file.write(text.repeated(20));
    file.close();
    const auto opened = CaseLibrary::open(backend.place(), "a", "b");
    ASSERT_FALSE(opened.has_value());
    EXPECT_EQ(opened.error().code, gauge::core::ErrorCode::FileDamaged);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), text.repeated(20));
}
