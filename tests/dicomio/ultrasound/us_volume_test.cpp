#include "dicomio/ultrasound/us_volume.h"

#include "core/volume/section_image.h"
#include "tests/dicomio/ultrasound/us_bytes.h"

#include <gmock/gmock.h>
#include <numbers>
#include <random>

using namespace gauge;
using namespace gauge::core;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

namespace {

constexpr TagNumber kPositions = 0x0020930E, kPosition = 0x00209301, kOrientations = 0x0020930F,
                    kOrientation = 0x00209302, kMeasures = 0x00289110, kSpacing = 0x00280030,
                    kShared = 0x52009229, kPerFrame = 0x52009230, kTimes = 0x00209310, kOffset = 0x0020930D,
                    kContent = 0x00209111, kTimeIndex = 0x00209128, kDescriptions = 0x00189806,
                    kDataTypes = 0x00189807, kDataType = 0x00189808;

/// A volume in the making: frames in the file's order.
struct VolumeFile {
    int columns = 6, rows = 5, slices = 4, times = 1;
    double alongRow = 0.4, alongColumn = 0.5, between = 0.6;
    Eigen::Matrix3d axes = Eigen::Matrix3d::Identity(); ///< row, column and stacking direction
    Eigen::Vector3d origin = Eigen::Vector3d(-3, 4, 10);
    double stepSeconds = 0.04;
    bool offsets = true;  ///< TemporalPositionTimeOffset
    bool indices = false; ///< TemporalPositionIndex
    std::string photometric = "MONOCHROME2";
    std::vector<int> order;        ///< of the frames in the file; empty = slices within times
    std::vector<std::string> data; ///< DataType by frame in the file; empty = none told

    Eigen::Vector3d place(int slice) const { return origin + slice * between * axes.col(2); }
    int frames() const { return slices * times; }
    std::vector<int> inFile() const {
        if (!order.empty()) return order;
        std::vector<int> all(static_cast<std::size_t>(frames()));
        for (std::size_t i = 0; i < all.size(); ++i)
            all[i] = static_cast<int>(i);
        return all;
    }
    /// 8-bit value of voxel (i, j) of frame `frame` (slice + slices * time).
    static int value(int i, int j, int frame) { return (3 * i + 17 * j + 29 * frame + 5) % 256; }

    std::vector<DatasetBytes> groups() const {
        std::vector<DatasetBytes> items;
        for (const int frame : inFile()) {
            DatasetBytes group, position, content;
            const Eigen::Vector3d p = place(frame % slices);
            position.bytes(kPosition, "FD", doubles({p.x(), p.y(), p.z()}));
            group.sequence(kPositions, {position});
            if (offsets) {
                DatasetBytes time;
                time.fd(kOffset, stepSeconds * (frame / slices) + 0.5);
                group.sequence(kTimes, {time});
            }
            if (indices) content.ul(kTimeIndex, static_cast<std::uint32_t>(frame / slices + 1));
            group.sequence(kContent, {content});
            if (!data.empty()) {
                DatasetBytes type, description;
                type.text(kDataType, "CS", data[items.size()]);
                description.sequence(kDataTypes, {type});
                group.sequence(kDescriptions, {description});
            }
            items.push_back(std::move(group));
        }
        return items;
    }

    DatasetBytes shared() const {
        DatasetBytes orientation, measures, out;
        const Eigen::Vector3d r = axes.col(0), c = axes.col(1);
        orientation.bytes(kOrientation, "FD", doubles({r.x(), r.y(), r.z(), c.x(), c.y(), c.z()}));
        measures.text(kSpacing, "DS", ds(alongColumn) + "\\" + ds(alongRow));
        return out.sequence(kOrientations, {orientation}).sequence(kMeasures, {measures});
    }

    DatasetBytes dataset() const {
        DatasetBytes d = usDataset(2, static_cast<std::uint16_t>(columns), static_cast<std::uint16_t>(rows));
        d.text(0x00080016, "UI", kUsVolumeClass).text(0x00280008, "IS", std::to_string(frames()));
        d.text(0x00280004, "CS", photometric).text(0x00209312, "UI", "1.2.3.9");
        std::string pixels;
        for (const int frame : inFile())
            for (int j = 0; j < rows; ++j)
                for (int i = 0; i < columns; ++i)
                    pixels += static_cast<char>(value(i, j, frame));
        d.bytes(0x7FE00010, "OW", pixels);
        return d.sequence(kShared, {shared()}).sequence(kPerFrame, groups());
    }
};

Result<UltrasoundVolume> opened(const TempFolder& folder, const DatasetBytes& dataset) {
    auto scanned = scanFile(folder.write("volume.dcm", dataset));
    if (!scanned) return tl::make_unexpected(scanned.error());
    return UltrasoundVolume::open(std::make_shared<const ScannedFile>(std::move(*scanned)));
}

Error refusal(const DatasetBytes& dataset) {
    const TempFolder folder;
    const auto volume = opened(folder, dataset);
    if (!volume) {
        EXPECT_THAT(volume.error().message, HasSubstr("Cannot read the ultrasound volume "));
        EXPECT_THAT(volume.error().message, HasSubstr("volume.dcm: "));
        EXPECT_THAT(volume.error().message, Not(HasSubstr("(Patient)")));
        return volume.error();
    }
    ADD_FAILURE() << "an error was expected";
    return {};
}

Eigen::Matrix3d turned() {
    return Eigen::AngleAxisd(0.7, Eigen::Vector3d(1, 2, -0.5).normalized()).toRotationMatrix();
}

} // namespace

