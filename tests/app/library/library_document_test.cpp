#include "app/library/library_document.h"

#include "app/library/case_facts.h"
#include "app/settings/library_settings.h"
#include "core/record/case_json.h"
#include "tests/app/document/case_edits.h"

#include <QDir>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;
using testing::HasSubstr;

namespace {

class LibraryDocumentTest : public testing::Test {
protected:
    std::unique_ptr<CaseLibrary> person(const QString& name) {
        LibraryPlace place;
        place.path = folder.filePath("cases.library");
        return CaseLibrary::open(place, name, "station of " + name).value();
    }
    static bool place(CaseDocument& document, double x) {
        return document.push(std::make_unique<PlaceMark>(document, core::MarkKind::Tip, core::PatientPoint{{x, 2, 3}}));
    }
    static double tipX(const CaseDocument& document) {
        const auto& marks = document.record().marks;
        const auto tip = marks.find(core::MarkKind::Tip);
        return tip == marks.end() ? -1.0 : tip->second.point.mm.x();
    }

    QTemporaryDir folder;
    std::unique_ptr<CaseLibrary> ann = person("ann"), ben = person("ben");
    CaseDocument anns, bens;
    LibraryDocument annsCase{anns, *ann, folder.filePath("ann")}, bensCase{bens, *ben, folder.filePath("ben")};
};

CaseFacts facts(const QString& name, const QString& title, const QStringList& tags) {
    return {title, name, "DEMO-" + title.left(3).toUpper(), "19440512", "20260310", "before-repair", tags};
}

} // namespace

TEST_F(LibraryDocumentTest, StoresEachEditWithinASecondAndOpensWithAllOfThem) {
    ASSERT_TRUE(place(anns, 1));
    const auto id = annsCase.put();
    ASSERT_TRUE(id.has_value()) << id.error().message;
    QSignalSpy stored(&annsCase, &LibraryDocument::stored);
    ASSERT_TRUE(place(anns, 2));
    ASSERT_TRUE(stored.wait(1000));
    EXPECT_EQ(stored.front().front().toULongLong(), anns.nextRevision() - 1);
    EXPECT_EQ(ben->open(*id)->edits.size(), 1u);

    const auto opened = bensCase.open(*id);
    ASSERT_TRUE(opened.has_value()) << opened.error().message;
    EXPECT_EQ(tipX(bens), 2);
    EXPECT_FALSE(bensCase.mayWrite());
    EXPECT_TRUE(bens.isReadOnly());
    EXPECT_FALSE(place(bens, 9));
    ASSERT_FALSE(opened->empty());
    EXPECT_THAT(opened->back().text, HasSubstr("ann on station of ann is editing this case"));

    ASSERT_TRUE(annsCase.close().has_value());
    ASSERT_TRUE(bensCase.open(*id).has_value());
    EXPECT_TRUE(bensCase.mayWrite());
    EXPECT_EQ(tipX(bens), 2);
    ASSERT_TRUE(place(bens, 3));
    bens.undoStack().undo();
    ASSERT_TRUE(bensCase.save().has_value());
    EXPECT_EQ(ben->find(*id)->editsSince, 0);
    ASSERT_TRUE(annsCase.openVersion(*id, 1).has_value());
    EXPECT_EQ(tipX(anns), 1);
    EXPECT_TRUE(anns.isReadOnly());
}

TEST_F(LibraryDocumentTest, SendsNothingWhileAHandDragsAndAllOfItAfterwards) {
    ASSERT_TRUE(place(anns, 1));
    const auto id = annsCase.put();
    ASSERT_TRUE(id.has_value()) << id.error().message;
    bool dragging = true;
    annsCase.setBusy([&] { return dragging; });
    QSignalSpy stored(&annsCase, &LibraryDocument::stored);
    ASSERT_TRUE(place(anns, 2));
    ASSERT_TRUE(place(anns, 3));
    EXPECT_FALSE(stored.wait(3 * kSendWithin.count()));
    EXPECT_TRUE(ben->open(*id)->edits.empty());
    dragging = false;
    ASSERT_TRUE(stored.wait(1000));
    EXPECT_EQ(ben->open(*id)->edits.size(), 2u);
}

TEST_F(LibraryDocumentTest, KeepsATextWhoseLeaseWasLostBesideTheOther) {
    ASSERT_TRUE(place(anns, 1));
    const QString id = annsCase.put().value();
    {
        auto database = Database::open(ann->place()).value();
        ASSERT_TRUE(database->change("UPDATE leases SET process = process || '1'").has_value()); // as if it had ended
    }
    ASSERT_TRUE(bensCase.open(id).has_value());
    ASSERT_TRUE(bensCase.mayWrite());
    QSignalSpy lost(&annsCase, &LibraryDocument::leaseLost);
    ASSERT_TRUE(place(anns, 5));
    ASSERT_TRUE(lost.wait(1000));
    const auto refused = annsCase.save();
    ASSERT_TRUE(refused.has_value()) << refused.error().message;
    EXPECT_EQ(refused->kind, WriteOutcome::Kind::Refused);
    ASSERT_TRUE(annsCase.openVersion(id, refused->branch).has_value());
    EXPECT_EQ(tipX(anns), 5);
    EXPECT_EQ(tipX(bens), 1);
}

