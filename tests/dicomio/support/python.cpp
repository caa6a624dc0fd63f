#include "tests/dicomio/support/python.h"

#include "tests/dicomio/support/dicom_bytes.h"

#include <cstdlib>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace gauge::test {

bool runPython(const std::string& script, const std::vector<std::string>& arguments,
               const std::filesystem::path& log) {
    std::string command =
        "nice /usr/bin/python3 -W ignore '" GAUGE_SOURCE_DIR "/tests/dicomio/outside/" + script + "'";
    for (const std::string& argument : arguments)
        command += " '" + argument + "'";
    return std::system((command + " > '" + log.string() + "' 2>&1").c_str()) == 0;
}

std::string contentOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    std::stringstream text;
    text << in.rdbuf();
    return text.str();
}

std::filesystem::path pydicomData() {
    const TempFolder folder;
    const auto log = folder.path() / "where";
    if (!runPython("where_is_pydicom.py", {}, log)) throw std::runtime_error("no pydicom: " + contentOf(log));
    std::string path = contentOf(log);
    path.erase(path.find_last_not_of("\r\n") + 1);
    return path;
}

std::filesystem::path realDataFolder() {
    const char* told = std::getenv("OSTIUM_GAUGE_REAL_DATA");
    return told ? std::filesystem::path(told)
                : std::filesystem::path(GAUGE_SOURCE_DIR) / "../shared/real-data";
}

} // namespace gauge::test
