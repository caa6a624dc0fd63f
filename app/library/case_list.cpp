// Finding cases.
#include "app/library/case_row.h"
#include "app/library/search_text.h"

namespace gauge::app {

ListedCase CaseLibrary::listed(const CaseRow& row) const {
    ListedCase found;
    found.id = row.id;
    found.facts = row.facts;
    found.createdAt = row.createdAt;
    found.changedAt = row.changedAt;
    found.binnedAt = row.binnedAt;
    found.version = row.version;
    found.editsSince = row.editCount;
    found.damaged = !row.isWhole();
    return found;
}

core::Result<std::vector<ListedCase>> CaseLibrary::list(const CaseQuery& query) {
    QString sql = QStringLiteral("SELECT %1, (SELECT COUNT(*) FROM versions v WHERE v.case_id = c.id AND v.kind = 'branch') "
                                 "FROM cases c WHERE c.binned_at %2 ''")
                      .arg(kCaseColumns, query.binned ? QStringLiteral("<>") : QStringLiteral("="));
    QVariantList values;
    for (const QString& word : searchWords(query.text)) {
        sql += QLatin1String(" AND c.search_text LIKE ? ESCAPE '!'");
        values << likePattern(word);
    }
    if (!query.studiedFrom.isEmpty()) {
        sql += QLatin1String(" AND c.study_date >= ?");
        values << query.studiedFrom;
    }
    if (!query.studiedTo.isEmpty()) {
        sql += QLatin1String(" AND c.study_date <> '' AND c.study_date <= ?");
        values << query.studiedTo;
    }
    sql += QLatin1String(" ORDER BY c.changed_at DESC, c.id");
    if (query.tag.isEmpty()) sql += QStringLiteral(" LIMIT %1").arg(query.limit);
    const auto rows = m_database->rows(sql, values);
    if (!rows) return told(tr("Cannot list the cases of the library at %1").arg(place().shown()), rows.error());
    std::vector<ListedCase> cases;
    for (const Database::Row& row : *rows) {
        ListedCase found = listed(caseRowOf(row));
        if (!query.tag.isEmpty() && !found.facts.tags.contains(query.tag, Qt::CaseInsensitive)) continue;
        found.branches = row.last().toInt();
        const auto lease = readLease(found.id);
        if (lease && *lease) found.lease = (*lease)->info;
        cases.push_back(std::move(found));
        if (cases.size() >= static_cast<std::size_t>(query.limit)) break;
    }
    return cases;
}

core::Result<ListedCase> CaseLibrary::find(const QString& caseId) {
    const QString attempted = tr("Cannot look the case up in the library at %1").arg(place().shown());
    const auto row = wholeCase(caseId, false);
    if (!row) return told(attempted, row.error());
    ListedCase found = listed(*row);
    const auto lease = readLease(caseId);
    if (!lease) return told(attempted, lease.error());
    if (*lease) found.lease = (*lease)->info;
    return found;
}

core::Result<QStringList> CaseLibrary::tags() {
    const auto rows = m_database->rows(QStringLiteral("SELECT DISTINCT tags FROM cases WHERE binned_at = '' AND tags <> ''"));
    if (!rows) return told(tr("Cannot list the tags of the library at %1").arg(place().shown()), rows.error());
    QStringList all;
    for (const Database::Row& row : *rows)
        for (const QString& tag : row[0].toString().split(QLatin1Char('\n'), Qt::SkipEmptyParts))
            if (!all.contains(tag, Qt::CaseInsensitive)) all << tag;
    all.sort(Qt::CaseInsensitive);
    return all;
}

core::Result<std::vector<VersionInfo>> CaseLibrary::versions(const QString& caseId) {
    const QString attempted = tr("Cannot list the versions of the case");
    const auto numbers = m_database->rows(
        QStringLiteral("SELECT number FROM versions WHERE case_id = ? ORDER BY number DESC"), {caseId});
    if (!numbers) return told(attempted, numbers.error());
    std::vector<VersionInfo> all;
    for (const Database::Row& row : *numbers) {
        const auto version = readVersion(caseId, row[0].toLongLong());
        if (!version) return told(attempted, version.error());
        if (*version) all.push_back((*version)->info);
    }
    return all;
}

} // namespace gauge::app
