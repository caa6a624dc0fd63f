#include "app/models/cine_player.h"

#include "app/models/echo_pass.h"
#include "tests/app/support/synthetic_pictures.h"

#include <gtest/gtest.h>

using namespace gauge;
using app::CinePlayer;
using app::EchoPass;

TEST(CinePlayer, FollowsTheTimesOfTheFrames) {
    CinePlayer player;
    core::FrameTimes times;
    times.startMs = {0.0, 40.0, 140.0, 180.0}; // the second frame lasts longest
    player.setCine(times, 4);
    player.advance(39.0);
    EXPECT_EQ(player.frame(), 0);
    player.advance(1.0);
    EXPECT_EQ(player.frame(), 1);
    player.advance(99.0);
    EXPECT_EQ(player.frame(), 1);
    player.advance(41.0);
    EXPECT_EQ(player.frame(), 3);
    player.advance(40.0); // the last frame lasts as long as the one before
    EXPECT_EQ(player.frame(), 0);
}

TEST(CinePlayer, StepsGoRoundOnlyWhileLooping) {
    CinePlayer player;
    player.setCine({}, 5);
    player.step(-1);
    EXPECT_EQ(player.frame(), 4);
    player.setLooping(false);
    player.step(1);
    EXPECT_EQ(player.frame(), 4);
    player.setFrame(99);
    EXPECT_EQ(player.frame(), 4);
}

TEST(CinePlayer, StoppingAndSteppingEndPlaying) {
    CinePlayer player;
    player.setCine({}, 5);
    player.setPlaying(true);
    EXPECT_TRUE(player.isPlaying());
    player.step(1);
    EXPECT_FALSE(player.isPlaying());
    player.setLooping(false);
    player.setFrame(0);
    player.setPlaying(true);
    player.advance(1e6);
    EXPECT_EQ(player.frame(), 4);
    EXPECT_FALSE(player.isPlaying());
}

TEST(CinePlayer, AStillDoesNotPlay) {
    CinePlayer player;
    player.setCine({}, 1);
    player.setPlaying(true);
    EXPECT_FALSE(player.isPlaying());
    player.setCine({}, 0);
    player.step(1);
    EXPECT_EQ(player.frame(), 0);
}

TEST(EchoPass, GoesThroughViewsAndLengthsInTurn) {
    EchoPass pass;
    pass.start({});
    EXPECT_FALSE(pass.isActive());
    pass.start({"a", "b"});
    EXPECT_EQ(pass.view(), "a");
    EXPECT_EQ(pass.role(), core::DrawingRole::OstiumWidth);
    pass.nextLength();
    EXPECT_EQ(pass.role(), core::DrawingRole::LandingWidth);
    pass.nextLength();
    EXPECT_EQ(pass.role(), core::DrawingRole::Depth);
    pass.nextLength();
    EXPECT_EQ(pass.view(), "b");
    EXPECT_EQ(pass.role(), core::DrawingRole::OstiumWidth);
    pass.nextView();
    EXPECT_FALSE(pass.isActive());
    EXPECT_TRUE(pass.view().isEmpty());
}

TEST(EchoPass, MayBeLeftAtAnyTime) {
    EchoPass pass;
    pass.start({"a", "b"});
    pass.nextLength();
    pass.leave();
    EXPECT_FALSE(pass.isActive());
    pass.start({"b"});
    EXPECT_EQ(pass.role(), core::DrawingRole::OstiumWidth);
}
