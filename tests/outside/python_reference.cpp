#include "tests/outside/python_reference.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <unistd.h>

namespace gauge::test {
namespace {

namespace fs = std::filesystem;

/// A folder of its own in the temporary folder, removed at the end.
struct Exchange {
    fs::path folder;

    Exchange() {
        std::string pattern = (fs::temp_directory_path() / "gauge-outside-XXXXXX").string();
        if (mkdtemp(pattern.data()) == nullptr) throw std::runtime_error("cannot make a folder like " + pattern);
        folder = pattern;
    }
    ~Exchange() {
        std::error_code ignored;
        fs::remove_all(folder, ignored);
    }
    std::string quoted(const char* file) const { return "'" + (folder / file).string() + "'"; }
};

std::string textOf(const fs::path& path) {
    std::ostringstream out;
    out << std::ifstream(path).rdbuf();
    return out.str();
}

} // namespace

nlohmann::json askPython(const std::string& function, const nlohmann::json& arguments) {
    const Exchange exchange;
    std::ofstream(exchange.folder / "arguments.json") << arguments;
    const std::string command = std::string("'" GAUGE_PYTHON "' '" GAUGE_SOURCE_DIR "/tests/outside/reference.py' ") +
                                function + " " + exchange.quoted("arguments.json") + " " +
                                exchange.quoted("answer.json") + " >" + exchange.quoted("said") + " 2>&1";
    if (const int code = std::system(command.c_str()); code != 0)
        throw std::runtime_error("reference.py " + function + " failed (" + std::to_string(code) +
                                 "): " + textOf(exchange.folder / "said"));
    return nlohmann::json::parse(textOf(exchange.folder / "answer.json"));
}

nlohmann::json toJson(std::span<const Eigen::Vector2d> points) {
    auto out = nlohmann::json::array();
    for (const auto& p : points)
        out.push_back({p.x(), p.y()});
    return out;
}

nlohmann::json toJson(std::span<const Eigen::Vector3d> points) {
    auto out = nlohmann::json::array();
    for (const auto& p : points)
        out.push_back({p.x(), p.y(), p.z()});
    return out;
}

} // namespace gauge::test
