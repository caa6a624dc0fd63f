#include "app/format/evidence_words.h"

#include "app/format/decision_words.h"
#include "app/format/quantity.h"
#include "app/format/terms.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

namespace gauge::app {

QString capitalised(QString text) {
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

QString pressureWords(const core::CaseRecord& record, const core::Evidence& evidence) {
    const auto moment = record.moments.find(evidence.moment);
    if (moment == record.moments.end() || !moment->second.content.circulation.meanPressureMmHg)
        return QCoreApplication::translate("Evidence", "pressure unknown");
    const core::HaemodynamicState& c = moment->second.content.circulation;
    const QString mean = pressureWords(*c.meanPressureMmHg);
    return c.vWaveMmHg ? QCoreApplication::translate("Evidence", "LA mean %1, v wave %2").arg(mean, pressureWords(*c.vWaveMmHg)) : QCoreApplication::translate("Evidence", "LA mean %1").arg(mean);
}

QString timeWords(const std::string& iso) {
    const QString text = QString::fromStdString(iso);
    if (!text.contains(QLatin1Char('T'))) {
        const QDate day = QDate::fromString(text, Qt::ISODate);
        return day.isValid() ? QLocale().toString(day, QLocale::ShortFormat) : QString();
    }
    const QDateTime time = QDateTime::fromString(text, Qt::ISODateWithMs);
    return time.isValid() ? QLocale().toString(time.date(), QLocale::ShortFormat) + QLatin1Char(' ') +
                                time.time().toString(QStringLiteral("HH:mm"))
                          : QString();
}

QString evidenceTitle(const core::Evidence& evidence) {
    const QString kind = capitalised(evidenceName(evidence.kind));
    const QString what = QString::fromStdString(evidence.description);
    if (evidence.kind == core::EvidenceKind::EchoCine) {
        if (evidence.probeAngleDeg)
            return QStringLiteral("%1 %2").arg(kind, quantity(*evidence.probeAngleDeg, Unit::Degree));
        return QCoreApplication::translate("Evidence", "%1, angle unknown").arg(kind);
    }
    return what.isEmpty() ? kind : QCoreApplication::translate("Evidence", "%1: %2").arg(kind, what);
}

QString measurableWords(core::EvidenceKind kind) {
    switch (kind) {
    case core::EvidenceKind::Ct:
        return QCoreApplication::translate("Evidence", "Lengths, areas, angles and Hounsfield values can be measured everywhere.");
    case core::EvidenceKind::EchoCine:
        return QCoreApplication::translate("Evidence", "Lengths, areas and angles can be measured within its calibrated regions; "
                                                       "widths at known probe angles enter the ellipse of the views.");
    case core::EvidenceKind::EchoVolume:
        return QCoreApplication::translate("Evidence", "Shown slice by slice. Lengths, areas and angles can be measured within a "
                                                       "slice; it has no probe angle, so they do not enter the ellipse of the views.");
    case core::EvidenceKind::Doppler:
        return QCoreApplication::translate("Evidence", "Velocities, times and envelopes can be measured on the spectrum; lengths "
                                                       "cannot.");
    case core::EvidenceKind::Fluoroscopy:
        return QCoreApplication::translate("Evidence", "Lengths and angles can be measured by the C-arm's geometry, or once a "
                                                       "catheter or a known length has given the scale.");
    case core::EvidenceKind::Other:
        return QCoreApplication::translate("Evidence", "Lengths can be measured once the person has given a scale.");
    }
    return {};
}

QString momentWords(const core::CaseRecord& record, const std::string& key) {
    if (const auto moment = record.moments.find(key); moment != record.moments.end()) {
        const core::Stage stage = moment->second.content.circulation.stage;
        int ofStage = 0, at = 0;
        for (const auto& [id, entry] : record.moments) {
            ofStage += entry.content.circulation.stage == stage;
            if (id == key) at = ofStage;
        }
        const QString words = capitalised(stageName(stage));
        return ofStage > 1 ? QCoreApplication::translate("Evidence", "%1 (%2 of %3)").arg(words).arg(at).arg(ofStage) : words;
    }
    const auto stage = core::stageFrom(key);
    return stage ? capitalised(stageName(*stage)) : QString::fromStdString(key);
}

} // namespace gauge::app
