#include "core/record/echo_values.h"

#include "core/echo/width_ellipse.h"
#include "core/record/edit.h"
#include "core/record/fluoro_values.h"

#include <gtest/gtest.h>
#include <numbers>
#include <set>

using namespace gauge::core;

namespace {

// The ellipse through exact chords is found to 1e-9 mm (core/echo/echo_section.h); the record adds nothing.
constexpr double kExactMm = 1e-6;

/// A record built by edits, each with its own revision, as the document does it.
struct Case {
    CaseRecord record;
    Revision next = 1;

    template <class Content> void set(const std::string& id, const Content& content) {
        Entry<Content> entry;
        entry.content = content;
        entry.revision = next++;
        apply(record, SetEntry<Content>{id, entry});
    }

    void view(const std::string& id, EvidenceKind kind, Stage stage, std::optional<double> angleDeg) {
        Evidence evidence;
        evidence.kind = kind;
        evidence.sopInstanceUid = id;
        evidence.stage = stage;
        evidence.probeAngleDeg = angleDeg;
        evidence.phase = BeatPhase::EndSystole;
        evidence.description = "view " + id;
        set(id, evidence);
    }

    void draw(const std::string& id, const std::string& evidence, DrawingRole role, double mm, double handMm = 0.4) {
        Drawing drawing;
        drawing.role = role;
        drawing.evidence = evidence;
        drawing.site = PictureSite{evidence, 3};
        drawing.points = {{10, 10}, {10 + mm, 10}};
        set(id, drawing);
        RecordedValue value;
        value.id = "length";
        value.group = "drawing/" + id;
        value.unit = "mm";
        value.estimate = {mm, {.observer = handMm, .scale = 0.01 * mm}, "caliper"};
        value.inputs = {{"drawing/" + id, revisionOf(record, "drawing/" + id)}, {"scale/" + evidence, 0}};
        value.provenance = std::make_shared<const Provenance>();
        apply(record, SetValues{{value}, value.group});
        ++next;
    }
};

double chord(double angleDeg) {
    const WidthEllipse ellipse{21.0, {3.0, 0.0}}; // 24 x 18 mm, longest at probe angle 0
    return ellipse.widthMm(angleDeg * std::numbers::pi / 180.0);
}

Case fourViews() {
    Case c;
    for (const double angle : {0.0, 45.0, 90.0, 135.0}) {
        const std::string id = "v" + std::to_string(static_cast<int>(angle));
        c.view(id, EvidenceKind::EchoCine, Stage::BeforeRepair, angle);
        c.draw("l" + id, id, DrawingRole::LandingWidth, chord(angle));
    }
    return c;
}

const RecordedValue* find(const std::vector<RecordedValue>& values, const std::string& id) {
    for (const RecordedValue& value : values)
        if (value.id == id) return &value;
    return nullptr;
}

std::set<std::string> inputsOf(const RecordedValue& value) {
    std::set<std::string> ids;
    for (const InputRevision& input : value.inputs)
        ids.insert(input.id);
    return ids;
}

} // namespace

TEST(EchoValues, ExactChordsGiveTheEllipseTheyCameFrom) {
    const Case c = fourViews();
    const auto values = echoValues(c.record, "before-repair", {});
    ASSERT_TRUE(find(values, "landing/longest-diameter"));
    EXPECT_NEAR(find(values, "landing/longest-diameter")->estimate.value, 24.0, kExactMm);
    EXPECT_NEAR(find(values, "landing/shortest-diameter")->estimate.value, 18.0, kExactMm);
    EXPECT_NEAR(find(values, "landing/area-derived-diameter")->estimate.value, std::sqrt(24.0 * 18.0), kExactMm);
    EXPECT_NEAR(find(values, "landing/area")->estimate.value, std::numbers::pi * 12.0 * 9.0, 1e-4);
    EXPECT_NEAR(find(values, "landing/largest-of-views")->estimate.value, 24.0, kExactMm);
    EXPECT_EQ(find(values, "landing/longest-diameter")->group, "echo/before-repair");
    EXPECT_FALSE(find(values, "ostium/longest-diameter"));
    EXPECT_FALSE(find(values, "depth"));
}

TEST(EchoValues, NameEveryDrawingViewAndScaleTheyRestOn) {
    const Case c = fourViews();
    const auto values = echoValues(c.record, "before-repair", {});
    const auto ids = inputsOf(*find(values, "landing/longest-diameter"));
    for (const char* view : {"v0", "v45", "v90", "v135"}) {
        EXPECT_TRUE(ids.contains("drawing/l" + std::string(view)));
        EXPECT_TRUE(ids.contains("evidence/" + std::string(view)));
        EXPECT_TRUE(ids.contains("scale/" + std::string(view)));
    }
    EXPECT_EQ(find(values, "landing/area")->provenance->sopInstanceUids.size(), 4U);
    EXPECT_EQ(find(values, "landing/area")->provenance->phase, "end-systole");
}

