// Bytes of a file, read forwards: as they are, or inflated within a budget.
#pragma once

#include "core/result.h"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace gauge::dicomio {

/// A regular file open for reading at any place. Safe to read from several threads.
class RegularFile {
public:
    /// @errors FileUnreadable for what cannot be opened or is no regular file (directory, device, socket,
    /// pipe).
    static core::Result<RegularFile> open(const std::filesystem::path& path);

    RegularFile(RegularFile&& other) noexcept;
    RegularFile& operator=(RegularFile&& other) noexcept;
    ~RegularFile();

    std::uint64_t size() const { return m_size; }
    /// Fills `out` from `offset` on. False when the file ends before, or on a read error.
    bool read(std::uint64_t offset, std::span<std::byte> out) const;

private:
    RegularFile(int descriptor, std::uint64_t size) : m_descriptor(descriptor), m_size(size) {}
    int m_descriptor = -1;
    std::uint64_t m_size = 0;
};

/// Forward reader. After a call has returned false the stream stays at its end.
class ByteStream {
public:
    virtual ~ByteStream() = default;
    virtual bool read(std::span<std::byte> out) = 0;
    virtual bool skip(std::uint64_t count) = 0;
    virtual bool atEnd() = 0;
    /// Place of the next byte.
    virtual std::uint64_t position() const = 0;
    /// Where the stream ends, if that is known before it has been read.
    virtual std::optional<std::uint64_t> length() const = 0;
};

/// The bytes of `file` from `start` to `end`, through a small buffer.
class FileStream : public ByteStream {
public:
    FileStream(const RegularFile& file, std::uint64_t start);
    bool read(std::span<std::byte> out) override;
    bool skip(std::uint64_t count) override;
    bool atEnd() override { return m_position >= m_file.size(); }
    std::uint64_t position() const override { return m_position; }
    std::optional<std::uint64_t> length() const override { return m_file.size(); }

private:
    const RegularFile& m_file;
    std::uint64_t m_position;
    std::uint64_t m_bufferStart = 0;
    std::vector<std::byte> m_buffer;
};

/// The raw-deflate stream (RFC 1951) that starts at `start` of `file`, inflated as it is read. Holds two
/// small buffers, however far it expands; stops after `budget` bytes, so that a bomb cannot keep it busy.
class InflateStream : public ByteStream {
public:
    InflateStream(const RegularFile& file, std::uint64_t start, std::uint64_t budget);
    ~InflateStream() override;
    bool read(std::span<std::byte> out) override;
    bool skip(std::uint64_t count) override;
    bool atEnd() override;
    std::uint64_t position() const override { return m_position; }
    std::optional<std::uint64_t> length() const override { return std::nullopt; }
    /// True when reading stopped because the budget was used up.
    bool overBudget() const { return m_overBudget; }

private:
    struct Zlib;
    bool refill();

    std::unique_ptr<Zlib> m_zlib;
    FileStream m_source;
    std::uint64_t m_sourceLeft;
    std::uint64_t m_budget;
    std::uint64_t m_position = 0;
    bool m_overBudget = false;
    std::vector<std::byte> m_input;
    std::vector<std::byte> m_output;
    std::size_t m_outputBegin = 0;
    std::size_t m_outputEnd = 0;
};

} // namespace gauge::dicomio
