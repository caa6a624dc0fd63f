// Manners of the window: keyboard alone, names for screen readers, the sheet of keys, help under the pointer, names hidden,
// recent cases, settings that stay, undo in words.
#include "app/commands/course_commands.h"
#include "app/document/case_file.h"
#include "app/format/core_sentences.h"
#include "app/format/language.h"
#include "app/format/moment_sentences.h"
#include "app/models/recent_cases.h"
#include "app/panels/message_line.h"
#include "app/panels/start_page.h"
#include "app/settings/library_settings.h"
#include "app/window/help_pages.h"
#include "app/window/main_window.h"
#include "app/window/meeting_view.h"
#include "app/window/page_shelf.h"
#include "app/window/settings_dialog.h"
#include "tests/app/support/decision_case.h"
#include "tests/app/support/synthetic_session.h"

#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenuBar>
#include <QPushButton>
#include <QScrollBar>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QTest>
#include <QTextBrowser>
#include <QUndoStack>
#include <gtest/gtest.h>
#include <set>

using namespace gauge;
using namespace gauge::app;
using fixture::openAndMeasure;
using fixture::waitUntil;

namespace {

class Manners : public ::testing::Test {
protected:
    MainWindow window;
    void SetUp() override {
        window.resize(1440, 900);
        window.show();
        window.activateWindow();
    }
    void open() {
        openAndMeasure(window.session());
        fixture::addCourse(window.session().document());
        fixture::addChart(window.session().document());
        QCoreApplication::processEvents();
    }
};

std::string called(const QWidget& widget) {
    return std::string(widget.metaObject()->className()) + " '" + widget.objectName().toStdString() + "'";
}

bool takesTab(const QWidget& widget) {
    return (widget.focusPolicy() & Qt::TabFocus) && widget.isVisible() && widget.isEnabled() && !widget.focusProxy();
}

QString accessibleName(QWidget& widget) {
    QAccessibleInterface* face = QAccessible::queryAccessibleInterface(&widget);
    return face ? face->text(QAccessible::Name) : QString();
}

/// What somebody who looks over the shoulder can read outside the pictures.
QString everythingSaid(const QWidget& window) {
    QStringList said{window.windowTitle()};
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        said << widget->toolTip() << widget->accessibleName();
        if (const auto* label = qobject_cast<const QLabel*>(widget)) said << label->text();
        if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) said << button->text();
        if (const auto* line = qobject_cast<const QLineEdit*>(widget)) said << line->text() << line->placeholderText();
        if (const auto* view = qobject_cast<const QAbstractItemView*>(widget); view && view->model())
            for (int row = 0; row < view->model()->rowCount(); ++row)
                for (int column = 0; column < view->model()->columnCount(); ++column)
                    for (const int role : {int(Qt::DisplayRole), int(Qt::ToolTipRole)})
                        said << view->model()->index(row, column).data(role).toString();
    }
    return said.join(QLatin1Char('\n'));
}

core::Patient somebody() {
    core::Patient patient;
    patient.name = "Zweifel^Quirina";
    patient.id = "QZ-4711";
    patient.title = "Quirina's second look";
    return patient;
}

void setPatient(CaseDocument& document) {
    document.apply(core::SetSingle<core::Patient>{core::Entry<core::Patient>{somebody(), document.nextRevision(), core::UnknownFields::object()}});
}

} // namespace

