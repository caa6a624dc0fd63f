#include "sample-data/case/observations.h"
#include "sample-data/case/sample_case.h"
#include "sample-data/case/write_procedure.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <set>

namespace gauge::sample_case {
namespace {

namespace fs = std::filesystem;
using core::ErrorCode;

tl::unexpected<core::Error> unwritable(const fs::path& path, const std::string& found) {
    return core::failure(ErrorCode::OutputUnwritable,
                         "Cannot write the sample case to " + path.string() + ": " + found,
                         {{"path", path.string()}});
}

fs::path observationsFile(const fs::path& folder, const Observations& story) {
    return folder / ("observations-" + story.name + ".json");
}

/// True when the file holds answers that this program wrote.
bool isOurs(const fs::path& answersFile) {
    std::ifstream in(answersFile);
    const auto found = nlohmann::json::parse(in, nullptr, false);
    return found.is_object() && found.value("format", "") == "ostium-gauge/sample-answers/1";
}

/// A file of observations that no sample case of ours left there; empty when there is none.
fs::path foreignObservations(const SampleCase& sample, const fs::path& folder) {
    if (!sample.procedure) return {};
    for (const Observations& story : observations(sample)) {
        const fs::path file = observationsFile(folder, story);
        std::error_code error;
        if (!fs::exists(file, error)) continue;
        std::ifstream in(file);
        const auto found = nlohmann::json::parse(in, nullptr, false);
        if (!found.is_object() || found.value("invented_for", nlohmann::json()) != kInventedFor) return file;
    }
    return {};
}

/// The first entry below `dicom` that a sample case of ours would not have written; empty when there is none.
fs::path foreignEntry(const fs::path& dicom, std::error_code& error) {
    for (fs::recursive_directory_iterator it(dicom, error), end; !error && it != end; it.increment(error)) {
        if (it->is_directory() && !it->is_symlink()) continue;
        const std::string name = it->path().filename().string();
        const bool named = name.rfind("slice-", 0) == 0 || name.rfind("series-", 0) == 0;
        if (!it->is_regular_file() || it->is_symlink() || !named || it->path().extension() != ".dcm")
            return it->path();
    }
    return {};
}

/// Makes room: an earlier sample case goes, anything else is refused.
core::Result<void> clear(const SampleCase& sample, const fs::path& folder) {
    const fs::path dicom = folder / "dicom", answersFile = folder / "answers.json";
    std::error_code error;
    if (fs::exists(answersFile, error) && !isOurs(answersFile))
        return unwritable(folder,
                          "answers.json is there already and was not written by this program. Choose another "
                          "folder, or move that file away.");
    if (const fs::path foreign = foreignObservations(sample, folder); !foreign.empty())
        return unwritable(folder, foreign.filename().string() +
                                      " is there already and was not written by this program. Choose another "
                                      "folder, or move that file away.");
    if (!fs::exists(dicom, error)) return {};
    if (!fs::is_directory(dicom, error))
        return unwritable(folder, "\"dicom\" is there already and is not a folder. Choose another folder.");
    const bool empty = fs::is_empty(dicom, error);
    if (error) return unwritable(dicom, error.message() + ".");
    if (empty) return {};
    if (!fs::exists(answersFile, error))
        return unwritable(folder,
                          "the folder \"dicom\" holds files that are not known to be a sample case of this "
                          "program. Choose another folder, or move them away.");
    if (const fs::path foreign = foreignEntry(dicom, error); !foreign.empty())
        return unwritable(
            folder, "the folder \"dicom\" holds " + foreign.string() +
                        ", which is not part of a sample case. Choose another folder, or move it away.");
    if (!error) fs::remove_all(dicom, error);
    if (error) return unwritable(dicom, error.message() + ".");
    return {};
}

core::Result<void> writeJson(const nlohmann::json& content, const fs::path& file) {
    const fs::path partial = file.string() + ".part";
    {
        std::ofstream out(partial, std::ios::trunc);
        out << content.dump(1) << '\n';
        if (!out.flush())
            return unwritable(file,
                              "the file could not be written (is the disk full, or the folder read-only?).");
    }
    std::error_code error;
    fs::rename(partial, file, error);
    if (error) return unwritable(file, error.message() + ".");
    return {};
}

/// Each story's observations in a file of its own. Files of an earlier run are replaced, those of others are not.
core::Result<std::vector<fs::path>> writeObservations(const SampleCase& sample, const fs::path& folder) {
    std::vector<fs::path> files;
    for (const Observations& story : observations(sample)) {
        files.push_back(observationsFile(folder, story));
        if (const auto written = writeJson(story.content, files.back()); !written)
            return tl::unexpected(written.error());
    }
    return files;
}

} // namespace

core::Result<SampleFiles> writeSampleCase(const SampleCase& sample, const fs::path& folder,
                                          const core::WorkContext& work) {
    SampleFiles files{folder / "dicom", folder / "answers.json", {}, 0, 0};
    std::error_code error;
    fs::create_directories(folder, error);
    if (error || !fs::is_directory(folder))
        return unwritable(folder, (error ? error.message() : std::string("it is not a folder")) + ".");
    if (const auto room = clear(sample, folder); !room) return tl::unexpected(room.error());
    if (work.stopped()) return core::failure(ErrorCode::Cancelled, "Writing the sample case was stopped.");
    // Answers first: they mark the folder as ours if the images are interrupted.
    if (const auto written = writeJson(answers(sample), files.answersFile); !written)
        return tl::unexpected(written.error());

    if (sample.procedure) {
        auto written = writeObservations(sample, folder);
        if (!written) return tl::unexpected(written.error());
        files.observationFiles = *std::move(written);
    }

    // Shares of the time: CT volumes, their files, echo and fluoroscopy.
    const double making = sample.procedure ? 0.45 : 0.7, writing = sample.procedure ? 0.65 : 1.0;
    const double phases = static_cast<double>(sample.phases.size());
    std::vector<CtPhase> volumes;
    for (const SamplePhase& phase : sample.phases) {
        const double before = making * static_cast<double>(volumes.size()) / phases;
        const core::WorkContext part{work.stop,
                                     [&](double share) { work.report(before + making * share / phases); }};
        auto volume = rasterise(phase.scene, phase.grid, phase.imaging, part);
        if (!volume) return tl::unexpected(volume.error());
        volumes.push_back({*volume, phase.percent});
    }
    const core::WorkContext part{work.stop,
                                 [&](double share) { work.report(making + (writing - making) * share); }};
    const auto written = writeCtSeries(volumes, sample.series, files.dicomFolder, part);
    if (!written) return tl::unexpected(written.error());
    files.images = written->size();
    if (!sample.procedure) return files;
    volumes.clear();
    const core::WorkContext last{work.stop, [&](double share) { work.report(writing + (1.0 - writing) * share); }};
    const auto others = writeProcedure(*sample.procedure, files.dicomFolder, last);
    if (!others) return tl::unexpected(others.error());
    files.procedureSeries = others->size();
    return files;
}

} // namespace gauge::sample_case
