// Gated series as scanners write them, classic and enhanced, as one object with phases.
#include "dicomio/ct/ct_phases.h"

#include "dicomio/ct/ct_choice.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

constexpr int kPlaces = 4;

/// A classic gated series: phases at 0, 20 … 80 %, each slice with percent, trigger time and interval. Voxels
/// say which phase they are of: 10 * slice + 1000 * phase.
template <class Change> void writeGated(const TempFolder& folder, int phases, Change change) {
    int file = 0;
    for (int p = 0; p < phases; ++p)
        for (int k = 0; k < kPlaces; ++k) {
            CtSlice slice = ctStack(kPlaces, 1.0)[static_cast<std::size_t>(k)];
            slice.sopUid = "1.2.3.4." + std::to_string(p) + "." + std::to_string(k);
            slice.pixels.assign(20, static_cast<std::uint16_t>(1024 + 10 * k + 1000 * p));
            DatasetBytes d = slice.dataset();
            const double percent = 100.0 * p / phases, beat = 900.0;
            d.fd(0x00209241, percent)
                .text(0x00181060, "DS", ds(beat * percent / 100.0))
                .text(0x00181062, "IS", "900");
            change(d, p, k);
            folder.write(std::to_string(file++), d);
        }
}

SeriesEntry onlySeries(const TempFolder& folder) {
    const SeriesIndex index = valueOf(listFolder(folder.path()));
    if (index.series.size() != 1) throw std::runtime_error("one series was expected");
    return index.series.front();
}

std::vector<std::string> codes(const SeriesEntry& series) {
    std::vector<std::string> result;
    for (const auto& message : series.messages)
        result.push_back(message.code);
    return result;
}

std::vector<std::string> labels(const SeriesEntry& series) {
    std::vector<std::string> result;
    for (const PhaseEntry& phase : series.phases)
        result.push_back(phase.label);
    return result;
}

/// A frame of an Enhanced CT.
struct EnhancedFrame {
    double z = 0.0;
    std::string stack = "1";
    std::optional<double> percent = {};
    std::optional<double> beatMs = {};
    std::uint32_t moment = 0; ///< dimension index of the temporal position, 0: none
    std::uint16_t value = 0;
};

DatasetBytes enhanced(const std::vector<EnhancedFrame>& frames) {
    std::vector<DatasetBytes> perFrame;
    std::vector<std::uint16_t> pixels;
    for (const EnhancedFrame& frame : frames) {
        DatasetBytes position, content, cardiac, item;
        position.text(0x00200032, "DS", "0\\0\\" + ds(frame.z));
        content.text(0x00209056, "SH", frame.stack);
        std::string indices =
            littleU32(1) + littleU32(static_cast<std::uint32_t>(frame.z + 1)) + littleU32(frame.moment);
        if (frame.moment) content.bytes(0x00209157, "UL", indices);
        item.sequence(0x00209113, {position}).sequence(0x00209111, {content});
        if (frame.percent) cardiac.fd(0x00209241, *frame.percent);
        if (frame.beatMs) cardiac.fd(0x00209251, *frame.beatMs);
        if (frame.percent) item.sequence(0x00189118, {cardiac});
        perFrame.push_back(item);
        pixels.insert(pixels.end(), {frame.value, frame.value});
    }
    DatasetBytes orientation, measures, values, shared, stack, place, moment;
    orientation.text(0x00200037, "DS", "1\\0\\0\\0\\1\\0");
    measures.text(0x00280030, "DS", "0.5\\0.5");
    values.text(0x00281052, "DS", "0").text(0x00281053, "DS", "1").text(0x00281054, "LO", "HU");
    shared.sequence(0x00209116, {orientation})
        .sequence(0x00289110, {measures})
        .sequence(0x00289145, {values});
    const auto pointer = [](std::uint16_t group, std::uint16_t element) {
        std::string bytes(4, '\0');
        bytes[0] = static_cast<char>(group & 0xFF), bytes[1] = static_cast<char>(group >> 8);
        bytes[2] = static_cast<char>(element & 0xFF), bytes[3] = static_cast<char>(element >> 8);
        return bytes;
    };
    stack.bytes(0x00209165, "AT", pointer(0x0020, 0x9056));
    place.bytes(0x00209165, "AT", pointer(0x0020, 0x9057));
    moment.bytes(0x00209165, "AT", pointer(0x0020, 0x9128));
    DatasetBytes d = CtSlice{}.dataset();
    d.text(0x00080016, "UI", kEnhancedCtClass).text(0x00280008, "IS", std::to_string(frames.size()));
    d.us(0x00280010, 1).us(0x00280011, 2).sequence(0x00209222, {stack, place, moment});
    for (const TagNumber tag : {0x00200032u, 0x00200037u, 0x00280030u, 0x00281052u, 0x00281053u})
        d.remove(tag);
    return d.sequence(0x52009229, {shared}).sequence(0x52009230, perFrame).words(0x7FE00010, "OW", pixels);
}

} // namespace