TEST_F(Manners, TabReachesEveryPartThatTakesKeys) {
    open();
    for (const PageShelf::Entry& entry : window.shelf().entries()) {
        window.state().setPage(entry.page);
        QCoreApplication::processEvents();
        std::set<const QWidget*> reached;
        const QWidget* start = &window;
        for (QWidget* at = window.nextInFocusChain(); at && at != start && reached.size() < 5000; at = at->nextInFocusChain())
            reached.insert(at);
        int takers = 0;
        for (const QWidget* widget : window.findChildren<QWidget*>())
            if (takesTab(*widget) && widget->window() == &window) {
                ++takers;
                EXPECT_TRUE(reached.contains(widget)) << entry.title.toStdString() << ": " << called(*widget);
            }
        EXPECT_GT(takers, 10) << entry.title.toStdString();
        for (const QAbstractButton* button : window.findChildren<QAbstractButton*>())
            if (button->isVisible() && button->isEnabled() && button->window() == &window && !button->objectName().startsWith("qt_")) {
                EXPECT_TRUE(button->focusPolicy() & Qt::TabFocus)
                    << entry.title.toStdString() << ": no key reaches the button " << button->text().toStdString() << " of " << called(*button->parentWidget());
            }
    }
}

TEST_F(Manners, EveryPartThatTakesKeysHasAName) {
    open();
    for (const PageShelf::Entry& entry : window.shelf().entries()) {
        window.state().setPage(entry.page);
        QCoreApplication::processEvents();
        for (QWidget* widget : window.findChildren<QWidget*>())
            if (takesTab(*widget) && widget->window() == &window && !qobject_cast<QScrollBar*>(widget)) {
                EXPECT_FALSE(accessibleName(*widget).isEmpty())
                    << entry.title.toStdString() << ": " << called(*widget) << " in " << called(*widget->parentWidget());
            }
    }
}

TEST_F(Manners, TheSheetOfKeysIsWhatTheActionsSay) {
    QStringList sheet;
    for (const KeyGroup& group : keyGroups(window))
        for (const auto& [keys, words] : group.keys) {
            EXPECT_FALSE(words.isEmpty()) << keys.toStdString();
            sheet << keys + QLatin1Char('|') + words;
        }
    QStringList actions;
    for (const QAction* action : window.findChildren<QAction*>()) {
        if (action->shortcut().isEmpty()) continue;
        QStringList keys;
        for (const QKeySequence& key : action->shortcuts())
            keys << key.toString(QKeySequence::NativeText);
        actions << keys.join(QStringLiteral(", ")) + QLatin1Char('|') + action->text().remove(QLatin1Char('&'));
    }
    sheet.sort();
    actions.sort();
    EXPECT_GT(sheet.size(), 30);
    EXPECT_EQ(sheet, actions) << (sheet.join("\n") + "\n--\n" + actions.join("\n")).toStdString();
}

TEST_F(Manners, EveryActionHasAKeyThatGermanAndFrenchKeyboardsHaveWithoutAltGr) {
    // Letters, digits (with Shift on French ones, which Qt takes into account), comma, period, plus, minus, and the keys without
    // a sign. Brackets, backslash and the like stand on the third level there, which shortcuts do not hear.
    const auto isEverywhere = [](const QKeySequence& keys) {
        const int key = keys[0].key();
        return (key >= Qt::Key_A && key <= Qt::Key_Z) || (key >= Qt::Key_0 && key <= Qt::Key_9) || key >= Qt::Key_Escape ||
               key == Qt::Key_Comma || key == Qt::Key_Period || key == Qt::Key_Plus || key == Qt::Key_Minus || key == Qt::Key_Space;
    };
    int looked = 0;
    for (const QAction* action : window.findChildren<QAction*>()) {
        const auto keys = action->shortcuts();
        if (keys.isEmpty()) continue;
        ++looked;
        EXPECT_TRUE(std::any_of(keys.begin(), keys.end(), isEverywhere)) << action->text().toStdString() << ": " << keys.front().toString().toStdString();
    }
    EXPECT_GT(looked, 50);
}

