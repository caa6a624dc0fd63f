// Planes moved and tilted, contours corrected, with mouse and keys.
#include "app/interaction/plane_drag.h"
#include "app/interaction/tool_actions.h"
#include "app/views/cross_section_view.h"
#include "app/views/long_section_view.h"
#include "core/geometry/plane_moves.h"
#include "core/geometry/polyline.h"
#include "tests/app/support/synthetic_session.h"

#include <QTest>
#include <algorithm>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;

namespace {

class PlanesAndContours : public ::testing::Test {
protected:
    Session session;
    ViewState state;
    LongSectionView view{session, state};
    CrossSectionView cross{session, state};

    void SetUp() override {
        session.setEngine(fixture::syntheticEngine());
        fixture::openAndMeasure(session);
        view.resize(700, 420);
        cross.resize(420, 420);
        view.show();
        cross.show();
        QCoreApplication::processEvents();
        view.resetView();
    }
    void TearDown() override { EXPECT_TRUE(fixture::waitUntil([this] { return !session.isMeasuring(); })); }

    static void move(QWidget& widget, const QPointF& to) {
        QMouseEvent event(QEvent::MouseMove, to, widget.mapToGlobal(to), Qt::NoButton, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&widget, &event);
    }
    core::Plane measuredOstium() {
        const auto& section = session.measurement()->ostium.section;
        return {section.center, section.frame.normal};
    }
    const core::RecordedValue& value(const char* id) {
        const auto& values = session.record().values;
        return *std::find_if(values.begin(), values.end(), [&](const auto& v) { return v.group == "ct" && v.id == id; });
    }
};

} // namespace

TEST_F(PlanesAndContours, TheMiddleHandleMovesTheOstiumAlongItsNormal) {
    const core::Plane before = measuredOstium();
    const QPoint at = view.map()->fromPatient(before.point).toPoint();
    constexpr int kPixels = 24;
    QTest::mousePress(&view, Qt::LeftButton, {}, at);
    move(view, at + QPoint(kPixels / 2, 0));
    EXPECT_FALSE(session.record().ostium) << "nothing is recorded while dragging";
    EXPECT_TRUE(session.ostiumPlane());
    move(view, at + QPoint(kPixels, 0));
    const double mm = kPixels / view.map()->pixelsPerMm;
    QTest::mouseRelease(&view, Qt::LeftButton, {}, at + QPoint(kPixels, 0));
    ASSERT_TRUE(session.record().ostium);
    EXPECT_NEAR(core::signedDistanceMm(before, session.record().ostium->plane.point), mm, 1e-6);
    EXPECT_NEAR(session.record().ostium->plane.normal.dot(before.normal), 1.0, 1e-9);
    EXPECT_TRUE(session.record().ostium->confirmed);
    session.document().undoStack().undo();
    EXPECT_FALSE(session.record().ostium) << "one step back: the proposal again";
}

TEST_F(PlanesAndContours, AnEndHandleTiltsTheOstiumAboutTheSectionsNormal) {
    const core::Plane before = measuredOstium();
    const auto where = *view.map();
    const auto line = core::lineInSection(where.frame.plane(), before).value();
    const double half = 0.5 * session.measurement()->ostium.section.metrics.longestDiameterMm.value + 7.0;
    const QPointF end = where.fromPatient(line.point + half * line.direction);
    const QPointF middle = where.fromPatient(line.point);
    // Ten degrees round the middle.
    const double turn = 10.0 * M_PI / 180.0;
    const QPointF arm = end - middle;
    const QPointF to = middle + QPointF(std::cos(turn) * arm.x() - std::sin(turn) * arm.y(), std::sin(turn) * arm.x() + std::cos(turn) * arm.y());
    QTest::mousePress(&view, Qt::LeftButton, {}, end.toPoint());
    move(view, to);
    QTest::mouseRelease(&view, Qt::LeftButton, {}, to.toPoint());
    ASSERT_TRUE(session.record().ostium);
    const double tilted = core::angleBetweenDeg(before.normal, session.record().ostium->plane.normal);
    EXPECT_NEAR(tilted, 10.0, 0.5) << "the press is rounded to a pixel";
    EXPECT_NEAR(session.record().ostium->plane.normal.dot(where.frame.normal), before.normal.dot(where.frame.normal), 1e-9);
}

