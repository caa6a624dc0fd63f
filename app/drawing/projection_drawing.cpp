#include "app/drawing/projection_drawing.h"

#include "app/drawing/labels.h"
#include "app/format/quantity.h"
#include "core/fluoro/view_planning.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

using core::CArmAngles;

constexpr int kGridDeg = 30;
constexpr double kFaint = 0.45;

struct ProjectionDrawingWords {
    Q_DECLARE_TR_FUNCTIONS(Projection)
};

QString sideWords(double deg, const QString& positive, const QString& negative) {
    const long whole = std::lround(std::abs(deg));
    return QStringLiteral("%1\u00a0%2").arg(deg < 0.0 && whole != 0 ? negative : positive, quantity(static_cast<double>(whole), Unit::Degree));
}

class ProjectionPainting {
public:
    ProjectionPainting(QPainter& painter, const QRectF& area, ProjectionForm form, const ProjectionPicture& picture)
        : m_painter(painter), m_area(area), m_map(form, area), m_picture(picture) {}

    void paintPointers() {
        m_painter.save();
        m_painter.setRenderHint(QPainter::Antialiasing);
        paintArm();
        paintPointer();
        m_painter.restore();
    }

    void paintStill() {
        m_painter.save();
        m_painter.setRenderHint(QPainter::Antialiasing);
        m_painter.fillRect(m_area, tone::panel);
        paintGround();
        const QPolygonF reach = reachBorder();
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(tone::raised);
        m_painter.drawPolygon(reach);
        m_painter.setBrush(Qt::NoBrush);
        paintGrid();
        m_painter.setPen(QPen(tone::soft, 1.2));
        m_painter.drawPolygon(reach);
        for (const ProjectionLine& line : m_picture.lines)
            paintLine(line);
        for (const ProjectionLine& line : m_picture.lines)
            paintEnFace(line);
        for (const ProjectionMark& mark : m_picture.marks)
            paintMark(mark);
        m_painter.restore();
    }

    /// Over every line and sign, none over another.
    void paintWords() {
        m_painter.save();
        m_painter.setRenderHint(QPainter::Antialiasing);
        for (const ProjectionLine& line : m_picture.lines)
            if (const auto place = m_map.placeOf(line.enFace)) m_labels.keepFree(around(*place, kEnFaceReach));
        for (const ProjectionMark& mark : m_picture.marks)
            if (const auto place = m_map.placeOf(mark.angles)) m_labels.keepFree(around(*place, reachOf(mark)));
        paintLetters();
        for (const ProjectionLine& line : m_picture.lines)
            if (const auto place = m_map.placeOf(line.enFace)) labelOfSign(*place, ProjectionDrawingWords::tr("en face"), colourOf(line.role, Ground::Page));
        for (const bool chosen : {true, false}) // room for what was chosen first
            for (const ProjectionMark& mark : m_picture.marks)
                if (const auto place = m_map.placeOf(mark.angles); place && (mark.kind == ProjectionMark::Kind::Chosen) == chosen)
                    labelOfSign(*place, mark.label, colourOfMark(mark));
        paintLineLabels();
        m_painter.restore();
    }

private:
    static constexpr double kEnFaceReach = 6.0; // pixels from the middle of the sign to its edge

    static double reachOf(const ProjectionMark& mark) { return mark.kind == ProjectionMark::Kind::Chosen ? 6.5 : 5.0; }
    static QColor colourOfMark(const ProjectionMark& mark) {
        return mark.kind == ProjectionMark::Kind::Fluoroscopy ? tone::text : colourOf(mark.role, Ground::Page);
    }

    bool isDome() const { return m_map.form() == ProjectionForm::Dome; }

    void paintGround() {
        m_painter.setPen(QPen(tone::border, 1.5));
        m_painter.setBrush(tone::window);
        isDome() ? m_painter.drawEllipse(m_map.plot()) : m_painter.drawRect(m_map.plot());
    }

    /// The part of a line of views that can be shown, as pieces.
    std::vector<QPolygonF> piecesOf(const std::vector<CArmAngles>& views) const {
        std::vector<QPolygonF> pieces;
        bool going = false;
        for (const CArmAngles& view : views) {
            const auto place = m_map.placeOf(view);
            // Where the primary angle jumps from one side to the other the line starts anew.
            const bool jumps = place && going && !isDome() && std::abs(place->x() - pieces.back().back().x()) > 0.3 * m_map.plot().width();
            if (place && (!going || jumps)) pieces.emplace_back();
            if (place) pieces.back() << *place;
            going = place.has_value();
        }
        return pieces;
    }

    void drawPieces(const std::vector<CArmAngles>& views) {
        for (const QPolygonF& piece : piecesOf(views))
            m_painter.drawPolyline(piece);
    }

