#include "core/record/case_checksum.h"

#include <array>
#include <cassert>
#include <openssl/evp.h>

namespace gauge::core {
namespace {

constexpr std::string_view kBefore = "\n \"sha256\": \"";

/// Place of the first digit; npos without such a line.
std::size_t digitsAt(std::string_view text) {
    const std::size_t line = text.find(kBefore);
    if (line == std::string_view::npos) return line;
    const std::size_t digits = line + kBefore.size();
    const bool isWhole = text.size() > digits + kChecksumDigits && text[digits + kChecksumDigits] == '"' &&
                         text.substr(digits, kChecksumDigits).find_first_not_of("0123456789abcdef") ==
                             std::string_view::npos;
    return isWhole ? digits : std::string_view::npos;
}

} // namespace

std::string sha256(std::string_view bytes) {
    std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
    unsigned int length = 0;
    [[maybe_unused]] const int done =
        EVP_Digest(bytes.data(), bytes.size(), digest.data(), &length, EVP_sha256(), nullptr);
    assert(done == 1 && 2 * length == kChecksumDigits);
    constexpr std::string_view kHex = "0123456789abcdef";
    std::string digits;
    for (unsigned int i = 0; i < length; ++i) {
        digits += kHex[digest[i] >> 4];
        digits += kHex[digest[i] & 15];
    }
    return digits;
}

Checksum checksumOf(std::string_view text) {
    const std::size_t at = digitsAt(text);
    if (at == std::string_view::npos)
        // Digits that were damaged are no sign that there never were any.
        return text.find(kBefore) == std::string_view::npos ? Checksum::Absent : Checksum::Differs;
    std::string blank(text);
    blank.replace(at, kChecksumDigits, kChecksumDigits, '0');
    return sha256(blank) == text.substr(at, kChecksumDigits) ? Checksum::Matches : Checksum::Differs;
}

std::string withChecksum(std::string text) {
    const std::size_t at = digitsAt(text);
    assert(at != std::string::npos);
    text.replace(at, kChecksumDigits, kChecksumDigits, '0');
    return text.replace(at, kChecksumDigits, sha256(text));
}

} // namespace gauge::core
