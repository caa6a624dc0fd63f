// Dark theme of the whole program: palette, font and style sheet.
#pragma once

class QApplication;

namespace gauge::app {

void applyTheme(QApplication& application);

} // namespace gauge::app
