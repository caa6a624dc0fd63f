// Real files of public projects, used in place: the folder named by OSTIUM_GAUGE_REAL_DATA, else
// ../shared/real-data beside the source. Where the folder exists, nothing here may skip. Its README names
// sources and licences.
#include "core/volume/sampling.h"
#include "dicomio/ct/ct_reader.h"
#include "dicomio/pixel/frame_reader.h"
#include "tests/dicomio/support/result_of.h"

#include <cmath>
#include <cstdlib>
#include <gmock/gmock.h>
#include <map>
#include <sys/resource.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

namespace fs = std::filesystem;

class RealData : public testing::Test {
protected:
    void SetUp() override {
        const char* told = std::getenv("OSTIUM_GAUGE_REAL_DATA");
        m_root = told ? fs::path(told) : fs::path(GAUGE_SOURCE_DIR) / "../shared/real-data";
        if (!fs::is_directory(m_root))
            GTEST_SKIP() << "no real data: " << m_root
                         << " does not exist; set OSTIUM_GAUGE_REAL_DATA to try them";
    }
    fs::path at(const std::string& name) const { return m_root / name; }
    SeriesIndex verified(const std::string& name) const { return valueOf(listFolder(at(name), {true})); }
    CtVolume onlyCt(const std::string& name) const {
        const SeriesIndex index = verified(name);
        return valueOf(readCtPhase(*valueOf(chooseCtSeries(index, std::nullopt)), 0));
    }

    static std::vector<std::vector<std::int32_t>> frames(const fs::path& file) {
        const auto scanned = scanFile(file);
        if (!scanned) throw std::runtime_error(file.string() + ": " + scanned.error().message);
        const auto reader = FrameReader::open(*scanned);
        std::vector<std::vector<std::int32_t>> all;
        for (int f = 0; f < scanned->format->frames; ++f)
            all.push_back(valueOf(valueOf(reader).readValues(f)));
        return all;
    }

private:
    fs::path m_root;
};

int largestDifference(const std::vector<std::int32_t>& a, const std::vector<std::int32_t>& b) {
    EXPECT_EQ(a.size(), b.size());
    int largest = 0;
    for (std::size_t i = 0; i < std::min(a.size(), b.size()); ++i)
        largest = std::max(largest, std::abs(a[i] - b[i]));
    return largest;
}

std::string codesOf(const SeriesEntry& series) {
    std::string codes;
    for (const auto& m : series.messages)
        codes += m.code + " ";
    return codes;
}

/// Part of the patient: from `low` to `high`, LPS mm.
struct Region {
    Eigen::Vector3d low;
    Eigen::Vector3d high;
    bool holds(const Eigen::Vector3d& p) const {
        return (p.array() >= low.array()).all() && (p.array() <= high.array()).all();
    }
};

/// Correlation of two scans of one thing at the same places in the patient, the second moved by `shift`.
double correlation(const core::Volume& a, const core::Volume& b, const Region& region,
                   const Eigen::Vector3d& shift) {
    constexpr int kStep = 12;
    const core::TrilinearSampler sampled(b);
    double n = 0, x1 = 0, y1 = 0, x2 = 0, y2 = 0, xy = 0;
    for (int k = 0; k < a.size().z(); ++k)
        for (int j = 0; j < a.size().y(); j += kStep)
            for (int i = 0; i < a.size().x(); i += kStep) {
                const Eigen::Vector3d p = a.patientFrom({Eigen::Vector3d(i, j, k)}).mm;
                if (!region.holds(p) || !b.contains({p + shift})) continue;
                const double x = a.at(i, j, k), y = sampled({p + shift});
                n += 1, x1 += x, y1 += y, x2 += x * x, y2 += y * y, xy += x * y;
            }
    return (n * xy - x1 * y1) / std::sqrt((n * x2 - x1 * x1) * (n * y2 - y1 * y1));
}

/// Whole-millimetre shift, up to 3 mm along each axis, at which two scans agree best.
Eigen::Vector3d bestShift(const core::Volume& a, const core::Volume& b, const Region& region) {
    Eigen::Vector3d best = Eigen::Vector3d::Zero();
    double highest = -1.0;
    for (int x = -3; x <= 3; ++x)
        for (int y = -3; y <= 3; ++y)
            for (int z = -3; z <= 3; ++z) {
                const Eigen::Vector3d shift(x, y, z);
                const double c = correlation(a, b, region, shift);
                if (c > highest) highest = c, best = shift;
            }
    return best;
}

double meanDifference(const std::vector<std::int32_t>& a, const std::vector<std::int32_t>& b) {
    double sum = 0.0;
    for (std::size_t i = 0; i < std::min(a.size(), b.size()); ++i)
        sum += std::abs(a[i] - b[i]);
    return sum / static_cast<double>(a.size());
}

} // namespace

