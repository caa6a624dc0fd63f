#include "app/cli/command_line.h"

#include <QString>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>
#include <sstream>
#include <unistd.h>

using namespace gauge::app;
using nlohmann::json;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

namespace {

const std::string kCharts = std::string(GAUGE_SOURCE_DIR) + "/resources/charts/";

struct Answer {
    ExitCode code;
    std::string out, err;
    json document;
};

/// A folder of its own for one test.
class SizeCommand : public testing::Test {
protected:
    SizeCommand()
        : m_folder(std::filesystem::temp_directory_path() /
                   ("ostium-gauge-size-" + std::to_string(::getpid()))) {
        std::filesystem::create_directories(m_folder);
    }
    ~SizeCommand() override { std::filesystem::remove_all(m_folder); }

    std::string write(const std::string& name, const std::string& content) const {
        std::ofstream(m_folder / name) << content;
        return (m_folder / name).string();
    }

    Answer run(const std::string& observations, const std::string& chart, const QStringList& more) const {
        const std::string file = (m_folder / "answer.json").string();
        QStringList arguments{"--observations", QString::fromStdString(observations),
                              "--chart",        QString::fromStdString(chart),
                              "--json",         QString::fromStdString(file)};
        std::ostringstream out, err;
        const ExitCode code = sizeCommand(arguments + more, out, err);
        json document;
        if (code == ExitCode::Ok) document = json::parse(std::ifstream(file));
        return {code, out.str(), err.str(), document};
    }

    /// With the lobe-and-disc chart, at 12 mmHg unless the options say otherwise.
    Answer run(const json& observations, QStringList more = {}) const {
        if (!more.contains("--decision-pressure")) more += {"--decision-pressure", "12"};
        return run(write("observations.json", observations.dump()), kCharts + "demo-lobe-and-disc.json",
                   more);
    }

    std::filesystem::path m_folder;
};

json reading(const char* modality, const char* derivation, const char* stage, const char* state, double mm,
             const json& mmHg) {
    return {{"quantity", "landing_zone_perimeter_derived_diameter"},
            {"modality", modality},
            {"derivation", derivation},
            {"stage", stage},
            {"state", state},
            {"condition", "other"},
            {"phase", "end-systole"},
            {"value_mm", mm},
            {"standard_uncertainty_mm", nullptr},
            {"pressure_mmHg", mmHg},
            {"pressure_source", mmHg.is_null() ? json(nullptr) : json("direct")},
            {"pressure_uncertainty_mmHg", nullptr},
            {"v_wave_mmHg", nullptr}};
}

json document(const json& readings) {
    return {{"format", "ostium-gauge/observations/1"},
            {"observations", readings},
            {"depth_mm", 28.0},
            {"ostium_longest_mm", 25.0}};
}

/// Story (a): the CT on a full atrium, echo under anaesthesia at 7 mmHg.
json passingStory() {
    return document({reading("CT", "contour", "before-procedure", "CT day", 21.9, 13.0),
                     reading("echo-2d", "ellipse-from-angles", "before-repair", "anaesthesia", 18.9, 7.0)});
}

/// Story (b): CT before the repair at an unknown, high pressure, echo after it.
json lastingStory() {
    json story = document({reading("CT", "contour", "before-repair", "CT day", 24.8, nullptr),
                           reading("echo-3d", "contour", "after-repair", "after repair", 21.7, 9.0)});
    story["observations"][0]["condition"] = "mitral-regurgitation";
    return story;
}

const json* find(const json& notices, const std::string& code) {
    for (const json& n : notices)
        if (n["code"] == code) return &n;
    return nullptr;
}

double length(const json& interval) {
    return interval[1].get<double>() - interval[0].get<double>();
}

} // namespace

TEST_F(SizeCommand, WritesTheDocumentByTheLetter) {
    const Answer a = run(passingStory(), {"--lowest", "8", "--highest", "18", "--cause", "passing"});
    ASSERT_EQ(a.code, ExitCode::Ok) << a.err;
    const json& d = a.document;
    EXPECT_EQ(d["format"], "ostium-gauge/size/1");
    EXPECT_EQ(d["diameter"]["quantity"], "landing_zone_perimeter_derived_diameter");
    EXPECT_EQ(d["diameter"]["at_pressure_mmHg"], 12.0);
    const double median = d["diameter"]["value_mm"];
    EXPECT_GT(median, d["diameter"]["interval_95_mm"][0]);
    EXPECT_LT(median, d["diameter"]["interval_95_mm"][1]);
    for (const char* key : {"value_mm_per_mmHg", "standard_uncertainty", "patient_share"})
        EXPECT_TRUE(d["slope"][key].is_number()) << key;
    ASSERT_EQ(d["weights"].size(), 2u);
    EXPECT_NEAR(d["weights"][0]["weight"].get<double>() + d["weights"][1]["weight"].get<double>(), 1.0, 1e-9);
    ASSERT_EQ(d["sizes"].size(), 6u);
    double nominal = 16.5;
    for (const json& s : d["sizes"]) {
        EXPECT_EQ(s["nominal_mm"], nominal);
        EXPECT_NEAR(s["compression_percent"].get<double>(), 100.0 * (nominal - median) / nominal, 1e-9);
        for (const char* key : {"fit_chance", "lasting_fit", "undersize_chance", "overcompression_chance"}) {
            EXPECT_GE(s[key].get<double>(), 0.0) << key;
            EXPECT_LE(s[key].get<double>(), 1.0) << key;
        }
        EXPECT_EQ(s["depth_ok"], true);
        EXPECT_TRUE(s["name"].is_string() && s["warnings"].is_array());
        nominal += 3.0;
    }
    ASSERT_EQ(d["what_next"].size(), 4u);
    for (const json& act : d["what_next"])
        EXPECT_TRUE(act["act"].is_string() && act["chance_to_change_size"].is_number());
    EXPECT_TRUE(find(d["notices"], "chart-invented"));
}

