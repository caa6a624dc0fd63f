#include "app/cli/measure_arguments.h"

#include <QCommandLineParser>
#include <cmath>

namespace gauge::app {
namespace {

using core::ErrorCode;
using core::failure;
using core::Result;

std::string quoted(const QString& text) {
    return "\"" + text.toStdString() + "\"";
}

Result<double> number(const char* option, const QString& text) {
    bool ok = false;
    const double value = text.trimmed().toDouble(&ok); // "." decimals whatever the locale
    if (!ok || !std::isfinite(value))
        return failure(ErrorCode::InvalidArgument,
                       std::string(option) + " needs a number; " + quoted(text) + " is none.");
    return value;
}

Result<Eigen::Vector3d> triple(const char* option, const QString& text) {
    const QStringList parts = text.split(',');
    Eigen::Vector3d value;
    if (parts.size() != 3)
        return failure(ErrorCode::InvalidArgument,
                       std::string(option) + " needs three numbers X,Y,Z; " + quoted(text) + " was given.");
    for (int i = 0; i < 3; ++i) {
        const auto part = number(option, parts[i]);
        if (!part) return tl::make_unexpected(part.error());
        value[i] = *part;
    }
    return value;
}

Result<std::vector<double>> depths(const char* option, const QString& text) {
    std::vector<double> values;
    for (const QString& part : text.split(',')) {
        const auto value = number(option, part);
        if (!value) return tl::make_unexpected(value.error());
        if (*value <= 0.0)
            return failure(ErrorCode::InvalidArgument,
                           std::string(option) + " needs depths above 0 mm; " + quoted(part) + " was given.");
        values.push_back(*value);
    }
    return values;
}

/// The options of the verb; `parser` owns the values after parsing.
struct Options {
    QCommandLineOption help{QStringList{"h", "help"}};
    QCommandLineOption atrium{"atrium", {}, "X,Y,Z"}, tip{"tip", {}, "X,Y,Z"};
    QCommandLineOption circumflex{"circumflex", {}, "X,Y,Z"}, ridge{"ridge", {}, "X,Y,Z"};
    QCommandLineOption ostiumPoint{"ostium-point", {}, "X,Y,Z"}, ostiumNormal{"ostium-normal", {}, "X,Y,Z"};
    QCommandLineOption aorta{"aorta", {}, "X,Y,Z"};
    QCommandLineOption landing{"landing", {}, "MM[,MM...]"}, plug{"landing-plug", {}, "MM"};
    QCommandLineOption series{"series", {}, "UID"}, patient{"patient", {}, "ID"};
    QCommandLineOption phase{"phase", {}, "PERCENT"}, phaseMs{"phase-ms", {}, "MS"};
    QCommandLineOption json{"json", {}, "FILE"}, pictures{"pictures", {}, "FOLDER"};
};

Result<std::optional<core::PatientPoint>> point(const QCommandLineParser& parser,
                                                const QCommandLineOption& option, const char* name) {
    if (!parser.isSet(option)) return std::optional<core::PatientPoint>();
    const auto value = triple(name, parser.value(option));
    if (!value) return tl::make_unexpected(value.error());
    return std::optional(core::PatientPoint{*value});
}

Result<void> readMarks(const QCommandLineParser& parser, const Options& o, core::AppendageMarks& marks) {
    if (!parser.isSet(o.atrium) || !parser.isSet(o.tip))
        return failure(ErrorCode::InvalidArgument, "--atrium X,Y,Z and --tip X,Y,Z are needed.");
    const auto atrium = triple("--atrium", parser.value(o.atrium));
    if (!atrium) return tl::make_unexpected(atrium.error());
    const auto tip = triple("--tip", parser.value(o.tip));
    if (!tip) return tl::make_unexpected(tip.error());
    marks.atrium = {*atrium};
    marks.tip = {*tip};
    if (parser.isSet(o.circumflex) != parser.isSet(o.ridge))
        return failure(ErrorCode::InvalidArgument,
                       "--circumflex and --ridge are needed together; one was given.");
    if (parser.isSet(o.ostiumPoint) != parser.isSet(o.ostiumNormal))
        return failure(ErrorCode::InvalidArgument,
                       "--ostium-point and --ostium-normal are needed together; one was given.");
    const auto set = [](auto& target, auto value) -> Result<void> {
        if (!value) return tl::make_unexpected(value.error());
        target = *value;
        return {};
    };
    if (auto r = set(marks.circumflex, point(parser, o.circumflex, "--circumflex")); !r) return r;
    if (auto r = set(marks.ridge, point(parser, o.ridge, "--ridge")); !r) return r;
    if (auto r = set(marks.aorta, point(parser, o.aorta, "--aorta")); !r) return r;
    if (!parser.isSet(o.ostiumPoint)) return {};
    const auto at = triple("--ostium-point", parser.value(o.ostiumPoint));
    if (!at) return tl::make_unexpected(at.error());
    const auto normal = triple("--ostium-normal", parser.value(o.ostiumNormal));
    if (!normal) return tl::make_unexpected(normal.error());
    if (normal->norm() < 1e-6)
        return failure(ErrorCode::InvalidArgument, "--ostium-normal needs a direction; it has no length.");
    marks.ostium = core::Plane{{*at}, {normal->normalized()}};
    return {};
}

Result<void> readLanding(const QCommandLineParser& parser, const Options& o, MeasureArguments& a) {
    if (parser.isSet(o.landing)) {
        auto values = depths("--landing", parser.value(o.landing));
        if (!values) return tl::make_unexpected(values.error());
        a.options.landingDepthsMm = std::move(*values);
        a.landingGiven = true;
    }
    if (!parser.isSet(o.plug)) return {};
    const auto values = depths("--landing-plug", parser.value(o.plug));
    if (!values) return tl::make_unexpected(values.error());
    if (values->size() != 1)
        return failure(ErrorCode::InvalidArgument, "--landing-plug needs one distance in mm.");
    if (!a.marks.circumflex)
        return failure(ErrorCode::InvalidArgument, "--landing-plug needs --circumflex and --ridge.");
    a.options.plugLandingMm = values->front();
    if (!a.landingGiven) a.options.landingDepthsMm.clear();
    return {};
}

Result<void> readPhase(const QCommandLineParser& parser, const Options& o, MeasureArguments& a) {
    if (parser.isSet(o.phase) && parser.isSet(o.phaseMs))
        return failure(ErrorCode::InvalidArgument,
                       "--phase and --phase-ms exclude each other; both were given.");
    if (parser.isSet(o.phase)) {
        const auto percent = number("--phase", parser.value(o.phase));
        if (!percent) return tl::make_unexpected(percent.error());
        if (*percent < 0.0 || *percent > 100.0)
            return failure(ErrorCode::InvalidArgument, "--phase needs a percentage from 0 to 100.");
        a.phasePercent = *percent;
    }
    if (parser.isSet(o.phaseMs)) {
        const auto ms = number("--phase-ms", parser.value(o.phaseMs));
        if (!ms) return tl::make_unexpected(ms.error());
        if (*ms < 0.0)
            return failure(ErrorCode::InvalidArgument,
                           "--phase-ms needs milliseconds after the R wave, 0 or more.");
        a.phaseMs = *ms;
    }
    return {};
}

} // namespace

const char* measureUsage() {
    return "Usage: ostium-gauge measure FOLDER --atrium X,Y,Z --tip X,Y,Z [--circumflex X,Y,Z --ridge "
           "X,Y,Z]\n"
           "         [--ostium-point X,Y,Z --ostium-normal X,Y,Z] [--aorta X,Y,Z] [--landing MM[,MM...]]\n"
           "         [--landing-plug MM] [--series UID] [--patient ID] [--phase PERCENT | --phase-ms MS]\n"
           "         [--json FILE] [--pictures FOLDER]";
}

Result<MeasureArguments> parseMeasureArguments(const QStringList& arguments) {
    const Options o;
    QCommandLineParser parser;
    parser.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
    parser.addOptions({o.help, o.atrium, o.tip, o.circumflex, o.ridge, o.ostiumPoint, o.ostiumNormal, o.aorta,
                       o.landing, o.plug, o.series, o.patient, o.phase, o.phaseMs, o.json, o.pictures});
    MeasureArguments a;
    if (!parser.parse(QStringList{"measure"} +
                      arguments)) // the parser takes the first for the program's name
        return failure(ErrorCode::InvalidArgument, parser.errorText().toStdString());
    a.help = parser.isSet(o.help);
    if (a.help) return a;
    const QStringList folders = parser.positionalArguments();
    if (folders.size() != 1 || folders.front().isEmpty())
        return failure(ErrorCode::InvalidArgument,
                       folders.isEmpty() ? "a folder is needed." : "exactly one folder is needed.");
    a.folder = folders.front();
    if (auto r = readMarks(parser, o, a.marks); !r) return tl::make_unexpected(r.error());
    if (auto r = readLanding(parser, o, a); !r) return tl::make_unexpected(r.error());
    if (parser.isSet(o.series)) a.seriesUid = parser.value(o.series).toStdString();
    if (parser.isSet(o.patient)) a.patientId = parser.value(o.patient).toStdString();
    if (auto r = readPhase(parser, o, a); !r) return tl::make_unexpected(r.error());
    for (const auto& [option, name] : {std::pair{&o.json, "--json"}, {&o.pictures, "--pictures"}})
        if (parser.isSet(*option) && parser.value(*option).isEmpty())
            return failure(ErrorCode::InvalidArgument, std::string(name) + " needs a name.");
    a.jsonFile = parser.value(o.json);
    a.pictureFolder = parser.value(o.pictures);
    return a;
}

} // namespace gauge::app
