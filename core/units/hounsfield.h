#pragma once

#include <compare>

namespace gauge::core {

/// An X-ray attenuation on the Hounsfield scale: water 0, air -1000.
class Hounsfield {
public:
    explicit constexpr Hounsfield(double hu) : m_hu(hu) {}
    constexpr double hu() const { return m_hu; }
    constexpr auto operator<=>(const Hounsfield&) const = default;

private:
    double m_hu;
};

} // namespace gauge::core
