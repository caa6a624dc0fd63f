// The published schema against the charts of this repository and against our own reader, by valijson.
#include "tests/core/sizing/chart_files.h"

#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

using namespace gauge::core;
using namespace gauge::test;
using nlohmann::json;

namespace {

bool schemaAccepts(const json& chart) {
    static const json document = chartJson("chart.schema.json");
    valijson::Schema schema;
    valijson::SchemaParser().populateSchema(valijson::adapters::NlohmannJsonAdapter(document), schema);
    return valijson::Validator().validate(schema, valijson::adapters::NlohmannJsonAdapter(chart), nullptr);
}

bool readerAccepts(const json& chart) {
    return readChart(chart.dump(), "x").has_value();
}

struct Spoiling {
    const char* place;
    json value;
};

/// What both must refuse. What no schema can say (order of sizes, lo below hi) is not here.
const Spoiling kSpoilings[] = {
    {"/format", "ostium-gauge/chart/2"},
    {"/kind", "umbrella"},
    {"/kind", "lobe-and-disc"}, // its sizes have no disc
    {"/version", ""},
    {"/date", "yesterday"},
    {"/source", 5},
    {"/invented", "yes"},
    {"/reading", nullptr},
    {"/reading/phase", "diastole"},
    {"/reading/by_3d/quantity", "depth"},
    {"/reading/by_3d/derivation", "single-view"},
    {"/reading/decision_pressure_mmHg", 2},
    {"/reading/least_pressure_mmHg", "ten"},
    {"/depth_measured_from", "tip"},
    {"/least_clearance_mm/circumflex-artery", -1},
    {"/sizes", json::array()},
    {"/sizes/0/nominal_mm", 175},
    {"/sizes/0/accepts_mm", json({13})},
    {"/sizes/0/accepts_mm", json({"a", "b"})},
    {"/sizes/0/compression_percent", json({-1, 20})},
    {"/sizes/0/least_depth_mm", nullptr},
    {"/sizes/0/folded_placement", "perhaps"},
    {"/sizes/0/name", " "},
};

} // namespace

TEST(ChartSchema, AcceptsTheDemonstrationCharts) {
    EXPECT_TRUE(schemaAccepts(chartJson("demo-plug.json")));
    EXPECT_TRUE(schemaAccepts(chartJson("demo-lobe-and-disc.json")));
}

TEST(ChartSchema, RefusesWhatTheReaderRefuses) {
    for (const Spoiling& s : kSpoilings) {
        json chart = chartJson("demo-plug.json");
        chart[json::json_pointer(s.place)] = s.value;
        EXPECT_FALSE(schemaAccepts(chart)) << s.place << " = " << s.value;
        EXPECT_FALSE(readerAccepts(chart)) << s.place << " = " << s.value;
    }
}

TEST(ChartSchema, AgreesWithTheReaderOnAbsentFields) {
    const json whole = chartJson("demo-lobe-and-disc.json");
    for (const auto& [key, value] : whole.items()) {
        json chart = whole;
        chart.erase(key);
        EXPECT_EQ(schemaAccepts(chart), readerAccepts(chart)) << key;
    }
    for (const auto& [key, value] : whole["sizes"][0].items()) {
        json chart = whole;
        chart["sizes"][0].erase(key);
        EXPECT_EQ(schemaAccepts(chart), readerAccepts(chart)) << "sizes[0]." << key;
    }
    for (const auto& [key, value] : whole["reading"].items()) {
        json chart = whole;
        chart["reading"].erase(key);
        EXPECT_EQ(schemaAccepts(chart), readerAccepts(chart)) << "reading." << key;
    }
}
