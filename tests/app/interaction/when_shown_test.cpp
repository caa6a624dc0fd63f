#include "app/views/when_shown.h"

#include <QWidget>
#include <gtest/gtest.h>

using gauge::app::WhenShown;

TEST(WhenShown, WorksAtOnceOnScreenAndOnceWhenShownElse) {
    QWidget widget;
    int worked = 0;
    bool seen = false;
    WhenShown upToDate(widget, [&] {
        ++worked;
        seen = widget.isVisible();
    });
    upToDate.want();
    upToDate.want();
    EXPECT_EQ(worked, 0);
    widget.show();
    EXPECT_EQ(worked, 1);
    EXPECT_TRUE(seen);
    upToDate.want();
    EXPECT_EQ(worked, 2);
    widget.hide();
    widget.show();
    EXPECT_EQ(worked, 2) << "nothing was wanted while it was hidden";
}
