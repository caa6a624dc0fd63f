// What the arrays of large_vector.h leave behind for the next ones.
//
// Even large pages cost: the system clears each before it hands it out, and a virtual machine may first have to ask for it.
// Arrays come and go in the same few sizes (phases of one series, masks and distances of one box), so freed blocks of 16 MiB
// and more are kept for the next array of about their size. Not under the address sanitizer: what is freed must be seen to be.
#pragma once

#include <cstddef>

namespace gauge::core {

/// Whether anything is kept: not under the address sanitizer.
#if defined(__has_feature)
#if __has_feature(address_sanitizer)
inline constexpr bool kKeepsSpareLarge = false;
#else
inline constexpr bool kKeepsSpareLarge = true;
#endif
#elif defined(__SANITIZE_ADDRESS__)
inline constexpr bool kKeepsSpareLarge = false;
#else
inline constexpr bool kKeepsSpareLarge = true;
#endif

/// What freed blocks may take until they are used again; the ones freed first are given back first.
inline constexpr std::size_t kMostSpareBytes = std::size_t{256} << 20;

/// What they take now.
std::size_t spareLargeBytes();

/// Gives all of them back to the system.
void releaseSpareLarge();

} // namespace gauge::core
