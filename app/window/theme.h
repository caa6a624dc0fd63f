// Palette, font and style sheet of the whole program, dark or light; also makes icon, licences and help available. Can be
// called again at any time: what is on screen follows.
#pragma once

#include "app/drawing/palette.h"

#include <QString>

class QApplication;

namespace gauge::app {

void applyTheme(QApplication& application, Theme theme = Theme::Dark);

/// "dark", "light", or "system": as the desktop's own palette was when the program started.
Theme themeFrom(const QString& setting);

/// Size of letters in the whole program, 1 to kLargestTextScale; holds from the next applyTheme().
inline constexpr double kLargestTextScale = 1.3;
void setTextScale(double scale);
double textScale();

/// Pairs of text and background that the style sheet and the palette put on each other, for the theme in use; a test
/// computes their contrast.
struct TextPair {
    const char* where;
    QColor text, background;
};
QList<TextPair> textPairs();
/// Marks and outlines that a person must see to work: 3:1 is enough for them (WCAG 2.1, 1.4.11).
QList<TextPair> markPairs();

} // namespace gauge::app
