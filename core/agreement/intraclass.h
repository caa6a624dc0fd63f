// Intraclass correlations: how much of the variance of readings is the targets' own. Forms of Shrout and Fleiss.
#pragma once

#include "core/agreement/bland_altman.h"
#include "core/result.h"

#include <Eigen/Core>

namespace gauge::core {

struct Correlation {
    double value = 0.0;
    Interval interval;
};

/// ICC(form, judges): 1 every target has its own judges; 2 the same judges, drawn from many (absolute agreement); 3 these
/// judges only (consistency). Single: of one reading; mean: of the mean of all judges.
struct IntraclassCorrelations {
    int targets = 0;
    int judges = 0;
    double betweenTargets = 0.0; ///< mean square
    double withinTargets = 0.0;
    double betweenJudges = 0.0;
    double residual = 0.0;
    Correlation single1, single2, single3;
    Correlation mean1, mean2, mean3;
};

/// @param readings  one row per target, one column per judge; at least 2 of each, none missing.
/// @errors TooFewPoints, NonFinite, InvalidArgument (confidence), Degenerate when all targets read alike or no reading
/// differs between the judges' patterns (the residual is 0 and the intervals have no meaning).
/// Source: Shrout and Fleiss, Psychol Bull 1979;86:420-428; interval of form 2 by Satterthwaite's degrees there.
Result<IntraclassCorrelations> intraclassCorrelations(const Eigen::MatrixXd& readings, double confidence = 0.95);

} // namespace gauge::core
