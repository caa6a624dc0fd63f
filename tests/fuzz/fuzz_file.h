// Bytes as a file, for readers that take a path.
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>

namespace gauge::test {

/// A regular file in memory, made once and refilled for every input.
class FuzzFile {
public:
    /// The one file of this process.
    static FuzzFile& instance();
    /// Replaces the content. @return where to read it.
    const std::filesystem::path& fill(const std::uint8_t* data, std::size_t size);
    /// The folder that holds the file and nothing else.
    const std::filesystem::path& folder() const { return m_folder; }

private:
    FuzzFile();
    ~FuzzFile();
    FuzzFile(const FuzzFile&) = delete;
    FuzzFile& operator=(const FuzzFile&) = delete;

    std::filesystem::path m_folder;
    std::filesystem::path m_path;
};

} // namespace gauge::test
