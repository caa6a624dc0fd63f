#include "app/document/picture_values.h"

#include "app/commands/evidence_commands.h"
#include "app/document/evidence_images.h"
#include "app/document/picture_scale.h"
#include "app/document/propose_evidence.h"
#include "core/record/echo_values.h"
#include "tests/app/support/synthetic_pictures.h"
#include "tests/app/support/synthetic_session.h"

#include <gtest/gtest.h>
#include <set>

using namespace gauge;

namespace {

template <class Content> void set(app::CaseDocument& document, const std::string& id, const Content& content) {
    core::Entry<Content> entry;
    entry.content = content;
    entry.revision = document.nextRevision();
    document.apply(core::SetEntry<Content>{id, entry});
}

void draw(app::CaseDocument& document, const std::string& id, const std::string& evidence, core::DrawingRole role, double mm) {
    core::Drawing drawing;
    drawing.role = role;
    drawing.evidence = evidence;
    drawing.site = core::PictureSite{evidence, 0};
    drawing.points = {{0, 0}, {2.0 * mm, 0}};
    set(document, id, drawing);
    core::RecordedValue value;
    value.id = "length";
    value.group = "drawing/" + id;
    value.unit = "mm";
    value.estimate = {mm, {.observer = 0.3}, "caliper"};
    value.inputs = {{"drawing/" + id, core::revisionOf(document.record(), "drawing/" + id)}};
    value.provenance = std::make_shared<const core::Provenance>();
    document.apply(core::SetValues{{value}, value.group});
}

/// Widths on three views before the repair, and one on a view that is moved after it.
struct Drawn {
    app::CaseDocument document;
    app::PictureValues values{document};

    Drawn() {
        const auto index = fixture::indexWithPictures();
        app::proposeEvidence(document, *index, dicomio::patientKey(index->series.front()));
        document.push(std::make_unique<app::ChangeProbeAngle>(document, "2.25.203", 0.0));
        document.push(std::make_unique<app::ChangeStage>(document, "2.25.203", core::Stage::AfterRepair));
        draw(document, "1", "2.25.200", core::DrawingRole::LandingWidth, 24.0);
        draw(document, "2", "2.25.201", core::DrawingRole::LandingWidth, 20.4);
        draw(document, "3", "2.25.202", core::DrawingRole::LandingWidth, 18.0);
        draw(document, "4", "2.25.203", core::DrawingRole::LandingWidth, 21.0);
        values.refresh();
    }
    std::optional<core::RecordedValue> value(const std::string& group, const std::string& id) const {
        for (const auto& v : document.record().values)
            if (v.group == group && v.id == id) return v;
        return std::nullopt;
    }
    /// Groups of which a value is stale.
    std::set<std::string> staleGroups() const {
        std::set<std::string> groups;
        for (const auto& v : document.record().values)
            if (core::isStale(document.record(), v)) groups.insert(v.group);
        return groups;
    }
};

} // namespace

TEST(PictureValues, AreComputedMomentByMoment) {
    const Drawn drawn;
    ASSERT_TRUE(drawn.value("echo/before-repair", "landing/longest-diameter"));
    EXPECT_TRUE(drawn.value("echo/after-repair", "landing/single-view"));
    EXPECT_TRUE(drawn.staleGroups().empty());
}

TEST(PictureValues, AChangedAngleMakesExactlyItsMomentStaleAndItIsComputedAgain) {
    Drawn drawn;
    const auto before = drawn.value("echo/before-repair", "landing/area-derived-diameter");
    const auto other = drawn.value("echo/after-repair", "landing/single-view");
    drawn.document.push(std::make_unique<app::ChangeProbeAngle>(drawn.document, "2.25.201", 60.0));
    EXPECT_EQ(drawn.staleGroups(), std::set<std::string>{"echo/before-repair"});
    ASSERT_TRUE(fixture::waitUntil([&] { return drawn.staleGroups().empty(); })) << "computed again by itself";
    const auto after = drawn.value("echo/before-repair", "landing/area-derived-diameter");
    ASSERT_TRUE(after);
    EXPECT_NE(after->estimate.value, before->estimate.value);
    EXPECT_EQ(*drawn.value("echo/after-repair", "landing/single-view"), *other) << "the other moment was left alone";
    drawn.document.undoStack().undo();
    ASSERT_TRUE(fixture::waitUntil([&] { return drawn.staleGroups().empty(); }));
    EXPECT_DOUBLE_EQ(drawn.value("echo/before-repair", "landing/area-derived-diameter")->estimate.value,
                     before->estimate.value);
}

