// A folder of echo pictures without CT as a case: who it is about, its pictures before and after saving, a 3D echo in it.
#include "app/commands/drawing_commands.h"
#include "app/document/evidence_images.h"
#include "app/document/picture_drawings.h"
#include "app/document/picture_scale.h"
#include "sample-data/dicom/echo_volume_writer.h"
#include "sample-data/dicom/us_writer.h"
#include "tests/app/support/synthetic_session.h"

#include <QCoreApplication>
#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <cmath>
#include <gtest/gtest.h>

using namespace gauge;
using app::Session;
using fixture::waitUntil;
using ::testing::HasSubstr;

namespace {

constexpr double kPixelMm = 0.4;

/// One still of 64 x 48 pixels, a tissue region of 0.4 mm a pixel, and a 3D echo of 6 slices at 2 moments.
void writePictures(const QString& folder) {
    sample_case::UsImage still;
    still.facts.patientName = "Invented^Echo";
    still.facts.patientId = "E-1";
    still.facts.seriesText = "still";
    still.facts.seriesDescription = "Still";
    still.frames.emplace_back(64, 48, 3);
    sample_case::UsRegion region;
    region.x1 = 63;
    region.y1 = 47;
    region.deltaX = region.deltaY = kPixelMm / 10.0;
    region.referencePixel = Eigen::Vector2i(32, 0);
    still.regions.push_back(region);
    ASSERT_TRUE(sample_case::writeUsImage(still, folder.toStdString() + "/still.dcm"));

    sample_case::EchoVolumeImage volume;
    volume.facts = still.facts;
    volume.facts.seriesText = "volume";
    volume.facts.seriesDescription = "3D";
    volume.facts.frameOfReferenceUid = "2.25.77";
    volume.volumeFrameOfReferenceUid = "2.25.78";
    volume.grid.size = {32, 24, 6};
    volume.grid.spacingMm = {0.8, 0.5, 1.5};
    volume.triggerMs = {0.0, 400.0};
    volume.volumes.assign(2, std::vector<std::vector<std::uint8_t>>(6, std::vector<std::uint8_t>(32 * 24, 90)));
    ASSERT_TRUE(sample_case::writeEchoVolume(volume, folder.toStdString() + "/volume.dcm"));
}

std::string idOf(const Session& session, core::EvidenceKind kind) {
    for (const auto& [id, entry] : session.record().evidence)
        if (entry.content.kind == kind) return id;
    return {};
}

bool open(Session& session, const QString& folder) {
    session.openFolder(folder);
    return waitUntil([&] { return !session.isLoading(); }) && session.index() && !session.images();
}

} // namespace

TEST(PicturesWithoutCt, AreACaseOfTheirPatient) {
    const QTemporaryDir folder;
    writePictures(folder.path());
    Session session;
    EXPECT_FALSE(session.hasCase());
    ASSERT_TRUE(open(session, folder.path())) << session.message().text.toStdString();
    EXPECT_TRUE(session.hasCase());
    ASSERT_TRUE(session.record().patient);
    EXPECT_EQ(session.record().patient->content.name, "Invented^Echo");
    EXPECT_EQ(session.record().patient->content.id, "E-1");
    EXPECT_EQ(session.record().evidence.size(), 2U);
    EXPECT_THAT(session.message().text.toStdString(), HasSubstr("There is no CT to measure in this folder."));
}

TEST(PicturesWithoutCt, ComeBackWithTheCaseAndAreMeasured) {
    const QTemporaryDir folder, elsewhere;
    writePictures(folder.path());
    const QString file = elsewhere.filePath("echo.case.json");
    std::string still;
    {
        Session session;
        app::EvidenceImages images(session);
        app::PictureDrawings drawings(session, images);
        ASSERT_TRUE(open(session, folder.path()));
        still = idOf(session, core::EvidenceKind::EchoCine);
        core::Drawing line;
        line.site = core::PictureSite{still, 0};
        line.evidence = still;
        line.points = {{10, 20}, {50, 20}};
        session.document().push(std::make_unique<app::PlaceDrawing>(session.document(), "1", line));
        ASSERT_TRUE(waitUntil([&] { return !session.record().values.empty(); }));
        EXPECT_NEAR(session.record().values.front().estimate.value, 40 * kPixelMm, 1e-9);
        ASSERT_TRUE(session.saveCase(file));
    }
    Session again;
    app::EvidenceImages images(again);
    app::PictureDrawings drawings(again, images);
    ASSERT_TRUE(again.openCase(file));
    EXPECT_TRUE(again.hasCase()) << "at once, before any picture is found";
    ASSERT_TRUE(waitUntil([&] { return again.index() != nullptr; })) << again.message().text.toStdString();
    EXPECT_THAT(again.message().text.toStdString(), HasSubstr("It has no CT"));
    const auto cine = images.cine(still);
    ASSERT_TRUE(cine);
    EXPECT_TRUE(waitUntil([&] { return cine->data() != nullptr; })) << "the picture is shown again";

    // Moved another place down: the line is measured anew.
    core::Drawing moved = again.record().drawings.at("1").content;
    moved.points[1] = {30, 20};
    again.document().push(std::make_unique<app::MoveDrawingPoint>(again.document(), "1", moved, 1));
    ASSERT_TRUE(waitUntil([&] { return std::abs(again.record().values.front().estimate.value - 20 * kPixelMm) < 1e-9; }));
}

