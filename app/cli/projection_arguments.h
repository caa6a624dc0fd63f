// What `ostium-gauge projection` is told.
#pragma once

#include "core/fluoro/c_arm_reach.h"
#include "core/result.h"

#include <QString>
#include <QStringList>
#include <optional>

namespace gauge::app {

struct ProjectionArguments {
    std::optional<core::PatientVector> normal; ///< unit; nothing: of a case
    QString caseFile, images, jsonFile;
    std::optional<core::PatientTurn> turn; ///< in place of the case's
    bool help = false;
};

/// @errors InvalidArgument, a sentence that names the option.
core::Result<ProjectionArguments> parseProjectionArguments(const QStringList& arguments);

const char* projectionUsage();

} // namespace gauge::app
