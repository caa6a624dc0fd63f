#include "dicomio/index/series_builder.h"

#include "dicomio/ct/ct_requirements.h"
#include "dicomio/ct/stack_geometry.h"
#include "dicomio/index/beats.h"
#include "dicomio/index/copies.h"
#include "dicomio/index/phases.h"
#include "dicomio/index/picture_needs.h"

#include <algorithm>
#include <map>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;

PhaseEntry entryOf(const PhaseGroup& group) {
    PhaseEntry entry{group.percent, group.triggerMs, group.label, {}, group.beatMs, group.stack, 0};
    for (const SliceFacts& slice : group.slices) {
        entry.images.push_back({slice.file, slice.sopInstanceUid, slice.frame});
        entry.bytes += static_cast<std::size_t>(slice.rows) * static_cast<std::size_t>(slice.columns) *
                       sizeof(std::int16_t);
    }
    return entry;
}

/// Images of a phase in the order of the proof.
void sortImages(PhaseEntry& entry, const std::vector<std::size_t>& order) {
    std::vector<ImageReference> sorted;
    for (const std::size_t i : order)
        sorted.push_back(entry.images[i]);
    entry.images = std::move(sorted);
}

std::vector<SliceFacts> takeSlices(std::vector<FileFacts>& files, std::size_t& localizers) {
    std::vector<SliceFacts> slices;
    for (FileFacts& file : files)
        for (SliceFacts& slice : file.slices) {
            if (slice.localizer)
                ++localizers;
            else
                slices.push_back(std::move(slice));
        }
    return slices;
}

/// Proves one phase; what it finds goes to the series. Nothing when no volume can be made of it.
std::optional<StackGeometry> provePhase(const PhaseGroup& group, PhaseEntry& entry, SeriesEntry& series,
                                        bool only) {
    auto proved = proveStack(group.slices);
    if (!proved) {
        core::Notice notice = noticeOf(proved.error());
        if (!only) {
            notice.text = "Phase " + group.label + ": " + notice.text;
            notice.facts.push_back({"phase", group.label});
        }
        const bool single = group.slices.size() == 1;
        if (single && only)
            notice = {"single-image",
                      label(group.slices.front()) + " is the only image of the series: it can be listed, but "
                                                    "nothing can be measured without a volume.",
                      {}};
        addMessage(series, std::move(notice), only && !single);
        return std::nullopt;
    }
    sortImages(entry, proved->order);
    for (const core::Notice& notice : proved->notices)
        addMessage(series, notice, false);
    if (!series.spacingMm) {
        series.spacingMm = proved->spacingMm;
        series.tiltDeg = proved->tiltDeg;
    }
    return std::move(*proved);
}

/// How far apart the corners of two grids of the same size lie at most, mm.
double apartMm(const StackGeometry& a, const StackGeometry& b) {
    double most = 0.0;
    for (int corner = 0; corner < 8; ++corner) {
        const Eigen::Vector3d at((corner & 1 ? a.size.x() - 1 : 0), (corner & 2 ? a.size.y() - 1 : 0),
                                 (corner & 4 ? a.size.z() - 1 : 0));
        most = std::max(most, (a.patientFromVoxel * at - b.patientFromVoxel * at).norm());
    }
    return most;
}

std::string grid(const StackGeometry& g) {
    char text[128];
    std::snprintf(text, sizeof text, "%d x %d x %d voxels of %.3f x %.3f x %.3f mm", g.size.x(), g.size.y(),
                  g.size.z(), g.spacingMm.x(), g.spacingMm.y(), g.spacingMm.z());
    return text;
}

