#include "app/cli/command_line.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <sstream>
#include <unistd.h>

namespace gauge::app {
namespace {

namespace fs = std::filesystem;

class SampleCommand : public testing::Test {
protected:
    SampleCommand()
        : m_folder(fs::temp_directory_path() /
                   ("gauge-sample-command-" + std::to_string(::getpid()) + "-" +
                    testing::UnitTest::GetInstance()->current_test_info()->name())) {
        fs::create_directories(m_folder);
    }
    ~SampleCommand() override {
        std::error_code ignored;
        fs::remove_all(m_folder, ignored);
    }
    ExitCode run(const QStringList& arguments) { return sampleCommand(arguments, out, err); }
    QString folder() const { return QString::fromStdString(m_folder.string()); }

    fs::path m_folder;
    std::ostringstream out, err;
};

TEST_F(SampleCommand, TellsItsHelp) {
    EXPECT_EQ(run({"--help"}), ExitCode::Ok);
    EXPECT_NE(out.str().find("Usage: ostium-gauge sample FOLDER"), std::string::npos);
    EXPECT_TRUE(err.str().empty());
}

TEST_F(SampleCommand, CallsWrongUsageByItsName) {
    EXPECT_EQ(run({}), ExitCode::WrongUsage);
    EXPECT_NE(err.str().find("a folder to write to is needed"), std::string::npos);
    EXPECT_EQ(run({"one", "two"}), ExitCode::WrongUsage);
    EXPECT_NE(err.str().find("exactly one folder"), std::string::npos);
    EXPECT_EQ(run({"--colour", "one"}), ExitCode::WrongUsage);
    EXPECT_NE(err.str().find("colour"), std::string::npos);
    EXPECT_TRUE(out.str().empty());
}

TEST_F(SampleCommand, LeavesFilesOfOthersAlone) {
    fs::create_directories(m_folder / "dicom");
    std::ofstream(m_folder / "dicom" / "IM0001") << "mine";
    EXPECT_EQ(run({folder()}), ExitCode::OutputUnwritable);
    EXPECT_NE(err.str().find("not known to be a sample case"), std::string::npos);
    EXPECT_TRUE(fs::exists(m_folder / "dicom" / "IM0001"));
    EXPECT_FALSE(fs::exists(m_folder / "answers.json"));
}

TEST_F(SampleCommand, SaysWhenTheFolderCannotBeWritten) {
    std::ofstream(m_folder / "file") << "a file where a folder should be";
    EXPECT_EQ(run({folder() + "/file"}), ExitCode::OutputUnwritable);
    EXPECT_NE(err.str().find("/file"), std::string::npos);
    EXPECT_EQ(err.str().find('\n'), err.str().size() - 1) << "one paragraph";
}

} // namespace
} // namespace gauge::app
