#include "tests/dicomio/support/dicom_bytes.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <stdexcept>
#include <unistd.h>
#include <zlib.h>

namespace gauge::test {
namespace {

std::string u16(std::uint32_t value, bool big) {
    std::string s{static_cast<char>(value & 0xFF), static_cast<char>(value >> 8 & 0xFF)};
    return big ? std::string(s.rbegin(), s.rend()) : s;
}

std::string u32(std::uint32_t value, bool big) {
    const std::string low = u16(value & 0xFFFF, big), high = u16(value >> 16, big);
    return big ? high + low : low + high;
}

std::string tagBytes(TagNumber tag, bool big) {
    return u16(tag >> 16, big) + u16(tag & 0xFFFF, big);
}

bool isLong(std::string_view vr) {
    return vr == "OB" || vr == "OW" || vr == "OF" || vr == "OD" || vr == "OV" || vr == "SQ" || vr == "UT" ||
           vr == "UN" || vr == "UC";
}

std::string head(TagNumber tag, std::string_view vr, std::uint32_t length, Encoding encoding) {
    const bool big = encoding == Encoding::ExplicitBig;
    std::string out = tagBytes(tag, big);
    if (encoding == Encoding::ImplicitLittle) return out + u32(length, false);
    out += vr;
    return out + (isLong(vr) ? u16(0, big) + u32(length, big) : u16(length, big));
}

std::string swapped(std::string value, std::size_t size) {
    for (std::size_t at = 0; size > 1 && at + size <= value.size(); at += size)
        std::reverse(value.begin() + static_cast<std::ptrdiff_t>(at),
                     value.begin() + static_cast<std::ptrdiff_t>(at + size));
    return value;
}

template <class T> std::string raw(T value) {
    std::string s(sizeof value, '\0');
    std::memcpy(s.data(), &value, sizeof value);
    return s;
}

std::string rleSegment(const std::string& bytes) {
    std::string out;
    for (std::size_t at = 0; at < bytes.size();) {
        std::size_t run = 1;
        while (at + run < bytes.size() && bytes[at + run] == bytes[at] && run < 128)
            ++run;
        if (run > 1) {
            out += static_cast<char>(1 - static_cast<int>(run));
            out += bytes[at];
            at += run;
            continue;
        }
        out += '\0'; // one literal byte
        out += bytes[at++];
    }
    return out.size() % 2 ? out + '\x80' : out;
}

} // namespace

DatasetBytes& DatasetBytes::put(TagNumber tag, Element element) {
    m_elements[tag] = std::move(element);
    return *this;
}

DatasetBytes& DatasetBytes::text(TagNumber tag, std::string_view vr, std::string_view value) {
    std::string padded(value);
    if (padded.size() % 2) padded += vr == "UI" ? '\0' : ' ';
    return put(tag, {std::string(vr), padded, {}, {}, 1});
}

DatasetBytes& DatasetBytes::us(TagNumber tag, std::uint16_t value) {
    return put(tag, {"US", raw(value), {}, {}, 2});
}
DatasetBytes& DatasetBytes::ss(TagNumber tag, std::int16_t value) {
    return put(tag, {"SS", raw(value), {}, {}, 2});
}
DatasetBytes& DatasetBytes::ul(TagNumber tag, std::uint32_t value) {
    return put(tag, {"UL", raw(value), {}, {}, 4});
}
DatasetBytes& DatasetBytes::fd(TagNumber tag, double value) {
    return put(tag, {"FD", raw(value), {}, {}, 8});
}

DatasetBytes& DatasetBytes::words(TagNumber tag, std::string_view vr,
                                  const std::vector<std::uint16_t>& values) {
    std::string bytesOfWords;
    for (const std::uint16_t v : values)
        bytesOfWords += raw(v);
    return put(tag, {std::string(vr), bytesOfWords, {}, {}, 2});
}

DatasetBytes& DatasetBytes::bytes(TagNumber tag, std::string_view vr, std::string value) {
    return put(tag, {std::string(vr), std::move(value), {}, {}, 1});
}

DatasetBytes& DatasetBytes::sequence(TagNumber tag, std::vector<DatasetBytes> items) {
    return put(tag, {"SQ", {}, std::move(items), {}, 1});
}

DatasetBytes& DatasetBytes::fragments(TagNumber tag, std::vector<std::string> fragments) {
    return put(tag, {"OB", {}, {}, std::move(fragments), 1});
}

DatasetBytes& DatasetBytes::remove(TagNumber tag) {
    m_elements.erase(tag);
    return *this;
}

std::string DatasetBytes::encode(Encoding encoding) const {
    const bool big = encoding == Encoding::ExplicitBig;
    std::string out;
    for (const auto& [tag, element] : m_elements) {
        if (!element.parts.empty()) {
            out += head(tag, "OB", 0xFFFFFFFF, encoding);
            for (const std::string& part : element.parts)
                out += tagBytes(0xFFFEE000, big) + u32(static_cast<std::uint32_t>(part.size()), big) + part;
            out += tagBytes(0xFFFEE0DD, big) + u32(0, big);
            continue;
        }
        std::string value = swapped(element.value, big ? element.wordSize : 1);
        for (const DatasetBytes& item : element.items) {
            const std::string inside = item.encode(encoding);
            value += tagBytes(0xFFFEE000, big) + u32(static_cast<std::uint32_t>(inside.size()), big) + inside;
        }
        out += head(tag, element.vr, static_cast<std::uint32_t>(value.size()), encoding) + value;
    }
    return out;
}

std::string part10(std::string_view transferSyntax, std::string_view dataset) {
    DatasetBytes meta;
    meta.text(0x00020010, "UI", transferSyntax);
    const std::string body = meta.encode();
    DatasetBytes length;
    length.ul(0x00020000, static_cast<std::uint32_t>(body.size()));
    return std::string(128, '\0') + "DICM" + length.encode() + body + std::string(dataset);
}

std::string part10(const DatasetBytes& dataset, Encoding encoding) {
    const auto uid = encoding == Encoding::ExplicitLittle   ? kExplicitUid
                     : encoding == Encoding::ImplicitLittle ? kImplicitUid
                                                            : kBigEndianUid;
    return part10(uid, dataset.encode(encoding));
}

std::string explicitElement(TagNumber tag, std::string_view vr, std::uint32_t length,
                            std::string_view value) {
    return head(tag, vr, length, Encoding::ExplicitLittle) + std::string(value);
}

std::string littleU32(std::uint32_t value) {
    return u32(value, false);
}

std::string deflated(std::string_view bytes) {
    z_stream z{};
    if (deflateInit2(&z, Z_BEST_COMPRESSION, Z_DEFLATED, -15, 9, Z_DEFAULT_STRATEGY) != Z_OK)
        throw std::runtime_error("deflateInit2");
    std::string out(deflateBound(&z, static_cast<uLong>(bytes.size())), '\0');
    z.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(bytes.data()));
    z.avail_in = static_cast<uInt>(bytes.size());
    z.next_out = reinterpret_cast<Bytef*>(out.data());
    z.avail_out = static_cast<uInt>(out.size());
    const int status = deflate(&z, Z_FINISH);
    out.resize(z.total_out);
    deflateEnd(&z);
    if (status != Z_STREAM_END) throw std::runtime_error("deflate");
    return out;
}

