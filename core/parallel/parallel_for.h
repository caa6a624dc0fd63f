// The one thread pool, sized by the cores. core and dicomio use it; jobs of the app run on threads of their own
// and call into it.
#pragma once

#include <cstddef>
#include <functional>

namespace gauge::core {

/// Number of threads that take part in a `parallelFor`, the calling thread included; at least 1.
unsigned parallelThreads();

/// Calls `body(begin, end)` on sub-ranges that together cover [0, count) once each; returns when all are done.
/// Sub-ranges have at most `grain` items (>= 1). Calls may come from several threads at once, and nested calls
/// run on the calling thread alone. `body` must not throw.
void parallelFor(std::size_t count, std::size_t grain, const std::function<void(std::size_t, std::size_t)>& body);

} // namespace gauge::core
