// Files that survive the end of the program or of the power at any instant: whole files replaced in one step, and logs
// that grow line by line. POSIX; no Qt.
#pragma once

#include "core/result.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

namespace gauge::app {

/// Writes `text` to a new file in the same folder, synchronises it, puts it in the place of `file` and synchronises the
/// folder: whoever opens `file` sees the old or the new one, whole.
/// @errors OutputUnwritable: the message names the file and what the system said (no space, read-only folder…); `file` is
/// then as it was.
core::Result<void> writeWhole(const std::filesystem::path& file, std::string_view text);

/// Gives `fresh`, in the same folder, the name of `file`, in one step that lasts. @errors OutputUnwritable; then `fresh` is
/// gone and `file` as it was.
core::Result<void> putInPlace(const std::filesystem::path& fresh, const std::filesystem::path& file);

/// The whole file. @errors FileUnreadable when it cannot be read, or is larger than any case (1 GiB).
core::Result<std::string> readWhole(const std::filesystem::path& file);

/// Keeps what `file` is now as "file.1", what was "file.1" as "file.2" and so on up to `count`. `file` stays where it is.
/// Best effort: a medium without links gets a copy.
void keepEarlier(const std::filesystem::path& file, int count);

/// A growing file that this program alone writes: locked while open, so that a second program finds out.
class GrowingFile {
public:
    /// Opens or makes it and locks it.
    /// @errors OutputUnwritable; NothingUsable when another program holds the lock.
    static core::Result<GrowingFile> open(const std::filesystem::path& file);

    GrowingFile(GrowingFile&& other) noexcept;
    GrowingFile& operator=(GrowingFile&& other) noexcept;
    ~GrowingFile();

    /// Adds the text and synchronises. After a failure the file is cut to what it was, so that the same text can be
    /// added again. @errors OutputUnwritable.
    core::Result<void> add(std::string_view text);
    /// Keeps its first bytes only. @errors OutputUnwritable.
    core::Result<void> cut(std::uintmax_t keepBytes);

    const std::filesystem::path& path() const { return m_path; }

private:
    GrowingFile(std::filesystem::path path, int handle, std::uintmax_t length)
        : m_path(std::move(path)), m_handle(handle), m_length(length) {}

    std::filesystem::path m_path;
    int m_handle = -1;
    std::uintmax_t m_length = 0;
};

/// True when another open GrowingFile, of this or another program, holds the file.
bool isHeld(const std::filesystem::path& file);

} // namespace gauge::app
