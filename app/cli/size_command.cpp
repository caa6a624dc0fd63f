#include "app/cli/command_line.h"
#include "app/cli/size_arguments.h"
#include "app/cli/size_report.h"
#include "core/sizing/chart_reader.h"
#include "core/sizing/observations_file.h"

#include <QFile>
#include <QSaveFile>
#include <ostream>

namespace gauge::app {
namespace {

constexpr auto kHelp = R"(
Carries the widths in an observations file to one left atrial pressure and judges every size of a device chart
there, and over the pressures that the implant will live with.

  --observations FILE     readings (format ostium-gauge/observations/1)
  --chart FILE            device chart (format ostium-gauge/chart/1), typed from the device's instructions
  --decision-pressure P   left atrial mean pressure at which the reading counts, mmHg; otherwise the chart's
  --lowest P --highest P  pressures that the implant will live with (5 to 20 when not given)
  --cause WORD            why the pressures differ: passing (fasting, anaesthesia), lasting (regurgitation repaired)
                          or unknown, which shows both (the default)
  --law WORD              how width follows pressure: log (the default) or linear
  --json FILE             write the answer as JSON (format ostium-gauge/size/1)
  --help                  show this help

Exit: 0 judged, 1 internal error, 2 wrong usage, 3 observations or chart cannot be used, 4 no reading answers the
      chart, 5 the JSON cannot be written.
)";

constexpr qint64 kMostBytes = 16 * 1024 * 1024; // a chart or a patient's readings have a few kilobytes

ExitCode say(std::ostream& err, const core::Error& error) {
    err << "ostium-gauge size: " << error.message << '\n';
    if (error.code == core::ErrorCode::InvalidArgument) err << sizeUsage() << '\n';
    return exitCodeFor(error.code);
}

core::Result<std::string> readText(const QString& path, const char* what) {
    QFile file(path);
    const auto unreadable = [&](const QString& reason) {
        return core::failure(core::ErrorCode::FileUnreadable, std::string("Cannot read the ") + what + " " +
                                                                  path.toStdString() + ": " +
                                                                  reason.toStdString() + ".");
    };
    if (!file.open(QIODevice::ReadOnly)) return unreadable(file.errorString());
    const QByteArray bytes = file.read(kMostBytes + 1);
    if (file.error() != QFileDevice::NoError) return unreadable(file.errorString());
    if (bytes.size() > kMostBytes) return unreadable("it is longer than 16 MB");
    return bytes.toStdString();
}

core::Result<core::SizingQuestion> readQuestion(const SizeArguments& a,
                                                std::vector<core::Notice>& chartNotices) {
    const auto observationsText = readText(a.observationsFile, "observations");
    if (!observationsText) return tl::make_unexpected(observationsText.error());
    auto observations = core::readObservations(*observationsText, a.observationsFile.toStdString());
    if (!observations) return tl::make_unexpected(observations.error());
    const auto chartText = readText(a.chartFile, "device chart");
    if (!chartText) return tl::make_unexpected(chartText.error());
    auto chart = core::readChart(*chartText, a.chartFile.toStdString());
    if (!chart) return tl::make_unexpected(chart.error());
    chartNotices = std::move(chart->notices);
    core::SizingQuestion q;
    q.chart = std::move(chart->chart);
    q.observations = std::move(observations->observations);
    q.facts = std::move(observations->facts);
    q.decisionPressureMmHg = a.decisionPressureMmHg;
    q.lowestMmHg = a.lowestMmHg;
    q.highestMmHg = a.highestMmHg;
    q.cause = a.cause;
    q.law = a.law;
    return q;
}

bool writeJson(const QString& path, const std::string& content, std::ostream& err) {
    QSaveFile file(path);
    const auto size = static_cast<qint64>(content.size());
    if (file.open(QIODevice::WriteOnly) && file.write(content.data(), size) == size && file.commit())
        return true;
    err << "ostium-gauge size: cannot write " << path.toStdString() << ": "
        << file.errorString().toStdString() << '\n';
    return false;
}

} // namespace

ExitCode sizeCommand(const QStringList& arguments, std::ostream& out, std::ostream& err) {
    const auto a = parseSizeArguments(arguments);
    if (!a) return say(err, a.error());
    if (a->help) {
        out << sizeUsage() << '\n' << kHelp;
        return ExitCode::Ok;
    }
    std::vector<core::Notice> chartNotices;
    const auto question = readQuestion(*a, chartNotices);
    if (!question) return say(err, question.error());
    auto answer = core::sizeImplant(*question);
    if (!answer) {
        const bool noPressure = answer.error().code == core::ErrorCode::InvalidArgument &&
                                !a->decisionPressureMmHg && !question->chart.reading.decisionPressureMmHg;
        const ExitCode code = say(err, answer.error());
        if (noPressure) err << "Give --decision-pressure P.\n";
        return code;
    }
    answer->notices.insert(answer->notices.begin(), chartNotices.begin(), chartNotices.end());
    out << sizeText(*question, *answer);
    if (!a->jsonFile.isEmpty() && !writeJson(a->jsonFile, sizeJson(*question, *answer), err))
        return ExitCode::OutputUnwritable;
    return ExitCode::Ok;
}

} // namespace gauge::app
