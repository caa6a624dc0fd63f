#include "app/views/surface_view.h"
#include "core/geometry/polyline.h"
#include "tests/app/support/synthetic_case.h"
#include "tests/app/support/synthetic_session.h"
#include "tests/app/support/synthetic_surface.h"

#include <QTest>
#include <QThread>
#include <QWheelEvent>
#include <atomic>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;

namespace {

class SurfaceViewTest : public ::testing::Test {
protected:
    Session session;
    ViewState state;

    void makeReady(SurfaceView& view, int side = 300) {
        view.setMaker(fixture::syntheticSurfaceMaker());
        view.resize(side, side);
        view.show();
        fixture::openAndMeasure(session);
        ASSERT_TRUE(fixture::waitUntil([&] { return view.surface() && !view.isWorking(); }));
    }

    static void drag(QWidget& widget, const QPoint& from, const QPoint& to) {
        QTest::mousePress(&widget, Qt::LeftButton, {}, from);
        QMouseEvent move(QEvent::MouseMove, QPointF(to), widget.mapToGlobal(QPointF(to)), Qt::NoButton, Qt::LeftButton,
                         Qt::NoModifier);
        QCoreApplication::sendEvent(&widget, &move);
        QTest::mouseRelease(&widget, Qt::LeftButton, {}, to);
    }

    static int countNear(const QImage& image, const QColor& colour, int reach) {
        int count = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x) {
                const QColor c = image.pixelColor(x, y);
                count += std::abs(c.red() - colour.red()) + std::abs(c.green() - colour.green()) +
                             std::abs(c.blue() - colour.blue()) <
                         reach;
            }
        return count;
    }
};

constexpr double kDeg = 1e-6;

} // namespace

TEST_F(SurfaceViewTest, StartsAsTheLongSectionIsSeen) {
    SurfaceView view(session, state);
    makeReady(view);
    const core::SectionFrame wanted = longSectionFrame(*session.measurement(), state.turnDeg());
    EXPECT_NEAR(view.map()->frame.u.dot(wanted.u), 1.0, 1e-12);
    EXPECT_NEAR(view.map()->frame.normal.dot(wanted.normal), 1.0, 1e-12);
    const double tipX = view.map()->fromPatient(core::axisPointAt(*session.measurement(), 36.0)).x();
    EXPECT_GT(tipX, view.map()->fromPatient(session.measurement()->ostium.section.center).x()) << "tip to the right";
}

TEST_F(SurfaceViewTest, TheNearSideFollowsTheHand) {
    SurfaceView view(session, state);
    makeReady(view);
    const core::SectionFrame before = view.map()->frame;
    const core::PatientPoint near = before.origin - 5.0 * before.normal;
    drag(view, {150, 150}, {190, 150});
    EXPECT_GT(view.map()->frame.sectionFromPatient(near).x(), 1.0) << "to the right";
    EXPECT_NEAR(view.map()->frame.sectionFromPatient(near).x(), 5.0 * std::sin(20.0 * M_PI / 180.0), kDeg);
    view.resetView();
    drag(view, {150, 150}, {150, 190});
    EXPECT_GT(view.map()->frame.sectionFromPatient(near).y(), 1.0) << "downwards";
    EXPECT_NEAR(view.map()->frame.u.dot(before.u), 1.0, kDeg);
}

