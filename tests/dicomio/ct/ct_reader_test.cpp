#include "dicomio/ct/ct_reader.h"
#include "dicomio/ct/first_slice.h"

#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <atomic>
#include <gmock/gmock.h>
#include <mutex>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using core::ErrorCode;
using testing::HasSubstr;

namespace {

SeriesIndex listed(const TempFolder& folder) {
    return valueOf(listFolder(folder.path()));
}

core::Result<CtVolume> loaded(const TempFolder& folder) {
    const SeriesIndex index = listed(folder);
    EXPECT_EQ(index.series.size(), 1u);
    return readCtPhase(index.series.front(), 0);
}

CtVolume loadedStack(const std::vector<CtSlice>& slices) {
    const TempFolder folder;
    writeStack(folder, slices);
    return valueOf(loaded(folder));
}

bool has(const std::vector<core::Notice>& notices, const std::string& code) {
    return std::any_of(notices.begin(), notices.end(), [&](const core::Notice& n) { return n.code == code; });
}

/// Enhanced CT of two places and two phases; the frames in an order of their own.
DatasetBytes enhancedCt() {
    const auto frame = [](double z, double percent) {
        DatasetBytes position, cardiac, item;
        position.text(0x00200032, "DS", "1\\2\\" + ds(z));
        cardiac.fd(0x00209241, percent);
        item.sequence(0x00209113, {position}).sequence(0x00189118, {cardiac});
        return item;
    };
    DatasetBytes orientation, measures, values, shared, lastValues;
    orientation.text(0x00200037, "DS", "1\\0\\0\\0\\1\\0");
    measures.text(0x00280030, "DS", "0.5\\0.25");
    values.text(0x00281052, "DS", "-1000").text(0x00281053, "DS", "2").text(0x00281054, "LO", "HU");
    lastValues.text(0x00281052, "DS", "-500").text(0x00281053, "DS", "1").text(0x00281054, "LO", "HU");
    shared.sequence(0x00209116, {orientation})
        .sequence(0x00289110, {measures})
        .sequence(0x00289145, {values});
    DatasetBytes last = frame(0, 75);
    last.sequence(0x00289145, {lastValues}); // a frame's own item wins over the shared one
    DatasetBytes d = CtSlice{}.dataset();
    d.text(0x00080016, "UI", kEnhancedCtClass)
        .text(0x00280008, "IS", "4")
        .us(0x00280010, 1)
        .us(0x00280011, 2);
    for (const TagNumber tag : {0x00200032u, 0x00200037u, 0x00280030u, 0x00281052u, 0x00281053u})
        d.remove(tag);
    d.sequence(0x52009229, {shared})
        .sequence(0x52009230, {frame(1.5, 75), frame(0, 30), frame(1.5, 30), last});
    return d.words(0x7FE00010, "OW", {1, 2, 3, 4, 5, 6, 7, 8});
}

} // namespace

TEST(ReadCtPhase, MakesOneBlockOfHounsfieldUnitsInTheOrderOfThePositions) {
    auto slices = ctStack(6, 0.5);
    std::swap(slices[0], slices[4]); // file names tell nothing
    const CtVolume ct = loadedStack(slices);
    ASSERT_EQ(ct.volume->size(), Eigen::Vector3i(5, 4, 6));
    for (int k = 0; k < 6; ++k) {
        EXPECT_EQ(ct.volume->at(4, 3, k), 10 * k);
        EXPECT_EQ(ct.sopInstanceUids[static_cast<std::size_t>(k)], "1.2.3.4." + std::to_string(k + 1));
    }
    EXPECT_EQ(ct.spacingMm, Eigen::Vector3d(0.25, 0.5, 0.5));
    EXPECT_EQ(ct.volume->frameOfReferenceUid(), "1.2.3.9");
    EXPECT_EQ(ct.volume->quantity(), core::VoxelQuantity::HounsfieldUnits);
    EXPECT_TRUE(ct.notices.empty());
}

