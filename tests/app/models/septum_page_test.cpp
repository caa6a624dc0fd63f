// The page of the septal crossing on the synthetic case, whose appendage runs along +x.
#include "app/commands/septum_commands.h"
#include "app/document/sample_record.h"
#include "app/format/core_sentences.h"
#include "app/models/demo_charts.h"
#include "app/views/septal_face_view.h"
#include "app/views/septum_page.h"
#include "core/geometry/polyline.h"
#include "core/record/septum_values.h"
#include "tests/app/support/synthetic_case.h"
#include "tests/app/support/synthetic_session.h"

#include <Eigen/Geometry>
#include <QPainter>
#include <QSignalSpy>
#include <QTest>
#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <numbers>

using namespace gauge;
using namespace gauge::app;
using fixture::waitUntil;
using testing::HasSubstr;

namespace {

/// Upright septum 45 mm to the right of the ostium's centre, the annulus 38 mm below its middle.
core::SeptumMarks marksBeside(const core::PatientPoint& ostium) {
    core::SeptumMarks marks;
    const Eigen::Vector3d middle = ostium.mm + Eigen::Vector3d(-45, 4, 0);
    for (int i = 0; i < 10; ++i) {
        const double t = 2.0 * std::numbers::pi * i / 10;
        marks.fossa.push_back({middle + Eigen::Vector3d(0, 9 * std::cos(t), 11 * std::sin(t))});
        marks.annulus.push_back({middle + Eigen::Vector3d(22 + 14 * std::cos(t), 14 * std::sin(t), -38)});
    }
    marks.coaptation = {{middle + Eigen::Vector3d(22, 0, -46)}};
    marks.aorticRoot = core::PatientPoint{middle + Eigen::Vector3d(0, -30, 8)};
    return marks;
}

class SeptumPageTest : public ::testing::Test {
protected:
    Session session;
    ViewState state;

    void SetUp() override {
        session.setEngine(fixture::syntheticEngine());
        fixture::openAndMeasure(session);
        ASSERT_TRUE(session.measurement());
    }
    void mark() {
        const auto marks = marksBeside(session.measurement()->ostium.section.center);
        CaseDocument& document = session.document();
        for (const SeptumPoint kind : kSeptumPoints)
            for (const auto& point : pointsOf(marks, kind))
                document.push(std::make_unique<AddSeptumPoint>(document, kind, point));
    }
    std::vector<core::RecordedValue> values() const {
        std::vector<core::RecordedValue> found;
        for (const auto& value : session.record().values)
            if (value.group == core::kSeptumValues) found.push_back(value);
        return found;
    }
};

} // namespace

TEST_F(SeptumPageTest, EmptyStateTellsWhatToMark) {
    SeptumPage page(session, state);
    page.resize(700, 700);
    EXPECT_TRUE(page.model().state().isEmpty());
    EXPECT_FALSE(page.face().map());
    EXPECT_FALSE(page.grab().isNull());
    EXPECT_TRUE(page.text().isEmpty());
}

TEST_F(SeptumPageTest, AnswersOnceEverythingIsMarked) {
    SeptumPage page(session, state);
    mark();
    const SeptumState& now = page.model().state();
    ASSERT_TRUE(now.scene) << now.scene.error().message;
    ASSERT_TRUE(now.answer);
    EXPECT_EQ(now.answer->advice, core::CrossingAdvice::SameCrossing);
    EXPECT_THAT(page.text().toStdString(), HasSubstr("One crossing can serve both"));
    EXPECT_THAT(page.text().toStdString(), HasSubstr("over the plane of the mitral annulus"));
}

TEST_F(SeptumPageTest, DraggingTheCrossingIsOneStepOfUndoAndRecordsValues) {
    SeptumPage page(session, state);
    page.resize(800, 800);
    page.show();
    mark();
    const auto map = page.face().map();
    ASSERT_TRUE(map);
    const int before = session.document().undoStack().count();
    const auto pixel = [&](double u, double v) { return map->from({u, v}).toPoint(); };
    QTest::mousePress(&page.face(), Qt::LeftButton, {}, pixel(0, 0));
    QTest::mouseMove(&page.face(), pixel(1, 1));
    QTest::mouseMove(&page.face(), pixel(2, 3));
    QTest::mouseRelease(&page.face(), Qt::LeftButton, {}, pixel(2, 3));
    EXPECT_EQ(session.document().undoStack().count(), before + 1);
    ASSERT_TRUE(page.model().state().crossing);
    EXPECT_NEAR(page.model().state().crossing->place.x(), 2.0, 0.2);
    EXPECT_NEAR(page.model().state().crossing->place.y(), 3.0, 0.2);
    ASSERT_TRUE(waitUntil([&] { return values().size() == 5; }));
    for (const auto& value : values())
        EXPECT_FALSE(core::isStale(session.record(), value)) << value.id;
    EXPECT_NEAR(values().front().estimate.value, 41.0, 0.3); // over the annulus: 38 + 3
    session.document().undoStack().undo();
    EXPECT_FALSE(page.model().state().crossing);
    ASSERT_TRUE(waitUntil([&] { return values().empty(); }));
}

