// Opens the workstation; for main.cpp.
#pragma once

namespace gauge::app {

/// Runs the window until it is closed. The first argument, if any, is the folder to open.
/// @return the exit code of the process.
int runWorkstation(int& argumentCount, char** arguments);

} // namespace gauge::app
