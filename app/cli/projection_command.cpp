#include "app/cli/command_line.h"
#include "app/cli/copied_case.h"
#include "app/cli/projection_arguments.h"
#include "app/cli/projection_report.h"
#include "app/report/graphics_session.h"
#include "core/anatomy/appendage_surface.h"

#include <QFileInfo>
#include <QSaveFile>
#include <ostream>

namespace gauge::app {
namespace {

constexpr auto kHelp = R"(
Angles of the C-arm for a plane: all views that see it edge-on, the view en face, and of a case the working views of
landing zone and ostium within the reach of the arm. LAO and cranial are positive, RAO and caudal negative.

  --normal NX,NY,NZ       normal of the plane in patient coordinates (LPS), of any length
  CASE                    a case file (.case.json): its landing zone and ostium. Its images are looked for where the case
                          remembers them and beside it; without them the directions are those that the case recorded
  --images FOLDER         where the images of the case are
  --offset LAO[,CRA]      the patient will lie turned against the CT by these angles of the C-arm, degrees; needed when
                          the CT does not tell how the patient lay, or not on the back
  --json FILE             write the answer as JSON (format ostium-gauge/projection/1)
  --help                  show this help

The edge-on views are listed every 5 degrees of LAO from -90 to 90; of a plane whose normal lies in the transverse
plane every 5 degrees of cranial angle, since one LAO serves them all.

Exit: 0 answered, 1 internal error, 2 wrong usage, 3 the case or its images cannot be read, 4 the angles cannot be told,
      5 the JSON cannot be written.
)";

ExitCode refuse(std::ostream& err, const std::string& text, ExitCode code) {
    err << "ostium-gauge projection: " << text << '\n';
    return code;
}

ExitCode refuse(std::ostream& err, const core::Error& error) {
    return refuse(err, error.message, exitCodeFor(error.code));
}

bool writeProjection(const QString& path, const std::string& content, std::ostream& err) {
    QSaveFile file(path);
    const auto size = static_cast<qint64>(content.size());
    if (file.open(QIODevice::WriteOnly) && file.write(content.data(), size) == size && file.commit()) return true;
    err << "ostium-gauge projection: cannot write " << path.toStdString() << ": " << file.errorString().toStdString() << '\n';
    return false;
}

/// From the measurement, made anew from the images.
core::Result<void> planFrom(const Session& session, CaseProjection& out) {
    core::Result<core::AppendageSurface> surface = core::appendageSurface(*session.volume(), *session.measurement(), {2});
    if (!surface) out.notices.push_back({"no-surface", surface.error().message, {}});
    auto plans = core::planSections(session.record(), *session.measurement(), surface ? &*surface : nullptr, out.options);
    if (!plans) return tl::make_unexpected(plans.error());
    out.plans = std::move(*plans);
    for (const core::SectionPlan& plan : out.plans)
        for (const core::Notice& notice : plan.plan.notices)
            if (notice.code != "no-surface" || surface)
                out.notices.push_back({notice.code, plan.section + ": " + notice.text, notice.facts});
    return {};
}

core::Result<void> takeRecorded(const core::CaseRecord& record, CaseProjection& out) {
    for (const std::string_view section : {core::kLandingSection, core::kOstiumSection})
        if (const auto enFace = core::recordedEnFace(record, section)) out.recorded.push_back({std::string(section), *enFace});
    if (!out.recorded.empty()) return {};
    return core::failure(core::ErrorCode::SectionNotFound,
                         "Cannot tell the angles of the case: it is not measured here (its images were not found, or a mark is "
                         "missing) and holds no angles that are current. Give --images FOLDER, or measure it in the workstation.");
}

core::Result<CaseProjection> projectionOf(const Session& session, const std::optional<core::PatientTurn>& stated) {
    core::CaseRecord record = session.record();
    if (stated) {
        if (!record.projection) record.projection.emplace();
        record.projection->content.turn = stated;
    }
    CaseProjection out;
    const std::string position = session.images() ? session.images()->patientPosition() : std::string();
    const auto options = core::viewPlanOptions(record, position);
    if (!options) return tl::make_unexpected(options.error());
    out.options = *options;
    out.patientPosition = core::patientPosition(record, position);
    out.offsetStated = record.projection && record.projection->content.turn;
    const auto done = session.measurement() ? planFrom(session, out) : takeRecorded(session.record(), out);
    if (!done) return tl::make_unexpected(done.error());
    if (record.projection)
        for (const core::ChosenView& view : record.projection->content.views)
            out.chosen.push_back({view, core::isStale(session.record(), view)});
    return out;
}

ExitCode answerCase(const ProjectionArguments& a, std::ostream& out, std::ostream& err) {
    const QFileInfo original(a.caseFile);
    if (!original.isFile() || !original.isReadable())
        return refuse(err, "Cannot read the case " + a.caseFile.toStdString() + ": there is no such file, or it may not be read.",
                      ExitCode::InputUnreadable);
    const GraphicsSession graphics;
    const CopiedCase copy(original.absoluteFilePath());
    if (copy.path().isEmpty())
        return refuse(err, "Cannot copy the case into the folder for temporary files; make room there.", ExitCode::OutputUnwritable);
    Session session;
    if (!session.openCase(copy.path())) return refuse(err, session.message().text.toStdString(), ExitCode::InputUnreadable);
    waitForWork(session, nullptr);
    if (!a.images.isEmpty() || !session.images()) {
        session.findImagesIn(a.images.isEmpty() ? original.absolutePath() : a.images);
        waitForWork(session, nullptr);
    }
    if (!a.images.isEmpty() && !session.index()) return refuse(err, session.message().text.toStdString(), ExitCode::InputUnreadable);
    if (session.failure()) err << session.failure()->message << '\n';
    const auto projection = projectionOf(session, a.turn);
    if (!projection) return refuse(err, projection.error());
    out << projectionText(*projection);
    if (!a.jsonFile.isEmpty() && !writeProjection(a.jsonFile, projectionJson(*projection), err)) return ExitCode::OutputUnwritable;
    return ExitCode::Ok;
}

} // namespace

ExitCode projectionCommand(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    const auto a = parseProjectionArguments(arguments);
    if (!a) {
        err << "ostium-gauge projection: " << a.error().message << '\n' << projectionUsage() << '\n';
        return exitCodeFor(a.error().code);
    }
    if (a->help) {
        out << projectionUsage() << '\n' << kHelp;
        return ExitCode::Ok;
    }
    if (!a->normal) return answerCase(*a, out, err);
    out << projectionText(*a->normal);
    if (!a->jsonFile.isEmpty() && !writeProjection(a->jsonFile, projectionJson(*a->normal), err)) return ExitCode::OutputUnwritable;
    return ExitCode::Ok;
}

} // namespace gauge::app
