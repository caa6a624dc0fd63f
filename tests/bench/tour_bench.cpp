// A recorded tour: what a person does with the sample case, gesture by gesture, replayed through the real window. Each event is
// one frame; no frame may take longer than 50 ms.
#include "app/document/load_images.h"
#include "app/interaction/plane_handles.h"
#include "app/views/cine_view.h"
#include "app/views/cross_section_view.h"
#include "app/views/depth_strip_view.h"
#include "app/views/echo_page.h"
#include "app/views/long_section_view.h"
#include "app/views/scanner_section_view.h"
#include "app/views/surface_view.h"
#include "tests/bench/report.h"
#include "tests/bench/window_stage.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <stdexcept>

namespace {

using namespace gauge;
using namespace gauge::app;
using bench::WindowStage;

constexpr int kMoves = 60;
constexpr double kPlaneHalfMm = 7.0; // beyond the ostium's half width: where the long section draws the handles at the ends

WindowStage& stage() {
    static auto& made = *new WindowStage(WindowStage::Images::Sample); // the application ends first
    return made;
}

enum class On { LongSection, CrossSection, Surface, Strip, Scanner, Echo };
enum class Does {
    Wheel,  ///< one notch each event, there and back
    Hover,  ///< the pointer passes over the view
    Drag,   ///< left button, from the place to the place + way and back
    Window, ///< right button
    Play    ///< a cine, frame after frame
};
enum class From { Middle, OstiumHandle, OstiumEnd, Landing, Edge };

/// One gesture of the record.
struct Gesture {
    const char* name;
    Page page;
    On on;
    Does does;
    From from;
    QPointF way;
};

const Gesture kTour[] = {
    {"tour: hover over the long section", Page::Appendage, On::LongSection, Does::Hover, From::Middle, {200, 90}},
    {"tour: scroll depth", Page::Appendage, On::CrossSection, Does::Wheel, From::Middle, {}},
    {"tour: drag the ostium plane", Page::Appendage, On::LongSection, Does::Drag, From::OstiumHandle, {24, 3}},
    {"tour: tilt the ostium plane", Page::Appendage, On::LongSection, Does::Drag, From::OstiumEnd, {30, 6}},
    {"tour: drag the landing zone", Page::Appendage, On::LongSection, Does::Drag, From::Landing, {60, 0}},
    {"tour: turn the long section", Page::Appendage, On::LongSection, Does::Drag, From::Edge, {0, 90}},
    {"tour: move the window", Page::Appendage, On::CrossSection, Does::Window, From::Middle, {60, 40}},
    {"tour: turn the surface", Page::Appendage, On::Surface, Does::Drag, From::Middle, {90, 40}},
    {"tour: hover over the depth strip", Page::Appendage, On::Strip, Does::Hover, From::Middle, {200, 0}},
    {"tour: scroll scanner sections", Page::Scanner, On::Scanner, Does::Wheel, From::Middle, {}},
    {"tour: play a cine", Page::Echo, On::Echo, Does::Play, From::Middle, {}},
};

QWidget& viewOf(On on) {
    switch (on) {
    case On::LongSection:
        return stage().shown<LongSectionView>();
    case On::CrossSection:
        return stage().shown<CrossSectionView>();
    case On::Surface:
        return stage().shown<SurfaceView>();
    case On::Strip:
        return stage().shown<DepthStripView>();
    case On::Scanner:
        return stage().shown<ScannerSectionView>();
    case On::Echo:
        break;
    }
    return stage().shown<EchoPage>();
}

QPointF placeOf(const Gesture& gesture, QWidget& view) {
    if (gesture.from == From::Middle) return QRectF(view.rect()).center();
    if (gesture.from == From::Edge) return {view.width() - 40.0, 60.0};
    const auto map = stage().shown<LongSectionView>().map();
    if (!map) throw std::runtime_error("The long section is empty.");
    const auto& measured = *stage().session().measurement();
    if (gesture.from == From::Landing) return map->fromPatient(core::axisPointAt(measured, stage().session().landing()->depthMm));
    const auto handles = PlaneHandles::on(*map, *stage().session().ostiumPlane(),
                                          0.5 * measured.ostium.section.metrics.longestDiameterMm.value + kPlaneHalfMm);
    if (!handles) throw std::runtime_error("The ostium plane has no handles in the long section.");
    return gesture.from == From::OstiumEnd ? handles->places()[0] : handles->middle();
}

double swing(int at, int count) {
    const double share = 2.0 * at / count;
    return share <= 1.0 ? share : 2.0 - share;
}

void event(const Gesture& gesture, QWidget& view, const QPointF& from, int at) {
    const Qt::MouseButton button = gesture.does == Does::Window ? Qt::RightButton : Qt::LeftButton;
    const QPointF to = from + gesture.way * swing(at + 1, kMoves);
    switch (gesture.does) {
    case Does::Wheel:
        return WindowStage::wheel(view, from, at < kMoves / 2 ? -1 : 1);
    case Does::Hover:
        return WindowStage::mouse(view, QEvent::MouseMove, to, Qt::NoButton);
    case Does::Play: {
        CineView* cine = stage().shown<EchoPage>().activeView();
        if (!cine || !cine->data()) throw std::runtime_error("No cine is open on the echo page.");
        return cine->player().advance(1000.0 / 25.0);
    }
    case Does::Drag:
    case Does::Window:
        if (at == 0) WindowStage::mouse(view, QEvent::MouseButtonPress, from, button);
        WindowStage::mouse(view, QEvent::MouseMove, to, button);
        if (at + 1 == kMoves) WindowStage::mouse(view, QEvent::MouseButtonRelease, to, button);
    }
}

void replay(benchmark::State& state, const Gesture& gesture) {
    stage().state().setPage(gesture.page);
    if (gesture.page == Page::Appendage) stage().state().showOstium();
    stage().settle();
    QWidget& view = viewOf(gesture.on);
    const QPointF from = placeOf(gesture, view);
    stage().takeUnpainted();
    std::vector<bench::FrameTime> times;
    int at = 0;
    for (auto _ : state) {
        times.push_back(stage().frame([&] { event(gesture, view, from, at); }));
        state.SetIterationTime(1e-3 * times.back().wallMs);
        ++at;
    }
    if (const int unpainted = stage().takeUnpainted(); unpainted > kMoves / 4) // the pointer may rest, a cine's frame last longer
        state.SkipWithError((std::to_string(unpainted) + " of " + std::to_string(at) + " frames painted nothing").c_str());
    bench::reportFrames(gesture.name, std::move(times));
    stage().settle(); // a moved plane is measured again
}

const bool registered = [] {
    for (const Gesture& gesture : kTour)
        benchmark::RegisterBenchmark(gesture.name, [&gesture](benchmark::State& state) { replay(state, gesture); })
            ->UseManualTime()
            ->Unit(benchmark::kMillisecond)
            ->Iterations(kMoves);
    return true;
}();

/// From a series on disk (its index is known) to the first picture, against all of it loaded.
void firstPictureOfASeries(benchmark::State& state) {
    const auto opened = loadFolder(bench::sampleFolder() / "dicom", {});
    if (!opened) throw std::runtime_error(opened.error().message);
    std::vector<double> ms;
    for (auto _ : state) {
        const auto start = std::chrono::steady_clock::now();
        auto images = loadPhase(opened->index, opened->series, opened->phase, {});
        if (!images) throw std::runtime_error(images.error().message);
        const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
        state.SetIterationTime(seconds);
        ms.push_back(1e3 * seconds);
    }
    std::sort(ms.begin(), ms.end());
    bench::reportLine("sample case: one phase loaded (the first picture follows it)", ms[ms.size() / 2], "ms", 500.0);
}
BENCHMARK(firstPictureOfASeries)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(5);

} // namespace
