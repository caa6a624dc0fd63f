// What is said of measuring on CT, echo and X-ray.
#include "app/format/core_sentence_list.h"

#include <QtGlobal>
#include <array>

namespace gauge::app {
namespace {

constexpr auto kSentences = std::to_array<CorePattern>({
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The ostium is a proposal and not confirmed: its place is uncertain by 2 mm and 5 degrees."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Confirm or move it, or mark the circumflex and ridge points."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Moved or tilted within the uncertainty of its place, the %1 opens into a neighbouring cavity or"
                       " leaves the lumen; its stated uncertainty rests on the other side alone."),
     "w"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Check the plane."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "No view within the reach of the C-arm shows the plane edge-on; the views nearest to "
                                        "edge-on stand instead, and widths are read there all the same across the axis."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The axis hardly turns (or is too short to tell): no view in profile of a bend is named."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "The bend lies within the plane itself: no edge-on view has it in profile."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "There is no surface of atrium and appendage: how they overlap in a view is not told."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Cannot predict angles of the C-arm: the CT does not tell how the patient lay ((0018,5100) "
                       "PatientPosition is absent or empty)."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "If the patient lay on the back, state it by an offset of 0 degrees."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Cannot predict angles of the C-arm: at CT the patient lay %1 ((0018,5100) PatientPosition is "
                       "\"%2\"), and the heart lies otherwise than on the back."),
     "wa"},
    {QT_TRANSLATE_NOOP("CoreSentences", "State an offset of the patient to predict all the same."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "Cannot use the reach of the C-arm: all limits are 0 degrees, which leaves one view only."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "Set how far the arm can be turned."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Cannot use the distances of the C-arm: from the source %1 to the isocentre and %2 to the detector; they must "
                       "lie within %3 to %4, and the detector beyond the isocentre."),
     "nnnn"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The voxels are up to %1 long: too coarse for sizing."),
     "n"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Stated uncertainties hold for voxels up to 1 mm; use a thin-slice reconstruction."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "%1 of the profile's sections could not be measured (they open sideways or are too small) and "
                       "are left out."),
     "n"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Beyond the tip the image stays half bright (%1): the end of the appendage seems to be unfilled."),
     "n"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Depth and volume are lower bounds; exclude thrombus before anything enters it."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The appendage's tip reads %1 where the atrium reads %2: poor filling by slow flow, or thrombus."),
     "nn"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Exclude thrombus before anything enters the appendage; contours here are less certain than "
                       "their stated uncertainty."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The plain ellipse, %1, is no more oval than the error of reading makes a round neck look: it is"
                       " reported round, and its direction says nothing."),
     "a"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Part of the ovality of the plain ellipse, %1, is likely error of reading and was taken off."),
     "a"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Area- and perimeter-derived diameters are nearly free of this."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Three widths leave nothing over to judge their error by, and none was stated: longest and "
                       "shortest diameter may look more different than they are."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "State the width uncertainty, or read a fourth view."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "No uncertainty of the widths was stated; %1 was taken, an assumption."),
     "n"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The beam is tilted by %1 to the appendage's axis; the directions of the widths were corrected "
                       "for it."),
     "n"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "With a tilt of more than 45 degrees a width across the appendage is hard to draw: errors of "
                       "drawing grow beyond what is stated."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The widths lie on no common ellipse within their uncertainty (residual %1); no single view can "
                       "be blamed."),
     "n"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Each view's agreeing width is given, and the uncertainties were enlarged."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The depth was read in one view only; the tip may lie outside it: a lower bound."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The depth reads %1 in one view and %2 in another: an implant must fit in the plane where it is "
                       "short, too."),
     "nn"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The widths were read in different phases of the beat; one ellipse through them mixes two sizes."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Read all views in the same phase, best at end-systole."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The phase of the beat is unknown for at least one width; the appendage is widest at end-"
                       "systole."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "A width of %1 at %2 is unusual for an appendage (4 to 60 mm): check unit and scale."),
     "nn"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The view \"%1\" is left out: its probe angle is not known."),
     "a"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Read it off the picture and enter it."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The landmarks of echo and CT fit each other no better than %1 (root mean square), more than "
                       "their uncertainties allow: another filling or phase, or one of them is another structure."),
     "n"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The pose's uncertainty was enlarged."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "All landmarks were marked in one view: the turn to the other views rests on the shown probe "
                       "angles alone."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The landmarks lie close to one line (spread across it %1): the turn about it is poorly known."),
     "n"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The trace crosses the baseline by %1; those points count as no flow."),
     "n"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Trace one side of the baseline."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The scale marked by hand says %1, the scanner's calibration of the region %2, which differs by "
                       "%3."),
     "aan"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Check the known length; the picture may have been scaled after it was taken."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The scale rests on an object only %1 pixels wide; lengths measured with it are rough."),
     "n"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The sheath's outer diameter of %1 is exactly %2 F."),
     "nn"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "A sheath's French is its bore: make sure that this is the outside."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Filled with contrast, the object shows its bore and reads 4 to 16 % too small; lengths measured"
                       " with it come out too long."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Flush it, or use another scale."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "At %1 the fluoroscopy reads %2 ± %3, the CT contour predicts %4 ± %5: %6 ± %7, more than the modality "
                       "explains."),
     "annnnan"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "At %1 the fluoroscopy reads %2 ± %3, the CT contour predicts %4 ± %5: %6 ± %7, as the modality "
                       "explains."),
     "annnnan"},
});

} // namespace

std::span<const CorePattern> imageSentences() {
    return kSentences;
}

} // namespace gauge::app
