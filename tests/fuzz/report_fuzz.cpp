// Measurement reports, ours and others': content tree, numbers, regions and rows.
#include "dicomio/report/report_reader.h"
#include "tests/fuzz/fuzz_file.h"

#include <cmath>
#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace gauge::dicomio;
    const auto read = readReport(gauge::test::FuzzFile::instance().fill(data, size));
    if (!read) return 0;
    for (const ReportRow& row : rowsOf(*read))
        if (!std::isfinite(row.value) ||
            row.unit.value.empty()) // a number without its unit must not come through
            std::abort();
    return 0;
}
