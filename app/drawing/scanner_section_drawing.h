// Sections along the scanner's axes, in the orientation in which they are read: axial from the feet, coronal
// from the front, sagittal from the left.
#pragma once

#include "app/drawing/grey_image.h"
#include "app/drawing/labels.h"
#include "app/drawing/palette.h"

#include <QPainter>
#include <vector>

namespace gauge::app {

enum class ScannerAxis { Axial, Coronal, Sagittal };

QString wordOf(ScannerAxis axis);

/// Frame through `at`: axial u = left, v = back; coronal u = left, v = feet; sagittal u = back, v = feet.
core::SectionFrame scannerFrame(ScannerAxis axis, const core::PatientPoint& at);

struct PlacedMark {
    Role role = Role::Atrium;
    core::PatientPoint point;
};

/// Marks over a section: full within a few millimetres of the plane, faint and without a word further off, none beyond 15 mm.
/// Returns their words, to be written when all is drawn.
std::vector<Label> drawPlacedMarks(QPainter& painter, const QRectF& area, const SectionMap& map, const std::vector<PlacedMark>& marks);

} // namespace gauge::app
