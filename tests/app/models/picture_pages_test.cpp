// The pages of echo and fluoroscopy by synthetic mouse and keys, on cines written down from formulas.
#include "app/commands/evidence_commands.h"
#include "app/format/drawing_words.h"
#include "app/panels/evidence_panel.h"
#include "app/views/echo_page.h"
#include "app/views/fluoro_page.h"
#include "tests/app/models/picture_pages.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace gauge;
using fixture::at;
using fixture::drag;
using fixture::isOpen;
using fixture::kMousePx;
using fixture::Pages;

TEST(EchoPage, ShowsTheViewsOfAMomentInTheOrderOfTheirAngles) {
    Pages pages;
    app::EchoPage page(pages.session, pages.state, pages.images);
    page.resize(1200, 900);
    EXPECT_EQ(page.moment(), "before-repair");
    EXPECT_EQ(page.views()[0]->evidence(), "2.25.200");
    EXPECT_EQ(page.views()[2]->evidence(), "2.25.202");
    EXPECT_EQ(page.views()[3]->evidence(), "2.25.203") << "an unknown angle comes last";
    app::Place place;
    place.page = app::Page::Echo;
    place.evidence = "2.25.201";
    place.frame = 7;
    ASSERT_TRUE(isOpen(*page.views()[1]));
    pages.state.goTo(place);
    EXPECT_EQ(page.activeView(), page.views()[1]);
    EXPECT_EQ(page.activeView()->player().frame(), 7);
}

TEST(EchoPage, CinesRunInStep) {
    Pages pages;
    app::EchoPage page(pages.session, pages.state, pages.images);
    for (const auto* view : page.views())
        ASSERT_TRUE(isOpen(*view));
    page.views()[0]->player().setFrame(11);
    for (const auto* view : page.views())
        EXPECT_EQ(view->player().frame(), 11);
}

namespace {

/// A line from the middle of the view by so many screen pixels to both sides, by the keyboard alone.
void drawByKeys(app::CineView& view, int halfPx, bool upright) {
    const Qt::Key back = upright ? Qt::Key_Up : Qt::Key_Left, on = upright ? Qt::Key_Down : Qt::Key_Right;
    constexpr int kStepPx = 8; // of an arrow; with Shift 1
    const auto go = [&](Qt::Key key, int pixels) {
        for (int i = 0; i < pixels / kStepPx; ++i)
            QTest::keyClick(&view, key);
        for (int i = 0; i < pixels % kStepPx; ++i)
            QTest::keyClick(&view, key, Qt::ShiftModifier);
    };
    go(back, halfPx);
    QTest::keyClick(&view, Qt::Key_Space);
    go(on, 2 * halfPx);
    QTest::keyClick(&view, Qt::Key_Space);
}

} // namespace

TEST(EchoPage, FourViewsInARowDoNotKeepTheWindowWide) {
    Pages pages;
    pages.session.document().push(std::make_unique<app::ChangeProbeAngle>(pages.session.document(), "2.25.203", 135.0));
    QWidget window; // only a page within another asks instead of forcing
    window.resize(1300, 800);
    app::EchoPage page(pages.session, pages.state, pages.images, &window);
    page.resize(1300, 800);
    window.show();
    QCoreApplication::processEvents();
    ASSERT_TRUE(page.views()[3]->isVisible());
    EXPECT_EQ(page.views()[3]->y(), page.views()[0]->y()) << "there is room for all four beside each other";
    EXPECT_LT(page.minimumSizeHint().width(), 500);
    page.resize(500, 800);
    QCoreApplication::processEvents();
    EXPECT_GT(page.views()[3]->y(), page.views()[0]->y());
    EXPECT_LE(page.views()[3]->mapTo(&page, QPoint(page.views()[3]->width(), 0)).x(), 500);
}

