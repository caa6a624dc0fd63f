// Text of people, in whatever character set the file declares, as UTF-8 (PS3.3 C.12.1.1.2, PS3.5 6.1 and
// annexes H to K).
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gauge::dicomio {

/// Converts the value of a PN, LO, SH, ST, LT, UC or UT attribute.
/// @param characterSets  values of SpecificCharacterSet; empty means ASCII. ISO 2022 escapes are honoured for
/// every set of the standard, whether or not each was declared.
/// Bytes that mean nothing in the declared sets become U+FFFD, control characters a space, so that the
/// result is always valid UTF-8 and safe to print.
std::string toUtf8(std::string_view bytes, const std::vector<std::string>& characterSets);

} // namespace gauge::dicomio
