#include "app/cli/echo_arguments.h"

#include <QCommandLineParser>
#include <cmath>

namespace gauge::app {
namespace {

using core::ErrorCode;
using core::failure;
using core::Result;

Result<double> number(const std::string& what, const QString& text) {
    bool ok = false;
    const double value = text.trimmed().toDouble(&ok); // "." decimals whatever the locale
    if (!ok || !std::isfinite(value))
        return failure(ErrorCode::InvalidArgument, what + " needs a number; \"" + text.toStdString() + "\" is none.");
    return value;
}

Result<void> readWidths(const QString& text, EchoArguments& a) {
    for (const QString& part : text.split(',')) {
        const QStringList pair = part.split(':');
        if (pair.size() != 2)
            return failure(ErrorCode::InvalidArgument, "--widths needs pairs ANGLE:WIDTH joined by commas; \"" +
                                                           part.toStdString() + "\" is none.");
        const auto angle = number("--widths", pair[0]);
        if (!angle) return tl::make_unexpected(angle.error());
        const auto width = number("--widths", pair[1]);
        if (!width) return tl::make_unexpected(width.error());
        if (*width <= 0.0)
            return failure(ErrorCode::InvalidArgument,
                           "--widths needs widths above 0 mm; \"" + part.toStdString() + "\" was given.");
        if (std::abs(*angle) > 360.0)
            return failure(ErrorCode::InvalidArgument, "--widths needs probe angles in degrees, 0 to 180; \"" +
                                                           part.toStdString() + "\" was given.");
        a.readings.push_back({*angle, *width, std::nullopt, core::BeatPhase::Unknown});
        a.typedAngles.push_back(pair[0].trimmed().toStdString());
    }
    return {};
}

} // namespace

const char* echoUsage() {
    return "Usage: ostium-gauge echo --widths ANGLE:MM,ANGLE:MM,ANGLE:MM[,...] [--width-uncertainty MM] [--json FILE]";
}

core::Result<EchoArguments> parseEchoArguments(const QStringList& arguments) {
    const QCommandLineOption help{QStringList{"h", "help"}};
    const QCommandLineOption widths{"widths", {}, "ANGLE:MM,..."}, uncertainty{"width-uncertainty", {}, "MM"};
    const QCommandLineOption json{"json", {}, "FILE"};
    QCommandLineParser parser;
    parser.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
    parser.addOptions({help, widths, uncertainty, json});
    EchoArguments a;
    if (!parser.parse(QStringList{"echo"} + arguments)) // the parser takes the first for the program's name
        return failure(ErrorCode::InvalidArgument, parser.errorText().toStdString());
    a.help = parser.isSet(help);
    if (a.help) return a;
    if (!parser.positionalArguments().isEmpty())
        return failure(ErrorCode::InvalidArgument,
                       "\"" + parser.positionalArguments().front().toStdString() + "\" belongs to no option.");
    if (!parser.isSet(widths)) return failure(ErrorCode::InvalidArgument, "--widths is needed.");
    if (parser.values(widths).size() > 1)
        return failure(ErrorCode::InvalidArgument, "--widths was given more than once; join the pairs by commas.");
    if (auto r = readWidths(parser.value(widths), a); !r) return tl::make_unexpected(r.error());
    if (parser.isSet(uncertainty)) {
        const auto u = number("--width-uncertainty", parser.value(uncertainty));
        if (!u) return tl::make_unexpected(u.error());
        if (*u < 0.0 || *u > 20.0)
            return failure(ErrorCode::InvalidArgument,
                           "--width-uncertainty needs a standard uncertainty from 0 to 20 mm; \"" +
                               parser.value(uncertainty).toStdString() + "\" was given.");
        for (auto& r : a.readings)
            r.standardUncertaintyMm = *u;
    }
    if (parser.isSet(json) && parser.value(json).isEmpty())
        return failure(ErrorCode::InvalidArgument, "--json needs a name.");
    a.jsonFile = parser.value(json);
    return a;
}

} // namespace gauge::app
