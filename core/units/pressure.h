#pragma once

#include <compare>

namespace gauge::core {

/// A pressure in mmHg, the unit of every haemodynamic record.
class Pressure {
public:
    static constexpr Pressure fromMmHg(double mmHg) { return Pressure{mmHg}; }
    constexpr double mmHg() const { return m_mmHg; }
    constexpr auto operator<=>(const Pressure&) const = default;

private:
    explicit constexpr Pressure(double mmHg) : m_mmHg(mmHg) {}
    double m_mmHg;
};

} // namespace gauge::core
