// Exit codes of the command line; a contract with scripts.
#pragma once

#include "core/result.h"

namespace gauge::app {

enum class ExitCode {
    Ok = 0,
    InternalError = 1,
    WrongUsage = 2,
    InputUnreadable = 3,
    NotMeasurable = 4,
    OutputUnwritable = 5,
};

/// The exit code by which a failed verb answers.
ExitCode exitCodeFor(core::ErrorCode code);

} // namespace gauge::app
