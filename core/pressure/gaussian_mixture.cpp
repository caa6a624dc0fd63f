#include "core/pressure/gaussian_mixture.h"

#include <algorithm>
#include <boost/math/special_functions/erf.hpp>
#include <cassert>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>

namespace gauge::core {

namespace {

constexpr double kSqrt2 = std::numbers::sqrt2;
// Boost would compute in long double, several times slower.
using InDouble = boost::math::policies::policy<boost::math::policies::promote_double<false>>;

/// P(X <= x) of one component.
double componentCdf(const GaussianMixture::Component& c, double x) {
    if (c.sd > 0.0) return normalCdf((x - c.mean) / c.sd);
    return x >= c.mean ? 1.0 : 0.0;
}

double componentDensity(const GaussianMixture::Component& c, double x) {
    if (!(c.sd > 0.0)) return 0.0;
    const double z = (x - c.mean) / c.sd;
    return std::exp(-0.5 * z * z) / (c.sd * std::sqrt(2.0 * std::numbers::pi));
}

} // namespace

double normalCdf(double z) { return 0.5 * std::erfc(-z / kSqrt2); }

double normalQuantile(double probability) {
    assert(probability > 0.0 && probability < 1.0);
    return -kSqrt2 * boost::math::erfc_inv(2.0 * probability, InDouble{});
}

GaussianMixture::GaussianMixture(std::vector<Component> components) : m_components(std::move(components)) {
    assert(!m_components.empty());
    double sum = 0.0;
    for (const auto& c : m_components)
        sum += c.weight;
    assert(sum > 0.0);
    for (auto& c : m_components) {
        c.weight /= sum;
        m_mean += c.weight * c.mean;
    }
    double variance = 0.0;
    for (const auto& c : m_components)
        variance += c.weight * (c.sd * c.sd + (c.mean - m_mean) * (c.mean - m_mean));
    m_sd = std::sqrt(variance);
}

GaussianMixture GaussianMixture::binned(const std::vector<Component>& components) {
    constexpr double kBinsPerSd = 100.0;
    constexpr int kHalfBins = 1000;       // ten SDs on both sides; what lies beyond shares the outermost bins
    const double kSdClass = std::log(1.15); // only components of nearly the same SD are joined
    double weight = 0.0, mean = 0.0, square = 0.0;
    for (const auto& c : components) {
        if (!(c.weight > 0.0)) continue;
        weight += c.weight;
        const double step = c.mean - mean;
        mean += step * c.weight / weight;
        square += c.weight * (step * (c.mean - mean) + c.sd * c.sd);
    }
    const double width = std::sqrt(square / weight) / kBinsPerSd;
    if (!(width > 0.0)) return GaussianMixture(components);
    struct Sums {
        double weight = 0.0, offset = 0.0, square = 0.0; // of the components, about the whole mean
    };
    std::map<int, std::vector<Sums>> classes;
    for (const auto& c : components) {
        const double offset = c.mean - mean;
        auto& bins = classes[static_cast<int>(std::lround(std::log(std::max(c.sd / width, 1e-3)) / kSdClass))];
        if (bins.empty()) bins.resize(2 * kHalfBins + 1);
        Sums& sums = bins[kHalfBins + std::lround(std::clamp(offset / width, -1.0 * kHalfBins, 1.0 * kHalfBins))];
        sums.weight += c.weight;
        sums.offset += c.weight * offset;
        sums.square += c.weight * (c.sd * c.sd + offset * offset);
    }
    std::vector<Component> out;
    for (const auto& [sdClass, bins] : classes)
        for (const auto& sums : bins) {
            if (!(sums.weight > 0.0)) continue;
            const double offset = sums.offset / sums.weight;
            out.push_back({sums.weight, mean + offset,
                           std::sqrt(std::max(0.0, sums.square / sums.weight - offset * offset))});
        }
    return GaussianMixture(std::move(out));
}

double GaussianMixture::cdf(double x) const {
    double sum = 0.0;
    for (const auto& c : m_components)
        sum += c.weight * componentCdf(c, x);
    return std::clamp(sum, 0.0, 1.0);
}

double GaussianMixture::probabilityWithin(double lowest, double highest) const {
    if (!(highest >= lowest)) return 0.0;
    double sum = 0.0;
    for (const auto& c : m_components) {
        if (c.sd > 0.0)
            sum += c.weight * (componentCdf(c, highest) - componentCdf(c, lowest));
        else if (c.mean >= lowest && c.mean <= highest)
            sum += c.weight;
    }
    return std::clamp(sum, 0.0, 1.0);
}

double GaussianMixture::quantile(double probability) const {
    assert(probability > 0.0 && probability < 1.0);
    double low = std::numeric_limits<double>::infinity(), high = -low;
    const double z = normalQuantile(probability);
    // The quantile lies between the least and the greatest of the components' quantiles.
    for (const auto& c : m_components) {
        if (!(c.weight > 0.0)) continue;
        low = std::min(low, c.mean + z * c.sd);
        high = std::max(high, c.mean + z * c.sd);
    }
    // Newton's step where it stays inside the bracket, else halving.
    const double tolerance = 1e-10 * std::max(m_sd, 1e-6);
    double x = std::clamp(m_mean + z * m_sd, low, high);
    for (int i = 0; i < 200 && high - low > tolerance; ++i) {
        double value = 0.0, slope = 0.0;
        for (const auto& c : m_components) {
            value += c.weight * componentCdf(c, x);
            slope += c.weight * componentDensity(c, x);
        }
        (value < probability ? low : high) = x;
        const double step = slope > 0.0 ? (probability - value) / slope : 0.0;
        const double next = x + step;
        if (slope > 0.0 && std::abs(step) < tolerance) return next;
        x = slope > 0.0 && next > low && next < high ? next : 0.5 * (low + high);
    }
    return x;
}

} // namespace gauge::core
