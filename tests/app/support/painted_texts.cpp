#include "tests/app/support/painted_texts.h"

#include "app/format/quantity.h"

#include <QFontInfo>
#include <QFontMetricsF>
#include <QImage>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QPainterPath>
#include <QWidget>
#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

namespace gauge::layout {
namespace {

constexpr double kLetterWidth = 0.6; // of its height, as of a digit

/// Keeps the texts that are painted with it, and what later lies over them.
class TextEngine : public QPaintEngine {
public:
    TextEngine() : QPaintEngine(AllFeatures) {}

    QList<PaintedText> texts;

    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    void updateState(const QPaintEngineState&) override {}
    Type type() const override { return User; }

    void drawPixmap(const QRectF& target, const QPixmap&, const QRectF&) override { cover(ofRect(target)); }
    void drawImage(const QRectF& target, const QImage&, const QRectF&, Qt::ImageConversionFlags) override { cover(ofRect(target)); }

    void drawPath(const QPainterPath& path) override {
        if (painter()->brush().style() != Qt::NoBrush && painter()->brush().color().alpha() > 0) cover(path);
        if (painter()->pen().style() == Qt::NoPen || painter()->pen().color().alpha() == 0) return;
        QPainterPathStroker stroker(painter()->pen());
        stroker.setWidth(std::max(1.0, painter()->pen().widthF()));
        cover(stroker.createStroke(path));
    }

    void drawPolygon(const QPointF* points, int count, PolygonDrawMode mode) override {
        QPainterPath path;
        path.addPolygon(QPolygonF(QList<QPointF>(points, points + count)));
        if (mode != PolylineMode) path.closeSubpath();
        drawPath(path);
    }

    void drawTextItem(const QPointF& at, const QTextItem& item) override {
        const QString text = app::plainSpaces(item.text());
        if (text.trimmed().isEmpty()) return;
        const QFont font = item.font();
        const QTransform device = painter()->deviceTransform();
        const QRectF box = device.mapRect(QFontMetricsF(font).tightBoundingRect(text).translated(at));
        const QRectF seen = painter()->hasClipping() ? box & device.mapRect(painter()->clipBoundingRect()) : box;
        m_inks.push_back(inkOf(font, text, at, device, box));
        texts.append({text, box, seen, 0.0, static_cast<int>(std::lround(QFontInfo(font).pixelSize() * std::sqrt(std::abs(device.determinant()))))});
    }

private:
    static QPainterPath ofRect(const QRectF& rect) {
        QPainterPath path;
        path.addRect(rect);
        return path;
    }

    void cover(const QPainterPath& shape) {
        if (texts.isEmpty()) return;
        QPainterPath onDevice = painter()->deviceTransform().map(shape);
        if (painter()->hasClipping()) {
            const QRectF clip = painter()->deviceTransform().mapRect(painter()->clipBoundingRect());
            if (!clip.contains(onDevice.boundingRect())) onDevice = onDevice.intersected(ofRect(clip));
        }
        for (qsizetype i = 0; i < texts.size(); ++i) {
            if (!onDevice.boundingRect().intersects(texts[i].box)) continue;
            Ink& ink = m_inks[static_cast<std::size_t>(i)];
            paint(ink.over, ink.corner, [&](QPainter& mask) { mask.fillPath(onDevice, Qt::white); });
            texts[i].under = ink.shareUnder(std::max(1, static_cast<int>(std::lround(kLetterWidth * texts[i].pixelSize))));
        }
    }

    /// The pixels of a text's letters, and those of them that something lies over.
    struct Ink {
        QPoint corner;
        QImage letters, over;

        /// The greatest share of `wide` columns side by side, about a letter.
        double shareUnder(int wide) const {
            constexpr int kHalf = 128;
            std::vector<int> all(static_cast<std::size_t>(letters.width())), under(all);
            for (int y = 0; y < letters.height(); ++y)
                for (int x = 0; x < letters.width(); ++x) {
                    if (qAlpha(letters.pixel(x, y)) < kHalf) continue;
                    ++all[static_cast<std::size_t>(x)];
                    if (qAlpha(over.pixel(x, y)) >= kHalf) ++under[static_cast<std::size_t>(x)];
                }
            double most = 0.0;
            for (auto from = 0; from + wide <= letters.width(); ++from) {
                const double ink = std::accumulate(all.begin() + from, all.begin() + from + wide, 0.0);
                if (ink > 0.5 * wide) most = std::max(most, std::accumulate(under.begin() + from, under.begin() + from + wide, 0.0) / ink);
            }
            return most;
        }
    };

    template <class Draw>
    static void paint(QImage& image, const QPoint& corner, Draw draw) {
        QPainter painter(&image);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.translate(-corner);
        draw(painter);
    }

    static Ink inkOf(const QFont& font, const QString& text, const QPointF& at, const QTransform& device, const QRectF& box) {
        const QRect room = box.toAlignedRect().adjusted(-1, -1, 1, 1);
        QImage empty(room.size(), QImage::Format_ARGB32_Premultiplied);
        empty.fill(Qt::transparent);
        Ink ink{room.topLeft(), empty, empty};
        paint(ink.letters, ink.corner, [&](QPainter& painter) {
            painter.setTransform(device, true);
            painter.setFont(font);
            painter.drawText(at, text);
        });
        return ink;
    }

    std::vector<Ink> m_inks; ///< of each text
};

class TextDevice : public QPaintDevice {
public:
    explicit TextDevice(const QSize& size) : m_size(size) {}

    const QList<PaintedText>& texts() const { return m_engine.texts; }
    QPaintEngine* paintEngine() const override { return &m_engine; }

protected:
    int metric(PaintDeviceMetric metric) const override {
        constexpr int kDpi = 96;
        constexpr double kInchMm = 25.4;
        switch (metric) {
        case PdmWidth:
            return m_size.width();
        case PdmHeight:
            return m_size.height();
        case PdmDpiX:
        case PdmDpiY:
        case PdmPhysicalDpiX:
        case PdmPhysicalDpiY:
            return kDpi;
        case PdmWidthMM:
            return static_cast<int>(std::lround(m_size.width() * kInchMm / kDpi));
        case PdmHeightMM:
            return static_cast<int>(std::lround(m_size.height() * kInchMm / kDpi));
        case PdmNumColors:
            return 1 << 24;
        case PdmDepth:
            return 24;
        case PdmDevicePixelRatio:
            return 1;
        case PdmDevicePixelRatioScaled:
            return static_cast<int>(devicePixelRatioFScale());
        default:
            return QPaintDevice::metric(metric);
        }
    }

private:
    QSize m_size;
    mutable TextEngine m_engine;
};

} // namespace

QList<PaintedText> paintedTexts(QWidget& widget, Children children) {
    TextDevice device(widget.size());
    const QWidget::RenderFlags flags = children == Children::Painted ? QWidget::DrawWindowBackground | QWidget::DrawChildren : QWidget::RenderFlags(QWidget::DrawWindowBackground);
    widget.render(&device, {}, {}, flags);
    return device.texts();
}

} // namespace gauge::layout
