// The working projections: which views of the C-arm serve which aim, what each of them shows, and what is lost when one view
// must serve all. Neighbours: view_planning.h (edge-on and en-face angles of a plane), silhouettes.h (what hides what).
//
//   aim               best view                                             what a view loses of it
//   longest width     edge-on, line of sight along the shortest diameter    mm of the longest diameter not shown
//   shortest width    edge-on, line of sight along the longest diameter     mm shown beyond the shortest diameter
//   bend in profile   edge-on, line of sight nearest to square to the bend  degrees off square to the bend
//   least overlap     the reachable view with least of the appendage        share of the appendage hidden, beyond the
//                     behind the atrium                                     least
//   en face           line of sight along the plane's normal                degrees off the normal
//   one for all       least sum of squares of the losses (but en face)      each of the above
#pragma once

#include "core/fluoro/silhouettes.h"
#include "core/fluoro/view_planning.h"
#include "core/parallel/progress.h"

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace gauge::core {

enum class ViewAim { LongestWidth, ShortestWidth, BendInProfile, LeastOverlap, EnFace, OneForAll };
inline constexpr std::array kViewAims{ViewAim::LongestWidth, ViewAim::ShortestWidth, ViewAim::BendInProfile,
                                      ViewAim::LeastOverlap, ViewAim::EnFace,        ViewAim::OneForAll};

/// "longest-width", "shortest-width", "bend-in-profile", "least-overlap", "en-face", "one-for-all": the words of files.
std::string_view name(ViewAim aim);
std::optional<ViewAim> viewAimFrom(std::string_view name);

/// What is to be seen, in the CT's axes, LPS mm.
struct ProjectionSubject {
    std::vector<PatientPoint> contour; ///< closed, of the plane that the views are for: landing zone or ostium
    std::vector<PatientPoint> axis;    ///< ostium to tip; may be empty: no bend
};

/// A bend whose profile means something.
struct BendPlane {
    PatientVector before; ///< unit direction of the axis before the sharpest place
    PatientVector after;
    PatientVector normal; ///< unit, square to both: a view along it has the bend in profile
    double turnDeg = 0.0;
};

/// Directions over 6 mm before and after the sharpest place. nullopt for an axis shorter than 15 mm or a turn below
/// kLeastBendDeg, whose plane is noise.
std::optional<BendPlane> bendPlane(std::span<const PatientPoint> axis);
/// Directions over 6 mm of a traced axis are good for about 5 degrees each: of a lesser turn the plane is not known. Assumption.
inline constexpr double kLeastBendDeg = 20.0;

/// What one view shows of the subject. Angles of the room (the patient's turn applied).
struct ViewReading {
    CArmAngles angles;
    bool withinReach = true;
    double openingDeg = 0.0;  ///< between line of sight and plane: 0 edge-on, 90 en face
    double axisVisible = 1.0; ///< seen length over true length along the plane's normal: 1 - foreshortening
    std::optional<double> widthMm; ///< across the projected normal; nullopt nearly en face
    std::optional<WidthTolerance> tolerance; ///< of the width within kAngleToleranceDeg of both angles
    std::optional<double> lostOfLongestMm, beyondShortestMm; ///< with a width only
    std::optional<double> offProfileDeg; ///< of the bend
    std::optional<double> hiddenShare;   ///< of the appendage behind the atrium, 0 to 1
    double offNormalDeg = 0.0;           ///< from en face, 0 to 90
};

struct WorkingView {
    ViewAim aim = ViewAim::LongestWidth;
    CArmAngles ideal;  ///< without regard to the reach (of LeastOverlap and OneForAll the same as seen.angles)
    ViewReading seen;  ///< the best view within the reach
    double movedDeg = 0.0; ///< between both lines of sight; 0: the ideal view can be reached
    /// Share of the appendage hidden beyond what the least-overlap view hides.
    std::optional<double> hiddenBeyondLeast;
};

struct ViewPlan {
    PatientVector normal;     ///< of the subject's plane, in the room's axes
    CArmAngles enFace;
    double longestMm = 0.0;   ///< diameters of the contour
    double shortestMm = 0.0;
    std::optional<BendPlane> bend; ///< in the room's axes
    std::vector<std::vector<CArmAngles>> edgeOn; ///< the great circle, cut by the reach
    std::vector<WorkingView> views; ///< in the order of kViewAims; aims that the subject does not have are left out
    std::vector<Notice> notices;    ///< no-bend, no-surface, not-edge-on-within-reach

    const WorkingView* view(ViewAim aim) const;
};

/// How losses of different kinds are weighed for one view that serves all: each is divided by its scale, and the squares are
/// added. Assumptions, of this project's own.
struct CompromiseScales {
    double widthMm = 1.0;     ///< of the longest not shown, of what is shown beyond the shortest
    double openingDeg = 10.0; ///< from edge-on
    double profileDeg = 15.0;
    double hiddenShare = 0.1;
};

struct ViewPlanOptions {
    CArmReach reach;
    PatientTurn turn;
    CompromiseScales scales;
};

/// One view. @param room  angles of the room. @errors those of projectedWidth().
Result<ViewReading> readView(const ProjectionSubject& subject, const Silhouettes* silhouettes, const CArmAngles& room,
                             const ViewPlanOptions& options);

/// All views. Where the ideal of an edge-on aim cannot be reached, the view that loses least among the edge-on views within the
/// reach is taken, and where none of these can be reached the one that is nearest to edge-on (a notice says so).
/// @param silhouettes  made with roomFromPatient(options.turn); null: without overlap.
/// @errors those of contourNormal(), validate(reach), validate(turn); Cancelled.
/// Accuracy of the search: 1 degree in each angle. 0.2 to 1 s with silhouettes, a few ms without.
Result<ViewPlan> planViews(const ProjectionSubject& subject, const Silhouettes* silhouettes, const ViewPlanOptions& options,
                           const WorkContext& work = {});

} // namespace gauge::core
