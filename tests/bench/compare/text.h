// Numbers into text, as printf does it.
#pragma once

#include <cstdarg>
#include <cstdio>
#include <string>

namespace gauge::bench {

#if defined(__GNUC__)
__attribute__((format(printf, 1, 2)))
#endif
inline std::string text(const char* format, ...) {
    char out[512];
    va_list values;
    va_start(values, format);
    std::vsnprintf(out, sizeof out, format, values);
    va_end(values);
    return out;
}

} // namespace gauge::bench