    std::vector<CArmAngles> parallel(double secondary, double from, double to) const {
        std::vector<CArmAngles> views;
        for (int i = 0; i <= 60; ++i)
            views.push_back({from + (to - from) * i / 60, secondary});
        return views;
    }
    std::vector<CArmAngles> meridian(double primary, double from, double to) const {
        std::vector<CArmAngles> views;
        for (int i = 0; i <= 60; ++i)
            views.push_back({primary, from + (to - from) * i / 60});
        return views;
    }

    QPolygonF reachBorder() const {
        const core::CArmReach& r = m_picture.reach;
        const double left = -std::min(r.mostRaoDeg, 90.0), right = std::min(r.mostLaoDeg, 90.0);
        const double most = isDome() ? 90.0 : ProjectionMap::kMostSecondaryDeg;
        const double low = -std::min(r.mostCauDeg, most), high = std::min(r.mostCraDeg, most);
        QPolygonF border;
        for (const auto& side : {parallel(low, left, right), meridian(right, low, high), parallel(high, right, left), meridian(left, high, low)})
            for (const CArmAngles& view : side)
                if (const auto place = m_map.placeOf(view)) border << *place;
        return border;
    }

    void paintGrid() {
        m_painter.setPen(QPen(tone::border, 1, Qt::DotLine));
        for (int deg = -90 + kGridDeg; deg < 90; deg += kGridDeg) {
            drawPieces(meridian(deg, -90, 90));
            if (isDome() || std::abs(deg) < ProjectionMap::kMostSecondaryDeg) drawPieces(parallel(deg, -90, 90));
        }
    }

    void paintLine(const ProjectionLine& line) {
        QPen pen = penOf(line.role, 2.2, Ground::Page);
        QPen beyond = penOf(line.role, 1.2, Ground::Page);
        QColor faint = beyond.color();
        faint.setAlphaF(static_cast<float>(kFaint));
        beyond.setColor(faint);
        m_painter.setPen(beyond);
        auto whole = core::edgeOnCurve(line.normal, 720);
        whole.push_back(whole.front());
        // Either end of a line of sight: the half with the detector before the patient.
        drawPieces(whole);
        m_painter.setPen(pen);
        for (const auto& part : core::edgeOnWithin(line.normal, m_picture.reach))
            drawPieces(part);
    }

    void paintEnFace(const ProjectionLine& line) {
        const auto place = m_map.placeOf(line.enFace);
        if (!place) return;
        const QColor colour = colourOf(line.role, Ground::Page);
        m_painter.setPen(QPen(colour, 1.8));
        m_painter.setBrush(tone::panel);
        // In the shape of its role: square for the ostium, round for the landing zone; a point in the middle: seen from the front.
        const QRectF box = around(*place, kEnFaceReach);
        line.role == Role::Ostium ? m_painter.drawRect(box) : m_painter.drawEllipse(box);
        m_painter.setBrush(colour);
        m_painter.drawEllipse(*place, 1.8, 1.8);
    }

    void paintMark(const ProjectionMark& mark) {
        const auto place = m_map.placeOf(mark.angles);
        if (!place) return;
        const QColor colour = colourOfMark(mark);
        m_painter.setPen(QPen(colour, 1.8));
        m_painter.setBrush(mark.kind == ProjectionMark::Kind::Chosen && !mark.isStale ? QBrush(colour) : QBrush(tone::panel));
        const double r = reachOf(mark);
        if (mark.kind == ProjectionMark::Kind::Fluoroscopy) {
            m_painter.drawLine(*place - QPointF(r + 2, 0), *place + QPointF(r + 2, 0));
            m_painter.drawLine(*place - QPointF(0, r + 2), *place + QPointF(0, r + 2));
            m_painter.setBrush(Qt::NoBrush);
            m_painter.drawEllipse(*place, r, r);
        } else {
            m_painter.drawPolygon(QPolygonF{*place - QPointF(0, r), *place + QPointF(r, 0), *place + QPointF(0, r), *place - QPointF(r, 0)});
        }
    }

    /// The word of each line, where it crosses the border of the reach or, out of reach, anywhere.
    void paintLineLabels() {
        for (const ProjectionLine& line : m_picture.lines) {
            std::vector<QPolygonF> pieces;
            for (const auto& part : core::edgeOnWithin(line.normal, m_picture.reach))
                for (const QPolygonF& piece : piecesOf(part))
                    pieces.push_back(piece);
            if (pieces.empty()) pieces = piecesOf(core::edgeOnCurve(line.normal, 360));
            bool written = false;
            for (const QPolygonF& piece : pieces)
                for (const double along : {0.0, 1.0, 0.85, 0.15, 0.5, 0.3, 0.7})
                    if (!written && piece.size() > 1)
                        written = label(piece[static_cast<qsizetype>(along * static_cast<double>(piece.size() - 1))], wordOf(line.role),
                                        colourOf(line.role, Ground::Page));
        }
    }

