#include "app/document/sample_record.h"
#include "app/document/session.h"
#include "app/models/demo_charts.h"
#include "core/echo/probe_pose.h"
#include "core/geometry/polyline.h"
#include "tests/app/support/synthetic_case.h"
#include "tests/app/support/synthetic_session.h"

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <iostream>

using namespace gauge;
using app::Message;
using app::Session;
using fixture::waitUntil;
using ::testing::HasSubstr;

namespace {

std::string said(const Session& session) {
    return session.message().text.toStdString();
}

/// The built-in teaching case as a record; made once.
const core::CaseFile& sample() {
    static const core::CaseFile file = [] {
        const auto description = sample_case::readSampleCase(sample_case::builtInDescription());
        EXPECT_TRUE(description);
        return app::sampleRecord(*description, app::readChartFile(app::demoCharts().back().path)->text);
    }();
    return file;
}

const sample_case::SampleCase& description() {
    static const auto read = sample_case::readSampleCase(sample_case::builtInDescription());
    return *read;
}

} // namespace

TEST(SessionCase, OpensACaseWithoutItsImagesAndSaysWhatIsMissing) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("a.case.json");
    Session first;
    fixture::openAndMeasure(first);
    ASSERT_TRUE(first.saveCase(file));
    EXPECT_EQ(said(first), "Saved as " + QDir::toNativeSeparators(file).toStdString() + ".");
    const core::CaseRecord record = first.record();
    first.document().clear();

    Session second;
    QSignalSpy missing(&second, &Session::imagesMissing);
    ASSERT_TRUE(second.openCase(file));
    ASSERT_TRUE(waitUntil([&] { return !missing.isEmpty(); }));
    EXPECT_TRUE(second.record() == record) << "all values are there";
    EXPECT_FALSE(second.images());
    EXPECT_EQ(second.message().kind, Message::Kind::Warning);
    EXPECT_THAT(said(second), HasSubstr("its CT series " + record.images->seriesUid));
    EXPECT_THAT(said(second), HasSubstr("is not below " + folder.path().toStdString()));
}

