#include "core/geometry/ellipse_fit.h"

#include "core/fast/fast_path.h"
#include "core/geometry/point_sums.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

namespace gauge::core {
namespace {

using Points = std::span<const Eigen::Vector2d>;
using Vector5 = Eigen::Matrix<double, 5, 1>;
using Matrix5 = Eigen::Matrix<double, 5, 5>;

const std::string kAttempt = "Cannot fit an ellipse: ";

/// How many different places there are, counted up to 5.
std::size_t differentPlaces(Points points) {
    std::array<Eigen::Vector2d, 5> seen;
    std::size_t count = 0;
    for (const auto& p : points) {
        const auto end = seen.begin() + static_cast<std::ptrdiff_t>(count);
        if (std::find(seen.begin(), end, p) != end) continue;
        seen[count++] = p;
        if (count == seen.size()) break;
    }
    return count;
}

/// Least over greatest eigenvalue of [[xx, xy], [xy, yy]], both >= 0: 0 when all lies on a line.
double flatness(double xx, double xy, double yy) {
    const double half = 0.5 * (xx - yy), greatest = 0.5 * (xx + yy) + std::sqrt(half * half + xy * xy);
    return greatest > 0.0 ? (xx * yy - xy * xy) / (greatest * greatest) : 0.0;
}

/// Where the points lie and how far they spread, and the sums of x^i y^j about their mean: all that the algebra needs.
struct Cloud {
    Eigen::Vector2d mean = Eigen::Vector2d::Zero();
    double size = 0.0; ///< root mean squared distance from the mean
    PointSums sums;
};

Result<Cloud> cloudOf(Points points) {
    if (points.size() < 5)
        return failure(ErrorCode::TooFewPoints,
                       kAttempt + std::to_string(points.size()) + " points were given; at least 5 are needed.");
    static_assert(sizeof(Eigen::Vector2d) == 2 * sizeof(double));
    const PointSumLoops& loops = fastOr(kPointSumLoops, pointSumLoopsAvx2());
    const double* xy = points.front().data();
    const auto n = static_cast<double>(points.size());
    Cloud cloud;
    loops.mean(xy, points.size(), cloud.mean.data());
    if (!cloud.mean.allFinite())
        for (std::size_t i = 0; i < points.size(); ++i)
            if (!points[i].allFinite())
                return failure(ErrorCode::NonFinite, kAttempt + "point " + std::to_string(i + 1) + " of " +
                                                         std::to_string(points.size()) + " is not a finite number.");
    if (const auto places = differentPlaces(points); places < 5)
        return failure(ErrorCode::Degenerate, kAttempt + "the " + std::to_string(points.size()) +
                                                  " points lie in only " + std::to_string(places) +
                                                  " different places; at least 5 are needed.");
    loops.sums(xy, points.size(), cloud.mean.data(), cloud.sums);
    if (!(flatness(cloud.sums.x2, cloud.sums.xy, cloud.sums.y2) > 1e-14))
        return failure(ErrorCode::Degenerate,
                       kAttempt + "the " + std::to_string(points.size()) + " points lie on a straight line.");
    cloud.size = std::sqrt((cloud.sums.x2 + cloud.sums.y2) / n);
    return cloud;
}

/// a x^2 + b x y + c y^2 + d x + e y + f = 0 as an ellipse, if it is a real one.
std::optional<Ellipse> ellipseOfConic(const Eigen::Matrix<double, 6, 1>& conic) {
    // Turned so that the quadratic form is positive.
    const Eigen::Matrix<double, 6, 1> k = conic(0) + conic(2) < 0.0 ? Eigen::Matrix<double, 6, 1>(-conic) : conic;
    const double xx = k(0), xy = 0.5 * k(1), yy = k(2), determinant = xx * yy - xy * xy;
    if (!(determinant > 0.0)) return std::nullopt;
    const Eigen::Vector2d center(-0.5 * (yy * k(3) - xy * k(4)) / determinant, -0.5 * (xx * k(4) - xy * k(3)) / determinant);
    const double level = -(k(5) + 0.5 * (k(3) * center.x() + k(4) * center.y()));
    if (!(level > 0.0)) return std::nullopt;
    const double half = 0.5 * (xx - yy), spreadOfAxes = std::sqrt(half * half + xy * xy);
    const double greatest = 0.5 * (xx + yy) + spreadOfAxes, least = determinant / greatest;
    // The form is greatest along the minor axis.
    double angle = spreadOfAxes > 0.0 ? 0.5 * std::atan2(xy, half) + 0.5 * std::numbers::pi : 0.0;
    if (angle > 0.5 * std::numbers::pi) angle -= std::numbers::pi;
    return Ellipse{center, std::sqrt(level / least), std::sqrt(level / greatest), angle};
}

using Conic = Eigen::Matrix<double, 6, 1>;

/// The sums in units of the cloud's size, about its mean: those of x and of y themselves are 0.
struct Moments {
    Eigen::Matrix3d fourth;            ///< x^2, xy, y^2 by themselves
    Eigen::Matrix<double, 2, 3> third; ///< x, y by x^2, xy, y^2
    Eigen::Vector3d second;            ///< of x^2, xy, y^2

