// Drawing, changing, labelling and removing measurements with mouse and keys, on the views of the CT.
#include "app/interaction/drawing_layer.h"

#include "app/interaction/tool_actions.h"
#include "app/views/cross_section_view.h"
#include "app/views/scanner_section_view.h"
#include "app/format/drawing_words.h"
#include "tests/app/support/synthetic_session.h"

#include <QLineEdit>
#include <QTest>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;

namespace {

constexpr double kRoundingMm = 1e-6;

class Drawings : public ::testing::Test {
protected:
    Session session;
    ViewState state;
    ScannerSectionView axial{ScannerAxis::Axial, session, state};
    CrossSectionView cross{session, state};

    void SetUp() override {
        session.setEngine(fixture::syntheticEngine());
        fixture::openAndMeasure(session);
        for (QWidget* view : {static_cast<QWidget*>(&axial), static_cast<QWidget*>(&cross)}) {
            view->resize(420, 420);
            view->show();
        }
        QCoreApplication::processEvents();
    }

    static void move(QWidget& view, const QPoint& to, Qt::MouseButtons buttons = Qt::LeftButton) {
        QMouseEvent event(QEvent::MouseMove, QPointF(to), view.mapToGlobal(QPointF(to)), Qt::NoButton, buttons, Qt::NoModifier);
        QCoreApplication::sendEvent(&view, &event);
    }
    static void drag(QWidget& view, const QPoint& from, const QPoint& to) {
        QTest::mousePress(&view, Qt::LeftButton, {}, from);
        move(view, (from + to) / 2);
        move(view, to);
        QTest::mouseRelease(&view, Qt::LeftButton, {}, to);
    }
    /// Draws a straight line from end to end.
    void drawLine(QWidget& view, const QPoint& from, const QPoint& to) {
        state.armTool(core::DrawingKind::Straight);
        drag(view, from, to);
    }
    const core::Drawing& drawing(const char* id = "1") { return session.record().drawings.at(id).content; }
    std::size_t count() { return session.record().drawings.size(); }
    double lengthOf(const char* id = "1") {
        const auto* value = leadingValue(session.record(), id);
        return value ? value->estimate.value : -1.0;
    }
    bool isStale(const char* id = "1") { return core::isStale(session.record(), *leadingValue(session.record(), id)); }
    double mmBetween(const ImageView& view, const QPoint& a, const QPoint& b) {
        return core::distanceMm(view.map()->patientFrom(a), view.map()->patientFrom(b));
    }
};

} // namespace

TEST_F(Drawings, ADragDrawsALineWhoseLengthIsThatInThePatient) {
    const QPoint from(120, 200), to(260, 240);
    drawLine(axial, from, to);
    ASSERT_EQ(count(), 1u);
    EXPECT_NEAR(lengthOf(), mmBetween(axial, from, to), kRoundingMm);
    EXPECT_FALSE(state.tool()) << "one drawing, then the tool is put down";
    EXPECT_EQ(state.selectedDrawing(), QStringLiteral("1"));
    const auto* value = leadingValue(session.record(), "1");
    EXPECT_GT(value->estimate.standardUncertainty(), 0.0);
    EXPECT_EQ(value->provenance->frameOfReferenceUid, session.volume()->frameOfReferenceUid());
}

TEST_F(Drawings, UndoTakesTheDrawingAndItsValueAwayAndRedoBringsBothBack) {
    drawLine(axial, {120, 200}, {260, 240});
    const double length = lengthOf();
    session.document().undoStack().undo();
    EXPECT_EQ(count(), 0u);
    EXPECT_EQ(leadingValue(session.record(), "1"), nullptr);
    session.document().undoStack().redo();
    EXPECT_NEAR(lengthOf(), length, kRoundingMm);
    EXPECT_FALSE(isStale());
}