TEST(PicturesWithoutCt, AreMissedInWordsWhenTheirFolderIsGoneAndFoundInAnother) {
    const QTemporaryDir elsewhere;
    const QString file = elsewhere.filePath("echo.case.json");
    auto folder = std::make_unique<QTemporaryDir>();
    writePictures(folder->path());
    {
        Session session;
        ASSERT_TRUE(open(session, folder->path()));
        ASSERT_TRUE(session.saveCase(file));
    }
    folder.reset();
    Session again;
    ASSERT_TRUE(again.openCase(file));
    ASSERT_TRUE(waitUntil([&] { return !again.isLoading(); }));
    EXPECT_TRUE(again.hasCase()) << "everything that was recorded is there";
    EXPECT_THAT(again.message().text.toStdString(), HasSubstr("Cannot show the pictures of the case: none of its echo views and "
                                                              "X-ray runs is below"));
    const QTemporaryDir other;
    writePictures(other.path());
    again.findImagesIn(other.path());
    EXPECT_TRUE(waitUntil([&] { return again.index() != nullptr; }));
}

TEST(PicturesWithoutCt, A3dEchoIsShownSliceBySliceWithItsLengths) {
    const QTemporaryDir folder;
    writePictures(folder.path());
    Session session;
    app::EvidenceImages images(session);
    ASSERT_TRUE(open(session, folder.path()));
    const auto cine = images.cine(idOf(session, core::EvidenceKind::EchoVolume));
    ASSERT_TRUE(cine) << "no dead entry";
    ASSERT_TRUE(waitUntil([&] { return cine->data() || cine->failure(); }));
    ASSERT_TRUE(cine->data()) << cine->failure()->message;
    const app::CineData& data = *cine->data();
    EXPECT_EQ(cine->frameCount(), 12);
    ASSERT_TRUE(data.stack);
    EXPECT_EQ(data.stack->slices, 6);
    EXPECT_EQ(data.stack->timePoints, 2);
    EXPECT_NEAR(data.stack->voxelMm.z(), 1.5, 1e-9);
    EXPECT_FALSE(data.sopInstanceUid.empty());
    const auto length = core::regionDistance(data.regions, std::nullopt, {0, 0}, {10, 20});
    ASSERT_TRUE(length);
    EXPECT_NEAR(length->value, std::hypot(8.0, 10.0), 1e-6) << "0.8 mm across, 0.5 mm down";
    const std::string words = app::scaleWords(data, 7, std::nullopt).toStdString();
    EXPECT_THAT(words, HasSubstr("slice 2 of 6"));
    EXPECT_THAT(words, HasSubstr("time point 2 of 2"));
    EXPECT_THAT(words, HasSubstr("left, back and head are not known"));
    ASSERT_TRUE(waitUntil([&] { return !cine->frame(0).isNull(); }));
}

TEST(EvidenceImages, ManyCinesShareABoundedRoom) {
    const QTemporaryDir folder;
    Session session;
    constexpr int kCines = 12, kFrames = 40, kColumns = 1024, kRows = 1024; // 4 MiB a frame, 160 MiB a cine
    class Frames : public core::FrameSource {
    public:
        int columns() const override { return kColumns; }
        int rows() const override { return kRows; }
        int count() const override { return kFrames; }
        bool isColour() const override { return false; }
        core::Result<core::RgbFrame> rgb(int) const override { return core::failure(core::ErrorCode::ObjectUnsupported, "Grey."); }
        core::Result<core::GreyFrame> grey(int) const override {
            return core::GreyFrame{kColumns, kRows, std::vector<std::int32_t>(std::size_t{kColumns} * kRows, 1)};
        }
    };
    app::EvidenceImages images(session);
    images.setOpener([](const core::Evidence&, const auto&) -> core::Result<app::CineData> {
        app::CineData data;
        data.frames = std::make_shared<Frames>();
        return data;
    });
    for (int i = 0; i < kCines; ++i) {
        core::Entry<core::Evidence> entry;
        entry.content.kind = core::EvidenceKind::EchoCine;
        entry.content.sopInstanceUid = "2.25." + std::to_string(i + 1);
        entry.revision = session.document().nextRevision();
        session.document().apply(core::SetEntry<core::Evidence>{entry.content.sopInstanceUid, entry});
    }
    std::size_t open = 0, bytes = 0;
    for (int i = 0; i < kCines; ++i) {
        const auto cine = images.cine("2.25." + std::to_string(i + 1));
        ASSERT_TRUE(waitUntil([&] { return !cine->frame(0).isNull(); })) << "the first picture, before the rest is there";
    }
    QCoreApplication::processEvents();
    for (int i = 0; i < kCines; ++i)
        if (const auto cine = images.openCine("2.25." + std::to_string(i + 1))) {
            ++open;
            bytes += cine->keptBytes();
        }
    EXPECT_LE(open, app::EvidenceImages::kKept);
    constexpr std::size_t kOneFrame = std::size_t{kColumns} * kRows * 4;
    EXPECT_LE(bytes, app::EvidenceImages::kAllBytes + open * kOneFrame) << "each may be one frame over its part";
}