TEST(ReadCtPhase, RunsIAlongTheRowAndJAlongTheColumn) {
    auto slices = ctStack(2, 1.0);
    for (auto& slice : slices)
        slice.pixels.clear(); // a ramp: column + 5 * row
    const CtVolume ct = loadedStack(slices);
    EXPECT_EQ(ct.volume->at(3, 2, 1), 3 + 5 * 2 - 1024);
    const Eigen::Vector3d p = ct.volume->patientFromVoxel() * Eigen::Vector3d(3, 2, 1);
    EXPECT_LT((p - Eigen::Vector3d(0.75, 1.0, 1.0)).norm(), 1e-12);
}

TEST(ReadCtPhase, AppliesEachSlicesOwnRescale) {
    auto slices = ctStack(3, 1.0);
    slices[1].slope = "0.5";
    slices[1].intercept = "-0.25";
    const CtVolume ct = loadedStack(slices);
    EXPECT_EQ(ct.volume->at(0, 0, 0), 0);
    EXPECT_EQ(ct.volume->at(0, 0, 1), 517); // 0.5 * 1034 - 0.25 = 516.75
    EXPECT_EQ(ct.volume->at(0, 0, 2), 20);
}

TEST(ReadCtPhase, TurnsPaddingIntoAir) {
    const TempFolder folder;
    auto slices = ctStack(2, 1.0);
    slices[0].pixels[3] = 63536; // -2000 as a signed word, written US as many scanners do
    for (std::size_t k = 0; k < slices.size(); ++k) {
        DatasetBytes d = slices[k].dataset();
        folder.write(std::to_string(k), d.us(0x00280103, 1).us(0x00280120, 63536));
    }
    const CtVolume ct = valueOf(loaded(folder));
    EXPECT_EQ(ct.volume->at(3, 0, 0), -1024);
    EXPECT_EQ(ct.volume->at(2, 0, 0), 0);
}

TEST(ReadCtPhase, HoldsValuesBeyondInt16AndSaysSo) {
    auto slices = ctStack(2, 1.0);
    slices[1].pixels[0] = 65535;
    slices[1].intercept = "0";
    const CtVolume ct = loadedStack(slices);
    EXPECT_EQ(ct.volume->at(0, 0, 1), 32767);
    ASSERT_TRUE(has(ct.notices, "values-held"));
    EXPECT_THAT(ct.notices[0].text, HasSubstr("1 voxels lie outside -32768 to 32767 HU"));
}

TEST(ReadCtPhase, InterpolatesAnUnevenStackLinearly) {
    // Values follow the place exactly (10 HU per mm), so linear interpolation must give them back at every
    // place.
    auto slices = ctStack(12, 1.0);
    const double places[] = {0, 1, 2.1, 3, 4, 5.15, 6, 7, 8, 9.1, 10, 11};
    for (std::size_t k = 0; k < slices.size(); ++k) {
        slices[k].position = "0\\0\\" + ds(places[k]);
        slices[k].pixels.assign(20, static_cast<std::uint16_t>(1024 + std::lround(100 * places[k])));
    }
    const CtVolume ct = loadedStack(slices);
    EXPECT_TRUE(has(ct.notices, "spacing-evened"));
    for (int k = 0; k < ct.volume->size().z(); ++k) {
        const Eigen::Vector3d p = ct.volume->patientFromVoxel() * Eigen::Vector3d(0, 0, k);
        EXPECT_NEAR(ct.volume->at(2, 2, k), 100 * p.z(), 0.5 + 1e-9); // rounded to whole units
    }
}