TEST_F(PlanesAndContours, EscapeDuringADragLeavesThePlaneWhereItWas) {
    const auto record = session.record();
    const QPoint at = view.map()->fromPatient(measuredOstium().point).toPoint();
    QTest::mousePress(&view, Qt::LeftButton, {}, at);
    move(view, at + QPoint(30, 0));
    QTest::keyClick(&view, Qt::Key_Escape);
    QTest::mouseRelease(&view, Qt::LeftButton, {}, at + QPoint(30, 0));
    EXPECT_TRUE(session.record() == record);
    EXPECT_LT(core::distanceMm(session.ostiumPlane()->point, measuredOstium().point), 1e-9);
}

TEST_F(PlanesAndContours, TheLandingHandleMovesTheLandingPlaneAlongTheAxis) {
    const double before = session.landing()->depthMm;
    const QPoint at = view.map()->fromPatient(core::axisPointAt(*session.measurement(), before)).toPoint();
    QTest::mousePress(&view, Qt::LeftButton, {}, at);
    move(view, at + QPoint(20, 0));
    QTest::mouseRelease(&view, Qt::LeftButton, {}, at + QPoint(20, 0));
    const double expected = 20.0 / view.map()->pixelsPerMm;
    EXPECT_NEAR(session.record().landing.depthsMm.front() - before, expected, 0.15 * expected) << "the axis is slightly bent";
}

TEST_F(PlanesAndContours, AnEndHandleTiltsTheLandingPlane) {
    const core::Plane before = session.landingPlane().value();
    const auto where = *view.map();
    const auto planes = planesIn(session, where);
    const auto landing = std::find_if(planes.begin(), planes.end(), [](const auto& p) { return p.which == HeldPlane::Landing; });
    ASSERT_NE(landing, planes.end());
    const QPointF end = landing->handles.places()[2], middle = landing->handles.places()[1];
    EXPECT_TRUE(PlaneDrag::hint(session, where, end).contains(QStringLiteral("Alt+Up"))) << "the tooltip names the keys";
    EXPECT_TRUE(PlaneDrag::hint(session, where, middle).contains(QStringLiteral("Alt+Left")));
    const double turn = 12.0 * M_PI / 180.0;
    const QPointF arm = end - middle;
    const QPointF to = middle + QPointF(std::cos(turn) * arm.x() - std::sin(turn) * arm.y(), std::sin(turn) * arm.x() + std::cos(turn) * arm.y());
    const core::CaseRecord record = session.record();
    QTest::mousePress(&view, Qt::LeftButton, {}, end.toPoint());
    move(view, to);
    EXPECT_TRUE(session.record() == record) << "nothing is recorded while dragging";
    EXPECT_NEAR(session.landingShown()->tiltDeg.value(), 12.0, 0.6);
    QTest::mouseRelease(&view, Qt::LeftButton, {}, to.toPoint());
    ASSERT_TRUE(session.record().landing.normal);
    EXPECT_NEAR(core::angleBetweenDeg(before.normal, *session.record().landing.normal), 12.0, 0.6) << "the press is rounded to a pixel";
    ASSERT_TRUE(fixture::waitUntil([this] { return session.isLandingMeasured(); }));
    EXPECT_LT(core::distanceMm(session.landingPlane()->point, before.point), 1e-9) << "it turns about the axis";
    EXPECT_EQ(session.record().landing.depthsMm, record.landing.depthsMm);
    const core::CaseRecord after = session.record();
    session.document().undoStack().undo();
    EXPECT_FALSE(session.record().landing.normal);
    EXPECT_FALSE(session.landingShown()->tiltDeg);
    session.document().undoStack().redo();
    EXPECT_EQ(session.record().landing, after.landing);
    EXPECT_TRUE(session.landingShown()->tiltDeg);
}

