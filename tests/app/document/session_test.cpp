#include "app/document/session.h"

#include "tests/app/support/synthetic_case.h"
#include "tests/app/support/synthetic_session.h"

#include <QCoreApplication>
#include <QTemporaryDir>
#include <QThread>
#include <atomic>
#include <gtest/gtest.h>
#include <set>

using namespace gauge;
using app::Message;
using app::Session;
using fixture::openAndMeasure;
using fixture::syntheticEngine;
using fixture::syntheticImages;
using fixture::syntheticMarks;
using fixture::waitUntil;

namespace {

const core::RecordedValue* valueOf(const Session& session, const std::string& id) {
    for (const auto& value : session.record().values)
        if (value.id == id) return &value;
    return nullptr;
}

bool measured(const Session& session) {
    return session.measurement() && !session.isMeasuring();
}

} // namespace

TEST(Session, MeasuresByItselfOnceAtriumAndTipAreMarked) {
    Session session;
    session.setEngine(syntheticEngine());
    session.open(syntheticImages());
    EXPECT_TRUE(session.message().text.contains("Mark the atrium and the tip"));
    session.placeMark(core::MarkKind::Atrium, syntheticMarks().atrium);
    EXPECT_FALSE(session.isMeasuring());
    session.placeMark(core::MarkKind::Tip, syntheticMarks().tip);
    EXPECT_TRUE(session.isMeasuring());
    ASSERT_TRUE(waitUntil([&] { return measured(session); }));
    ASSERT_TRUE(session.landing());
    EXPECT_EQ(session.landing()->depthMm, 10.0);
}

TEST(Session, WritesTheValuesWithTheirSourceIntoTheRecord) {
    Session session;
    openAndMeasure(session);
    const auto* value = valueOf(session, "ostium/perimeter-derived-diameter");
    ASSERT_TRUE(value);
    EXPECT_EQ(value->estimate.value,
              session.measurement()->ostium.section.metrics.perimeterDerivedDiameterMm.value);
    EXPECT_EQ(value->provenance->phase, "45 %");
    EXPECT_EQ(value->provenance->frameOfReferenceUid, "2.25.1");
    EXPECT_EQ(value->provenance->sopInstanceUids.size(), 2u);
    EXPECT_FALSE(core::isStale(session.record(), *value));
    EXPECT_EQ(session.document().undoStack().count(), 2) << "values are no step of undo";
}

TEST(Session, UndoOfAMarkTakesTheMeasurementAwayAndRedoBringsItBack) {
    Session session;
    openAndMeasure(session);
    session.document().undoStack().undo();
    EXPECT_FALSE(session.measurement());
    session.document().undoStack().redo();
    EXPECT_TRUE(waitUntil([&] { return measured(session); }));
}

TEST(Session, DraggingTheLandingZoneShowsItAndOnlyTheEndIsRecorded) {
    Session session;
    openAndMeasure(session);
    const auto steps = session.document().undoStack().count();
    for (const double mm : {11.0, 14.0, 16.5}) {
        session.previewLanding(mm);
        EXPECT_EQ(session.landingPlace()->depthMm, mm);
        EXPECT_EQ(session.landingShown()->depthMm, mm) << "its outline, at once";
        EXPECT_FALSE(session.isLandingMeasured());
        EXPECT_TRUE(waitUntil([&] { return session.isLandingMeasured(); }));
        EXPECT_EQ(session.landing()->depthMm, mm);
    }
    EXPECT_EQ(session.record().landing.depthsMm.front(), 10.0);
    session.moveLanding(16.5, 1);
    EXPECT_EQ(session.record().landing.depthsMm.front(), 16.5);
    EXPECT_EQ(session.landing()->depthMm, 16.5);
    EXPECT_EQ(session.document().undoStack().count(), steps + 1);
    EXPECT_FALSE(core::isStale(session.record(), *valueOf(session, "landing-1/area")));
    session.document().undoStack().undo();
    EXPECT_EQ(session.landingPlace()->depthMm, 10.0) << "shown at once";
    EXPECT_TRUE(core::isStale(session.record(), *valueOf(session, "landing-1/area"))) << "until it is measured";
    ASSERT_TRUE(waitUntil([&] { return !session.isMeasuring(); }));
    EXPECT_EQ(session.landing()->depthMm, 10.0);
    EXPECT_FALSE(core::isStale(session.record(), *valueOf(session, "landing-1/area")));
}

