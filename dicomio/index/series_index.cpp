#include "dicomio/index/series_index.h"

#include "core/parallel/parallel_for.h"
#include "dicomio/index/directory.h"
#include "dicomio/index/file_facts.h"
#include "dicomio/index/file_walk.h"
#include "dicomio/index/series_builder.h"
#include "dicomio/index/shared_progress.h"
#include "dicomio/index/stage_proposal.h"
#include "dicomio/index/verify.h"

#include <algorithm>
#include <map>
#include <optional>
#include <tuple>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::Result;

struct Looked {
    std::optional<FileFacts> facts;
    std::string reason; ///< why there are none
    core::Error error;
    std::optional<DirectoryListing> directory;
};

Looked look(const std::filesystem::path& path) {
    auto scanned = scanFile(path);
    if (!scanned) return {std::nullopt, scanned.error().message, scanned.error(), {}};
    if (scanned->isDirectory())
        return {std::nullopt,
                "It is a DICOMDIR, a table of contents; the files themselves are looked at.",
                {},
                readDirectory(*scanned)};
    auto facts = fileFacts(*scanned);
    if (!facts) return {std::nullopt, facts.error().message, facts.error(), {}};
    return {std::move(*facts), {}, {}, {}};
}

Result<std::vector<Looked>> lookAtAll(const std::vector<std::filesystem::path>& files,
                                      const core::WorkContext& work, double share) {
    std::vector<Looked> looked(files.size());
    SharedProgress progress(work, files.size(), 0.0, share);
    core::parallelFor(files.size(), 8, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end && !work.stopped(); ++i)
            looked[i] = look(files[i]);
        progress.add(end - begin);
    });
    if (work.stopped())
        return core::failure(ErrorCode::Cancelled, "Looking through the folder was cancelled.");
    return looked;
}

std::string keyOfPatient(const std::string& id, const std::string& issuer, const std::string& name) {
    return id.empty() ? "\nname\n" + name : id + "\n" + issuer;
}

/// Patients, studies, series and kinds are never mixed.
using SeriesKey = std::tuple<std::string, std::string, std::string, std::string>;

SeriesKey keyOf(const FileFacts& facts) {
    return {keyOfPatient(facts.patientId, facts.issuerOfPatientId, facts.patientName), facts.studyUid,
            facts.seriesUid, facts.kind};
}

std::string factOf(const core::Error& error, const std::string& key) {
    for (const core::Fact& fact : error.facts)
        if (fact.key == key) return fact.value;
    return {};
}

/// A damaged file that names its series is told there too: the series may lack its ends without a gap.
void tellDamaged(const std::vector<std::filesystem::path>& files, const std::vector<Looked>& looked,
                 SeriesIndex& index) {
    for (std::size_t i = 0; i < looked.size(); ++i) {
        const std::string uid = looked[i].facts ? std::string() : factOf(looked[i].error, "series");
        if (uid.empty()) continue;
        for (SeriesEntry& series : index.series)
            if (series.seriesUid == uid)
                addMessage(
                    series,
                    {"file-left-out",
                     files[i].string() + " belongs to this series but was left out: " + looked[i].reason,
                     {}},
                    false);
    }
}

void tellShared(SeriesIndex& index) {
    std::map<std::string, std::vector<SeriesEntry*>> byUid;
    for (SeriesEntry& series : index.series)
        byUid[series.seriesUid].push_back(&series);
    for (auto& [uid, sharing] : byUid) {
        const SeriesEntry& first = *sharing.front();
        const bool patients = std::any_of(sharing.begin(), sharing.end(), [&first](const SeriesEntry* s) {
            return patientKey(*s) != patientKey(first) || s->studyUid != first.studyUid;
        });
        for (SeriesEntry* series : sharing)
            if (patients)
                addMessage(*series,
                           {"series-uid-shared",
                            "Images of another patient or study carry the same " +
                                describe(tags::SeriesInstanceUid) + "; they are kept apart.",
                            {}},
                           false);
    }
}

/// Compares the tables of contents with what is there.
void tellTables(const std::vector<ComparedTable>& tables, SeriesIndex& index) {
    for (const ComparedTable& compared : tables) {
        index.tables.push_back(compared.table);
        index.notices.insert(index.notices.end(), compared.notices.begin(), compared.notices.end());
        std::map<std::string, std::vector<const ListedFile*>> missing;
        for (const ListedFile& file : compared.missing)
            missing[file.seriesUid].push_back(&file);
        for (SeriesEntry& series : index.series)
            if (const auto at = missing.find(series.seriesUid); at != missing.end())
                addMessage(series,
                           {"listed-files-missing",
                            "The table of contents " + compared.table.file.string() + " names " +
                                std::to_string(at->second.size()) +
                                " file(s) of this series that are not there (" +
                                at->second.front()->file.string() + "): the series may lack its ends.",
                            {}},
                           false);
    }
}

std::vector<ComparedTable> compareTables(const std::vector<std::filesystem::path>& files,
                                         std::vector<Looked>& looked) {
    std::vector<FoundFile> found;
    std::vector<ComparedTable> tables;
    for (std::size_t i = 0; i < files.size(); ++i)
        if (!looked[i].directory) found.push_back({files[i], looked[i].facts ? &*looked[i].facts : nullptr});
    for (Looked& each : looked) {
        if (!each.directory) continue;
        tables.push_back(compare(*each.directory, found));
        if (tables.back().table.agrees)
            each.reason += " It agrees with them: its " + std::to_string(tables.back().table.listed) +
                           " file(s) are all here, and no others.";
    }
    return tables;
}

