#include "dicomio/deidentify/pseudonyms.h"

#include "core/record/case_checksum.h"

#include <algorithm>
#include <cctype>
#include <cstdint>
#include <cstdio>
#include <random>

namespace gauge::dicomio {
namespace {

__extension__ using Wide = unsigned __int128;

Wide firstBits(const std::string& hex, int digits) {
    Wide value = 0;
    for (int i = 0; i < digits; ++i) {
        const char c = hex[static_cast<std::size_t>(i)];
        value = value * 16 + static_cast<unsigned>(c <= '9' ? c - '0' : c - 'a' + 10);
    }
    return value;
}

std::string decimal(Wide value) {
    std::string digits;
    do {
        digits += static_cast<char>('0' + static_cast<int>(value % 10));
        value /= 10;
    } while (value != 0);
    std::reverse(digits.begin(), digits.end());
    return digits;
}

/// `count` digits at `at` as a number; nothing when one is no digit.
std::optional<int> number(std::string_view text, std::size_t at, std::size_t count) {
    if (text.size() < at + count) return std::nullopt;
    int value = 0;
    for (std::size_t i = at; i < at + count; ++i) {
        if (!std::isdigit(static_cast<unsigned char>(text[i]))) return std::nullopt;
        value = 10 * value + (text[i] - '0');
    }
    return value;
}

} // namespace

std::string Pseudonyms::digest(std::string_view purpose, std::string_view of) const {
    // Lengths first, so that no two pairs of texts run together.
    std::string text = std::to_string(m_key.size()) + ':' + m_key;
    text.append(std::to_string(purpose.size())).append(":").append(purpose).append(of);
    return core::sha256(text);
}

std::string Pseudonyms::uid(std::string_view original) const {
    constexpr std::string_view kStandard = "1.2.840.10008.";
    if (original.empty() || original.starts_with(kStandard)) return std::string(original);
    Wide bits = firstBits(digest("uid", original), 32);
    // A UUID of version 8, "custom" (RFC 9562), as the root 2.25 asks for a UUID.
    bits &= ~(Wide{0xF} << 76);
    bits |= Wide{0x8} << 76;
    bits &= ~(Wide{0x3} << 62);
    bits |= Wide{0x2} << 62;
    return "2.25." + decimal(bits);
}

std::string Pseudonyms::patientId(std::string_view original) const {
    std::string id = "P" + digest("patient", original).substr(0, 12);
    std::transform(id.begin(), id.end(), id.begin(), [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    return id;
}

int Pseudonyms::dayShift(std::string_view patientId) const {
    constexpr int kLeast = 30, kMost = 3650;
    const auto bits = static_cast<std::uint64_t>(firstBits(digest("days", patientId), 12));
    return -(kLeast + static_cast<int>(bits % (kMost - kLeast + 1)));
}

std::string randomKey() {
    std::random_device device; // reads the system's entropy
    std::string key;
    char part[9];
    for (int i = 0; i < 4; ++i) {
        std::snprintf(part, sizeof part, "%08x", device());
        key += part;
    }
    return key;
}

std::optional<std::string> shiftedDate(std::string_view value, int days) {
    const bool dashed = value.size() >= 10 && value[4] == '-' && value[7] == '-';
    const auto year = number(value, 0, 4), month = number(value, dashed ? 5 : 4, 2), day = number(value, dashed ? 8 : 6, 2);
    if (!year || !month || !day) return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year(*year), std::chrono::month(static_cast<unsigned>(*month)),
                                           std::chrono::day(static_cast<unsigned>(*day))};
    if (!date.ok()) return std::nullopt;
    const std::chrono::year_month_day moved{std::chrono::sys_days(date) + std::chrono::days(days)};
    char text[24];
    std::snprintf(text, sizeof text, dashed ? "%04d-%02u-%02u" : "%04d%02u%02u", static_cast<int>(moved.year()),
                  static_cast<unsigned>(moved.month()), static_cast<unsigned>(moved.day()));
    return std::string(text).append(value.substr(dashed ? 10 : 8));
}

} // namespace gauge::dicomio