TEST_F(Manners, NoTwoMenuEntriesShareAKeyAndTheStandardOnesAreThere) {
    std::map<QString, QString> seen;
    const std::function<void(const QMenu&)> walk = [&](const QMenu& menu) {
        for (const QAction* action : menu.actions()) {
            if (action->menu()) walk(*action->menu());
            for (const QKeySequence& key : action->shortcuts()) {
                const QString text = key.toString();
                EXPECT_TRUE(!seen.contains(text) || seen[text] == action->text())
                    << text.toStdString() << ": " << seen[text].toStdString() << " and " << action->text().toStdString();
                seen[text] = action->text();
            }
        }
    };
    for (const QAction* top : window.menuBar()->actions())
        if (top->menu()) walk(*top->menu());
    for (const auto standard : {QKeySequence::Open, QKeySequence::Save, QKeySequence::Undo, QKeySequence::Print, QKeySequence::HelpContents})
        EXPECT_TRUE(seen.contains(QKeySequence(standard).toString())) << QKeySequence(standard).toString().toStdString();
}

TEST_F(Manners, F1ExplainsWhatLiesUnderThePointer) {
    open();
    const auto topicAt = [&](QWidget& there) {
        QCursor::setPos(there.mapToGlobal(there.rect().center()));
        QCoreApplication::processEvents();
        window.helpOnPointer();
        QString topic;
        for (QTextBrowser* page : window.findChildren<QTextBrowser*>()) {
            if (page->property("topic").toString().isEmpty()) continue; // a panel's own
            topic = page->property("topic").toString();
            EXPECT_FALSE(page->toPlainText().isEmpty());
            delete page->window();
            break;
        }
        return topic;
    };
    for (const auto& [page, topic] : {std::pair(Page::Appendage, "appendage"), std::pair(Page::Scanner, "marks"), std::pair(Page::Echo, "echo"),
                                      std::pair(Page::Fluoroscopy, "fluoroscopy"), std::pair(Page::Course, "course")}) {
        window.state().setPage(page);
        QCoreApplication::processEvents();
        EXPECT_EQ(topicAt(*window.shelf().entry(page)->widget).toStdString(), topic);
    }
    EXPECT_EQ(topicAt(window.messageLine()).toStdString(), "index");
}

TEST_F(Manners, UndoSaysWhatItWouldUndo) {
    open();
    const auto* undo = window.findChild<QAction*>("undo");
    const auto* redo = window.findChild<QAction*>("redo");
    ASSERT_TRUE(undo && redo);
    QUndoStack& stack = window.session().document().undoStack();
    ASSERT_GT(stack.count(), 5);
    for (int at = 0; at < stack.count(); ++at)
        EXPECT_FALSE(stack.text(at).isEmpty()) << at;
    while (stack.canUndo()) {
        EXPECT_TRUE(undo->text().contains(stack.undoText())) << undo->text().toStdString();
        stack.undo();
    }
    EXPECT_FALSE(undo->isEnabled());
    EXPECT_TRUE(redo->text().contains(stack.redoText()));
}

TEST_F(Manners, WithoutNamesNothingTellsWhoItIs) {
    QTemporaryDir folder;
    const QString path = folder.filePath("zweifel-quirina.case.json");
    open();
    setPatient(window.session().document());
    ASSERT_TRUE(window.session().saveCase(path));
    window.settings().addRecentCase(path);
    window.start().showRecent(window.settings().recentCases(), {});
    ASSERT_TRUE(waitUntil([&] { return !window.start().recent().isEmpty() && !window.start().recent().front().patient.isEmpty(); }));
    EXPECT_TRUE(window.windowTitle().contains("Quirina"));
    EXPECT_TRUE(everythingSaid(window).contains("zweifel", Qt::CaseInsensitive));
    window.state().setNamesHidden(true);
    for (const PageShelf::Entry& entry : window.shelf().entries()) {
        window.state().setPage(entry.page);
        QCoreApplication::processEvents();
        const QString said = everythingSaid(window);
        for (const char* telling : {"zweifel", "quirina", "4711"})
            EXPECT_FALSE(said.contains(QLatin1String(telling), Qt::CaseInsensitive)) << entry.title.toStdString() << ": " << telling;
    }
    window.settings().clearRecentCases();
}

