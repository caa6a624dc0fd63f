#include "core/geometry/ellipse_fit.h"

#include <Eigen/Dense>
#include <algorithm>
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

/// Where the points lie and how far they spread: the frame in which the algebra is done.
struct Spread {
    Eigen::Vector2d mean = Eigen::Vector2d::Zero();
    double size = 0.0; ///< root mean squared distance from the mean
};

Spread spreadOf(Points points) {
    Spread spread;
    for (const auto& p : points)
        spread.mean += p / static_cast<double>(points.size());
    double squares = 0.0;
    for (const auto& p : points)
        squares += (p - spread.mean).squaredNorm();
    spread.size = std::sqrt(squares / static_cast<double>(points.size()));
    return spread;
}

std::size_t differentPlaces(Points points) {
    std::vector<Eigen::Vector2d> seen(points.begin(), points.end());
    const auto before = [](const auto& a, const auto& b) { return a.x() != b.x() ? a.x() < b.x() : a.y() < b.y(); };
    std::sort(seen.begin(), seen.end(), before);
    return static_cast<std::size_t>(std::unique(seen.begin(), seen.end()) - seen.begin());
}

Result<Spread> checkPoints(Points points) {
    if (points.size() < 5)
        return failure(ErrorCode::TooFewPoints,
                       kAttempt + std::to_string(points.size()) + " points were given; at least 5 are needed.");
    for (std::size_t i = 0; i < points.size(); ++i)
        if (!points[i].allFinite())
            return failure(ErrorCode::NonFinite, kAttempt + "point " + std::to_string(i + 1) + " of " +
                                                     std::to_string(points.size()) + " is not a finite number.");
    if (const auto places = differentPlaces(points); places < 5)
        return failure(ErrorCode::Degenerate, kAttempt + "the " + std::to_string(points.size()) +
                                                  " points lie in only " + std::to_string(places) +
                                                  " different places; at least 5 are needed.");
    const Spread spread = spreadOf(points);
    Eigen::Matrix2d scatter = Eigen::Matrix2d::Zero();
    for (const auto& p : points)
        scatter += (p - spread.mean) * (p - spread.mean).transpose();
    const Eigen::Vector2d squares = Eigen::SelfAdjointEigenSolver<Eigen::Matrix2d>(scatter).eigenvalues();
    if (!(squares(0) > 1e-14 * squares(1)))
        return failure(ErrorCode::Degenerate,
                       kAttempt + "the " + std::to_string(points.size()) + " points lie on a straight line.");
    return spread;
}

/// a x^2 + b x y + c y^2 + d x + e y + f = 0 as an ellipse, if it is a real one.
std::optional<Ellipse> ellipseOfConic(const Eigen::Matrix<double, 6, 1>& k) {
    Eigen::Matrix2d quadratic;
    quadratic << k(0), 0.5 * k(1), 0.5 * k(1), k(2);
    const Eigen::Vector2d linear(k(3), k(4));
    if (!(quadratic.determinant() > 0.0)) return std::nullopt;
    const Eigen::Vector2d center = -0.5 * quadratic.inverse() * linear;
    const double level = -(k(5) + 0.5 * linear.dot(center));
    const Eigen::SelfAdjointEigenSolver<Eigen::Matrix2d> axes(quadratic * (level < 0.0 ? -1.0 : 1.0));
    if (level == 0.0 || !(axes.eigenvalues()(0) > 0.0)) return std::nullopt;
    const Eigen::Vector2d major = axes.eigenvectors().col(0);
    double angle = std::atan2(major.y(), major.x());
    if (angle <= -0.5 * std::numbers::pi) angle += std::numbers::pi;
    if (angle > 0.5 * std::numbers::pi) angle -= std::numbers::pi;
    return Ellipse{center, std::sqrt(std::abs(level) / axes.eigenvalues()(0)),
                   std::sqrt(std::abs(level) / axes.eigenvalues()(1)), angle};
}

