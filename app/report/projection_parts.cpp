// Working projections: the views in a table, and where they stand among all views of the C-arm.
#include "app/document/answers.h"
#include "app/drawing/projection_drawing.h"
#include "app/format/evidence_words.h"
#include "app/format/projection_words.h"
#include "app/format/quantity.h"
#include "app/report/radiograph_picture.h"
#include "app/report/report_parts.h"
#include "core/record/projection_values.h"

#include <QCoreApplication>
#include <algorithm>

namespace gauge::app {
namespace {

using Weight = ReportParagraph::Weight;

constexpr QSize kDomeSize(520, 520), kCurveSize(820, 520);
constexpr double kPaperRatio = 2.0;

Role roleFor(std::string_view section) {
    return section == core::kOstiumSection ? Role::Ostium : Role::Landing;
}

QImage projectionImage(ProjectionForm form, const QSize& size, const ProjectionPicture& picture) {
    QImage image(size * kPaperRatio, QImage::Format_RGB32);
    image.setDevicePixelRatio(kPaperRatio);
    image.fill(tone::panel);
    QPainter painter(&image);
    drawProjection(painter, QRectF(QPointF(0, 0), QSizeF(size)), form, picture);
    return image;
}

ProjectionPicture pictureOf(const core::CaseRecord& record, const std::vector<core::RecordedView>& views) {
    ProjectionPicture picture;
    if (record.projection) picture.reach = record.projection->content.reach;
    for (const core::RecordedView& view : views) {
        if (view.aim == core::ViewAim::EnFace && !view.chosen)
            picture.lines.push_back({roleFor(view.section), core::beamDirection(view.angles), view.angles});
        if (view.chosen)
            picture.marks.push_back({ProjectionMark::Kind::Chosen, view.angles, QString::number(*view.chosen + 1), roleFor(view.section),
                                     core::isStale(record, record.projection->content.views[*view.chosen])});
    }
    return picture;
}

QString viewName(const core::CaseRecord& record, const core::RecordedView& view) {
    const QString aim = view.aim ? aimName(*view.aim) : QCoreApplication::translate("Report", "picked by hand");
    if (!view.chosen) return aim;
    const QString words = QCoreApplication::translate("Report", "%1 · %2").arg(QString::number(*view.chosen + 1), aim);
    const bool stale = core::isStale(record, record.projection->content.views[*view.chosen]);
    return stale ? QCoreApplication::translate("Report", "%1 (the plane has moved since)").arg(words) : words;
}

ReportTable viewTable(const core::CaseRecord& record, const std::vector<core::RecordedView>& views) {
    ReportTable table;
    table.header = {QCoreApplication::translate("Report", "View"), QCoreApplication::translate("Report", "Plane"),
                    QCoreApplication::translate("Report", "C-arm"), QCoreApplication::translate("Report", "Width by CT")};
    table.numeric = {3};
    const auto rows = [&](const QString& heading, bool chosen) {
        bool first = true;
        for (const core::RecordedView& view : views) {
            if (view.chosen.has_value() != chosen) continue;
            if (first) {
                table.headings.push_back(table.rows.size());
                table.rows.push_back({heading, {}, {}, {}});
                first = false;
            }
            table.rows.push_back({viewName(record, view), projectionSectionName(view.section), viewWords(view.angles),
                                  view.widthMm ? estimate(*view.widthMm, Unit::Millimetre) : QStringLiteral("–")});
        }
    };
    rows(QCoreApplication::translate("Report", "Chosen"), true);
    rows(QCoreApplication::translate("Report", "Named by the program"), false);
    return table;
}

QString conditions(const core::CaseRecord& record) {
    const core::ProjectionChoice choice = record.projection ? record.projection->content : core::ProjectionChoice{};
    QString text = QCoreApplication::translate("Report", "Within a reach of RAO %1, LAO %2, CRA %3, CAU %4.")
                       .arg(quantity(choice.reach.mostRaoDeg, Unit::Degree), quantity(choice.reach.mostLaoDeg, Unit::Degree),
                            quantity(choice.reach.mostCraDeg, Unit::Degree), quantity(choice.reach.mostCauDeg, Unit::Degree));
    // A case from before the position was recorded was planned by what its images tell.
    if (const std::string position = core::patientPosition(record); !position.empty())
        text += QLatin1Char(' ') + QCoreApplication::translate("Report", "At CT the patient lay: %1.").arg(lyingWords(position));
    if (choice.turn)
        text += QLatin1Char(' ') + QCoreApplication::translate("Report", "Turned against the CT by LAO %1, CRA %2, as stated.")
                                       .arg(quantity(choice.turn->primaryDeg, Unit::Degree), quantity(choice.turn->secondaryDeg, Unit::Degree));
    return text;
}

/// The view to be shown as a radiograph: the first chosen one whose plane still stands, else the first edge-on one of the landing zone.
const core::RecordedView* shownView(const core::CaseRecord& record, const std::vector<core::RecordedView>& views) {
    const auto found = std::find_if(views.begin(), views.end(), [&](const core::RecordedView& view) {
        return view.chosen && !core::isStale(record, record.projection->content.views[*view.chosen]);
    });
    if (found != views.end()) return &*found;
    const auto named = std::find_if(views.begin(), views.end(), [](const core::RecordedView& view) {
        return !view.chosen && view.aim && view.aim != core::ViewAim::EnFace && view.section == core::kLandingSection;
    });
    return named == views.end() ? nullptr : &*named;
}

} // namespace

ReportSection projectionPart(const CaseReportSource& source) {
    ReportSection section{QCoreApplication::translate("Report", "Working projections"), {}};
    const core::CaseRecord& record = source.record();
    const auto views = core::recordedViews(record);
    if (views.empty()) return section;
    section.blocks.push_back(viewTable(record, views));
    section.blocks.push_back(ReportParagraph{conditions(record), Weight::Soft});
    section.blocks.push_back(ReportParagraph{
        QCoreApplication::translate("Report", "Angles are predicted from CT: confirm each view on the screen before anything rests on it."), Weight::Warning});
    const ProjectionPicture picture = pictureOf(record, views);
    section.blocks.push_back(std::vector<ReportPicture>{
        {projectionImage(ProjectionForm::Dome, kDomeSize, picture), QCoreApplication::translate("Report", "Views of the C-arm, as its detector sees the patient from the front"), 0.38},
        {projectionImage(ProjectionForm::Curve, kCurveSize, picture), QCoreApplication::translate("Report", "Edge-on views by their angles"), 0.58}});
    if (const core::RecordedView* shown = shownView(record, views))
        if (auto radiograph = radiographPicture(source, shown->angles))
            section.blocks.push_back(std::vector<ReportPicture>{std::move(*radiograph)});
    return section;
}

} // namespace gauge::app
