#include "dicomio/report/report_groups.h"

#include "core/record/septum_values.h"

#include "dicomio/report/report_codes.h"
#include "dicomio/report/structured_report.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace gauge::dicomio {
namespace {

/// Kinds of objects that hold one frame each: their references carry no frame number (PS3.3 C.17.3).
bool hasFrames(const std::string& sopClassUid) {
    return sopClassUid != "1.2.840.10008.5.1.4.1.1.2" && sopClassUid != "1.2.840.10008.5.1.4.1.1.6.1" &&
           sopClassUid != "1.2.840.10008.5.1.4.1.1.7";
}

bool finite(const Eigen::Vector2d& p) {
    return p.allFinite();
}
bool finite(const core::PatientPoint& p) {
    return p.mm.allFinite();
}

/// "ostium", "landing", "landing-2", or "appendage" for what belongs to no section.
std::string sectionOf(const std::string& id) {
    const std::string where = id.substr(0, id.find('/'));
    return where == "ostium" || where.starts_with("landing") ? where : "appendage";
}

std::string trackingIdOf(const core::RecordedValue& value) {
    const std::string section = sectionOf(value.id);
    if (value.group == core::kCtValues) return section;
    return section == "appendage" ? value.group : value.group + "/" + section;
}

std::string keyOf(const core::RecordedValue& value) {
    const core::Provenance& p = *value.provenance;
    std::string key = trackingIdOf(value) + "\n" + p.phase + "\n" + p.state + "\n" + p.author + "\n" +
                      (p.frame ? std::to_string(*p.frame) : "");
    for (const std::string& uid : p.sopInstanceUids)
        key += "\n" + uid;
    return key;
}

void setSection(MeasurementGroup& group, const std::string& section) {
    if (section == "ostium") {
        group.sites = {codes::kOstium};
    } else {
        group.sites = {codes::kAppendage};
        if (section.starts_with("landing")) group.finding = codes::kLandingZone;
    }
}

std::optional<double> landingDepth(const core::CaseRecord& record, const std::string& section) {
    std::size_t number = 0;
    if (!section.starts_with("landing-")) return std::nullopt;
    std::from_chars(section.data() + 8, section.data() + section.size(), number);
    if (number < 1 || number > record.landing.depthsMm.size()) return std::nullopt;
    return record.landing.depthsMm[number - 1];
}

} // namespace

GroupMaker::GroupMaker(const core::CaseRecord& record, const ReportSources& sources)
    : m_record(record), m_sources(sources) {
    for (const SourceImage& image : sources.images)
        m_known.emplace(image.sopInstanceUid, &image);
}

std::vector<MeasurementGroup> GroupMaker::make() {
    addValues();
    addContours();
    addDrawings();
    addMarks();
    addScales();
    addMoments();
    addReadings();
    addRelease();
    addStasis();
    addSizing();
    addScores();
    for (MeasurementGroup& group : m_groups)
        leaveOutUnusable(group);
    return std::move(m_groups);
}

/// One thing that cannot be said must not keep the rest from being reported.
void GroupMaker::leaveOutUnusable(MeasurementGroup& group) {
    const auto usable = [](double uncertainty) { return std::isfinite(uncertainty) && uncertainty >= 0.0; };
    m_unmeasured +=
        std::erase_if(group.measurements, [](const ReportMeasurement& m) { return !std::isfinite(m.value); });
    for (ReportMeasurement& m : group.measurements)
        if (m.standardUncertainty && !usable(*m.standardUncertainty)) m.standardUncertainty.reset();
    if (group.pressure && group.pressure->standardUncertaintyMmHg &&
        !usable(*group.pressure->standardUncertaintyMmHg))
        group.pressure->standardUncertaintyMmHg.reset();
    for (std::optional<double>* pressure : {group.pressure ? &group.pressure->meanMmHg : nullptr,
                                            group.pressure ? &group.pressure->vWaveMmHg : nullptr})
        if (pressure != nullptr && *pressure && !std::isfinite(**pressure)) pressure->reset();
    std::erase_if(group.findings, [](const ReportFinding& f) { return !f.value && f.text.empty(); });
    const auto notDrawn = [](const auto& region) {
        return !fits(region.kind, region.points.size()) ||
               std::any_of(region.points.begin(), region.points.end(),
                           [](const auto& p) { return !finite(p); });
    };
    m_regionsLeftOut +=
        std::erase_if(group.pictureRegions, notDrawn) + std::erase_if(group.patientRegions, notDrawn);
    for (ReportMeasurement& m : group.measurements)
        m_regionsLeftOut += std::erase_if(m.pictureRegions, notDrawn);
}

