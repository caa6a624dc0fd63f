#include "app/library/migrations.h"

#include "app/library/search_text.h"

#include <QDateTime>

namespace gauge::app {
namespace {

struct Tables {
    Q_DECLARE_TR_FUNCTIONS(Tables)
};

struct Step {
    int number;
    QStringList statements;
    core::Result<void> (*fill)(Database&);
};

core::Result<void> nothing(Database&) {
    return {};
}

/// Search texts of the cases that were there before step 2.
core::Result<void> fillSearchTexts(Database& database) {
    const auto cases = database.rows(QStringLiteral(
        "SELECT id, title, patient_name, patient_id, birth_date, study_date, stage, tags FROM cases"));
    if (!cases) return tl::make_unexpected(cases.error());
    for (const Database::Row& row : *cases) {
        QStringList words;
        for (qsizetype column = 1; column < row.size(); ++column) words << row[column].toString();
        if (auto done = database.change(QStringLiteral("UPDATE cases SET search_text = ? WHERE id = ?"),
                                        {searchText(words), row[0]});
            !done)
            return tl::make_unexpected(done.error());
    }
    return {};
}

const std::vector<Step>& steps() {
    static const std::vector<Step> all{
        {1,
         {QStringLiteral("CREATE TABLE cases (id TEXT PRIMARY KEY, title TEXT NOT NULL, patient_name TEXT NOT NULL, "
                         "patient_id TEXT NOT NULL, birth_date TEXT NOT NULL, study_date TEXT NOT NULL, stage TEXT NOT NULL, "
                         "tags TEXT NOT NULL, created_at TEXT NOT NULL, changed_at TEXT NOT NULL, binned_at TEXT NOT NULL, "
                         "current_version BIGINT NOT NULL, edit_count BIGINT NOT NULL, last_edit TEXT NOT NULL, "
                         "sha256 TEXT NOT NULL)"),
          QStringLiteral("CREATE TABLE versions (case_id TEXT NOT NULL REFERENCES cases (id) ON DELETE CASCADE, "
                         "number BIGINT NOT NULL, kind TEXT NOT NULL, base BIGINT NOT NULL, last_sequence BIGINT NOT NULL, "
                         "saved_at TEXT NOT NULL, author TEXT NOT NULL, content {blob} NOT NULL, content_sha256 TEXT NOT NULL, "
                         "sha256 TEXT NOT NULL, PRIMARY KEY (case_id, number))"),
          QStringLiteral("CREATE TABLE edits (case_id TEXT NOT NULL REFERENCES cases (id) ON DELETE CASCADE, "
                         "base BIGINT NOT NULL, sequence BIGINT NOT NULL, saved_at TEXT NOT NULL, content {blob} NOT NULL, "
                         "previous TEXT NOT NULL, sha256 TEXT NOT NULL, PRIMARY KEY (case_id, base, sequence))"),
          QStringLiteral("CREATE TABLE leases (case_id TEXT PRIMARY KEY REFERENCES cases (id) ON DELETE CASCADE, "
                         "token TEXT NOT NULL, holder TEXT NOT NULL, station TEXT NOT NULL, process TEXT NOT NULL, "
                         "beat BIGINT NOT NULL, taken_at TEXT NOT NULL, renewed_at TEXT NOT NULL)")},
         nothing},
        {2,
         {QStringLiteral("ALTER TABLE cases ADD COLUMN search_text TEXT NOT NULL DEFAULT ''"),
          QStringLiteral("CREATE INDEX cases_by_study_date ON cases (study_date)")},
         fillSearchTexts},
    };
    return all;
}

core::Result<int> schemaOf(Database& database) {
    if (!database.hasTable(QStringLiteral("library_schema"))) return 0;
    const auto row = database.rows(QStringLiteral("SELECT COALESCE(MAX(number), 0) FROM library_schema"));
    if (!row) return tl::make_unexpected(row.error());
    return row->front().front().toInt();
}

core::Result<void> run(Database& database, const Step& step) {
    return database.inTransaction([&]() -> core::Result<void> {
        // Two programs may open a new library at once: the second waits here and then finds the step done.
        if (!database.isSqlite())
            if (auto locked = database.rows(QStringLiteral("SELECT 1 FROM pg_advisory_xact_lock(5196354)")); !locked)
                return tl::make_unexpected(locked.error());
        const auto now = schemaOf(database);
        if (!now) return tl::make_unexpected(now.error());
        if (*now >= step.number) return {};
        QStringList statements = step.statements;
        if (step.number == 1)
            statements.prepend(QStringLiteral(
                "CREATE TABLE library_schema (number BIGINT PRIMARY KEY, applied_at TEXT NOT NULL)"));
        for (const QString& statement : statements)
            if (auto done = database.change(statement); !done) return tl::make_unexpected(done.error());
        if (auto filled = step.fill(database); !filled) return filled;
        if (auto noted = database.change(QStringLiteral("INSERT INTO library_schema (number, applied_at) VALUES (?, ?)"),
                                         {step.number, QDateTime::currentDateTimeUtc().toString(Qt::ISODate)});
            !noted)
            return tl::make_unexpected(noted.error());
        return {};
    });
}

} // namespace

int currentSchema() {
    return steps().back().number;
}

core::Result<void> migrate(Database& database) {
    const auto found = schemaOf(database);
    if (!found) return tl::make_unexpected(found.error());
    if (*found > currentSchema())
        return core::failure(core::ErrorCode::RecordUnreadable,
                             Tables::tr("Cannot open the case library at %1: a newer version of this program wrote it (its tables "
                                        "are at step %2, this version knows %3). Nothing was changed. Use the newer version.")
                                 .arg(database.place().shown())
                                 .arg(*found)
                                 .arg(currentSchema())
                                 .toStdString());
    for (const Step& step : steps()) {
        if (step.number <= *found) continue;
        if (auto done = run(database, step); !done)
            return core::failure(done.error().code,
                                 Tables::tr("Cannot bring the case library at %1 to step %2 of its tables: %3")
                                     .arg(database.place().shown())
                                     .arg(step.number)
                                     .arg(QString::fromStdString(done.error().message))
                                     .toStdString(),
                                 done.error());
    }
    return {};
}

} // namespace gauge::app
