#include "core/echo/probe_pose.h"

#include "core/echo/width_reading.h"
#include "core/number_text.h"
#include "core/units/angle.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {

constexpr double kLeastSpreadMm = 3.0, kPoorSpreadMm = 10.0, kGreatestResidualMm = 10.0;
constexpr int kIterations = 50;
constexpr double kSameViewDeg = 0.5;

Eigen::Vector3d lateral(double angleRad) { return {std::cos(angleRad), std::sin(angleRad), 0.0}; }

struct Problem {
    std::span<const SharedLandmark> landmarks;
    PoseUncertainties u;
    std::vector<std::size_t> view; ///< of each landmark
    std::vector<double> viewDeg;
};

struct State {
    Eigen::Isometry3d pose = Eigen::Isometry3d::Identity();
    Eigen::VectorXd turn; ///< error of each view's angle, rad
};

Problem grouped(std::span<const SharedLandmark> landmarks, const PoseUncertainties& u) {
    Problem p{landmarks, u, {}, {}};
    for (const auto& l : landmarks) {
        // Views half a turn apart are the same plane but mirrored: kept apart, as (s, d) tells them.
        const auto same = std::find_if(p.viewDeg.begin(), p.viewDeg.end(), [&](double a) {
            return std::abs(std::remainder(a - l.probeAngleDeg, 360.0)) <= kSameViewDeg;
        });
        p.view.push_back(static_cast<std::size_t>(same - p.viewDeg.begin()));
        if (same == p.viewDeg.end()) p.viewDeg.push_back(l.probeAngleDeg);
    }
    return p;
}

Eigen::Vector3d echoPoint(const SharedLandmark& l) {
    Eigen::Vector3d e = l.echoMm.x() * lateral(l.probeAngleDeg * kRadPerDegree);
    e.z() = l.echoMm.y();
    return e;
}

/// Rigid motion of least squares (Kabsch) from echo to patient points.
Eigen::Isometry3d startingPose(std::span<const SharedLandmark> landmarks) {
    const auto n = static_cast<Eigen::Index>(landmarks.size());
    Eigen::Matrix3Xd echo(3, n), ct(3, n);
    for (Eigen::Index i = 0; i < n; ++i) {
        echo.col(i) = echoPoint(landmarks[static_cast<std::size_t>(i)]);
        ct.col(i) = landmarks[static_cast<std::size_t>(i)].ct.mm;
    }
    Eigen::Isometry3d pose;
    pose.matrix() = Eigen::umeyama(echo, ct, false);
    return pose;
}

/// Residuals in units of their uncertainty, and their derivatives by (turn, shift, view errors).
double residuals(const Problem& p, const State& s, Eigen::VectorXd* r, Eigen::MatrixXd* j) {
    const auto views = static_cast<Eigen::Index>(p.viewDeg.size()), n = static_cast<Eigen::Index>(p.landmarks.size());
    Eigen::VectorXd values(3 * n + views);
    if (j) *j = Eigen::MatrixXd::Zero(3 * n + views, 6 + views);
    const double inPlane = std::hypot(p.u.echoMm, p.u.ctMm), across = std::hypot(p.u.elevationMm, p.u.ctMm);
    const Eigen::Matrix3d unrotate = s.pose.linear().transpose();
    for (Eigen::Index i = 0; i < n; ++i) {
        const auto& l = p.landmarks[static_cast<std::size_t>(i)];
        const auto v = static_cast<Eigen::Index>(p.view[static_cast<std::size_t>(i)]);
        const Eigen::Vector3d e = unrotate * (l.ct.mm - s.pose.translation());
        const Eigen::Vector3d side = lateral(l.probeAngleDeg * kRadPerDegree + s.turn[v]);
        Eigen::Matrix3d view; // echo point -> (lateral, depth, across)
        view.row(0) = side;
        view.row(1) = Eigen::Vector3d::UnitZ();
        view.row(2) = Eigen::Vector3d(-side.y(), side.x(), 0.0);
        const Eigen::Vector3d weight(1.0 / inPlane, 1.0 / inPlane, 1.0 / across);
        const Eigen::Vector3d seen = view * e;
        values.segment<3>(3 * i) = weight.cwiseProduct(seen - Eigen::Vector3d(l.echoMm.x(), l.echoMm.y(), 0.0));
        if (!j) continue;
        Eigen::Matrix3d cross; // e x w as a matrix times w
        cross << 0, -e.z(), e.y(), e.z(), 0, -e.x(), -e.y(), e.x(), 0;
        j->block<3, 3>(3 * i, 0) = weight.asDiagonal() * view * cross;
        j->block<3, 3>(3 * i, 3) = -(weight.asDiagonal() * view);
        j->block<3, 1>(3 * i, 6 + v) = weight.cwiseProduct(Eigen::Vector3d(seen.z(), 0.0, -seen.x()));
    }
    for (Eigen::Index v = 0; v < views; ++v) {
        values[3 * n + v] = s.turn[v] / (p.u.angleDeg * kRadPerDegree);
        if (j) (*j)(3 * n + v, 6 + v) = 1.0 / (p.u.angleDeg * kRadPerDegree);
    }
    if (r) *r = values;
    return values.squaredNorm();
}

