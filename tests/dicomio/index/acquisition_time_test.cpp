#include "dicomio/index/acquisition_time.h"

#include <gtest/gtest.h>

using namespace gauge::dicomio;

namespace {

Dataset with(std::initializer_list<std::pair<Tag, std::string>> values) {
    Dataset dataset;
    for (const auto& [tag, value] : values)
        dataset.add(tag, {"", value, {}});
    return dataset;
}

std::string isoOf(const Dataset& dataset) {
    const auto time = acquisitionTime(dataset);
    return time ? iso(*time) : "unknown";
}

std::string isoOfDateTime(const std::string& value) {
    return isoOf(with({{tags::AcquisitionDateTime, value}}));
}

} // namespace

TEST(AcquisitionTime, ReadsDateTimesOfEveryPrecision) {
    EXPECT_EQ(isoOfDateTime("20260314101530.250000+0100"), "2026-03-14T10:15:30.25+01:00");
    EXPECT_EQ(isoOfDateTime("20260314101530"), "2026-03-14T10:15:30");
    EXPECT_EQ(isoOfDateTime("202603141015"), "2026-03-14T10:15:00");
    EXPECT_EQ(isoOfDateTime("2026031410"), "2026-03-14T10:00:00");
    EXPECT_EQ(isoOfDateTime("20260314-0330"), "2026-03-14");           // an offset needs a time to move
    EXPECT_EQ(isoOfDateTime("20161231235960"), "2016-12-31T23:59:60"); // a leap second
}

TEST(AcquisitionTime, TakesTheFirstDateThatCanBeRead) {
    EXPECT_EQ(isoOf(with({{tags::AcquisitionDate, "20260102"},
                          {tags::AcquisitionTime, "080910.5"},
                          {tags::ContentDate, "20260105"},
                          {tags::ContentTime, "01"}})),
              "2026-01-02T08:09:10.5");
    EXPECT_EQ(isoOf(with({{tags::AcquisitionDateTime, "00000000"}, {tags::SeriesDate, "20260105"}})),
              "2026-01-05");
    EXPECT_EQ(isoOf(with({{tags::AcquisitionTime, "080910"}, {tags::StudyDate, "2026.01.05"}})),
              "2026-01-05");
    EXPECT_EQ(isoOf(with({{tags::StudyDate, "20260105"}, {tags::StudyTime, "08:09:10"}})),
              "2026-01-05T08:09:10");
    EXPECT_EQ(isoOf(with({{tags::AcquisitionTime, "080910"}})), "unknown");
}

TEST(AcquisitionTime, KeepsTheTimeZoneOfTheFile) {
    EXPECT_EQ(
        isoOf(with({{tags::AcquisitionDateTime, "20260314101530"}, {tags::TimezoneOffsetFromUtc, "-0330"}})),
        "2026-03-14T10:15:30-03:30");
    EXPECT_EQ(isoOf(with({{tags::AcquisitionDateTime, "20260314101530+0200"},
                          {tags::TimezoneOffsetFromUtc, "+0100"}})),
              "2026-03-14T10:15:30+02:00");
    EXPECT_EQ(
        isoOf(with({{tags::AcquisitionDateTime, "20260314101530"}, {tags::TimezoneOffsetFromUtc, "+1530"}})),
        "2026-03-14T10:15:30");
}

TEST(AcquisitionTime, DoesNotGuessFromWhatIsNoDate) {
    for (const char* wrong : {"", "2026", "20261314", "20260230", "18500101", "2026031x", "20260314251530",
                              "20260314106030", "202603141", "garbage!"})
        EXPECT_EQ(isoOfDateTime(wrong), "unknown") << wrong;
}

TEST(AcquisitionTime, OrdersByUtcOrByTheLocalClock) {
    const auto at = [](const char* value) {
        return *acquisitionTime(with({{tags::AcquisitionDateTime, value}}));
    };
    const auto morning = at("20260314090000+0500"), evening = at("20260314080000+0000");
    EXPECT_LT(secondsSince1970(morning, true), secondsSince1970(evening, true)); // 04:00 and 08:00 UTC
    EXPECT_GT(secondsSince1970(morning, false), secondsSince1970(evening, false));
    EXPECT_EQ(secondsSince1970(at("19700102000000+0000"), true), 86400.0);
    EXPECT_LT(compareDays(at("20260313235959"), at("20260314")), 0);
    EXPECT_EQ(compareDays(morning, evening), 0);
}
