// The main job on CT: from marked points to the measured appendage.
// Neighbours: blood_pool.h (what is blood), axis.h (the centre line), ostium.h (where the appendage begins),
// measure/section_contour.h (one cross-section).
#pragma once

#include "core/geometry/plane.h"
#include "core/measure/estimate.h"
#include "core/measure/section.h"
#include "core/parallel/progress.h"
#include "core/result.h"
#include "core/volume/volume.h"

#include <memory>
#include <optional>
#include <vector>

namespace gauge::core {

/// What the person marked, LPS mm. Atrium and tip are needed; the rest makes the ostium the person's own.
struct AppendageMarks {
    PatientPoint atrium;                      ///< anywhere in the left atrium's blood
    PatientPoint tip;                         ///< anywhere in the wanted lobe's blood
    std::optional<PatientPoint> circumflex;   ///< circumflex artery at the ostium
    std::optional<PatientPoint> ridge;        ///< tip of the ridge to the upper left pulmonary vein
    std::optional<Plane> ostium;              ///< set by the person; wins over the landmarks
    std::optional<PatientPoint> aorta;        ///< in the ascending aorta, for the enhancement ratio
};

struct AppendageOptions {
    /// Depths of perpendicular landing planes beyond the ostium, mm, each > 0.
    std::vector<double> landingDepthsMm{10.0};
    /// Distance of the plug plane's wall point beyond the ridge tip, mm, > 0. Needs both landmarks.
    std::optional<double> plugLandingMm;
    /// Step of the profile along the axis, mm, > 0.
    double profileStepMm = 0.5;
};

enum class LandingKind { Axis, Plug };

/// A landing plane and what was measured on it. For `Plug`, `depthMm` is the distance beyond the ridge tip.
struct LandingZone {
    LandingKind kind = LandingKind::Axis;
    double depthMm = 0.0;
    Section section;
    /// From the section's centre along the ostium normal to the opposite wall.
    Estimate straightDepthMm;
    std::optional<double> tiltDeg{}; ///< of the plane from square to the axis, when a hand tilted it
};

struct Ostium {
    Section section;
    bool proposed = false;            ///< true: found by the program, not yet confirmed by the person
    std::optional<double> confidence; ///< 0..1, only when proposed
};

/// The axis as a polyline: from the atrium side through the ostium (s = 0) to the tip.
struct AppendageAxis {
    std::vector<PatientPoint> points; ///< about every 0.5 mm, ostium to tip
    std::vector<PatientPoint> approach; ///< the part on the atrium's side, towards the ostium
    double lengthMm = 0.0;            ///< from the ostium to the tip
};

struct ProfileSection {
    double sMm = 0.0; ///< distance along the axis from the ostium
    Section section;
};

struct Turn {
    Estimate angleDeg; ///< 0 = straight
    Estimate atMm;     ///< s of the sharpest place
};

struct Enhancement {
    double atriumHu = 0.0;
    double appendageHu = 0.0;
    double tipHu = 0.0;
    std::optional<double> aortaHu;
    std::optional<double> tipToAorta;
};

/// Working data behind a measurement (blood pool, levels); opaque to callers, shared so that further sections can
/// be cut without finding the pool again.
struct AppendageTrace;

struct AppendageMeasurement {
    Ostium ostium;
    AppendageAxis axis;
    std::vector<LandingZone> landingZones;
    Estimate depthAlongAxisMm;
    Estimate depthFromOstiumPlaneMm;
    Estimate volumeMl;
    std::optional<Turn> turn;
    Enhancement enhancement;
    std::vector<ProfileSection> profile;
    std::vector<Notice> notices;
    std::shared_ptr<const AppendageTrace> trace;
};

/// Measures the appendage.
/// @errors SeedOutsideVolume, SeedNotInBlood, SeedsNotConnected, SeedInVein, SeedInOtherChamber,
/// NoNeckBetweenSeeds, ContrastPoor, OstiumNotFound, LandmarksUnusable, LandingOutsideAppendage, SectionNotFound,
/// InvalidArgument for unusable options, Cancelled.
/// Looks for a stop at least every 100 ms.
Result<AppendageMeasurement> measureAppendage(const std::shared_ptr<const Volume>& volume,
                                              const AppendageMarks& marks, const AppendageOptions& options,
                                              const WorkContext& work = {});

/// Farther from square to the axis a landing plane is no cross-section of the appendage any more.
inline constexpr double kMostLandingTiltDeg = 60.0;

/// Whether a landing plane may lie there, before it is measured. @errors those of landingZoneAt but SectionNotFound.
Result<void> checkLandingPlane(const AppendageMeasurement& measurement, double depthMm, const std::optional<PatientVector>& normal);

/// One more landing plane of a finished measurement, with all its uncertainties (a few milliseconds: fit for dragging):
/// through the axis, square to it or with another unit `normal` towards the tip.
/// @errors LandingOutsideAppendage when `depthMm` is not within (0, axis length); InvalidArgument when `normal` is farther than
/// kMostLandingTiltDeg from the axis; SectionNotFound.
Result<LandingZone> landingZoneAt(const Volume& volume, const AppendageMeasurement& measurement, double depthMm,
                                  const std::optional<PatientVector>& normal = std::nullopt);

/// A landing plane before it is measured, for a picture that follows a hand without waiting: the profile's section nearest in
/// depth, laid onto the plane. Its outline is good to about the profile's step; its metrics are those of the neighbour and must
/// not be told as the plane's own, its straight depth is unknown. Nothing while there is no profile.
std::optional<LandingZone> unmeasuredLanding(const AppendageMeasurement& measurement, double depthMm,
                                             const std::optional<PatientVector>& normal = std::nullopt);

/// The section of the appendage's blood on any plane, without uncertainties (a few milliseconds: fit for dragging a plane).
/// @errors SectionNotFound when the plane's point lies in no blood; SectionOpen.
Result<Section> sectionOnPlane(const Volume& volume, const AppendageMeasurement& measurement, const Plane& plane);

/// Point on the axis at distance `sMm` from the ostium (negative: on the atrium's side), held at the ends.
PatientPoint axisPointAt(const AppendageMeasurement& measurement, double sMm);

/// Unit direction of the axis there, towards the tip.
PatientVector axisDirectionAt(const AppendageMeasurement& measurement, double sMm);

} // namespace gauge::core
