// The window on the whole sample case: CT, echo views of both moments, a 3D echo, Doppler, X-ray runs. Its images are taken from
// the folder named in GAUGE_SAMPLE_CASE (made by `ostium-gauge sample FOLDER`); without one they are made once, for the purpose.
#pragma once

#include "app/window/main_window.h"

#include <QTemporaryDir>
#include <filesystem>
#include <functional>

namespace gauge::trial {

/// Folder of the sample case's images and answers; not to be written into.
const std::filesystem::path& sampleFolder();

/// Runs the event loop until `done` or `longestMs` have passed; true when done.
bool waitFor(const std::function<bool()>& done, int longestMs = 180'000);

/// A folder of its own with the sample case as `ostium-gauge sample` writes it: the case file, and the images by a link.
class SampleCopy {
public:
    SampleCopy();
    QString folder() const { return m_folder.path(); }
    QString caseFile() const { return m_folder.filePath(QStringLiteral("sample.case.json")); }

private:
    QTemporaryDir m_folder;
};

/// Until everything is loaded, measured and judged, and nothing has run for half a second.
bool settle(app::MainWindow& window);

} // namespace gauge::trial
