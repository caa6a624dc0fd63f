// The file side of CaseDocument: opening, saving, and the working journal.
#include "app/document/case_document.h"
#include "core/record/case_checksum.h"

#include <QDir>
#include <QFileInfo>

namespace gauge::app {
namespace {

namespace fs = std::filesystem;

fs::path pathOf(const QString& name) {
    return fs::path(QDir::cleanPath(QFileInfo(name).absoluteFilePath()).toStdString());
}

QString words(const fs::path& path) {
    return QString::fromStdString(path.string());
}

/// A journal that cannot be continued gets a name of its own and stays.
void setAside(const fs::path& journal) {
    std::error_code code;
    for (int number = 1; number < 1000; ++number) {
        const fs::path aside = fs::path(journal).concat(".kept-" + std::to_string(number));
        if (fs::exists(aside, code)) continue;
        fs::rename(journal, aside, code);
        return;
    }
}

/// Takes the lock on a journal before anything is read, so that no other program writes meanwhile.
std::optional<core::Result<GrowingFile>> lockBeside(const fs::path& caseFile) {
    std::error_code code;
    if (!fs::is_regular_file(caseFile, code)) return std::nullopt;
    return GrowingFile::open(workingPath(caseFile));
}

/// An empty journal that was made only to hold the lock does not stay.
void removeIfEmpty(const fs::path& journal) {
    std::error_code code;
    if (fs::exists(journal, code) && fs::file_size(journal, code) == 0 && !code) fs::remove(journal, code);
}

} // namespace

core::Result<std::vector<core::Notice>> CaseDocument::open(const QString& name) {
    const fs::path file = pathOf(name);
    if (file == m_path.toStdString()) leave(); // what was edited here is read again from the file
    auto lock = lockBeside(file);
    auto opened = readCaseFile(file);
    if (!opened) {
        lock.reset();
        removeIfEmpty(workingPath(file));
        return tl::unexpected(opened.error());
    }
    leave();
    m_path = words(file);
    m_digest = opened->digest;
    m_inCaseFile = opened->inCaseFile;
    m_mustSave = opened->recoveredEdits > 0;
    m_saved = opened->file.journal.nextSequence() - 1;
    m_readOnlyReason = QString::fromStdString(opened->readOnlyReason);
    if (lock && !isReadOnly()) continueLog(std::move(*lock), *opened);
    lock.reset();
    if (!m_log) removeIfEmpty(workingPath(file));
    show(std::move(opened->file));
    emit fileChanged();
    return std::move(opened->notices);
}

/// Edits go on in the journal beside the case, or where that cannot be, in the folder of unsaved cases.
void CaseDocument::continueLog(core::Result<GrowingFile> lock, OpenedCase& opened) {
    const fs::path working = workingPath(m_path.toStdString());
    if (!lock && lock.error().code == core::ErrorCode::NothingUsable) {
        m_readOnlyReason = QString::fromStdString(lock.error().message);
        opened.notices.push_back({"case-in-use",
                                  lock.error().message + " It was opened here for reading only.",
                                  {{"path", m_path.toStdString()}}});
        return;
    }
    if (!lock) {
        opened.notices.push_back({"case-folder-not-writable",
                                  "Nothing can be written beside " + m_path.toStdString() +
                                      ". What you change is kept in your own data folder; save the case under another name.",
                                  {{"path", m_path.toStdString()}}});
        return; // startLoneLog with the first edit
    }
    if (opened.working == WorkingState::Continues) {
        if (lock->cut(opened.workingGoodBytes)) startLog(std::move(*lock), std::nullopt);
        return;
    }
    if (opened.working != WorkingState::None) {
        setAside(working);
        lock = GrowingFile::open(working);
        if (!lock) return;
    } else if (!lock->cut(0)) {
        return;
    }
    startLog(std::move(*lock), core::headerBeside(opened.file));
    // What was taken from a damaged journal would otherwise be in the file that was set aside only.
    if (opened.recoveredEdits > 0 && opened.working == WorkingState::Damaged)
        if (const auto written = writeCaseFile(m_path.toStdString(), opened.file)) {
            m_digest = *written;
            m_inCaseFile = m_saved;
            m_mustSave = false;
        }
}

core::Result<std::vector<core::Notice>> CaseDocument::openLeft(const QString& name) {
    const fs::path journal = pathOf(name);
    auto lock = GrowingFile::open(journal);
    if (!lock) return tl::unexpected(lock.error());
    auto opened = readLoneJournal(journal);
    if (!opened) return tl::unexpected(opened.error());
    leave();
    m_saved = opened->file.journal.nextSequence() - 1;
    m_hasWork = m_mustSave = m_isLone = true;
    if (opened->working == WorkingState::Damaged) {
        setAside(journal);
        startLoneLog(opened->file);
    } else if (lock->cut(opened->workingGoodBytes)) {
        startLog(std::move(*lock), std::nullopt);
    }
    show(std::move(opened->file));
    emit fileChanged();
    return std::move(opened->notices);
}

core::Result<void> CaseDocument::save() {
    if (m_path.isEmpty())
        return core::failure(core::ErrorCode::InvalidArgument, "Cannot save the case: it has no file name yet.");
    if (isReadOnly())
        return core::failure(core::ErrorCode::InvalidArgument, "Cannot save the case under this name: " +
                                                                   m_readOnlyReason.toStdString() +
                                                                   " Save it under another name.");
    const fs::path file = m_path.toStdString();
    if (const auto present = readWhole(file); present && core::sha256(*present) != m_digest)
        return core::failure(core::ErrorCode::InvalidArgument,
                             "Cannot save the case as " + file.string() +
                                 ": another program has written this file since it was opened here. Save under another "
                                 "name, then compare the two.",
                             {{"path", file.string()}});
    return write(file);
}

core::Result<void> CaseDocument::saveAs(const QString& name) {
    const fs::path file = pathOf(name);
    if (file == m_path.toStdString()) return save();
    const fs::path working = workingPath(file);
    auto lock = GrowingFile::open(working);
    if (!lock) return tl::unexpected(lock.error());
    std::error_code code;
    if (fs::file_size(working, code) > 0 && !code) { // left there by a case that is about to be replaced
        setAside(working);
        lock = GrowingFile::open(working);
        if (!lock) return tl::unexpected(lock.error());
    }
    const QString folder = imagesFolder(), before = m_path;
    m_path = words(file);
    setImagesFolder(folder); // relative to the new place
    auto written = writeCaseFile(file, content());
    if (!written) {
        m_path = before;
        setImagesFolder(folder);
        lock = tl::unexpected(core::Error{});
        removeIfEmpty(working);
        return tl::unexpected(written.error());
    }
    endLog(true);
    m_readOnlyReason.clear();
    startLog(std::move(*lock), core::headerBeside(content()));
    becameSaved(std::move(*written));
    return {};
}

/// Precondition: the file may be written.
core::Result<void> CaseDocument::write(const fs::path& file) {
    auto written = writeCaseFile(file, content());
    if (!written) return tl::unexpected(written.error());
    if (m_log && !m_isLone) {
        if (auto emptied = m_log->restart(core::headerBeside(content())); !emptied) return emptied;
    } else {
        endLog(true);
        if (auto lock = GrowingFile::open(workingPath(file))) startLog(std::move(*lock), core::headerBeside(content()));
    }
    becameSaved(std::move(*written));
    return {};
}

void CaseDocument::becameSaved(std::string digest) {
    m_digest = std::move(digest);
    m_inCaseFile = m_saved = m_journal.nextSequence() - 1;
    m_mustSave = m_hasWork = false;
    emit saved(m_saved);
    emit fileChanged();
}

void CaseDocument::discard() {
    if (m_path.isEmpty()) endLog(true);
    clear();
}

/// Leaves files as they should be found; the record itself stays until something else is shown.
void CaseDocument::leave() {
    const bool isFolded = !m_path.isEmpty() && !isReadOnly() && m_mustSave && save().has_value();
    // Values that the program computed anew are no work; what cannot be saved stays in its journal.
    endLog(isFolded || !m_mustSave);
    m_path.clear();
    m_readOnlyReason.clear();
    m_digest.clear();
    m_saved = m_inCaseFile = 0;
    m_hasWork = m_mustSave = false;
}

void CaseDocument::startLog(GrowingFile file, std::optional<core::WorkingHeader> header) {
    const int number = ++m_logNumber;
    EditLog::Reports reports;
    reports.saved = [this, number](core::Revision sequence) {
        QMetaObject::invokeMethod(this, [this, number, sequence] { reported(number, sequence); }, Qt::QueuedConnection);
    };
    reports.failed = [this, number](const core::Error& error) {
        const QString words = QString::fromStdString(error.message);
        QMetaObject::invokeMethod(
            this, [this, number, words] { if (number == m_logNumber) emit savingFailed(words); }, Qt::QueuedConnection);
    };
    m_log = std::make_unique<EditLog>(std::move(file), std::move(header), std::move(reports));
}

/// For a case without a file, or one beside which nothing can be written. `base`: all up to now.
void CaseDocument::startLoneLog(const core::CaseFile& base) {
    if (m_unsavedFolder.isEmpty()) return;
    m_isLone = true;
    auto file = GrowingFile::open(freshLoneJournal(m_unsavedFolder.toStdString()));
    if (file)
        startLog(std::move(*file), core::headerAlone(base, m_path.toStdString()));
    else
        emit savingFailed(QString::fromStdString(file.error().message));
}

void CaseDocument::endLog(bool removeFile) {
    if (!m_log) return;
    const fs::path file = m_log->path();
    ++m_logNumber;
    m_log.reset();
    m_isLone = false;
    std::error_code code;
    if (removeFile)
        fs::remove(file, code);
    else
        removeIfEmpty(file);
}

void CaseDocument::reported(int log, core::Revision sequence) {
    if (log != m_logNumber || sequence <= m_saved) return;
    m_saved = sequence;
    emit saved(sequence);
}

QString CaseDocument::imagesFolder() const {
    const QString kept = QString::fromStdString(m_imagesFolder);
    if (kept.isEmpty() || QDir::isAbsolutePath(kept) || m_path.isEmpty()) return kept;
    return QDir::cleanPath(QFileInfo(m_path).absoluteDir().absoluteFilePath(kept));
}

void CaseDocument::setImagesFolder(const QString& folder) {
    const QString whole = folder.isEmpty() ? QString() : QDir::cleanPath(QFileInfo(folder).absoluteFilePath());
    m_imagesFolder = whole.toStdString();
    if (m_path.isEmpty() || whole.isEmpty()) return;
    const QString relative = QFileInfo(m_path).absoluteDir().relativeFilePath(whole);
    if (!relative.startsWith(QStringLiteral(".."))) m_imagesFolder = (relative.isEmpty() ? QString(".") : relative).toStdString();
}

} // namespace gauge::app
