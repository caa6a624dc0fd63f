// Help, cautions, and about with the licences: pages in a window of their own that does not block the work.
#pragma once

class QWidget;

namespace gauge::app {

void showHelp(QWidget* parent);
void showCautions(QWidget* parent);
void showAbout(QWidget* parent);

} // namespace gauge::app
