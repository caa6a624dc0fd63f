// The system's Python with its DICOM packages, as an outside opinion.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace gauge::test {

/// Runs a script of tests/dicomio/outside with arguments; its standard output and error go into `log`.
/// @return true when it ended well.
bool runPython(const std::string& script, const std::vector<std::string>& arguments,
               const std::filesystem::path& log);

/// The pydicom package's own data folder; throws when the package is absent.
std::filesystem::path pydicomData();

std::string contentOf(const std::filesystem::path& file);

/// OSTIUM_GAUGE_REAL_DATA, else ../shared/real-data beside the source; may not exist.
std::filesystem::path realDataFolder();

} // namespace gauge::test