std::vector<SourceImage> GroupMaker::used() const {
    std::vector<SourceImage> out;
    std::copy_if(m_sources.images.begin(), m_sources.images.end(), std::back_inserter(out),
                 [&](const SourceImage& image) { return m_used.count(image.sopInstanceUid) != 0; });
    return out;
}

MeasurementGroup GroupMaker::started(const std::string& trackingId) const {
    MeasurementGroup group;
    group.trackingId = trackingId;
    group.trackingUid = derivedUid(m_sources.study.studyUid, "group/" + trackingId);
    return group;
}

void GroupMaker::setStage(MeasurementGroup& group, core::Stage stage) const {
    if (group.stage.empty()) group.stage = std::string(core::plainName(stage));
    if (!group.stageCode) group.stageCode = codes::stageCode(stage);
}

void GroupMaker::setMoment(MeasurementGroup& group, const std::string& moment) const {
    const auto found = m_record.moments.find(moment);
    if (found == m_record.moments.end()) return;
    const core::Moment& content = found->second.content;
    group.pressure =
        ReportPressure{moment, content.circulation.meanPressureMmHg, {}, content.circulation.vWaveMmHg};
    if (content.circulation.meanPressureMmHg)
        group.pressure->standardUncertaintyMmHg = content.pressureUncertaintyMmHg;
    setStage(group, content.circulation.stage);
}

void GroupMaker::setEvidence(MeasurementGroup& group, const std::string& id) const {
    const auto found = m_record.evidence.find(id);
    if (found == m_record.evidence.end()) return;
    const core::Evidence& evidence = found->second.content;
    setStage(group, evidence.stage);
    if (!group.beatPhase) group.beatPhase = codes::beatPhaseCode(evidence.phase);
    if (!group.pressure) setMoment(group, evidence.moment);
}

std::optional<FrameReference> GroupMaker::imageOf(const std::string& uid, std::optional<int> frame) {
    const auto found = m_known.find(uid);
    if (found == m_known.end()) return std::nullopt;
    m_used.insert(uid);
    return FrameReference{uid, hasFrames(found->second->sopClassUid) ? frame : std::nullopt};
}

void GroupMaker::addImages(MeasurementGroup& group, const core::Provenance& provenance) {
    std::string absent;
    for (const std::string& uid : provenance.sopInstanceUids) {
        if (auto image = imageOf(uid, provenance.frame))
            group.images.push_back(std::move(*image));
        else
            absent += (absent.empty() ? "" : " ") + uid;
    }
    if (!absent.empty()) group.findings.push_back({codes::kAbsentImage, {}, absent});
}

MeasurementGroup& GroupMaker::groupNamed(const std::string& trackingId) {
    const auto found = std::find_if(m_groups.begin(), m_groups.end(),
                                    [&](const MeasurementGroup& g) { return g.trackingId == trackingId; });
    if (found != m_groups.end()) return *found;
    return m_groups.emplace_back(started(trackingId));
}

