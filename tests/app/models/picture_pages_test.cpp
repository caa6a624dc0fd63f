// The pages of echo and fluoroscopy by synthetic mouse and keys, on cines written down from formulas.
#include "app/commands/evidence_commands.h"
#include "app/document/picture_drawings.h"
#include "app/format/drawing_words.h"
#include "app/models/comparison_model.h"
#include "app/panels/evidence_panel.h"
#include "app/views/echo_page.h"
#include "app/views/fluoro_page.h"
#include "tests/app/support/synthetic_pictures.h"
#include "tests/app/support/synthetic_session.h"

#include <QLineEdit>
#include <QTest>
#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <numbers>

using namespace gauge;

namespace {

// A screen pixel is a good part of a picture pixel: places by mouse are exact to half of one.
constexpr double kMousePx = 0.5;

struct Pages {
    app::Session session;
    app::ViewState state;
    app::EvidenceImages images{session};
    app::PictureDrawings drawings{session, images};
    bool calibrated = true;
    bool withSpectrum = false; ///< the lower half of echo pictures is a spectral region

    Pages() {
        images.setOpener([this](const core::Evidence& evidence, const auto&) -> core::Result<app::CineData> {
            app::CineData data;
            if (evidence.kind == core::EvidenceKind::Fluoroscopy) {
                data.frames = fixture::xrayFrames(3);
                dicomio::XrayCine run;
                run.frames = data.frames;
                run.facts.frames.resize(3);
                for (auto& frame : run.facts.frames)
                    frame.angles = core::CArmAngles{-30.0, 20.0};
                run.facts.scaleText = "The file tells no scale.";
                data.xray = run;
                return data;
            }
            const auto cine = fixture::echoCine(evidence.sopInstanceUid, evidence.probeAngleDeg.value_or(0.0), 24.0);
            data.frames = cine.frames;
            data.times = cine.times;
            if (calibrated) data.regions = cine.regions;
            if (withSpectrum) {
                data.regions.front().box.maxY = 59;
                core::EchoRegion spectrum;
                spectrum.kind = core::EchoRegionKind::Spectral;
                spectrum.box = {0, 60, 159, 119};
                spectrum.x = {core::PhysicalUnit::Second, 0.005, 0.0, 0.0};
                spectrum.y = {core::PhysicalUnit::CentimetrePerSecond, -2.0, 100.0, 0.0};
                data.regions.push_back(spectrum);
            }
            return data;
        });
        auto loaded = fixture::syntheticImages();
        loaded.index = fixture::indexWithPictures();
        session.setEngine(fixture::syntheticEngine());
        session.open(std::move(loaded));
    }
    const core::CaseRecord& record() const { return session.record(); }
    const core::Estimate* valueOf(const std::string& drawing, const std::string& id) const {
        for (const auto& value : record().values)
            if (value.group == "drawing/" + drawing && value.id == id) return &value.estimate;
        return nullptr;
    }
    const core::Estimate* echoValue(const std::string& id) const {
        for (const auto& value : record().values)
            if (value.group == "echo/before-repair" && value.id == id) return &value.estimate;
        return nullptr;
    }
};

QPoint at(const app::CineView& view, double x, double y) {
    return view.screenFromPixel().map(QPointF(x, y)).toPoint();
}

bool isOpen(const app::CineView& view) {
    return fixture::waitUntil([&] { return view.data() != nullptr; });
}

void drag(app::CineView& view, const QPoint& from, const QPoint& to) {
    QTest::mousePress(&view, Qt::LeftButton, {}, from);
    QTest::mouseMove(&view, to);
    QTest::mouseRelease(&view, Qt::LeftButton, {}, to);
}

} // namespace

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

TEST(CineView, ALineDrawnByMouseHasTheLengthOfTheGeometry) {
    Pages pages;
    app::EchoPage page(pages.session, pages.state, pages.images);
    page.resize(1200, 900);
    page.show();
    app::CineView& view = *page.views()[0];
    ASSERT_TRUE(isOpen(view));
    view.armLine(core::DrawingRole::LandingWidth);
    drag(view, at(view, 40, 60), at(view, 100, 60));
    EXPECT_FALSE(pages.state.tool());
    ASSERT_EQ(pages.record().drawings.size(), 1U);
    const auto value = std::find_if(pages.record().values.begin(), pages.record().values.end(),
                                    [](const auto& v) { return v.group == "drawing/1"; });
    ASSERT_NE(value, pages.record().values.end());
    EXPECT_NEAR(value->estimate.value, 60 * fixture::kEchoPixelMm, 2 * kMousePx * fixture::kEchoPixelMm);
    pages.session.document().undoStack().undo();
    EXPECT_TRUE(pages.record().drawings.empty());
    EXPECT_TRUE(std::none_of(pages.record().values.begin(), pages.record().values.end(),
                             [](const auto& v) { return v.group == "drawing/1"; }));
    pages.session.document().undoStack().redo();
    ASSERT_EQ(pages.record().drawings.size(), 1U);
    pages.state.selectDrawing("1");
    QTest::keyClick(&view, Qt::Key_Delete);
    EXPECT_TRUE(pages.record().drawings.empty());
}

