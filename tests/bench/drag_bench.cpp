// Input to pixels while a person scrolls depth, drags the ostium plane, moves the window and turns the long section: the whole
// window of 1280 x 800, every view and panel of it, on a volume of 512 x 512 x 400.
#include "app/views/cross_section_view.h"
#include "app/views/long_section_view.h"
#include "tests/bench/window_stage.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <benchmark/benchmark.h>

namespace {

using namespace gauge;
using namespace gauge::app;
using bench::WindowStage;

constexpr int kFrames = 120;

WindowStage& stage() {
    static auto& made = *new WindowStage(WindowStage::Images::FullSize); // the application ends first
    return made;
}

/// `input` acts for each frame; a frame that painted nothing is an error.
void frames(benchmark::State& state, const std::string& name, const std::function<void(WindowStage&, int)>& input) {
    stage().settle();
    stage().takeUnpainted();
    std::vector<bench::FrameTime> times;
    int frame = 0;
    for (auto _ : state) {
        times.push_back(stage().frame([&] { input(stage(), frame); }));
        state.SetIterationTime(1e-3 * times.back().wallMs);
        ++frame;
    }
    if (const int unpainted = stage().takeUnpainted(); unpainted > frame / 20)
        state.SkipWithError((std::to_string(unpainted) + " frames painted nothing").c_str());
    bench::reportFrames(name, std::move(times));
    stage().session().dropPreviews();
}

/// There and back again: 0 … 30 … 0.
double swing(int frame) {
    const int at = frame % 60;
    return at <= 30 ? at : 60 - at;
}

void scrollDepth(benchmark::State& state) {
    frames(state, "scroll depth", [](WindowStage& on, int frame) { on.state().showDepth(2.0 + 0.5 * swing(frame)); });
}
BENCHMARK(scrollDepth)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(kFrames);

void dragPlane(benchmark::State& state) {
    auto& view = stage().shown<LongSectionView>();
    stage().state().showOstium();
    const QPointF from = view.map()->fromPatient(stage().session().measurement()->ostium.section.center);
    frames(state, "drag the ostium plane", [&](WindowStage&, int frame) {
        if (frame == 0) WindowStage::mouse(view, QEvent::MouseButtonPress, from);
        WindowStage::mouse(view, QEvent::MouseMove, from + QPointF(0.5 + swing(frame), 0.3 * swing(frame)));
    });
    QKeyEvent escape(QEvent::KeyPress, Qt::Key_Escape, Qt::NoModifier); // nothing is recorded
    QCoreApplication::sendEvent(&view, &escape);
    WindowStage::mouse(view, QEvent::MouseButtonRelease, from);
}
BENCHMARK(dragPlane)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(kFrames);

void dragWindow(benchmark::State& state) {
    frames(state, "move the window", [](WindowStage& on, int frame) { on.state().setWindow({100.0 + 5.0 * swing(frame), 800.0}); });
}
BENCHMARK(dragWindow)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(kFrames);

void turnLongSection(benchmark::State& state) {
    frames(state, "turn the long section", [](WindowStage& on, int frame) { on.state().setTurnDeg(2.0 * swing(frame)); });
}
BENCHMARK(turnLongSection)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(kFrames);

} // namespace
