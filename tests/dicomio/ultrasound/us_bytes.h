// Ultrasound files made byte by byte for tests.
#pragma once

#include "core/result.h"
#include "dicomio/scan/scanner.h"
#include "dicomio/ultrasound/us_facts.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <algorithm>
#include <bit>
#include <optional>
#include <string>
#include <vector>

namespace gauge::test {

inline constexpr std::string_view kUsClass = "1.2.840.10008.5.1.4.1.1.6.1";
inline constexpr std::string_view kUsMultiFrameClass = "1.2.840.10008.5.1.4.1.1.3.1";
inline constexpr std::string_view kUsVolumeClass = "1.2.840.10008.5.1.4.1.1.6.2";

inline std::string floats(const std::vector<float>& values) {
    std::string out;
    for (const float v : values)
        out += littleU32(std::bit_cast<std::uint32_t>(v));
    return out;
}

/// FD of several values.
inline std::string doubles(const std::vector<double>& values) {
    std::string out;
    for (const double v : values) {
        const auto bits = std::bit_cast<std::uint64_t>(v);
        out +=
            littleU32(static_cast<std::uint32_t>(bits)) + littleU32(static_cast<std::uint32_t>(bits >> 32));
    }
    return out;
}

/// One item of SequenceOfUltrasoundRegions: a tissue region of 0.5 x 0.25 mm pixels; change what a test is
/// about.
struct RegionBytes {
    std::optional<int> format = 1, type = 1;
    std::uint32_t flags = 0;
    std::uint32_t minX = 10, minY = 20, maxX = 109, maxY = 119;
    std::optional<std::int32_t> referenceX, referenceY; ///< from the region's corner
    std::optional<double> valueX, valueY;
    std::optional<int> unitX = 3, unitY = 3;
    std::optional<double> deltaX = 0.05, deltaY = 0.025;

    DatasetBytes dataset() const {
        DatasetBytes out;
        const auto us = [&](TagNumber tag, const std::optional<int>& v) {
            if (v) out.us(tag, static_cast<std::uint16_t>(*v));
        };
        const auto fd = [&](TagNumber tag, const std::optional<double>& v) {
            if (v) out.fd(tag, *v);
        };
        us(0x00186012, format);
        us(0x00186014, type);
        out.ul(0x00186016, flags).ul(0x00186018, minX).ul(0x0018601A, minY).ul(0x0018601C, maxX);
        out.ul(0x0018601E, maxY);
        if (referenceX) out.bytes(0x00186020, "SL", littleU32(static_cast<std::uint32_t>(*referenceX)));
        if (referenceY) out.bytes(0x00186022, "SL", littleU32(static_cast<std::uint32_t>(*referenceY)));
        us(0x00186024, unitX);
        us(0x00186026, unitY);
        fd(0x00186028, valueX);
        fd(0x0018602A, valueY);
        fd(0x0018602C, deltaX);
        fd(0x0018602E, deltaY);
        return out;
    }
};

inline RegionBytes spectralRegion() {
    RegionBytes r;
    r.format = 3;
    r.type = 3;
    r.unitX = 4;
    r.unitY = 7;
    r.deltaX = 0.004;
    r.deltaY = -1.5;
    r.referenceX = 0;
    r.referenceY = 50;
    r.minY = 130;
    r.maxY = 229;
    return r;
}

/// A grey cine without regions.
inline DatasetBytes usDataset(int frames = 2, std::uint16_t columns = 320, std::uint16_t rows = 240) {
    DatasetBytes d;
    d.text(0x00080016, "UI", frames > 1 ? kUsMultiFrameClass : kUsClass).text(0x00080018, "UI", "1.2.3.4.5");
    d.text(0x00080060, "CS", "US").text(0x0020000D, "UI", "1.2.3").text(0x0020000E, "UI", "1.2.3.4");
    d.us(0x00280002, 1).text(0x00280004, "CS", "MONOCHROME2").us(0x00280010, rows).us(0x00280011, columns);
    d.us(0x00280100, 8).us(0x00280101, 8).us(0x00280102, 7).us(0x00280103, 0);
    if (frames > 1) d.text(0x00280008, "IS", std::to_string(frames));
    std::string pixels(static_cast<std::size_t>(frames) * columns * rows, '\0');
    for (std::size_t i = 0; i < pixels.size(); ++i)
        pixels[i] = static_cast<char>(i % 251);
    d.bytes(0x7FE00010, "OW", pixels);
    return d;
}

inline DatasetBytes& addRegions(DatasetBytes& dataset, const std::vector<RegionBytes>& regions) {
    std::vector<DatasetBytes> items;
    for (const auto& region : regions)
        items.push_back(region.dataset());
    return dataset.sequence(0x00186011, std::move(items));
}

/// What the header of the data set says, through the scanner.
inline dicomio::UltrasoundFacts factsOf(const DatasetBytes& dataset,
                                        Encoding encoding = Encoding::ExplicitLittle) {
    const TempFolder folder;
    const auto scanned = dicomio::scanFile(folder.write("us.dcm", dataset, encoding));
    if (!scanned) throw std::runtime_error(scanned.error().message);
    return dicomio::usFacts(scanned->dataset, scanned->format->columns, scanned->format->rows,
                            scanned->format->frames);
}

inline dicomio::UltrasoundFacts factsOf(const std::vector<RegionBytes>& regions) {
    DatasetBytes dataset = usDataset();
    return factsOf(addRegions(dataset, regions));
}

inline std::vector<std::string> codesOf(const std::vector<core::Notice>& notices) {
    std::vector<std::string> codes;
    for (const auto& notice : notices)
        codes.push_back(notice.code);
    return codes;
}

/// The text of the only notice with that code.
inline std::string textOf(const std::vector<core::Notice>& notices, const std::string& code) {
    std::string text;
    for (const auto& notice : notices)
        if (notice.code == code) {
            EXPECT_TRUE(text.empty()) << "a second " << code << ": " << notice.text;
            text = notice.text;
        }
    return text;
}

} // namespace gauge::test