TEST(EchoPage, OnePassMeasuresTheFourViewsFromTheKeyboard) {
    Pages pages;
    pages.session.document().push(std::make_unique<app::ChangeProbeAngle>(pages.session.document(), "2.25.203", 135.0));
    app::EchoPage page(pages.session, pages.state, pages.images);
    page.resize(900, 900);
    page.show();
    for (const auto* view : page.views())
        ASSERT_TRUE(isOpen(*view));
    page.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    page.activeView()->setFocus();
    QTest::keyClick(page.activeView(), Qt::Key_M);
    ASSERT_TRUE(page.pass().isActive());
    EXPECT_TRUE(page.instruction().contains("ostium width"));

    // An ellipse with diameters 30 and 20 mm, the longer one at 45 degrees: chords at 0, 45, 90 and 135 degrees.
    const double oblique = 1.0 / std::sqrt(0.5 / (30.0 * 30.0) + 0.5 / (20.0 * 20.0));
    std::vector<double> drawnMm;
    for (const double mm : {oblique, 30.0, oblique, 20.0}) {
        const QString view = page.pass().view();
        const int frame = page.activeView()->player().frame();
        QTest::keyClick(page.activeView(), Qt::Key_Period);
        QTest::keyClick(page.activeView(), Qt::Key_Period);
        QTest::keyClick(page.activeView(), Qt::Key_Comma);
        EXPECT_EQ(page.activeView()->player().frame(), frame + 1) << "one of the three keys goes back";
        for (const auto& [role, share, upright] :
             {std::tuple(core::DrawingRole::OstiumWidth, 0.8, false), std::tuple(core::DrawingRole::LandingWidth, 1.0, false),
              std::tuple(core::DrawingRole::Depth, 0.6, true)}) {
            ASSERT_TRUE(fixture::waitUntil([&, role = role] { return page.pass().role() == role && page.pass().view() == view; }));
            EXPECT_TRUE(pages.state.tool()) << "the tool is in hand again";
            QCoreApplication::processEvents(); // the view that is shown alone takes its room
            const double pixelsPerMm = page.activeView()->screenFromPixel().m11() / fixture::kEchoPixelMm;
            const int halfPx = static_cast<int>(std::lround(0.5 * share * mm * pixelsPerMm));
            if (role == core::DrawingRole::LandingWidth) drawnMm.push_back(2 * halfPx / pixelsPerMm);
            drawByKeys(*page.activeView(), halfPx, upright);
        }
        ASSERT_TRUE(fixture::waitUntil([&] { return !page.pass().isActive() || page.pass().view() != view; }));
    }
    EXPECT_FALSE(page.pass().isActive()) << "after the fourth view";
    EXPECT_FALSE(pages.state.tool());
    ASSERT_EQ(pages.record().drawings.size(), 12U);
    EXPECT_EQ(std::get<core::PictureSite>(pages.record().drawings.at("1").content.site).frame, 1);

    pages.session.pictureValues().refresh();
    ASSERT_TRUE(pages.echoValue("landing/longest-diameter"));
    // The ellipse through four chords that lie on one gives it back; ends are set to a pixel of the screen, and the program
    // allows for readings that stray a little.
    constexpr double kEllipseMm = 0.6;
    EXPECT_NEAR(pages.echoValue("landing/longest-diameter")->value, 30.0, kEllipseMm);
    EXPECT_NEAR(pages.echoValue("landing/shortest-diameter")->value, 20.0, kEllipseMm);
    EXPECT_NEAR(pages.echoValue("landing/direction")->value, 45.0, 3.0);
    EXPECT_NEAR(pages.echoValue("ostium/longest-diameter")->value, 24.0, kEllipseMm);
    EXPECT_NEAR(pages.echoValue("depth")->value, 18.0, 0.2);
    EXPECT_EQ(page.dial().face().ovals().size(), 2U) << "ostium and landing zone";
    EXPECT_EQ(page.dial().face().spokes().size(), 8U);
    const QString text = page.dial().text();
    EXPECT_TRUE(text.contains("longest diameter"));
    for (const double mm : drawnMm)
        EXPECT_TRUE(text.contains(QString::number(mm, 'f', 1))) << mm << " in " << text.toStdString();
    for (const char* angle : {"0°", "45°", "90°", "135°"})
        EXPECT_TRUE(text.contains(angle)) << angle;

    // Each length is a step of its own.
    pages.session.document().undoStack().undo();
    EXPECT_EQ(pages.record().drawings.size(), 11U);
}

