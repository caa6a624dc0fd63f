#include "app/cli/index_report.h"

#include "dicomio/index/picture_needs.h"

#include <algorithm>
#include <cstdio>

namespace gauge::app {
namespace {

using dicomio::SeriesEntry;
using dicomio::SeriesIndex;
using dicomio::SeriesStatus;

constexpr std::size_t kShownSkipped = 20;

std::string counted(std::size_t count, const std::string& one, const std::string& many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

std::string heading(const SeriesEntry& series) {
    std::string text = (series.modality.empty() ? "--" : series.modality) + "  ";
    text += series.description.empty() ? "(no description)" : "\"" + series.description + "\"";
    text += "  " + series.kind + ", " +
            counted(static_cast<std::size_t>(std::max(series.imageCount, 0)), "image", "images");
    if (series.phases.size() > 1) text += " in " + std::to_string(series.phases.size()) + " phases";
    if (series.spacingMm) {
        char spacing[96];
        std::snprintf(spacing, sizeof spacing, ", %.3f x %.3f x %.3f mm", series.spacingMm->x(),
                      series.spacingMm->y(), series.spacingMm->z());
        text += spacing;
    }
    return text;
}

std::string timesListing(const dicomio::PictureFacts& picture) {
    char text[96];
    if (picture.frames == 1) return "a still";
    if (picture.frameTimesMs.size() < 2) {
        std::snprintf(text, sizeof text, "%d frames, times not known", picture.frames);
        return text;
    }
    std::snprintf(text, sizeof text, "%d frames in %.2f s", picture.frames,
                  picture.frameTimesMs.back() / 1000.0);
    return text;
}

std::string scaleListing(const dicomio::PictureFacts& picture) {
    if (dicomio::isVelocityOnly(picture)) return "velocities and times, no lengths";
    if (!picture.scale) return "no scale: calibrate before measuring";
    char text[128];
    std::snprintf(text, sizeof text, "%.4f x %.4f mm a pixel (%s)", picture.scale->mmPerPixel.x(),
                  picture.scale->mmPerPixel.y(), picture.scale->source.c_str());
    return text;
}

std::string regionsListing(const dicomio::PictureFacts& picture) {
    std::string text;
    for (const core::EchoRegion& region : picture.regions)
        text += (text.empty() ? "; regions: " : ", ") + std::string(core::words(region.kind)) +
                (region.scale ? "" : " (no lengths)");
    return text;
}

/// One line an object of an ultrasound or X-ray series.
std::string pictureListing(const dicomio::PictureFacts& picture) {
    std::string text = "    picture: " + timesListing(picture);
    char angle[48];
    if (picture.angleDeg) {
        std::snprintf(angle, sizeof angle, "; probe at %g deg", *picture.angleDeg);
        text += angle;
    }
    if (picture.positioner) text += "; C-arm " + core::words(*picture.positioner);
    if (picture.positionerEnd) text += " to " + core::words(*picture.positionerEnd);
    return text + "; " + scaleListing(picture) + regionsListing(picture) + "\n";
}

std::string picturesListing(const SeriesEntry& series) {
    constexpr std::size_t kShown = 12;
    std::string text;
    for (std::size_t i = 0; i < std::min(series.pictures.size(), kShown); ++i)
        text += pictureListing(series.pictures[i]);
    if (series.pictures.size() > kShown)
        text += "    and " + std::to_string(series.pictures.size() - kShown) +
                " more pictures; --json lists all.\n";
    return text;
}

std::string courseListing(const SeriesEntry& series) {
    std::string text =
        "    taken:   " + (series.acquired ? dicomio::iso(*series.acquired) : "not known") + "\n";
    if (series.stage.stage)
        text += "    stage:   perhaps " + std::string(core::name(*series.stage.stage)) + " (" +
                series.stage.reason + ")\n";
    else if (series.stage.duringProcedure)
        text += "    stage:   " + series.stage.reason + "\n";
    return text;
}

std::string seriesListing(const SeriesEntry& series) {
    std::string text =
        heading(series) + "\n    patient: " + (series.patientName.empty() ? "(no name)" : series.patientName);
    if (!series.patientId.empty()) text += " (" + series.patientId + ")";
    text += "\n    series:  " + series.seriesUid + "\n";
    text += courseListing(series);
    const bool gated =
        series.phases.size() > 1 || (series.phases.size() == 1 && series.phases.front().percent);
    for (std::size_t i = 0; gated && i < series.phases.size(); ++i)
        text += (i == 0 ? "    phases:  " : ", ") + series.phases[i].label +
                (i + 1 == series.phases.size() ? "\n" : "");
    text += picturesListing(series);
    text += "    status:  " + statusName(series.status) + "\n";
    for (const core::Notice& message : series.messages)
        text += "      [" + message.code + "] " + message.text + "\n";
    return text;
}

std::ptrdiff_t countOf(const SeriesIndex& index, SeriesStatus status) {
    return std::count_if(index.series.begin(), index.series.end(),
                         [status](const SeriesEntry& s) { return s.status == status; });
}

} // namespace

std::string statusName(SeriesStatus status) {
    switch (status) {
    case SeriesStatus::Ok:
        return "ok";
    case SeriesStatus::Notice:
        return "notice";
    case SeriesStatus::Refused:
        return "refused";
    case SeriesStatus::SetAside:
        return "set-aside";
    }
    return "refused";
}

std::string indexListing(const SeriesIndex& index) {
    std::string text = counted(index.series.size(), "series", "series") + ", " +
                       counted(index.skipped.size(), "file skipped", "files skipped") + ".\n";
    for (const core::Notice& notice : index.notices)
        text += "  [" + notice.code + "] " + notice.text + "\n";
    for (const SeriesEntry& series : index.series)
        text += "\n" + seriesListing(series);
    if (!index.skipped.empty()) text += "\nSkipped:\n";
    for (std::size_t i = 0; i < std::min(index.skipped.size(), kShownSkipped); ++i)
        text += "    " + index.skipped[i].file.string() + ": " + index.skipped[i].reason + "\n";
    if (index.skipped.size() > kShownSkipped)
        text +=
            "    and " + std::to_string(index.skipped.size() - kShownSkipped) + " more; --json lists all.\n";
    return text;
}

std::string whyUnusable(const SeriesIndex& index, const std::string& folder) {
    constexpr std::size_t kShown = 3;
    const auto refused = countOf(index, SeriesStatus::Refused),
               aside = countOf(index, SeriesStatus::SetAside);
    if (refused + aside < static_cast<std::ptrdiff_t>(index.series.size())) return {};
    if (index.series.empty() && index.skipped.empty())
        return "Nothing in " + folder + " can be used: there is no file in it or in its folders.";
    std::string why = "Nothing in " + folder + " can be used: " + std::to_string(refused) +
                      " series were refused" +
                      (aside > 0 ? ", " + std::to_string(aside) + " set aside" : "") + " and " +
                      counted(index.skipped.size(), "file was", "files were") + " skipped.";
    std::size_t shown = 0;
    for (const SeriesEntry& series : index.series)
        if (!series.messages.empty() && shown++ < kShown) why += " " + series.messages.front().text;
    for (const dicomio::SkippedFile& skipped : index.skipped)
        if (index.series.empty() && shown++ < kShown)
            why += " " + skipped.file.string() + ": " + skipped.reason;
    return why;
}

} // namespace gauge::app
