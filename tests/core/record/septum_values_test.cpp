#include "core/record/septum_values.h"

#include "core/record/case_json.h"
#include "core/record/without_identity.h"
#include "tests/core/access/upright_septum.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace gauge::core;
using gauge::test::uprightMarks;
using testing::HasSubstr;

namespace {

/// An appendage whose ostium's centre and axis are those of uprightTarget(20).
AppendageMeasurement appendage() {
    AppendageMeasurement m;
    m.ostium.section.center = {{20, 5, 0}};
    const AppendageTarget target = gauge::test::uprightTarget(20.0);
    for (int i = 0; i <= 40; ++i)
        m.axis.points.push_back(target.ostiumCentre + (0.5 * i) * target.axis);
    m.axis.lengthMm = 20.0;
    return m;
}

CaseRecord markedRecord() {
    CaseRecord record;
    record.images = ImagesUsed{"2.25.1", 45.0, "45 %", "2.25.2", 1, {}};
    record.marks[MarkKind::Atrium] = Mark{{{0, 0, 0}}, 2, {}};
    record.marks[MarkKind::Tip] = Mark{{{40, 0, 5}}, 3, {}};
    record.septumMarks = Entry<SeptumMarks>{uprightMarks(), 4, UnknownFields::object()};
    record.septumPlan = Entry<SeptumPlan>{{{}, PatientPoint{{-20, 5, 0}}}, 5, UnknownFields::object()};
    return record;
}

std::vector<RecordedValue> valuesOf(const CaseRecord& record, const AppendageMeasurement* measurement) {
    return septumValues(record, measurement, std::make_shared<const Provenance>());
}

const RecordedValue& named(const std::vector<RecordedValue>& values, const std::string& id) {
    for (const RecordedValue& value : values)
        if (value.id == id) return value;
    throw std::runtime_error("no value " + id);
}

} // namespace

TEST(SeptumValues, NameTheirDatumAndAreThoseOfTheCrossing) {
    const auto measured = appendage();
    const auto values = valuesOf(markedRecord(), &measured);
    ASSERT_EQ(values.size(), 5u);
    const RecordedValue& annulus = named(values, "crossing/over-annulus");
    EXPECT_EQ(annulus.group, kSeptumValues);
    EXPECT_EQ(annulus.unit, "mm");
    EXPECT_NEAR(annulus.estimate.value, 35.0, 1e-9);
    EXPECT_GT(annulus.estimate.components.observer, 0.0);
    EXPECT_THAT(annulus.estimate.method, HasSubstr("over the plane of the mitral annulus"));
    const RecordedValue& coaptation = named(values, "crossing/over-coaptation");
    EXPECT_NEAR(coaptation.estimate.value, 43.0, 1e-9);
    EXPECT_THAT(coaptation.estimate.method, HasSubstr("parallel to the septum"));
    EXPECT_NEAR(named(values, "crossing/ostium-distance").estimate.value, 40.0, 1e-9);
    EXPECT_NEAR(named(values, "crossing/arrival-angle").estimate.value, 20.0, 1e-6);
    EXPECT_EQ(named(values, "crossing/arrival-angle").unit, "deg");
    EXPECT_NEAR(named(values, "crossing/steered-arrival-angle").estimate.value, 0.0, 1e-9);
}

TEST(SeptumValues, HeightsNeedNoAppendage) {
    const auto values = valuesOf(markedRecord(), nullptr);
    ASSERT_EQ(values.size(), 2u);
    EXPECT_NEAR(named(values, "crossing/over-annulus").estimate.value, 35.0, 1e-9);
}

TEST(SeptumValues, AreNoneWhereNothingCanBeTold) {
    auto record = markedRecord();
    record.septumPlan->content.crossing.reset();
    EXPECT_TRUE(valuesOf(record, nullptr).empty());
    record.septumPlan->content.crossing = PatientPoint{{-20, 25, 0}}; // outside the fossa
    EXPECT_TRUE(valuesOf(record, nullptr).empty());
    record = markedRecord();
    record.septumMarks.reset();
    EXPECT_TRUE(valuesOf(record, nullptr).empty());
}

