#include "core/sizing/json_fields.h"

#include "core/number_text.h"

#include <cmath>
#include <set>

namespace gauge::core::json_fields {
namespace {

/// Parses, refusing keys that stand twice in one object.
nlohmann::json parsed(std::string_view text) {
    std::vector<std::set<std::string>> open;
    const auto watch = [&](int, nlohmann::json::parse_event_t event, nlohmann::json& value) {
        using Event = nlohmann::json::parse_event_t;
        if (event == Event::object_start) open.emplace_back();
        if (event == Event::object_end && !open.empty()) open.pop_back();
        if (event == Event::key && !open.empty() && !open.back().insert(value.get<std::string>()).second)
            throw Finding{"the key \"" + value.get<std::string>() + "\" stands twice in one object"};
        return true;
    };
    return nlohmann::json::parse(text, watch);
}

} // namespace

std::string described(const nlohmann::json& value) {
    if (value.is_null()) return "null";
    if (value.is_boolean()) return value.get<bool>() ? "true" : "false";
    if (value.is_number()) return "the number " + general(value.get<double>());
    if (value.is_array()) return "a list of " + std::to_string(value.size());
    if (value.is_object()) return "an object";
    std::string text = value.get<std::string>();
    if (text.size() > 60) text = text.substr(0, 57) + "...";
    return "the text \"" + text + "\"";
}

Fields::Fields(const nlohmann::json& json, std::string path) : m_json(&json), m_path(std::move(path)) {
    if (!json.is_object())
        throw Finding{(m_path.empty() ? std::string("the document") : m_path) + " holds " + described(json) +
                      "; an object is needed"};
}

bool Fields::has(std::string_view key) const {
    const auto found = m_json->find(key);
    return found != m_json->end() && !found->is_null();
}

const nlohmann::json& Fields::required(std::string_view key, const char* what) const {
    const auto found = m_json->find(key);
    if (found == m_json->end()) throw Finding{pathOf(key) + " is absent; " + what + " is needed"};
    if (found->is_null()) throw Finding{pathOf(key) + " is null; " + what + " is needed"};
    return *found;
}

std::string Fields::text(std::string_view key) const {
    const auto& value = required(key, "a text");
    if (!value.is_string()) wrong(key, "a text");
    auto text = value.get<std::string>();
    if (text.find_first_not_of(" \t\r\n") == std::string::npos)
        throw Finding{pathOf(key) + " is empty; a text is needed"};
    return text;
}

std::string Fields::textOr(std::string_view key, std::string otherwise) const {
    return has(key) ? text(key) : std::move(otherwise);
}

double Fields::number(std::string_view key, double least, double most) const {
    const std::string allowed = "a number from " + general(least) + " to " + general(most);
    const auto& value = required(key, allowed.c_str());
    if (!value.is_number()) wrong(key, allowed);
    const auto number = value.get<double>();
    if (!(number >= least && number <= most)) wrong(key, allowed);
    return number;
}

std::optional<double> Fields::optionalNumber(std::string_view key, double least, double most) const {
    return has(key) ? std::optional(number(key, least, most)) : std::nullopt;
}

bool Fields::flagOr(std::string_view key, bool otherwise) const {
    if (!has(key)) return otherwise;
    const auto& value = m_json->at(std::string(key));
    if (!value.is_boolean()) wrong(key, "true or false");
    return value.get<bool>();
}

std::pair<double, double> Fields::band(std::string_view key, double least, double most) const {
    const std::string allowed =
        "two numbers [lo, hi] with lo below hi, both from " + general(least) + " to " + general(most);
    const auto& value = required(key, allowed.c_str());
    if (!value.is_array() || value.size() != 2 || !value[0].is_number() || !value[1].is_number())
        wrong(key, allowed);
    const std::pair<double, double> band{value[0].get<double>(), value[1].get<double>()};
    if (!(band.first >= least && band.second <= most && band.first < band.second))
        throw Finding{pathOf(key) + " holds [" + general(band.first) + ", " + general(band.second) + "]; " +
                      allowed + " are needed"};
    return band;
}

Fields Fields::object(std::string_view key) const {
    return {required(key, "an object"), pathOf(key)};
}

const nlohmann::json& Fields::list(std::string_view key) const {
    const auto& value = required(key, "a list");
    if (!value.is_array()) wrong(key, "a list");
    return value;
}

std::vector<Fields> Fields::objects(std::string_view key) const {
    std::vector<Fields> items;
    if (!has(key)) return items;
    const auto& values = list(key);
    for (std::size_t i = 0; i < values.size(); ++i)
        items.emplace_back(values[i], pathOf(key) + "[" + std::to_string(i) + "]");
    return items;
}

std::string Fields::pathOf(std::string_view key) const {
    return m_path.empty() ? std::string(key) : m_path + "." + std::string(key);
}

void Fields::wrong(std::string_view key, const std::string& allowed) const {
    throw Finding{pathOf(key) + " holds " + described(m_json->at(std::string(key))) + "; " + allowed +
                  " is needed"};
}

std::string guarded(std::string_view text, const std::function<void(const Fields&)>& read) {
    try {
        const nlohmann::json document = parsed(text);
        read(Fields(document, ""));
    } catch (const Finding& finding) {
        return finding.text;
    } catch (const nlohmann::json::exception& error) {
        return std::string("it is not JSON: ") + error.what();
    }
    return {};
}

} // namespace gauge::core::json_fields
