#include "core/release/release_change.h"
#include "core/release/planned_seen.h"
#include "core/release/release_check.h"
#include "core/release/release_json.h"
#include "core/release/release_limits.h"

#include <algorithm>
#include <gmock/gmock.h>

using namespace gauge::core;
using testing::HasSubstr;
using Q = ReleaseQuantity;

namespace {

bool has(const std::vector<Notice>& notices, std::string_view code) {
    return std::any_of(notices.begin(), notices.end(), [&](const Notice& n) { return n.code == code; });
}

std::string textOf(const std::vector<Notice>& notices, std::string_view code) {
    for (const auto& n : notices)
        if (n.code == code) return n.text;
    return "";
}

ReleaseFinding seen(Q quantity, double value, std::string view = "", std::string side = "") {
    return {quantity, value, std::nullopt, std::move(view), std::move(side), "A. Reader", "1.2.3#7"};
}

/// A lobe-and-disc implant of 25.5 mm that sits well.
ReleaseState good() {
    ReleaseState s{Stage::DeployedAttached, "2026-03-02T10:15:00", true, {}};
    for (const char* view : {"45 degrees", "135 degrees"}) {
        s.findings.push_back(seen(Q::ImplantWidth, 22.5, view));
        s.findings.push_back(seen(Q::ShareBeyondCircumflex, 75, view));
        s.findings.push_back(seen(Q::LobeToNeckAngle, 8, view));
        s.findings.push_back(seen(Q::DiscSeparation, 3, view));
        s.findings.push_back(seen(Q::JetWidth, 0, view));
        s.findings.push_back(seen(Q::GapBeforePull, 0, view, "ridge side"));
        s.findings.push_back(seen(Q::GapAfterPull, 0.4, view, "ridge side"));
    }
    for (const auto& f : {seen(Q::UncoveredLobes, 0), seen(Q::ClearancePulmonaryArtery, 2.5), seen(Q::ClearanceMitralAnnulus, 6),
                          seen(Q::Effusion, 0), seen(Q::MitralGradient, 3.2), seen(Q::RegurgitationGrade, 1), seen(Q::VeinFlowFree, 1)})
        s.findings.push_back(f);
    return s;
}

ReleaseLimits discLimits() {
    ReleaseLimits l;
    l.hasDisc = true;
    l.nominalMm = 25.5;
    return l;
}

void set(ReleaseState& s, Q quantity, double value) {
    for (auto& f : s.findings)
        if (f.quantity == quantity) f.value = value;
}

} // namespace

TEST(CheckRelease, PassesAnImplantThatSitsWell) {
    const auto report = checkRelease(good(), discLimits());
    ASSERT_TRUE(report);
    for (const auto& n : report->notices)
        ADD_FAILURE() << n.code << ": " << n.text;
    EXPECT_TRUE(report->notSeen.empty());
}

TEST(CheckRelease, GroupsRowsByViewWithRangesAndWhoSawThem) {
    const auto report = checkRelease(good(), discLimits());
    ASSERT_TRUE(report);
    std::vector<std::string> views;
    for (const auto& r : report->rows) {
        if (views.empty() || views.back() != r.view) views.push_back(r.view);
        EXPECT_EQ(r.seenBy, "A. Reader");
    }
    EXPECT_EQ(views, (std::vector<std::string>{"45 degrees", "135 degrees", ""}));
    const auto row = std::find_if(report->rows.begin(), report->rows.end(), [](const auto& r) { return r.what == "compression"; });
    // Clinical compression of 22.5 in 25.5 mm: 11.76 % [computed], not the DICOM ratio 0.8824.
    EXPECT_NEAR(row->value, 11.7647, 1e-4);
    EXPECT_EQ(*row->range->least, 8.0); // 8-20 %, Spencer 2015
    EXPECT_EQ(row->range->basis, RangeBasis::Published);
    EXPECT_EQ(row->verdict, RangeVerdict::Within);
}

