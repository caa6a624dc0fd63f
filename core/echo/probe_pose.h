// Where the echo probe was, in the patient coordinates of the CT: fitted to landmarks seen in both, so that the CT
// can be cut in the echo's own planes.
//
//   echo frame: origin at the tip of the sector          a view at probe angle t contains z and
//     lateral x (probe angle 0), beam z away from          (cos t, sin t, 0); a point of it at (s, d)
//     the probe, y = z cross x                             is (s cos t, s sin t, d)
//
//           probe
//             o-----> s (right on the screen)      The probe is held still between the views: only the plane turns.
//            /|\                                   Hearts move and fill between the studies: the residual says
//           / | \                                  how well the two fit.
//             v d
#pragma once

#include "core/geometry/plane.h"
#include "core/result.h"

#include <Eigen/Geometry>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace gauge::core {

/// One structure seen in a view and in the CT: circumflex artery, tip of the ridge, a point of the ostium or of
/// the mitral annulus.
struct SharedLandmark {
    std::string name;           ///< for messages
    double probeAngleDeg = 0.0;
    Eigen::Vector2d echoMm{0.0, 0.0}; ///< (lateral s, depth d) in the view
    PatientPoint ct;            ///< LPS, mm
};

/// Standard uncertainties; assumptions, editable (no published figures were found).
struct PoseUncertainties {
    double echoMm = 1.0;      ///< of a landmark within the view, each direction
    double elevationMm = 2.0; ///< across the view: thickness of the beam
    double ctMm = 1.0;        ///< of a landmark in CT, each direction
    double angleDeg = 2.0;    ///< of the probe angle as shown, one error a view
};

struct ProbePose {
    Eigen::Isometry3d patientFromEcho = Eigen::Isometry3d::Identity();
    /// Of small turns (rad) about, then small shifts (mm) along, the echo frame's axes.
    Eigen::Matrix<double, 6, 6> covariance = Eigen::Matrix<double, 6, 6>::Zero();
    std::vector<double> residualMm; ///< distance left for each landmark
    double rmsResidualMm = 0.0;
    double chiSquared = 0.0;
    int freedom = 0;
    std::vector<Notice> notices;

    PatientPoint probe() const { return {patientFromEcho.translation()}; }
    PatientVector beam() const { return {patientFromEcho.linear().col(2)}; }
    PatientVector lateral0() const { return {patientFromEcho.linear().col(0)}; }
    PatientPoint patientFrom(double probeAngleDeg, const Eigen::Vector2d& echoMm) const;
    /// u to the right on the screen, v along the beam, origin at the tip of the sector: section coordinates are (s, d).
    SectionFrame viewFrame(double probeAngleDeg) const;
};

/// Weighted least squares over six parameters of the pose and one error of each view's angle.
/// @errors TooFewPoints below 3 landmarks; NonFinite; Degenerate when they lie on a line (within 3 mm);
/// LandmarksUnusable when even the best pose leaves more than 10 mm (root mean square): a wrong pairing, side or scale.
/// Notices: `landmarks-disagree` when the residual is larger than the stated uncertainties allow (the covariance is
/// then enlarged), `landmarks-in-one-view`, `landmarks-close` (spread below 10 mm across).
Result<ProbePose> fitProbePose(std::span<const SharedLandmark> landmarks, const PoseUncertainties& uncertainties = {});

/// `pose` moved by a small turn and shift in its own frame (the order of the covariance).
ProbePose moved(const ProbePose& pose, const Eigen::Matrix<double, 6, 1>& change);

} // namespace gauge::core
