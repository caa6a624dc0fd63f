#include "dicomio/ultrasound/us_facts.h"

#include "dicomio/ultrasound/frame_times.h"
#include "tests/dicomio/ultrasound/us_bytes.h"

#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::core;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

namespace {

constexpr TagNumber kCineRate = 0x00180040, kFrameTime = 0x00181063, kFrameTimeVector = 0x00181065,
                    kDisplayRate = 0x00082144, kPointer = 0x00280009, kDuration = 0x00180072,
                    kRWaves = 0x00186060, kAspect = 0x00280034, kViews = 0x00540220;

DatasetBytes& point(DatasetBytes& dataset, TagNumber tag) {
    return dataset.bytes(kPointer, "AT", littleU32((tag >> 16) | (tag << 16)));
}

std::string contradiction(const UltrasoundFacts& facts) {
    return textOf(facts.notices, "frame-times-contradictory");
}

DatasetBytes view(const std::string& scheme, const std::string& code, const std::string& meaning = "") {
    DatasetBytes item;
    item.text(0x00080100, "SH", code).text(0x00080102, "SH", scheme).text(0x00080104, "LO", meaning);
    return item;
}

} // namespace

TEST(ReadFrameTimes, FromFrameTime) {
    DatasetBytes d = usDataset(4);
    d.text(kFrameTime, "DS", "33.5").text(kCineRate, "IS", "30");
    const auto facts = factsOf(d);
    EXPECT_EQ(facts.times.source, FrameTimeSource::FrameTime);
    EXPECT_THAT(facts.times.startMs, ElementsAre(0.0, 33.5, 67.0, 100.5));
    EXPECT_THAT(codesOf(facts.notices), Not(Contains("frame-times-contradictory")));
}

TEST(ReadFrameTimes, FromTheVectorWhoseFirstValueIsTheStart) {
    DatasetBytes d = usDataset(4);
    d.text(kFrameTimeVector, "DS", "0\\40\\50\\45.5");
    const auto facts = factsOf(point(d, kFrameTimeVector));
    EXPECT_EQ(facts.times.source, FrameTimeSource::FrameTimeVector);
    EXPECT_THAT(facts.times.startMs, ElementsAre(0.0, 40.0, 90.0, 135.5));
    EXPECT_THAT(codesOf(facts.notices), Not(Contains("frame-times-contradictory")));
}

TEST(ReadFrameTimes, ThePointerChoosesBetweenTwo) {
    DatasetBytes d = usDataset(3);
    d.text(kFrameTimeVector, "DS", "0\\40\\40").text(kFrameTime, "DS", "40");
    EXPECT_EQ(factsOf(d).times.source, FrameTimeSource::FrameTimeVector) << "the vector says more";
    EXPECT_EQ(factsOf(point(d, kFrameTime)).times.source, FrameTimeSource::FrameTime);
}

TEST(ReadFrameTimes, FromARateAloneAndSaysSo) {
    DatasetBytes d = usDataset(3);
    d.text(kDisplayRate, "IS", "20");
    auto facts = factsOf(d);
    EXPECT_EQ(facts.times.source, FrameTimeSource::Rate);
    EXPECT_THAT(facts.times.startMs, ElementsAre(0.0, 50.0, 100.0));
    EXPECT_THAT(textOf(facts.notices, "frame-rate-only"), HasSubstr("a rate of 20.00 frames a second alone"));
    d.text(kCineRate, "IS", "25");
    EXPECT_THAT(factsOf(d).times.startMs, ElementsAre(0.0, 40.0, 80.0))
        << "that of taking before that of showing";
}

TEST(ReadFrameTimes, NothingIsInvented) {
    EXPECT_FALSE(factsOf(usDataset(3)).times.known());
    DatasetBytes still = usDataset(1);
    still.text(kFrameTime, "DS", "40");
    EXPECT_FALSE(factsOf(still).times.known());
    DatasetBytes zero = usDataset(3);
    zero.text(kFrameTime, "DS", "0").text(kCineRate, "IS", "0");
    const auto facts = factsOf(zero);
    EXPECT_FALSE(facts.times.known());
    EXPECT_THAT(contradiction(facts), HasSubstr("(0018,1063) FrameTime is 0.000 ms; it is not used"));
}

TEST(ReadFrameTimes, AnnouncesAVectorOfAnotherLength) {
    DatasetBytes d = usDataset(4);
    d.text(kFrameTimeVector, "DS", "0\\40\\40").text(kFrameTime, "DS", "40");
    const auto facts = factsOf(d);
    EXPECT_EQ(facts.times.source, FrameTimeSource::FrameTime);
    EXPECT_THAT(contradiction(facts), HasSubstr("FrameTimeVector has 3 values for 4 frames; it is not used"));
}

TEST(ReadFrameTimes, AnnouncesAVectorThatCannotBe) {
    DatasetBytes back = usDataset(3);
    back.text(kFrameTimeVector, "DS", "0\\40\\-1");
    EXPECT_THAT(contradiction(factsOf(back)), HasSubstr("goes back in time at frame 3"));
    DatasetBytes still = usDataset(3);
    still.text(kFrameTimeVector, "DS", "0\\0\\0");
    EXPECT_THAT(contradiction(factsOf(still)), HasSubstr("0.000 ms apart on average"));
    DatasetBytes words = usDataset(3);
    words.text(kFrameTimeVector, "DS", "0\\x\\y");
    EXPECT_THAT(contradiction(factsOf(words)), HasSubstr("FrameTimeVector holds \"0\\x\\y\""));
    DatasetBytes absent = usDataset(3);
    EXPECT_THAT(contradiction(factsOf(point(absent, kFrameTimeVector))),
                HasSubstr("FrameIncrementPointer points to (0018,1065) FrameTimeVector, which is absent"));
}

