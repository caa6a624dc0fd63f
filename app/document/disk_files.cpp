#include "app/document/disk_files.h"

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>
#include <utility>

namespace gauge::app {
namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t kMostBytes = std::uintmax_t(1) << 30;

/// What the system said, and what to do about the two findings that a person can mend.
std::string systemWords(int number) {
    std::string words = std::strerror(number);
    if (number == ENOSPC || number == EDQUOT || number == EFBIG)
        words += "; make space on the disk, or save elsewhere";
    else if (number == EACCES || number == EROFS || number == EPERM)
        words += "; the folder does not let you write, save elsewhere";
    return words;
}

tl::unexpected<core::Error> unwritable(const fs::path& file, int number) {
    return core::failure(core::ErrorCode::OutputUnwritable,
                         "Cannot write " + file.string() + ": " + systemWords(number) + ".", {{"path", file.string()}});
}

/// 0, or the system's error number.
int writeAll(int handle, std::string_view text) {
    while (!text.empty()) {
        const ssize_t written = ::write(handle, text.data(), text.size());
        if (written < 0 && errno == EINTR) continue;
        if (written < 0) return errno;
        text.remove_prefix(static_cast<std::size_t>(written));
    }
    return ::fsync(handle) == 0 ? 0 : errno;
}

/// A new name or a rename lasts only once the folder is on the disk too. Some network file systems refuse; their
/// servers do it by themselves.
void synchroniseFolderOf(const fs::path& file) {
    const fs::path folder = file.has_parent_path() ? file.parent_path() : fs::path(".");
    const int handle = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (handle < 0) return;
    ::fsync(handle);
    ::close(handle);
}

fs::path numbered(const fs::path& file, int number) {
    return fs::path(file).concat("." + std::to_string(number));
}

} // namespace

core::Result<void> writeWhole(const fs::path& file, std::string_view text) {
    const fs::path fresh = fs::path(file).concat(".new-" + std::to_string(::getpid()));
    const int handle = ::open(fresh.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600);
    if (handle < 0) return unwritable(file, errno);
    struct stat present {};
    if (::stat(file.c_str(), &present) == 0) ::fchmod(handle, present.st_mode & 0777);
    int number = writeAll(handle, text);
    if (::close(handle) != 0 && number == 0) number = errno;
    if (number == 0) return putInPlace(fresh, file);
    ::unlink(fresh.c_str());
    return unwritable(file, number);
}

core::Result<void> putInPlace(const fs::path& fresh, const fs::path& file) {
    if (::rename(fresh.c_str(), file.c_str()) != 0) {
        const int number = errno;
        ::unlink(fresh.c_str());
        return unwritable(file, number);
    }
    synchroniseFolderOf(file);
    return {};
}

core::Result<std::string> readWhole(const fs::path& file) {
    const auto unreadable = [&](const std::string& finding) {
        return core::failure(core::ErrorCode::FileUnreadable, "Cannot read " + file.string() + ": " + finding + ".",
                             {{"path", file.string()}});
    };
    const int handle = ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
    if (handle < 0) return unreadable(std::strerror(errno));
    struct stat status {};
    std::string text;
    std::string finding;
    if (::fstat(handle, &status) != 0)
        finding = std::strerror(errno);
    else if (!S_ISREG(status.st_mode))
        finding = "it is no file";
    else if (static_cast<std::uintmax_t>(status.st_size) > kMostBytes)
        finding = "it is larger than 1 GiB, which no case is";
    else
        text.resize(static_cast<std::size_t>(status.st_size));
    std::size_t done = 0;
    while (finding.empty() && done < text.size()) {
        const ssize_t got = ::read(handle, text.data() + done, text.size() - done);
        if (got < 0 && errno == EINTR) continue;
        if (got < 0) finding = std::strerror(errno);
        if (got <= 0) break;
        done += static_cast<std::size_t>(got);
    }
    ::close(handle);
    if (!finding.empty()) return unreadable(finding);
    text.resize(done);
    return text;
}

void keepEarlier(const fs::path& file, int count) {
    std::error_code code;
    if (!fs::exists(file, code)) return;
    for (int number = count; number > 1; --number)
        if (const fs::path younger = numbered(file, number - 1); fs::exists(younger, code))
            fs::rename(younger, numbered(file, number), code);
    fs::remove(numbered(file, 1), code);
    fs::create_hard_link(file, numbered(file, 1), code);
    if (!code) return;
    if (const auto text = readWhole(file)) std::ignore = writeWhole(numbered(file, 1), *text);
}

core::Result<GrowingFile> GrowingFile::open(const fs::path& file) {
    const int handle = ::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
    if (handle < 0) return unwritable(file, errno);
    GrowingFile made(file, handle, 0); // closes the handle on the ways out below
    if (::flock(handle, LOCK_EX | LOCK_NB) != 0)
        return core::failure(core::ErrorCode::NothingUsable,
                             "The case is open in another window or program, which writes " + file.string() + ".",
                             {{"path", file.string()}});
    const off_t length = ::lseek(handle, 0, SEEK_END);
    if (length < 0) return unwritable(file, errno);
    made.m_length = static_cast<std::uintmax_t>(length);
    synchroniseFolderOf(file);
    return made;
}

GrowingFile::GrowingFile(GrowingFile&& other) noexcept
    : m_path(std::move(other.m_path)), m_handle(std::exchange(other.m_handle, -1)), m_length(other.m_length) {}

GrowingFile& GrowingFile::operator=(GrowingFile&& other) noexcept {
    std::swap(m_path, other.m_path);
    std::swap(m_handle, other.m_handle);
    std::swap(m_length, other.m_length);
    return *this;
}

GrowingFile::~GrowingFile() {
    if (m_handle >= 0) ::close(m_handle);
}

core::Result<void> GrowingFile::add(std::string_view text) {
    int number = ::lseek(m_handle, static_cast<off_t>(m_length), SEEK_SET) < 0 ? errno : 0;
    if (number == 0) number = writeAll(m_handle, text);
    if (number == 0) {
        m_length += text.size();
        return {};
    }
    std::ignore = ::ftruncate(m_handle, static_cast<off_t>(m_length));
    return unwritable(m_path, number);
}

core::Result<void> GrowingFile::cut(std::uintmax_t keepBytes) {
    if (::ftruncate(m_handle, static_cast<off_t>(keepBytes)) != 0) return unwritable(m_path, errno);
    m_length = keepBytes;
    return {};
}

bool isHeld(const fs::path& file) {
    const int handle = ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
    if (handle < 0) return false;
    const bool held = ::flock(handle, LOCK_EX | LOCK_NB) != 0;
    ::close(handle);
    return held;
}

} // namespace gauge::app
