#include "app/commands/images_commands.h"
#include "app/commands/landing_commands.h"
#include "app/commands/mark_commands.h"
#include "app/commands/ostium_commands.h"
#include "app/document/case_document.h"

#include <functional>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;

namespace {

core::PatientPoint at(double x) {
    return {Eigen::Vector3d(x, 2, 3)};
}

core::ImagesUsed images(const char* phase) {
    core::ImagesUsed used;
    used.seriesUid = "2.25.100";
    used.phaseLabel = phase;
    return used;
}

using Make = std::function<std::unique_ptr<EditCommand>(CaseDocument&)>;

/// One of each command, in an order in which each changes something.
std::vector<Make> commands() {
    return {
        [](CaseDocument& d) { return std::make_unique<PlaceMark>(d, core::MarkKind::Tip, at(1)); },
        [](CaseDocument& d) { return std::make_unique<PlaceMark>(d, core::MarkKind::Tip, at(2)); },
        [](CaseDocument& d) {
            return std::make_unique<ConfirmOstium>(d, core::Plane{at(5), {Eigen::Vector3d(0, 0, 2)}});
        },
        [](CaseDocument& d) { return std::make_unique<MoveLanding>(d, 12.0, 1); },
        [](CaseDocument& d) { return std::make_unique<ChooseImages>(d, images("75 %")); },
        [](CaseDocument& d) { return std::make_unique<ReleaseOstium>(d); },
        [](CaseDocument& d) { return std::make_unique<RemoveMark>(d, core::MarkKind::Tip); },
    };
}

} // namespace

TEST(Commands, DoUndoRedoIsIdentityForEach) {
    CaseDocument document;
    setFirstImages(document, images("45 %"));
    for (const auto& make : commands()) {
        const core::CaseRecord before = document.record();
        ASSERT_TRUE(document.push(make(document)));
        const core::CaseRecord after = document.record();
        EXPECT_FALSE(after == before);
        document.undoStack().undo();
        EXPECT_TRUE(document.record() == before) << document.undoStack().redoText().toStdString();
        document.undoStack().redo();
        EXPECT_TRUE(document.record() == after) << document.undoStack().undoText().toStdString();
    }
    while (document.undoStack().canUndo())
        document.undoStack().undo();
    EXPECT_TRUE(document.record().marks.empty());
    EXPECT_EQ(document.record().images->phaseLabel, "45 %");
}

TEST(Commands, UndoAppendsTheInverseToTheJournal) {
    CaseDocument document;
    document.push(std::make_unique<PlaceMark>(document, core::MarkKind::Tip, at(1)));
    document.undoStack().undo();
    ASSERT_EQ(document.journal().entries().size(), 2u);
    EXPECT_TRUE(core::replay(document.journal()) == document.record());
    EXPECT_FALSE(document.journal().entries().back().time.empty());
}

TEST(Commands, NothingIsPushedWhenNothingChanges) {
    CaseDocument document;
    EXPECT_TRUE(document.push(std::make_unique<PlaceMark>(document, core::MarkKind::Tip, at(1))));
    EXPECT_FALSE(document.push(std::make_unique<PlaceMark>(document, core::MarkKind::Tip, at(1))));
    EXPECT_FALSE(document.push(std::make_unique<RemoveMark>(document, core::MarkKind::Ridge)));
    EXPECT_EQ(document.undoStack().count(), 1);
    EXPECT_EQ(document.journal().entries().size(), 1u);
}

TEST(Commands, MovesOfOneGestureAreOneStepOfUndo) {
    CaseDocument document;
    for (const double mm : {11.0, 12.0, 13.0})
        document.push(std::make_unique<MoveLanding>(document, mm, 1));
    document.push(std::make_unique<MoveLanding>(document, 15.0, 2));
    EXPECT_EQ(document.undoStack().count(), 2);
    document.undoStack().undo();
    EXPECT_EQ(document.record().landing.depthsMm.front(), 13.0);
    document.undoStack().undo();
    EXPECT_EQ(document.record().landing.depthsMm.front(), 10.0);
    document.undoStack().redo();
    EXPECT_EQ(document.record().landing.depthsMm.front(), 13.0);
}

TEST(Commands, AConfirmedOstiumHasAUnitNormal) {
    CaseDocument document;
    document.push(std::make_unique<ConfirmOstium>(document, core::Plane{at(5), {Eigen::Vector3d(0, 3, 4)}}));
    EXPECT_NEAR(document.record().ostium->plane.normal.norm(), 1.0, 1e-12);
    EXPECT_TRUE(document.record().ostium->confirmed);
}

TEST(Commands, SayWhatTheyDo) {
    CaseDocument document;
    document.push(std::make_unique<PlaceMark>(document, core::MarkKind::Circumflex, at(1)));
    EXPECT_EQ(document.undoStack().undoText(), "Mark: circumflex artery");
    document.push(std::make_unique<PlaceMark>(document, core::MarkKind::Circumflex, at(2)));
    EXPECT_EQ(document.undoStack().undoText(), "Move the mark: circumflex artery");
}