TEST_F(RealData, HeartCtLoadsInTheOrderOfPositionsWithItsPaddingAsAir) {
    const CtVolume ct = onlyCt("ct-heart-contrast");
    EXPECT_EQ(ct.volume->size(), Eigen::Vector3i(512, 512, 100));
    EXPECT_DOUBLE_EQ(ct.spacingMm.z(), 2.5);
    EXPECT_EQ(ct.volume->at(0, 0, 50), -1024); // a corner outside the scanned field, stored as -2000
    EXPECT_LT((ct.volume->patientFromVoxel().translation() - Eigen::Vector3d(-228.8, -220.0, -236.5)).norm(),
              1e-9);
    // The left atrium at LPS (3.9, 7.3, -174) mm is filled with contrast.
    const Eigen::Vector3i voxel = ct.volume->voxelFrom({{3.9, 7.3, -174.0}}).ijk.array().round().cast<int>();
    EXPECT_GT(ct.volume->at(voxel.x(), voxel.y(), voxel.z()), 100);
}

TEST_F(RealData, TiltedAndUntiltedPhantomAgreeInThePatient) {
    const CtVolume tilted = onlyCt("ct-tilted-phantom"), straight = onlyCt("ct-untilted-phantom");
    EXPECT_NEAR(tilted.tiltDeg, 16.5, 0.01);
    EXPECT_NEAR(straight.tiltDeg, 0.0, 0.01);
    EXPECT_NEAR(tilted.spacingMm.z(), 2.5 * std::cos(16.5 * M_PI / 180.0), 1e-4);
    // One frame of reference, one phantom. The two scans lie 1 to 2 mm apart as a whole (found here, not
    // stated by their source); distances agree when every part of the phantom shows the same shift. A tilt
    // handled wrongly moves the front of the head against its back by more than 40 mm.
    const double all = 1e4;
    const Region whole{{-all, -all, -all}, {all, all, all}};
    const Eigen::Vector3d shift = bestShift(*straight.volume, *tilted.volume, whole);
    EXPECT_LE(shift.norm(), 2.0) << shift.transpose();
    EXPECT_GT(correlation(*straight.volume, *tilted.volume, whole, shift), 0.98);
    constexpr double kMiddleY = 113.0, kMiddleZ = 765.0,
                     kGridMm = 1.5; // one step of the grid of shifts along two axes
    for (const Region& part :
         {Region{{-all, -all, -all}, {all, kMiddleY, all}}, Region{{-all, kMiddleY, -all}, {all, all, all}},
          Region{{-all, -all, -all}, {all, all, kMiddleZ}},
          Region{{-all, -all, kMiddleZ}, {all, all, all}}}) {
        const Eigen::Vector3d here = bestShift(*straight.volume, *tilted.volume, part);
        EXPECT_LE((here - shift).norm(), kGridMm) << here.transpose() << " against " << shift.transpose();
    }
}

TEST_F(RealData, TinySeriesAreHandledExactlyOrRefusedInWords) {
    const SeriesIndex tilt = verified("ct-refusals/gantrytilting");
    ASSERT_EQ(tilt.series.size(), 1u);
    EXPECT_NEAR(*tilt.series[0].tiltDeg, 14.0, 0.01);
    EXPECT_TRUE(tilt.series[0].measurable);
    const std::map<std::string, std::string> refusals{{"sliceincrement/001", "slice-missing"},
                                                      {"sliceincrement/002", "slice-missing"},
                                                      {"notavolume", "slice-duplicate"},
                                                      {"slicecount", "kind-unsupported"},
                                                      {"sliceorientation", "sizes-mixed"}};
    for (const auto& [folder, code] : refusals) {
        const SeriesIndex index = verified("ct-refusals/" + folder);
        ASSERT_EQ(index.series.size(), 1u) << folder;
        EXPECT_EQ(index.series[0].status, SeriesStatus::Refused) << folder;
        EXPECT_THAT(codesOf(index.series[0]), HasSubstr(code)) << folder;
    }
}

TEST_F(RealData, LosslessEncodingsOfTheEnhancedCtAgreeBitForBit) {
    const auto expected = frames(at("ct-enhanced/CT0012.explicit_little_endian.dcm"));
    ASSERT_EQ(expected.size(), 2u);
    EXPECT_GT(largestDifference(expected[0], expected[1]), 0);
    int compared = 0;
    for (const auto& entry : fs::directory_iterator(at("ct-enhanced"))) {
        const std::string name = entry.path().filename();
        const bool lossy = name.find(".51.") != std::string::npos || name.find(".81.") != std::string::npos;
        if (entry.path().extension() != ".dcm") continue;
        const auto found = frames(entry.path());
        ASSERT_EQ(found.size(), 2u) << name;
        for (std::size_t f = 0; f < 2 && !lossy; ++f)
            EXPECT_EQ(largestDifference(found[f], expected[f]), 0) << name << " frame " << f;
        ++compared;
    }
    EXPECT_EQ(compared, 10);
    const SeriesIndex index = verified("ct-enhanced");
    ASSERT_EQ(index.series.size(), 1u);
    EXPECT_THAT(codesOf(index.series[0]), HasSubstr("copies-set-aside lossy-set-aside not-hounsfield"));
    EXPECT_LT((*index.series[0].spacingMm - Eigen::Vector3d(0.388672, 0.388672, 10.0)).norm(), 1e-9);
}

