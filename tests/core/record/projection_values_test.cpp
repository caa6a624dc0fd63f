#include "core/record/projection_values.h"

#include "core/record/edit.h"
#include "core/record/without_identity.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

using namespace gauge::core;
using Eigen::Vector3d;

namespace {

Section oval(const Vector3d& centre, const Vector3d& normal, double a, double b) {
    Section section;
    section.frame = frameOf(Plane{{centre}, {normal.normalized()}});
    for (int i = 0; i < 90; ++i)
        section.contour.emplace_back(a * std::cos(2 * M_PI * i / 90), b * std::sin(2 * M_PI * i / 90));
    return section;
}

AppendageMeasurement measurement() {
    AppendageMeasurement m;
    const Vector3d n = Vector3d(0.6, -0.7, 0.2).normalized();
    m.ostium.section = oval({30, -20, 40}, n, 13, 10);
    m.landingZones.resize(1);
    m.landingZones[0].depthMm = 10;
    m.landingZones[0].section = oval(Vector3d(30, -20, 40) + 10 * n, n, 11, 8);
    for (int i = 0; i < 60; ++i)
        m.axis.points.push_back({Vector3d(30, -20, 40) + 0.5 * i * n});
    return m;
}

CaseRecord recordOf(const std::string& position) {
    CaseRecord record;
    ImagesUsed images{"2.25.7", 45.0, "45 %", "2.25.9", 1, UnknownFields::object()};
    images.patientPosition = position;
    apply(record, SetImages{images});
    apply(record, SetMark{MarkKind::Atrium, Mark{{}, 2, UnknownFields::object()}});
    apply(record, SetMark{MarkKind::Tip, Mark{{}, 3, UnknownFields::object()}});
    return record;
}

ChosenView chosen(const CaseRecord& record, double primary, double secondary) {
    return {{primary, secondary}, ViewAim::LongestWidth, "landing", revisionOf(record, input::placeOf("landing")), "with the sheath"};
}

void record(CaseRecord& r) {
    const auto options = viewPlanOptions(r);
    ASSERT_TRUE(options) << options.error().message;
    const auto plans = planSections(r, measurement(), nullptr, *options);
    ASSERT_TRUE(plans) << plans.error().message;
    r.values = projectionValues(r, *plans, *options, 3.0, std::make_shared<const Provenance>());
}

const RecordedValue* find(const CaseRecord& r, const std::string& id) {
    for (const RecordedValue& value : r.values)
        if (value.id == id) return &value;
    return nullptr;
}

} // namespace

TEST(ProjectionValues, AreThoseOfTheNamedViews) {
    CaseRecord r = recordOf("HFS");
    record(r);
    const CArmAngles expected = enFace(measurement().ostium.section.frame.normal);
    ASSERT_TRUE(find(r, "ostium/en-face/primary"));
    EXPECT_NEAR(find(r, "ostium/en-face/primary")->estimate.value, expected.primaryDeg, 1e-6);
    EXPECT_NEAR(find(r, "ostium/en-face/secondary")->estimate.value, expected.secondaryDeg, 1e-6);
    EXPECT_EQ(find(r, "ostium/en-face/primary")->unit, "deg");
    EXPECT_GE(find(r, "ostium/en-face/primary")->estimate.standardUncertainty(), 3.0);
    ASSERT_TRUE(find(r, "landing-1/longest-width/width"));
    EXPECT_EQ(find(r, "landing-1/longest-width/width")->unit, "mm");
    EXPECT_LE(find(r, "landing-1/longest-width/width")->estimate.value, 22.0 + 0.05);
    const auto face = recordedEnFace(r, "landing-1");
    ASSERT_TRUE(face);
    EXPECT_NEAR(face->primaryDeg, expected.primaryDeg, 1e-6);
}

TEST(ProjectionValues, AreStaleOnceAPlaneTheReachOrTheImagesChange) {
    CaseRecord r = recordOf("HFS");
    record(r);
    ASSERT_FALSE(r.values.empty());
    for (const auto& value : r.values)
        EXPECT_FALSE(isStale(r, value)) << value.id;
    const auto stalesBy = [&](const Edit& edit) {
        const Edit undo = apply(r, edit);
        const bool stale = std::all_of(r.values.begin(), r.values.end(), [&](const auto& v) { return isStale(r, v); });
        apply(r, undo);
        return stale && !isStale(r, r.values.front());
    };
    LandingPlanes moved;
    moved.depthsMm = {14.0};
    moved.revision = 9;
    EXPECT_TRUE(stalesBy(SetLanding{moved}));
    EXPECT_TRUE(stalesBy(SetOstium{OstiumPlane{{}, true, 9, UnknownFields::object()}}));
    EXPECT_TRUE(stalesBy(SetMark{MarkKind::Tip, Mark{{}, 9, UnknownFields::object()}}));
    EXPECT_TRUE(stalesBy(SetSingle<ProjectionChoice>{Entry<ProjectionChoice>{{}, 9, UnknownFields::object()}}));
    EXPECT_TRUE(stalesBy(SetEntry<CorrectedContour>{"landing-1", Entry<CorrectedContour>{{}, 9, UnknownFields::object()}}));
}

