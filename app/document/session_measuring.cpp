// Measuring in the background whenever the record says so, and the values that are recorded of it.
#include "app/document/session.h"

#include "app/drawing/mark_roles.h"
#include "core/record/measurement_values.h"

#include <algorithm>
#include <iterator>

namespace gauge::app {
namespace {

using Kind = Message::Kind;

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

} // namespace

/// With all that was about to follow from it.
void Session::forgetMeasurement() {
    m_landingsJob.drop();
    m_measurement.reset();
    forgetPreviews();
}

/// False after a phase that the record names could not be loaded: nothing may be measured on another one.
bool Session::imagesAreThoseOfTheRecord() const {
    return record().images &&
           find(*m_images->index, *record().images) == std::pair(m_images->series, m_images->phase);
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
        [this](core::Result<core::AppendageMeasurement> result) { measured(std::move(result)); }, JobRunner::Begin::AfterPainting);
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

} // namespace gauge::app
