// What the depth strip and its readout show of the answers: the profile's widths at three pressures, and the outline of the
// chosen size.
#pragma once

#include "app/document/answers.h"
#include "core/pressure/profile_bands.h"
#include "core/sizing/device_outline.h"

#include <QString>
#include <array>
#include <optional>
#include <vector>

namespace gauge::app {

enum class StripBand { Lowest, Decision, Highest };
inline constexpr std::array kStripBands{StripBand::Lowest, StripBand::Decision, StripBand::Highest};

struct StripAnswer {
    std::vector<core::ProfileWidth> profile; ///< perimeter-derived diameters as read on CT, ascending by depth
    std::array<core::PressureBand, 3> bands; ///< by StripBand; one width per depth of `profile`
    std::optional<core::DeviceOutline> device;
    QString deviceName;

    const core::PressureBand& band(StripBand which) const { return bands[static_cast<std::size_t>(which)]; }
    /// Index of the depth nearest to `mm`; nothing for an empty profile.
    std::optional<std::size_t> nearest(double mm) const;
};

/// "5 mmHg, lowest", "12 mmHg, decision", "20 mmHg, highest"; a pressure outside the model's range says so.
QString wordsOf(const StripAnswer& answer, StripBand which);
/// "19.2 (18.1–20.3) mm": median and the interval of 95 %.
QString wordsOf(const core::BandWidth& width);

/// Nothing without a measurement or a decision pressure.
std::optional<StripAnswer> stripAnswer(const Session& session, const Answers& answers);

} // namespace gauge::app