/// The conic with least algebraic distance under 4 a c - b^2 = 1, points already centred and scaled.
std::optional<Eigen::Matrix<double, 6, 1>> halirFlusser(const std::vector<Eigen::Vector2d>& points) {
    const auto n = static_cast<Eigen::Index>(points.size());
    Eigen::MatrixX3d quadratic(n, 3), linear(n, 3);
    for (Eigen::Index i = 0; i < n; ++i) {
        const auto& p = points[static_cast<std::size_t>(i)];
        quadratic.row(i) << p.x() * p.x(), p.x() * p.y(), p.y() * p.y();
        linear.row(i) << p.x(), p.y(), 1.0;
    }
    const Eigen::Matrix3d s1 = quadratic.transpose() * quadratic, s2 = quadratic.transpose() * linear,
                          s3 = linear.transpose() * linear;
    const Eigen::Matrix3d linearOfQuadratic = -s3.ldlt().solve(Eigen::Matrix3d(s2.transpose()));
    const Eigen::Matrix3d reduced = s1 + s2 * linearOfQuadratic;
    Eigen::Matrix3d m; // inverse of the constraint matrix times `reduced`
    m << 0.5 * reduced.row(2), -reduced.row(1), 0.5 * reduced.row(0);
    const Eigen::EigenSolver<Eigen::Matrix3d> solver(m);
    for (Eigen::Index i = 0; i < 3; ++i) {
        const Eigen::Vector3d a = solver.eigenvectors().col(i).real();
        if (4.0 * a(0) * a(2) - a(1) * a(1) > 0.0) {
            Eigen::Matrix<double, 6, 1> conic;
            conic << a, linearOfQuadratic * a;
            return conic;
        }
    }
    return std::nullopt;
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

std::vector<Eigen::Vector2d> scaled(Points points, const Spread& spread) {
    std::vector<Eigen::Vector2d> out;
    for (const auto& p : points)
        out.push_back((p - spread.mean) / spread.size);
    return out;
}

Ellipse unscaled(Ellipse e, const Spread& spread) {
    e.center = spread.mean + spread.size * e.center;
    e.semiMajorMm *= spread.size;
    e.semiMinorMm *= spread.size;
    return e;
}

tl::unexpected<Error> notAnEllipse(Points points, const std::string& finding) {
    return failure(ErrorCode::NotAnEllipse, kAttempt + "the " + std::to_string(points.size()) +
                                                " points do not lie along an ellipse (" + finding + ").");
}

Result<Ellipse> directInFrame(Points points, const std::vector<Eigen::Vector2d>& local) {
    const auto conic = halirFlusser(local);
    const auto ellipse = conic ? ellipseOfConic(*conic) : std::nullopt;
    if (!ellipse || !std::isfinite(ellipse->semiMajorMm) || !(ellipse->semiMinorMm > 0.0))
        return notAnEllipse(points, "the best conic is not a closed curve");
    return *ellipse;
}

} // namespace

Result<Ellipse> fitEllipseDirect(std::span<const Eigen::Vector2d> points) {
    const auto spread = checkPoints(points);
    if (!spread) return tl::make_unexpected(spread.error());
    return directInFrame(points, scaled(points, *spread)).map([&](const Ellipse& e) { return unscaled(e, *spread); });
}

Result<EllipseFit> fitEllipse(std::span<const Eigen::Vector2d> points, const EllipseFitOptions& options) {
    if (options.pointSigmaMm && !(*options.pointSigmaMm > 0.0 && std::isfinite(*options.pointSigmaMm)))
        return failure(ErrorCode::InvalidArgument, kAttempt + "the points' standard uncertainty must be above 0.");
    const auto spread = checkPoints(points);
    if (!spread) return tl::make_unexpected(spread.error());
    const auto local = scaled(points, *spread);
    const auto direct = directInFrame(points, local);
    if (!direct) return tl::make_unexpected(direct.error());

    auto best = refine(Shape::of(*direct), local);
    const auto fromCircle = refine(Shape{Vector5(0, 0, 1, 0, 0)}, local);
    if (fromCircle && (!best || fromCircle->squares < best->squares)) best = fromCircle;
    if (!best) return notAnEllipse(points, "the best ellipse grows without bound or flattens to a segment");

    const auto n = static_cast<double>(points.size());
    EllipseFit fit{unscaled(best->shape.ellipse(), *spread), spread->size * std::sqrt(best->squares / n), {}};
    if (options.pointSigmaMm || points.size() > 5) {
        const double sigma =
            options.pointSigmaMm ? *options.pointSigmaMm / spread->size : std::sqrt(best->squares / (n - 5.0));
        Matrix5 covariance =
            covarianceOfAxes(best->shape, sigma * sigma * best->normal.ldlt().solve(Matrix5(Matrix5::Identity())));
        covariance.topRows<4>() *= spread->size;
        covariance.leftCols<4>() *= spread->size;
        fit.covariance = covariance;
    }
    return fit;
}

} // namespace gauge::core
