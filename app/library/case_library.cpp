#include "app/library/case_library.h"

#include "app/library/case_row.h"
#include "app/library/migrations.h"
#include "app/library/process_mark.h"

#include <QDateTime>
#include <algorithm>

namespace gauge::app {
namespace {

constexpr qint64 kCheckedAtOpening = 64 << 20; // bytes; integrity_check reads about 1 GB/s from the page cache

QString damageOf(const LibraryPlace& place) {
    return CaseLibrary::tr("The case library at %1 is damaged. It is read only as far as it is whole, and nothing is written to it. "
                           "Rescue the whole cases into a new library, or bring back a copy.")
        .arg(place.shown());
}

} // namespace

LibraryClock systemClock() {
    return {[] { return QDateTime::currentDateTimeUtc(); },
            [] {
                return std::chrono::duration_cast<std::chrono::milliseconds>(
                    std::chrono::steady_clock::now().time_since_epoch());
            }};
}

CaseLibrary::CaseLibrary(std::unique_ptr<Database> database, QString person, QString station, LibraryClock clock)
    : m_database(std::move(database)), m_person(std::move(person)), m_station(std::move(station)), m_process(processMark()),
      m_clock(std::move(clock)) {}

core::Result<std::unique_ptr<CaseLibrary>> CaseLibrary::open(const LibraryPlace& place, const QString& person,
                                                             const QString& station, LibraryClock clock) {
    auto database = Database::open(place);
    if (!database) return tl::make_unexpected(database.error());
    QString damage;
    if ((*database)->size() <= kCheckedAtOpening) {
        const auto found = (*database)->damageFound();
        if (!found && found.error().code != core::ErrorCode::FileDamaged)
            return libraryFailure(found.error().code, tr("Cannot open the case library at %1: %2")
                                                          .arg(place.shown(), QString::fromStdString(found.error().message)));
        if (!found || !found->isEmpty())
            damage = damageOf(place);
    }
    if (damage.isEmpty())
        if (auto done = migrate(**database); !done) return tl::make_unexpected(done.error());
    std::unique_ptr<CaseLibrary> library(new CaseLibrary(std::move(*database), person, station, std::move(clock)));
    library->m_damage = damage;
    return library;
}

core::Result<void> CaseLibrary::mayWrite() const {
    if (m_damage.isEmpty()) return {};
    return libraryFailure(core::ErrorCode::FileDamaged, m_damage);
}

core::Result<QString> CaseLibrary::now() {
    if (m_database->isSqlite()) return m_clock.wall().toUTC().toString(Qt::ISODateWithMs);
    return m_database->serverTime();
}

tl::unexpected<core::Error> CaseLibrary::told(const QString& attempted, const core::Error& cause) {
    const bool pages = std::any_of(cause.facts.begin(), cause.facts.end(),
                                   [](const core::Fact& fact) { return fact.key == kPagesDamaged; });
    if (pages) m_damage = damageOf(place()); // the next look may not stumble over it: it stays damaged
    return tl::make_unexpected(core::Error{
        cause.code, (attempted + QLatin1String(": ") + QString::fromStdString(cause.message)).toStdString(), cause.facts,
        std::make_shared<const core::Error>(cause)});
}

core::Result<void> CaseLibrary::write(const QString& attempted, const std::function<core::Result<void>()>& work) {
    if (auto may = mayWrite(); !may) return told(attempted, may.error());
    if (auto done = m_database->inTransaction(work); !done) return told(attempted, done.error());
    return {};
}

} // namespace gauge::app
