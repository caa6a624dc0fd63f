// What a cine view paints: the frame, its words, the time line, the marks of a calibration.
#include "app/drawing/labels.h"
#include "app/views/cine_view.h"

#include "app/drawing/marks_drawing.h"
#include "app/format/evidence_words.h"
#include "core/cine/beat_position.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

constexpr double kSmallPicturePx = 300.0;
constexpr double kTimeLineMargin = 10.0;

/// The strip of a picture that has no calibrated regions, above and below, in which names are usually burned in.
constexpr double kNameStrip = 0.12;

QPointF picturePointOf(const Eigen::Vector2d& p) {
    return {p.x(), p.y()};
}

/// The time line grows with its letters.
double scrubberHeight() {
    return 26.0 * labelScale();
}

} // namespace

QRectF CineView::scrubberArea() const {
    return {0.0, height() - scrubberHeight(), static_cast<double>(width()), scrubberHeight()};
}

QRectF CineView::pictureArea() const {
    return QRectF(rect()).adjusted(0, 0, 0, m_player.count() > 1 ? -scrubberHeight() : 0);
}

QImage CineView::picture(const CineFrame& frame) {
    QImage image = frame.colour;
    if (frame.grey) {
        const auto& grey = *frame.grey;
        const auto shades = dicomio::shown(grey.values, data()->xray ? data()->xray->greyscale : dicomio::Greyscale{}, m_window);
        image = QImage(grey.columns, grey.rows, QImage::Format_Grayscale8);
        for (int y = 0; y < grey.rows; ++y)
            std::copy_n(shades.begin() + static_cast<std::ptrdiff_t>(y) * grey.columns, grey.columns, image.scanLine(y));
    }
    if (m_state.namesHidden()) hideNames(image);
    return image;
}

/// Names are burned in beside the calibrated regions; where an echo picture tells none, in the strips above and below.
void CineView::hideNames(QImage& image) const {
    if (data()->xray) return;
    QRegion outside(image.rect());
    for (const core::EchoRegion& region : data()->regions)
        outside -= QRect(QPoint(region.box.minX, region.box.minY), QPoint(region.box.maxX, region.box.maxY));
    if (data()->regions.empty()) {
        const int strip = static_cast<int>(std::lround(kNameStrip * image.height()));
        outside -= QRect(0, strip, image.width(), image.height() - 2 * strip);
    }
    QPainter painter(&image);
    for (const QRect& part : outside)
        painter.fillRect(part, Qt::black);
}

void CineView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::TextAntialiasing);
    painter.fillRect(rect(), tone::image);
    const QString why = problem();
    if (!data() || !why.isEmpty()) {
        painter.setFont(labelFont(13));
        painter.setPen(tone::onImageSoft);
        painter.drawText(rect().adjusted(16, 16, -16, -16), Qt::AlignCenter | Qt::TextWordWrap,
                         why.isEmpty() ? tr("Opening …") : why);
        return;
    }
    if (const CineFrame frame = m_cine->frame(m_player.frame()); !frame.isNull()) m_shown = picture(frame);
    const QTransform screen = screenFromPixel();
    painter.save();
    painter.setClipRect(pictureArea());
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(screen.mapRect(QRectF(-0.5, -0.5, data()->frames->columns(), data()->frames->rows())), m_shown);
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_overlay) m_overlay(painter, screen);
    m_layer->paint(painter, pictureArea());
    paintCalibration(painter, screen);
    painter.restore();
    paintWords(painter);
    if (m_player.count() > 1) paintScrubber(painter);
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush); // the time line left its own
        painter.setPen(QPen(tone::onImageSoft, 1));
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
}

void CineView::paintWords(QPainter& painter) {
    const QRectF area = pictureArea();
    const core::Evidence* evidence = content();
    QString title = evidence ? evidenceTitle(*evidence) : QString();
    if (data()->xray && static_cast<std::size_t>(m_player.frame()) < data()->xray->facts.frames.size())
        if (const auto& angles = data()->xray->facts.frames[static_cast<std::size_t>(m_player.frame())].angles)
            title = QString::fromStdString(core::words(*angles));
    drawTitle(painter, title, area);
    const bool scaled = hasScale(*data(), m_player.frame(), byHand());
    QString words = scaleText();
    // Beside other views there is room for the scale, not for where it comes from: that stands on the view alone.
    const qsizetype origin = words.contains(QLatin1Char('\n')) ? -1 : words.indexOf(QLatin1String(" ("));
    if (scaled && origin > 0 && area.height() < kSmallPicturePx)
        words.truncate(origin);
    if (m_state.namesHidden())
        words += QLatin1Char('\n') + (data()->xray ? tr("X-ray pictures are shown whole: look for burned-in names.")
                                                   : tr("Text outside the calibrated regions is blanked."));
    painter.setFont(labelFont(11));
    const QRectF box(area.left() + 6, area.top(), area.width() - 12, area.height() - 5);
    const QRectF needed = painter.boundingRect(box, Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap, words);
    painter.fillRect(needed.adjusted(-4, -2, 4, 3), QColor(0, 0, 0, 170));
    painter.setPen(scaled ? tone::onImageSoft : tone::onImageWarning);
    painter.drawText(box, Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap, words);
}

