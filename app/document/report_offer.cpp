#include "app/document/report_offer.h"

#include "app/commands/course_commands.h"
#include "app/commands/images_commands.h"
#include "app/format/decision_words.h"
#include "app/format/patient_words.h"
#include "dicomio/scan/scanner.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

namespace gauge::app {
namespace {

constexpr double kSameMm = 1e-6; // a value that went through a report and back is exact

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

/// Names are the same whatever the case and however DICOM's components are padded.
QString plain(const std::string& name) {
    return personName(name).simplified().toCaseFolded();
}

void compare(ReportOffer& offer, const core::CaseRecord& record) {
    const core::Patient& theirs = offer.patient;
    const core::Patient ours = record.patient ? record.patient->content : core::Patient{};
    const auto both = [](const std::string& a, const std::string& b) { return !a.empty() && !b.empty(); };
    offer.patientUnknown = !both(ours.id, theirs.id) && !both(ours.name, theirs.name);
    if (both(ours.id, theirs.id) && ours.id != theirs.id)
        offer.otherPatient << QCoreApplication::translate("ReadReport", "The patient's ID is “%1” in the case and “%2” in the report.").arg(text(ours.id), text(theirs.id));
    if (both(ours.name, theirs.name) && plain(ours.name) != plain(theirs.name))
        offer.otherPatient << QCoreApplication::translate("ReadReport", "The patient's name is “%1” in the case and “%2” in the report.")
                                  .arg(personName(ours.name), personName(theirs.name));
    if (both(ours.birthDate, theirs.birthDate) && ours.birthDate != theirs.birthDate)
        offer.otherPatient << QCoreApplication::translate("ReadReport", "The date of birth is %1 in the case and %2 in the report.")
                                  .arg(isoDate(ours.birthDate), isoDate(theirs.birthDate));
}

QString sourceOf(const dicomio::ReadReport& report) {
    const auto& c = report.content;
    const QString who = c.persons.empty() ? QString() : personName(c.persons.front());
    QStringList device;
    for (const std::string& part : {c.device.manufacturer, c.device.model})
        if (!part.empty()) device << text(part);
    QString out = c.time.empty() ? QCoreApplication::translate("ReadReport", "report without a date") : QCoreApplication::translate("ReadReport", "report of %1").arg(text(c.time).left(10));
    if (!who.isEmpty()) out = QCoreApplication::translate("ReadReport", "%1 by %2").arg(out, who);
    if (!device.isEmpty()) out = QCoreApplication::translate("ReadReport", "%1 (%2)").arg(out, device.join(QLatin1Char(' ')));
    return out;
}

/// Where the reading came from, for the field of that name.
QString noteOf(const dicomio::ReportReading& reading, const QString& source) {
    QStringList parts{source};
    if (!reading.tracking.empty()) parts << text(reading.tracking);
    if (!reading.method.empty()) parts << text(reading.method);
    if (!reading.reading.note.empty()) parts << text(reading.reading.note);
    for (const std::string& what : reading.assumed)
        parts << (what == "stage"        ? QCoreApplication::translate("ReadReport", "stage not stated: taken as before the procedure")
                  : what == "derivation" ? QCoreApplication::translate("ReadReport", "way of reading not stated in full: assumed")
                                         : QCoreApplication::translate("ReadReport", "computed from a perimeter or an area"));
    return parts.join(QStringLiteral("; "));
}

bool samePressure(const core::Moment& a, const core::Moment& b) {
    return a.circulation.stage == b.circulation.stage && a.circulation.meanPressureMmHg == b.circulation.meanPressureMmHg &&
           a.circulation.vWaveMmHg == b.circulation.vWaveMmHg;
}

const core::Moment* momentOf(const core::CaseRecord& record, const std::string& id) {
    const auto found = record.moments.find(id);
    return found == record.moments.end() ? nullptr : &found->second.content;
}

/// Whether the case has this reading: as measured here under the same name, or typed in with the same facts.
bool holds(const core::CaseRecord& record, const dicomio::ReportReading& theirs) {
    const core::Observation& t = theirs.reading.observation;
    for (const core::RecordedValue& value : record.values)
        if (!theirs.group.empty() && value.group == theirs.group && value.id == theirs.valueId &&
            std::abs(value.estimate.value - t.valueMm) <= kSameMm)
            return true;
    return std::any_of(record.readings.begin(), record.readings.end(), [&](const auto& item) {
        const core::Observation& o = item.second.content.observation;
        const core::Moment* moment = momentOf(record, o.state);
        const core::Stage stage = moment ? moment->circulation.stage : o.stage;
        const bool sameMoment = theirs.moment ? moment && samePressure(*moment, *theirs.moment) : stage == t.stage;
        return o.quantity == t.quantity && o.modality == t.modality && o.derivation == t.derivation && sameMoment &&
               std::abs(o.valueMm - t.valueMm) <= kSameMm;
    });
}

/// The moment of the case for this one; made where there is none.
std::string momentFor(CaseDocument& document, core::Moment moment) {
    for (const auto& [id, entry] : document.record().moments)
        if (samePressure(entry.content, moment)) return id;
    std::string id = moment.circulation.state;
    if (id.empty() || document.record().moments.contains(id)) id = freeId<core::Moment>(document.record(), "m");
    moment.circulation.state = id;
    document.push(std::make_unique<SetMoment>(document, id, moment));
    return id;
}

} // namespace

bool isReportFile(const QString& path) {
    constexpr std::array kReports{"1.2.840.10008.5.1.4.1.1.88.22", "1.2.840.10008.5.1.4.1.1.88.33", "1.2.840.10008.5.1.4.1.1.88.34"};
    const auto scanned = dicomio::scanFile(path.toStdString());
    return scanned && std::find(kReports.begin(), kReports.end(), scanned->sopClassUid()) != kReports.end();
}

core::Result<ReportOffer> offerOf(const core::CaseRecord& record, const std::filesystem::path& report) {
    const auto read = dicomio::readReport(report);
    if (!read) return tl::unexpected(read.error());
    return offerOf(record, *read);
}

ReportOffer offerOf(const core::CaseRecord& record, const dicomio::ReadReport& report) {
    ReportOffer offer;
    const auto& p = report.content.patient;
    offer.patient = {p.name, p.id, p.birthDate, p.sex, {}, {}};
    offer.source = sourceOf(report);
    compare(offer, record);
    auto readings = dicomio::readingsOf(report);
    offer.leftOut = std::move(readings.leftOut);
    for (dicomio::ReportReading& reading : readings.readings) {
        if (holds(record, reading)) {
            ++offer.present;
            continue;
        }
        reading.reading.note = noteOf(reading, offer.source).toStdString();
        offer.fresh.push_back(std::move(reading));
    }
    return offer;
}

int takeReadings(CaseDocument& document, const ReportOffer& offer) {
    if (offer.fresh.empty()) return 0;
    if (document.isReadOnly()) {
        emit document.refused(document.readOnlyReason());
        return 0;
    }
    document.undoStack().beginMacro(QCoreApplication::translate("ReadReport", "Take readings from a report"));
    if (!document.record().patient) setPatient(document, offer.patient);
    int taken = 0;
    for (const dicomio::ReportReading& fresh : offer.fresh) {
        core::TypedReading reading = fresh.reading;
        if (fresh.moment) reading.observation.state = momentFor(document, *fresh.moment);
        taken += document.push(std::make_unique<SetTypedReading>(
                     document, freeId<core::TypedReading>(document.record(), "r"), std::move(reading)))
                     ? 1
                     : 0;
    }
    document.undoStack().endMacro();
    return taken;
}

QString takenSentence(const ReportOffer& offer, int taken) {
    QStringList parts;
    parts << QCoreApplication::translate("ReadReport", "%n reading(s) were taken from the %1.", nullptr, taken).arg(offer.source);
    if (offer.present > 0)
        parts << QCoreApplication::translate("ReadReport", "%n reading(s) are in the case already.", nullptr, offer.present);
    if (const int leftOut = static_cast<int>(offer.leftOut.size()))
        parts << QCoreApplication::translate("ReadReport", "%n number(s) of the report have no place in the comparison table.", nullptr, leftOut);
    return parts.join(QLatin1Char(' '));
}

QStringList leftOutLines(const ReportOffer& offer) {
    QStringList lines;
    for (const dicomio::LeftOutNumber& n : offer.leftOut) {
        const auto reason = [&]() -> QString {
            using enum dicomio::LeftOut;
            switch (n.why) {
            case UnknownQuantity: return QCoreApplication::translate("ReadReport", "the comparison table has no row for it");
            case PlaceNotStated: return QCoreApplication::translate("ReadReport", "it does not say whether it is the ostium's or the landing zone's");
            case ModalityNotStated: return QCoreApplication::translate("ReadReport", "it does not say on which kind of images it was read");
            case UnitUnknown: return QCoreApplication::translate("ReadReport", "its unit is not known here");
            case Implausible: return QCoreApplication::translate("ReadReport", "it lies outside 1 to 120 mm");
            case GivenOtherwise: return QCoreApplication::translate("ReadReport", "the diameter that follows from it is in the report too");
            }
            return {};
        };
        const QString where = n.tracking.empty() ? QString() : QStringLiteral(" (%1)").arg(text(n.tracking));
        lines << QCoreApplication::translate("ReadReport", "%1%2, %3 %4: %5").arg(text(n.name), where, plainNumber(n.value), text(n.unit), reason());
    }
    return lines;
}

} // namespace gauge::app