    explicit Moments(const Cloud& cloud) {
        const PointSums& p = cloud.sums;
        const double k = 1.0 / cloud.size, k2 = k * k;
        fourth << p.x4, p.x3y, p.x2y2, p.x3y, p.x2y2, p.xy3, p.x2y2, p.xy3, p.y4;
        third << p.x3, p.x2y, p.xy2, p.x2y, p.xy2, p.y3;
        second << p.x2, p.xy, p.y2;
        fourth *= k2 * k2;
        third *= k2 * k;
        second *= k2;
    }
};

/// 4 a c - b^2 as a quadratic form of (a, b, c).
Eigen::Matrix3d ellipseConstraint() {
    Eigen::Matrix3d c;
    c << 0, 0, 2, 0, -1, 0, 2, 0, 0;
    return c;
}

/// A vector that a nearly singular symmetric matrix sends to nearly nothing: the longest of its rows' products.
Eigen::Vector3d nullVector(const Eigen::Matrix3d& k) {
    const Eigen::Vector3d candidates[] = {k.row(0).cross(k.row(1)), k.row(1).cross(k.row(2)), k.row(2).cross(k.row(0))};
    const Eigen::Vector3d* best = &candidates[0];
    for (const auto& c : candidates)
        if (c.squaredNorm() > best->squaredNorm()) best = &c;
    return *best;
}

/// The eigenvector of reduced a = lambda C a for the one lambda >= 0 (C has one positive eigenvalue, `reduced` none
/// below 0, so all are real). Halley's steps on the characteristic polynomial, which for real roots stay between the start and
/// the root beside it (Davies and Dawson 1975, from memory); then the Rayleigh quotient brings lambda to rounding. Nothing
/// when that does not come out as an ellipse.
std::optional<Eigen::Vector3d> ellipseVector(const Eigen::Matrix3d& reduced) {
    constexpr int kMostSteps = 60, kMostRefinements = 2;
    constexpr double kSettled = 1e-2; // near a single root what is left after such a step is of the order of its cube
    constexpr double kNear = 1e-8;    // the quotient is as near as the square of that
    Eigen::Matrix3d m; // inverse of the constraint matrix times `reduced`
    m << 0.5 * reduced.row(2), -reduced.row(1), 0.5 * reduced.row(0);
    const double trace = m.trace(), determinant = m.determinant();
    const double minors = m(0, 0) * m(1, 1) - m(0, 1) * m(1, 0) + m(0, 0) * m(2, 2) - m(0, 2) * m(2, 0) + m(1, 1) * m(2, 2) -
                          m(1, 2) * m(2, 1);
    // Where the polynomial rises at 0 and is convex from there on, the root beside 0 is the one above it.
    const double size = m.norm();
    double lambda = trace <= 0.0 && minors > 0.0 ? 0.0 : size;
    for (int step = 0; step < kMostSteps; ++step) {
        const double value = ((lambda - trace) * lambda + minors) * lambda - determinant;
        const double slope = (3.0 * lambda - 2.0 * trace) * lambda + minors;
        const double move = value * slope / (slope * slope - value * (3.0 * lambda - trace));
        if (!std::isfinite(move)) return std::nullopt;
        lambda -= move;
        if (std::abs(move) <= kSettled * std::abs(lambda) || std::abs(move) <= 1e-16 * size) break;
    }
    const Eigen::Matrix3d constraint = ellipseConstraint();
    Eigen::Vector3d a = nullVector(reduced - lambda * constraint);
    for (int round = 0; round < kMostRefinements; ++round) {
        const double quotient = a.dot(reduced * a) / a.dot(constraint * a);
        if (!std::isfinite(quotient)) return std::nullopt;
        const Eigen::Vector3d next = nullVector(reduced - quotient * constraint);
        if (!(next.squaredNorm() > 0.0)) break; // singular to the last bit: `a` stands
        a = next;
        if (std::abs(quotient - lambda) <= kNear * std::abs(lambda)) break;
        lambda = quotient;
    }
    const double length = a.norm();
    if (!(length > 0.0) || !(4.0 * a(0) * a(2) - a(1) * a(1) > 0.0)) return std::nullopt;
    return a / length;
}

/// The same by the general eigenvalue solver: slower, for what the way above does not settle.
std::optional<Eigen::Vector3d> ellipseVectorBySolver(const Eigen::Matrix3d& reduced) {
    Eigen::Matrix3d m;
    m << 0.5 * reduced.row(2), -reduced.row(1), 0.5 * reduced.row(0);
    const Eigen::EigenSolver<Eigen::Matrix3d> solver(m);
    for (Eigen::Index i = 0; i < 3; ++i) {
        const Eigen::Vector3d a = solver.eigenvectors().col(i).real();
        if (4.0 * a(0) * a(2) - a(1) * a(1) > 0.0) return a;
    }
    return std::nullopt;
}

/// The conic with least algebraic distance under 4 a c - b^2 = 1, in the frame of the cloud.
std::optional<Conic> halirFlusser(const Cloud& cloud, std::size_t count) {
    const Moments sums(cloud);
    // d, e and f of the conic with least squares for given a, b, c; the sums about the mean part d, e from f.
    const double xx = sums.second(0), xy = sums.second(1), yy = sums.second(2);
    Eigen::Matrix2d inverse;
    inverse << yy, -xy, -xy, xx;
    const Eigen::Matrix<double, 2, 3> slope = inverse * sums.third / (xy * xy - xx * yy);
    const Eigen::Vector3d level = sums.second / -static_cast<double>(count);
    const Eigen::Matrix3d reduced = sums.fourth + sums.third.transpose() * slope + sums.second * level.transpose();
    const Eigen::Matrix3d even = 0.5 * (reduced + reduced.transpose());
    auto a = ellipseVector(even);
    if (!a) a = ellipseVectorBySolver(reduced);
    if (!a) return std::nullopt;
    Conic conic;
    conic << *a, slope * *a, level.dot(*a);
    return conic;
}

/// An ellipse as center + S (cos t, sin t) with S = r I + [[e1, e2], [e2, -e1]]: linear in its parameters and
/// regular at the circle, unlike semi-axes and angle.
struct Shape {
    Vector5 parameters; ///< center u, center v, r, e1, e2

