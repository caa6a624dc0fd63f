// Short access to results in tests: fails loudly with the error's message.
#pragma once

#include "core/result.h"

#include <gtest/gtest.h>
#include <stdexcept>

namespace gauge::test {

template <class T> const T& valueOf(const core::Result<T>& result) {
    if (!result) throw std::runtime_error("unexpected error: " + result.error().message);
    return *result;
}

/// The error of a result that must have failed.
template <class T> core::Error errorOf(const core::Result<T>& result) {
    if (!result) return result.error();
    ADD_FAILURE() << "an error was expected";
    return {};
}

} // namespace gauge::test
