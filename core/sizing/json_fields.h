// Typed fields of a JSON document, each finding with the path of its field and what was found there. Shared
// by the readers of charts and of observations; private to core/sizing.
#pragma once

#include <functional>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace gauge::core::json_fields {

/// What is wrong with a document. Thrown inside core/sizing only; `guarded` turns it into a text.
struct Finding {
    std::string text;
};

/// What a left atrium can reach, and a document may therefore say.
inline constexpr double kGreatestPressureMmHg = 60.0;

/// A value for a message: kind and content, shortened: `text "ct"`, `number 3`, `null`, `a list of 2`.
std::string described(const nlohmann::json& value);

/// One object of a document. Fields that nobody asks for are left alone.
class Fields {
public:
    /// Throws Finding when `json` is no object. @param path  of this object; empty for the document itself.
    Fields(const nlohmann::json& json, std::string path);

    /// Absent and null are the same: there is none.
    bool has(std::string_view key) const;
    std::string text(std::string_view key) const; ///< non-empty
    std::string textOr(std::string_view key, std::string otherwise) const;
    double number(std::string_view key, double least, double most) const;
    std::optional<double> optionalNumber(std::string_view key, double least, double most) const;
    bool flagOr(std::string_view key, bool otherwise) const;
    /// Two numbers [lo, hi] with lo < hi, both from least to most.
    std::pair<double, double> band(std::string_view key, double least, double most) const;
    Fields object(std::string_view key) const;
    /// The objects of a list; an absent list is empty.
    std::vector<Fields> objects(std::string_view key) const;
    const nlohmann::json& list(std::string_view key) const;

    /// One of the words; the message lists them.
    template <class T>
    T word(std::string_view key, const std::vector<std::pair<const char*, T>>& words) const {
        const std::string found = text(key);
        for (const auto& [name, value] : words)
            if (found == name) return value;
        std::string allowed;
        for (const auto& entry : words)
            allowed += (allowed.empty() ? "" : ", ") + std::string(entry.first);
        wrong(key, "one of " + allowed);
    }
    template <class T>
    T wordOr(std::string_view key, T otherwise, const std::vector<std::pair<const char*, T>>& words) const {
        return has(key) ? word(key, words) : otherwise;
    }

    const std::string& path() const { return m_path; }
    std::string pathOf(std::string_view key) const;
    /// Throws: the field, what stands there, what is allowed.
    [[noreturn]] void wrong(std::string_view key, const std::string& allowed) const;

private:
    const nlohmann::json& required(std::string_view key, const char* what) const;

    const nlohmann::json* m_json;
    std::string m_path;
};

/// Parses a document and hands it to `read`. What either throws comes back as text; empty when all went well.
/// A document with a key that stands twice in one object is refused: one of the two values would be lost in
/// silence.
std::string guarded(std::string_view text, const std::function<void(const Fields&)>& read);

} // namespace gauge::core::json_fields
