// The width of a straight piece of catheter, off the picture: both edges at sub-pixel precision over a
// length.
//
//      from                          to        Every pixel of a strip around the marked line is compared with
//      the
//        *--------------------------*          X-ray shadow of a round tube: a full cylinder less its bore,
//        blurred,
//   ==========================================  on a background that may slope. One least-squares fit gives
//   the
//     grey value across:  ‾‾\__ _/‾‾            outer width, the blur, the course and the covariance of all.
//                            ‾
// Edges taken at half height would be biased: a cylinder's shadow has no plateau. Source: own derivation; the
// blurred chord is integrated numerically.
#pragma once

#include "core/cine/frame_source.h"
#include "core/fluoro/object_scale.h"
#include "core/result.h"

#include <Eigen/Core>
#include <array>
#include <optional>

namespace gauge::core {

struct CatheterProfileOptions {
    /// About how wide it looks, pixels; helps where other things lie near. Looked for within 24 pixels when
    /// not told.
    std::optional<double> roughWidthPx;
};

struct CatheterProfile {
    PixelLength width;     ///< outer width, its standard uncertainty from the noise of this picture
    double blurPx = 0.0;   ///< standard deviation of the picture's blur
    double lengthPx = 0.0; ///< of the piece that was measured
    bool dark = true;      ///< darker than around it
    double contrastToNoise = 0.0;
    /// Edges at the ends of the piece, pixels: left and right of the way from `from` to `to`, first at
    /// `from`.
    std::array<Eigen::Vector2d, 2> leftEdge;
    std::array<Eigen::Vector2d, 2> rightEdge;
};

/// @param from, to  on the catheter's middle, within about a quarter of its width; at least 12 pixels apart,
/// a piece that is nearly straight and crosses nothing. Square pixels are taken for granted.
/// @errors NonFinite; InvalidArgument (outside the picture, too short); ContrastPoor when nothing like a tube
/// stands out, or the fit leaves the width uncertain by more than a quarter. Accuracy: on simulated straight
/// and slightly bent tubes of 8 to 24 pixels, full or hollow, blur 0.6 to 1.6 pixels, contrast 4 to 20 times
/// the noise, see tests/core/fluoro/catheter_profile_test.cpp and DEVELOPERS.md.
Result<CatheterProfile> catheterProfile(const GreyFrame& frame, const Eigen::Vector2d& from,
                                        const Eigen::Vector2d& to,
                                        const CatheterProfileOptions& options = {});

} // namespace gauge::core
