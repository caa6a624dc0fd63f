// `ostium-gauge screens FOLDER`: pictures of the program itself, without a display.
#pragma once

#include "app/cli/exit_code.h"

#include <QStringList>
#include <iosfwd>

namespace gauge::app {

/// @param program    argv[0]
/// @param arguments  those after the verb
ExitCode screensCommand(const QString& program, const QStringList& arguments, std::ostream& out, std::ostream& err);

} // namespace gauge::app
