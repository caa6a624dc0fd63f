#include "dicomio/scan/dataset.h"

#include <charconv>
#include <cmath>
#include <cstring>
#include <limits>
#include <utility>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;

bool isPadding(char c) {
    return c == ' ' || c == '\0' || c == '\t' || c == '\r' || c == '\n';
}

std::string_view trimmed(std::string_view s) {
    while (!s.empty() && isPadding(s.back()))
        s.remove_suffix(1);
    while (!s.empty() && isPadding(s.front()))
        s.remove_prefix(1);
    return s;
}

std::vector<std::string_view> split(std::string_view s) {
    std::vector<std::string_view> parts;
    for (;;) {
        const auto at = s.find('\\');
        parts.push_back(trimmed(s.substr(0, at)));
        if (at == std::string_view::npos) return parts;
        s.remove_prefix(at + 1);
    }
}

/// Printable form of a value for a message: short, without control characters.
std::string shown(std::string_view value) {
    std::string out;
    for (const char c : value.substr(0, 64))
        out += (c >= 0x20 && c < 0x7f) ? c : '?';
    return value.size() > 64 ? out + "…" : out;
}

template <class T> double binaryNumber(const char* bytes) {
    T value{};
    std::memcpy(&value, bytes, sizeof value);
    return static_cast<double>(value);
}

struct BinaryKind {
    std::string_view vr;
    std::size_t size;
    double (*read)(const char*);
};

constexpr BinaryKind kBinaryKinds[] = {
    {"US", 2, binaryNumber<std::uint16_t>}, {"SS", 2, binaryNumber<std::int16_t>},
    {"UL", 4, binaryNumber<std::uint32_t>}, {"SL", 4, binaryNumber<std::int32_t>},
    {"FL", 4, binaryNumber<float>},         {"FD", 8, binaryNumber<double>},
};

const BinaryKind* binaryKind(Tag tag, std::string_view vr) {
    const std::string_view kind = vr == "UN" ? impliedVr(tag) : vr;
    for (const auto& candidate : kBinaryKinds)
        if (candidate.vr == kind) return &candidate;
    return nullptr;
}

tl::unexpected<core::Error> invalid(Tag tag, std::string_view value, const std::string& wanted) {
    return failure(ErrorCode::AttributeInvalid,
                   describe(tag) + " holds \"" + shown(value) + "\"; needed: " + wanted + ".",
                   {{"tag", describe(tag)}, {"value", shown(value)}});
}

core::Result<std::optional<std::vector<double>>> binaryNumbers(Tag tag, const Attribute& attribute,
                                                               const BinaryKind& kind) {
    if (attribute.value.size() % kind.size != 0)
        return failure(ErrorCode::AttributeInvalid,
                       describe(tag) + " has " + std::to_string(attribute.value.size()) +
                           " bytes, which is no whole number of " + std::string(kind.vr) + " values.",
                       {{"tag", describe(tag)}});
    std::vector<double> numbers;
    for (std::size_t at = 0; at < attribute.value.size(); at += kind.size)
        numbers.push_back(kind.read(attribute.value.data() + at));
    for (const double n : numbers)
        if (!std::isfinite(n)) return invalid(tag, "a value that is not finite", "a finite number");
    return numbers;
}

/// A decimal string of PS3.5 6.2: optional sign, digits, point, exponent.
std::optional<double> decimal(std::string_view s) {
    if (!s.empty() && s.front() == '+') s.remove_prefix(1);
    double value = 0.0;
    const auto [end, error] = std::from_chars(s.data(), s.data() + s.size(), value);
    if (error != std::errc{} || end != s.data() + s.size()) return std::nullopt;
    return value;
}

} // namespace

const Attribute* Dataset::find(Tag tag) const {
    const auto at = m_attributes.find(tag);
    return at == m_attributes.end() ? nullptr : &at->second;
}

Attribute& Dataset::add(Tag tag, Attribute attribute) {
    return m_attributes.try_emplace(tag, std::move(attribute)).first->second;
}

std::string Dataset::text(Tag tag) const {
    const Attribute* attribute = find(tag);
    return attribute ? std::string(trimmed(attribute->value)) : std::string();
}

std::vector<std::string> Dataset::texts(Tag tag) const {
    const Attribute* attribute = find(tag);
    if (!attribute || trimmed(attribute->value).empty()) return {};
    const auto parts = split(attribute->value);
    return {parts.begin(), parts.end()};
}

core::Result<std::optional<std::vector<double>>> Dataset::numbers(Tag tag) const {
    const Attribute* attribute = find(tag);
    if (!attribute || attribute->value.empty()) return std::nullopt;
    if (const BinaryKind* kind = binaryKind(tag, attribute->vr)) return binaryNumbers(tag, *attribute, *kind);
    if (trimmed(attribute->value).empty()) return std::nullopt;
    std::vector<double> numbers;
    for (const auto part : split(attribute->value)) {
        const auto value = decimal(part);
        if (!value || !std::isfinite(*value))
            return invalid(tag, trimmed(attribute->value), "a finite number");
        numbers.push_back(*value);
    }
    return numbers;
}

core::Result<std::optional<double>> Dataset::number(Tag tag) const {
    auto all = numbers(tag);
    if (!all) return tl::make_unexpected(all.error());
    return *all && !(*all)->empty() ? std::optional<double>((*all)->front()) : std::nullopt;
}

core::Result<std::optional<int>> Dataset::integer(Tag tag) const {
    const auto value = number(tag);
    if (!value) return tl::make_unexpected(value.error());
    if (!*value) return std::nullopt;
    const double v = **value;
    if (v != std::floor(v) || std::abs(v) > std::numeric_limits<int>::max())
        return invalid(tag, std::to_string(v), "a whole number");
    return static_cast<int>(v);
}

core::Result<std::vector<double>> Dataset::required(Tag tag, std::size_t count) const {
    auto all = numbers(tag);
    if (!all) return tl::make_unexpected(all.error());
    if (!*all)
        return failure(ErrorCode::AttributeMissing, describe(tag) + (has(tag) ? " is empty." : " is absent."),
                       {{"tag", describe(tag)}});
    if ((*all)->size() != count)
        return invalid(tag, text(tag), std::to_string(count) + (count == 1 ? " number" : " numbers"));
    return **all;
}

const std::vector<Dataset>& Dataset::items(Tag tag) const {
    static const std::vector<Dataset> none;
    const Attribute* attribute = find(tag);
    return attribute ? attribute->items : none;
}

const Dataset* Dataset::firstItem(Tag tag) const {
    const auto& all = items(tag);
    return all.empty() ? nullptr : &all.front();
}

} // namespace gauge::dicomio
