#include "core/record/case_json.h"

#include "tests/core/record/random_edits.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace gauge::core;
using ::testing::HasSubstr;

namespace {

CaseFile smallCase() {
    CaseFile file;
    file.journal.append(SetMark{MarkKind::Tip, Mark{{Eigen::Vector3d(1, 2, 3)}, 1, UnknownFields::object()}},
                        "reader", "2031-02-03T10:00:00+01:00");
    file.record = replay(file.journal);
    return file;
}

std::string messageFor(const nlohmann::json& json) {
    const auto file = caseFromJson(json.dump());
    return file ? "read" : file.error().message;
}

} // namespace

TEST(CaseJson, ComesBackAsItWas) {
    EXPECT_TRUE(rc::check("round trip", [] {
        CaseFile file;
        file.journal = testing_edits::journal();
        file.record = replay(file.journal);
        file.unknown = testing_edits::unknown();
        const auto read = caseFromJson(caseText(file));
        RC_ASSERT(read.has_value());
        RC_ASSERT(*read == file);
    }));
}

TEST(CaseJson, EveryEditOfEveryKindComesBackAsItWas) {
    for (std::size_t kind = 0; kind < std::variant_size_v<Edit>; ++kind)
        EXPECT_TRUE(rc::check("round trip of an edit", [kind] {
            const Edit edit = testing_edits::editOfKind(kind, 7);
            const nlohmann::json text = nlohmann::json::parse(toJson(edit).dump());
            const auto read = editFromJson(text);
            if (!read) RC_FAIL(read.error().message);
            RC_ASSERT(*read == edit);
        })) << kind;
}

TEST(CaseJson, NamesEachEditByTheInputThatItSets) {
    EXPECT_EQ(toJson(Edit(SetEntry<Drawing>{"7", {}}))["id"], "drawing/7");
    EXPECT_EQ(toJson(Edit(SetSingle<SizingChoice>{}))["id"], "sizing");
    EXPECT_EQ(toJson(Edit(SetEntry<Drawing>{"7", {}}))["entry"], nullptr);
}

TEST(CaseJson, KeepsUnknownFieldsOfEntriesAlsoWithinTheirObjects) {
    CaseFile file = smallCase();
    Entry<Drawing> drawing;
    drawing.content.site = PictureSite{"2.25.77", 3};
    drawing.revision = 2;
    file.record.drawings.emplace("1", drawing);
    file.record.patient.emplace();
    file.record.moments["rest"].content.circulation.state = "rest";
    nlohmann::json json = toJson(file);
    json["record"]["drawings"]["1"]["colour"] = "red";
    json["record"]["drawings"]["1"]["site"]["picture"]["region"] = 2;
    json["record"]["patient"]["height_cm"] = 171;
    json["record"]["moments"]["rest"]["circulation"]["lactate"] = 1.2;
    const auto read = caseFromJson(json.dump());
    ASSERT_TRUE(read) << read.error().message;
    EXPECT_EQ(toJson(*read), json);
}

TEST(CaseJson, ReadsVersionOne) {
    const auto read = caseFromJson(R"({"format":"ostium-gauge/case/1","record":{"images":null,"ostium":null,
        "marks":{"tip":{"point_lps_mm":[1.0,2.0,3.0],"revision":1}},
        "landing":{"depths_mm":[10.0],"plug_mm":null,"revision":0},
        "values":{"sources":[{"sop_instance_uids":["2.25.1"]}],"list":[{"id":"ostium/area","unit":"mm2","value":300.0,
            "components":{"edge":1.0,"plane":1.0,"observer":0.0,"scale":0.0},"method":"contour",
            "inputs":[{"id":"mark/tip","revision":1}],"source":0}]}},
        "journal":[{"sequence":1,"author":"reader","time":"","change":{"edit":"set-mark","mark":"tip",
            "content":{"point_lps_mm":[1.0,2.0,3.0],"revision":1}}},
            {"sequence":2,"author":"reader","time":"","change":{"edit":"set-values","values":{"sources":[],"list":[]}}}]})");
    ASSERT_TRUE(read) << read.error().message;
    EXPECT_EQ(read->record.marks.at(MarkKind::Tip).point.mm, Eigen::Vector3d(1, 2, 3));
    EXPECT_EQ(read->record.values.at(0).group, "ct");
    EXPECT_FALSE(isStale(read->record, read->record.values.at(0)));
    EXPECT_EQ(read->journal.nextSequence(), 3u);
    EXPECT_EQ(toJson(*read)["format"], "ostium-gauge/case/2");
}

TEST(CaseJson, KeepsFieldsThatItDoesNotKnow) {
    nlohmann::json json = toJson(smallCase());
    json["later"] = 1;
    json["record"]["pressures"] = {{"mean_mmhg", 12}};
    json["record"]["marks"]["tip"]["seen_by"] = "two readers";
    json["journal"][0]["device"] = "tablet";
    const auto read = caseFromJson(json.dump());
    ASSERT_TRUE(read) << read.error().message;
    EXPECT_EQ(toJson(*read), json);
}

TEST(CaseJson, WritesEachSourceOnce) {
    const auto source = std::make_shared<const Provenance>(Provenance{{"2.25.1"}, "", "45 %", "", "", ""});
    CaseRecord record;
    for (int i = 0; i < 3; ++i)
        record.values.push_back(testing_edits::value(i, 1.0, 1, source));
    EXPECT_EQ(toJson(record)["values"]["sources"].size(), 1u);
}

