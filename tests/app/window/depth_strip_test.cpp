// The depth strip with an answer: bands at three pressures, the chosen size, and what the readout says of them.
#include "app/commands/decision_commands.h"
#include "app/drawing/depth_strip_bands.h"
#include "app/drawing/depth_strip_drawing.h"
#include "app/drawing/palette.h"
#include "app/panels/depth_readout.h"
#include "app/views/depth_strip_view.h"
#include "tests/app/support/decision_case.h"
#include "tests/app/support/synthetic_session.h"

#include <QTest>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;

namespace {

class DepthStripTest : public ::testing::Test {
protected:
    Session session;
    ViewState state;
    Answers answers{session};

    void SetUp() override {
        answers.setEffort({512}, {4, 64});
        fixture::openAndMeasure(session);
        fixture::addCourse(session.document());
        fixture::addChart(session.document());
        ASSERT_TRUE(fixture::waitUntil([&] { return !session.isMeasuring(); }));
        session.document().push(std::make_unique<SetSizingPressures>(session.document(), 12.0, 5.0, 20.0));
        answers.finishNow();
    }
    void TearDown() override { setTheme(Theme::Dark); }
};

} // namespace

TEST_F(DepthStripTest, CarriesTheProfileToTheThreePressuresOfTheCase) {
    const auto answer = stripAnswer(session, answers);
    ASSERT_TRUE(answer);
    EXPECT_EQ(answer->profile.size(), session.measurement()->profile.size());
    EXPECT_EQ(answer->band(StripBand::Lowest).pressureMmHg, 5.0);
    EXPECT_EQ(answer->band(StripBand::Decision).pressureMmHg, 12.0);
    EXPECT_EQ(answer->band(StripBand::Highest).pressureMmHg, 20.0);
    for (std::size_t i = 0; i < answer->profile.size(); ++i) {
        EXPECT_LT(answer->band(StripBand::Lowest).widths[i].medianMm, answer->band(StripBand::Highest).widths[i].medianMm);
        EXPECT_LT(answer->band(StripBand::Decision).widths[i].lower95Mm, answer->band(StripBand::Decision).widths[i].upper95Mm);
    }
    // Two routes to one number: at the landing zone the band is the carried reading itself.
    const auto at = answer->nearest(session.landing()->depthMm);
    EXPECT_NEAR(answer->band(StripBand::Decision).widths[*at].medianMm, answers.bands()->decision.valueMm, 0.05);
}

TEST_F(DepthStripTest, ShowsTheChosenSizeNoWiderThanTheAppendage) {
    EXPECT_FALSE(stripAnswer(session, answers)->device) << "none chosen";
    const auto& sizes = answers.chart()->chart.sizes;
    session.document().push(std::make_unique<ChooseSize>(session.document(), sizes[sizes.size() / 2].name));
    answers.finishNow();
    const auto answer = stripAnswer(session, answers);
    ASSERT_TRUE(answer && answer->device);
    EXPECT_EQ(answer->deviceName.toStdString(), sizes[sizes.size() / 2].name);
    for (const auto& place : answer->device->body)
        EXPECT_LE(place.widthMm, answer->device->freeMm);
}

TEST_F(DepthStripTest, TheReadoutSaysEachBandWithPressureAndInterval) {
    DepthReadout readout(session, state);
    readout.setAnswers(answers);
    readout.setHover(20.0);
    const QString text = readout.lines().join('\n').replace(QChar(0x00A0), ' ');
    const auto answer = stripAnswer(session, answers);
    const auto at = answer->nearest(20.0);
    for (const StripBand band : kStripBands) {
        const QString line = wordsOf(*answer, band) + ' ' + wordsOf(answer->band(band).widths[*at]);
        EXPECT_TRUE(text.contains(QString(line).replace(QChar(0x00A0), ' '))) << line.toStdString();
    }
    EXPECT_TRUE(text.contains("5 mmHg, lowest"));
    EXPECT_TRUE(text.contains("12 mmHg, decision"));
    EXPECT_TRUE(text.contains(QString::fromUtf8("–"))) << "the interval";
}

TEST_F(DepthStripTest, TheReadoutTellsNoValueOfAPlaneThatIsBeingMeasured) {
    DepthReadout readout(session, state);
    state.showLanding();
    const QStringList before = readout.lines();
    session.previewLanding(15.0);
    const QStringList lines = readout.lines();
    EXPECT_TRUE(lines.front().contains(QStringLiteral("15.0"))) << lines.front().toStdString();
    EXPECT_EQ(lines.filter(QStringLiteral("measuring …")).size(), 4) << "three diameters and the area";
    ASSERT_TRUE(fixture::waitUntil([&] { return session.isLandingMeasured(); }));
    EXPECT_TRUE(readout.lines().filter(QStringLiteral("measuring …")).isEmpty());
    EXPECT_NE(readout.lines(), before);
    session.dropPreviews();
    EXPECT_EQ(readout.lines(), before);
}

TEST_F(DepthStripTest, DrawsInBothThemesOnTheirOwnGround) {
    DepthStripView strip(session, state);
    strip.setAnswers(answers);
    ASSERT_TRUE(strip.answer());
    strip.resize(700, 200);
    state.setDepthScale({120.0, 12.0});
    for (const Theme theme : {Theme::Dark, Theme::Light}) {
        setTheme(theme);
        const QImage picture = strip.grab().toImage();
        EXPECT_EQ(picture.pixelColor(690, 196), tone::panel);
        // Along the decision's median, halfway up to the upper limit, the ground is tinted.
        DepthStripScene scene;
        scene.measurement = session.measurement();
        scene.answer = strip.answer();
        const WidthScale widths = widthScale(scene, QRectF(strip.rect()));
        const auto i = *strip.answer()->nearest(25.0);
        const auto& width = strip.answer()->band(StripBand::Decision).widths[i];
        const double x = state.depthScale().xFromMm(strip.answer()->profile[i].depthMm);
        const QColor line = picture.pixelColor(static_cast<int>(x), static_cast<int>(widths.yFromMm(width.medianMm)));
        EXPECT_NE(line, tone::panel);
        EXPECT_GT(std::abs(line.lightness() - tone::panel.lightness()), 60) << "the median stands out";
    }
}

TEST_F(DepthStripTest, KeysMoveDepthAndLandingZoneUnderTheBandsToo) {
    DepthStripView strip(session, state);
    strip.setAnswers(answers);
    strip.resize(700, 200);
    strip.show();
    state.showDepth(15.0);
    QTest::keyClick(&strip, Qt::Key_Right);
    EXPECT_EQ(state.cursorMm(), 15.5);
    const double before = session.record().landing.depthsMm.front();
    QTest::keyClick(&strip, Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_EQ(session.record().landing.depthsMm.front(), before - 0.5);
}
