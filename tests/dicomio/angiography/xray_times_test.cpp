#include "dicomio/angiography/xray_times.h"

#include "tests/dicomio/angiography/header.h"

#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

constexpr double kDoubleOfYearsMs = 0.02; // a double holds 6e13 ms to about 0.01 ms

Header moment(const std::string& when) {
    return Header().sequence(tags::FrameContentSequence,
                             {Header().text(tags::FrameReferenceDateTime, when, "DT")});
}

} // namespace

TEST(DateTimeMs, CountsAcrossDaysLeapDaysAndZones) {
    const auto between = [](const char* a, const char* b) { return *dateTimeMs(b) - *dateTimeMs(a); };
    EXPECT_NEAR(between("20240228235959.5", "20240301000000.25"), 86400750.0, kDoubleOfYearsMs);
    EXPECT_NEAR(between("20230228235959", "20230301000000"), 1000.0, kDoubleOfYearsMs);
    EXPECT_NEAR(between("20251231235959", "20260101000000"), 1000.0, kDoubleOfYearsMs);
    EXPECT_NEAR(between("20260101120000+0200", "20260101120000+0100"), 3600000.0, kDoubleOfYearsMs);
}

TEST(DateTimeMs, RefusesWhatIsNoMoment) {
    for (const char* text : {"", "2024", "20240230", "20241301000000", "20240101250000", "20240101000000x",
                             "20240101000000+1", "2024-01-01T00:00"})
        EXPECT_FALSE(dateTimeMs(text)) << text;
}

TEST(XrayTimes, OfEnhancedFramesComeFromTheirMoments) {
    std::vector<core::Notice> notices;
    const auto header = Header().sequence(
        tags::PerFrameFunctionalGroupsSequence,
        {moment("20260101120000.000"), moment("20260101120000.0667"), moment("20260101120000.2")});
    const auto times = xrayTimes(header.dataset(), 3, notices);
    ASSERT_EQ(times.startMs.size(), 3u);
    EXPECT_NEAR(times.startMs[1], 66.7, kDoubleOfYearsMs);
    EXPECT_NEAR(times.startMs[2], 200.0, kDoubleOfYearsMs);
}

TEST(XrayTimes, ThatFallAreNotUsed) {
    const auto facts = Header()
                           .sequence(tags::PerFrameFunctionalGroupsSequence,
                                     {moment("20260101120001"), moment("20260101120000")})
                           .facts(2);
    EXPECT_FALSE(facts.times.known());
    EXPECT_THAT(noticeText(facts.notices, "frame-times-contradictory"), HasSubstr("does not rise"));
}

TEST(XrayTimes, PlaceRWavesAtTheFramesPointedTo) {
    const auto facts = Header().text(tags::FrameTime, "40").text(tags::RWavePointer, "2\\4", "IS").facts(5);
    EXPECT_EQ(facts.times.rWaveMs, (std::vector<double>{40.0, 120.0}));
    const auto beyond = Header().text(tags::FrameTime, "40").text(tags::RWavePointer, "2\\9", "IS").facts(5);
    EXPECT_TRUE(beyond.times.rWaveMs.empty());
    EXPECT_THAT(noticeText(beyond.notices, "frame-times-contradictory"), HasSubstr("names frame 9 of 5"));
}
