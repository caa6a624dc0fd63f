#pragma once

#include <compare>

namespace gauge::core {

/// A length. Stored in millimetres; made and read by name, so that no bare number changes its unit.
class Length {
public:
    static constexpr Length fromMm(double mm) { return Length{mm}; }
    static constexpr Length fromCm(double cm) { return Length{cm * 10.0}; }
    constexpr double mm() const { return m_mm; }
    constexpr auto operator<=>(const Length&) const = default;

private:
    explicit constexpr Length(double mm) : m_mm(mm) {}
    double m_mm;
};

} // namespace gauge::core
