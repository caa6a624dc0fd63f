// Against pydicom, an independent reader and writer, and against what real files say of themselves: a caliper
// that the scanner burned into its picture.
#include "core/cine/region_caliper.h"
#include "core/volume/volume.h"
#include "dicomio/ultrasound/us_reader.h"
#include "dicomio/ultrasound/us_volume.h"
#include "tests/dicomio/ultrasound/us_bytes.h"

#include <cstdlib>
#include <fstream>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>
#include <sstream>

using namespace gauge;
using namespace gauge::core;
using namespace gauge::dicomio;
using namespace gauge::test;
using nlohmann::json;
using testing::Contains;
using testing::HasSubstr;

namespace {

namespace fs = std::filesystem;

std::string content(const fs::path& file) {
    std::ifstream in(file);
    std::stringstream text;
    text << in.rdbuf();
    return text.str();
}

/// What a script of this folder prints.
std::string python(const TempFolder& folder, const std::string& script, const std::string& arguments) {
    const fs::path output = folder.path() / "printed.txt";
    const std::string command = "/usr/bin/python3 -W ignore '" + std::string(GAUGE_SOURCE_DIR) +
                                "/tests/dicomio/ultrasound/" + script + "' " + arguments + " > '" +
                                output.string() + "' 2> '" + output.string() + ".err'";
    if (std::system(command.c_str()) != 0)
        throw std::runtime_error(script + " failed: " + content(output.string() + ".err"));
    return content(output);
}

/// What pydicom reads of each file.
json byPydicom(const TempFolder& folder, const std::vector<fs::path>& files) {
    std::string arguments;
    for (const auto& file : files)
        arguments += " '" + file.string() + "'";
    return json::parse(python(folder, "read_with_pydicom.py", arguments));
}

constexpr double kSums = 1e-9; // of a hundred intervals in ms

void expectAxis(const RegionAxis& axis, const json& region, int which, int corner) {
    EXPECT_EQ(static_cast<int>(axis.unit), region["units"][which].get<int>());
    EXPECT_EQ(axis.delta, region["deltas"][which].get<double>());
    const json& reference = region["reference"][which];
    ASSERT_EQ(axis.referencePixel.has_value(), !reference.is_null());
    if (axis.referencePixel) {
        EXPECT_EQ(*axis.referencePixel, corner + reference.get<int>());
    }
    const json& value = region["values"][which];
    EXPECT_EQ(axis.referenceValue, value.is_null() ? 0.0 : value.get<double>());
}

/// Regions and times as pydicom reads them.
void expectAsPydicom(const EchoCine& cine, const json& told) {
    EXPECT_EQ(cine.frames->columns(), told["columns"].get<int>());
    EXPECT_EQ(cine.frames->rows(), told["rows"].get<int>());
    EXPECT_EQ(cine.frames->count(), told["frames"].get<int>());
    ASSERT_EQ(cine.regions.size(), told["regions"].size());
    for (std::size_t i = 0; i < cine.regions.size(); ++i) {
        const EchoRegion& ours = cine.regions[i];
        const json& region = told["regions"][i];
        const auto box = region["box"].get<std::array<int, 4>>();
        EXPECT_EQ(ours.box.minX, box[0]);
        EXPECT_EQ(ours.box.minY, box[1]);
        const auto end = [](int last, int size) {
            return last == size ? size - 1 : last;
        }; // one past the end
        EXPECT_EQ(ours.box.maxX, end(box[2], cine.frames->columns()));
        EXPECT_EQ(ours.box.maxY, end(box[3], cine.frames->rows()));
        EXPECT_EQ(ours.highPriority, region["flags"].get<int>() % 2 == 1);
        expectAxis(ours.x, region, 0, box[0]);
        expectAxis(ours.y, region, 1, box[1]);
    }
    ASSERT_EQ(cine.times.known(), !told["times"].is_null());
    for (std::size_t f = 0; f < cine.times.startMs.size(); ++f)
        EXPECT_NEAR(cine.times.startMs[f], told["times"][f].get<double>(), kSums);
    EXPECT_EQ(cine.times.rWaveMs, told["r_waves"].get<std::vector<double>>());
}

/// Centre of brightness within 6 pixels of a place.
Eigen::Vector2d dotNear(const RgbFrame& frame, const Eigen::Vector2d& place) {
    double sum = 0.0;
    Eigen::Vector2d weighted = Eigen::Vector2d::Zero();
    const int cx = static_cast<int>(std::lround(place.x())), cy = static_cast<int>(std::lround(place.y()));
    for (int y = cy - 6; y <= cy + 6; ++y)
        for (int x = cx - 6; x <= cx + 6; ++x) {
            const double v = frame.at(x, y)[1];
            sum += v;
            weighted += v * Eigen::Vector2d(x, y);
        }
    return weighted / sum;
}

bool isWhite(const RgbFrame& frame, int x, int y) {
    const auto* p = frame.at(x, y);
    return p[0] == 255 && p[1] == 255 && p[2] == 255;
}

/// Centre of an upright white cross within 9 pixels of a place: the middle of its long rows and of its long
/// columns.
Eigen::Vector2d crossNear(const RgbFrame& frame, int cx, int cy) {
    constexpr int kReach = 9, kArm = 8;
    double rows = 0, rowSum = 0, columns = 0, columnSum = 0;
    for (int a = -kReach; a <= kReach; ++a) {
        int inRow = 0, inColumn = 0;
        for (int b = -kReach; b <= kReach; ++b) {
            inRow += isWhite(frame, cx + b, cy + a);
            inColumn += isWhite(frame, cx + a, cy + b);
        }
        if (inRow >= kArm) rows += 1, rowSum += cy + a;
        if (inColumn >= kArm) columns += 1, columnSum += cx + a;
    }
    EXPECT_EQ(rows, 2.0) << "a cross two pixels thick";
    EXPECT_EQ(columns, 2.0);
    return {columnSum / columns, rowSum / rows};
}

/// Real files used in place, see tests/dicomio/real_data.
class RealUltrasound : public testing::Test {
protected:
    void SetUp() override {
        const char* told = std::getenv("OSTIUM_GAUGE_REAL_DATA");
        m_root = (told ? fs::path(told) : fs::path(GAUGE_SOURCE_DIR) / "../shared/real-data") / "ultrasound";
        if (!fs::is_directory(m_root)) GTEST_SKIP() << "no real data: " << m_root << " does not exist";
    }
    fs::path at(const std::string& name) const { return m_root / name; }
    /// All files of the folder, and the ultrasound picture of the standard's compression samples in every
    /// coding.
    std::vector<fs::path> files() const {
        std::vector<fs::path> all;
        for (const auto& entry : fs::directory_iterator(m_root))
            all.push_back(entry.path());
        const std::size_t own = all.size();
        for (const auto& entry : fs::directory_iterator(m_root.parent_path() / "syntaxes"))
            if (entry.path().filename().string().starts_with("US1_")) all.push_back(entry.path());
        EXPECT_GE(own, 5u);
        EXPECT_GE(all.size(), own + 4);
        return all;
    }

private:
    fs::path m_root;
};

} // namespace