/// Phases of one stack should lie on one grid; where not, a section at the same place shows something else.
void compareGrids(const std::vector<std::pair<std::size_t, StackGeometry>>& grids, SeriesEntry& series) {
    for (std::size_t i = 1; i < grids.size(); ++i) {
        const PhaseEntry& phase = series.phases[grids[i].first];
        const auto first = std::find_if(grids.begin(), grids.end(), [&](const auto& g) {
            return series.phases[g.first].stack == phase.stack;
        });
        const StackGeometry &a = first->second, &b = grids[i].second;
        const bool sizes = a.size != b.size;
        const double apart = sizes ? 0.0 : apartMm(a, b);
        if (!sizes && apart <= kEvenMm) continue;
        char shift[48] = "";
        if (!sizes) std::snprintf(shift, sizeof shift, ", up to %.2f mm away", apart);
        addMessage(series,
                   {"phases-differ",
                    "Phase " + phase.label + " lies on another grid (" + grid(b) + shift + ") than phase " +
                        series.phases[first->first].label + " (" + grid(a) +
                        "); points in patient coordinates stay comparable, slice numbers do not.",
                    {}},
                   false);
    }
}

/// What hinders Hounsfield units, if anything.
bool checkValues(const std::vector<SliceFacts>& slices, const PixelFormat& format, SeriesEntry& series) {
    for (const SliceFacts& slice : slices) {
        const auto usable = checkHounsfield(slice, format);
        if (usable) continue;
        if (isOtherQuantity(slice))
            addMessage(
                series,
                {"not-hounsfield", usable.error().message + " The series is listed, but not measured.", {}},
                false);
        else
            addMessage(series, noticeOf(usable.error()), true);
        return false;
    }
    return true;
}

void buildCt(std::vector<FileFacts>& files, SeriesEntry& series) {
    for (const FileFacts& file : files)
        if (file.geometryError) {
            addMessage(series, noticeOf(*file.geometryError), true);
            return;
        }
    const auto format = files.front().format;
    std::size_t localizers = 0;
    std::vector<SliceFacts> slices = takeSlices(files, localizers);
    if (slices.empty() && localizers > 0) {
        setAside(series, {"localizers-set-aside",
                          "The series holds scout images only (" + describe(tags::ImageType) +
                              " LOCALIZER): they plan the scan and make no volume; they were set aside.",
                          {}});
        return;
    }
    if (localizers > 0)
        addMessage(series,
                   {"localizers-set-aside",
                    std::to_string(localizers) + " scout image(s) (" + describe(tags::ImageType) +
                        " LOCALIZER) were set aside.",
                    {}},
                   false);
    if (slices.empty() || !format) return;
    const bool hounsfield = checkValues(slices, *format, series);
    PhaseSplit split = splitPhases(std::move(slices));
    for (core::Notice& notice : split.notices)
        addMessage(series, std::move(notice), false);
    const bool only = split.phases.size() == 1;
    std::vector<std::pair<std::size_t, StackGeometry>> proved;
    for (const PhaseGroup& group : split.phases) {
        series.phases.push_back(entryOf(group));
        for (core::Notice& notice : beatNotices(group.slices, group.label))
            addMessage(series, std::move(notice), false);
        if (auto geometry = provePhase(group, series.phases.back(), series, only))
            proved.emplace_back(series.phases.size() - 1, std::move(*geometry));
    }
    compareGrids(proved, series);
    if (proved.empty() && !only)
        addMessage(series, {"nothing-usable", "No phase of the series has a usable geometry.", {}}, true);
    series.measurable = !proved.empty() && hounsfield && series.status != SeriesStatus::Refused;
}

/// Series whose images are not stacked: all images in one entry.
void listImages(const std::vector<FileFacts>& files, SeriesEntry& series) {
    PhaseEntry all{std::nullopt, std::nullopt, "ungated", {}};
    for (const FileFacts& file : files)
        for (int frame = 0; frame < file.frames; ++frame)
            all.images.push_back({file.path, file.sopInstanceUid, frame});
    if (!all.images.empty()) series.phases.push_back(std::move(all));
}

/// Other modalities are not measured; where their images claim places in the patient, a broken stack is told
/// too.
void buildOther(const std::vector<FileFacts>& files, SeriesEntry& series) {
    addMessage(series,
               {"kind-unsupported",
                "Images of this kind (" +
                    (series.modality.empty() ? std::string("no modality") : series.modality) +
                    ") are not measured by this program.",
                {}},
               true);
    std::vector<SliceFacts> slices;
    for (const FileFacts& file : files) {
        if (file.geometryError) {
            addMessage(series, noticeOf(*file.geometryError), true);
            return;
        }
        slices.insert(slices.end(), file.slices.begin(), file.slices.end());
    }
    if (slices.size() < 2) return;
    const auto proved = proveStack(slices);
    if (proved) {
        series.spacingMm = proved->spacingMm;
        series.tiltDeg = proved->tiltDeg;
    } else {
        addMessage(series, noticeOf(proved.error()), true);
    }
}