TEST(SeptumValues, AreStaleWhenWhatTheyRestOnChanges) {
    const auto measured = appendage();
    const CaseRecord record = markedRecord();
    const auto values = valuesOf(record, &measured);
    const auto stale = [&](const CaseRecord& now, const char* id) { return isStale(now, named(values, id)); };
    EXPECT_FALSE(stale(record, "crossing/over-annulus"));
    EXPECT_FALSE(stale(record, "crossing/arrival-angle"));

    CaseRecord changed = record;
    auto marks = uprightMarks();
    marks.annulus.front().mm.z() += 1.0;
    apply(changed, SetSingle<SeptumMarks>{Entry<SeptumMarks>{marks, 9, UnknownFields::object()}});
    for (const char* id : {"crossing/over-annulus", "crossing/over-coaptation", "crossing/ostium-distance", "crossing/arrival-angle"})
        EXPECT_TRUE(stale(changed, id)) << id;

    changed = record;
    apply(changed, SetMark{MarkKind::Tip, Mark{{{41, 0, 5}}, 9, {}}});
    EXPECT_FALSE(stale(changed, "crossing/over-annulus"));
    EXPECT_TRUE(stale(changed, "crossing/ostium-distance"));
    EXPECT_TRUE(stale(changed, "crossing/arrival-angle"));
    EXPECT_TRUE(stale(changed, "crossing/steered-arrival-angle"));

    changed = record;
    apply(changed, SetOstium{OstiumPlane{{{{21, 5, 0}}, {{1, 0, 0}}}, true, 9, {}}});
    EXPECT_TRUE(stale(changed, "crossing/arrival-angle"));

    changed = record;
    const Edit inverse = apply(changed, SetSingle<SeptumPlan>{Entry<SeptumPlan>{{{}, PatientPoint{{-20, 5, 4}}}, 9, UnknownFields::object()}});
    EXPECT_TRUE(stale(changed, "crossing/over-annulus"));
    apply(changed, inverse);
    EXPECT_FALSE(stale(changed, "crossing/over-annulus")) << "undone";
}

TEST(SeptumValues, MarksAndPlanComeBackFromTheFileAndStayWithoutIdentity) {
    CaseFile file;
    file.record = markedRecord();
    const auto back = caseFromJson(caseText(file));
    ASSERT_TRUE(back) << back.error().message;
    EXPECT_EQ(back->record.septumMarks, file.record.septumMarks);
    EXPECT_EQ(back->record.septumPlan, file.record.septumPlan);
    const auto stripped = withoutIdentity(file.record, {[](std::string_view) { return std::string("2.25.9"); },
                                                        [](std::string_view) { return std::string(); }, "P1"});
    EXPECT_EQ(stripped.file.record.septumMarks, file.record.septumMarks);
    EXPECT_EQ(stripped.file.record.septumPlan, file.record.septumPlan);
    EXPECT_EQ(replay(stripped.file.journal), stripped.file.record);
}

TEST(SeptumValues, ADamagedFileIsNamed) {
    nlohmann::json file = toJson(CaseFile{markedRecord(), {}, "", UnknownFields::object()});
    file["record"]["septum_marks"]["fossa_lps_mm"][1] = {1, 2};
    const auto back = caseFromJson(file.dump());
    ASSERT_FALSE(back);
    EXPECT_THAT(back.error().message, HasSubstr("record.septum_marks.fossa_lps_mm[1] is no place of three numbers"));
    file = toJson(CaseFile{markedRecord(), {}, "", UnknownFields::object()});
    file["record"]["septum_plan"]["datum"] = "floor";
    EXPECT_THAT(caseFromJson(file.dump()).error().message, HasSubstr("datum is \"floor\"; it must be one of annulus, coaptation"));
}
