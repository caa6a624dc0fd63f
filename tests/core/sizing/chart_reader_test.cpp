#include "tests/core/sizing/chart_files.h"

#include "core/sizing/percent.h"

#include <gmock/gmock.h>

using namespace gauge::core;
using namespace gauge::test;
using nlohmann::json;
using testing::AllOf;
using testing::HasSubstr;

namespace {

const char* const kDemos[] = {"demo-plug.json", "demo-lobe-and-disc.json"};

std::string refusal(const json& chart) {
    const auto reading = readChart(chart.dump(), "mine.json");
    if (reading) return "accepted";
    EXPECT_EQ(reading.error().code, ErrorCode::ChartInvalid);
    EXPECT_THAT(reading.error().message, HasSubstr("mine.json"));
    return reading.error().message;
}

json plugWith(const json::json_pointer& place, const json& value) {
    json chart = chartJson("demo-plug.json");
    chart[place] = value;
    return chart;
}

std::vector<std::string> codes(const std::vector<Notice>& notices) {
    std::vector<std::string> all;
    for (const Notice& n : notices)
        all.push_back(n.code);
    return all;
}

} // namespace

TEST(DemoCharts, SayInEveryPlaceThatTheyAreInvented) {
    for (const char* name : kDemos) {
        const json chart = chartJson(name);
        EXPECT_EQ(chart["invented"], true);
        for (const char* key : {"name", "source", "version"})
            EXPECT_THAT(chart[key].get<std::string>(), testing::ContainsRegex("[Ii]nvented"))
                << name << " " << key;
        for (const json& size : chart["sizes"]) {
            EXPECT_THAT(size["name"].get<std::string>(), HasSubstr("invented"));
            EXPECT_THAT(size["text"].get<std::string>(), testing::ContainsRegex("[Ii]nvented"));
        }
        EXPECT_THAT(codes(readChart(chart.dump(), name)->notices), testing::Contains("chart-invented"));
    }
}

TEST(DemoCharts, HaveEvenlySpacedHalfMillimetreSizesAndTouchingBands) {
    for (const char* name : kDemos) {
        const DeviceChart chart = demoChart(name);
        ASSERT_GE(chart.sizes.size(), 5u);
        const double step = chart.sizes[1].nominalMm - chart.sizes[0].nominalMm;
        for (std::size_t i = 0; i < chart.sizes.size(); ++i) {
            EXPECT_DOUBLE_EQ(chart.sizes[i].nominalMm - std::floor(chart.sizes[i].nominalMm), 0.5);
            if (i == 0) continue;
            EXPECT_DOUBLE_EQ(chart.sizes[i].nominalMm - chart.sizes[i - 1].nominalMm, step);
            EXPECT_DOUBLE_EQ(chart.sizes[i].acceptsMm.lo, chart.sizes[i - 1].acceptsMm.hi);
        }
        EXPECT_EQ(codes(readChart(chartText(name), name)->notices),
                  std::vector<std::string>{"chart-invented"});
    }
}

TEST(DemoCharts, AskForTheReadingsTheyAreMeantToShow) {
    const DeviceChart lobe = demoLobeAndDisc(), plug = demoPlug();
    EXPECT_EQ(lobe.kind, DeviceKind::LobeAndDisc);
    EXPECT_EQ(lobe.reading.by3d.quantity, Quantity::LandingZonePerimeterDerivedDiameter);
    EXPECT_FALSE(lobe.reading.decisionPressureMmHg);
    EXPECT_EQ(plug.kind, DeviceKind::Plug);
    EXPECT_EQ(plug.reading.by2d.derivation, Derivation::LargestOfViews);
    EXPECT_EQ(plug.reading.decisionPressureMmHg, 12.0);
}

TEST(ReadChart, WantsVersionDateAndSourceOfTheInstructions) {
    for (const char* key :
         {"version", "date", "source", "name", "kind", "reading", "sizes", "depth_measured_from"}) {
        json chart = chartJson("demo-plug.json");
        chart.erase(key);
        EXPECT_THAT(refusal(chart), HasSubstr(std::string(key) + " is absent")) << key;
    }
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/source"), "  ")), HasSubstr("source is empty"));
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/date"), "25.11.2026")), HasSubstr("YYYY-MM-DD"));
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/date"), "2026-13-01")), HasSubstr("YYYY-MM-DD"));
}

