#include "app/document/view_planner.h"

#include "app/document/computed_again.h"

#include <algorithm>

namespace gauge::app {
namespace {

bool sameOptions(const core::ViewPlanOptions& a, const core::ViewPlanOptions& b) {
    return a.reach == b.reach && a.turn == b.turn;
}

} // namespace

core::Result<core::PatientTurn> patientTurn(const Session& session) {
    const auto options = core::viewPlanOptions(session.record(), session.images() ? session.images()->patientPosition() : std::string());
    if (!options) return tl::make_unexpected(options.error());
    return options->turn;
}

ViewPlanner::ViewPlanner(Session& session, QObject* parent) : QObject(parent), m_session(session) {
    m_delay.setSingleShot(true);
    m_delay.setInterval(0);
    connect(&m_delay, &QTimer::timeout, this, &ViewPlanner::refresh);
    const auto later = [this] { m_delay.start(); };
    connect(&session, &Session::measurementChanged, this, [this] {
        m_surfaceIsNew = true;
        m_delay.start();
    });
    connect(&session, &Session::landingChanged, this, later);
    connect(&session, &Session::imagesChanged, this, later);
    connect(&session.document(), &CaseDocument::changed, this, [this](CaseDocument::Part part) {
        using Part = CaseDocument::Part;
        for (const Part one : {Part::Projection, Part::Contours, Part::Images, Part::Marks, Part::Ostium, Part::Landing, Part::Everything})
            if (part == one) m_delay.start();
    });
    m_delay.start();
}

const core::SectionPlan* ViewPlanner::plan(std::string_view section) const {
    const auto found = std::find_if(m_plans.begin(), m_plans.end(), [&](const auto& plan) { return plan.section == section; });
    return found == m_plans.end() ? nullptr : &*found;
}

std::optional<core::ViewReading> ViewPlanner::read(std::string_view section, const core::CArmAngles& room) const {
    const core::SectionPlan* found = plan(section);
    if (!found) return std::nullopt;
    auto reading = core::readView(found->subject, m_silhouettes ? &*m_silhouettes : nullptr, room, m_options);
    return reading ? std::optional(*reading) : std::nullopt;
}

std::string ViewPlanner::patientPosition() const {
    return core::patientPosition(m_session.record(), m_session.images() ? m_session.images()->patientPosition() : std::string());
}

/// Places of the planes and contours; equal: the same plans would come out.
std::vector<core::Revision> ViewPlanner::fingerprint() const {
    const core::CaseRecord& record = m_session.record();
    std::vector<core::Revision> all;
    for (const std::string& id :
         {core::input::placeOf(core::input::kOstium), core::input::placeOf(core::input::kLanding),
          core::entryInput<core::CorrectedContour>(core::kOstiumSection), core::entryInput<core::CorrectedContour>(core::kLandingSection)})
        all.push_back(core::revisionOf(record, id));
    return all;
}

void ViewPlanner::refreshNow() {
    m_delay.stop();
    refresh();
}

void ViewPlanner::refresh() {
    const auto none = [this](core::Error error) {
        m_job.drop();
        m_plans.clear();
        m_plannedWith.reset();
        m_problem = std::move(error);
        emit changed();
    };
    if (m_session.record().projection) m_options.reach = m_session.record().projection->content.reach;
    else m_options.reach = {};
    const core::AppendageMeasurement* measurement = m_session.measurement();
    if (!measurement || !m_session.volume())
        return none({core::ErrorCode::SectionNotFound, tr("The appendage is not measured on CT: there is nothing to plan views for. "
                                                          "Mark atrium and tip on the scanner axes.").toStdString(), {}, nullptr});
    const auto options = core::viewPlanOptions(m_session.record(), m_session.images() ? m_session.images()->patientPosition() : std::string());
    if (!options) return none(options.error());
    m_options = *options;
    if (m_session.isMeasuring() || m_session.isPlaneMoving()) return; // told again when it is done
    if (!m_surfaceIsNew && m_plannedWith && sameOptions(*m_plannedWith, m_options) && m_planned == fingerprint()) {
        if (!m_job.isRunning()) recordValues();
        emit changed();
        return;
    }
    m_planned = fingerprint();
    m_plannedWith = m_options;
    core::CaseRecord record; // what the plans follow from, without values and pictures
    record.images = m_session.record().images;
    record.marks = m_session.record().marks;
    record.ostium = m_session.record().ostium;
    record.landing = m_session.record().landing;
    record.contours = m_session.record().contours;
    m_job.start<Planned>(
        [record = std::move(record), measurement = std::make_shared<const core::AppendageMeasurement>(*measurement),
         volume = m_session.images()->ct.volume, known = m_surfaceIsNew ? nullptr : m_surface,
         options = m_options](const core::WorkContext& work) -> core::Result<Planned> {
            Planned planned;
            planned.surface = known;
            if (!planned.surface)
                if (auto made = core::appendageSurface(*volume, *measurement, {2}, {work.stop, {}}))
                    planned.surface = std::make_shared<const core::AppendageSurface>(std::move(*made));
            auto plans = core::planSections(record, *measurement, planned.surface.get(), options, {work.stop, {}});
            if (!plans) return tl::make_unexpected(plans.error());
            planned.plans = std::move(*plans);
            if (const auto& made = planned.surface)
                if (auto seen = core::Silhouettes::make(made->mesh, made->beyondOstium, core::roomFromPatient(options.turn)))
                    planned.silhouettes = std::move(*seen);
            return planned;
        },
        [this](core::Result<Planned> planned) { take(std::move(planned)); });
    emit changed();
}

void ViewPlanner::take(core::Result<Planned> planned) {
    if (!planned) {
        m_plans.clear();
        m_plannedWith.reset();
        m_problem = planned.error();
        emit changed();
        return;
    }
    m_problem.reset();
    m_plans = std::move(planned->plans);
    m_surface = std::move(planned->surface);
    m_surfaceIsNew = false;
    m_silhouettes = std::move(planned->silhouettes);
    recordValues();
    emit changed();
}

void ViewPlanner::recordValues() {
    if (m_plans.empty()) return;
    core::Provenance provenance;
    provenance.sopInstanceUids = m_session.images()->ct.sopInstanceUids;
    provenance.frameOfReferenceUid = m_session.images()->ct.volume->frameOfReferenceUid();
    provenance.phase = m_session.images()->ct.phaseLabel;
    provenance.state = "before the procedure";
    provenance.author = currentAuthor().toStdString();
    provenance.time = currentTime().toStdString();
    const bool confirmed = m_session.record().ostium && m_session.record().ostium->confirmed;
    const double tiltDeg = confirmed ? core::PlacementSpread::confirmed().tiltDeg : core::PlacementSpread::proposed().tiltDeg;
    auto values = core::projectionValues(m_session.record(), m_plans, m_options, tiltDeg,
                                         std::make_shared<const core::Provenance>(std::move(provenance)));
    std::vector<core::RecordedValue> present;
    for (const core::RecordedValue& value : m_session.record().values)
        if (value.group == core::kProjectionValues) present.push_back(value);
    if (!std::equal(values.begin(), values.end(), present.begin(), present.end(), sameButForAuthorAndTime))
        m_session.document().apply(core::SetValues{std::move(values), std::string(core::kProjectionValues)});
}

} // namespace gauge::app
