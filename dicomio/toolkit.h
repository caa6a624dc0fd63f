// Process-wide set-up of the DICOM toolkit: decoders registered once, its log silenced (we report ourselves).
#pragma once

namespace gauge::dicomio {

/// Safe to call from any thread, any number of times.
void initialiseToolkit();

} // namespace gauge::dicomio
