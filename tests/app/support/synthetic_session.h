// The synthetic case as loaded images, and an engine that answers with its formula.
#pragma once

#include "app/document/session.h"

namespace gauge::fixture {

/// One CT series with the phases 30, 45 and 75 %; 45 is loaded.
app::LoadedImages syntheticImages();

/// Gives syntheticMeasurement() for any marks, and a landing plane at any depth on the axis.
app::Session::Engine syntheticEngine();

/// Runs the event loop until `done` or 10 s have passed; true when done.
bool waitUntil(const std::function<bool()>& done);

/// Opens the synthetic images and marks atrium and tip (and the landmarks); waits for the measurement.
void openAndMeasure(app::Session& session);

} // namespace gauge::fixture
