// The septal crossing: the answer, the chosen place with its values and their datum, the face with its map.
#include "app/drawing/septum_drawing.h"
#include "app/drawing/sheath_drawing.h"
#include "app/format/core_sentences.h"
#include "app/format/evaluated.h"
#include "app/format/terms.h"
#include "app/report/report_parts.h"
#include "core/record/septum_values.h"

#include <QCoreApplication>
#include <QGuiApplication>

namespace gauge::app {
namespace {

ReportTable crossingTable(const core::CaseRecord& record) {
    ReportTable table;
    table.header = {QCoreApplication::translate("Report", "Septal crossing"), QCoreApplication::translate("Report", "Value"),
                    QCoreApplication::translate("Report", "How")};
    table.numeric = {1};
    for (const core::RecordedValue& value : record.values) {
        if (value.group != core::kSeptumValues) continue;
        const QString stale = core::isStale(record, value) ? QCoreApplication::translate("Report", " (stale)") : QString();
        table.rows.push_back({metricName(value.id), evaluated(value.estimate, unitOf(value.unit)) + stale, coreWords(value.estimate.method)});
    }
    return table;
}

ReportPicture facePicture(const SeptumState& state) {
    constexpr QSize kSize(700, 620);
    constexpr double kDots = 2.0;
    QImage picture((QSizeF(kSize) * kDots).toSize(), QImage::Format_RGB32);
    picture.setDevicePixelRatio(kDots);
    picture.fill(tone::panel);
    QPainter painter(&picture);
    drawSeptalFace(painter, QRectF(QPointF(0, 0), QSizeF(kSize)), state, {});
    painter.end();
    return {picture, QCoreApplication::translate("Report", "Septal face seen from the left atrium. %1").arg(faceLegend(state)), 0.7};
}

/// The way of the sheath on CT, in the plane of crossing, ostium and axis.
std::optional<ReportPicture> sheathPicture(const CaseReportSource& source, const SeptumState& state) {
    constexpr QSize kSize(900, 480);
    constexpr double kDots = 2.0;
    const QRectF area(QPointF(0, 0), QSizeF(kSize));
    const Eigen::Vector2d place = shownPlace(state);
    const auto map = sheathSection(state, place, area);
    if (!map) return std::nullopt;
    QImage picture((QSizeF(kSize) * kDots).toSize(), QImage::Format_RGB32);
    picture.setDevicePixelRatio(kDots);
    picture.fill(tone::image);
    QPainter painter(&picture);
    if (const core::Volume* volume = source.volume.get()) painter.drawImage(area, cutGrey(*volume, *map, area, {}, kDots));
    drawSheath(painter, area, *map, state, place, source.answers->measurement());
    painter.end();
    return ReportPicture{picture,
                         QCoreApplication::translate("Report", "From the crossing to the ostium: the straight line and, where a steerable sheath "
                                                               "can make the way, its bend, on CT in the plane of crossing, ostium and axis."),
                         0.8};
}

} // namespace

ReportSection septumPart(const CaseReportSource& source) {
    ReportSection section{QCoreApplication::translate("Report", "Septal crossing"), {}};
    const core::CaseRecord& record = source.record();
    const SeptumState state = septumState(record, source.answers->measurement());
    if (state.isEmpty()) return section;
    if (!state.scene) {
        section.blocks.push_back(ReportParagraph{sentence(state.scene.error().message), ReportParagraph::Weight::Warning});
        return section;
    }
    if (state.answer) {
        section.blocks.push_back(ReportParagraph{sentence(state.answer->sentence), ReportParagraph::Weight::Lead});
        QStringList notices;
        for (const core::Notice& notice : state.answer->notices)
            notices << sentence(notice);
        if (!notices.isEmpty()) section.blocks.push_back(ReportList{notices});
    }
    if (state.problem) section.blocks.push_back(ReportParagraph{sentence(state.problem->message), ReportParagraph::Weight::Warning});
    if (state.crossing)
        section.blocks.push_back(ReportParagraph{sentence(core::describeCrossing(*state.scene, *state.crossing, state.plan.limits))});
    if (ReportTable table = crossingTable(record); !table.rows.empty()) section.blocks.push_back(std::move(table));
    if (qobject_cast<QGuiApplication*>(QCoreApplication::instance())) {
        section.blocks.push_back(std::vector<ReportPicture>{facePicture(state)});
        if (auto sheath = sheathPicture(source, state)) section.blocks.push_back(std::vector<ReportPicture>{std::move(*sheath)});
    }
    return section;
}

} // namespace gauge::app
