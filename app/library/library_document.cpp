#include "app/library/library_document.h"

#include "app/library/case_facts.h"
#include "app/library/case_row.h"
#include "core/record/case_json.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <algorithm>
#include <nlohmann/json.hpp>

namespace gauge::app {
namespace {

using core::ErrorCode;

/// The case with the edits that were made since its text was written.
core::Result<core::CaseFile> caseOf(const StoredCase& stored) {
    auto file = core::caseFromJson(std::string_view(stored.content.constData(), static_cast<std::size_t>(stored.content.size())));
    if (!file) return file;
    auto entries = file->journal.entries();
    for (const StoredEdit& edit : stored.edits) {
        const auto json = nlohmann::json::parse(edit.content.toStdString(), nullptr, false);
        auto entry = core::journalEntryFromJson(json);
        if (!entry)
            return core::failure(entry.error().code, "Cannot read edit " + std::to_string(edit.sequence) + " of the case: " +
                                                         entry.error().message, entry.error());
        core::apply(file->record, entry->edit);
        entries.push_back(std::move(*entry));
    }
    auto journal = core::Journal::fromEntries(std::move(entries));
    if (!journal) return tl::make_unexpected(journal.error());
    file->journal = std::move(*journal);
    return file;
}

} // namespace

LibraryDocument::LibraryDocument(CaseDocument& document, CaseLibrary& library, const QString& workFolder, QObject* parent)
    : QObject(parent), m_document(document), m_library(library), m_workFolder(workFolder) {
    m_send.setSingleShot(true);
    m_send.setInterval(kSendWithin);
    m_heartbeat.setInterval(kHeartbeat);
    connect(&m_send, &QTimer::timeout, this, &LibraryDocument::sendWhenStill);
    connect(&m_heartbeat, &QTimer::timeout, this, &LibraryDocument::beat);
    connect(&m_document, &CaseDocument::changed, this, [this](CaseDocument::Part part) {
        if (m_opening || m_caseId.isEmpty()) return;
        if (part == CaseDocument::Part::Everything) {
            detach(); // another case was opened, or this one closed
            removeStoredCopies();
        }
        if (!m_editing || m_lost || m_send.isActive()) return;
        m_unsent.start();
        m_send.start();
    });
    removeStoredCopies();
}

LibraryDocument::~LibraryDocument() {
    close();
}

core::Result<std::vector<core::Notice>> LibraryDocument::show(const StoredCase& stored, bool forReading) {
    auto file = caseOf(stored);
    if (!file) return tl::make_unexpected(file.error());
    // A name of its own each time: what an earlier run left behind is never overwritten. The document opens an earlier
    // version ("….case.json.1") for reading only.
    QString path;
    for (int n = 1; path.isEmpty() || QFile::exists(path) || QFile::exists(path + QLatin1String(".edits")); ++n)
        path = QDir(m_workFolder).filePath(QStringLiteral("%1-%2.case.json%3")
                                               .arg(stored.id.left(8))
                                               .arg(n)
                                               .arg(forReading ? QStringLiteral(".1") : QString()));
    if (!QDir().mkpath(m_workFolder))
        return libraryFailure(ErrorCode::OutputUnwritable, tr("Cannot open the case: the folder %1 cannot be made.").arg(m_workFolder));
    QFile::setPermissions(m_workFolder, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    if (auto written = writeWhole(path.toStdString(), core::caseText(*file)); !written) return tl::make_unexpected(written.error());
    m_opening = true;
    auto opened = m_document.open(path);
    m_opening = false;
    if (!opened || forReading) QFile::remove(path);
    removeStoredCopies(); // of the case that was open before
    if (opened) {
        m_caseId = stored.id;
        m_unknown = std::move(file->unknown);
    }
    return opened;
}

core::Result<std::vector<core::Notice>> LibraryDocument::open(const QString& caseId) {
    if (auto closed = close(); !closed) return tl::make_unexpected(closed.error());
    auto answer = m_library.beginEditing(caseId);
    if (!answer) return tl::make_unexpected(answer.error());
    const auto stored = m_library.open(caseId);
    auto shown = stored ? show(*stored, !answer->editing)
                        : core::Result<std::vector<core::Notice>>(tl::make_unexpected(stored.error()));
    if (!shown) {
        if (answer->editing) m_library.endEditing(*answer->editing);
        return shown;
    }
    m_holder = answer->lease;
    if (answer->editing) {
        follow(*answer->editing);
    } else {
        const QString words = tr("%1 on %2 is editing this case, so it was opened for reading only.")
                                  .arg(m_holder.holder, m_holder.station);
        std::erase_if(*shown, [](const core::Notice& notice) { return notice.code == "earlier-version"; });
        shown->push_back({"library-case-held", words.toStdString(), {}});
    }
    return shown;
}

core::Result<std::vector<core::Notice>> LibraryDocument::openVersion(const QString& caseId, qint64 number) {
    if (auto closed = close(); !closed) return tl::make_unexpected(closed.error());
    auto stored = m_library.openVersion(caseId, number);
    if (!stored) return tl::make_unexpected(stored.error());
    // As it was saved, and as restore() would bring it back; what came after belongs to the next version.
    if (const auto present = m_library.find(caseId); !present || present->version != number) stored->edits.clear();
    return show(*stored, true);
}

core::Result<std::vector<core::Notice>> LibraryDocument::openAsFarAsWhole(const QString& caseId) {
    if (auto closed = close(); !closed) return tl::make_unexpected(closed.error());
    const auto stored = m_library.openAsFarAsWhole(caseId);
    if (!stored) return tl::make_unexpected(stored.error());
    auto shown = show(*stored, true);
    if (shown && !stored->damage.isEmpty())
        shown->push_back({"library-case-damaged",
                          tr("The case is damaged in the library: %1. This is what is whole of it.").arg(stored->damage).toStdString(),
                          {}});
    return shown;
}

core::Result<QString> LibraryDocument::put() {
    if (m_editing)
        return libraryFailure(ErrorCode::InvalidArgument, tr("Cannot put the case into the library: it is there already."));
    m_unknown = core::UnknownFields::object();
    if (const QString& path = m_document.path(); !path.isEmpty()) // fields of another version of the program survive
        if (auto own = readCaseFile(path.toStdString())) m_unknown = std::move(own->file.unknown);
    const auto sequence = static_cast<qint64>(m_document.nextRevision()) - 1;
    const auto editing = m_library.create(factsOf(m_document.record()), text(), sequence);
    if (!editing) return tl::make_unexpected(editing.error());
    m_caseId = editing->caseId;
    follow(*editing);
    return m_caseId;
}

void LibraryDocument::follow(const Editing& editing) {
    m_editing = editing;
    m_lost = false;
    m_heartbeat.start();
}

QByteArray LibraryDocument::text() const {
    core::CaseFile file;
    file.record = m_document.record();
    file.journal = m_document.journal();
    file.imagesFolder = m_document.imagesFolder().toStdString();
    file.unknown = m_unknown;
    return QByteArray::fromStdString(core::caseText(file));
}

void LibraryDocument::sendWhenStill() {
    if (m_busy && m_busy() && !m_unsent.hasExpired(kSendAtLatest.count()))
        m_send.start();
    else
        send();
}

void LibraryDocument::send() {
    if (!m_editing || m_lost) return;
    std::vector<StoredEdit> edits;
    for (const core::JournalEntry& entry : m_document.journal().entries())
        if (static_cast<qint64>(entry.sequence) > m_editing->lastSequence)
            edits.push_back({static_cast<qint64>(entry.sequence), QByteArray::fromStdString(core::toJson(entry).dump())});
    if (edits.empty()) return;
    const auto outcome = m_library.append(*m_editing, edits);
    if (!outcome) return void(emit storingFailed(QString::fromStdString(outcome.error().message)));
    if (outcome->kind == WriteOutcome::Kind::Saved) return void(emit stored(static_cast<quint64>(m_editing->lastSequence)));
    m_lost = true;
    m_heartbeat.stop();
    if (outcome->by) m_holder = *outcome->by;
    emit leaseLost(*outcome);
}

void LibraryDocument::beat() {
    if (!m_editing || m_lost) return;
    send(); // what failed before; a commit renews the lease too
    if (!m_lost) m_library.renew(*m_editing);
}

core::Result<WriteOutcome> LibraryDocument::save() {
    if (!m_editing)
        return libraryFailure(ErrorCode::InvalidArgument, tr("Cannot save the case in the library: it is open for reading only."));
    m_send.stop();
    const auto sequence = static_cast<qint64>(m_document.nextRevision()) - 1;
    auto outcome = m_library.save(*m_editing, factsOf(m_document.record()), text(), sequence);
    if (!outcome) return outcome;
    if (outcome->kind == WriteOutcome::Kind::Saved) {
        emit stored(static_cast<quint64>(sequence));
    } else {
        m_lost = true;
        m_heartbeat.stop();
    }
    return outcome;
}

core::Result<void> LibraryDocument::close() {
    if (m_editing && !m_lost) {
        send();
        const auto last = static_cast<qint64>(m_document.nextRevision()) - 1;
        if (!m_lost && m_editing->lastSequence < last) // still failing: keep everything as it is
            return libraryFailure(ErrorCode::OutputUnwritable,
                                  tr("Cannot close the case: the library does not take its last edits. Save it as a file."));
        const auto known = m_library.find(m_caseId);
        if (!m_lost && known && known->editsSince > 0) {
            const auto saved = save();
            if (!saved) return tl::make_unexpected(saved.error());
        }
    }
    detach();
    return {};
}

int LibraryDocument::removeStoredCopies() {
    int removed = 0;
    const QDir folder(m_workFolder);
    for (const QString& name : folder.entryList({QStringLiteral("*.case.json")}, QDir::Files)) {
        const QString path = folder.filePath(name);
        if (path == m_document.path() || !isStored(path)) continue;
        const std::filesystem::path edits = workingPath(path.toStdString());
        for (const QString& earlier : folder.entryList({name + QStringLiteral(".?")}, QDir::Files))
            QFile::remove(folder.filePath(earlier));
        QFile::remove(QString::fromStdString(edits.string()));
        removed += QFile::remove(path) ? 1 : 0;
    }
    return removed;
}

/// The copy's edits are the first ones of those that the library holds for a case of that name.
bool LibraryDocument::isStored(const QString& workingCopy) {
    const std::filesystem::path file = workingCopy.toStdString();
    if (isHeld(workingPath(file))) return false; // open in another window
    const auto copy = readCaseFile(file);
    const auto cases = copy ? m_library.list() : core::Result<std::vector<ListedCase>>(tl::make_unexpected(core::Error{}));
    if (!cases) return false;
    const QString prefix = QFileInfo(workingCopy).fileName().section(QLatin1Char('-'), 0, 0);
    for (const ListedCase& listed : *cases) {
        if (listed.id.left(8) != prefix) continue;
        const auto stored = m_library.open(listed.id);
        const auto theirs = stored ? caseOf(*stored) : core::Result<core::CaseFile>(tl::make_unexpected(core::Error{}));
        if (!theirs) continue;
        const auto &ours = copy->file.journal.entries(), &all = theirs->journal.entries();
        const auto same = [](const core::JournalEntry& a, const core::JournalEntry& b) { return core::toJson(a) == core::toJson(b); };
        if (ours.size() <= all.size() && std::equal(ours.begin(), ours.end(), all.begin(), same)) return true;
    }
    return false;
}

void LibraryDocument::detach() {
    m_send.stop();
    m_heartbeat.stop();
    if (m_editing && !m_lost) m_library.endEditing(*m_editing);
    m_editing.reset();
    m_caseId.clear();
    m_holder = {};
    m_lost = false;
}

} // namespace gauge::app