TEST_F(Manners, TheTitleMarksWhatTheCaseFileDoesNotHold) {
    QTemporaryDir folder;
    open();
    const auto planned = [this] { // recorded when they come, which is a change, too
        const auto& values = window.session().record().values;
        return std::any_of(values.begin(), values.end(), [](const auto& value) { return value.group == core::kProjectionValues; });
    };
    ASSERT_TRUE(waitUntil(planned));
    ASSERT_TRUE(window.session().saveCase(folder.filePath("first.case.json")));
    QCoreApplication::processEvents();
    EXPECT_FALSE(window.isWindowModified());
    EXPECT_TRUE(window.windowTitle().contains("first[*]")) << window.windowTitle().toStdString();
    window.session().document().undoStack().undo();
    QCoreApplication::processEvents();
    EXPECT_TRUE(window.isWindowModified());
    ASSERT_TRUE(window.session().saveCase());
    QCoreApplication::processEvents();
    EXPECT_FALSE(window.isWindowModified());
}

TEST_F(Manners, TheStartPageLeavesTheRoomToItselfAndGoesWithTheFirstCase) {
    EXPECT_TRUE(window.start().isVisible());
    EXPECT_FALSE(window.isOpen());
    open();
    EXPECT_TRUE(window.isOpen());
    EXPECT_FALSE(window.start().isVisible());
    QString widths;
    for (const QWidget* part : window.findChildren<QWidget*>())
        if (part->minimumSizeHint().width() > 500)
            widths += QStringLiteral("%1 '%2' %3\n").arg(part->metaObject()->className(), part->objectName()).arg(part->minimumSizeHint().width());
    EXPECT_LE(window.minimumSizeHint().width(), 1280) << "a small screen must hold the window\n" << widths.toStdString();
}

TEST_F(Manners, NothingMovesWhenMeasuringBegins) {
    open();
    QCoreApplication::processEvents();
    const auto places = [this] {
        std::vector<std::pair<QString, QRect>> all;
        for (const QWidget* part : {static_cast<const QWidget*>(window.findChild<MessageLine*>()), static_cast<const QWidget*>(&window.shelf())})
            all.emplace_back(part->metaObject()->className(), part->geometry());
        for (const auto* label : window.findChild<MessageLine*>()->findChildren<QLabel*>(QStringLiteral("messageText")))
            all.emplace_back(QStringLiteral("its text"), label->geometry());
        return all;
    };
    const auto before = places();
    ASSERT_EQ(before.size(), 3U);
    window.session().confirmOstium();
    window.session().releaseOstium();
    ASSERT_TRUE(window.session().isMeasuring());
    QCoreApplication::sendPostedEvents();
    EXPECT_EQ(places(), before);
}

TEST_F(Manners, ACaseCanBeginWithoutImages) {
    window.beginWithoutImages();
    EXPECT_TRUE(window.isOpen());
    EXPECT_EQ(window.state().page(), Page::Course);
    EXPECT_TRUE(window.windowTitle().contains("New case")) << window.windowTitle().toStdString();
}

TEST(RecentCases, SayTitlePatientAndTimeAndWhatIsMissing) {
    QTemporaryDir folder;
    const QString path = folder.filePath("one.case.json"), gone = folder.filePath("gone.case.json"), broken = folder.filePath("broken.case.json");
    CaseDocument document;
    setPatient(document);
    ASSERT_TRUE(document.saveAs(path));
    QFile file(broken);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly) && file.write("{") == 1);
    file.close();
    const auto cases = readRecentCases({path, gone, broken});
    ASSERT_EQ(cases.size(), 3);
    EXPECT_EQ(cases[0].title, "Quirina's second look");
    EXPECT_EQ(cases[0].patient, "Zweifel, Quirina");
    EXPECT_FALSE(cases[0].when.isEmpty());
    EXPECT_TRUE(cases[0].problem.isEmpty());
    EXPECT_EQ(cases[1].title, "gone");
    EXPECT_EQ(cases[1].problem, "The file is no longer there.");
    EXPECT_EQ(cases[2].problem, "The file cannot be read.");
    EXPECT_FALSE(recentWords(cases[0], true).contains("Quirina"));
    EXPECT_FALSE(recentWords(cases[1], true).contains("gone"));
}

