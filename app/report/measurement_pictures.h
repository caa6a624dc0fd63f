// Pictures of a measurement as PNG files, for a headless run. Works without a display and without an
// application: where none exists, one on the "offscreen" platform is made for the time of the call (then only
// from one thread).
#pragma once

#include "core/anatomy/appendage.h"
#include "core/sizing/seat.h"
#include "core/result.h"
#include "core/volume/volume.h"

#include <QImage>
#include <QString>
#include <filesystem>
#include <string>
#include <vector>

namespace gauge::app {

/// One picture of a measurement, with orientation letters and a scale bar.
struct MeasurementPicture {
    std::string name; ///< of its file, without suffix
    QString title;
    QImage image;
};

/// For a screen: with its title inside. For paper: small, with more dots, so that labels are as large as the text; the
/// title is left to the caption.
enum class PictureUse { Screen, Paper };

/// Long section, ostium, landing zones, depth strip, in this order. Precondition: a GUI application exists.
/// With `seat`, long section and landing zones show the size where it would sit.
std::vector<MeasurementPicture> measurementPictures(const core::Volume& volume, const core::AppendageMeasurement& measurement,
                                                    PictureUse use, const core::Seat* seat = nullptr);

/// Writes long-section.png, ostium.png, landing-zone.png (landing-zone-2.png… for more) and depth-strip.png
/// into `folder`, which is made when absent; files of those names are replaced.
/// @return the files written, in that order.
/// @errors OutputUnwritable, naming the file or folder.
core::Result<std::vector<std::filesystem::path>> writePictures(const core::Volume& volume,
                                                               const core::AppendageMeasurement& measurement,
                                                               const std::filesystem::path& folder);

/// For a measurement that failed: one picture a mark (atrium.png, tip.png, circumflex.png, ridge.png,
/// aorta.png), each with the three scanner-axis sections through it. `reason`, when given, is printed under
/// the sections.
/// @return the files written.  @errors OutputUnwritable.
core::Result<std::vector<std::filesystem::path>> writeSeedPictures(const core::Volume& volume,
                                                                   const core::AppendageMarks& marks,
                                                                   const std::filesystem::path& folder,
                                                                   const std::string& reason = {});

} // namespace gauge::app
