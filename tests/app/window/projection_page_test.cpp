// The working projections on screen: planned in the background, kept in the record, taken by mouse and keyboard.
#include "app/views/projection_panel.h"

#include "app/commands/projection_commands.h"
#include "app/panels/c_arm_settings.h"
#include "app/panels/number_edit.h"
#include "app/views/radiograph_view.h"
#include "tests/app/support/synthetic_case.h"
#include "tests/app/support/synthetic_session.h"

#include <QCheckBox>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTableWidget>
#include <QTest>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;

namespace {

constexpr double kWholeDeg = 0.51; // the pointer takes whole degrees

class ProjectionPage : public ::testing::Test {
protected:
    Session session;
    ViewPlanner planner{session};

    void openCase(const std::string& position = "HFS") {
        session.setEngine(fixture::syntheticEngine());
        LoadedImages images = fixture::syntheticImages();
        auto index = std::make_shared<dicomio::SeriesIndex>(*images.index);
        index->series.front().patientPosition = position;
        images.index = index;
        session.open(std::move(images));
        const core::AppendageMarks marks = fixture::syntheticMarks();
        session.placeMark(core::MarkKind::Atrium, marks.atrium);
        session.placeMark(core::MarkKind::Tip, marks.tip);
        ASSERT_TRUE(fixture::waitUntil([&] { return session.measurement() && !session.isMeasuring() && !planner.isWorking(); }));
    }
    void show(QWidget& widget, int width = 900, int height = 760) {
        widget.resize(width, height);
        widget.show();
        QCoreApplication::processEvents();
    }
    std::vector<core::ChosenView> chosen() const {
        return session.record().projection ? session.record().projection->content.views : std::vector<core::ChosenView>{};
    }
};

} // namespace

TEST_F(ProjectionPage, PlansLandingZoneAndOstiumAndRecordsTheirAngles) {
    openCase();
    ASSERT_EQ(planner.plans().size(), 2u);
    EXPECT_EQ(planner.plans()[0].section, "landing-1");
    const auto enFace = core::recordedEnFace(session.record(), "ostium");
    ASSERT_TRUE(enFace);
    const auto expected = core::enFace(fixture::syntheticMeasurement().ostium.section.frame.normal);
    EXPECT_NEAR(enFace->primaryDeg, expected.primaryDeg, 0.01);
    EXPECT_NEAR(enFace->secondaryDeg, expected.secondaryDeg, 0.01);
}

TEST_F(ProjectionPage, PlansAnewWhenTheLandingZoneMoves) {
    openCase();
    const double before = planner.plan("landing-1")->plan.longestMm;
    session.moveLanding(20.0, 1);
    // The plane is measured first, then planned for. The synthetic appendage narrows.
    ASSERT_TRUE(fixture::waitUntil([&] { return !planner.isWorking() && planner.plan("landing-1") && planner.plan("landing-1")->plan.longestMm < before - 0.5; }));
    for (const core::RecordedValue& value : session.record().values)
        if (value.group == core::kProjectionValues) {
            EXPECT_FALSE(core::isStale(session.record(), value)) << value.id;
        }
}

TEST_F(ProjectionPage, GivesNoAnglesWhileThePatientsPositionIsNotKnown) {
    openCase("");
    EXPECT_TRUE(planner.plans().empty());
    ProjectionPanel panel(session, planner, ProjectionPanel::Extent::Whole);
    show(panel);
    EXPECT_TRUE(panel.text().contains("does not tell how the patient lay")) << panel.text().toStdString();
    EXPECT_FALSE(core::recordedEnFace(session.record(), "ostium"));
    // The person states it: nothing turned.
    auto* turned = panel.findChild<QCheckBox*>();
    ASSERT_TRUE(turned);
    turned->click();
    ASSERT_TRUE(fixture::waitUntil([&] { return !planner.isWorking() && !planner.plans().empty(); }));
    EXPECT_TRUE(session.record().projection->content.turn->isNone());
}

