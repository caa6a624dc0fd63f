// The picture of a lit triangle mesh, whoever draws it: surface_raster.h on the processor, views/surface_gl.h by OpenGL. Both
// fill in what is seen at each pixel (light, side of the ostium, inside or outside, depth); the colours then come from here.
//
//   SectionMap as a camera: u to the right, v downwards, the frame's normal away from the viewer; parallel projection. So what
//   is drawn over a section (labels, letters, scale bar) is drawn over the surface in the same way.
#pragma once

#include "app/drawing/grey_image.h"
#include "core/volume/surface_mesh.h"

#include <QImage>
#include <cstdint>
#include <optional>
#include <vector>

namespace gauge::app {

struct SurfaceScene {
    const core::SurfaceMesh* mesh = nullptr;
    /// Per point: 1 in the appendage, 0 in the atrium. Null: all atrium.
    const std::vector<std::uint8_t>* beyondOstium = nullptr;
    /// What lies on the side to which the normal points is left out: one looks inside.
    std::optional<core::Plane> cut = {};
    /// Names the mesh and its sides: who keeps a copy of them (graphics memory) makes a new one when this changes, and each
    /// time while it is 0.
    std::uint64_t stamp = 0;

    bool operator==(const SurfaceScene&) const = default;
};

/// Colours of the surface: of neither role, so that lines of every role stand out.
QColor surfaceColour(bool beyondOstium);

/// The light: one lamp above the viewer's left shoulder, a weak one at the viewer, a little gloss. Directions in camera axes
/// (right, down, away).
namespace surface_light {
constexpr float kBase = 0.14f, kLamp = 0.58f, kFacing = 0.26f, kGloss = 0.16f; ///< shares of full light; gloss to the 24th power
Eigen::Vector3f lamp();
Eigen::Vector3f half(); ///< between lamp and viewer
} // namespace surface_light

/// A drawn surface with its depths.
class SurfacePicture {
public:
    /// A pixel's tone: light 0 to 255, then the side (255: appendage), then these bits. 0: nothing is seen there.
    static constexpr std::uint32_t kCovered = 1u << 24, kInside = 1u << 16;
    /// Depth where there is no surface, mm.
    static constexpr float kNothing = 1e30f;

    const QImage& image() const { return m_image; }
    /// Whether the surface hides a place `toleranceMm` or more behind it. Outside the picture nothing is hidden.
    bool hides(const core::PatientPoint& place, double toleranceMm) const;
    /// The place of the surface under a pixel of the widget; nothing beside the surface.
    std::optional<core::PatientPoint> placeAt(const QPointF& pixel) const;

    // For those who draw: start, fill in tones and depths row by row, colour.
    /// A picture of `size` widget pixels at `ratio` device pixels each; tones and depths are then undefined.
    void start(const SectionMap& map, const QSize& size, double ratio);
    int width() const { return m_image.width(); }
    int height() const { return m_image.height(); }
    const SectionMap& map() const { return m_map; }
    double ratio() const { return m_ratio; }
    std::uint32_t* tones() { return m_tone.data(); }
    const std::vector<std::uint32_t>& tones() const { return m_tone; }
    float* depths() { return m_depth.data(); } ///< mm along the frame's normal from its origin
    const std::vector<float>& depths() const { return m_depth; }
    /// From tones to colours; a step in depth to the pixel on the left or above is drawn as a dark edge. All cores.
    void colour();

private:
    std::optional<std::size_t> indexAt(const QPointF& pixel) const;
    void colourRows(int top, int bottom, QRgb* pixels);

    QImage m_image;
    SectionMap m_map;      ///< in the widget's pixels
    double m_ratio = 1.0;  ///< device pixels per widget pixel
    std::vector<float> m_depth;
    std::vector<std::uint32_t> m_tone;
};

} // namespace gauge::app
