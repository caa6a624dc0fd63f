// The card for the room: which widths echo and fluoroscopy should show at the pressures that may be met, and
// which reading would overturn the plan. One page, as data and as plain text.
#pragma once

#include "core/sizing/appendage_facts.h"
#include "core/sizing/chart_question.h"

#include <map>

namespace gauge::core {

/// A reading to expect, with the interval that holds it with a chance of 95 %: uncertainty of the width, of
/// the method's bias, and of one reading.
struct ExpectedReading {
    double medianMm = 0.0;
    Band interval95Mm;
};

/// One line of the card.
struct CardLine {
    double pressureMmHg = 0.0;
    ExpectedReading width;          ///< the quantity itself, without bias and reading error
    ExpectedReading echo2d, echo3d; ///< the same quantity as read by ellipse from angles and by 3D contour
    std::map<int, ExpectedReading>
        echoByAngle; ///< widths at 0, 45, 90, 135 degrees, where the section's ellipse is known
    std::optional<ExpectedReading> fluoroscopyLongest,
        fluoroscopyShortest;     ///< edge-on views, where the section is known
    ExpectedReading fluoroscopy; ///< the derived diameter, as fluoroscopy reads it
};

/// A reading at which another size would fit best.
struct Overturning {
    bool above = false; ///< readings above the value overturn; otherwise readings below
    double readingMm = 0.0;
    double chance = 0.0; ///< of a reading beyond the value, as things stand
    std::string otherSize;
};

struct RoomCard {
    Quantity quantity = Quantity::LandingZonePerimeterDerivedDiameter;
    std::vector<CardLine> lines; ///< 6, 8 … 20 mmHg
    Modality overturningModality =
        Modality::Echo3d; ///< by which the overturning reading is taken, at the decision pressure
    Derivation overturningDerivation = Derivation::Contour;
    double overturningPressureMmHg = 0.0;
    std::vector<Overturning> overturning; ///< none when no reading within 99.998 % of expected ones would
};

/// @param leading  the size now.
Result<RoomCard> roomCard(const DeviceChart& chart, const ChartAnswer& answer,
                          const std::vector<Observation>& readings, const AppendageFacts& facts,
                          std::size_t leading);

/// The card as a page of plain text, lines of at most 100 characters.
std::string plainText(const RoomCard& card, const std::string& leadingSize);

} // namespace gauge::core
