// The kinds of points that are marked for the crossing of the septum.
#pragma once

#include "core/access/septum_marks.h"

#include <QString>
#include <array>
#include <vector>

namespace gauge::app {

enum class SeptumPoint { Annulus, Coaptation, Fossa, AorticRoot };
inline constexpr std::array kSeptumPoints{SeptumPoint::Annulus, SeptumPoint::Coaptation, SeptumPoint::Fossa, SeptumPoint::AorticRoot};

/// "mitral annulus", "coaptation of the leaflets", "rim of the fossa", "aortic root".
QString wordOf(SeptumPoint kind);
/// What to click, in a sentence.
QString purposeOf(SeptumPoint kind);
/// How many are needed at least: 3, 1, 4, 0.
std::size_t leastOf(SeptumPoint kind);

std::vector<core::PatientPoint> pointsOf(const core::SeptumMarks& marks, SeptumPoint kind);
/// The marks with these points of a kind; of the aortic root the last one counts.
core::SeptumMarks withPoints(core::SeptumMarks marks, SeptumPoint kind, std::vector<core::PatientPoint> points);

} // namespace gauge::app
