#include "core/sizing/observations_file.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

using namespace gauge::core;
using nlohmann::json;
using testing::AllOf;
using testing::HasSubstr;

namespace {

json reading() {
    return {{"quantity", "landing_zone_perimeter_derived_diameter"},
            {"modality", "echo-2d"},
            {"derivation", "ellipse-from-angles"},
            {"stage", "after-repair"},
            {"state", "room"},
            {"condition", "other"},
            {"phase", "end-systole"},
            {"value_mm", 20.5},
            {"standard_uncertainty_mm", nullptr},
            {"pressure_mmHg", 7},
            {"pressure_source", "direct"},
            {"pressure_uncertainty_mmHg", nullptr},
            {"v_wave_mmHg", 15}};
}

json document() {
    return {{"format", "ostium-gauge/observations/1"},
            {"observations", {reading()}},
            {"depth_mm", 24.0},
            {"ostium_longest_mm", nullptr}};
}

std::string refusal(const json& file) {
    const auto read = readObservations(file.dump(), "day.json");
    if (read) return "accepted";
    EXPECT_EQ(read.error().code, ErrorCode::ObservationsInvalid);
    EXPECT_THAT(read.error().message, HasSubstr("day.json"));
    return read.error().message;
}

json with(const char* place, const json& value) {
    json file = document();
    file[json::json_pointer(place)] = value;
    return file;
}

} // namespace

TEST(ReadObservations, KeepsEveryField) {
    const auto read = readObservations(document().dump(), "x");
    ASSERT_TRUE(read);
    ASSERT_EQ(read->observations.size(), 1u);
    const Observation& o = read->observations[0];
    EXPECT_EQ(o.quantity, Quantity::LandingZonePerimeterDerivedDiameter);
    EXPECT_EQ(o.modality, Modality::Echo2d);
    EXPECT_EQ(o.derivation, Derivation::EllipseFromAngles);
    EXPECT_EQ(o.stage, Stage::AfterRepair);
    EXPECT_EQ(o.state, "room");
    EXPECT_EQ(o.condition, Condition::Other);
    EXPECT_EQ(o.phase, Phase::EndSystole);
    EXPECT_EQ(o.valueMm, 20.5);
    EXPECT_FALSE(o.standardUncertaintyMm);
    EXPECT_EQ(o.pressureMmHg, 7.0);
    EXPECT_EQ(o.pressureSource, PressureSource::Direct);
    EXPECT_FALSE(o.pressureUncertaintyMmHg);
    EXPECT_EQ(o.vWaveMmHg, 15.0);
    EXPECT_EQ(read->facts.depthMm, 24.0);
    EXPECT_FALSE(read->facts.ostiumLongestMm);
}

TEST(ReadObservations, TakesNullAndAbsentForTheSameAndLeavesUnknownFieldsAlone) {
    json file = document();
    for (const char* key : {"standard_uncertainty_mm", "pressure_mmHg", "pressure_source",
                            "pressure_uncertainty_mmHg", "v_wave_mmHg", "condition", "phase"})
        file["observations"][0].erase(key);
    file.erase("depth_mm");
    file["observations"][0]["remark"] = "seen by two";
    const auto read = readObservations(file.dump(), "x");
    ASSERT_TRUE(read);
    EXPECT_EQ(read->observations[0].condition, Condition::Other);
    EXPECT_EQ(read->observations[0].phase, Phase::Unknown);
    EXPECT_FALSE(read->observations[0].pressureMmHg);
    EXPECT_FALSE(read->facts.depthMm);
}

