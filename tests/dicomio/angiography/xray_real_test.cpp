// Real runs of public projects, used in place (see real_data/real_data_test.cpp for where). Figures beside
// each are what pydicom reads from the same headers.
#include "dicomio/angiography/xray_reader.h"
#include "tests/dicomio/angiography/header.h"
#include "tests/dicomio/support/result_of.h"

#include <cstdlib>
#include <filesystem>
#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

class RealXray : public testing::Test {
protected:
    void SetUp() override {
        const char* told = std::getenv("OSTIUM_GAUGE_REAL_DATA");
        m_root = told ? std::filesystem::path(told)
                      : std::filesystem::path(GAUGE_SOURCE_DIR) / "../shared/real-data";
        if (!std::filesystem::is_directory(m_root))
            GTEST_SKIP() << "no real data: " << m_root << " does not exist";
    }
    XrayCine cineOf(const std::string& name) const { return valueOf(readXray(m_root / name)); }
    std::filesystem::path m_root;
};

} // namespace

TEST_F(RealXray, CoronaryCineHasItsAnglesAndTimesButNoMillimetres) {
    const auto cine = cineOf("xray/cine_96_frames_jpeg_baseline.dcm");
    const auto& facts = cine.facts;
    ASSERT_EQ(facts.frames.size(), 96u);
    for (const auto& frame : facts.frames) {
        ASSERT_TRUE(frame.angles);
        EXPECT_EQ(*frame.angles, (core::CArmAngles{-32.0, 2.0}));
        EXPECT_FALSE(frame.scale);
    }
    EXPECT_FALSE(facts.moving);
    EXPECT_EQ(facts.times.startMs.back(), 95 * 33.0);
    EXPECT_EQ(facts.times.rWaveMs, (std::vector<double>{19 * 33.0, 52 * 33.0, 76 * 33.0}));
    EXPECT_THAT(facts.scaleText, HasSubstr("No scale"));
    EXPECT_EQ(cine.frames->columns(), 512);
    const auto last = valueOf(cine.frames->grey(95));
    const auto [low, high] = std::minmax_element(last.values.begin(), last.values.end());
    EXPECT_GE(*low, 0);
    EXPECT_LE(*high, 255);
    EXPECT_GT(*high - *low, 100); // an X-ray picture, not a grey field
}

TEST_F(RealXray, RunWithoutAnglesTellsNone) {
    const auto cine = cineOf("xray/four_frames_jpeg_lossless.dcm");
    const auto& facts = cine.facts;
    ASSERT_EQ(facts.frames.size(), 4u);
    EXPECT_FALSE(facts.frames[0].angles);
    EXPECT_FALSE(facts.frames[0].scale);
    EXPECT_EQ(facts.times.startMs, (std::vector<double>{0.0, 83.0, 166.0, 249.0}));
}
