#include "app/cli/command_line.h"

#include <ostream>

namespace gauge::app {

ExitCode sampleCommand(const QStringList&, std::ostream&, std::ostream& err) {
    err << "ostium-gauge sample: this verb is being built.\n";
    return ExitCode::InternalError;
}

} // namespace gauge::app
