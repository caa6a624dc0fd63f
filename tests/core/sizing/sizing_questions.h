// Invented patients for the sizing tests. Widths in mm, pressures in mmHg.
#pragma once

#include "core/sizing/sizing.h"
#include "tests/core/sizing/chart_files.h"

namespace gauge::test {

inline core::Observation readingOf(core::Modality modality, core::Stage stage, const std::string& state,
                                   double mm, std::optional<double> mmHg) {
    core::Observation o;
    o.modality = modality;
    o.derivation =
        modality == core::Modality::Echo2d ? core::Derivation::EllipseFromAngles : core::Derivation::Contour;
    o.stage = stage;
    o.state = state;
    o.phase = core::Phase::EndSystole;
    o.valueMm = mm;
    o.pressureMmHg = mmHg;
    if (mmHg) o.pressureSource = core::PressureSource::Direct;
    return o;
}

/// CT on a full atrium, echo under anaesthesia at 7 mmHg.
inline core::SizingQuestion passingPatient() {
    core::SizingQuestion q;
    q.chart = demoLobeAndDisc();
    q.observations = {readingOf(core::Modality::Ct, core::Stage::BeforeProcedure, "CT day", 21.9, 13.0),
                      readingOf(core::Modality::Echo3d, core::Stage::BeforeRepair, "anaesthesia", 19.4, 7.0)};
    q.facts.depthMm = 28.0;
    q.decisionPressureMmHg = 12.0;
    q.lowestMmHg = 8.0;
    q.highestMmHg = 18.0;
    q.cause = core::PressureChange::Passing;
    return q;
}

/// CT before the repair at an unknown, high pressure; echo after it.
inline core::SizingQuestion lastingPatient() {
    core::SizingQuestion q;
    q.chart = demoLobeAndDisc();
    q.observations = {readingOf(core::Modality::Ct, core::Stage::BeforeRepair, "CT day", 24.8, std::nullopt),
                      readingOf(core::Modality::Echo3d, core::Stage::AfterRepair, "after repair", 21.7, 9.0)};
    q.observations[0].condition = core::Condition::MitralRegurgitation;
    q.facts.depthMm = 28.0;
    q.decisionPressureMmHg = 10.0;
    q.lowestMmHg = 6.0;
    q.highestMmHg = 14.0;
    q.cause = core::PressureChange::Lasting;
    return q;
}

/// A copy, so that it outlives the answer it was found in.
inline std::optional<core::Notice> find(const std::vector<core::Notice>& all, const std::string& code) {
    for (const core::Notice& n : all)
        if (n.code == code) return n;
    return std::nullopt;
}

inline std::string fact(const core::Notice& notice, const std::string& key) {
    for (const core::Fact& f : notice.facts)
        if (f.key == key) return f.value;
    return "";
}

} // namespace gauge::test
