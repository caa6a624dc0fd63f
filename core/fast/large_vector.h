// Big arrays (voxels, masks, distances) on large pages, and without a first pass that fills them with zeros.
//
// A fresh array is touched page by page, and each first touch of a page goes through the system: with pages of 4 KiB
// that costs more than the work on the array itself. Pages of 2 MiB need 512 times fewer touches and keep
// a slanting walk through a volume within the processor's address cache.
#pragma once

#include <cstddef>
#include <memory>
#include <new>
#include <utility>
#include <vector>

namespace gauge::core {

/// Memory for `bytes`; from 4 MiB on aligned to 2 MiB and advised to be kept on large pages where the system knows
/// them (Linux, transparent huge pages "madvise" or "always"). Throws std::bad_alloc, as operator new does.
void* allocateLarge(std::size_t bytes);
void freeLarge(void* memory, std::size_t bytes) noexcept;

/// Allocates by allocateLarge; elements made without a value are left as the memory is.
template <class T> class LargeAllocator {
public:
    using value_type = T;
    LargeAllocator() = default;
    template <class U> LargeAllocator(const LargeAllocator<U>&) {}

    T* allocate(std::size_t count) {
        if (count > static_cast<std::size_t>(-1) / sizeof(T)) throw std::bad_alloc();
        return static_cast<T*>(allocateLarge(count * sizeof(T)));
    }
    void deallocate(T* memory, std::size_t count) noexcept { freeLarge(memory, count * sizeof(T)); }
    template <class U> void construct(U* at) { ::new (static_cast<void*>(at)) U; }
    template <class U, class... Args> void construct(U* at, Args&&... args) {
        ::new (static_cast<void*>(at)) U(std::forward<Args>(args)...);
    }
    template <class U> bool operator==(const LargeAllocator<U>&) const { return true; }
};

/// `LargeVector<float> v(n)` holds n undefined values; `LargeVector<float> v(n, 0.0f)` zeros.
template <class T> using LargeVector = std::vector<T, LargeAllocator<T>>;

} // namespace gauge::core
