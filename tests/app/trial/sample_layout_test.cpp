// Nothing is cut, covered or out of place, painted words neither, on any page and any slide of the whole sample case, in every language,
// with the usual letters in a window of 1280 x 800 pixels and with the largest. Other scales are those with which the process is started
// (CMakeLists.txt).
#include "app/panels/decision_tabs.h"
#include "app/views/course_page.h"
#include "app/window/page_shelf.h"
#include "tests/app/support/layout_faults.h"
#include "tests/app/trial/sample_stage.h"

#include <QCoreApplication>
#include <QTabWidget>
#include <gtest/gtest.h>
#include <sstream>

using namespace gauge;
using namespace gauge::app;
using layout::faultsOf;
using layout::paintedFaultsOf;
using layout::said;

namespace {

class SampleLayout : public layout::LookTest {
protected:
    trial::SampleCopy copy;

    static void keepPicture(MainWindow& window, const QString& name) {
        const QString folder = qEnvironmentVariable("GAUGE_TRIAL_PICTURES");
        std::ostringstream look;
        PrintTo(GetParam(), &look);
        if (!folder.isEmpty()) window.grab().save(QStringLiteral("%1/%2 %3.png").arg(folder, QString::fromStdString(look.str()), name));
    }

    static void expectNoFault(MainWindow& window, const QString& where) {
        keepPicture(window, where);
        const QStringList faults = faultsOf(window) + paintedFaultsOf(window);
        EXPECT_TRUE(faults.isEmpty()) << where.toStdString() << ":\n" << said(faults);
    }

    /// Faults of what is on screen, tab by tab of `tabs`.
    static void lookAt(MainWindow& window, const QString& page, QTabWidget& tabs) {
        for (int at = 0; at < tabs.count(); ++at) {
            tabs.setCurrentIndex(at);
            QCoreApplication::processEvents();
            expectNoFault(window, page + QLatin1Char(' ') + tabs.tabText(at));
        }
    }
};

class SampleSlides : public SampleLayout {};

std::vector<layout::Look> darkLooks() {
    std::vector<layout::Look> looks = layout::everyLook();
    std::erase_if(looks, [](const layout::Look& look) { return look.theme != Theme::Dark; }); // themes differ in colours alone
    return looks;
}

/// The letters of the meeting come from its window alone.
std::vector<layout::Look> usualLetters() {
    std::vector<layout::Look> looks = darkLooks();
    std::erase_if(looks, [](const layout::Look& look) { return look.textScale > 1.0; });
    return looks;
}

} // namespace

TEST_P(SampleLayout, HoldsOnEveryPage) {
    MainWindow window;
    const int widest = GetParam().textScale > 1.0 ? 1600 : 1280;
    window.resize(widest, 800);
    window.show();
    window.openCase(copy.caseFile());
    ASSERT_TRUE(trial::settle(window));
    auto* decision = window.findChild<DecisionTabs*>();
    ASSERT_TRUE(decision);
    for (const PageShelf::Entry& entry : window.shelf().entries()) {
        window.state().setPage(entry.page);
        ASSERT_TRUE(trial::settle(window));
        auto* course = qobject_cast<CoursePage*>(entry.widget);
        lookAt(window, entry.title, course ? *static_cast<QTabWidget*>(course) : *decision);
    }
    EXPECT_EQ(window.width(), widest);
}

TEST_P(SampleSlides, HoldInTheMeeting) {
    MainWindow window;
    window.resize(1280, 800);
    window.show();
    window.openCase(copy.caseFile());
    ASSERT_TRUE(trial::settle(window));
    window.state().setMode(ViewState::Mode::Meeting);
    window.showNormal(); // the offscreen platform's screen is small
    window.resize(1280, 800);
    for (int at = 0; at < window.meeting().slideCount(); ++at) {
        window.meeting().showSlide(at);
        ASSERT_TRUE(trial::settle(window));
        expectNoFault(window, QStringLiteral("Meeting %1").arg(at));
    }
}

INSTANTIATE_TEST_SUITE_P(Languages, SampleLayout, ::testing::ValuesIn(darkLooks()), layout::nameOfLook);
INSTANTIATE_TEST_SUITE_P(Languages, SampleSlides, ::testing::ValuesIn(usualLetters()), layout::nameOfLook);
