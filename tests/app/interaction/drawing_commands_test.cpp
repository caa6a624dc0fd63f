// Each command on drawings, planes and contours: do, undo, redo.
#include "app/commands/contour_commands.h"
#include "app/commands/drawing_commands.h"
#include "app/commands/landing_commands.h"
#include "app/commands/ostium_commands.h"

#include <functional>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;

namespace {

core::Drawing line(double toX) {
    core::Drawing drawing;
    drawing.site = core::SectionSite{{}, "landing", 3};
    drawing.points = {{0, 0}, {toX, 0}};
    return drawing;
}

core::CorrectedContour contour(double size) {
    return {{}, {{0, 0}, {size, 0}, {size, size}, {0, size}, {-1, 2}}, "ostium", 4};
}

core::Plane plane(double z) {
    return {{Eigen::Vector3d(0, 0, z)}, {}};
}

using Make = std::function<std::unique_ptr<EditCommand>(CaseDocument&)>;

/// In an order in which each changes something.
std::vector<Make> commands() {
    core::SectionFrame moved;
    moved.origin = {Eigen::Vector3d(0, 0, 5)};
    return {
        [](CaseDocument& d) { return std::make_unique<PlaceDrawing>(d, "1", line(5)); },
        [](CaseDocument& d) { return std::make_unique<MoveDrawingPoint>(d, "1", line(6), 1); },
        [](CaseDocument& d) { return std::make_unique<LabelDrawing>(d, "1", "shelf"); },
        [](CaseDocument& d) { return std::make_unique<GiveRole>(d, "1", core::DrawingRole::Depth); },
        [moved](CaseDocument& d) { return std::make_unique<ConfirmPlaneOf>(d, "1", core::SectionSite{moved, "landing", 9}); },
        [](CaseDocument& d) { return std::make_unique<RemoveDrawing>(d, "1"); },
        [](CaseDocument& d) { return std::make_unique<CorrectContour>(d, "ostium", contour(5), 0); },
        [moved](CaseDocument& d) { return std::make_unique<ConfirmContour>(d, "ostium", moved); },
        [](CaseDocument& d) { return std::make_unique<RestoreContour>(d, "ostium"); },
        [](CaseDocument& d) { return std::make_unique<MoveOstiumPlane>(d, plane(1), 1); },
        [](CaseDocument& d) { return std::make_unique<TiltOstiumPlane>(d, plane(2), 2); },
        [](CaseDocument& d) { return std::make_unique<SetPlugPlane>(d, 12.0, 1); },
    };
}

} // namespace

TEST(DrawingCommands, DoUndoRedoIsIdentityForEach) {
    CaseDocument document;
    for (const auto& make : commands()) {
        const core::CaseRecord before = document.record();
        ASSERT_TRUE(document.push(make(document)));
        const core::CaseRecord after = document.record();
        EXPECT_FALSE(after == before);
        document.undoStack().undo();
        EXPECT_TRUE(document.record() == before) << document.undoStack().redoText().toStdString();
        document.undoStack().redo();
        EXPECT_TRUE(document.record() == after) << document.undoStack().undoText().toStdString();
        EXPECT_FALSE(document.undoStack().undoText().isEmpty());
    }
    while (document.undoStack().canUndo())
        document.undoStack().undo();
    EXPECT_TRUE(document.record().drawings.empty() && document.record().contours.empty() && !document.record().ostium);
}

TEST(DrawingCommands, OfOneGestureAreOneStepOfUndo) {
    CaseDocument document;
    document.push(std::make_unique<PlaceDrawing>(document, "1", line(5)));
    for (const double x : {6.0, 7.0, 8.0})
        document.push(std::make_unique<MoveDrawingPoint>(document, "1", line(x), 4));
    EXPECT_EQ(document.undoStack().count(), 2);
    document.push(std::make_unique<MoveDrawingPoint>(document, "1", line(9), 5));
    EXPECT_EQ(document.undoStack().count(), 3);
    for (const int gesture : {1, 1, 2})
        document.push(std::make_unique<MoveOstiumPlane>(document, plane(document.undoStack().count() + gesture), gesture));
    document.push(std::make_unique<TiltOstiumPlane>(document, plane(40), 2));
    EXPECT_EQ(document.undoStack().count(), 5) << "a move and a tilt of one gesture are one step";
}

TEST(DrawingCommands, ThatChangeNothingAreDropped) {
    CaseDocument document;
    document.push(std::make_unique<PlaceDrawing>(document, "1", line(5)));
    EXPECT_FALSE(document.push(std::make_unique<MoveDrawingPoint>(document, "1", line(5), 1)));
    EXPECT_FALSE(document.push(std::make_unique<LabelDrawing>(document, "1", "")));
}

TEST(DrawingCommands, ConfirmingCarriesPointsAlongTheNewNormal) {
    CaseDocument document;
    document.push(std::make_unique<PlaceDrawing>(document, "1", line(5)));
    core::SectionFrame moved;
    moved.origin = {Eigen::Vector3d(2, 0, 7)};
    document.push(std::make_unique<ConfirmPlaneOf>(document, "1", core::SectionSite{moved, "landing", 9}));
    const core::Drawing& drawing = document.record().drawings.at("1").content;
    EXPECT_EQ(drawing.points[0], Eigen::Vector2d(-2, 0));
    EXPECT_EQ(drawing.points[1], Eigen::Vector2d(3, 0));
    EXPECT_EQ(std::get<core::SectionSite>(drawing.site).planeRevision, 9u);
}
