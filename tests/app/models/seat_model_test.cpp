// How the sizes would sit, from the record to the table and the panel, on a straight tube with a wall of its own.
#include "app/models/seat_model.h"

#include "app/commands/decision_commands.h"
#include "app/commands/mark_commands.h"
#include "app/drawing/seat_drawing.h"
#include "app/panels/seat_panel.h"
#include "core/anatomy/appendage_trace.h"
#include "core/record/edit.h"
#include "tests/app/support/decision_case.h"
#include "tests/app/support/synthetic_case.h"
#include "tests/app/support/synthetic_session.h"

#include <QAbstractItemModelTester>
#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>

namespace gauge {
namespace {

/// A tube of 10 mm radius along +x that ends at x = 30, open to an atrium on the other side.
std::shared_ptr<const core::AppendageTrace> tubeTrace(const core::AppendageTrace& like) {
    core::BoxGrid grid;
    grid.origin = {Eigen::Vector3d(-25, -20, -20)};
    grid.size = Eigen::Vector3i(65, 41, 41);
    core::BloodPool pool{core::BoxField<float>(grid, 40.0f), core::BoxMask(grid), core::BoxField<float>(grid), {}, {}, 0.4, 0, 0, {}, false};
    core::BoxMask appendage(grid);
    for (std::size_t i = 0; i < grid.count(); ++i) {
        const Eigen::Vector3d p = grid.patientFrom(i).mm;
        const double across = std::hypot(p.y(), p.z());
        if (!(p.x() < 0.0 ? p.norm() < 19.0 : across < 10.0 && p.x() < 30.0)) continue;
        pool.hu[i] = 380.0f;
        pool.mask[i] = 1;
        appendage[i] = p.x() >= 0.0;
    }
    pool.contrast = {380.0, 380.0, 40.0, 30.0, 20.0, 0.0};
    pool.levels = {{{Eigen::Vector3d::Zero()}}, {380.0}};
    return std::make_shared<const core::AppendageTrace>(
        core::AppendageTrace{std::move(pool), std::move(appendage), like.axis, like.ostiumAtMm, like.ostium, like.spread});
}

class SeatModelTest : public testing::Test {
protected:
    SeatModelTest() : answers(session) {
        answers.setEffort({512}, {4, 64});
        auto engine = fixture::syntheticEngine();
        const auto measure = engine.measure;
        engine.measure = [measure](const auto& volume, const auto& marks, const auto& options, const auto& work) {
            auto m = measure(volume, marks, options, work);
            m->trace = tubeTrace(*m->trace);
            return m;
        };
        fixture::openAndMeasure(session);
        session.setEngine(engine);
        const core::AppendageMarks marks = fixture::syntheticMarks();
        session.placeMark(core::MarkKind::Circumflex, *marks.circumflex);
        session.placeMark(core::MarkKind::Ridge, *marks.ridge);
        fixture::waitUntil([&] { return session.measurement() && !session.isMeasuring(); });
        fixture::addCourse(document());
        fixture::addChart(document());
        settle();
    }
    app::CaseDocument& document() { return session.document(); }
    void settle() {
        fixture::waitUntil([&] { return !session.isMeasuring(); });
        answers.finishNow();
        model.setAnswers(answers);
    }
    void choose(const std::string& size) {
        document().push(std::make_unique<app::ChooseSize>(document(), size));
        settle();
    }

