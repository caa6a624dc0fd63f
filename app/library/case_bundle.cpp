// One case as one file: JSON, "ostium-gauge/library-case/1". Texts are kept as Base64, since they are bytes to the library.
//
//   {"format", "facts": {…}, "versions": [{number, branch, base, last_sequence, saved_at, author, content}],
//    "edits": [{base, sequence, content}], "current": number, "sha256": of everything before it, as written}
#include "app/library/case_row.h"
#include "app/library/checksum.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>
#include <QUuid>

namespace gauge::app {
namespace {

using core::ErrorCode;

constexpr char kFormat[] = "ostium-gauge/library-case/";
constexpr int kFormatVersion = 1;
constexpr qint64 kLargest = qint64(512) << 20;

QString encoded(const QByteArray& bytes) {
    return QString::fromLatin1(bytes.toBase64());
}

QString sumOf(const QJsonObject& bundle) {
    return sha256Of(QJsonDocument(bundle).toJson(QJsonDocument::Compact)); // keys come sorted
}

QJsonObject jsonOf(const CaseFacts& facts) {
    return {{"title", facts.title},          {"patient_name", facts.patientName}, {"patient_id", facts.patientId},
            {"birth_date", facts.birthDate}, {"study_date", facts.studyDate},     {"stage", facts.stage},
            {"tags", QJsonArray::fromStringList(facts.tags)}};
}

CaseFacts factsOf(const QJsonObject& json) {
    CaseFacts facts{json["title"].toString(),      json["patient_name"].toString(), json["patient_id"].toString(),
                    json["birth_date"].toString(), json["study_date"].toString(),   json["stage"].toString(),
                    {}};
    for (const QJsonValue& tag : json["tags"].toArray()) facts.tags << tag.toString();
    return facts;
}

} // namespace

core::Result<void> CaseLibrary::exportCase(const QString& caseId, const QString& path) {
    const QString attempted = tr("Cannot export the case to %1").arg(path);
    const auto row = wholeCase(caseId, false);
    if (!row) return told(attempted, row.error());
    const auto infos = versions(caseId);
    if (!infos) return told(attempted, infos.error());
    QJsonArray texts, edits;
    for (auto info = infos->rbegin(); info != infos->rend(); ++info) {
        const auto stored = readStored(*row, info->number);
        if (!stored) return told(attempted, stored.error());
        if (!stored->damage.isEmpty())
            return told(attempted, core::Error{ErrorCode::FileDamaged,
                                               tr("it is damaged: %1. Rescue what is whole of it first.").arg(stored->damage).toStdString(),
                                               {}, {}});
        texts.append(QJsonObject{{"number", info->number}, {"branch", info->branch}, {"base", info->base},
                                 {"last_sequence", info->lastSequence}, {"saved_at", info->savedAt}, {"author", info->author},
                                 {"content", encoded(stored->content)}});
        for (const StoredEdit& edit : stored->edits)
            edits.append(QJsonObject{{"base", info->number}, {"sequence", edit.sequence}, {"content", encoded(edit.content)}});
    }
    QJsonObject bundle{{"format", QString::fromLatin1(kFormat) + QString::number(kFormatVersion)}, {"facts", jsonOf(row->facts)},
                       {"versions", texts}, {"edits", edits}, {"current", row->version}};
    bundle["sha256"] = sumOf(bundle);
    QSaveFile file(path); // writes beside it and renames
    if (!file.open(QIODevice::WriteOnly) || file.write(QJsonDocument(bundle).toJson()) < 0 || !file.commit())
        return libraryFailure(ErrorCode::OutputUnwritable, attempted + QLatin1String(": ") +
                                                               tr("%1. Choose another folder.").arg(file.errorString()));
    return {};
}

core::Result<QString> CaseLibrary::importCase(const QString& path) {
    const QString attempted = tr("Cannot import the case from %1: ").arg(path);
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly) || file.size() > kLargest)
        return libraryFailure(ErrorCode::FileUnreadable, attempted + tr("the file cannot be read or is larger than 512 MB."));
    QJsonObject bundle = QJsonDocument::fromJson(file.readAll()).object();
    const QString format = bundle["format"].toString();
    if (!format.startsWith(QLatin1String(kFormat)))
        return libraryFailure(ErrorCode::RecordUnreadable, attempted + tr("it is no case exported from a library."));
    if (format.mid(qstrlen(kFormat)).toInt() != kFormatVersion)
        return libraryFailure(ErrorCode::RecordUnreadable,
                              attempted + tr("a newer version of this program wrote it (%1). Use that version.").arg(format));
    const QString sum = bundle.take("sha256").toString();
    if (sumOf(bundle) != sum)
        return libraryFailure(ErrorCode::FileDamaged,
                              attempted + tr("it does not agree with its checksum, so it is damaged. Export it again."));
    CaseRow row;
    row.id = QUuid::createUuid().toString(QUuid::WithoutBraces);
    row.facts = factsOf(bundle["facts"].toObject());
    row.version = bundle["current"].toInteger();
    const auto done = write(tr("Cannot import the case into the library at %1").arg(place().shown()), [&]() -> core::Result<void> {
        const auto time = now();
        if (!time) return tl::make_unexpected(time.error());
        row.createdAt = row.changedAt = *time;
        if (auto made = insertCase(row); !made) return made;
        QHash<qint64, QString> chain; // last checksum of each version's edits
        for (const QJsonValue& value : bundle["versions"].toArray()) {
            const QJsonObject json = value.toObject();
            const QByteArray content = QByteArray::fromBase64(json["content"].toString().toLatin1());
            const VersionInfo version{json["number"].toInteger(), json["branch"].toBool(), json["base"].toInteger(),
                                      json["last_sequence"].toInteger(), json["saved_at"].toString(), json["author"].toString(),
                                      sha256Of(content), 0, false};
            if (auto put = insertVersion(row.id, version, content); !put) return put;
            chain[version.number] = checksumOf(row.id, version);
        }
        if (!chain.contains(row.version))
            return libraryFailure(ErrorCode::RecordUnreadable, tr("its present version is missing."));
        for (const QJsonValue& value : bundle["edits"].toArray()) {
            const QJsonObject json = value.toObject();
            const qint64 base = json["base"].toInteger();
            const StoredEdit edit{json["sequence"].toInteger(), QByteArray::fromBase64(json["content"].toString().toLatin1())};
            const QString previous = chain.value(base);
            const QString checksum = checksumOf(row.id, base, edit, *time, previous);
            if (auto put = m_database->change(
                    QStringLiteral("INSERT INTO edits (case_id, base, sequence, saved_at, content, previous, sha256) "
                                   "VALUES (?, ?, ?, ?, ?, ?, ?)"),
                    {row.id, base, edit.sequence, *time, edit.content, previous, checksum});
                !put)
                return tl::make_unexpected(put.error());
            chain[base] = checksum;
            if (base == row.version) {
                ++row.editCount;
                row.lastEdit = checksum;
            }
        }
        return updateCase(row);
    });
    if (!done) return tl::make_unexpected(done.error());
    return row.id;
}

} // namespace gauge::app
