// The arguments of the verb `echo`, checked.
#pragma once

#include "core/echo/width_reading.h"
#include "core/result.h"

#include <QString>
#include <QStringList>
#include <string>
#include <vector>

namespace gauge::app {

struct EchoArguments {
    bool help = false;
    std::vector<core::WidthReading> readings;
    std::vector<std::string> typedAngles; ///< of each reading, as typed: the keys of the JSON document
    QString jsonFile;
};

/// One paragraph on how to call the verb.
const char* echoUsage();

/// @param arguments  without the program's name and the verb.
/// @errors InvalidArgument; the message names the option and what was found.
core::Result<EchoArguments> parseEchoArguments(const QStringList& arguments);

} // namespace gauge::app