TEST(WithoutPaths, LeavesNoFileNameBehind) {
    const QString path = QStringLiteral("/data/Doe Jane/neck.case.json");
    EXPECT_EQ(withoutPaths("Saved as /data/Doe Jane/neck.case.json.", {path}), "Saved as ….");
    EXPECT_EQ(withoutPaths("Cannot read neck.case.json.", {path}), "Cannot read ….");
    EXPECT_EQ(withoutPaths("Cannot open /other/place/x.dcm: denied", {path}), "Cannot open … denied");
    EXPECT_EQ(withoutPaths("120 mL/min and 3/4 of it", {path}), "120 mL/min and 3/4 of it") << "no path";
}

TEST(WithMomentWords, SaysTheMomentInsteadOfItsId) {
    CaseDocument document;
    fixture::addCourse(document);
    const core::CaseRecord& record = document.record();
    EXPECT_EQ(withMomentWords(record, "The left atrial pressure of the state \"start\" (before the repair) is not known."),
              "The left atrial pressure of the state \"Before the repair\" (before the repair) is not known.");
    EXPECT_EQ(withMomentWords(record, "Fell (after the repair, state \"clipped\")."), "Fell (after the repair, state \"After the repair\").");
    EXPECT_EQ(withMomentWords(record, "2D echo (state \"clipped\") and CT (state \"CT\") differ"),
              "2D echo (state \"After the repair\") and CT (state \"CT, pressure unknown\") differ");
    EXPECT_EQ(withMomentWords(record, "No moment here."), "No moment here.");
}

TEST(WithMomentWords, LeavesASentenceThatCanBeTranslated) {
    const ScreenLanguage german(QStringLiteral("de"));
    CaseDocument document;
    fixture::addCourse(document);
    const std::string shown = withMomentWords(document.record(), "The state \"clipped\" was read at 8 mmHg; the chart wants at least 10 mmHg.");
    const auto known = knownSentence(shown);
    ASSERT_TRUE(known) << shown;
    EXPECT_FALSE(known->contains(QLatin1String("was read"))) << known->toStdString();
}

