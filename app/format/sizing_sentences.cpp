#include "app/format/sizing_sentences.h"

#include "app/format/decision_words.h"
#include "app/format/quantity.h"
#include "app/format/terms.h"
#include "core/sizing/percent.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

namespace gauge::app {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Sizing)
};

QString mm(double value) {
    return quantity(value, Unit::Millimetre);
}

QString mmRange(double lo, double hi) {
    return Words::tr("%1 to %2").arg(mm(lo), mm(hi));
}

QString pressureRange(const core::LivingRange& range) {
    return Words::tr("%1 to %2").arg(pressureWords(range.lowestMmHg), pressureWords(range.highestMmHg));
}

/// "It rests on 3 readings; it would change with a reading by 3D echo at 12 mmHg above 24.1 mm."
QString basisSentence(const core::SizingAnswer& answer) {
    const auto counted = std::count_if(answer.weights.begin(), answer.weights.end(),
                                       [](const core::ReadingWeight& w) { return w.reason.empty(); });
    const QString rests = Words::tr("It rests on %n reading(s)", nullptr, static_cast<int>(counted));
    QStringList limits;
    for (const core::Overturning& o : answer.card.overturning)
        limits << (o.above ? Words::tr("above %1").arg(mm(o.readingMm)) : Words::tr("below %1").arg(mm(o.readingMm)));
    if (limits.isEmpty()) return rests + QLatin1Char('.');
    return Words::tr("%1 and would change with a reading by %2 at %3 %4.")
        .arg(rests, modalityName(answer.card.overturningModality), pressureWords(answer.card.overturningPressureMmHg),
             limits.join(Words::tr(" or ")));
}

} // namespace

QString widthSentence(const core::SizingAnswer& answer) {
    const core::DiameterAt& d = answer.diameter;
    QString what = quantityName(answer.question.quantity);
    if (answer.question.by2d) what = Words::tr("%1 (%2)").arg(what, derivationName(answer.question.derivation));
    return Words::tr("The %1 at %2 is %3, with a chance of 95 % from %4.")
        .arg(what, pressureWords(d.pressureMmHg), mm(d.medianMm), mmRange(d.lower95Mm, d.upper95Mm));
}

QString slopeSentence(const core::SizingAnswer& answer) {
    const auto& s = answer.slope;
    return Words::tr("Near 12 mmHg it widens by %1 mm per mmHg (± %2; %3 % of that is this patient's own, the rest is "
                     "assumed).")
        .arg(QString::number(s.meanMmPerMmHg, 'f', 2), QString::number(s.sdMmPerMmHg, 'f', 2),
             QString::number(100.0 * s.patientShare, 'f', 0));
}

QString livingSentence(const core::SizingAnswer& answer) {
    QStringList parts;
    for (const core::LivingWidths& w : answer.livingWidths) {
        const QString range = mmRange(w.interval95Mm.lo, w.interval95Mm.hi);
        parts << (w.cause == core::PressureChange::Passing
                      ? Words::tr("if the change of pressure passes (%1): %2").arg(pressureRange(w.pressures), range)
                      : Words::tr("if it lasts (%1): %2").arg(pressureRange(w.pressures), range));
    }
    return Words::tr("Widths to live with (95 %), %1.").arg(parts.join(QStringLiteral("; ")));
}

QString leadingSentence(const core::SizingAnswer& answer) {
    if (!answer.leading) return Words::tr("No size of the chart has any chance to fit.");
    const core::SizeFit& s = answer.sizes[*answer.leading];
    return Words::tr("Size %1 has the greatest fit chance, %2, at %3; over the living range of %4 its compression stays "
                     "inside its band with a chance of %5. %6")
        .arg(QString::fromStdString(s.name), chanceWords(s.fitChance), pressureWords(answer.diameter.pressureMmHg),
             pressureRange(answer.living), chanceWords(s.lastingFit), basisSentence(answer));
}

QString depthWords(const core::SizeFit& fit) {
    if (!fit.depthOk || !fit.depthMm)
        return fit.depthMm ? Words::tr("at least %1, no verdict").arg(mm(*fit.depthMm)) : Words::tr("not known");
    if (*fit.depthOk) return Words::tr("enough: %1, needs %2").arg(mm(*fit.depthMm), mm(fit.leastDepthMm));
    return Words::tr("%1 short: %2, needs %3")
        .arg(mm(fit.leastDepthMm - *fit.depthMm), mm(*fit.depthMm), mm(fit.leastDepthMm));
}

QString compressionRangeWords(const core::SizeFit& fit, const core::Band& widthsMm) {
    if (widthsMm.hi <= fit.nominalMm)
        return Words::tr("%1 to %2").arg(percentWords(core::compressionPercent(fit.nominalMm, widthsMm.hi)),
                                         percentWords(core::compressionPercent(fit.nominalMm, widthsMm.lo)));
    if (widthsMm.lo <= fit.nominalMm)
        return Words::tr("up to %1; at most %2 too narrow")
            .arg(percentWords(core::compressionPercent(fit.nominalMm, widthsMm.lo)), mm(widthsMm.hi - fit.nominalMm));
    return Words::tr("%1 to %2 too narrow")
        .arg(mm(widthsMm.lo - fit.nominalMm), mm(widthsMm.hi - fit.nominalMm));
}

QString actWords(core::Act act) {
    switch (act) {
    case core::Act::MeasurePressure:
        return Words::tr("Measure the left atrial pressure");
    case core::Act::OneMoreAngle:
        return Words::tr("One more set of echo angles");
    case core::Act::Echo3d:
        return Words::tr("Measure by 3D echo");
    case core::Act::RemeasureAfterFilling:
        return Words::tr("Measure again after filling");
    }
    return {};
}

} // namespace gauge::app