    static Shape of(const Ellipse& e) {
        const double r = 0.5 * (e.semiMajorMm + e.semiMinorMm), d = 0.5 * (e.semiMajorMm - e.semiMinorMm);
        return {Vector5(e.center.x(), e.center.y(), r, d * std::cos(2 * e.angleRad), d * std::sin(2 * e.angleRad))};
    }
    double ellipticity() const { return std::hypot(parameters(3), parameters(4)); }
    /// Both semi-axes above 0.
    bool isEllipse() const { return parameters.allFinite() && parameters(2) > ellipticity(); }
    Ellipse ellipse() const {
        return {parameters.head<2>(), parameters(2) + ellipticity(), parameters(2) - ellipticity(),
                0.5 * std::atan2(parameters(4), parameters(3))};
    }
};

/// Signed distances (outside positive) and their derivatives by the five parameters.
struct Linearised {
    Eigen::VectorXd distances;
    Eigen::Matrix<double, Eigen::Dynamic, 5> derivatives;

    Linearised(const Shape& shape, const std::vector<Eigen::Vector2d>& points)
        : distances(points.size()), derivatives(points.size(), 5) {
        const Ellipse e = shape.ellipse();
        const auto& q = shape.parameters;
        Eigen::Matrix2d s;
        s << q(2) + q(3), q(4), q(4), q(2) - q(3);
        const Eigen::Matrix2d inverse = s.inverse();
        for (std::size_t k = 0; k < points.size(); ++k) {
            const auto i = static_cast<Eigen::Index>(k);
            const Eigen::Vector2d foot = nearestPoint(e, points[k]);
            const Eigen::Vector2d unit = inverse * (foot - e.center);     // (cos t, sin t)
            const Eigen::Vector2d normal = (inverse * unit).normalized(); // S symmetric
            distances(i) = normal.dot(points[k] - foot);
            derivatives.row(i) << -normal.x(), -normal.y(), -normal.dot(unit),
                -(normal.x() * unit.x() - normal.y() * unit.y()), -(normal.x() * unit.y() + normal.y() * unit.x());
        }
    }
    double squares() const { return distances.squaredNorm(); }
    /// No first-order way down is left, to rounding: what tells a minimum from a wall (a flat ellipse).
    bool stationary() const {
        const auto n = static_cast<double>(distances.size());
        return (derivatives.transpose() * distances).norm() < 1e-7 * std::sqrt(n * squares()) + 1e-13 * n;
    }
};

struct Refined {
    Shape shape;
    double squares = 0.0;
    Matrix5 normal; ///< J^T J at the solution
};

/// Damped Gauss-Newton (Levenberg-Marquardt) in the scaled frame; nothing when it runs away or does not settle.
std::optional<Refined> refine(Shape shape, const std::vector<Eigen::Vector2d>& points) {
    constexpr double kSettled = 1e-11, kRunaway = 1e4;
    constexpr int kMostSteps = 2000;
    if (!shape.isEllipse()) return std::nullopt;
    Linearised at(shape, points);
    double damping = 1e-3;
    for (int step = 0; step < kMostSteps; ++step) {
        const Matrix5 normal = at.derivatives.transpose() * at.derivatives;
        const Vector5 gradient = at.derivatives.transpose() * at.distances;
        Matrix5 damped = normal;
        damped.diagonal() *= 1.0 + damping;
        const Vector5 move = -damped.ldlt().solve(gradient);
        const bool tiny = move.norm() < kSettled * shape.parameters.norm();
        const Shape moved{shape.parameters + move};
        if (!move.allFinite() || moved.parameters.norm() > kRunaway) return std::nullopt;
        if (moved.isEllipse()) {
            Linearised there(moved, points);
            if (there.squares() < at.squares()) {
                shape = moved;
                at = std::move(there);
                damping = std::max(1e-12, 0.2 * damping);
                if (!tiny) continue;
            }
        }
        if (tiny && !at.stationary()) return std::nullopt;
        if (tiny) return Refined{shape, at.squares(), at.derivatives.transpose() * at.derivatives};
        damping = std::max(1e-12, damping) * 4.0;
    }
    return std::nullopt;
}

/// Covariance of (r, e1, e2) parameters carried to semi-axes and angle.
Matrix5 covarianceOfAxes(const Shape& shape, const Matrix5& ofShape) {
    const double d = shape.ellipticity(), angle = 2.0 * shape.ellipse().angleRad;
    const double c = std::cos(angle), s = std::sin(angle);
    Matrix5 derivative = Matrix5::Zero(); // of (center, a, b, angle * 2 d)
    derivative.topLeftCorner<2, 2>().setIdentity();
    derivative.row(2) << 0, 0, 1, c, s;
    derivative.row(3) << 0, 0, 1, -c, -s;
    derivative.row(4) << 0, 0, 0, -s, c;
    Matrix5 out = derivative * ofShape * derivative.transpose();
    const double most = std::numbers::pi / std::sqrt(12.0), sigma = std::sqrt(out(4, 4));
    const double factor = sigma > 2.0 * d * most ? most / sigma : 1.0 / (2.0 * d);
    out.row(4) *= factor;
    out.col(4) *= factor;
    return out;
}

std::vector<Eigen::Vector2d> scaled(Points points, const Cloud& cloud) {
    std::vector<Eigen::Vector2d> out;
    for (const auto& p : points)
        out.push_back((p - cloud.mean) / cloud.size);
    return out;
}

Ellipse unscaled(Ellipse e, const Cloud& cloud) {
    e.center = cloud.mean + cloud.size * e.center;
    e.semiMajorMm *= cloud.size;
    e.semiMinorMm *= cloud.size;
    return e;
}

tl::unexpected<Error> notAnEllipse(Points points, const std::string& finding) {
    return failure(ErrorCode::NotAnEllipse, kAttempt + "the " + std::to_string(points.size()) +
                                                " points do not lie along an ellipse (" + finding + ").");
}

/// The direct fit in the frame of the cloud.
Result<Ellipse> directInFrame(Points points, const Cloud& cloud) {
    const auto conic = halirFlusser(cloud, points.size());
    const auto ellipse = conic ? ellipseOfConic(*conic) : std::nullopt;
    if (!ellipse || !std::isfinite(ellipse->semiMajorMm) || !(ellipse->semiMinorMm > 0.0))
        return notAnEllipse(points, "the best conic is not a closed curve");
    return *ellipse;
}

} // namespace

Result<Ellipse> fitEllipseDirect(std::span<const Eigen::Vector2d> points) {
    const auto cloud = cloudOf(points);
    if (!cloud) return tl::make_unexpected(cloud.error());
    return directInFrame(points, *cloud).map([&](const Ellipse& e) { return unscaled(e, *cloud); });
}

Result<EllipseFit> fitEllipse(std::span<const Eigen::Vector2d> points, const EllipseFitOptions& options) {
    if (options.pointSigmaMm && !(*options.pointSigmaMm > 0.0 && std::isfinite(*options.pointSigmaMm)))
        return failure(ErrorCode::InvalidArgument, kAttempt + "the points' standard uncertainty must be above 0.");
    const auto cloud = cloudOf(points);
    if (!cloud) return tl::make_unexpected(cloud.error());
    const auto local = scaled(points, *cloud);
    const auto direct = directInFrame(points, *cloud);
    if (!direct) return tl::make_unexpected(direct.error());

    auto best = refine(Shape::of(*direct), local);
    const auto fromCircle = refine(Shape{Vector5(0, 0, 1, 0, 0)}, local);
    if (fromCircle && (!best || fromCircle->squares < best->squares)) best = fromCircle;
    if (!best) return notAnEllipse(points, "the best ellipse grows without bound or flattens to a segment");

    const auto n = static_cast<double>(points.size());
    EllipseFit fit{unscaled(best->shape.ellipse(), *cloud), cloud->size * std::sqrt(best->squares / n), {}};
    if (options.pointSigmaMm || points.size() > 5) {
        const double sigma =
            options.pointSigmaMm ? *options.pointSigmaMm / cloud->size : std::sqrt(best->squares / (n - 5.0));
        Matrix5 covariance =
            covarianceOfAxes(best->shape, sigma * sigma * best->normal.ldlt().solve(Matrix5(Matrix5::Identity())));
        covariance.topRows<4>() *= cloud->size;
        covariance.leftCols<4>() *= cloud->size;
        fit.covariance = covariance;
    }
    return fit;
}

} // namespace gauge::core
