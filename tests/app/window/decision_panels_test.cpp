// The right column and the course page with a whole case: what is shown is what the record and its answers say, hands on them
// become undoable edits. With GAUGE_PICTURES set to a folder, pictures are written there to be looked at.
#include "app/commands/course_commands.h"
#include "app/commands/decision_commands.h"
#include "app/drawing/pressure_course_drawing.h"
#include "app/format/decision_words.h"
#include "app/format/sizing_sentences.h"
#include "app/panels/card_panel.h"
#include "app/panels/comparison_panel.h"
#include "app/panels/comparison_table.h"
#include "app/panels/decision_editor.h"
#include "app/panels/decision_tabs.h"
#include "app/panels/moments_editor.h"
#include "app/panels/readings_editor.h"
#include "app/panels/release_editor.h"
#include "app/panels/sizes_panel.h"
#include "app/panels/sizes_table.h"
#include "app/panels/stasis_editor.h"
#include "app/panels/wrapped_tree.h"
#include "app/views/course_page.h"
#include "app/window/theme.h"
#include "tests/app/support/decision_case.h"
#include "tests/app/support/synthetic_session.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QClipboard>
#include <QDir>
#include <QLabel>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QSplitter>
#include <QTemporaryDir>
#include <QTest>
#include <QScrollBar>
#include <QTreeWidget>
#include <gtest/gtest.h>

namespace gauge {
namespace {

void picture(QWidget& widget, const QString& name) {
    const QString folder = qEnvironmentVariable("GAUGE_PICTURES");
    if (!folder.isEmpty()) widget.grab().save(QDir(folder).filePath(name + ".png"));
}

class DecisionPanelsTest : public testing::Test {
protected:
    DecisionPanelsTest() : answers(session) {
        answers.setEffort({512}, {4, 64});
        fixture::openAndMeasure(session);
        fixture::addCourse(document());
        fixture::addChart(document());
        settle();
    }
    ~DecisionPanelsTest() override { app::applyTheme(*qApp, app::Theme::Dark); }
    app::CaseDocument& document() { return session.document(); }
    void settle() {
        fixture::waitUntil([&] { return !session.isMeasuring(); });
        answers.finishNow();
        QCoreApplication::processEvents();
    }

