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
    if (marks.circumflex && marks.ridge) options.plugLandingMm = landing.plugMm; // it is placed by them
    auto measurement = engine.measure(volume, marks, options, work);
    if (!measurement && options.plugLandingMm && measurement.error().code != core::ErrorCode::Cancelled) {
        const std::string finding = measurement.error().message;
        options.plugLandingMm.reset();
        measurement = engine.measure(volume, marks, options, work);
        if (measurement) measurement->notices.push_back({"landing-zone-not-measured", finding, {}});
    }
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

/// The landing zone itself, not a further plane that was measured where it could not be.
bool isFirst(const core::LandingZone& zone, const core::LandingPlanes& landing) {
    const auto& depths = landing.depthsMm;
    if (zone.kind != core::LandingKind::Axis || depths.empty()) return false;
    return zone.depthMm == depths.front() || std::find(depths.begin() + 1, depths.end(), zone.depthMm) == depths.end();
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
    m_ostiumJob.want<core::Section>(
        [this, plane]() -> FollowingJob::Work<core::Section> {
            return [cut = m_engine.sectionOn, volume = m_images->ct.volume, measurement = *m_measurement, plane](const core::WorkContext&) { return cut(*volume, measurement, plane); };
        },
        [this](core::Result<core::Section> section) {
            m_ostiumSection = section ? std::optional(std::move(*section)) : std::nullopt;
            emit landingChanged();
        });
}

void Session::dropPreviews() {
    forgetPreviews();
    emit landingChanged();
}

void Session::forgetPreviews() {
    m_ostiumJob.drop();
    m_ostiumPreview.reset();
    m_ostiumSection.reset();
    m_previewJob.drop();
    m_dragged.reset();
    m_previewPlace.reset();
    m_preview.reset();
    showOutline();
}