TEST(CineView, CalibrationByHandGivesLengthsWhereTheFileTellsNone) {
    Pages pages;
    pages.calibrated = false;
    app::EchoPage page(pages.session, pages.state, pages.images);
    page.resize(1200, 900);
    page.show();
    app::CineView& view = *page.views()[0];
    ASSERT_TRUE(isOpen(view));
    EXPECT_TRUE(view.scaleText().contains("No scale: calibrate by hand"));
    view.armLine(core::DrawingRole::LandingWidth);
    drag(view, at(view, 40, 60), at(view, 100, 60));
    EXPECT_TRUE(pages.session.message().text.contains("scale")) << pages.session.message().text.toStdString();
    QTest::keyClick(&view, Qt::Key_K);
    ASSERT_TRUE(view.isCalibrating());
    QTest::mouseClick(&view, Qt::LeftButton, {}, at(view, 20, 100));
    QTest::mouseClick(&view, Qt::LeftButton, {}, at(view, 120, 100));
    view.finishCalibration(50.0); // 100 pixels are 50 mm
    ASSERT_TRUE(pages.record().scales.contains("2.25.200"));
    const auto value = std::find_if(pages.record().values.begin(), pages.record().values.end(),
                                    [](const auto& v) { return v.group == "drawing/1"; });
    ASSERT_NE(value, pages.record().values.end()) << "what was drawn before is measured now";
    // Four places by mouse: two of the scale (over 100 pixels), two of the line (over 60).
    EXPECT_NEAR(value->estimate.value, 30.0, 30.0 * (2 * kMousePx / 100 + 2 * kMousePx / 60));
    EXPECT_GT(value->estimate.components.scale, 0.0);
    EXPECT_TRUE(view.scaleText().contains("scale marked by hand"));
    pages.session.document().undoStack().undo();
    EXPECT_FALSE(pages.record().scales.contains("2.25.200"));
}

TEST(CineView, EveryKindOfMeasurementIsDrawnOnACalibratedFrame) {
    Pages pages;
    app::EchoPage page(pages.session, pages.state, pages.images);
    page.resize(1200, 900);
    page.show();
    app::CineView& view = *page.views()[0];
    ASSERT_TRUE(isOpen(view));
    const auto click = [&](double x, double y) { QTest::mouseClick(&view, Qt::LeftButton, {}, at(view, x, y)); };
    constexpr double kMm = fixture::kEchoPixelMm, kPlacesMm = 3 * kMousePx * kMm;
    pages.state.armTool(core::DrawingKind::Curve);
    for (int i = 0; i <= 8; ++i) // half a circle of radius 30 pixels
        click(80 - 30 * std::cos(std::numbers::pi * i / 8), 60 - 30 * std::sin(std::numbers::pi * i / 8));
    QTest::keyClick(&view, Qt::Key_Return);
    ASSERT_TRUE(pages.valueOf("1", "length"));
    EXPECT_NEAR(pages.valueOf("1", "length")->value, std::numbers::pi * 30 * kMm, 0.02 * 30 * std::numbers::pi * kMm + kPlacesMm);

    pages.state.armTool(core::DrawingKind::Angle);
    click(40, 100);
    click(80, 100);
    click(80, 70);
    ASSERT_TRUE(pages.valueOf("2", "angle"));
    EXPECT_NEAR(pages.valueOf("2", "angle")->value, 90.0, 2.0) << "arms of 30 pixels, places to half a pixel";

    pages.state.armTool(core::DrawingKind::Area);
    for (int i = 0; i < 12; ++i)
        click(80 + 30 * std::cos(std::numbers::pi * i / 6), 60 + 30 * std::sin(std::numbers::pi * i / 6));
    QTest::keyClick(&view, Qt::Key_Return);
    ASSERT_TRUE(pages.valueOf("3", "area"));
    const double circleMm2 = std::numbers::pi * 900 * kMm * kMm;
    EXPECT_NEAR(pages.valueOf("3", "area")->value, circleMm2, 0.04 * circleMm2);

    for (const char* id : {"1", "2", "3"}) {
        const auto* first = app::leadingValue(pages.record(), id);
        ASSERT_NE(first, nullptr);
        EXPECT_GT(first->estimate.standardUncertainty(), 0.0);
        EXPECT_TRUE(app::drawingValueText(pages.record(), id).contains(QStringLiteral("±")));
        EXPECT_EQ(first->provenance->sopInstanceUids, std::vector<std::string>{"2.25.200"});
    }

    // Label, role, delete, undo: the same as on the CT.
    pages.state.selectDrawing("1");
    QTest::keyClick(&view, Qt::Key_F2);
    auto* label = view.findChild<QLineEdit*>(QString(), Qt::FindDirectChildrenOnly);
    ASSERT_NE(label, nullptr);
    QTest::keyClicks(label, QStringLiteral("ridge"));
    QTest::keyClick(label, Qt::Key_Return);
    EXPECT_TRUE(app::drawingCaption(pages.record(), "1").startsWith("ridge: "));
    QTest::keyClick(&view, Qt::Key_Delete);
    EXPECT_FALSE(pages.record().drawings.contains("1"));
    EXPECT_FALSE(pages.valueOf("1", "length"));
    pages.session.document().undoStack().undo();
    ASSERT_TRUE(pages.valueOf("1", "length"));

    // The jump brings up frame and drawing.
    view.player().setFrame(5);
    EXPECT_FALSE(view.shows(pages.record().drawings.at("3").content));
    app::Place place = app::placeOf(pages.record(), *app::leadingValue(pages.record(), "3"));
    EXPECT_EQ(place.drawing, "3");
    pages.state.goTo(place);
    EXPECT_EQ(view.player().frame(), 0);
    EXPECT_EQ(pages.state.selectedDrawing(), "3");
    EXPECT_TRUE(view.shows(pages.record().drawings.at("3").content));
}