std::string rle16(const std::vector<std::uint16_t>& pixels) {
    std::string high, low;
    for (const std::uint16_t p : pixels) {
        high += static_cast<char>(p >> 8);
        low += static_cast<char>(p & 0xFF);
    }
    const std::string first = rleSegment(high), second = rleSegment(low);
    std::string header =
        littleU32(2) + littleU32(64) + littleU32(64 + static_cast<std::uint32_t>(first.size()));
    header.resize(64, '\0');
    return header + first + second;
}

DatasetBytes CtSlice::dataset() const {
    std::vector<std::uint16_t> values = pixels;
    for (std::size_t i = 0; values.size() < std::size_t{rows} * columns; ++i)
        values.push_back(static_cast<std::uint16_t>(i));
    DatasetBytes d;
    d.text(0x00080008, "CS", "ORIGINAL\\PRIMARY\\AXIAL")
        .text(0x00080016, "UI", kCtClass)
        .text(0x00080018, "UI", sopUid);
    d.text(0x00080060, "CS", "CT")
        .text(0x0008103E, "LO", "Heart")
        .text(0x00100010, "PN", "Invented^Patient")
        .text(0x00100020, "LO", patientId);
    d.text(0x0020000D, "UI", studyUid).text(0x0020000E, "UI", seriesUid).text(0x00200032, "DS", position);
    d.text(0x00200037, "DS", orientation).text(0x00200052, "UI", "1.2.3.9").us(0x00280002, 1);
    d.text(0x00280004, "CS", "MONOCHROME2").us(0x00280010, rows).us(0x00280011, columns);
    d.text(0x00280030, "DS", pixelSpacing)
        .us(0x00280100, 16)
        .us(0x00280101, 16)
        .us(0x00280102, 15)
        .us(0x00280103, 0);
    d.text(0x00281052, "DS", intercept).text(0x00281053, "DS", slope).words(0x7FE00010, "OW", values);
    return d;
}

std::vector<CtSlice> ctStack(int count, double spacingMm) {
    std::vector<CtSlice> slices(static_cast<std::size_t>(count));
    for (int k = 0; k < count; ++k) {
        CtSlice& slice = slices[static_cast<std::size_t>(k)];
        slice.sopUid = "1.2.3.4." + std::to_string(k + 1);
        slice.position = "0\\0\\" + ds(spacingMm * k);
        slice.pixels.assign(std::size_t{slice.rows} * slice.columns,
                            static_cast<std::uint16_t>(1024 + 10 * k));
    }
    return slices;
}

void writeFile(const std::filesystem::path& path, std::string_view bytes) {
    std::ofstream out(path, std::ios::binary);
    out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    if (!out) throw std::runtime_error("cannot write " + path.string());
}

TempFolder::TempFolder() {
    std::string pattern = (std::filesystem::temp_directory_path() / "gauge-test-XXXXXX").string();
    if (!mkdtemp(pattern.data())) throw std::runtime_error("mkdtemp");
    m_path = pattern;
}

TempFolder::~TempFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(m_path, ignored);
}

std::filesystem::path TempFolder::write(const std::string& name, std::string_view bytes) const {
    std::filesystem::create_directories((m_path / name).parent_path());
    writeFile(m_path / name, bytes);
    return m_path / name;
}

std::filesystem::path TempFolder::write(const std::string& name, const DatasetBytes& dataset,
                                        Encoding encoding) const {
    return write(name, part10(dataset, encoding));
}

void writeStack(const TempFolder& folder, const std::vector<CtSlice>& slices) {
    for (std::size_t i = 0; i < slices.size(); ++i)
        folder.write(std::to_string(i) + ".dcm", slices[i].dataset());
}

std::string ds(double value) {
    char text[32];
    std::snprintf(text, sizeof text, "%.12g", value);
    return text;
}

} // namespace gauge::test
