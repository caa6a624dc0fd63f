// Draws a triangle mesh without graphics hardware: parallel projection, depth buffer, smooth light, all cores. What the
// screen shows where there is no graphics hardware, and what reports and headless pictures always use.
#pragma once

#include "app/drawing/surface_picture.h"

namespace gauge::app {

/// Keeps its buffers between pictures.
class SurfaceRaster {
public:
    /// A picture of `size` widget pixels at `ratio` device pixels each.
    const SurfacePicture& draw(const SurfaceScene& scene, const SectionMap& map, const QSize& size, double ratio = 1.0);

private:
    struct Corner {
        float x, y, depth, front, back, side, cut; ///< light from outside and from inside, 0 to 255
    };
    struct Bin {
        std::vector<std::uint32_t> triangles;
    };

    void projectCorners(const SurfaceScene& scene);
    void sortIntoBands(const SurfaceScene& scene);
    void fillBand(const SurfaceScene& scene, int band);
    void fillTriangle(const SurfaceScene& scene, std::uint32_t triangle, int top, int bottom);

    SurfacePicture m_picture;
    std::vector<Corner> m_corners;
    std::vector<Bin> m_bins; ///< chunk of triangles by band
    int m_width = 0, m_height = 0, m_bands = 0;
    std::size_t m_chunks = 0;
};

} // namespace gauge::app
