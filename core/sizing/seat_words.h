// What the seat of a size says, in sentences with numbers. Codes, facts: seat-reach, seat-circumflex, seat-disc, seat-gaps,
// seat-clearance. Against a size: seat-short, seat-no-room, seat-disc-short, seat-share-low, too-near (as core/sizing says it). About
// all of them: seat-basis, seat-plug-plane, seat-oblique, seat-no-verdict, seat-no-sides, seat-not-marked.
#pragma once

#include "core/sizing/seat.h"

#include <string>

namespace gauge::core {

/// Gaps of less are contact.
inline constexpr double kTouchesMm = 0.05;

std::vector<Notice> seatFacts(const Seat& seat, const SeatQuestion& question);
std::vector<Notice> seatWarnings(const Seat& seat, const SeatQuestion& question);
std::vector<Notice> seatNotices(const SeatAnswer& answer, const SeatQuestion& question);

/// A direction in the patient's words: "superior", "posterior-inferior". Its two largest parts, those that make up at least 0.38 (sine
/// of 22.5 degrees) of it.
std::string sideWords(const PatientVector& direction);

} // namespace gauge::core
