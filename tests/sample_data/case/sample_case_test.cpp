#include "sample-data/case/sample_case.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include <fstream>
#include <unistd.h>

namespace gauge::sample_case {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;

const SampleCase& builtIn() {
    static const auto sample = readSampleCase(builtInDescription());
    return *sample;
}

TEST(SampleCase, IsReadFromTheDescriptionInTheProgram) {
    const auto sample = readSampleCase(builtInDescription());
    ASSERT_TRUE(sample) << sample.error().message;
    EXPECT_EQ(sample->phases.size(), 3u);
    EXPECT_NE(sample->about.find("Invented"), std::string::npos);
}

TEST(SampleCase, IsTheSameTextAsTheFileBesideTheSources) {
    std::ifstream in(GAUGE_SOURCE_DIR "/sample-data/sample_case.json");
    EXPECT_EQ(json::parse(in), json::parse(builtInDescription()));
}

TEST(SampleCase, IsLargestAt45PercentAndSmallestAt5) {
    // n = 860 gated CT (PLoS One 2015): volume greatest at the 45 % R-R phase, least at 5 %.
    std::map<int, double> volumes, widths;
    for (const SamplePhase& phase : builtIn().phases) {
        const int percent = static_cast<int>(phase.percent);
        volumes[percent] = trueInterior(phase.scene, phase.ostium).volumeMl;
        widths[percent] = phase.ostium.section.metrics.longestDiameterMm;
    }
    EXPECT_LT(volumes[5], volumes[75]);
    EXPECT_LT(volumes[75], volumes[45]);
    EXPECT_LT(widths[5], widths[75]);
    EXPECT_LT(widths[75], widths[45]);
}

TEST(SampleCase, HasAnOvalMouthOfHumanSize) {
    // CT, n = 860 (PLoS One 2015): oval in 81.5 %, longest diameter in women 22.68 (SD 4.07) mm.
    for (const SamplePhase& phase : builtIn().phases) {
        const TrueMetrics& m = phase.ostium.section.metrics;
        EXPECT_NEAR(m.longestDiameterMm, 22.7, 4.1);
        EXPECT_LT(m.shortestDiameterMm / m.longestDiameterMm, 0.8);
    }
}

TEST(SampleCase, HasItsMarksInsideTheImagesAndWhereTheyBelong) {
    for (const SamplePhase& phase : builtIn().phases) {
        const auto tissue = [&](const core::PatientPoint& p) {
            return phase.scene.tissueAt(phase.scene.sceneFrom(p));
        };
        const auto inGrid = [&](const core::PatientPoint& p) {
            const Eigen::Vector3d v = phase.grid.patientFromVoxel().inverse() * p.mm;
            return (v.array() >= 0.0).all() &&
                   (v.array() <= phase.grid.size.cast<double>().array() - 1.0).all();
        };
        EXPECT_EQ(tissue(phase.marks.atrium), Tissue::Pool);
        EXPECT_TRUE(insideAppendage(phase.scene, phase.ostium, phase.marks.tip));
        EXPECT_EQ(phase.scene.cavityAt(phase.scene.sceneFrom(phase.marks.circumflex)), 0);
        EXPECT_EQ(tissue(phase.marks.ridge), Tissue::Muscle);
        const int aorta = phase.scene.cavityAt(phase.scene.sceneFrom(phase.marks.aorta));
        ASSERT_GE(aorta, 0);
        EXPECT_EQ(phase.scene.cavities[static_cast<std::size_t>(aorta)].name, "ascending aorta");
        for (const auto& mark : {phase.marks.atrium, phase.marks.tip, phase.marks.circumflex,
                                 phase.marks.ridge, phase.marks.aorta})
            EXPECT_TRUE(inGrid(mark));
    }
}

/// What reading it says; empty when it succeeds.
std::string complaint(const std::string& description) {
    const auto sample = readSampleCase(description);
    return sample ? "" : sample.error().message;
}

TEST(ReadSampleCase, NamesWhatIsWrongWithADescription) {
    EXPECT_NE(complaint("{ not json").find("Cannot read the sample case"), std::string::npos);
    json given = json::parse(builtInDescription());
    given["format"] = "something/else";
    EXPECT_NE(complaint(given.dump()).find("something/else"), std::string::npos);
    given = json::parse(builtInDescription());
    given["atrium"].erase("half_axes");
    EXPECT_NE(complaint(given.dump()).find("half_axes"), std::string::npos);
    given = json::parse(builtInDescription());
    given["imaging"]["size"] = "large";
    EXPECT_NE(complaint(given.dump()).find("type"), std::string::npos);
    given = json::parse(builtInDescription());
    given["marks"]["ridge_below_crest"] = -5.0; // the plane now cuts the atrium
    EXPECT_NE(complaint(given.dump()).find("opens into the atrium"), std::string::npos);
}

/// The CT of the case in few and large voxels, and its first phases only.
SampleCase coarse(std::size_t phases) {
    json given = json::parse(builtInDescription());
    given.erase("pressure"); // no procedure
    given["imaging"]["size"] = {24, 20, 6};
    given["imaging"]["spacing_mm"] = {1.2, 1.2, 1.2};
    while (given["phases"].size() > phases)
        given["phases"].erase(phases);
    return *readSampleCase(given.dump());
}

class WriteSampleCase : public testing::Test {
protected:
    WriteSampleCase()
        : m_folder(fs::temp_directory_path() /
                   ("gauge-sample-" + std::to_string(::getpid()) + "-" +
                    testing::UnitTest::GetInstance()->current_test_info()->name())) {}
    ~WriteSampleCase() override {
        std::error_code ignored;
        fs::remove_all(m_folder, ignored);
    }
    static void touch(const fs::path& file) {
        fs::create_directories(file.parent_path());
        std::ofstream(file) << "mine";
    }
    std::string refusal() const {
        const auto written = writeSampleCase(coarse(1), m_folder);
        EXPECT_FALSE(written);
        EXPECT_EQ(written.error().code, core::ErrorCode::OutputUnwritable);
        return written.error().message;
    }