TEST_F(PlanesAndContours, KeysActOnThePlaneThatIsShown) {
    const auto actions = planeActions(session, state, &view);
    state.showLanding();
    const core::Plane before = session.landingPlane().value();
    const double depth = session.landing()->depthMm;
    actions[0]->trigger();  // 0.5 mm towards the tip
    actions[4]->trigger();  // 1 degree in the picture
    actions[10]->trigger(); // 0.2 degrees out of it
    EXPECT_FALSE(session.record().ostium) << "the ostium stays";
    EXPECT_NEAR(session.record().landing.depthsMm.front(), depth + 0.5, 1e-9);
    // The axis bends by 0.3 degrees over the half millimetre.
    EXPECT_NEAR(core::angleBetweenDeg(before.normal, session.record().landing.normal.value()), std::hypot(1.0, 0.2), 0.5);
    actions[12]->trigger(); // square to the axis
    EXPECT_FALSE(session.record().landing.normal);
    EXPECT_NEAR(session.record().landing.depthsMm.front(), depth + 0.5, 1e-9);
    session.document().undoStack().undo();
    EXPECT_TRUE(session.record().landing.normal);
    session.document().undoStack().undo();
    EXPECT_EQ(session.record().landing.depthsMm.front(), depth) << "keys of one gesture are one step";
    for (const QAction* action : actions)
        EXPECT_TRUE(action->toolTip().contains(action->shortcut().toString(QKeySequence::NativeText))) << action->text().toStdString();
}

TEST_F(PlanesAndContours, ALandingPlaneIsNotTiltedOntoTheAxis) {
    const core::Plane plane = session.landingPlane().value();
    const auto record = session.record();
    session.tiltLanding(core::tilted(plane, view.map()->frame.normal, 70.0).normal, 9);
    EXPECT_TRUE(session.record() == record);
    EXPECT_TRUE(session.message().text.contains(QStringLiteral("tilted 70 degrees")));
    EXPECT_FALSE(session.isPreviewing());
}

TEST_F(PlanesAndContours, ATiltMakesExactlyTheLandingsCorrectedContourStale) {
    for (const bool landing : {false, true}) {
        landing ? state.showLanding() : state.showOstium();
        ASSERT_TRUE(cross.editContour(true));
        QTest::keyClick(&cross, Qt::Key_Right);
        QTest::keyClick(&cross, Qt::Key_Escape);
    }
    session.tiltLanding(core::tilted(session.landingPlane().value(), view.map()->frame.normal, 8.0).normal, 5);
    ASSERT_TRUE(fixture::waitUntil([this] { return !session.isMeasuring(); }));
    for (const auto& v : session.record().values)
        EXPECT_EQ(core::isStale(session.record(), v), v.id.starts_with("landing-1/") && v.id != "landing-1/straight-depth") << v.id;
    state.showLanding();
    cross.confirmContour();
    for (const auto& v : session.record().values)
        EXPECT_FALSE(core::isStale(session.record(), v)) << v.id;
}

TEST_F(PlanesAndContours, KeysMoveAndTiltInFineStepsAndRepeatsAreOneStepOfUndo) {
    const auto actions = planeActions(session, state, &view);
    state.showOstium();
    const core::Plane before = measuredOstium();
    actions[0]->trigger();
    actions[0]->trigger();
    actions[2]->trigger();
    ASSERT_TRUE(session.record().ostium);
    EXPECT_NEAR(core::signedDistanceMm(before, session.record().ostium->plane.point), 1.1, 1e-9);
    actions[4]->trigger();
    actions[10]->trigger();
    const auto& tilted = session.record().ostium->plane.normal;
    EXPECT_NEAR(core::angleBetweenDeg(before.normal, tilted), std::hypot(1.0, 0.2), 1e-3);
    session.document().undoStack().undo();
    EXPECT_FALSE(session.record().ostium) << "one gesture";
}

TEST_F(PlanesAndContours, APlugPlaneIsSetAndMovedByKeys) {
    const auto actions = planeActions(session, state, &view);
    const auto& plug = session.record().landing.plugMm;
    actions[13]->trigger();
    EXPECT_FALSE(plug);
    EXPECT_TRUE(session.message().text.contains(QStringLiteral("circumflex"))) << "which marks it needs";
    session.placeMark(core::MarkKind::Circumflex, {Eigen::Vector3d(0, -10, 0)});
    session.placeMark(core::MarkKind::Ridge, {Eigen::Vector3d(0, 10, 0)});
    actions[13]->trigger();
    ASSERT_TRUE(plug);
    const double first = *plug;
    actions[14]->trigger();
    EXPECT_NEAR(*plug, first + 0.5, 1e-9);
    actions[13]->trigger();
    EXPECT_FALSE(plug);
}