    /// Beside it, else farther up or down.
    void labelOfSign(const QPointF& at, const QString& text, const QColor& colour) {
        using enum LabelSide;
        if (!text.isEmpty()) m_labels.draw(m_painter, {text, colour, {{at, {Right, Left, Above, Below}}}, kSmallestLabelPx, plate()}, m_area.adjusted(2, 2, -2, -2));
    }

    bool label(const QPointF& at, const QString& text, const QColor& colour) {
        return !text.isEmpty() && m_labels.draw(m_painter, at, text, colour, {LabelSide::Right, LabelSide::Left, LabelSide::Above, LabelSide::Below},
                      m_area.adjusted(2, 2, -2, -2), kSmallestLabelPx, plate());
    }
    QColor plate() const {
        QColor plate = tone::panel;
        plate.setAlpha(215);
        return plate;
    }

    void paintLetters() {
        m_painter.setFont(labelFont(kSmallestLabelPx));
        m_painter.setPen(tone::soft);
        const QRectF p = m_map.plot();
        const QFontMetricsF metrics(m_painter.font());
        const double h = metrics.height();
        const auto put = [&](const QPointF& centre, const QString& text) {
            QRectF box(0, 0, metrics.horizontalAdvance(text) + 4, h);
            box.moveCenter(centre);
            box.moveLeft(std::clamp(box.left(), m_area.left() + 1, std::max(m_area.left() + 1, m_area.right() - box.width() - 1)));
            for (const QRectF& taken : m_labels.taken()) // where there is little room the ends come first
                if (taken.intersects(box)) return;
            m_painter.fillRect(box, plate());
            m_painter.drawText(box, Qt::AlignCenter | Qt::TextDontClip, text);
            m_labels.keepFree(box);
        };
        if (isDome()) {
            put({p.center().x(), p.top() - 0.6 * h}, ProjectionDrawingWords::tr("CRA"));
            put({p.center().x(), p.bottom() + 0.6 * h}, ProjectionDrawingWords::tr("CAU"));
            const double w = metrics.horizontalAdvance(ProjectionDrawingWords::tr("RAO"));
            put({p.left() - 0.7 * w, p.center().y()}, ProjectionDrawingWords::tr("RAO"));
            put({p.right() + 0.7 * w, p.center().y()}, ProjectionDrawingWords::tr("LAO"));
        }
        for (const int deg : {-2 * kGridDeg, 2 * kGridDeg, 0, -kGridDeg, kGridDeg}) {
            const QString text = quantity(std::abs(deg), Unit::Degree);
            if (isDome()) {
                if (deg == 0) continue;
                if (const auto at = m_map.placeOf({static_cast<double>(deg), 0})) put(*at + QPointF(0, 0.6 * h), text);
                if (const auto at = m_map.placeOf({0, static_cast<double>(deg)})) put(*at + QPointF(0, 0.6 * h), text);
            } else {
                if (const auto at = m_map.placeOf({static_cast<double>(deg), -ProjectionMap::kMostSecondaryDeg}))
                    put({at->x(), p.bottom() + 0.6 * h}, deg == 0 ? text : sideWords(deg, ProjectionDrawingWords::tr("LAO"), ProjectionDrawingWords::tr("RAO")));
                if (const auto at = m_map.placeOf({-ProjectionMap::kMostPrimaryDeg, static_cast<double>(deg)})) {
                    const QString words = deg == 0 ? text : sideWords(deg, ProjectionDrawingWords::tr("CRA"), ProjectionDrawingWords::tr("CAU"));
                    put({p.left() - 0.5 * metrics.horizontalAdvance(words) - 6, at->y()}, words);
                }
            }
        }
    }

    /// A double ring, open in the middle: what lies under it stays to be seen.
    void paintArm() {
        const auto place = m_picture.arm ? m_map.placeOf(*m_picture.arm) : std::nullopt;
        if (!place) return;
        m_painter.setBrush(Qt::NoBrush);
        for (const auto& [colour, width] : {std::pair(tone::panel, 4.0), std::pair(tone::link, 1.8)}) {
            m_painter.setPen(QPen(colour, width));
            m_painter.drawEllipse(*place, 9.0, 9.0);
            m_painter.drawEllipse(*place, 13.0, 13.0);
        }
    }