TEST_F(RealData, CompressionSamplesAgreeWithTheirUncompressedTwin) {
    // Lossless: exactly. With loss: the mean difference is bounded by what the samples show; no standard
    // defines it.
    constexpr double kLossyMean = 30.0; // a wrong sign or byte order gives hundreds
    int exact = 0;
    for (const std::string image : {"CT1", "CT2", "XA1", "US1"}) {
        const auto expected = frames(at("syntaxes/" + image + "_UNC")).front();
        for (const std::string coding : {"RLE", "JPLL", "JLSL", "J2KR", "JPLY", "JLSN", "J2KI"}) {
            const fs::path file = at("syntaxes/" + image + "_" + coding);
            if (!fs::exists(file)) continue;
            const auto found = frames(file).front();
            const int difference = largestDifference(found, expected);
            if (coding == "RLE" || coding == "JPLL" || coding == "JLSL" || coding == "J2KR") {
                EXPECT_EQ(difference, 0) << file;
                ++exact;
            } else {
                EXPECT_LT(meanDifference(found, expected), kLossyMean) << file;
            }
        }
    }
    EXPECT_EQ(exact, 14); // four lossless codings of CT1, CT2 and XA1, two of US1
}

TEST_F(RealData, UltrasoundXrayAndReportsAreListedAndDecode) {
    for (const std::string folder : {"ultrasound", "xray", "sr", "syntaxes"}) {
        const SeriesIndex index = verified(folder);
        EXPECT_TRUE(index.skipped.empty()) << folder;
        for (const SeriesEntry& series : index.series)
            EXPECT_THAT(codesOf(series),
                        testing::Not(testing::AnyOf(HasSubstr("file-damaged"), HasSubstr("unsupported"))))
                << folder;
    }
    for (const SeriesEntry& series : verified("xray").series)
        EXPECT_THAT(codesOf(series), HasSubstr("no-length-scale"));
    int without = 0;
    for (const SeriesEntry& series : verified("ultrasound").series) {
        // One picture was made smaller after it was calibrated: its regions reach outside, its scale cannot be true.
        const bool refused = codesOf(series).find("region-scale-refused") != std::string::npos;
        EXPECT_EQ(codesOf(series).find("no-length-scale") != std::string::npos, refused);
        without += refused;
    }
    EXPECT_EQ(without, 1);
}

TEST_F(RealData, BrokenFilesAreRefusedInWords) {
    const auto reason = [&](const std::string& name) {
        const auto scanned = scanFile(at("broken/" + name));
        if (!scanned) return scanned.error().message;
        const auto reader = FrameReader::open(*scanned);
        return reader ? errorOf(reader->readValues(0)).message : reader.error().message;
    };
    EXPECT_THAT(reason("MR_truncated.dcm"),
                HasSubstr("(7fe0,0010) PixelData claims 8192 bytes at byte 1500, but only 8130 are left"));
    EXPECT_THAT(reason("badVR.dcm"), HasSubstr("(0028,0008) NumberOfFrames holds \"1A\""));
    EXPECT_THAT(reason("no_meta.dcm"), HasSubstr("It is not DICOM"));
    EXPECT_THAT(reason("emri_small_jpeg_2k_lossless_too_short.dcm"), HasSubstr("truncated"));
    EXPECT_THAT(reason("JLSL_08_07_0_1F.dcm"), HasSubstr("JPEG-LS Lossless pixels cannot be decoded"));
    // Its sequence, stored as an unknown value, is in order for a reader that takes it as such.
    EXPECT_TRUE(scanFile(at("broken/bad_sequence.dcm")));
    EXPECT_EQ(verified("broken").skipped.size(), 5u);
}

TEST_F(RealData, LoadingTakesLittleMoreMemoryThanTheVolume) {
    const SeriesIndex index = valueOf(listFolder(at("ct-heart-contrast")));
    rusage before{}, after{};
    getrusage(RUSAGE_SELF, &before);
    const CtVolume ct = valueOf(readCtPhase(index.series.front(), 0));
    getrusage(RUSAGE_SELF, &after);
    const double grownKiB = static_cast<double>(after.ru_maxrss - before.ru_maxrss);
    const double volumeKiB = static_cast<double>(ct.volume->voxelCount()) * 2 / 1024.0;
#if !defined(__SANITIZE_ADDRESS__)
    EXPECT_LT(grownKiB, 1.3 * volumeKiB);
#else
    EXPECT_LT(grownKiB, 3.0 * volumeKiB); // the sanitizer keeps freed memory back
#endif
}