TEST_F(PlanesAndContours, ADraggedContourPointTakesThePlaceOfTheContourThatWasFound) {
    state.showOstium();
    const double found = value("ostium/area").estimate.value;
    ASSERT_TRUE(cross.editContour(true));
    const auto& section = session.measurement()->ostium.section;
    const auto handles = ContourEdit::handlesOn(section.contour);
    const QPointF at = cross.map()->fromSection(handles[0]);
    const QPointF outwards = at - cross.map()->fromPatient(section.center);
    const QPointF to = at + 0.3 * outwards;
    QTest::mousePress(&cross, Qt::LeftButton, {}, at.toPoint());
    move(cross, to);
    QTest::mouseRelease(&cross, Qt::LeftButton, {}, to.toPoint());
    ASSERT_TRUE(session.record().contours.contains("ostium"));
    const auto& corrected = value("ostium/area");
    EXPECT_GT(corrected.estimate.value, found + 1.0);
    EXPECT_GT(corrected.estimate.components.observer, 0.0);
    EXPECT_EQ(corrected.estimate.method, "contour corrected by hand");
    EXPECT_FALSE(core::isStale(session.record(), corrected));

    cross.restoreContour();
    EXPECT_NEAR(value("ostium/area").estimate.value, found, 1e-9);
    session.document().undoStack().undo();
    EXPECT_EQ(value("ostium/area").estimate.method, "contour corrected by hand");
}

TEST_F(PlanesAndContours, ACorrectedContourIsStaleWhenItsPlaneMovesUntilConfirmed) {
    state.showLanding();
    ASSERT_TRUE(cross.editContour(true));
    QTest::keyClick(&cross, Qt::Key_Tab);
    QTest::keyClick(&cross, Qt::Key_Right);
    ASSERT_TRUE(session.record().contours.contains("landing-1"));
    EXPECT_FALSE(core::isStale(session.record(), value("landing-1/area")));
    QTest::keyClick(&cross, Qt::Key_Escape);
    EXPECT_FALSE(cross.isEditingContour());
    session.moveLanding(14.0, 5);
    EXPECT_TRUE(core::isStale(session.record(), value("landing-1/area")));
    EXPECT_FALSE(core::isStale(session.record(), value("ostium/area"))) << "exactly its dependents";
    ASSERT_TRUE(fixture::waitUntil([this] { return !session.isMeasuring(); }));
    EXPECT_TRUE(core::isStale(session.record(), value("landing-1/area"))) << "the plane is measured, the correction is not confirmed";
    cross.confirmContour();
    EXPECT_FALSE(core::isStale(session.record(), value("landing-1/area")));
}

