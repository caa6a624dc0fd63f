// The septal face: the plane of the fossa ovalis with its outline, and which side of it is which.
//
//   Seen from the left atrium (against the normal):       u, v, normal: right-handed; normal into the left atrium;
//              v  superior                                v the patient's head as far as it lies in the plane,
//              ^                                          u then points to the back where the septum lies as usual.
//    aortic    |   .-'''-.   posterior
//    root      |  ( fossa )  wall
//    side      |   '-...-'
//              o-------------> u
#pragma once

#include "core/geometry/plane_fit.h"
#include "core/result.h"

#include <Eigen/Core>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace gauge::core {

inline constexpr std::size_t kLeastFossaPoints = 4;
inline constexpr double kLeastFossaSpreadMm = 2.0;

/// Sides by which a crossing can miss the fossa.
enum class SeptalSide { AorticRoot, PosteriorWall, Superior, Inferior };

struct SeptalFace {
    SectionFrame frame;                   ///< origin: centroid of the outline's area
    std::vector<Eigen::Vector2d> outline; ///< smooth, through the marked points, counter-clockwise, mm in the frame
    PlaneFit fit;                         ///< of the marked points; same normal as the frame
    std::size_t count = 0;                ///< marked points
    /// Unit, in the frame: towards the aortic root, marked or as the patient's front shows it.
    Eigen::Vector2d towardsRoot{-1.0, 0.0};
    /// The root as marked, in the frame; nothing: the sides rest on the patient's axes alone.
    std::optional<Eigen::Vector2d> root;
    double posteriorSign = 1.0;           ///< +1: u points to the back; -1: to the front
    Eigen::Vector2d low{0.0, 0.0}, high{0.0, 0.0}; ///< corners of the outline's box along u and v

    double areaMm2() const;
    bool contains(const Eigen::Vector2d& place) const;
};

/// The plane is that of least squares through the points; the outline a smooth closed line through their feet in it, in the
/// order of their angles about their middle (so the order of marking does not matter).
/// @param leftAtrium  a place on the left atrium's side, for example the ostium's centre or the mark of the atrium.
/// @param aorticRoot  middle of the root; nothing: which side is which follows from the patient's axes.
/// @errors those of fitPlane() about "the fossa"; TooFewPoints below 4; Degenerate when the plane lies within 15 degrees of the
/// transverse plane (no superior side), within 6 degrees of the coronal plane without an aortic root (no posterior side), when
/// `leftAtrium` lies in the plane, the root square before the middle of the fossa, or the outline crosses itself.
Result<SeptalFace> septalFace(std::span<const PatientPoint> fossa, const PatientPoint& leftAtrium,
                              const std::optional<PatientPoint>& aorticRoot);

/// The side by which a place outside lies: that whose direction from the outline's middle is nearest in angle (aortic root,
/// back, head, feet), the root's side in doubt.
SeptalSide sideOf(const SeptalFace& face, const Eigen::Vector2d& place);
/// "aortic-root side (anterior)", "posterior wall", "superior side", "inferior side".
std::string_view words(SeptalSide side);

/// Distance of a place from the outline, mm, >= 0, inside or outside.
double distanceToOutlineMm(const SeptalFace& face, const Eigen::Vector2d& place);

/// @errors OutsideFossa, naming the side, by how much, and what the sides rest on; NonFinite.
Result<void> insideFossa(const SeptalFace& face, const Eigen::Vector2d& place);

/// Thirds of the outline's box: down to up, and back to front.
enum class SeptalHeight { Inferior, Middle, Superior };
enum class SeptalDepth { Posterior, Central, Anterior };
struct SeptalPosition {
    SeptalHeight height = SeptalHeight::Middle;
    SeptalDepth depth = SeptalDepth::Central;
    bool operator==(const SeptalPosition&) const = default;
};
/// By the septum's own plane and the patient's axes: head and feet along v, back and front along u.
SeptalPosition positionOf(const SeptalFace& face, const Eigen::Vector2d& place);
/// "inferior-posterior", "superior-central", "central", "posterior"…
std::string_view words(const SeptalPosition& position);

} // namespace gauge::core
