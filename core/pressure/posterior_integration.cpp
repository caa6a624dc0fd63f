#include "core/pressure/posterior_content.h"

#include "core/pressure/point_set.h"
#include "core/pressure/truncated_normal.h"

#include <Eigen/Cholesky>
#include <algorithm>
#include <boost/math/special_functions/gamma.hpp>
#include <cmath>

namespace gauge::core {

namespace {

// A smaller share of the points in play: integrate again with more.
constexpr double kShareInPlay = 0.25;
constexpr int kMostRaise = 16;
constexpr int kMostPoints = 1 << 18;
// Pressures are drawn this much wider than known and weighted back: low pressures, where the logarithm is steep, make the
// tails, and get three times as many points.
constexpr double kPressureSpread = 1.4;
// A bias given as known exactly still needs a finite precision.
constexpr double kLeastBiasSdMm = 1e-4;
// Points that judge whether the readings contradict each other.
constexpr std::size_t kContradictionPoints = 512;

/// Coordinates of the point set, one for each unknown that is integrated by points.
struct Axes {
    explicit Axes(const PreparedReadings& readings) {
        const auto vWaveCounts = [&](const CountedReading& r) {
            return readings.states[r.state].vWaveMmHg && r.phase != Phase::Other;
        };
        if (std::any_of(readings.counted.begin(), readings.counted.end(), vWaveCounts)) share = count++;
        states = count;
        count += static_cast<int>(readings.states.size());
        for (const auto& state : readings.states)
            phases.push_back(state.phaseMatters ? count++ : -1);
    }

    int count = 1; ///< 0 is the slope's
    int share = -1;
    int states = 0;
    std::vector<int> phases;
};

/// Normal knowledge of the linear unknowns in information form.
struct Information {
    LinearMatrix precision;
    LinearVector information;
};

/// The linear unknowns without the slope, solved.
struct Solved {
    std::shared_ptr<const Eigen::MatrixXd> covariance;
    double logDeterminant = 0.0; ///< of the precision
};

/// What the priors say of the linear unknowns. D* has none.
Information priorInformation(const Posterior::Content& c) {
    const int n = c.linearCount();
    Information out{LinearMatrix::Zero(n, n), LinearVector::Zero(n)};
    out.precision(1, 1) = out.precision(2, 2) = 1.0;
    for (int i = 3; i < n; ++i) {
        const SpreadPrior& bias = c.readings.kinds[i - 3].bias;
        const double sd = std::max(bias.sd, kLeastBiasSdMm);
        out.precision(i, i) = 1.0 / (sd * sd);
        out.information(i) = bias.mean / (sd * sd);
    }
    return out;
}

double precisionOf(const CountedReading& r) { return 1.0 / (r.standardUncertaintyMm * r.standardUncertaintyMm); }

Solved solved(const LinearMatrix& precision) {
    const Eigen::LLT<LinearMatrix> factor(precision);
    const Eigen::Index n = precision.rows();
    return {std::make_shared<const Eigen::MatrixXd>(factor.solve(LinearMatrix::Identity(n, n))),
            2.0 * factor.matrixLLT().diagonal().array().log().sum()};
}

class Integrator {
public:
    explicit Integrator(Posterior::Content& content)
        : m_content(content), m_axes(content.readings), m_prior(priorInformation(content)),
          m_slope(slopePrior(content.priors, content.quantity)) {
        // Inside the valid range the rows are the same at every point.
        m_inside = m_prior;
        m_constant = m_slope.mean * m_slope.mean / (m_slope.sd * m_slope.sd);
        for (Eigen::Index i = 3; i < m_prior.information.size(); ++i)
            m_constant += m_prior.information(i) * m_prior.information(i) / m_prior.precision(i, i);
        for (const auto& r : content.readings.counted) {
            const double y = r.valueMm - content.centreMm;
            add(m_inside, content.row(content.referenceMmHg, r.kind), y, precisionOf(r));
            m_constant += y * y * precisionOf(r);
        }
        m_solvedInside = solved(m_inside.precision);
    }

    void run(int points) {
        m_logWeights.clear();
        m_content.nodes.clear();
        m_content.nodes.reserve(points);
        m_surprise = m_priorSum = 0.0;
        PointSet set(m_axes.count, 1);
        for (int i = 0; i < points; ++i)
            addNode(set.next());
        m_content.contradictionChance = std::min(1.0, m_surprise / m_priorSum);
        normalise();
    }

private:
    static void add(Information& to, const LinearVector& row, double y, double precision) {
        to.precision.noalias() += precision * row * row.transpose();
        to.information += (precision * y) * row;
    }