TEST(CineView, ADrawingIsMeasuredOnceByOneWriter) {
    Pages pages;
    app::EchoPage page(pages.session, pages.state, pages.images);
    app::FluoroPage xray(pages.session, pages.state, pages.images);
    page.resize(1200, 900);
    page.show();
    app::CineView& view = *page.views()[0];
    ASSERT_TRUE(isOpen(view));
    int written = 0;
    QObject::connect(&pages.session.document(), &app::CaseDocument::changed, &page, [&](app::CaseDocument::Part part) {
        written += part == app::CaseDocument::Part::Values;
    });
    view.armLine(core::DrawingRole::None);
    drag(view, at(view, 40, 60), at(view, 100, 60));
    EXPECT_EQ(written, 1);
    pages.session.drawings().refresh();
    EXPECT_EQ(written, 1) << "nothing is measured again that is current";
}

TEST(CineView, ASpectrumRefusesLengthsAndOffersVelocityAndTime) {
    Pages pages;
    pages.withSpectrum = true;
    app::EchoPage page(pages.session, pages.state, pages.images);
    page.resize(1200, 900);
    page.show();
    app::CineView& view = *page.views()[0];
    ASSERT_TRUE(isOpen(view));
    const auto click = [&](double x, double y) { QTest::mouseClick(&view, Qt::LeftButton, {}, at(view, x, y)); };
    const auto said = [&] { return pages.session.message().text.toStdString(); };
    for (const auto kind : {core::DrawingKind::Straight, core::DrawingKind::Curve, core::DrawingKind::Angle,
                            core::DrawingKind::Area, core::DrawingKind::Ellipse}) {
        pages.state.armTool(kind);
        pages.session.say(app::Message::Kind::Nothing, {});
        click(40, 90);
        EXPECT_FALSE(view.isDrawing());
        EXPECT_THAT(said(), testing::HasSubstr("Cannot measure lengths in the spectral region: its axes are s across and cm/s down"));
        EXPECT_THAT(said(), testing::HasSubstr("Mark a velocity"));
    }
    pages.state.armTool(core::DrawingKind::Velocity);
    click(40, 30);
    EXPECT_TRUE(pages.record().drawings.empty()) << "no velocity on tissue";
    EXPECT_FALSE(said().empty());
    click(40, 75); // 25 pixels above the baseline at 100, 2 cm/s a pixel
    ASSERT_TRUE(pages.valueOf("1", "velocity"));
    EXPECT_NEAR(pages.valueOf("1", "velocity")->value, 50.0, 2.0 * kMousePx + 1e-9);
    EXPECT_TRUE(app::drawingValueText(pages.record(), "1").contains("cm/s"));
    pages.state.armTool(core::DrawingKind::Interval);
    drag(view, at(view, 20, 90), at(view, 120, 90)); // 100 pixels of 5 ms
    ASSERT_TRUE(pages.valueOf("2", "interval"));
    EXPECT_NEAR(pages.valueOf("2", "interval")->value, 500.0, 2 * 5.0 * kMousePx + 1e-9);
    // A length that begins on tissue and ends on the spectrum is none.
    pages.state.armTool(core::DrawingKind::Straight);
    drag(view, at(view, 40, 30), at(view, 40, 90));
    EXPECT_FALSE(pages.valueOf("3", "length"));
    EXPECT_THAT(said(), testing::HasSubstr("each region has a scale of its own"));
}

