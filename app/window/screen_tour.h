// A tour through the program on the teaching case, with a picture of each page and mode. Needs a QApplication.
#pragma once

#include "core/result.h"

#include <QSize>
#include <QString>
#include <vector>

namespace gauge::app {

struct Screen {
    QString file; ///< in the folder
    QString page; ///< "start", "appendage", "scanner", …, "settings", "help"
    QString mode; ///< "reading", "meeting"
    QSize size;   ///< of the picture, pixels
};

/// Opens CASE/dicom, waits until it is measured and judged, and writes NAME.png (or NAME@2x.png).
/// @errors FileUnreadable where the case cannot be opened, SectionNotFound where it is not measured within three minutes
/// (the message repeats the program's own), OutputUnwritable naming the picture.
core::Result<std::vector<Screen>> takeScreens(const QString& caseFolder, const QString& folder, double scale);

} // namespace gauge::app
