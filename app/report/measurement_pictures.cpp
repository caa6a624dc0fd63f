#include "app/report/measurement_pictures.h"

#include "app/drawing/cross_section_drawing.h"
#include "app/drawing/depth_strip_drawing.h"
#include "app/drawing/labels.h"
#include "app/drawing/marks_drawing.h"
#include "app/drawing/seat_drawing.h"
#include "app/drawing/scanner_section_drawing.h"
#include "app/format/quantity.h"
#include "app/format/words.h"
#include "app/report/graphics_session.h"

#include <QCoreApplication>
#include <QImage>
#include <cmath>

namespace gauge::app {
namespace {

using core::ErrorCode;
using core::failure;
using Files = std::vector<std::filesystem::path>;

constexpr int kTitlePx = 34;

core::Result<void> makeFolder(const std::filesystem::path& folder) {
    std::error_code code;
    std::filesystem::create_directories(folder, code);
    if (code || !std::filesystem::is_directory(folder))
        return failure(ErrorCode::OutputUnwritable,
                       "Cannot make the folder " + folder.string() +
                           " for the pictures: " + (code ? code.message() : "a file of that name is there") +
                           ". Choose another folder.");
    return {};
}

core::Result<void> save(const QImage& image, const std::filesystem::path& file, Files& written) {
    if (!image.save(QString::fromStdString(file.string()), "PNG"))
        return failure(ErrorCode::OutputUnwritable,
                       "Cannot write the picture " + file.string() +
                           ". Check that the folder can be written to and has room.");
    written.push_back(file);
    return {};
}

constexpr double kPaperShrink = 0.6, kPaperDots = 3.0; // 1200 px wide on screen; 720 wide, with 2160 dots, on paper

/// A canvas with a title line above the picture area; on paper the area fills it.
struct Canvas {
    QImage image;
    QRectF area; ///< in the painter's coordinates
    double dots = 1.0;