const char* wayToCalibrate(const SeriesEntry& series) {
    return series.kind == "ultrasound" ? "It must be calibrated on a scale that is marked in the picture "
                                         "before anything is measured in it."
                                       : "It must be calibrated, for example on a catheter of known "
                                         "diameter, before anything is measured in it.";
}

void tellScale(SeriesEntry& series) {
    const auto lacks = [](const PictureFacts& p) { return !p.scale && !isVelocityOnly(p); };
    const auto without = std::find_if(series.pictures.begin(), series.pictures.end(), lacks);
    if (without == series.pictures.end()) return;
    const auto many = std::count_if(series.pictures.begin(), series.pictures.end(), lacks);
    std::string text = series.pictures.size() == 1
                           ? "The picture has no scale in millimetres"
                           : std::to_string(many) + " of " + std::to_string(series.pictures.size()) +
                                 " pictures have no scale in millimetres";
    if (series.kind == "ultrasound")
        text += std::string(without->regions.empty() ? ": no region is described ("
                                                     : ": no region holds lengths that can be believed (") +
                describe(tags::SequenceOfUltrasoundRegions) + "). ";
    else
        text += ". " + without->scaleText + " ";
    addMessage(series, {"no-length-scale", text + wayToCalibrate(series), {}}, false);
}

/// The moments of three-dimensional echo are the phases of its series.
void listMoments(const FileFacts& file, const PictureFacts& picture, SeriesEntry& series) {
    for (std::size_t i = 0; i < picture.moments.size(); ++i) {
        const VolumeMoment& moment = picture.moments[i];
        char label[48];
        if (moment.offsetMs)
            std::snprintf(label, sizeof label, "time %zu (%.0f ms)", i + 1, *moment.offsetMs);
        else
            std::snprintf(label, sizeof label, "time %zu", i + 1);
        PhaseEntry phase{
            std::nullopt, std::nullopt, picture.moments.size() > 1 ? label : "ungated", {}, {}, {}, 0};
        for (const int frame : moment.frames)
            phase.images.push_back({file.path, file.sopInstanceUid, frame});
        series.phases.push_back(std::move(phase));
    }
    if (picture.volumeSpacingMm && !series.spacingMm) series.spacingMm = picture.volumeSpacingMm;
}

/// Ultrasound and X-ray: what each object's header tells.
void buildPictures(std::vector<FileFacts>& files, SeriesEntry& series) {
    constexpr std::size_t kTold = 3; // the same deviation in many objects is told for the first ones
    const bool volumes = std::all_of(files.begin(), files.end(), [](const FileFacts& f) {
        return f.picture && !f.picture->moments.empty();
    });
    if (!volumes) listImages(files, series);
    int image = 0;
    std::map<std::string, std::size_t> told;
    for (FileFacts& file : files) {
        if (!file.picture) continue;
        file.picture->firstImage = image;
        image += file.frames;
        for (const core::Notice& notice : file.picture->notices)
            if (++told[notice.code] <= kTold)
                addMessage(series, {notice.code, file.path.string() + ": " + notice.text, notice.facts},
                           false);
        if (volumes) listMoments(file, *file.picture, series);
        if (file.picture->volumeError)
            addMessage(series, noticeOf(*file.picture->volumeError), files.size() == 1);
        series.pictures.push_back(std::move(*file.picture));
    }
    tellScale(series);
}

