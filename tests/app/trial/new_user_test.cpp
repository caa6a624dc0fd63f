// A new user, without the manual: from the start page to a printed decision on the sample case, and to sections and calipers on a
// CT of a patient. Only what is on screen is used (hand.h).
#include "app/views/cross_section_view.h"
#include "app/views/depth_strip_view.h"
#include "app/views/scanner_section_view.h"
#include "app/window/page_shelf.h"
#include "tests/app/trial/hand.h"
#include "tests/app/trial/sample_stage.h"

#include <QApplication>
#include <QClipboard>
#include <QDir>
#include <QFile>
#include <QStandardPaths>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;

namespace {

constexpr double kSecondsAnAct = 5.0; // to find the next thing, and to press it; common sense, no source
constexpr double kGoalS = 300.0;      // 5 minutes

/// Where the program keeps its sample case; there already where a ready one is at hand, so that making it does not count twice.
void layReadySample() {
    const QString folder = QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).filePath(QStringLiteral("sample-case"));
    QDir(folder).removeRecursively();
    if (qEnvironmentVariable("GAUGE_SAMPLE_CASE").isEmpty()) return; // the program makes it itself, which counts as waiting
    QDir().mkpath(folder);
    static trial::SampleCopy copy;
    for (const QFileInfo& entry : QDir(copy.folder()).entryInfoList(QDir::AllEntries | QDir::NoDotAndDotDot | QDir::System))
        entry.isSymLink() ? QFile::link(entry.symLinkTarget(), QDir(folder).filePath(entry.fileName()))
                          : QFile::copy(entry.filePath(), QDir(folder).filePath(entry.fileName()));
}

template <class Widget> Widget* onScreen(MainWindow& window) {
    for (Widget* widget : window.findChildren<Widget*>())
        if (widget->isVisible()) return widget;
    return nullptr;
}

} // namespace

TEST(NewUser, GoesFromTheStartPageToAPrintedDecisionOnTheSampleCase) {
    QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
    layReadySample();
    QTemporaryDir out;
    const QString pdf = out.filePath(QStringLiteral("decision.pdf"));
    MainWindow window;
    window.resize(1440, 900);
    window.show();
    QCoreApplication::processEvents();
    trial::Hand hand(window);
    hand.look("start");
    hand.press("Try the sample case");
    ASSERT_TRUE(hand.waitUntil([&] { return window.session().measurement() && !window.isWorking(); }));
    hand.look("open");

    // What CT says: the landing zone where the implant will hold.
    auto* strip = onScreen<DepthStripView>(window);
    ASSERT_TRUE(strip && strip->landingX()) << "the appendage comes up by itself once it is measured";
    const QPoint grip(static_cast<int>(std::lround(*strip->landingX())), strip->height() / 2);
    hand.drag(*strip, grip, grip + QPoint(12, 0));
    ASSERT_TRUE(hand.waitUntil([&] { return !window.isWorking(); }));
    hand.look("landing");

    // The other evidence.
    hand.press("Echo");
    hand.look("echo");
    hand.press("Same cut");
    ASSERT_TRUE(hand.waitForWords("CT less echo"));
    hand.look("same-cut");
    hand.press("Fluoroscopy");
    hand.look("fluoroscopy");

    // The sizes: which one, and what speaks against it.
    ASSERT_TRUE(hand.waitUntil([&] { return window.answers().sizing() && !window.isWorking(); }));
    const std::string chosen = window.session().record().sizing->content.size;
    hand.clickRow("Sizes of the chart", QString::fromStdString(chosen));
    hand.press("Choose this size");
    hand.look("size");

    // The decision.
    hand.press("Course");
    hand.turnTo("Decision");
    hand.type("Decision", "Close with the chosen size; look again for thrombus before anything enters the appendage.");
    hand.type("Signed by", "A. Example");
    ASSERT_TRUE(hand.waitUntil([&] { return !window.isWorking(); }));
    hand.press("Sign the decision");
    hand.look("signed");
    ASSERT_TRUE(hand.waitForWords("Signed by A. Example"));
    hand.answerFileDialog(pdf, [&] { hand.choose("File", "Report as PDF …"); });
    ASSERT_TRUE(hand.waitForWords("The report was written to"));
    hand.look("printed");

    QFile file(pdf);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.read(5) == "%PDF-");
    EXPECT_GT(file.size(), 20'000);
    EXPECT_EQ(window.session().record().decision->content.signedBy, "A. Example");
    hand.report("Sample case, from the start page to the printed decision", kSecondsAnAct);
    EXPECT_LE(hand.acts(), 40) << "the way must stay short";
    EXPECT_LT(hand.acts() * kSecondsAnAct, kGoalS) << "what the person does, without the program's own time";
}

