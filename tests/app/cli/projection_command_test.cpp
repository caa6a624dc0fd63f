#include "app/cli/command_line.h"

#include <QString>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>
#include <rapidcheck/gtest.h>
#include <sstream>
#include <unistd.h>

using namespace gauge::app;
using nlohmann::json;
using testing::AllOf;
using testing::HasSubstr;

namespace {

constexpr double kDeg = M_PI / 180.0;
constexpr double kAngleDeg = 0.01; // the accuracy that is promised

struct Answer {
    ExitCode code;
    std::string out, err;
    json document;
};

class Folder {
public:
    Folder() : path(std::filesystem::temp_directory_path() / ("ostium-gauge-projection-" + std::to_string(::getpid()))) {
        std::filesystem::create_directories(path);
    }
    ~Folder() { std::filesystem::remove_all(path); }
    const std::filesystem::path path;
};

Answer run(const QStringList& arguments) {
    std::ostringstream out, err;
    const ExitCode code = runVerb(QStringList{"projection"} + arguments, out, err);
    return {code, out.str(), err.str(), {}};
}

/// Through the verb, as a person types it.
Answer normal(const std::string& text) {
    const Folder folder;
    const std::string file = (folder.path / "answer.json").string();
    Answer answer = run({"--normal", QString::fromStdString(text), "--json", QString::fromStdString(file)});
    if (answer.code == ExitCode::Ok) answer.document = json::parse(std::ifstream(file));
    return answer;
}

double cranialAt(const json& edgeOn, double lao) {
    for (const json& view : edgeOn)
        if (view["lao_deg"] == lao) return view["cranial_deg"];
    ADD_FAILURE() << "no view at " << lao;
    return 0.0;
}

} // namespace

TEST(ProjectionCommand, WritesTheDocumentByTheLetter) {
    const Answer a = normal("0.60402277,-0.71984631,0.34202014");
    ASSERT_EQ(a.code, ExitCode::Ok) << a.err;
    const json& d = a.document;
    EXPECT_EQ(d["format"], "ostium-gauge/projection/1");
    EXPECT_EQ(d["en_face"].size(), 2u);
    ASSERT_EQ(d["edge_on"].size(), 37u);
    for (std::size_t i = 0; i < 37; ++i) {
        EXPECT_EQ(d["edge_on"][i].size(), 2u);
        EXPECT_EQ(d["edge_on"][i]["lao_deg"], -90.0 + 5.0 * static_cast<double>(i));
    }
    EXPECT_THAT(a.out, AllOf(HasSubstr("en face"), HasSubstr("LAO 40.0"), HasSubstr("CRA 20.0"), HasSubstr("edge-on")));
}

// Vectors computed apart from this code from [Blake2012]'s formula, printed to 1e-4 degrees: en face LAO 40 CRA 20, and the
// published view of the tricuspid annulus, LAO 54 CAU 15 (Xiong and others, EuroIntervention, doi 10.4244/EIJ-D-19-00618).
TEST(ProjectionCommand, AgreesWithVectorsComputedApart) {
    const json first = normal("0.60402277,-0.71984631,0.34202014").document;
    EXPECT_NEAR(first["en_face"]["lao_deg"].get<double>(), 40.0, kAngleDeg);
    EXPECT_NEAR(first["en_face"]["cranial_deg"].get<double>(), 20.0, kAngleDeg);
    for (const auto& [lao, cranial] : {std::pair(-60.0, 25.5056), {-50.0, 0.0}, {-40.0, -25.5056}, {-30.0, -43.2192},
                                       {-20.0, -53.9476}, {0.0, -64.5862}, {20.0, -68.8272}})
        EXPECT_NEAR(cranialAt(first["edge_on"], lao), cranial, kAngleDeg) << lao;
    const json second = normal("0.78145041,-0.56775696,-0.25881905").document;
    EXPECT_NEAR(second["en_face"]["lao_deg"].get<double>(), 54.0, kAngleDeg);
    EXPECT_NEAR(second["en_face"]["cranial_deg"].get<double>(), -15.0, kAngleDeg);
    for (const auto& [lao, cranial] : {std::pair(-60.0, -56.6240), {-50.0, -42.0778}, {-30.0, 21.3110}, {-20.0, 45.8103},
                                       {0.0, 65.4935}, {20.0, 72.0889}})
        EXPECT_NEAR(cranialAt(second["edge_on"], lao), cranial, kAngleDeg) << lao;
}

TEST(ProjectionCommand, GivesPublishedEnFaceAnglesBack) {
    // The same publication: tricuspid, caval, coronary sinus, septal, pulmonary and chamber views.
    for (const auto& [lao, cranial] : {std::pair(54.0, -15.0), {-10.0, -66.0}, {27.0, 59.0}, {-28.0, 19.0}, {-33.0, -33.0},
                                       {13.0, -52.0}, {55.0, -15.0}, {-59.0, -54.0}, {-27.0, 19.0}, {5.0, 60.0}}) {
        const double a = lao * kDeg, b = cranial * kDeg;
        std::ostringstream text; // of another length, and turned round
        text.precision(12);
        text << -7.0 * std::sin(a) * std::cos(b) << ',' << 7.0 * std::cos(a) * std::cos(b) << ',' << -7.0 * std::sin(b);
        const Answer answer = normal(text.str());
        ASSERT_EQ(answer.code, ExitCode::Ok) << answer.err;
        EXPECT_NEAR(answer.document["en_face"]["lao_deg"].get<double>(), lao, kAngleDeg);
        EXPECT_NEAR(answer.document["en_face"]["cranial_deg"].get<double>(), cranial, kAngleDeg);
    }
}

