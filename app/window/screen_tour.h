// A tour through the program on a case, with a picture of each page, panel and mode. Needs a QApplication.
#pragma once

#include "core/result.h"

#include <QImage>
#include <QSize>
#include <QString>
#include <QStringList>
#include <vector>

class QWidget;

namespace gauge::app {

struct Screen {
    QString file;  ///< in the folder
    QString page;  ///< "start", "appendage", "scanner", …, "settings", "help"
    QString mode;  ///< "reading", "meeting"
    QString theme; ///< "dark", "light"
    double scale = 1.0;
    QSize size;    ///< of the picture, pixels
};

struct Tour {
    QString caseFolder; ///< with sample.case.json, or with images
    QString folder;     ///< that the pictures go to
    std::vector<double> scales{1.0, 2.0};
    QStringList themes{QStringLiteral("dark"), QStringLiteral("light")}; ///< the first one whole, of the others the pages
    bool forHelp = false; ///< instead: the pictures of the help pages, TOPIC.png, small
};

/// Loads the case once, in one window; waits until it is measured and judged; writes NAME.png, NAME@2x.png, light-NAME.png …
/// @errors FileUnreadable where the case cannot be opened, SectionNotFound where it is not measured within three minutes
/// (the message repeats the program's own), OutputUnwritable naming the picture.
core::Result<std::vector<Screen>> takeScreens(const Tour& tour);

/// The widget as it is on screen, `scale` pixels to one of its own. Letters and lines are drawn anew, not enlarged.
QImage pictureOf(QWidget& widget, double scale);

} // namespace gauge::app
