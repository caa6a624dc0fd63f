#include "app/drawing/depth_strip_bands.h"

#include "app/drawing/depth_strip_drawing.h"
#include "app/drawing/palette.h"

#include <algorithm>

namespace gauge::app {
namespace {

constexpr double kGapMm = 1.6; // a gap of several steps of the profile is not bridged

QColor fillOf(StripBand band) {
    QColor fill = tone::text;
    fill.setAlpha(band == StripBand::Decision ? 62 : 26);
    return fill;
}

void drawBand(QPainter& painter, const WidthScale& widths, const DepthScale& depth, const StripAnswer& answer,
              StripBand which) {
    const auto& band = answer.band(which).widths;
    const auto& profile = answer.profile;
    for (std::size_t begin = 0; begin < profile.size();) {
        std::size_t end = begin + 1;
        while (end < profile.size() && profile[end].depthMm - profile[end - 1].depthMm <= kGapMm)
            ++end;
        QPolygonF line, area, lower;
        for (std::size_t i = begin; i < end; ++i) {
            const double x = depth.xFromMm(profile[i].depthMm);
            line << QPointF(x, widths.yFromMm(band[i].medianMm));
            area << QPointF(x, widths.yFromMm(band[i].upper95Mm));
            lower << QPointF(x, widths.yFromMm(band[i].lower95Mm));
        }
        std::reverse(lower.begin(), lower.end());
        area += lower;
        painter.setPen(Qt::NoPen);
        painter.setBrush(fillOf(which));
        painter.drawPolygon(area);
        painter.setPen(penOf(which));
        painter.drawPolyline(line);
        begin = end;
    }
}

} // namespace

QPen penOf(StripBand band) {
    QPen pen(tone::text, band == StripBand::Decision ? 2.2 : 1.4, Qt::SolidLine, Qt::FlatCap);
    if (band == StripBand::Lowest) pen.setDashPattern({1.5, 2.5});
    if (band == StripBand::Highest) pen.setDashPattern({6.0, 3.0});
    return pen;
}

void drawBands(QPainter& painter, const WidthScale& widths, const DepthScale& depth, const StripAnswer& answer) {
    for (const StripBand which : {StripBand::Lowest, StripBand::Highest, StripBand::Decision})
        drawBand(painter, widths, depth, answer, which);
}

void drawDevice(QPainter& painter, const WidthScale& widths, const DepthScale& depth, const core::DeviceOutline& device) {
    const double ground = widths.yFromMm(0.0);
    QPolygonF body;
    body << QPointF(depth.xFromMm(device.body.front().depthMm), ground);
    for (const auto& at : device.body)
        body << QPointF(depth.xFromMm(at.depthMm), widths.yFromMm(at.widthMm));
    body << QPointF(depth.xFromMm(device.body.back().depthMm), ground);
    QColor fill = colourOf(Role::Device, Ground::Page);
    fill.setAlpha(24);
    painter.setPen(penOf(Role::Device, 1.6, Ground::Page));
    painter.setBrush(fill);
    painter.drawPolygon(body);
    if (device.discMm) {
        const double x = depth.xFromMm(device.seatMm - core::DeviceOutline::kDrawnDiscMm);
        painter.drawRect(QRectF(QPointF(x, widths.yFromMm(*device.discMm)), QPointF(depth.xFromMm(device.seatMm), ground)));
    }
    painter.setBrush(Qt::NoBrush);
}

double greatestWidthMm(const StripAnswer& answer) {
    double most = 0.0;
    for (const auto& band : answer.bands)
        for (const auto& width : band.widths)
            most = std::max(most, width.medianMm);
    if (answer.device) most = std::max({most, answer.device->freeMm, answer.device->discMm.value_or(0.0)});
    return most;
}

} // namespace gauge::app
