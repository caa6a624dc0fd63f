#include "tests/app/trial/sample_stage.h"

#include "app/document/sample_record.h"
#include "sample-data/case/sample_case.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QThread>
#include <stdexcept>
#include <unistd.h>

namespace gauge::trial {
namespace {

namespace fs = std::filesystem;

const sample_case::SampleCase& sample() {
    static const auto read = sample_case::readSampleCase(sample_case::builtInDescription());
    if (!read) throw std::runtime_error(read.error().message);
    return *read;
}

/// Made for the purpose; removed at the end.
struct MadeCase {
    fs::path folder = fs::temp_directory_path() / ("gauge-trial-case-" + std::to_string(getpid()));
    MadeCase() {
        if (const auto files = sample_case::writeSampleCase(sample(), folder); !files) throw std::runtime_error(files.error().message);
    }
    ~MadeCase() {
        std::error_code ignored;
        fs::remove_all(folder, ignored);
    }
};

} // namespace

const fs::path& sampleFolder() {
    static const fs::path folder = [] {
        if (const QString given = qEnvironmentVariable("GAUGE_SAMPLE_CASE"); !given.isEmpty()) return fs::path(given.toStdString());
        static const MadeCase made;
        return made.folder;
    }();
    return folder;
}

bool waitFor(const std::function<bool()>& done, int longestMs) {
    QElapsedTimer clock;
    clock.start();
    while (!done()) {
        if (clock.elapsed() > longestMs) return false;
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        QThread::msleep(2);
    }
    return true;
}

SampleCopy::SampleCopy() {
    const fs::path folder = m_folder.path().toStdString();
    for (const auto& entry : fs::directory_iterator(sampleFolder()))
        if (entry.path().filename() != "sample.case.json") fs::create_symlink(fs::absolute(entry.path()), folder / entry.path().filename());
    const auto file = app::writeSampleRecord(sample(), folder);
    if (!file) throw std::runtime_error(file.error().message);
}

bool settle(app::MainWindow& window) {
    constexpr int kQuietMs = 500;
    QElapsedTimer quiet;
    quiet.start();
    return waitFor([&] {
        if (window.isWorking()) quiet.restart();
        return quiet.elapsed() > kQuietMs;
    });
}

} // namespace gauge::trial