/// The engine with a landing plane that takes its time; `calls` counts them.
Session::Engine slowEngine(std::atomic<int>& calls, int ms) {
    auto engine = syntheticEngine();
    engine.landingAt = [&calls, ms, quick = engine.landingAt](const auto& volume, const auto& measurement, double mm, const auto& normal) {
        ++calls;
        QThread::msleep(static_cast<unsigned long>(ms));
        return quick(volume, measurement, mm, normal);
    };
    engine.sectionOn = [&calls, ms](const core::Volume&, const core::AppendageMeasurement& m,
                                    const core::Plane& plane) -> core::Result<core::Section> {
        ++calls;
        QThread::msleep(static_cast<unsigned long>(ms));
        core::Section section = m.ostium.section;
        section.center = plane.point;
        return section;
    };
    return engine;
}

TEST(Session, ALandingZoneDraggedFasterThanItIsMeasuredIsMeasuredOnTheWayAndEndsAtTheNewest) {
    Session session;
    openAndMeasure(session);
    std::atomic<int> calls = 0;
    session.setEngine(slowEngine(calls, 20));
    std::set<double> measured;
    bool followed = true;
    QObject::connect(&session, &Session::landingChanged, &session, [&] { measured.insert(session.landing()->depthMm); });
    for (int i = 0; i < 60; ++i) {
        session.previewLanding(10.0 + 0.1 * i);
        followed = followed && session.landingShown()->depthMm == 10.0 + 0.1 * i;
        QCoreApplication::processEvents();
        QThread::msleep(3);
    }
    EXPECT_TRUE(followed) << "the outline is always under the hand";
    EXPECT_GT(measured.size(), 3u) << "not only the last";
    EXPECT_LT(calls, 40) << "and not all";
    EXPECT_TRUE(waitUntil([&] { return session.isLandingMeasured(); }));
    EXPECT_EQ(session.landing()->depthMm, 10.0 + 0.1 * 59);
    const int before = calls;
    session.moveLanding(10.0 + 0.1 * 59, 1);
    EXPECT_FALSE(session.isPreviewing());
    EXPECT_FALSE(session.isMeasuring());
    EXPECT_EQ(calls, before) << "what was measured while dragging is not measured again";
    EXPECT_EQ(valueOf(session, "landing-1/area")->estimate.value, session.landing()->section.metrics.areaMm2.value);
}

TEST(Session, AnOstiumDraggedFasterThanItIsCutIsCutOnTheWay) {
    Session session;
    openAndMeasure(session);
    std::atomic<int> calls = 0;
    session.setEngine(slowEngine(calls, 20));
    std::set<double> seen;
    QObject::connect(&session, &Session::landingChanged, &session, [&] {
        if (session.ostiumPreview()) seen.insert(session.ostiumPreview()->center.mm.x());
    });
    core::Plane plane = *session.ostiumPlane();
    const double start = plane.point.mm.x();
    for (int i = 0; i < 60; ++i) {
        plane.point.mm.x() = start + 0.1 * i;
        session.previewOstium(plane);
        QCoreApplication::processEvents();
        QThread::msleep(3);
    }
    EXPECT_TRUE(waitUntil([&] { return seen.contains(start + 0.1 * 59); })) << "it ends at the newest";
    EXPECT_GT(seen.size(), 3u);
    EXPECT_LT(calls, 40);
}

TEST(Session, ALandingZoneMovedWhileAnotherIsMeasuredIsRecordedOnlyAsItself) {
    Session session;
    openAndMeasure(session);
    std::atomic<int> calls = 0;
    session.setEngine(slowEngine(calls, 30));
    for (int i = 1; i <= 6; ++i) { // keys, faster than the work
        session.moveLanding(10.0 + 0.5 * i, i);
        EXPECT_EQ(session.landingPlace()->depthMm, 10.0 + 0.5 * i);
        EXPECT_TRUE(session.isMeasuring());
        EXPECT_TRUE(core::isStale(session.record(), *valueOf(session, "landing-1/area")));
        QCoreApplication::processEvents();
    }
    ASSERT_TRUE(waitUntil([&] { return !session.isMeasuring(); }));
    EXPECT_EQ(session.landing()->depthMm, 13.0);
    EXPECT_FALSE(core::isStale(session.record(), *valueOf(session, "landing-1/area")));
    EXPECT_EQ(valueOf(session, "landing-1/area")->estimate.value, session.landing()->section.metrics.areaMm2.value);
    EXPECT_LE(calls, 4) << "those that were passed over are not measured";
}

TEST(Session, ALandingZoneThatCannotBeMeasuredGoesBackToTheLastOneThatCould) {
    Session session;
    openAndMeasure(session);
    auto engine = syntheticEngine();
    engine.landingAt = [quick = engine.landingAt](const auto& volume, const auto& measurement, double mm,
                                                  const auto& normal) -> core::Result<core::LandingZone> {
        if (mm > 15.0) return core::failure(core::ErrorCode::SectionNotFound, "Cannot measure it: invented reason.");
        return quick(volume, measurement, mm, normal);
    };
    session.setEngine(engine);
    session.previewLanding(14.0);
    ASSERT_TRUE(waitUntil([&] { return session.isLandingMeasured(); }));
    session.previewLanding(16.0);
    ASSERT_TRUE(waitUntil([&] { return session.landingPlace()->depthMm == 14.0; }));
    EXPECT_TRUE(session.isLandingMeasured());
    EXPECT_EQ(session.landing()->depthMm, 14.0);
    EXPECT_TRUE(session.message().text.contains("invented reason"));
}

