// Which attributes leave and which stay when a file is de-identified (PS3.15 Annex E, Basic Application Level
// Confidentiality Profile, with options). The other way round than the standard's table, and stricter: numbers and code
// strings stay, words go, unless an attribute is named here; so an attribute that nobody thought of goes.
//
//   stays             numbers (DS, IS, US, FL…), code strings (CS), codes, UIDs of the standard, pixels and palettes
//   is replaced       other UIDs; patient number; dates (moved) where the option asks for them
//   becomes empty     attributes that objects must have: names, study ID, accession number…
//   goes              every other text, all persons, institutions, requests, private attributes, overlays, signatures
#pragma once

#include "dicomio/scan/tag.h"

#include <string>
#include <string_view>
#include <vector>

namespace gauge::dicomio {

/// Options of PS3.15 E.3 that can be asked for; their codes are those of CID 7050.
struct DeidentifyOptions {
    bool keepModifiedDates = true;       ///< 113107: dates moved by the same number of days, times kept
    bool keepPatientCharacteristics = true; ///< 113108: sex, age, size, weight
    bool keepDeviceIdentity = false;     ///< 113109: maker and model, software; serial numbers too
    bool cleanPixels = true;             ///< 113101: burned-in text outside the calibrated regions is blanked
};

enum class Fate { Keep, Remove, Empty, NewUid, NewPatientId, MoveDate, Descend };

/// @param vr  value representation, two letters.
Fate fateOf(Tag tag, std::string_view vr, const DeidentifyOptions& options);

/// Code and meaning of CID 7050 for what was done.
struct MethodCode {
    std::string value, meaning;
};
std::vector<MethodCode> methodCodes(const DeidentifyOptions& options);

} // namespace gauge::dicomio
