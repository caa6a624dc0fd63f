#include "core/access/access_target.h"

#include "core/geometry/polyline.h"

namespace gauge::core {

AppendageTarget accessTarget(const AppendageMeasurement& measurement) {
    const auto axis = Polyline::make(measurement.axis.points);
    if (!axis) return {measurement.ostium.section.center, measurement.ostium.section.frame.normal};
    const PatientVector chord = axis->pointAt(kProximalAxisMm) - axis->pointAt(0.0); // held at the tip of a shorter axis
    return {measurement.ostium.section.center, chord.norm() > 1e-6 ? chord.normalized() : measurement.ostium.section.frame.normal};
}

} // namespace gauge::core
