#include "app/cli/command_line.h"
#include "tests/dicomio/support/dicom_bytes.h"

#include <fstream>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>
#include <sstream>

using namespace gauge::app;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

struct Answer {
    ExitCode code;
    std::string out;
    std::string err;
};

Answer index(const QStringList& arguments) {
    std::ostringstream out, err;
    const ExitCode code = indexCommand(arguments, out, err);
    return {code, out.str(), err.str()};
}

QString text(const std::filesystem::path& path) {
    return QString::fromStdString(path.string());
}

nlohmann::json jsonOf(const TempFolder& folder, ExitCode expected) {
    const auto file = folder.path() / "index.json";
    EXPECT_EQ(index({text(folder.path()), "--verify", "--json", text(file)}).code, expected);
    std::ifstream in(file);
    return nlohmann::json::parse(in);
}

} // namespace

TEST(IndexCommand, ListsASeriesForPeopleAndAsJson) {
    const TempFolder folder;
    writeStack(folder, ctStack(3, 1.0));
    folder.write("notes.txt", "nothing");
    const Answer run = index({text(folder.path())});
    EXPECT_EQ(run.code, ExitCode::Ok);
    EXPECT_THAT(run.out, HasSubstr("CT  \"Heart\"  ct, 3 images, 0.250 x 0.500 x 1.000 mm"));
    EXPECT_THAT(run.out, HasSubstr("notes.txt: It is not DICOM"));
    EXPECT_EQ(run.err, "");

    const auto json = jsonOf(folder, ExitCode::Ok);
    EXPECT_EQ(json["format"], "ostium-gauge/index/1");
    ASSERT_EQ(json["series"].size(), 1u);
    const auto& series = json["series"][0];
    EXPECT_EQ(series["uid"], "1.2.3.4");
    EXPECT_EQ(series["modality"], "CT");
    EXPECT_EQ(series["kind"], "ct");
    EXPECT_EQ(series["description"], "Heart");
    EXPECT_EQ(series["images"], 3);
    EXPECT_EQ(series["phases"], nlohmann::json::array());
    EXPECT_EQ(series["spacing_mm"], nlohmann::json({0.25, 0.5, 1.0}));
    EXPECT_EQ(series["tilt_deg"], 0.0);
    EXPECT_EQ(series["status"], "ok");
    EXPECT_EQ(series["messages"], nlohmann::json::array());
    ASSERT_EQ(json["skipped"].size(), 1u);
    EXPECT_THAT(json["skipped"][0]["file"].get<std::string>(), HasSubstr("notes.txt"));
    EXPECT_THAT(json["skipped"][0]["reason"].get<std::string>(), HasSubstr("It is not DICOM"));
}

TEST(IndexCommand, WritesPhasesAsPercents) {
    const TempFolder folder;
    int file = 0;
    for (const double percent : {75.0, 37.5})
        for (auto& slice : ctStack(2, 1.0)) {
            slice.sopUid += "." + std::to_string(file);
            DatasetBytes d = slice.dataset();
            folder.write(std::to_string(file++), d.fd(0x00209241, percent));
        }
    EXPECT_EQ(jsonOf(folder, ExitCode::Ok)["series"][0]["phases"], nlohmann::json({37.5, 75.0}));
    EXPECT_THAT(index({text(folder.path())}).out, HasSubstr("phases:  37.5 %, 75 %"));
}

TEST(IndexCommand, AnswersWithTheReasonWhenNothingIsUsable) {
    const TempFolder folder;
    auto slices = ctStack(4, 1.0);
    slices.erase(slices.begin() + 2);
    slices.push_back(ctStack(6, 1.0).back());
    writeStack(folder, slices);
    const auto json = jsonOf(folder, ExitCode::InputUnreadable);
    EXPECT_EQ(json["series"][0]["status"], "refused");
    EXPECT_EQ(json["series"][0]["messages"][0]["code"], "slice-missing");
    EXPECT_TRUE(json["series"][0]["spacing_mm"].is_null());
    EXPECT_TRUE(json["series"][0]["tilt_deg"].is_null());
    const Answer run = index({text(folder.path())});
    EXPECT_THAT(run.err,
                HasSubstr("Nothing in " + folder.path().string() + " can be used: 1 series were refused"));
    EXPECT_THAT(run.err, HasSubstr("slice(s) are missing"));
    EXPECT_EQ(std::count(run.err.begin(), run.err.end(), '\n'), 1); // one paragraph
    EXPECT_THAT(index({text(folder.path() / "none")}).err, HasSubstr("there is no such folder"));
    EXPECT_EQ(index({text(folder.path() / "none")}).code, ExitCode::InputUnreadable);
}

TEST(IndexCommand, SaysThatAFolderIsEmpty) {
    const TempFolder folder;
    const Answer run = index({text(folder.path())});
    EXPECT_EQ(run.code, ExitCode::InputUnreadable);
    EXPECT_THAT(run.err, HasSubstr("can be used: there is no file in it or in its folders."));
}

TEST(IndexCommand, AnswersWrongUsageWithALineOnUsage) {
    for (const QStringList& wrong : {QStringList{}, QStringList{"a", "b"}, QStringList{"--unknown", "a"},
                                     QStringList{"a", "--json"}, QStringList{""}}) {
        const Answer run = index(wrong);
        EXPECT_EQ(run.code, ExitCode::WrongUsage) << wrong.join(' ').toStdString();
        EXPECT_THAT(run.err, HasSubstr("Usage: ostium-gauge index FOLDER [--verify] [--json FILE]"));
    }
}

TEST(IndexCommand, ShowsHelp) {
    const Answer run = index({"--help"});
    EXPECT_EQ(run.code, ExitCode::Ok);
    EXPECT_THAT(run.out, HasSubstr("--verify"));
}

TEST(IndexCommand, SaysThatTheJsonCannotBeWritten) {
    const TempFolder folder;
    writeStack(folder, ctStack(2, 1.0));
    const Answer run = index({text(folder.path()), "--json", text(folder.path() / "no/such/index.json")});
    EXPECT_EQ(run.code, ExitCode::OutputUnwritable);
    EXPECT_THAT(run.err, HasSubstr("cannot write"));
}
