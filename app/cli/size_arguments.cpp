#include "app/cli/size_arguments.h"

#include <QCommandLineParser>
#include <cmath>

namespace gauge::app {
namespace {

using core::ErrorCode;
using core::failure;
using core::PressureChange;
using core::Result;

struct Options {
    QCommandLineOption help{QStringList{"h", "help"}};
    QCommandLineOption observations{"observations", {}, "FILE"}, chart{"chart", {}, "FILE"};
    QCommandLineOption decision{"decision-pressure", {}, "P"};
    QCommandLineOption lowest{"lowest", {}, "P"}, highest{"highest", {}, "P"};
    QCommandLineOption cause{"cause", {}, "passing|lasting|unknown"}, law{"law", {}, "log|linear"};
    QCommandLineOption json{"json", {}, "FILE"};
};

std::string quoted(const QString& text) {
    return "\"" + text.toStdString() + "\"";
}

Result<void> readPressure(const QCommandLineParser& parser, const QCommandLineOption& option,
                          std::optional<double>& target) {
    if (!parser.isSet(option)) return {};
    const QString text = parser.value(option);
    bool ok = false;
    const double value = text.trimmed().toDouble(&ok); // "." decimals whatever the locale
    if (ok && std::isfinite(value)) {
        target = value;
        return {};
    }
    return failure(ErrorCode::InvalidArgument, "--" + option.names().front().toStdString() +
                                                   " needs a pressure in mmHg; " + quoted(text) +
                                                   " is none.");
}

Result<void> readFile(const QCommandLineParser& parser, const QCommandLineOption& option, bool needed,
                      QString& target) {
    const std::string name = "--" + option.names().front().toStdString();
    target = parser.value(option);
    if (parser.values(option).size() > 1)
        return failure(ErrorCode::InvalidArgument, name + " was given more than once.");
    if (needed && !parser.isSet(option))
        return failure(ErrorCode::InvalidArgument, name + " FILE is needed.");
    if (parser.isSet(option) && target.isEmpty())
        return failure(ErrorCode::InvalidArgument, name + " needs the name of a file.");
    return {};
}

Result<void> readWords(const QCommandLineParser& parser, const Options& o, SizeArguments& a) {
    if (parser.isSet(o.cause)) {
        const QString word = parser.value(o.cause);
        if (word == "passing")
            a.cause = PressureChange::Passing;
        else if (word == "lasting")
            a.cause = PressureChange::Lasting;
        else if (word == "unknown")
            a.cause = PressureChange::Unknown;
        else
            return failure(ErrorCode::InvalidArgument,
                           "--cause needs passing, lasting or unknown; " + quoted(word) + " was given.");
    }
    if (!parser.isSet(o.law)) return {};
    const auto law = core::pressureLawFromWord(parser.value(o.law).toStdString());
    if (!law)
        return failure(ErrorCode::InvalidArgument,
                       "--law needs log or linear; " + quoted(parser.value(o.law)) + " was given.");
    a.law = *law;
    return {};
}

} // namespace

const char* sizeUsage() {
    return "Usage: ostium-gauge size --observations FILE --chart FILE [--decision-pressure P] [--lowest P "
           "--highest P]\n"
           "         [--cause passing|lasting|unknown] [--law log|linear] [--json FILE]";
}

Result<SizeArguments> parseSizeArguments(const QStringList& arguments) {
    const Options o;
    QCommandLineParser parser;
    parser.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
    parser.addOptions(
        {o.help, o.observations, o.chart, o.decision, o.lowest, o.highest, o.cause, o.law, o.json});
    SizeArguments a;
    if (!parser.parse(QStringList{"size"} + arguments)) // the parser takes the first for the program's name
        return failure(ErrorCode::InvalidArgument, parser.errorText().toStdString());
    a.help = parser.isSet(o.help);
    if (a.help) return a;
    if (!parser.positionalArguments().isEmpty())
        return failure(ErrorCode::InvalidArgument,
                       quoted(parser.positionalArguments().front()) + " belongs to no option.");
    for (const auto& done :
         {readFile(parser, o.observations, true, a.observationsFile),
          readFile(parser, o.chart, true, a.chartFile), readFile(parser, o.json, false, a.jsonFile),
          readPressure(parser, o.decision, a.decisionPressureMmHg),
          readPressure(parser, o.lowest, a.lowestMmHg), readPressure(parser, o.highest, a.highestMmHg),
          readWords(parser, o, a)})
        if (!done) return tl::make_unexpected(done.error());
    return a;
}

} // namespace gauge::app