    void addNode(std::span<const double> u) {
        PosteriorNode& node = m_content.nodes.emplace_back();
        m_logPrior = 0.0;
        if (m_axes.share >= 0) node.share = u[m_axes.share];
        const auto& states = m_content.readings.states;
        node.meanPressures.reserve(states.size());
        for (std::size_t s = 0; s < states.size(); ++s) {
            const double z = kPressureSpread * normalQuantile(u[m_axes.states + static_cast<int>(s)]);
            m_logPrior += 0.5 * z * z * (1.0 / (kPressureSpread * kPressureSpread) - 1.0);
            node.meanPressures.push_back(states[s].meanMmHg + states[s].sdMmHg * z);
            const int phase = m_axes.phases[s];
            node.endSystole.push_back(phase >= 0 && u[phase] < 0.5);
        }
        solve(node, u[0]);
    }

    /// Base, departures and biases without the slope, and how the slope's column meets them.
    struct Column {
        LinearVector cross; ///< precision between the linear unknowns and the slope
        double precision, information;
    };

    void solve(PosteriorNode& node, double u) {
        Column slope{LinearVector::Zero(m_content.linearCount()), 1.0 / (m_slope.sd * m_slope.sd),
                     m_slope.mean / (m_slope.sd * m_slope.sd)};
        Information outside;
        bool isOutside = false;
        const auto& counted = m_content.readings.counted;
        for (std::size_t i = 0; i < counted.size() && !isOutside; ++i)
            isOutside = m_content.departureSd(m_content.pressureOf(node, counted[i])) > 0.0;
        if (isOutside) outside = m_prior;
        for (const auto& r : counted) {
            const double p = m_content.pressureOf(node, r), term = m_content.term(p);
            const double weight = precisionOf(r), y = r.valueMm - m_content.centreMm;
            const LinearVector row = m_content.row(p, r.kind);
            slope.cross += (weight * term) * row;
            slope.precision += weight * term * term;
            slope.information += weight * term * y;
            if (isOutside) add(outside, row, y, weight);
        }
        finish(node, u, isOutside ? outside.information : m_inside.information,
               isOutside ? solved(outside.precision) : m_solvedInside, slope);
    }

    /// Eliminates the linear unknowns (Schur complement), spreads the slope over its places, and ties them to it.
    void finish(PosteriorNode& node, double u, const LinearVector& information, const Solved& linear,
                const Column& slope) {
        const LinearVector without = *linear.covariance * information;
        const LinearVector pull = *linear.covariance * slope.cross;
        const double precision = slope.precision - slope.cross.dot(pull);
        const double mean = (slope.information - slope.cross.dot(without)) / precision;
        const double sd = 1.0 / std::sqrt(precision);
        for (std::size_t j = 0; j < kSlopesPerPoint; ++j)
            node.slopes[j] = truncated_normal::quantile(mean, sd, (static_cast<double>(j) + u) / kSlopesPerPoint);
        const auto moments = truncated_normal::moments(mean, sd);
        node.slopeMean = moments.mean;
        node.slopeVariance = moments.variance;
        node.without = without;
        node.pull = pull;
        node.covariance = linear.covariance;
        const double misfit =
            std::max(0.0, m_constant - information.dot(without) - mean * mean * precision);
        m_logWeights.push_back(-0.5 * (linear.logDeterminant + std::log(precision) + misfit) +
                               truncated_normal::logNormalCdf(mean / sd) + m_logPrior);
        judge(misfit);
    }

    void judge(double misfit) {
        const auto free = m_content.readings.counted.size() - 1;
        if (m_logWeights.size() > kContradictionPoints) return;
        const double prior = std::exp(m_logPrior);
        m_priorSum += prior;
        m_surprise += prior * (free == 0 ? 1.0 : boost::math::gamma_q(0.5 * static_cast<double>(free), 0.5 * misfit));
    }

    void normalise() {
        const double most = *std::max_element(m_logWeights.begin(), m_logWeights.end());
        double sum = 0.0, squares = 0.0;
        for (const double log : m_logWeights) {
            const double w = std::exp(log - most);
            sum += w;
            squares += w * w;
        }
        for (std::size_t i = 0; i < m_logWeights.size(); ++i)
            m_content.nodes[i].weight = std::exp(m_logWeights[i] - most) / sum;
        m_content.effectivePoints = sum * sum / squares;
        // What cannot move any answer need not be carried.
        const double least = 1e-12 / sum;
        std::erase_if(m_content.nodes, [&](const PosteriorNode& node) { return node.weight < least; });
    }

    Posterior::Content& m_content;
    Axes m_axes;
    Information m_prior;
    SpreadPrior m_slope;
    Information m_inside; ///< with the readings, all pressures in the valid range
    Solved m_solvedInside;
    double m_constant = 0.0; ///< squares of readings and prior means, each by its precision
    std::vector<double> m_logWeights;
    double m_logPrior = 0.0; ///< of the present point's pressures, against the wider spread they are drawn from
    double m_surprise = 0.0, m_priorSum = 0.0;
};

} // namespace

void integrate(Posterior::Content& content, int points) {
    Integrator integrator(content);
    integrator.run(points);
    const double wanted = points * kShareInPlay;
    for (int raise = 4; raise <= kMostRaise && points * raise <= kMostPoints && content.effectivePoints < wanted;
         raise *= 4)
        integrator.run(points * raise);
}

} // namespace gauge::core