TEST(CheckRelease, SaysWhatLiesOutsideItsRangeWithNumbers) {
    struct Case {
        Q quantity;
        double value;
        const char *code, *words;
    };
    for (const auto& c : {Case{Q::ShareBeyondCircumflex, 50, "lobe-short-of-circumflex", "50.0 %; at least 66.7 % (common practice, no source)"},
                          {Q::ImplantWidth, 25.0, "compression-low", "compression 2.0 %; 8.0 % to 20.0 % (published)"},
                          {Q::ImplantWidth, 19.0, "compression-high", "compression 25.5 %"},
                          {Q::LobeToNeckAngle, 41, "lobe-off-axis", "at most 30.0 degrees (an assumption)"},
                          {Q::DiscSeparation, 0, "disc-not-separated", "disc apart from the lobe 0.0 mm"},
                          {Q::UncoveredLobes, 1, "lobe-uncovered", "uncovered lobes 1; at most 0"},
                          {Q::JetWidth, 6, "jet-wide", "at most 5.0 mm (published)"},
                          {Q::ClearancePulmonaryArtery, 1.0, "clearance-small", "at least 1.5 mm (published)"},
                          {Q::VeinFlowFree, 0, "vein-flow-impeded", "is not free"},
                          {Q::Effusion, 4, "effusion-present", "effusion of 4.0 mm was seen by A. Reader"},
                          {Q::GapAfterPull, 2.5, "gap-grows-on-pull", "on the ridge side grows from 0.0 mm to 2.5 mm"}}) {
        ReleaseState s = good();
        set(s, c.quantity, c.value);
        const auto report = checkRelease(s, discLimits());
        ASSERT_TRUE(report);
        EXPECT_TRUE(has(report->notices, c.code)) << c.code;
        EXPECT_THAT(textOf(report->notices, c.code), HasSubstr(c.words));
    }
}

TEST(CheckRelease, WatchesTheSheathBeforeAndAfterTheInnerCatheterIsOut) {
    ReleaseState s{Stage::SheathInAppendage, "", false, {seen(Q::SheathTipDepth, -4, "RAO 30 CAU 20"), seen(Q::Effusion, 0)}};
    const auto before = checkRelease(s, discLimits());
    EXPECT_THAT(textOf(before->notices, "sheath-too-shallow"), HasSubstr("-4.0 mm; at least 0.0 mm"));
    EXPECT_THAT(textOf(before->notices, "sheath-too-shallow"), HasSubstr("before the inner catheter is withdrawn"));
    s.innerCatheterWithdrawn = true;
    EXPECT_THAT(textOf(checkRelease(s, discLimits())->notices, "sheath-too-shallow"), HasSubstr("do not push the bare sheath"));
    s.findings[0].value = 3;
    EXPECT_TRUE(checkRelease(s, discLimits())->notices.empty());
}

TEST(CheckRelease, NamesWhatWasNotLookedAt) {
    ReleaseState s = good();
    std::erase_if(s.findings, [](const auto& f) { return f.quantity == Q::VeinFlowFree || f.quantity == Q::DiscSeparation; });
    const auto report = checkRelease(s, discLimits());
    EXPECT_EQ(report->notSeen, (std::vector<Q>{Q::DiscSeparation, Q::VeinFlowFree}));
    EXPECT_THAT(textOf(report->notices, "release-checks-missing"), HasSubstr("disc apart from the lobe, pulmonary-vein flow free"));
    ReleaseLimits plug;
    plug.nominalMm = 25.5; // a plug has no disc to look at, and its lobe needs no share beyond the artery
    EXPECT_EQ(checkRelease(s, plug)->notSeen, (std::vector<Q>{Q::VeinFlowFree}));
}

TEST(CheckRelease, AsksForThrombusAndSeptumAtFollowUp) {
    const ReleaseState s{Stage::FollowUp, "", true, {seen(Q::DeviceThrombus, 1), seen(Q::SeptalHole, 4.5)}};
    const auto report = checkRelease(s, {});
    EXPECT_TRUE(has(report->notices, "device-thrombus"));
    EXPECT_THAT(textOf(report->notices, "septal-hole"), HasSubstr("4.5 mm"));
    EXPECT_THAT(report->notSeen, testing::Contains(Q::JetWidth));
}

TEST(CheckRelease, SaysThatAReadingIsNearItsLimit) {
    ReleaseState s = good();
    for (auto& f : s.findings)
        if (f.quantity == Q::JetWidth) {
            f.value = 5.5;
            f.standardUncertainty = 0.5;
        }
    const auto report = checkRelease(s, discLimits());
    EXPECT_THAT(textOf(report->notices, "jet-wide"), HasSubstr("uncertain enough for either side"));
}

TEST(CheckRelease, TakesTheChartsRange) {
    ReleaseLimits l = discLimits();
    l.compressionPercent = {12.0, 30.0, RangeBasis::Chart};
    l.mitralAnnulusMm = ReleaseRange{7.0, std::nullopt, RangeBasis::Chart};
    const auto report = checkRelease(good(), l);
    EXPECT_THAT(textOf(report->notices, "compression-low"), HasSubstr("(the chart)"));
    EXPECT_THAT(textOf(report->notices, "clearance-small"), HasSubstr("clearance to the mitral annulus 6.0 mm; at least 7.0 mm"));
    l.nominalMm = 0.0;
    EXPECT_THAT(checkRelease(good(), l).error().message, HasSubstr("nominal diameter must be above 0"));
}