TEST(GatedCt, IsOneObjectWhosePhasesAreReadWhenLookedAt) {
    const TempFolder folder;
    writeGated(folder, 5, [](DatasetBytes&, int, int) {});
    const SeriesEntry series = onlySeries(folder);
    EXPECT_EQ(series.status, SeriesStatus::Ok) << series.messages.front().text;
    EXPECT_THAT(labels(series), ElementsAre("0 %", "20 %", "40 %", "60 %", "80 %"));
    const auto opened = openCtPhases(series, {3 * 160, 1});
    const auto& set = valueOf(opened); // room for three phases
    EXPECT_EQ(set->phases()[2].percent, 40.0);
    EXPECT_EQ(set->phases()[2].delayMs, 360.0);
    EXPECT_EQ(set->phases()[2].bytes, 4u * 5 * 4 * 2);
    const auto choice = valueOf(core::nearestByDelay(set->phases(), 500.0));
    EXPECT_EQ(choice.phase, 3u); // 540 ms
    const auto phase = valueOf(set->get(choice.phase));
    EXPECT_EQ(phase->volume->at(0, 0, 2), 3020);
    EXPECT_EQ(phase->sopInstanceUids[2], "1.2.3.4.3.2");
    set->waitUntilIdle();
    EXPECT_EQ(set->held(4)->volume->at(0, 0, 0), 4000); // the neighbours are there
    EXPECT_EQ(set->held(2)->volume->at(0, 0, 0), 2000);
    EXPECT_FALSE(set->held(0));
    std::stop_source stop;
    stop.request_stop();
    EXPECT_EQ(errorOf(set->get(0, {stop.get_token(), {}})).code, core::ErrorCode::Cancelled);
}

TEST(GatedCt, TellsMixedBeatsOfThePhaseThatHasThem) {
    const TempFolder folder;
    writeGated(folder, 2, [](DatasetBytes& d, int p, int k) {
        if (p == 1 && k >= 2) d.text(0x00181062, "IS", "620");
    });
    const SeriesEntry series = onlySeries(folder);
    EXPECT_THAT(codes(series), ElementsAre("mixed-beats"));
    EXPECT_THAT(series.messages[0].text,
                HasSubstr("Phase 50 % is made of heart beats of different length, R-R 620 to 900 ms"));
    EXPECT_TRUE(series.measurable);
    const auto opened = openCtPhases(series);
    const auto& set = valueOf(opened);
    EXPECT_EQ(valueOf(set->get(1))->notices.front().code, "mixed-beats"); // travels with the phase
    EXPECT_TRUE(valueOf(set->get(0))->notices.empty());                   // and not with the other
}

TEST(GatedCt, TellsPhasesThatLieOnAnotherGrid) {
    const TempFolder folder;
    writeGated(folder, 3, [](DatasetBytes& d, int p, int k) {
        if (p == 1) d.text(0x00200032, "DS", "0\\0.3\\" + ds(k));
        if (p == 2) d.text(0x00280030, "DS", "0.5\\0.5");
    });
    const SeriesEntry series = onlySeries(folder);
    ASSERT_EQ(codes(series).size(), 2u) << series.messages.front().text;
    EXPECT_THAT(codes(series), ElementsAre("phases-differ", "phases-differ"));
    EXPECT_THAT(series.messages[0].text, HasSubstr("up to 0.30 mm away) than phase 0 %"));
    EXPECT_TRUE(series.measurable);
}

