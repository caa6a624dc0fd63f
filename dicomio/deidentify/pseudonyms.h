// What stands in the place of identity: UIDs, patient numbers and dates that follow from a secret key, so that everything
// that belonged together still does, also over several exports with the same key, and nobody without the key finds back.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace gauge::dicomio {

class Pseudonyms {
public:
    /// @param key  kept by whoever exports; longer than 15 characters to be worth the name.
    explicit Pseudonyms(std::string key) : m_key(std::move(key)) {}

    /// "2.25." and a number of 128 bits (PS3.5 B.2), the same for the same UID. UIDs of the standard itself (1.2.840.10008…)
    /// and empty ones stay as they are.
    std::string uid(std::string_view original) const;
    /// "P" and 12 letters and digits; the same for the same patient number.
    std::string patientId(std::string_view original) const;
    /// Days by which all dates of a patient move: 30 to 3650 into the past, the same for the same patient number.
    int dayShift(std::string_view patientId) const;

private:
    std::string digest(std::string_view purpose, std::string_view of) const;

    std::string m_key;
};

/// A key of 128 random bits from the system, as text.
std::string randomKey();

/// A date (DA, YYYYMMDD) or the date at the start of a date and time (DT; ISO 8601 with dashes too) moved by whole days;
/// nothing when there is no whole date or it names no day of the calendar. What follows the date stays.
std::optional<std::string> shiftedDate(std::string_view value, int days);

} // namespace gauge::dicomio
