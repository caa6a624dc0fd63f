// The labels of the long section: all there, none over another.
#include "app/drawing/long_section_drawing.h"
#include "app/drawing/palette.h"
#include "tests/app/support/synthetic_case.h"

#include "sample-data/phantom.h"

#include <QImage>
#include <gtest/gtest.h>

using namespace gauge;
using namespace gauge::app;

namespace {

constexpr std::size_t kDirections = 4, kScaleBar = 1, kTitle = 1, kTipMarker = 1;

/// The map by which the view fits the appendage into its width.
SectionMap fitted(const core::AppendageMeasurement& m, const QSizeF& size, double turnDeg) {
    SectionMap map;
    map.frame = longSectionFrame(m, turnDeg);
    map.pixelsPerMm = size.width() / (33.0 + m.axis.lengthMm);
    map.zero = QPointF(20.0 * map.pixelsPerMm, 0.5 * size.height());
    map.zero.ry() -= 0.5 * map.pixelsPerMm * map.frame.sectionFromPatient(core::axisPointAt(m, m.axis.lengthMm)).y();
    return map;
}

void expectReadable(const core::AppendageMeasurement& m, const std::vector<const core::LandingZone*>& landings, const QSize& size,
                    double turnDeg) {
    QImage image(size, QImage::Format_RGB32);
    QPainter painter(&image);
    LongSectionScene scene;
    scene.measurement = &m;
    scene.landings = landings;
    scene.title = QRectF(7.0, 5.0, 163.0, 19.0);
    const QRectF area(QPointF(0, 0), QSizeF(size));
    const auto places = drawLongSection(painter, area, fitted(m, size, turnDeg), scene);
    // ostium, tip, axis and the planes of landing
    EXPECT_EQ(places.size(), kDirections + kScaleBar + kTitle + kTipMarker + 3 + landings.size()) << "a label is missing";
    for (std::size_t i = kDirections + kScaleBar + kTitle + kTipMarker; i < places.size(); ++i) {
        EXPECT_TRUE(area.contains(places[i]));
        for (std::size_t j = 0; j < i; ++j)
            EXPECT_FALSE(places[i].intersects(places[j])) << i << " over " << j;
    }
}

void expectReadableAtAllSizes(const core::AppendageMeasurement& m, double turnDeg) {
    core::LandingZone tilted = m.landingZones.front(), plug = m.landingZones.front();
    tilted.tiltDeg = 12.0;
    plug.kind = core::LandingKind::Plug;
    plug.depthMm = 12.0;
    for (const QSize size : {QSize(420, 300), QSize(560, 380), QSize(760, 520), QSize(1150, 780), QSize(1700, 1000)}) {
        SCOPED_TRACE(std::to_string(size.width()) + " x " + std::to_string(size.height()) + ", turned " + std::to_string(turnDeg));
        expectReadable(m, {&m.landingZones.front()}, size, turnDeg);
        expectReadable(m, {&tilted}, size, turnDeg);
        if (size.width() >= 560) expectReadable(m, {&tilted, &plug}, size, turnDeg);
    }
}

} // namespace

TEST(LongSectionLabels, AreAllThereAndKeepOffEachOther) {
    for (const double turnDeg : {0.0, 40.0})
        expectReadableAtAllSizes(fixture::syntheticMeasurement(), turnDeg);
}

TEST(LongSectionLabels, KeepOffEachOtherInAShortAppendageToo) {
    const auto phantom = sample_case::makePhantom(sample_case::Shape::ShortWide, 2);
    core::AppendageOptions options;
    options.landingDepthsMm = {8.0};
    options.profileStepMm = 2.0;
    const core::AppendageMarks marks{phantom.marks.atrium, phantom.marks.tip, phantom.marks.circumflex, phantom.marks.ridge, {}, {}};
    const auto m = core::measureAppendage(phantom.rasterise(), marks, options);
    ASSERT_TRUE(m) << m.error().message;
    expectReadableAtAllSizes(*m, 0.0);
}
