// Colours by meaning, with the line style, marker and word that go with each: colour is never the only
// carrier. The colours are those of Okabe and Ito, told apart by colour-blind readers.
#pragma once

#include <QColor>
#include <QPen>
#include <QString>

namespace gauge::app {

/// What a line or point on an image stands for.
enum class Role { Ostium, Landing, Axis, Atrium, Tip, Circumflex, Ridge, Aorta, Section };

QColor colourOf(Role role);
Qt::PenStyle lineStyleOf(Role role);
/// The word shown beside a line or point.
QString wordOf(Role role);

/// Cosmetic pen in the role's colour and line style.
QPen penOf(Role role, double width = 1.5);
/// Wider dark pen to lie under it, so that it stands out on bright and dark tissue alike.
QPen haloPen(double width = 1.5);

/// Neutral colours of the dark theme.
namespace tone {
inline const QColor window{0x12, 0x15, 0x18};
inline const QColor panel{0x1A, 0x1E, 0x22};
inline const QColor raised{0x25, 0x2B, 0x31};
inline const QColor border{0x33, 0x3A, 0x42};
inline const QColor image{0x08, 0x0A, 0x0C};
inline const QColor text{0xE8, 0xEB, 0xEE};
inline const QColor soft{0xB4, 0xBC, 0xC5};
inline const QColor faint{0x8A, 0x94, 0x9F};
inline const QColor warning{0xF2, 0xC9, 0x7D};
inline const QColor error{0xFF, 0x9B, 0x85};
} // namespace tone

/// Font of labels painted on images, in pixels so that pictures look alike everywhere.
QFont labelFont(int pixelSize = 12, bool strong = false);

} // namespace gauge::app
