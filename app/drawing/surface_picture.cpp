#include "app/drawing/surface_picture.h"

#include "app/drawing/palette.h"
#include "core/parallel/parallel_for.h"

#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

constexpr int kRowsAtOnce = 24;

unsigned mix(int from, int to, unsigned share) {
    return static_cast<unsigned>(from * static_cast<int>(255u - share) + to * static_cast<int>(share)) / 255u;
}

} // namespace

QColor surfaceColour(bool beyondOstium) {
    return beyondOstium ? QColor(236, 168, 148) : QColor(158, 168, 184);
}

Eigen::Vector3f surface_light::lamp() {
    return Eigen::Vector3f(-0.45f, -0.62f, -0.64f).normalized();
}

Eigen::Vector3f surface_light::half() {
    return (lamp() + Eigen::Vector3f(0, 0, -1)).normalized();
}

void SurfacePicture::start(const SectionMap& map, const QSize& size, double ratio) {
    const QSize pixels(std::max(1, static_cast<int>(std::lround(size.width() * ratio))),
                       std::max(1, static_cast<int>(std::lround(size.height() * ratio))));
    m_map = map;
    m_ratio = ratio;
    if (m_image.size() != pixels) m_image = QImage(pixels, QImage::Format_RGB32);
    m_image.setDevicePixelRatio(ratio);
    m_depth.resize(static_cast<std::size_t>(pixels.width()) * static_cast<std::size_t>(pixels.height()));
    m_tone.resize(m_depth.size());
}

std::optional<std::size_t> SurfacePicture::indexAt(const QPointF& pixel) const {
    const QPointF at = pixel * m_ratio;
    const int x = static_cast<int>(std::floor(at.x())), y = static_cast<int>(std::floor(at.y()));
    if (x < 0 || y < 0 || x >= m_image.width() || y >= m_image.height()) return std::nullopt;
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(m_image.width()) + static_cast<std::size_t>(x);
}

bool SurfacePicture::hides(const core::PatientPoint& place, double toleranceMm) const {
    const auto index = indexAt(m_map.fromPatient(place));
    return index && (place - m_map.frame.origin).dot(m_map.frame.normal) > m_depth[*index] + toleranceMm;
}

std::optional<core::PatientPoint> SurfacePicture::placeAt(const QPointF& pixel) const {
    const auto index = indexAt(pixel);
    if (!index || !(m_tone[*index] & kCovered)) return std::nullopt;
    return m_map.patientFrom(pixel) + static_cast<double>(m_depth[*index]) * m_map.frame.normal;
}

void SurfacePicture::colour() {
    auto* pixels = reinterpret_cast<QRgb*>(m_image.bits()); // detaches before threads write; 32 bits a pixel: no gaps
    const auto rows = static_cast<std::size_t>(m_image.height());
    core::parallelFor(rows, kRowsAtOnce, [&](std::size_t begin, std::size_t end) {
        colourRows(static_cast<int>(begin), static_cast<int>(end), pixels);
    });
}

void SurfacePicture::colourRows(int top, int bottom, QRgb* pixels) {
    constexpr float kEdgeMm = 1.6f;
    const QColor bodies[2] = {surfaceColour(false), surfaceColour(true)};
    const QRgb background = tone::image.rgb();
    const int width = m_image.width();
    for (int y = top; y < bottom; ++y) {
        const auto first = static_cast<std::ptrdiff_t>(y) * width;
        const float* depth = m_depth.data() + first;
        const std::uint32_t* tones = m_tone.data() + first;
        QRgb* out = pixels + first;
        for (int x = 0; x < width; ++x) {
            const std::uint32_t tone = tones[x];
            if (!(tone & kCovered)) {
                out[x] = background;
                continue;
            }
            unsigned light = tone & 255u;
            const unsigned side = tone >> 8 & 255u;
            if (tone & kInside) light = light * 5u / 9u;
            const float left = x > 0 ? depth[x - 1] : kNothing, above = y > 0 ? depth[x - width] : kNothing;
            if (std::abs(left - depth[x]) > kEdgeMm || std::abs(above - depth[x]) > kEdgeMm) light = light * 2u / 3u;
            out[x] = qRgb(static_cast<int>(mix(bodies[0].red(), bodies[1].red(), side) * light / 255u),
                          static_cast<int>(mix(bodies[0].green(), bodies[1].green(), side) * light / 255u),
                          static_cast<int>(mix(bodies[0].blue(), bodies[1].blue(), side) * light / 255u));
        }
    }
}

} // namespace gauge::app