TEST(UltrasoundByPydicom, CalipersReadTheDistancesThatItWrote) {
    const TempFolder folder;
    const int cines = std::getenv("GAUGE_LONG") ? 300 : 12;
    python(folder, "make_with_pydicom.py", "'" + folder.path().string() + "' " + std::to_string(cines));
    const json truth = json::parse(content(folder.path() / "truth.json"));
    ASSERT_EQ(truth["cines"].size(), static_cast<std::size_t>(cines));
    std::vector<fs::path> files;
    for (const json& made : truth["cines"])
        files.emplace_back(made["file"].get<std::string>());
    const json told = byPydicom(folder, files);
    double worst = 0.0;
    for (const json& made : truth["cines"]) {
        SCOPED_TRACE(made["file"]);
        const fs::path file = made["file"].get<std::string>();
        const auto cine = valueOf(readUltrasound(file));
        expectAsPydicom(cine, told.at(file.string()));
        const auto near = made["near"].get<std::array<std::array<double, 2>, 2>>();
        const RgbFrame frame = valueOf(cine.frames->rgb(cine.frames->count() - 1));
        const Eigen::Vector2d a = dotNear(frame, {near[0][0], near[0][1]});
        const Eigen::Vector2d b = dotNear(frame, {near[1][0], near[1][1]});
        const Estimate length = valueOf(regionDistance(cine.regions, {}, a, b));
        const auto pixel = made["pixel_mm"].get<std::array<double, 2>>();
        const double halfPixel = 0.5 * std::min(pixel[0], pixel[1]);
        EXPECT_NEAR(length.value, made["mm"].get<double>(), halfPixel);
        worst = std::max(worst, std::abs(length.value - made["mm"].get<double>()) / (2.0 * halfPixel));
    }
    RecordProperty("worst_error_pixels", std::to_string(worst));
}