TEST_F(Drawings, TwoClicksDrawAsWellAndAClickOnTheSamePlaceDoesNot) {
    state.armTool(core::DrawingKind::Straight);
    QTest::mouseClick(&axial, Qt::LeftButton, {}, QPoint(100, 100));
    QTest::mouseClick(&axial, Qt::LeftButton, {}, QPoint(100, 100));
    EXPECT_EQ(count(), 0u);
    QTest::mouseClick(&axial, Qt::LeftButton, {}, QPoint(180, 100));
    ASSERT_EQ(count(), 1u);
    EXPECT_NEAR(lengthOf(), mmBetween(axial, {100, 100}, {180, 100}), kRoundingMm);
}

TEST_F(Drawings, EscapeGivesUpWhatIsBegunThenTheTool) {
    state.armTool(core::DrawingKind::Curve);
    QTest::mouseClick(&axial, Qt::LeftButton, {}, QPoint(100, 100));
    QTest::keyClick(&axial, Qt::Key_Escape);
    EXPECT_TRUE(state.tool());
    QTest::keyClick(&axial, Qt::Key_Return);
    EXPECT_EQ(count(), 0u);
    QTest::keyClick(&axial, Qt::Key_Escape);
    EXPECT_FALSE(state.tool());
}

TEST_F(Drawings, ALineOfManyPointsEndsWithEnterAndBackspaceTakesAPointBack) {
    state.armTool(core::DrawingKind::Curve);
    for (const QPoint at : {QPoint(100, 200), QPoint(140, 180), QPoint(180, 260), QPoint(180, 200)})
        QTest::mouseClick(&axial, Qt::LeftButton, {}, at);
    QTest::keyClick(&axial, Qt::Key_Backspace);
    QTest::mouseClick(&axial, Qt::LeftButton, {}, QPoint(220, 200));
    QTest::keyClick(&axial, Qt::Key_Return);
    ASSERT_EQ(count(), 1u);
    EXPECT_EQ(drawing().points.size(), 4u);
    EXPECT_GT(lengthOf(), mmBetween(axial, {100, 200}, {220, 200}));
}

TEST_F(Drawings, AnAreaClosesOnItsFirstPointAndAnEllipseByItsDiameterAndHalfWidth) {
    state.armTool(core::DrawingKind::Area);
    for (const QPoint at : {QPoint(150, 150), QPoint(250, 150), QPoint(250, 250), QPoint(150, 250), QPoint(151, 151)})
        QTest::mouseClick(&axial, Qt::LeftButton, {}, at);
    ASSERT_EQ(count(), 1u);
    EXPECT_EQ(drawing().points.size(), 4u);
    state.armTool(core::DrawingKind::Ellipse);
    drag(axial, {100, 300}, {200, 300});
    QTest::mouseClick(&axial, Qt::LeftButton, {}, QPoint(150, 330));
    ASSERT_EQ(count(), 2u);
    const double a = mmBetween(axial, {150, 300}, {200, 300}), b = mmBetween(axial, {150, 300}, {150, 330});
    EXPECT_NEAR(lengthOf("2"), M_PI * a * b, 1e-3) << "the area leads";
}

TEST_F(Drawings, AnAngleTakesThreeClicks) {
    state.armTool(core::DrawingKind::Angle);
    for (const QPoint at : {QPoint(100, 200), QPoint(200, 200), QPoint(200, 120)})
        QTest::mouseClick(&axial, Qt::LeftButton, {}, at);
    EXPECT_NEAR(lengthOf(), 90.0, 1e-6);
}

TEST_F(Drawings, IsDrawnByTheKeyboardAlone) {
    state.armTool(core::DrawingKind::Straight);
    QTest::keyClick(&axial, Qt::Key_Space);
    for (int i = 0; i < 10; ++i)
        QTest::keyClick(&axial, Qt::Key_Right);
    QTest::keyClick(&axial, Qt::Key_Space);
    ASSERT_EQ(count(), 1u);
    EXPECT_NEAR(lengthOf(), 80.0 / axial.map()->pixelsPerMm, kRoundingMm) << "ten steps of eight pixels";
}

TEST_F(Drawings, APointIsDraggedInOneStepOfUndo) {
    drawLine(axial, {120, 200}, {260, 200});
    const int steps = session.document().undoStack().count();
    drag(axial, {260, 200}, {300, 200});
    EXPECT_EQ(session.document().undoStack().count(), steps + 1);
    EXPECT_NEAR(lengthOf(), mmBetween(axial, {120, 200}, {300, 200}), kRoundingMm);
    session.document().undoStack().undo();
    EXPECT_NEAR(lengthOf(), mmBetween(axial, {120, 200}, {260, 200}), kRoundingMm);
}

