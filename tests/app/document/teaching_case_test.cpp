#include "app/document/teaching_case.h"

#include <QTemporaryDir>
#include <fstream>
#include <gtest/gtest.h>

using namespace gauge;
using app::findTeachingMarks;

namespace {

class TeachingCase : public ::testing::Test {
protected:
    // One level down: what lies beside the temporary folder is not ours to judge.
    std::filesystem::path folder() const {
        const auto made = std::filesystem::path(m_folder.path().toStdString()) / "case";
        std::filesystem::create_directory(made);
        return made;
    }
    void write(const std::string& text) const { std::ofstream(folder() / "answers.json") << text; }

private:
    QTemporaryDir m_folder;
};

constexpr auto kAnswers = R"({"format":"ostium-gauge/sample-answers/1",
    "phases":[{"percent":40,"marks_lps_mm":{"atrium":[1,2,3],"tip":[4,5,6.5],"circumflex":[7,8,9],"ridge":null}},
              {"percent":75,"marks_lps_mm":{"atrium":[1,2,3],"tip":[40,50,60]}}]})";

} // namespace

TEST_F(TeachingCase, MarksAreFoundInTheFolderAndAboveIt) {
    write(kAnswers);
    std::filesystem::create_directory(folder() / "dicom");
    for (const auto& place : {folder(), folder() / "dicom", folder() / "dicom/"}) {
        const auto marks = findTeachingMarks(place, 45.0);
        ASSERT_TRUE(marks && *marks) << place;
        EXPECT_EQ((*marks)->points.size(), 3u);
        EXPECT_EQ((*marks)->points.at(core::MarkKind::Tip).mm, Eigen::Vector3d(4, 5, 6.5));
    }
}

TEST_F(TeachingCase, MarksAreThoseOfTheNearestPhase) {
    write(kAnswers);
    EXPECT_EQ((*findTeachingMarks(folder(), 70.0))->points.at(core::MarkKind::Tip).mm,
              Eigen::Vector3d(40, 50, 60));
}

TEST_F(TeachingCase, AnotherProgramsFileOfThatNameIsLeftAlone) {
    for (const char* text :
         {"", "[]", "{\"answers\":1}",
          R"({"format":"other/1","phases":[{"percent":45,"marks_lps_mm":{"tip":[1,2,3]}}]})"}) {
        write(text);
        const auto marks = findTeachingMarks(folder(), 45.0);
        ASSERT_TRUE(marks) << text;
        EXPECT_FALSE(marks->has_value()) << text;
    }
}

TEST_F(TeachingCase, DamagedMarksAreAnErrorThatNamesTheFile) {
    write(R"({"format":"ostium-gauge/sample-answers/1","phases":[{"marks_lps_mm":{"tip":[1,"2",3]}}]})");
    const auto marks = findTeachingMarks(folder(), 45.0);
    ASSERT_FALSE(marks);
    EXPECT_NE(marks.error().message.find((folder() / "answers.json").string()), std::string::npos);
    EXPECT_NE(marks.error().message.find("the mark \"tip\" is not three numbers"), std::string::npos);
    write(R"({"format":"ostium-gauge/sample-answers/1"})");
    EXPECT_NE(findTeachingMarks(folder(), 45.0).error().message.find("has none"), std::string::npos);
}
