#include "app/report/radiograph_picture.h"

#include "app/document/seats.h"
#include "app/drawing/labels.h"
#include "app/drawing/mark_roles.h"
#include "app/drawing/projection_drawing.h"
#include "app/drawing/radiograph_drawing.h"
#include "app/drawing/seat_drawing.h"
#include "core/anatomy/chamber_mask.h"
#include "core/fluoro/c_arm_place.h"
#include "core/fluoro/c_arm_reach.h"
#include "core/record/projection_values.h"
#include "core/volume/chamber_volume.h"
#include "core/volume/radiograph_scene.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

constexpr int kRadiographSide = 520; // on paper, before kRadiographDots
constexpr double kRadiographDots = 2.0, kRadiographFieldMm = 110.0;

/// The camera of a C-arm of assumed distances with the landing zone in its middle.
std::optional<core::PinholeCamera> cameraAt(const core::CArmAngles& patient, const core::PatientPoint& aim, int side) {
    core::CArm arm;
    arm.angles = patient;
    arm.columns = arm.rows = side;
    arm.sourceToIsocentreMm = core::kAssumedSourceToIsocentreMm;
    arm.sourceToDetectorMm = core::kAssumedSourceToDetectorMm;
    arm.imagerSpacingMm = Eigen::Vector2d::Constant(kRadiographFieldMm * arm.magnification() / side);
    const auto aimed = core::aimedAt(arm, aim, Eigen::Vector2d::Constant(0.5 * (side - 1)));
    if (!aimed) return std::nullopt;
    const auto camera = core::cameraOf(*aimed);
    return camera ? std::optional(*camera) : std::nullopt;
}

core::RadiographScene filledAppendage(const core::AppendageMeasurement& measurement, std::shared_ptr<const core::Volume> ct) {
    core::RadiographScene scene;
    scene.ct = std::move(ct);
    if (!measurement.trace) return scene;
    if (const auto mask = core::chamberMask(measurement, core::Chamber::Appendage))
        scene.chamber = core::chamberVolume(*mask).value_or(nullptr);
    return scene;
}

std::vector<PatientLine> linesOver(const CaseReportSource& source, const core::AppendageMeasurement& measurement) {
    const auto marks = appendageMarks(source.record());
    std::vector<PatientLine> lines = appendageLines(&measurement, source.landing, marks ? &*marks : nullptr);
    if (const core::Seat* seat = source.answers->seats().chosen())
        for (SurfaceLine& line : seatSurfaceLines(*seat))
            lines.push_back({line.role, std::move(line.points), line.closed, line.label});
    return lines;
}

} // namespace

std::optional<ReportPicture> radiographPicture(const CaseReportSource& source, const core::CArmAngles& room) {
    const core::AppendageMeasurement* measurement = source.answers->measurement();
    if (!source.volume || !measurement) return std::nullopt;
    const auto plan = core::viewPlanOptions(source.record());
    if (!plan) return std::nullopt;
    const core::PatientPoint aim = source.landing ? source.landing->section.center : measurement->ostium.section.center;
    const auto camera = cameraAt(core::patientAngles(room, plan->turn), aim, static_cast<int>(kRadiographSide * kRadiographDots));
    if (!camera) return std::nullopt;
    const core::RadiographScene scene = filledAppendage(*measurement, source.volume);
    const auto made = core::simulateRadiograph(scene, *camera);
    if (!made) return std::nullopt;
    QImage picture = radiographImage(*made, core::attenuationRange(*made), EmptyRay::NoPicture);
    picture.setDevicePixelRatio(kRadiographDots);
    QPainter painter(&picture);
    QTransform screen; // whole numbers lie at pixel centres
    screen.scale(1.0 / kRadiographDots, 1.0 / kRadiographDots);
    screen.translate(0.5, 0.5);
    const QRectF area(0, 0, kRadiographSide, kRadiographSide);
    const QString title = QCoreApplication::translate("Report", "Simulated from CT · %1").arg(viewWords(room));
    drawPatientLines(painter, area, *camera, screen, linesOver(source, *measurement),
                     {titlePlate(title, area)});
    drawTitle(painter, title, area);
    painter.end();
    const QString filled = scene.chamber ? QCoreApplication::translate("Report", "the appendage as if filled with contrast medium")
                                         : QCoreApplication::translate("Report", "nothing filled with contrast medium");
    return ReportPicture{picture,
                         QCoreApplication::translate("Report", "Simulated radiograph at %1, %2. Not a fluoroscopy: distances of the C-arm are "
                                                               "assumed, and the landing zone is put in the middle.")
                             .arg(viewWords(room), filled),
                         0.5};
}

} // namespace gauge::app