TEST_F(SizeCommand, StoryOfAPassingFall) {
    const Answer a = run(passingStory(), {"--lowest", "8", "--highest", "18", "--cause", "passing"});
    ASSERT_EQ(a.code, ExitCode::Ok) << a.err;
    const json* warning = find(a.document["warnings"], "undersized-if-pressure-returns");
    ASSERT_TRUE(warning);
    EXPECT_EQ((*warning)["facts"]["size"], "22.5 (invented)"); // what the echo's 18.9 mm alone would choose
    EXPECT_EQ(a.document["greatest_fit"], "25.5 (invented)");
    EXPECT_FALSE(find(a.document["warnings"], "too-large-after-lasting-fall"));
    EXPECT_THAT(a.out,
                AllOf(HasSubstr("Undersized if the pressure returns"), HasSubstr("Card for the room"),
                      HasSubstr("What next"), HasSubstr("not a medical device"), HasSubstr("invented")));
    EXPECT_THAT(a.out, Not(HasSubstr("ecommended")));
}

TEST_F(SizeCommand, StoryOfALastingFall) {
    const QStringList range{"--decision-pressure", "10", "--lowest", "6", "--highest", "14"};
    const Answer lasting = run(lastingStory(), range + QStringList{"--cause", "lasting"});
    ASSERT_EQ(lasting.code, ExitCode::Ok) << lasting.err;
    const json* warning = find(lasting.document["warnings"], "too-large-after-lasting-fall");
    ASSERT_TRUE(warning);
    EXPECT_EQ((*warning)["facts"]["size"], "28.5 (invented)"); // what the CT's 24.8 mm alone would choose
    EXPECT_EQ(lasting.document["greatest_fit"], "25.5 (invented)");
    EXPECT_FALSE(find(lasting.document["warnings"], "undersized-if-pressure-returns"));
    EXPECT_EQ(lasting.document["size_may_be_signed"], false); // nobody looked at the appendage again

    const Answer unknown = run(lastingStory(), range + QStringList{"--cause", "unknown"});
    EXPECT_TRUE(find(unknown.document["warnings"], "too-large-after-lasting-fall"));
    EXPECT_TRUE(find(unknown.document["warnings"], "undersized-if-pressure-returns"));
    EXPECT_EQ(unknown.document["living_widths"].size(), 2u);
    EXPECT_GT(length(unknown.document["living_interval_95_mm"]),
              length(lasting.document["living_interval_95_mm"]));
}

TEST_F(SizeCommand, ThrombusStopsThePlan) {
    json story = lastingStory();
    story["stasis"] = {{{"stage", "after-repair"}, {"thrombus", true}}};
    const Answer a = run(story, {"--cause", "lasting"});
    ASSERT_EQ(a.code, ExitCode::Ok) << a.err;
    EXPECT_TRUE(find(a.document["warnings"], "thrombus-stops-plan"));
    EXPECT_EQ(a.document["plan_stopped"], true);
    EXPECT_THAT(a.out, HasSubstr("the plan stops here"));
}

TEST_F(SizeCommand, GivesAReadingWithoutCounterpartWeightZeroAndTheReason) {
    json story = passingStory();
    story["observations"].push_back(
        reading("echo-2d", "largest-of-views", "before-repair", "anaesthesia", 22.5, 7.0));
    story["observations"].push_back(
        reading("fluoroscopy", "single-view", "before-repair", "anaesthesia", 21.0, 7.0));
    story["depth_mm"] = nullptr;
    const Answer a = run(story);
    ASSERT_EQ(a.code, ExitCode::Ok) << a.err;
    for (const std::size_t i : {2u, 3u}) {
        EXPECT_EQ(a.document["weights"][i]["weight"], 0.0);
        EXPECT_THAT(a.document["weights"][i]["reason"].get<std::string>(),
                    HasSubstr("no counterpart in a contour"));
    }
    EXPECT_TRUE(a.document["sizes"][0]["depth_ok"].is_null());
}

