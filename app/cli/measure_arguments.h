// The arguments of the verb `measure`, checked.
#pragma once

#include "core/anatomy/appendage.h"
#include "core/result.h"

#include <QString>
#include <QStringList>
#include <optional>
#include <string>

namespace gauge::app {

struct MeasureArguments {
    bool help = false;
    QString folder;
    core::AppendageMarks marks;
    core::AppendageOptions options;
    bool landingGiven = false; ///< otherwise the default depth was taken
    std::optional<std::string> seriesUid;
    std::optional<std::string> patientId;
    std::optional<double> phasePercent;
    std::optional<double> phaseMs; ///< after the R wave; never together with a percentage
    QString jsonFile;
    QString pictureFolder;
};

/// One paragraph on how to call the verb.
const char* measureUsage();

/// @param arguments  without the program's name and the verb.
/// @errors InvalidArgument; the message names the option and what was found.
core::Result<MeasureArguments> parseMeasureArguments(const QStringList& arguments);

} // namespace gauge::app
