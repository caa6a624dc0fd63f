#include "core/fast/large_vector.h"

#include "core/fast/spare_memory.h"

#include <cstdlib>
#include <mutex>
#include <vector>

#if defined(__linux__)
#include <sys/mman.h>
#endif

namespace gauge::core {
namespace {

constexpr std::size_t kLargePage = std::size_t{2} << 20;
constexpr std::size_t kLeastBytes = 2 * kLargePage; // below this the unused end of the last page would count
constexpr std::size_t kLeastSpare = 8 * kLargePage; // smaller ones are cheap

std::size_t wholePages(std::size_t bytes) {
    return (bytes + kLargePage - 1) / kLargePage * kLargePage;
}

/// Freed blocks, the one freed first in front.
class SpareBlocks {
public:
    /// A block of at least `bytes` and not much more; null when there is none.
    void* take(std::size_t bytes) {
        const std::lock_guard lock(m_mutex);
        for (std::size_t i = m_blocks.size(); i-- > 0;) {
            const Block block = m_blocks[i];
            if (block.bytes < bytes || block.bytes - bytes > bytes / 8) continue;
            m_blocks.erase(m_blocks.begin() + static_cast<std::ptrdiff_t>(i));
            m_bytes -= block.bytes;
            return block.memory;
        }
        return nullptr;
    }

    /// False when the block is not worth keeping.
    bool keep(void* memory, std::size_t bytes) {
        if (!kKeepsSpareLarge || bytes < kLeastSpare || bytes > kMostSpareBytes) return false;
        const std::lock_guard lock(m_mutex);
        while (m_bytes + bytes > kMostSpareBytes || m_blocks.size() == m_blocks.capacity()) dropFirst();
        m_blocks.push_back({memory, bytes});
        m_bytes += bytes;
        return true;
    }

    std::size_t bytes() const {
        const std::lock_guard lock(m_mutex);
        return m_bytes;
    }

    void release() {
        const std::lock_guard lock(m_mutex);
        while (!m_blocks.empty()) dropFirst();
    }

private:
    struct Block {
        void* memory;
        std::size_t bytes;
    };
    static std::vector<Block> room() { // made once: keeping a block must not fail
        std::vector<Block> blocks;
        blocks.reserve(kMostSpareBytes / kLeastSpare);
        return blocks;
    }
    void dropFirst() {
        std::free(m_blocks.front().memory);
        m_bytes -= m_blocks.front().bytes;
        m_blocks.erase(m_blocks.begin());
    }

    mutable std::mutex m_mutex;
    std::vector<Block> m_blocks = room();
    std::size_t m_bytes = 0;
};

/// Never destroyed: arrays of static lifetime may be freed after it would be.
SpareBlocks& spareBlocks() {
    static SpareBlocks& blocks = *new SpareBlocks;
    return blocks;
}

} // namespace

void* allocateLarge(std::size_t bytes) {
    if (bytes < kLeastBytes)
        return ::operator new(bytes);
    if (void* spare = spareBlocks().take(wholePages(bytes)))
        return spare;
    // The end is left as it is: what is not touched takes no memory.
    void* memory = std::aligned_alloc(kLargePage, wholePages(bytes));
    if (memory == nullptr) {
        releaseSpareLarge();
        memory = std::aligned_alloc(kLargePage, wholePages(bytes));
    }
    if (memory == nullptr)
        throw std::bad_alloc();
#if defined(__linux__) && defined(MADV_HUGEPAGE)
    // Only whole pages: the last part of one would take 2 MiB for less. A system that declines serves small pages.
    (void)madvise(memory, bytes / kLargePage * kLargePage, MADV_HUGEPAGE);
#endif
    return memory;
}

void freeLarge(void* memory, std::size_t bytes) noexcept {
    if (bytes < kLeastBytes)
        ::operator delete(memory);
    else if (!spareBlocks().keep(memory, wholePages(bytes)))
        std::free(memory);
}

std::size_t spareLargeBytes() {
    return spareBlocks().bytes();
}

void releaseSpareLarge() {
    spareBlocks().release();
}

} // namespace gauge::core
