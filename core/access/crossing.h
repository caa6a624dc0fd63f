// What a crossing of the septum at one place of the fossa means: its height over the mitral valve, its distance from the ostium,
// and how a sheath through it would arrive in the appendage.
#pragma once

#include "core/access/mitral_datum.h"
#include "core/access/septal_face.h"
#include "core/access/septum_marks.h"
#include "core/access/sheath.h"
#include "core/result.h"

#include <Eigen/Core>
#include <optional>

namespace gauge::core {

/// The geometry that crossings are judged in. What is not known yet is absent, and so are the values that need it.
struct CrossingScene {
    SeptalFace face;
    std::optional<MitralDatum> mitral;
    std::optional<AppendageTarget> target;
    /// Unit, in the septum's plane: the way along which heights "parallel to the septum" are counted, upwards. It is the
    /// annulus' normal as far as it lies in the plane, so that levels are square to it. Present with `mitral`.
    std::optional<PatientVector> alongSeptum;
};

/// @param target      of the measured appendage; its ostium's centre also tells the left atrium's side of the septum.
/// @param leftAtrium  a place in the left atrium, used for that side while there is no target.
/// @errors those of septalFace() and, when annulus points are marked, of mitralDatum(); TooFewPoints when leaflets' points are
/// marked without an annulus; Degenerate when the septum lies within 15 degrees of parallel to the annulus' plane.
Result<CrossingScene> crossingScene(const SeptumMarks& marks, const std::optional<AppendageTarget>& target,
                                    const PatientPoint& leftAtrium);

/// Heights in mm are positive towards the atrium.
struct CrossingValues {
    Eigen::Vector2d place{0.0, 0.0};              ///< in the face's frame
    PatientPoint point;                           ///< in the septum's plane
    std::optional<double> overCoaptationMm;       ///< parallel to the septum, from the mean level of the leaflets' points
    std::optional<double> overAnnulusMm;          ///< square to the annulus' plane
    std::optional<double> distanceMm;             ///< to the ostium's centre
    std::optional<double> angleDeg;               ///< between the line to the ostium's centre and the proximal axis
    std::optional<double> steeredAngleDeg;        ///< arrival of a steerable sheath; absent also where no bend fits
};

/// Anywhere in the plane of the septum, also outside the fossa. Exact but for rounding.
/// The height over the coaptation follows DICOM PS3.16 (131130): "distance from the mitral leaflets to the puncture level, in
/// systole, four-chamber view, line drawn parallel to the septum"; here in space instead of in one view.
CrossingValues crossingAt(const CrossingScene& scene, const Eigen::Vector2d& place, const Steering& steering);

/// The height over the datum that the person set; nothing when it is not known.
std::optional<double> heightMm(const CrossingValues& values, HeightDatum datum);
/// "over the plane of the mitral annulus", "over the level of coaptation, parallel to the septum".
std::string_view words(HeightDatum datum);

/// Whether a crossing there serves: nothing when it cannot be told.
std::optional<bool> servesRepair(const CrossingValues& values, const CrossingLimits& limits);
std::optional<bool> servesClosure(const CrossingValues& values, const CrossingLimits& limits);
/// By a steerable sheath; a straight sheath that serves counts as well.
std::optional<bool> servesClosureSteered(const CrossingValues& values, const CrossingLimits& limits);

} // namespace gauge::core
