// One row of the comparison table, shared by the files of ComparisonModel.
#pragma once

#include "app/models/comparison_model.h"

namespace gauge::app {

/// One quantity: its ids in the CT's values and in those of the other modalities.
struct ComparisonModel::Row {
    const char* words;
    const char* ct = nullptr;
    const char* picture = nullptr;
    Unit unit = Unit::Millimetre;
    const char* explanation = "";
    std::optional<core::Quantity> quantity{};
    core::Derivation derivation = core::Derivation::Contour; ///< of typed readings: views stand in rows of their own
    bool heading = false;
    bool leading = false;
};

/// A text of the rows, in the language of the screen.
QString comparisonWords(const char* text);

} // namespace gauge::app
