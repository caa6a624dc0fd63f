#include "app/cli/projection_arguments.h"

#include "core/fluoro/view_planning.h"

#include <QCommandLineParser>
#include <cmath>

namespace gauge::app {
namespace {

core::Result<std::vector<double>> numbersOf(const char* option, const QString& text) {
    std::vector<double> values;
    for (const QString& part : text.split(',')) {
        bool ok = false;
        const double value = part.trimmed().toDouble(&ok); // "." decimals whatever the locale
        if (!ok)
            return core::failure(core::ErrorCode::InvalidArgument, std::string(option) + " needs numbers; \"" +
                                                                       part.toStdString() + "\" is none.");
        if (!std::isfinite(value))
            return core::failure(core::ErrorCode::InvalidArgument, std::string(option) + " needs finite numbers; \"" +
                                                                       part.toStdString() + "\" is not finite.");
        values.push_back(value);
    }
    return values;
}

core::Result<core::PatientVector> readNormal(const QString& text) {
    const auto numbers = numbersOf("--normal", text);
    if (!numbers) return tl::make_unexpected(numbers.error());
    if (numbers->size() != 3)
        return core::failure(core::ErrorCode::InvalidArgument,
                             "--normal needs three numbers NX,NY,NZ; \"" + text.toStdString() + "\" was given.");
    auto normal = core::planeNormal({(*numbers)[0], (*numbers)[1], (*numbers)[2]});
    if (!normal)
        return core::failure(core::ErrorCode::InvalidArgument, "--normal needs a direction; \"" + text.toStdString() +
                                                                   "\" has no length.");
    return normal;
}

core::Result<core::PatientTurn> readTurn(const QString& text) {
    const auto numbers = numbersOf("--offset", text);
    if (!numbers) return tl::make_unexpected(numbers.error());
    if (numbers->empty() || numbers->size() > 2)
        return core::failure(core::ErrorCode::InvalidArgument, "--offset needs one or two angles LAO[,CRA]; \"" +
                                                                   text.toStdString() + "\" was given.");
    const core::PatientTurn turn{numbers->front(), numbers->size() > 1 ? numbers->back() : 0.0};
    if (auto valid = core::validate(turn); !valid)
        return core::failure(core::ErrorCode::InvalidArgument, "--offset: " + valid.error().message);
    return turn;
}

} // namespace

const char* projectionUsage() {
    return "Usage: ostium-gauge projection --normal NX,NY,NZ [--json FILE]\n"
           "       ostium-gauge projection CASE [--images FOLDER] [--offset LAO[,CRA]] [--json FILE]";
}

core::Result<ProjectionArguments> parseProjectionArguments(const QStringList& arguments) {
    const auto wrong = [](const QString& finding) {
        return core::failure(core::ErrorCode::InvalidArgument, finding.toStdString());
    };
    QCommandLineParser parser;
    parser.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
    const QCommandLineOption help(QStringList{"h", "help"}), normal("normal", {}, "NX,NY,NZ"), images("images", {}, "FOLDER"),
        offset("offset", {}, "LAO[,CRA]"), json("json", {}, "FILE");
    parser.addOptions({help, normal, images, offset, json});
    if (!parser.parse(QStringList{"projection"} + arguments)) return wrong(parser.errorText() + '.');
    ProjectionArguments a;
    a.help = parser.isSet(help);
    if (a.help) return a;
    for (const QCommandLineOption& option : {normal, images, offset, json}) {
        const QString name = "--" + option.names().front();
        if (parser.values(option).size() > 1) return wrong(name + " was given more than once.");
        if (parser.isSet(option) && parser.value(option).isEmpty()) return wrong(name + " needs a value.");
    }
    const QStringList names = parser.positionalArguments();
    if (names.size() > 1 || names.contains(QString()))
        return wrong("one case file is needed; \"" + names.join("\", \"") + "\" was given.");
    if (parser.isSet(normal) == !names.isEmpty())
        return wrong(names.isEmpty() ? "--normal NX,NY,NZ or a case file is needed."
                                     : "--normal and a case file exclude each other; both were given.");
    a.jsonFile = parser.value(json);
    if (parser.isSet(normal)) {
        if (parser.isSet(images) || parser.isSet(offset)) return wrong("--images and --offset are for a case file, not for --normal.");
        auto given = readNormal(parser.value(normal));
        if (!given) return tl::make_unexpected(given.error());
        a.normal = *given;
        return a;
    }
    a.caseFile = names.front();
    a.images = parser.value(images);
    if (parser.isSet(offset)) {
        auto turn = readTurn(parser.value(offset));
        if (!turn) return tl::make_unexpected(turn.error());
        a.turn = *turn;
    }
    return a;
}

} // namespace gauge::app