TEST(ReadChart, NamesRowFieldFindingAndWhatIsAllowed) {
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/sizes/2/nominal_mm"), "wide")),
                AllOf(HasSubstr("row 3 (\"23.5 (invented)\")"), HasSubstr("sizes[2].nominal_mm"),
                      HasSubstr("the text \"wide\""), HasSubstr("a number from 5 to 80")));
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/sizes/0/accepts_mm"), json({16.0, 13.0}))),
                AllOf(HasSubstr("row 1"), HasSubstr("accepts_mm holds [16, 13]"), HasSubstr("lo below hi")));
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/sizes/0/accepts_mm"), json({16.0}))),
                HasSubstr("a list of 1"));
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/sizes/1/accepts_mm/1"), 20.5)),
                AllOf(HasSubstr("row 2"), HasSubstr("not less than the nominal")));
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/sizes/0/nominal_mm"), 23.0)),
                HasSubstr("sizes ascend"));
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/sizes/1/name"), "17.5 (invented)")),
                HasSubstr("stands twice"));
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/sizes/4/least_depth_mm"), nullptr)),
                AllOf(HasSubstr("row 5"), HasSubstr("least_depth_mm is null")));
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/sizes/0"), 3)),
                HasSubstr("row 1: sizes[0] holds the number 3"));
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/sizes"), json::array())), HasSubstr("empty list"));
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/kind"), "umbrella")),
                AllOf(HasSubstr("the text \"umbrella\""), HasSubstr("plug, lobe-and-disc")));
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/format"), "other/1")),
                HasSubstr("ostium-gauge/chart/1"));
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/reading/by_3d/quantity"), "depth")),
                HasSubstr("a diameter"));
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/reading/by_2d/derivation"), "single-view")),
                HasSubstr("ellipse-from-angles, largest-of-views"));
    EXPECT_THAT(refusal(plugWith(json::json_pointer("/sizes/0/folded_placement"), "maybe")),
                HasSubstr("allowed, not-allowed, silent"));
}

TEST(ReadChart, WantsTheDiametersOfItsKind) {
    json lobe = chartJson("demo-lobe-and-disc.json");
    lobe["sizes"][1].erase("disc_diameter_mm");
    EXPECT_THAT(refusal(lobe), AllOf(HasSubstr("row 2"), HasSubstr("disc_diameter_mm is absent")));
    lobe["sizes"][1]["disc_diameter_mm"] = 19.0;
    EXPECT_THAT(refusal(lobe), HasSubstr("a disc wider than its lobe"));
    json plug = chartJson("demo-plug.json");
    plug["sizes"][0].erase("outer_diameter_mm");
    EXPECT_THAT(refusal(plug), HasSubstr("a plug size needs it"));
}

TEST(ReadChart, RefusesWhatIsNoJsonAndKeysThatStandTwice) {
    const auto broken = readChart("{\"format\": ", "cut.json");
    ASSERT_FALSE(broken);
    EXPECT_THAT(broken.error().message, AllOf(HasSubstr("cut.json"), HasSubstr("not JSON")));
    const auto twice =
        readChart(R"({"format": "ostium-gauge/chart/1", "format": "ostium-gauge/chart/1"})", "twice.json");
    ASSERT_FALSE(twice);
    EXPECT_THAT(twice.error().message, HasSubstr("stands twice in one object"));
    EXPECT_FALSE(readChart("[]", "list.json"));
}

TEST(ReadChart, LeavesUnknownFieldsAlone) {
    EXPECT_EQ(refusal(plugWith(json::json_pointer("/sizes/0/colour"), "green")), "accepted");
}

TEST(ReadChart, ReportsGapsAndOverlapsWithTheirReadings) {
    const auto gap = readChart(plugWith(json::json_pointer("/sizes/1/accepts_mm/0"), 16.5).dump(), "x");
    ASSERT_TRUE(gap);
    EXPECT_THAT(codes(gap->notices), testing::Contains("chart-bands-gap"));
    EXPECT_THAT(gap->notices.back().text,
                AllOf(HasSubstr("between 15.5 and 16.5 mm"), HasSubstr("17.5"), HasSubstr("20.5")));
    const auto overlap = readChart(plugWith(json::json_pointer("/sizes/1/accepts_mm/0"), 14.5).dump(), "x");
    ASSERT_TRUE(overlap);
    EXPECT_THAT(codes(overlap->notices), testing::Contains("chart-bands-overlap"));
    EXPECT_THAT(overlap->notices[1].text, HasSubstr("from 14.5 to 15.5 mm"));
}

TEST(ReadChart, ReportsABandOutsideTheSizesOwnCompression) {
    const auto r =
        readChart(plugWith(json::json_pointer("/sizes/0/compression_percent"), json({20, 25})).dump(), "x");
    ASSERT_TRUE(r);
    EXPECT_THAT(codes(r->notices), testing::Contains("chart-band-outside-compression"));
}

// references: "nominal 25.5, LZ 22.5 -> compression 11.76 %, oversizing 13.33 %; DICOM ratio 0.8824", printed
// to 0.01.
TEST(Percent, ConventionsDifferOnTheWorkedNumbers) {
    EXPECT_NEAR(compressionPercent(25.5, 22.5), 11.76, 0.005);
    EXPECT_NEAR(oversizingPercent(25.5, 22.5), 13.33, 0.005);
    EXPECT_NEAR(deployedRatio(25.5, 22.5), 0.8824, 0.00005);
    EXPECT_DOUBLE_EQ(diameterAtCompression(25.5, compressionPercent(25.5, 22.5)), 22.5);
}
