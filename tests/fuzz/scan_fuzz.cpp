// The scanner and what the index reads off a header: nothing may crash, hang or allocate beyond the file.
#include "dicomio/index/file_facts.h"
#include "dicomio/scan/character_set.h"
#include "dicomio/scan/scanner.h"
#include "tests/fuzz/fuzz_file.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace gauge::dicomio;
    const auto scanned = scanFile(gauge::test::FuzzFile::instance().fill(data, size));
    if (scanned)
        (void)fileFacts(*scanned);
    return 0;
}
