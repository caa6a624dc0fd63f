// Draws a triangle mesh without graphics hardware: parallel projection, depth buffer, smooth light, all cores. What the
// screen shows where no OpenGL context can be had, and what reports and headless pictures always use.
//
//   SectionMap as a camera: u to the right, v downwards, the frame's normal away from the viewer. So what is drawn over
//   a section (labels, letters, scale bar) is drawn over the surface in the same way.
#pragma once

#include "app/drawing/grey_image.h"
#include "core/volume/surface_mesh.h"

#include <QImage>
#include <array>
#include <cstdint>
#include <optional>
#include <vector>

namespace gauge::app {

struct SurfaceScene {
    const core::SurfaceMesh* mesh = nullptr;
    /// Per point: 1 in the appendage, 0 in the atrium. Null: all atrium.
    const std::vector<std::uint8_t>* beyondOstium = nullptr;
    /// What lies on the side to which the normal points is left out: one looks inside.
    std::optional<core::Plane> cut;
};

/// Colours of the surface: of neither role, so that lines of every role stand out.
QColor surfaceColour(bool beyondOstium);

/// A drawn surface with its depths.
class SurfacePicture {
public:
    const QImage& image() const { return m_image; }
    /// Whether the surface hides a place `toleranceMm` or more behind it. Outside the picture nothing is hidden.
    bool hides(const core::PatientPoint& place, double toleranceMm) const;
    /// The place of the surface under a pixel of the widget; nothing beside the surface.
    std::optional<core::PatientPoint> placeAt(const QPointF& pixel) const;

private:
    friend class SurfaceRaster;
    QImage m_image;
    SectionMap m_map;            ///< in the widget's pixels
    double m_ratio = 1.0;        ///< device pixels per widget pixel
    std::vector<float> m_depth;  ///< mm along the frame's normal from its origin; infinite where there is none
};

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
    void colour(int top, int bottom);

    SurfacePicture m_picture;
    std::vector<Corner> m_corners;
    std::vector<Bin> m_bins;           ///< chunk of triangles by band
    std::vector<std::uint32_t> m_tone; ///< light, side and inside of each pixel
    int m_width = 0, m_height = 0, m_bands = 0;
    std::size_t m_chunks = 0;
};

} // namespace gauge::app
