// The attributes that a scanned file declares, as far as the readers use them, with typed access.
// An attribute that is absent, one that is empty and one that holds something else than it should are three
// different findings, and each names the tag.
#pragma once

#include "core/result.h"
#include "dicomio/scan/tag.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gauge::dicomio {

class Dataset;

/// One kept attribute: its value as in the file (little endian), or the items of a sequence.
struct Attribute {
    std::string vr; ///< value representation; "UN" where an implicit file leaves it open
    std::string value;
    std::vector<Dataset> items;
};

/// Attributes by tag. Getters return nullopt when the attribute is absent or empty, and an Error
/// (AttributeInvalid) when it is there but cannot be read as asked.
class Dataset {
public:
    const Attribute* find(Tag tag) const;
    bool has(Tag tag) const { return find(tag) != nullptr; }

    /// Text without padding; bytes as in the file (see character_set.h for text of people).
    std::string text(Tag tag) const;
    /// The values between backslashes, padding removed.
    std::vector<std::string> texts(Tag tag) const;

    /// Decimal or integer strings, or binary numbers (US, SS, UL, SL, FL, FD, as `vr` says). Finite only.
    core::Result<std::optional<std::vector<double>>> numbers(Tag tag) const;
    /// The first of the numbers.
    core::Result<std::optional<double>> number(Tag tag) const;
    /// The first of the numbers, which must be whole and within the range of int.
    core::Result<std::optional<int>> integer(Tag tag) const;
    /// As numbers(), with exactly `count` of them: AttributeMissing when absent or empty.
    core::Result<std::vector<double>> required(Tag tag, std::size_t count) const;

    /// Items of a sequence; empty when absent.
    const std::vector<Dataset>& items(Tag tag) const;
    /// First item of a sequence, or nullptr.
    const Dataset* firstItem(Tag tag) const;

    /// Keeps the first of repeated attributes, as the standard allows each only once.
    Attribute& add(Tag tag, Attribute attribute);

private:
    std::map<Tag, Attribute> m_attributes;
};

} // namespace gauge::dicomio
