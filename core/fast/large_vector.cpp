#include "core/fast/large_vector.h"

#include <cstdlib>

#if defined(__linux__)
#include <sys/mman.h>
#endif

namespace gauge::core {
namespace {

constexpr std::size_t kLargePage = std::size_t{2} << 20;
constexpr std::size_t kLeastBytes = 2 * kLargePage; // below this the unused end of the last page would count

} // namespace

void* allocateLarge(std::size_t bytes) {
    if (bytes < kLeastBytes)
        return ::operator new(bytes);
    // The end is left as it is: what is not touched takes no memory.
    void* memory = std::aligned_alloc(kLargePage, (bytes + kLargePage - 1) / kLargePage * kLargePage);
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
    else
        std::free(memory);
}

} // namespace gauge::core
