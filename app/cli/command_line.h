// The command line without a window: one function for each verb. Each verb takes its own arguments
// (without the program's name and the verb) and answers with an exit code; results go to `out`, reasons to `err`.
#pragma once

#include "app/cli/exit_code.h"

#include <QStringList>
#include <iosfwd>

namespace gauge::app {

ExitCode deidentifyCommand(const QStringList& arguments, std::ostream& out, std::ostream& err);
ExitCode indexCommand(const QStringList& arguments, std::ostream& out, std::ostream& err);
ExitCode measureCommand(const QStringList& arguments, std::ostream& out, std::ostream& err);
ExitCode echoCommand(const QStringList& arguments, std::ostream& out, std::ostream& err);
ExitCode projectionCommand(const QStringList& arguments, std::ostream& out, std::ostream& err);
ExitCode reportCommand(const QStringList& arguments, std::ostream& out, std::ostream& err);
ExitCode sampleCommand(const QStringList& arguments, std::ostream& out, std::ostream& err);
ExitCode sizeCommand(const QStringList& arguments, std::ostream& out, std::ostream& err);

/// Runs `arguments[0]` as a verb. Precondition: isVerb(arguments).
ExitCode runVerb(const QStringList& arguments, std::ostream& out, std::ostream& err);

/// True when the arguments are for the command line: a verb, --help or --version. Otherwise they name what the
/// workstation should open.
bool isVerb(const QStringList& arguments);

} // namespace gauge::app
