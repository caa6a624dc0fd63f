// What a drawing measures: from its points and the scale of what it lies on to recorded values of the group
// "drawing/" + id. The same line that is measured is shown: drawingLine().
//
//   kind       values (ids in the group)                                         needs
//   Straight   length mm                                                         lengths
//   Curve      length mm, of the smooth line through the points                  lengths
//   Angle      angle deg, at the middle point, 0 to 180                          lengths, or square pixels alone
//   Area       area, perimeter, longest-diameter… (core/record/metric_names.h)   lengths
//   Ellipse    the same, in closed form                                          lengths
//   Velocity   velocity cm/s                                                     a spectral region
//   Interval   interval ms, heart-rate 1/min where it is one                     a region over time
//   Envelope   peak-velocity, mean-velocity cm/s, velocity-time-integral cm, peak-gradient, mean-gradient mmHg,
//              duration ms                                                       a spectral region
//
// Uncertainty: `observer`: each point that a hand sets has a standard deviation of kHandSetPixels pixels (on a section
// through a volume: of that many voxel edges) along each axis, carried through to the value; a closed line strays from the
// border as core/echo/drawn_contour.h states. `scale`: that of the picture, shared by the whole line; 0 for CT.
#pragma once

#include "core/cine/region_caliper.h"
#include "core/record/case_record.h"
#include "core/result.h"
#include "core/volume/volume.h"

#include <memory>
#include <span>
#include <string>
#include <variant>
#include <vector>

namespace gauge::core {

/// What is known of the lengths of a picture (an echo or X-ray frame).
struct PictureGround {
    std::vector<EchoRegion> regions;  ///< of an ultrasound picture
    std::optional<HandScale> hand;    ///< scale that the person gave; comes first where it holds
    std::optional<PlanarScale> whole; ///< the one scale of a picture without regions, as its file tells it
    double pixelAspect = 1.0;         ///< height of a pixel to its width; for angles where no length is known
    std::string noScale;              ///< why the file of a picture without regions tells no scale, as a sentence
    std::optional<Error> handFault;   ///< why the scale that the person gave cannot be told: then no length holds
};

/// A section through a volume: drawing coordinates are mm already.
struct SectionGround {
    double voxelMm = 0.5; ///< greatest edge of a voxel, > 0
};

using DrawingGround = std::variant<PictureGround, SectionGround>;

/// The greatest edge of a voxel.
SectionGround sectionGround(const Volume& volume);

/// The scale that a PictureScale of two marks gives (not byEdgeProfile, which needs the frame: core/fluoro/object_scale.h).
/// @errors those of markedScale().
Result<HandScale> handScaleOf(const PictureScale& scale, double pixelAspect = 1.0);

struct DrawnValue {
    std::string id;   ///< in the group
    std::string unit; ///< "mm", "mm2", "deg", "1", "cm/s", "ms", "cm", "mmHg", "1/min"
    Estimate estimate;
};

/// All values of a drawing, the leading one first.
/// @errors TooFewPoints, NonFinite, Degenerate (an angle without an arm, a line that encloses nothing), RegionsMixed,
/// ScaleMissing (with the reason), those of core/cine/spectral.h.
Result<std::vector<DrawnValue>> measureDrawing(const Drawing& drawing, const DrawingGround& ground);

/// Whether a drawing of this kind can begin at a place of what it is drawn on: lengths, angles and areas not where the axes
/// are no lengths, velocities only where the vertical axis is cm/s, times only where the horizontal axis is s. The units of
/// the region decide (PS3.3 C.8.5.5.1.15). A missing scale is no obstacle: the person can still give one.
/// @errors ScaleMissing with the units of the axes and what can be drawn there instead.
Result<void> canBegin(DrawingKind kind, const DrawingGround& ground, const Eigen::Vector2d& place);

/// The same as values of the record in the group "drawing/" + id. Inputs: the drawing itself; of a section the images and
/// the place of its plane as it was when drawn or confirmed, so that the values are stale once the plane has moved; of a
/// picture the scale that the person gave to it.
/// @errors those of measureDrawing(); InvalidArgument when the record has no such drawing.
Result<std::vector<RecordedValue>> drawingValues(const CaseRecord& record, std::string_view id, const DrawingGround& ground,
                                                 std::shared_ptr<const Provenance> provenance);

/// Millimetres a unit of drawing coordinates along x and y: of a section 1, of a picture its scale, else its pixels' shape.
Eigen::Vector2d unitMm(const Drawing& drawing, const DrawingGround& ground);

/// True for kinds whose line is closed.
bool isClosed(DrawingKind kind);

/// Least and greatest number of points of a kind.
struct PointCount {
    std::size_t least, most;
};
PointCount pointCount(DrawingKind kind);

/// The line to show, drawing coordinates, fit for a polyline (closed kinds: last point joined to the first). Empty when the
/// points do not make one.
/// @param unitMm  millimetres a unit along x and y (any common factor).
std::vector<Eigen::Vector2d> drawingLine(DrawingKind kind, std::span<const Eigen::Vector2d> points,
                                         const Eigen::Vector2d& unitMm = Eigen::Vector2d::Ones());

/// The third point of an ellipse put square to its first half-axis, where drawingLine() and measureDrawing() take it.
Eigen::Vector2d ellipseSquared(std::span<const Eigen::Vector2d> points, const Eigen::Vector2d& unitMm = Eigen::Vector2d::Ones());

/// True when the drawing's plane lies elsewhere than where it was drawn or confirmed. False for pictures.
bool isPlaneMoved(const CaseRecord& record, const Drawing& drawing);
bool isPlaneMoved(const CaseRecord& record, const CorrectedContour& contour);

} // namespace gauge::core
