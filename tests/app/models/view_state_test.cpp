#include "app/models/view_state.h"

#include <gtest/gtest.h>

using namespace gauge::app;

TEST(ViewState, TheTurnStaysWithinOneRound) {
    ViewState state;
    for (const auto& [asked, kept] :
         {std::pair{190.0, -170.0}, {-180.0, 180.0}, {720.5, 0.5}, {-350.0, 10.0}}) {
        state.setTurnDeg(asked);
        EXPECT_NEAR(state.turnDeg(), kept, 1e-9) << asked;
    }
}

TEST(ViewState, TheGreyWindowNeverCloses) {
    ViewState state;
    state.setWindow({99999.0, -50.0});
    EXPECT_EQ(state.window().centerHu, 3000.0);
    EXPECT_EQ(state.window().widthHu, 20.0);
}

TEST(ViewState, TellsOnlyRealChanges) {
    ViewState state;
    int told = 0;
    QObject::connect(&state, &ViewState::windowChanged, [&] { ++told; });
    state.setWindow({100.0, 500.0});
    state.setWindow({100.0, 500.0});
    EXPECT_EQ(told, 1);
}
