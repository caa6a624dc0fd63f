// The published schema against what this program writes, and against its own reader, by valijson.
#include "core/record/case_json.h"
#include "tests/core/record/random_edits.h"

#include <fstream>
#include <gtest/gtest.h>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>

using namespace gauge::core;
using nlohmann::json;

namespace {

json jsonOf(const std::string& file) {
    std::ifstream stream(std::string(GAUGE_SOURCE_DIR) + file);
    return json::parse(stream, nullptr, false);
}

const valijson::Schema& schema() {
    static const json document = jsonOf("/resources/schemas/case.schema.json");
    static const auto made = [] {
        auto parsed = std::make_unique<valijson::Schema>();
        valijson::SchemaParser().populateSchema(valijson::adapters::NlohmannJsonAdapter(document), *parsed);
        return parsed;
    }();
    return *made;
}

/// Empty when it is accepted.
std::string findings(const json& file) {
    valijson::ValidationResults results;
    if (valijson::Validator().validate(schema(), valijson::adapters::NlohmannJsonAdapter(file), &results)) return {};
    std::string all = "refused";
    valijson::ValidationResults::Error error;
    while (results.popError(error)) {
        all += "\n";
        for (const auto& step : error.context)
            all += step;
        all += ": " + error.description;
    }
    return all;
}

bool readerAccepts(const json& file) {
    return caseFromJson(file.dump()).has_value();
}

/// What both must refuse. What no schema can say (unit vectors, a moment's id) is not here.
const std::pair<const char*, json> kSpoilings[] = {
    {"/format", "ostium-gauge/case/3"},
    {"/journal", nullptr},
    {"/journal/0/sequence", -1},
    {"/journal/0/change/edit", "set-everything"},
    {"/journal/0/change/id", "guess/1"},
    {"/journal/3/change/entry/kind", "sphere"},
    {"/record/marks", nullptr},
    {"/record/marks/nose", json::object()},
    {"/record/landing/depths_mm", "ten"},
    {"/record/values/sources", nullptr},
    {"/record/evidence/2.25.77/stage", "yesterday"},
    {"/record/evidence/2.25.77/kind", nullptr},
    {"/record/moments/before/circulation/rhythm", "waltz"},
    {"/record/moments/before/condition", 1},
    {"/record/readings/1/value_mm", nullptr},
    {"/record/readings/1/quantity", "width"},
    {"/record/drawings/1/site", json::object()},
    {"/record/drawings/1/points/0", json({1, 2, 3})},
    {"/record/drawings/1/revision", nullptr},
    {"/record/contours/ostium/frame/u_lps", json({1, 0})},
    {"/record/scales/2.25.78/known_mm", "two"},
    {"/record/scales/2.25.78/within/max_x", 1.5},
    {"/record/landmarks/1/echo", nullptr},
    {"/record/release/1/findings/0/quantity", "colour"},
    {"/record/stasis/1/looked_at_again", "yes"},
    {"/record/sizing/cause", "fate"},
    {"/record/scores/stroke/diabetes", nullptr},
    {"/record/scores/bleeding/age_years", "old"},
    {"/record/patient/tags", json({1})},
    {"/record/decision/text", 5},
};

} // namespace

TEST(CaseSchema, AcceptsEveryCaseThatThisProgramWrites) {
    EXPECT_TRUE(rc::check("any case", [] {
        CaseFile file;
        file.journal = testing_edits::journal();
        file.record = replay(file.journal);
        file.unknown = testing_edits::unknown();
        const std::string found = findings(json::parse(caseText(file)));
        if (!found.empty()) RC_FAIL(found);
    }));
}

TEST(CaseSchema, RefusesWhatTheReaderRefuses) {
    const json good = jsonOf("/tests/fuzz/corpus/case_fuzz/every-entry.json");
    ASSERT_EQ(findings(good), "");
    ASSERT_TRUE(readerAccepts(good));
    for (const auto& [place, value] : kSpoilings) {
        json bad = good;
        bad[json::json_pointer(place)] = value;
        EXPECT_NE(findings(bad), "") << place << " = " << value;
        EXPECT_FALSE(readerAccepts(bad)) << place << " = " << value;
    }
}

TEST(CaseSchema, AgreesWithTheReaderOnAbsentFields) {
    const json good = jsonOf("/tests/fuzz/corpus/case_fuzz/every-entry.json");
    int looked = 0;
    for (const auto& [kind, entries] : good["record"].items()) {
        const bool isMany = kind == "evidence" || (entries.is_object() && !entries.empty() && entries.begin()->is_object() &&
                                                   entries.begin()->contains("revision"));
        const std::string base = "/record/" + kind + (isMany ? "/" + entries.begin().key() : "");
        if (!good[json::json_pointer(base)].is_object()) continue;
        for (const auto& [key, value] : good[json::json_pointer(base)].items()) {
            json bad = good;
            bad[json::json_pointer(base)].erase(key);
            EXPECT_EQ(findings(bad).empty(), readerAccepts(bad)) << base << " without " << key << findings(bad);
            ++looked;
        }
    }
    EXPECT_GT(looked, 80);
}
