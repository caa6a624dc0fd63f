#include "app/cli/command_line.h"

#include <ostream>

namespace gauge::app {

ExitCode indexCommand(const QStringList&, std::ostream&, std::ostream& err) {
    err << "ostium-gauge index: this verb is being built.\n";
    return ExitCode::InternalError;
}

} // namespace gauge::app