TEST(EchoValues, AnAngleChangedMakesExactlyThoseThatUseItStale) {
    Case c = fourViews();
    c.draw("o0", "v0", DrawingRole::OstiumWidth, 26.0);
    c.draw("o90", "v90", DrawingRole::OstiumWidth, 22.0);
    c.view("w0", EvidenceKind::EchoCine, Stage::AfterRepair, 0.0);
    c.draw("lw0", "w0", DrawingRole::LandingWidth, 20.0);
    apply(c.record, SetValues{echoValues(c.record, "before-repair", {}), "echo/before-repair"});
    apply(c.record, SetValues{echoValues(c.record, "after-repair", {}), "echo/after-repair"});
    c.view("v45", EvidenceKind::EchoCine, Stage::BeforeRepair, 50.0);
    int stale = 0;
    for (const RecordedValue& value : c.record.values) {
        const bool usesIt = value.group == "echo/before-repair" && value.id.starts_with("landing/");
        EXPECT_EQ(isStale(c.record, value), usesIt) << value.group << " " << value.id;
        stale += usesIt;
    }
    EXPECT_GE(stale, 9);
}

TEST(EchoValues, BeforeAndAfterTheRepairAreNeverMixed) {
    Case c = fourViews();
    c.view("w0", EvidenceKind::EchoCine, Stage::AfterRepair, 0.0);
    c.draw("lw0", "w0", DrawingRole::LandingWidth, 20.0);
    EXPECT_EQ(drawnMoments(c.record, EvidenceKind::EchoCine), (std::vector<std::string>{"after-repair", "before-repair"}));
    const auto after = echoValues(c.record, "after-repair", {});
    ASSERT_EQ(after.size(), 1U); // one view: no ellipse, and its width is said to be that of a single view
    EXPECT_EQ(after[0].id, "landing/single-view");
    EXPECT_NEAR(after[0].estimate.value, 20.0, kExactMm);
}

TEST(EchoValues, AViewWithoutAngleIsLeftOutAndSaysSo) {
    Case c = fourViews();
    c.view("v45", EvidenceKind::EchoCine, Stage::BeforeRepair, std::nullopt);
    const EchoMoment moment = echoMoment(c.record, "before-repair");
    ASSERT_EQ(moment.notices.size(), 1U);
    EXPECT_EQ(moment.notices[0].code, "probe-angle-unknown");
    EXPECT_NE(moment.notices[0].text.find("view v45"), std::string::npos);
    EXPECT_FALSE(inputsOf(echoValues(c.record, "before-repair", {}).front()).contains("evidence/v45"));
}

TEST(EchoValues, ADrawingWhoseValueIsStaleDoesNotCount) {
    Case c = fourViews();
    Drawing moved = c.record.drawings.at("lv0").content;
    moved.points[1].x() += 5.0;
    c.set("lv0", moved);
    EXPECT_EQ(drawnReadings(c.record, EvidenceKind::EchoCine, "before-repair").size(), 3U);
}

TEST(EchoValues, ACarelessHandWidensTheUncertainty) {
    Case careful = fourViews(), careless = fourViews();
    for (const char* view : {"v0", "v45", "v90", "v135"})
        careless.draw("l" + std::string(view), view, DrawingRole::LandingWidth, chord(std::stod(view + 1)), 2.0);
    const auto u = [](const Case& c) {
        return find(echoValues(c.record, "before-repair", {}), "landing/area-derived-diameter")->estimate.standardUncertainty();
    };
    EXPECT_GT(u(careless), 1.5 * u(careful));
}

TEST(EchoValues, DepthIsTheGreatestOfTheViews) {
    Case c = fourViews();
    c.draw("d0", "v0", DrawingRole::Depth, 31.0);
    c.draw("d90", "v90", DrawingRole::Depth, 34.0);
    const auto values = echoValues(c.record, "before-repair", {});
    ASSERT_TRUE(find(values, "depth"));
    EXPECT_DOUBLE_EQ(find(values, "depth")->estimate.value, 34.0);
    EXPECT_GT(find(values, "depth")->estimate.components.scale, 0.0);
    EXPECT_TRUE(inputsOf(*find(values, "depth")).contains("drawing/d0"));
}

TEST(FluoroValues, OneDrawingIsASingleViewSeveralGiveTheLargest) {
    Case c;
    c.view("x1", EvidenceKind::Fluoroscopy, Stage::AfterRepair, std::nullopt);
    c.view("x2", EvidenceKind::Fluoroscopy, Stage::AfterRepair, std::nullopt);
    c.draw("1", "x1", DrawingRole::LandingWidth, 19.0);
    auto values = fluoroValues(c.record, "after-repair", {});
    ASSERT_EQ(values.size(), 1U);
    EXPECT_EQ(values[0].id, "landing/single-view");
    EXPECT_EQ(values[0].group, "fluoroscopy/after-repair");
    c.draw("2", "x2", DrawingRole::LandingWidth, 21.0);
    values = fluoroValues(c.record, "after-repair", {});
    ASSERT_EQ(values.size(), 1U);
    EXPECT_EQ(values[0].id, "landing/largest-of-views");
    EXPECT_DOUBLE_EQ(values[0].estimate.value, 21.0);
    EXPECT_TRUE(inputsOf(values[0]).contains("drawing/1")) << "another drawing might have been the largest";
    EXPECT_TRUE(echoValues(c.record, "after-repair", {}).empty()) << "an X-ray width is no echo width";
}
