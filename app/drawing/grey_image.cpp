#include "app/drawing/grey_image.h"

#include "app/drawing/palette.h"
#include "core/parallel/parallel_for.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace gauge::app {

QImage greyImage(const core::SectionImage& section, const GreyWindow& window) {
    QImage image(section.grid.columns, section.grid.rows, QImage::Format_RGB32);
    const double width = std::max(window.widthHu, 2.0);
    const double low = window.centerHu - 0.5 - (width - 1.0) / 2.0;
    const double scale = 255.0 / (width - 1.0);
    const QRgb outside = tone::image.rgb();
    std::vector<QRgb*> lines(static_cast<std::size_t>(section.grid.rows));
    for (std::size_t row = 0; row < lines.size(); ++row) // scanLine may copy: not from several threads
        lines[row] = reinterpret_cast<QRgb*>(image.scanLine(static_cast<int>(row)));
    core::parallelFor(lines.size(), 64, [&](std::size_t begin, std::size_t end) {
        for (std::size_t row = begin; row < end; ++row) {
            const float* values = section.values.data() + row * static_cast<std::size_t>(section.grid.columns);
            for (int column = 0; column < section.grid.columns; ++column) {
                if (values[column] == core::kOutsideVolume) {
                    lines[row][column] = outside;
                    continue;
                }
                const int grey = static_cast<int>(std::clamp((values[column] - low) * scale, 0.0, 255.0) + 0.5);
                lines[row][column] = qRgb(grey, grey, grey);
            }
        }
    });
    return image;
}

core::SectionImage cutFor(const core::Volume& volume, const SectionMap& map, const QRectF& area, double devicePixelRatio,
                          const core::Slab& slab) {
    core::SectionGrid grid;
    grid.frame = map.frame;
    grid.frame.origin = map.patientFrom(area.center());
    grid.columns = std::max(1, static_cast<int>(std::lround(area.width() * devicePixelRatio)));
    grid.rows = std::max(1, static_cast<int>(std::lround(area.height() * devicePixelRatio)));
    grid.pixelMm = 1.0 / (map.pixelsPerMm * devicePixelRatio);
    return core::cutSlab(volume, grid, slab);
}

QImage cutGrey(const core::Volume& volume, const SectionMap& map, const QRectF& area,
               const GreyWindow& window, double devicePixelRatio) {
    QImage image = greyImage(cutFor(volume, map, area, devicePixelRatio), window);
    image.setDevicePixelRatio(devicePixelRatio);
    return image;
}

} // namespace gauge::app
