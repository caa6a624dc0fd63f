// A place to go to: which page, which evidence, frame, depth or plane, and which drawing to point out. Whatever shows a
// value knows the place where it was measured.
#pragma once

#include "core/geometry/plane.h"

#include <QString>
#include <optional>

namespace gauge::app {

/// What fills the middle of the window.
enum class Page {
    Appendage,   ///< long section, cross-section, surface, depth strip
    Scanner,     ///< axial, coronal, sagittal
    Echo,        ///< the echo views in a row, beside the angle dial
    SameCut,     ///< an echo frame beside the CT cut in its own plane
    Fluoroscopy, ///< an X-ray frame
    Septum,      ///< the septal face
    Projection,  ///< working views of the C-arm
    Course,      ///< pressures and stasis over time, release check, scores
};

/// Which cross-section is shown: one of the two decisions, any depth, or the oblique plug plane.
enum class Depth { Ostium, Landing, Free, Plug };

struct Place {
    Page page = Page::Scanner;
    QString evidence;                         ///< id of the evidence (core/record/entries.h); empty: the CT of the record
    int frame = 0;                            ///< of a cine, 0-based
    std::optional<Depth> depth;               ///< of the cross-section
    double depthMm = 0.0;                     ///< for Depth::Free
    std::optional<core::SectionFrame> plane;  ///< of a free section
    std::optional<core::PatientPoint> point;  ///< where the scanner-axis sections are to cross
    QString drawing;                          ///< id of the drawing to point out; empty: none
    QString reading{};                        ///< id of the typed reading to bring up; empty: none

    bool operator==(const Place&) const = default;
};

} // namespace gauge::app
