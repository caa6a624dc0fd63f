#include "app/cli/command_line.h"
#include "tests/dicomio/support/dicom_bytes.h"

#include <cmath>
#include <fstream>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>
#include <numbers>
#include <sstream>

using namespace gauge::app;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

constexpr double kExactMm = 1e-9; // exact chords, read back from their shortest decimal form

struct Answer {
    ExitCode code;
    std::string out, err;
};

Answer echo(const QStringList& arguments) {
    std::ostringstream out, err;
    const ExitCode code = runVerb(QStringList{"echo"} + arguments, out, err);
    return {code, out.str(), err.str()};
}

nlohmann::json jsonOf(QStringList arguments) {
    const TempFolder folder;
    const auto file = folder.path() / "echo.json";
    const Answer a = echo(arguments << "--json" << QString::fromStdString(file.string()));
    EXPECT_EQ(a.code, ExitCode::Ok) << a.err;
    std::ifstream in(file);
    return nlohmann::json::parse(in);
}

/// Chords of a 24 x 18 mm ellipse whose longest diameter lies at 30 degrees.
QString exactWidths(const std::vector<double>& angles) {
    QStringList pairs;
    for (const double a : angles) {
        const double t = (a - 30.0) * std::numbers::pi / 180.0;
        const double w = 1.0 / std::hypot(std::cos(t) / 24.0, std::sin(t) / 18.0);
        pairs << QString::number(a) + ":" + QString::number(w, 'g', 17);
    }
    return pairs.join(',');
}

} // namespace

TEST(EchoCommand, GivesTheEllipseOfExactChords) {
    for (const auto& angles : {std::vector<double>{0, 45, 90, 135}, {0, 60, 120}})
        for (const QStringList& more : {QStringList{}, QStringList{"--width-uncertainty", "0.8"}, QStringList{"--width-uncertainty", "0"}}) {
            const auto json = jsonOf(QStringList{"--widths", exactWidths(angles)} + more);
            EXPECT_EQ(json["format"], "ostium-gauge/echo/1");
            EXPECT_NEAR(json["section"]["longest_diameter_mm"]["value"].get<double>(), 24, kExactMm);
            EXPECT_NEAR(json["section"]["shortest_diameter_mm"]["value"].get<double>(), 18, kExactMm);
            EXPECT_NEAR(json["section"]["area_mm2"]["value"].get<double>(), std::numbers::pi * 108, 1e-7);
            EXPECT_NEAR(json["direction_deg"].get<double>(), 30, 1e-7);
            EXPECT_NEAR(json["residual_mm"].get<double>(), 0, kExactMm);
            EXPECT_FALSE(json["section"].contains("contour_lps_mm"));
            ASSERT_EQ(json["covariance"].size(), 3u);
            EXPECT_EQ(json["covariance_of"], nlohmann::json({"semi_major_mm", "semi_minor_mm", "direction_deg"}));
        }
}

TEST(EchoCommand, NamesTheWidthsThatWouldAgreeByTheAnglesAsTyped) {
    const auto json = jsonOf({"--widths", "0:21.0,45.0:23.5,90:25.1,135:22.4"});
    ASSERT_EQ(json["would_agree_mm"].size(), 4u);
    const auto inverse = [](double w) { return 1.0 / (w * w); };
    EXPECT_NEAR(json["would_agree_mm"]["0"].get<double>(), 1 / std::sqrt(inverse(23.5) + inverse(22.4) - inverse(25.1)), kExactMm);
    EXPECT_NEAR(json["would_agree_mm"]["45.0"].get<double>(), 1 / std::sqrt(inverse(21.0) + inverse(25.1) - inverse(22.4)), kExactMm);
    const auto& v = json["section"]["perimeter_derived_diameter_mm"];
    EXPECT_NEAR(v["value"].get<double>(), 23.0, 0.3);
    EXPECT_NEAR(v["standard_uncertainty"].get<double>(), 0.4, 0.05); // 0.8 / sqrt(4)
    EXPECT_EQ(v["components"]["observer"], v["standard_uncertainty"]);
    EXPECT_EQ(json["largest_of_views"]["value_mm"], 25.1);
    EXPECT_EQ(json["largest_of_views"]["at_deg"], 90.0);
    EXPECT_GT(json["largest_of_views"]["expected_shortfall_mm"].get<double>(), 0.05);
    EXPECT_TRUE(jsonOf({"--widths", "0:21,60:22,120:23"})["would_agree_mm"]["60"].is_null());
}

TEST(EchoCommand, SaysItForPeople) {
    const Answer a = echo({"--widths", "0:21.0,45:23.5,90:25.1,135:22.4,0:21.4"});
    EXPECT_EQ(a.code, ExitCode::Ok);
    EXPECT_THAT(a.out, HasSubstr("Ellipse through 4 views"));
    EXPECT_THAT(a.out, HasSubstr("mean of 2"));
    EXPECT_THAT(a.out, HasSubstr("would agree with the others"));
    EXPECT_THAT(a.out, HasSubstr("a quantity of its own"));
    EXPECT_THAT(a.out, HasSubstr("an assumption"));
    EXPECT_THAT(a.out, HasSubstr("not a medical device"));
    EXPECT_EQ(a.err, "");
}

TEST(EchoCommand, RefusesWidthsOfNoEllipse) {
    const Answer a = echo({"--widths", "0:40,45:10,90:40"});
    EXPECT_EQ(a.code, ExitCode::NotMeasurable);
    EXPECT_THAT(a.err, HasSubstr("Cannot draw an ellipse through the echo widths (40.0 mm at 0 degrees"));
    const Answer few = echo({"--widths", "0:21,180:22,90:23"});
    EXPECT_EQ(few.code, ExitCode::NotMeasurable);
    EXPECT_THAT(few.err, HasSubstr("through 2 echo width(s)"));
}

TEST(EchoCommand, AnswersWrongUsageWithALineOnUsage) {
    for (const QStringList& wrong :
         {QStringList{}, {"--widths"}, {"--widths", "0:21,45"}, {"--widths", "0:21,45:x,90:3"}, {"--widths", "0:21,45:-3,90:20"},
          {"--widths", "0:21,45:0,90:20"}, {"--widths", ""}, {"--widths", "0:1,500:2,90:3"}, {"--unknown"},
          {"--widths", "0:21,45:22,90:23", "stray"}, {"--widths", "0:21,45:22,90:23", "--width-uncertainty", "-1"},
          {"--widths", "0:21,45:22,90:23", "--width-uncertainty", "nan"}, {"--widths", "0:21,45:22,90:23", "--json", ""},
          {"--widths", "0:21,45:22,90:23", "--widths", "0:21"}}) {
        const Answer a = echo(wrong);
        EXPECT_EQ(a.code, ExitCode::WrongUsage) << wrong.join(' ').toStdString();
        EXPECT_THAT(a.err, HasSubstr("Usage: ostium-gauge echo --widths"));
    }
    EXPECT_THAT(echo({"--widths", "0:21,45"}).err, HasSubstr("\"45\" is none"));
}

TEST(EchoCommand, ShowsHelpAndSaysWhenTheJsonCannotBeWritten) {
    EXPECT_THAT(echo({"--help"}).out, HasSubstr("--width-uncertainty MM"));
    const Answer a = echo({"--widths", "0:21,45:22,90:23", "--json", "/nowhere/at/all.json"});
    EXPECT_EQ(a.code, ExitCode::OutputUnwritable);
    EXPECT_THAT(a.err, HasSubstr("cannot write /nowhere/at/all.json"));
}
