#include "app/drawing/surface_raster.h"

#include "core/parallel/parallel_for.h"

#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

constexpr int kBandRows = 24;
constexpr std::size_t kChunk = 8192;

/// Light on a surface with this normal in camera axes, 0 to 255.
float light(const Eigen::Vector3f& n) {
    using namespace surface_light;
    static const Eigen::Vector3f towardsLamp = lamp(), between = half();
    const float lit = std::max(0.0f, n.dot(towardsLamp)), facing = std::max(0.0f, -n.z());
    const float g = std::max(0.0f, n.dot(between)), g2 = g * g, g4 = g2 * g2, g8 = g4 * g4;
    return std::min(255.0f, 255.0f * (kBase + kLamp * lit + kFacing * facing + kGloss * (g8 * g8 * g8)));
}

std::uint32_t toneOf(float light, float side, bool inside) {
    return SurfacePicture::kCovered | (inside ? SurfacePicture::kInside : 0u) |
           static_cast<std::uint32_t>(side * 255.0f + 0.5f) << 8 | static_cast<std::uint32_t>(light + 0.5f);
}

} // namespace

const SurfacePicture& SurfaceRaster::draw(const SurfaceScene& scene, const SectionMap& map, const QSize& size,
                                          double ratio) {
    m_picture.start(map, size, ratio);
    m_width = m_picture.width();
    m_height = m_picture.height();
    m_bands = (m_height + kBandRows - 1) / kBandRows;
    if (scene.mesh) {
        projectCorners(scene);
        sortIntoBands(scene);
    } else {
        m_chunks = 0;
    }
    core::parallelFor(static_cast<std::size_t>(m_bands), 1, [&](std::size_t begin, std::size_t end) {
        for (std::size_t band = begin; band < end; ++band)
            fillBand(scene, static_cast<int>(band));
    });
    m_picture.colour();
    return m_picture;
}

void SurfaceRaster::projectCorners(const SurfaceScene& scene) {
    const core::SurfaceMesh& mesh = *scene.mesh;
    const SectionMap& map = m_picture.map();
    const double ratio = m_picture.ratio();
    m_corners.resize(mesh.points.size());
    Eigen::Matrix3f axes;
    axes << map.frame.u.mm.transpose().cast<float>(), map.frame.v.mm.transpose().cast<float>(),
        map.frame.normal.mm.transpose().cast<float>();
    const Eigen::Vector3f origin = map.frame.origin.mm.cast<float>();
    const auto scale = static_cast<float>(map.pixelsPerMm * ratio);
    const auto zeroX = static_cast<float>(map.zero.x() * ratio), zeroY = static_cast<float>(map.zero.y() * ratio);
    // Without a cut: a plane that everything lies behind.
    const core::Plane cut = scene.cut.value_or(core::Plane{});
    const Eigen::Vector3f cutNormal = scene.cut ? cut.normal.mm.cast<float>() : Eigen::Vector3f(0, 0, 0);
    const float cutAt = scene.cut ? static_cast<float>(cut.normal.mm.dot(cut.point.mm)) : 1.0f;
    core::parallelFor(mesh.points.size(), kChunk, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end; ++i) {
            const Eigen::Vector3f p = axes * (mesh.points[i] - origin), n = axes * mesh.normals[i];
            const bool beyond = scene.beyondOstium && (*scene.beyondOstium)[i];
            m_corners[i] = {zeroX + scale * p.x(), zeroY + scale * p.y(),
                            p.z(),                 light(n),
                            scene.cut ? light(-n) : 0.0f, beyond ? 1.0f : 0.0f,
                            cutNormal.dot(mesh.points[i]) - cutAt};
        }
    });
}

