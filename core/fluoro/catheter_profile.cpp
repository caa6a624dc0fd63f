#include "core/fluoro/catheter_profile.h"

#include "core/fluoro/blurred_chord.h"
#include "core/number_text.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <string>
#include <vector>

namespace gauge::core {
namespace {

using Eigen::Vector2d;

constexpr double kShortestPiecePx = 12.0;
constexpr double kReachPx = 24.0; ///< looked for within this on either side when the width is not told
constexpr double kLeastContrastToNoise = 2.0;
constexpr double kMostUncertain = 0.25;
constexpr double kLeastBlurPx = 0.35, kMostBlurPx = 6.0;

tl::unexpected<Error> unusable(ErrorCode code, const std::string& what) {
    return failure(code, "Cannot measure the catheter's width: " + what);
}

/// Where the piece lies: origin in its middle, `along` it, `across` to its right.
struct Axis {
    Vector2d middle = Vector2d::Zero();
    Vector2d along = Vector2d::UnitX();
    Vector2d across = Vector2d::UnitY();
    double halfLength = 0.0;
};

Axis axisOf(const Vector2d& from, const Vector2d& to) {
    const Vector2d along = (to - from).normalized();
    return {0.5 * (from + to), along, Vector2d(-along.y(), along.x()), 0.5 * (to - from).norm()};
}

struct Pixel {
    int column = 0;
    int row = 0;
    double s = 0.0; ///< along, from the middle, in half lengths: -1 … 1
    double t = 0.0; ///< across, pixels
    double value = 0.0;
};

std::vector<Pixel> strip(const GreyFrame& frame, const Axis& axis, double low, double high) {
    const double reach = axis.halfLength + std::max(std::abs(low), std::abs(high)) + 1.0;
    const auto bound = [](double v, int size) { return std::clamp(static_cast<int>(v), 0, size - 1); };
    const int x0 = bound(axis.middle.x() - reach, frame.columns),
              x1 = bound(axis.middle.x() + reach, frame.columns);
    const int y0 = bound(axis.middle.y() - reach, frame.rows),
              y1 = bound(axis.middle.y() + reach, frame.rows);
    std::vector<Pixel> pixels;
    for (int y = y0; y <= y1; ++y) {
        for (int x = x0; x <= x1; ++x) {
            const Vector2d d = Vector2d(x, y) - axis.middle;
            const double s = d.dot(axis.along) / axis.halfLength, t = d.dot(axis.across);
            if (std::abs(s) <= 1.0 && t >= low && t <= high)
                pixels.push_back({x, y, s, t, static_cast<double>(frame.at(x, y))});
        }
    }
    return pixels;
}

double medianOf(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

/// First sight of the tube: where it is, how wide and how deep, from the mean profile across.
struct Sight {
    double centre = 0.0;
    double radius = 0.0;
    double depth = 0.0;      ///< grey value of the tube less that around it
    double background = 0.0; ///< at the centre
    double slope = 0.0;
    double noise = 0.0; ///< of a pixel
};

struct MeanProfile {
    std::vector<double> t, mean, spread;
};

MeanProfile meanProfile(const std::vector<Pixel>& pixels, double reach) {
    const auto bins = static_cast<std::size_t>(2.0 * reach) + 1;
    std::vector<double> sum(bins), squares(bins), count(bins);
    for (const auto& p : pixels) {
        const auto bin =
            static_cast<std::size_t>(std::clamp(p.t + reach + 0.5, 0.0, static_cast<double>(bins - 1)));
        sum[bin] += p.value;
        squares[bin] += p.value * p.value;
        count[bin] += 1.0;
    }
    MeanProfile profile;
    for (std::size_t i = 0; i < bins; ++i) {
        if (count[i] < 4.0) continue;
        const double mean = sum[i] / count[i];
        profile.t.push_back(static_cast<double>(i) - reach);
        profile.mean.push_back(mean);
        profile.spread.push_back(std::sqrt(std::max(0.0, squares[i] / count[i] - mean * mean)));
    }
    return profile;
}

Result<Sight> firstSight(const std::vector<Pixel>& pixels, double reach) {
    const MeanProfile profile = meanProfile(pixels, reach);
    const std::size_t n = profile.t.size();
    const std::string nothing =
        "nothing like a tube stands out around the marked line. Mark the middle of a straight, "
        "well seen piece.";
    if (n < 12)
        return unusable(ErrorCode::InvalidArgument, "too little of the picture lies around the marked line.");
    const std::size_t outer = std::max<std::size_t>(2, n / 6);
    const std::vector<double> left(profile.mean.begin(),
                                   profile.mean.begin() + static_cast<std::ptrdiff_t>(outer));
    const std::vector<double> right(profile.mean.end() - static_cast<std::ptrdiff_t>(outer),
                                    profile.mean.end());
    const double leftT = profile.t[outer / 2], rightT = profile.t[n - 1 - outer / 2];
    const double leftLevel = medianOf(left), rightLevel = medianOf(right);
    Sight sight;
    sight.slope = (rightLevel - leftLevel) / (rightT - leftT);
    sight.noise = medianOf(profile.spread);
    const auto around = [&](double t) { return leftLevel + sight.slope * (t - leftT); };
    const auto depthAt = [&](std::size_t i) { return profile.mean[i] - around(profile.t[i]); };
    double deepest = 0.0;
    for (std::size_t i = outer; i + outer < n; ++i)
        if (std::abs(profile.t[i]) <= reach / 2.0 && std::abs(depthAt(i)) > std::abs(deepest))
            deepest = depthAt(i);
    // Far below what is accepted in the end; a fit to nothing would take long and be refused too.
    if (!(std::abs(deepest) > 0.5 * kLeastContrastToNoise * sight.noise))
        return unusable(ErrorCode::ContrastPoor, nothing);
    const auto inside = [&](std::size_t i) { return depthAt(i) / deepest > 0.5; };
    std::size_t first = 0, last = n - 1;
    while (first < n && !inside(first))
        ++first;
    while (last > first && !inside(last))
        --last;
    if (first >= last) return unusable(ErrorCode::ContrastPoor, nothing);
    sight.centre = 0.5 * (profile.t[first] + profile.t[last]);
    sight.radius = std::max(2.0, 0.55 * (profile.t[last] - profile.t[first] + 1.0));
    sight.depth = deepest;
    sight.background = around(sight.centre);
    if (std::abs(sight.centre) > sight.radius) return unusable(ErrorCode::ContrastPoor, nothing);
    return sight;
}

/// The model's parameters. Grey value = level + slope t + drift s + wall (F(t'; r) - bore share …), t' = t -
/// course(s).
enum Parameter {
    kLevel,
    kSlope,
    kDrift,
    kDepth,
    kBore,
    kShift,
    kTurn,
    kBend,
    kRadius,
    kBlur,
    kRatio,
    kParameters
};
using Parameters = Eigen::Matrix<double, kParameters, 1>;
using Square = Eigen::Matrix<double, kParameters, kParameters>;

/// What is known beforehand of a tube's inside, weak on purpose: its bore over its outer width, and how much
/// of the wall's shadow the bore's content takes away. Assumptions; they matter only where the picture does
/// not tell.
constexpr double kUsualRatio = 0.8, kRatioSd = 0.15;
constexpr double kUsualBore = 0.5, kBoreSd = 0.8; ///< in units of the depth

class TubeFit {
public:
    TubeFit(std::vector<Pixel> pixels, const Sight& sight) : m_pixels(std::move(pixels)) {
        m_noise = std::max(sight.noise, 1e-6 * std::abs(sight.depth));
        m_scale = sight.depth;
        m_p << sight.background - sight.slope * sight.centre, sight.slope, 0.0, sight.depth,
            0.3 * sight.depth, sight.centre, 0.0, 0.0, sight.radius, 1.0, kUsualRatio;
        for (const auto& pixel : m_pixels)
            m_reach = std::max(m_reach, std::abs(pixel.t));
        m_reach *= 2.0;
    }

    /// Levenberg and Marquardt with the noise estimated from the residuals in between.
    void solve() {
        for (int round = 0; round < 3; ++round) {
            iterate();
            const double dof = static_cast<double>(m_pixels.size()) - static_cast<double>(kParameters);
            m_noise = std::max(std::sqrt(m_squares / dof), 1e-9 * std::abs(m_scale));
        }
        linearize(m_p); // with the last noise
    }

    const Parameters& parameters() const { return m_p; }
    double noise() const { return m_noise; }
    /// Of the radius, noise that neighbours share included.
    double radiusUncertainty() const {
        const Square covariance = m_normal.ldlt().solve(Square::Identity());
        return std::sqrt(std::max(0.0, covariance(kRadius, kRadius)) * sharedNoise());
    }

private:
    double course(const Parameters& p, double s) const { return p[kShift] + p[kTurn] * s + p[kBend] * s * s; }

    /// Cost, and with it the normal equations about `p`.
    double linearize(const Parameters& p) {
        const BlurredChord outer(p[kRadius], p[kBlur], m_reach),
            bore(p[kRatio] * p[kRadius], p[kBlur], m_reach);
        m_normal.setZero();
        m_gradient.setZero();
        m_squares = 0.0;
        m_residuals.resize(m_pixels.size());
        const double weight = 1.0 / (m_noise * m_noise), q = p[kRatio];
        Parameters j;
        for (std::size_t i = 0; i < m_pixels.size(); ++i) {
            const Pixel& pixel = m_pixels[i];
            const double t = pixel.t - course(p, pixel.s);
            const ChordValue full = outer.at(t), hollow = bore.at(t);
            const double model = p[kLevel] + p[kSlope] * pixel.t + p[kDrift] * pixel.s +
                                 p[kDepth] * full.value - p[kBore] * q * hollow.value;
            const double perT = -(p[kDepth] * full.perT - p[kBore] * q * hollow.perT);
            j << 1.0, pixel.t, pixel.s, full.value, -q * hollow.value, perT, perT * pixel.s,
                perT * pixel.s * pixel.s, p[kDepth] * full.perRadius - p[kBore] * q * q * hollow.perRadius,
                p[kDepth] * full.perBlur - p[kBore] * q * hollow.perBlur,
                -p[kBore] * (hollow.value + q * p[kRadius] * hollow.perRadius);
            const double residual = pixel.value - model;
            m_residuals[i] = residual;
            m_squares += residual * residual;
            m_normal.noalias() += weight * j * j.transpose();
            m_gradient.noalias() += weight * residual * j;
        }
        double cost = weight * m_squares;
        const auto prior = [&](Parameter which, double usual, double sd) {
            const double off = (usual - p[which]) / sd;
            cost += off * off;
            m_normal(which, which) += 1.0 / (sd * sd);
            m_gradient[which] += off / sd;
        };
        prior(kRatio, kUsualRatio, kRatioSd);
        prior(kBore, kUsualBore * m_scale, kBoreSd * std::abs(m_scale));
        return cost;
    }

    static Parameters bounded(Parameters p) {
        p[kRadius] = std::clamp(p[kRadius], 1.0, 100.0);
        p[kBlur] = std::clamp(p[kBlur], kLeastBlurPx, kMostBlurPx);
        p[kRatio] = std::clamp(p[kRatio], 0.3, 0.97);
        return p;
    }

    void iterate() {
        double damping = 1e-3, cost = linearize(m_p);
        for (int step = 0; step < 40; ++step) {
            const Square normal = m_normal;
            const Parameters gradient = m_gradient;
            Square damped = normal;
            damped.diagonal() *= 1.0 + damping;
            const Parameters next = bounded(m_p + damped.ldlt().solve(gradient));
            const double nextCost = linearize(next);
            if (nextCost <= cost) {
                const bool settled = cost - nextCost < 1e-4;
                m_p = next;
                cost = nextCost;
                damping *= 0.2;
                if (settled) return;
            } else {
                damping *= 8.0;
                m_normal = normal;
                m_gradient = gradient;
                if (damping > 1e8) break;
            }
        }
        linearize(m_p);
    }

    /// How much the variance of a mean grows because residuals of neighbouring pixels go together: the sum of
    /// their correlations up to 3 pixels away, not below 1.
    double sharedNoise() const {
        constexpr int kFar = 3;
        int x0 = m_pixels.front().column, x1 = x0, y0 = m_pixels.front().row, y1 = y0;
        for (const auto& p : m_pixels) {
            x0 = std::min(x0, p.column);
            x1 = std::max(x1, p.column);
            y0 = std::min(y0, p.row);
            y1 = std::max(y1, p.row);
        }
        const int width = x1 - x0 + 1, height = y1 - y0 + 1;
        std::vector<double> grid(static_cast<std::size_t>(width) * static_cast<std::size_t>(height),
                                 std::numeric_limits<double>::quiet_NaN());
        const auto at = [&](int x, int y) -> double& {
            return grid[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
                        static_cast<std::size_t>(x)];
        };
        for (std::size_t i = 0; i < m_pixels.size(); ++i)
            at(m_pixels[i].column - x0, m_pixels[i].row - y0) = m_residuals[i];
        double total = 1.0;
        const double variance = m_squares / static_cast<double>(m_pixels.size());
        for (int dy = 0; dy <= kFar; ++dy) {
            for (int dx = dy == 0 ? 1 : -kFar; dx <= kFar;
                 ++dx) { // half the neighbours; the others mirror them
                double sum = 0.0, pairs = 0.0;
                for (int y = 0; y + dy < height; ++y) {
                    for (int x = std::max(0, -dx); x + std::max(0, dx) < width; ++x) {
                        const double product = at(x, y) * at(x + dx, y + dy);
                        if (std::isnan(product)) continue;
                        sum += product;
                        pairs += 1.0;
                    }
                }
                if (pairs > 0.0 && variance > 0.0) total += 2.0 * sum / (pairs * variance);
            }
        }
        return std::max(1.0, total);
    }

    std::vector<Pixel> m_pixels;
    std::vector<double> m_residuals;
    Parameters m_p = Parameters::Zero();
    Parameters m_gradient = Parameters::Zero();
    Square m_normal = Square::Zero();
    double m_noise = 1.0;
    double m_scale = 1.0;
    double m_squares = 0.0;
    double m_reach = 0.0;
};

Result<void> checkMarks(const GreyFrame& frame, const Vector2d& from, const Vector2d& to,
                        const CatheterProfileOptions& options) {
    if (!from.allFinite() || !to.allFinite())
        return unusable(ErrorCode::NonFinite, "a marked place is no finite number.");
    const auto within = [&](const Vector2d& p) {
        return p.x() >= 0.0 && p.y() >= 0.0 && p.x() <= frame.columns - 1.0 && p.y() <= frame.rows - 1.0;
    };
    if (!within(from) || !within(to))
        return unusable(ErrorCode::InvalidArgument, "the marked line leaves the picture.");
    if ((to - from).norm() < kShortestPiecePx)
        return unusable(ErrorCode::InvalidArgument, "the marked piece is " + fixed((to - from).norm(), 1) +
                                                        " pixels long; at least " +
                                                        general(kShortestPiecePx) + " are needed.");
    if (options.roughWidthPx && !(*options.roughWidthPx >= 2.0 && *options.roughWidthPx <= 200.0))
        return unusable(ErrorCode::InvalidArgument, "a rough width of " + fixed(*options.roughWidthPx, 1) +
                                                        " pixels lies outside 2 to 200.");
    return {};
}

/// One fit about a line; the course found says where the line should have been.
Result<TubeFit> fitAbout(const GreyFrame& frame, const Axis& axis, const Sight& sight) {
    const double beside = sight.radius + std::max(5.0, sight.radius);
    auto pixels = strip(frame, axis, sight.centre - beside, sight.centre + beside);
    if (pixels.size() < 100)
        return unusable(ErrorCode::InvalidArgument, "too little of the picture lies around the marked line.");
    TubeFit fit(std::move(pixels), sight);
    fit.solve();
    return fit;
}

} // namespace

Result<CatheterProfile> catheterProfile(const GreyFrame& frame, const Vector2d& from, const Vector2d& to,
                                        const CatheterProfileOptions& options) {
    if (auto valid = checkMarks(frame, from, to, options); !valid) return tl::make_unexpected(valid.error());
    Axis axis = axisOf(from, to);
    const double reach = options.roughWidthPx ? std::max(8.0, 1.3 * *options.roughWidthPx) : kReachPx;
    auto sight = firstSight(strip(frame, axis, -reach, reach), reach);
    if (!sight) return tl::make_unexpected(sight.error());
    auto fit = fitAbout(frame, axis, *sight);
    if (!fit) return tl::make_unexpected(fit.error());
    {
        // Again about the course that was found, so that "across" is across the tube and not across the
        // marks.
        const Parameters& p = fit->parameters();
        const auto onCourse = [&](double s) {
            return Vector2d(axis.middle + s * axis.halfLength * axis.along +
                            (p[kShift] + p[kTurn] * s + p[kBend] * s * s) * axis.across);
        };
        Sight better = *sight;
        better.radius = p[kRadius];
        better.noise = fit->noise();
        better.background = p[kLevel] + p[kSlope] * p[kShift];
        better.slope = p[kSlope];
        better.centre = 0.0;
        axis = axisOf(onCourse(-1.0), onCourse(1.0));
        fit = fitAbout(frame, axis, better);
        if (!fit) return tl::make_unexpected(fit.error());
    }
    const Parameters& p = fit->parameters();
    const double lean = std::cos(std::atan(p[kTurn] / axis.halfLength));
    CatheterProfile out;
    out.width = {2.0 * p[kRadius] * lean, 2.0 * fit->radiusUncertainty() * lean};
    out.blurPx = p[kBlur];
    out.lengthPx = 2.0 * axis.halfLength;
    out.dark = sight->depth < 0.0;
    out.contrastToNoise = std::abs(sight->depth) / fit->noise();
    if (out.contrastToNoise < kLeastContrastToNoise ||
        !(out.width.standardUncertaintyPx < kMostUncertain * out.width.px))
        return unusable(ErrorCode::ContrastPoor,
                        "it stands out from its surroundings by " + fixed(out.contrastToNoise, 1) +
                            " times the noise, which leaves its width uncertain by " +
                            fixed(out.width.standardUncertaintyPx, 1) + " of " + fixed(out.width.px, 1) +
                            " pixels. Mark a longer or better seen piece.");
    for (const int end : {0, 1}) {
        const double s = end == 0 ? -1.0 : 1.0;
        const Vector2d middle = axis.middle + s * axis.halfLength * axis.along +
                                (p[kShift] + p[kTurn] * s + p[kBend] * s * s) * axis.across;
        // Picture rows run downwards: `across` points to the right of the way.
        out.leftEdge[static_cast<std::size_t>(end)] = middle - p[kRadius] * axis.across;
        out.rightEdge[static_cast<std::size_t>(end)] = middle + p[kRadius] * axis.across;
    }
    return out;
}

} // namespace gauge::core