Eigen::Isometry3d movedPose(const Eigen::Isometry3d& pose, const Eigen::Vector3d& turn, const Eigen::Vector3d& shift) {
    Eigen::Isometry3d change = Eigen::Isometry3d::Identity();
    if (turn.norm() > 0.0) change.linear() = Eigen::AngleAxisd(turn.norm(), turn.normalized()).toRotationMatrix();
    change.translation() = shift;
    return pose * change;
}

State refined(const Problem& p, State s) {
    double best = residuals(p, s, nullptr, nullptr), damping = 0.0;
    for (int i = 0; i < kIterations; ++i) {
        Eigen::VectorXd r;
        Eigen::MatrixXd j;
        residuals(p, s, &r, &j);
        Eigen::MatrixXd normal = j.transpose() * j;
        normal.diagonal() *= 1.0 + damping;
        const Eigen::VectorXd step = -normal.ldlt().solve(j.transpose() * r);
        State next = s;
        next.pose = movedPose(s.pose, step.head<3>(), step.segment<3>(3));
        next.turn += step.tail(s.turn.size());
        const double now = residuals(p, next, nullptr, nullptr);
        if (!(now <= best)) {
            if (step.norm() < 1e-9) break;
            damping = damping > 0.0 ? damping * 8.0 : 1e-3;
            continue;
        }
        s = next;
        best = now;
        damping *= 0.1;
        if (step.norm() < 1e-12) break;
    }
    return s;
}

/// Standard deviation of points along the second of their three main directions: 0 when they lie on a line.
double spreadAcross(const Eigen::Matrix3Xd& points) {
    const Eigen::Vector3d mean = points.rowwise().mean();
    const Eigen::Matrix3Xd centred = points.colwise() - mean;
    const Eigen::Matrix3d scatter = centred * centred.transpose() / static_cast<double>(points.cols());
    const Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> solved(scatter, Eigen::EigenvaluesOnly);
    return std::sqrt(std::max(solved.eigenvalues()[1], 0.0)); // ascending
}

Result<double> checkLandmarks(std::span<const SharedLandmark> landmarks, const PoseUncertainties& u) {
    if (!(u.echoMm > 0.0 && u.elevationMm > 0.0 && u.ctMm >= 0.0 && u.angleDeg > 0.0))
        return failure(ErrorCode::InvalidArgument, "Cannot place the echo probe: uncertainties above 0 are needed.");
    if (landmarks.size() < 3)
        return failure(ErrorCode::TooFewPoints, "Cannot place the echo probe from " + std::to_string(landmarks.size()) +
                                                    " landmark(s) seen on echo and CT: three or more are needed.");
    Eigen::Matrix3Xd ct = Eigen::Matrix3Xd::Zero(3, static_cast<Eigen::Index>(landmarks.size()));
    Eigen::Matrix3Xd echo = ct;
    for (std::size_t i = 0; i < landmarks.size(); ++i) {
        ct.col(static_cast<Eigen::Index>(i)) = landmarks[i].ct.mm;
        echo.col(static_cast<Eigen::Index>(i)) = echoPoint(landmarks[i]);
    }
    if (!ct.allFinite() || !echo.allFinite())
        return failure(ErrorCode::NonFinite, "Cannot place the echo probe: a landmark's coordinates are no numbers.");
    const double width = std::min(spreadAcross(ct), spreadAcross(echo));
    if (width < kLeastSpreadMm)
        return failure(ErrorCode::Degenerate, "Cannot place the echo probe: its landmarks lie on one line (spread across it " +
                                                  fixed(width, 1) + " mm); add one to the side, such as the mitral annulus.");
    return width;
}

