#include "app/report/graphics_session.h"

#include <QGuiApplication>

namespace gauge::app {
namespace {

constexpr auto kPlatformVariable = "QT_QPA_PLATFORM";
// QGuiApplication keeps references to both for as long as it lives.
int s_argumentCount = 1;
char s_programName[] = "ostium-gauge";
char* s_arguments[] = {s_programName, nullptr};

} // namespace

GraphicsSession::GraphicsSession() {
    if (QCoreApplication::instance()) return;
    m_hadPlatform = qEnvironmentVariableIsSet(kPlatformVariable);
    m_platform = qgetenv(kPlatformVariable);
    qputenv(kPlatformVariable, "offscreen");
    m_application = std::make_unique<QGuiApplication>(s_argumentCount, s_arguments);
}

GraphicsSession::~GraphicsSession() {
    if (!m_application) return;
    m_application.reset();
    if (m_hadPlatform)
        qputenv(kPlatformVariable, m_platform);
    else
        qunsetenv(kPlatformVariable);
}

} // namespace gauge::app
