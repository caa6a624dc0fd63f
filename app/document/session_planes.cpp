// Marks and planes: what the hand moves, as it is while it is dragged and as it is recorded.
#include "app/document/session.h"

#include "app/commands/landing_commands.h"
#include "app/commands/mark_commands.h"
#include "app/commands/ostium_commands.h"

#include <algorithm>

namespace gauge::app {
namespace {

using Kind = Message::Kind;

constexpr double kLandingMarginMm = 0.5;

QString text(const core::Error& error) {
    return QString::fromStdString(error.message);
}

/// The landing zone itself, not a further plane that was measured where it could not be.
bool isFirst(const core::LandingZone& zone, const core::LandingPlanes& landing) {
    const auto& depths = landing.depthsMm;
    if (zone.kind != core::LandingKind::Axis || depths.empty()) return false;
    return zone.depthMm == depths.front() || std::find(depths.begin() + 1, depths.end(), zone.depthMm) == depths.end();
}

} // namespace

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
    const auto found = std::find_if(zones.begin(), zones.end(), [](const auto& zone) { return zone.kind == core::LandingKind::Plug; });
    return found == zones.end() ? nullptr : &*found;
}

} // namespace gauge::app
