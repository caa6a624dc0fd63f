#include "app/document/sample_record.h"

#include "app/document/case_file.h"
#include "app/models/demo_charts.h"
#include "core/access/crossing.h"
#include "core/sizing/chart_reader.h"
#include "core/units/angle.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gauge::app {
namespace {

namespace fs = std::filesystem;
using namespace core;
using sample_case::EchoPlane;
using sample_case::EchoSet;
using sample_case::FluoroRun;
using sample_case::Heart;
using sample_case::Procedure;
using sample_case::SampleCase;
using sample_case::SamplePhase;

constexpr char kReader[] = "Invented reader";
constexpr double kDecisionMmHg = 12.0;
constexpr double kHeartRatePerMin = 75.0;

/// "20260113", "101000" to "2026-01-13T10:10:00".
std::string iso(const std::string& date, const std::string& time) {
    if (date.size() != 8 || time.size() != 6) return {};
    return date.substr(0, 4) + "-" + date.substr(4, 2) + "-" + date.substr(6, 2) + "T" + time.substr(0, 2) + ":" +
           time.substr(2, 2) + ":" + time.substr(4, 2);
}

const SamplePhase& phaseAt(const SampleCase& sample, double percent) {
    return *std::min_element(sample.phases.begin(), sample.phases.end(), [&](const auto& a, const auto& b) {
        return std::abs(a.percent - percent) < std::abs(b.percent - percent);
    });
}

class Builder {
public:
    explicit Builder(const SampleCase& sample) : m_sample(sample) {}

    void images();
    void marks();
    void moments(const Procedure& procedure);
    void echo(const Procedure& procedure);
    void sharedPlaces(const Procedure& procedure);
    void fluoroscopy(const Procedure& procedure);
    void looks();
    void choice(const Procedure& procedure, const std::string& chartText);
    void septum();
    void people();
    CaseFile take() { return {std::move(m_record), std::move(m_journal), "dicom", UnknownFields::object()}; }

private:
    Revision next() const { return m_journal.nextSequence(); }
    void edit(Edit one) {
        m_journal.append(one, kReader, "2026-01-13T10:40:00+01:00");
        core::apply(m_record, std::move(one));
    }
    template <class Content> void set(const std::string& id, Content content) {
        edit(SetEntry<Content>{id, Entry<Content>{std::move(content), next(), UnknownFields::object()}});
    }
    template <class Content> void set(Content content) {
        edit(SetSingle<Content>{Entry<Content>{std::move(content), next(), UnknownFields::object()}});
    }
    Evidence evidenceOf(const sample_case::ImageFacts& facts, EvidenceKind kind, const sample_case::PressureState& state,
                        BeatPhase phase) const;
    void drawWidth(DrawingRole role, const std::string& image, int frame, const Eigen::Vector2d& from,
                   const Eigen::Vector2d& to, const std::string& label);
    void drawView(const Procedure& procedure, const EchoSet& set, std::size_t view);
    void drawDepth(const Procedure& procedure, const EchoSet& set);
    void markShared(const std::string& label, const PatientPoint& ct, const std::string& image, int frame, const Eigen::Vector2d& pixel);

