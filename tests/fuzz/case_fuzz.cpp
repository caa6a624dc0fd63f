// The reader of case files: what it accepts it must write and read again unchanged.
#include "core/record/case_json.h"

#include <cstdint>
#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace gauge::core;
    const auto file = caseFromJson({reinterpret_cast<const char*>(data), size});
    if (!file)
        return 0;
    const std::string text = caseText(*file);
    const auto again = caseFromJson(text);
    if (!again || caseText(*again) != text)
        std::abort();
    return 0;
}
