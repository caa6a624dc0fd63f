// The pages of echo and fluoroscopy by synthetic mouse and keys, on cines written down from formulas.
#include "app/document/picture_drawings.h"
#include "app/panels/evidence_panel.h"
#include "app/views/echo_page.h"
#include "app/views/fluoro_page.h"
#include "tests/app/support/synthetic_pictures.h"
#include "tests/app/support/synthetic_session.h"

#include <QTest>
#include <cmath>
#include <gtest/gtest.h>

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
            return data;
        });
        auto loaded = fixture::syntheticImages();
        loaded.index = fixture::indexWithPictures();
        session.setEngine(fixture::syntheticEngine());
        session.open(std::move(loaded));
    }
    const core::CaseRecord& record() const { return session.record(); }
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

TEST(EchoPage, OnePassMeasuresEveryViewFromTheKeyboard) {
    Pages pages;
    app::EchoPage page(pages.session, pages.state, pages.images);
    page.resize(900, 900);
    page.show();
    for (const auto* view : page.views())
        ASSERT_TRUE(isOpen(*view));
    page.actions().front()->trigger();
    ASSERT_TRUE(page.pass().isActive());
    EXPECT_TRUE(page.instruction().contains("ostium width"));
    const auto key = [&](int k, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(page.activeView(), Qt::Key(k), modifiers); };
    for (const double halfMm : {12.0, 10.0, 9.0}) { // three views: landing widths of 24, 20 and 18 mm
        ASSERT_TRUE(page.pass().isActive());
        key(Qt::Key_Right); // chooses the frame
        const QString view = page.pass().view();
        key(Qt::Key_S); // leaves the ostium out
        ASSERT_EQ(page.pass().role(), core::DrawingRole::LandingWidth);
        const int steps = static_cast<int>(std::lround(halfMm / fixture::kEchoPixelMm));
        for (int i = 0; i < steps; ++i)
            key(Qt::Key_Left, Qt::ControlModifier);
        key(Qt::Key_X);
        for (int i = 0; i < 2 * steps; ++i)
            key(Qt::Key_Right, Qt::ControlModifier);
        key(Qt::Key_X);
        ASSERT_TRUE(fixture::waitUntil([&] { return page.pass().role() == core::DrawingRole::Depth; }));
        EXPECT_EQ(page.pass().view(), view);
        key(Qt::Key_Return); // the next view
    }
    EXPECT_EQ(page.pass().viewNumber(), 4);
    key(Qt::Key_Escape);
    EXPECT_FALSE(page.pass().isActive());
    ASSERT_EQ(pages.record().drawings.size(), 3U);
    EXPECT_EQ(std::get<core::PictureSite>(pages.record().drawings.begin()->second.content.site).frame, 1);
    pages.session.pictureValues().refresh();
    const core::RecordedValue* longest = nullptr;
    for (const auto& value : pages.record().values)
        if (value.group == "echo/before-repair" && value.id == "landing/longest-diameter") longest = &value;
    ASSERT_TRUE(longest);
    // Chords of 24, 20 and 18 mm at 0, 45 and 90 degrees: 1/w2 = A + B cos 2t + C sin 2t solved by hand gives longest 24.41.
    const double a = (1 / 576.0 + 1 / 324.0) / 2, b = (1 / 576.0 - 1 / 324.0) / 2, c = 1 / 400.0 - a;
    EXPECT_NEAR(longest->estimate.value, 1.0 / std::sqrt(a - std::hypot(b, c)), 0.6)
        << "reduced ovality allowed: three readings tell noise from shape only in part";
    EXPECT_TRUE(page.dial().text().contains("longest diameter"));
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
    EXPECT_FALSE(view.isArmed());
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
    view.select("1");
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
    EXPECT_TRUE(page.text().contains("Drawn here: 16.")) << page.text().toStdString(); // 80 pixels of 4/20 mm
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
