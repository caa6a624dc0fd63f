// Folders, series and phases that are opened, and what follows when the record changes. Marks and planes: session_planes.cpp;
// measuring: session_measuring.cpp; case files: session_case.cpp.
#include "app/document/session.h"

#include "app/commands/images_commands.h"
#include "app/commands/landing_commands.h"
#include "app/commands/mark_commands.h"
#include "app/commands/ostium_commands.h"
#include "app/document/propose_evidence.h"
#include "app/document/teaching_case.h"

#include <QDir>
#include <algorithm>

namespace gauge::app {
namespace {

using Kind = Message::Kind;

constexpr double kUsualPhasePercent = 45.0;

QString text(const core::Error& error) {
    return QString::fromStdString(error.message);
}

} // namespace

Session::Session(QObject* parent) : QObject(parent), m_engine{core::measureAppendage, core::landingZoneAt, core::sectionOnPlane} {
    m_drawings.addFinder(this, [this](const core::Drawing& drawing) -> std::optional<DrawingRecorder::Source> {
        if (!m_images || !drawing.evidence.empty() || !std::holds_alternative<core::SectionSite>(drawing.site))
            return std::nullopt;
        return DrawingRecorder::Source{core::sectionGround(*volume()), provenance()};
    });
    connect(&m_document, &CaseDocument::changed, this, &Session::onChanged);
    connect(this, &Session::measurementChanged, &m_septumRecorder, &SeptumRecorder::refreshSoon);
    connect(&m_document, &CaseDocument::refused, this, [this](const QString& reason) {
        say(Kind::Warning, tr("Nothing was changed: %1 Save the case under another name to go on with it.").arg(reason));
    });
    connect(&m_document, &CaseDocument::savingFailed, this, [this](const QString& finding) {
        say(Kind::Error, tr("The last edits are not on disk yet. %1 They stay in this window and are tried again every "
                            "second.")
                             .arg(finding));
    });
    for (const JobRunner* job : std::initializer_list<const JobRunner*>{&m_load, &m_measureJob, &m_landingsJob.runner()}) {
        connect(job, &JobRunner::started, this, &Session::workChanged);
        connect(job, &JobRunner::finished, this, &Session::workChanged);
        if (job == &m_landingsJob.runner()) continue; // over before a bar could show it
        connect(job, &JobRunner::progressed, this, &Session::progressed);
    }
    connect(&m_load, &JobRunner::finished, this, [this] {
        if (!m_first) return;
        m_first.reset();
        emit firstPictureChanged();
    });
}

void Session::say(Kind kind, const QString& words) {
    m_message = {kind, words};
    emit messageChanged();
}

/// Brings a first picture to this thread, unless the loading that found it is over by then.
TellFirst Session::tellFirst(bool ofNewCase) {
    return [this, number = ++m_loadNumber, ofNewCase](FirstPicture picture) {
        picture.ofNewCase = ofNewCase;
        QMetaObject::invokeMethod(
            this,
            [this, number, picture = std::move(picture)] {
                if (number != m_loadNumber || !m_load.isRunning()) return;
                m_first = picture;
                emit firstPictureChanged();
            },
            Qt::QueuedConnection);
    };
}

void Session::openFolder(const QString& folder) {
    m_folder = QDir::toNativeSeparators(QDir(folder).absolutePath());
    say(Kind::Working, tr("Looking through %1 …").arg(m_folder));
    const std::filesystem::path path = m_folder.toStdString();
    m_load.start<OpenedFolder>(
        [path, tell = tellFirst(true)](const core::WorkContext& work) { return app::openFolder(path, work, tell); },
        [this](core::Result<OpenedFolder> opened) { folderOpened(std::move(opened)); });
}

void Session::folderOpened(core::Result<OpenedFolder> folder) {
    if (!folder) {
        loaded(tl::unexpected(folder.error()), true);
    } else if (folder->images) {
        loaded(std::move(*folder->images), true);
    } else if (folder->mustChoose) {
        offer(folder->index);
        say(Kind::Warning, tr("%1 Choose one in the evidence list: double click, or Enter.").arg(text(*folder->reason)));
    } else {
        const auto& all = folder->index->series;
        const auto first = std::find_if(all.begin(), all.end(), [](const auto& s) { return !s.pictures.empty(); });
        openPictures(folder->index, dicomio::patientKey(*first));
    }
}

void Session::offer(std::shared_ptr<const dicomio::SeriesIndex> index) {
    if (index == m_offered) return;
    m_offered = std::move(index);
    emit offeredChanged();
}

void Session::openChosen(std::size_t series, std::size_t phase) {
    if (!m_offered || series >= m_offered->series.size()) return;
    const dicomio::SeriesEntry& chosen = m_offered->series[series];
    if (!chosen.measurable) {
        openPictures(m_offered, dicomio::patientKey(chosen));
        return;
    }
    say(Kind::Working, tr("Loading %1 …").arg(QString::fromStdString(chosen.description)));
    m_load.start<LoadedImages>(
        [index = m_offered, series, phase, tell = tellFirst(true)](const core::WorkContext& work) {
            return loadPhase(index, series, phase, work, tell);
        },
        [this](core::Result<LoadedImages> images) { loaded(std::move(images), true); });
}

void Session::openPictures(std::shared_ptr<const dicomio::SeriesIndex> index, const std::string& patientKey) {
    m_measureJob.drop();
    forgetMeasurement();
    m_failure.reset();
    m_images.reset();
    m_pictures = std::move(index);
    m_patientKey = patientKey;
    m_notices.clear();
    m_document.clear();
    m_document.setImagesFolder(m_folder);
    const auto& all = m_pictures->series;
    const auto own = std::find_if(all.begin(), all.end(), [&](const auto& s) { return dicomio::patientKey(s) == m_patientKey; });
    if (own != all.end()) setPatient(m_document, patientOf(*own));
    proposeEvidence(m_document, *m_pictures, m_patientKey);
    say(Kind::Information, tr("There is no CT to measure in this folder. Echo views and X-ray runs can be measured; what "
                              "compares them with CT stays empty."));
    offer(nullptr);
    emit imagesChanged();
    emit measurementChanged();
}

void Session::loaded(core::Result<LoadedImages> images, bool asNewCase) {
    if (!images) {
        const bool cancelled = images.error().code == core::ErrorCode::Cancelled;
        say(cancelled ? Kind::Information : Kind::Error,
            cancelled ? tr("Loading was cancelled.") : text(images.error()));
        if (!asNewCase) {
            forgetMeasurement();
            m_failure = images.error();
            emit measurementChanged();
        }
        return;
    }
    if (asNewCase) {
        open(std::move(*images));
        placeTeachingMarks();
        return;
    }
    m_landingsJob.drop(); // on the images that go
    forgetPreviews();
    m_images = std::move(*images);
    say(Kind::Information, tr("Loaded %1.").arg(phaseWords()));
    emit imagesChanged();
    measure();
}

void Session::open(LoadedImages images) {
    m_measureJob.drop();
    forgetMeasurement();
    m_failure.reset();
    m_images = std::move(images);
    m_notices.clear();
    m_pictures.reset();
    m_patientKey = dicomio::patientKey(m_images->index->series[m_images->series]);
    m_document.clear();
    m_document.setImagesFolder(QString::fromStdString(m_images->folder.string()));
    setFirstImages(m_document, m_images->used());
    setPatient(m_document, m_images->patient());
    proposeEvidence(m_document, *m_images->index, m_patientKey);
    offer(nullptr);
    say(Kind::Information, tr("Loaded %1. Mark the atrium and the tip of the appendage: then it is measured.")
                               .arg(phaseWords()));
    emit imagesChanged();
    emit measurementChanged();
}

void Session::placeTeachingMarks() {
    const auto marks =
        findTeachingMarks(m_folder.toStdString(), m_images->ct.phasePercent.value_or(kUsualPhasePercent));
    if (!marks) {
        say(Kind::Warning, text(marks.error()));
        return;
    }
    if (!*marks) return;
    m_document.undoStack().beginMacro(tr("Place the marks of the teaching case"));
    for (const auto& [kind, point] : (*marks)->points)
        m_document.push(std::make_unique<PlaceMark>(m_document, kind, point));
    m_document.undoStack().endMacro();
    say(Kind::Information,
        tr("This is the invented teaching case: its marks were placed for you. Undo takes them back, "
           "so that you can mark it yourself."));
}

void Session::chooseImages(std::size_t series, std::size_t phase) {
    if (!m_images || series >= m_images->index->series.size() ||
        phase >= m_images->index->series[series].phases.size())
        return;
    const core::ImagesUsed images = imagesUsed(*m_images->index, series, phase);
    const bool sameFrame =
        record().images && images.frameOfReferenceUid == record().images->frameOfReferenceUid;
    if (sameFrame) {
        m_document.push(std::make_unique<ChooseImages>(m_document, images));
        return;
    }
    m_document.undoStack().beginMacro(tr("Choose another series"));
    if (record().ostium) m_document.push(std::make_unique<ReleaseOstium>(m_document));
    for (const core::MarkKind kind : core::kMarkKinds)
        if (record().marks.contains(kind)) m_document.push(std::make_unique<RemoveMark>(m_document, kind));
    if (record().landing.normal) m_document.push(std::make_unique<SquareLanding>(m_document)); // a direction in the old frame
    m_document.push(std::make_unique<ChooseImages>(m_document, images));
    m_document.undoStack().endMacro();
}

void Session::cancel() {
    m_load.cancel();
    m_measureJob.cancel();
}

void Session::onChanged(CaseDocument::Part part) {
    using Part = CaseDocument::Part;
    switch (part) {
    case Part::Images:
        reloadIfImagesDiffer();
        break;
    case Part::Marks:
    case Part::Ostium:
        measure();
        break;
    case Part::Landing:
        refreshLandings();
        break;
    case Part::Contours:
        if (m_measurement && !isMeasuring()) recordValues(); // else they follow from what is being measured
        break;
    default:
        break;
    }
}

void Session::reloadIfImagesDiffer() {
    if (!m_images || !record().images) return;
    const auto place = find(*m_images->index, *record().images);
    if (!place || *place == std::pair(m_images->series, m_images->phase)) return;
    say(Kind::Working, tr("Loading %1 …").arg(QString::fromStdString(record().images->phaseLabel)));
    m_measureJob.drop();
    m_load.start<LoadedImages>(
        [index = m_images->index, at = *place](const core::WorkContext& work) {
            return loadPhase(index, at.first, at.second, work);
        },
        [this](core::Result<LoadedImages> images) { loaded(std::move(images), false); });
}

QString Session::phaseWords() const {
    const auto& series = m_images->index->series[m_images->series];
    const QString what = series.description.empty()
                             ? tr("the series")
                             : tr("“%1”").arg(QString::fromStdString(series.description));
    const QString phase = QString::fromStdString(m_images->ct.phaseLabel);
    return m_images->ct.phasePercent ? tr("%1, phase %2").arg(what, phase) : what;
}

} // namespace gauge::app
