#include "app/document/teaching_case.h"

#include <cmath>
#include <fstream>
#include <limits>
#include <nlohmann/json.hpp>

namespace gauge::app {
namespace {

constexpr std::uintmax_t kMostBytes = 16u << 20; // far above what the generator writes
constexpr std::string_view kOurFormat = "ostium-gauge/sample-answers/";

using Json = nlohmann::json;

/// Null when the file is absent, not JSON, or not ours.
Json readOurs(const std::filesystem::path& file) {
    std::error_code code;
    if (!std::filesystem::is_regular_file(file, code) ||
        std::filesystem::file_size(file, code) > kMostBytes || code)
        return nullptr;
    std::ifstream stream(file, std::ios::binary);
    const Json json = Json::parse(stream, nullptr, /*allow_exceptions=*/false);
    if (!json.is_object() || !json.contains("format") || !json["format"].is_string()) return nullptr;
    return json["format"].get<std::string>().starts_with(kOurFormat) ? json : Json(nullptr);
}

std::optional<core::PatientPoint> point(const Json& json) {
    if (!json.is_array() || json.size() != 3) return std::nullopt;
    for (const auto& item : json)
        if (!item.is_number()) return std::nullopt;
    return core::PatientPoint{{json[0].get<double>(), json[1].get<double>(), json[2].get<double>()}};
}

/// The object of marks of the phase nearest to `percent`; null when the file lists none.
Json nearestMarks(const Json& json, double percent) {
    Json nearest = nullptr;
    double distance = std::numeric_limits<double>::infinity();
    for (const Json& phase : json.value("phases", Json::array())) {
        if (!phase.is_object() || !phase.contains("marks_lps_mm") || !phase["marks_lps_mm"].is_object())
            continue;
        const auto at = phase.find("percent");
        const double off = at != phase.end() && at->is_number() ? std::abs(at->get<double>() - percent) : 1e6;
        if (off < distance) {
            distance = off;
            nearest = phase["marks_lps_mm"];
        }
    }
    return nearest;
}

core::Result<std::optional<TeachingMarks>> marksOf(const Json& json, double percent,
                                                   const std::filesystem::path& file) {
    const Json given = nearestMarks(json, percent);
    TeachingMarks marks;
    for (const core::MarkKind kind : core::kMarkKinds) {
        const std::string key(core::name(kind));
        if (!given.is_object() || !given.contains(key) || given[key].is_null()) continue;
        const auto place = point(given[key]);
        if (!place)
            return core::failure(core::ErrorCode::RecordUnreadable,
                                 "Cannot place the marks of the teaching case: in " + file.string() +
                                     " the mark \"" + key +
                                     "\" is not three numbers. Write the teaching case again with "
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

core::Result<std::optional<TeachingMarks>> findTeachingMarks(const std::filesystem::path& folder,
                                                             double percent) {
    const std::filesystem::path whole = std::filesystem::absolute(folder).lexically_normal();
    const std::filesystem::path here = whole.filename().empty() ? whole.parent_path() : whole;
    for (const auto& place : {here, here.parent_path()}) {
        const auto file = place / "answers.json";
        if (const Json json = readOurs(file); !json.is_null()) return marksOf(json, percent, file);
    }
    return std::optional<TeachingMarks>();
}

} // namespace gauge::app