/// With all that was about to follow from it.
void Session::forgetMeasurement() {
    m_landingsJob.drop();
    m_measurement.reset();
    forgetPreviews();
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

void Session::setSecondLanding(std::optional<double> depthMm, int gesture) {
    if (depthMm) depthMm = heldLandingDepth(*depthMm);
    m_document.push(std::make_unique<SetSecondLanding>(m_document, depthMm, gesture));
}

std::vector<const core::LandingZone*> Session::furtherLandings() const {
    std::vector<const core::LandingZone*> further;
    if (!m_measurement) return further;
    for (const auto& zone : m_measurement->landingZones)
        if (zone.kind == core::LandingKind::Axis && !isFirst(zone, record().landing)) further.push_back(&zone);
    return further;
}

void Session::setPlug(std::optional<double> beyondRidgeMm, int gesture) {
    m_document.push(std::make_unique<SetPlugPlane>(m_document, beyondRidgeMm, gesture));
}

double Session::heldLandingDepth(double depthMm) const {
    const double most = (m_measurement ? m_measurement->axis.lengthMm : 0.0) - kLandingMarginMm;
    return std::clamp(depthMm, kLandingMarginMm, std::max(kLandingMarginMm, most));
}

/// False, with a message, where there is no such plane.
bool Session::mayLand(const LandingPlace& place) {
    if (!m_measurement || !volume()) return false;
    const auto usable = core::checkLandingPlane(*m_measurement, place.depthMm, place.normal);
    if (!usable) say(Kind::Warning, text(usable.error()));
    return usable.has_value();
}

void Session::showLanding(const LandingPlace& place) {
    if (!mayLand(place)) return;
    m_dragged = place;
    showOutline();
    emit landingChanged();
    m_previewJob.want<core::LandingZone>(
        [this, place]() -> FollowingJob::Work<core::LandingZone> {
            return [cut = m_engine.landingAt, volume = m_images->ct.volume, measurement = *m_measurement, place](const core::WorkContext&) { return cut(*volume, measurement, place.depthMm, place.normal); };
        },
        [this, place](core::Result<core::LandingZone> zone) { landingPreviewed(place, std::move(zone)); });
}

void Session::landingPreviewed(const LandingPlace& place, core::Result<core::LandingZone> zone) {
    if (zone) {
        m_previewPlace = place;
        m_preview = std::move(*zone);
    } else { // back to the last one that could be measured
        say(Kind::Warning, text(zone.error()));
        if (m_dragged == place) m_dragged = m_previewPlace;
    }
    showOutline();
    emit landingChanged();
}

/// The outline of the plane to show, as long as that is not measured.
void Session::showOutline() {
    const bool measured = m_dragged ? m_dragged == m_previewPlace : !m_landingsJob.isRunning();
    const auto place = landingPlace();
    m_outline = measured || !place || !m_measurement ? std::nullopt
                                                     : core::unmeasuredLanding(*m_measurement, place->depthMm, place->normal);
}

void Session::previewLanding(double depthMm) {
    showLanding({heldLandingDepth(depthMm), record().landing.normal});
}

void Session::previewLandingTilt(const core::PatientVector& normal) {
    if (const auto place = landingPlace()) showLanding({place->depthMm, normal.normalized()});
}

void Session::tiltLanding(const core::PatientVector& normal, int gesture) {
    const auto place = landingPlace();
    const bool may = place && mayLand({place->depthMm, normal.normalized()});
    const bool pushed = may && m_document.push(std::make_unique<TiltLanding>(m_document, normal, gesture));
    if (m_dragged || !pushed) dropPreviews();
}

void Session::squareLanding() {
    dropPreviews();
    m_document.push(std::make_unique<SquareLanding>(m_document));
}

std::optional<LandingPlace> Session::landingPlace() const {
    if (m_dragged) return m_dragged;
    const core::LandingPlanes& landing = record().landing;
    if (m_measurement && m_landingsJob.isRunning() && !landing.depthsMm.empty())
        return LandingPlace{landing.depthsMm.front(), landing.normal};
    const auto* zone = this->landing();
    return zone ? std::optional(LandingPlace{zone->depthMm, zone->tiltDeg ? std::optional(zone->section.frame.normal) : std::nullopt})
                : std::nullopt;
}

std::optional<core::Plane> Session::landingPlane() const {
    const auto* zone = landingShown();
    return zone ? std::optional(zone->section.frame.plane()) : std::nullopt;
}

void Session::moveLanding(double depthMm, int gesture) {
    const bool pushed =
        m_measurement &&
        m_document.push(std::make_unique<MoveLanding>(m_document, heldLandingDepth(depthMm), gesture));
    if (m_dragged || !pushed) dropPreviews();
}

const core::LandingZone* Session::landing() const {
    if (m_dragged && m_preview) return &*m_preview;
    if (!m_measurement) return nullptr;
    const auto& zones = m_measurement->landingZones;
    const auto first = std::find_if(zones.begin(), zones.end(), [](const auto& zone) { return zone.kind == core::LandingKind::Axis; });
    return first == zones.end() || !isFirst(*first, record().landing) ? nullptr : &*first;
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
        if (m_measurement && !isMeasuring()) recordValues(); // else they follow from what is being measured
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
    m_landingsJob.drop();
    showOutline();
    if (!marks) {
        m_measureJob.drop();
        forgetMeasurement();
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
        forgetMeasurement();
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

/// After an edit of the landing planes alone: those of the axis are cut anew, in the background; the rest of the measurement
/// stands.
void Session::refreshLandings() {
    if (!m_measurement || !volume() || m_measureJob.isRunning()) {
        measure();
        return;
    }
    const bool plugIsThere = std::any_of(m_measurement->landingZones.begin(), m_measurement->landingZones.end(), isPlug);
    if (record().landing.plugMm != m_plugMeasuredMm || (plugIsThere && !record().landing.plugMm)) {
        forgetPreviews();
        measure(); // the plug plane is found with the whole measurement
        return;
    }
    // The one that was dragged is measured already.
    const core::LandingPlanes& landing = record().landing;
    const bool known = m_preview && landing.depthsMm.size() == 1 &&
                       m_previewPlace == LandingPlace{landing.depthsMm.front(), landing.normal};
    if (known) {
        std::vector<core::Result<core::LandingZone>> zones;
        zones.emplace_back(std::move(*m_preview));
        m_landingsJob.drop();
        forgetPreviews();
        landingsCut(landing, std::move(zones));
        return;
    }
    using Zones = std::vector<core::Result<core::LandingZone>>;
    m_landingsJob.want<std::pair<core::LandingPlanes, Zones>>(
        [this]() -> FollowingJob::Work<std::pair<core::LandingPlanes, Zones>> {
            return [cut = m_engine.landingAt, volume = m_images->ct.volume, measurement = *m_measurement,
                    landing = record().landing](const core::WorkContext&) {
                Zones zones;
                for (std::size_t i = 0; i < landing.depthsMm.size(); ++i)
                    zones.push_back(cut(*volume, measurement, landing.depthsMm[i], normalOf(landing, i)));
                return core::Result<std::pair<core::LandingPlanes, Zones>>(std::pair(landing, std::move(zones)));
            };
        },
        [this](auto cut) {
            if (cut) landingsCut(cut->first, std::move(cut->second));
        });
    forgetPreviews(); // the outline of the record's plane stands for it
    emit landingChanged();
}

void Session::landingsCut(const core::LandingPlanes& asked, std::vector<core::Result<core::LandingZone>> cut) {
    if (!m_measurement || !(asked == record().landing)) return; // moved on since: the newest comes next
    std::vector<core::LandingZone> zones;
    for (auto& zone : cut)
        if (zone)
            zones.push_back(std::move(*zone));
        else
            say(Kind::Warning, text(zone.error()));
    for (auto& zone : m_measurement->landingZones)
        if (isPlug(zone)) zones.push_back(zone);
    m_measurement->landingZones = std::move(zones);
    showOutline();
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

/// Not while the appendage that the marks ask for is not there yet: angles that stand would be lost for a moment.
SeptumRecorder::Source Session::septumSource() const {
    if (!m_images || !imagesAreThoseOfTheRecord() || m_measureJob.isRunning()) return {};
    if (!m_measurement && !m_failure && appendageMarks(record())) return {};
    return {true, measurement(), provenance()};
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
