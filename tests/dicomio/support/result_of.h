// Short access to results in tests: fails loudly with the error's message.
#pragma once

#include "core/result.h"

#include <gtest/gtest.h>

namespace gauge::test {

template <class T> const T& valueOf(const core::Result<T>& result) {
    if (!result) throw std::runtime_error("unexpected error: " + result.error().message);
    return *result;
}

template <class T> core::Error errorOf(const core::Result<T>& result) {
    if (result) {
        ADD_FAILURE() << "an error was expected";
        return {};
    }
    return result.error();
}

} // namespace gauge::test
