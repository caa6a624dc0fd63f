// Do, undo, redo for every class of app/commands: the headers are read, and a class without its line here fails the test.
#include "app/commands/contour_commands.h"
#include "app/commands/course_commands.h"
#include "app/commands/decision_commands.h"
#include "app/commands/drawing_commands.h"
#include "app/commands/evidence_commands.h"
#include "app/commands/images_commands.h"
#include "app/commands/landing_commands.h"
#include "app/commands/mark_commands.h"
#include "app/commands/ostium_commands.h"
#include "app/commands/picture_commands.h"
#include "app/commands/projection_commands.h"
#include "app/commands/septum_commands.h"

#include <filesystem>
#include <fstream>
#include <functional>
#include <gtest/gtest.h>
#include <regex>
#include <set>
#include <sstream>

using namespace gauge;
using namespace gauge::app;

namespace every_command_test {

using Make = std::function<std::unique_ptr<EditCommand>(CaseDocument&)>;
struct Named {
    const char* name;
    Make make;
};

#define COMMAND(type, ...) Named{#type, [](CaseDocument& d) { return std::make_unique<type>(d, __VA_ARGS__); }}
#define BARE_COMMAND(type) Named{#type, [](CaseDocument& d) { return std::make_unique<type>(d); }}

core::PatientPoint at(double x) { return {Eigen::Vector3d(x, 2, 3)}; }
core::Plane plane(double z) { return {{Eigen::Vector3d(0, 0, z)}, {Eigen::Vector3d(0, 0, 1)}}; }
core::SectionFrame frame(double z) { return core::frameOf(plane(z)); }

core::Drawing line(double toX) {
    core::Drawing drawing;
    drawing.site = core::SectionSite{{}, "landing", 3};
    drawing.points = {{0, 0}, {toX, 0}};
    return drawing;
}

core::CorrectedContour contour() { return {{}, {{0, 0}, {5, 0}, {5, 5}, {0, 5}, {-1, 2}}, "ostium", 4}; }

core::ImagesUsed images(const char* phase) {
    core::ImagesUsed used;
    used.seriesUid = "2.25.100";
    used.phaseLabel = phase;
    return used;
}

core::Moment moment(core::Stage stage) {
    core::Moment made;
    made.circulation.stage = stage;
    made.circulation.meanPressureMmHg = 14;
    return made;
}

core::TypedReading reading() {
    core::TypedReading made;
    made.observation.state = "m1";
    made.observation.valueMm = 21;
    return made;
}

core::StasisFinding stasis() {
    core::StasisFinding made;
    made.echoContrastGrade = 2;
    return made;
}

core::ReleaseState look() {
    core::ReleaseState made;
    made.time = "2026-03-01T10:00:00+01:00";
    return made;
}

core::PictureScale scale() {
    core::PictureScale made;
    made.to = {100, 0};
    made.knownMm = 10;
    return made;
}

core::PoseLandmark landmark() {
    core::PoseLandmark made;
    made.ct = at(4);
    made.label = "ridge";
    return made;
}

/// One of each class, in an order in which each changes something.
std::vector<Named> commands() {
    using enum core::Stage;
    return {
        COMMAND(ChooseImages, images("75 %")),
        COMMAND(PlaceMark, core::MarkKind::Tip, at(1)),
        COMMAND(RemoveMark, core::MarkKind::Tip),
        COMMAND(ConfirmOstium, plane(1)),
        COMMAND(MoveOstiumPlane, plane(2), 1),
        COMMAND(TiltOstiumPlane, (core::Plane{at(5), {Eigen::Vector3d(0, 0.6, 0.8)}}), 2),
        BARE_COMMAND(ReleaseOstium),
        COMMAND(MoveLanding, 12.0, 1),
        COMMAND(TiltLanding, (core::PatientVector{Eigen::Vector3d(0, 3, 4)}), 2),
        BARE_COMMAND(SquareLanding),
        COMMAND(SetSecondLanding, 14.0, 1),
        COMMAND(SetPlugPlane, 11.0, 1),
        COMMAND(PlaceDrawing, "1", line(5)),
        COMMAND(MoveDrawingPoint, "1", line(6), 1),
        COMMAND(LabelDrawing, "1", "shelf"),
        COMMAND(GiveRole, "1", core::DrawingRole::Depth),
        COMMAND(ConfirmPlaneOf, "1", (core::SectionSite{frame(5), "landing", 9})),
        COMMAND(RemoveDrawing, "1"),
        COMMAND(CorrectContour, "ostium", contour(), 0),
        COMMAND(ConfirmContour, "ostium", frame(5)),
        COMMAND(RestoreContour, "ostium"),
        COMMAND(SetMoment, "m1", moment(BeforeRepair)),
        COMMAND(ChangeStage, "e1", AfterRepair),
        COMMAND(ChangeMoment, "e1", "m1"),
        COMMAND(ChangeProbeAngle, "e1", 45.0),
        COMMAND(ChangeBeatPhase, "e1", core::BeatPhase::EndSystole),
        COMMAND(SetTypedReading, "r1", reading()),
        COMMAND(RemoveTypedReading, "r1"),
        COMMAND(SetStasis, "s1", stasis()),
        COMMAND(RemoveStasis, "s1"),
        COMMAND(SetReleaseLook, "l1", look()),
        COMMAND(RemoveReleaseLook, "l1"),
        COMMAND(RemoveMoment, "m1"),
        COMMAND(ConfirmValues, "echo/m1", std::vector<std::string>{"landing/longest-diameter"}),
        COMMAND(CalibratePicture, "2.25.5", scale()),
        COMMAND(RemoveCalibration, "2.25.5"),
        COMMAND(MarkPoseLandmark, "p1", landmark()),
        COMMAND(RemovePoseLandmark, "p1"),
        COMMAND(LoadChart, "{}", "chart.json"),
        COMMAND(SetSizingPressures, 12.0, 6.0, 19.0),
        COMMAND(SetPressureCause, core::PressureChange::Lasting, true),
        COMMAND(ChooseSize, "24"),
        COMMAND(SetCArmReach, (core::CArmReach{50, 55, 30, 35})),
        COMMAND(SetPatientTurn, (core::PatientTurn{-8, 2})),
        COMMAND(ChooseView, (core::ChosenView{{-25, -15}, core::ViewAim::LongestWidth, "landing", 4, "main"})),
        COMMAND(DropView, 0u),
        COMMAND(SetStrokeItems, core::StrokeItems{}),
        COMMAND(SetBleedingItems, core::BleedingItems{}),
        COMMAND(WriteDecision, "Size 24."),
        COMMAND(SignDecision, "A. Tester", "2026-03-01T10:00:00+01:00"),
        BARE_COMMAND(WithdrawSignature),
        COMMAND(AddSeptumPoint, SeptumPoint::Annulus, at(6)),
        COMMAND(MoveSeptumPoint, SeptumPoint::Annulus, 0, at(7), 1),
        COMMAND(RemoveSeptumPoint, SeptumPoint::Annulus, 0),
        COMMAND(AddSeptumPoint, SeptumPoint::AorticRoot, at(8)),
        COMMAND(ClearSeptumPoints, SeptumPoint::AorticRoot),
        COMMAND(SetCrossingLimits, (core::CrossingLimits{true, core::HeightDatum::Coaptation, 36.0, 44.0, 25.0, false, {}})),
        COMMAND(ChooseCrossing, at(9), 1),
    };
}

#undef COMMAND
#undef BARE_COMMAND

/// What the commands change, and a value that is stale.
void prepare(CaseDocument& document) {
    setFirstImages(document, images("45 %"));
    document.push(std::make_unique<EntryCommand<core::Evidence>>(document, QStringLiteral("add"), "e1", core::Evidence{}));
    core::RecordedValue value;
    value.group = "echo/m1";
    value.id = "landing/longest-diameter";
    value.unit = "mm";
    value.estimate.value = 20;
    value.inputs = {{"evidence/e1", core::revisionOf(document.record(), "evidence/e1")}};
    value.provenance = std::make_shared<const core::Provenance>();
    document.apply(core::SetValues{{value}, value.group});
}

TEST(EveryCommand, DoUndoRedoIsIdentity) {
    CaseDocument document;
    prepare(document);
    const core::CaseRecord first = document.record();
    const int before = document.undoStack().count();
    for (const Named& command : commands()) {
        SCOPED_TRACE(command.name);
        const core::CaseRecord undone = document.record();
        ASSERT_TRUE(document.push(command.make(document)));
        const core::CaseRecord done = document.record();
        EXPECT_FALSE(done == undone);
        EXPECT_FALSE(document.undoStack().undoText().isEmpty());
        document.undoStack().undo();
        EXPECT_TRUE(document.record() == undone);
        document.undoStack().redo();
        EXPECT_TRUE(document.record() == done);
    }
    while (document.undoStack().count() > before && document.undoStack().index() > before)
        document.undoStack().undo();
    EXPECT_TRUE(document.record() == first) << "all undone";
    EXPECT_TRUE(core::replay(document.journal()) == document.record());
}

TEST(EveryCommand, HasItsLineInThisTest) {
    const std::set<std::string> bases{"EditCommand", "EntryCommand", "SingleCommand", "LandingCommand", "SizingCommand", "SeptumMarksCommand", "ProjectionCommand"};
    std::set<std::string> tested, found;
    for (const Named& command : commands())
        tested.insert(command.name);
    const std::regex heading(R"(\bclass (\w+) : public)");
    for (const auto& file : std::filesystem::directory_iterator(GAUGE_SOURCE_DIR "/app/commands")) {
        if (file.path().extension() != ".h") continue;
        std::stringstream text;
        text << std::ifstream(file.path()).rdbuf();
        const std::string header = text.str();
        for (std::sregex_iterator one(header.begin(), header.end(), heading), end; one != end; ++one)
            if (!bases.contains((*one)[1])) found.insert((*one)[1]);
    }
    EXPECT_EQ(tested, found);
}

} // namespace every_command_test