TEST_F(Drawings, EscapeDuringADragOfAPointLeavesTheRecordAlone) {
    drawLine(axial, {120, 200}, {260, 200});
    const auto before = session.record();
    QTest::mousePress(&axial, Qt::LeftButton, {}, QPoint(260, 200));
    move(axial, {320, 260});
    QTest::keyClick(&axial, Qt::Key_Escape);
    QTest::mouseRelease(&axial, Qt::LeftButton, {}, QPoint(320, 260));
    EXPECT_TRUE(session.record() == before);
}

TEST_F(Drawings, ArrowsMoveTheChosenPointByAPixelAndByATenth) {
    drawLine(axial, {120, 200}, {260, 200});
    const double pixel = 1.0 / axial.map()->pixelsPerMm, before = lengthOf();
    QTest::keyClick(&axial, Qt::Key_Tab); // from the first point to the second
    QTest::keyClick(&axial, Qt::Key_Right);
    EXPECT_NEAR(lengthOf(), before + pixel, kRoundingMm);
    QTest::keyClick(&axial, Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_NEAR(lengthOf(), before + 1.1 * pixel, kRoundingMm);
    session.document().undoStack().undo();
    EXPECT_NEAR(lengthOf(), before + pixel, kRoundingMm) << "each press its own step";
}

TEST_F(Drawings, IsSelectedByClickOrKeyLabelledAndRemoved) {
    drawLine(axial, {120, 200}, {260, 200});
    state.selectDrawing({});
    QTest::mouseClick(&axial, Qt::LeftButton, {}, QPoint(190, 202));
    EXPECT_EQ(state.selectedDrawing(), QStringLiteral("1"));
    EXPECT_FALSE(axial.accessibleDescription().isEmpty()) << "a screen reader hears what is selected";
    QTest::keyClick(&axial, Qt::Key_Escape);
    EXPECT_TRUE(state.selectedDrawing().isEmpty());
    QTest::keyClick(&axial, Qt::Key_N);
    EXPECT_EQ(state.selectedDrawing(), QStringLiteral("1"));

    QTest::keyClick(&axial, Qt::Key_F2);
    auto* label = axial.findChild<QLineEdit*>();
    ASSERT_NE(label, nullptr);
    EXPECT_FALSE(label->accessibleName().isEmpty());
    QTest::keyClicks(label, QStringLiteral("shelf"));
    QTest::keyClick(label, Qt::Key_Return);
    EXPECT_EQ(drawing().label, "shelf");
    EXPECT_TRUE(drawingCaption(session.record(), "1").startsWith(QStringLiteral("shelf: ")));
    EXPECT_FALSE(isStale());

    QTest::keyClick(&axial, Qt::Key_Delete);
    EXPECT_EQ(count(), 0u);
    session.document().undoStack().undo();
    EXPECT_EQ(drawing().label, "shelf");
}

TEST_F(Drawings, ADoubleClickOpensTheLabelAndEscapeLeavesItAsItWas) {
    drawLine(axial, {120, 200}, {260, 200});
    QTest::mouseDClick(&axial, Qt::LeftButton, {}, QPoint(190, 200));
    auto* label = axial.findChild<QLineEdit*>();
    ASSERT_NE(label, nullptr);
    QTest::keyClicks(label, QStringLiteral("x"));
    QTest::keyClick(label, Qt::Key_Escape);
    EXPECT_TRUE(drawing().label.empty());
}

TEST_F(Drawings, OneKeyPutsAMeasurementIntoTheTable) {
    const auto roles = drawingRoleActions(session, state, &axial);
    EXPECT_FALSE(roles[1]->isEnabled()) << "nothing selected";
    drawLine(axial, {120, 200}, {260, 200});
    ASSERT_TRUE(roles[1]->isEnabled());
    EXPECT_EQ(roles[1]->shortcut(), QKeySequence(Qt::Key_F4));
    roles[1]->trigger();
    EXPECT_EQ(drawing().role, core::DrawingRole::LandingWidth);
    roles.last()->trigger();
    EXPECT_EQ(drawing().role, core::DrawingRole::None);
    session.document().undoStack().undo();
    EXPECT_EQ(drawing().role, core::DrawingRole::LandingWidth);
}

TEST_F(Drawings, OnTheLandingPlaneIsStaleWhenItMovesUntilConfirmed) {
    state.showLanding();
    drawLine(cross, {150, 210}, {270, 210});
    const double length = lengthOf();
    EXPECT_EQ(std::get<core::SectionSite>(drawing().site).plane, core::input::kLanding);
    EXPECT_FALSE(isStale());
    session.moveLanding(14.0, 77);
    EXPECT_TRUE(isStale());
    EXPECT_TRUE(drawingCaption(session.record(), "1").contains(QStringLiteral("stale until confirmed")));
    ASSERT_TRUE(fixture::waitUntil([this] { return !session.isMeasuring(); }));
    const auto* landing = session.landing();
    ASSERT_NE(landing, nullptr);
    QTest::keyClick(&cross, Qt::Key_Return);
    EXPECT_FALSE(isStale());
    EXPECT_TRUE(std::get<core::SectionSite>(drawing().site).frame == landing->section.frame);
    EXPECT_NEAR(lengthOf(), length, 0.5) << "carried along the normal of a plane that hardly turned";
    session.document().undoStack().undo(); // the confirmation
    EXPECT_TRUE(isStale());
    session.document().undoStack().undo(); // the move
    EXPECT_FALSE(isStale());
}

TEST_F(Drawings, AreShownOnlyWhereTheyLie) {
    drawLine(axial, {120, 200}, {260, 200});
    EXPECT_TRUE(axial.shows(drawing()));
    EXPECT_FALSE(cross.shows(drawing()));
    state.setCrossing(state.crossing() + core::PatientVector{Eigen::Vector3d(0, 0, 5)});
    EXPECT_FALSE(axial.shows(drawing()));
    EXPECT_FALSE(axial.blank(core::DrawingKind::Velocity)) << "CT has no velocities";
}

TEST_F(Drawings, ThePlaceUnderThePointerIsToldToTheOtherViews) {
    move(axial, {210, 180}, Qt::NoButton);
    ASSERT_TRUE(state.pointer());
    EXPECT_LT(core::distanceMm(*state.pointer(), axial.map()->patientFrom(QPointF(210, 180))), kRoundingMm);
    QEvent leave(QEvent::Leave);
    QCoreApplication::sendEvent(&axial, &leave);
    EXPECT_FALSE(state.pointer());
}

TEST_F(Drawings, ToolActionsArmOneToolAtATimeAndPutAMarkDown) {
    const auto tools = drawingToolActions(state, &axial);
    state.arm(core::MarkKind::Tip);
    tools[0]->trigger();
    EXPECT_EQ(state.tool(), core::DrawingKind::Straight);
    EXPECT_FALSE(state.armed());
    tools[3]->trigger();
    EXPECT_EQ(state.tool(), core::DrawingKind::Area);
    EXPECT_FALSE(tools[0]->isChecked());
    tools[3]->trigger();
    EXPECT_FALSE(state.tool());
    for (const QAction* tool : tools)
        EXPECT_TRUE(tool->toolTip().contains(tool->shortcut().toString(QKeySequence::NativeText)));
}

TEST_F(Drawings, WindowsAndSlabsAreChosenByKeys) {
    const auto actions = pictureActions(state, &axial);
    const GreyWindow before = state.window();
    actions[1]->trigger();
    EXPECT_FALSE(state.window() == before);
    const auto thicker = actions[5];
    thicker->trigger();
    EXPECT_EQ(state.slab().thicknessMm, 1.0);
    actions[7]->trigger();
    EXPECT_EQ(state.slab().shows, core::SlabValue::Mean);
    actions[6]->trigger();
    actions[6]->trigger();
    EXPECT_EQ(state.slab().thicknessMm, 0.0) << "never below";
}
