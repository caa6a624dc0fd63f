// Shadow of a round bar under a Gaussian blur, with its derivatives: what catheter_profile.cpp fits.
#pragma once

#include <vector>

namespace gauge::core {

/// F(t) = integral over |u| < r of sqrt(1 - (u/r)^2) g(t - u) du, g Gaussian of standard deviation `blur`:
/// the chord of a round bar of radius r in units of r, seen through the blur. F(0) tends to 1 for small blur.
struct ChordValue {
    double value = 0.0;
    double perT = 0.0;
    double perRadius = 0.0;
    double perBlur = 0.0;
};

/// Values on a grid, interpolated (Hermite): made once for a radius and a blur, asked for thousands of
/// pixels. Accuracy: 1e-4 of the peak for blur >= 0.3 pixels.
class BlurredChord {
public:
    /// @param radius, blur  pixels, > 0. @param reach  largest |t| that will be asked, pixels.
    BlurredChord(double radius, double blur, double reach);
    ChordValue at(double t) const;

private:
    double m_step = 0.0;
    std::vector<ChordValue> m_values; ///< for t = 0, step, 2 step …; F is even in t
};

/// One value by direct integration. @param nodes  of the trapezoidal rule in the angle.
ChordValue blurredChord(double t, double radius, double blur, int nodes);

} // namespace gauge::core
