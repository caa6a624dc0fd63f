#include "app/cli/command_line.h"
#include "app/cli/measure_arguments.h"
#include "app/cli/measure_report.h"
#include "app/report/measurement_pictures.h"
#include "dicomio/ct/ct_reader.h"
#include "dicomio/index/series_index.h"

#include <QFile>
#include <QSaveFile>
#include <ostream>

namespace gauge::app {
namespace {

constexpr auto kHelp = R"(
Measures the left atrial appendage on a cardiac CT: ostium, landing zones, depth, volume, turn and profile, each
with its standard uncertainty. Points are patient coordinates, LPS, mm.

  --atrium X,Y,Z          any point in the blood of the left atrium
  --tip X,Y,Z             any point in the wanted lobe; the axis runs on to that lobe's farthest point
  --circumflex X,Y,Z --ridge X,Y,Z
                          circumflex artery and tip of the ridge at the ostium: the ostium is theirs
  --ostium-point X,Y,Z --ostium-normal X,Y,Z
                          the ostium plane itself; wins over the landmarks. Without either, it is proposed
  --aorta X,Y,Z           ascending aorta, for the enhancement ratio
  --landing MM[,MM...]    landing planes perpendicular to the axis, MM beyond the ostium (10 when none is named)
  --landing-plug MM       oblique plane through the circumflex point and the wall MM beyond the ridge tip
  --series UID            series to measure (otherwise the one with most slices)
  --phase PERCENT         phase of the R-R interval (otherwise the one nearest to 45)
  --json FILE             write the result as JSON (format ostium-gauge/measure/1)
  --pictures FOLDER       write sections as PNG; of a measurement that fails, the sections through its points
  --help                  show this help

Exit: 0 measured, 1 internal error, 2 wrong usage, 3 input cannot be read, 4 measurement cannot be made,
      5 output cannot be written.
)";

ExitCode say(std::ostream& err, const core::Error& error) {
    err << "ostium-gauge measure: " << error.message << '\n';
    return exitCodeFor(error.code);
}

core::Result<dicomio::CtVolume> readVolume(const MeasureArguments& a) {
    const auto index = dicomio::indexFolder(QFile::encodeName(a.folder).toStdString());
    if (!index) return tl::make_unexpected(index.error());
    const auto series = dicomio::chooseCtSeries(*index, a.seriesUid);
    if (!series) return tl::make_unexpected(series.error());
    const auto phase = dicomio::choosePhase(**series, a.phasePercent);
    if (!phase) return tl::make_unexpected(phase.error());
    return dicomio::readCtPhase(**series, *phase);
}

bool writeJson(const QString& path, const std::string& content, std::ostream& err) {
    QSaveFile file(path);
    const auto size = static_cast<qint64>(content.size());
    if (file.open(QIODevice::WriteOnly) && file.write(content.data(), size) == size && file.commit()) return true;
    err << "ostium-gauge measure: cannot write " << path.toStdString() << ": " << file.errorString().toStdString()
        << '\n';
    return false;
}

} // namespace

ExitCode measureCommand(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    const auto a = parseMeasureArguments(arguments);
    if (!a) {
        err << "ostium-gauge measure: " << a.error().message << '\n' << measureUsage() << '\n';
        return ExitCode::WrongUsage;
    }
    if (a->help) {
        out << measureUsage() << '\n' << kHelp;
        return ExitCode::Ok;
    }
    const auto ct = readVolume(*a);
    if (!ct) return say(err, ct.error());
    const std::filesystem::path pictures = QFile::encodeName(a->pictureFolder).toStdString();
    const auto measured = core::measureAppendage(ct->volume, a->marks, a->options);
    if (!measured) {
        const ExitCode code = say(err, measured.error());
        if (!pictures.empty())
            if (auto r = writeSeedPictures(*ct->volume, a->marks, pictures, measured.error().message); !r)
                err << "ostium-gauge measure: " << r.error().message << '\n';
        return code;
    }
    out << measureSummary(*ct, *measured);
    if (!a->jsonFile.isEmpty() && !writeJson(a->jsonFile, measureJson(*ct, *measured), err))
        return ExitCode::OutputUnwritable;
    if (!pictures.empty())
        if (auto r = writePictures(*ct->volume, *measured, pictures); !r) return say(err, r.error());
    return ExitCode::Ok;
}

} // namespace gauge::app
