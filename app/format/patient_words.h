// Names and dates of DICOM for people.
#pragma once

#include <QString>
#include <string>

namespace gauge::app {

/// A DICOM person name for people: "Nemo, Ines". Empty for an empty name.
QString personName(const std::string& dicomName);

/// "1951-02-03" from "19510203"; anything else as it is.
QString isoDate(const std::string& dicomDate);

} // namespace gauge::app
