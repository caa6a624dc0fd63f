#include "sample-data/dicom/ct_writer.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include <array>
#include <cstdio>
#include <fstream>
#include <set>
#include <unistd.h>

namespace gauge::sample_case {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;

/// A folder of its own for each test, gone afterwards.
class CtWriter : public testing::Test {
protected:
    CtWriter()
        : m_folder(fs::temp_directory_path() /
                   ("gauge-ct-writer-" + std::to_string(::getpid()) + "-" +
                    testing::UnitTest::GetInstance()->current_test_info()->name())) {
        fs::create_directories(m_folder);
    }
    ~CtWriter() override {
        std::error_code ignored;
        fs::remove_all(m_folder, ignored);
    }

    static std::shared_ptr<const core::Volume> volume(const Eigen::Affine3d& affine, int shift = 0) {
        const Eigen::Vector3i size(7, 5, 4);
        std::vector<std::int16_t> voxels;
        for (int i = 0; i < size.prod(); ++i)
            voxels.push_back(static_cast<std::int16_t>(-1000 + 13 * i + shift));
        return *core::Volume::make(size, voxels, affine, core::VoxelQuantity::HounsfieldUnits,
                                   uidFrom("frame"));
    }
    static Eigen::Affine3d oblique() {
        Eigen::Affine3d affine = Eigen::Affine3d::Identity();
        affine.linear() =
            Eigen::AngleAxisd(0.7, Eigen::Vector3d(1, -2, 0.5).normalized()).toRotationMatrix() *
            Eigen::Vector3d(0.4130927, 0.3912345, 0.6271828).asDiagonal();
        affine.translation() = Eigen::Vector3d(-123.456789012345, 98.7654321098765, -1001.23456789);
        return affine;
    }
    json readBack() const {
        const std::string command = std::string(GAUGE_PYTHON) +
                                    " " GAUGE_SOURCE_DIR "/tests/sample_data/dicom/read_back.py " +
                                    m_folder.string();
        std::string answer;
        FILE* pipe = popen(command.c_str(), "r");
        std::array<char, 4096> buffer{};
        while (const std::size_t got = std::fread(buffer.data(), 1, buffer.size(), pipe))
            answer.append(buffer.data(), got);
        EXPECT_EQ(pclose(pipe), 0) << "pydicom could not read the files";
        return json::parse(answer, nullptr, false);
    }

