#include "app/window/main_window.h"

#include "app/drawing/palette.h"
#include "app/panels/message_line.h"
#include "app/panels/start_page.h"
#include "app/views/echo_page.h"
#include "tests/app/support/synthetic_case.h"
#include "tests/app/support/synthetic_session.h"

#include <QAbstractButton>
#include <QLabel>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;
using fixture::openAndMeasure;
using fixture::waitUntil;

namespace {

void showAt(MainWindow& window, int width, int height) {
    window.resize(width, height);
    window.show();
    QCoreApplication::processEvents();
}

QString messageText(MainWindow& window) {
    return window.findChild<MessageLine*>()->text();
}

/// Words of visible buttons, labels and table cells that do not fit into their place.
QStringList cutOff(const MainWindow& window) {
    QStringList found;
    for (const auto* button : window.findChildren<QAbstractButton*>())
        if (button->isVisible() && button->width() < button->sizeHint().width())
            found << "button: " + button->text();
    for (const auto* label : window.findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty() || !label->pixmap(Qt::ReturnByValue).isNull())
            continue;
        const bool fits = label->wordWrap() ? label->height() >= label->heightForWidth(label->width())
                                            : label->width() >= label->sizeHint().width();
        if (!fits) found << "label: " + label->text();
    }
    for (const auto* table : window.findChildren<QTableView*>()) {
        const auto* model = table->model();
        for (int row = 0; row < model->rowCount(); ++row)
            for (int column = 0; column < model->columnCount(); ++column) {
                const QModelIndex index = model->index(row, column);
                if (table->isColumnHidden(column) || table->isRowHidden(row) || index.data().toString().isEmpty()) continue;
                constexpr int kMargins = 16;
                const QFontMetrics metrics(labelFont(row == 1 && column > 0 ? 13 : 12, row == 1));
                if (!table->isVisible() || table->isRowHidden(row) || table->isColumnHidden(column) ||
                    table->columnSpan(row, column) != 1)
                    continue;
                // Cells wrap between words, and their row is as high as that needs.
                const QRect box = metrics.boundingRect(QRect(0, 0, table->columnWidth(column) - kMargins, 10000),
                                                       Qt::TextWordWrap, index.data().toString());
                if (box.width() > table->columnWidth(column) - kMargins + 1 || box.height() > table->rowHeight(row))
                    found << "cell: " + index.data().toString();
            }
    }
    return found;
}

} // namespace

TEST(MainWindow, StartsWithAWayOnAndTheCautions) {
    MainWindow window;
    showAt(window, 1280, 800);
    QString all;
    for (const auto* label : window.findChildren<QLabel*>())
        if (label->isVisible()) all += label->text() + '\n';
    EXPECT_EQ(window.width(), 1280) << "no wider than asked for, though both sides come with the first case";
    EXPECT_TRUE(all.contains("not a medical device"));
    EXPECT_TRUE(all.contains("drop the folder on this window"));
    EXPECT_TRUE(cutOff(window).isEmpty()) << cutOff(window).join("; ").toStdString();
}

TEST(MainWindow, ShowsTheMeasurementByItselfAndCutsNoWordAt1280By800) {
    MainWindow window;
    showAt(window, 1280, 800);
    openAndMeasure(window.session());
    EXPECT_EQ(window.state().page(), ViewState::Page::Appendage);
    QCoreApplication::processEvents();
    EXPECT_TRUE(cutOff(window).isEmpty()) << cutOff(window).join("; ").toStdString();
}

TEST(MainWindow, TheErrorStateShowsTheMessageInTheWindow) {
    MainWindow window;
    showAt(window, 1280, 800);
    const QTemporaryDir empty;
    window.openFolder(empty.path());
    EXPECT_TRUE(messageText(window).contains("Looking through"));
    ASSERT_TRUE(waitUntil([&] { return !window.session().isLoading(); }));
    EXPECT_EQ(messageText(window), window.session().message().text);
    EXPECT_TRUE(messageText(window).contains(empty.path())) << messageText(window).toStdString();
}