TEST(ReadCtPhase, ReadsFramesOfEnhancedCtByTheirFunctionalGroups) {
    const TempFolder folder;
    folder.write("enhanced", enhancedCt());
    const SeriesIndex index = listed(folder);
    ASSERT_EQ(index.series.size(), 1u);
    const SeriesEntry& series = index.series.front();
    EXPECT_EQ(series.kind, "ct-enhanced");
    ASSERT_EQ(series.phases.size(), 2u);
    EXPECT_EQ(series.phases[0].percent, 30.0);
    EXPECT_EQ(series.phases[1].label, "75 %");
    const CtVolume early = valueOf(readCtPhase(series, 0));
    EXPECT_EQ(early.volume->at(0, 0, 0), 2 * 3 - 1000);
    EXPECT_EQ(early.volume->at(1, 0, 1), 2 * 6 - 1000);
    const CtVolume late = valueOf(readCtPhase(series, 1));
    EXPECT_EQ(late.volume->at(0, 0, 0), 7 - 500);
    EXPECT_EQ(late.volume->at(0, 0, 1), 2 * 1 - 1000);
    EXPECT_EQ(late.phasePercent, 75.0);
    EXPECT_LT((late.volume->patientFromVoxel().translation() - Eigen::Vector3d(1, 2, 0)).norm(), 1e-12);
}

TEST(ReadCtPhase, RefusesASliceWithoutRescaleOrWithAnotherUnit) {
    const auto message = [](auto change) {
        const TempFolder folder;
        const auto slices = ctStack(2, 1.0);
        for (std::size_t k = 0; k < slices.size(); ++k) {
            DatasetBytes d = slices[k].dataset();
            change(d);
            folder.write(std::to_string(k), d);
        }
        return errorOf(loaded(folder)).message;
    };
    EXPECT_THAT(message([](DatasetBytes& d) { d.remove(0x00281052); }),
                HasSubstr("(0028,1053) RescaleSlope or (0028,1052) RescaleIntercept is absent or empty"));
    EXPECT_THAT(message([](DatasetBytes& d) { d.text(0x00281053, "DS", "0"); }),
                HasSubstr("(0028,1053) RescaleSlope is 0"));
    EXPECT_THAT(message([](DatasetBytes& d) { d.text(0x00281054, "LO", "US"); }),
                HasSubstr("(0028,1054) RescaleType is \"US\", not HU"));
}

TEST(ReadCtPhase, TellsThatAFileVanishedOrChanged) {
    const TempFolder folder;
    writeStack(folder, ctStack(3, 1.0));
    const SeriesIndex index = listed(folder);
    std::filesystem::remove(folder.path() / "1.dcm");
    const auto error = errorOf(readCtPhase(index.series.front(), 0));
    EXPECT_EQ(error.code, ErrorCode::FileUnreadable);
    EXPECT_THAT(error.message, HasSubstr("1.dcm: It cannot be opened"));
}

TEST(ReadCtPhase, RefusesAPhaseThatDoesNotExist) {
    const TempFolder folder;
    writeStack(folder, ctStack(2, 1.0));
    EXPECT_EQ(errorOf(readCtPhase(listed(folder).series.front(), 1)).code, ErrorCode::InvalidArgument);
}

TEST(ReadCtPhase, ReportsItsProgressInOrderAndCanBeCancelled) {
    const TempFolder folder;
    writeStack(folder, ctStack(40, 1.0));
    const SeriesIndex index = listed(folder);
    std::vector<double> shares;
    std::stop_source stop;
    core::WorkContext work{stop.get_token(), [&](double share) { shares.push_back(share); }};
    ASSERT_TRUE(readCtPhase(index.series.front(), 0, work));
    EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
    EXPECT_DOUBLE_EQ(shares.back(), 1.0);
    work.progress = [&](double share) {
        if (share > 0.3) stop.request_stop();
    };
    EXPECT_EQ(errorOf(readCtPhase(index.series.front(), 0, work)).code, ErrorCode::Cancelled);
}

