// The same-cut page: where the probe was, the CT cut there, and why CT and echo differ.
#include "app/commands/drawing_commands.h"
#include "app/document/picture_drawings.h"
#include "app/views/same_cut_page.h"
#include "core/echo/same_cut.h"
#include "tests/app/support/synthetic_case.h"
#include "tests/app/support/synthetic_pictures.h"
#include "tests/app/support/synthetic_session.h"

#include <QRegularExpression>
#include <QTest>
#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;
using fixture::waitUntil;

namespace {

constexpr double kPoseMm = 1e-3; ///< landmarks without error give the pose back

/// The probe 30 mm behind the ostium, looking along the appendage's axis (+x); probe angle 0 lies along +y.
core::ProbePose truePose() {
    core::ProbePose pose;
    pose.patientFromEcho.linear().col(0) = Eigen::Vector3d(0, 1, 0);
    pose.patientFromEcho.linear().col(1) = Eigen::Vector3d(0, 0, 1);
    pose.patientFromEcho.linear().col(2) = Eigen::Vector3d(1, 0, 0);
    pose.patientFromEcho.translation() = Eigen::Vector3d(-30, 0, 0);
    return pose;
}

class SameCut : public ::testing::Test {
protected:
    Session session;
    ViewState state;
    EvidenceImages images{session};
    PictureDrawings drawings{session, images};

    void SetUp() override {
        images.setOpener([](const core::Evidence& evidence, const auto&) -> core::Result<CineData> {
            CineData data;
            const auto cine = fixture::echoCine(evidence.sopInstanceUid, evidence.probeAngleDeg.value_or(0.0), 24.0);
            data.frames = cine.frames;
            data.times = cine.times;
            data.regions = cine.regions;
            return data;
        });
        auto loaded = fixture::syntheticImages();
        loaded.index = fixture::indexWithPictures();
        session.setEngine(fixture::syntheticEngine());
        session.open(std::move(loaded));
        session.placeMark(core::MarkKind::Atrium, fixture::syntheticMarks().atrium);
        session.placeMark(core::MarkKind::Tip, fixture::syntheticMarks().tip);
        ASSERT_TRUE(waitUntil([&] { return session.measurement() && !session.isMeasuring(); }));
    }

    static Eigen::Vector2d pixelOf(const SameCutPage&, const Eigen::Vector2d& mm) {
        return core::viewCoordinates(fixture::echoCine("2.25.1", 0, 24).regions.front())->pixelFromMm(mm);
    }
    void showView(SameCutPage& page, const QString& id) {
        Place place;
        place.page = Page::SameCut;
        place.evidence = id;
        state.goTo(place);
        ASSERT_EQ(page.view().evidence(), id);
        ASSERT_TRUE(waitUntil([&] { return page.view().data() != nullptr; }));
    }
    /// Marks a place of the view in both; echoMm is (sideways, along the beam).
    void mark(SameCutPage& page, const QString& id, double angle, const Eigen::Vector2d& echoMm) {
        showView(page, id);
        page.addLandmark(truePose().patientFrom(angle, echoMm), pixelOf(page, echoMm), "place");
    }
    void markFour(SameCutPage& page) {
        mark(page, "2.25.200", 0, {10, 20});
        mark(page, "2.25.200", 0, {-12, 35});
        mark(page, "2.25.202", 90, {8, 40});
        mark(page, "2.25.201", 45, {-5, 25});
        ASSERT_TRUE(waitUntil([&] { return page.pose().has_value(); })) << page.pose().error().message;
    }
    /// A landing-zone width drawn across the axis at a depth before the probe.
    void drawWidth(const SameCutPage& page, const std::string& id, const std::string& evidence, double widthMm, double depthMm) {
        core::Drawing line;
        line.role = core::DrawingRole::LandingWidth;
        line.site = core::PictureSite{evidence, 0};
        line.evidence = evidence;
        line.points = {pixelOf(page, {-widthMm / 2, depthMm}), pixelOf(page, {widthMm / 2, depthMm})};
        session.document().push(std::make_unique<PlaceDrawing>(session.document(), id, line));
        ASSERT_TRUE(waitUntil([&, group = "drawing/" + id] {
            return std::any_of(session.record().values.begin(), session.record().values.end(), [&](const auto& v) { return v.group == group; });
        }));
    }
};

} // namespace

TEST_F(SameCut, AsksForPlacesThenFindsTheProbe) {
    SameCutPage page(session, state, images);
    page.resize(1000, 800);
    page.show();
    EXPECT_FALSE(page.cutFrame());
    EXPECT_TRUE(page.text().contains("landmark", Qt::CaseInsensitive)) << page.text().toStdString();
    markFour(page);
    const auto pose = page.pose();
    EXPECT_LT((pose->patientFromEcho.translation() - truePose().patientFromEcho.translation()).norm(), kPoseMm);
    EXPECT_LT((pose->patientFromEcho.linear() - truePose().patientFromEcho.linear()).norm(), 1e-4);
    showView(page, "2.25.201");
    const auto frame = page.cutFrame();
    ASSERT_TRUE(frame);
    const auto expected = truePose().viewFrame(45);
    EXPECT_LT(core::distanceMm(frame->origin, expected.origin), kPoseMm);
    EXPECT_NEAR(frame->normal.dot(expected.normal), 1.0, 1e-6);
    EXPECT_TRUE(page.text().contains("4 place(s)") || page.text().contains("4 places")) << page.text().toStdString();
    // Each place is a step of undo; without the fourth there are still three.
    session.document().undoStack().undo();
    EXPECT_EQ(session.record().landmarks.size(), 3U);
}