TEST(MainWindow, ACaseWithoutCtShowsItsPagesNotTheStart) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("echo.case.json");
    {
        CaseDocument document;
        core::Entry<core::Evidence> entry;
        entry.content.kind = core::EvidenceKind::EchoCine;
        entry.content.seriesUid = "2.25.1";
        entry.content.sopInstanceUid = "2.25.2";
        entry.content.probeAngleDeg = 45.0;
        entry.revision = document.nextRevision();
        document.apply(core::SetEntry<core::Evidence>{"2.25.2", entry});
        ASSERT_TRUE(document.saveAs(file));
    }
    MainWindow window;
    showAt(window, 1280, 800);
    const auto* echo = window.findChild<EchoPage*>();
    const auto* start = window.findChild<StartPage*>();
    EXPECT_TRUE(start->isVisible());
    window.openCase(file);
    ASSERT_TRUE(waitUntil([&] { return !window.session().isLoading(); }));
    EXPECT_FALSE(start->isVisible());
    EXPECT_TRUE(echo->isVisible());
    EXPECT_EQ(window.state().page(), ViewState::Page::Echo);
    EXPECT_EQ(echo->views()[0]->evidence(), "2.25.2");
    EXPECT_TRUE(messageText(window).contains("Cannot show the pictures of the case")) << messageText(window).toStdString();
    EXPECT_TRUE(echo->views()[0]->problem().contains("its images are not in the open folder"))
        << echo->views()[0]->problem().toStdString();
    // The other pages can be gone to as well, and say what is missing.
    window.state().setPage(ViewState::Page::Course);
    QCoreApplication::processEvents();
    EXPECT_FALSE(start->isVisible());
}

TEST(MainWindow, KeysArmAMarkAndShowTheScannerAxes) {
    MainWindow window;
    showAt(window, 1280, 800);
    openAndMeasure(window.session());
    window.activateWindow();
    QTest::keyClick(&window, Qt::Key_3);
    EXPECT_EQ(window.state().armed(), core::MarkKind::Circumflex);
    EXPECT_EQ(window.state().page(), ViewState::Page::Scanner);
    EXPECT_TRUE(messageText(window).contains("circumflex artery"));
    QTest::keyClick(&window, Qt::Key_Escape);
    EXPECT_FALSE(window.state().armed());
    QTest::keyClick(&window, Qt::Key_T);
    EXPECT_EQ(window.state().page(), ViewState::Page::Appendage);
}

TEST(MainWindow, UndoAndRedoByKeys) {
    MainWindow window;
    showAt(window, 1280, 800);
    openAndMeasure(window.session());
    QTest::keyClick(&window, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(window.session().record().marks.contains(core::MarkKind::Tip));
    QTest::keyClick(&window, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(window.session().record().marks.contains(core::MarkKind::Tip));
    EXPECT_TRUE(waitUntil([&] { return window.session().measurement() != nullptr; }));
}

TEST(MainWindow, TheOstiumIsConfirmedByKeyAndTheWordsFollow) {
    MainWindow window;
    showAt(window, 1280, 800);
    openAndMeasure(window.session());
    const auto says = [&](const QString& words) {
        for (const auto* label : window.findChildren<QLabel*>())
            if (label->text().contains(words)) return true;
        return false;
    };
    EXPECT_TRUE(says("Proposed from the profile, confidence 84 %"));
    QTest::keyClick(&window, Qt::Key_C);
    EXPECT_TRUE(waitUntil([&] { return says("Confirmed by you."); }));
}

TEST(MainWindow, AFailedMeasurementIsExplainedWhereThePictureWouldBe) {
    MainWindow window;
    showAt(window, 1280, 800);
    auto engine = fixture::syntheticEngine();
    engine.measure = [](const auto&, const auto&, const auto&,
                        const auto&) -> core::Result<core::AppendageMeasurement> {
        return core::failure(core::ErrorCode::ContrastPoor,
                             "The contrast is too poor to measure: 90 HU in the atrium.");
    };
    window.session().setEngine(engine);
    window.session().open(fixture::syntheticImages());
    window.session().placeMark(core::MarkKind::Atrium, fixture::syntheticMarks().atrium);
    window.session().placeMark(core::MarkKind::Tip, fixture::syntheticMarks().tip);
    ASSERT_TRUE(waitUntil([&] { return window.session().failure().has_value(); }));
    EXPECT_EQ(messageText(window), "The contrast is too poor to measure: 90 HU in the atrium.");
    EXPECT_EQ(window.state().page(), ViewState::Page::Scanner) << "there the marks can be moved";
}
