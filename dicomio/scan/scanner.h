// The gate for untrusted files. Every DICOM file passes here first, and the toolkit is never given what the
// scanner refuses. Headers are read, pixels are only located.
//
// A file is refused unless: it is a regular file; its structure holds to the last byte before the pixels; no
// sequence nests deeper than kMaxNesting; every length fits into what encloses it and into the file; a
// deflated data set stays within kInflateBudgetBytes apart from its pixels; and uncompressed pixels are
// exactly as many as rows x columns x frames x samples x bits ask for. Memory is bounded by the attributes
// that are kept (tag.h: isWanted), whatever the file holds besides.
#pragma once

#include "core/result.h"
#include "dicomio/scan/dataset.h"
#include "dicomio/scan/pixel_format.h"
#include "dicomio/scan/transfer_syntax.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace gauge::dicomio {

inline constexpr int kMaxNesting = 64;
inline constexpr std::uint64_t kInflateBudgetBytes = std::uint64_t{1} << 26;
inline constexpr std::size_t kMaxKeptItems = 400000;
inline constexpr std::size_t kMaxFragments = 1000000;

/// Bytes somewhere in the file.
struct ByteRange {
    std::uint64_t offset = 0;
    std::uint64_t length = 0;
};

/// Where the pixels are. For a deflated file the place is in the inflated data set.
struct PixelLocation {
    ByteRange native;                        ///< uncompressed pixels
    std::vector<ByteRange> fragments;        ///< encapsulated pixels: the fragments in order, table excluded
    std::vector<std::uint64_t> frameOffsets; ///< offset of each frame's first item header from the end of the
                                             ///< basic offset table; may be empty
    bool encapsulated = false;
    std::string vr; ///< OB or OW; decides the byte order of 8-bit pixels in big-endian files
};

struct ScannedFile {
    std::filesystem::path path;
    std::uint64_t fileSize = 0;
    std::uint64_t datasetOffset = 0; ///< where the data set (or its deflated form) starts
    TransferSyntax syntax;
    Dataset meta; ///< group 0002
    Dataset dataset;
    std::optional<PixelFormat> format; ///< of files with pixels
    std::optional<PixelLocation> pixels;
    std::vector<core::Notice> notices; ///< deviations that change no number

    std::string sopClassUid() const;
    bool isDirectory() const; ///< a DICOMDIR
};

/// @errors FileUnreadable, NotDicom, FileDamaged, AttributeMissing, AttributeInvalid. Messages are one
/// sentence or two about the finding, without the path (it is in the facts); where the series is already
/// known when the fault shows, the facts carry "series".
core::Result<ScannedFile> scanFile(const std::filesystem::path& path);

} // namespace gauge::dicomio
