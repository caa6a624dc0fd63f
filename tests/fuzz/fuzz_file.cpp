#include "tests/fuzz/fuzz_file.h"

#include <cstdio>
#include <cstdlib>
#include <string>
#include <unistd.h>

namespace gauge::test {
namespace fs = std::filesystem;

FuzzFile& FuzzFile::instance() {
    static FuzzFile file;
    return file;
}

FuzzFile::FuzzFile() {
    std::error_code none;
    const fs::path base = fs::is_directory("/dev/shm", none) ? fs::path("/dev/shm") : fs::temp_directory_path();
    m_folder = base / ("gauge-fuzz-" + std::to_string(::getpid()));
    m_path = m_folder / "input.dcm";
    fs::create_directory(m_folder);
}

FuzzFile::~FuzzFile() {
    std::error_code ignored;
    fs::remove_all(m_folder, ignored);
}

const fs::path& FuzzFile::fill(const std::uint8_t* data, std::size_t size) {
    std::FILE* file = std::fopen(m_path.c_str(), "wb");
    if (file == nullptr || std::fwrite(data, 1, size, file) != size || std::fclose(file) != 0)
        std::abort(); // no room for an input: nothing can be said about it
    return m_path;
}

} // namespace gauge::test
