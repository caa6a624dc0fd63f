// Looking for damage, and saving what is whole.
#include "app/library/case_row.h"

#include <QSet>

namespace gauge::app {

using core::ErrorCode;

core::Result<QStringList> CaseLibrary::check() {
    QStringList wrong;
    const auto pages = m_database->damageFound();
    if (!pages && pages.error().code != ErrorCode::FileDamaged) return told(tr("Cannot check the library"), pages.error());
    if (!pages || !pages->isEmpty())
        told({}, core::Error{ErrorCode::FileDamaged, {}, {{kPagesDamaged, {}}}, {}}); // nothing is written any more
    if (!pages || !pages->isEmpty()) wrong << tr("The file's pages are damaged.");
    const auto ids = m_database->rows(QStringLiteral("SELECT id FROM cases ORDER BY id"));
    if (!ids) {
        wrong << tr("The list of cases cannot be read.");
    } else {
        for (const Database::Row& id : *ids) {
            const QString caseId = id[0].toString();
            if (auto row = wholeCase(caseId, false); !row) wrong << tr("Case %1: its notes are damaged.").arg(caseId.left(8));
            if (auto stored = open(caseId); !stored)
                wrong << tr("Case %1: %2").arg(caseId.left(8), QString::fromStdString(stored.error().message));
            const auto all = versions(caseId);
            for (const VersionInfo& version : all.value_or(std::vector<VersionInfo>{}))
                if (version.damaged) wrong << tr("Case %1: version %2 is damaged.").arg(caseId.left(8)).arg(version.number);
        }
    }
    return wrong;
}

core::Result<int> CaseLibrary::rescueInto(CaseLibrary& other) {
    QSet<QString> ids; // either table may be damaged
    for (const char* query : {"SELECT id FROM cases", "SELECT case_id FROM versions"})
        if (const auto rows = m_database->rows(QString::fromLatin1(query)))
            for (const Database::Row& row : *rows) ids.insert(row[0].toString());
    int rescued = 0;
    for (const QString& id : ids) {
        const auto stored = openAsFarAsWhole(id);
        if (!stored) continue;
        CaseFacts facts = stored->facts;
        if (facts.title.isEmpty() && facts.patientName.isEmpty()) facts.title = tr("Rescued case %1").arg(id.left(8));
        auto editing = other.create(facts, stored->content, stored->version.lastSequence);
        if (!editing) return tl::make_unexpected(editing.error());
        if (!stored->edits.empty())
            if (auto done = other.append(*editing, stored->edits); !done) return tl::make_unexpected(done.error());
        if (auto ended = other.endEditing(*editing); !ended) return tl::make_unexpected(ended.error());
        ++rescued;
    }
    return rescued;
}

} // namespace gauge::app