TEST_F(SizeCommand, TakesTheChartsDecisionPressureAndTheDefaultLivingRange) {
    json story = passingStory();
    for (json& o : story["observations"])
        o["quantity"] = "landing_zone_longest_diameter";
    const std::string file = write("observations.json", story.dump());
    const Answer plug = run(file, kCharts + "demo-plug.json", {});
    ASSERT_EQ(plug.code, ExitCode::Ok) << plug.err;
    EXPECT_EQ(plug.document["diameter"]["at_pressure_mmHg"], 12.0);
    EXPECT_EQ(plug.document["diameter"]["quantity"], "landing_zone_longest_diameter");
    EXPECT_EQ(plug.document["living_range_mmHg"], json({5.0, 20.0}));
    EXPECT_TRUE(find(plug.document["notices"], "living-range-assumed"));
    EXPECT_EQ(plug.document["cause"], "unknown");
    EXPECT_EQ(run(file, kCharts + "demo-plug.json", {"--law", "linear"}).document["law"], "linear");
}

TEST_F(SizeCommand, CallsWrongUsageWrong) {
    const std::string file = write("observations.json", passingStory().dump());
    const std::string chart = kCharts + "demo-lobe-and-disc.json";
    const auto refused = [&](const QStringList& more) {
        const Answer a = run(file, chart, more);
        EXPECT_EQ(a.code, ExitCode::WrongUsage);
        EXPECT_THAT(a.err, HasSubstr("Usage: ostium-gauge size"));
        return a.err;
    };
    EXPECT_THAT(refused({}), AllOf(HasSubstr("No decision pressure"), HasSubstr("--decision-pressure P")));
    EXPECT_THAT(refused({"--decision-pressure", "high"}),
                HasSubstr("--decision-pressure needs a pressure in mmHg"));
    EXPECT_THAT(refused({"--decision-pressure", "99"}), HasSubstr("3 to 60 mmHg"));
    EXPECT_THAT(refused({"--decision-pressure", "12", "--lowest", "15", "--highest", "9"}),
                HasSubstr("must lie below"));
    EXPECT_THAT(refused({"--decision-pressure", "12", "--cause", "both"}),
                HasSubstr("passing, lasting or unknown"));
    EXPECT_THAT(refused({"--decision-pressure", "12", "--law", "cubic"}), HasSubstr("log or linear"));
    EXPECT_THAT(refused({"--decision-pressure", "12", "more"}), HasSubstr("\"more\" belongs to no option"));
    std::ostringstream out, err;
    EXPECT_EQ(sizeCommand({"--chart", "x"}, out, err), ExitCode::WrongUsage);
    EXPECT_THAT(err.str(), HasSubstr("--observations FILE is needed"));
}

TEST_F(SizeCommand, NamesTheFieldOfAFileThatCannotBeUsed) {
    json bad = passingStory();
    bad["observations"][1]["pressure_mmHg"] = "seven";
    Answer a = run(bad);
    EXPECT_EQ(a.code, ExitCode::InputUnreadable);
    EXPECT_THAT(a.err, HasSubstr("observations[1].pressure_mmHg holds the text \"seven\""));

    const std::string good = write("observations.json", passingStory().dump());
    a = run(good, write("chart.json", R"({"format": "ostium-gauge/chart/1"})"),
            {"--decision-pressure", "12"});
    EXPECT_EQ(a.code, ExitCode::InputUnreadable);
    EXPECT_THAT(a.err, HasSubstr("name is absent"));

    a = run("/no/such/file.json", kCharts + "demo-plug.json", {});
    EXPECT_EQ(a.code, ExitCode::InputUnreadable);
    EXPECT_THAT(a.err, HasSubstr("Cannot read the observations /no/such/file.json"));
}

TEST_F(SizeCommand, SaysWhenNoReadingAnswersTheChart) {
    json other = passingStory();
    for (json& o : other["observations"])
        o["quantity"] = "ostium_longest_diameter";
    Answer a = run(other);
    EXPECT_EQ(a.code, ExitCode::NotMeasurable);
    EXPECT_THAT(a.err, HasSubstr("Found: longest diameter of the ostium by CT"));
    a = run(document(json::array()));
    EXPECT_EQ(a.code, ExitCode::NotMeasurable);
    EXPECT_THAT(a.err, HasSubstr("Found: none"));
}

TEST_F(SizeCommand, SaysWhenTheJsonCannotBeWritten) {
    const std::string file = write("observations.json", passingStory().dump());
    std::ostringstream out, err;
    const QStringList arguments{"--observations",
                                QString::fromStdString(file),
                                "--chart",
                                QString::fromStdString(kCharts + "demo-lobe-and-disc.json"),
                                "--decision-pressure",
                                "12",
                                "--json",
                                "/no/such/folder/answer.json"};
    EXPECT_EQ(sizeCommand(arguments, out, err), ExitCode::OutputUnwritable);
    EXPECT_THAT(err.str(), HasSubstr("cannot write /no/such/folder/answer.json"));
}

TEST_F(SizeCommand, IsAVerbWithHelp) {
    EXPECT_TRUE(isVerb({"size"}));
    std::ostringstream out, err;
    EXPECT_EQ(sizeCommand({"--help"}, out, err), ExitCode::Ok);
    EXPECT_THAT(out.str(), HasSubstr("--decision-pressure P"));
}