    const SampleCase& m_sample;
    CaseRecord m_record;
    Journal m_journal;
};

Evidence Builder::evidenceOf(const sample_case::ImageFacts& facts, EvidenceKind kind,
                             const sample_case::PressureState& state, BeatPhase phase) const {
    Evidence e;
    e.kind = kind;
    e.seriesUid = facts.seriesInstanceUid();
    if (kind != EvidenceKind::EchoVolume) e.sopInstanceUid = facts.sopInstanceUid();
    e.stage = stageFrom(state.stage).value_or(Stage::BeforeProcedure);
    e.moment = state.id;
    e.phase = phase;
    e.acquired = iso(facts.date, facts.time);
    e.description = facts.seriesDescription;
    return e;
}

void Builder::images() {
    const SamplePhase& phase = phaseAt(m_sample, 45.0);
    ImagesUsed used;
    used.seriesUid = sample_case::uidFrom(m_sample.series.uidText + "/series");
    used.phasePercent = phase.percent;
    used.phaseLabel = std::to_string(std::lround(phase.percent)) + " %";
    used.frameOfReferenceUid = phase.imaging.frameOfReferenceUid;
    used.patientPosition = "HFS"; // as the CT is written
    used.revision = next();
    edit(SetImages{used});
    Evidence ct;
    ct.kind = EvidenceKind::Ct;
    ct.seriesUid = used.seriesUid;
    ct.stage = Stage::BeforeProcedure;
    ct.moment = m_sample.procedure ? m_sample.procedure->law.states.front().id : "";
    ct.phase = BeatPhase::EndSystole;
    ct.acquired = iso(m_sample.series.date, m_sample.series.time);
    ct.description = m_sample.series.seriesDescription;
    set(used.seriesUid, ct);
}

void Builder::marks() {
    const sample_case::Marks& places = phaseAt(m_sample, 45.0).marks;
    const std::pair<MarkKind, PatientPoint> all[] = {{MarkKind::Atrium, places.atrium},
                                                     {MarkKind::Tip, places.tip},
                                                     {MarkKind::Circumflex, places.circumflex},
                                                     {MarkKind::Ridge, places.ridge},
                                                     {MarkKind::Aorta, places.aorta}};
    for (const auto& [kind, point] : all)
        edit(SetMark{kind, Mark{point, next(), UnknownFields::object()}});
    LandingPlanes landing;
    landing.depthsMm = {m_sample.procedure ? m_sample.procedure->law.landingDepthMm : 10.0};
    landing.revision = next();
    edit(SetLanding{landing});
}

void Builder::moments(const Procedure& procedure) {
    for (const sample_case::PressureState& state : procedure.law.states) {
        Moment moment;
        HaemodynamicState& c = moment.circulation;
        c.stage = stageFrom(state.stage).value_or(Stage::BeforeProcedure);
        c.state = state.id;
        c.time = iso(state.date, state.time);
        c.meanPressureMmHg = state.meanMmHg;
        c.vWaveMmHg = state.vWaveMmHg;
        c.rhythm = Rhythm::AtrialFibrillation;
        const bool isCt = c.stage == Stage::BeforeProcedure;
        c.pressureSource = isCt ? PressureSource::Echo : PressureSource::Direct;
        c.ventilation = isCt ? Ventilation::Spontaneous : Ventilation::Controlled;
        c.regurgitation = c.stage == Stage::AfterRepair ? RegurgitationGrade::Mild : RegurgitationGrade::Severe;
        if (!isCt) c.heartRatePerMinute = kHeartRatePerMin;
        moment.condition = isCt ? Condition::Hydrated : Condition::Other;
        for (const auto& doppler : procedure.doppler)
            if (procedure.law.states[doppler.state].id == state.id) {
                c.meanMitralGradientMmHg = std::round(10.0 * doppler.meanGradientMmHg()) / 10.0;
                c.gradientSource = GradientSource::Typed;
            }
        set(state.id, moment);
    }
}

void Builder::drawWidth(DrawingRole role, const std::string& image, int frame, const Eigen::Vector2d& from,
                        const Eigen::Vector2d& to, const std::string& label) {
    Drawing drawing;
    drawing.kind = DrawingKind::Straight;
    drawing.role = role;
    drawing.site = PictureSite{image, frame};
    drawing.points = {from, to};
    drawing.evidence = image;
    drawing.label = label;
    set(freshId<Drawing>(m_record), drawing);
}

/// The chords of ostium and landing zone at the end-systolic frame.
void Builder::drawView(const Procedure& procedure, const EchoSet& set, std::size_t view) {
    const int frame = set.times.frameNearest(procedure.law.percent);
    const Heart heart = procedure.heartIn(set.state).at(set.times.percentAt(frame));
    const std::string image = set.facts[view].sopInstanceUid();
    const std::string angle = std::to_string(std::lround(set.views[view].angleDeg)) + "°";
    const std::pair<DrawingRole, Plane> widths[] = {
        {DrawingRole::OstiumWidth, ostiumPlane(heart).plane},
        {DrawingRole::LandingWidth, landingPlane(heart, procedure.law.landingDepthMm)}};
    for (const auto& [role, plane] : widths)
        if (const auto chord = viewChord(heart, set.views[view], plane))
            drawWidth(role, image, frame, chord->firstPixel, chord->secondPixel,
                      (role == DrawingRole::OstiumWidth ? "Ostium at " : "Landing zone at ") + angle);
}

/// From the middle of the ostium to the tip, in the view whose plane comes nearest to the tip.
void Builder::drawDepth(const Procedure& procedure, const EchoSet& set) {
    const int frame = set.times.frameNearest(procedure.law.percent);
    const Heart heart = procedure.heartIn(set.state).at(set.times.percentAt(frame));
    const auto nearest = std::min_element(set.views.begin(), set.views.end(), [&](const auto& a, const auto& b) {
        return std::abs(a.outOfPlaneMm(heart.marks.tip)) < std::abs(b.outOfPlaneMm(heart.marks.tip));
    });
    const auto chord = viewChord(heart, *nearest, ostiumPlane(heart).plane);
    if (!chord) return;
    const auto view = static_cast<std::size_t>(nearest - set.views.begin());
    drawWidth(DrawingRole::Depth, set.facts[view].sopInstanceUid(), frame, (chord->firstPixel + chord->secondPixel) / 2.0,
              nearest->pixelFromPatient(heart.marks.tip), "Depth");
}

void Builder::echo(const Procedure& procedure) {
    for (const EchoSet& images : procedure.echo) {
        const sample_case::PressureState& state = procedure.law.states[images.state];
        for (std::size_t view = 0; view < images.views.size(); ++view) {
            Evidence e = evidenceOf(images.facts[view], EvidenceKind::EchoCine, state, BeatPhase::EndSystole);
            e.probeAngleDeg = images.views[view].angleDeg; // read off the picture where the file is silent
            set(e.sopInstanceUid, e);
            drawView(procedure, images, view);
        }
        drawDepth(procedure, images);
    }
    for (const auto& volume : procedure.volumes) {
        const Evidence e = evidenceOf(volume.facts, EvidenceKind::EchoVolume, procedure.law.states[volume.state],
                                      BeatPhase::EndSystole);
        set(e.seriesUid, e);
    }
    for (const auto& doppler : procedure.doppler) {
        const Evidence e = evidenceOf(doppler.facts, EvidenceKind::Doppler, procedure.law.states[doppler.state],
                                      BeatPhase::Other);
        set(e.sopInstanceUid, e);
    }
}

void Builder::markShared(const std::string& label, const PatientPoint& ct, const std::string& image, int frame,
                         const Eigen::Vector2d& pixel) {
    PoseLandmark place;
    place.ct = ct;
    place.echo = {image, frame};
    place.echoPoint = pixel;
    place.label = label;
    set(freshId<PoseLandmark>(m_record), place);
}

/// Places seen in CT and on the echo views of each moment: both walls of the ostium at 0 and 90 degrees, and the tip where a view
/// passes near it. Each is the same place of the heart, on CT as full as it was there and on echo as full as it was then, so
/// they do not lie on each other exactly.
void Builder::sharedPlaces(const Procedure& procedure) {
    constexpr double kSeenMm = 2.0; // farther off a view's plane nobody sees a place in it
    const Heart inCt = procedure.heartIn(0).at(procedure.law.percent);
    for (const EchoSet& images : procedure.echo) {
        const int frame = images.times.frameNearest(procedure.law.percent);
        const Heart now = procedure.heartIn(images.state).at(images.times.percentAt(frame));
        for (std::size_t i = 0; i < images.views.size(); ++i) {
            const EchoPlane& view = images.views[i];
            const std::string image = images.facts[i].sopInstanceUid();
            const std::string angle = std::to_string(std::lround(view.angleDeg)) + "°";
            if (std::lround(view.angleDeg) % 90 == 0) {
                const auto ct = viewChord(inCt, view, ostiumPlane(inCt).plane), echo = viewChord(now, view, ostiumPlane(now).plane);
                if (!ct || !echo) continue;
                markShared("Ostium, left wall at " + angle, ct->chord.first, image, frame, echo->firstPixel);
                markShared("Ostium, right wall at " + angle, ct->chord.second, image, frame, echo->secondPixel);
            }
            if (std::abs(view.outOfPlaneMm(now.marks.tip)) < kSeenMm)
                markShared("Tip at " + angle, inCt.marks.tip, image, frame, view.pixelFromPatient(now.marks.tip));
        }
    }
}

/// A width at the end-systolic frame with a full appendage, and the catheter's scale before the contrast arrives.
void Builder::fluoroscopy(const Procedure& procedure) {
    for (const FluoroRun& run : procedure.fluoro) {
        const Evidence e = evidenceOf(run.facts, EvidenceKind::Fluoroscopy, procedure.law.states[run.state],
                                      BeatPhase::EndSystole);
        set(e.sopInstanceUid, e);
        const Heart heart = procedure.heartIn(run.state).at(procedure.law.percent);
        const Plane plane = landingPlane(heart, procedure.law.landingDepthMm);
        if (const auto landing = trueSection(heart.scene, plane, plane.point)) {
            const auto width = projectedWidth(*landing, run.arm);
            drawWidth(DrawingRole::LandingWidth, e.sopInstanceUid, run.fullFrameNearest(procedure.law.percent),
                      width.firstPixel, width.secondPixel, "Landing zone, angiogram");
        }
        PictureScale scale;
        scale.origin = ScaleOrigin::Catheter;
        const auto at = [&](double beforeTipMm) {
            return run.arm.pixelOf(catheterEdges(run.catheter, run.arm, beforeTipMm).centre);
        };
        scale.from = at(run.stationBeforeTipMm + 5.0);
        scale.to = at(run.stationBeforeTipMm - 5.0);
        scale.knownMm = run.catheter.outerDiameterMm;
        scale.byEdgeProfile = true;
        if (&run == &procedure.fluoro.front()) set(e.sopInstanceUid, scale);
    }
}

void Builder::looks() {
    StasisFinding before;
    before.stage = Stage::BeforeRepair;
    before.echoContrastGrade = 2;
    before.sludge = before.thrombus = false;
    before.emptyingVelocityCmPerS = 24.0;
    before.seenBy = kReader;
    set("1", before);
    StasisFinding after = before;
    after.stage = Stage::AfterRepair;
    after.emptyingVelocityCmPerS = 28.0;
    after.lookedAtAgain = true;
    set("2", after);

    const auto finding = [](ReleaseQuantity quantity, double value, const char* view, const char* side = "") {
        return ReleaseFinding{quantity, value, std::nullopt, view, side, kReader, ""};
    };
    ReleaseState sheath{Stage::SheathInAppendage, "2026-01-13T10:31:00", false, {}};
    sheath.findings = {finding(ReleaseQuantity::SheathTipDepth, 3.0, "RAO 30 CAU 20")};
    set("1", sheath);
    ReleaseState attached{Stage::DeployedAttached, "2026-01-13T10:36:00", true, {}};
    attached.findings = {finding(ReleaseQuantity::ShareBeyondCircumflex, 70.0, "135 degrees"),
                         finding(ReleaseQuantity::GapBeforePull, 0.5, "45 degrees", "ridge side"),
                         finding(ReleaseQuantity::GapAfterPull, 0.6, "45 degrees", "ridge side"),
                         finding(ReleaseQuantity::JetWidth, 1.0, "90 degrees"),
                         finding(ReleaseQuantity::LobeToNeckAngle, 8.0, "RAO 30 CRA 10"),
                         finding(ReleaseQuantity::MitralGradient, 3.5, ""),
                         finding(ReleaseQuantity::RegurgitationGrade, 1.0, ""),
                         finding(ReleaseQuantity::VeinFlowFree, 1.0, "45 degrees")};
    set("2", attached);
}

void Builder::choice(const Procedure& procedure, const std::string& chartText) {
    SizingChoice sizing;
    sizing.chartText = chartText;
    sizing.chartSource = "demonstration chart that comes with the program; invented";
    sizing.decisionPressureMmHg = kDecisionMmHg;
    const auto byPressure = [](const auto& a, const auto& b) { return a.meanMmHg < b.meanMmHg; };
    const auto& states = procedure.law.states;
    sizing.lowestMmHg = std::min_element(states.begin(), states.end(), byPressure)->meanMmHg;
    sizing.highestMmHg = std::max_element(states.begin(), states.end(), byPressure)->meanMmHg;
    sizing.cause = PressureChange::Lasting;
    const double atDecisionMm = states.front().landingDiameterMm + procedure.law.slopeAt12MmPerMmHg * 12.0 *
                                                                       std::log(kDecisionMmHg / states.front().meanMmHg);
    if (const auto reading = readChart(chartText, sizing.chartSource))
        for (const auto& size : reading->chart.sizes)
            if (size.acceptsMm.lo <= atDecisionMm && atDecisionMm <= size.acceptsMm.hi) sizing.size = size.name;
    set(sizing);
    Decision draft;
    draft.text = "Draft of the invented teaching case: size chosen at the pressure expected after the repair, " +
                 std::to_string(std::lround(kDecisionMmHg)) + " mmHg. To be compared with the device's instructions.";
    draft.size = sizing.size;
    set(draft);
}

/// Invented marks on the described atrium at end-systole: the annulus around the place where the ventricle meets it, leaflets that
/// meet on the atrium's floor, the fossa on the wall towards the right atrium, 1 mm into the septum. By a straight sheath the repair's
/// heights and the closure's angles lie apart in this fossa; a steerable one lets one crossing serve both. So it is for the true axis and
/// for the measured one, which differs from it by 2 degrees, and for axes 1.5 degrees off either.
void Builder::septum() {
    const sample_case::Scene& scene = phaseAt(m_sample, 45.0).scene;
    const sample_case::Ellipsoid& atrium = scene.atrium;
    const Eigen::Vector3d valve = Eigen::Vector3d(0.42, -0.60, -1.00).normalized();
    const Eigen::Vector3d fossa = Eigen::Vector3d(-0.9165, -0.4, -0.1).normalized();
    /// On the atrium's surface, where its normal is turned from `middle` by these angles.
    const auto around = [&](const Eigen::Vector3d& middle, double firstDeg, double secondDeg, double turn, double outMm) {
        const Eigen::Vector3d first = Eigen::Vector3d::UnitZ().cross(middle).normalized(), second = middle.cross(first);
        const auto slope = [](double deg) { return std::tan(deg * kRadPerDegree); };
        const Eigen::Vector3d normal =
            (middle + slope(firstDeg) * std::cos(turn) * first + slope(secondDeg) * std::sin(turn) * second).normalized();
        return scene.patientFrom(atrium.surfacePoint(normal) + outMm * normal);
    };
    SeptumMarks marks;
    constexpr int kAnnulusPoints = 8, kRimPoints = 10;
    for (int i = 0; i < kAnnulusPoints; ++i)
        marks.annulus.push_back(around(valve, 36.0, 36.0, 2.0 * std::numbers::pi * i / kAnnulusPoints, 0.0));
    for (const double degrees : {-14.0, 0.0, 14.0})
        marks.coaptation.push_back(around(valve, degrees, 0.0, 0.0, 0.0));
    for (int i = 0; i < kRimPoints; ++i)
        marks.fossa.push_back(around(fossa, 15.0, 25.0, 2.0 * std::numbers::pi * i / kRimPoints, 1.0));
    marks.aorticRoot = scene.patientFrom({-19.6, -45.0, 3.0});
    set(marks);
    SeptumPlan plan;
    if (const auto seen = core::crossingScene(marks, std::nullopt, phaseAt(m_sample, 45.0).marks.atrium))
        plan.crossing = seen->face.frame.patientFromSection({1.7, 11.4});
    set(plan);
}

void Builder::people() {
    Patient patient;
    patient.name = m_sample.series.patientName;
    patient.id = m_sample.series.patientId;
    patient.birthDate = m_sample.series.birthDate;
    patient.sex = m_sample.series.sex;
    patient.title = "Invented teaching case";
    patient.tags = {"teaching", "invented"};
    set(patient);
    Scores scores;
    scores.stroke = StrokeItems{};
    scores.stroke->ageYears = 75.0;
    scores.stroke->sex = Sex::Female;
    scores.stroke->heartFailure = scores.stroke->hypertension = true;
    scores.bleeding = BleedingItems{};
    scores.bleeding->ageYears = 75.0;
    scores.bleeding->bleeding = true;
    set(scores);
}

} // namespace

