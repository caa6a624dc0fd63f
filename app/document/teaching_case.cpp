#include "app/document/teaching_case.h"

#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

namespace gauge::app {
namespace {

constexpr std::uintmax_t kMostBytes = 16u << 20; // far above what the generator writes
constexpr std::string_view kOurFormat = "ostium-gauge/";

using Json = nlohmann::json;

/// Null when the file is absent, not JSON, or not ours.
Json readOurs(const std::filesystem::path& file) {
    std::error_code code;
    if (!std::filesystem::is_regular_file(file, code) || std::filesystem::file_size(file, code) > kMostBytes || code)
        return nullptr;
    std::ifstream stream(file, std::ios::binary);
    const Json json = Json::parse(stream, nullptr, /*allow_exceptions=*/false);
    if (!json.is_object() || !json.contains("format") || !json["format"].is_string())
        return nullptr;
    return json["format"].get<std::string>().starts_with(kOurFormat) ? json : Json(nullptr);
}

std::optional<core::PatientPoint> point(const Json& json) {
    if (!json.is_array() || json.size() != 3)
        return std::nullopt;
    for (const auto& item : json)
        if (!item.is_number())
            return std::nullopt;
    return core::PatientPoint{{json[0].get<double>(), json[1].get<double>(), json[2].get<double>()}};
}

core::Result<std::optional<TeachingMarks>> marksOf(const Json& json, const std::filesystem::path& file) {
    TeachingMarks marks;
    const auto found = json.find("marks");
    for (const core::MarkKind kind : core::kMarkKinds) {
        const std::string key(core::name(kind));
        if (found == json.end() || !found->is_object() || !found->contains(key) || (*found)[key].is_null())
            continue;
        const auto place = point((*found)[key]);
        if (!place)
            return core::failure(core::ErrorCode::RecordUnreadable,
                                 "Cannot place the marks of the teaching case: in " + file.string() + " the mark \"" +
                                     key + "\" is not three numbers. Write the teaching case again with "
                                           "`ostium-gauge sample FOLDER`, or mark the points yourself.");
        marks.points.emplace(kind, *place);
    }
    if (marks.points.empty())
        return core::failure(core::ErrorCode::RecordUnreadable,
                             "Cannot place the marks of the teaching case: " + file.string() +
                                 " has none. Mark atrium and tip yourself.");
    return std::optional(marks);
}

} // namespace

core::Result<std::optional<TeachingMarks>> findTeachingMarks(const std::filesystem::path& folder) {
    const std::filesystem::path whole = std::filesystem::absolute(folder).lexically_normal();
    const std::filesystem::path here = whole.filename().empty() ? whole.parent_path() : whole;
    for (const auto& place : {here, here.parent_path()}) {
        const auto file = place / "answers.json";
        if (const Json json = readOurs(file); !json.is_null())
            return marksOf(json, file);
    }
    return std::optional<TeachingMarks>();
}

} // namespace gauge::app