TEST_F(ProjectionPage, AClickTakesTheViewAndUndoGivesItBack) {
    openCase();
    ProjectionPanel panel(session, planner, ProjectionPanel::Extent::Whole);
    show(panel);
    const core::CArmAngles wanted{-25, -15};
    const auto place = panel.dome().map().placeOf(wanted);
    ASSERT_TRUE(place);
    QTest::mouseMove(&panel.dome(), place->toPoint());
    QTest::mouseClick(&panel.dome(), Qt::LeftButton, {}, place->toPoint());
    ASSERT_EQ(chosen().size(), 1u);
    EXPECT_NEAR(chosen()[0].angles.primaryDeg, wanted.primaryDeg, 1.0 + kWholeDeg); // a pixel of the dome is about a degree
    EXPECT_NEAR(chosen()[0].angles.secondaryDeg, wanted.secondaryDeg, 1.0 + kWholeDeg);
    EXPECT_EQ(chosen()[0].plane, "landing");
    EXPECT_FALSE(core::isStale(session.record(), chosen()[0]));
    EXPECT_TRUE(panel.text().contains("RAO")) << panel.text().toStdString();
    session.document().undoStack().undo();
    EXPECT_TRUE(chosen().empty());
}

TEST_F(ProjectionPage, TheKeyboardPointsAndTakes) {
    openCase();
    ProjectionPanel panel(session, planner, ProjectionPanel::Extent::Whole);
    show(panel);
    panel.curve()->setFocus();
    QTest::keyClick(panel.curve(), Qt::Key_Home);
    for (int i = 0; i < 3; ++i)
        QTest::keyClick(panel.curve(), Qt::Key_Left, Qt::ShiftModifier);
    QTest::keyClick(panel.curve(), Qt::Key_Up);
    QTest::keyClick(panel.curve(), Qt::Key_Return);
    ASSERT_EQ(chosen().size(), 1u);
    EXPECT_EQ(chosen()[0].angles, (core::CArmAngles{-30, 1}));
    EXPECT_EQ(panel.dome().picture().pointer, chosen()[0].angles); // both pictures point at one view
    // Onto the curve: edge-on, if the plane has such a view there.
    QTest::keyClick(panel.curve(), Qt::Key_E);
    const auto view = panel.curve()->picture().pointer;
    ASSERT_TRUE(view);
    EXPECT_NEAR(core::beamDirection(*view).dot(planner.plan("landing-1")->plan.normal), 0.0, 1e-6);
}

TEST_F(ProjectionPage, ARowOfTheTableIsTakenWithItsAimOnce) {
    openCase();
    ProjectionPanel panel(session, planner, ProjectionPanel::Extent::Whole);
    show(panel);
    const int rows = panel.table()->rowCount();
    ASSERT_GE(rows, 4);
    panel.table()->setCurrentCell(0, 0);
    emit panel.table()->activated(panel.table()->currentIndex());
    emit panel.table()->activated(panel.table()->currentIndex());
    ASSERT_EQ(chosen().size(), 1u);
    EXPECT_EQ(chosen()[0].aim, core::ViewAim::LongestWidth);
    EXPECT_EQ(panel.table()->rowCount(), rows + 1);
    session.moveLanding(20.0, 1);
    // The plane is measured first, then planned for.
    EXPECT_TRUE(fixture::waitUntil([&] { return panel.table()->item(panel.table()->rowCount() - 1, 3)->text().contains("before the plane moved"); }));
    EXPECT_TRUE(core::isStale(session.record(), chosen()[0]));
}

TEST_F(ProjectionPage, TheReachIsSetAndBringsOtherViews) {
    openCase();
    ProjectionPanel panel(session, planner, ProjectionPanel::Extent::Whole);
    show(panel);
    session.document().push(std::make_unique<SetCArmReach>(session.document(), core::CArmReach{20, 20, 15, 15}));
    ASSERT_TRUE(fixture::waitUntil([&] { return !planner.isWorking(); }));
    for (const core::SectionPlan& plan : planner.plans())
        for (const core::WorkingView& view : plan.plan.views)
            EXPECT_TRUE((core::CArmReach{20, 20, 15, 15}).contains(view.seen.angles)) << core::name(view.aim);
    EXPECT_EQ(panel.dome().picture().reach, (core::CArmReach{20, 20, 15, 15}));
}