TEST(UltrasoundVolume, PlacesEveryVoxelByTheVolumesFrameOfReference) {
    VolumeFile made;
    made.axes = turned();
    const TempFolder folder;
    const auto volume = valueOf(opened(folder, made.dataset()));
    ASSERT_EQ(volume.timePoints().size(), 1u);
    const auto cube = valueOf(volume.read(0));
    EXPECT_EQ(cube->size(), Eigen::Vector3i(6, 5, 4));
    EXPECT_EQ(cube->quantity(), VoxelQuantity::EchoIntensity);
    EXPECT_EQ(cube->frameOfReferenceUid(), "1.2.3.9");
    constexpr double kWritten = 1e-9; // FD and twelve digits of the spacing
    for (int k = 0; k < 4; ++k)
        for (int j = 0; j < 5; ++j)
            for (int i = 0; i < 6; ++i) {
                const Eigen::Vector3d expected =
                    made.place(k) + i * 0.4 * made.axes.col(0) + j * 0.5 * made.axes.col(1);
                EXPECT_LT(
                    (cube->patientFrom(VoxelCoord{{double(i), double(j), double(k)}}).mm - expected).norm(),
                    kWritten);
                EXPECT_EQ(cube->at(i, j, k), VolumeFile::value(i, j, k));
            }
    EXPECT_LT((volume.spacingMm() - Eigen::Vector3d(0.4, 0.5, 0.6)).norm(), kWritten);
    EXPECT_THAT(codesOf(volume.notices()), ElementsAre("volume-directions"));
}

TEST(UltrasoundVolume, SortsFramesIntoTimePointsAndSlices) {
    for (const bool offsets : {true, false}) {
        VolumeFile made;
        made.times = 3;
        made.offsets = offsets;
        made.indices = !offsets;
        made.order = {7, 0, 11, 3, 8, 1, 2, 10, 5, 4, 9, 6};
        const TempFolder folder;
        const auto volume = valueOf(opened(folder, made.dataset()));
        ASSERT_EQ(volume.timePoints().size(), 3u);
        constexpr double kMsRounding = 1e-9;
        for (std::size_t t = 0; t < 3; ++t) {
            const auto& point = volume.timePoints()[t];
            ASSERT_EQ(point.offsetMs.has_value(), offsets);
            if (offsets) {
                EXPECT_NEAR(*point.offsetMs, 40.0 * static_cast<double>(t), kMsRounding);
            }
            const auto cube = valueOf(volume.read(t));
            for (int k = 0; k < 4; ++k)
                EXPECT_EQ(cube->at(2, 3, k), VolumeFile::value(2, 3, k + 4 * static_cast<int>(t)));
        }
    }
}

TEST(UltrasoundVolume, StacksAgainstTheNormalAreTurnedRound) {
    VolumeFile made;
    made.axes.col(2) *= -1.0; // slices in the file run against row x column
    const TempFolder folder;
    const auto cube = valueOf(valueOf(opened(folder, made.dataset())).read(0));
    EXPECT_EQ(cube->at(2, 3, 0), VolumeFile::value(2, 3, 3));
    EXPECT_GT(cube->patientFromVoxel().linear().determinant(), 0.0);
}

