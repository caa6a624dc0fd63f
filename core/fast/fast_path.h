// Which form of the hot loops runs: the portable one, or the one for processors with AVX2.
//
// A hot loop is a small family of functions in a table (a struct of function pointers) that exists twice:
//
//   trilinear_rows.h          struct TrilinearRows { void (*values)(…); … };  what each function means
//   trilinear_rows.cpp        the portable twin, plain C++
//   trilinear_rows_avx2.cpp   the same results, bit by bit, with AVX2; returns no table where it cannot be compiled
//
// and is called through `fastOr(portable, avx2)`, which chooses by the processor. The AVX2 files are listed with
// gauge_avx2() in CMake: compiled with -mavx2 -mno-fma, never together with other files, without precompiled headers.
// They use raw pointers only and include nothing but <immintrin.h>, <cstddef>, <cstdint> and headers without inline
// functions or templates: of an inline function that is compiled in two files the linker keeps one, and if that were
// the AVX2 form, an old processor would stop on it.
//
// Tests hold each AVX2 table to its portable twin over random input; benchmarks time both (FastPathScope).
#pragma once

namespace gauge::core {

enum class FastPath { Portable, Avx2 };

/// What this processor and system can run: found once. Portable on every other kind of processor than x86-64, and
/// everywhere when the environment variable OSTIUM_GAUGE_FAST_PATH is "portable".
FastPath bestFastPath();

/// What runs now: the best, unless a FastPathScope says otherwise.
FastPath fastPath();

/// While it lives, the whole process runs the given path, or the best there is where that is less. For tests and
/// benchmarks; scopes end in the opposite order of their beginning.
class FastPathScope {
public:
    explicit FastPathScope(FastPath path);
    ~FastPathScope();
    FastPathScope(const FastPathScope&) = delete;
    FastPathScope& operator=(const FastPathScope&) = delete;

private:
    FastPath m_before;
};

/// The table to call through. @param avx2  null where the AVX2 form was not compiled.
template <class Table> const Table& fastOr(const Table& portable, const Table* avx2) {
    return avx2 != nullptr && fastPath() == FastPath::Avx2 ? *avx2 : portable;
}

} // namespace gauge::core