TEST(EchoPage, ThePassTakesABegunEndBackLeavesLengthsOutAndEnds) {
    Pages pages;
    app::EchoPage page(pages.session, pages.state, pages.images);
    page.resize(900, 900);
    page.show();
    for (const auto* view : page.views())
        ASSERT_TRUE(isOpen(*view));
    const auto key = [&](Qt::Key k) { QTest::keyClick(page.activeView(), k); };
    page.actions().front()->trigger();
    key(Qt::Key_Space);
    ASSERT_TRUE(page.activeView()->isDrawing());
    key(Qt::Key_Period);
    EXPECT_EQ(page.activeView()->player().frame(), 0) << "the frame stays while a length is begun";
    EXPECT_TRUE(pages.session.message().text.contains("Finish the drawing"));
    key(Qt::Key_Escape);
    EXPECT_FALSE(page.activeView()->isDrawing());
    EXPECT_TRUE(page.pass().isActive()) << "Escape gave up the begun end, not the pass";
    key(Qt::Key_S);
    EXPECT_EQ(page.pass().role(), core::DrawingRole::LandingWidth);
    key(Qt::Key_Return);
    EXPECT_EQ(page.pass().viewNumber(), 2);
    key(Qt::Key_Escape);
    EXPECT_FALSE(page.pass().isActive());
    EXPECT_TRUE(pages.record().drawings.empty());
}

TEST(FluoroPage, NamesTheAnglesAndTheMissingScale) {
    Pages pages;
    app::FluoroPage page(pages.session, pages.state, pages.images);
    page.resize(1000, 900);
    page.show();
    ASSERT_TRUE(isOpen(page.view()));
    EXPECT_TRUE(page.text().contains("RAO 30, CRA 20")) << page.text().toStdString();
    EXPECT_TRUE(page.text().contains("The file tells no scale. No scale: calibrate by hand")) << page.text().toStdString();
    EXPECT_TRUE(page.text().contains("CT predicts nothing: it is not measured."));
    page.view().startCalibration(app::Calibration::CatheterWidth);
    QTest::mouseClick(&page.view(), Qt::LeftButton, {}, at(page.view(), 39.5, 50));
    QTest::mouseClick(&page.view(), Qt::LeftButton, {}, at(page.view(), 59.5, 50));
    page.view().finishCalibration(4.0);
    ASSERT_TRUE(pages.record().scales.contains("2.25.300"));
    page.view().armLine(core::DrawingRole::LandingWidth);
    drag(page.view(), at(page.view(), 10, 20), at(page.view(), 90, 20));
    // 80 pixels of 4/20 mm; the mouse hits whole pixels of the screen, at each of the four ends.
    constexpr double kMouseMm = 0.3;
    const QString drawn = page.text().section("Drawn here: ", 1).section(' ', 0, 0);
    EXPECT_NEAR(drawn.toDouble(), 16.0, kMouseMm) << page.text().toStdString();
}

TEST(EvidencePanel, ChangesStageAndAngleOfAllThatIsSelectedInOneStep) {
    Pages pages;
    app::EvidencePanel panel(pages.session, pages.state);
    panel.resize(270, 700);
    panel.select("2.25.200");
    panel.select("2.25.201");
    panel.setStage(core::Stage::AfterRepair);
    EXPECT_EQ(pages.record().evidence.at("2.25.200").content.stage, core::Stage::AfterRepair);
    EXPECT_EQ(pages.record().evidence.at("2.25.201").content.stage, core::Stage::AfterRepair);
    EXPECT_EQ(pages.session.document().undoStack().count(), 1);
    pages.session.document().undoStack().undo();
    EXPECT_EQ(pages.record().evidence.at("2.25.200").content.stage, core::Stage::BeforeRepair);
}