TEST_F(SameCut, OpensOnTheViewInWhichMostIsMarkedUntilAnotherIsChosen) {
    {
        SameCutPage page(session, state, images);
        EXPECT_EQ(page.view().evidence(), "2.25.200") << "the first while nothing is marked";
    }
    {
        SameCutPage page(session, state, images);
        drawWidth(page, "w-202", "2.25.202", 20.0, 30.0);
    }
    {
        SameCutPage page(session, state, images);
        EXPECT_EQ(page.view().evidence(), "2.25.202") << "it has a width";
        mark(page, "2.25.201", 45, {-5, 25});
        mark(page, "2.25.201", 45, {5, 25});
    }
    state.goTo({});
    SameCutPage page(session, state, images);
    EXPECT_EQ(page.view().evidence(), "2.25.201") << "places in both count more";
    Place echo;
    echo.page = Page::Echo;
    echo.evidence = "2.25.200";
    state.goTo(echo);
    EXPECT_EQ(page.view().evidence(), "2.25.200") << "what is chosen elsewhere comes up here";
}

TEST_F(SameCut, AViewWithoutAnAngleHasNoCut) {
    SameCutPage page(session, state, images);
    page.show();
    markFour(page);
    showView(page, "2.25.203");
    EXPECT_FALSE(page.cutFrame());
}

TEST_F(SameCut, MarksAPlaceByAClickOnTheFrame) {
    SameCutPage page(session, state, images);
    page.resize(1000, 800);
    page.show();
    showView(page, "2.25.200");
    page.markLandmark();
    ASSERT_TRUE(page.view().isBusy());
    const QPoint at = page.view().screenFromPixel().map(QPointF(60, 50)).toPoint();
    QTest::mouseClick(&page.view(), Qt::LeftButton, {}, at);
    ASSERT_EQ(session.record().landmarks.size(), 1U);
    const auto& landmark = session.record().landmarks.begin()->second.content;
    EXPECT_NEAR(landmark.echoPoint.x(), 60, 0.5); // a pixel of the screen
    EXPECT_NEAR(landmark.echoPoint.y(), 50, 0.5);
    EXPECT_EQ(landmark.echo.sopInstanceUid, "2.25.200");
    EXPECT_FALSE(page.view().isBusy());
    page.markLandmark();
    QTest::keyClick(&page.view(), Qt::Key_Escape);
    EXPECT_FALSE(page.view().isBusy());
    EXPECT_EQ(session.record().landmarks.size(), 1U);
}

TEST_F(SameCut, SplitsTheDifferenceAndTellsTheDepth) {
    SameCutPage page(session, state, images);
    page.resize(1000, 800);
    page.show();
    markFour(page);
    EXPECT_FALSE(page.bar().split()) << "nothing drawn on echo yet";
    EXPECT_TRUE(page.text().contains("once the landing zone is measured on CT and on the echo views"));
    // Echo reads what CT shows in its views, less a tenth, and 2 mm farther from the probe than the landing zone.
    const auto& section = session.landing()->section;
    const double depth = section.center.mm.x() - truePose().probe().mm.x() + 2.0;
    int id = 1;
    for (const auto& [evidence, angle] : {std::pair("2.25.200", 0.0), std::pair("2.25.201", 45.0), std::pair("2.25.202", 90.0)}) {
        const auto width = core::ctWidthInView(section, truePose(), angle);
        ASSERT_TRUE(width);
        drawWidth(page, std::to_string(id++), evidence, 0.9 * width->value, depth);
    }
    session.pictureValues().refresh();
    ASSERT_TRUE(waitUntil([&] { return page.bar().split().has_value(); })) << page.text().toStdString();
    const core::DifferenceSplit& split = *page.bar().split();
    EXPECT_NEAR(split.difference.valueMm, 0.1 * section.metrics.areaDerivedDiameterMm.value, 0.5)
        << "a tenth of the diameter; three chords tell the ellipse only in part";
    ASSERT_TRUE(split.plane) << "the probe's place is known";
    const double sum = split.plane->valueMm + split.pressure.valueMm + split.modality.valueMm + split.remainder.valueMm;
    EXPECT_NEAR(sum, split.difference.valueMm, 1e-9);
    const QString text = page.text();
    for (const char* part : {"plane:", "pressure:", "modality:", "unexplained:", "CT less echo"})
        EXPECT_TRUE(text.contains(part)) << part << " in " << text.toStdString();
    const auto told = QRegularExpression("The widths on echo lie ([0-9.]+)").match(text);
    ASSERT_TRUE(told.hasMatch()) << text.toStdString();
    EXPECT_NEAR(told.captured(1).toDouble(), 2.0, 0.3) << "the axis is bent: the section stands up to 8 degrees off the beam";
    // Without the probe's place the plane's part is missing, and the page says so.
    while (session.record().landmarks.size() > 2)
        page.actions().at(1)->trigger();
    ASSERT_TRUE(page.bar().split());
    EXPECT_FALSE(page.bar().split()->plane);
    EXPECT_TRUE(page.text().contains("The plane's part is not told"));
}