void buildByKind(std::vector<FileFacts>& files, SeriesEntry& series) {
    if (series.kind == "ct" || series.kind == "ct-enhanced") {
        buildCt(files, series);
        return;
    }
    if (series.kind == "ultrasound" || series.kind == "x-ray") {
        buildPictures(files, series);
        return;
    }
    listImages(files, series);
    const bool dose =
        std::all_of(files.begin(), files.end(), [](const FileFacts& f) { return f.doseReport; });
    if (dose) {
        setAside(series, {"dose-report-set-aside",
                          "It is a report of radiation dose, not for measuring; it was set aside.",
                          {}});
    } else if (series.kind == "report") {
        addMessage(series,
                   {"listed-only", "Reports are listed; reading their measurements is not offered yet.", {}},
                   false);
    } else if (series.kind == "secondary-capture") {
        setAside(series,
                 {"secondary-capture",
                  "These are pictures made after the examination (secondary captures), without geometry or "
                  "scale; they were set aside.",
                  {}});
    } else {
        buildOther(files, series);
    }
}

/// What concerns the identity and time of the series.
void identify(const std::vector<FileFacts>& files, SeriesEntry& series) {
    const FileFacts& first = files.front();
    series.seriesUid = first.seriesUid;
    series.studyUid = first.studyUid;
    series.patientId = first.patientId;
    series.issuerOfPatientId = first.issuerOfPatientId;
    series.patientName = first.patientName;
    series.patientBirthDate = first.patientBirthDate;
    series.patientSex = first.patientSex;
    series.patientPosition = first.patientPosition;
    series.modality = first.modality;
    series.kind = first.kind;
    series.description = first.description;
    series.frameOfReferenceUid = first.frameOfReferenceUid;
    for (const FileFacts& file : files) {
        if (file.acquired && (!series.acquired || secondsSince1970(*file.acquired, false) <
                                                      secondsSince1970(*series.acquired, false)))
            series.acquired = file.acquired;
        if (file.patientPosition != first.patientPosition) series.patientPosition.clear();
        if (file.patientName != series.patientName)
            addMessage(series,
                       {"patient-name-differs",
                        "Images of the series carry one " + describe(tags::PatientId) +
                            " but several names (\"" + series.patientName + "\", \"" + file.patientName +
                            "\"): check that they are of one patient.",
                        {}},
                       false);
    }
}

} // namespace

core::Notice noticeOf(const core::Error& error) {
    return {std::string(core::name(error.code)), error.message, error.facts};
}

void addMessage(SeriesEntry& series, core::Notice message, bool refuse) {
    if (refuse) {
        series.status = SeriesStatus::Refused;
        series.measurable = false;
    } else if (series.status == SeriesStatus::Ok) {
        series.status = SeriesStatus::Notice;
    }
    const bool known =
        std::any_of(series.messages.begin(), series.messages.end(),
                    [&](const core::Notice& m) { return m.code == message.code && m.text == message.text; });
    if (!known) series.messages.push_back(std::move(message));
}

void setAside(SeriesEntry& series, core::Notice why) {
    addMessage(series, std::move(why), false);
    series.status = SeriesStatus::SetAside;
    series.measurable = false;
}

SeriesEntry buildSeries(std::vector<FileFacts> files, const core::WorkContext& work) {
    SeriesEntry series;
    identify(files, series);
    for (core::Notice& notice : setCopiesAside(files, work))
        addMessage(series, std::move(notice), false);
    std::size_t reported = 0;
    for (FileFacts& file : files) {
        series.imageCount += file.frames;
        for (core::Notice& notice : file.notices)
            if (++reported <= 3) // the same deviation in hundreds of files is told for the first ones
                addMessage(series, {notice.code, file.path.string() + ": " + notice.text, {}}, false);
    }
    const bool frames = std::all_of(files.begin(), files.end(), [&](const FileFacts& f) {
        return f.frameOfReferenceUid == series.frameOfReferenceUid;
    });
    if (!frames && (series.kind == "ct" || series.kind == "ct-enhanced"))
        addMessage(series,
                   {"geometry-contradictory",
                    "The images of the series have different values of " +
                        describe(tags::FrameOfReferenceUid) + ": their positions do not refer to one origin.",
                    {}},
                   true);
    buildByKind(files, series);
    return series;
}

} // namespace gauge::dicomio
