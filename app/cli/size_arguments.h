// The arguments of the verb `size`, checked.
#pragma once

#include "core/sizing/sizing.h"

#include <QString>
#include <QStringList>
#include <optional>

namespace gauge::app {

struct SizeArguments {
    bool help = false;
    QString observationsFile, chartFile, jsonFile;
    std::optional<double> decisionPressureMmHg, lowestMmHg, highestMmHg;
    core::PressureChange cause = core::PressureChange::Unknown;
    core::PressureLaw law = core::PressureLaw::Logarithmic;
};

/// One paragraph on how to call the verb.
const char* sizeUsage();

/// @param arguments  without the program's name and the verb.
/// @errors InvalidArgument; the message names the option and what was found.
core::Result<SizeArguments> parseSizeArguments(const QStringList& arguments);

} // namespace gauge::app
