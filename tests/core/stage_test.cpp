#include "core/stage.h"

#include <gtest/gtest.h>

using namespace gauge::core;

TEST(StageName, AndItsReadingAreInverse) {
    for (const Stage stage : kStages)
        EXPECT_EQ(stageFrom(name(stage)), stage) << name(stage);
}

TEST(StageName, IsTheWordOfTheObservationsFile) {
    EXPECT_EQ(name(Stage::BeforeProcedure), "before-procedure");
    EXPECT_EQ(name(Stage::DeployedAttached), "deployed-attached");
    EXPECT_EQ(name(Stage::FollowUp), "follow-up");
}

TEST(StageFrom, KnowsNoOtherWord) {
    EXPECT_FALSE(stageFrom(""));
    EXPECT_FALSE(stageFrom("Follow-up"));
    EXPECT_FALSE(stageFrom("during-procedure"));
}
