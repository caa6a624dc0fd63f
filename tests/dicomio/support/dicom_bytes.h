// DICOM files made byte by byte for tests, without any toolkit: right ones and, as easily, wrong ones.
#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace gauge::test {

enum class Encoding { ExplicitLittle, ImplicitLittle, ExplicitBig };

inline constexpr std::string_view kImplicitUid = "1.2.840.10008.1.2";
inline constexpr std::string_view kExplicitUid = "1.2.840.10008.1.2.1";
inline constexpr std::string_view kDeflatedUid = "1.2.840.10008.1.2.1.99";
inline constexpr std::string_view kBigEndianUid = "1.2.840.10008.1.2.2";
inline constexpr std::string_view kRleUid = "1.2.840.10008.1.2.5";
inline constexpr std::string_view kCtClass = "1.2.840.10008.5.1.4.1.1.2";
inline constexpr std::string_view kEnhancedCtClass = "1.2.840.10008.5.1.4.1.1.2.1";

using TagNumber = std::uint32_t; ///< group in the upper, element in the lower half

/// A data set in the making: elements in the order of their tags.
class DatasetBytes {
public:
    DatasetBytes& text(TagNumber tag, std::string_view vr, std::string_view value);
    DatasetBytes& us(TagNumber tag, std::uint16_t value);
    DatasetBytes& ss(TagNumber tag, std::int16_t value);
    DatasetBytes& ul(TagNumber tag, std::uint32_t value);
    DatasetBytes& fd(TagNumber tag, double value);
    DatasetBytes& words(TagNumber tag, std::string_view vr, const std::vector<std::uint16_t>& values);
    DatasetBytes& bytes(TagNumber tag, std::string_view vr, std::string value);
    DatasetBytes& sequence(TagNumber tag, std::vector<DatasetBytes> items);
    /// Encapsulated pixels; the first fragment is the basic offset table.
    DatasetBytes& fragments(TagNumber tag, std::vector<std::string> fragments);
    DatasetBytes& remove(TagNumber tag);

    std::string encode(Encoding encoding = Encoding::ExplicitLittle) const;

private:
    struct Element {
        std::string vr;
        std::string value; ///< little endian
        std::vector<DatasetBytes> items;
        std::vector<std::string> parts;
        std::size_t wordSize = 1;
    };
    DatasetBytes& put(TagNumber tag, Element element);
    std::map<TagNumber, Element> m_elements;
};

/// Preamble, mark and meta information for a transfer syntax, followed by an encoded data set.
std::string part10(std::string_view transferSyntax, std::string_view dataset);
std::string part10(const DatasetBytes& dataset, Encoding encoding = Encoding::ExplicitLittle);

/// One element's head and value in explicit little endian, for malformed files.
std::string explicitElement(TagNumber tag, std::string_view vr, std::uint32_t length, std::string_view value);
std::string littleU32(std::uint32_t value);

/// Raw deflate (RFC 1951) of bytes.
std::string deflated(std::string_view bytes);
/// RLE of PS3.5 annex G for 16-bit pixels: two segments.
std::string rle16(const std::vector<std::uint16_t>& pixels);

/// A classic CT slice with everything that a reader needs; change what a test is about.
struct CtSlice {
    std::string seriesUid = "1.2.3.4";
    std::string studyUid = "1.2.3";
    std::string patientId = "P1";
    std::string sopUid = "1.2.3.4.1";
    std::uint16_t rows = 4;
    std::uint16_t columns = 5;
    std::string position = "0\\0\\0";
    std::string orientation = "1\\0\\0\\0\\1\\0";
    std::string pixelSpacing = "0.5\\0.25";
    std::string slope = "1";
    std::string intercept = "-1024";
    std::vector<std::uint16_t> pixels; ///< rows x columns, or empty for a ramp
    DatasetBytes dataset() const;
};

/// `count` slices along +z, `spacingMm` apart, with UIDs of their own and pixels that tell the slice.
std::vector<CtSlice> ctStack(int count, double spacingMm);

void writeFile(const std::filesystem::path& path, std::string_view bytes);

/// A folder that goes with the test.
class TempFolder {
public:
    TempFolder();
    ~TempFolder();
    TempFolder(const TempFolder&) = delete;
    TempFolder& operator=(const TempFolder&) = delete;
    const std::filesystem::path& path() const { return m_path; }
    std::filesystem::path write(const std::string& name, std::string_view bytes) const;
    std::filesystem::path write(const std::string& name, const DatasetBytes& dataset,
                                Encoding encoding = Encoding::ExplicitLittle) const;

private:
    std::filesystem::path m_path;
};

/// Writes slices as 0.dcm, 1.dcm …
void writeStack(const TempFolder& folder, const std::vector<CtSlice>& slices);

/// Decimal string of a coordinate, with 12 digits.
std::string ds(double value);

} // namespace gauge::test
