// Painting text needs a GUI application. A command line has none and often no display either: for the
// lifetime of a GraphicsSession there is one, on the "offscreen" platform if it has to be made.
#pragma once

#include <QByteArray>
#include <memory>

class QGuiApplication;

namespace gauge::app {

class GraphicsSession {
public:
    /// Precondition: no QCoreApplication that is not a QGuiApplication exists.
    GraphicsSession();
    ~GraphicsSession();
    GraphicsSession(const GraphicsSession&) = delete;
    GraphicsSession& operator=(const GraphicsSession&) = delete;

private:
    std::unique_ptr<QGuiApplication> m_application; ///< null when one existed
    QByteArray m_platform;
    bool m_hadPlatform = false;
};

} // namespace gauge::app
