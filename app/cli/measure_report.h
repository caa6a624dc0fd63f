// What the verb `measure` says: its JSON document and a summary for people.
#pragma once

#include "core/anatomy/appendage.h"
#include "dicomio/ct/ct_reader.h"

#include <string>

namespace gauge::app {

/// The document "ostium-gauge/measure/1". Lengths in mm, LPS; what is absent is null.
std::string measureJson(const dicomio::CtVolume& ct, const core::AppendageMeasurement& measurement);

/// A few lines with the values that a person looks for first, each with its standard uncertainty.
std::string measureSummary(const dicomio::CtVolume& ct, const core::AppendageMeasurement& measurement);

} // namespace gauge::app
