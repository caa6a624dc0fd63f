// What `measure` takes by itself, and where the person must choose.
#include "app/cli/command_line.h"
#include "app/cli/measure_arguments.h"
#include "tests/dicomio/support/dicom_bytes.h"

#include <gmock/gmock.h>
#include <sstream>

using namespace gauge;
using namespace gauge::app;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

struct Answer {
    ExitCode code;
    std::string err;
};

Answer measure(const TempFolder& folder, const QStringList& more = {}) {
    std::ostringstream out, err;
    const QString path = QString::fromStdString(folder.path().string());
    const ExitCode code =
        measureCommand(QStringList{path, "--atrium", "0,0,0", "--tip", "1,1,1"} + more, out, err);
    return {code, err.str()};
}

void writePatients(const TempFolder& folder, const std::string& secondSeries) {
    int file = 0;
    for (const std::string patient : {"P1", "P2"})
        for (CtSlice& slice : ctStack(3, 1.0)) {
            slice.patientId = patient;
            if (patient == "P2") slice.seriesUid = secondSeries;
            slice.sopUid += "." + std::to_string(file);
            folder.write(std::to_string(file++), slice.dataset());
        }
}

std::string argumentError(const QStringList& more) {
    const auto parsed =
        parseMeasureArguments(QStringList{"folder", "--atrium", "0,0,0", "--tip", "1,1,1"} + more);
    return parsed ? "" : parsed.error().message;
}

} // namespace

TEST(MeasureChoice, RefusesToChooseBetweenPatientsAndNamesTheOptions) {
    const TempFolder folder;
    writePatients(folder, "1.2.3.5");
    const Answer refused = measure(folder);
    EXPECT_EQ(refused.code, ExitCode::WrongUsage);
    EXPECT_THAT(
        refused.err,
        HasSubstr("CT series of 2 patients. They are never mixed, so one must be chosen: series 1.2.3.4"));
    EXPECT_THAT(refused.err, HasSubstr("; series 1.2.3.5"));
    EXPECT_THAT(refused.err, HasSubstr("Name it with --series UID, and with --patient ID where"));
    EXPECT_EQ(measure(folder, {"--series", "1.2.3.5"}).code,
              ExitCode::NotMeasurable); // chosen; no heart in it
    EXPECT_EQ(measure(folder, {"--patient", "P1"}).code, ExitCode::NotMeasurable);
}

TEST(MeasureChoice, AsksForThePatientWhereTwoShareASeriesUid) {
    const TempFolder folder;
    writePatients(folder, "1.2.3.4");
    EXPECT_THAT(measure(folder, {"--series", "1.2.3.4"}).err, HasSubstr("2 patients under one series UID"));
    EXPECT_EQ(measure(folder, {"--series", "1.2.3.4", "--patient", "P2"}).code, ExitCode::NotMeasurable);
    EXPECT_EQ(measure(folder, {"--patient", "P3"}).code, ExitCode::InputUnreadable);
}

TEST(ParseMeasureArguments, TakesAPhaseByPercentOrByMilliseconds) {
    const auto parsed = parseMeasureArguments(
        {"folder", "--atrium", "0,0,0", "--tip", "1,1,1", "--phase-ms", "320", "--patient", "P1"});
    ASSERT_TRUE(parsed) << parsed.error().message;
    EXPECT_EQ(parsed->phaseMs, 320.0);
    EXPECT_FALSE(parsed->phasePercent);
    EXPECT_EQ(parsed->patientId, "P1");
    EXPECT_EQ(argumentError({"--phase-ms", "320", "--phase", "40"}),
              "--phase and --phase-ms exclude each other; both were given.");
    EXPECT_THAT(argumentError({"--phase-ms", "-3"}),
                HasSubstr("--phase-ms needs milliseconds after the R wave, 0 or more"));
    EXPECT_THAT(argumentError({"--phase-ms", "late"}), HasSubstr("--phase-ms"));
}
