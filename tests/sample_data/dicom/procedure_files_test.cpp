// The files of echo and fluoroscopy, read by programs that are not ours: pydicom, and dciodvfy of Debian's dicom3tools.
#include "sample-data/case/sample_case.h"
#include "sample-data/case/write_procedure.h"
#include "sample-data/dicom/us_writer.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include <array>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <unistd.h>

namespace gauge::sample_case {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;

/// The procedure with few frames and coarse pixels.
SampleCase small() {
    json given = json::parse(builtInDescription());
    given["echo"]["frames"] = 2;
    given["fluoroscopy"]["frames"] = 2;
    given["fluoroscopy"]["size"] = {128, 128};
    given["fluoroscopy"]["imager_spacing_mm"] = 1.2;
    given["echo_volume"]["spacing_mm"] = 2.8;
    given["echo_volume"]["blur_fwhm_mm"] = 2.8;
    return *readSampleCase(given.dump());
}

std::string output(const std::string& command, int& status) {
    std::string answer;
    FILE* pipe = popen(command.c_str(), "r");
    std::array<char, 4096> buffer{};
    while (const std::size_t got = std::fread(buffer.data(), 1, buffer.size(), pipe))
        answer.append(buffer.data(), got);
    status = pclose(pipe);
    return answer;
}

std::string bytesOf(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// Written once for all tests.
class ProcedureFiles : public testing::Test {
protected:
    static void SetUpTestSuite() {
        s_sample = new SampleCase(small());
        s_folder = fs::temp_directory_path() / ("gauge-procedure-" + std::to_string(::getpid()));
        const auto written = writeProcedure(*s_sample->procedure, s_folder);
        ASSERT_TRUE(written) << written.error().message;
        s_files = new std::vector<fs::path>(*written);
        int status = 0;
        const std::string answer = output(std::string(GAUGE_PYTHON) +
                                              " " GAUGE_SOURCE_DIR "/tests/sample_data/dicom/read_procedure.py " +
                                              s_folder.string(),
                                          status);
        ASSERT_EQ(status, 0) << "pydicom could not read the files";
        s_found = new json(json::parse(answer));
    }
    static void TearDownTestSuite() {
        std::error_code ignored;
        fs::remove_all(s_folder, ignored);
        delete s_sample;
        delete s_files;
        delete s_found;
    }
    static const Procedure& procedure() { return *s_sample->procedure; }
    static const json& found(const ImageFacts& facts) { return s_found->at(fileOf(facts).generic_string()); }

    static SampleCase* s_sample;
    static fs::path s_folder;
    static std::vector<fs::path>* s_files;
    static json* s_found;
};
SampleCase* ProcedureFiles::s_sample = nullptr;
fs::path ProcedureFiles::s_folder;
std::vector<fs::path>* ProcedureFiles::s_files = nullptr;
json* ProcedureFiles::s_found = nullptr;

TEST_F(ProcedureFiles, AreWithoutErrorsToAnIndependentValidator) {
    ASSERT_EQ(s_files->size(), 12u);
    for (const fs::path& file : *s_files) {
        int status = 0;
        // 127 in the shell when dciodvfy is missing: install dicom3tools.
        const std::string said = output("command -v dciodvfy >/dev/null || exit 127; dciodvfy '" + file.string() + "' 2>&1; true", status);
        ASSERT_EQ(status, 0) << "dciodvfy is needed: install Debian's dicom3tools";
        EXPECT_EQ(said.find("Error"), std::string::npos) << file << "\n" << said;
        EXPECT_EQ(said.find("Abort"), std::string::npos) << file << "\n" << said;
    }
}

TEST_F(ProcedureFiles, BelongToOnePatientAndOneStudyOfTheDayAfter) {
    for (const auto& [name, file] : s_found->items()) {
        EXPECT_EQ(file["patient"], s_sample->series.patientId) << name;
        EXPECT_EQ(file["study"], procedure().fluoro.front().facts.studyInstanceUid()) << name;
        EXPECT_NE(file["study"], uidFrom(s_sample->series.uidText + "/study")) << "not the CT's";
        EXPECT_EQ(file["date"], "20260113") << name;
    }
}

TEST_F(ProcedureFiles, CalibrateTheirRegions) {
    for (const EchoSet& set : procedure().echo)
        for (std::size_t view = 0; view < set.views.size(); ++view) {
            const json& file = found(set.facts[view]);
            EXPECT_EQ(file["class"], "1.2.840.10008.5.1.4.1.1.3.1");
            ASSERT_EQ(file["regions"].size(), 2u);
            const json &tissue = file["regions"][0], &ecg = file["regions"][1];
            EXPECT_EQ(tissue["format"], 1);
            EXPECT_EQ(tissue["data"], 1);
            EXPECT_EQ(tissue["units"], (json{3, 3}));
            EXPECT_NEAR(10.0 * tissue["delta"][0].get<double>(), set.views[view].fan.mmPerPixel, 1e-12);
            EXPECT_NEAR(10.0 * tissue["delta"][1].get<double>(), set.views[view].fan.mmPerPixel, 1e-12);
            // The reference pixel is the apex, counted from the box's corner.
            EXPECT_EQ(tissue["box"][0].get<int>() + tissue["reference"][0].get<int>(), 319);
            EXPECT_EQ(tissue["box"][1].get<int>() + tissue["reference"][1].get<int>(), 36);
            EXPECT_EQ(ecg["data"], 10);
            EXPECT_EQ(ecg["units"], (json{4, 0}));
            EXPECT_NEAR(ecg["delta"][0].get<double>(), set.ecg.secondsPerPixel, 1e-12);
            EXPECT_EQ(file["frame_time"], 40.0);
            EXPECT_EQ(file["frames"], 2);
            EXPECT_EQ(file["view_codes"].size(), set.angleInFile ? 1u : 0u);
            EXPECT_EQ(file["syntax"], set.runLength ? "1.2.840.10008.1.2.5" : "1.2.840.10008.1.2.1");
        }
    // The longitudinal view's code: PS3.16, 131103 = 90 degrees.
    EXPECT_EQ(found(procedure().echo.front().facts[2])["view_codes"][0], "131103");
}

TEST_F(ProcedureFiles, HoldThePixelsThatWereDrawn) {
    const EchoSet& set = procedure().echo.back(); // run-length coded
    BModeOptions options = set.options;
    options.seed += 17;
    const BMode mode(set.views[1], options);
    const Picture drawn = echoFrame(set, 1, mode, procedure().heartIn(set.state).at(set.times.percentAt(1)), 1);
    double sum = 0.0;
    for (const std::uint8_t value : drawn.bytes())
        sum += value;
    EXPECT_EQ(found(set.facts[1])["sums"][1].get<double>(), sum);
}

TEST_F(ProcedureFiles, ScaleTheSpectrumDownwards) {
    const DopplerImage& image = procedure().doppler.front();
    const json& file = found(image.facts);
    EXPECT_EQ(file["class"], "1.2.840.10008.5.1.4.1.1.6.1");
    EXPECT_EQ(file["photometric"], "RGB");
    const json& spectrum = file["regions"][0];
    EXPECT_EQ(spectrum["format"], 3);
    EXPECT_EQ(spectrum["units"], (json{4, 7}));
    EXPECT_NEAR(spectrum["delta"][1].get<double>(), -image.still.cmPerSPerPixel, 1e-12);
    EXPECT_EQ(spectrum["box"][1].get<int>() + spectrum["reference"][1].get<int>(), image.still.baselineY);
}

TEST_F(ProcedureFiles, PlaceTheVolumesPlanes) {
    const EchoVolumeSeries& series = procedure().volumes.front();
    const json& file = found(series.facts);
    EXPECT_EQ(file["class"], "1.2.840.10008.5.1.4.1.1.6.2");
    const json& volume = file["volume"];
    EXPECT_EQ(volume["frame_of_reference"], series.volumeFrameOfReferenceUid);
    EXPECT_NE(volume["frame_of_reference"], procedure().fluoro.front().facts.frameOfReferenceUid);
    EXPECT_EQ(volume["orientation"], (json{1.0, 0.0, 0.0, 0.0, 0.0, 1.0}));
    EXPECT_EQ(volume["spacing"], (json{2.8, 2.8}));
    const auto planes = static_cast<std::size_t>(series.grid.size.z());
    ASSERT_EQ(volume["positions"].size(), 2 * planes);
    for (std::size_t k = 0; k < planes; ++k) {
        const Eigen::Vector3d first = series.grid.patientFromVoxel() * Eigen::Vector3d(0, 0, static_cast<double>(k));
        for (int axis = 0; axis < 3; ++axis)
            EXPECT_NEAR(volume["positions"][k][static_cast<std::size_t>(axis)].get<double>(), first[axis], 1e-9);
    }
    EXPECT_NEAR(volume["percents"][0].get<double>(), 5.0, 1e-5);
    EXPECT_NEAR(volume["percents"][2 * planes - 1].get<double>(), 45.0, 1e-5);
}

TEST_F(ProcedureFiles, KeepTheVolumesBloodWhereTheHeartHasIt) {
    const EchoVolumeSeries& series = procedure().volumes.front();
    const json& volume = found(series.facts)["volume"];
    // Mean grey of voxels well inside the appendage, by the transform that the answers state.
    const Heart heart = procedure().heartIn(series.state).at(45.0);
    const Eigen::Affine3d voxelFromPatient =
        (series.patientFromVolume() * series.grid.patientFromVoxel()).inverse();
    const core::Plane plane = landingPlane(heart, 4.0);
    const Eigen::Vector3d inBlood = voxelFromPatient * plane.point.mm;
    const Eigen::Vector3d inWall = voxelFromPatient * heart.marks.ridge.mm;
    const auto at = [&](const Eigen::Vector3d& voxel) {
        const auto k = static_cast<std::size_t>(std::lround(voxel.z()) + series.grid.size.z());
        return volume["values"][k][static_cast<std::size_t>(std::lround(voxel.y()))]
                     [static_cast<std::size_t>(std::lround(voxel.x()))].get<double>();
    };
    EXPECT_LT(at(inBlood), 25.0);
    EXPECT_GT(at(inWall), 25.0);
}

TEST_F(ProcedureFiles, TellTheCArmsGeometry) {
    for (const FluoroRun& run : procedure().fluoro) {
        const json& file = found(run.facts);
        EXPECT_EQ(file["class"], "1.2.840.10008.5.1.4.1.1.12.1");
        EXPECT_EQ(file["positioner"], (json{run.arm.primaryDeg, run.arm.secondaryDeg}));
        EXPECT_EQ(file["distances"], (json{1100.0, 750.0}));
        EXPECT_EQ(file["imager_spacing"], (json{1.2, 1.2}));
        EXPECT_EQ(file["frame_time"], 100.0);
    }
}

TEST_F(ProcedureFiles, AreTheSameBytesForTheSameSeed) {
    const fs::path again = s_folder.string() + "-again";
    const auto written = writeProcedure(*s_sample->procedure, again);
    ASSERT_TRUE(written);
    for (const fs::path& file : *s_files)
        EXPECT_EQ(bytesOf(file), bytesOf(again / fs::relative(file, s_folder))) << file;
    fs::remove_all(again);
}

TEST(WriteProcedure, NamesTheFileThatCannotBeWritten) {
    const fs::path blocked = fs::temp_directory_path() / ("gauge-procedure-blocked-" + std::to_string(::getpid()));
    std::ofstream(blocked) << "a file where a folder should be";
    UsImage image;
    image.frames = {Picture(8, 8, 1)};
    const auto written = writeUsImage(image, blocked / "echo" / "series-1.dcm");
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, core::ErrorCode::OutputUnwritable);
    EXPECT_NE(written.error().message.find("series-1.dcm"), std::string::npos);
    fs::remove(blocked);
}

TEST(WriteProcedure, StopsWhenAsked) {
    const auto sample = readSampleCase(builtInDescription());
    std::stop_source source;
    source.request_stop();
    const fs::path folder = fs::temp_directory_path() / ("gauge-procedure-stopped-" + std::to_string(::getpid()));
    const auto written = writeProcedure(*sample->procedure, folder, {source.get_token(), {}});
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, core::ErrorCode::Cancelled);
    std::error_code ignored;
    fs::remove_all(folder, ignored);
}

TEST(SampleCase, StaysOfSensibleSize) {
    // Bytes of all pixels, uncompressed; the whole folder is to stay under 450 MB.
    const auto sample = readSampleCase(builtInDescription());
    double bytes = 0.0;
    for (const SamplePhase& phase : sample->phases)
        bytes += 2.0 * phase.grid.size.cast<double>().prod();
    for (const EchoSet& set : sample->procedure->echo)
        for (const EchoPlane& view : set.views)
            bytes += 1.0 * view.fan.columns * view.fan.rows * set.times.frames;
    for (const EchoVolumeSeries& volume : sample->procedure->volumes)
        bytes += volume.grid.size.cast<double>().prod() * static_cast<double>(volume.percents.size());
    for (const FluoroRun& run : sample->procedure->fluoro)
        bytes += 1.0 * run.arm.columns * run.arm.rows * run.times.frames;
    EXPECT_LT(bytes, 450e6);
    EXPECT_GT(bytes, 100e6);
}

} // namespace
} // namespace gauge::sample_case
