// The simulated radiograph as a view: turned by hand, by keys and by typed angles; beside a frame at the frame's own angles.
#include "app/document/picture_drawings.h"
#include "app/views/fluoro_page.h"
#include "app/views/radiograph_view.h"
#include "core/fluoro/c_arm_place.h"
#include "tests/app/support/synthetic_case.h"
#include "tests/app/support/synthetic_pictures.h"
#include "tests/app/support/synthetic_session.h"

#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace gauge;

namespace {

// Half a pixel of the smallest picture that is judged.
constexpr double kHalfPixel = 0.5;

class RadiographViewTest : public ::testing::Test {
protected:
    app::Session session;
    app::ViewState state;

    void makeReady(app::RadiographView& view, int side = 300) {
        view.resize(side, side);
        view.show();
        fixture::openAndMeasure(session);
        ASSERT_TRUE(sharp(view));
    }
    static bool sharp(const app::RadiographView& view) {
        return fixture::waitUntil([&] { return view.isSharp() && !view.isWorking(); });
    }
    static void dragFrom(QWidget& widget, Qt::MouseButton button, const QPoint& from, const QPoint& to) {
        QTest::mousePress(&widget, button, {}, from);
        QMouseEvent move(QEvent::MouseMove, QPointF(to), widget.mapToGlobal(QPointF(to)), Qt::NoButton, button, Qt::NoModifier);
        QCoreApplication::sendEvent(&widget, &move);
        QTest::mouseRelease(&widget, button, {}, to);
    }
    /// Angles at which the picture that is shown was made.
    static core::CArmAngles anglesOfPicture(const app::RadiographView& view) {
        const core::PinholeCamera& camera = view.picture()->camera;
        return core::anglesOf(camera.columnStep.cross(-camera.rowStep));
    }
    static int pixelsNear(const QImage& image, const QColor& colour) {
        int count = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x) {
                const QColor c = image.pixelColor(x, y);
                count += std::abs(c.red() - colour.red()) + std::abs(c.green() - colour.green()) + std::abs(c.blue() - colour.blue()) < 40;
            }
        return count;
    }
};

} // namespace

TEST_F(RadiographViewTest, IsSimulatedAtItsAnglesWithTheLandingZoneInTheMiddle) {
    app::RadiographView view(session, state);
    makeReady(view);
    EXPECT_NEAR(anglesOfPicture(view).primaryDeg, view.angles().primaryDeg, 1e-6);
    EXPECT_NEAR(anglesOfPicture(view).secondaryDeg, view.angles().secondaryDeg, 1e-6);
    const auto centre = view.picture()->camera.project(session.landing()->section.center).value();
    EXPECT_NEAR(centre.x(), 0.5 * (view.picture()->camera.columns - 1), kHalfPixel);
    EXPECT_NEAR(centre.y(), 0.5 * (view.picture()->camera.rows - 1), kHalfPixel);
    const QPointF middle = view.screenFromPixel().map(QPointF(centre.x(), centre.y()));
    EXPECT_NEAR(middle.x(), 150.0, 1.0);
    EXPECT_TRUE(view.note().contains("Distances assumed: source to isocentre 750 mm, to detector 1100 mm.")) << view.note().toStdString();
}

TEST_F(RadiographViewTest, ShowsOstiumAndLandingZoneInTheirColours) {
    app::RadiographView view(session, state);
    makeReady(view);
    const QImage image = view.grab().toImage();
    EXPECT_GT(pixelsNear(image, app::colourOf(app::Role::Ostium)), 40);
    EXPECT_GT(pixelsNear(image, app::colourOf(app::Role::Landing)), 30);
    EXPECT_EQ(pixelsNear(image, app::colourOf(app::Role::Circumflex)), 0) << "it is not marked";
    EXPECT_EQ(pixelsNear(image, app::colourOf(app::Role::Crossing)), 0);
    session.placeMark(core::MarkKind::Circumflex, *fixture::syntheticMarks().circumflex);
    EXPECT_GT(pixelsNear(view.grab().toImage(), app::colourOf(app::Role::Circumflex)), 10);
    view.setLines([&] { return std::vector<app::PatientLine>{{app::Role::Crossing, {session.landing()->section.center}, false, "x"}}; });
    EXPECT_GT(pixelsNear(view.grab().toImage(), app::colourOf(app::Role::Crossing)), 5);
}

