#include "dicomio/index/beats.h"

#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::dicomio;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

namespace {

template <class Change> std::vector<SliceFacts> slices(int count, Change change) {
    std::vector<SliceFacts> result(static_cast<std::size_t>(count));
    for (int k = 0; k < count; ++k) {
        SliceFacts& slice = result[static_cast<std::size_t>(k)];
        slice.position.z() = k;
        slice.phase.percent = 45.0;
        change(slice, k);
    }
    return result;
}

std::vector<std::string> codes(const std::vector<core::Notice>& notices) {
    std::vector<std::string> result;
    for (const auto& n : notices)
        result.push_back(n.code);
    return result;
}

} // namespace

TEST(BeatNotices, AreSilentForARegularRhythm) {
    EXPECT_THAT(beatNotices(slices(8,
                                   [](SliceFacts& s, int k) {
                                       s.beats.beatMs = 850.0 + 5.0 * k; // breathing: 4 %
                                       s.beats.delayMs = s.phase.triggerMs = 0.45 * (850.0 + 5.0 * k);
                                       s.beats.shortestMs = 800.0;
                                       s.beats.longestMs = 900.0;
                                       s.beats.acquisitionNumber = 3;
                                   }),
                            "45 %"),
                IsEmpty());
}

TEST(BeatNotices, TellBeatsOfDifferentLength) {
    const auto notices =
        beatNotices(slices(6, [](SliceFacts& s, int k) { s.beats.beatMs = k < 3 ? 640.0 : 980.0; }), "45 %");
    EXPECT_THAT(codes(notices), ElementsAre("mixed-beats"));
    EXPECT_EQ(notices[0].text,
              "Phase 45 % is made of heart beats of different length, R-R 640 to 980 ms. It is not one "
              "moment of the heart, as in atrial fibrillation; look for steps between slices.");
    EXPECT_EQ(notices[0].facts.front().value, "45 %"); // the phase that it is about
}

TEST(BeatNotices, FindTheBeatFromPercentageAndDelayWhereNoIntervalIsTold) {
    const auto notices =
        beatNotices(slices(4, [](SliceFacts& s, int k) { s.beats.delayMs = k < 2 ? 270.0 : 405.0; }), "45 %");
    EXPECT_THAT(codes(notices), ElementsAre("mixed-beats"));
    EXPECT_THAT(
        notices[0].text,
        HasSubstr("R-R 600 to 900 ms, by percentage and delay after the R wave")); // 270/0.45, 405/0.45
}

TEST(BeatNotices, TellDelaysThatDifferWithinAPhaseKnownByTime) {
    const auto notices = beatNotices(slices(4,
                                            [](SliceFacts& s, int k) {
                                                s.phase.percent.reset();
                                                s.phase.triggerMs = s.beats.delayMs = 300.0 + 40.0 * k;
                                            }),
                                     "360 ms");
    EXPECT_THAT(codes(notices), ElementsAre("mixed-beats"));
    EXPECT_THAT(notices[0].text, HasSubstr("at different delays after the R wave, 300 to 420 ms"));
}

TEST(BeatNotices, TellAWideRangeOfAcceptedBeatsAndSeveralPasses) {
    const auto notices = beatNotices(slices(4,
                                            [](SliceFacts& s, int k) {
                                                s.beats.shortestMs = 500.0;
                                                s.beats.longestMs = 1200.0;
                                                s.beats.acquisitionNumber = k / 2 + 1;
                                            }),
                                     "45 %");
    EXPECT_THAT(codes(notices), ElementsAre("mixed-beats-possible", "several-acquisitions"));
    EXPECT_THAT(notices[0].text, HasSubstr("beats of 500 to 1200 ms were accepted"));
    EXPECT_THAT(notices[1].text,
                HasSubstr("come from 2 passes of the scanner ((0020,0012) AcquisitionNumber)"));
}

TEST(BeatNotices, SayNothingOfImagesThatTellNothingOfTheHeart) {
    EXPECT_THAT(beatNotices(slices(4,
                                   [](SliceFacts& s, int k) {
                                       s.phase.percent.reset();
                                       s.beats.acquisitionNumber = k;
                                   }),
                            "ungated"),
                IsEmpty());
}

TEST(BeatLength, IsTheMeanAndNeedsEverySlice) {
    auto all = slices(2, [](SliceFacts& s, int k) { s.beats.beatMs = 800.0 + 100.0 * k; });
    EXPECT_EQ(beatLength(all), 850.0);
    all[1].beats.beatMs.reset();
    EXPECT_FALSE(beatLength(all));
}