TEST(ChooseCtSeries, TakesTheMeasurableOneWithMostSlicesInAPhase) {
    const TempFolder folder;
    auto small = ctStack(3, 1.0), large = ctStack(5, 1.0), broken = ctStack(9, 1.0);
    for (auto& s : large)
        s.seriesUid = "1.2.3.5";
    for (auto& s : broken)
        s.seriesUid = "1.2.3.6", s.position = "0\\0\\0";
    int file = 0;
    for (const auto& group : {small, large, broken})
        for (const auto& slice : group)
            folder.write(std::to_string(file++), slice.dataset());
    const SeriesIndex index = listed(folder);
    EXPECT_EQ(valueOf(chooseCtSeries(index, std::nullopt))->seriesUid, "1.2.3.5");
    EXPECT_EQ(valueOf(chooseCtSeries(index, "1.2.3.4"))->seriesUid, "1.2.3.4");
    const auto refused = errorOf(chooseCtSeries(index, "1.2.3.6"));
    EXPECT_EQ(refused.code, ErrorCode::NotFound);
    EXPECT_THAT(refused.message, HasSubstr("same place along the slice normal"));
    EXPECT_THAT(errorOf(chooseCtSeries(index, "9.9")).message, HasSubstr("holds no series 9.9"));
    EXPECT_EQ(errorOf(chooseCtSeries({}, std::nullopt)).code, ErrorCode::NothingUsable);
}

TEST(ChoosePhase, TakesTheNearestPercentAndFortyFiveByDefault) {
    SeriesEntry series;
    for (const double percent : {5.0, 40.0, 55.0, 75.0})
        series.phases.push_back({percent, {}, "", {}});
    EXPECT_EQ(valueOf(choosePhase(series, std::nullopt)), 1u);
    EXPECT_EQ(valueOf(choosePhase(series, 70.0)), 3u);
    SeriesEntry ungated;
    ungated.phases.push_back({std::nullopt, {}, "ungated", {}});
    EXPECT_EQ(valueOf(choosePhase(ungated, std::nullopt)), 0u);
    EXPECT_EQ(errorOf(choosePhase(ungated, 45.0)).code, ErrorCode::NotFound);
}

TEST(ReadMiddleSlice, IsTheMiddleSliceOfTheVolumeReadAlone) {
    const TempFolder folder;
    auto slices = ctStack(7, 0.5);
    std::swap(slices[0], slices[3]); // file names tell nothing
    for (auto& slice : slices)
        slice.pixels[2] = 63536; // padding, as a signed word
    slices[1].slope = "0.5";
    writeStack(folder, slices);
    const SeriesIndex index = listed(folder);
    const FirstSlice one = valueOf(readMiddleSlice(index.series.front(), 0));
    const CtVolume all = valueOf(readCtPhase(index.series.front(), 0));
    EXPECT_EQ(one.number, 4u);
    EXPECT_EQ(one.count, 7u);
    ASSERT_EQ(Eigen::Vector2i(one.columns, one.rows), all.volume->size().head<2>());
    for (int j = 0; j < one.rows; ++j)
        for (int i = 0; i < one.columns; ++i)
            EXPECT_EQ(one.hounsfield[static_cast<std::size_t>(j * one.columns + i)], all.volume->at(i, j, 3)) << i << " " << j;
    EXPECT_EQ(one.alongRowMm, all.spacingMm.x());
    EXPECT_EQ(one.alongColumnMm, all.spacingMm.y());
}

TEST(ReadMiddleSlice, SaysWhyThereIsNone) {
    EXPECT_EQ(readMiddleSlice(SeriesEntry{}, 0).error().message, "Cannot show a slice of series : its phase 1 holds no images.");
    const TempFolder folder;
    writeStack(folder, ctStack(3, 1.0));
    SeriesIndex index = listed(folder);
    std::filesystem::remove(index.series.front().phases.front().images[1].file);
    const auto none = readMiddleSlice(index.series.front(), 0);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::FileUnreadable);
    EXPECT_THAT(none.error().message, HasSubstr("Cannot read "));
}
