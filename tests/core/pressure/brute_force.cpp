#include "tests/core/pressure/brute_force.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <map>
#include <string>

namespace gauge::test {

using namespace gauge::core;

namespace {

/// Box-Muller in pairs on a 64-bit generator.
class Normal {
public:
    explicit Normal(std::mt19937_64& random) : m_random(random) {}
    double uniform() { return (static_cast<double>(m_random() >> 11) + 0.5) * 0x1p-53; }
    double operator()() {
        if (m_spare) {
            m_spare = false;
            return m_next;
        }
        const double r = std::sqrt(-2.0 * std::log(uniform())), angle = 2.0 * M_PI * uniform();
        m_next = r * std::sin(angle);
        m_spare = true;
        return r * std::cos(angle);
    }

private:
    std::mt19937_64& m_random;
    double m_next = 0.0;
    bool m_spare = false;
};

double logOrLine(PressureLaw law, double p, double q) {
    return law == PressureLaw::Logarithmic ? 12.0 * (std::log(p) - std::log(q)) : p - q;
}

/// Mean and SD of a state's pressure as references say, read off the readings one by one.
std::pair<double, double> statePressure(std::span<const Observation> all, const std::string& state, const Priors& p) {
    std::pair<double, double> out{p.pressureOther.mean, p.pressureOther.sd};
    for (const auto& o : all)
        if (o.state == state) {
            if (o.condition == Condition::MitralRegurgitation)
                out = {p.pressureMitralRegurgitation.mean, p.pressureMitralRegurgitation.sd};
            if (o.condition == Condition::Hydrated) out = {p.pressureHydrated.mean, p.pressureHydrated.sd};
        }
    for (const auto& o : all)
        if (o.state == state && o.vWaveMmHg) out = {0.6 * *o.vWaveMmHg, 5.0};
    for (const auto& o : all)
        if (o.state == state && o.pressureMmHg) {
            const double bySource[] = {1.5, 3.0, 4.0, 4.0};
            out = {*o.pressureMmHg,
                   o.pressureUncertaintyMmHg.value_or(o.pressureSource ? bySource[static_cast<int>(*o.pressureSource)]
                                                                       : 4.0)};
        }
    return out;
}

/// SD of N(mean, sd) cut at 0, by summation.
double cutSd(double mean, double sd) {
    double s0 = 0, s1 = 0, s2 = 0;
    for (int i = 0; i < 200000; ++i) {
        const double k = (i + 0.5) * (mean + 10 * sd) / 200000, z = (k - mean) / sd, f = std::exp(-0.5 * z * z);
        s0 += f;
        s1 += f * k;
        s2 += f * k * k;
    }
    return std::sqrt(s2 / s0 - s1 * s1 / s0 / s0);
}

/// Everything that one draw needs of the readings, laid out flat.
struct Problem {
    Eigen::VectorXd y;          ///< less the mean biases
    Eigen::VectorXd gain;       ///< of generalised least squares: D* = gain . (y - known part)
    Eigen::MatrixXd residual;   ///< chi-square = r' residual r
    double variance = 0.0;      ///< of D* given the draw
    std::vector<int> state;     ///< by reading
    std::vector<std::pair<double, double>> pressure; ///< by state
    std::vector<double> vWave;  ///< by state; negative: none
};

Problem layOut(std::span<const Observation> all, const Priors& priors) {
    Problem out;
    const auto n = static_cast<Eigen::Index>(all.size());
    Eigen::MatrixXd v = Eigen::MatrixXd::Zero(n, n);
    out.y.resize(n);
    std::map<std::string, int> states;
    for (Eigen::Index i = 0; i < n; ++i) {
        const auto& o = all[i];
        const auto [place, isNew] = states.emplace(o.state, static_cast<int>(states.size()));
        if (isNew) {
            out.pressure.push_back(statePressure(all, o.state, priors));
            double wave = -1.0;
            for (const auto& other : all)
                if (other.state == o.state && other.vWaveMmHg) wave = *other.vWaveMmHg;
            out.vWave.push_back(wave);
        }
        out.state.push_back(place->second);
        const SpreadPrior bias = biasPrior(priors, o.modality, o.derivation);
        out.y(i) = o.valueMm - bias.mean;
        for (Eigen::Index j = 0; j < n; ++j)
            if (all[j].modality == o.modality && all[j].derivation == o.derivation) v(i, j) = bias.sd * bias.sd;
        const double u = o.standardUncertaintyMm.value_or(o.modality == Modality::Ct            ? 0.5
                                                          : o.modality == Modality::Fluoroscopy ? 1.0
                                                                                                : 0.8);
        v(i, i) += u * u;
    }
    const Eigen::MatrixXd inverse = v.inverse();
    const Eigen::VectorXd ones = Eigen::VectorXd::Ones(n);
    out.variance = 1.0 / ones.dot(inverse * ones);
    out.gain = out.variance * (inverse * ones);
    out.residual = inverse - out.gain * out.gain.transpose() / out.variance;
    return out;
}

double widening(double p) { return 1.0 + std::max({0.0, 5.0 - p, p - 20.0}) / 10.0; }

} // namespace

BruteForceAnswer bruteForce(std::span<const Observation> all, double decisionMmHg, PressureLaw law,
                            const Priors& priors, std::span<const double> pressures,
                            const std::vector<std::vector<double>>& places, Box box1, Box box2,
                            const BruteForceOptions& options) {
    const Problem problem = layOut(all, priors);
    const SpreadPrior slope = all[0].quantity == Quantity::Depth ? priors.depthSlope : priors.diameterSlope;
    const double slopeSd = cutSd(slope.mean, slope.sd);
    double reference = decisionMmHg;
    if (decisionMmHg < 5.0 || decisionMmHg > 20.0) {
        double sum = 0.0;
        for (const int s : problem.state)
            sum += problem.pressure[s].first;
        reference = std::clamp(sum / static_cast<double>(all.size()), 5.0, 20.0);
    }
    const auto departure = [&](double p) {
        return slopeSd * std::abs(logOrLine(law, p, reference)) * std::sqrt(widening(p) * widening(p) - 1.0);
    };

    std::mt19937_64 random(options.seed);
    Normal normal(random);
    BruteForceAnswer out;
    const std::size_t m = pressures.size();
    out.mean.assign(m, 0.0);
    std::vector<double> squares(m, 0.0), terms, departures;
    for (const double p : pressures) {
        terms.push_back(logOrLine(law, p, reference));
        departures.push_back(departure(p));
    }
    out.cdf.resize(m);
    out.density.resize(m);
    for (std::size_t j = 0; j < m; ++j) {
        out.cdf[j].assign(places[j].size(), 0.0);
        out.density[j].assign(places[j].size(), 0.0);
    }
    auto noise1 = out.cdf, noise2 = out.cdf; // sums of w^2 F and w^2 F^2
    const auto n = static_cast<Eigen::Index>(all.size());
    Eigen::VectorXd r(n);
    std::vector<double> means(problem.pressure.size());
    std::vector<char> systole(problem.pressure.size());
    const double sd = std::sqrt(problem.variance);
    double sum = 0.0, sumSquares = 0.0, k1 = 0.0, k2 = 0.0;
    for (long draw = 0; draw < options.mostDraws; ++draw) {
        if (draw % 16384 == 0 && sumSquares > 0.0 && sum * sum / sumSquares >= options.effectiveDraws) {
            out.quantileError = 0.0;
            for (std::size_t j = 0; j < m; ++j) {
                const double mean = out.mean[j] / sum, whole = std::sqrt(squares[j] / sum - mean * mean);
                for (std::size_t q = 0; q < places[j].size(); ++q) {
                    // Of a ratio of sums: E w^2 (F - mean F)^2.
                    const double f = out.cdf[j][q] / sum;
                    const double variance = noise2[j][q] - 2.0 * f * noise1[j][q] + f * f * sumSquares;
                    const double error = std::sqrt(std::max(0.0, variance)) / out.density[j][q] / whole;
                    out.quantileError = std::max(out.quantileError, error);
                }
            }
            if (out.quantileError <= options.quantileError) break;
        }
        double k;
        do {
            k = slope.mean + slope.sd * normal();
        } while (k < 0.0);
        const double w = normal.uniform(), low = normal(), high = normal();
        for (std::size_t s = 0; s < means.size(); ++s) {
            means[s] = problem.pressure[s].first + problem.pressure[s].second * normal();
            systole[s] = problem.vWave[s] >= 0.0 && normal.uniform() < 0.5;
        }
        for (Eigen::Index i = 0; i < n; ++i) {
            const int s = problem.state[i];
            double p = means[s];
            const bool stretched = all[i].phase == Phase::EndSystole || (all[i].phase == Phase::Unknown && systole[s]);
            if (stretched && problem.vWave[s] >= 0.0) p += w * (problem.vWave[s] - p);
            p = std::max(p, 3.0);
            r(i) = problem.y(i) - k * logOrLine(law, p, reference);
            if (p < 5.0) r(i) -= departure(p) * low;
            if (p > 20.0) r(i) -= departure(p) * high;
        }
        const double weight = std::exp(-0.5 * r.dot(problem.residual * r));
        if (weight < 1e-12) continue;
        const double base = problem.gain.dot(r), z = normal();
        sum += weight;
        sumSquares += weight * weight;
        k1 += weight * k;
        k2 += weight * k * k;
        double d[2] = {0.0, 0.0};
        for (std::size_t j = 0; j < m; ++j) {
            const double center = base + k * terms[j] + departures[j] * (pressures[j] < 5.0 ? low : high);
            if (j < 2) d[j] = center + sd * z;
            out.mean[j] += weight * center;
            squares[j] += weight * (center * center + problem.variance);
            for (std::size_t q = 0; q < places[j].size(); ++q) {
                const double t = (places[j][q] - center) / sd;
                const double below = 0.5 * std::erfc(-t * M_SQRT1_2);
                out.cdf[j][q] += weight * below;
                noise1[j][q] += weight * weight * below;
                noise2[j][q] += weight * weight * below * below;
                out.density[j][q] += weight * std::exp(-0.5 * t * t) / (sd * std::sqrt(2.0 * M_PI));
            }
        }
        if (m >= 2 && d[0] >= box1.lowest && d[0] <= box1.highest && d[1] >= box2.lowest && d[1] <= box2.highest)
            out.joint += weight;
    }
    out.effectiveDraws = sum * sum / sumSquares;
    for (std::size_t j = 0; j < m; ++j) {
        out.mean[j] /= sum;
        out.sd.push_back(std::sqrt(squares[j] / sum - out.mean[j] * out.mean[j]));
        for (std::size_t q = 0; q < places[j].size(); ++q) {
            out.cdf[j][q] /= sum;
            out.density[j][q] /= sum;
        }
    }
    out.joint /= sum;
    out.slopeMean = k1 / sum;
    out.slopeSd = std::sqrt(k2 / sum - out.slopeMean * out.slopeMean);
    return out;
}

double SimulatedPatient::diameterAt(double mmHg) const {
    return baseMm + slope * logOrLine(law, mmHg, decisionMmHg);
}

SimulatedPatient simulatePatient(std::mt19937_64& random, const Priors& priors, const PatientOptions& options) {
    Normal normal(random);
    const auto below = [&](int n) { return static_cast<int>(normal.uniform() * n); };
    SimulatedPatient out;
    out.law = below(3) ? PressureLaw::Logarithmic : PressureLaw::StraightLine;
    out.decisionMmHg = 8.0 + 8.0 * normal.uniform();
    if (!options.insideRangeOnly && below(8) == 0) out.decisionMmHg = below(2) ? 4.0 : 22.0;
    out.baseMm = 16.0 + 12.0 * normal.uniform();
    do {
        out.slope = priors.diameterSlope.mean + priors.diameterSlope.sd * normal();
    } while (out.slope < 0.0);
    const double share = normal.uniform(), low = normal(), high = normal();
    const double slopeSd = cutSd(priors.diameterSlope.mean, priors.diameterSlope.sd);

    // Up to three states: pressure measured, assumed, or only the v wave known.
    const int states = 1 + below(3);
    std::vector<Observation> template_(states);
    std::vector<double> truth(states);
    std::vector<char> systole(states);
    for (int s = 0; s < states; ++s) {
        Observation& o = template_[s];
        o.state = std::string(1, static_cast<char>('a' + s));
        o.condition = static_cast<Condition>(below(3));
        if (below(2)) o.vWaveMmHg = 15.0 + 25.0 * normal.uniform();
        SpreadPrior prior = pressurePrior(priors, o.condition);
        if (o.vWaveMmHg) prior = {0.6 * *o.vWaveMmHg, 5.0, Basis::Assumption, ""};
        if (below(2)) {
            o.pressureSource = static_cast<PressureSource>(below(4));
            o.pressureMmHg = 6.0 + 12.0 * normal.uniform();
            prior = {*o.pressureMmHg, pressureUncertaintyMmHg(priors, o.pressureSource), Basis::Assumption, ""};
        }
        truth[s] = prior.mean + prior.sd * normal();
        systole[s] = normal.uniform() < 0.5;
    }
    std::map<std::pair<int, int>, double> biases;
    const int readings = 1 + below(options.mostReadings);
    const std::pair<Modality, Derivation> kinds[] = {{Modality::Ct, Derivation::Contour},
                                                     {Modality::Ct, Derivation::Contour},
                                                     {Modality::Echo2d, Derivation::EllipseFromAngles},
                                                     {Modality::Echo3d, Derivation::Contour},
                                                     {Modality::Fluoroscopy, Derivation::EllipseFromAngles}};
    for (int i = 0; i < readings; ++i) {
        const int s = below(states);
        Observation o = template_[s];
        std::tie(o.modality, o.derivation) = kinds[below(5)];
        o.phase = static_cast<Phase>(below(3));
        if (below(2)) o.standardUncertaintyMm = 0.3 + 1.2 * normal.uniform();
        double p = truth[s];
        if (o.vWaveMmHg && (o.phase == Phase::EndSystole || (o.phase == Phase::Unknown && systole[s])))
            p += share * (*o.vWaveMmHg - p);
        p = std::max(3.0, p);
        const SpreadPrior prior = biasPrior(priors, o.modality, o.derivation);
        const auto [bias, isNew] = biases.emplace(std::pair{int(o.modality), int(o.derivation)}, 0.0);
        if (isNew) bias->second = prior.mean + prior.sd * normal();
        const double departure = slopeSd * std::abs(logOrLine(out.law, p, out.decisionMmHg)) *
                                 std::sqrt(widening(p) * widening(p) - 1.0) * (p < 5.0 ? low : high);
        o.valueMm = out.diameterAt(p) + departure + bias->second + readingUncertaintyMm(priors, o) * normal();
        o.valueMm = std::max(o.valueMm, 1.0);
        out.readings.push_back(o);
    }
    return out;
}

} // namespace gauge::test
