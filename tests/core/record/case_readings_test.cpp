#include "core/record/case_readings.h"

#include "core/pressure/carried_value.h"
#include "core/sizing/sizing.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace gauge::core {
namespace {

RecordedValue valueOf(std::string group, std::string id, double mm, double u = 0.4) {
    RecordedValue value;
    value.group = std::move(group);
    value.id = std::move(id);
    value.unit = "mm";
    value.estimate = {mm, {u, 0, 0, 0}, "by hand"};
    value.provenance = std::make_shared<const Provenance>();
    return value;
}

Entry<Moment> moment(Stage stage, std::optional<double> mean, std::optional<double> vWave, Condition condition) {
    Moment m;
    m.circulation.stage = stage;
    m.circulation.meanPressureMmHg = mean;
    m.circulation.pressureSource = PressureSource::Direct;
    m.circulation.vWaveMmHg = vWave;
    m.condition = condition;
    return {m, 1, {}};
}

/// CT before the procedure, echo before and after a repair.
CaseRecord course() {
    CaseRecord record;
    record.images = ImagesUsed{};
    record.images->seriesUid = "1.2";
    record.images->phasePercent = 45.0;
    Evidence ct;
    ct.kind = EvidenceKind::Ct;
    ct.seriesUid = "1.2";
    ct.moment = "day-1";
    record.evidence["1.2"] = {ct, 2, {}};
    Evidence view;
    view.kind = EvidenceKind::EchoCine;
    view.phase = BeatPhase::EndSystole;
    record.evidence["9.1"] = {view, 3, {}};
    record.moments["day-1"] = moment(Stage::BeforeProcedure, std::nullopt, std::nullopt, Condition::MitralRegurgitation);
    record.moments["start"] = moment(Stage::BeforeRepair, 20.0, 38.0, Condition::MitralRegurgitation);
    record.moments["clipped"] = moment(Stage::AfterRepair, 9.0, 13.0, Condition::Other);
    record.values.push_back(valueOf("ct", "landing-1/longest-diameter", 24.6));
    record.values.push_back(valueOf("ct", "landing-1/perimeter-derived-diameter", 22.1));
    record.values.push_back(valueOf("ct", "landing-1/shortest-diameter", 19.5));
    record.values.push_back(valueOf("ct", "landing-1/straight-depth", 19.0));
    record.values.push_back(valueOf("ct", "depth/from-ostium-plane", 29.0));
    record.values.push_back(valueOf("ct", "turn/angle", 25.0));
    record.values.push_back(valueOf("ct", "turn/at", 14.0));
    record.values.push_back(valueOf("ct", "volume", 7.5));
    for (const char* m : {"clipped", "start"}) {
        const bool after = m == std::string("clipped");
        record.values.push_back(
            valueOf(std::string("echo/") + m, "landing/perimeter-derived-diameter", after ? 19.0 : 21.0, 0.9));
        record.values.push_back(valueOf(std::string("echo/") + m, "landing/largest-of-views", after ? 20.0 : 22.0, 0.9));
        record.values.back().inputs = {{"evidence/9.1", 3}};
    }
    return record;
}

const Observation* find(const CaseReadings& readings, std::string_view group, std::string_view id) {
    for (std::size_t i = 0; i < readings.origins.size(); ++i)
        if (readings.origins[i].group == group && readings.origins[i].values == std::vector{std::string(id)})
            return &readings.observations[i];
    return nullptr;
}

bool says(const CaseReadings& readings, std::string_view code) {
    return std::any_of(readings.notices.begin(), readings.notices.end(), [&](const Notice& n) { return n.code == code; });
}

TEST(CaseReadings, GiveEachReadingThePressureOfItsMoment) {
    const CaseReadings readings = caseReadings(course());
    const Observation* before = find(readings, "echo/start", "landing/perimeter-derived-diameter");
    const Observation* after = find(readings, "echo/clipped", "landing/perimeter-derived-diameter");
    ASSERT_TRUE(before && after);
    EXPECT_EQ(before->modality, Modality::Echo2d);
    EXPECT_EQ(before->derivation, Derivation::EllipseFromAngles);
    EXPECT_EQ(before->stage, Stage::BeforeRepair);
    EXPECT_EQ(before->state, "start");
    EXPECT_EQ(before->pressureMmHg, 20.0);
    EXPECT_EQ(before->vWaveMmHg, 38.0);
    EXPECT_EQ(before->condition, Condition::MitralRegurgitation);
    EXPECT_EQ(before->valueMm, 21.0);
    EXPECT_EQ(before->standardUncertaintyMm, 0.9);
    EXPECT_EQ(after->pressureMmHg, 9.0);
    EXPECT_EQ(after->stage, Stage::AfterRepair);
}

TEST(CaseReadings, PutCtFirstAndLeaveOutWhatIsNoReading) {
    const CaseReadings readings = caseReadings(course());
    // CT: longest, perimeter-derived, depth; echo: two of each moment.
    ASSERT_EQ(readings.observations.size(), 7u);
    ASSERT_EQ(readings.origins.size(), 7u);
    for (int i = 0; i < 3; ++i)
        EXPECT_EQ(readings.origins[static_cast<std::size_t>(i)].group, "ct");
    EXPECT_EQ(find(readings, "ct", "volume"), nullptr);
    EXPECT_EQ(find(readings, "ct", "landing-1/shortest-diameter"), nullptr);
    const Observation* ct = find(readings, "ct", "landing-1/perimeter-derived-diameter");
    ASSERT_TRUE(ct);
    EXPECT_EQ(ct->state, "day-1");
    EXPECT_EQ(ct->pressureMmHg, std::nullopt);
    EXPECT_EQ(ct->phase, Phase::EndSystole);
    EXPECT_TRUE(says(readings, "ct-phase-by-percent"));
}

TEST(CaseReadings, KeepViewsApartFromContours) {
    const CaseReadings readings = caseReadings(course());
    const Observation* views = find(readings, "echo/start", "landing/largest-of-views");
    ASSERT_TRUE(views);
    EXPECT_EQ(views->derivation, Derivation::LargestOfViews);
    EXPECT_EQ(views->quantity, Quantity::LandingZoneLongestDiameter);
    EXPECT_EQ(views->phase, Phase::EndSystole);
    // Nobody said the phase of the ellipse's frames: it names no evidence.
    EXPECT_EQ(find(readings, "echo/start", "landing/perimeter-derived-diameter")->phase, Phase::Unknown);
}

TEST(CaseReadings, TakeTheFactsFromCtAndStasis) {
    CaseRecord record = course();
    StasisFinding late;
    late.stage = Stage::AfterRepair;
    StasisFinding early;
    early.stage = Stage::BeforeProcedure;
    record.stasis["a"] = {late, 5, {}};
    record.stasis["b"] = {early, 6, {}};
    SizingChoice choice;
    choice.regurgitationMayRecur = true;
    record.sizing = Entry<SizingChoice>{choice, 7, {}};
    const AppendageFacts facts = caseReadings(record).facts;
    EXPECT_EQ(facts.depthMm, 29.0);
    EXPECT_EQ(facts.depthFromLandingZoneMm, 19.0);
    ASSERT_TRUE(facts.section);
    EXPECT_EQ(facts.section->longestMm, 24.6);
    EXPECT_EQ(facts.section->shortestMm, 19.5);
    EXPECT_FALSE(facts.section->angleKnown);
    ASSERT_TRUE(facts.bend);
    EXPECT_EQ(facts.bend->turnDeg, 25.0);
    EXPECT_EQ(facts.bend->neckLengthMm, 14.0);
    ASSERT_EQ(facts.stasis.size(), 2u);
    EXPECT_EQ(facts.stasis.front().stage, Stage::BeforeProcedure);
    EXPECT_TRUE(facts.regurgitationMayRecur);
}

TEST(CaseReadings, LeaveStaleValuesOutAndSaySo) {
    CaseRecord record = course();
    record.evidence["9.1"].revision = 8; // the view was changed since
    const CaseReadings readings = caseReadings(record);
    EXPECT_EQ(find(readings, "echo/start", "landing/largest-of-views"), nullptr);
    EXPECT_TRUE(find(readings, "echo/start", "landing/perimeter-derived-diameter"));
    const auto said = std::find_if(readings.notices.begin(), readings.notices.end(),
                                   [](const Notice& n) { return n.code == "stale-value-left-out"; });
    ASSERT_NE(said, readings.notices.end());
    EXPECT_NE(said->text.find("is left out: what it was measured on has changed since"), std::string::npos) << said->text;
    EXPECT_NE(said->text.find("20.0 mm"), std::string::npos) << said->text;
}

TEST(CaseReadings, TypedReadingsTakeTheirMomentToo) {
    CaseRecord record = course();
    TypedReading typed;
    typed.observation.quantity = Quantity::Depth;
    typed.observation.modality = Modality::Fluoroscopy;
    typed.observation.state = "clipped";
    typed.observation.valueMm = 26.0;
    typed.mixedBeats = true;
    record.readings["r1"] = {typed, 9, {}};
    typed.observation.state = "nowhere";
    record.readings["r2"] = {typed, 10, {}};
    const CaseReadings readings = caseReadings(record);
    ASSERT_EQ(readings.observations.size(), 9u);
    EXPECT_EQ(readings.origins[7].typed, "r1");
    EXPECT_EQ(readings.observations[7].pressureMmHg, 9.0);
    EXPECT_EQ(readings.observations[8].pressureMmHg, std::nullopt);
    EXPECT_EQ(readings.facts.mixedBeats, (std::vector<std::size_t>{7, 8}));
    EXPECT_TRUE(says(readings, "moment-unknown"));
}

TEST(CaseReadings, ACtWithoutMomentCountsAsUnmeasuredPressure) {
    CaseRecord record = course();
    record.evidence.erase("1.2");
    const CaseReadings readings = caseReadings(record);
    EXPECT_EQ(readings.observations.front().state, kCtState);
    EXPECT_TRUE(says(readings, "reading-without-moment"));
}

TEST(CaseReadings, PicturesWithoutMomentGoByTheirStage) {
    CaseRecord record = course();
    record.values.push_back(valueOf("echo/after-repair", "landing/perimeter-derived-diameter", 20.0));
    const Observation* o = nullptr;
    const CaseReadings readings = caseReadings(record);
    ASSERT_TRUE(o = find(readings, "echo/after-repair", "landing/perimeter-derived-diameter"));
    EXPECT_EQ(o->stage, Stage::AfterRepair);
    EXPECT_EQ(o->pressureMmHg, std::nullopt);
    EXPECT_FALSE(says(readings, "moment-unknown"));
}

TEST(CaseReadings, AnswerAChartThroughCoreSizing) {
    const CaseReadings readings = caseReadings(course());
    SizingQuestion question;
    question.chart.name = "two sizes";
    for (const auto& [name, nominal, accepts] : {std::tuple("small", 22.0, Band{16.0, 19.0}),
                                                 std::tuple("large", 26.0, Band{19.0, 22.5})}) {
        ChartSize size;
        size.name = name;
        size.nominalMm = nominal;
        size.acceptsMm = accepts;
        size.compressionPercent = {8.0, 25.0};
        question.chart.sizes.push_back(size);
    }
    question.observations = readings.observations;
    question.facts = readings.facts;
    question.decisionPressureMmHg = 12.0;
    question.whatNext.draws = 0;
    const auto answer = sizeImplant(question);
    ASSERT_TRUE(answer) << answer.error().message;
    EXPECT_GT(answer->diameter.medianMm, 19.0);
    EXPECT_LT(answer->diameter.medianMm, 23.0);
}

TEST(CarriedTo, ChangesByTheSlopeAlone) {
    Observation o;
    o.state = "s";
    o.phase = Phase::Other;
    o.modality = Modality::Echo2d;
    o.derivation = Derivation::EllipseFromAngles;
    o.valueMm = 22.0;
    o.standardUncertaintyMm = 0.8;
    o.pressureMmHg = 20.0;
    o.pressureUncertaintyMmHg = 0.0;
    Priors priors;
    priors.diameterSlope.mean = 0.4;
    priors.diameterSlope.sd = 1e-4;
    const std::array pressures{12.0, 20.0};
    const auto carried = carriedTo(o, pressures, PressureLaw::Logarithmic, priors);
    ASSERT_TRUE(carried) << carried.error().message;
    // D(12) = 22 + 0.4 * 12 ln(12/20) = 22 - 2.452 = 19.548 mm; no bias of echo enters.
    constexpr double kIntegrationMm = 0.01; // 1 % of the SD
    EXPECT_NEAR((*carried)[0].valueMm, 19.548, kIntegrationMm);
    EXPECT_NEAR((*carried)[0].changeMm, -2.452, kIntegrationMm);
    EXPECT_NEAR((*carried)[0].standardUncertaintyMm, 0.8, kIntegrationMm);
    EXPECT_NEAR((*carried)[1].valueMm, 22.0, kIntegrationMm);
    EXPECT_NEAR((*carried)[0].fromMmHg, 20.0, kIntegrationMm);
    EXPECT_TRUE((*carried)[0].pressureMeasured);
}

TEST(CarriedTo, AnUnknownPressureWidensTheAnswer) {
    Observation o;
    o.state = "s";
    o.valueMm = 22.0;
    o.standardUncertaintyMm = 0.5;
    const std::array pressures{12.0};
    const auto unknown = carriedTo(o, pressures, PressureLaw::Logarithmic, {});
    o.pressureMmHg = 12.0;
    o.pressureSource = PressureSource::Direct;
    const auto known = carriedTo(o, pressures, PressureLaw::Logarithmic, {});
    ASSERT_TRUE(unknown && known);
    EXPECT_FALSE(unknown->front().pressureMeasured);
    EXPECT_GT(unknown->front().changeSdMm, known->front().changeSdMm + 0.3);
    EXPECT_NEAR(known->front().changeMm, 0.0, 0.1);
}

} // namespace
} // namespace gauge::core
