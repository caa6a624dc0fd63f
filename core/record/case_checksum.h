// The checksum that a case file carries about itself, and SHA-256 for whoever in core needs it.
//
// A case file (case_json.h) has the line
//
//     \n "sha256": "<64 digits 0-9a-f>"        a line feed and one space before the key
//
// on its own level, the topmost. Its value is the SHA-256 (FIPS 180-4) of the whole file, byte by byte, in which these 64
// digits stand as zeros. No other place of a file can look like that line: inside texts a line feed is written as \n, and
// deeper levels are indented further. So anyone can check a file with `sed` and `sha256sum`:
//
//     sed 's/^ "sha256": "[0-9a-f]*"/ "sha256": "0000…0"/' X.case.json | sha256sum          (64 zeros)
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace gauge::core {

inline constexpr char kChecksumKey[] = "sha256";
inline constexpr std::size_t kChecksumDigits = 64;

/// SHA-256 as 64 digits 0-9a-f.
std::string sha256(std::string_view bytes);

enum class Checksum {
    Matches,
    Absent,  ///< a file of version 1, or one that another program wrote
    Differs, ///< damaged, or altered by another program
};

Checksum checksumOf(std::string_view caseFileText);

/// The text with the digits of its checksum line set. Precondition: it has that line.
std::string withChecksum(std::string text);

} // namespace gauge::core