double CineView::frameX(int frame) const {
    const double left = kTimeLineMargin, right = width() - kTimeLineMargin;
    return left + (right - left) * frame / std::max(1, m_player.count() - 1);
}

void CineView::paintScrubber(QPainter& painter) {
    const QRectF area = scrubberArea();
    painter.fillRect(area, QColor(0x14, 0x18, 0x1C));
    painter.setRenderHint(QPainter::Antialiasing);
    const double scale = labelScale();
    const double line = area.bottom() - 7.0 * scale;
    painter.setPen(QPen(tone::onImageSoft, 1));
    painter.drawLine(QPointF(frameX(0), line), QPointF(frameX(m_player.count() - 1), line));
    // R waves, where the file tells them, between the frames that they fall between.
    const auto& times = m_player.times();
    for (const double r : times.rWaveMs) {
        if (times.startMs.size() < 2 || r < 0.0 || r > times.startMs.back()) continue;
        const auto next = std::lower_bound(times.startMs.begin(), times.startMs.end(), r);
        const auto frame = static_cast<int>(next - times.startMs.begin());
        const double x = frameX(frame);
        painter.setPen(QPen(tone::onImage, 1));
        painter.drawLine(QPointF(x, line - 5 * scale), QPointF(x, line + 2 * scale));
    }
    // Frames with drawings.
    painter.setBrush(colourOf(Role::Drawing));
    painter.setPen(Qt::NoPen);
    for (const auto& [id, entry] : m_session.record().drawings)
        if (const auto* site = std::get_if<core::PictureSite>(&entry.content.site);
            site && entry.content.evidence == m_evidence.toStdString())
            painter.drawEllipse(QPointF(frameX(site->frame), line), 2.5 * scale, 2.5 * scale);
    painter.setBrush(tone::onImage);
    const double x = frameX(m_player.frame());
    painter.drawPolygon(QPolygonF{{x, line - scale}, {x - 4 * scale, line + 6 * scale}, {x + 4 * scale, line + 6 * scale}});
    QStringList parts{tr("%1 of %2").arg(m_player.frame() + 1).arg(m_player.count())};
    if (const auto ms = times.betweenMs(0, m_player.frame())) parts << tr("%1 ms").arg(std::lround(*ms));
    if (const auto beat = core::beatPosition(times, m_player.frame()))
        parts << tr("%1 % of R-R").arg(static_cast<int>(100.0 * core::shareOfBeat(*beat)));
    if (m_player.speed() != 1.0) parts << tr("speed %1").arg(QString::number(m_player.speed(), 'g', 2));
    painter.setFont(labelFont(10));
    painter.setPen(tone::onImageSoft);
    const QString state = m_player.isPlaying() ? QStringLiteral("▶ ") : QString();
    painter.drawText(area.adjusted(kTimeLineMargin, 1, -kTimeLineMargin, -10 * scale), Qt::AlignLeft | Qt::AlignVCenter,
                     state + parts.join(QStringLiteral(" · ")));
}

void CineView::paintCalibration(QPainter& painter, const QTransform& screen) {
    if (!m_calibration) return;
    QPolygonF marks;
    for (const Eigen::Vector2d& p : m_calibration->points)
        marks << screen.map(picturePointOf(p));
    const QPen pen = penOf(Role::Drawing);
    if (marks.size() == 2) drawHaloLine(painter, marks[0], marks[1], pen);
    for (const QPointF& at : marks)
        drawMarker(painter, at, Role::Drawing, 1.0, 4.0);
    if (marks.size() == 2) return;
    QString words;
    switch (m_calibration->kind) {
    case Calibration::KnownLength:
        words = tr("Click both ends of a known length. Escape leaves.");
        break;
    case Calibration::CatheterWidth:
        words = tr("Click both edges of the catheter, square to it. Escape leaves.");
        break;
    case Calibration::CatheterShadow:
        words = tr("Click two places along the middle of a straight piece of the catheter. Escape leaves.");
        break;
    }
    drawLabel(painter, QPointF(pictureArea().left(), pictureArea().top() + 42), words, tone::onImageWarning, LabelSide::Right,
              pictureArea());
}

void CineView::scrubTo(double x) {
    const double share = (x - kTimeLineMargin) / std::max(1.0, width() - 2.0 * kTimeLineMargin);
    m_player.setFrame(static_cast<int>(std::lround(share * (m_player.count() - 1))));
}

} // namespace gauge::app
