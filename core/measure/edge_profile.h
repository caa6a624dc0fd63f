// Where the border of the blood lies, from profiles across it.
//
//   HU  B ------.                  B  blood, W  wall (muscle), O  what lies beyond (fat, lung, another cavity)
//               |\                 e  border blood / wall, w  thickness of the wall, s  blur (standard deviation)
//               | \        O
//               |  '----'          value(t) = B - (B - W) F((t - e)/s) + (O - W) F((t - e - w)/s)
//      inside   e  W    e+w   t    with F the normal distribution function
//
// A blurred straight edge crosses (B + W)/2 at its true place. W cannot be read off where the wall is thin, so it is
// fitted together with what lies beyond; the border is then the crossing of the local (B + W)/2.
#pragma once

#include "core/geometry/plane.h"
#include "core/volume/volume.h"

#include <Eigen/Core>
#include <optional>
#include <span>
#include <vector>

namespace gauge::core {

class EdgeModel;

/// What is known of blood, wall and noise before a section is measured; from anatomy/contrast.h.
struct SectionGuide {
    double bloodHu = 350.0;   ///< expected blood level here
    double wallHu = 80.0;     ///< expected wall level
    double wallSdHu = 30.0;   ///< how far a wall's level may lie from that
    double edgeSigmaMm = 0.4; ///< blur of edges as sampled (scanner and interpolation together)
    /// Power of the image noise along a line at long waves, HU2 mm: variance of the mean over a length L is this / L.
    double noiseLineDensity = 300.0;
};

/// Border points found along an outline.
struct EdgeSet {
    std::vector<Eigen::Vector2d> points; ///< equally spaced along the outline, section coordinates, mm
    double bloodHu = 0.0;                ///< mean over the border
    double wallHu = 0.0;
    double meanSlopeHuPerMm = 0.0;       ///< |dHU/dt| at the border, mean
    std::vector<double> slopeHuPerMm;    ///< one a point
    double residualHu = 0.0;             ///< RMS misfit of the edge model
};

/// Moves the vertices of `outline` (counter-clockwise) onto the border.
EdgeSet locateEdges(const Volume& volume, const SectionFrame& frame, std::span<const Eigen::Vector2d> outline,
                    const SectionGuide& guide);
/// The same with the model of `guide.edgeSigmaMm` made beforehand, for one outline after another.
EdgeSet locateEdges(const Volume& volume, const SectionFrame& frame, std::span<const Eigen::Vector2d> outline,
                    const SectionGuide& guide, const EdgeModel& model);

/// An outline (counter-clockwise) that a hand drew, brought near enough for locateEdges(): its vertices moved to the falling
/// crossing of `levelHu` nearest to them within 1.2 mm. Nothing where fewer than half of them have one.
std::optional<std::vector<Eigen::Vector2d>> broughtToLevel(const Volume& volume, const SectionFrame& frame,
                                                           std::span<const Eigen::Vector2d> outline, double levelHu);

/// RMS misfit in HU of the edge model around an outline for the blur `sigmaMm`: least at the true blur.
double edgeMisfitHu(const Volume& volume, const SectionFrame& frame, std::span<const Eigen::Vector2d> outline,
                    const SectionGuide& guide, double sigmaMm);

} // namespace gauge::core