TEST(OpenCtPhases, RefusesWhatIsNoCt) {
    SeriesEntry echo;
    echo.seriesUid = "1.2";
    echo.kind = "ultrasound";
    const auto refused = errorOf(openCtPhases(echo));
    EXPECT_EQ(refused.code, core::ErrorCode::ObjectUnsupported);
    EXPECT_EQ(refused.message, "Series 1.2 is no CT series but ultrasound.");
    echo.kind = "ct";
    EXPECT_EQ(errorOf(openCtPhases(echo)).code, core::ErrorCode::InvalidArgument);
}

TEST(EnhancedCt, HoldsSeveralPhasesInOneObjectWithTheirBeats) {
    const TempFolder folder;
    std::vector<EnhancedFrame> frames;
    for (const double percent : {70.0, 40.0})
        for (int z = 0; z < 3; ++z)
            frames.push_back({double(z), "1", percent, percent == 40.0 && z == 2 ? 600.0 : 900.0, 0,
                              static_cast<std::uint16_t>(percent + z)});
    folder.write("object", enhanced(frames));
    const SeriesEntry series = onlySeries(folder);
    EXPECT_THAT(labels(series), ElementsAre("40 %", "70 %"));
    EXPECT_THAT(codes(series), ElementsAre("mixed-beats"));
    EXPECT_EQ(series.phases[1].beatMs, 900.0);
    const auto opened = openCtPhases(series);
    const auto& set = valueOf(opened);
    EXPECT_EQ(valueOf(set->get(0))->volume->at(1, 0, 2), 42);
    EXPECT_EQ(valueOf(set->get(1))->volume->at(0, 0, 1), 71);
}

TEST(EnhancedCt, TellsPhasesApartByDimensionIndicesAlone) {
    const TempFolder folder;
    std::vector<EnhancedFrame> frames;
    for (std::uint32_t moment : {2u, 1u})
        for (int z = 0; z < 3; ++z)
            frames.push_back(
                {double(z), "1", {}, {}, moment, static_cast<std::uint16_t>(100 * moment + unsigned(z))});
    folder.write("object", enhanced(frames));
    const SeriesEntry series = onlySeries(folder);
    ASSERT_EQ(series.phases.size(), 2u);
    EXPECT_THAT(labels(series), ElementsAre("time 1", "time 2"));
    EXPECT_EQ(valueOf(valueOf(openCtPhases(series))->get(0))->volume->at(0, 0, 2), 102);
}

TEST(EnhancedCt, MakesOneVolumeOfEachStack) {
    const TempFolder folder;
    std::vector<EnhancedFrame> frames;
    for (int z = 0; z < 3; ++z)
        frames.push_back({double(z), "HEART", {}, {}, 0, 1});
    for (int z = 0; z < 4; ++z)
        frames.push_back({double(z), "SMALL", {}, {}, 0, 2}); // the same places again
    folder.write("object", enhanced(frames));
    const SeriesEntry series = onlySeries(folder);
    EXPECT_THAT(labels(series), ElementsAre("stack HEART", "stack SMALL"));
    EXPECT_THAT(codes(series), ElementsAre("several-stacks"));
    const auto opened = openCtPhases(series);
    const auto& set = valueOf(opened);
    EXPECT_EQ(valueOf(set->get(0))->volume->at(0, 0, 1), 1);
    EXPECT_EQ(valueOf(set->get(1))->volume->size().z(), 4);
}

TEST(EnhancedCt, RefusesGroupsThatAreNotAsManyAsTheFrames) {
    const TempFolder folder;
    DatasetBytes d = enhanced({{0, "1", {}, {}, 0, 1}, {1, "1", {}, {}, 0, 1}, {2, "1", {}, {}, 0, 1}});
    d.text(0x00280008, "IS", "2").words(0x7FE00010, "OW", {1, 1, 1, 1});
    folder.write("object", d);
    const SeriesEntry series = onlySeries(folder);
    EXPECT_EQ(series.status, SeriesStatus::Refused);
    EXPECT_THAT(series.messages[0].text, HasSubstr("(5200,9230) PerFrameFunctionalGroupsSequence has 3 "
                                                   "item(s) where (0028,0008) NumberOfFrames is 2"));
}
