// Grey pictures as an echo scanner makes them of a scene: tissue cut by the image plane, averaged over pixels and
// blurred, times speckle, with shadows behind lung and bone.
#pragma once

#include "sample-data/echo/echo_plane.h"
#include "sample-data/echo/echo_tissue.h"
#include "sample-data/picture/picture.h"

#include <cstdint>
#include <vector>

namespace gauge::sample_case {

struct BModeOptions {
    EchoLevels levels;
    double blurFwhmMm = 0.7;
    double speckleAlongMm = 0.9;   ///< FWHM of the speckle's grain along the beam
    double speckleAcrossDeg = 1.5; ///< and across it
    double speckleShare = 0.62;    ///< 0: none; 1: fully developed (Rayleigh)
    double speckleMoves = 0.55;    ///< share of the speckle's field that is new in each frame
    std::uint64_t seed = 1;
};

/// Draws frames of one image plane. What does not change between frames is worked out once.
class BMode {
public:
    BMode(const EchoPlane& plane, const BModeOptions& options);

    /// Draws the fan into `picture` (of the layout's size, outside the fan nothing is touched). The same scene and frame
    /// number give the same picture. May be called from several threads at once.
    /// Accuracy: averaged over speckle, a boundary of blood crosses the value halfway between its two sides within a
    /// pixel of its true place.
    void draw(const Scene& scene, int frame, Picture& picture) const;

private:
    struct Field { ///< complex speckle over beams and depths
        std::vector<float> re, im;
    };
    Field speckleField(std::uint64_t stream) const;
    std::vector<float> speckle(int frame) const;
    void cut(const Scene& scene, std::vector<EchoTissue>& map) const;
    std::vector<float> transmission(const std::vector<EchoTissue>& map) const;

    EchoPlane m_plane;
    BModeOptions m_options;
    int m_beams, m_depths;
    int m_x0, m_y0, m_width, m_height; ///< box of the fan
    struct Place { ///< of a pixel in the fan, in beams and depths
        int pixel;
        float beam, depth;
    };
    std::vector<Place> m_places;
    Field m_still;
};

} // namespace gauge::sample_case