TEST(ReadObservations, NamesFieldFindingAndWhatIsAllowed) {
    json file = document();
    file["observations"].push_back(reading());
    file["observations"].push_back(reading());
    file["observations"][2]["pressure_mmHg"] = "seven";
    EXPECT_THAT(refusal(file), AllOf(HasSubstr("observations[2].pressure_mmHg holds the text \"seven\""),
                                     HasSubstr("a number from 0.1 to 60")));
    EXPECT_THAT(refusal(with("/observations/0/value_mm", -3)),
                HasSubstr("observations[0].value_mm holds the number -3"));
    EXPECT_THAT(refusal(with("/observations/0/value_mm", nullptr)), HasSubstr("value_mm is null"));
    EXPECT_THAT(refusal(with("/observations/0/standard_uncertainty_mm", 0)),
                HasSubstr("standard_uncertainty_mm"));
    EXPECT_THAT(refusal(with("/observations/0/quantity", "width")),
                AllOf(HasSubstr("\"width\""), HasSubstr("ostium_longest_diameter, depth")));
    EXPECT_THAT(refusal(with("/observations/0/modality", "ct")),
                HasSubstr("CT, echo-2d, echo-3d, fluoroscopy"));
    EXPECT_THAT(refusal(with("/observations/0/derivation", 1)), HasSubstr("observations[0].derivation"));
    EXPECT_THAT(refusal(with("/observations/0/stage", "later")), HasSubstr("before-repair, after-repair"));
    EXPECT_THAT(refusal(with("/observations/0/state", "")), HasSubstr("observations[0].state is empty"));
    EXPECT_THAT(refusal(with("/observations/0/condition", "ill")),
                HasSubstr("mitral-regurgitation, hydrated, other"));
    EXPECT_THAT(refusal(with("/observations/0/phase", "45 %")), HasSubstr("end-systole, other, unknown"));
    EXPECT_THAT(refusal(with("/observations/0/pressure_source", "guess")), HasSubstr("procedure-start"));
    EXPECT_THAT(refusal(with("/observations/0/v_wave_mmHg", 5)), HasSubstr("below the mean pressure"));
    EXPECT_THAT(refusal(with("/observations", 4)), HasSubstr("observations holds the number 4; a list"));
    EXPECT_THAT(refusal(with("/observations/0", "x")), HasSubstr("observations[0] holds the text \"x\""));
    EXPECT_THAT(refusal(with("/format", "ostium-gauge/size/1")), HasSubstr("ostium-gauge/observations/1"));
    EXPECT_THAT(refusal(with("/depth_mm", "deep")), HasSubstr("depth_mm holds the text \"deep\""));
    json without = document();
    without.erase("observations");
    EXPECT_THAT(refusal(without), HasSubstr("observations is absent"));
}

TEST(ReadObservations, RefusesReadingsOfOneStateThatContradictEachOther) {
    json file = document();
    file["observations"].push_back(reading());
    file["observations"][1]["pressure_mmHg"] = 9;
    EXPECT_THAT(refusal(file), AllOf(HasSubstr("observations[1].pressure_mmHg holds 9"),
                                     HasSubstr("observations[0].pressure_mmHg"), HasSubstr("\"room\"")));
    file["observations"][1]["pressure_mmHg"] = nullptr; // the other reading's holds for both
    EXPECT_EQ(refusal(file), "accepted");
    file["observations"][1]["pressure_source"] = "wedge";
    EXPECT_THAT(refusal(file), HasSubstr("observations[1].pressure_source holds wedge"));
    file["observations"][1]["pressure_source"] = nullptr;
    file["observations"][1]["condition"] = "hydrated";
    EXPECT_THAT(refusal(file), HasSubstr("condition holds hydrated"));
}

TEST(ReadObservations, ReadsTheOptionalFacts) {
    json file = document();
    file["depth_is_lower_bound"] = true;
    file["regurgitation_may_recur"] = true;
    file["observations"][0]["beats"] = "mixed";
    file["section"] = {{"longest_mm", 24.0}, {"shortest_mm", 18.0}, {"longest_at_deg", 60}};
    file["bend"] = {{"turn_deg", 95}, {"neck_length_mm", 9.0}, {"width_mm", 15.0}, {"depth_mm", 12.0}};
    file["clearances"] = {
        {{"structure", "pulmonary-artery"}, {"from", "ostium-centre"}, {"distance_mm", 14.0}}};
    file["stasis"] = {{{"stage", "after-repair"},
                       {"echo_contrast_grade", 3},
                       {"sludge", false},
                       {"thrombus", false},
                       {"emptying_velocity_cm_s", 18},
                       {"enhancement_ratio", 0.4},
                       {"enhancement_phase", "delayed"},
                       {"looked_at_again", true},
                       {"seen_by", "reader 1"}}};
    const auto read = readObservations(file.dump(), "x");
    ASSERT_TRUE(read) << read.error().message;
    const AppendageFacts& f = read->facts;
    EXPECT_TRUE(f.depthIsLowerBound);
    EXPECT_TRUE(f.regurgitationMayRecur);
    EXPECT_EQ(f.mixedBeats, std::vector<std::size_t>{0});
    EXPECT_TRUE(f.section->angleKnown);
    EXPECT_EQ(f.bend->depthMm, 12.0);
    ASSERT_EQ(f.clearances.size(), 1u);
    EXPECT_EQ(f.clearances[0].structure, Structure::PulmonaryArtery);
    ASSERT_EQ(f.stasis.size(), 1u);
    EXPECT_EQ(f.stasis[0].echoContrastGrade, 3);
    EXPECT_EQ(f.stasis[0].thrombus, false);
    EXPECT_EQ(f.stasis[0].enhancementPhase, EnhancementPhase::Delayed);
    file["stasis"][0]["echo_contrast_grade"] = 2.5;
    EXPECT_THAT(refusal(file), HasSubstr("stasis[0].echo_contrast_grade"));
    file["stasis"][0]["echo_contrast_grade"] = 2;
    file["section"]["shortest_mm"] = 30.0;
    EXPECT_THAT(refusal(file), HasSubstr("section.shortest_mm holds 30"));
}