TEST_F(SurfaceViewTest, ArrowKeysTurnAndTheOppositeKeyTurnsBack) {
    SurfaceView view(session, state);
    makeReady(view);
    const core::SectionFrame before = view.map()->frame;
    for (const auto& [there, back] : {std::pair(Qt::Key_Left, Qt::Key_Right), std::pair(Qt::Key_Up, Qt::Key_Down)}) {
        QTest::keyClick(&view, there);
        EXPECT_NEAR(core::angleBetweenDeg(view.map()->frame.normal, before.normal), 5.0, 1e-6);
        QTest::keyClick(&view, back);
        EXPECT_NEAR(core::angleBetweenDeg(view.map()->frame.normal, before.normal), 0.0, 1e-5);
    }
    QTest::keyClick(&view, Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_NEAR(core::angleBetweenDeg(view.map()->frame.normal, before.normal), 1.0, 1e-6);
    QTest::keyClick(&view, Qt::Key_Home);
    EXPECT_NEAR(core::angleBetweenDeg(view.map()->frame.normal, before.normal), 0.0, 1e-5);
}

TEST_F(SurfaceViewTest, KeysAndWheelZoomAndTheWheelAloneGoesAlongTheAxis) {
    SurfaceView view(session, state);
    makeReady(view);
    const double scale = view.map()->pixelsPerMm;
    QTest::keyClick(&view, Qt::Key_Plus);
    EXPECT_NEAR(view.map()->pixelsPerMm, 1.2 * scale, 1e-9);
    QTest::keyClick(&view, Qt::Key_Minus);
    EXPECT_NEAR(view.map()->pixelsPerMm, scale, 1e-9);
    const auto wheel = [&](Qt::KeyboardModifiers keys) {
        QWheelEvent event(QPointF(150, 150), view.mapToGlobal(QPointF(150, 150)), {}, {0, 120}, Qt::NoButton, keys,
                          Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(&view, &event);
    };
    wheel(Qt::ControlModifier);
    EXPECT_NEAR(view.map()->pixelsPerMm, 1.15 * scale, 1e-9);
    state.showDepth(12.0);
    wheel(Qt::NoModifier);
    EXPECT_EQ(state.cursorMm(), 11.5);
}

TEST_F(SurfaceViewTest, CCutsItOpenTowardsTheViewerAndShowsTheInside) {
    SurfaceView view(session, state);
    makeReady(view);
    SurfaceRaster raster;
    const SurfaceScene whole{&view.surface()->mesh, &view.surface()->beyondOstium, {}};
    const auto frontDepth = [&](const SurfaceScene& scene) {
        const auto& picture = raster.draw(scene, *view.map(), view.size());
        const auto place = picture.placeAt(view.map()->fromPatient(core::axisPointAt(*session.measurement(), 5.0)));
        return place ? (place->mm - view.map()->frame.origin.mm).dot(view.map()->frame.normal.mm) : 1e9;
    };
    EXPECT_LT(frontDepth(whole), 0.0) << "the near wall lies before the axis";
    SurfaceScene cut = whole;
    cut.cut = core::Plane{view.map()->frame.origin, -view.map()->frame.normal};
    EXPECT_GT(frontDepth(cut), 0.0) << "cut open, the far wall is seen from inside";
    QTest::keyClick(&view, Qt::Key_C);
    EXPECT_EQ(view.cut(), SurfaceView::Cut::LongSection);
    QTest::keyClick(&view, Qt::Key_C);
    EXPECT_EQ(view.cut(), SurfaceView::Cut::CrossSection);
    QTest::keyClick(&view, Qt::Key_C);
    EXPECT_EQ(view.cut(), SurfaceView::Cut::Whole);
}

TEST_F(SurfaceViewTest, ShowsAtriumAppendageAndBothContoursInTheirColours) {
    SurfaceView view(session, state);
    makeReady(view, 420);
    state.showLanding();
    const QImage picture = view.grab().toImage().convertToFormat(QImage::Format_RGB32);
    EXPECT_GT(countNear(picture, colourOf(Role::Ostium), 30), 40);
    EXPECT_GT(countNear(picture, colourOf(Role::Landing), 30), 20);
    int warm = 0, cool = 0;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x) {
            const QColor c = picture.pixelColor(x, y);
            warm += c.red() > c.blue() + 20 && c.red() > 70;
            cool += c.blue() > c.red() + 5 && c.blue() > 70 && c.green() > 60 && c.green() < c.blue();
        }
    EXPECT_GT(warm, 8000) << "appendage";
    EXPECT_GT(cool, 3000) << "atrium";
}

TEST_F(SurfaceViewTest, SaysInWordsWhyThereIsNoSurface) {
    SurfaceView view(session, state);
    view.setMaker([](const auto&, const auto&, const auto&, const auto&) -> core::Result<core::AppendageSurface> {
        return core::failure(core::ErrorCode::NothingUsable, "Cannot make the surface: invented reason.");
    });
    view.resize(300, 300);
    view.show();
    fixture::openAndMeasure(session);
    ASSERT_TRUE(fixture::waitUntil([&] { return !view.isWorking(); }));
    EXPECT_FALSE(view.surface());
    const QImage picture = view.grab().toImage();
    EXPECT_GT(countNear(picture.convertToFormat(QImage::Format_RGB32), tone::onImageSoft, 60), 50) << "text is drawn";
}

TEST_F(SurfaceViewTest, TheNewestMeasurementWins) {
    SurfaceView view(session, state);
    std::atomic<int> calls = 0;
    std::atomic<bool> firstWasStopped = false;
    view.setMaker([&, maker = fixture::syntheticSurfaceMaker()](
                      const core::Volume& volume, const core::AppendageMeasurement& m,
                      const core::AppendageSurfaceOptions& options,
                      const core::WorkContext& work) -> core::Result<core::AppendageSurface> {
        if (++calls > 1) return maker(volume, m, options, work);
        while (!work.stopped())
            QThread::msleep(1);
        firstWasStopped = true;
        return core::failure(core::ErrorCode::Cancelled, "Making the surface was cancelled.");
    });
    fixture::openAndMeasure(session);
    ASSERT_TRUE(fixture::waitUntil([&] { return calls == 1; }));
    session.confirmOstium(); // measured again
    ASSERT_TRUE(fixture::waitUntil([&] { return view.surface() && !view.isWorking(); }));
    EXPECT_TRUE(firstWasStopped);
    EXPECT_GE(calls, 2) << "the stopped one, then that of the newest";
}

TEST_F(SurfaceViewTest, WithoutAScreenNoOpenGlIsTriedAndTheProcessorDraws) {
    QString why;
    EXPECT_FALSE(SurfaceGl::make(&why));
    EXPECT_EQ(why, QStringLiteral("The platform has no screen, so no OpenGL is tried."));
    SurfaceView view(session, state);
    view.setDrawing(QStringLiteral("opengl"));
    makeReady(view);
    EXPECT_GT(countNear(view.grab().toImage().convertToFormat(QImage::Format_RGB32), surfaceColour(true), 120), 1000);
    EXPECT_FALSE(view.drawer().usesOpenGl());
}

TEST_F(SurfaceViewTest, IsDrawnAgainOnlyWhenItOrItsViewChanges) {
    SurfaceView view(session, state);
    makeReady(view);
    const QImage before = view.grab().toImage();
    const int drawn = view.drawer().pictures();
    ASSERT_GT(drawn, 0);
    state.showDepth(4.0);
    const QImage scrolled = view.grab().toImage();
    EXPECT_EQ(view.drawer().pictures(), drawn) << "only the line over it moved";
    EXPECT_NE(scrolled, before) << "and it did move";
    QTest::keyClick(&view, Qt::Key_Left);
    view.grab();
    EXPECT_EQ(view.drawer().pictures(), drawn + 1);
    view.resize(320, 300);
    view.grab();
    EXPECT_EQ(view.drawer().pictures(), drawn + 2);
    view.setCut(SurfaceView::Cut::CrossSection);
    view.grab();
    const int cut = view.drawer().pictures();
    EXPECT_EQ(cut, drawn + 3);
    state.showDepth(8.0);
    view.grab();
    EXPECT_EQ(view.drawer().pictures(), cut + 1) << "the cut goes with the depth";
    view.setMaker(fixture::syntheticSurfaceMaker()); // makes it anew
    ASSERT_TRUE(fixture::waitUntil([&] { return view.surface() && !view.isWorking(); }));
    view.grab();
    EXPECT_EQ(view.drawer().pictures(), cut + 2);
}
