#include "app/cli/command_line.h"
#include "core/record/case_json.h"
#include "tests/dicomio/support/dicom_bytes.h"

#include <QTemporaryDir>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <sstream>

using namespace gauge::app;
using testing::HasSubstr;
using testing::Not;
namespace fs = std::filesystem;

namespace {

struct Answer {
    ExitCode code;
    std::string out, err;
};

Answer run(const QStringList& arguments) {
    std::ostringstream out, err;
    const ExitCode code = deidentifyCommand(arguments, out, err);
    return {code, out.str(), err.str()};
}

void writeText(const QString& file, const std::string& text) {
    std::ofstream(file.toStdString(), std::ios::binary) << text;
}

std::string contentOf(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// One small CT slice of "Winterbottom^Wanda".
std::string slice() {
    gauge::test::CtSlice one;
    one.sopUid = "1.77.3.1";
    one.studyUid = "1.77.3.2";
    one.seriesUid = "1.77.3.3";
    one.patientId = "INV-998877";
    auto dataset = one.dataset();
    dataset.text(0x00080020, "DA", "20310203").text(0x00100010, "PN", "Winterbottom^Wanda");
    return gauge::test::part10(dataset);
}

std::string wandasCase() {
    gauge::core::CaseFile file;
    gauge::core::Patient patient{"Winterbottom^Wanda", "INV-998877", "19510203", "F", "Wanda", {}};
    file.journal.append(gauge::core::SetSingle<gauge::core::Patient>{gauge::core::Entry<gauge::core::Patient>{patient, 1}}, "Dr Wanda", "");
    gauge::core::ImagesUsed images{"1.77.3.3", std::nullopt, "", "1.77.3.4", 2};
    file.journal.append(gauge::core::SetImages{images}, "Dr Wanda", "");
    file.record = replay(file.journal);
    return caseText(file);
}

} // namespace

TEST(DeidentifyCommand, WritesImagesAndCaseThatStillBelongTogether) {
    const QTemporaryDir folder;
    fs::create_directories(folder.filePath("in").toStdString());
    writeText(folder.filePath("in/Wanda.dcm"), slice());
    writeText(folder.filePath("wanda.case.json"), wandasCase());
    const Answer answer = run({folder.filePath("in"), folder.filePath("out"), "--case", folder.filePath("wanda.case.json")});
    ASSERT_EQ(answer.code, ExitCode::Ok) << answer.err;
    const std::string image = contentOf(folder.filePath("out/images/000001.dcm").toStdString());
    const std::string text = contentOf(folder.filePath("out/case.case.json").toStdString());
    for (const std::string& bytes : {image, text})
        for (const char* trace : {"Wanda", "Winterbottom", "INV-998877", "1.77.3", "20310203", "19510203"})
            EXPECT_THAT(bytes, Not(HasSubstr(trace)));
    const auto file = gauge::core::caseFromJson(text);
    ASSERT_TRUE(file);
    EXPECT_THAT(image, HasSubstr(file->record.images->seriesUid)) << "the case names the series of the exported images";
    EXPECT_THAT(image, HasSubstr(file->record.patient->content.id));
}

TEST(DeidentifyCommand, GivesTheSameReplacementsWithTheSameKey) {
    const QTemporaryDir folder;
    fs::create_directories(folder.filePath("in").toStdString());
    writeText(folder.filePath("in/a.dcm"), slice());
    writeText(folder.filePath("key"), "a key that nobody else knows\n");
    for (const char* target : {"one", "two"})
        ASSERT_EQ(run({folder.filePath("in"), folder.filePath(target), "--key-file", folder.filePath("key")}).code, ExitCode::Ok);
    ASSERT_EQ(run({folder.filePath("in"), folder.filePath("three")}).code, ExitCode::Ok);
    const auto bytes = [&](const char* target) { return contentOf(folder.filePath(QString(target) + "/images/000001.dcm").toStdString()); };
    EXPECT_EQ(bytes("one"), bytes("two"));
    EXPECT_NE(bytes("one"), bytes("three"));
}

TEST(DeidentifyCommand, RefusesInWords) {
    const QTemporaryDir folder;
    fs::create_directories(folder.filePath("in").toStdString());
    writeText(folder.filePath("in/a.dcm"), slice());
    writeText(folder.filePath("key"), "short");
    EXPECT_EQ(run({}).code, ExitCode::WrongUsage);
    Answer answer = run({folder.filePath("in"), folder.filePath("in/below")});
    EXPECT_EQ(answer.code, ExitCode::WrongUsage);
    EXPECT_THAT(answer.err, HasSubstr("lies within the folder of the originals"));
    answer = run({folder.filePath("in"), folder.filePath("out"), "--key-file", folder.filePath("key")});
    EXPECT_EQ(answer.code, ExitCode::WrongUsage);
    EXPECT_THAT(answer.err, HasSubstr("at least 16"));
    answer = run({folder.filePath("in"), folder.path()});
    EXPECT_THAT(answer.err, HasSubstr("not empty"));
    answer = run({folder.filePath("in"), folder.filePath("out"), "--case", folder.filePath("key")});
    EXPECT_EQ(answer.code, ExitCode::InputUnreadable);
    EXPECT_THAT(answer.err, HasSubstr("Cannot read the case"));
}

TEST(DeidentifyCommand, SaysWhenNothingCouldBeExported) {
    const QTemporaryDir folder;
    fs::create_directories(folder.filePath("in").toStdString());
    writeText(folder.filePath("in/notes.txt"), "no image");
    const Answer answer = run({folder.filePath("in"), folder.filePath("out")});
    EXPECT_EQ(answer.code, ExitCode::InputUnreadable);
    EXPECT_THAT(answer.err, HasSubstr("could be exported"));
}
