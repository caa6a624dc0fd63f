// Tables of contents (DICOMDIR, PS3.3 annex F). The headers of the files are read whatever a table says,
// since every millimetre is proved from them; a table is compared with them. Where it agrees it proves that
// no file is missing, also at the ends of a stack, which no gap would show; where it does not, it is ignored
// and that is said.
#pragma once

#include "core/result.h"
#include "dicomio/index/file_facts.h"
#include "dicomio/index/series_index.h"
#include "dicomio/scan/scanner.h"

#include <filesystem>
#include <string>
#include <vector>

namespace gauge::dicomio {

/// A file that a table names.
struct ListedFile {
    std::filesystem::path file; ///< as the table names it, below the folder of the table
    std::string sopInstanceUid;
    std::string seriesUid; ///< of the series record before it; see ComparedTable::missing
};

struct DirectoryListing {
    std::filesystem::path path; ///< of the table
    std::vector<ListedFile> files;
    std::size_t unusable = 0; ///< names that lead out of the folder, or are none
};

/// Precondition: scanned.isDirectory().
DirectoryListing readDirectory(const ScannedFile& scanned);

/// What the walk found: each file, with its facts where it is a DICOM object that can be listed.
struct FoundFile {
    std::filesystem::path path;
    const FileFacts* facts = nullptr;
};

struct ComparedTable {
    TableOfContents table;
    std::vector<core::Notice> notices;
    /// Files that are not there, of a table whose other entries are all right; with their series.
    std::vector<ListedFile> missing;
};

/// A table agrees when each file that it names is there and is the object that it says, and when it names
/// every DICOM object in its folder and below. Names are compared without regard to case, which discs do not
/// keep.
ComparedTable compare(const DirectoryListing& listing, const std::vector<FoundFile>& found);

} // namespace gauge::dicomio