TEST_F(SeptumPageTest, ArrowKeysMoveTheCrossingAlsoSeenFromTheRight) {
    SeptumPage page(session, state);
    page.resize(800, 800);
    page.show();
    mark();
    page.model().choose({0, 0}, 0);
    QTest::keyClick(&page.face(), Qt::Key_Right);
    EXPECT_NEAR(page.model().state().crossing->place.x(), 0.5, 1e-9);
    QTest::keyClick(&page.face(), Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_NEAR(page.model().state().crossing->place.y(), 2.0, 1e-9);
    page.face().setFromRight(true);
    QTest::keyClick(&page.face(), Qt::Key_Right);
    EXPECT_NEAR(page.model().state().crossing->place.x(), 0.0, 1e-9);
}

TEST_F(SeptumPageTest, OutsideTheFossaIsRefusedInWords) {
    SeptumPage page(session, state);
    mark();
    EXPECT_FALSE(page.model().choose({0, -20}, 0));
    EXPECT_EQ(session.message().kind, Message::Kind::Warning);
    EXPECT_THAT(session.message().text.toStdString(), HasSubstr("inferior side"));
    EXPECT_FALSE(page.model().state().crossing);
}

TEST_F(SeptumPageTest, LimitsThatContradictAreNotTaken) {
    SeptumPage page(session, state);
    mark();
    core::CrossingLimits limits;
    limits.lowestMm = 60.0;
    page.model().setLimits(limits);
    EXPECT_EQ(session.message().kind, Message::Kind::Warning);
    EXPECT_EQ(core::septumPlan(session.record()).limits, core::CrossingLimits{});
    limits.highestMm = 70.0;
    page.model().setLimits(limits);
    EXPECT_EQ(page.model().state().answer->advice, core::CrossingAdvice::Unanswered);
}

TEST_F(SeptumPageTest, EverySentenceOfTheAnswersHasAPattern) {
    mark();
    for (const bool repair : {true, false})
        for (const bool steerable : {true, false})
            for (const double low : {35.0, 47.0, 60.0})
                for (const double angle : {3.0, 30.0})
                    for (const auto datum : {core::HeightDatum::Annulus, core::HeightDatum::Coaptation}) {
                        core::CrossingLimits limits{repair, datum, low, low + 8.0, angle, steerable, {}};
                        CaseDocument& document = session.document();
                        document.push(std::make_unique<SetCrossingLimits>(document, limits));
                        document.push(std::make_unique<ChooseCrossing>(
                            document, core::PatientPoint{session.measurement()->ostium.section.center.mm + Eigen::Vector3d(-45, 4, low - 40)}));
                        const SeptumState now = septumState(session.record(), session.measurement());
                        ASSERT_TRUE(now.answer);
                        EXPECT_TRUE(knownSentence(now.answer->sentence)) << now.answer->sentence;
                        for (const auto& notice : now.answer->notices)
                            EXPECT_TRUE(knownSentence(notice.text)) << notice.text;
                        const std::string words = core::describeCrossing(*now.scene, *now.crossing, limits);
                        EXPECT_TRUE(knownSentence(words)) << words;
                    }
}

TEST_F(SeptumPageTest, NoLabelOfTheMapLiesUnderASignOrAnotherLabel) {
    mark();
    QImage image(460, 420, QImage::Format_RGB32);
    QPainter painter(&image);
    int labels = 0;
    for (const bool fromRight : {false, true})
        for (double u = -6; u <= 6; u += 2)
            for (double v = -8; v <= 8; v += 2) {
                CaseDocument& document = session.document();
                const SeptumState before = septumState(session.record(), session.measurement());
                if (!before.scene->face.contains({u, v})) continue;
                document.push(std::make_unique<ChooseCrossing>(document, before.scene->face.frame.patientFromSection({u, v})));
                const SeptumState now = septumState(session.record(), session.measurement());
                const FacePlaces places = drawSeptalFace(painter, QRectF(image.rect()), now, {fromRight, true});
                ASSERT_GE(places.signs.size(), 1u);
                labels += static_cast<int>(places.labels.size());
                for (std::size_t i = 0; i < places.labels.size(); ++i) {
                    for (const QRectF& sign : places.signs)
                        EXPECT_FALSE(sign.intersects(places.labels[i])) << u << ", " << v;
                    for (std::size_t j = 0; j < i; ++j)
                        EXPECT_FALSE(places.labels[j].intersects(places.labels[i])) << u << ", " << v;
                }
            }
    EXPECT_GT(labels, 200) << "labels are left out only where there is no room";
}

TEST_F(SeptumPageTest, TellsTheValuesUnderThePointerOverTheSameFace) {
    SeptumPage page(session, state);
    page.resize(800, 800);
    page.show();
    mark();
    SeptalFaceView& face = page.face();
    const QImage without = face.grab().toImage();
    QTest::mouseMove(&face, face.map()->from({1, 1}).toPoint());
    EXPECT_NE(face.grab().toImage(), without);
    QTest::mouseMove(&face, QPoint(2, face.height() - 2)); // off the fossa
    EXPECT_EQ(face.grab().toImage(), without);
    page.face().setFromRight(true);
    EXPECT_NE(face.grab().toImage(), without);
}

// The invented case is there to teach: by a straight sheath nothing serves both, by a steerable one something does; without one, a
// second, lower crossing is asked for. So for the true axis, for that which the program measures on its CT, and for axes a little off either.
TEST(SampleSeptum, TellsAStoryWithEachLimit) {
    const auto sample = sample_case::readSampleCase(sample_case::builtInDescription());
    ASSERT_TRUE(sample);
    const core::CaseFile file = sampleRecord(*sample, "{}");
    ASSERT_TRUE(file.record.septumMarks && file.record.septumPlan && file.record.septumPlan->content.crossing);
    const auto& phase = sample->phases[1];
    ASSERT_EQ(phase.percent, 45.0);
    const auto& lobe = phase.scene.lobes.front().curve;
    const auto at = [&](double s) { return phase.scene.patientFrom(lobe.at(s).point); };
    const double ostiumS = phase.ostium.axisS;
    const core::AppendageTarget target{phase.ostium.section.center, (at(ostiumS + 10.0) - at(ostiumS)).normalized()};
    // Read off the program, 2.1 degrees from the true one.
    const core::PatientVector measured = core::PatientVector{Eigen::Vector3d(0.764, -0.517, 0.387)}.normalized();
    ASSERT_LT(core::angleBetweenDeg(measured, target.axis), 3.0);
    std::vector<core::AppendageTarget> targets;
    for (const core::PatientVector& axis : {target.axis, measured}) {
        targets.push_back({target.ostiumCentre, axis});
        for (int i = 0; i < 4; ++i) {
            const Eigen::Vector3d about = Eigen::AngleAxisd(0.5 * i * std::numbers::pi, axis.mm) * axis.mm.unitOrthogonal();
            targets.push_back({target.ostiumCentre, {Eigen::AngleAxisd(1.5 * std::numbers::pi / 180.0, about) * axis.mm}});
        }
    }
    const auto scene = core::crossingScene(file.record.septumMarks->content, target, phase.marks.atrium);
    ASSERT_TRUE(scene) << scene.error().message;
    EXPECT_TRUE(scene->face.contains(scene->face.frame.sectionFromPatient(*file.record.septumPlan->content.crossing)));
    EXPECT_LT(scene->face.fit.rmsMm, 1.0);
    EXPECT_GT(scene->mitral->coaptation->belowAnnulusMm, 3.0);
    for (std::size_t i = 0; i < targets.size(); ++i) {
        const auto seen = core::crossingScene(file.record.septumMarks->content, targets[i], phase.marks.atrium);
        ASSERT_TRUE(seen) << seen.error().message;
        const auto adviceFor = [&](const core::CrossingLimits& limits) {
            const auto map = core::crossingMap(*seen, limits.steering);
            return core::crossingAnswer(*seen, *map, limits)->advice;
        };
        core::CrossingLimits limits;
        EXPECT_EQ(adviceFor(limits), core::CrossingAdvice::SameWithSteerable) << "axis " << i;
        limits.steerableAtHand = false;
        EXPECT_EQ(adviceFor(limits), core::CrossingAdvice::SecondLowerCrossing) << "axis " << i;
        limits.lowestMm = 27.0;
        EXPECT_EQ(adviceFor(limits), core::CrossingAdvice::SameCrossing) << "axis " << i;
    }
}
