#include "dicomio/index/directory.h"

#include <algorithm>
#include <cctype>
#include <map>
#include <optional>
#include <set>

namespace gauge::dicomio {
namespace {

namespace fs = std::filesystem;

/// The name below the table's folder (PS3.10 8.5: up to eight components); nothing when it would lead
/// elsewhere.
std::optional<fs::path> nameOf(const Dataset& record) {
    fs::path name;
    for (const std::string& component : record.texts(tags::ReferencedFileId)) {
        if (component.empty() || component == "." || component == ".." ||
            component.find_first_of(std::string("/\0", 2)) != std::string::npos)
            return std::nullopt;
        name /= component;
    }
    return name.empty() ? std::nullopt : std::optional(name);
}

std::string folded(const fs::path& path) {
    std::string text = path.lexically_normal().generic_string();
    std::transform(text.begin(), text.end(), text.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return text;
}

bool isBelow(const std::string& file, const std::string& folder) {
    return folder.empty() || folder == "." ||
           (file.size() > folder.size() && file.compare(0, folder.size(), folder) == 0 &&
            (folder.back() == '/' || file[folder.size()] == '/'));
}

/// Counts findings of one kind and keeps the first.
struct Finding {
    std::size_t count = 0;
    std::string first;
    void add(const std::string& what) {
        if (count++ == 0) first = what;
    }
    std::string words(const std::string& meaning) const {
        return count == 0 ? "" : " " + std::to_string(count) + " " + meaning + " (" + first + ").";
    }
};

struct Comparison {
    Finding missing, wrong, unlisted;
    std::vector<ListedFile> missingFiles;
    bool ordered = true; ///< the series record before each file is that of the file
};

Comparison lookUp(const DirectoryListing& listing, const std::vector<FoundFile>& found) {
    Comparison result;
    std::map<std::string, const FoundFile*> byName;
    for (const FoundFile& file : found)
        byName.emplace(folded(file.path), &file);
    std::set<std::string> listed;
    const fs::path folder = listing.path.parent_path();
    for (const ListedFile& file : listing.files) {
        const std::string name = folded(folder / file.file);
        listed.insert(name);
        const auto at = byName.find(name);
        if (at == byName.end()) {
            result.missing.add(file.file.string());
            result.missingFiles.push_back(file);
        } else if (const FileFacts* facts = at->second->facts) {
            if (facts->sopInstanceUid != file.sopInstanceUid) result.wrong.add(file.file.string());
            result.ordered = result.ordered && facts->seriesUid == file.seriesUid;
        }
    }
    const std::string here = folded(folder);
    for (const FoundFile& file : found)
        if (const std::string name = folded(file.path);
            file.facts && isBelow(name, here) && !listed.count(name))
            result.unlisted.add(file.path.string());
    return result;
}

} // namespace

DirectoryListing readDirectory(const ScannedFile& scanned) {
    DirectoryListing listing;
    listing.path = scanned.path;
    std::string series;
    for (const Dataset& record : scanned.dataset.items(tags::DirectoryRecordSequence)) {
        const std::string type = record.text(tags::DirectoryRecordType);
        if (type == "PATIENT" || type == "STUDY") series.clear();
        if (type == "SERIES") series = record.text(tags::SeriesInstanceUid);
        if (record.texts(tags::ReferencedFileId).empty()) continue;
        if (auto name = nameOf(record))
            listing.files.push_back(
                {std::move(*name), record.text(tags::ReferencedSopInstanceUidInFile), series});
        else
            ++listing.unusable;
    }
    return listing;
}

ComparedTable compare(const DirectoryListing& listing, const std::vector<FoundFile>& found) {
    const Comparison seen = lookUp(listing, found);
    ComparedTable result;
    const std::size_t listed = listing.files.size() + listing.unusable;
    result.table = {listing.path, listed, false};
    std::string why = seen.missing.words("file(s) that it names are not there") +
                      seen.wrong.words("file(s) hold another object than it says") +
                      seen.unlisted.words("DICOM file(s) of the folder are not in it");
    if (listing.unusable > 0)
        why += " " + std::to_string(listing.unusable) + " of its names lead out of the folder.";
    if (listed == 0) why += " It names no file.";
    result.table.agrees = why.empty();
    if (!why.empty())
        result.notices.push_back({"dicomdir-ignored",
                                  "The table of contents " + listing.path.string() + " was ignored." + why +
                                      " The list is made from the files themselves.",
                                  {{"file", listing.path.string()}}});
    if (seen.wrong.count == 0 && seen.ordered && listing.unusable == 0) result.missing = seen.missingFiles;
    return result;
}

} // namespace gauge::dicomio
