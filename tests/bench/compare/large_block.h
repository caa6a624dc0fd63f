// Memory for the voxels that a library loads, on large pages where the system gives them.
#pragma once

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <new>
#include <sys/mman.h>

namespace gauge::bench {

class LargeBlock {
public:
    explicit LargeBlock(std::size_t count) : m_count(count) {
        constexpr std::size_t kPage = std::size_t{2} << 20;
        const std::size_t bytes = (2 * count + kPage - 1) / kPage * kPage;
        m_data = static_cast<std::int16_t*>(std::aligned_alloc(kPage, bytes));
        if (!m_data) throw std::bad_alloc();
        ::madvise(m_data, bytes, MADV_HUGEPAGE);
    }
    ~LargeBlock() { std::free(m_data); }
    LargeBlock(const LargeBlock&) = delete;
    LargeBlock& operator=(const LargeBlock&) = delete;

    std::int16_t* data() { return m_data; }
    std::size_t size() const { return m_count; }
    double mean() const { return meanOf(m_data, m_count); }
    static double meanOf(const std::int16_t* values, std::size_t count) {
        std::int64_t sum = 0;
        for (std::size_t i = 0; i < count; ++i)
            sum += values[i];
        return static_cast<double>(sum) / static_cast<double>(count);
    }

private:
    std::size_t m_count;
    std::int16_t* m_data;
};

} // namespace gauge::bench