TEST(Session, TheLandingZoneStaysOnTheAxis) {
    Session session;
    openAndMeasure(session);
    EXPECT_EQ(session.heldLandingDepth(-4.0), 0.5);
    EXPECT_EQ(session.heldLandingDepth(500.0), fixture::kSyntheticLengthMm - 0.5);
}

TEST(Session, ALandingDepthBeyondAShortAppendageSpoilsNothingElse) {
    Session session;
    auto engine = syntheticEngine();
    engine.landingAt = [](const auto&, const auto&, double, const auto&) -> core::Result<core::LandingZone> {
        return core::failure(core::ErrorCode::LandingOutsideAppendage,
                             "The landing zone lies beyond the tip.");
    };
    session.setEngine(engine);
    session.open(syntheticImages());
    session.placeMark(core::MarkKind::Atrium, syntheticMarks().atrium);
    session.placeMark(core::MarkKind::Tip, syntheticMarks().tip);
    ASSERT_TRUE(waitUntil([&] { return measured(session); }));
    EXPECT_EQ(session.measurement()->notices.back().text, "The landing zone lies beyond the tip.");
    EXPECT_TRUE(valueOf(session, "ostium/area"));
    EXPECT_FALSE(session.landing());
}

TEST(Session, SaysWhyNothingCouldBeMeasured) {
    Session session;
    auto engine = syntheticEngine();
    engine.measure = [](const auto&, const auto&, const auto&,
                        const auto&) -> core::Result<core::AppendageMeasurement> {
        return core::failure(core::ErrorCode::SeedNotInBlood,
                             "The tip mark lies in the wall: move it into the blood.");
    };
    session.setEngine(engine);
    session.open(syntheticImages());
    session.placeMark(core::MarkKind::Atrium, syntheticMarks().atrium);
    session.placeMark(core::MarkKind::Tip, syntheticMarks().tip);
    ASSERT_TRUE(waitUntil([&] { return session.failure().has_value(); }));
    EXPECT_EQ(session.message(),
              (Message{Message::Kind::Error, "The tip mark lies in the wall: move it into the blood."}));
    EXPECT_FALSE(session.measurement());

    session.setEngine(syntheticEngine());
    session.placeMark(core::MarkKind::Tip, {syntheticMarks().tip.mm + Eigen::Vector3d(1, 0, 0)});
    ASSERT_TRUE(waitUntil([&] { return measured(session); }));
    EXPECT_EQ(session.message().kind, Message::Kind::Nothing);
    EXPECT_FALSE(session.failure());
}

TEST(Session, ConfirmingMakesTheProposalThePersonsOwn) {
    Session session;
    openAndMeasure(session);
    ASSERT_TRUE(session.measurement()->ostium.proposed);
    session.confirmOstium();
    ASSERT_TRUE(session.record().ostium);
    ASSERT_TRUE(waitUntil([&] { return measured(session) && !session.measurement()->ostium.proposed; }));
    session.document().undoStack().undo();
    ASSERT_TRUE(waitUntil([&] { return measured(session) && session.measurement()->ostium.proposed; }));
    EXPECT_FALSE(session.record().ostium);
}

TEST(Session, AFolderWithoutImagesIsAnErrorInWordsAndKeepsWhatIsOpen) {
    Session session;
    openAndMeasure(session);
    const QTemporaryDir empty;
    session.openFolder(empty.path());
    EXPECT_TRUE(session.isLoading());
    ASSERT_TRUE(waitUntil([&] { return !session.isLoading(); }));
    EXPECT_EQ(session.message().kind, Message::Kind::Error);
    EXPECT_TRUE(session.message().text.contains(empty.path())) << session.message().text.toStdString();
    EXPECT_TRUE(session.measurement());
}

TEST(Session, APhaseThatCannotBeLoadedIsNotMeasuredOnAnother) {
    Session session;
    openAndMeasure(session);
    session.chooseImages(0, 2); // phase 75 %: its list of images is empty
    ASSERT_TRUE(waitUntil([&] { return !session.isLoading(); }));
    EXPECT_EQ(session.message().kind, Message::Kind::Error);
    EXPECT_FALSE(session.measurement());
    session.placeMark(core::MarkKind::Tip, {syntheticMarks().tip.mm + Eigen::Vector3d(1, 0, 0)});
    EXPECT_FALSE(session.isMeasuring());
}