TEST(ReleaseState, IsRefusedWithTheFindingNamed) {
    const auto message = [](ReleaseFinding f, Stage stage = Stage::FollowUp) {
        const auto r = validate({stage, "", false, {std::move(f)}});
        return r ? std::string() : r.error().message;
    };
    EXPECT_THAT(message(seen(Q::ShareBeyondCircumflex, 120)), HasSubstr("share of the lobe beyond the circumflex artery\": it is 120; 0 to 100"));
    EXPECT_THAT(message(seen(Q::JetWidth, -1)), HasSubstr("it is -1"));
    EXPECT_THAT(message(seen(Q::VeinFlowFree, 0.5)), HasSubstr("a whole number"));
    EXPECT_THAT(message(seen(Q::JetWidth, NAN)), HasSubstr("no number"));
    EXPECT_THAT(message({Q::JetWidth, 1, std::nullopt, "", "", "", ""}), HasSubstr("say who saw it"));
    EXPECT_THAT(message(seen(Q::JetWidth, 1), Stage::AfterRepair), HasSubstr("nothing is in the appendage yet"));
    EXPECT_EQ(message(seen(Q::SheathTipDepth, -5)), "");
}

TEST(JetClass, FollowsThePublishedClasses) {
    EXPECT_EQ(jetClass(0), JetClass::None);
    EXPECT_EQ(jetClass(0.1), JetClass::UpTo3);
    EXPECT_EQ(jetClass(3), JetClass::UpTo3);
    EXPECT_EQ(jetClass(3.1), JetClass::From3To5);
    EXPECT_EQ(jetClass(5), JetClass::From3To5);
    EXPECT_EQ(jetClass(5.1), JetClass::Over5);
}

TEST(CompareReleases, SpeaksOfWhatChanged) {
    ReleaseState later = good();
    later.stage = Stage::FollowUp;
    set(later, Q::RegurgitationGrade, 3);
    set(later, Q::MitralGradient, 6.1);
    set(later, Q::ImplantWidth, 23.1);
    set(later, Q::ShareBeyondCircumflex, 60);
    const auto changes = compareReleases(good(), later);
    ASSERT_TRUE(changes);
    EXPECT_EQ(changes->size(), 6u); // two views of width and share, one each of grade and gradient
    const auto notices = changeNotices(*changes);
    EXPECT_EQ(textOf(notices, "gradient-rises"),
              "mean mitral gradient 3.2 mmHg (deployed-attached, A. Reader) became 6.1 mmHg (follow-up, A. Reader).");
    EXPECT_TRUE(has(notices, "regurgitation-grows"));
    EXPECT_THAT(textOf(notices, "implant-moves"), HasSubstr("45 degrees: share of the lobe"));
    EXPECT_EQ(notices.size(), 4u); // a width alone is neither better nor worse
    EXPECT_TRUE(compareReleases(good(), good())->empty());
}

TEST(CompareReleases, SaysWhenAChangeIsWithinTheUncertainty) {
    ReleaseState a{Stage::AfterRelease, "", true, {seen(Q::Effusion, 2)}}, b{Stage::FollowUp, "", true, {seen(Q::Effusion, 3)}};
    a.findings[0].standardUncertainty = b.findings[0].standardUncertainty = 0.5;
    const auto changes = compareReleases(a, b);
    ASSERT_EQ(changes->size(), 1u);
    EXPECT_FALSE(changes->front().certain);
    EXPECT_THAT(changes->front().sentence, HasSubstr("within the uncertainty of the two readings"));
}

TEST(ReleaseJson, ReadsWhatItWrote) {
    ReleaseState other{Stage::FollowUp, "2026-06-01", false, {seen(Q::DeviceThrombus, 0)}};
    other.findings[0].standardUncertainty = 0.25;
    const auto text = releaseJson({good(), other}).dump();
    const auto states = releaseFromJson(text);
    ASSERT_TRUE(states) << states.error().message;
    ASSERT_EQ(states->size(), 2u);
    EXPECT_EQ((*states)[0].findings.size(), good().findings.size());
    EXPECT_EQ(releaseJson(*states).dump(), text);
}

