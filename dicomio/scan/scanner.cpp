#include "dicomio/scan/scanner.h"

#include "dicomio/scan/walker.h"

#include <algorithm>
#include <array>
#include <cstring>
#include <utility>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;

constexpr std::uint64_t kPreambleBytes = 128;
constexpr std::string_view kImplicitLittle = "1.2.840.10008.1.2";
constexpr std::string_view kExplicitLittle = "1.2.840.10008.1.2.1";
constexpr std::string_view kExplicitBig = "1.2.840.10008.1.2.2";
constexpr std::string_view kDirectoryClass = "1.2.840.10008.1.3.10";

tl::unexpected<core::Error> notDicom(const std::string& finding) {
    return failure(ErrorCode::NotDicom, "It is not DICOM: " + finding);
}

/// How a data set without any mark starts, judged by its first eight bytes.
struct Start {
    std::string_view syntax; ///< empty: no data set that we know
    bool meta = false;       ///< starts with group 0002
};

bool looksLikeVr(const std::array<std::byte, 8>& b) {
    const auto letter = [](std::byte c) { return c >= std::byte{'A'} && c <= std::byte{'Z'}; };
    return letter(b[4]) && letter(b[5]);
}

Start startOf(const std::array<std::byte, 8>& b) {
    const auto at = [&](int i) { return static_cast<unsigned>(b[static_cast<std::size_t>(i)]); };
    const unsigned littleGroup = at(0) | at(1) << 8, bigGroup = at(0) << 8 | at(1);
    const unsigned littleElement = at(2) | at(3) << 8, bigElement = at(2) << 8 | at(3);
    if (littleGroup == 0x0002 && littleElement <= 0x0002 && looksLikeVr(b)) return {kExplicitLittle, true};
    if (littleGroup == 0x0008 && littleElement <= 0x0060) {
        if (looksLikeVr(b)) return {kExplicitLittle, false};
        const unsigned length = at(4) | at(5) << 8 | at(6) << 16 | at(7) << 24;
        return length < 1024 ? Start{kImplicitLittle, false} : Start{};
    }
    if (bigGroup == 0x0008 && bigElement <= 0x0060 && looksLikeVr(b)) return {kExplicitBig, false};
    return {};
}

/// Finds where meta information and data set start. Sets syntax and datasetOffset.
core::Result<void> readStart(const RegularFile& file, ScannedFile& scanned) {
    std::array<std::byte, 4> mark{};
    std::array<std::byte, 8> first{};
    if (file.size() == 0) return notDicom("the file is empty.");
    std::uint64_t metaOffset = 0;
    if (file.read(kPreambleBytes, mark) && std::memcmp(mark.data(), "DICM", 4) == 0) {
        metaOffset = kPreambleBytes + 4;
    } else {
        const Start start = file.read(0, first) ? startOf(first) : Start{};
        if (start.syntax.empty())
            return notDicom("there is no DICM mark at byte 128 and no data set at its start.");
        if (!start.meta) {
            scanned.syntax = transferSyntax(start.syntax);
            return {};
        }
    }
    FileStream stream(file, metaOffset);
    Walker walker(stream, {true, false});
    if (auto walked = walker.walkMeta(file, scanned.meta); !walked) return walked;
    scanned.datasetOffset = stream.position();
    const std::string uid = scanned.meta.text(tags::TransferSyntaxUid);
    if (!uid.empty()) {
        scanned.syntax = transferSyntax(uid);
        return {};
    }
    const Start start = file.read(scanned.datasetOffset, first) ? startOf(first) : Start{};
    if (start.syntax.empty() || start.meta)
        return failure(ErrorCode::AttributeMissing,
                       describe(tags::TransferSyntaxUid) +
                           " is absent, and the data set does not show how it is encoded.",
                       {{"tag", describe(tags::TransferSyntaxUid)}});
    scanned.syntax = transferSyntax(start.syntax);
    scanned.notices.push_back(
        {"transfer-syntax-absent",
         describe(tags::TransferSyntaxUid) + " is absent; the data set reads as " + scanned.syntax.name + ".",
         {}});
    return {};
}

/// Some writers declare implicit and write explicit, or the other way round; the first attribute tells.
void correctVrEncoding(const RegularFile& file, ScannedFile& scanned) {
    std::array<std::byte, 8> first{};
    if (scanned.syntax.deflated || scanned.syntax.bigEndian || !file.read(scanned.datasetOffset, first))
        return;
    const Start start = startOf(first);
    if (start.syntax.empty() || start.meta || start.syntax == kExplicitBig) return;
    const bool explicitVr = start.syntax == kExplicitLittle;
    if (explicitVr == scanned.syntax.explicitVr) return;
    scanned.notices.push_back({"transfer-syntax-contradicted",
                               "The data set is written with " +
                                   std::string(explicitVr ? "explicit" : "implicit") +
                                   " value representations although " + describe(tags::TransferSyntaxUid) +
                                   " says " + scanned.syntax.name + ".",
                               {}});
    scanned.syntax.explicitVr = explicitVr;
}