    fs::path m_folder;
};

Eigen::Vector3d vectorOf(const json& numbers, std::size_t first = 0) {
    const auto number = [&](std::size_t i) {
        return numbers[i].is_string() ? std::stod(numbers[i].get<std::string>()) : numbers[i].get<double>();
    };
    return {number(first), number(first + 1), number(first + 2)};
}

TEST_F(CtWriter, GivesPydicomTheSameGeometryAndValues) {
    for (const bool signedPixels : {true, false}) {
        const auto written = volume(oblique());
        CtSeries series;
        series.signedPixels = signedPixels;
        series.patientName = "Übung^Größe";
        ASSERT_TRUE(writeCtSeries({{written, std::nullopt}}, series, m_folder));
        const json slices = readBack();
        ASSERT_EQ(slices.size(), 4u);
        for (std::size_t k = 0; k < 4; ++k) {
            const json& slice = slices[k];
            EXPECT_EQ(slice["name"], "Übung^Größe");
            EXPECT_EQ(slice["representation"], signedPixels ? 1 : 0);
            // PS3.3 C.7.6.2.1.1, equation C.7.6.2.1-1: position + column index * spacing * row direction + …
            const Eigen::Vector3d position = vectorOf(slice["position"]);
            const Eigen::Vector3d row = vectorOf(slice["orientation"]),
                                  column = vectorOf(slice["orientation"], 3);
            for (const auto& [i, j] : {std::pair{0, 0}, {6, 0}, {0, 4}, {6, 4}}) {
                const Eigen::Vector3d place = position + i * slice["spacing"][1].get<double>() * row +
                                              j * slice["spacing"][0].get<double>() * column;
                EXPECT_LT((place - written->patientFrom({{double(i), double(j), double(k)}}).mm).norm(),
                          1e-6);
            }
            double sum = 0.0;
            for (int j = 0; j < 5; ++j)
                for (int i = 0; i < 7; ++i)
                    sum += written->at(i, j, static_cast<int>(k));
            EXPECT_EQ(slice["hu_sum"].get<double>(), sum);
            for (int i = 0; i < 7; ++i)
                EXPECT_EQ(slice["hu_first_row"][static_cast<std::size_t>(i)].get<double>(),
                          written->at(i, 0, static_cast<int>(k)));
        }
    }
}

TEST_F(CtWriter, WritesCompleteCtImages) {
    ASSERT_TRUE(writeCtSeries({{volume(oblique()), 45.0}, {volume(oblique(), 5), 75.0}}, {}, m_folder));
    const json slices = readBack();
    ASSERT_EQ(slices.size(), 8u);
    std::set<std::string> instances, series, studies;
    for (const json& slice : slices) {
        EXPECT_EQ(slice["class"], "1.2.840.10008.5.1.4.1.1.2"); // CT Image Storage
        EXPECT_EQ(slice["file_class"], slice["class"]);
        EXPECT_EQ(slice["file_instance"], slice["instance"]);
        EXPECT_EQ(slice["syntax"], "1.2.840.10008.1.2.1"); // explicit little endian
        EXPECT_TRUE(slice["missing"].empty()) << slice["missing"];
        EXPECT_LE(slice["longest_ds"].get<int>(), 16);
        EXPECT_NEAR(slice["thickness"].get<double>(), 0.6271828, 1e-9);
        instances.insert(slice["instance"]);
        series.insert(slice["series"]);
        studies.insert(slice["study"]);
    }
    EXPECT_EQ(instances.size(), 8u);
    EXPECT_EQ(series.size(), 1u);
    EXPECT_EQ(studies.size(), 1u);
    EXPECT_EQ(slices[0]["percent"], 45.0);
    EXPECT_EQ(slices[7]["percent"], 75.0);
}

TEST_F(CtWriter, NamesTheFileThatCannotBeWritten) {
    std::ofstream(m_folder / "blocked") << "a file where a folder should be";
    const auto written = writeCtSeries({{volume(oblique()), {}}}, {}, m_folder / "blocked");
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, core::ErrorCode::OutputUnwritable);
    EXPECT_NE(written.error().message.find("blocked"), std::string::npos);
}

TEST_F(CtWriter, RefusesWhatCtCannotHold) {
    EXPECT_NE(writeCtSeries({}, {}, m_folder).error().message.find("no phase"), std::string::npos);
    Eigen::Affine3d skewed = oblique();
    skewed.linear().col(1) += 0.1 * skewed.linear().col(0);
    EXPECT_NE(writeCtSeries({{volume(skewed), {}}}, {}, m_folder).error().message.find("right angles"),
              std::string::npos);
    const auto echo = *core::Volume::make({1, 1, 1}, {0}, oblique(), core::VoxelQuantity::EchoIntensity, "1");
    EXPECT_NE(writeCtSeries({{echo, {}}}, {}, m_folder).error().message.find("Hounsfield"),
              std::string::npos);
}

TEST(DecimalString, IsTheClosestThatFitsSixteenCharacters) {
    for (const double value :
         {0.1, -0.123456789012345, 1.0 / 3.0, -1234.56789012345678, 1e-7, -4.4408920985006e-16, 0.0, 500.0}) {
        const std::string text = decimalString(value);
        EXPECT_LE(text.size(), 16u) << text;
        EXPECT_NEAR(std::stod(text), value, 2e-9 * std::max(1.0, std::abs(value))) << text;
    }
    EXPECT_EQ(decimalString(0.45), "0.45");
    EXPECT_EQ(decimalString(-43.775), "-43.775");
}

TEST(UidFrom, IsAUuidUnder225ThatFollowsTheText) {
    EXPECT_EQ(uidFrom("a"), uidFrom("a"));
    EXPECT_NE(uidFrom("a"), uidFrom("b"));
    const std::string uid = uidFrom("some study");
    EXPECT_EQ(uid.rfind("2.25.", 0), 0u);
    EXPECT_LE(uid.size(), 64u);
    EXPECT_EQ(uid.find_first_not_of("0123456789."), std::string::npos);
    EXPECT_NE(uid[5], '0');
}

} // namespace
} // namespace gauge::sample_case