    app::Session session;
    app::Answers answers;
    app::ViewState state;
};

TEST_F(DecisionPanelsTest, ShowTheCaseInBothThemes) {
    fixture::addScores(document());
    fixture::addRelease(document());
    document().push(std::make_unique<app::ChooseSize>(document(), answers.sizing()->sizes[1].name));
    // One column is out of date.
    document().push(std::make_unique<app::EntryCommand<core::Drawing>>(
        document(), QStringLiteral("move"), "w-clipped-0", [&] {
            core::Drawing moved = document().record().drawings.find("w-clipped-0")->second.content;
            moved.points.front().x() += 4;
            return moved;
        }()));
    settle();
    QSplitter column(Qt::Vertical);
    auto* comparison = new app::ComparisonPanel(answers, state);
    auto* tabs = new app::DecisionTabs(answers);
    column.addWidget(comparison);
    column.addWidget(tabs);
    column.resize(432, 760);
    app::CoursePage page(answers, state);
    page.resize(720, 700);
    for (const app::Theme theme : {app::Theme::Dark, app::Theme::Light}) {
        app::applyTheme(*qApp, theme);
        column.show();
        page.show();
        QCoreApplication::processEvents();
        const QString suffix = theme == app::Theme::Dark ? "-dark" : "-light";
        for (int tab = 0; tab < tabs->count(); ++tab) {
            tabs->setCurrentIndex(tab);
            QCoreApplication::processEvents();
            picture(column, QString("column-%1%2").arg(tab).arg(suffix));
        }
        for (int tab = 0; tab < page.count(); ++tab) {
            page.setCurrentIndex(tab);
            QCoreApplication::processEvents();
            picture(page, QString("course-%1%2").arg(tab).arg(suffix));
        }
        tabs->setCurrentIndex(0);
    }
    EXPECT_GT(comparison->table().cells().columnWidth(1), 100);
    // Nothing is wider than its place: the parts scroll up and down only.
    for (QScrollArea* area : page.findChildren<QScrollArea*>()) {
        EXPECT_LE(area->widget()->minimumSizeHint().width(), 720) << area->widget()->metaObject()->className();
    }
    for (QScrollArea* area : column.findChildren<QScrollArea*>()) {
        EXPECT_LE(area->widget()->minimumSizeHint().width(), 432) << area->widget()->metaObject()->className();
    }
}

TEST_F(DecisionPanelsTest, EnterInTheTableGoesToWhereTheValueWasMeasured) {
    app::ComparisonPanel panel(answers, state);
    panel.resize(500, 500);
    panel.show();
    const QModelIndex at = panel.model().find("echo/clipped", "landing/longest-diameter");
    ASSERT_TRUE(at.isValid());
    panel.table().cells().setCurrentIndex(at);
    QTest::keyClick(&panel.table().cells(), Qt::Key_Return);
    EXPECT_EQ(state.page(), app::Page::Echo);
    EXPECT_EQ(state.place().evidence, "sop-clipped-0");
    EXPECT_EQ(state.place().drawing, "w-clipped-0");
    EXPECT_EQ(state.place().frame, 7);
    panel.copyTable();
    EXPECT_EQ(QGuiApplication::clipboard()->text(), panel.model().asText());
}

TEST_F(DecisionPanelsTest, ConfirmingIsAnUndoableAct) {
    app::ComparisonPanel panel(answers, state);
    core::Drawing moved = document().record().drawings.find("w-start-0")->second.content;
    moved.points.front().x() += 4;
    document().push(std::make_unique<app::EntryCommand<core::Drawing>>(document(), QStringLiteral("move"), "w-start-0", moved));
    const QModelIndex at = panel.model().find("echo/start", "landing/longest-diameter");
    ASSERT_TRUE(at.data(app::ComparisonModel::IsStaleRole).toBool());
    EXPECT_TRUE(panel.actions().at(2)->isEnabled());
    panel.actions().at(2)->trigger();
    EXPECT_FALSE(panel.model().find("echo/start", "landing/longest-diameter").data(app::ComparisonModel::IsStaleRole).toBool());
    document().undoStack().undo();
    EXPECT_TRUE(panel.model().find("echo/start", "landing/longest-diameter").data(app::ComparisonModel::IsStaleRole).toBool());
}

TEST_F(DecisionPanelsTest, SizesShowTheAnswersChances) {
    app::SizesPanel panel(answers);
    app::SizesModel& model = panel.model();
    const core::SizingAnswer* answer = answers.sizing();
    ASSERT_TRUE(answer);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_EQ(model.rowCount(), static_cast<int>(answer->sizes.size()));
    for (int row = 0; row < model.rowCount(); ++row) {
        const core::SizeFit& fit = answer->sizes[static_cast<std::size_t>(row)];
        EXPECT_EQ(model.index(row, app::SizesModel::Fit).data(app::SizesModel::ChanceRole).toDouble(), fit.fitChance);
        EXPECT_EQ(model.index(row, app::SizesModel::Fit).data().toString(), app::chanceWords(fit.fitChance));
        EXPECT_EQ(model.index(row, app::SizesModel::Lasting).data().toString(), app::chanceWords(fit.lastingFit));
        const QString compression = model.index(row, app::SizesModel::Compression).data().toString();
        EXPECT_EQ(compression, app::compressionWords(fit.nominalMm, answer->diameter.medianMm));
        EXPECT_EQ(fit.nominalMm < answer->diameter.medianMm, compression.startsWith("narrower than the appendage by"));
        EXPECT_FALSE(compression.contains(QChar(0x2212))) << compression.toStdString();
    }
    EXPECT_TRUE(app::leadingSentence(*answer).contains("It rests on"));
}

TEST_F(DecisionPanelsTest, ChoosingASizeAndLoadingAChartAreUndoable) {
    app::SizesPanel panel(answers);
    const std::string size = panel.model().sizeAt(1);
    panel.table().setCurrentIndex(panel.model().index(1, 0));
    QTest::keyClick(&panel.table(), Qt::Key_Return);
    EXPECT_EQ(session.record().sizing->content.size, size);
    ASSERT_TRUE(answers.chosenSize());
    EXPECT_TRUE(panel.model().index(1, 0).data(app::SizesModel::IsChosenRole).toBool());
    document().undoStack().undo();
    EXPECT_TRUE(session.record().sizing->content.size.empty());
    document().undoStack().redo();
    EXPECT_EQ(session.record().sizing->content.size, size);
    // Another chart gives the size up, since it is another implant's.
    panel.loadChart(":/charts/demo-lobe-and-disc.json");
    EXPECT_TRUE(session.record().sizing->content.size.empty());
    document().undoStack().undo();
    EXPECT_EQ(session.record().sizing->content.size, size);
    panel.loadChart("/no/such/chart.json");
    EXPECT_TRUE(session.message().text.contains("Cannot read the device chart /no/such/chart.json"));
    EXPECT_EQ(session.record().sizing->content.size, size);
}

TEST_F(DecisionPanelsTest, MissingPartsAreSaidInWords) {
    app::Session empty;
    app::Answers none(empty);
    none.finishNow();
    app::SizesPanel panel(none);
    EXPECT_EQ(none.sizing(), nullptr);
    const QString all = none.missing().join(' ');
    EXPECT_TRUE(all.contains("No device chart is loaded")) << all.toStdString();
    EXPECT_TRUE(all.contains("No reading yet")) << all.toStdString();
    EXPECT_EQ(panel.model().rowCount(), 0);
    fixture::addChart(empty.document());
    none.finishNow();
    EXPECT_FALSE(none.missing().join(' ').contains("No device chart"));
    empty.document().push(std::make_unique<app::LoadChart>(empty.document(), "{}", "broken.json"));
    none.finishNow();
    EXPECT_TRUE(none.missing().join(' ').contains("broken.json")) << none.missing().join(' ').toStdString();
}

TEST_F(DecisionPanelsTest, BandsAreReadAtLowestDecisionAndHighestPressure) {
    const app::PressureBands* bands = answers.bands();
    ASSERT_TRUE(bands);
    EXPECT_EQ(bands->lowest.pressureMmHg, 6.0);
    EXPECT_EQ(bands->decision.pressureMmHg, 12.0);
    EXPECT_EQ(bands->highest.pressureMmHg, 18.0);
    EXPECT_TRUE(bands->ctPressureMeasured);
    EXPECT_LT(bands->lowest.valueMm, bands->decision.valueMm);
    EXPECT_LT(bands->decision.valueMm, bands->highest.valueMm);
}

TEST_F(DecisionPanelsTest, MomentsAreEditedByCommands) {
    app::MomentsEditor editor(answers);
    const auto before = session.record().moments.size();
    editor.addMoment();
    ASSERT_EQ(session.record().moments.size(), before + 1);
    const std::string id = editor.current();
    EXPECT_EQ(session.record().moments.at(id).content.circulation.state, id);
    auto* mean = editor.findChildren<app::NumberEdit*>().at(0);
    EXPECT_EQ(mean->accessibleName(), "Left atrial mean pressure, mmHg");
    mean->setText("11,5");
    QTest::keyClick(mean, Qt::Key_Return);
    EXPECT_EQ(session.record().moments.at(id).content.circulation.meanPressureMmHg, 11.5);
    mean->setText("many");
    QTest::keyClick(mean, Qt::Key_Return);
    EXPECT_EQ(session.record().moments.at(id).content.circulation.meanPressureMmHg, 11.5);
    EXPECT_EQ(mean->text(), "11.5");
    EXPECT_TRUE(mean->toolTip().contains("was not taken"));
    document().undoStack().undo();
    EXPECT_FALSE(session.record().moments.at(id).content.circulation.meanPressureMmHg);
    document().undoStack().undo();
    EXPECT_EQ(session.record().moments.size(), before);
    editor.choose("clipped");
    EXPECT_EQ(editor.current(), "clipped");
    editor.removeMoment();
    EXPECT_FALSE(session.record().moments.contains("clipped"));
    document().undoStack().undo();
    EXPECT_TRUE(session.record().moments.contains("clipped"));
}

TEST_F(DecisionPanelsTest, TheCourseIsInTheOrderOfStages) {
    const auto course = app::courseOf(session.record());
    ASSERT_EQ(course.size(), 3u);
    EXPECT_EQ(course[0].id, "ct-day");
    EXPECT_EQ(course[1].id, "start");
    EXPECT_EQ(course[2].id, "clipped");
    const QRectF area(0, 0, 600, 240);
    EXPECT_EQ(app::courseAt(area, course, 580, qApp->font()), "clipped");
    EXPECT_EQ(app::courseAt(area, course, 80, qApp->font()), "ct-day");
    EXPECT_EQ(app::courseAt(area, {}, 80, qApp->font()), "");
}

TEST_F(DecisionPanelsTest, ReleaseRowsStandUnderTheirViewWithTheirVerdict) {
    fixture::addRelease(document());
    document().push(std::make_unique<app::ChooseSize>(document(), answers.sizing()->sizes[2].name));
    settle();
    app::ReleaseEditor editor(answers);
    ASSERT_EQ(answers.releaseLooks().size(), 2u);
    const app::ReleaseLook& last = answers.releaseLooks().back();
    ASSERT_TRUE(last.report);
    int shown = 0;
    bool jetOutside = false;
    for (int g = 0; g < editor.rows().topLevelItemCount(); ++g) {
        QTreeWidgetItem* group = editor.rows().topLevelItem(g);
        shown += group->childCount();
        for (int i = 0; i < group->childCount(); ++i)
            if (group->child(i)->text(0).contains("jet")) {
                jetOutside = group->child(i)->text(3) == "outside";
                EXPECT_EQ(group->text(0), "45 degrees");
                EXPECT_TRUE(group->child(i)->text(2).contains("(published)")) << group->child(i)->text(2).toStdString();
            }
    }
    EXPECT_EQ(shown, static_cast<int>(last.report->rows.size()));
    EXPECT_TRUE(jetOutside);
    EXPECT_FALSE(last.changes.empty());
    core::ReleaseFinding nobody;
    nobody.value = 2.0;
    editor.addFinding(nobody); // nobody saw it: refused
    EXPECT_EQ(session.message().kind, app::Message::Kind::Error);
    EXPECT_EQ(session.record().release.at("l2").content.findings.size(), 4u);
    nobody.seenBy = "reader B";
    nobody.quantity = core::ReleaseQuantity::SeptalHole;
    editor.addFinding(nobody);
    EXPECT_EQ(session.record().release.at("l2").content.findings.size(), 5u);
    document().undoStack().undo();
    EXPECT_EQ(session.record().release.at("l2").content.findings.size(), 4u);
}

TEST_F(DecisionPanelsTest, ReleaseRowsHaveRoomForAllTheirWordsAtEveryWidth) {
    fixture::addRelease(document());
    settle();
    app::ReleaseEditor editor(answers);
    editor.show();
    app::WrappedTree& rows = editor.rows();
    int narrowest = 0, widest = 0;
    for (const int width : {1400, 900, 640, 510}) {
        editor.resize(width, 1400);
        QCoreApplication::processEvents();
        SCOPED_TRACE(width);
        EXPECT_EQ(rows.horizontalScrollBar()->maximum(), 0);
        EXPECT_EQ(rows.verticalScrollBar()->maximum(), 0) << "all rows are seen";
        EXPECT_EQ(rows.height(), rows.heightForWidth(rows.width()));
        const QTreeWidgetItem* group = rows.topLevelItem(rows.topLevelItemCount() - 1);
        const QRect last = rows.visualItemRect(group->child(group->childCount() - 1));
        EXPECT_NEAR(last.bottom(), rows.viewport()->height() - 1, 2) << "no more and no less than the rows need";
        narrowest = rows.height();
        if (width == 1400) widest = rows.height();
    }
    EXPECT_GT(narrowest, widest) << "cells wrap where it is narrow";
}

TEST_F(DecisionPanelsTest, SigningRefusesWhatMustNotBeSignedAndSaysWhy) {
    app::DecisionEditor editor(answers);
    EXPECT_FALSE(editor.sign("A. Reader"));
    EXPECT_TRUE(session.message().text.contains("The decision has no text yet"));
    EXPECT_TRUE(session.message().text.contains("No size is chosen"));
    document().push(std::make_unique<app::WriteDecision>(document(), "Close with the size chosen, after filling."));
    EXPECT_EQ(editor.text().toPlainText(), "Close with the size chosen, after filling.");
    document().push(std::make_unique<app::ChooseSize>(document(), answers.sizing()->sizes[1].name));
    settle();
    // Thrombus stops the plan.
    core::StasisFinding clot;
    clot.stage = core::Stage::AfterRepair;
    clot.thrombus = true;
    document().push(std::make_unique<app::SetStasis>(document(), "s9", clot));
    settle();
    EXPECT_FALSE(editor.sign("A. Reader"));
    EXPECT_TRUE(session.message().text.contains("The plan is stopped")) << session.message().text.toStdString();
    document().push(std::make_unique<app::RemoveStasis>(document(), "s9"));
    // A stale value too.
    core::Drawing moved = document().record().drawings.find("w-start-0")->second.content;
    moved.points.front().x() += 4;
    document().push(std::make_unique<app::EntryCommand<core::Drawing>>(document(), QStringLiteral("move"), "w-start-0", moved));
    settle();
    EXPECT_FALSE(editor.sign("A. Reader"));
    EXPECT_TRUE(session.message().text.contains("out of date")) << session.message().text.toStdString();
    document().undoStack().undo();
    settle();
    EXPECT_FALSE(editor.sign(" "));
    ASSERT_TRUE(editor.sign("A. Reader")) << session.message().text.toStdString();
    EXPECT_EQ(session.record().decision->content.signedBy, "A. Reader");
    EXPECT_EQ(session.record().decision->content.size, session.record().sizing->content.size);
    // Other words take the signature off.
    document().push(std::make_unique<app::WriteDecision>(document(), "Something else."));
    EXPECT_TRUE(session.record().decision->content.signedBy.empty());
    document().undoStack().undo();
    EXPECT_EQ(session.record().decision->content.signedBy, "A. Reader");
}

TEST_F(DecisionPanelsTest, TheCardIsWrittenAsPdf) {
    app::CardPanel panel(answers);
    QTemporaryDir folder;
    const QString path = folder.filePath("card.pdf");
    EXPECT_TRUE(panel.savePdf(path));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.read(5) == "%PDF-");
    EXPECT_FALSE(panel.savePdf("/no/such/folder/card.pdf"));
    EXPECT_TRUE(session.message().text.contains("could not be written"));
    EXPECT_TRUE(app::cardHtml(answers, true).contains("Card for the room"));
}

} // namespace
} // namespace gauge
