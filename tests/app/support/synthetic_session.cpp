#include "tests/app/support/synthetic_session.h"

#include "tests/app/support/synthetic_case.h"

#include "core/geometry/polyline.h"

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <QThread>
#include <cmath>

namespace gauge::fixture {

app::LoadedImages syntheticImages() {
    auto index = std::make_shared<dicomio::SeriesIndex>();
    dicomio::SeriesEntry& series = index->series.emplace_back();
    series.seriesUid = "2.25.100";
    series.modality = "CT";
    series.kind = "ct";
    series.description = "Left atrium, gated";
    series.frameOfReferenceUid = "2.25.1";
    series.patientPosition = "HFS";
    series.imageCount = 360;
    series.spacingMm = Eigen::Vector3d(0.9, 0.9, 0.9);
    for (const double percent : {30.0, 45.0, 75.0}) {
        dicomio::PhaseEntry phase;
        phase.percent = percent;
        phase.label = std::to_string(static_cast<int>(percent)) + " %";
        series.phases.push_back(phase);
    }
    index->skipped.push_back({"notes.txt", "not DICOM"});
    app::LoadedImages images;
    images.index = index;
    images.phase = 1;
    images.ct.volume = syntheticVolume();
    images.ct.seriesUid = series.seriesUid;
    images.ct.phasePercent = 45.0;
    images.ct.phaseLabel = "45 %";
    images.ct.spacingMm = *series.spacingMm;
    images.ct.sopInstanceUids = {"2.25.1001", "2.25.1002"};
    return images;
}

app::Session::Engine syntheticEngine() {
    app::Session::Engine engine;
    engine.measure = [](const auto&, const core::AppendageMarks& marks, const core::AppendageOptions&,
                        const core::WorkContext&) -> core::Result<core::AppendageMeasurement> {
        core::AppendageMeasurement m = syntheticMeasurement();
        m.landingZones.clear();
        if (marks.ostium) {
            m.ostium.proposed = false;
            m.ostium.confidence.reset();
        }
        return m;
    };
    engine.landingAt = [](const core::Volume&, const core::AppendageMeasurement& m, double depthMm,
                          const std::optional<core::PatientVector>& normal) -> core::Result<core::LandingZone> {
        if (depthMm <= 0.0 || depthMm >= kSyntheticLengthMm - 1.0)
            return core::failure(core::ErrorCode::LandingOutsideAppendage,
                                 "Cannot place the landing zone: that depth lies beyond the appendage.");
        const auto at = static_cast<std::size_t>(std::lround(depthMm / 0.5));
        core::LandingZone zone;
        zone.depthMm = depthMm;
        zone.section = m.profile.at(std::min(at, m.profile.size() - 1)).section;
        if (normal) {
            const double deg = core::angleBetweenDeg(*normal, zone.section.frame.normal);
            if (deg > core::kMostLandingTiltDeg)
                return core::failure(core::ErrorCode::InvalidArgument, "Cannot measure the landing zone: tilted too far.");
            zone.section.frame = core::frameOf({zone.section.frame.origin, *normal});
            zone.tiltDeg = deg;
        }
        zone.straightDepthMm = {kSyntheticLengthMm - depthMm, {0.3, 0.9, 0, 0}, "formula"};
        return zone;
    };
    return engine;
}

bool waitUntil(const std::function<bool()>& done) {
    const QDeadlineTimer deadline(10000);
    while (!done()) {
        if (deadline.hasExpired()) return false;
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        QThread::msleep(2);
    }
    return true;
}

void openAndMeasure(app::Session& session) {
    session.setEngine(syntheticEngine());
    session.open(syntheticImages());
    const core::AppendageMarks marks = syntheticMarks();
    session.placeMark(core::MarkKind::Atrium, marks.atrium);
    session.placeMark(core::MarkKind::Tip, marks.tip);
    waitUntil([&] { return session.measurement() && !session.isMeasuring(); });
}

} // namespace gauge::fixture
