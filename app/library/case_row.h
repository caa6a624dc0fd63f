// Rows of the library as they lie in the database; for the parts of CaseLibrary only.
#pragma once

#include "app/library/case_library.h"

namespace gauge::app {

struct CaseLibrary::CaseRow {
    QString id;
    CaseFacts facts;
    QString createdAt, changedAt, binnedAt;
    qint64 version = 0;
    qint64 editCount = 0; ///< edits on the present version
    QString lastEdit;     ///< checksum of the last of them, or empty
    QString sha256;

    bool isWhole() const { return checksumOf(*this) == sha256; }
};

struct CaseLibrary::VersionRow {
    VersionInfo info;
    QByteArray content;
    QString checksum; ///< of the row, which the edits on it are chained to
};

/// Columns of a case in the order of caseRowOf().
inline const QString kCaseColumns =
    QStringLiteral("c.id, c.title, c.patient_name, c.patient_id, c.birth_date, c.study_date, c.stage, c.tags, c.created_at, "
                   "c.changed_at, c.binned_at, c.current_version, c.edit_count, c.last_edit, c.sha256");

/// A failure in words.
inline tl::unexpected<core::Error> libraryFailure(core::ErrorCode code, const QString& message,
                                                  std::vector<core::Fact> facts = {}) {
    return core::failure(code, message.toStdString(), std::move(facts));
}

} // namespace gauge::app
