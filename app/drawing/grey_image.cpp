#include "app/drawing/grey_image.h"

#include "app/drawing/palette.h"

#include <algorithm>
#include <cmath>

namespace gauge::app {

QImage greyImage(const core::SectionImage& section, const GreyWindow& window) {
    QImage image(section.grid.columns, section.grid.rows, QImage::Format_RGB32);
    const double width = std::max(window.widthHu, 2.0);
    const double low = window.centerHu - 0.5 - (width - 1.0) / 2.0;
    const double scale = 255.0 / (width - 1.0);
    const QRgb outside = tone::image.rgb();
    for (int row = 0; row < section.grid.rows; ++row) {
        auto* line = reinterpret_cast<QRgb*>(image.scanLine(row));
        for (int column = 0; column < section.grid.columns; ++column) {
            const float value = section.at(column, row);
            if (value == core::kOutsideVolume) {
                line[column] = outside;
                continue;
            }
            const int grey = static_cast<int>(std::lround(std::clamp((value - low) * scale, 0.0, 255.0)));
            line[column] = qRgb(grey, grey, grey);
        }
    }
    return image;
}

QImage cutGrey(const core::Volume& volume, const SectionMap& map, const QRectF& area,
               const GreyWindow& window, double devicePixelRatio) {
    core::SectionGrid grid;
    grid.frame = map.frame;
    grid.frame.origin = map.patientFrom(area.center());
    grid.columns = std::max(1, static_cast<int>(std::lround(area.width() * devicePixelRatio)));
    grid.rows = std::max(1, static_cast<int>(std::lround(area.height() * devicePixelRatio)));
    grid.pixelMm = 1.0 / (map.pixelsPerMm * devicePixelRatio);
    QImage image = greyImage(core::cutSection(volume, grid), window);
    image.setDevicePixelRatio(devicePixelRatio);
    return image;
}

} // namespace gauge::app