    app::Session session;
    app::Answers answers;
    app::SeatModel model;
};

TEST_F(SeatModelTest, HasARowForEachSizeOfTheChart) {
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_TRUE(answers.seats().answer()) << answers.seats().problem().toStdString();
    const auto& sizes = answers.chart()->chart.sizes;
    ASSERT_EQ(model.rowCount(), static_cast<int>(sizes.size()));
    EXPECT_EQ(model.index(0, 0).data().toString().toStdString(), sizes.front().name);
    EXPECT_FALSE(model.isUsed(app::SeatModel::Disc)) << "a plug has none";
    EXPECT_EQ(model.asText().count(QLatin1Char('\n')), model.rowCount() + 1);
    // Straight on in a tube of 20 mm the least size reaches its end; the greatest does not fit.
    const core::Seat& least = answers.seats().answer()->sizes.front();
    EXPECT_EQ(least.end, core::SeatEnd::Ahead);
    EXPECT_NEAR(least.reachMm->value, 20.0, 1.0) << "from the landing plane at 10 mm to the end at 30; voxels of 1 mm";
    const core::Seat& greatest = answers.seats().answer()->sizes.back();
    EXPECT_FALSE(greatest.hasRoom);
    EXPECT_FALSE(answers.seats().answer()->sizes.back().seated);
    for (const int column : {app::SeatModel::BeyondArtery, app::SeatModel::Gaps, app::SeatModel::Clearances})
        EXPECT_EQ(model.index(model.rowCount() - 1, column).data().toString(), QStringLiteral("—")) << "nothing of it in place";
    EXPECT_TRUE(model.index(model.rowCount() - 1, app::SeatModel::Reach).data(app::SeatModel::IsWarningRole).toBool());
}

TEST_F(SeatModelTest, FollowsTheRecordAndItsUndo) {
    const auto share = [&] { return answers.seats().answer()->sizes[1].beyondCircumflexPercent; };
    ASSERT_TRUE(share());
    const double before = share()->value;
    session.placeMark(core::MarkKind::Circumflex, {Eigen::Vector3d(8, 0, -11)});
    settle();
    EXPECT_LT(share()->value, before - 10.0) << "the artery lies deeper";
    document().undoStack().undo();
    settle();
    EXPECT_EQ(share()->value, before);
    session.removeMark(core::MarkKind::Circumflex);
    settle();
    EXPECT_FALSE(share());
    EXPECT_EQ(model.index(1, app::SeatModel::BeyondArtery).data().toString(), QStringLiteral("not marked"));
}

TEST_F(SeatModelTest, GoesByTheChosenCrossingOfTheSeptum) {
    EXPECT_EQ(answers.seats().answer()->basis, core::SheathBasis::ProximalAxis);
    core::SeptumMarks marks;
    for (const auto& [y, z] : {std::pair{-8.0, 0.0}, {8.0, 0.0}, {0.0, 8.0}, {0.0, -8.0}, {6.0, 6.0}})
        marks.fossa.push_back({Eigen::Vector3d(-50.0, y, z)});
    marks.aorticRoot = core::PatientPoint{Eigen::Vector3d(-50.0, -30.0, 0.0)};
    document().apply(core::SetSingle<core::SeptumMarks>{core::Entry<core::SeptumMarks>{marks, document().nextRevision(), {}}});
    core::SeptumPlan plan;
    plan.crossing = core::PatientPoint{Eigen::Vector3d(-50.0, 3.0, -6.0)};
    document().apply(core::SetSingle<core::SeptumPlan>{core::Entry<core::SeptumPlan>{plan, document().nextRevision(), {}}});
    settle();
    ASSERT_TRUE(answers.seats().answer()) << answers.seats().problem().toStdString();
    EXPECT_EQ(answers.seats().answer()->basis, core::SheathBasis::Crossing);
    EXPECT_GT(answers.seats().question().direction.mm.z(), 0.05) << "upwards from a low crossing";
}

TEST_F(SeatModelTest, GivesTheChosenSizeToTheDrawings) {
    EXPECT_FALSE(answers.seats().chosen());
    const std::string size = answers.chart()->chart.sizes[1].name;
    choose(size);
    const core::Seat* seat = answers.seats().chosen();
    ASSERT_TRUE(seat);
    EXPECT_EQ(seat->name, size);
    const auto lines = app::seatSurfaceLines(*seat);
    ASSERT_FALSE(lines.empty());
    EXPECT_TRUE(lines.front().closed);
    EXPECT_EQ(lines.front().label.toStdString(), "size " + size);
    session.previewLanding(12.0);
    EXPECT_FALSE(answers.seats().chosen()) << "while the plane is dragged it would lie at the old place";
    session.dropPreviews();
    EXPECT_TRUE(answers.seats().chosen());
}

// Fit and seat must not contradict each other: what the fit counts as compressed within its band at the landing zone has room there.
TEST_F(SeatModelTest, HaveRoomWhereTheLandingZoneLeavesTheirNarrowestWidth) {
    const auto& sizes = answers.seats().answer()->sizes;
    const double width = *answers.seats().question().landingWidthMm + answers.seats().question().widenedByMm;
    for (const core::Seat& seat : sizes)
        EXPECT_EQ(seat.hasRoom, width >= seat.narrowestMm) << seat.name << " at " << width << " mm, narrowest " << seat.narrowestMm;
}

TEST_F(SeatModelTest, JudgesThePulmonaryArteryWhereItIsMarked) {
    session.placeMark(core::MarkKind::PulmonaryArtery, {Eigen::Vector3d(15, 0, 18)});
    settle();
    const auto& clearances = answers.seats().answer()->sizes.front().clearances;
    const auto found = std::find_if(clearances.begin(), clearances.end(),
                                    [](const core::SeatClearance& c) { return c.structure == core::Structure::PulmonaryArtery; });
    ASSERT_NE(found, clearances.end());
    EXPECT_GT(found->mm.value, 5.0);
    for (const core::Notice& notice : answers.seats().answer()->notices)
        EXPECT_EQ(notice.text.find("pulmonary"), std::string::npos) << notice.text;
}

TEST_F(SeatModelTest, IsSaidInTheirPanel) {
    choose(answers.chart()->chart.sizes[1].name);
    app::SeatPanel panel(answers);
    const std::string text = panel.text().toStdString();
    EXPECT_THAT(text, testing::HasSubstr("chosen"));
    EXPECT_THAT(text, testing::HasSubstr("Along the sheath size"));
    EXPECT_THAT(text, testing::HasSubstr("The sizes slide along the appendage's proximal axis, as no crossing is chosen."));
    EXPECT_THAT(text, testing::HasSubstr("Not marked, and so not judged: pulmonary artery, mitral annulus."));
    EXPECT_THAT(text, testing::HasSubstr("It knows no force"));
}

TEST(Seats, SayWhyThereIsNone) {
    app::Session session;
    app::Answers answers(session);
    fixture::addChart(session.document());
    answers.finishNow();
    EXPECT_FALSE(answers.seats().answer());
    EXPECT_EQ(answers.seats().problem(), QStringLiteral("How the sizes would sit is told once the appendage is measured on CT."));
}

} // namespace
} // namespace gauge