TEST(ReleaseJson, RefusesWithTheStateAndFindingNamed) {
    const auto message = [](std::string_view text) {
        const auto r = releaseFromJson(text);
        EXPECT_FALSE(r);
        return r ? std::string() : r.error().message;
    };
    EXPECT_THAT(message("{"), HasSubstr("is no JSON object"));
    EXPECT_THAT(message(R"({"format":"x"})"), HasSubstr("its format is \"x\""));
    EXPECT_THAT(message(R"({"format":"ostium-gauge/release/1"})"), HasSubstr("no list \"states\""));
    EXPECT_THAT(message(R"({"format":"ostium-gauge/release/1","states":[{"stage":"later"}]})"), HasSubstr("state 1 has the unknown stage \"later\""));
    EXPECT_THAT(message(R"({"format":"ostium-gauge/release/1","states":[{"stage":"follow-up","findings":[{"quantity":"jet-width"}]}]})"),
                HasSubstr("state 1, finding 1 has no number under \"value\""));
    EXPECT_THAT(message(R"({"format":"ostium-gauge/release/1","states":[{"stage":"follow-up","findings":[{"quantity":"size","value":1}]}]})"),
                HasSubstr("unknown quantity \"size\""));
    EXPECT_THAT(message(R"({"format":"ostium-gauge/release/1","states":[{"stage":"follow-up","findings":[{"quantity":"jet-width","value":1}]}]})"),
                HasSubstr("say who saw it"));
}

TEST(ReleaseJson, WritesTheReport) {
    ReleaseState s = good();
    set(s, Q::JetWidth, 6);
    const auto json = reportJson(s, *checkRelease(s, discLimits()));
    EXPECT_EQ(json["stage"], "deployed-attached");
    EXPECT_EQ(json["notices"][0]["code"], "jet-wide");
    const auto row = std::find_if(json["rows"].begin(), json["rows"].end(), [](const auto& r) { return r["what"] == "jet past the implant (jet over 5 mm)"; });
    ASSERT_NE(row, json["rows"].end());
    EXPECT_EQ((*row)["verdict"], "outside");
    EXPECT_TRUE((*row)["least"].is_null());
    EXPECT_EQ((*row)["greatest"], 5.0);
}

TEST(ReleaseLimits, ComeFromTheChartWhereItSpeaks) {
    DeviceChart chart;
    chart.kind = DeviceKind::LobeAndDisc;
    chart.leastClearanceMm[Structure::MitralAnnulus] = 7.0;
    ChartSize size;
    size.nominalMm = 25.5;
    size.compressionPercent = {12.0, 28.0};
    const ReleaseLimits l = limitsFrom(chart, size);
    const auto report = checkRelease(good(), l);
    ASSERT_TRUE(report);
    EXPECT_THAT(textOf(report->notices, "compression-low"), HasSubstr("compression 11.8 %; 12.0 % to 28.0 % (the chart)"));
    EXPECT_THAT(textOf(report->notices, "clearance-small"), HasSubstr("at least 7.0 mm (the chart)"));
    EXPECT_EQ(l.pulmonaryArteryMm.basis, RangeBasis::Published); // the chart is silent
    EXPECT_FALSE(l.circumflexMm);
}

TEST(PlannedSeen, SetsFindingsBesideThePlanAndTellsWhatTheUncertaintiesDoNotAllow) {
    const auto estimate = [](double value, double sd) {
        gauge::core::Estimate e;
        e.value = value;
        e.components.plane = sd;
        return e;
    };
    gauge::core::Seat seat;
    seat.name = "A";
    seat.landingWidthMm = estimate(20.0, 0.5);
    seat.beyondCircumflexPercent = estimate(75.0, 10.0);
    seat.clearances = {{gauge::core::Structure::Ridge, estimate(5.0, 1.0), std::nullopt}};
    gauge::core::ReleaseState look;
    look.stage = gauge::core::Stage::AfterRelease;
    const auto see = [&](Q quantity, double value, std::optional<double> sd) {
        look.findings.push_back({quantity, value, sd, "45 degrees", "", "Reader A", ""});
    };
    see(Q::ImplantWidth, 22.0, 0.5);
    see(Q::ShareBeyondCircumflex, 60.0, std::nullopt);
    see(Q::JetWidth, 2.0, std::nullopt);
    see(Q::ClearancePulmonaryArtery, 4.0, std::nullopt);
    see(Q::ClearanceRidge, 4.5, 1.0);
    const auto seen = gauge::core::plannedSeen(seat, look);
    ASSERT_EQ(seen.size(), 3u) << "the plan says nothing of a jet, nor of what is not marked";
    EXPECT_TRUE(seen[0].differ) << "2 mm, where 1.4 mm are twice the uncertainty";
    EXPECT_EQ(seen[0].sentence.code, "planned-differs");
    EXPECT_FALSE(seen[1].differ);
    EXPECT_FALSE(seen[2].differ);
    EXPECT_EQ(seen[1].sentence.text.find("Planned and seen, "), 0u);
    EXPECT_NE(seen[1].sentence.text.find("75.0 % planned, 60.0 % seen."), std::string::npos);
    look.stage = gauge::core::Stage::SheathInAppendage;
    EXPECT_TRUE(gauge::core::plannedSeen(seat, look).empty()) << "no implant yet";
}
