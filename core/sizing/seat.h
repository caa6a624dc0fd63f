// How each size of a chart would sit: its body, compressed as the chart allows, slides along the sheath's direction into the
// measured blood of the appendage. A geometric model, no mechanics. Sentences: seat_words.h. As JSON: seat_json.h.
//
//               ostium plane    landing zone          t  along the sheath, mm, 0 in the middle of the landing zone
//                    |               |
//      sheath ->     |   near |------o---------| far                  --.
//      ------------- | -------+------+---------+---------- t             '-. wall ahead (a bend, trabeculae, the end)
//                    |        |----------------|   <- width in place  -----'
//
// The model, and what it takes for granted:
// 1. Line. The body's middle line is straight, runs through the centroid of the landing zone (a body under compression
//    centres itself there) and has the sheath's arrival direction. The body does not turn on its way.
// 2. Body. Free, a body of revolution with flat ends. It reaches, as core/sizing/device_outline.h draws it, from its seat (plug) or
//    the landing plane (lobe) over the least depth that the chart asks for. Depths "from the ostium" are counted along the axis to
//    the landing zone and from there on along the sheath. A disc is flat and round and stands before the seat, square to the sheath.
//    A plug seats at the plug plane where the measurement has one, else as all others do at the first landing plane.
// 3. Compression. Bodies are expanding meshes: in every section square to the line the body takes the form of the wall. What the
//    chart bounds is its width by the chart's own measure (the diameter from the perimeter, from the area, or the longest), not the
//    distance to each side. Its section is the convex hull of the blood that it can reach from the line, no farther than the free
//    band folded flat (pi/4 of the free width), and spreads until it is as wide as it is free. (core/access/body_section.h)
// 4. What stops it, sliding from the landing zone on (core/access/slide_body.h):
//    - too narrow: the measure of that hull is below the narrowest width, the nominal one less the chart's greatest compression;
//    - pushed aside: in some direction the middle between the walls on both sides (none farther than half the free width) has moved
//      off the line, since the landing zone, by more than half of what the width may give way. There one side carries all of the
//      compression that the chart allows to both; a straight body leans no further off its line;
//    - a strand: wall stands into the blood within half the free width (a trabecula, a fold, an island), as deep behind
//      the hull of that blood as half of what the width may give way. A mesh closes over less and is pierced by more;
//    - the wall ahead: it lies across the line.
//    In a round lumen about the line a body is stopped by wall nearer than half the narrowest width, as a rigid one is. Nowhere
//    is it stopped where a rigid round body of the narrowest width would pass.
// 5. Reach. The depth that the far end gains before anything stops it. What stands between seat and landing zone is not looked at by
//    the reach, but shows in the width in place and the gaps.
// 6. Place. The far end lies where the chart wants it, or where it is stopped; then the whole device stands back by the rest.
// 7. Width in place. By the chart's own measure, between the narrowest and the free width; narrower wall is pressed out.
// 8. Wall. Of the CT as it is, moved outwards by half of `widenedByMm` everywhere.
// 9. Seat and fit speak of one width: what the landing zone's own section measures more than the hull of the same plane is added to
//    the measure of every section (the contour is smooth and follows notches; a few hundredths in smooth lumens). So a size whose compression
//    at the landing zone lies within the chart's band finds room there, unless the sheath comes in obliquely or a strand stands in its way.
// A size that finds no room at the landing zone has no place: nothing is told of it in place.
#pragma once

#include "core/access/body_section.h"
#include "core/access/seat_wall.h"
#include "core/access/seated_body.h"
#include "core/measure/section.h"
#include "core/parallel/progress.h"
#include "core/sizing/device_chart.h"

#include <optional>
#include <string>
#include <vector>

