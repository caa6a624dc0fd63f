#include "app/library/ui/library_dialog.h"

#include "app/drawing/palette.h"
#include "app/format/terms.h"
#include "app/window/theme.h"
#include "tests/app/support/synthetic_session.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QSignalSpy>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

using namespace gauge::app;
using gauge::fixture::waitUntil;

namespace {

CaseFacts facts(const QString& name, const QString& title, const QStringList& tags) {
    return {title, name, "DEMO-" + title.left(3).toUpper(), "19440512", "20260310", "before-repair", tags};
}

} // namespace

TEST(LibraryDialog, ListsFindsOpensAndBinsCasesByKeys) {
    QTemporaryDir folder;
    LibraryPlace place;
    place.path = folder.filePath("cases.library");
    const auto ann = CaseLibrary::open(place, "ann", "reading room 2").value();
    const auto ben = CaseLibrary::open(place, "ben", "hybrid theatre").value();
    LibraryDialog empty(ann.get());
    empty.show();
    EXPECT_FALSE(empty.findChild<QTableView*>()->isVisible());

    const auto one = ann->create(facts("Quill^Orla", "Oval landing zone", {"teaching", "oval"}), "1", 0).value();
    auto two = ben->create(facts("Brook^Anselm", "After clip", {"repair"}), "2", 0).value();
    ben->save(two, facts("Brook^Anselm", "After clip", {"repair"}), "3", 0);
    ann->endEditing(one);
    LibraryDialog dialog(ann.get());
    dialog.show();
    auto* table = dialog.findChild<QTableView*>();
    EXPECT_EQ(table->model()->rowCount(), 2);
    dialog.select(two.caseId);
    QCoreApplication::processEvents();
    EXPECT_EQ(dialog.findChild<QListWidget*>()->count(), 2);
    EXPECT_EQ(table->model()->index(0, LibraryModel::Stage).data().toString(), stageName(gauge::core::Stage::BeforeRepair));
    QSignalSpy opened(&dialog, &LibraryDialog::openRequested);
    QTest::keyClick(&dialog, Qt::Key_Return);
    ASSERT_EQ(opened.size(), 1);
    EXPECT_EQ(opened.front().front().toString(), two.caseId);
    if (const QString to = qEnvironmentVariable("GAUGE_PICTURES"); !to.isEmpty())
        for (const Theme kind : {Theme::Dark, Theme::Light}) {
            applyTheme(*qApp, kind);
            QCoreApplication::processEvents();
            dialog.grab().save(to + (kind == Theme::Dark ? "/library-dark.png" : "/library-light.png"));
            empty.grab().save(to + (kind == Theme::Dark ? "/library-empty-dark.png" : "/library-empty-light.png"));
        }
    dialog.findChild<QLineEdit*>()->setText("orla");
    EXPECT_TRUE(waitUntil([&] { return table->model()->rowCount() == 1; }));
    table->setFocus();
    QTest::keyClick(table, Qt::Key_Delete);
    EXPECT_EQ(table->model()->rowCount(), 0);
    QTest::keyClick(&dialog, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(waitUntil([&] { return table->model()->rowCount() == 1; }));

    LibraryDialog broken(nullptr, "The library cannot be opened: no reason.");
    broken.show();
    EXPECT_FALSE(broken.findChild<QLineEdit*>()->isEnabled());
}

TEST(LibraryDialog, ChecksAndCopiesWhatIsWhole) {
    QTemporaryDir folder;
    LibraryPlace place;
    place.path = folder.filePath("cases.library");
    {
        const auto ann = CaseLibrary::open(place, "ann", "reading room 2").value();
        const auto one = ann->create(facts("Quill^Orla", "Oval landing zone", {"teaching"}), "1", 0).value();
        ann->endEditing(one);
        LibraryDialog dialog(ann.get());
        dialog.show();
        dialog.check();
        const auto said = [&] {
            QString all;
            for (const QLabel* label : dialog.findChildren<QLabel*>())
                all += label->text();
            return all;
        };
        EXPECT_TRUE(said().contains("nothing is wrong with it")) << said().toStdString();
        // A text that was changed behind the library's back.
        auto database = Database::open(place).value();
        ASSERT_TRUE(database->change("UPDATE versions SET content = '2'").has_value());
        dialog.check();
        EXPECT_TRUE(said().contains("wrong with the library")) << said().toStdString();
        ASSERT_TRUE(dialog.rescueTo(folder.filePath("rescued.library"))) << said().toStdString();
    }
    place.path = folder.filePath("rescued.library");
    EXPECT_TRUE(CaseLibrary::open(place, "ann", "reading room 2").has_value());
}