TEST(SessionCase, WhatWasOpenStaysWhenAFileCannotBeRead) {
    const QTemporaryDir folder;
    Session session;
    fixture::openAndMeasure(session);
    const core::CaseRecord record = session.record();
    QFile file(folder.filePath("bad.case.json"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("{\"format\": \"ostium-gauge/case/9\"}");
    file.close();
    EXPECT_FALSE(session.openCase(file.fileName()));
    EXPECT_EQ(session.message().kind, Message::Kind::Error);
    EXPECT_THAT(said(session), HasSubstr("it was written in version 9 of the format"));
    EXPECT_TRUE(session.record() == record);
    EXPECT_TRUE(session.images());
}

TEST(SessionCase, MeasuringAgainWithTheSameResultIsNoEdit) {
    Session session;
    fixture::openAndMeasure(session);
    const auto edits = session.document().journal().entries().size();
    session.document().apply(core::SetMark{core::MarkKind::Tip, session.record().marks.at(core::MarkKind::Tip)});
    ASSERT_TRUE(waitUntil([&] { return !session.isMeasuring(); }));
    EXPECT_EQ(session.document().journal().entries().size(), edits + 1);
}

TEST(SessionCase, SaysWhyACaseIsNotChanged) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("a.case.json");
    Session first, second;
    fixture::openAndMeasure(first);
    ASSERT_TRUE(first.saveCase(file));
    ASSERT_TRUE(second.openCase(file));
    second.placeMark(core::MarkKind::Ridge, core::PatientPoint{{1, 2, 3}});
    EXPECT_TRUE(second.record() == first.record());
    EXPECT_THAT(said(second), HasSubstr("Nothing was changed: The case is open in another window or program"));
}

TEST(IsCaseFile, KnowsCasesByTheirNames) {
    const QTemporaryDir folder;
    EXPECT_TRUE(app::isCaseFile("x/a.case.json"));
    EXPECT_TRUE(app::isCaseFile("x/a.case.json.1"));
    EXPECT_FALSE(app::isCaseFile("x/dicom"));
    EXPECT_FALSE(app::isCaseFile(folder.path()));
}

TEST(SampleRecord, IsWhatItsJournalBuildsAndComesBackFromAFile) {
    EXPECT_TRUE(sample().record == core::replay(sample().journal));
    const auto read = core::caseFromJson(core::caseText(sample()));
    ASSERT_TRUE(read) << read.error().message;
    EXPECT_TRUE(*read == sample());
}

TEST(SampleRecord, HasTheWholeCase) {
    const core::CaseRecord& r = sample().record;
    EXPECT_EQ(r.marks.size() + 1, core::kMarkKinds.size()) << "this heart has no pulmonary artery";
    EXPECT_EQ(r.moments.size(), description().procedure->law.states.size());
    EXPECT_EQ(r.scales.size(), 1u);
    EXPECT_FALSE(r.landmarks.empty());
    EXPECT_FALSE(r.release.empty() || r.stasis.empty());
    ASSERT_TRUE(r.sizing && r.decision && r.patient && r.scores);
    EXPECT_NE(r.sizing->content.size, "") << "no size holds the true landing zone";
    EXPECT_TRUE(r.decision->content.signedBy.empty()) << "a draft";
    for (const auto& [id, moment] : r.moments)
        EXPECT_TRUE(moment.content.circulation.meanPressureMmHg) << id;
    for (const auto& [id, evidence] : r.evidence)
        EXPECT_TRUE(r.moments.contains(evidence.content.moment)) << id;
    for (const auto& [id, state] : r.release)
        EXPECT_TRUE(core::validate(state.content)) << id;
}

/// Drawn lengths times the scale against the true widths of the answers: the chord of a view lies in its plane.
TEST(SampleRecord, DrawsTheTrueWidthsOfEveryEchoView) {
    constexpr double kSameFormulaMm = 1e-6; // pixels are rounded nowhere on the way
    const auto& procedure = *description().procedure;
    int checked = 0;
    for (const auto& set : procedure.echo) {
        const auto widths = sample_case::viewChord; // the defining function
        const int frame = set.times.frameNearest(procedure.law.percent);
        const auto heart = procedure.heartIn(set.state).at(set.times.percentAt(frame));
        for (std::size_t view = 0; view < set.views.size(); ++view)
            for (const auto& [id, drawing] : sample().record.drawings) {
                const auto& d = drawing.content;
                if (d.evidence != set.facts[view].sopInstanceUid() || d.role != core::DrawingRole::LandingWidth) continue;
                const auto chord = widths(heart, set.views[view], landingPlane(heart, procedure.law.landingDepthMm));
                ASSERT_TRUE(chord);
                EXPECT_EQ(std::get<core::PictureSite>(d.site).frame, frame);
                EXPECT_NEAR((d.points[1] - d.points[0]).norm() * set.views[view].fan.mmPerPixel, chord->chord.lengthMm,
                            kSameFormulaMm);
                ++checked;
            }
    }
    EXPECT_GE(checked, 6);
}

/// The places marked in both put the probe where the sample case has it, as well as places of a heart that fills differently can.
TEST(SampleRecord, ItsPlacesInCtAndEchoFindTheProbeOfEveryMoment) {
    constexpr double kFillingMm = 2.5, kTurnDeg = 6.0; // walls move by about a millimetre between the pressures
    const auto& procedure = *description().procedure;
    for (const auto& set : procedure.echo) {
        std::vector<core::SharedLandmark> places;
        for (const auto& [id, entry] : sample().record.landmarks)
            for (std::size_t i = 0; i < set.views.size(); ++i) {
                if (entry.content.echo.sopInstanceUid != set.facts[i].sopInstanceUid()) continue;
                const auto& fan = set.views[i].fan;
                places.push_back({entry.content.label, set.views[i].angleDeg, (entry.content.echoPoint - fan.apexPixel) * fan.mmPerPixel,
                                  entry.content.ct});
            }
        EXPECT_GE(places.size(), 4u);
        const auto pose = core::fitProbePose(places);
        ASSERT_TRUE(pose) << pose.error().message;
        const auto& probe = set.views.front().probe;
        EXPECT_LT(core::distanceMm(pose->probe(), probe.apex), kFillingMm);
        EXPECT_LT(core::angleBetweenDeg(pose->beam(), probe.beam), kTurnDeg);
        EXPECT_LT(core::angleBetweenDeg(pose->lateral0(), probe.left), kTurnDeg);
        EXPECT_LT(pose->rmsResidualMm, kFillingMm);
        std::cout << set.facts.front().seriesDescription << ": " << places.size() << " places, probe "
                  << core::distanceMm(pose->probe(), probe.apex) << " mm off, residual " << pose->rmsResidualMm << " mm\n";
    }
}