TEST(CaseJson, AValueThatIsNotFiniteStaysUnmeasured) {
    CaseFile file = smallCase();
    file.record.values.push_back(
        testing_edits::value(1, std::nan(""), 1, std::make_shared<const Provenance>()));
    const auto read = caseFromJson(caseText(file));
    ASSERT_TRUE(read);
    EXPECT_TRUE(std::isnan(read->record.values.at(0).estimate.value));
}

TEST(CaseJson, RefusesANewerVersionInWords) {
    nlohmann::json json = toJson(smallCase());
    json["format"] = "ostium-gauge/case/3";
    EXPECT_EQ(messageFor(json),
              "Cannot read the case: it was written in version 3 of the format, and this program reads "
              "up to version 2. Open it with a newer Ostium Gauge.");
}

TEST(CaseJson, RefusesWhatIsNoCase) {
    EXPECT_THAT(caseFromJson("{\"format\":").error().message,
                HasSubstr("the file is no JSON; it may be damaged or cut short"));
    EXPECT_THAT(messageFor({{"format", "ostium-gauge/measure/1"}}),
                HasSubstr("its format is \"ostium-gauge/measure/1\", not a case of Ostium Gauge"));
    EXPECT_THAT(messageFor({{"format", "ostium-gauge/case/one"}}), HasSubstr("whose version is no number"));
    EXPECT_THAT(messageFor(nlohmann::json::array()),
                HasSubstr("the file is array where an object is needed"));
    EXPECT_EQ(caseFromJson("").error().code, ErrorCode::RecordUnreadable);
}

TEST(CaseJson, NamesTheFieldThatIsWrong) {
    const nlohmann::json good = toJson(smallCase());
    nlohmann::json json = good;
    json["record"]["marks"]["tip"]["point_lps_mm"] = {1, 2};
    EXPECT_THAT(messageFor(json),
                HasSubstr("record.marks.tip.point_lps_mm has 2 numbers where three are needed"));
    json = good;
    json["record"]["marks"]["tip"]["point_lps_mm"] = "1 2 3";
    EXPECT_THAT(messageFor(json),
                HasSubstr("record.marks.tip.point_lps_mm holds string where a list is needed"));
    json = good;
    json["record"].erase("landing");
    EXPECT_THAT(messageFor(json), HasSubstr("record.landing is absent; an object is needed"));
    json = good;
    json["record"]["marks"]["nose"] = good["record"]["marks"]["tip"];
    EXPECT_THAT(messageFor(json), HasSubstr("record.marks.nose is no mark that this version knows"));
    json = good;
    json["record"]["ostium"] = {
        {"point_lps_mm", {0, 0, 0}}, {"normal_lps", {0, 0, 2}}, {"confirmed", true}, {"revision", 1}};
    EXPECT_THAT(messageFor(json),
                HasSubstr("record.ostium.normal_lps has the length 2.000000 where a unit vector is needed"));
    json = good;
    json["journal"][0]["sequence"] = -1;
    EXPECT_THAT(messageFor(json),
                HasSubstr("journal[0].sequence holds number where a whole number of at least 0 is needed"));
    json = good;
    json["journal"][0]["change"]["edit"] = "turn-upside-down";
    EXPECT_THAT(messageFor(json),
                HasSubstr("\"turn-upside-down\", which is no edit that this version knows"));
    json = good;
    json["journal"][0]["change"] = {{"edit", "set-entry"}, {"id", "guess/1"}, {"entry", nullptr}};
    EXPECT_THAT(messageFor(json), HasSubstr("\"guess/1\", which is no entry that this version knows"));
}

TEST(CaseJson, NamesTheFieldOfAnEntryThatIsWrong) {
    CaseFile file = smallCase();
    Entry<Drawing> drawing;
    drawing.content.site = SectionSite{};
    file.record.drawings.emplace("1", drawing);
    file.record.moments["rest"].content.circulation.state = "rest";
    const nlohmann::json good = toJson(file);
    ASSERT_EQ(messageFor(good), "read");
    const auto with = [&](const char* path, const nlohmann::json& value) {
        nlohmann::json json = good;
        json[nlohmann::json::json_pointer(path)] = value;
        return messageFor(json);
    };
    EXPECT_THAT(with("/record/drawings/1/kind", "sphere"),
                HasSubstr("record.drawings.1.kind is \"sphere\"; it must be one of straight, curve, angle, area"));
    EXPECT_THAT(with("/record/drawings/1/site/section/frame/u_lps", {0, 2, 0}),
                HasSubstr("record.drawings.1.site.section.frame.u_lps, v_lps and normal_lps are not at right angles"));
    EXPECT_THAT(with("/record/drawings/1/site/picture", {{"sop_instance_uid", ""}, {"frame", 0}}),
                HasSubstr("record.drawings.1.site.picture or section is needed, one of the two"));
    EXPECT_THAT(with("/record/drawings/1/points", {{1, 2}, {3}}),
                HasSubstr("record.drawings.1.points[1] is no pair of numbers"));
    EXPECT_THAT(with("/record/moments/rest/circulation/state", "walk"),
                HasSubstr("record.moments.rest describes the moment \"walk\", not \"rest\""));
    EXPECT_THAT(with("/record/moments/rest/circulation/rhythm", "waltz"), HasSubstr("circulation.rhythm is \"waltz\""));
}
