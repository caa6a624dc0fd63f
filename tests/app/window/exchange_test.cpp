// What comes in from others and goes out to them, through the window: a structured report that is opened or dropped.
#include "app/commands/images_commands.h"
#include "app/panels/message_line.h"
#include "app/window/main_window.h"
#include "dicomio/report/report_from_record.h"
#include "dicomio/report/structured_report.h"
#include "tests/app/support/decision_case.h"
#include "tests/app/support/synthetic_session.h"

#include <QAbstractButton>
#include <QApplication>
#include <QMenuBar>
#include <QMessageBox>
#include <QTemporaryDir>
#include <QTimer>
#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::app;
using testing::HasSubstr;

namespace {

/// A report of an invented patient with the readings of a whole course.
QString reportIn(const QTemporaryDir& folder) {
    CaseDocument document;
    setPatient(document, {"Tern^Ida", "INV-31", "19480311", "F", "", {}});
    fixture::addCtValues(document);
    fixture::addCourse(document);
    dicomio::ReportSources sources;
    sources.study.studyUid = "2.25.5001";
    sources.time = "2031-02-04T12:05:06+01:00";
    sources.device = {{}, "Ostium Gauge", "Ostium Gauge", {}, "0"};
    sources.cautions = {"For planning by licensed persons."};
    const auto content = dicomio::reportFromRecord(document.record(), sources);
    const QString file = folder.filePath("report.dcm");
    EXPECT_TRUE(content && dicomio::writeStructuredReport(*content, file.toStdString()));
    return file;
}

QString said(MainWindow& window) {
    return window.findChild<MessageLine*>()->text();
}

/// Answers the question about another patient as soon as it is asked, and keeps its words.
void answer(QMessageBox::ButtonRole role, QString& question) {
    QTimer::singleShot(0, qApp, [role, &question] {
        auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        if (!box) return;
        question = box->text() + '\n' + box->informativeText();
        for (QAbstractButton* button : box->buttons())
            if (box->buttonRole(button) == role) return button->click();
    });
}

} // namespace

TEST(ReadReportInWindow, TakesReadingsOfAFileThatIsOpened) {
    const QTemporaryDir folder;
    MainWindow window;
    window.show();
    window.openPath(reportIn(folder));
    EXPECT_GT(window.session().record().readings.size(), 8u);
    EXPECT_THAT(said(window).toStdString(), HasSubstr("readings were taken from the report of 2031-02-04"));
    EXPECT_THAT(said(window).toStdString(), HasSubstr("Whether it is the same patient could not be checked."));
    EXPECT_EQ(window.session().record().patient->content.id, "INV-31");
    const auto* list = window.findChild<QMessageBox*>("leftOut");
    ASSERT_TRUE(list);
    EXPECT_THAT(list->detailedText().toStdString(), HasSubstr("the comparison table has no row for it"));
    window.session().document().undoStack().undo();
    EXPECT_TRUE(window.session().record().readings.empty());
}

TEST(ReadReportInWindow, AsksBeforeItTakesThoseOfAnotherPatient) {
    const QTemporaryDir folder;
    const QString file = reportIn(folder);
    MainWindow window;
    window.show();
    setPatient(window.session().document(), {"Heron^Max", "INV-32", "19520101", "M", "", {}});
    QString question;
    answer(QMessageBox::RejectRole, question);
    window.openPath(file);
    EXPECT_THAT(question.toStdString(), HasSubstr("seems to be about another patient"));
    EXPECT_THAT(question.toStdString(), HasSubstr("“Heron, Max” in the case and “Tern, Ida” in the report"));
    EXPECT_TRUE(window.session().record().readings.empty());

    window.state().setNamesHidden(true);
    answer(QMessageBox::AcceptRole, question);
    window.openPath(file);
    EXPECT_THAT(question.toStdString(), testing::Not(HasSubstr("Tern")));
    EXPECT_FALSE(window.session().record().readings.empty());
}

TEST(ReadReportInWindow, SaysWhatIsWrongWithAFile) {
    const QTemporaryDir folder;
    MainWindow window;
    window.show();
    window.readReport(folder.filePath("none.dcm"));
    EXPECT_THAT(said(window).toStdString(), HasSubstr("Cannot read the report in none.dcm"));
}

// Each way out has its place in the menu.
TEST(FileMenu, OffersEveryWayInAndOut) {
    MainWindow window;
    QStringList words;
    for (const QAction* menu : window.menuBar()->actions())
        if (menu->menu())
            for (const QAction* action : menu->menu()->actions())
                words << action->text().remove('&');
    for (const char* expected : {"Read a report into the table …", "Values as CSV or JSON …", "Export without identity …", "Report as PDF …",
                                 "All files of the report …", "Print …", "Copy table", "Case library …"})
        EXPECT_TRUE(words.contains(QString::fromUtf8(expected))) << expected;
}
