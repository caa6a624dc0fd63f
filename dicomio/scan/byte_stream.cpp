#include "dicomio/scan/byte_stream.h"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>
#include <utility>
#include <zlib.h>

namespace gauge::dicomio {
namespace {

constexpr std::size_t kBufferBytes = 16 * 1024;
constexpr std::size_t kInflateBytes = 64 * 1024;

std::string kindOf(mode_t mode) {
    if (S_ISDIR(mode)) return "a folder";
    if (S_ISFIFO(mode)) return "a pipe";
    if (S_ISSOCK(mode)) return "a socket";
    return "a device";
}

} // namespace

core::Result<RegularFile> RegularFile::open(const std::filesystem::path& path) {
    // Not blocking: opening a pipe that nobody writes to must not wait for ever.
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
    if (descriptor < 0)
        return core::failure(core::ErrorCode::FileUnreadable,
                             std::string("It cannot be opened: ") + std::strerror(errno) + ".");
    RegularFile file(descriptor, 0);
    struct stat status {};
    if (::fstat(descriptor, &status) != 0)
        return core::failure(core::ErrorCode::FileUnreadable,
                             std::string("It cannot be read: ") + std::strerror(errno) + ".");
    if (!S_ISREG(status.st_mode))
        return core::failure(core::ErrorCode::FileUnreadable,
                             "It is " + kindOf(status.st_mode) + ", not a regular file.");
    file.m_size = static_cast<std::uint64_t>(status.st_size);
    return file;
}

RegularFile::RegularFile(RegularFile&& other) noexcept
    : m_descriptor(std::exchange(other.m_descriptor, -1)), m_size(other.m_size) {}

RegularFile& RegularFile::operator=(RegularFile&& other) noexcept {
    std::swap(m_descriptor, other.m_descriptor);
    std::swap(m_size, other.m_size);
    return *this;
}

RegularFile::~RegularFile() {
    if (m_descriptor >= 0) ::close(m_descriptor);
}

bool RegularFile::read(std::uint64_t offset, std::span<std::byte> out) const {
    if (out.size() > m_size || offset > m_size - out.size()) return false;
    std::size_t done = 0;
    while (done < out.size()) {
        const ssize_t got =
            ::pread(m_descriptor, out.data() + done, out.size() - done, static_cast<off_t>(offset + done));
        if (got < 0 && errno == EINTR) continue;
        if (got <= 0) return false;
        done += static_cast<std::size_t>(got);
    }
    return true;
}

FileStream::FileStream(const RegularFile& file, std::uint64_t start) : m_file(file), m_position(start) {}

bool FileStream::read(std::span<std::byte> out) {
    if (m_position > m_file.size() || out.size() > m_file.size() - m_position) return false;
    if (out.size() >= kBufferBytes) {
        const bool read = m_file.read(m_position, out);
        m_position += out.size();
        return read;
    }
    const std::uint64_t bufferEnd = m_bufferStart + m_buffer.size();
    if (m_position < m_bufferStart || m_position + out.size() > bufferEnd) {
        m_bufferStart = m_position;
        m_buffer.resize(
            static_cast<std::size_t>(std::min<std::uint64_t>(kBufferBytes, m_file.size() - m_position)));
        if (!m_file.read(m_position, m_buffer)) {
            m_buffer.clear();
            return false;
        }
    }
    if (!out.empty()) std::memcpy(out.data(), m_buffer.data() + (m_position - m_bufferStart), out.size());
    m_position += out.size();
    return true;
}

bool FileStream::skip(std::uint64_t count) {
    if (m_position > m_file.size() || count > m_file.size() - m_position) return false;
    m_position += count;
    return true;
}

struct InflateStream::Zlib {
    z_stream stream{};
    bool ready = false;
    bool ended = false;
    ~Zlib() {
        if (ready) inflateEnd(&stream);
    }
};

InflateStream::InflateStream(const RegularFile& file, std::uint64_t start, std::uint64_t budget)
    : m_zlib(std::make_unique<Zlib>()), m_source(file, start),
      m_sourceLeft(start < file.size() ? file.size() - start : 0), m_budget(budget), m_input(kInflateBytes),
      m_output(kInflateBytes) {
    constexpr int kRawDeflate = -15; // no zlib header, as PS3.5 A.5 asks for
    m_zlib->ready = inflateInit2(&m_zlib->stream, kRawDeflate) == Z_OK;
    m_zlib->ended = !m_zlib->ready;
}

InflateStream::~InflateStream() = default;

bool InflateStream::refill() {
    z_stream& z = m_zlib->stream;
    while (!m_zlib->ended) {
        if (z.avail_in == 0 && m_sourceLeft > 0) {
            const auto take = static_cast<std::size_t>(std::min<std::uint64_t>(m_sourceLeft, m_input.size()));
            if (!m_source.read({m_input.data(), take})) break;
            m_sourceLeft -= take;
            z.next_in = reinterpret_cast<Bytef*>(m_input.data());
            z.avail_in = static_cast<uInt>(take);
        }
        z.next_out = reinterpret_cast<Bytef*>(m_output.data());
        z.avail_out = static_cast<uInt>(m_output.size());
        const int status = inflate(&z, Z_NO_FLUSH);
        m_outputBegin = 0;
        m_outputEnd = m_output.size() - z.avail_out;
        m_zlib->ended = status != Z_OK;
        if (m_outputEnd > 0) {
            m_overBudget = m_outputEnd > m_budget;
            m_zlib->ended = m_zlib->ended || m_overBudget;
            m_budget -= std::min<std::uint64_t>(m_budget, m_outputEnd);
            return !m_overBudget;
        }
    }
    m_zlib->ended = true;
    return false;
}

bool InflateStream::atEnd() {
    return m_outputBegin == m_outputEnd && !refill();
}

bool InflateStream::read(std::span<std::byte> out) {
    std::size_t done = 0;
    while (done < out.size()) {
        if (atEnd()) return false;
        const std::size_t take = std::min(out.size() - done, m_outputEnd - m_outputBegin);
        std::memcpy(out.data() + done, m_output.data() + m_outputBegin, take);
        m_outputBegin += take;
        m_position += take;
        done += take;
    }
    return true;
}

bool InflateStream::skip(std::uint64_t count) {
    while (count > 0) {
        if (atEnd()) return false;
        const auto take =
            static_cast<std::size_t>(std::min<std::uint64_t>(count, m_outputEnd - m_outputBegin));
        m_outputBegin += take;
        m_position += take;
        count -= take;
    }
    return true;
}

} // namespace gauge::dicomio
