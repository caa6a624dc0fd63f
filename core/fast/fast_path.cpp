#include "core/fast/fast_path.h"

#include <atomic>
#include <cstdlib>
#include <string_view>

namespace gauge::core {
namespace {

FastPath findBestFastPath() {
#if defined(__x86_64__)
    const char* wish = std::getenv("OSTIUM_GAUGE_FAST_PATH");
    const bool held = wish != nullptr && std::string_view(wish) == "portable";
    if (!held && __builtin_cpu_supports("avx2")) // asks the system too, whether it keeps the wide registers
        return FastPath::Avx2;
#endif
    return FastPath::Portable;
}

std::atomic<FastPath>& chosenFastPath() {
    static std::atomic<FastPath> chosen{bestFastPath()};
    return chosen;
}

} // namespace

FastPath bestFastPath() {
    static const FastPath best = findBestFastPath();
    return best;
}

FastPath fastPath() {
    return chosenFastPath().load(std::memory_order_relaxed);
}

FastPathScope::FastPathScope(FastPath path) : m_before(fastPath()) {
    chosenFastPath() = bestFastPath() == FastPath::Avx2 ? path : FastPath::Portable;
}

FastPathScope::~FastPathScope() {
    chosenFastPath() = m_before;
}

} // namespace gauge::core
