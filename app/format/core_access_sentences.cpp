// What the crossing of the septum says.
#include "app/format/core_sentence_list.h"

#include <QtGlobal>
#include <array>

namespace gauge::app {
namespace {

constexpr auto kAccess = std::to_array<CorePattern>({
    {QT_TRANSLATE_NOOP("CoreSentences", "No answer yet: the appendage is not measured, so nothing is known of its ostium and axis."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "No answer for the repair yet: the mitral annulus is not marked, so no height is known."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "No answer for the repair yet: no point of coaptation is marked, and the height band counts from there."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "No place of this fossa lies %1 to %2 %3: it reaches from %4 to %5."), "nnwnn"},
    {QT_TRANSLATE_NOOP("CoreSentences", "Check the marks, the datum and the band before anything is concluded."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "No repair of the mitral valve is planned: only the closure counts."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Over %1 of the fossa's area a straight sheath arrives within %2 of the appendage's proximal axis."),
     "nn"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "No straight sheath through this fossa arrives within %1 of the appendage's proximal axis; a steerable one does so over "
                       "%2 of its area, by a bend of radius %3."),
     "nnn"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "No crossing of this fossa lets the sheath arrive within %1 of the appendage's proximal axis: by a straight one the "
                       "least is %2."),
     "nn"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "One crossing can serve both: %1 of the fossa's area lie %2 to %3 %4 and let a straight sheath arrive within %5 of the "
                       "appendage's proximal axis."),
     "nnnwn"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "One crossing can serve both if the closure uses a steerable sheath: by a straight one no place that lies %1 to %2 %3 "
                       "arrives within %4 of the appendage's proximal axis."),
     "nnwn"},
    {QT_TRANSLATE_NOOP("CoreSentences", "By a bend of radius %1 a crossing serves both over %2 of the fossa's area."), "nn"},
    {QT_TRANSLATE_NOOP("CoreSentences", "No single crossing serves both, also not with a steerable sheath."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "No single crossing serves both with a straight sheath."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The closure asks for a second, lower crossing: places within %1 of the appendage's proximal axis begin at %2, where "
                       "the repair asks for %3 to %4 %5."),
     "nnnnw"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Cross for the repair and close last: plan the closure anew from where the sheath then lies."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The place with most room is %1: %2 %3, %4 to the axis by a straight sheath, %5 to where it no longer serves."),
     "wnwnn"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The place with most room is %1: %2 to the axis by a straight sheath, %3 to where it no longer serves."),
     "wnn"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "This rests on %1 points of the fossa's rim (%2 from their plane, root mean square)."),
     "nn"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "This rests on %1 points of the fossa's rim (%2 from their plane, root mean square), %3 of the mitral annulus (%4)."),
     "nnnn"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "This rests on %1 points of the fossa's rim (%2 from their plane, root mean square), %3 of the mitral annulus (%4), %5 "
                       "of the coaptation."),
     "nnnnn"},
    {QT_TRANSLATE_NOOP("CoreSentences", "It is geometry on one phase of the CT; the local protocol and the operator decide."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "With a steerable sheath of radius %1 one crossing would serve both, over %2 of the fossa's area."),
     "nn"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Little room: the best place lies %1 from where a crossing no longer serves, less than a needle is placed to."),
     "n"},
    {QT_TRANSLATE_NOOP("CoreSentences", "The fossa's rim is marked by %1 points only; its outline between them is a guess."), "n"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The points of the fossa's rim lie %1 from their plane (root mean square): look at them again."),
     "n"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "No aortic root is marked: which side of the fossa is anterior is told by the patient's axes alone."),
     ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "The mitral annulus is marked by %1 points only; its plane rests on little."), "n"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The points of the mitral annulus lie %1 from their plane (root mean square): look at them again."),
     "n"},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "The leaflets meet %1 below the plane of the annulus: heights over the one and the other are not the same."),
     "n"},
    {QT_TRANSLATE_NOOP("CoreSentences", "Name the datum."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "The crossing is %1."), "w"},
    {QT_TRANSLATE_NOOP("CoreSentences", "It lies %1 %2."), "nw"},
    {QT_TRANSLATE_NOOP("CoreSentences", "The ostium's centre is %1 away, at %2 to the appendage's proximal axis."), "nn"},
    {QT_TRANSLATE_NOOP("CoreSentences", "It serves the repair."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "It does not serve the repair."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "It serves the closure."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "It serves the closure with a steerable sheath only."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "It does not serve the closure."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "It serves repair and closure."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "It serves the repair, and the closure with a steerable sheath only."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "It serves the repair, not the closure."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "It serves the closure, not the repair."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "It serves the closure with a steerable sheath only, and not the repair."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences", "It serves neither the repair nor the closure."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "Cannot cross the septum there: the place lies %1 outside the fossa's outline, towards the %2 (%3)."),
     "nwp"},
    {QT_TRANSLATE_NOOP("CoreSentences", "Choose a place within the outline, or correct the marks of the rim."), ""},
    {QT_TRANSLATE_NOOP("CoreSentences",
                       "No bend of radius %1 leads from this crossing to the ostium: the line to it leaves the septum at %2 where %3 are "
                       "allowed, and over %4 no bend makes up for that."),
     "nnnn"},
});

} // namespace

std::span<const CorePattern> accessSentences() {
    return kAccess;
}

} // namespace gauge::app
