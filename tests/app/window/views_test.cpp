#include "app/views/cross_section_view.h"
#include "app/views/depth_strip_view.h"
#include "app/views/long_section_view.h"
#include "app/views/scanner_section_view.h"
#include "app/views/shown_section.h"
#include "tests/app/support/synthetic_case.h"
#include "tests/app/support/synthetic_session.h"

#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;
using fixture::openAndMeasure;
using fixture::syntheticEngine;
using fixture::syntheticImages;

namespace {

void wheel(QWidget& widget, int notches, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    const QPointF at(widget.width() / 2.0, widget.height() / 2.0);
    QWheelEvent event(at, widget.mapToGlobal(at), {}, {0, 120 * notches}, Qt::NoButton, modifiers,
                      Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(&widget, &event);
}

void drag(QWidget& widget, Qt::MouseButton button, const QPoint& from, const QPoint& to) {
    QTest::mousePress(&widget, button, {}, from);
    // QTest::mouseMove carries no buttons; a drag does.
    for (int step = 1; step <= 4; ++step) {
        const QPointF at = QPointF(from) + (QPointF(to) - QPointF(from)) * step / 4.0;
        QMouseEvent move(QEvent::MouseMove, at, widget.mapToGlobal(at), Qt::NoButton, button, Qt::NoModifier);
        QCoreApplication::sendEvent(&widget, &move);
    }
    QTest::mouseRelease(&widget, button, {}, to);
}

class Views : public ::testing::Test {
protected:
    Session session;
    ViewState state;

    void open() {
        session.setEngine(syntheticEngine());
        session.open(syntheticImages());
    }
    void show(QWidget& widget, int width, int height) {
        widget.resize(width, height);
        widget.show();
        QCoreApplication::processEvents();
    }
};

constexpr double kPixelMm = 0.35; // one pixel of the views below, mm, rounded up

} // namespace

TEST_F(Views, AClickPlacesTheArmedMarkWhereItWasAndDisarms) {
    open();
    ScannerSectionView axial(ScannerAxis::Axial, session, state);
    show(axial, 420, 420);
    state.arm(core::MarkKind::Atrium);
    const core::PatientPoint wanted{Eigen::Vector3d(-20, 5, 0)};
    state.setCrossing({Eigen::Vector3d(0, 0, 0)});
    const QPoint at = axial.map()->fromPatient(wanted).toPoint();
    QTest::mouseClick(&axial, Qt::LeftButton, {}, at);
    ASSERT_TRUE(session.record().marks.contains(core::MarkKind::Atrium));
    EXPECT_LT(core::distanceMm(session.record().marks.at(core::MarkKind::Atrium).point, wanted), kPixelMm);
    EXPECT_FALSE(state.armed());
    QTest::mouseClick(&axial, Qt::LeftButton, {}, at + QPoint(40, 0));
    EXPECT_EQ(session.document().undoStack().count(), 1)
        << "a click without an armed mark moves the crossing only";
    EXPECT_GT(state.crossing().mm.x(), wanted.mm.x());
}

TEST_F(Views, MarkingOnCoronalAndSagittalSectionsKeepsTheirPlane) {
    open();
    const core::PatientPoint crossing{Eigen::Vector3d(3, -7, 11)};
    for (const ScannerAxis axis : {ScannerAxis::Coronal, ScannerAxis::Sagittal}) {
        ScannerSectionView view(axis, session, state);
        show(view, 420, 420);
        state.setCrossing(crossing);
        state.arm(core::MarkKind::Ridge);
        QTest::mouseClick(&view, Qt::LeftButton, {}, QPoint(250, 170));
        const core::PatientPoint placed = session.record().marks.at(core::MarkKind::Ridge).point;
        const int normal = axis == ScannerAxis::Coronal ? 1 : 0;
        EXPECT_NEAR(placed.mm[normal], crossing.mm[normal], 1e-9);
    }
}

TEST_F(Views, AMarkOutsideTheImagesIsRefusedInWords) {
    open();
    ScannerSectionView axial(ScannerAxis::Axial, session, state);
    show(axial, 800, 300); // wide: left and right of the picture there is nothing
    state.arm(core::MarkKind::Tip);
    QTest::mouseClick(&axial, Qt::LeftButton, {}, QPoint(10, 150));
    EXPECT_TRUE(session.record().marks.empty());
    EXPECT_EQ(session.message().text, "Marks must lie on the images: click inside the picture.");
}

TEST_F(Views, RightDragSetsTheGreyWindow) {
    open();
    ScannerSectionView axial(ScannerAxis::Axial, session, state);
    show(axial, 300, 300);
    const GreyWindow before = state.window();
    drag(axial, Qt::RightButton, {150, 150}, {190, 130});
    EXPECT_EQ(state.window().widthHu, before.widthHu + 40 * 2.5);
    EXPECT_EQ(state.window().centerHu, before.centerHu - 20 * 2.5);
}

TEST_F(Views, TheWheelScrollsSlicesAndWithCtrlItZooms) {
    open();
    ScannerSectionView axial(ScannerAxis::Axial, session, state);
    show(axial, 300, 300);
    state.setCrossing({Eigen::Vector3d(0, 0, 0)});
    wheel(axial, -1);
    EXPECT_NEAR(state.crossing().mm.z(), -0.9, 1e-9) << "one slice feet-wards";
    const double scale = axial.map()->pixelsPerMm;
    wheel(axial, 1, Qt::ControlModifier);
    EXPECT_NEAR(axial.map()->pixelsPerMm, scale * 1.15, 1e-9);
    for (int i = 0; i < 500; ++i)
        wheel(axial, -1);
    EXPECT_TRUE(session.volume()->contains(state.crossing())) << "scrolling ends with the images";
}

TEST_F(Views, DraggingTheMarkerMovesTheLandingZoneAndTheCrossSectionWithIt) {
    openAndMeasure(session);
    LongSectionView longSection(session, state);
    DepthStripView strip(session, state);
    show(longSection, 700, 400);
    show(strip, 700, 180);
    longSection.resetView();
    state.showLanding();
    const double depthBefore = shownSection(session, state)->depthMm;
    QSignalSpy live(&session, &Session::landingChanged);
    const QPoint from(static_cast<int>(std::lround(*strip.landingX())), 90);
    const double movedMm = 60 / state.depthScale().pixelsPerMm;
    drag(strip, Qt::LeftButton, from, from + QPoint(60, 0));
    EXPECT_GE(live.count(), 4) << "the cross-section follows while dragging";
    EXPECT_NEAR(shownSection(session, state)->depthMm, depthBefore + movedMm, 1e-6);
    EXPECT_EQ(shownSection(session, state)->role, Role::Landing);
    EXPECT_NEAR(session.record().landing.depthsMm.front(), depthBefore + movedMm, 1e-6);
    session.document().undoStack().undo();
    EXPECT_EQ(shownSection(session, state)->depthMm, depthBefore);
}

TEST_F(Views, AClickOnTheStripShowsThatDepthAndLeavesTheLandingZone) {
    openAndMeasure(session);
    DepthStripView strip(session, state);
    show(strip, 700, 180);
    state.setDepthScale({100.0, 12.0});
    QTest::mouseClick(&strip, Qt::LeftButton, {}, QPoint(100 + 12 * 20, 60));
    EXPECT_EQ(shownSection(session, state)->depthMm, 20.0);
    EXPECT_EQ(shownSection(session, state)->role, Role::Section);
    EXPECT_EQ(session.record().landing.depthsMm.front(), 10.0);
}

TEST_F(Views, KeysScrollTheDepthAndShiftNudgesTheLandingZone) {
    openAndMeasure(session);
    DepthStripView strip(session, state);
    CrossSectionView cross(session, state);
    show(strip, 700, 180);
    show(cross, 300, 300);
    state.showLanding();
    QTest::keyClick(&cross, Qt::Key_Right);
    EXPECT_EQ(shownSection(session, state)->depthMm, 10.5);
    wheel(cross, 1);
    EXPECT_EQ(shownSection(session, state)->depthMm, 10.0);
    const int steps = session.document().undoStack().count();
    QTest::keyClick(&strip, Qt::Key_Right, Qt::ShiftModifier);
    QTest::keyClick(&strip, Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_EQ(session.record().landing.depthsMm.front(), 11.0);
    EXPECT_GT(session.document().undoStack().count(), steps);
}

TEST_F(Views, DraggingTurnsTheLongSectionAboutTheAxis) {
    openAndMeasure(session);
    LongSectionView view(session, state);
    show(view, 700, 400);
    view.resetView();
    const auto before = view.map()->frame;
    drag(view, Qt::LeftButton, {300, 200}, {300, 260});
    EXPECT_NEAR(state.turnDeg(), 30.0, 1e-9);
    const auto after = view.map()->frame;
    EXPECT_EQ(after.origin.mm, before.origin.mm);
    EXPECT_EQ(after.u.mm, before.u.mm);
    EXPECT_NEAR(after.v.dot(before.v), std::cos(30.0 * M_PI / 180.0), 1e-9);
}

TEST_F(Views, LongSectionAndDepthStripShareTheirHorizontalAxis) {
    openAndMeasure(session);
    LongSectionView view(session, state);
    DepthStripView strip(session, state);
    show(view, 700, 400);
    show(strip, 700, 180);
    view.resetView();
    for (int i = 0; i < 3; ++i)
        wheel(view, 1, Qt::ControlModifier);
    const core::Section& ostium = session.measurement()->ostium.section;
    EXPECT_NEAR(view.map()->fromPatient(ostium.center).x(), state.depthScale().xFromMm(0.0), 1e-6);
    const core::PatientPoint inside = ostium.center + 10.0 * ostium.frame.normal;
    EXPECT_NEAR(view.map()->fromPatient(inside).x(), state.depthScale().xFromMm(10.0), 1e-6);
}

TEST_F(Views, TheCrossSectionKeepsItsScaleWhileScrolling) {
    openAndMeasure(session);
    CrossSectionView cross(session, state);
    show(cross, 300, 300);
    state.showOstium();
    const double atOstium = cross.map()->pixelsPerMm;
    state.showDepth(25.0);
    EXPECT_EQ(cross.map()->pixelsPerMm, atOstium);
}
