#include "dicomio/index/series_index.h"

#include "core/parallel/parallel_for.h"
#include "dicomio/index/file_facts.h"
#include "dicomio/index/file_walk.h"
#include "dicomio/index/series_builder.h"
#include "dicomio/index/shared_progress.h"
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
    bool directory = false;
};

Looked look(const std::filesystem::path& path) {
    auto scanned = scanFile(path);
    if (!scanned) return {std::nullopt, scanned.error().message, scanned.error(), false};
    if (scanned->isDirectory())
        return {std::nullopt,
                "It is a DICOMDIR, a table of contents; the files themselves are looked at.",
                {},
                true};
    auto facts = fileFacts(*scanned);
    if (!facts) return {std::nullopt, facts.error().message, facts.error(), false};
    return {std::move(*facts), {}, {}, false};
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

/// Patients, studies, series and kinds are never mixed.
using SeriesKey = std::tuple<std::string, std::string, std::string, std::string>;

SeriesKey keyOf(const FileFacts& facts) {
    return {facts.patientId, facts.studyUid, facts.seriesUid, facts.kind};
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
            return s->patientId != first.patientId || s->studyUid != first.studyUid;
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

SeriesIndex group(const std::vector<std::filesystem::path>& files, std::vector<Looked>& looked,
                  std::vector<IndexedFile>& indexed) {
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
        index.series.push_back(buildSeries(std::move(facts)));
    }
    tellDamaged(files, looked, index);
    tellShared(index);
    return index;
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

Result<SeriesIndex> listFolder(const std::filesystem::path& folder, const IndexOptions& options,
                               const core::WorkContext& work) {
    auto walked = walkFolder(folder, work);
    if (!walked) return tl::make_unexpected(walked.error());
    auto looked = lookAtAll(walked->files, work, options.verify ? 0.2 : 1.0);
    if (!looked) return tl::make_unexpected(looked.error());
    std::vector<IndexedFile> indexed;
    SeriesIndex index = group(walked->files, *looked, indexed);
    index.skipped.insert(index.skipped.end(), walked->skipped.begin(), walked->skipped.end());
    if (options.verify)
        if (auto verified = verifyImages(indexed, index, work); !verified)
            return tl::make_unexpected(verified.error());
    return index;
}

Result<SeriesIndex> indexFolder(const std::filesystem::path& folder, const IndexOptions& options,
                                const core::WorkContext& work) {
    auto index = listFolder(folder, options, work);
    if (!index) return index;
    const bool usable = std::any_of(index->series.begin(), index->series.end(),
                                    [](const SeriesEntry& s) { return s.status != SeriesStatus::Refused; });
    if (usable) return index;
    return core::failure(ErrorCode::NothingUsable,
                         "Nothing in " + folder.string() + " can be used: " +
                             std::to_string(index->series.size()) + " series were refused and " +
                             std::to_string(index->skipped.size()) + " file(s) skipped." + whyNothing(*index),
                         {{"file", folder.string()}});
}

} // namespace gauge::dicomio
