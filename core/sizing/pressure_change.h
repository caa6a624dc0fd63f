// Why the filling pressures of the readings differ, which decides in which direction a size can go wrong.
#pragma once

namespace gauge::core {

/// The person says.
enum class PressureChange {
    Passing, ///< fasting, anaesthesia, ventilation, a diuretic: the implant will live at the higher pressure
    Lasting, ///< regurgitation repaired: it will live near the new pressure, and the atrium may shrink further
    Unknown, ///< both are shown
};

const char* name(PressureChange cause); ///< "passing", "lasting", "unknown"

} // namespace gauge::core
