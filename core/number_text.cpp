#include "core/number_text.h"

#include <array>
#include <charconv>

namespace gauge::core {
namespace {

/// The longest double has 309 digits before the point.
constexpr std::size_t kLongest = 400;

std::string written(double value, std::chars_format format, int precision) {
    std::array<char, kLongest> text;
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value, format, precision).ptr;
    return {text.data(), end};
}

} // namespace

std::string fixed(double value, int decimals) {
    std::string text = written(value, std::chars_format::fixed, decimals);
    if (text.starts_with('-') && text.find_first_of("123456789in") == std::string::npos) text.erase(0, 1);
    return text;
}

std::string general(double value, int digits) {
    return written(value, std::chars_format::general, digits);
}

} // namespace gauge::core
