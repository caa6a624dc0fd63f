// A measured value with its standard uncertainty, split into the components that model the measurement.
// Expression of uncertainty after the GUM (JCGM 100:2008): standard uncertainty u, expanded U = k u with k = 2.
#pragma once

#include <cmath>
#include <string>

namespace gauge::core {

/// Independent components of a standard uncertainty, in the unit of the value.
struct UncertaintyComponents {
    double edge = 0.0;     ///< image noise, blur and grid at the edge of the blood pool
    double plane = 0.0;    ///< placement of the plane: shifts and tilts of its stated spread
    double observer = 0.0; ///< hand-drawn parts
    double scale = 0.0;    ///< calibration of the image's millimetre
};

/// A value with what is known of its error. `method` names how it was obtained, in words fit for a report.
struct Estimate {
    double value = 0.0;
    UncertaintyComponents components;
    std::string method;

    /// Components added in quadrature.
    double standardUncertainty() const {
        return std::sqrt(components.edge * components.edge + components.plane * components.plane +
                         components.observer * components.observer + components.scale * components.scale);
    }
};

} // namespace gauge::core