MeasurementGroup& GroupMaker::groupOf(const core::RecordedValue& value) {
    const std::string key = keyOf(value);
    if (const auto found = m_places.find(key); found != m_places.end()) return m_groups[found->second];
    const std::string plain = trackingIdOf(value);
    std::string id = plain; // the same section from other images, or by someone else, is a group of its own
    for (int n = 2; std::any_of(m_groups.begin(), m_groups.end(),
                                [&](const MeasurementGroup& g) { return g.trackingId == id; });
         ++n)
        id = plain + " (" + std::to_string(n) + ")";
    m_places.emplace(key, m_groups.size());
    MeasurementGroup& group = m_groups.emplace_back(started(id));
    const core::Provenance& provenance = *value.provenance;
    setSection(group, sectionOf(value.id));
    if (value.group == core::kSeptumValues) group.sites = {codes::kSeptum};
    group.phase = provenance.phase;
    group.author = provenance.author;
    group.stage = provenance.state;
    for (const core::Stage stage : core::kStages)
        if (core::plainName(stage) == provenance.state) setStage(group, stage);
    if (!provenance.author.empty() &&
        std::find(m_authors.begin(), m_authors.end(), provenance.author) == m_authors.end())
        m_authors.push_back(provenance.author);
    addImages(group, provenance);
    const auto slash = value.group.find('/');
    if (value.group == core::kCtValues) {
        if (m_record.images) setEvidence(group, m_record.images->seriesUid);
    } else if (value.group.starts_with("drawing/")) {
        const auto drawing = m_record.drawings.find(value.group.substr(slash + 1));
        if (drawing != m_record.drawings.end()) setEvidence(group, drawing->second.content.evidence);
    } else if (slash != std::string::npos) {
        setMoment(group, value.group.substr(slash + 1));
    }
    return group;
}

ReportMeasurement GroupMaker::number(const MeasurementGroup& group, const Code& name, double value,
                                     std::string_view unit, const std::string& key) const {
    ReportMeasurement m;
    m.name = name;
    m.value = value;
    m.unit = codes::unitCode(unit);
    m.trackingId = group.trackingId + ":" + key;
    m.trackingUid = derivedUid(m_sources.study.studyUid, "value/" + m.trackingId);
    return m;
}

ReportMeasurement GroupMaker::measurementOf(const core::RecordedValue& value, const MeasurementGroup& group) {
    const codes::ValueConcept is =
        codes::conceptOf(value.id, value.unit, landingDepth(m_record, sectionOf(value.id)));
    ReportMeasurement m = number(group, is.name, value.estimate.value, value.unit, value.id);
    m.trackingId = value.group + ":" + value.id;
    m.trackingUid = derivedUid(m_sources.study.studyUid, "value/" + m.trackingId);
    m.derivation = is.derivation;
    m.method = value.estimate.method;
    m.time = value.provenance->time;
    const bool asGroup =
        std::find(group.sites.begin(), group.sites.end(), is.site.value_or(Code{})) != group.sites.end();
    if (is.site && !asGroup && !(*is.site == codes::kLandingZone)) m.site = is.site;
    const core::UncertaintyComponents& parts = value.estimate.components;
    if (const double u = value.estimate.standardUncertainty(); u > 0.0) m.standardUncertainty = u;
    for (const auto& [name, part] : {std::pair("edge", parts.edge), std::pair("plane", parts.plane),
                                     std::pair("observer", parts.observer), std::pair("scale", parts.scale)})
        if (part > 0.0) m.uncertaintyParts.push_back({name, part});
    if (value.provenance->sopInstanceUids.size() == 1)
        if (auto image = imageOf(value.provenance->sopInstanceUids.front(), value.provenance->frame))
            m.images = {*image};
    return m;
}

void GroupMaker::addValues() {
    for (const core::RecordedValue& value : m_record.values) {
        if (core::isStale(m_record, value)) {
            ++m_stale;
            continue;
        }
        const core::UncertaintyComponents& parts = value.estimate.components;
        if (!std::isfinite(value.estimate.value + parts.edge + parts.plane + parts.observer + parts.scale)) {
            ++m_unmeasured;
            continue;
        }
        MeasurementGroup& group = groupOf(value);
        group.measurements.push_back(measurementOf(value, group));
    }
    const auto ostium = std::find_if(m_groups.begin(), m_groups.end(),
                                     [](const MeasurementGroup& g) { return g.trackingId == "ostium"; });
    if (ostium != m_groups.end())
        ostium->findings.push_back(
            {codes::own("plane-confirmed", "Plane of the ostium confirmed by a person"),
             m_record.ostium && m_record.ostium->confirmed ? codes::kYes : codes::kNo,
             {}});
}

} // namespace gauge::dicomio
