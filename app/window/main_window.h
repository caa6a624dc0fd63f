// The workstation: evidence and marks on the left, images and depth strip in the middle, values on the right,
// the message line below.
#pragma once

#include "app/document/answers.h"
#include "app/document/session.h"
#include "app/models/view_state.h"
#include "app/settings/settings.h"

#include <QMainWindow>

class QLabel;
class QStackedWidget;
class QToolButton;

namespace gauge::app {

class CautionStrip;
class CrossSectionView;
class DepthStripView;
class LongSectionView;
class MarksPanel;
class MessageLine;
class ScannerSectionView;
class ValuePanel;

class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    explicit MainWindow(QWidget* parent = nullptr);
    ~MainWindow() override;

    Session& session() { return m_session; }
    ViewState& state() { return m_state; }
    Answers& answers() { return m_answers; }
    /// Asks for a folder and opens it.
    void chooseFolder();
    void openFolder(const QString& folder);

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    QWidget* makeLeft();
    QWidget* makeCentre();
    QWidget* makeCentreHeader();
    QWidget* makeAppendagePage();
    QWidget* makeScannerPage();
    void makeMenus();
    void makeMarkActions();
    void connectSession();
    void showPage();
    void refreshHeader();
    void onImages();
    void onMeasurement();
    void resetViews();

    // Declared before the widgets that use them.
    Session m_session;
    Answers m_answers{m_session};
    ViewState m_state;
    Settings m_settings;

    CautionStrip* m_caution = nullptr;
    QWidget* m_header = nullptr;
    QToolButton* m_appendageButton = nullptr;
    QToolButton* m_scannerButton = nullptr;
    QToolButton* m_ostiumButton = nullptr;
    QToolButton* m_landingButton = nullptr;
    QLabel* m_whichLabel = nullptr;
    QStackedWidget* m_pages = nullptr;
    QWidget* m_startPage = nullptr;
    QWidget* m_appendagePage = nullptr;
    QWidget* m_scannerPage = nullptr;
    MarksPanel* m_marks = nullptr;
    ValuePanel* m_values = nullptr;
    LongSectionView* m_longSection = nullptr;
    CrossSectionView* m_crossSection = nullptr;
    DepthStripView* m_strip = nullptr;
    std::vector<ScannerSectionView*> m_scanner;
    bool m_hadMeasurement = false;
};

} // namespace gauge::app
