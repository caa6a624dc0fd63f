#include "tests/layers/include_rules.h"

#include <cctype>
#include <fstream>
#include <optional>
#include <regex>
#include <string_view>

namespace gauge::test {
namespace {

namespace fs = std::filesystem;

bool isQt(std::string_view name) {
    return name.size() > 1 && name[0] == 'Q' && (std::isupper(static_cast<unsigned char>(name[1])) || name[1] == 't');
}

bool isDicomLibrary(std::string_view name) {
    return name.starts_with("dcmtk/") || name.starts_with("openjpeg");
}

bool isOpenSsl(std::string_view name) {
    return name.starts_with("openssl/");
}

struct Rule {
    std::string_view room; ///< prefix of the file's path
    std::string_view words;
    bool (*forbids)(std::string_view included);
    bool headersOnly = false;
};

template <const std::string_view& Prefix> bool startsWith(std::string_view included) {
    return included.starts_with(Prefix);
}
constexpr std::string_view kDicomio = "dicomio/", kApp = "app/", kTests = "tests/", kSampleData = "sample-data/",
                           kVolume = "core/volume/", kMeasure = "core/measure/", kAnatomy = "core/anatomy/",
                           kRecord = "core/record/";

const Rule kRules[] = {
    {"core/", "core does not know Qt", isQt},
    {"core/", "core does not know DICOM", isDicomLibrary},
    {"core/", "core does not know dicomio", startsWith<kDicomio>},
    {"core/", "core does not know app", startsWith<kApp>},
    {"core/", "core does not know sample-data", startsWith<kSampleData>},
    {"core/", "OpenSSL's headers stay in .cpp files", isOpenSsl, true},
    {"dicomio/", "checksums are made in core/record", isOpenSsl},
    {"app/", "checksums are made in core/record", isOpenSsl},
    {"core/geometry/", "geometry stands below volume", startsWith<kVolume>},
    {"core/geometry/", "geometry stands below measure", startsWith<kMeasure>},
    {"core/geometry/", "geometry stands below anatomy", startsWith<kAnatomy>},
    {"core/geometry/", "geometry stands below record", startsWith<kRecord>},
    {"core/volume/", "volume stands below measure", startsWith<kMeasure>},
    {"core/volume/", "volume stands below anatomy", startsWith<kAnatomy>},
    {"core/volume/", "volume stands below record", startsWith<kRecord>},
    {"core/measure/", "measure stands below anatomy", startsWith<kAnatomy>},
    {"core/measure/", "measure stands below record", startsWith<kRecord>},
    {"core/anatomy/", "anatomy stands below record", startsWith<kRecord>},
    {"dicomio/", "dicomio does not know Qt", isQt},
    {"dicomio/", "dicomio does not know app", startsWith<kApp>},
    {"dicomio/", "dicomio does not know sample-data", startsWith<kSampleData>},
    {"dicomio/", "the DICOM libraries' headers stay in .cpp files", isDicomLibrary, true},
    {"app/", "app speaks to DICOM through dicomio only", isDicomLibrary},
    {"sample-data/", "the sample case judges core/measure, so must not use it", startsWith<kMeasure>},
    {"sample-data/", "the sample case judges core/anatomy, so must not use it", startsWith<kAnatomy>},
    {"sample-data/", "the sample case judges dicomio, so must not use it", startsWith<kDicomio>},
    {"sample-data/", "sample-data does not know app", startsWith<kApp>},
    {"sample-data/", "sample-data does not know Qt", isQt},
    {"core/", "only tests include tests", startsWith<kTests>},
    {"dicomio/", "only tests include tests", startsWith<kTests>},
    {"app/", "only tests include tests", startsWith<kTests>},
    {"sample-data/", "only tests include tests", startsWith<kTests>},
};

std::optional<std::string> includedBy(const std::string& line) {
    static const std::regex pattern(R"re(^\s*#\s*include\s*[<"]([^">]+)[">])re");
    std::smatch match;
    if (!std::regex_search(line, match, pattern)) return std::nullopt;
    return match[1].str();
}

bool isSource(const fs::path& path) {
    const auto extension = path.extension();
    return extension == ".h" || extension == ".cpp" || extension == ".inl";
}

template <class Visit> void forEachSource(const fs::path& root, Visit visit) {
    for (auto it = fs::recursive_directory_iterator(root); it != fs::recursive_directory_iterator(); ++it) {
        const std::string name = it->path().filename().string();
        if (it->is_directory() && (name == "build" || name.starts_with('.')))
            it.disable_recursion_pending();
        else if (it->is_regular_file() && isSource(it->path()))
            visit(it->path());
    }
}

void checkLine(const std::string& file, int number, const std::string& included, std::vector<Crossing>& out) {
    for (const Rule& rule : kRules)
        if (file.starts_with(rule.room) && rule.forbids(included) && !(rule.headersOnly && file.ends_with(".cpp")))
            out.push_back({file, number, included, std::string(rule.words)});
}

} // namespace

std::vector<Crossing> findCrossings(const fs::path& root) {
    std::vector<Crossing> out;
    forEachSource(root, [&](const fs::path& path) {
        const std::string file = fs::relative(path, root).generic_string();
        std::ifstream in(path);
        std::string line;
        for (int number = 1; std::getline(in, line); ++number)
            if (const auto included = includedBy(line)) checkLine(file, number, *included, out);
    });
    return out;
}

std::size_t countSources(const fs::path& root) {
    std::size_t count = 0;
    forEachSource(root, [&](const fs::path&) { ++count; });
    return count;
}

} // namespace gauge::test
