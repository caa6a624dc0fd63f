#include "app/document/session.h"

#include "app/commands/images_commands.h"
#include "app/commands/landing_commands.h"
#include "app/commands/mark_commands.h"
#include "app/commands/ostium_commands.h"
#include "app/document/propose_evidence.h"
#include "app/document/teaching_case.h"
#include "app/drawing/mark_roles.h"
#include "core/record/measurement_values.h"

#include <QDir>
#include <algorithm>
#include <iterator>

namespace gauge::app {
namespace {

using Kind = Message::Kind;

constexpr double kLandingMarginMm = 0.5;
constexpr double kUsualPhasePercent = 45.0;

QString text(const core::Error& error) {
    return QString::fromStdString(error.message);
}

/// The same values of the CT from the same inputs, whoever measured them and when.
bool sameMeasurement(const std::vector<core::RecordedValue>& recorded, const std::vector<core::RecordedValue>& now) {
    std::vector<core::RecordedValue> before;
    std::copy_if(recorded.begin(), recorded.end(), std::back_inserter(before),
                 [](const auto& value) { return value.group == core::kCtValues; });
    return std::equal(before.begin(), before.end(), now.begin(), now.end(), [](auto a, const auto& b) {
        core::Provenance source = *b.provenance;
        source.author = a.provenance->author;
        source.time = a.provenance->time;
        if (!(source == *a.provenance)) return false;
        a.provenance = b.provenance;
        a.unknown = b.unknown;
        return a == b;
    });
}

/// Only the first plane can be tilted.
std::optional<core::PatientVector> normalOf(const core::LandingPlanes& landing, std::size_t plane) {
    return plane == 0 ? landing.normal : std::nullopt;
}

/// Measures, then cuts the landing planes one by one: a depth beyond a short appendage must not spoil the
/// rest.
core::Result<core::AppendageMeasurement>
measureWithLandings(const Session::Engine& engine, const std::shared_ptr<const core::Volume>& volume,
                    const core::AppendageMarks& marks, const core::LandingPlanes& landing,
                    const core::WorkContext& work) {
    core::AppendageOptions options;
    options.landingDepthsMm.clear();
    options.plugLandingMm = landing.plugMm;
    auto measurement = engine.measure(volume, marks, options, work);
    if (!measurement) return measurement;
    std::vector<core::LandingZone> zones;
    for (std::size_t i = 0; i < landing.depthsMm.size(); ++i) {
        if (auto zone = engine.landingAt(*volume, *measurement, landing.depthsMm[i], normalOf(landing, i)))
            zones.push_back(std::move(*zone));
        else
            measurement->notices.push_back({"landing-zone-not-measured", zone.error().message, {}});
    }
    zones.insert(zones.end(), measurement->landingZones.begin(), measurement->landingZones.end());
    measurement->landingZones = std::move(zones);
    return measurement;
}

bool isPlug(const core::LandingZone& zone) {
    return zone.kind == core::LandingKind::Plug;
}

} // namespace

Session::Session(QObject* parent) : QObject(parent), m_engine{core::measureAppendage, core::landingZoneAt, core::sectionOnPlane} {
    m_drawings.addFinder(this, [this](const core::Drawing& drawing) -> std::optional<DrawingRecorder::Source> {
        if (!m_images || !drawing.evidence.empty() || !std::holds_alternative<core::SectionSite>(drawing.site))
            return std::nullopt;
        return DrawingRecorder::Source{core::sectionGround(*volume()), provenance()};
    });
    connect(&m_document, &CaseDocument::changed, this, &Session::onChanged);
    connect(&m_document, &CaseDocument::refused, this, [this](const QString& reason) {
        say(Kind::Warning, tr("Nothing was changed: %1 Save the case under another name to go on with it.").arg(reason));
    });
    connect(&m_document, &CaseDocument::savingFailed, this, [this](const QString& finding) {
        say(Kind::Error, tr("The last edits are not on disk yet. %1 They stay in this window and are tried again every "
                            "second.")
                             .arg(finding));
    });
    for (const JobRunner* job : {&m_load, &m_measureJob}) {
        connect(job, &JobRunner::started, this, &Session::workChanged);
        connect(job, &JobRunner::finished, this, &Session::workChanged);
        connect(job, &JobRunner::progressed, this, &Session::progressed);
    }
}

void Session::say(Kind kind, const QString& words) {
    m_message = {kind, words};
    emit messageChanged();
}

void Session::openFolder(const QString& folder) {
    m_folder = QDir::toNativeSeparators(QDir(folder).absolutePath());
    say(Kind::Working, tr("Looking through %1 …").arg(m_folder));
    const std::filesystem::path path = m_folder.toStdString();
    m_load.start<OpenedFolder>(
        [path](const core::WorkContext& work) { return app::openFolder(path, work); },
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
        [index = m_offered, series, phase](const core::WorkContext& work) { return loadPhase(index, series, phase, work); },
        [this](core::Result<LoadedImages> images) { loaded(std::move(images), true); });
}

void Session::openPictures(std::shared_ptr<const dicomio::SeriesIndex> index, const std::string& patientKey) {
    m_measureJob.drop();
    m_measurement.reset();
    m_preview.reset();
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
            m_measurement.reset();
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
    m_images = std::move(*images);
    say(Kind::Information, tr("Loaded %1.").arg(phaseWords()));
    emit imagesChanged();
    measure();
}

void Session::open(LoadedImages images) {
    m_measureJob.drop();
    m_measurement.reset();
    m_preview.reset();
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

void Session::placeMark(core::MarkKind kind, const core::PatientPoint& point) {
    m_document.push(std::make_unique<PlaceMark>(m_document, kind, point));
}

void Session::removeMark(core::MarkKind kind) {
    m_document.push(std::make_unique<RemoveMark>(m_document, kind));
}

void Session::confirmOstium() {
    if (!m_measurement) return;
    const core::Section& section = m_measurement->ostium.section;
    m_document.push(
        std::make_unique<ConfirmOstium>(m_document, core::Plane{section.center, section.frame.normal}));
}

void Session::releaseOstium() {
    m_document.push(std::make_unique<ReleaseOstium>(m_document));
}

void Session::previewOstium(const core::Plane& plane) {
    if (!m_measurement || !volume()) return;
    m_ostiumPreview = plane;
    emit landingChanged();
    if (!m_engine.sectionOn) return;
    m_previewJob.start<core::Section>(
        [cut = m_engine.sectionOn, volume = m_images->ct.volume, measurement = *m_measurement, plane](const core::WorkContext&) {
            return cut(*volume, measurement, plane);
        },
        [this](core::Result<core::Section> section) {
            if (!m_ostiumPreview) return;
            m_ostiumSection = section ? std::optional(std::move(*section)) : std::nullopt;
            emit landingChanged();
        });
}

void Session::dropPreviews() {
    m_previewJob.drop();
    m_ostiumPreview.reset();
    m_ostiumSection.reset();
    m_preview.reset();
    emit landingChanged();
}

void Session::moveOstium(const core::Plane& plane, int gesture) {
    dropPreviews();
    if (m_measurement) m_document.push(std::make_unique<MoveOstiumPlane>(m_document, plane, gesture));
}

void Session::tiltOstium(const core::Plane& plane, int gesture) {
    dropPreviews();
    if (m_measurement) m_document.push(std::make_unique<TiltOstiumPlane>(m_document, plane, gesture));
}

std::optional<core::Plane> Session::ostiumPlane() const {
    if (m_ostiumPreview) return m_ostiumPreview;
    if (record().ostium) return record().ostium->plane;
    if (!m_measurement) return std::nullopt;
    const core::Section& section = m_measurement->ostium.section;
    return core::Plane{section.center, section.frame.normal};
}

void Session::setPlug(std::optional<double> beyondRidgeMm, int gesture) {
    m_document.push(std::make_unique<SetPlugPlane>(m_document, beyondRidgeMm, gesture));
}

double Session::heldLandingDepth(double depthMm) const {
    const double most = (m_measurement ? m_measurement->axis.lengthMm : 0.0) - kLandingMarginMm;
    return std::clamp(depthMm, kLandingMarginMm, std::max(kLandingMarginMm, most));
}

/// False, with a message, where there is no such plane.
bool Session::showLanding(double depthMm, const std::optional<core::PatientVector>& normal) {
    if (!m_measurement || !volume()) return false;
    auto zone = m_engine.landingAt(*volume(), *m_measurement, heldLandingDepth(depthMm), normal);
    if (!zone) {
        say(Kind::Warning, text(zone.error()));
        return false;
    }
    m_preview = std::move(*zone);
    emit landingChanged();
    return true;
}

void Session::previewLanding(double depthMm) {
    showLanding(depthMm, record().landing.normal);
}

void Session::previewLandingTilt(const core::PatientVector& normal) {
    if (const auto* zone = landing()) showLanding(zone->depthMm, normal.normalized());
}

void Session::tiltLanding(const core::PatientVector& normal, int gesture) {
    const auto* zone = landing();
    if (!zone || !showLanding(zone->depthMm, normal.normalized())) return;
    m_preview.reset();
    if (!m_document.push(std::make_unique<TiltLanding>(m_document, normal, gesture))) emit landingChanged();
}

void Session::squareLanding() {
    dropPreviews();
    m_document.push(std::make_unique<SquareLanding>(m_document));
}

std::optional<core::Plane> Session::landingPlane() const {
    const auto* zone = landing();
    return zone ? std::optional(zone->section.frame.plane()) : std::nullopt;
}

void Session::moveLanding(double depthMm, int gesture) {
    const bool wasPreviewing = m_preview.has_value();
    m_preview.reset();
    const bool pushed =
        m_measurement &&
        m_document.push(std::make_unique<MoveLanding>(m_document, heldLandingDepth(depthMm), gesture));
    if (wasPreviewing && !pushed) emit landingChanged();
}

const core::LandingZone* Session::landing() const {
    if (m_preview) return &*m_preview;
    if (!m_measurement) return nullptr;
    const auto& zones = m_measurement->landingZones;
    const auto first = std::find_if(zones.begin(), zones.end(),
                                    [](const auto& zone) { return zone.kind == core::LandingKind::Axis; });
    return first == zones.end() ? nullptr : &*first;
}

const core::LandingZone* Session::plug() const {
    if (!m_measurement) return nullptr;
    const auto& zones = m_measurement->landingZones;
    const auto found = std::find_if(zones.begin(), zones.end(), isPlug);
    return found == zones.end() ? nullptr : &*found;
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
        if (m_measurement && !m_measureJob.isRunning()) recordValues();
        break;
    default:
        break;
    }
}

/// False after a phase that the record names could not be loaded: nothing may be measured on another one.
bool Session::imagesAreThoseOfTheRecord() const {
    return record().images &&
           find(*m_images->index, *record().images) == std::pair(m_images->series, m_images->phase);
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

void Session::measure() {
    if (!m_images || m_load.isRunning() || !imagesAreThoseOfTheRecord()) return;
    const auto marks = appendageMarks(record());
    if (!marks) {
        m_measureJob.drop();
        m_measurement.reset();
        m_failure.reset();
        emit measurementChanged();
        return;
    }
    m_measureJob.start<core::AppendageMeasurement>(
        [engine = m_engine, volume = m_images->ct.volume, marks = *marks,
         landing = record().landing](const core::WorkContext& work) {
            return measureWithLandings(engine, volume, marks, landing, work);
        },
        [this](core::Result<core::AppendageMeasurement> result) { measured(std::move(result)); });
}

void Session::measured(core::Result<core::AppendageMeasurement> result) {
    dropPreviews();
    if (!result) {
        m_measurement.reset();
        m_failure = result.error();
        if (result.error().code == core::ErrorCode::Cancelled)
            m_failure->message = tr("Measuring was cancelled. Move a mark to measure again.").toStdString();
        say(Kind::Error, text(*m_failure));
        emit measurementChanged();
        return;
    }
    m_failure.reset();
    m_measurement = std::move(*result);
    m_plugMeasuredMm = record().landing.plugMm;
    if (m_message.kind == Kind::Error || m_message.kind == Kind::Working) say(Kind::Nothing, {});
    emit measurementChanged();
    recordValues();
}

/// After an edit of the landing planes alone: those of the axis are cut anew, the rest of the measurement
/// stands.
void Session::refreshLandings() {
    if (!m_measurement || !volume() || m_measureJob.isRunning()) {
        measure();
        return;
    }
    const bool plugIsThere = std::any_of(m_measurement->landingZones.begin(), m_measurement->landingZones.end(), isPlug);
    if (record().landing.plugMm != m_plugMeasuredMm || (plugIsThere && !record().landing.plugMm)) {
        measure(); // the plug plane is found with the whole measurement
        return;
    }
    std::vector<core::LandingZone> zones;
    const core::LandingPlanes& landing = record().landing;
    for (std::size_t i = 0; i < landing.depthsMm.size(); ++i) {
        auto zone = m_engine.landingAt(*volume(), *m_measurement, landing.depthsMm[i], normalOf(landing, i));
        if (zone)
            zones.push_back(std::move(*zone));
        else
            say(Kind::Warning, text(zone.error()));
    }
    for (auto& zone : m_measurement->landingZones)
        if (isPlug(zone)) zones.push_back(zone);
    m_measurement->landingZones = std::move(zones);
    emit landingChanged();
    recordValues();
}

core::Provenance Session::provenance() const {
    core::Provenance provenance;
    provenance.sopInstanceUids = m_images->ct.sopInstanceUids;
    provenance.frameOfReferenceUid = m_images->ct.volume->frameOfReferenceUid();
    provenance.phase = m_images->ct.phaseLabel;
    provenance.state = "before the procedure";
    provenance.author = currentAuthor().toStdString();
    provenance.time = currentTime().toStdString();
    return provenance;
}

void Session::recordValues() {
    core::SetValues values{
        core::recordedValues(*m_measurement, record(), std::make_shared<const core::Provenance>(provenance()))};
    // Measured again from the same inputs with the same result, as after opening a case: who measured it first, and when,
    // stays.
    if (!sameMeasurement(record().values, values.values)) m_document.apply(std::move(values));
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
