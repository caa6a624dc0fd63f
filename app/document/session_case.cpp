// Opening and saving case files, and finding the images of an opened case.
#include "app/document/session.h"

#include "app/document/propose_evidence.h"
#include "app/settings/settings.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

namespace gauge::app {
namespace {

using Kind = Message::Kind;

QString text(const core::Error& error) {
    return QString::fromStdString(error.message);
}

} // namespace

QString unsavedFolder() {
    if (const QString chosen = Settings().unsavedFolder(); !chosen.isEmpty()) return chosen;
    return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).filePath(QStringLiteral("unsaved"));
}

bool isCaseFile(const QString& path) {
    const QFileInfo info(path);
    const QString name = info.fileName();
    return !info.isDir() && (name.endsWith(QStringLiteral(".json"), Qt::CaseInsensitive) ||
                             name.contains(QString::fromLatin1(kCaseSuffix) + QLatin1Char('.')));
}

/// Views must not draw the images of one case with the record of another.
std::optional<LoadedImages> Session::putImagesAway() {
    m_load.drop();
    m_measureJob.drop();
    return std::exchange(m_images, std::nullopt);
}

bool Session::openCase(const QString& path) {
    auto before = putImagesAway();
    return showCase(m_document.open(path), std::move(before));
}

void Session::documentOpened() {
    putImagesAway();
    showCase(std::vector<core::Notice>{}, std::nullopt);
}

bool Session::openLeftCase(const QString& journal) {
    auto before = putImagesAway();
    return showCase(m_document.openLeft(journal), std::move(before));
}

bool Session::showCase(core::Result<std::vector<core::Notice>> opened, std::optional<LoadedImages> before) {
    if (!opened) {
        m_images = std::move(before);
        say(Kind::Error, text(opened.error()));
        return false;
    }
    QStringList notices;
    for (const auto& notice : *opened)
        notices << QString::fromStdString(notice.text);
    m_notices = notices.join(QLatin1Char(' '));
    forgetMeasurement();
    m_failure.reset();
    m_pictures.reset();
    m_patientKey.clear();
    offer(nullptr);
    emit imagesChanged();
    emit measurementChanged();
    std::vector<std::filesystem::path> folders;
    const QString own = m_document.path().isEmpty() ? QString() : QFileInfo(m_document.path()).absolutePath();
    for (const QString& folder : {m_document.imagesFolder(), own})
        if (!folder.isEmpty() && QFileInfo(folder).isDir()) folders.emplace_back(folder.toStdString());
    if (record().images)
        findImages(std::move(folders));
    else if (!record().evidence.empty())
        findPicturesIn(std::move(folders));
    else
        sayNotices(tr("The case is open. It names no images; open a folder of images to measure."));
    return true;
}

void Session::findImagesIn(const QString& folder) {
    const std::vector<std::filesystem::path> folders{QDir(folder).absolutePath().toStdString()};
    record().images ? findImages(folders) : findPicturesIn(folders);
}

void Session::findImages(std::vector<std::filesystem::path> folders) {
    m_lookedIn = folders;
    if (folders.empty()) {
        imagesFound(loadImagesOf(*record().images, folders, {}));
        return;
    }
    m_folder = QDir::toNativeSeparators(QString::fromStdString(folders.front().string()));
    say(Kind::Working, tr("Looking for the images of the case in %1 …").arg(m_folder));
    m_load.start<LoadedImages>(
        [images = *record().images, folders, tell = tellFirst(false)](const core::WorkContext& work) {
            return loadImagesOf(images, folders, work, tell);
        },
        [this](core::Result<LoadedImages> images) { imagesFound(std::move(images)); });
}

void Session::imagesFound(core::Result<LoadedImages> images) {
    if (!images) {
        const bool wasCancelled = images.error().code == core::ErrorCode::Cancelled;
        const QString finding = wasCancelled ? tr("Looking for the images was cancelled; the case is open without them.")
                                             : text(images.error());
        say(Kind::Warning, m_notices.isEmpty() ? finding : m_notices + QLatin1Char(' ') + finding);
        if (!wasCancelled) emit imagesMissing();
        // Without its CT, its echo views and X-ray runs may still be there.
        if (images.error().code == core::ErrorCode::NotFound && !index()) findPicturesIn(std::exchange(m_lookedIn, {}));
        return;
    }
    m_pictures.reset();
    m_images = std::move(*images);
    m_patientKey = dicomio::patientKey(m_images->index->series[m_images->series]);
    proposeEvidence(m_document, *m_images->index, m_patientKey); // what the case does not hold yet
    m_document.setImagesFolder(QString::fromStdString(m_images->folder.string()));
    sayNotices(tr("Opened the case and loaded %1.").arg(phaseWords()));
    emit imagesChanged();
    reloadIfImagesDiffer();
    measure();
}

/// Echo views and X-ray runs of a case whose CT is not there, or that has none.
void Session::findPicturesIn(std::vector<std::filesystem::path> folders) {
    std::vector<core::Evidence> evidence;
    for (const auto& [id, entry] : record().evidence)
        if (entry.content.kind != core::EvidenceKind::Ct) evidence.push_back(entry.content);
    if (evidence.empty()) return;
    m_load.start<FoundPictures>(
        [evidence, folders = std::move(folders)](const core::WorkContext& work) { return findPictures(evidence, folders, work); },
        [this](core::Result<FoundPictures> found) { picturesFound(std::move(found)); });
}

void Session::picturesFound(core::Result<FoundPictures> found) {
    const bool lacksCt = record().images.has_value(); // that was said already
    if (!found) {
        if (!lacksCt) say(Kind::Warning, m_notices.isEmpty() ? text(found.error()) : m_notices + QLatin1Char(' ') + text(found.error()));
        return;
    }
    m_pictures = std::move(found->index);
    m_patientKey = found->patientKey;
    proposeEvidence(m_document, *m_pictures, m_patientKey); // what the case does not hold yet
    if (!lacksCt) {
        m_document.setImagesFolder(QString::fromStdString(found->folder.string()));
        sayNotices(tr("Opened the case and its pictures. It has no CT: what compares them with CT stays empty."));
    }
    emit imagesChanged();
}

void Session::sayNotices(const QString& otherwise) {
    if (m_notices.isEmpty())
        say(Kind::Information, otherwise);
    else
        say(Kind::Warning, m_notices);
}

bool Session::saveCase(const QString& path) {
    const auto saved = path.isEmpty() ? m_document.save() : m_document.saveAs(path);
    if (!saved) {
        say(Kind::Error, text(saved.error()));
        return false;
    }
    m_notices.clear();
    say(Kind::Information, tr("Saved as %1.").arg(QDir::toNativeSeparators(m_document.path())));
    return true;
}

} // namespace gauge::app