TEST(UltrasoundVolume, SectionOfABallHasItsArea) {
    // A ball of 6 mm radius in voxels of 0.4 x 0.5 x 0.6 mm, turned: a section 2 mm off its centre is a disc.
    VolumeFile made;
    made.columns = made.rows = 48;
    made.slices = 40;
    made.axes = turned();
    const Eigen::Vector3d centre = made.origin + made.axes * Eigen::Vector3d(9.6, 12.0, 11.7);
    DatasetBytes d = made.dataset();
    std::string pixels;
    for (int k = 0; k < made.slices; ++k)
        for (int j = 0; j < made.rows; ++j)
            for (int i = 0; i < made.columns; ++i) {
                const Eigen::Vector3d p =
                    made.place(k) + i * 0.4 * made.axes.col(0) + j * 0.5 * made.axes.col(1);
                const double depth = 6.0 - (p - centre).norm(); // bright inside, one voxel of ramp
                pixels += static_cast<char>(std::lround(200.0 * std::clamp(depth / 0.6 + 0.5, 0.0, 1.0)));
            }
    const TempFolder folder;
    const auto cube = valueOf(valueOf(opened(folder, d.bytes(0x7FE00010, "OW", pixels))).read(0));
    const Eigen::Vector3d normal = Eigen::Vector3d(0.3, -0.5, 0.8).normalized();
    const SectionGrid grid{frameOf(Plane{{centre + 2.0 * normal}, {normal}}), 160, 160, 0.1};
    const SectionImage cut = cutSection(*cube, grid);
    const auto bright =
        std::count_if(cut.values.begin(), cut.values.end(), [](float v) { return v > 100.0F; });
    const double area = std::numbers::pi * (36.0 - 4.0);
    EXPECT_NEAR(static_cast<double>(bright) * 0.01, area,
                0.01 * area); // 1 %: 0.03 mm of radius, a twentieth voxel
}

TEST(UltrasoundVolume, SetsOtherDataAside) {
    VolumeFile made;
    made.times = 2;
    made.offsets = false;
    for (int f = 0; f < 8; ++f)
        made.data.push_back(f < 4 ? "TISSUE_INTENSITY" : "FLOW_VELOCITY");
    const TempFolder folder;
    const auto volume = valueOf(opened(folder, made.dataset()));
    EXPECT_EQ(volume.timePoints().size(), 1u);
    EXPECT_THAT(textOf(volume.notices(), "volume-data-set-aside"),
                HasSubstr("4 of 8 frames show something else"));
    made.data.assign(8, "FLOW_POWER");
    const Error error = refusal(made.dataset());
    EXPECT_EQ(error.code, ErrorCode::ObjectUnsupported);
    EXPECT_THAT(error.message, HasSubstr("names no frame as TISSUE_INTENSITY"));
}

TEST(UltrasoundVolume, ForgetsTimesThatCannotBeTrue) {
    VolumeFile made;
    made.times = 3;
    made.stepSeconds = 40.0; // milliseconds written as seconds
    const TempFolder folder;
    const auto volume = valueOf(opened(folder, made.dataset()));
    ASSERT_EQ(volume.timePoints().size(), 3u) << "the order stays";
    EXPECT_EQ(volume.timePoints()[1].offsetMs, std::nullopt);
    EXPECT_EQ(valueOf(volume.read(2))->at(2, 3, 0), VolumeFile::value(2, 3, 8));
    EXPECT_THAT(textOf(volume.notices(), "volume-times-implausible"),
                HasSubstr("time points 40000.000 ms apart on average"));
}

TEST(UltrasoundVolume, RefusesMissingGeometry) {
    VolumeFile made;
    DatasetBytes d = made.dataset();
    auto groups = made.groups();
    groups[2].remove(kPositions);
    Error error = refusal(d.sequence(kPerFrame, groups));
    EXPECT_EQ(error.code, ErrorCode::AttributeMissing);
    EXPECT_THAT(error.message, HasSubstr("frame 3: (0020,9301) ImagePositionVolume is absent"));
    d = made.dataset();
    DatasetBytes shared = made.shared();
    error = refusal(d.sequence(kShared, {shared.remove(kOrientations)}));
    EXPECT_THAT(error.message, HasSubstr("(0020,9302) ImageOrientationVolume is absent"));
    d = made.dataset();
    shared = made.shared();
    error = refusal(d.sequence(kShared, {shared.remove(kMeasures)}));
    EXPECT_THAT(error.message, HasSubstr("(0028,0030) PixelSpacing is absent"));
    d = made.dataset();
    error = refusal(d.remove(kPerFrame));
    EXPECT_EQ(error.code, ErrorCode::GeometryContradictory);
    EXPECT_THAT(error.message, HasSubstr("has 0 items for 4 frames: where the others lie is not known"));
}

