#include "app/models/strip_answer.h"

#include "app/format/decision_words.h"
#include "app/format/quantity.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace gauge::app {

std::optional<std::size_t> StripAnswer::nearest(double mm) const {
    const auto best = std::min_element(profile.begin(), profile.end(), [&](const auto& a, const auto& b) {
        return std::abs(a.depthMm - mm) < std::abs(b.depthMm - mm);
    });
    return best == profile.end() ? std::nullopt : std::optional(static_cast<std::size_t>(best - profile.begin()));
}

QString wordsOf(const StripAnswer& answer, StripBand which) {
    const core::PressureBand& band = answer.band(which);
    const QString pressure = pressureWords(band.pressureMmHg);
    switch (which) {
    case StripBand::Lowest:
        return (band.extrapolated ? QCoreApplication::translate("DepthStrip", "%1, lowest (beyond the model)") : QCoreApplication::translate("DepthStrip", "%1, lowest")).arg(pressure);
    case StripBand::Decision:
        return (band.extrapolated ? QCoreApplication::translate("DepthStrip", "%1, decision (beyond the model)") : QCoreApplication::translate("DepthStrip", "%1, decision")).arg(pressure);
    case StripBand::Highest:
        return (band.extrapolated ? QCoreApplication::translate("DepthStrip", "%1, highest (beyond the model)") : QCoreApplication::translate("DepthStrip", "%1, highest")).arg(pressure);
    }
    return pressure;
}

QString wordsOf(const core::BandWidth& width) {
    const auto bare = [](double mm) {
        QString text = quantity(mm, Unit::Millimetre);
        text.remove(symbol(Unit::Millimetre));
        return text.trimmed();
    };
    return QCoreApplication::translate("DepthStrip", "%1 (%2–%3) mm", "width and its interval of 95 %")
        .arg(bare(width.medianMm), bare(width.lower95Mm), bare(width.upper95Mm));
}

std::optional<StripAnswer> stripAnswer(const Session& session, const Answers& answers) {
    const core::AppendageMeasurement* m = session.measurement();
    const PressureBands* pressures = answers.bands();
    if (!m || !pressures || m->profile.empty()) return std::nullopt;
    StripAnswer answer;
    for (const core::ProfileSection& at : m->profile) {
        const core::Estimate& width = at.section.metrics.perimeterDerivedDiameterMm;
        answer.profile.push_back({at.sMm, width.value, width.standardUncertainty()});
    }
    const core::CarriedValue* const carried[] = {&pressures->lowest, &pressures->decision, &pressures->highest};
    for (const StripBand which : kStripBands) {
        auto band = core::carriedProfile(answer.profile, *carried[static_cast<std::size_t>(which)]);
        if (!band) return std::nullopt;
        answer.bands[static_cast<std::size_t>(which)] = std::move(*band);
    }
    const core::ChartSize* size = answers.chosenChartSize();
    const auto landing = session.landingPlace();
    if (size && landing) {
        auto outline = core::deviceOutline(answers.chart()->chart, *size, landing->depthMm, answer.profile,
                                           answer.band(StripBand::Decision));
        if (outline) answer.device = std::move(*outline);
        answer.deviceName = QString::fromStdString(size->name);
    }
    return answer;
}

} // namespace gauge::app