void SurfaceRaster::sortIntoBands(const SurfaceScene& scene) {
    const auto& triangles = scene.mesh->triangles;
    m_chunks = (triangles.size() + kChunk - 1) / kChunk;
    if (m_bins.size() < m_chunks * static_cast<std::size_t>(m_bands))
        m_bins.resize(m_chunks * static_cast<std::size_t>(m_bands));
    const auto bottom = static_cast<float>(m_height), right = static_cast<float>(m_width);
    core::parallelFor(m_chunks, 1, [&](std::size_t begin, std::size_t end) {
        for (std::size_t chunk = begin; chunk < end; ++chunk) {
            Bin* bins = m_bins.data() + chunk * static_cast<std::size_t>(m_bands);
            for (int band = 0; band < m_bands; ++band)
                bins[band].triangles.clear();
            for (std::size_t t = chunk * kChunk; t < std::min(triangles.size(), (chunk + 1) * kChunk); ++t) {
                const Corner &a = m_corners[triangles[t][0]], &b = m_corners[triangles[t][1]],
                             &c = m_corners[triangles[t][2]];
                const float area = (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y);
                // Seen from outside, triangles run clockwise on a screen whose y points down; without a cut only those show.
                if (!scene.cut && area >= 0.0f) continue;
                if (a.cut > 0.0f && b.cut > 0.0f && c.cut > 0.0f) continue;
                const float top = std::min({a.y, b.y, c.y}), low = std::max({a.y, b.y, c.y});
                if (low < 0.0f || top >= bottom || std::max({a.x, b.x, c.x}) < 0.0f ||
                    std::min({a.x, b.x, c.x}) >= right)
                    continue;
                // A row is touched when its middle, at + 0.5, lies between.
                const int first = std::max(0, static_cast<int>(std::ceil(top - 0.5f)));
                const int last = std::min(m_height - 1, static_cast<int>(std::floor(low - 0.5f)));
                if (first > last) continue;
                for (int band = first / kBandRows; band <= last / kBandRows; ++band)
                    bins[band].triangles.push_back(static_cast<std::uint32_t>(t));
            }
        }
    });
}

void SurfaceRaster::fillBand(const SurfaceScene& scene, int band) {
    const int top = band * kBandRows, bottom = std::min(m_height, top + kBandRows);
    const auto begin = static_cast<std::ptrdiff_t>(top) * m_width, end = static_cast<std::ptrdiff_t>(bottom) * m_width;
    std::fill(m_picture.depths() + begin, m_picture.depths() + end, SurfacePicture::kNothing);
    std::fill(m_picture.tones() + begin, m_picture.tones() + end, 0u);
    for (std::size_t chunk = 0; chunk < m_chunks; ++chunk)
        for (const std::uint32_t t :
             m_bins[chunk * static_cast<std::size_t>(m_bands) + static_cast<std::size_t>(band)].triangles)
            fillTriangle(scene, t, top, bottom);
}

void SurfaceRaster::fillTriangle(const SurfaceScene& scene, std::uint32_t triangle, int top, int bottom) {
    const auto& corners = scene.mesh->triangles[triangle];
    const Corner &a = m_corners[corners[0]], &b = m_corners[corners[1]], &c = m_corners[corners[2]];
    const float area = (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y);
    if (area == 0.0f) return;
    const bool inside = area > 0.0f;
    const int y0 = std::max(top, static_cast<int>(std::ceil(std::min({a.y, b.y, c.y}) - 0.5f)));
    const int y1 = std::min(bottom - 1, static_cast<int>(std::floor(std::max({a.y, b.y, c.y}) - 0.5f)));
    const int x0 = std::max(0, static_cast<int>(std::ceil(std::min({a.x, b.x, c.x}) - 0.5f)));
    const int x1 = std::min(m_width - 1, static_cast<int>(std::floor(std::max({a.x, b.x, c.x}) - 0.5f)));
    if (x0 > x1 || y0 > y1) return;
    const float scale = 1.0f / area;
    // Shares of b and c, linear in x and y; that of a is what is left.
    const float bx = (c.y - a.y) * scale, by = -(c.x - a.x) * scale;
    const float cx = -(b.y - a.y) * scale, cy = (b.x - a.x) * scale;
    const float lightA = inside ? a.back : a.front, lightB = inside ? b.back : b.front,
                lightC = inside ? c.back : c.front;
    const bool straddles = a.cut > 0.0f || b.cut > 0.0f || c.cut > 0.0f;
    constexpr float kEdge = -1e-4f; // neighbours overlap a little rather than leave a crack
    for (int y = y0; y <= y1; ++y) {
        const float py = static_cast<float>(y) + 0.5f - a.y;
        float px = static_cast<float>(x0) + 0.5f - a.x;
        float* depth = m_picture.depths() + static_cast<std::ptrdiff_t>(y) * m_width;
        std::uint32_t* tone = m_picture.tones() + static_cast<std::ptrdiff_t>(y) * m_width;
        for (int x = x0; x <= x1; ++x, px += 1.0f) {
            const float sb = bx * px + by * py, sc = cx * px + cy * py, sa = 1.0f - sb - sc;
            if (sa < kEdge || sb < kEdge || sc < kEdge) continue;
            const float d = sa * a.depth + sb * b.depth + sc * c.depth;
            if (d >= depth[x]) continue;
            if (straddles && sa * a.cut + sb * b.cut + sc * c.cut > 0.0f) continue;
            depth[x] = d;
            tone[x] = toneOf(std::clamp(sa * lightA + sb * lightB + sc * lightC, 0.0f, 255.0f),
                             std::clamp(sa * a.side + sb * b.side + sc * c.side, 0.0f, 1.0f), inside);
        }
    }
}

} // namespace gauge::app