TEST(UltrasoundVolume, RefusesContradictoryGeometry) {
    VolumeFile made;
    const auto moved = [&](std::size_t frame, const Eigen::Vector3d& p) {
        DatasetBytes d = made.dataset(), position;
        auto groups = made.groups();
        position.bytes(kPosition, "FD", doubles({p.x(), p.y(), p.z()}));
        groups[frame].sequence(kPositions, {position});
        return d.sequence(kPerFrame, groups);
    };
    Error error = refusal(moved(2, made.place(1)));
    EXPECT_EQ(error.code, ErrorCode::SliceDuplicate);
    EXPECT_THAT(error.message, HasSubstr("(0020,9301) ImagePositionVolume"));
    error = refusal(moved(3, made.place(5)));
    EXPECT_EQ(error.code, ErrorCode::SliceMissing);
    EXPECT_THAT(error.message, HasSubstr("Copy or export the volume again"));
    error = refusal(moved(3, made.origin + 3.3 * made.between * made.axes.col(2)));
    EXPECT_EQ(error.code, ErrorCode::SpacingUneven);
    EXPECT_THAT(error.message, HasSubstr("its planes are not evenly spaced"));
    made.slices = 1;
    made.offsets = false;
    DatasetBytes d = made.dataset();
    EXPECT_EQ(refusal(d).code, ErrorCode::SliceMissing);
}

TEST(UltrasoundVolume, RefusesTimePointsThatDiffer) {
    VolumeFile made;
    made.times = 2;
    DatasetBytes d = made.dataset();
    auto groups = made.groups();
    for (std::size_t f = 4; f < 8; ++f) {
        DatasetBytes position;
        const Eigen::Vector3d p = made.place(static_cast<int>(f) - 4) + Eigen::Vector3d(0.1, 0, 0);
        position.bytes(kPosition, "FD", doubles({p.x(), p.y(), p.z()}));
        groups[f].sequence(kPositions, {position});
    }
    Error error = refusal(d.sequence(kPerFrame, groups));
    EXPECT_EQ(error.code, ErrorCode::GeometryContradictory);
    EXPECT_THAT(error.message,
                HasSubstr("time point 2 has another size, place or orientation than the first"));
    d = made.dataset();
    groups = made.groups();
    groups[6].remove(kTimes);
    error = refusal(d.sequence(kPerFrame, groups));
    EXPECT_THAT(error.message, HasSubstr("TemporalPositionTimeOffset is told of 7 of 8 frames"));
    made.offsets = false;
    made.indices = true;
    d = made.dataset();
    groups = made.groups();
    groups[6].remove(kContent);
    error = refusal(d.sequence(kPerFrame, groups));
    EXPECT_THAT(error.message, HasSubstr("TemporalPositionIndex is told of 7 of 8 frames"));
}

TEST(UltrasoundVolume, RefusesVoxelsThatCannotBeTrue) {
    VolumeFile made;
    made.alongRow = made.alongColumn = 0.0004; // metres written as millimetres
    made.between = 0.0006;
    EXPECT_FALSE(opened(TempFolder(), made.dataset()));
    made.between = 0.6;
    Error error = refusal(made.dataset());
    EXPECT_EQ(error.code, ErrorCode::SpacingInvalid);
    EXPECT_THAT(error.message, HasSubstr("its voxels would be 0.0004 x 0.0004 x 0.6000 mm"));
    made.alongRow = made.alongColumn = 0.4;
    made.between = 30.0;
    EXPECT_EQ(refusal(made.dataset()).code, ErrorCode::SpacingInvalid);
}

TEST(UltrasoundVolume, RefusesWhatIsNoGreyVolume) {
    const VolumeFile made;
    DatasetBytes d = made.dataset();
    Error error = refusal(d.text(0x00080016, "UI", kUsMultiFrameClass));
    EXPECT_EQ(error.code, ErrorCode::ObjectUnsupported);
    EXPECT_THAT(error.message, HasSubstr("which is no ultrasound volume. Choose an Enhanced US Volume"));
    VolumeFile inverted;
    inverted.photometric = "MONOCHROME1";
    EXPECT_THAT(refusal(inverted.dataset()).message, HasSubstr("must be greyscale (MONOCHROME2)"));
}

TEST(UltrasoundVolume, ReadsNoTimePointThatIsNotThere) {
    const TempFolder folder;
    const auto volume = valueOf(opened(folder, VolumeFile{}.dataset()));
    const Error error = errorOf(volume.read(1));
    EXPECT_EQ(error.code, ErrorCode::InvalidArgument);
    EXPECT_THAT(error.message, HasSubstr("Cannot read time point 2: the volume has 1"));
}

TEST(UltrasoundVolume, StopsWhenAsked) {
    const TempFolder folder;
    const auto volume = valueOf(opened(folder, VolumeFile{}.dataset()));
    std::stop_source stop;
    stop.request_stop();
    EXPECT_EQ(errorOf(volume.read(0, {stop.get_token(), {}})).code, ErrorCode::Cancelled);
    double last = 0.0;
    EXPECT_TRUE(volume.read(0, {{}, [&](double share) { last = std::max(last, share); }}));
    EXPECT_DOUBLE_EQ(last, 1.0);
}