TEST(ReadFrameTimes, AnnouncesStatementsThatDiffer) {
    DatasetBytes rate = usDataset(3);
    rate.text(kFrameTime, "DS", "40").text(kCineRate, "IS", "50");
    auto facts = factsOf(rate);
    EXPECT_THAT(facts.times.startMs, ElementsAre(0.0, 40.0, 80.0));
    EXPECT_THAT(contradiction(facts),
                HasSubstr("CineRate says 50.0 frames a second, the frames are 40.00 ms apart"));
    EXPECT_THAT(contradiction(facts), HasSubstr("The frame time is used."));
    DatasetBytes both = usDataset(3);
    both.text(kFrameTime, "DS", "20").text(kFrameTimeVector, "DS", "0\\40\\40");
    EXPECT_THAT(contradiction(factsOf(both)),
                HasSubstr("40.00 ms apart on average, (0018,1063) FrameTime says 20.00"));
    DatasetBytes length = usDataset(3);
    length.text(kFrameTime, "DS", "40").text(kDuration, "DS", "1.2");
    EXPECT_THAT(contradiction(factsOf(length)),
                HasSubstr("EffectiveDuration says 1.200 s, the frames take 0.080 s"));
}

TEST(ReadFrameTimes, TakesADurationOfOneFrameMoreOrLess) {
    for (const char* seconds : {"0.080", "0.120"}) { // to the start of the last frame, or to its end
        DatasetBytes d = usDataset(3);
        d.text(kFrameTime, "DS", "40").text(kDuration, "DS", seconds);
        EXPECT_THAT(codesOf(factsOf(d).notices), Not(Contains("frame-times-contradictory"))) << seconds;
    }
}

TEST(ReadFrameTimes, KeepsRWaves) {
    DatasetBytes d = usDataset(3);
    d.text(kFrameTime, "DS", "40").bytes(kRWaves, "FL", floats({10.0F, 810.0F}));
    EXPECT_THAT(factsOf(d).times.rWaveMs, ElementsAre(10.0, 810.0));
    EXPECT_DOUBLE_EQ(factsOf(d).times.heartRatePerMinute().value(), 75.0);
    d.bytes(kRWaves, "FL", floats({810.0F, 10.0F}));
    EXPECT_THAT(factsOf(d).times.rWaveMs, ElementsAre(10.0, 810.0));
    EXPECT_THAT(contradiction(factsOf(d)), HasSubstr("RWaveTimeVector does not rise"));
}

TEST(UsFacts, ProbeAngleComesFromACodedViewAlone) {
    // PS3.16 CID 12343: 131100 to 131104 are the transoesophageal planes at 0, 45, 60, 90 and 135 degrees.
    const std::pair<const char*, double> planes[] = {
        {"131100", 0.0}, {"131101", 45.0}, {"131102", 60.0}, {"131103", 90.0}, {"131104", 135.0}};
    for (const auto& [code, deg] : planes) {
        DatasetBytes d = usDataset();
        const auto facts = factsOf(d.sequence(kViews, {view("DCM", code)}));
        ASSERT_TRUE(facts.angle) << code;
        EXPECT_EQ(*facts.angle, (ProbeAngle{deg, ProbeAngleSource::File}));
    }
}

TEST(UsFacts, ProbeAngleIsNeverGuessed) {
    DatasetBytes d = usDataset();
    d.text(0x0008103E, "LO", "LAA 45 deg").text(0x00204000, "LT", "angle 90");
    d.text(0x200D0010, "LO", "ANGLES").text(0x200D1001, "DS", "135");
    d.fd(0x00186036, 30.0); // SteeringAngle of a Doppler beam is no turn of the plane
    EXPECT_FALSE(factsOf(d).angle);
    EXPECT_FALSE(factsOf(d.sequence(kViews, {view("99LOCAL", "131103", "90 degrees")})).angle);
    EXPECT_FALSE(factsOf(d.sequence(kViews, {view("DCM", "131105", "90 degrees")})).angle);
    const auto two = factsOf(d.sequence(kViews, {view("DCM", "131101"), view("DCM", "131103")}));
    EXPECT_FALSE(two.angle);
    EXPECT_THAT(textOf(two.notices, "probe-angle-contradictory"), HasSubstr("names planes of two angles"));
}

TEST(UsFacts, PixelAspectIsForScalesMarkedByHand) {
    DatasetBytes d = usDataset();
    EXPECT_EQ(factsOf(d).pixelAspect, 1.0);
    d.text(kAspect, "IS", "6\\5");
    EXPECT_DOUBLE_EQ(factsOf(d).pixelAspect, 1.2);
    for (const char* bad : {"0\\1", "1", "1\\-1", "a\\b", "100\\1"}) {
        d.text(kAspect, "IS", bad);
        const auto facts = factsOf(d);
        EXPECT_EQ(facts.pixelAspect, 1.0) << bad;
        EXPECT_THAT(textOf(facts.notices, "pixel-aspect-unusable"), HasSubstr("which cannot be true")) << bad;
    }
}

TEST(UsFacts, SaysThatNothingCanBeMeasuredWithoutAScale) {
    EXPECT_THAT(textOf(factsOf(usDataset()).notices, "no-length-scale"),
                HasSubstr("nothing is measured until a scale of known length is marked"));
    DatasetBytes spaced = usDataset();
    spaced.text(0x00280030, "DS", "0.3\\0.3"); // PixelSpacing is no calibration of an ultrasound picture
    EXPECT_THAT(codesOf(factsOf(spaced).notices), Contains("no-length-scale"));
    EXPECT_THAT(factsOf(spaced).regions, IsEmpty());
}