TEST_F(ProjectionPage, SaysWhatIsMissingWhileNothingIsMeasured) {
    ProjectionPanel panel(session, planner, ProjectionPanel::Extent::Short);
    show(panel, 500, 260);
    ASSERT_TRUE(fixture::waitUntil([&] { return !planner.isWorking(); }));
    EXPECT_TRUE(panel.text().contains("is not measured on CT")) << panel.text().toStdString();
}

TEST_F(ProjectionPage, TheSimulatedRadiographStandsAtTheChosenView) {
    openCase();
    ProjectionPanel panel(session, planner, ProjectionPanel::Extent::Whole);
    show(panel);
    EXPECT_EQ(panel.radiograph()->angles(), planner.plan("landing-1")->plan.views.front().seen.angles) << "nothing chosen: the first working view";
    panel.table()->setCurrentCell(1, 0);
    emit panel.table()->activated(panel.table()->currentIndex());
    ASSERT_EQ(chosen().size(), 1u);
    EXPECT_EQ(panel.radiograph()->angles(), chosen()[0].angles);
    EXPECT_EQ(panel.dome().picture().arm, chosen()[0].angles);
    ASSERT_TRUE(fixture::waitUntil([&] { return panel.radiograph()->isSharp(); }));
    // Another panel, as after the case was opened again.
    ProjectionPanel again(session, planner, ProjectionPanel::Extent::Whole);
    show(again);
    EXPECT_EQ(again.radiograph()->angles(), chosen()[0].angles);
}

TEST_F(ProjectionPage, ADragOnTheDomeTurnsTheRadiographAndTakesNothing) {
    openCase();
    ProjectionPanel panel(session, planner, ProjectionPanel::Extent::Whole);
    show(panel);
    ProjectionChart& dome = panel.dome();
    const auto at = [&](double primary, double secondary) { return dome.map().placeOf({primary, secondary})->toPoint(); };
    QTest::mousePress(&dome, Qt::LeftButton, {}, at(-40, 5));
    for (const double primary : {-30.0, -20.0, -10.0, 0.0, 15.0}) {
        QTest::mouseMove(&dome, at(primary, 8));
        EXPECT_NEAR(panel.radiograph()->angles().primaryDeg, primary, 1.0 + kWholeDeg);
        EXPECT_EQ(panel.curve()->picture().arm, panel.radiograph()->angles());
        EXPECT_EQ(panel.curve()->picture().pointer, panel.radiograph()->angles());
    }
    QTest::mouseRelease(&dome, Qt::LeftButton, {}, at(15, 8));
    EXPECT_TRUE(chosen().empty()) << "a drag only looks";
    const core::CArmAngles held = panel.radiograph()->angles();
    QTest::mouseMove(&dome, at(-50, -20));
    EXPECT_EQ(panel.radiograph()->angles(), held) << "pointing alone does not turn the arm";
    // What is planned anew does not take the arm from the hand.
    session.moveLanding(20.0, 1);
    ASSERT_TRUE(fixture::waitUntil([&] { return !session.isMeasuring() && !planner.isWorking(); }));
    EXPECT_EQ(panel.radiograph()->angles(), held);
}

