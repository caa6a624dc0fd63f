#include "app/format/decision_words.h"

#include "app/format/quantity.h"

#include <QCoreApplication>
#include <cmath>

namespace gauge::app {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(DecisionWords)
};

constexpr QChar kSpace(0x00A0);
constexpr QChar kMinus(0x2212);

QString fixed(double value, int decimals) {
    const QString text = QString::number(std::abs(value), 'f', decimals);
    const bool zero = text.toDouble() == 0.0;
    return value < 0.0 && !zero ? kMinus + text : text;
}

bool isYesOrNo(core::ReleaseQuantity quantity) {
    return quantity == core::ReleaseQuantity::VeinFlowFree || quantity == core::ReleaseQuantity::DeviceThrombus;
}

} // namespace

QString pressureWords(double mmHg) {
    const bool whole = std::abs(mmHg - std::round(mmHg)) < 0.05;
    return fixed(mmHg, whole ? 0 : 1) + kSpace + QStringLiteral("mmHg");
}

QString chanceWords(double chance) {
    const QString percent = kSpace + QStringLiteral("%");
    if (chance < 0.01) return Words::tr("below 1 %").replace(QLatin1String(" %"), percent);
    if (chance > 0.99) return Words::tr("above 99 %").replace(QLatin1String(" %"), percent);
    return fixed(100.0 * chance, 0) + percent;
}

QString percentWords(double percent) {
    return fixed(percent, 1) + kSpace + QStringLiteral("%");
}

QString differenceWords(double mm) {
    const QString text = fixed(mm, 1);
    const bool positive = mm > 0.0 && text.toDouble() > 0.0;
    return (positive ? QStringLiteral("+") : QString()) + text + kSpace + QStringLiteral("mm");
}

QString carriedWords(const core::CarriedValue& carried) {
    core::Estimate e;
    e.value = carried.valueMm;
    e.components.observer = carried.standardUncertaintyMm;
    return Words::tr("%1 at %2").arg(estimate(e, Unit::Millimetre), pressureWords(carried.pressureMmHg));
}

QString compressionWords(double nominalMm, double diameterMm) {
    if (diameterMm > nominalMm)
        return Words::tr("narrower than the appendage by %1").arg(quantity(diameterMm - nominalMm, Unit::Millimetre));
    return Words::tr("%1 compression").arg(percentWords(100.0 * (nominalMm - diameterMm) / nominalMm));
}

QString plainNumber(double value) {
    QString text = QString::number(std::abs(value), 'f', 2);
    while (text.endsWith(QLatin1Char('0')))
        text.chop(1);
    if (text.endsWith(QLatin1Char('.'))) text.chop(1);
    return value < 0.0 && text != QStringLiteral("0") ? kMinus + text : text;
}

QString phaseWords(core::Phase phase) {
    switch (phase) {
    case core::Phase::EndSystole:
        return Words::tr("end-systole");
    case core::Phase::Other:
        return Words::tr("another phase");
    case core::Phase::Unknown:
        return Words::tr("phase not stated");
    }
    return {};
}

QString gradientSourceWords(core::GradientSource source) {
    return source == core::GradientSource::SpectralEnvelope ? Words::tr("from the Doppler envelope")
                                                            : Words::tr("typed in");
}

QString enhancementPhaseWords(core::EnhancementPhase phase) {
    switch (phase) {
    case core::EnhancementPhase::Early:
        return Words::tr("early phase");
    case core::EnhancementPhase::Delayed:
        return Words::tr("delayed phase");
    case core::EnhancementPhase::Unknown:
        return Words::tr("phase not stated");
    }
    return {};
}

QString causeWords(core::PressureChange cause) {
    switch (cause) {
    case core::PressureChange::Passing:
        return Words::tr("passing: fasting, anaesthesia, ventilation, a diuretic");
    case core::PressureChange::Lasting:
        return Words::tr("lasting: regurgitation repaired");
    case core::PressureChange::Unknown:
        return Words::tr("not known: both are shown");
    }
    return {};
}

QString verdictWords(core::RangeVerdict verdict) {
    switch (verdict) {
    case core::RangeVerdict::Within:
        return Words::tr("within");
    case core::RangeVerdict::Outside:
        return Words::tr("outside");
    case core::RangeVerdict::NoRange:
        return Words::tr("no range");
    }
    return {};
}

QString rangeWords(const std::optional<core::ReleaseRange>& range, const QString& unit) {
    if (!range || (!range->least && !range->greatest)) return {};
    const std::string_view basis = core::words(range->basis);
    const QString from = QString::fromUtf8(basis.data(), static_cast<qsizetype>(basis.size()));
    const QString u = unit.isEmpty() ? QString() : kSpace + unit;
    const auto number = [](double value) { return plainNumber(std::round(value * 10.0) / 10.0); };
    if (range->least && range->greatest)
        return Words::tr("%1 to %2 (%3)").arg(number(*range->least), number(*range->greatest) + u, from);
    if (range->least) return Words::tr("at least %1 (%2)").arg(number(*range->least) + u, from);
    return Words::tr("at most %1 (%2)").arg(number(*range->greatest) + u, from);
}

QString findingWords(core::ReleaseQuantity quantity, double value) {
    if (isYesOrNo(quantity)) return value != 0.0 ? Words::tr("yes") : Words::tr("no");
    const std::string_view unit = core::unitOf(quantity);
    const QString u = QString::fromUtf8(unit.data(), static_cast<qsizetype>(unit.size()));
    return u.isEmpty() ? plainNumber(value) : plainNumber(value) + kSpace + u;
}

} // namespace gauge::app
