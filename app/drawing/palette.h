// Colours by meaning, with the line style, marker and word that go with each: colour is never the only
// carrier. The colours are those of Okabe and Ito, told apart by colour-blind readers.
#pragma once

#include <QColor>
#include <QPen>
#include <QString>

namespace gauge::app {

/// What a line or point on an image stands for.
enum class Role { Ostium, Landing, Axis, Atrium, Tip, Circumflex, Ridge, Aorta, PulmonaryArtery, Section, Crossing, Device, Drawing };

/// What a line is drawn on: pictures of the patient are dark in every theme, pages and plots follow it.
enum class Ground { Image, Page };

QColor colourOf(Role role, Ground ground = Ground::Image);
Qt::PenStyle lineStyleOf(Role role);
/// The word shown beside a line or point.
QString wordOf(Role role);

/// Cosmetic pen in the role's colour and line style.
QPen penOf(Role role, double width = 1.5, Ground ground = Ground::Image);
/// Wider dark pen to lie under it, so that it stands out on bright and dark tissue alike.
QPen haloPen(double width = 1.5);

enum class Theme { Dark, Light };

/// Sets the neutral colours below and the twins of the colours by meaning, for the whole program.
void setTheme(Theme theme);
Theme theme();

/// Neutral colours of the theme in use. `image` lies behind pictures of the patient and is dark in every theme; what is
/// written on them is `onImage`, `onImageSoft` or `onImageWarning`.
namespace tone {
extern QColor window, panel, raised, border, text, soft, faint, warning, error, link;
inline const QColor image{0x08, 0x0A, 0x0C};
inline const QColor onImage{0xE8, 0xEB, 0xEE};
inline const QColor onImageSoft{0xB4, 0xBC, 0xC5};
inline const QColor onImageWarning{0xF2, 0xC9, 0x7D};
} // namespace tone

/// Font of labels painted on images, in pixels so that pictures look alike everywhere; times the label scale.
QFont labelFont(int pixelSize = 12, bool strong = false);

/// Enlarges the labels of every picture: 1 in the reading room, more in a meeting. At least 1.
void setLabelScale(double scale);
double labelScale();
/// Pixels of the smallest label at scale 1.
inline constexpr int kSmallestLabelPx = 11;

} // namespace gauge::app
