#include "core/pressure/posterior_content.h"

#include "core/pressure/point_set.h"
#include "core/pressure/truncated_normal.h"

#include <Eigen/Cholesky>
#include <algorithm>
#include <boost/math/special_functions/gamma.hpp>
#include <cmath>

namespace gauge::core {

namespace {

// Fewer points than this in play: integrate again with more.
constexpr double kFewPoints = 1000.0;
constexpr int kMostRaise = 16;
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

/// The readings of one point in information form; the slope is the last unknown.
struct Information {
    LinearMatrix precision;
    LinearVector information;
};

/// What the priors say of the linear unknowns and the slope. D* has none.
Information priorInformation(const Posterior::Content& c) {
    const int n = c.linearCount() + 1;
    Information out{LinearMatrix::Zero(n, n), LinearVector::Zero(n)};
    const auto add = [&out](int i, double mean, double sd) {
        out.precision(i, i) = 1.0 / (sd * sd);
        out.information(i) = mean / (sd * sd);
    };
    add(1, 0.0, 1.0);
    add(2, 0.0, 1.0);
    for (std::size_t i = 0; i < c.readings.kinds.size(); ++i) {
        const SpreadPrior& bias = c.readings.kinds[i].bias;
        add(3 + static_cast<int>(i), bias.mean, std::max(bias.sd, kLeastBiasSdMm));
    }
    const SpreadPrior& slope = slopePrior(c.priors, c.quantity);
    add(n - 1, slope.mean, slope.sd);
    return out;
}

/// Sum of y^2 / u^2 and of mean^2 / sd^2 of the priors: what the evidence needs beside the information.
double constantTerm(const Posterior::Content& c, const Information& prior) {
    double sum = 0.0;
    for (Eigen::Index i = 1; i < prior.information.size(); ++i)
        sum += prior.information(i) * prior.information(i) / prior.precision(i, i);
    for (const auto& r : c.readings.counted) {
        const double z = (r.valueMm - c.centreMm) / r.standardUncertaintyMm;
        sum += z * z;
    }
    return sum;
}

/// Row of one reading: base, departures, its bias, its pressure term.
LinearVector readingRow(const Posterior::Content& c, const CountedReading& r, double mmHg) {
    LinearVector row(c.linearCount() + 1);
    row << c.row(mmHg, r.kind), c.term(mmHg);
    return row;
}

class Integrator {
public:
    explicit Integrator(Posterior::Content& content)
        : m_content(content), m_axes(content.readings), m_prior(priorInformation(content)),
          m_constant(constantTerm(content, m_prior)) {}

    void run(int points) {
        m_logWeights.clear();
        m_content.nodes.clear();
        m_content.nodes.reserve(points);
        m_surprise = 0.0;
        PointSet set(m_axes.count, 1);
        for (int i = 0; i < points; ++i)
            addNode(set.next());
        normalise();
        m_content.contradictionChance = m_surprise / std::min<double>(points, kContradictionPoints);
    }

private:
    void addNode(std::span<const double> u) {
        PosteriorNode node;
        if (m_axes.share >= 0) node.share = u[m_axes.share];
        for (std::size_t s = 0; s < m_content.readings.states.size(); ++s) {
            const PressureState& state = m_content.readings.states[s];
            node.meanPressures.push_back(state.meanMmHg +
                                         state.sdMmHg * normalQuantile(u[m_axes.states + static_cast<int>(s)]));
            const int phase = m_axes.phases[s];
            node.endSystole.push_back(phase >= 0 && u[phase] < 0.5);
        }
        solve(collect(node), u[0], node);
        m_content.nodes.push_back(std::move(node));
    }

    Information collect(const PosteriorNode& node) const {
        Information info = m_prior;
        for (const auto& r : m_content.readings.counted) {
            const LinearVector row = readingRow(m_content, r, m_content.pressureOf(node, r));
            const double precision = 1.0 / (r.standardUncertaintyMm * r.standardUncertaintyMm);
            info.precision.noalias() += precision * row * row.transpose();
            info.information += precision * (r.valueMm - m_content.centreMm) * row;
        }
        return info;
    }

    void solve(const Information& info, double u, PosteriorNode& node) {
        const Eigen::Index n = info.information.size(), rest = n - 1;
        const Eigen::LLT<LinearMatrix> whole(info.precision);
        const LinearVector mean = whole.solve(info.information);
        const double slopeSd = 1.0 / whole.matrixLLT()(rest, rest);
        node.slope = truncated_normal::quantile(mean(rest), slopeSd, u);
        const auto moments = truncated_normal::moments(mean(rest), slopeSd);
        node.slopeMean = moments.mean;
        node.slopeVariance = moments.variance;
        // Given the slope: the rest of the precision stays, the information moves.
        const LinearMatrix precision = info.precision.topLeftCorner(rest, rest);
        const Eigen::LLT<LinearMatrix> given(precision);
        node.covariance = given.solve(LinearMatrix::Identity(rest, rest));
        node.mean = mean.head(rest) + given.solve(LinearVector(info.precision.col(rest).head(rest))) *
                                          (mean(rest) - node.slope);
        const double misfit = std::max(0.0, m_constant - info.information.dot(mean));
        m_logWeights.push_back(-whole.matrixLLT().diagonal().array().log().sum() - 0.5 * misfit +
                               truncated_normal::logNormalCdf(mean(rest) / slopeSd));
        judge(misfit);
    }

    void judge(double misfit) {
        const auto free = m_content.readings.counted.size() - 1;
        if (m_logWeights.size() > kContradictionPoints) return;
        m_surprise += free == 0 ? 1.0 : boost::math::gamma_q(0.5 * static_cast<double>(free), 0.5 * misfit);
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
    double m_constant;
    std::vector<double> m_logWeights;
    double m_surprise = 0.0;
};

} // namespace

void integrate(Posterior::Content& content, int points) {
    Integrator integrator(content);
    integrator.run(points);
    const double wanted = std::min(kFewPoints, points / 8.0);
    for (int raise = 4; raise <= kMostRaise && content.effectivePoints < wanted; raise *= 4)
        integrator.run(points * raise);
}

} // namespace gauge::core
