// Rows and their checksums.
#include "app/library/case_row.h"
#include "app/library/checksum.h"
#include "app/library/search_text.h"

namespace gauge::app {
namespace {

using core::ErrorCode;

/// Tags lie in one column, each on a line of its own, so that one is found whole.
QString written(const QStringList& tags) {
    return tags.isEmpty() ? QString() : QLatin1Char('\n') + tags.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

QString line(QString text) {
    text.remove(QChar(0)); // PostgreSQL takes no such character in a text
    return text.simplified();
}

} // namespace

CaseLibrary::CaseRow CaseLibrary::caseRowOf(const Database::Row& row) {
    CaseRow found;
    found.id = row[0].toString();
    found.facts = {row[1].toString(), row[2].toString(), row[3].toString(), row[4].toString(), row[5].toString(),
                   row[6].toString(), row[7].toString().split(QLatin1Char('\n'), Qt::SkipEmptyParts)};
    found.createdAt = row[8].toString();
    found.changedAt = row[9].toString();
    found.binnedAt = row[10].toString();
    found.version = row[11].toLongLong();
    found.editCount = row[12].toLongLong();
    found.lastEdit = row[13].toString();
    found.sha256 = row[14].toString();
    return found;
}

QString CaseLibrary::checksumOf(const CaseRow& row) {
    const CaseFacts& facts = row.facts;
    QList<QByteArray> parts;
    for (const QString& text : {row.id, facts.title, facts.patientName, facts.patientId, facts.birthDate, facts.studyDate,
                                facts.stage, written(facts.tags), row.createdAt, row.changedAt, row.binnedAt, row.lastEdit})
        parts << text.toUtf8();
    parts << QByteArray::number(row.version) << QByteArray::number(row.editCount);
    return sha256OfParts(parts);
}

QString CaseLibrary::checksumOf(const QString& caseId, const VersionInfo& version) {
    return sha256OfParts({caseId.toUtf8(), QByteArray::number(version.number), version.branch ? "branch" : "main",
                          QByteArray::number(version.base), QByteArray::number(version.lastSequence), version.savedAt.toUtf8(),
                          version.author.toUtf8(), version.sha256.toUtf8()});
}

QString CaseLibrary::checksumOf(const QString& caseId, qint64 base, const StoredEdit& edit, const QString& savedAt,
                                const QString& previous) {
    return sha256OfParts({caseId.toUtf8(), QByteArray::number(base), QByteArray::number(edit.sequence), savedAt.toUtf8(),
                          edit.content, previous.toUtf8()});
}

core::Result<std::optional<CaseLibrary::CaseRow>> CaseLibrary::readCase(const QString& caseId, bool lock) {
    const auto rows = m_database->rows(QStringLiteral("SELECT %1 FROM cases c WHERE c.id = ? %2")
                                           .arg(kCaseColumns, lock ? QStringLiteral("{lock}") : QString()),
                                       {caseId});
    if (!rows) return tl::make_unexpected(rows.error());
    if (rows->empty()) return std::nullopt;
    return caseRowOf(rows->front());
}

core::Result<CaseLibrary::CaseRow> CaseLibrary::wholeCase(const QString& caseId, bool lock) {
    auto row = readCase(caseId, lock);
    if (!row) return tl::make_unexpected(row.error());
    if (!*row) return libraryFailure(ErrorCode::NotFound, tr("the case is not in the library any more. Look through the list again."));
    if ((*row)->isWhole()) return std::move(**row);
    const auto whole = newestWhole(caseId);
    std::vector<core::Fact> facts;
    if (whole && *whole) facts.push_back({"whole-version", std::to_string(**whole)});
    return libraryFailure(ErrorCode::FileDamaged,
                          tr("what the library notes about this case is damaged: it does not agree with its checksum. %1")
                              .arg(facts.empty() ? tr("No whole version is left; bring back a copy.")
                                                 : tr("Version %1 is whole: open that one.")
                                                       .arg(QString::fromStdString(facts.front().value))),
                          std::move(facts));
}

core::Result<void> CaseLibrary::insertCase(CaseRow row) {
    if (auto made = m_database->change(
            QStringLiteral("INSERT INTO cases (id, title, patient_name, patient_id, birth_date, study_date, stage, tags, "
                           "created_at, changed_at, binned_at, current_version, edit_count, last_edit, sha256, search_text) "
                           "VALUES (?, '', '', '', '', '', '', '', ?, '', '', 0, 0, '', '', '')"),
            {row.id, row.createdAt});
        !made)
        return tl::make_unexpected(made.error());
    return updateCase(std::move(row));
}

core::Result<void> CaseLibrary::updateCase(CaseRow row) {
    CaseFacts& facts = row.facts;
    for (QString* text : {&facts.title, &facts.patientName, &facts.patientId, &facts.birthDate, &facts.studyDate, &facts.stage})
        *text = line(*text);
    QStringList tags;
    for (const QString& tag : facts.tags)
        if (!line(tag).isEmpty() && !tags.contains(line(tag), Qt::CaseInsensitive)) tags << line(tag);
    facts.tags = tags;
    const QString search = searchText(QStringList{facts.title, facts.patientName, facts.patientId, facts.birthDate,
                                                  facts.studyDate, facts.stage} + facts.tags);
    const auto done = m_database->change(
        QStringLiteral("UPDATE cases SET title = ?, patient_name = ?, patient_id = ?, birth_date = ?, study_date = ?, stage = ?, "
                       "tags = ?, changed_at = ?, binned_at = ?, current_version = ?, edit_count = ?, last_edit = ?, sha256 = ?, "
                       "search_text = ? WHERE id = ?"),
        {facts.title, facts.patientName, facts.patientId, facts.birthDate, facts.studyDate, facts.stage, written(facts.tags),
         row.changedAt, row.binnedAt, row.version, row.editCount, row.lastEdit, checksumOf(row), search, row.id});
    if (!done) return tl::make_unexpected(done.error());
    return {};
}

core::Result<std::optional<CaseLibrary::VersionRow>> CaseLibrary::readVersion(const QString& caseId, qint64 number) {
    const auto rows = m_database->rows(QStringLiteral("SELECT kind, base, last_sequence, saved_at, author, content, "
                                                      "content_sha256, sha256 FROM versions WHERE case_id = ? AND number = ?"),
                                       {caseId, number});
    if (!rows) return tl::make_unexpected(rows.error());
    if (rows->empty()) return std::nullopt;
    const Database::Row& row = rows->front();
    VersionRow found;
    found.info = {number, row[0].toString() == QLatin1String("branch"), row[1].toLongLong(), row[2].toLongLong(),
                  row[3].toString(), row[4].toString(), row[6].toString(), row[5].toByteArray().size(), false};
    found.content = row[5].toByteArray();
    found.checksum = row[7].toString();
    const bool kindKnown = found.info.branch || row[0].toString() == QLatin1String("main");
    found.info.damaged = !kindKnown || sha256Of(found.content) != found.info.sha256 ||
                         checksumOf(caseId, found.info) != found.checksum;
    return found;
}

core::Result<void> CaseLibrary::insertVersion(const QString& caseId, VersionInfo version, const QByteArray& content) {
    version.sha256 = sha256Of(content);
    const auto done = m_database->change(
        QStringLiteral("INSERT INTO versions (case_id, number, kind, base, last_sequence, saved_at, author, content, "
                       "content_sha256, sha256) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
        {caseId, version.number, version.branch ? QStringLiteral("branch") : QStringLiteral("main"), version.base,
         version.lastSequence, version.savedAt, version.author, content, version.sha256, checksumOf(caseId, version)});
    if (!done) return tl::make_unexpected(done.error());
    return {};
}

core::Result<CaseLibrary::Tail> CaseLibrary::readTail(const QString& caseId, const VersionInfo& version) {
    const auto rows = m_database->rows(QStringLiteral("SELECT sequence, saved_at, content, previous, sha256 FROM edits "
                                                      "WHERE case_id = ? AND base = ? ORDER BY sequence"),
                                       {caseId, version.number});
    if (!rows) return tl::make_unexpected(rows.error());
    Tail tail;
    QString previous = checksumOf(caseId, version);
    qint64 expected = version.lastSequence + 1;
    for (const Database::Row& row : *rows) {
        StoredEdit edit{row[0].toLongLong(), row[2].toByteArray()};
        const QString sum = row[4].toString();
        if (edit.sequence != expected || row[3].toString() != previous ||
            checksumOf(caseId, version.number, edit, row[1].toString(), previous) != sum) {
            tail.damage = tr("edit %1 does not agree with its checksum or is missing").arg(expected);
            return tail;
        }
        tail.edits.push_back(std::move(edit));
        previous = tail.last = sum;
        ++expected;
    }
    return tail;
}

core::Result<std::optional<qint64>> CaseLibrary::newestWhole(const QString& caseId) {
    const auto numbers = m_database->rows(
        QStringLiteral("SELECT number FROM versions WHERE case_id = ? ORDER BY number DESC"), {caseId});
    if (!numbers) return tl::make_unexpected(numbers.error());
    for (const Database::Row& row : *numbers) {
        const auto version = readVersion(caseId, row[0].toLongLong());
        if (version && *version && !(*version)->info.damaged && !(*version)->info.branch) return (*version)->info.number;
    }
    return std::nullopt;
}

core::Result<qint64> CaseLibrary::freeNumber(const QString& caseId) {
    const auto rows = m_database->rows(QStringLiteral("SELECT COALESCE(MAX(number), 0) + 1 FROM versions WHERE case_id = ?"),
                                       {caseId});
    if (!rows) return tl::make_unexpected(rows.error());
    return rows->front().front().toLongLong();
}

} // namespace gauge::app