TEST(SettingsDialog, SetsAServerOfTheTeamAndKeepsNoPassword) {
    Settings settings;
    ViewState state;
    {
        SettingsDialog dialog(settings, state);
        dialog.show();
        auto* kind = dialog.findChild<QComboBox*>("libraryKind");
        auto* host = dialog.findChild<QLineEdit*>("libraryHost");
        ASSERT_TRUE(kind && host);
        dialog.parts().setCurrentIndex(2);
        EXPECT_FALSE(host->isVisible()) << "a file of one's own has none";
        kind->setCurrentIndex(1);
        EXPECT_TRUE(host->isVisible());
        EXPECT_FALSE(dialog.findChild<QLineEdit*>("libraryFile")->isVisible());
        for (const QLineEdit* line : dialog.findChildren<QLineEdit*>())
            EXPECT_EQ(line->echoMode(), QLineEdit::Normal) << "no field takes a password";
        auto* attempt = dialog.findChild<QPushButton*>("tryLibrary");
        auto* outcome = dialog.findChild<QLabel*>("libraryOutcome");
        attempt->click();
        EXPECT_TRUE(outcome->text().startsWith("Name the server's host first")) << outcome->text().toStdString();
        const auto type = [&](const char* name, const QString& text) {
            auto* line = dialog.findChild<QLineEdit*>(name);
            line->setText(text);
            emit line->editingFinished();
        };
        type("libraryHost", "127.0.0.1");
        type("libraryDatabase", "team");
        type("libraryUser", "reader");
        dialog.findChild<QSpinBox*>("libraryPort")->setValue(1); // nobody listens there
        auto* tls = dialog.findChild<QComboBox*>("libraryTls");
        tls->setCurrentIndex(tls->findData("verify-full"));
        attempt->click();
        ASSERT_TRUE(waitUntil([&] { return outcome->text().startsWith("Cannot open the case library at team on 127.0.0.1"); }))
            << outcome->text().toStdString();
    }
    LibraryPlace expected;
    expected.kind = LibraryPlace::Kind::Postgres;
    expected.host = "127.0.0.1";
    expected.port = 1;
    expected.database = "team";
    expected.user = "reader";
    expected.tlsMode = "verify-full";
    EXPECT_EQ(libraryPlaceOfSettings(), expected);
    { // and the dialog shows what is kept, and goes back to a file
        SettingsDialog dialog(settings, state);
        EXPECT_EQ(dialog.findChild<QLineEdit*>("libraryHost")->text(), "127.0.0.1");
        EXPECT_EQ(dialog.findChild<QSpinBox*>("libraryPort")->value(), 1);
        dialog.findChild<QComboBox*>("libraryKind")->setCurrentIndex(0);
        EXPECT_EQ(libraryPlaceOfSettings().kind, LibraryPlace::Kind::Sqlite);
    }
    QSettings().clear();
}

TEST(SettingsDialog, KeepsEveryChoice) {
    Settings settings;
    ViewState state;
    QTemporaryDir folder;
    {
        SettingsDialog dialog(settings, state);
        const auto choose = [&](const char* name, const QVariant& value) {
            auto* box = dialog.findChild<QComboBox*>(name);
            ASSERT_TRUE(box) << name;
            box->setCurrentIndex(box->findData(value));
        };
        const auto type = [&](const char* name, const QString& text) {
            auto* line = dialog.findChild<QLineEdit*>(name);
            ASSERT_TRUE(line) << name;
            line->setText(text);
            emit line->editingFinished();
        };
        choose("language", "de");
        choose("theme", "light");
        choose("textSize", 115);
        type("author", "A. Example");
        type("role", "imaging cardiologist");
        type("unsavedFolder", folder.path());
        type("chart", QStringLiteral(GAUGE_SOURCE_DIR "/resources/charts/demo-plug.json"));
        type("libraryFile", folder.filePath("team.cases"));
        dialog.findChild<QCheckBox*>("namesHidden")->setChecked(true);
        dialog.findChild<QSpinBox*>("dpi")->setValue(300);
        EXPECT_TRUE(state.namesHidden());
        // A chart that cannot be used is told at once, and not kept.
        type("chart", folder.filePath("none.json"));
    }
    const Settings read;
    EXPECT_EQ(read.language(), "de");
    EXPECT_EQ(read.theme(), "light");
    EXPECT_EQ(read.textPercent(), 115);
    EXPECT_EQ(read.author(), "A. Example");
    EXPECT_EQ(read.role(), "imaging cardiologist");
    EXPECT_EQ(read.unsavedFolder(), folder.path());
    EXPECT_EQ(unsavedFolder(), folder.path());
    EXPECT_TRUE(read.defaultChart().endsWith("demo-plug.json"));
    EXPECT_TRUE(read.namesHidden());
    EXPECT_EQ(read.dpi(), 300);
    {
        MainWindow window;
        window.session().setEngine(fixture::syntheticEngine());
        window.session().open(fixture::syntheticImages());
        ASSERT_TRUE(window.session().record().sizing) << "a new case begins with the chart of the settings";
        EXPECT_EQ(window.session().record().sizing->content.chartSource, "demo-plug.json");
    }
    QSettings().clear();
}
