#include "core/echo/width_ellipse.h"

#include <Eigen/Dense>
#include <cmath>
#include <cstdio>
#include <numbers>

namespace gauge::core {
namespace {

constexpr int kIterations = 60;
constexpr double kGreatestGrowth = 20.0;
constexpr double kFlattest = 0.995; // h/M beyond which the ellipse has become a slit

/// A + B cos 2t + C sin 2t for the ellipse's 1/w^2.
struct Harmonics {
    double a, b, c;
};

Harmonics linearFit(std::span<const AngledWidth> widths) {
    const auto n = static_cast<Eigen::Index>(widths.size());
    Eigen::MatrixXd design(n, 3);
    Eigen::VectorXd rhs(n);
    for (Eigen::Index i = 0; i < n; ++i) {
        const AngledWidth& w = widths[static_cast<std::size_t>(i)];
        const double scale = std::pow(w.widthMm, 3) / (2.0 * w.standardUncertaintyMm); // 1 / u(1/w^2)
        design.row(i) << scale, scale * std::cos(2.0 * w.angleRad), scale * std::sin(2.0 * w.angleRad);
        rhs[i] = scale / (w.widthMm * w.widthMm);
    }
    const Eigen::Vector3d x = design.colPivHouseholderQr().solve(rhs);
    return {x[0], x[1], x[2]};
}

std::optional<WidthEllipse> ellipseOf(const Harmonics& h) {
    const double amplitude = std::hypot(h.b, h.c);
    if (!(h.a > 0.0) || !(h.a - amplitude > 1e-12 * h.a)) return std::nullopt;
    const double longest = 1.0 / std::sqrt(h.a - amplitude), shortest = 1.0 / std::sqrt(h.a + amplitude);
    WidthEllipse e;
    e.meanMm = 0.5 * (longest + shortest);
    if (amplitude > 0.0) // 1/w^2 is least along the longest diameter
        e.ovalityMm = Eigen::Vector2d(-h.b, -h.c) / amplitude * (0.5 * (longest - shortest));
    return e;
}

/// d width / d (M, p, q).
Eigen::Vector3d gradient(const WidthEllipse& e, double angle) {
    const double c = std::cos(2.0 * angle), s = std::sin(2.0 * angle), m = e.meanMm;
    const Eigen::Vector2d v = e.ovalityMm;
    const double d = m * m - v.squaredNorm(), k = v.x() * c + v.y() * s;
    const double n = m * m + v.squaredNorm() - 2.0 * m * k;
    const Eigen::Vector3d dD(2.0 * m, -2.0 * v.x(), -2.0 * v.y());
    const Eigen::Vector3d dN(2.0 * m - 2.0 * k, 2.0 * v.x() - 2.0 * m * c, 2.0 * v.y() - 2.0 * m * s);
    return dD / std::sqrt(n) - 0.5 * d / (n * std::sqrt(n)) * dN;
}

Eigen::Matrix3d normalMatrix(const WidthEllipse& e, std::span<const AngledWidth> widths, Eigen::Vector3d* rhs) {
    Eigen::Matrix3d matrix = Eigen::Matrix3d::Zero();
    if (rhs) rhs->setZero();
    for (const auto& w : widths) {
        const Eigen::Vector3d g = gradient(e, w.angleRad) / w.standardUncertaintyMm;
        matrix += g * g.transpose();
        if (rhs) *rhs += g * (w.widthMm - e.widthMm(w.angleRad)) / w.standardUncertaintyMm;
    }
    return matrix;
}

bool usable(const WidthEllipse& e) { return e.meanMm > 0.0 && e.ovalityMm.norm() < kFlattest * e.meanMm; }

/// Damped Gauss-Newton from `e`; the sum of squares never rises.
WidthEllipse refined(WidthEllipse e, std::span<const AngledWidth> widths) {
    double best = chiSquared(e, widths), damping = 0.0;
    for (int i = 0; i < kIterations; ++i) {
        Eigen::Vector3d rhs;
        Eigen::Matrix3d matrix = normalMatrix(e, widths, &rhs);
        matrix.diagonal() *= 1.0 + damping;
        const Eigen::Vector3d step = matrix.ldlt().solve(rhs);
        WidthEllipse next = e;
        next.meanMm += step[0];
        next.ovalityMm += step.tail<2>();
        const double now = usable(next) ? chiSquared(next, widths) : best * 2.0 + 1.0;
        if (now > best) {
            if (step.norm() < 1e-10 * e.meanMm) break; // rounding
            damping = damping > 0.0 ? damping * 8.0 : 1e-3;
            continue;
        }
        e = next;
        best = now;
        damping *= 0.1;
        if (step.norm() < 1e-14 * e.meanMm) break;
    }
    return e;
}

std::string listed(std::span<const AngledWidth> widths) {
    std::string text;
    for (const auto& w : widths) {
        char one[64];
        std::snprintf(one, sizeof one, "%s%.1f mm at %.0f degrees", text.empty() ? "" : ", ", w.widthMm,
                      w.angleRad * 180.0 / std::numbers::pi);
        text += one;
    }
    return text;
}

tl::unexpected<Error> notAnEllipse(std::span<const AngledWidth> widths, const std::string& why) {
    return failure(ErrorCode::NotAnEllipse, "Cannot draw an ellipse through the echo widths (" + listed(widths) +
                                                "): " + why + " Check angles and widths, or read another view.");
}

Result<WidthEllipseFit> judged(const WidthEllipse& e, std::span<const AngledWidth> widths) {
    WidthEllipseFit fit;
    fit.ellipse = e;
    fit.chiSquared = chiSquared(e, widths);
    fit.freedom = static_cast<int>(widths.size()) - 3;
    double sum = 0.0, mean = 0.0;
    for (const auto& w : widths) {
        sum += std::pow(w.widthMm - e.widthMm(w.angleRad), 2);
        mean += w.widthMm / static_cast<double>(widths.size());
    }
    fit.rmsResidualMm = std::sqrt(sum / static_cast<double>(widths.size()));
    if (!usable(e)) return notAnEllipse(widths, "the best one is a slit.");
    if (fit.rmsResidualMm > 0.25 * mean)
        return notAnEllipse(widths, "even the nearest one is off by more than a quarter of the mean width.");
    // How much errors grow is judged on a circle: by the angles alone.
    std::vector<AngledWidth> unit(widths.begin(), widths.end());
    for (auto& w : unit)
        w.standardUncertaintyMm = 1.0;
    const Eigen::FullPivLU<Eigen::Matrix3d> growth(normalMatrix({mean, {0.0, 0.0}}, unit, nullptr));
    if (!growth.isInvertible() || growth.inverse().trace() > kGreatestGrowth * kGreatestGrowth)
        return failure(ErrorCode::Degenerate,
                       "Cannot tell a size from the echo widths (" + listed(widths) +
                           "): their angles are so close together that errors of reading grow more than twentyfold. "
                           "Read views spread over 180 degrees, such as 0, 45, 90 and 135.");
    fit.covariance = normalMatrix(e, widths, nullptr).fullPivLu().inverse();
    return fit;
}

} // namespace

double WidthEllipse::directionRad() const {
    if (ovalityMm.squaredNorm() == 0.0) return 0.0;
    const double half = 0.5 * std::atan2(ovalityMm.y(), ovalityMm.x());
    const double in = half < 0.0 ? half + std::numbers::pi : half;
    return in >= std::numbers::pi ? 0.0 : in;
}

double WidthEllipse::widthMm(double angleRad) const {
    const double k = ovalityMm.x() * std::cos(2.0 * angleRad) + ovalityMm.y() * std::sin(2.0 * angleRad);
    const double h2 = ovalityMm.squaredNorm();
    return (meanMm * meanMm - h2) / std::sqrt(meanMm * meanMm + h2 - 2.0 * meanMm * k);
}

double chiSquared(const WidthEllipse& e, std::span<const AngledWidth> widths) {
    double sum = 0.0;
    for (const auto& w : widths)
        sum += std::pow((w.widthMm - e.widthMm(w.angleRad)) / w.standardUncertaintyMm, 2);
    return sum;
}

Result<WidthEllipseFit> fitWidthEllipse(std::span<const AngledWidth> widths) {
    if (widths.size() < 3)
        return failure(ErrorCode::TooFewPoints, "Cannot draw an ellipse through " + std::to_string(widths.size()) +
                                                    " echo width(s): three or more at different angles (0 and 180 "
                                                    "degrees are the same view) are needed.");
    const auto start = ellipseOf(linearFit(widths));
    if (!start || !usable(*start))
        return notAnEllipse(widths, "the curve that they ask for does not close; the widths differ too much for "
                                    "their angles.");
    return judged(refined(*start, widths), widths);
}

WidthEllipse withOvality(const WidthEllipse& start, const Eigen::Vector2d& ovalityMm,
                         std::span<const AngledWidth> widths) {
    WidthEllipse e{start.meanMm, ovalityMm};
    for (int i = 0; i < kIterations; ++i) {
        Eigen::Vector3d rhs;
        const Eigen::Matrix3d matrix = normalMatrix(e, widths, &rhs);
        const double step = rhs[0] / matrix(0, 0);
        e.meanMm += step;
        if (std::abs(step) < 1e-13 * e.meanMm) break;
    }
    return e;
}

std::vector<std::optional<double>> agreeingWidthsMm(std::span<const AngledWidth> widths) {
    std::vector<std::optional<double>> agreeing(widths.size());
    if (widths.size() < 4) return agreeing;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        std::vector<AngledWidth> others(widths.begin(), widths.end());
        others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
        if (const auto fit = fitWidthEllipse(others)) agreeing[i] = fit->ellipse.widthMm(widths[i].angleRad);
    }
    return agreeing;
}

} // namespace gauge::core