CaseFile sampleRecord(const SampleCase& sample, const std::string& chartText) {
    Builder builder(sample);
    builder.people();
    builder.images();
    builder.marks();
    builder.septum();
    if (sample.procedure) {
        builder.moments(*sample.procedure);
        builder.echo(*sample.procedure);
        builder.sharedPlaces(*sample.procedure);
        builder.fluoroscopy(*sample.procedure);
        builder.looks();
        builder.choice(*sample.procedure, chartText);
    }
    return builder.take();
}

Result<fs::path> writeSampleRecord(const SampleCase& sample, const fs::path& folder) {
    const auto chart = readChartFile(demoCharts().back().path);
    if (!chart) return tl::unexpected(chart.error());
    const fs::path file = folder / "sample.case.json";
    std::error_code code;
    if (fs::exists(file, code)) {
        const auto present = readWhole(file);
        const auto content = present ? caseFromJson(*present) : tl::unexpected(present.error());
        const bool isOurs = content && content->record.patient &&
                            content->record.patient->content.id == sample.series.patientId;
        if (!isOurs)
            return failure(ErrorCode::OutputUnwritable,
                           "Cannot write the sample case to " + file.string() +
                               ": a file of that name is there already and is not the teaching case. Choose another folder, "
                               "or move that file away.",
                           {{"path", file.string()}});
    }
    if (auto written = writeWhole(file, caseText(sampleRecord(sample, chart->text))); !written)
        return tl::unexpected(written.error());
    return file;
}

} // namespace gauge::app
