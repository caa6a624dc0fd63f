#include "core/pressure/haemodynamics.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace gauge::core;
using testing::HasSubstr;

namespace {

HaemodynamicState whole() {
    HaemodynamicState s;
    s.stage = Stage::BeforeRepair;
    s.state = "before";
    s.time = "2026-03-02T09:30:00+01:00";
    s.meanPressureMmHg = 19.0;
    s.pressureSource = PressureSource::Direct;
    s.vWaveMmHg = 34.0;
    s.meanMitralGradientMmHg = 2.5;
    s.gradientSource = GradientSource::SpectralEnvelope;
    s.heartRatePerMinute = 78.0;
    s.rhythm = Rhythm::AtrialFibrillation;
    s.ventilation = Ventilation::Controlled;
    s.regurgitation = RegurgitationGrade::Severe;
    s.pulmonaryVeinFlow = PulmonaryVeinFlow::Reversed;
    return s;
}

std::string problem(nlohmann::json file) {
    const auto read = haemodynamicsFromJson(file);
    EXPECT_FALSE(read);
    return read ? "" : read.error().message;
}

std::vector<std::string> codes(const std::vector<Notice>& notices) {
    std::vector<std::string> out;
    for (const auto& n : notices)
        out.push_back(n.code);
    return out;
}

} // namespace

TEST(Haemodynamics, SurvivesItsJson) {
    HaemodynamicState bare;
    bare.stage = Stage::FollowUp;
    bare.state = "later";
    const std::vector states = {whole(), bare};
    const auto read = haemodynamicsFromJson(nlohmann::json::parse(toJson(states).dump()));
    ASSERT_TRUE(read) << read.error().message;
    EXPECT_EQ(*read, states);
    EXPECT_EQ(toJson(states)["states"][1].size(), 2u) << "what was not recorded is absent";
}

TEST(Haemodynamics, RefusesFilesInWords) {
    const std::vector one = {whole()};
    const auto good = toJson(one);
    EXPECT_THAT(problem(nlohmann::json::array()), HasSubstr("not an object"));
    auto file = good;
    file["format"] = "other";
    EXPECT_THAT(problem(file), HasSubstr("its format is not"));
    file = good;
    file["states"] = 3;
    EXPECT_THAT(problem(file), HasSubstr("no list \"states\""));
    file = good;
    file["states"][0]["rhythm"] = "chaotic";
    EXPECT_THAT(problem(file), HasSubstr("states[0]: rhythm is \"chaotic\"; it must be one of sinus, atrial-fibrillation"));
    file = good;
    file["states"][0]["v_wave_mmHg"] = -3;
    EXPECT_THAT(problem(file), HasSubstr("v_wave_mmHg is -3"));
    file = good;
    file["states"][0]["heart_rate_per_minute"] = "80";
    EXPECT_THAT(problem(file), HasSubstr("holds a string where a number is needed"));
    file = good;
    file["states"][0]["v_wave"] = 30;
    EXPECT_THAT(problem(file), HasSubstr("nobody knows the field \"v_wave\""));
    file = good;
    file["states"][0].erase("stage");
    EXPECT_THAT(problem(file), HasSubstr("stage is absent"));
    file = good;
    file["states"].push_back(good["states"][0]);
    EXPECT_THAT(problem(file), HasSubstr("states[1]: state \"before\" comes twice"));
}

TEST(Haemodynamics, QuestionsWhatCannotBe) {
    EXPECT_TRUE(plausibility(whole()).empty());
    auto s = whole();
    s.vWaveMmHg = 15.0;
    EXPECT_THAT(codes(plausibility(s)), testing::ElementsAre("v-wave-below-mean"));
    s = whole();
    s.meanPressureMmHg = 75.0;
    EXPECT_THAT(plausibility(s)[0].text, HasSubstr("75 mmHg (before the repair, state \"before\") lies outside 0 to 60 mmHg"));
    s = whole();
    s.meanMitralGradientMmHg = 22.0;
    EXPECT_THAT(plausibility(s)[0].text, HasSubstr("exceeds the left atrial mean pressure"));
    s = whole();
    s.heartRatePerMinute = 8.0;
    EXPECT_THAT(codes(plausibility(s)), testing::ElementsAre("implausible-rate"));
    s = whole();
    s.regurgitation = RegurgitationGrade::Mild;
    EXPECT_THAT(plausibility(s)[0].text, HasSubstr("graded mild"));
}

TEST(Haemodynamics, NamesWhatChanged) {
    auto after = whole();
    after.stage = Stage::AfterRepair;
    after.state = "after";
    after.meanPressureMmHg = 13.0;
    after.regurgitation = RegurgitationGrade::Mild;
    auto said = changes(whole(), after);
    ASSERT_EQ(said.size(), 2u);
    EXPECT_THAT(said[0].text, HasSubstr("fell from 19 to 13 mmHg"));
    EXPECT_THAT(said[1].text, HasSubstr("from severe to mild"));
    after.meanPressureMmHg = 20.0;
    EXPECT_THAT(changes(whole(), after)[0].text, HasSubstr("did not fall with the repair: from 19 to 20 mmHg"));
    after.ventilation = Ventilation::Spontaneous;
    EXPECT_EQ(changes(whole(), after).size(), 3u);
    EXPECT_TRUE(changes(whole(), whole()).empty());
}