/// One patient after the other, each in the order of time; unknown times last.
void sortInTime(std::vector<SeriesEntry>& series) {
    const bool utc = std::all_of(series.begin(), series.end(), [](const SeriesEntry& s) {
        return !s.acquired || (s.acquired->offsetMinutes && s.acquired->secondOfDay);
    });
    const auto key = [utc](const SeriesEntry& s) {
        return std::tuple(patientKey(s), !s.acquired.has_value(),
                          s.acquired ? secondsSince1970(*s.acquired, utc) : 0.0);
    };
    std::stable_sort(series.begin(), series.end(),
                     [&](const SeriesEntry& a, const SeriesEntry& b) { return key(a) < key(b); });
}

Result<SeriesIndex> group(const std::vector<std::filesystem::path>& files, std::vector<Looked>& looked,
                          std::vector<IndexedFile>& indexed, const core::WorkContext& work) {
    const auto tables = compareTables(files, looked);
    SeriesIndex index;
    std::map<SeriesKey, std::vector<std::size_t>> members;
    for (std::size_t i = 0; i < looked.size(); ++i) {
        if (looked[i].facts)
            members[keyOf(*looked[i].facts)].push_back(i);
        else
            index.skipped.push_back({files[i], looked[i].reason});
    }
    for (const auto& [key, which] : members) {
        std::vector<FileFacts> facts;
        for (const std::size_t i : which) {
            indexed.push_back({files[i], index.series.size()});
            facts.push_back(std::move(*looked[i].facts));
        }
        index.series.push_back(buildSeries(std::move(facts), work));
        if (work.stopped())
            return core::failure(ErrorCode::Cancelled, "Looking through the folder was cancelled.");
    }
    tellDamaged(files, looked, index);
    tellShared(index);
    tellTables(tables, index);
    proposeStages(index.series);
    return index;
}

/// A table of contents that was chosen itself stands for its folder.
std::filesystem::path whereToLook(const std::filesystem::path& chosen) {
    std::error_code error;
    if (!std::filesystem::is_regular_file(chosen, error)) return chosen;
    const auto scanned = scanFile(chosen);
    if (!scanned || !scanned->isDirectory()) return chosen;
    const auto folder = chosen.parent_path();
    return folder.empty() ? std::filesystem::path(".") : folder;
}

std::string whyNothing(const SeriesIndex& index) {
    constexpr std::size_t kShown = 3;
    std::string why;
    std::size_t shown = 0;
    for (const SeriesEntry& series : index.series)
        if (!series.messages.empty() && shown++ < kShown)
            why += " Series " +
                   (series.description.empty() ? series.seriesUid : "\"" + series.description + "\"") + ": " +
                   series.messages.front().text;
    for (const SkippedFile& skipped : index.skipped)
        if (index.series.empty() && shown++ < kShown)
            why += " " + skipped.file.string() + ": " + skipped.reason;
    return why;
}

} // namespace

std::string patientKey(const SeriesEntry& series) {
    return keyOfPatient(series.patientId, series.issuerOfPatientId, series.patientName);
}

Result<SeriesIndex> listFolder(const std::filesystem::path& folder, const IndexOptions& options,
                               const core::WorkContext& work) {
    auto walked = walkFolder(whereToLook(folder), work);
    if (!walked) return tl::make_unexpected(walked.error());
    auto looked = lookAtAll(walked->files, work, options.verify ? 0.2 : 1.0);
    if (!looked) return tl::make_unexpected(looked.error());
    std::vector<IndexedFile> indexed;
    auto index = group(walked->files, *looked, indexed, work);
    if (!index) return index;
    index->skipped.insert(index->skipped.end(), walked->skipped.begin(), walked->skipped.end());
    if (options.verify)
        if (auto verified = verifyImages(indexed, *index, work); !verified)
            return tl::make_unexpected(verified.error());
    sortInTime(index->series);
    return index;
}

Result<SeriesIndex> indexFolder(const std::filesystem::path& folder, const IndexOptions& options,
                                const core::WorkContext& work) {
    auto index = listFolder(folder, options, work);
    if (!index) return index;
    const auto count = [&](SeriesStatus status) {
        return std::count_if(index->series.begin(), index->series.end(),
                             [status](const SeriesEntry& s) { return s.status == status; });
    };
    const auto refused = count(SeriesStatus::Refused), aside = count(SeriesStatus::SetAside);
    if (refused + aside < static_cast<std::ptrdiff_t>(index->series.size())) return index;
    return core::failure(ErrorCode::NothingUsable,
                         "Nothing in " + folder.string() + " can be used: " + std::to_string(refused) +
                             " series were refused" +
                             (aside > 0 ? ", " + std::to_string(aside) + " set aside" : "") + " and " +
                             std::to_string(index->skipped.size()) + " file(s) skipped." + whyNothing(*index),
                         {{"file", folder.string()}});
}

} // namespace gauge::dicomio