TEST_F(ProjectionPage, TheKeysOfTheDomeTurnTheRadiographAndItsOwnMoveTheRing) {
    openCase();
    ProjectionPanel panel(session, planner, ProjectionPanel::Extent::Whole);
    show(panel);
    panel.dome().setFocus();
    QTest::keyClick(&panel.dome(), Qt::Key_Home);
    QTest::keyClick(&panel.dome(), Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_EQ(panel.radiograph()->angles(), (core::CArmAngles{10, 0}));
    QTest::keyClick(panel.radiograph(), Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(panel.dome().picture().arm, (core::CArmAngles{10, 10}));
    QTest::keyClick(&panel.dome(), Qt::Key_Escape);
    EXPECT_TRUE(panel.text().contains("LAO 10°, CRA 10°")) << panel.text().toStdString();
}

TEST_F(ProjectionPage, RefusesOnThePageWhatCannotBeKnown) {
    openCase("HFP");
    ProjectionPanel panel(session, planner, ProjectionPanel::Extent::Whole);
    show(panel);
    EXPECT_TRUE(panel.text().contains("on the face")) << panel.text().toStdString();
    EXPECT_TRUE(panel.radiograph()->problem().contains("on the face")) << panel.radiograph()->problem().toStdString();
    EXPECT_TRUE(panel.dome().accessibleDescription().contains("on the face"));
    EXPECT_FALSE(panel.radiograph()->picture());
}

TEST_F(ProjectionPage, TakesDistancesAndSaysWhichCannotBe) {
    openCase();
    ProjectionPanel panel(session, planner, ProjectionPanel::Extent::Whole);
    show(panel);
    NumberEdit *isocentre = nullptr, *detector = nullptr;
    for (NumberEdit* edit : panel.findChildren<NumberEdit*>()) {
        if (edit->accessibleName() == "to the isocentre") isocentre = edit;
        if (edit->accessibleName() == "to the detector") detector = edit;
    }
    ASSERT_TRUE(isocentre && detector);
    const auto type = [](NumberEdit* edit, const QString& text) {
        edit->setText(text);
        emit edit->editingFinished();
    };
    const QSignalSpy changed(&panel, &ProjectionPanel::distancesChanged);
    type(isocentre, "720");
    EXPECT_EQ(usualDistances(), (core::CArmDistances{720, 1100}));
    EXPECT_EQ(changed.count(), 1);
    EXPECT_NEAR(panel.radiograph()->arm()->sourceToIsocentreMm, 720.0, 1e-9);
    type(detector, "700");
    EXPECT_EQ(session.message().kind, Message::Kind::Warning);
    EXPECT_TRUE(session.message().text.contains("beyond the isocentre")) << session.message().text.toStdString();
    EXPECT_EQ(usualDistances(), (core::CArmDistances{720, 1100})) << "what cannot be is not taken";
    EXPECT_EQ(detector->value(), 1100.0);
    // The room's, not the case's: another window begins with them.
    EXPECT_NEAR(ProjectionPanel(session, planner, ProjectionPanel::Extent::Whole).radiograph()->arm()->sourceToIsocentreMm, 720.0, 1e-9);
    type(isocentre, "");
    type(detector, "");
    EXPECT_FALSE(usualDistances());
    EXPECT_TRUE(isocentre->toolTip().contains("assumption"));
}

TEST(ProjectionMap, FindsTheWayBackOnBothPictures) {
    for (const ProjectionForm form : {ProjectionForm::Dome, ProjectionForm::Curve}) {
        const ProjectionMap map(form, QRectF(0, 0, 600, 420));
        for (double primary = -80; primary <= 80; primary += 20)
            for (double secondary = -50; secondary <= 50; secondary += 25) {
                const auto place = map.placeOf({primary, secondary});
                ASSERT_TRUE(place);
                const auto view = map.viewAt(*place);
                ASSERT_TRUE(view);
                EXPECT_NEAR(view->primaryDeg, primary, 1e-6);
                EXPECT_NEAR(view->secondaryDeg, secondary, 1e-6);
            }
        EXPECT_FALSE(map.viewAt({-5, -5}));
    }
    EXPECT_FALSE(ProjectionMap(ProjectionForm::Dome, QRectF(0, 0, 300, 300)).placeOf({170, 0})); // from behind
    // The patient's left is on the right, the head up.
    const ProjectionMap dome(ProjectionForm::Dome, QRectF(0, 0, 300, 300));
    EXPECT_GT(dome.placeOf({40, 0})->x(), dome.placeOf({0, 0})->x());
    EXPECT_LT(dome.placeOf({0, 40})->y(), dome.placeOf({0, 0})->y());
}
