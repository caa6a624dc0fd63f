#include "core/record/without_identity.h"

#include "tests/core/record/random_edits.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

using namespace gauge::core;
using testing::HasSubstr;
using testing::Not;

namespace {

IdentityReplacement replacement() {
    return {[](std::string_view uid) { return "9." + std::to_string(std::hash<std::string_view>{}(uid) % 1000000007); },
            [](std::string_view) { return std::string("2001-01-01"); }, "P0123456789AB"};
}

/// Every word that a person could have typed is "Wanda", every UID starts with 1.77., every time is of 2031.
CaseRecord talkative() {
    CaseRecord r;
    r.images = ImagesUsed{"1.77.1", 45.0, "45 %", "1.77.2", 1, {{"later", "Wanda"}}};
    r.evidence["1.77.3"] = {{EvidenceKind::EchoCine, "1.77.4", "1.77.3", Stage::BeforeRepair, "Wanda asleep", 45.0, BeatPhase::EndSystole,
                             "2031-02-03T10:00:00+01:00", "Wanda's heart"},
                            2};
    Moment moment;
    moment.circulation.state = "Wanda asleep";
    moment.circulation.time = "2031-02-03T10:00:00+01:00";
    moment.circulation.meanPressureMmHg = 9.0;
    r.moments["Wanda asleep"] = {moment, 3};
    TypedReading typed;
    typed.observation.state = "Wanda asleep";
    typed.observation.valueMm = 21.0;
    typed.note = "told by Wanda";
    r.readings["from Wanda"] = {typed, 4};
    Drawing drawing;
    drawing.site = PictureSite{"1.77.3", 7};
    drawing.points = {{1, 2}, {3, 4}};
    drawing.evidence = "1.77.3";
    drawing.label = "Wanda's neck";
    r.drawings["1"] = {drawing, 5};
    PoseLandmark landmark;
    landmark.echo.sopInstanceUid = "1.77.3";
    landmark.label = "Wanda";
    r.landmarks["1"] = {landmark, 6};
    r.scales["1.77.3"] = {PictureScale{}, 7};
    ReleaseState look;
    look.time = "2031-02-03T11:00:00+01:00";
    look.findings = {{ReleaseQuantity::JetWidth, 1.0, 0.5, "45 degrees", "", "Wanda", "1.77.3 frame 2"}};
    r.release["1"] = {look, 8};
    StasisFinding stasis;
    stasis.seenBy = "Wanda";
    r.stasis["1"] = {stasis, 9};
    SizingChoice choice;
    choice.chartSource = "/home/wanda/Wanda/demo.json";
    choice.chartText = "{}";
    r.sizing = {choice, 10};
    Patient patient{"Winterbottom^Wanda", "INV-998877", "19510203", "F", "Wanda again", {"Wanda", "teaching"}};
    r.patient = {patient, 11};
    r.decision = {Decision{"Wanda gets it", "22", "Dr Wanda", "2031-02-03T12:00:00+01:00"}, 12};
    RecordedValue value;
    value.id = "landing/longest-diameter";
    value.group = "echo/Wanda asleep";
    value.unit = "mm";
    value.estimate.value = 22.25;
    value.inputs = {{"drawing/1", 5}, {"evidence/1.77.3", 2}, {"moment/Wanda asleep", 3}, {"reading/from Wanda", 4}};
    value.provenance = std::make_shared<const Provenance>(
        Provenance{{"1.77.3"}, "1.77.2", "45 %", "before the repair", "Wanda", "2031-02-03T10:10:00+01:00", 7});
    value.unknown = {{"later", "Wanda"}};
    r.values = {value};
    r.unknown = {{"later", "Wanda"}};
    return r;
}

} // namespace

TEST(WithoutIdentity, LeavesNoWordUidOrTimeOfThePerson) {
    const auto out = withoutIdentity(talkative(), replacement());
    const std::string text = caseText(out.file);
    for (const char* trace : {"Wanda", "wanda", "Winterbottom", "1.77.", "2031-", "INV-998877", "19510203", "teaching"})
        EXPECT_THAT(text, Not(HasSubstr(trace)));
    ASSERT_EQ(out.notices.size(), 1u);
    EXPECT_THAT(out.notices[0].text, HasSubstr("labels, notes and other words"));
}

TEST(WithoutIdentity, KeepsWhatWasMeasuredAndWhatItHangsOn) {
    const auto out = withoutIdentity(talkative(), replacement()).file.record;
    ASSERT_EQ(out.values.size(), 1u);
    EXPECT_EQ(out.values[0].estimate.value, 22.25);
    EXPECT_EQ(out.values[0].group, "echo/moment-1");
    EXPECT_FALSE(isStale(out, out.values[0])) << "current values stay current";
    EXPECT_EQ(out.values[0].inputs.size(), 4u);
    EXPECT_EQ(out.moments.at("moment-1").content.circulation.meanPressureMmHg, 9.0);
    EXPECT_EQ(out.evidence.begin()->second.content.moment, "moment-1");
    const Drawing& drawing = out.drawings.at("1").content;
    EXPECT_EQ(std::get<PictureSite>(drawing.site).sopInstanceUid, out.evidence.begin()->first) << "pictures are still found";
    EXPECT_EQ(out.patient->content.id, "P0123456789AB");
    EXPECT_EQ(out.patient->content.sex, "F");
    EXPECT_EQ(out.sizing->content.chartSource, "demo.json");
}

RC_GTEST_PROP(WithoutIdentity, IsACaseThatItsJournalBuilds, ()) {
    const CaseRecord record = replay(testing_edits::journal());
    const auto out = withoutIdentity(record, replacement()).file;
    CaseRecord built = replay(out.journal);
    RC_ASSERT(built == out.record);
    const auto read = caseFromJson(caseText(out));
    RC_ASSERT(read.has_value());
    RC_ASSERT(read->record == out.record);
}

RC_GTEST_PROP(WithoutIdentity, ChangesNoValueAndNoStaleness, ()) {
    const CaseRecord record = replay(testing_edits::journal());
    const auto out = withoutIdentity(record, replacement()).file.record;
    RC_ASSERT(out.values.size() == record.values.size());
    std::vector<double> before, after;
    std::size_t staleBefore = 0, staleAfter = 0;
    for (std::size_t n = 0; n < record.values.size(); ++n) {
        before.push_back(record.values[n].estimate.value);
        after.push_back(out.values[n].estimate.value);
        staleBefore += isStale(record, record.values[n]) ? 1 : 0;
        staleAfter += isStale(out, out.values[n]) ? 1 : 0;
    }
    std::sort(before.begin(), before.end());
    std::sort(after.begin(), after.end());
    RC_ASSERT(before == after);
    RC_ASSERT(staleBefore == staleAfter);
}
