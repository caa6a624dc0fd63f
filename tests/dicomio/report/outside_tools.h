// Programs that others wrote, asked for their opinion of our objects.
#pragma once

#include "tests/dicomio/support/python.h"

#include <cstdlib>
#include <filesystem>
#include <string>

namespace gauge::test {

struct ToolRun {
    int code = 0;
    std::string out;
    std::string err;
};

inline ToolRun runTool(const std::string& command, const std::filesystem::path& folder) {
    const auto out = folder / "tool-out", err = folder / "tool-err";
    const int code = std::system((command + " >'" + out.string() + "' 2>'" + err.string() + "'").c_str());
    return {code, contentOf(out), contentOf(err)};
}

inline ToolRun runScript(const std::string& script, const std::string& arguments,
                         const std::filesystem::path& folder) {
    return runTool("nice /usr/bin/python3 -W ignore '" GAUGE_SOURCE_DIR "/tests/dicomio/report/" + script +
                       "' " + arguments,
                   folder);
}

inline std::string quoted(const std::filesystem::path& path) {
    return "'" + path.string() + "'";
}

/// Lines of dciodvfy that are errors. It prints all it has to say on standard error.
inline std::string errorsOfDciodvfy(const std::filesystem::path& file, const std::filesystem::path& folder) {
    const ToolRun run = runTool("dciodvfy " + quoted(file), folder);
    std::string errors, line;
    for (const char c : run.out + run.err) {
        if (c != '\n') {
            line += c;
            continue;
        }
        if (line.find("Error") != std::string::npos) errors += line + "\n";
        line.clear();
    }
    if ((run.out + run.err).empty())
        errors = "dciodvfy (Debian package dicom3tools) said nothing: is it installed?";
    return errors;
}

} // namespace gauge::test