    fs::path m_folder;
};

TEST_F(WriteSampleCase, LeavesImagesOfEveryPhaseAndTheAnswers) {
    const auto files = writeSampleCase(coarse(3), m_folder);
    ASSERT_TRUE(files) << files.error().message;
    EXPECT_EQ(files->images, 18u);
    EXPECT_TRUE(fs::exists(m_folder / "dicom" / "phase-45-percent" / "slice-0006.dcm"));
    std::ifstream in(m_folder / "answers.json");
    const json found = json::parse(in);
    EXPECT_EQ(found["format"], "ostium-gauge/sample-answers/1");
    ASSERT_EQ(found["phases"].size(), 3u);
    const json& phase = found["phases"][1];
    EXPECT_EQ(phase["percent"], 45.0);
    EXPECT_EQ(phase["landing_zones"].size(), 2u);
    EXPECT_NEAR(phase["ostium"]["longest_diameter_mm"].get<double>(),
                builtIn().phases[1].ostium.section.metrics.longestDiameterMm, 1e-5);
    EXPECT_GT(phase["volume_ml"].get<double>(), 5.0);
    EXPECT_GT(phase["axis"]["points_lps_mm"].size(), 50u);
}

TEST_F(WriteSampleCase, ReplacesAnEarlierSampleCase) {
    ASSERT_TRUE(writeSampleCase(coarse(2), m_folder));
    EXPECT_TRUE(fs::exists(m_folder / "dicom" / "phase-45-percent"));
    ASSERT_TRUE(writeSampleCase(coarse(1), m_folder)); // a series of one phase needs no folders for phases
    EXPECT_FALSE(fs::exists(m_folder / "dicom" / "phase-45-percent"));
    EXPECT_TRUE(fs::exists(m_folder / "dicom" / "slice-0001.dcm"));
}

TEST_F(WriteSampleCase, NeverTouchesFilesOfOthers) {
    touch(m_folder / "dicom" / "IM0001");
    EXPECT_NE(refusal().find("not known to be a sample case"), std::string::npos);
    EXPECT_TRUE(fs::exists(m_folder / "dicom" / "IM0001"));
}

TEST_F(WriteSampleCase, NeverTouchesAFileAmongItsOwn) {
    ASSERT_TRUE(writeSampleCase(coarse(1), m_folder));
    touch(m_folder / "dicom" / "notes.txt");
    EXPECT_NE(refusal().find("notes.txt"), std::string::npos);
    EXPECT_TRUE(fs::exists(m_folder / "dicom" / "notes.txt"));
    EXPECT_TRUE(fs::exists(m_folder / "dicom" / "slice-0001.dcm"));
}

TEST_F(WriteSampleCase, NeverReplacesAnswersOfOthers) {
    touch(m_folder / "answers.json");
    EXPECT_NE(refusal().find("was not written by this program"), std::string::npos);
}

TEST_F(WriteSampleCase, NeverReplacesObservationsOfOthers) {
    touch(m_folder / "observations-passing.json");
    const auto written = writeSampleCase(*readSampleCase(builtInDescription()), m_folder);
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, core::ErrorCode::OutputUnwritable);
    EXPECT_NE(written.error().message.find("observations-passing.json is there already and was not written by this program"),
              std::string::npos);
    EXPECT_FALSE(fs::exists(m_folder / "answers.json"));
}

TEST_F(WriteSampleCase, SaysWhenTheFolderCannotBeMade) {
    touch(m_folder);
    EXPECT_NE(refusal().find(m_folder.string()), std::string::npos);
}

TEST_F(WriteSampleCase, StopsWhenAsked) {
    std::stop_source source;
    source.request_stop();
    const auto written = writeSampleCase(coarse(1), m_folder, {source.get_token(), {}});
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, core::ErrorCode::Cancelled);
}

} // namespace
} // namespace gauge::sample_case
