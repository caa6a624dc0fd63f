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
//    centres itself there) and has the sheath's arrival direction. The body does not turn or shift on its way.
// 2. Body. A body of revolution with flat ends. It reaches, as core/sizing/device_outline.h draws it, from its seat (plug) or the
//    landing plane (lobe) over the least depth that the chart asks for. Depths "from the ostium" are counted along the axis to
//    the landing zone and from there on along the sheath. A disc is flat and stands before the seat, square to the sheath.
// 3. Compression. The body may be as wide as its free width and as narrow as the chart's greatest compression makes it. Within
//    that band wall and body give way to each other: wall nearer to the line than half the free width is pressed out, or
//    presses the body in. Wall nearer than half the narrowest width stops it; so do trabeculae, which the images show as wall.
// 4. Reach. The depth that the far end gains, sliding from the landing zone on, before anything stops it there. What stands between
//    seat and landing zone is not looked at by the reach, but shows in the width in place and the gaps.
// 5. Place. The far end lies where the chart wants it, or where it is stopped; then the whole device stands back by the rest.
// 6. Width in place. At each t that of the circle with the area of the blood's section square to the sheath, held between the
//    narrowest and the free width.
// 7. Wall. Of the CT as it is, moved outwards by half of `widenedByMm` everywhere.
#pragma once

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

/// What a measurement says of the question: everything but chart, direction, neighbours and pressure. Of its landing zones the first
/// square (or tilted) one.
/// @errors LandingOutsideAppendage without a landing zone.
Result<SeatQuestion> seatQuestionOf(const AppendageMeasurement& measurement);

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
    Wall,   ///< the wall beside stops it
    Ahead,  ///< the wall ahead: the end of the lobe or the far side of a bend
    NoRoom, ///< it cannot even enter at the landing zone
    Open,   ///< nothing within what was measured; the reach is a lower bound
};

struct Seat {
    std::string name;
    std::string problem;      ///< not empty: why this size cannot be seated (a whole sentence); the rest is then not filled
    double freeMm = 0.0;      ///< free width
    double narrowestMm = 0.0; ///< at the chart's greatest compression: what the wall has to leave
    Estimate landingWidthMm;  ///< width in place at the landing zone
    Estimate reachMm;         ///< as the chart counts depth: from the ostium or the landing plane
    double neededMm = 0.0;    ///< the chart's least depth, counted likewise
    SeatEnd end = SeatEnd::Open;
    PatientPoint stoppedAt;   ///< where it touches; meaningless when open
    std::optional<bool> reaches; ///< absent: the tip was not filled, or the measured images end before the needed depth
    double standsBackMm = 0.0; ///< by how much it stands before its place
    SeatedBody seated;
    /// Share of the body's length beyond the plane through the circumflex mark square to the sheath, 0 to 100.
    std::optional<Estimate> beyondCircumflexPercent;
    std::optional<DiscCover> disc; ///< lobe-and-disc with a known ostium only
    /// Between body and wall at the landing zone, above and below along the patient's long axis as it lies square to the sheath;
    /// below 0: the wall is pressed out by so much. Absent: no wall within 40 mm there, or the sheath runs head to foot.
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

/// More oblique than this to the axis a rigid straight body says nothing about the appendage.
inline constexpr double kMostSheathAngleDeg = 60.0;

/// Seats every size. About 0.1 s of processor time for 6 sizes, over all cores.
/// @errors InvalidArgument for a direction that is none or more than kMostSheathAngleDeg from the axis, or a landing depth not above
/// 0; LandingOutsideAppendage when the landing zone's middle lies in no blood; NonFinite; Cancelled. A size whose least depth ends
/// before the body begins has a `problem`; the others are seated all the same.
/// Uncertainties: `plane` is the root mean square change when the line is shifted and tilted by `spread` to either side; large where a
/// small shift lets the body pass a trabecula. `edge` from the wall's own, `observer` of marks. Accuracy on analytic bodies: 0.05 mm (tests/core/sizing).
Result<SeatAnswer> seatSizes(const SeatWall& wall, const SeatQuestion& question, const WorkContext& work = {});

} // namespace gauge::core