TEST(NewUser, GoesFromAFolderOfARealCtToSectionsAndCalipers) {
    const QString data = qEnvironmentVariable("OSTIUM_GAUGE_REAL_DATA");
    const QString folder = QDir(data).filePath(QStringLiteral("ct-heart-contrast"));
    if (data.isEmpty() || !QDir(folder).exists()) GTEST_SKIP() << "No real series in " << data.toStdString() << ": set OSTIUM_GAUGE_REAL_DATA.";
    QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
    MainWindow window;
    window.resize(1440, 900);
    window.show();
    QCoreApplication::processEvents();
    trial::Hand hand(window);
    hand.answerFileDialog(folder, [&] { hand.press("Open a folder of DICOM images …"); });
    ASSERT_TRUE(hand.waitUntil([&] { return window.session().images() && !window.isWorking(); })) << window.session().message().text.toStdString();
    hand.look("scanner");

    // Sections: the scanner's three, brought to a place by a click, scrolled by the wheel.
    ScannerSectionView* axial = nullptr;
    for (auto* view : window.findChildren<ScannerSectionView*>())
        if (view->isVisible() && !axial) axial = view;
    ASSERT_TRUE(axial) << "sections come up by themselves";
    const core::PatientPoint before = window.state().crossing();
    hand.click(*axial, axial->rect().center() + QPoint(40, 20));
    hand.wheel(*axial, axial->rect().center(), -3);
    EXPECT_GT(core::distanceMm(window.state().crossing(), before), 0.5);

    // Window by tissue, slab by mean and maximum.
    const GreyWindow usual = window.state().window();
    hand.choose("View", "Picture", "Window: soft tissue");
    EXPECT_FALSE(window.state().window() == usual);
    for (int i = 0; i < 4; ++i)
        hand.choose("View", "Picture", "Thicker slab");
    EXPECT_EQ(window.state().slab().thicknessMm, 4.0);
    hand.choose("View", "Picture", "Slab: mean or maximum");
    hand.look("slab");
    hand.choose("View", "Picture", "Window: filled blood");
    for (int i = 0; i < 4; ++i)
        hand.choose("View", "Picture", "Thinner slab");

    // A caliper: value with its uncertainty beside the line.
    hand.choose("Measure", "Draw", "Draw a straight line");
    const QPoint from = axial->rect().center() + QPoint(-60, 10), to = axial->rect().center() + QPoint(50, 40);
    hand.drag(*axial, from, to);
    ASSERT_EQ(window.session().record().drawings.size(), 1u);
    hand.look("caliper");
    const auto& values = window.session().record().values;
    const auto length = std::find_if(values.begin(), values.end(), [](const auto& v) { return v.group.starts_with("drawing/"); });
    ASSERT_NE(length, values.end());
    EXPECT_NEAR(length->estimate.value, core::distanceMm(axial->map()->patientFrom(from), axial->map()->patientFrom(to)), 1e-6);
    EXPECT_GT(length->estimate.standardUncertainty(), 0.0);

    // One key puts it into the table; the table is copied for a spreadsheet.
    hand.choose("Measure", "Put into the table", "Put the measurement into the table as landing zone width");
    ASSERT_TRUE(hand.waitUntil([&] { return !window.isWorking(); }));
    hand.press("Copy table");
    hand.look("table");
    EXPECT_TRUE(QApplication::clipboard()->text().contains(QStringLiteral("%1").arg(length->estimate.value, 0, 'f', 1)))
        << QApplication::clipboard()->text().toStdString();
    hand.report("A CT of a patient, from the start page to sections and calipers", kSecondsAnAct);
    EXPECT_LT(hand.acts() * kSecondsAnAct, kGoalS);
}
