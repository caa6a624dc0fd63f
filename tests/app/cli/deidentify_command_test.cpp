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

// Nothing of a person in what is said, in names of files, or in what is left behind while it works.
TEST(DeidentifyCommand, LeavesNoTraceInWordsNamesAndTemporaryFiles) {
    const QTemporaryDir folder;
    const std::string temporary = folder.filePath("temporary").toStdString();
    fs::create_directories(temporary);
    fs::create_directories(folder.filePath("in/Winterbottom").toStdString());
    writeText(folder.filePath("in/Winterbottom/Wanda-1951.dcm"), slice());
    writeText(folder.filePath("in/Winterbottom/Wanda-broken.dcm"), slice().substr(0, slice().size() / 2)); // told, and not by its person
    writeText(folder.filePath("wanda.case.json"), wandasCase());
    const QByteArray before = qgetenv("TMPDIR");
    qputenv("TMPDIR", temporary.c_str());
    const Answer answer = run({folder.filePath("in"), folder.filePath("out"), "--case", folder.filePath("wanda.case.json")});
    before.isNull() ? qunsetenv("TMPDIR") : qputenv("TMPDIR", before);
    ASSERT_EQ(answer.code, ExitCode::Ok) << answer.err;
    // A message names the original's file, so that the person finds it; what identifies within the file stays unsaid.
    for (const char* trace : {"INV-998877", "1.77.3", "20310203", "19510203", "Dr Wanda", "Winterbottom^Wanda"})
        for (const std::string& said : {answer.out, answer.err})
            EXPECT_THAT(said, Not(HasSubstr(trace)));
    int files = 0;
    for (const auto& entry : fs::recursive_directory_iterator(folder.filePath("out").toStdString())) {
        const std::string name = entry.path().filename().string();
        for (const char* trace : {"Wanda", "Winterbottom", "1951", "998877"})
            EXPECT_THAT(name, Not(HasSubstr(trace)));
        if (!entry.is_regular_file()) continue;
        ++files;
        for (const char* trace : {"Wanda", "Winterbottom", "INV-998877", "1.77.3", "20310203", "19510203"})
            EXPECT_THAT(contentOf(entry.path()), Not(HasSubstr(trace))) << name;
    }
    EXPECT_EQ(files, 2);
    EXPECT_TRUE(fs::is_empty(temporary)) << "something was left behind";
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