void judge(ProbePose& pose, const Problem& p, double width) {
    // 95 % of chi-square / freedom for a handful of freedoms lies near 2 (table in any text on statistics).
    if (pose.freedom > 0 && pose.chiSquared > 2.0 * pose.freedom) {
        pose.covariance *= pose.chiSquared / pose.freedom;
        pose.notices.push_back({"landmarks-disagree",
                                "The landmarks of echo and CT fit each other no better than " + fixed(pose.rmsResidualMm, 1) +
                                    " mm (root mean square), more than their uncertainties allow: another filling or "
                                    "phase, or one of them is another structure. The pose's uncertainty was enlarged.",
                                {}});
    }
    if (p.viewDeg.size() == 1)
        pose.notices.push_back({"landmarks-in-one-view",
                                "All landmarks were marked in one view: the turn to the other views rests on the shown "
                                "probe angles alone.",
                                {}});
    if (width < kPoorSpreadMm)
        pose.notices.push_back({"landmarks-close",
                                "The landmarks lie close to one line (spread across it " + fixed(width, 1) +
                                    " mm): the turn about it is poorly known.",
                                {}});
}

} // namespace

PatientPoint ProbePose::patientFrom(double probeAngleDeg, const Eigen::Vector2d& echoMm) const {
    Eigen::Vector3d e = echoMm.x() * lateral(probeAngleDeg * kRadPerDegree);
    e.z() = echoMm.y();
    return {patientFromEcho * e};
}

SectionFrame ProbePose::viewFrame(double probeAngleDeg) const {
    const Eigen::Vector3d u = patientFromEcho.linear() * lateral(probeAngleDeg * kRadPerDegree);
    const Eigen::Vector3d v = patientFromEcho.linear().col(2);
    return {probe(), {u}, {v}, {u.cross(v)}};
}

Result<ProbePose> fitProbePose(std::span<const SharedLandmark> landmarks, const PoseUncertainties& uncertainties) {
    const auto width = checkLandmarks(landmarks, uncertainties);
    if (!width) return tl::make_unexpected(width.error());
    const Problem p = grouped(landmarks, uncertainties);
    State s{startingPose(landmarks), Eigen::VectorXd::Zero(static_cast<Eigen::Index>(p.viewDeg.size()))};
    s = refined(p, s);
    ProbePose pose;
    pose.patientFromEcho = s.pose;
    Eigen::VectorXd r;
    Eigen::MatrixXd j;
    pose.chiSquared = residuals(p, s, &r, &j);
    pose.freedom = static_cast<int>(3 * landmarks.size()) - 6;
    pose.covariance = (j.transpose() * j).inverse().topLeftCorner<6, 6>();
    double squares = 0.0;
    for (std::size_t i = 0; i < landmarks.size(); ++i) {
        const double t = landmarks[i].probeAngleDeg + s.turn[static_cast<Eigen::Index>(p.view[i])] / kRadPerDegree;
        pose.residualMm.push_back(distanceMm(pose.patientFrom(t, landmarks[i].echoMm), landmarks[i].ct));
        squares += std::pow(pose.residualMm.back(), 2);
    }
    pose.rmsResidualMm = std::sqrt(squares / static_cast<double>(landmarks.size()));
    if (pose.rmsResidualMm > kGreatestResidualMm)
        return failure(ErrorCode::LandmarksUnusable,
                       "Cannot place the echo probe: the landmarks of echo and CT differ by " + fixed(pose.rmsResidualMm, 1) +
                           " mm (root mean square) at best. Check which belongs to which, the picture's left and right, "
                           "and its scale.");
    judge(pose, p, *width);
    return pose;
}

ProbePose moved(const ProbePose& pose, const Eigen::Matrix<double, 6, 1>& change) {
    ProbePose other = pose;
    other.patientFromEcho = movedPose(pose.patientFromEcho, change.head<3>(), change.tail<3>());
    return other;
}

} // namespace gauge::core
