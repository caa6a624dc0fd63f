// The names that people read, each written once.
#pragma once

#include "core/geometry/points.h"

#include <QString>
#include <QStringList>

namespace gauge::app {

/// The caution shown on start, in Help and in reports, as paragraphs.
QStringList cautionParagraphs();

/// Short name of a direction in the patient: L, R, A, P, H, F, or two of them ("LP") for an oblique one.
/// Precondition: not the zero vector.
QString directionLetters(const core::PatientVector& direction);

/// "left 12.3 mm, back 4.0 mm, head 7.1 mm": a place in the patient's axes, in words.
QString placeWords(const core::PatientPoint& point);

} // namespace gauge::app
