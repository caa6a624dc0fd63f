// Figures of clinical practice that advice rests on, each with its basis; editable like the priors. Device charts
// decide where they speak.
#pragma once

#include "core/pressure/priors.h"

namespace gauge::core {

struct PracticeFigures {
    ValuePrior advisedPressureMmHg{10.0, Basis::Memory, "least left atrial mean pressure before sizing"};
    ValuePrior higherAdvisedPressureMmHg{12.0, Basis::Memory, "used by some before sizing"};
    ValuePrior riseAtDeploymentMmHg{3.0, Basis::Read,
                                    "12.6 to 15.6 mmHg (86 patients), 14.9 to 17.6 mmHg (62 patients): size on the value "
                                    "before deployment"};
    ValuePrior leastCompressionPercent{8.0, Basis::Read, "at the appendage's largest size (plug); charts decide"};
    ValuePrior mostCompressionPercent{20.0, Basis::Read, "at the appendage's largest size (plug); charts decide"};
    ValuePrior coaxialityLimitDeg{30.0, Basis::Read, "between the crossing line and the appendage's axis"};
    ValuePrior crossingHeightMm{40.0, Basis::Read, "over the annulus, for the mitral repair; 35 to 45 mm"};
    ValuePrior delayedEnhancementRatio{0.5, Basis::Read,
                                       "appendage tip against ascending aorta, delayed phase only: below, exclude thrombus"};
    ValuePrior largestPhasePercent{45.0, Basis::Read, "of the R-R interval, where the appendage is largest"};
    ValuePrior smallestPhasePercent{5.0, Basis::Read, "of the R-R interval, where the appendage is smallest"};
    ValuePrior smallLeakMm{3.0, Basis::Read, "up to this: small"};
    ValuePrior moderateLeakMm{5.0, Basis::Read, "up to this: moderate; over: severe"};
    ValuePrior sharpTurnDeg{80.0, Basis::Read, "turn of the axis above which a bend is sharp (interior angle under 100)"};
};

} // namespace gauge::core