TEST(CineView, ACalibrationMakesExactlyItsOwnPictureNew) {
    Pages pages;
    app::EchoPage page(pages.session, pages.state, pages.images);
    page.resize(1200, 900);
    page.show();
    for (int i : {0, 1}) {
        app::CineView& view = *page.views()[static_cast<std::size_t>(i)];
        ASSERT_TRUE(isOpen(view));
        view.armLine(core::DrawingRole::LandingWidth);
        drag(view, at(view, 40, 60), at(view, 100, 60));
    }
    const double first = pages.valueOf("1", "length")->value, second = pages.valueOf("2", "length")->value;
    app::CineView& view = *page.views()[0];
    QTest::keyClick(&view, Qt::Key_Escape); // lets the drawing go
    QTest::keyClick(&view, Qt::Key_K);
    QTest::mouseClick(&view, Qt::LeftButton, {}, at(view, 20, 100));
    QTest::mouseClick(&view, Qt::LeftButton, {}, at(view, 120, 100));
    view.finishCalibration(100.0); // 1 mm a pixel: twice the scanner's
    EXPECT_NEAR(pages.valueOf("1", "length")->value, 2.0 * first, 0.03 * first);
    EXPECT_EQ(pages.valueOf("2", "length")->value, second);
    pages.session.document().undoStack().undo();
    EXPECT_EQ(pages.valueOf("1", "length")->value, first);
}

TEST(CineView, PlaysStepsAndChangesItsSpeedByKeysAndMouse) {
    Pages pages;
    app::EchoPage page(pages.session, pages.state, pages.images);
    page.resize(1200, 900);
    page.show();
    app::CineView& view = *page.views()[0];
    ASSERT_TRUE(isOpen(view));
    const auto key = [&](Qt::Key k) { QTest::keyClick(&view, k); };
    key(Qt::Key_Space);
    EXPECT_TRUE(view.player().isPlaying());
    EXPECT_TRUE(fixture::waitUntil([&] { return view.player().frame() >= 2; }));
    EXPECT_EQ(page.views()[1]->player().frame(), view.player().frame()) << "the others follow";
    key(Qt::Key_Space);
    EXPECT_FALSE(view.player().isPlaying());
    key(Qt::Key_Home);
    EXPECT_EQ(view.player().frame(), 0);
    key(Qt::Key_Right);
    key(Qt::Key_Period);
    EXPECT_EQ(view.player().frame(), 2);
    key(Qt::Key_Left);
    EXPECT_EQ(view.player().frame(), 1);
    key(Qt::Key_End);
    EXPECT_EQ(view.player().frame(), 19);
    key(Qt::Key_BracketLeft);
    EXPECT_EQ(view.player().speed(), 0.5);
    key(Qt::Key_BracketRight);
    key(Qt::Key_BracketRight);
    EXPECT_EQ(view.player().speed(), 2.0);
    key(Qt::Key_R);
    EXPECT_FALSE(view.player().isLooping());
    QWheelEvent wheel(QPointF(50, 50), view.mapToGlobal(QPointF(50, 50)), {}, {0, 120}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(&view, &wheel);
    EXPECT_EQ(view.player().frame(), 18) << "a notch away from the person is a frame back";
    QTest::mouseClick(&view, Qt::LeftButton, {}, QPoint(view.width() - 11, view.height() - 8));
    EXPECT_EQ(view.player().frame(), 19) << "a click at the end of the scrubber";
    QTest::mouseClick(&view, Qt::LeftButton, {}, QPoint(10, view.height() - 8));
    EXPECT_EQ(view.player().frame(), 0);
}

TEST(CineView, HidesWhatIsBurnedInBesideTheRegionsWhenNamesAreHidden) {
    Pages pages;
    pages.calibrated = false; // no regions: the strips above and below
    app::EchoPage page(pages.session, pages.state, pages.images);
    page.resize(1200, 900);
    page.show();
    app::CineView& view = *page.views()[0];
    ASSERT_TRUE(isOpen(view));
    ASSERT_TRUE(fixture::waitUntil([&] { return !pages.images.cine("2.25.200")->frame(0).isNull(); }));
    const QPoint corner = at(view, 150, 3);
    EXPECT_GT(qRed(view.grab().toImage().pixel(corner)), 100);
    pages.state.setNamesHidden(true);
    EXPECT_LT(qRed(view.grab().toImage().pixel(corner)), 20);
}

TEST(CineView, SaysWhyThereIsNoPicture) {
    Pages pages;
    pages.images.setOpener([](const auto&, const auto&) -> core::Result<app::CineData> {
        return core::failure(core::ErrorCode::FileUnreadable, "The file is torn.");
    });
    app::EchoPage page(pages.session, pages.state, pages.images);
    ASSERT_TRUE(fixture::waitUntil([&] { return page.views()[0]->problem() == "The file is torn."; }));
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
