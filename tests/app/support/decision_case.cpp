#include "tests/app/support/decision_case.h"

#include "app/commands/course_commands.h"
#include "app/commands/decision_commands.h"
#include "app/commands/images_commands.h"
#include "app/models/demo_charts.h"
#include "core/record/measurement_values.h"
#include "tests/app/support/synthetic_case.h"

#include <array>

namespace gauge::fixture {
namespace {

constexpr std::array kAngles{0.0, 45.0, 90.0, 135.0};

void addMoment(app::CaseDocument& document, const std::string& id, core::Stage stage, double mean, double vWave,
               core::PressureSource source, core::Condition condition, const char* time) {
    core::Moment m;
    core::HaemodynamicState& c = m.circulation;
    c.stage = stage;
    c.time = time;
    c.meanPressureMmHg = mean;
    c.pressureSource = source;
    c.vWaveMmHg = vWave;
    c.rhythm = core::Rhythm::AtrialFibrillation;
    c.heartRatePerMinute = 78;
    c.regurgitation = condition == core::Condition::MitralRegurgitation ? core::RegurgitationGrade::Severe
                                                                        : core::RegurgitationGrade::Mild;
    if (stage >= core::Stage::AfterRepair) {
        c.meanMitralGradientMmHg = 3.4;
        c.gradientSource = core::GradientSource::SpectralEnvelope;
    }
    m.condition = condition;
    document.push(std::make_unique<app::SetMoment>(document, id, m));
}

template <class Content> void addEntry(app::CaseDocument& document, const std::string& id, Content content) {
    document.push(std::make_unique<app::EntryCommand<Content>>(document, QStringLiteral("add"), id, std::move(content)));
}

/// Four views of one moment, each with a landing-zone width; ids "sop-start-0" and "w-start-0".
std::vector<std::string> addViews(app::CaseDocument& document, const std::string& moment, core::Stage stage) {
    std::vector<std::string> inputs;
    for (const double angle : kAngles) {
        const std::string key = moment + "-" + std::to_string(static_cast<int>(angle));
        core::Evidence view;
        view.kind = core::EvidenceKind::EchoCine;
        view.seriesUid = "series-" + moment;
        view.sopInstanceUid = "sop-" + key;
        view.stage = stage;
        view.moment = moment;
        view.probeAngleDeg = angle;
        view.phase = core::BeatPhase::EndSystole;
        addEntry(document, "sop-" + key, view);
        core::Drawing width;
        width.role = core::DrawingRole::LandingWidth;
        width.site = core::PictureSite{"sop-" + key, 7 + static_cast<int>(angle) / 45};
        width.points = {{100.0, 100.0}, {160.0, 120.0}};
        width.evidence = "sop-" + key;
        addEntry(document, "w-" + key, width);
        inputs.push_back("evidence/sop-" + key);
        inputs.push_back("drawing/w-" + key);
    }
    return inputs;
}

} // namespace

std::string demoChartText() {
    return app::readChartFile(app::demoCharts().front().path).value().text;
}

void recordValues(app::CaseDocument& document, const std::string& group,
                  const std::vector<std::pair<std::string, double>>& values, const std::vector<std::string>& inputs) {
    core::SetValues edit{{}, group};
    core::Provenance provenance;
    provenance.frame = 7;
    const auto shared = std::make_shared<const core::Provenance>(provenance);
    for (const auto& [id, mm] : values) {
        core::RecordedValue value;
        value.group = group;
        value.id = id;
        value.unit = "mm";
        value.estimate = {mm, {0.6, 0.3, 0.0, 0.2}, "ellipse through four angles"};
        value.provenance = shared;
        for (const std::string& input : inputs)
            value.inputs.push_back({input, core::revisionOf(document.record(), input)});
        edit.values.push_back(std::move(value));
    }
    document.apply(edit);
}

void addCourse(app::CaseDocument& document) {
    using S = core::Stage;
    constexpr auto mr = core::Condition::MitralRegurgitation;
    addMoment(document, "ct-day", S::BeforeProcedure, 17, 30, core::PressureSource::Echo, mr, "2026-03-02T10:00:00+01:00");
    addMoment(document, "start", S::BeforeRepair, 19, 36, core::PressureSource::Direct, mr, "2026-03-09T08:40:00+01:00");
    addMoment(document, "clipped", S::AfterRepair, 9, 13, core::PressureSource::Direct, core::Condition::Other,
              "2026-03-09T10:20:00+01:00");
    if (document.record().images) {
        core::Evidence ct;
        ct.kind = core::EvidenceKind::Ct;
        ct.seriesUid = document.record().images->seriesUid;
        ct.moment = "ct-day";
        ct.phase = core::BeatPhase::EndSystole;
        addEntry(document, ct.seriesUid, ct);
    }
    const auto before = addViews(document, "start", S::BeforeRepair);
    recordValues(document, "echo/start",
                 {{"landing/perimeter-derived-diameter", 17.9}, {"landing/longest-diameter", 20.4},
                  {"landing/shortest-diameter", 15.2}, {"landing/largest-of-views", 20.1}, {"depth", 27.0}},
                 before);
    const auto after = addViews(document, "clipped", S::AfterRepair);
    recordValues(document, "echo/clipped",
                 {{"landing/perimeter-derived-diameter", 15.6}, {"landing/longest-diameter", 16.1},
                  {"landing/shortest-diameter", 13.9}, {"landing/largest-of-views", 16.0}, {"depth", 25.1}},
                 after);
    core::Evidence run;
    run.kind = core::EvidenceKind::Fluoroscopy;
    run.sopInstanceUid = "sop-run";
    run.stage = S::AfterRepair;
    run.moment = "clipped";
    addEntry(document, "sop-run", run);
    core::Drawing chord;
    chord.role = core::DrawingRole::LandingWidth;
    chord.site = core::PictureSite{"sop-run", 12};
    chord.points = {{200.0, 210.0}, {260.0, 230.0}};
    chord.evidence = "sop-run";
    addEntry(document, "w-run", chord);
    recordValues(document, "fluoroscopy/clipped", {{"landing/single-view", 16.8}}, {"evidence/sop-run", "drawing/w-run"});

    core::TypedReading typed;
    typed.observation.quantity = core::Quantity::LandingZoneLongestDiameter;
    typed.observation.modality = core::Modality::Echo3d;
    typed.observation.derivation = core::Derivation::Contour;
    typed.observation.state = "clipped";
    typed.observation.valueMm = 17.4;
    typed.observation.standardUncertaintyMm = 0.7;
    typed.note = "from the echo report";
    document.push(std::make_unique<app::SetTypedReading>(document, "r1", typed));

    core::StasisFinding smoke;
    smoke.stage = S::BeforeRepair;
    smoke.echoContrastGrade = 1;
    smoke.thrombus = false;
    smoke.emptyingVelocityCmPerS = 34;
    smoke.seenBy = "reader A";
    document.push(std::make_unique<app::SetStasis>(document, "s1", smoke));
    smoke.stage = S::AfterRepair;
    smoke.echoContrastGrade = 2;
    smoke.emptyingVelocityCmPerS = 18;
    smoke.lookedAtAgain = true;
    document.push(std::make_unique<app::SetStasis>(document, "s2", smoke));
}

void addCtValues(app::CaseDocument& document) {
    core::ImagesUsed images;
    images.seriesUid = "2.25.100";
    images.phasePercent = 45.0;
    images.phaseLabel = "45 %";
    app::setFirstImages(document, images);
    document.apply(core::SetValues{core::recordedValues(syntheticMeasurement(), document.record(),
                                                        std::make_shared<const core::Provenance>())});
}

void addChart(app::CaseDocument& document) {
    document.push(std::make_unique<app::LoadChart>(document, demoChartText(), "demo-plug.json"));
    document.push(std::make_unique<app::SetSizingPressures>(document, 12.0, 6.0, 18.0));
    document.push(std::make_unique<app::SetPressureCause>(document, core::PressureChange::Lasting, false));
}

void addScores(app::CaseDocument& document) {
    core::StrokeItems stroke;
    stroke.ageYears = 78;
    stroke.sex = core::Sex::Female;
    stroke.heartFailure = true;
    stroke.hypertension = true;
    document.push(std::make_unique<app::SetStrokeItems>(document, stroke));
    core::BleedingItems bleeding;
    bleeding.ageYears = 78;
    bleeding.bleeding = true;
    document.push(std::make_unique<app::SetBleedingItems>(document, bleeding));
}

void addRelease(app::CaseDocument& document) {
    core::ReleaseState look;
    look.stage = core::Stage::DeployedAttached;
    look.time = "2026-03-09T11:05:00+01:00";
    using Q = core::ReleaseQuantity;
    const auto finding = [&](Q quantity, double value, const char* view, std::optional<double> u = {}) {
        core::ReleaseFinding f;
        f.quantity = quantity;
        f.value = value;
        f.view = view;
        f.seenBy = "reader A";
        f.standardUncertainty = u;
        look.findings.push_back(f);
    };
    finding(Q::ImplantWidth, 20.1, "45 degrees", 0.5);
    finding(Q::JetWidth, 2.0, "45 degrees");
    finding(Q::ClearanceCircumflex, 3.0, "90 degrees", 0.8);
    finding(Q::Effusion, 0.0, "");
    document.push(std::make_unique<app::SetReleaseLook>(document, "l1", look));
    look.stage = core::Stage::AfterRelease;
    look.time = "2026-03-09T11:25:00+01:00";
    look.findings[1].value = 6.0;
    document.push(std::make_unique<app::SetReleaseLook>(document, "l2", look));
}

} // namespace gauge::fixture
