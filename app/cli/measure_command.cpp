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
  --series UID            series to measure (otherwise the one with most slices; needed when the folder holds CT of
                          several patients, or in several frames of reference)
  --patient ID            patient to measure, by PatientID
  --phase PERCENT         phase nearest to this percentage of the R-R interval (otherwise to 45)
  --phase-ms MS           phase nearest to this time after the R wave
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

/// How to choose on the command line where the person must.
core::Error withTheOptions(core::Error error) {
    if (error.code == core::ErrorCode::InvalidArgument)
        error.message +=
            " Name it with --series UID, and with --patient ID where patients share a series UID.";
    return error;
}

core::Result<dicomio::CtVolume> readVolume(const MeasureArguments& a) {
    const auto index = dicomio::indexFolder(QFile::encodeName(a.folder).toStdString());
    if (!index) return tl::make_unexpected(index.error());
    const auto series = dicomio::chooseCtSeries(*index, a.seriesUid, a.patientId);
    if (!series) return tl::make_unexpected(withTheOptions(series.error()));
    const auto phase = dicomio::choosePhase(**series, dicomio::PhaseWish{a.phasePercent, a.phaseMs});
    if (!phase) return tl::make_unexpected(phase.error());
    auto ct = dicomio::readCtPhase(**series, phase->phase);
    if (ct && !phase->words.empty())
        ct->notices.insert(ct->notices.begin(), {"phase-taken", phase->words, {}});
    return ct;
}

bool writeJson(const QString& path, const std::string& content, std::ostream& err) {
    QSaveFile file(path);
    const auto size = static_cast<qint64>(content.size());
    if (file.open(QIODevice::WriteOnly) && file.write(content.data(), size) == size && file.commit())
        return true;
    err << "ostium-gauge measure: cannot write " << path.toStdString() << ": "
        << file.errorString().toStdString() << '\n';
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