TEST_F(RadiographViewTest, TheHeartFollowsTheHand) {
    app::RadiographView view(session, state);
    makeReady(view);
    view.setAngles({0.0, 0.0});
    dragFrom(view, Qt::LeftButton, {150, 150}, {200, 150});
    EXPECT_NEAR(view.angles().primaryDeg, -20.0, 1e-9) << "the chest to the picture's right: seen from the patient's right";
    dragFrom(view, Qt::LeftButton, {150, 150}, {150, 175});
    EXPECT_NEAR(view.angles().secondaryDeg, 10.0, 1e-9) << "the chest downwards: seen from the head";
    ASSERT_TRUE(sharp(view));
    EXPECT_NEAR(anglesOfPicture(view).secondaryDeg, 10.0, 1e-6);
}

TEST_F(RadiographViewTest, KeysMoveTheCArmAndHomeComesBack) {
    app::RadiographView view(session, state);
    makeReady(view);
    view.setAngles({-30.0, 20.0});
    QSignalSpy changed(&view, &app::RadiographView::anglesChanged);
    QTest::keyClick(&view, Qt::Key_Right);
    QTest::keyClick(&view, Qt::Key_Up);
    EXPECT_EQ(view.angles(), (core::CArmAngles{-29.0, 21.0}));
    QTest::keyClick(&view, Qt::Key_Left, Qt::ShiftModifier);
    QTest::keyClick(&view, Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(view.angles(), (core::CArmAngles{-39.0, 11.0}));
    QTest::keyClick(&view, Qt::Key_Home);
    EXPECT_EQ(view.angles(), (core::CArmAngles{-30.0, 20.0}));
    EXPECT_EQ(changed.count(), 5);
}

TEST_F(RadiographViewTest, TurnsOnAcrossTheBackAndStopsAtTheHead) {
    app::RadiographView view(session, state);
    makeReady(view);
    view.setAngles({175.0, 85.0});
    QTest::keyClick(&view, Qt::Key_Right, Qt::ShiftModifier);
    QTest::keyClick(&view, Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(view.angles(), (core::CArmAngles{-175.0, 90.0}));
}

TEST_F(RadiographViewTest, AnglesAreTyped) {
    app::RadiographView view(session, state);
    makeReady(view);
    QTest::keyClick(&view, Qt::Key_A);
    auto* ask = view.findChild<QLineEdit*>();
    ASSERT_TRUE(ask && ask->isVisibleTo(&view));
    EXPECT_EQ(ask->text(), "RAO 30, CAU 15");
    QTest::keyClicks(ask, "lao 20 cran 7"); // what stood there is selected
    QTest::keyClick(ask, Qt::Key_Return);
    EXPECT_EQ(view.angles(), (core::CArmAngles{20.0, 7.0}));
    EXPECT_FALSE(ask->isVisibleTo(&view));
    view.typeAngles("20 7 8");
    EXPECT_EQ(view.angles(), (core::CArmAngles{20.0, 7.0}));
    EXPECT_EQ(session.message().kind, app::Message::Kind::Error);
    EXPECT_TRUE(session.message().text.contains("CRA or CAUD is said twice")) << session.message().text.toStdString();
}

TEST_F(RadiographViewTest, WhileItTurnsTheNewestAnglesAreNextAndTheWindowNeverWaits) {
    app::RadiographView view(session, state);
    makeReady(view);
    QSignalSpy shown(&view, &app::RadiographView::pictureShown);
    for (int i = 0; i < 20; ++i) {
        QTest::keyClick(&view, Qt::Key_Right);
        EXPECT_TRUE(view.isWorking()) << "nothing is simulated in the window's own thread";
    }
    EXPECT_EQ(shown.count(), 0);
    ASSERT_TRUE(fixture::waitUntil([&] { return shown.count() > 0; }));
    EXPECT_FALSE(view.isSharp());
    ASSERT_TRUE(sharp(view));
    EXPECT_LT(shown.count(), 8) << "angles that nobody waits for any more are left out";
    EXPECT_NEAR(anglesOfPicture(view).primaryDeg, -10.0, 1e-6);
}

TEST_F(RadiographViewTest, TheWindowChangesByRightDragAndComesBack) {
    app::RadiographView view(session, state);
    makeReady(view);
    const QImage before = view.grab().toImage();
    dragFrom(view, Qt::RightButton, {100, 100}, {160, 180});
    const QImage after = view.grab().toImage();
    EXPECT_NE(before, after);
    QTest::keyClick(&view, Qt::Key_W);
    EXPECT_EQ(view.grab().toImage(), before);
}

TEST_F(RadiographViewTest, FillsOneChamberAfterTheOtherAndSaysWhich) {
    app::RadiographView view(session, state);
    makeReady(view);
    EXPECT_TRUE(view.note().startsWith("appendage filled")) << view.note().toStdString();
    const std::vector<float> filled = view.picture()->waterMm;
    view.setFilling(app::RadiographView::Filling::Nothing);
    ASSERT_TRUE(sharp(view));
    EXPECT_TRUE(view.note().startsWith("as CT has it"));
    double more = 0.0;
    for (std::size_t i = 0; i < filled.size(); ++i) {
        ASSERT_GE(filled[i], view.picture()->waterMm[i] - 1e-3f);
        more = std::max<double>(more, filled[i] - view.picture()->waterMm[i]);
    }
    EXPECT_GT(more, 10.0 * core::kContrastMediumOverWater) << "through more than a centimetre of appendage";
    QTest::keyClick(&view, Qt::Key_F);
    EXPECT_EQ(view.filling(), app::RadiographView::Filling::Appendage);
}

TEST_F(RadiographViewTest, SaysThatThereIsNothingToSimulate) {
    app::RadiographView view(session, state);
    view.resize(300, 300);
    view.show();
    EXPECT_EQ(view.problem(), "Nothing is open.");
    EXPECT_FALSE(view.arm());
    EXPECT_FALSE(view.isWorking());
    QTest::keyClick(&view, Qt::Key_Right);
    EXPECT_FALSE(view.isWorking());
}

TEST_F(RadiographViewTest, AFrameGivesItsDetectorAndDistancesAndWhereTheLandingZoneIs) {
    app::RadiographView view(session, state);
    makeReady(view);
    app::FrameGeometry frame;
    frame.arm.angles = {-28.0, 14.0};
    frame.arm.columns = 512;
    frame.arm.rows = 256;
    frame.arm.sourceToIsocentreMm = 700.0;
    frame.arm.sourceToDetectorMm = 1000.0;
    frame.arm.imagerSpacingMm = {0.3, 0.3};
    frame.landingPixel = Eigen::Vector2d(100.0, 60.0);
    view.setFrame(frame);
    EXPECT_EQ(view.angles(), (core::CArmAngles{-28.0, 14.0}));
    const auto arm = view.arm().value();
    const Eigen::Vector2d seen = core::cameraOf(arm)->project(session.landing()->section.center).value();
    EXPECT_LT((seen - *frame.landingPixel).norm(), 1e-6);
    EXPECT_EQ(view.note().toStdString(), "appendage filled with contrast medium. Distances from the file: source to isocentre 700 mm, to "
                                         "detector 1000 mm. The landing zone is put where it was drawn on the frame.");
    ASSERT_TRUE(sharp(view));
    // The picture has the detector's shape and size, whatever the view's.
    const core::PinholeCamera& camera = view.picture()->camera;
    EXPECT_EQ(camera.columns, 2 * camera.rows);
    EXPECT_NEAR(camera.columns * camera.columnStep.norm(), 512 * 0.3, 1e-9);
}

namespace {

/// A fluoroscopy page on a run at RAO 30, CRA 20 whose frames show an upright catheter from row 30 to 70, 20 pixels wide.
struct XrayCase {
    app::Session session;
    app::ViewState state;
    app::EvidenceImages images{session};
    app::PictureDrawings drawings{session, images};
    std::optional<double> sidMm, sodMm;

    XrayCase() {
        images.setOpener([this](const core::Evidence&, const auto&) -> core::Result<app::CineData> {
            app::CineData data;
            data.frames = fixture::xrayFrames(3);
            dicomio::XrayCine run;
            run.frames = data.frames;
            run.facts.frames.resize(3);
            for (auto& frame : run.facts.frames) {
                frame.angles = core::CArmAngles{-30.0, 20.0};
                frame.sourceToDetectorMm = sidMm;
                frame.sourceToIsocentreMm = sodMm;
                frame.imagerSpacingMm = Eigen::Vector2d(1.4, 1.4);
            }
            run.facts.scaleText = "The file tells no scale.";
            data.xray = run;
            return data;
        });
        auto loaded = fixture::syntheticImages();
        loaded.index = fixture::indexWithPictures();
        session.setEngine(fixture::syntheticEngine());
        session.open(std::move(loaded));
        const auto marks = fixture::syntheticMarks();
        session.placeMark(core::MarkKind::Atrium, marks.atrium);
        session.placeMark(core::MarkKind::Tip, marks.tip);
        fixture::waitUntil([this] { return session.measurement() != nullptr; });
    }
};

QPoint onPicture(const app::CineView& view, double x, double y) {
    return view.screenFromPixel().map(QPointF(x, y)).toPoint();
}

} // namespace

TEST(FluoroPageBeside, TheSimulatedPictureHasTheFramesAngles) {
    XrayCase shown;
    app::FluoroPage page(shown.session, shown.state, shown.images);
    page.resize(1200, 900);
    page.show();
    ASSERT_TRUE(fixture::waitUntil([&] { return page.view().data() != nullptr; }));
    EXPECT_EQ(page.radiograph().angles(), (core::CArmAngles{-30.0, 20.0}));
    EXPECT_TRUE(page.radiograph().note().contains("Distances assumed")) << page.radiograph().note().toStdString();
    EXPECT_TRUE(page.radiograph().note().contains("the landing zone is put in the middle"));
    ASSERT_TRUE(fixture::waitUntil([&] { return page.radiograph().isSharp(); }));
    EXPECT_GT(page.radiograph().width(), 250);
    EXPECT_GT(page.view().width(), 250);
}

TEST(FluoroPageBeside, DistancesComeFromTheFileAndTheDrawnWidthPlacesTheLandingZone) {
    XrayCase shown;
    shown.sidMm = 1060.0;
    shown.sodMm = 720.0;
    app::FluoroPage page(shown.session, shown.state, shown.images);
    page.resize(1200, 900);
    page.show();
    ASSERT_TRUE(fixture::waitUntil([&] { return page.view().data() != nullptr; }));
    EXPECT_TRUE(page.radiograph().note().contains("Distances from the file: source to isocentre 720 mm, to detector 1060 mm."));
    // A scale by the catheter, then the width of the landing zone: its middle is where the simulated one goes.
    page.view().startCalibration(app::Calibration::CatheterWidth);
    QTest::mouseClick(&page.view(), Qt::LeftButton, {}, onPicture(page.view(), 39.5, 50));
    QTest::mouseClick(&page.view(), Qt::LeftButton, {}, onPicture(page.view(), 59.5, 50));
    page.view().finishCalibration(4.0);
    page.view().armLine(core::DrawingRole::LandingWidth);
    QTest::mousePress(&page.view(), Qt::LeftButton, {}, onPicture(page.view(), 20, 80));
    QTest::mouseMove(&page.view(), onPicture(page.view(), 80, 84));
    QTest::mouseRelease(&page.view(), Qt::LeftButton, {}, onPicture(page.view(), 80, 84));
    const core::CArm arm = page.radiograph().arm().value();
    const Eigen::Vector2d seen = core::cameraOf(arm)->project(shown.session.landing()->section.center).value();
    EXPECT_NEAR(seen.x(), 50.0, kHalfPixel);
    EXPECT_NEAR(seen.y(), 82.0, kHalfPixel);
    EXPECT_EQ(arm.sourceToDetectorMm, 1060.0);
    // Value ± uncertainty of both beside the frame, at the frame's own angles, and the sentence about them.
    const QString text = page.text();
    EXPECT_TRUE(text.contains("Drawn here: ")) << text.toStdString();
    EXPECT_TRUE(text.contains("CT predicts at these angles: ")) << text.toStdString();
    EXPECT_TRUE(text.contains("RAO 30, CRA 20")) << text.toStdString();
    EXPECT_EQ(text.section("Drawn here: ", 1).section('\n', 0, 0).count(QChar(0x00B1)), 1) << text.toStdString();
}

TEST(FluoroPageBeside, ACatheterCalibratesByItsShadow) {
    XrayCase shown;
    app::FluoroPage page(shown.session, shown.state, shown.images);
    page.resize(1200, 900);
    page.show();
    ASSERT_TRUE(fixture::waitUntil([&] { return page.view().data() != nullptr; }));
    const auto offered = page.actions();
    const auto named = [&](const QString& text) {
        return std::find_if(offered.begin(), offered.end(), [&](const QAction* action) { return action->text() == text; });
    };
    ASSERT_NE(named("Catheter shadow"), offered.end());
    ASSERT_NE(named("Catheter edges"), offered.end());
    EXPECT_THAT((*named("Catheter shadow"))->toolTip().toStdString(), testing::HasSubstr("the program's own reading of a catheter's edges"));
    EXPECT_THAT((*named("Catheter edges"))->toolTip().toStdString(), testing::HasSubstr("a click on either edge of a catheter"));
    (*named("Catheter shadow"))->trigger();
    ASSERT_TRUE(page.view().isCalibrating());
    ASSERT_TRUE(fixture::waitUntil([&] { return !page.view().grab().isNull(); }));
    QTest::mouseClick(&page.view(), Qt::LeftButton, {}, onPicture(page.view(), 50, 34));
    QTest::mouseClick(&page.view(), Qt::LeftButton, {}, onPicture(page.view(), 50, 66));
    page.view().finishCalibration(4.0);
    ASSERT_TRUE(shown.session.record().scales.contains("2.25.300")) << shown.session.message().text.toStdString();
    EXPECT_TRUE(shown.session.record().scales.at("2.25.300").content.byEdgeProfile);
    // 20 pixels between the catheter's edges, whatever the two clicks along it.
    page.view().armLine(core::DrawingRole::LandingWidth);
    QTest::mousePress(&page.view(), Qt::LeftButton, {}, onPicture(page.view(), 10, 20));
    QTest::mouseMove(&page.view(), onPicture(page.view(), 90, 20));
    QTest::mouseRelease(&page.view(), Qt::LeftButton, {}, onPicture(page.view(), 90, 20));
    const double drawn = page.text().section("Drawn here: ", 1).section(QChar(0x00A0), 0, 0).section(' ', 0, 0).toDouble();
    EXPECT_NEAR(drawn, 80 * 4.0 / 20.0, 0.6) << page.text().toStdString();
}

TEST(FluoroPageBeside, WithoutARunThereIsNoSimulatedPicture) {
    app::Session session;
    app::ViewState state;
    app::EvidenceImages images(session);
    app::FluoroPage page(session, state, images);
    page.resize(1000, 700);
    page.show();
    EXPECT_FALSE(page.radiograph().isVisible());
    EXPECT_FALSE(page.radiograph().isWorking());
}
