#include "dicomio/ct/ct_choice.h"

#include "tests/dicomio/support/result_of.h"

#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using core::ErrorCode;
using testing::HasSubstr;

namespace {

SeriesEntry ct(const std::string& uid, const std::string& patient, int images,
               const std::string& frame = "1.9") {
    SeriesEntry series;
    series.seriesUid = uid;
    series.patientId = patient;
    series.patientName = "Invented^" + patient;
    series.kind = "ct";
    series.modality = "CT";
    series.description = "Heart";
    series.frameOfReferenceUid = frame;
    series.measurable = true;
    series.imageCount = images;
    PhaseEntry phase;
    phase.images.resize(static_cast<std::size_t>(images));
    series.phases.push_back(phase);
    return series;
}

SeriesIndex of(std::vector<SeriesEntry> series) {
    SeriesIndex index;
    index.series = std::move(series);
    return index;
}

PhaseEntry phase(std::optional<double> percent, std::optional<double> triggerMs, std::optional<double> beatMs,
                 const std::string& label) {
    PhaseEntry entry;
    entry.percent = percent;
    entry.triggerMs = triggerMs;
    entry.beatMs = beatMs;
    entry.label = label;
    return entry;
}

} // namespace

TEST(ChooseCtSeries, LeavesTheChoiceBetweenPatientsToThePerson) {
    const SeriesIndex index = of({ct("1.1", "P1", 10), ct("1.2", "P2", 90)});
    const auto error = errorOf(chooseCtSeries(index, std::nullopt));
    EXPECT_EQ(error.code, ErrorCode::InvalidArgument);
    EXPECT_THAT(error.message,
                HasSubstr("CT series of 2 patients. They are never mixed, so one must be chosen: series "
                          "1.1 (\"Heart\", patient Invented^P1, ID P1, 10 images); series 1.2"));
    EXPECT_EQ(valueOf(chooseCtSeries(index, "1.1"))->patientId, "P1");
    EXPECT_EQ(valueOf(chooseCtSeries(index, std::nullopt, "P2"))->seriesUid, "1.2");
    EXPECT_THAT(errorOf(chooseCtSeries(index, std::nullopt, "P3")).message,
                HasSubstr("holds no CT series of patient P3 that can be measured"));
}

TEST(ChooseCtSeries, AsksForThePatientWhereTwoShareASeries) {
    const SeriesIndex index = of({ct("1.1", "P1", 10), ct("1.1", "P2", 90)});
    const auto error = errorOf(chooseCtSeries(index, "1.1"));
    EXPECT_EQ(error.code, ErrorCode::InvalidArgument);
    EXPECT_THAT(error.message, HasSubstr("2 patients under one series UID"));
    EXPECT_EQ(valueOf(chooseCtSeries(index, "1.1", "P1"))->imageCount, 10);
    EXPECT_THAT(errorOf(chooseCtSeries(index, "1.1", "P3")).message,
                HasSubstr("no series 1.1 of patient P3"));
}

TEST(ChooseCtSeries, LeavesTheChoiceBetweenFramesOfReferenceToThePerson) {
    const SeriesIndex index = of({ct("1.1", "P1", 10, "1.8"), ct("1.2", "P1", 90, "1.9")});
    const auto error = errorOf(chooseCtSeries(index, std::nullopt));
    EXPECT_EQ(error.code, ErrorCode::InvalidArgument);
    EXPECT_THAT(error.message, HasSubstr("in 2 frames of reference ((0020,0052) FrameOfReferenceUID)"));
    EXPECT_EQ(valueOf(chooseCtSeries(index, "1.2"))->imageCount, 90);
}

TEST(ChooseCtSeries, OverlooksWhatCannotBeMeasured) {
    SeriesEntry other = ct("1.2", "P2", 90), echo = ct("1.3", "P3", 900);
    other.measurable = false;
    echo.kind = "ultrasound";
    EXPECT_EQ(valueOf(chooseCtSeries(of({ct("1.1", "P1", 10), other, echo}), std::nullopt))->seriesUid,
              "1.1");
}

TEST(ChoosePhase, GoesByMillisecondsAndSaysWhatWasTaken) {
    SeriesEntry series = ct("1.1", "P1", 1);
    series.phases = {phase(35.0, 300.0, 860.0, "35 %"), phase(75.0, 640.0, 860.0, "75 %")};
    const auto choice = valueOf(choosePhase(series, PhaseWish{{}, 350.0}));
    EXPECT_EQ(choice.phase, 0u);
    EXPECT_EQ(choice.words, "Asked for 350 ms, taken: 35 %, the nearest there is.");
    EXPECT_EQ(valueOf(choosePhase(series, PhaseWish{40.0, {}})).words,
              "Asked for 40 %, taken: 35 %, the nearest there is.");
    EXPECT_EQ(valueOf(choosePhase(series, PhaseWish{})).words, ""); // nobody asked
    EXPECT_EQ(errorOf(choosePhase(series, PhaseWish{40.0, 350.0})).code, ErrorCode::InvalidArgument);
}

TEST(ChoosePhase, RefusesMillisecondsWhereNothingTellsThem) {
    SeriesEntry series = ct("1.1", "P1", 1);
    series.phases = {phase(35.0, {}, {}, "35 %")};
    const auto error = errorOf(choosePhase(series, PhaseWish{{}, 350.0}));
    EXPECT_EQ(error.code, ErrorCode::NotFound);
    EXPECT_THAT(error.message, HasSubstr("does not say at which time after the R wave"));
}