TEST(ProjectionValues, TakeTheContourThatAHandCorrectedWhileItsPlaneStands) {
    CaseRecord r = recordOf("HFS");
    const Section drawn = oval(measurement().landingZones[0].section.frame.origin.mm, {0.6, -0.7, 0.2}, 14, 9);
    CorrectedContour contour{drawn.frame, drawn.contour, "landing", revisionOf(r, input::placeOf("landing"))};
    apply(r, SetEntry<CorrectedContour>{"landing-1", Entry<CorrectedContour>{contour, 5, UnknownFields::object()}});
    const auto widthOf = [&](const ProjectionSubject& subject) { return sectionViews(subject.contour)->longestMm; };
    EXPECT_NEAR(widthOf(*projectionSubject(r, measurement(), "landing-1")), 28.0, 0.1);
    r.landing.revision = 6; // the plane has moved: the drawn contour lies elsewhere
    EXPECT_NEAR(widthOf(*projectionSubject(r, measurement(), "landing-1")), 22.0, 0.1);
    EXPECT_FALSE(projectionSubject(r, measurement(), "landing-2"));
}

TEST(ProjectionValues, FollowTheOffsetOfThePatient) {
    CaseRecord lying = recordOf("HFS"), turned = recordOf("HFP");
    record(lying);
    EXPECT_FALSE(viewPlanOptions(turned));
    ProjectionChoice choice;
    choice.turn = PatientTurn{-10, 0};
    apply(turned, SetSingle<ProjectionChoice>{Entry<ProjectionChoice>{choice, 5, UnknownFields::object()}});
    record(turned);
    EXPECT_NEAR(find(turned, "ostium/en-face/primary")->estimate.value, find(lying, "ostium/en-face/primary")->estimate.value - 10.0, 1e-6);
}

TEST(ProjectionValues, NeedToKnowHowThePatientLay) {
    const auto unknown = viewPlanOptions(recordOf(""));
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.error().code, ErrorCode::AttributeMissing);
    EXPECT_TRUE(viewPlanOptions(recordOf(""), "FFS")); // an old case whose images are at hand
    EXPECT_EQ(viewPlanOptions(recordOf("HFDR")).error().code, ErrorCode::ObjectUnsupported);
}

TEST(ProjectionChoice, KeepsChosenViewsWithTheirWidthAndTheirPlace) {
    CaseRecord r = recordOf("HFS");
    ProjectionChoice choice;
    choice.views = {chosen(r, -25, -15), chosen(r, -40, 20)};
    const Edit undo = apply(r, SetSingle<ProjectionChoice>{Entry<ProjectionChoice>{choice, 5, UnknownFields::object()}});
    record(r);
    const auto views = recordedViews(r);
    const auto second = std::find_if(views.begin(), views.end(), [](const auto& v) { return v.chosen == std::size_t{1}; });
    ASSERT_NE(second, views.end());
    EXPECT_EQ(second->angles, (CArmAngles{-40, 20}));
    EXPECT_EQ(second->section, "landing-1");
    ASSERT_TRUE(second->widthMm);
    EXPECT_NEAR(second->widthMm->value, *projectedWidth(projectionSubject(r, measurement(), "landing-1")->contour, CArmAngles{-40, 20})->widthMm, 1e-9);
    EXPECT_FALSE(isStale(r, r.projection->content.views[0]));
    r.landing.revision = 7;
    EXPECT_TRUE(isStale(r, r.projection->content.views[0]));
    EXPECT_TRUE(recordedViews(r).empty()); // values of a plane that moved are not told
    apply(r, undo);
    EXPECT_FALSE(r.projection);
}

TEST(ProjectionChoice, LosesItsLabelsWithTheIdentity) {
    CaseRecord r = recordOf("HFS");
    ProjectionChoice choice;
    choice.reach = {50, 45, 30, 25};
    choice.views = {chosen(r, -25, -15)};
    apply(r, SetSingle<ProjectionChoice>{Entry<ProjectionChoice>{choice, 5, UnknownFields::object()}});
    IdentityReplacement replacement;
    replacement.uid = [](std::string_view) { return std::string("2.25.1"); };
    replacement.time = [](std::string_view time) { return std::string(time); };
    const auto stripped = withoutIdentity(r, replacement);
    ASSERT_TRUE(stripped.file.record.projection);
    EXPECT_EQ(stripped.file.record.projection->content.reach, choice.reach);
    EXPECT_EQ(stripped.file.record.projection->content.views[0].label, "");
    EXPECT_EQ(stripped.file.record.projection->content.views[0].angles, (CArmAngles{-25, -15}));
}