namespace gauge::core {

/// From where the direction of the sheath is known.
enum class SheathBasis {
    Crossing,     ///< the arrival of a straight sheath from the chosen crossing of the septum
    SteeredCrossing, ///< that of a steerable sheath
    ProximalAxis, ///< no crossing is chosen: the appendage's proximal axis
    OstiumNormal, ///< no crossing is chosen: square to the ostium
};
const char* name(SheathBasis basis);  ///< "crossing", "steered-crossing", "proximal-axis", "ostium-normal"
const char* words(SheathBasis basis); ///< "the sheath from the chosen crossing", …

/// A structure marked on the images.
struct SeatNeighbour {
    Structure structure = Structure::CircumflexArtery;
    std::vector<PatientPoint> points; ///< places on it; a line (`closed`) or each for itself
    bool closed = false;              ///< at least 3 points around it, joined by straight pieces
    bool operator==(const SeatNeighbour&) const = default;
};

struct SeatQuestion {
    DeviceChart chart;
    PatientPoint landingCentre;  ///< centroid of the landing zone's contour
    PatientVector landingNormal{Eigen::Vector3d::UnitZ()}; ///< unit: of its plane
    /// What its section measures, by the chart's own measure; absent: nothing is added to the hulls.
    std::optional<double> landingWidthMm;
    std::optional<double> plugPlaneMm; ///< of a plug plane: how far it lies beyond the ridge; absent: a plane of the axis
    double landingDepthMm = 0.0; ///< of the landing zone along the axis from the ostium, > 0
    PatientVector direction;     ///< unit, towards the tip
    SheathBasis basis = SheathBasis::ProximalAxis;
    PatientVector axisAtLanding; ///< unit: the appendage's own axis there
    /// Of the landing zone's place: a shift along and across the line, and a tilt of the line.
    PlacementSpread spread;
    std::vector<PatientPoint> ostium; ///< contour, at least 3 points in order, or empty
    double ostiumEdgeMm = 0.0;        ///< standard uncertainty of its border
    std::optional<PatientPoint> circumflex;
    std::vector<SeatNeighbour> neighbours;
    double markSdMm = 1.0;    ///< standard uncertainty of a mark in each direction, an assumption
    double widenedByMm = 0.0; ///< by how much diameters are larger at the pressure asked about than on this CT
    bool tipUnfilled = false; ///< the tip was not filled: no verdict on depth
};
/// Alike in everything but the chart.
bool asksTheSameOf(const SeatQuestion& a, const SeatQuestion& b);

/// The chart's own measure, of the landing zone.
BodyMeasure measureOf(const DeviceChart& chart);

/// What a measurement says of the question about a chart: everything but direction, neighbours and pressure. The landing zone is the
/// plug plane for a plug where there is one, else the first square (or tilted) one.
/// @errors LandingOutsideAppendage without a landing zone.
Result<SeatQuestion> seatQuestionOf(const AppendageMeasurement& measurement, const DeviceChart& chart = {});

/// One clearance of one size: least distance from body and disc to a marked structure; below 0 inside.
struct SeatClearance {
    Structure structure = Structure::CircumflexArtery;
    Estimate mm;
    std::optional<double> leastMm; ///< what the chart asks for
    bool ok() const { return !leastMm || mm.value >= *leastMm; }
};

struct DiscCover {
    Estimate sharePercent; ///< of the area of the ostium's contour, seen along the sheath, that the disc covers
    Estimate overlapMm;    ///< least distance by which the disc's rim lies outside the ostium's; below 0: short
    PatientVector leastAt; ///< unit, square to the sheath: the side of the least overlap
};

enum class SeatEnd {
    Narrow, ///< the appendage is too narrow by the chart's own measure
    Aside,  ///< the wall beside pushes it off the line
    Strand, ///< a trabecula or fold stands into it
    Ahead,  ///< the wall ahead: the end of the lobe or the far side of a bend
    Open,   ///< nothing within what was measured; the reach is a lower bound
};

struct Seat {
    std::string name;
    std::string problem;      ///< not empty: why this size cannot be seated (a whole sentence); the rest is then not filled
    double freeMm = 0.0;      ///< free width
    double narrowestMm = 0.0; ///< at the chart's greatest compression: what the wall has to leave, by the chart's own measure
    double neededMm = 0.0;    ///< the chart's least depth
    bool hasRoom = true;      ///< false: `end` stops it at the landing zone already, and nothing below is known of it
    SeatEnd end = SeatEnd::Open;
    PatientPoint stoppedAt;   ///< where it touches; meaningless when open
    double leftMm = 0.0;      ///< too narrow: what the appendage leaves there, by the chart's own measure
    std::optional<bool> reaches; ///< absent: the tip was not filled, or the measured images end before the needed depth
    std::optional<Estimate> landingWidthMm; ///< width in place at the landing zone, by the chart's own measure
    std::optional<Estimate> reachMm; ///< as the chart counts depth: from the ostium or the landing plane
    double standsBackMm = 0.0; ///< by how much it stands before its place
    std::optional<SeatedBody> seated;
    /// Share of the body's length beyond the plane through the circumflex mark square to the sheath, 0 to 100.
    std::optional<Estimate> beyondCircumflexPercent;
    std::optional<DiscCover> disc; ///< lobe-and-disc with a known ostium only
    /// Between body and wall at the landing zone, above and below along the patient's long axis as it lies square to the sheath;
    /// about 0 where it touches; below 0: the wall is pressed out by so much. Absent: no wall within 40 mm there, or the sheath runs
    /// head to foot.
    std::optional<Estimate> gapSuperiorMm, gapInferiorMm;
    std::vector<SeatClearance> clearances; ///< of the marked structures
    std::vector<Notice> facts;    ///< what was found, one sentence each
    std::vector<Notice> warnings; ///< what speaks against it
};

struct SeatAnswer {
    SheathBasis basis = SheathBasis::ProximalAxis;
    double angleToAxisDeg = 0.0; ///< between the sheath and the appendage's axis at the landing zone
    bool hasSides = true;        ///< false: the sheath runs head to foot, nothing lies above or below
    std::vector<Seat> sizes;     ///< one a size of the chart, in its order
    std::vector<Notice> notices; ///< about all of them
};

/// More oblique than this to the axis a straight body says nothing about the appendage.
inline constexpr double kMostSheathAngleDeg = 60.0;

/// Seats every size. A few tenths of a second of processor time for 6 sizes, over all cores.
/// @errors InvalidArgument for a direction or plane that is none, a direction more than kMostSheathAngleDeg from the axis, or a landing depth not above
/// 0; LandingOutsideAppendage when the landing zone's middle lies in no blood; NonFinite; Cancelled. A size whose least depth ends
/// before the body begins has a `problem`; the others are seated all the same.
/// Uncertainties: `plane` is the root mean square change when the line is shifted and tilted by `spread` to either side; large where a
/// small shift lets the body pass a trabecula. `edge` from the wall's own, `observer` of marks. Accuracy on analytic bodies: 0.05 mm (tests/core/sizing).
Result<SeatAnswer> seatSizes(const SeatWall& wall, const SeatQuestion& question, const WorkContext& work = {});

} // namespace gauge::core