TEST(UltrasoundByPydicom, VolumeHasItsAffineVoxelsAndTimes) {
    const TempFolder folder;
    python(folder, "make_with_pydicom.py", "'" + folder.path().string() + "' 0");
    const json made = json::parse(content(folder.path() / "truth.json"))["volume"];
    auto scanned = scanFile(made["file"].get<std::string>());
    ASSERT_TRUE(scanned) << scanned.error().message;
    const auto volume =
        valueOf(UltrasoundVolume::open(std::make_shared<const ScannedFile>(std::move(*scanned))));
    const auto offsets = made["offsets_ms"].get<std::vector<double>>();
    ASSERT_EQ(volume.timePoints().size(), offsets.size());
    const auto voxels = made["voxels"].get<std::vector<int>>();
    std::size_t at = 0, wrong = 0;
    for (std::size_t t = 0; t < offsets.size(); ++t) {
        EXPECT_NEAR(volume.timePoints()[t].offsetMs.value(), offsets[t], kSums);
        const auto cube = valueOf(volume.read(t));
        EXPECT_EQ(cube->frameOfReferenceUid(), made["frame_of_reference"].get<std::string>());
        for (int row = 0; row < 4; ++row)
            for (int column = 0; column < 4; ++column)
                EXPECT_NEAR(cube->patientFromVoxel().matrix()(row, column),
                            made["affine"][row][column].get<double>(), kSums);
        for (std::size_t i = 0; i < cube->voxelCount(); ++i)
            wrong += cube->data()[i] != voxels[at++];
    }
    EXPECT_EQ(at, voxels.size());
    EXPECT_EQ(wrong, 0u);
}

TEST_F(RealUltrasound, RegionsAndTimesAreAsPydicomReadsThem) {
    const TempFolder folder;
    const auto all = files();
    const json told = byPydicom(folder, all);
    for (const auto& file : all) {
        SCOPED_TRACE(file);
        expectAsPydicom(valueOf(readUltrasound(file)), told.at(file.string()));
    }
}

TEST_F(RealUltrasound, FramesOfEveryFileAreRead) {
    for (const auto& file : files()) {
        SCOPED_TRACE(file);
        const auto cine = valueOf(readUltrasound(file));
        for (int f = 0; f < cine.frames->count(); f += std::max(1, cine.frames->count() / 5)) {
            const RgbFrame frame = valueOf(cine.frames->rgb(f));
            const auto [low, high] = std::minmax_element(frame.samples.begin(), frame.samples.end());
            EXPECT_GT(*high - *low, 100) << "frame " << f << " shows a picture";
        }
    }
}

TEST_F(RealUltrasound, TheCaliperOfThePictureReads106) {
    // The scanner burned "1.06 cm" into the picture, between two white crosses.
    for (const char* name : {"OBXXXX1A.dcm", "OBXXXX1A_rle_2frame.dcm"}) {
        const auto cine = valueOf(readUltrasound(at(name)));
        const RgbFrame frame = valueOf(cine.frames->rgb(0));
        const Eigen::Vector2d a = crossNear(frame, 459, 290), b = crossNear(frame, 498, 301);
        EXPECT_EQ(a, Eigen::Vector2d(459.5, 290.5));
        EXPECT_EQ(b, Eigen::Vector2d(498.5, 301.5));
        const Estimate length = valueOf(regionDistance(cine.regions, {}, a, b));
        EXPECT_EQ(std::round(length.value * 10.0) / 100.0, 1.06) << length.value << " mm";
        const double pixelMm = cine.regions.at(0).scale->mmPerPixel.x();
        EXPECT_LT(std::abs(length.value - 10.6), pixelMm) << "to the pixel";
        EXPECT_EQ(cine.regions.at(1).kind, EchoRegionKind::Ecg);
        const Error error = errorOf(regionDistance(cine.regions, {}, {200, 530}, {300, 540}));
        EXPECT_THAT(error.message, HasSubstr("electrocardiogram"));
        EXPECT_EQ(errorOf(regionDistance(cine.regions, {}, {400, 500}, {400, 540})).code,
                  ErrorCode::RegionsMixed);
    }
}

TEST_F(RealUltrasound, APictureThatWasHalvedAfterCalibrationHasNoScale) {
    // Its region reaches to (595, 414), the picture is 320 x 240: at its word a heart would be twice its
    // size.
    const auto cine = valueOf(readUltrasound(at("examples_ybr_color.dcm")));
    ASSERT_EQ(cine.regions.size(), 1u);
    EXPECT_FALSE(cine.regions[0].scale);
    EXPECT_THAT(textOf(cine.notices, "region-scale-refused"),
                HasSubstr("scaled or cut after it was calibrated"));
    EXPECT_THAT(codesOf(cine.notices), Contains("no-length-scale"));
    EXPECT_EQ(errorOf(regionDistance(cine.regions, {}, {100, 100}, {200, 200})).code,
              ErrorCode::ScaleMissing);
}

TEST_F(RealUltrasound, HeartRateFromItsRWaves) {
    // The file itself says HeartRate 57; its two R waves are 1082 ms apart, which is 55.5 a minute.
    const auto cine = valueOf(readUltrasound(at("cine_colour_flow_jpeg_baseline.dcm")));
    EXPECT_NEAR(cine.times.heartRatePerMinute().value(), 57.0, 2.0);
    EXPECT_NEAR(cine.times.betweenMs(0, 26).value(), 1233.33, 0.01) << "its EffectiveDuration is 1.23333 s";
}
