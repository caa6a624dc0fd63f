#include "core/record/edit.h"

#include "tests/core/record/random_edits.h"

#include <gtest/gtest.h>

using namespace gauge::core;

namespace {

/// Runs a RapidCheck property inside a GoogleTest case; RapidCheck prints seed and input when it fails.
template <class F> void expectHolds(const char* claim, F property) {
    EXPECT_TRUE(rc::check(claim, property));
}

SetMark tipAt(double x, Revision revision) {
    return {MarkKind::Tip, Mark{{Eigen::Vector3d(x, 0, 0)}, revision, UnknownFields::object()}};
}

} // namespace

TEST(ApplyEdit, UndoOfAnySequenceIsIdentityAndSoIsRedo) {
    expectHolds("do, undo, redo", [] {
        CaseRecord record = replay(testing_edits::journal());
        const CaseRecord before = record;
        std::vector<Edit> inverses;
        for (int n = *rc::gen::inRange(1, 12); n > 0; --n)
            inverses.push_back(apply(record, testing_edits::edit(static_cast<Revision>(100 + n))));
        const CaseRecord after = record;
        std::vector<Edit> redos;
        for (auto it = inverses.rbegin(); it != inverses.rend(); ++it)
            redos.push_back(apply(record, *it));
        RC_ASSERT(record == before);
        for (auto it = redos.rbegin(); it != redos.rend(); ++it)
            apply(record, *it);
        RC_ASSERT(record == after);
    });
}

TEST(ApplyEdit, SetsWhatItSays) {
    CaseRecord record;
    const Edit inverse = apply(record, tipAt(12.5, 1));
    EXPECT_EQ(record.marks.at(MarkKind::Tip).point.mm.x(), 12.5);
    EXPECT_TRUE(inverse == Edit(SetMark{MarkKind::Tip, std::nullopt}));
    apply(record, SetMark{MarkKind::Tip, std::nullopt});
    EXPECT_TRUE(record.marks.empty());
}

TEST(ChangesNothing, LooksPastTheRevision) {
    CaseRecord record;
    apply(record, tipAt(12.5, 1));
    EXPECT_TRUE(changesNothing(record, tipAt(12.5, 2)));
    EXPECT_FALSE(changesNothing(record, tipAt(12.6, 2)));
    EXPECT_FALSE(changesNothing(record, SetMark{MarkKind::Tip, std::nullopt}));
    EXPECT_TRUE(changesNothing(record, SetMark{MarkKind::Ridge, std::nullopt}));
}

TEST(IsStale, FollowsTheRevisionsOfTheInputsThroughUndo) {
    CaseRecord record;
    apply(record, tipAt(12.5, 1));
    RecordedValue value;
    value.inputs = {{input::mark(MarkKind::Tip), 1}, {std::string(input::kOstium), 0}};
    EXPECT_FALSE(isStale(record, value));

    const Edit undo = apply(record, tipAt(14.0, 2));
    EXPECT_TRUE(isStale(record, value));
    apply(record, undo);
    EXPECT_FALSE(isStale(record, value)) << "undo brings the old revision back";

    // Another edit after the undo gets a number of its own, not 2 again.
    apply(record, tipAt(15.0, 4));
    EXPECT_TRUE(isStale(record, value));
    apply(record, undo);
    apply(record, SetOstium{OstiumPlane{{}, true, 5, UnknownFields::object()}});
    EXPECT_TRUE(isStale(record, value)) << "an input that was absent and now is there";
}

TEST(RevisionOf, IsZeroForWhatTheRecordDoesNotHaveOrKnow) {
    const CaseRecord record;
    for (const char* id : {"images", "ostium", "landing", "mark/tip", "mark/nose", "nonsense", ""})
        EXPECT_EQ(revisionOf(record, id), 0u) << id;
}

TEST(MarkKindFrom, ReadsEveryNameItWrites) {
    for (const MarkKind kind : kMarkKinds)
        EXPECT_EQ(markKindFrom(name(kind)), kind);
    EXPECT_FALSE(markKindFrom("Tip"));
}
