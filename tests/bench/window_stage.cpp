#include "tests/bench/window_stage.h"

#include "app/document/load_images.h"
#include "app/document/teaching_case.h"
#include "core/volume/volume.h"
#include "sample-data/case/sample_case.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QMouseEvent>
#include <QWheelEvent>
#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <stdexcept>
#include <unistd.h>
#include <utility>

namespace gauge::bench {
namespace {

namespace fs = std::filesystem;
using namespace gauge::app;

/// Counts what is painted.
class PaintCounter : public QObject {
public:
    int count = 0;
    bool eventFilter(QObject*, QEvent* event) override {
        count += event->type() == QEvent::Paint;
        return false;
    }
};

PaintCounter& paints() {
    static auto* counter = [] {
        auto* made = new PaintCounter;
        made->setParent(qApp);
        qApp->installEventFilter(made);
        return made;
    }();
    return *counter;
}

/// The sample case made for the purpose; removed at the end.
struct MadeCase {
    fs::path folder = fs::temp_directory_path() / ("gauge-bench-case-" + std::to_string(getpid()));
    MadeCase() {
        const auto sample = sample_case::readSampleCase(sample_case::builtInDescription());
        if (!sample) throw std::runtime_error(sample.error().message);
        if (const auto files = sample_case::writeSampleCase(*sample, folder); !files)
            throw std::runtime_error(files.error().message);
    }
    ~MadeCase() {
        std::error_code ignored;
        fs::remove_all(folder, ignored);
    }
};

/// The volume in the middle of one of 512 x 512 x 400, air around it.
std::shared_ptr<const core::Volume> setIntoFullSize(const core::Volume& volume) {
    constexpr std::int16_t kAir = -1000;
    const Eigen::Vector3i size(512, 512, 400), inner = volume.size().cwiseMin(size), first = (size - inner) / 2;
    std::vector<std::int16_t> voxels(std::size_t{512} * 512 * 400, kAir);
    for (int k = 0; k < inner.z(); ++k)
        for (int j = 0; j < inner.y(); ++j)
            std::copy_n(&volume.data()[static_cast<std::ptrdiff_t>(volume.size().x()) * (j + static_cast<std::ptrdiff_t>(volume.size().y()) * k)],
                        inner.x(), voxels.begin() + first.x() + 512 * ((first.y() + j) + std::ptrdiff_t{512} * (first.z() + k)));
    Eigen::Affine3d placement = volume.patientFromVoxel();
    placement.translate(-first.cast<double>());
    return core::Volume::make(size, std::move(voxels), placement, volume.quantity(), volume.frameOfReferenceUid()).value();
}

constexpr double kShares[] = {0.5, 0.95, 1.0}, kUsualGoalMs = 16.0, kLongestGoalMs = 50.0;

struct FrameLine {
    std::string name;
    std::array<double, 3> wall{}, cpu{}; ///< kShares of the frames are no longer, ms
};

std::vector<FrameLine>& frameLines() {
    static std::vector<FrameLine> all;
    return all;
}

double wallMs() {
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

} // namespace

double threadSeconds() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

void missing(const char* what) {
    throw std::runtime_error(std::string("No ") + what + " is on screen.");
}

void reportFrames(const std::string& name, std::vector<FrameTime> frames) {
    if (frames.empty()) return;
    FrameLine line{name, {}, {}};
    const auto fill = [&](std::array<double, 3>& into, auto member) {
        std::sort(frames.begin(), frames.end(), [&](const FrameTime& a, const FrameTime& b) { return a.*member < b.*member; });
        for (std::size_t i = 0; i < into.size(); ++i)
            into[i] = frames[static_cast<std::size_t>(kShares[i] * static_cast<double>(frames.size() - 1))].*member;
    };
    fill(line.wall, &FrameTime::wallMs);
    fill(line.cpu, &FrameTime::cpuMs);
    auto& all = frameLines();
    std::erase_if(all, [&](const FrameLine& one) { return one.name == name; });
    all.push_back(line);
}

void printFrames() {
    double load[3] = {};
    if (getloadavg(load, 3) != 3) load[0] = -1.0;
    std::printf("\nFrames, ms (goal: 95 %% within %.0f, none over %.0f)              wall: half   95 %%    all   its thread: half   95 %%    all\n",
                kUsualGoalMs, kLongestGoalMs);
    for (const FrameLine& l : frameLines())
        std::printf("%-58s %12.1f %6.1f %6.1f %19.1f %6.1f %6.1f%s\n", l.name.c_str(), l.wall[0], l.wall[1], l.wall[2], l.cpu[0], l.cpu[1],
                    l.cpu[2], l.wall[1] <= kUsualGoalMs && l.wall[2] <= kLongestGoalMs ? "" : "   MISSED");
    std::printf("Load of the machine at the end (1 minute): %.1f\n", load[0]);
}

const fs::path& sampleFolder() {
    static const fs::path folder = [] {
        if (const QString given = qEnvironmentVariable("GAUGE_SAMPLE_CASE"); !given.isEmpty()) return fs::path(given.toStdString());
        static const MadeCase made;
        return made.folder;
    }();
    return folder;
}

WindowStage::WindowStage(Images images) {
    paints();
    m_window.resize(1280, 800);
    m_window.show();
    settle();
    if (images == Images::Sample)
        m_window.openFolder(QString::fromStdString((sampleFolder() / "dicom").string()));
    else
        openFullSize();
    settle();
    if (!session().measurement())
        throw std::runtime_error("The sample case in " + sampleFolder().string() + " was not measured: " +
                                 session().message().text.toStdString());
    state().setPage(Page::Appendage);
    settle();
}

void WindowStage::openFullSize() {
    auto loaded = loadFolder(sampleFolder() / "dicom", {});
    if (!loaded) throw std::runtime_error(loaded.error().message);
    loaded->ct.volume = setIntoFullSize(*loaded->ct.volume);
    const auto marks = findTeachingMarks(sampleFolder() / "dicom", loaded->ct.phasePercent.value_or(45.0));
    if (!marks || !*marks) throw std::runtime_error("The sample case has no answers.json with its marks.");
    session().open(std::move(*loaded));
    for (const auto& [kind, point] : (*marks)->points)
        session().placeMark(kind, point);
}

void WindowStage::settle() {
    constexpr int kLongestMs = 180'000, kQuietMs = 500;
    QElapsedTimer whole, quiet;
    whole.start();
    quiet.start();
    while (whole.elapsed() < kLongestMs && quiet.elapsed() < kQuietMs) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        if (session().isLoading() || session().isMeasuring() || m_window.answers().isWorking()) quiet.restart();
    }
}

FrameTime WindowStage::frame(const std::function<void()>& event) {
    const int before = paints().count;
    const double wall = wallMs(), cpu = threadSeconds();
    event();
    QCoreApplication::processEvents();
    const FrameTime time{wallMs() - wall, 1e3 * (threadSeconds() - cpu)};
    m_unpainted += paints().count == before;
    return time;
}

int WindowStage::takeUnpainted() {
    return std::exchange(m_unpainted, 0);
}

void WindowStage::mouse(QWidget& view, QEvent::Type type, const QPointF& at, Qt::MouseButton held) {
    const auto button = type == QEvent::MouseMove ? Qt::NoButton : held;
    const auto buttons = type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::MouseButtons(held);
    QMouseEvent event(type, at, view.mapToGlobal(at), button, buttons, Qt::NoModifier);
    QCoreApplication::sendEvent(&view, &event);
}

void WindowStage::wheel(QWidget& view, const QPointF& at, int notches) {
    QWheelEvent event(at, view.mapToGlobal(at), {}, {0, 120 * notches}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(&view, &event);
}

} // namespace gauge::bench
