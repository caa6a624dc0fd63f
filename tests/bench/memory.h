// Memory of this process, from /proc (Linux).
#pragma once

#include <cstddef>
#include <fstream>
#include <sstream>
#include <string>

namespace gauge::bench {

/// A size of /proc/self/status in bytes: "VmRSS" now, "VmHWM" the greatest since `forgetPeak`. 0 when unknown.
inline std::size_t processMemory(const std::string& key) {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with(key + ":")) {
            std::istringstream words(line.substr(key.size() + 1));
            std::size_t kilobytes = 0;
            words >> kilobytes;
            return kilobytes * 1024;
        }
    return 0;
}

inline void forgetPeak() {
    std::ofstream("/proc/self/clear_refs") << "5";
}

} // namespace gauge::bench
