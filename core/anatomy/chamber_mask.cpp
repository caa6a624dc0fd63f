#include "core/anatomy/chamber_mask.h"

#include "core/anatomy/appendage_trace.h"

namespace gauge::core {

Result<BoxMask> chamberMask(const AppendageMeasurement& measurement, Chamber chamber) {
    if (!measurement.trace)
        return failure(ErrorCode::InvalidArgument,
                       "Cannot tell the chambers apart: the measurement has no working data; measure again.");
    return chamber == Chamber::Appendage ? measurement.trace->appendage : measurement.trace->pool.mask;
}

} // namespace gauge::core