TEST(ProjectionCommand, ListsAnUprightPlaneByCranialAngle) {
    const Answer a = normal("1,1,0");
    ASSERT_EQ(a.document["edge_on"].size(), 37u);
    for (std::size_t i = 0; i < 37; ++i) {
        EXPECT_NEAR(a.document["edge_on"][i]["lao_deg"].get<double>(), 45.0, 1e-9);
        EXPECT_EQ(a.document["edge_on"][i]["cranial_deg"], -90.0 + 5.0 * static_cast<double>(i));
    }
}

RC_GTEST_PROP(ProjectionCommand, ListsViewsAlongThePlaneOnly, ()) {
    double n[3];
    for (double& part : n)
        part = *rc::gen::inRange(-100000, 100001) / 1e5;
    const double length = std::sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
    RC_PRE(length > 1e-3);
    std::ostringstream text;
    text.precision(17);
    text << n[0] << ',' << n[1] << ',' << n[2];
    const json d = normal(text.str()).document;
    const auto along = [&](const json& view) {
        const double a = view["lao_deg"].get<double>() * kDeg, b = view["cranial_deg"].get<double>() * kDeg;
        return (n[0] * std::sin(a) * std::cos(b) - n[1] * std::cos(a) * std::cos(b) + n[2] * std::sin(b)) / length;
    };
    for (const json& view : d["edge_on"])
        RC_ASSERT(std::abs(along(view)) < 1e-9);
    RC_ASSERT(std::abs(along(d["en_face"])) > 1.0 - 1e-9);
    RC_ASSERT(std::abs(d["en_face"]["lao_deg"].get<double>()) <= 90.0);
}

TEST(ProjectionCommand, TakesNormalsOfAnyLength) {
    for (const char* text : {"0,0,3e-300", "0,0,1e300", " 0 , 0 , 2 "}) {
        const Answer a = normal(text);
        ASSERT_EQ(a.code, ExitCode::Ok) << text << a.err;
        EXPECT_EQ(a.document["en_face"]["cranial_deg"], 90.0);
    }
}

TEST(ProjectionCommand, RefusesInWordsWhatIsNoNormal) {
    const std::pair<const char*, const char*> cases[] = {{"0,0,0", "\"0,0,0\" has no length"},
                                                         {"nan,0,1", "\"nan\" is not finite"},
                                                         {"1,inf,0", "\"inf\" is not finite"},
                                                         {"1e999,0,0", "\"1e999\""},
                                                         {"1,2", "needs three numbers NX,NY,NZ"},
                                                         {"1,2,3,4", "needs three numbers NX,NY,NZ"},
                                                         {"1,2,left", "\"left\" is none"},
                                                         {"1,,2", "\"\" is none"},
                                                         {"1 2 3", "\"1 2 3\" is none"}};
    for (const auto& [text, finding] : cases) {
        const Answer a = run({"--normal", text});
        EXPECT_EQ(a.code, ExitCode::WrongUsage) << text;
        EXPECT_THAT(a.err, AllOf(HasSubstr("ostium-gauge projection: "), HasSubstr(finding), HasSubstr("Usage:"))) << text;
        EXPECT_TRUE(a.out.empty()) << text;
    }
}

TEST(ProjectionCommand, RefusesAnIncompleteOrContradictoryLine) {
    const std::pair<QStringList, const char*> cases[] = {
        {{}, "--normal NX,NY,NZ or a case file is needed"},
        {{"--normal"}, "normal"},
        {{"--normal", "1,0,0", "--normal", "0,1,0"}, "--normal was given more than once"},
        {{"--normal", "1,0,0", "some.case.json"}, "exclude each other"},
        {{"--normal", "1,0,0", "--offset", "5"}, "are for a case file"},
        {{"a.case.json", "b.case.json"}, "one case file is needed"},
        {{"a.case.json", "--offset", "left"}, "--offset needs numbers"},
        {{"a.case.json", "--offset", "120"}, "must lie within -90 to 90"},
        {{"--normal", "1,0,0", "--json", ""}, "--json needs a value"},
        {{"--normal", "1,0,0", "--tilt", "3"}, "tilt"}};
    for (const auto& [arguments, finding] : cases) {
        const Answer a = run(arguments);
        EXPECT_EQ(a.code, ExitCode::WrongUsage) << finding;
        EXPECT_THAT(a.err, AllOf(HasSubstr(finding), HasSubstr("Usage:"))) << finding;
    }
}

TEST(ProjectionCommand, SaysWhenACaseOrAnOutputCannotBeUsed) {
    const Answer absent = run({"/nowhere/absent.case.json"});
    EXPECT_EQ(absent.code, ExitCode::InputUnreadable);
    EXPECT_THAT(absent.err, HasSubstr("Cannot read the case /nowhere/absent.case.json"));
    const Answer unwritable = run({"--normal", "1,0,0", "--json", "/nowhere/answer.json"});
    EXPECT_EQ(unwritable.code, ExitCode::OutputUnwritable);
    EXPECT_THAT(unwritable.err, HasSubstr("cannot write /nowhere/answer.json"));
    EXPECT_THAT(run({"--help"}).out, HasSubstr("LAO and cranial are positive"));
}
