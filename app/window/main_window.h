// The workstation: evidence and marks on the left, one page of images in the middle, values and sizes on the right, the
// message line below. Others' pages and panels are put in place in main_window.cpp, one line each:
//
//   makePages()  m_shelf->add(Page::…, title, tip, key, new SomePage(m_session, m_state))
//   makeLeft()   layout->addWidget(new SomePanel(…))      makeRight()  m_right->addWidget(new SomePanel(…))
//
// What a page or panel can do is in its actions(): a page's go to the menu "Measure" while it is up, a panel's are put
// into their menus in main_window_menus.cpp.
#pragma once

#include "app/document/answers.h"
#include "app/document/picture_drawings.h"
#include "app/document/session.h"
#include "app/document/view_planner.h"
#include "app/models/view_state.h"
#include "app/settings/settings.h"

#include <QMainWindow>
#include <memory>

class QMenu;
class QSplitter;
class QStackedWidget;

namespace gauge::app {

class AppendagePage;
class CautionStrip;
class ComparisonPanel;
class DecisionTabs;
class FirstPictureView;
class LibraryWindow;
class MarksPanel;
class MeetingView;
class MessageLine;
class PageShelf;
class ScannerPage;
class StartPage;

class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    explicit MainWindow(QWidget* parent = nullptr);
    ~MainWindow() override;

    Session& session() { return m_session; }
    ViewState& state() { return m_state; }
    MeetingView& meeting() { return *m_meeting; }
    Answers& answers() { return m_answers; }
    PageShelf& shelf() { return *m_shelf; }
    /// Asks for a folder and opens it.
    void chooseFolder();
    /// Opens a folder of images.
    void openFolder(const QString& path);
    /// Offers the readings of a structured report to the open case.
    void readReport(const QString& path);
    /// Folder of images, case file or report: what a path, a drop or the command line names.
    void openPath(const QString& path);
    /// Opens a case file, and remembers it among the recent ones.
    void openCase(const QString& path);
    void showSettings();
    /// Makes the sample case in the person's data folder, unless it is there, and opens it.
    void openSampleCase();
    /// Shows the pages without any images: readings are typed in.
    void beginWithoutImages();
    bool isOpen() const; ///< a case is; else the start page is up
    /// Something is being read, measured or judged.
    bool isWorking() const;
    /// Opens the page of help on what lies under the pointer; on what has the keyboard where the pointer is elsewhere.
    void helpOnPointer();
    MessageLine& messageLine() { return *m_message; }
    StartPage& start() { return *m_start; }
    Settings& settings() { return m_settings; }

signals:
    void themeChanged(const QString& setting);

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    // main_window.cpp: what is where
    QWidget* makeLeft();
    QWidget* makeRight();
    void makePages();
    void setHelpTopics();
    void connectSession();
    void onImages();
    void onMeasurement();
    void resetViews();

    // main_window_menus.cpp
    void makeMenus();
    void makeFileMenu();
    void makeEditMenu();
    void makeViewMenu();
    void makeMeasureMenu();
    void makeHelpMenu();
    void showTools();

    // main_window_cases.cpp
    void addCaseActions(QMenu& file);
    void fillRecent(QMenu& menu);
    void chooseCase();
    void saveCase();
    void saveCaseAs();
    void findImages();

    QString startFolder() const;

    // main_window_start.cpp: before a case is open, and how a new one begins
    void connectStart();
    void refreshOpen();
    void loadUsualChart();

    // main_window_files.cpp
    void savePicture();
    void addReportActions(QMenu& file);
    void reportAsPdf();
    void reportAsFiles();
    void printReport();

    // main_window_exchange.cpp: reports of others in, tables and images without identity out
    void addExchangeActions(QMenu& file);
    void chooseReport();
    void saveValues();
    void exportWithoutIdentity();

    // main_window_state.cpp: title, theme, room of the parts
    void makeMeeting();
    void refreshMode();
    void refreshTitle();
    void useTheme(const QString& setting);
    void useTextSize(int percent);
    bool mayLeaveCase();
    void setLeastWidths();
    void restorePlaces();
    void keepPlaces();

    // Declared before the widgets that use them.
    Session m_session;
    EvidenceImages m_images{m_session};
    PictureDrawings m_pictureDrawings{m_session, m_images};
    ViewPlanner m_planner{m_session};
    Answers m_answers{m_session};
    ViewState m_state;
    Settings m_settings;
    JobRunner m_exportJob;
    std::unique_ptr<LibraryWindow> m_library; ///< goes before the session that it writes

    JobRunner m_sample;
    CautionStrip* m_caution = nullptr;
    MessageLine* m_message = nullptr;
    QWidget* m_leftSide = nullptr;
    PageShelf* m_shelf = nullptr;
    StartPage* m_start = nullptr;
    FirstPictureView* m_first = nullptr;
    AppendagePage* m_appendage = nullptr;
    ScannerPage* m_scanner = nullptr;
    MarksPanel* m_marks = nullptr;
    ComparisonPanel* m_values = nullptr;
    DecisionTabs* m_decision = nullptr;
    MeetingView* m_meeting = nullptr;
    QStackedWidget* m_whole = nullptr; ///< the reading room or the meeting
    bool m_wasMaximized = false;       ///< before the meeting
    QSplitter* m_body = nullptr;
    QSplitter* m_left = nullptr;
    QSplitter* m_right = nullptr;
    QMenu* m_measureMenu = nullptr;
    QList<QAction*> m_pageTools; ///< of the page that is up, in the menu "Measure"
    bool m_hadMeasurement = false;
    bool m_begun = false; ///< without images
};

} // namespace gauge::app
