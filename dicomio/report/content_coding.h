// Content items to and from the toolkit's data sets. Private to dicomio/report.
#pragma once

#include "core/result.h"
#include "dicomio/report/content_item.h"

#include <string>
#include <vector>

class DcmItem;

namespace gauge::dicomio {

/// Puts the item and everything below it into `into`. @errors Internal when the toolkit refuses a value.
core::Result<void> encode(const ContentItem& item, DcmItem& into);

/// A code as an item of a code sequence.
core::Result<void> encodeCode(const Code& code, DcmItem& into);

struct DecodeLimits {
    int levels = 20;
    std::size_t items = 200000;
};

/// @param characterSets  of the file, for texts. @param ignored  counts items that have no meaning here
/// (references to other items, waveforms…).
/// @errors FileDamaged beyond the limits; AttributeInvalid for a number or coordinates that cannot be read.
core::Result<ContentItem> decode(DcmItem& item, const std::vector<std::string>& characterSets,
                                 const DecodeLimits& limits, std::size_t& ignored);

/// The decimal string (DS, at most 16 characters) closest to `value`, which is finite.
std::string decimalString(double value);

/// Valid UTF-8 without control characters and backslashes, at most `longest` characters, as VRs of one line
/// want it.
std::string oneLine(const std::string& text, std::size_t longest);

} // namespace gauge::dicomio
