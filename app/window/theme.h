// Dark theme of the whole program: palette, font and style sheet. Also makes icon and licences available.
#pragma once

class QApplication;

namespace gauge::app {

void applyTheme(QApplication& application);

} // namespace gauge::app
