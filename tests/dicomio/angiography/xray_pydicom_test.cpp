// X-ray runs written by pydicom (make_xray.py says what they hold), read here.
#include "dicomio/angiography/xray_reader.h"
#include "tests/dicomio/angiography/header.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <cmath>
#include <cstdlib>
#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

constexpr double kFloatMm = 1e-7; // attributes of 32 bits

class MadeRuns : public testing::Test {
protected:
    void SetUp() override {
        const std::string command = "/usr/bin/python3 -W ignore '" + std::string(GAUGE_SOURCE_DIR) +
                                    "/tests/dicomio/angiography/make_xray.py' '" + m_folder.path().string() +
                                    "'";
        ASSERT_EQ(std::system(command.c_str()), 0) << "pydicom is needed: " << command;
    }
    core::Result<XrayCine> read(const std::string& name) const { return readXray(m_folder.path() / name); }
    TempFolder m_folder;
};

} // namespace

TEST_F(MadeRuns, EnhancedFramesHaveTheirOwnAnglesDistancesAndMoments) {
    for (const char* name : {"enhanced_explicit.dcm", "enhanced_implicit.dcm"}) {
        SCOPED_TRACE(name);
        const auto read = this->read(name);
        const XrayCine& cine = valueOf(read);
        ASSERT_EQ(cine.facts.frames.size(), 4u);
        for (std::size_t f = 0; f < 4; ++f) {
            const auto& frame = cine.facts.frames[f];
            const double n = static_cast<double>(f);
            EXPECT_EQ(frame.angles, (core::CArmAngles{-30.0 + n, 20.0 - 2.0 * n}));
            EXPECT_EQ(frame.isocentreAngles, (core::CArmAngles{-29.5 + n, 20.25}));
            EXPECT_EQ(frame.sourceToDetectorMm, 1000.0 + 50.0 * n);
            EXPECT_NEAR(cine.facts.times.startMs[f], 500.0 * n, 0.02);
            if (f == 3) continue;
            // Spacing between columns 0.154 and between rows 0.308, at the isocentre.
            EXPECT_NEAR(frame.scale->planar.mmPerPixel.x(), 0.154 * 765.0 / (1000.0 + 50.0 * n), kFloatMm);
            EXPECT_NEAR(frame.scale->planar.mmPerPixel.y(), 0.308 * 765.0 / (1000.0 + 50.0 * n), kFloatMm);
        }
        EXPECT_NEAR(cine.facts.frames[3].scale->planar.mmPerPixel.x(), 0.1, kFloatMm);
        EXPECT_EQ(cine.facts.frames[3].scale->planar.origin, core::ScaleOrigin::DeviceGeometry);
        EXPECT_TRUE(cine.facts.moving);
        EXPECT_EQ(cine.facts.scaleSource, XrayScaleSource::Isocentre);
        EXPECT_EQ(cine.masks.relation, core::IntensityRelation::Logarithmic);
        ASSERT_EQ(cine.greyscale.windows.size(), 1u);
        EXPECT_EQ(cine.greyscale.windows[0].centre, 2000.0);
        EXPECT_EQ(valueOf(cine.frames->grey(2)).at(3, 4), 2043);
    }
}

TEST_F(MadeRuns, ClassicRunHasMovingAnglesScaleWindowAndMask) {
    const auto read = this->read("classic.dcm");
    const XrayCine& cine = valueOf(read);
    EXPECT_EQ(cine.facts.frames[3].angles, (core::CArmAngles{14.5, -5.0}));
    EXPECT_NEAR(cine.facts.frames[0].scale->planar.mmPerPixel.x(), 0.2, 1e-12);
    EXPECT_NEAR(cine.facts.times.startMs[3], 200.1, 1e-9);
    EXPECT_EQ(cine.greyscale.windows.at(0).width, 2500.0);
    EXPECT_TRUE(cine.masks.shownSubtracted);
    ASSERT_EQ(cine.masks.masks.size(), 1u);
    EXPECT_THAT(noticeText(cine.notices, "mask-shift-ignored"), HasSubstr("not applied"));
    const auto& mask = cine.masks.masks[0];
    EXPECT_FALSE(mask.appliesTo(0));
    const auto seen =
        valueOf(core::subtractMask(*cine.frames, 2, mask, cine.masks.relation, cine.lowestStored));
    // Linear values 2043 over 43: natural logarithms, in thousandths.
    EXPECT_EQ(seen.at(3, 4), std::lround(1000.0 * std::log(2044.0 / 44.0)));
}

TEST_F(MadeRuns, OtherKindsOfFilesAreRefusedByName) {
    const CtSlice slice;
    const auto path = m_folder.write("ct.dcm", slice.dataset());
    const auto error = errorOf(readXray(path));
    EXPECT_EQ(error.code, core::ErrorCode::ObjectUnsupported);
    EXPECT_THAT(error.message, HasSubstr("Cannot read the X-ray run of"));
    EXPECT_THAT(error.message, HasSubstr("ct.dcm"));
    EXPECT_THAT(error.message, HasSubstr("is no X-ray run"));
    EXPECT_EQ(errorOf(readXray(m_folder.path() / "absent.dcm")).code, core::ErrorCode::FileUnreadable);
}
