// What is wrong with how a window, page or panel is laid out: looks at every part, be it scrolled out of sight or not. A part is
// meant to scroll sideways when its property "scrollsSideways" is true.
//
//   using namespace gauge::layout;
//   INSTANTIATE_TEST_SUITE_P(Languages, MyPageLayout, ::testing::ValuesIn(everyLook()), nameOfLook);     // class MyPageLayout : public LookTest {};
//   TEST_P(MyPageLayout, Holds) { … EXPECT_TRUE(faultsOf(page).isEmpty()) << said(faultsOf(page)); }
//
// Scales other than 1 are those with which the process is started (QT_SCALE_FACTOR; tests/app/window/CMakeLists.txt).
#pragma once

#include "app/window/theme.h"

#include <QStringList>
#include <gtest/gtest.h>
#include <string>
#include <vector>

class QWidget;

namespace gauge::layout {

/// Texts that are cut, parts outside of their parent, parts over each other, and what is wider than the part that scrolls it.
/// The widget must be shown (offscreen) and its events processed.
QStringList faultsOf(const QWidget& window);

/// Texts of labels, buttons, lists and tabs whose letters, as they are painted, stand out too little from what is behind them
/// (WCAG 2.1, success criterion 1.4.3: 4.5 to 1). Parts that cannot be used now count too: they must be readable.
QStringList contrastFaultsOf(QWidget& window);

/// Texts painted into pictures and plots of the window that are cut at the edge of their view, lie over each other, or are
/// smaller than the smallest label.
QStringList paintedFaultsOf(QWidget& window);

/// WCAG 2.1, "contrast ratio", 1 to 21.
double contrast(const QColor& a, const QColor& b);

std::string said(const QStringList& faults);

/// Language, theme and size of letters of a test.
struct Look {
    const char* language;
    app::Theme theme;
    double textScale;

    /// English with the usual letters: colours need no more looks than these.
    bool isPlain() const { return language[0] == 'e' && textScale == 1.0; }
};
/// Each language in both themes, and each with the largest letters in the dark theme.
std::vector<Look> everyLook();
void PrintTo(const Look& look, std::ostream* out);
std::string nameOfLook(const ::testing::TestParamInfo<Look>& look);

/// Puts the program into the look for the length of a test.
class LookTest : public ::testing::TestWithParam<Look> {
protected:
    void SetUp() override;
    void TearDown() override;
};

} // namespace gauge::layout
