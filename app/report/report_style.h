// Measures, letters and inks of a printed report.
#pragma once

#include <QColor>
#include <QFont>

namespace gauge::app {

// Sizes here are points, 1/72 inch. The text is laid out in tenths of them, so that letters of every size keep their
// proportions on every device.
inline constexpr double kTenths = 10.0;
inline constexpr double kMarginSide = 48.0, kMarginTop = 42.0, kMarginBottom = 66.0, kCellPadding = 3.0;
inline constexpr double kTextPt = 9.5, kSmallPt = 8.0, kTitlePt = 17.0, kSectionPt = 12.0, kFootPt = 7.0;
inline const QColor kInk(0x15, 0x19, 0x1D), kSoft(0x44, 0x4E, 0x58), kRule(0xB8, 0xC0, 0xC8), kShade(0xEE, 0xF1, 0xF4),
    kHeed(0x75, 0x48, 0x00);

QFont reportFont(double points, bool strong = false);

} // namespace gauge::app
