#include "dicomio/ultrasound/us_reader.h"

#include "core/cine/region_caliper.h"
#include "tests/dicomio/ultrasound/us_bytes.h"

#include <gmock/gmock.h>
#include <thread>

using namespace gauge;
using namespace gauge::core;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::Contains;
using testing::HasSubstr;

namespace {

Result<EchoCine> read(const DatasetBytes& dataset) {
    const TempFolder folder;
    return readUltrasound(folder.write("us.dcm", dataset));
}

} // namespace

TEST(ReadUltrasound, BringsFramesTimesRegionsAndIdentity) {
    const TempFolder folder;
    DatasetBytes d = usDataset(3);
    d.text(0x00181063, "DS", "40").text(0x00280034, "IS", "11\\10");
    const auto cine = valueOf(readUltrasound(folder.write("us.dcm", addRegions(d, {RegionBytes{}}))));
    EXPECT_EQ(cine.frames->columns(), 320);
    EXPECT_EQ(cine.frames->rows(), 240);
    EXPECT_EQ(cine.frames->count(), 3);
    EXPECT_FALSE(cine.frames->isColour());
    EXPECT_EQ(cine.times.betweenMs(0, 2), 80.0);
    EXPECT_EQ(cine.regions.size(), 1u);
    EXPECT_EQ(cine.sopInstanceUid, "1.2.3.4.5");
    EXPECT_DOUBLE_EQ(cine.pixelAspect, 1.1);
    EXPECT_FALSE(cine.angle);
    for (int f = 0; f < 3; ++f) {
        const GreyFrame grey = valueOf(cine.frames->grey(f));
        const RgbFrame rgb = valueOf(cine.frames->rgb(f));
        for (const auto& [x, y] : {std::pair{0, 0}, {319, 0}, {17, 201}, {319, 239}}) {
            const int expected = ((f * 240 + y) * 320 + x) % 251;
            EXPECT_EQ(grey.at(x, y), expected);
            EXPECT_EQ(rgb.at(x, y)[0], expected);
            EXPECT_EQ(rgb.at(x, y)[2], expected);
        }
    }
}

TEST(ReadUltrasound, AStillIsACineOfOneFrame) {
    const TempFolder folder;
    const auto cine = valueOf(readUltrasound(folder.write("us.dcm", usDataset(1))));
    EXPECT_EQ(cine.frames->count(), 1);
    EXPECT_FALSE(cine.times.known());
    EXPECT_TRUE(cine.frames->rgb(0));
    EXPECT_THAT(codesOf(cine.notices), Contains("no-length-scale"));
}

TEST(ReadUltrasound, RefusesFramesThatAreNotThere) {
    const TempFolder folder;
    const auto cine = valueOf(readUltrasound(folder.write("us.dcm", usDataset(2))));
    EXPECT_EQ(errorOf(cine.frames->rgb(2)).code, ErrorCode::InvalidArgument);
    EXPECT_EQ(errorOf(cine.frames->grey(-1)).code, ErrorCode::InvalidArgument);
}

TEST(ReadUltrasound, FramesMayBeAskedForFromSeveralThreads) {
    const TempFolder folder;
    const auto cine = valueOf(readUltrasound(folder.write("us.dcm", usDataset(8))));
    std::vector<int> wrong(4);
    std::vector<std::thread> threads;
    for (std::size_t t = 0; t < wrong.size(); ++t)
        threads.emplace_back([&, t] {
            for (int f = 0; f < 8; ++f) {
                const auto frame = cine.frames->grey(f);
                wrong[t] += !frame || frame->at(5, 7) != ((f * 240 + 7) * 320 + 5) % 251;
            }
        });
    for (auto& thread : threads)
        thread.join();
    EXPECT_THAT(wrong, testing::Each(0));
}

TEST(ReadUltrasound, ColourHasNoGreyValues) {
    const TempFolder folder;
    DatasetBytes d = usDataset(1, 4, 2);
    d.us(0x00280002, 3).us(0x00280006, 0).text(0x00280004, "CS", "RGB");
    d.bytes(0x7FE00010, "OW", std::string("abcdefghijklmnopqrstuvwx"));
    const auto cine = valueOf(readUltrasound(folder.write("us.dcm", d)));
    EXPECT_TRUE(cine.frames->isColour());
    EXPECT_EQ(valueOf(cine.frames->rgb(0)).at(1, 0)[2], 'f');
    const Error error = errorOf(cine.frames->grey(0));
    EXPECT_EQ(error.code, ErrorCode::ObjectUnsupported);
    EXPECT_THAT(error.message, HasSubstr("the image is in colour"));
}

TEST(ReadUltrasound, RefusesOtherKindsWithTheFileAndWhatToDo) {
    DatasetBytes d = usDataset(1);
    Error error = errorOf(read(d.text(0x00080016, "UI", kCtClass)));
    EXPECT_EQ(error.code, ErrorCode::ObjectUnsupported);
    EXPECT_THAT(error.message, HasSubstr("us.dcm: (0008,0016) SOPClassUID is \"1.2.840.10008.5.1.4.1.1.2\""));
    EXPECT_THAT(error.message, HasSubstr("Choose an ultrasound file."));
    error = errorOf(read(d.text(0x00080016, "UI", kUsVolumeClass)));
    EXPECT_THAT(error.message, HasSubstr("it is an ultrasound volume, which is opened as a volume"));
    DatasetBytes bare = usDataset(1);
    bare.remove(0x7FE00010);
    EXPECT_THAT(errorOf(read(bare)).message, HasSubstr("Cannot read the ultrasound images of "));
    const Error absent = errorOf(readUltrasound(std::filesystem::path("/nowhere/us.dcm")));
    EXPECT_EQ(absent.code, ErrorCode::FileUnreadable);
    EXPECT_THAT(absent.message, HasSubstr("/nowhere/us.dcm"));
}

TEST(ReadUltrasound, NothingIsMeasuredBeforeAScaleIsMarked) {
    const TempFolder folder;
    const auto cine = valueOf(readUltrasound(folder.write("us.dcm", usDataset(1))));
    const Eigen::Vector2d a(10, 10), b(60, 10);
    EXPECT_EQ(errorOf(regionDistance(cine.regions, {}, a, b)).code, ErrorCode::ScaleMissing);
    const HandScale hand{valueOf(markedScale({300, 20}, {300, 220}, 40.0, cine.pixelAspect)), std::nullopt};
    const Estimate length = valueOf(regionDistance(cine.regions, hand, a, b));
    EXPECT_DOUBLE_EQ(length.value, 10.0);
    EXPECT_THAT(length.method, HasSubstr("scale marked by hand (40.0 mm over 200.0 pixels)"));
    EXPECT_GT(length.components.scale, 0.0);
}