// What opening a folder brings of itself (evidence, values) must not change a case that somebody else edits.
TEST_F(LibraryDocumentTest, ACaseThatOthersEditStaysAsItIsInTheLibrary) {
    ASSERT_TRUE(place(anns, 1));
    const QString id = annsCase.put().value();
    ASSERT_TRUE(bensCase.open(id).has_value());
    ASSERT_TRUE(bens.isReadOnly());
    const core::CaseRecord before = bens.record();
    bens.apply(core::SetEntry<core::Evidence>{"2.25.7", core::Entry<core::Evidence>{}});
    bens.apply(core::SetValues{{}, "ct"});
    EXPECT_EQ(bens.record(), before);
    EXPECT_EQ(bens.nextRevision(), anns.nextRevision());
    EXPECT_FALSE(bens.hasUnsavedWork());
    ASSERT_TRUE(place(anns, 4)); // whoever may write still does
    ASSERT_TRUE(annsCase.save().has_value());
    EXPECT_EQ(ben->find(id)->version, 2);
}

TEST_F(LibraryDocumentTest, RemovesWorkingCopiesThatTheLibraryHoldsWholeAndNoOthers) {
    const auto copies = [&](const char* who) { return QDir(folder.filePath(who)).entryList({"*.case.json"}, QDir::Files); };
    ASSERT_TRUE(place(anns, 1));
    const QString id = annsCase.put().value();
    ASSERT_TRUE(place(anns, 2));
    ASSERT_TRUE(annsCase.close().has_value());
    ASSERT_TRUE(bensCase.open(id).has_value());
    ASSERT_TRUE(place(bens, 3));
    ASSERT_EQ(copies("ben").size(), 1) << "the open one";
    ASSERT_TRUE(bensCase.close().has_value());
    ASSERT_TRUE(bensCase.open(id).has_value()); // another copy takes its place
    EXPECT_EQ(copies("ben").size(), 1);
    bens.clear();
    EXPECT_TRUE(copies("ben").isEmpty()) << copies("ben").join(' ').toStdString();
    EXPECT_TRUE(QDir(folder.filePath("ben")).entryList({"*.edits"}, QDir::Files).isEmpty());

    // One edit that the library never got: the copy stays, whatever is opened later.
    ASSERT_TRUE(annsCase.open(id).has_value());
    {
        auto database = Database::open(ann->place()).value();
        ASSERT_TRUE(database->change("UPDATE leases SET process = process || '1'").has_value());
    }
    ASSERT_TRUE(bensCase.open(id).has_value());
    ASSERT_TRUE(place(anns, 9));
    QSignalSpy lost(&annsCase, &LibraryDocument::leaseLost);
    ASSERT_TRUE(lost.wait(1000));
    anns.clear();
    EXPECT_EQ(annsCase.removeStoredCopies(), 0);
    EXPECT_EQ(copies("ann").size(), 1);
}

TEST_F(LibraryDocumentTest, WritesNoIdentityIntoNamesOfWorkingFiles) {
    const QString id = ann->create(facts("Hidden^Person", "Hidden title", {"hidden"}),
                                   QByteArray::fromStdString(core::caseText({})), 0)->caseId;
    ASSERT_TRUE(annsCase.open(id).has_value());
    EXPECT_FALSE(QDir(folder.filePath("ann")).entryList(QDir::Files).isEmpty());
    for (const QString& name : QDir(folder.filePath("ann")).entryList(QDir::Files | QDir::Hidden))
        EXPECT_FALSE(name.contains("hidden", Qt::CaseInsensitive)) << name.toStdString();
}

TEST(FactsOf, TakesPatientLatestDateAndLatestStage) {
    core::CaseRecord record;
    record.patient = core::Entry<core::Patient>{{"A^B", "1", "19500101", "F", "Title", {"x"}}, 1};
    core::Evidence early, late;
    early.acquired = "2026-02-01T10:00:00";
    late.acquired = "2026-03-05";
    late.stage = core::Stage::AfterRepair;
    record.evidence["1"] = {late, 2};
    record.evidence["2"] = {early, 3};
    EXPECT_EQ(factsOf(record), (CaseFacts{"Title", "A^B", "1", "19500101", "20260305", "after-repair", {"x"}}));
}

TEST(LibrarySettings, GoThereAndBack) {
    LibraryPlace place = usualLibraryPlace();
    setLibraryPlaceInSettings(place);
    EXPECT_EQ(libraryPlaceOfSettings(), place);
    LibraryPlace server;
    server.kind = LibraryPlace::Kind::Postgres;
    server.host = "cases.example";
    server.port = 5433;
    server.database = "team";
    server.user = "reader";
    server.tlsMode = "verify-full";
    setLibraryPlaceInSettings(server);
    EXPECT_EQ(libraryPlaceOfSettings(), server);
    setLibraryPlaceInSettings(place);
    EXPECT_EQ(libraryPlaceOfSettings(), place);
}
