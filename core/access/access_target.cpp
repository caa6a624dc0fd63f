#include "core/access/access_target.h"

#include <algorithm>

namespace gauge::core {

AppendageTarget accessTarget(const AppendageMeasurement& measurement) {
    const double reach = std::min(kProximalAxisMm, measurement.axis.lengthMm);
    const PatientVector chord = axisPointAt(measurement, reach) - axisPointAt(measurement, 0.0);
    const bool known = chord.norm() > 1e-6;
    return {measurement.ostium.section.center,
            known ? chord.normalized() : measurement.ostium.section.frame.normal};
}

} // namespace gauge::core
