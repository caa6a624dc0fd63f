// What long work answers when it was told to stop.
#pragma once

#include "core/result.h"

#include <string>

namespace gauge::core {

/// ErrorCode::Cancelled, "`what` was cancelled."
inline tl::unexpected<Error> cancelled(const std::string& what) {
    return failure(ErrorCode::Cancelled, what + " was cancelled.");
}

} // namespace gauge::core
