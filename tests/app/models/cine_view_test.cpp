// One cine on its view by synthetic mouse and keys: drawing, calibrating, playing, hiding names.
#include "app/commands/evidence_commands.h"
#include "app/format/drawing_words.h"
#include "app/models/comparison_model.h"
#include "app/views/echo_page.h"
#include "app/views/fluoro_page.h"
#include "tests/app/models/picture_pages.h"

#include <QLineEdit>
#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <numbers>

using namespace gauge;
using fixture::at;
using fixture::drag;
using fixture::isOpen;
using fixture::kMousePx;
using fixture::Pages;

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
    key(Qt::Key_Down); // brackets need AltGr on many keyboards
    key(Qt::Key_Down);
    EXPECT_EQ(view.player().speed(), 0.5);
    key(Qt::Key_Up);
    EXPECT_EQ(view.player().speed(), 1.0);
    const double before = view.screenFromPixel().m11();
    QTest::keyClick(&view, Qt::Key_Plus, Qt::ShiftModifier); // as on an English keyboard
    EXPECT_GT(view.screenFromPixel().m11(), before);
    QTest::keyClick(&view, Qt::Key_0, Qt::ShiftModifier); // as on a French one
    EXPECT_DOUBLE_EQ(view.screenFromPixel().m11(), before);
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
