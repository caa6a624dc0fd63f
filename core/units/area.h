#pragma once

#include <compare>

namespace gauge::core {

/// An area. Stored in square millimetres.
class Area {
public:
    static constexpr Area fromMm2(double mm2) { return Area{mm2}; }
    constexpr double mm2() const { return m_mm2; }
    constexpr double cm2() const { return m_mm2 / 100.0; }
    constexpr auto operator<=>(const Area&) const = default;

private:
    explicit constexpr Area(double mm2) : m_mm2(mm2) {}
    double m_mm2;
};

} // namespace gauge::core
