// Input to pixels while a person scrolls depth, drags the ostium plane and moves the window: the long section and the
// cross-section of a 1280 x 800 window on a volume of 512 x 512 x 400, painted without a screen. A frame is one event and
// the repaints that follow from it.
#include "app/views/cross_section_view.h"
#include "app/views/long_section_view.h"
#include "tests/app/support/synthetic_session.h"
#include "tests/bench/report.h"

#include <QApplication>
#include <QImage>
#include <QMouseEvent>
#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <functional>

namespace {

using namespace gauge;
using namespace gauge::app;

/// The synthetic case, its anatomy in the middle of a volume of full size.
LoadedImages bigImages() {
    LoadedImages images = fixture::syntheticImages();
    const Eigen::Vector3i size(512, 512, 400);
    std::vector<std::int16_t> voxels(std::size_t{512} * 512 * 400);
    for (std::size_t i = 0; i < voxels.size(); ++i)
        voxels[i] = static_cast<std::int16_t>((i * 2654435761u >> 9) % 1200);
    Eigen::Affine3d placement = Eigen::Affine3d::Identity();
    placement.linear() = Eigen::Vector3d(0.4, 0.4, 0.5).asDiagonal();
    placement.translation() = Eigen::Vector3d(-102, -102, -100);
    images.ct.volume = core::Volume::make(size, std::move(voxels), placement, core::VoxelQuantity::HounsfieldUnits,
                                          images.ct.volume->frameOfReferenceUid())
                           .value();
    return images;
}

struct Stage {
    Session session;
    ViewState state;
    LongSectionView longSection{session, state};
    CrossSectionView cross{session, state};
    QImage longPixels{768, 560, QImage::Format_RGB32}, crossPixels{512, 560, QImage::Format_RGB32};

    Stage() {
        session.setEngine(fixture::syntheticEngine());
        session.open(bigImages());
        const auto marks = fixture::syntheticMarks();
        session.placeMark(core::MarkKind::Atrium, marks.atrium);
        session.placeMark(core::MarkKind::Tip, marks.tip);
        fixture::waitUntil([&] { return session.measurement() && !session.isMeasuring(); });
        longSection.resize(longPixels.size());
        cross.resize(crossPixels.size());
        longSection.resetView();
    }
    /// Both views, whether they changed or not.
    void paint() {
        longSection.render(&longPixels);
        cross.render(&crossPixels);
    }
    void mouse(QEvent::Type type, const QPointF& at) {
        const auto button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
        QMouseEvent event(type, at, at, button, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&longSection, &event);
    }
};

void frames(benchmark::State& state, const std::string& name, const std::function<void(Stage&, int)>& input) {
    Stage stage;
    std::vector<double> ms;
    int frame = 0;
    for (auto _ : state) {
        const auto start = std::chrono::steady_clock::now();
        input(stage, frame++);
        QCoreApplication::processEvents();
        stage.paint();
        const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
        ms.push_back(1e3 * seconds);
        state.SetIterationTime(seconds);
    }
    std::sort(ms.begin(), ms.end());
    const auto at = static_cast<std::size_t>(0.95 * static_cast<double>(ms.size() - 1));
    bench::reportLine(name + ", 95 % of frames", ms[at], "ms", 16.0);
    bench::reportLine(name + ", longest frame", ms.back(), "ms", 50.0);
}

void scrollDepth(benchmark::State& state) {
    frames(state, "scroll depth", [](Stage& stage, int frame) { stage.state.showDepth(2.0 + 0.5 * (frame % 50)); });
}
BENCHMARK(scrollDepth)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(100);

void dragPlane(benchmark::State& state) {
    frames(state, "drag the ostium plane", [](Stage& stage, int frame) {
        const QPointF at = stage.longSection.map()->fromPatient(stage.session.measurement()->ostium.section.center);
        if (frame == 0) stage.mouse(QEvent::MouseButtonPress, at);
        stage.mouse(QEvent::MouseMove, at + QPointF(frame % 40, 0));
    });
}
BENCHMARK(dragPlane)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(100);

void dragWindow(benchmark::State& state) {
    frames(state, "move the window", [](Stage& stage, int frame) { stage.state.setWindow({100.0 + frame, 800.0}); });
}
BENCHMARK(dragWindow)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(100);

void turnLongSection(benchmark::State& state) {
    frames(state, "turn the long section", [](Stage& stage, int frame) { stage.state.setTurnDeg(2.0 * frame); });
}
BENCHMARK(turnLongSection)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(100);

} // namespace
