#include "tests/bench/compare/slice_loop.h"

#include <gdcmImage.h>
#include <gdcmImageReader.h>
#include <stdexcept>

namespace gauge::bench {
namespace {

void loadSlice(const std::filesystem::path& path, std::int16_t* out, std::size_t count) {
    gdcm::ImageReader reader;
    reader.SetFileName(path.c_str());
    if (!reader.Read()) throw std::runtime_error("GDCM cannot read " + path.string());
    const gdcm::Image& image = reader.GetImage();
    if (image.GetBufferLength() != 2 * count || !image.GetBuffer(reinterpret_cast<char*>(out)))
        throw std::runtime_error("GDCM gives other pixels of " + path.string());
    const int by = static_cast<int>(image.GetIntercept());
    for (std::size_t i = 0; i < count; ++i)
        out[i] = static_cast<std::int16_t>(out[i] + by);
}

} // namespace

Library gdcm() {
    return sliceLoop("GDCM", loadSlice);
}

} // namespace gauge::bench
