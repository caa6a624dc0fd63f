#include "core/fluoro/blurred_chord.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::core {
namespace {

constexpr double kFarInBlurs = 7.0; ///< beyond, the Gaussian is below 1e-11 of its peak

/// The rule needs steps of at most about the blur: r pi / nodes <= blur.
int nodesFor(double radius, double blur) {
    return std::clamp(static_cast<int>(std::ceil(1.3 * std::numbers::pi * radius / blur)), 24, 400);
}

} // namespace

ChordValue blurredChord(double t, double radius, double blur, int nodes) {
    // u = r sin(phi): the square root becomes a cosine and the integrand smooth, zero with its slope at both
    // ends.
    ChordValue sum;
    const double step = std::numbers::pi / nodes;
    const double norm = step / (blur * std::sqrt(2.0 * std::numbers::pi));
    for (int i = 1; i < nodes; ++i) {
        const double phi = -0.5 * std::numbers::pi + i * step;
        const double sine = std::sin(phi), cosine = std::cos(phi);
        const double away = (t - radius * sine) / blur;
        if (std::abs(away) > kFarInBlurs) continue;
        const double g = norm * std::exp(-0.5 * away * away) * cosine * cosine;
        sum.value += radius * g;
        sum.perT -= radius * g * away / blur;
        sum.perRadius += g * (1.0 + radius * away * sine / blur);
        sum.perBlur += radius * g * (away * away - 1.0) / blur;
    }
    return sum;
}

BlurredChord::BlurredChord(double radius, double blur, double reach) : m_step(std::min(0.15, 0.2 * blur)) {
    const int nodes = nodesFor(radius, blur);
    const double last = std::min(reach, radius + kFarInBlurs * blur);
    const auto count = static_cast<std::size_t>(std::ceil(last / m_step)) + 2;
    m_values.reserve(count);
    for (std::size_t i = 0; i < count; ++i)
        m_values.push_back(blurredChord(static_cast<double>(i) * m_step, radius, blur, nodes));
}

ChordValue BlurredChord::at(double t) const {
    const double place = std::abs(t) / m_step;
    const auto index = static_cast<std::size_t>(place);
    if (index + 1 >= m_values.size()) return {};
    const double f = place - static_cast<double>(index);
    const ChordValue& a = m_values[index];
    const ChordValue& b = m_values[index + 1];
    const auto between = [&](double x, double y) { return x + f * (y - x); };
    // The value by Hermite's cubic through values and slopes; the derivatives only steer the fit.
    const double g = 1.0 - f;
    const double cubic = g * g * ((1.0 + 2.0 * f) * a.value + f * m_step * a.perT) +
                         f * f * ((1.0 + 2.0 * g) * b.value - g * m_step * b.perT);
    ChordValue out{cubic, between(a.perT, b.perT), between(a.perRadius, b.perRadius),
                   between(a.perBlur, b.perBlur)};
    if (t < 0.0) out.perT = -out.perT;
    return out;
}

} // namespace gauge::core