core::Result<void> walkInto(ByteStream& stream, ScannedFile& scanned) {
    Walker walker(stream, {scanned.syntax.explicitVr, scanned.syntax.bigEndian});
    auto walked = walker.walk(scanned.dataset);
    scanned.pixels = walker.takePixels();
    if (walker.leftTrailingBytes())
        scanned.notices.push_back(
            {"trailing-bytes", "Bytes after the pixels could not be understood and were left alone.", {}});
    return walked;
}

core::Result<void> walkDataset(const RegularFile& file, ScannedFile& scanned) {
    if (!scanned.syntax.deflated) {
        FileStream stream(file, scanned.datasetOffset);
        return walkInto(stream, scanned);
    }
    // A first look within a small budget; only a data set that then declares honest pixels is inflated to its
    // end.
    InflateStream small(file, scanned.datasetOffset, kInflateBudgetBytes);
    auto walked = walkInto(small, scanned);
    if (walked || !small.overBudget()) return walked;
    const auto format = pixelFormat(scanned.dataset);
    if (!scanned.pixels || !format || format->nativeBytes() + 1 < scanned.pixels->native.length)
        return failure(ErrorCode::FileDamaged, "The deflated data set grows beyond " +
                                                   std::to_string(kInflateBudgetBytes) +
                                                   " bytes without declaring pixels of that size.");
    scanned.dataset = {};
    scanned.notices.clear();
    InflateStream whole(file, scanned.datasetOffset, kInflateBudgetBytes + format->nativeBytes());
    return walkInto(whole, scanned);
}

/// The pixels against what the attributes ask for.
core::Result<void> checkPixels(ScannedFile& scanned) {
    if (!scanned.pixels) return {};
    const auto format = pixelFormat(scanned.dataset);
    if (!format) return tl::make_unexpected(format.error());
    scanned.format = *format;
    if (scanned.pixels->encapsulated != scanned.syntax.encapsulated() &&
        scanned.syntax.coding != PixelCoding::Unsupported)
        return failure(ErrorCode::FileDamaged,
                       describe(tags::PixelData) +
                           (scanned.pixels->encapsulated ? " is encapsulated" : " is not encapsulated") +
                           " although the transfer syntax is " + scanned.syntax.name + ".",
                       {{"tag", describe(tags::PixelData)}});
    if (scanned.pixels->encapsulated) {
        if (scanned.pixels->fragments.empty())
            return failure(ErrorCode::FileDamaged, describe(tags::PixelData) + " is empty.",
                           {{"tag", describe(tags::PixelData)}});
        return {};
    }
    const std::uint64_t wanted = format->nativeBytes(), found = scanned.pixels->native.length;
    if (found == wanted || found == wanted + wanted % 2) return {};
    if (format->photometric == "YBR_FULL_422") {
        PixelFormat full = *format;
        full.photometric = "YBR_FULL";
        if (const std::uint64_t whole = full.nativeBytes(); found == whole || found == whole + whole % 2) {
            scanned.format = full;
            scanned.notices.push_back({"chroma-not-halved",
                                       describe(tags::PhotometricInterpretation) +
                                           " is YBR_FULL_422, but the pixels hold the chroma of every pixel.",
                                       {}});
            return {};
        }
    }
    return failure(ErrorCode::FileDamaged,
                   describe(tags::PixelData) + " holds " + std::to_string(found) + " bytes where " +
                       std::to_string(format->rows) + " rows x " + std::to_string(format->columns) +
                       " columns x " + std::to_string(format->frames) + " frames x " +
                       std::to_string(format->samplesPerPixel) + " samples of " +
                       std::to_string(format->bitsAllocated) + " bits need " + std::to_string(wanted) + ".",
                   {{"tag", describe(tags::PixelData)}});
}

core::Result<void> scanInto(ScannedFile& scanned) {
    const auto file = RegularFile::open(scanned.path);
    if (!file) return tl::make_unexpected(file.error());
    scanned.fileSize = file->size();
    if (auto started = readStart(*file, scanned); !started) return started;
    correctVrEncoding(*file, scanned);
    if (auto walked = walkDataset(*file, scanned); !walked) return walked;
    if (scanned.sopClassUid().empty()) return notDicom(describe(tags::SopClassUid) + " is absent.");
    return checkPixels(scanned);
}

std::string advice(ErrorCode code) {
    switch (code) {
    case ErrorCode::FileDamaged:
        return " Copy the file again from where it came, or have it sent again.";
    case ErrorCode::AttributeMissing:
    case ErrorCode::AttributeInvalid:
        return " Have the image exported again.";
    default:
        return {};
    }
}

} // namespace

std::string ScannedFile::sopClassUid() const {
    const std::string uid = dataset.text(tags::SopClassUid);
    return uid.empty() ? meta.text(tags::MediaStorageSopClassUid) : uid;
}

bool ScannedFile::isDirectory() const {
    return sopClassUid() == kDirectoryClass;
}

core::Result<ScannedFile> scanFile(const std::filesystem::path& path) {
    ScannedFile scanned;
    scanned.path = path;
    auto done = scanInto(scanned);
    if (done) return scanned;
    core::Error error = std::move(done.error());
    error.message += advice(error.code);
    error.facts.push_back({"file", path.string()});
    const std::string series = scanned.dataset.text(tags::SeriesInstanceUid);
    if (!series.empty()) error.facts.push_back({"series", series});
    return tl::make_unexpected(std::move(error));
}

} // namespace gauge::dicomio