TEST(PictureValues, AViewThatMovesToAnotherStageTakesItsWidthAlong) {
    Drawn drawn;
    drawn.document.push(std::make_unique<app::ChangeStage>(drawn.document, "2.25.202", core::Stage::AfterRepair));
    drawn.values.refresh();
    EXPECT_FALSE(drawn.value("echo/before-repair", "landing/longest-diameter")) << "two angles give no ellipse";
    EXPECT_TRUE(drawn.value("echo/before-repair", "landing/largest-of-views"));
    EXPECT_TRUE(drawn.value("echo/after-repair", "landing/largest-of-views"));
}

TEST(PictureValues, ARemovedDrawingTakesItsMomentsValuesAway) {
    Drawn drawn;
    drawn.document.apply(core::SetEntry<core::Drawing>{"4", std::nullopt});
    drawn.values.refresh();
    EXPECT_FALSE(drawn.value("echo/after-repair", "landing/single-view"));
}

TEST(EvidenceImages, FirstFrameIsThereBeforeTheLastAndErrorsAreTold) {
    app::Session session;
    session.open([] {
        auto images = fixture::syntheticImages();
        images.index = fixture::indexWithPictures();
        return images;
    }());
    app::EvidenceImages images(session);
    images.setOpener([](const core::Evidence& evidence, const auto&) -> core::Result<app::CineData> {
        if (evidence.sopInstanceUid == "2.25.202") return core::failure(core::ErrorCode::FileUnreadable, "It is torn.");
        app::CineData data;
        const auto cine = fixture::echoCine(evidence.sopInstanceUid, 0.0, 24.0);
        data.frames = cine.frames;
        data.regions = cine.regions;
        return data;
    });
    EXPECT_FALSE(images.cine("2.25.100")) << "a CT has no frames to play";
    const auto cine = images.cine("2.25.200");
    ASSERT_TRUE(cine);
    std::vector<int> decoded;
    QObject::connect(cine.get(), &app::EvidenceCine::opened, cine.get(), [&] { (void)cine->frame(7); });
    QObject::connect(cine.get(), &app::EvidenceCine::frameDecoded, cine.get(), [&](int frame) { decoded.push_back(frame); });
    ASSERT_TRUE(fixture::waitUntil([&] { return decoded.size() == 20; }));
    EXPECT_EQ(decoded.front(), 7) << "the wanted frame comes first";
    EXPECT_EQ(qRed(cine->frame(3).colour.pixel(0, 0)), 3);
    const auto torn = images.cine("2.25.202");
    ASSERT_TRUE(fixture::waitUntil([&] { return torn->failure().has_value(); }));
    EXPECT_EQ(torn->failure()->message, "It is torn.");
}

TEST(EvidenceImages, WithoutAFileItSaysWhatToDo) {
    core::Evidence evidence;
    evidence.description = "View 45";
    EXPECT_EQ(app::readCine(evidence, std::nullopt).error().message,
              "Cannot show \"View 45\": its images are not in the open folder. Open the folder that holds them.");
}

TEST(PictureScale, TwoClicksOnAKnownLengthGiveItsScale) {
    app::CineData cine;
    cine.frames = fixture::echoFrames(1, 20.0);
    core::PictureScale scale;
    scale.from = {10.0, 20.0};
    scale.to = {110.0, 20.0}; // 100 pixels, 50 mm: 0.5 mm a pixel by arithmetic
    scale.knownMm = 50.0;
    const auto made = app::handScale(scale, cine);
    ASSERT_TRUE(made);
    EXPECT_DOUBLE_EQ(made->scale.mmPerPixel.x(), 0.5);
    // Two ends of one pixel standard deviation along the line: sqrt(2) of 100.
    EXPECT_NEAR(made->scale.relativeUncertainty, std::sqrt(2.0) / 100.0, 1e-12);
    EXPECT_TRUE(app::scaleWords(cine, 0, made).contains("scale marked by hand")) << app::scaleWords(cine, 0, made).toStdString();
}

TEST(PictureScale, ACatheterOfKnownDiameterGivesItsScale) {
    app::CineData cine;
    cine.frames = fixture::xrayFrames(1);
    core::PictureScale scale;
    scale.origin = core::ScaleOrigin::Catheter;
    scale.from = {39.5, 50.0};
    scale.to = {59.5, 50.0}; // the dark bar of the synthetic frame: 20 pixels
    scale.knownMm = 4.0;
    const auto made = app::handScale(scale, cine);
    ASSERT_TRUE(made);
    EXPECT_NEAR(made->scale.mmPerPixel.x(), 0.2, 1e-12);
    EXPECT_EQ(made->scale.origin, core::ScaleOrigin::Catheter);
}

TEST(PictureScale, SaysWhyThereIsNoneAndWhatToDo) {
    app::CineData cine;
    cine.frames = fixture::echoFrames(1, 20.0);
    EXPECT_FALSE(app::hasScale(cine, 0, std::nullopt));
    EXPECT_EQ(app::scaleWords(cine, 0, std::nullopt).toStdString(), "No scale: calibrate by hand before measuring (key K).");
}
