#include "tests/dicomio/report/report_fixture.h"

#include <cmath>
#include <numbers>

namespace gauge::test {
namespace {

using namespace core;

template <class Content>
void put(Entries<Content>& entries, const std::string& id, Content content, Revision revision) {
    entries.emplace(id, Entry<Content>{std::move(content), revision});
}

template <class Content> void put(std::optional<Entry<Content>>& entry, Content content, Revision revision) {
    entry = Entry<Content>{std::move(content), revision};
}

std::vector<std::string> slices() {
    std::vector<std::string> uids;
    for (int i = 0; i < 20; ++i)
        uids.push_back("2.25.11" + std::to_string(100 + i));
    return uids;
}

RecordedValue value(const std::string& group, const std::string& id, const std::string& unit, double number,
                    UncertaintyComponents parts, std::vector<InputRevision> inputs,
                    std::shared_ptr<const Provenance> source) {
    RecordedValue made;
    made.group = group;
    made.id = id;
    made.unit = unit;
    made.estimate = {number, parts, "border at half height, smooth contour"};
    made.inputs = std::move(inputs);
    made.provenance = std::move(source);
    return made;
}

void addCtValues(CaseRecord& record) {
    const auto source = std::make_shared<const Provenance>(
        Provenance{slices(), kFrameOfReference, "45 %", "before the procedure", "Reader^Invented",
                   "2031-02-03T10:00:00+01:00", std::nullopt});
    const std::vector<InputRevision> inputs{{"images", 1}, {"ostium", 4}, {"mark/tip", 3}};
    const auto add = [&](const char* id, const char* unit, double number, UncertaintyComponents parts) {
        record.values.push_back(value("ct", id, unit, number, parts, inputs, source));
    };
    for (const std::string where : {"ostium", "landing-1"}) {
        const double scale = where == "ostium" ? 1.0 : 0.83;
        const auto put = [&](const char* what, const char* unit, double n, double edge, double plane) {
            add((where + "/" + what).c_str(), unit, n * scale, {edge, plane, 0.0, 0.0});
        };
        put("area", "mm2", 345.678901234567, 2.1, 4.2);
        put("perimeter", "mm", 67.1234567890123, 0.2, 0.4);
        put("longest-diameter", "mm", 24.0 + 1.0 / 3.0, 0.11, 0.31);
        put("shortest-diameter", "mm", 18.2, 0.12, 0.22);
        put("least-width", "mm", 18.1, 0.1, 0.2);
        put("mean-diameter", "mm", 21.25, 0.1, 0.2);
        put("perimeter-derived-diameter", "mm", 21.366, 0.07, 0.13);
        put("area-derived-diameter", "mm", 20.98, 0.06, 0.13);
        put("eccentricity-index", "1", 0.25, 0.01, 0.02);
    }
    add("landing-1/straight-depth", "mm", 9.87, {});
    add("depth/along-axis", "mm", 31.4159265358979, {0.3, 0.0, 0.0, 0.0});
    add("depth/from-ostium-plane", "mm", 27.1, {0.3, 0.1, 0.0, 0.0});
    add("volume", "mL", 8.125, {0.2, 0.1, 0.0, 0.0});
    add("turn/angle", "deg", 64.5, {});
    add("turn/at", "mm", 14.25, {});
    add("enhancement/atrium", "HU", 412.3, {});
    add("enhancement/tip", "HU", 380.0, {});
    add("enhancement/aorta", "HU", 402.5, {});
    add("enhancement/tip-to-aorta", "1", 0.944, {});
}

void addPictures(CaseRecord& record) {
    put(record.evidence, kCtSeries,
        Evidence{EvidenceKind::Ct,
                 kCtSeries,
                 "",
                 Stage::BeforeProcedure,
                 "ct day",
                 {},
                 BeatPhase::Unknown,
                 "",
                 "CT"},
        5);
    put(record.evidence, kEchoCine,
        Evidence{EvidenceKind::EchoCine, kEchoSeries, kEchoCine, Stage::AfterRepair, "after repair", 45.0,
                 BeatPhase::EndSystole, "", "45 degrees"},
        6);
    put(record.drawings, "1",
        Drawing{DrawingKind::Straight,
                DrawingRole::LandingWidth,
                PictureSite{kEchoCine, 7},
                {{120.0, 88.0}, {171.5, 140.25}},
                kEchoCine,
                "width at 45"},
        7);
    put(record.drawings, "2",
        Drawing{DrawingKind::Ellipse,
                DrawingRole::None,
                PictureSite{kEchoCine, 8},
                {{100.0, 100.0}, {110.0, 100.0}, {100.0, 124.0}},
                kEchoCine,
                ""},
        8);
    const SectionFrame frame =
        frameOf(Plane{{Eigen::Vector3d(12.5, -40.25, 101.0)}, {Eigen::Vector3d(1, 2, 3).normalized()}});
    put(record.drawings, "3",
        Drawing{DrawingKind::Area,
                DrawingRole::OstiumContour,
                SectionSite{frame, "ostium", 4},
                {{-8.0, -6.0}, {9.0, -5.0}, {8.0, 7.0}, {-7.0, 6.0}},
                "",
                "by hand"},
        9);
    put(record.contours, "landing-1",
        CorrectedContour{frame, {{-10, -8}, {11, -7}, {9, 8}, {-9, 9}}, "landing", 2}, 10);
    put(record.scales, kEchoCine,
        PictureScale{ScaleOrigin::HandCalibration, 3, {10.0, 20.0}, {10.0, 220.0}, 50.0, false, {}}, 11);
    put(record.landmarks, "1",
        PoseLandmark{{Eigen::Vector3d(1.25, 2.5, 3.75)}, {kEchoCine, 4}, {33.5, 44.25}, "ridge tip"}, 12);

    const auto echo = std::make_shared<const Provenance>(Provenance{
        {kEchoCine}, "", "end-systole", "after the repair", "Second^Reader", "2031-02-04T09:30:00+01:00", 7});
    record.values.push_back(
        value("drawing/1", "length", "mm", 21.75, {0.0, 0.0, 0.3, 0.25}, {{"drawing/1", 7}}, echo));
    record.values.push_back(
        value("drawing/1", "length-before", "mm", 99.0, {}, {{"drawing/1", 6}}, echo)); // stale
    record.values.push_back(value("echo/after repair", "landing/longest-diameter", "mm", 22.4,
                                  {0.0, 0.5, 0.4, 0.2}, {{"drawing/1", 7}}, echo));
    record.values.push_back(
        value("echo/after repair", "depth", "mm", 29.5, {0.0, 0.0, 0.6, 0.3}, {{"drawing/1", 7}}, echo));
}

void addCourse(CaseRecord& record) {
    Moment ct;
    ct.circulation.state = "ct day";
    put(record.moments, "ct day", ct, 13);
    Moment after;
    after.circulation.state = "after repair";
    after.circulation.stage = Stage::AfterRepair;
    after.circulation.meanPressureMmHg = 14.5;
    after.circulation.pressureSource = PressureSource::Direct;
    after.circulation.vWaveMmHg = 21.0;
    after.circulation.meanMitralGradientMmHg = 3.25;
    after.circulation.heartRatePerMinute = 72.0;
    after.circulation.rhythm = Rhythm::AtrialFibrillation;
    after.circulation.regurgitation = RegurgitationGrade::Mild;
    after.pressureUncertaintyMmHg = 1.5;
    put(record.moments, "after repair", after, 14);
    TypedReading reading;
    reading.observation.quantity = Quantity::LandingZoneLongestDiameter;
    reading.observation.modality = Modality::Echo2d;
    reading.observation.derivation = Derivation::LargestOfViews;
    reading.observation.stage = Stage::AfterRepair;
    reading.observation.state = "after repair";
    reading.observation.phase = Phase::EndSystole;
    reading.observation.valueMm = 22.9;
    reading.observation.standardUncertaintyMm = 0.8;
    reading.note = "from the ward's report";
    put(record.readings, "1", reading, 15);
    ReleaseState release;
    release.stage = Stage::DeployedAttached;
    release.time = "2031-02-04T11:00:00+01:00";
    release.findings = {{ReleaseQuantity::ImplantWidth, 24.2, 0.5, "45 degrees", "", "Echo reader",
                         std::string(kEchoCine) + " frame 3"},
                        {ReleaseQuantity::JetWidth, 1.5, {}, "90 degrees", "ridge side", "Echo reader", ""},
                        {ReleaseQuantity::VeinFlowFree, 1.0, {}, "", "", "Echo reader", ""}};
    put(record.release, "1", release, 16);
    StasisFinding stasis;
    stasis.thrombus = false;
    stasis.emptyingVelocityCmPerS = 31.0;
    stasis.echoContrastGrade = 1;
    stasis.seenBy = "Echo reader";
    put(record.stasis, "1", stasis, 17);
}

void addChoice(CaseRecord& record) {
    SizingChoice sizing;
    sizing.chartSource = "demo chart, invented";
    sizing.decisionPressureMmHg = 12.0;
    sizing.lowestMmHg = 8.0;
    sizing.highestMmHg = 18.0;
    sizing.size = "Demo 27";
    put(record.sizing, sizing, 18);
    Scores scores;
    scores.stroke = StrokeItems{71.0, Sex::Female, false, true, false, false, true};
    put(record.scores, scores, 19);
    put(record.patient, Patient{"Beispiel^Änne", "INV-0001", "19600229", "F", "teaching", {"demo"}}, 20);
    put(record.decision,
        Decision{"Close with Demo 27.\nCheck the ridge side.", "Demo 27", "Signer^Invented",
                 "2031-02-04T12:00:00+01:00"},
        21);
}

} // namespace

core::CaseRecord fullRecord() {
    CaseRecord record;
    record.images = ImagesUsed{kCtSeries, 45.0, "45 %", kFrameOfReference, 1};
    record.landing.depthsMm = {10.0};
    record.landing.revision = 2;
    record.marks[MarkKind::Tip] = Mark{{Eigen::Vector3d(30.0, -52.5, 99.125)}, 3};
    record.ostium =
        OstiumPlane{{{Eigen::Vector3d(12.5, -40.25, 101.0)}, {Eigen::Vector3d::UnitZ()}}, true, 4};
    addCtValues(record);
    addPictures(record);
    addCourse(record);
    addChoice(record);
    return record;
}

dicomio::ReportSources sourcesOf(const core::CaseRecord&) {
    dicomio::ReportSources sources;
    sources.study = {kStudy, "S1", "ACC1", "20310203", "095000", "Referrer^Invented", "LAA planning"};
    sources.organization = "Invented Hospital";
    sources.time = "2031-02-04T12:05:06.5+01:00";
    for (const std::string& uid : slices())
        sources.images.push_back({kStudy, kCtSeries, "1.2.840.10008.5.1.4.1.1.2", uid, "CT"});
    sources.images.push_back({"2.25.1999", kEchoSeries, "1.2.840.10008.5.1.4.1.1.3.1", kEchoCine, "US"});
    sources.images.push_back(
        {"2.25.1999", "2.25.2999", "1.2.840.10008.5.1.4.1.1.3.1", "2.25.2998", "US"}); // nothing rests on it
    sources.contours = {{"ostium", obliqueContour(96)}};
    sources.warnings = {"The CT was taken at another pressure than the decision's.",
                        "Größe zwischen zwei Bändern."};
    sources.cautions = {"For planning by licensed persons; the device's instructions decide."};
    return sources;
}

std::vector<core::PatientPoint> obliqueContour(int points) {
    const SectionFrame frame = frameOf(
        Plane{{Eigen::Vector3d(-112.345, 203.21, -987.654)}, {Eigen::Vector3d(0.3, -0.8, 0.5).normalized()}});
    std::vector<core::PatientPoint> out;
    for (int i = 0; i < points; ++i) {
        const double t = 2.0 * std::numbers::pi * i / points;
        out.push_back(frame.patientFromSection({12.0 * std::cos(t), 9.0 * std::sin(t)}));
    }
    return out;
}

} // namespace gauge::test