TEST_F(PlanesAndContours, AnEllipseIsChangedByItsHandlesAndEachStepIsUndone) {
    state.showOstium();
    ASSERT_TRUE(cross.editEllipse());
    EXPECT_FALSE(session.record().contours.contains("ostium")) << "the contour that was found is an ellipse already: nothing to record";
    const auto found = core::ellipseOf(session.measurement()->ostium.section.contour).value().ellipse;
    const auto where = *cross.map();
    const auto drag = [&](core::EllipseHandle handle, const Eigen::Vector2d& to) {
        const auto now = session.record().contours.contains("ostium")
                             ? core::ellipseOf(session.record().contours.at("ostium").content.points).value().ellipse
                             : found;
        const QPointF at = where.fromSection(core::placeOf(now, handle));
        QTest::mousePress(&cross, Qt::LeftButton, {}, at.toPoint());
        move(cross, at.toPoint() + (where.fromSection(to) - at));
        QTest::mouseRelease(&cross, Qt::LeftButton, {}, at.toPoint());
    };
    const auto present = [&] { return core::ellipseOf(session.record().contours.at("ostium").content.points).value().ellipse; };
    constexpr double kFit = 0.02; // mm: points of an ellipse fitted again
    const Eigen::Vector2d out = (core::placeOf(found, core::EllipseHandle::Along) - found.center).normalized();
    drag(core::EllipseHandle::Along, found.center + (found.alongMm + 2.0) * out);
    ASSERT_TRUE(session.record().contours.contains("ostium"));
    EXPECT_NEAR(present().alongMm, found.alongMm + 2.0, kFit);
    EXPECT_NEAR(present().acrossMm, found.acrossMm, kFit);
    EXPECT_NEAR(value("ostium/area").estimate.value, M_PI * (found.alongMm + 2.0) * found.acrossMm, 0.5);
    drag(core::EllipseHandle::Center, found.center + Eigen::Vector2d(1.5, -1.0));
    EXPECT_NEAR((present().center - found.center - Eigen::Vector2d(1.5, -1.0)).norm(), 0.0, kFit);
    const Eigen::Vector2d aside(-out.y(), out.x());
    drag(core::EllipseHandle::Turn, present().center + (present().alongMm + core::kTurnHandleMm) * (out + 0.3 * aside).normalized());
    EXPECT_NEAR(std::remainder(present().directionRad - found.directionRad - std::atan(0.3), M_PI), 0.0, 1e-3);
    EXPECT_NEAR(value("ostium/area").estimate.value, M_PI * (found.alongMm + 2.0) * found.acrossMm, 0.5) << "turning keeps the area";
    EXPECT_EQ(session.document().undoStack().undoText(), "Correct a contour");
    const auto turned = session.record();
    session.document().undoStack().undo();
    EXPECT_NEAR(std::remainder(present().directionRad - found.directionRad, M_PI), 0.0, 1e-3);
    session.document().undoStack().redo();
    EXPECT_TRUE(session.record().contours == turned.contours);
    for (int i = 0; i < 3; ++i)
        session.document().undoStack().undo();
    EXPECT_FALSE(session.record().contours.contains("ostium")) << "three drags, three steps";
    EXPECT_TRUE(cross.isEditingContour());
}

TEST_F(PlanesAndContours, AnEllipsesHandlesMoveByKeys) {
    state.showOstium();
    ASSERT_TRUE(cross.editEllipse());
    const double area = value("ostium/area").estimate.value;
    QTest::keyClick(&cross, Qt::Key_Right, Qt::ShiftModifier); // the centre, by a tenth of a pixel
    ASSERT_TRUE(session.record().contours.contains("ostium"));
    EXPECT_NEAR(value("ostium/area").estimate.value, area, 0.01 * area);
    QTest::keyClick(&cross, Qt::Key_Tab); // the end of the first half-axis
    for (int i = 0; i < 10; ++i) {
        QTest::keyClick(&cross, Qt::Key_Right);
        QTest::keyClick(&cross, Qt::Key_Down);
    }
    EXPECT_GT(std::abs(value("ostium/area").estimate.value - area), 0.03 * area);
}

TEST_F(PlanesAndContours, UndoWhileAContourIsEditedBringsItsPointsBack) {
    state.showOstium();
    ASSERT_TRUE(cross.editContour(true));
    QTest::keyClick(&cross, Qt::Key_Right);
    const auto once = session.record().contours.at("ostium").content.points;
    QTest::keyClick(&cross, Qt::Key_Tab);
    QTest::keyClick(&cross, Qt::Key_Right);
    session.document().undoStack().undo();
    QTest::keyClick(&cross, Qt::Key_Right); // the second point again, from where the record has it
    const auto again = session.record().contours.at("ostium").content.points;
    EXPECT_EQ(again[0], once[0]);
    EXPECT_NEAR((again[1] - once[1]).norm(), 1.0 / cross.map()->pixelsPerMm, 1e-9);
}

TEST_F(PlanesAndContours, OnlyTheDecidingSectionsAreCorrected) {
    state.showDepth(20.0);
    EXPECT_FALSE(cross.editContour(true));
    EXPECT_TRUE(session.message().text.contains(QStringLiteral("show")));
}

TEST_F(PlanesAndContours, WhatIsSeenWhileEverythingIsShown) {
    state.showOstium();
    cross.editContour(true);
    state.setPointer(measuredOstium().point);
    if (const auto folder = qEnvironmentVariable("GAUGE_TEST_PICTURES"); !folder.isEmpty()) {
        view.grab().save(folder + QStringLiteral("/long.png"));
        cross.grab().save(folder + QStringLiteral("/cross.png"));
    }
    EXPECT_FALSE(cross.grab().isNull());
}
