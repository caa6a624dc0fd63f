// The real window, 1280 x 800, on the sample case without a display, and the clock of its frames. The case is taken from the
// folder named in GAUGE_SAMPLE_CASE (made by `ostium-gauge sample FOLDER`); without one it is made for the purpose.
//
// A frame is one event of the person and everything that follows from it on the window's thread until its pixels are painted.
#pragma once

#include "app/window/main_window.h"

#include <QEvent>
#include <QPointF>
#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace gauge::bench {

/// Of one frame: on the wall, and processor time of the window's own thread (what a busy machine does not stretch). Work that
/// the window's thread shares out to others counts in full on the wall, and with its own part in processor time.
struct FrameTime {
    double wallMs = 0.0, cpuMs = 0.0;
};

/// Keeps a line for the table: how long half and 95 % of the frames took at most, and the longest.
void reportFrames(const std::string& name, std::vector<FrameTime> frames);
/// Prints the table and the machine's load.
void printFrames();

/// Processor time of the calling thread so far, s.
double threadSeconds();

/// Folder of the sample case. Throws std::runtime_error when it can neither be found nor made.
const std::filesystem::path& sampleFolder();

class WindowStage {
public:
    enum class Images {
        Sample,  ///< as they are, opened as a person would: with echo and X-ray
        FullSize ///< the CT alone, set into a volume of 512 x 512 x 400
    };
    /// Opens, waits until all is measured and judged, and shows the appendage. Throws std::runtime_error when that fails.
    explicit WindowStage(Images images);

    app::MainWindow& window() { return m_window; }
    app::Session& session() { return m_window.session(); }
    app::ViewState& state() { return m_window.state(); }
    /// The first one of its kind that is on screen. Throws when there is none.
    template <class View> View& shown();

    FrameTime frame(const std::function<void()>& event);
    /// Lets the window work until nothing has run for a moment.
    void settle();
    /// Frames since the last call in which no widget was painted.
    int takeUnpainted();

    static void mouse(QWidget& view, QEvent::Type type, const QPointF& at, Qt::MouseButton held = Qt::LeftButton);
    static void wheel(QWidget& view, const QPointF& at, int notches);

private:
    void openFullSize();

    app::MainWindow m_window;
    int m_unpainted = 0;
};

// ---------------------------------------------------------------------------------------------------------------------

[[noreturn]] void missing(const char* what);

template <class View> View& WindowStage::shown() {
    for (View* view : m_window.findChildren<View*>())
        if (view->isVisible()) return *view;
    missing(View::staticMetaObject.className());
}

} // namespace gauge::bench