    /// @param height  with the title line.
    Canvas(int width, int height, const QString& title, PictureUse use) {
        const bool paper = use == PictureUse::Paper;
        dots = paper ? kPaperDots : 1.0;
        const QSizeF size = paper ? kPaperShrink * QSizeF(width, height - kTitlePx) : QSizeF(width, height);
        image = QImage((dots * size).toSize(), QImage::Format_RGB32);
        image.setDevicePixelRatio(dots);
        image.fill(tone::panel);
        area = QRectF(QPointF(0, 0), size).adjusted(0, paper ? 0 : kTitlePx, 0, 0);
        if (paper) return;
        QPainter painter(&image);
        painter.setFont(labelFont(14, true));
        painter.setPen(tone::text);
        painter.drawText(QRectF(12, 0, width - 24, kTitlePx), Qt::AlignVCenter | Qt::AlignLeft, title);
    }
};

double endOfShownAxis(const core::AppendageMeasurement& m) {
    return std::max(m.axis.lengthMm, 5.0);
}

DepthScale fittingScale(const core::AppendageMeasurement& m, const QRectF& area) {
    constexpr double kBeforeMm = 22.0, kBeyondMm = 14.0;
    DepthScale scale;
    scale.pixelsPerMm = area.width() / (kBeforeMm + endOfShownAxis(m) + kBeyondMm);
    scale.zeroX = area.left() + kBeforeMm * scale.pixelsPerMm;
    return scale;
}

QImage longSectionPicture(const core::Volume& volume, const core::AppendageMeasurement& m, const QString& title,
                          PictureUse use, const core::Seat* seat) {
    Canvas canvas(1200, 760, title, use);
    const DepthScale scale = fittingScale(m, canvas.area);
    SectionMap map;
    map.frame = longSectionFrame(m, 0.0);
    map.pixelsPerMm = scale.pixelsPerMm;
    const Eigen::Vector2d tip = map.frame.sectionFromPatient(core::axisPointAt(m, m.axis.lengthMm));
    map.zero = {scale.zeroX, canvas.area.center().y() - 0.5 * tip.y() * scale.pixelsPerMm};
    QPainter painter(&canvas.image);
    painter.drawImage(canvas.area.topLeft(), cutGrey(volume, map, canvas.area, {}, canvas.dots));
    LongSectionScene scene;
    scene.measurement = &m;
    scene.seat = seat;
    for (const auto& landing : m.landingZones)
        scene.landings.push_back(&landing);
    drawLongSection(painter, canvas.area, map, scene);
    return canvas.image;
}

QImage sectionPicture(const core::Volume& volume, const core::Section& section, Role role,
                      const QString& title, PictureUse use, const core::Seat* seat = nullptr) {
    Canvas canvas(760, 760 + kTitlePx, title, use);
    const SectionMap map = crossSectionMap(section, canvas.area, fittingHalfWidthMm(section));
    QPainter painter(&canvas.image);
    painter.drawImage(canvas.area.topLeft(), cutGrey(volume, map, canvas.area, {}, canvas.dots));
    const LabelPlaces places = drawCrossSection(painter, canvas.area, map, section, role, CrossSectionLabels::Key);
    if (seat && seat->seated) drawSeatLabel(painter, drawSeat(painter, map, *seat->seated), seatLabel(*seat), canvas.area, places);
    return canvas.image;
}

QImage stripPicture(const core::AppendageMeasurement& m, const QString& title, PictureUse use) {
    Canvas canvas(1200, 400, title, use);
    DepthStripScene scene;
    scene.measurement = &m;
    for (const auto& landing : m.landingZones)
        if (landing.kind == core::LandingKind::Axis) scene.landingsMm.push_back(landing.depthMm);
    QPainter painter(&canvas.image);
    drawDepthStrip(painter, canvas.area, fittingScale(m, canvas.area), scene);
    return canvas.image;
}

QString landingTitle(const core::LandingZone& landing) {
    const QString width = estimate(landing.section.metrics.perimeterDerivedDiameterMm, Unit::Millimetre);
    const QString depth = quantity(landing.depthMm, Unit::Millimetre);
    if (landing.tiltDeg)
        return QCoreApplication::translate("Pictures", "Landing zone, %1 beyond the ostium, tilted %2 by hand: perimeter-derived %3")
            .arg(depth, quantity(*landing.tiltDeg, Unit::Degree), width);
    return landing.kind == core::LandingKind::Plug
               ? QCoreApplication::translate("Pictures", "Landing zone, %1 beyond the ridge, oblique: perimeter-derived %2").arg(depth, width)
               : QCoreApplication::translate("Pictures", "Landing zone, %1 beyond the ostium: perimeter-derived %2").arg(depth, width);
}

QString ostiumTitle(const core::Ostium& ostium) {
    const QString width = estimate(ostium.section.metrics.perimeterDerivedDiameterMm, Unit::Millimetre);
    return ostium.proposed ? QCoreApplication::translate("Pictures", "Ostium, proposed: perimeter-derived %1").arg(width)
                           : QCoreApplication::translate("Pictures", "Ostium: perimeter-derived %1").arg(width);
}

std::vector<PlacedMark> placed(const core::AppendageMarks& marks) {
    std::vector<PlacedMark> all{{Role::Atrium, marks.atrium}, {Role::Tip, marks.tip}};
    if (marks.circumflex) all.push_back({Role::Circumflex, *marks.circumflex});
    if (marks.ridge) all.push_back({Role::Ridge, *marks.ridge});
    if (marks.aorta) all.push_back({Role::Aorta, *marks.aorta});
    return all;
}

const char* fileName(Role role) {
    switch (role) {
    case Role::Tip:
        return "tip.png";
    case Role::Circumflex:
        return "circumflex.png";
    case Role::Ridge:
        return "ridge.png";
    case Role::Aorta:
        return "aorta.png";
    default:
        return "atrium.png";
    }
}

QImage seedPicture(const core::Volume& volume, const PlacedMark& mark, const std::vector<PlacedMark>& all,
                   const QString& reason) {
    constexpr int kSide = 480, kReasonPx = 64;
    constexpr double kHalfWidthMm = 45.0;
    const int reasonPx = reason.isEmpty() ? 0 : kReasonPx;
    Canvas canvas(3 * kSide, kSide + kTitlePx + reasonPx,
                  QCoreApplication::translate("Pictures", "Mark: %1 (%2)").arg(wordOf(mark.role), placeWords(mark.point)),
                  PictureUse::Screen);
    QPainter painter(&canvas.image);
    int column = 0;
    for (const ScannerAxis axis : {ScannerAxis::Axial, ScannerAxis::Coronal, ScannerAxis::Sagittal}) {
        const QRectF area(kSide * column++, kTitlePx, kSide, kSide);
        const SectionMap map{scannerFrame(axis, mark.point), area.center(), 0.5 * kSide / kHalfWidthMm};
        painter.save();
        painter.setClipRect(area);
        painter.drawImage(area.topLeft(), cutGrey(volume, map, area, {}));
        const std::vector<Label> words = drawPlacedMarks(painter, area, map, all);
        LabelPlaces places;
        places.keepFree(drawTitle(painter, wordOf(axis), area));
        for (const QRectF& letters : drawOrientation(painter, area, map.frame, titlePlate(wordOf(axis), area)))
            places.keepFree(letters);
        places.keepFree(drawScaleBar(painter, area, map.pixelsPerMm));
        for (const Label& label : words)
            places.draw(painter, label, area);
        painter.setPen(tone::border);
        painter.drawRect(area.adjusted(0, 0, -1, -1));
        painter.restore();
    }
    painter.setFont(labelFont(13));
    painter.setPen(tone::warning);
    painter.drawText(QRectF(12, kTitlePx + kSide, 3 * kSide - 24, reasonPx),
                     Qt::AlignVCenter | Qt::TextWordWrap, reason);
    return canvas.image;
}

} // namespace

std::vector<MeasurementPicture> measurementPictures(const core::Volume& volume, const core::AppendageMeasurement& m,
                                                    PictureUse use, const core::Seat* seat) {
    std::vector<MeasurementPicture> all;
    const auto add = [&](std::string name, const QString& words, const auto& paint) {
        all.push_back({std::move(name), words, paint(words)});
    };
    add("long-section", QCoreApplication::translate("Pictures", "Long section through the axis of the appendage"),
        [&](const QString& t) { return longSectionPicture(volume, m, t, use, seat); });
    add("ostium", ostiumTitle(m.ostium),
        [&](const QString& t) { return sectionPicture(volume, m.ostium.section, Role::Ostium, t, use); });
    int number = 1;
    for (const auto& landing : m.landingZones) {
        std::string name = "landing-zone";
        if (number > 1) name.append("-").append(std::to_string(number));
        add(std::move(name), landingTitle(landing),
            [&](const QString& t) { return sectionPicture(volume, landing.section, Role::Landing, t, use, seat); });
        ++number;
    }
    add("depth-strip", QCoreApplication::translate("Pictures", "Depth strip"), [&](const QString& t) { return stripPicture(m, t, use); });
    return all;
}

core::Result<Files> writePictures(const core::Volume& volume, const core::AppendageMeasurement& m,
                                  const std::filesystem::path& folder) {
    const GraphicsSession graphics;
    if (auto made = makeFolder(folder); !made) return tl::unexpected(made.error());
    Files written;
    for (const auto& picture : measurementPictures(volume, m, PictureUse::Screen))
        if (auto saved = save(picture.image, folder / (picture.name + ".png"), written); !saved)
            return tl::unexpected(saved.error());
    return written;
}

core::Result<Files> writeSeedPictures(const core::Volume& volume, const core::AppendageMarks& marks,
                                      const std::filesystem::path& folder, const std::string& reason) {
    const GraphicsSession graphics;
    if (auto made = makeFolder(folder); !made) return tl::unexpected(made.error());
    Files written;
    const std::vector<PlacedMark> all = placed(marks);
    for (const auto& mark : all) {
        const QImage image = seedPicture(volume, mark, all, QString::fromStdString(reason));
        if (auto saved = save(image, folder / fileName(mark.role), written); !saved)
            return tl::unexpected(saved.error());
    }
    return written;
}

} // namespace gauge::app
