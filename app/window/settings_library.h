// The part of the settings that says where the case library is.
#pragma once

class QFormLayout;
class QWidget;

namespace gauge::app {

/// Adds its rows to the form; what is changed is kept at once.
void addLibrarySettings(QFormLayout& form, QWidget& dialog);

} // namespace gauge::app