    void paintPointer() {
        if (!m_picture.pointer) return;
        const auto place = m_map.placeOf(*m_picture.pointer);
        if (!place) return;
        for (const auto& [colour, width] : {std::pair(tone::panel, 4.0), std::pair(tone::text, 1.6)}) {
            m_painter.setPen(QPen(colour, width));
            for (const QPointF& arm : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)})
                m_painter.drawLine(*place + 4.0 * arm, *place + 12.0 * arm);
        }
    }

    QPainter& m_painter;
    QRectF m_area;
    ProjectionMap m_map;
    const ProjectionPicture& m_picture;
    LabelPlaces m_labels;
};

} // namespace

ProjectionMap::ProjectionMap(ProjectionForm form, const QRectF& area) : m_form(form) {
    const QFontMetricsF metrics(labelFont(kSmallestLabelPx));
    const double line = 1.3 * metrics.height();
    if (form == ProjectionForm::Dome) {
        const double side = std::max(20.0, std::min(area.width() - 2.0 * metrics.horizontalAdvance(QStringLiteral("RAO  ")), area.height() - 2.0 * line));
        m_plot = QRectF(0, 0, side, side);
        m_plot.moveCenter(area.center());
        return;
    }
    const double left = metrics.horizontalAdvance(QStringLiteral("CRA 60°")) + 14;
    m_plot = area.adjusted(left, 0.6 * line, -0.5 * metrics.horizontalAdvance(QStringLiteral("LAO 60°")), -line - 4);
    // A degree is as long in both directions, as far as there is room.
    const double perDeg = std::min(m_plot.width() / (2 * kMostPrimaryDeg), m_plot.height() / (2 * kMostSecondaryDeg));
    const QSizeF size(2 * kMostPrimaryDeg * std::max(perDeg, 0.2), 2 * kMostSecondaryDeg * std::max(perDeg, 0.2));
    m_plot = QRectF(QPointF(m_plot.center().x() - 0.5 * size.width(), m_plot.top()), size);
}

std::optional<QPointF> ProjectionMap::placeOf(const CArmAngles& view) const {
    if (m_form == ProjectionForm::Dome) {
        const Eigen::Vector3d d = core::beamDirection(view).mm;
        constexpr double kRim = 1e-9;
        if (d.y() > kRim) return std::nullopt; // the detector would be behind the patient
        return m_plot.center() + 0.5 * m_plot.width() * QPointF(d.x(), -d.z());
    }
    if (std::abs(view.primaryDeg) > kMostPrimaryDeg || std::abs(view.secondaryDeg) > kMostSecondaryDeg) return std::nullopt;
    return QPointF(m_plot.center().x() + 0.5 * m_plot.width() * view.primaryDeg / kMostPrimaryDeg,
                   m_plot.center().y() - 0.5 * m_plot.height() * view.secondaryDeg / kMostSecondaryDeg);
}

std::optional<CArmAngles> ProjectionMap::viewAt(const QPointF& place) const {
    const QPointF at = place - m_plot.center();
    if (m_form == ProjectionForm::Dome) {
        const double x = at.x() / (0.5 * m_plot.width()), z = -at.y() / (0.5 * m_plot.width());
        const double rest = 1.0 - x * x - z * z;
        if (rest < 0.0) return std::nullopt;
        return core::anglesOf({{x, -std::sqrt(rest), z}});
    }
    const CArmAngles view{kMostPrimaryDeg * at.x() / (0.5 * m_plot.width()), -kMostSecondaryDeg * at.y() / (0.5 * m_plot.height())};
    if (std::abs(view.primaryDeg) > kMostPrimaryDeg || std::abs(view.secondaryDeg) > kMostSecondaryDeg) return std::nullopt;
    return view;
}

void drawProjection(QPainter& painter, const QRectF& area, ProjectionForm form, const ProjectionPicture& picture) {
    drawProjectionGround(painter, area, form, picture);
    drawProjectionPointers(painter, area, form, picture);
    drawProjectionWords(painter, area, form, picture);
}

void drawProjectionGround(QPainter& painter, const QRectF& area, ProjectionForm form, const ProjectionPicture& picture) {
    ProjectionPainting(painter, area, form, picture).paintStill();
}

void drawProjectionPointers(QPainter& painter, const QRectF& area, ProjectionForm form, const ProjectionPicture& picture) {
    ProjectionPainting(painter, area, form, picture).paintPointers();
}

void drawProjectionWords(QPainter& painter, const QRectF& area, ProjectionForm form, const ProjectionPicture& picture) {
    ProjectionPainting(painter, area, form, picture).paintWords();
}

QString viewWords(const CArmAngles& view) {
    return ProjectionDrawingWords::tr("%1, %2").arg(
        sideWords(view.primaryDeg, ProjectionDrawingWords::tr("LAO"), ProjectionDrawingWords::tr("RAO")),
        sideWords(view.secondaryDeg, ProjectionDrawingWords::tr("CRA"), ProjectionDrawingWords::tr("CAU")));
}

} // namespace gauge::app
