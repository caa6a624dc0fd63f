#include "app/views/surface_drawer.h"

#include <QLoggingCategory>

namespace gauge::app {

Q_LOGGING_CATEGORY(surfaceLog, "ostium-gauge.surface")

void SurfaceDrawer::setWish(const QString& wish) {
    m_wish = wish;
    m_decided = false;
    m_gl.reset();
    m_drawn = nullptr;
}

void SurfaceDrawer::decide() {
    m_decided = true;
    if (m_wish == QLatin1String("processor")) return;
    QString why;
    m_gl = SurfaceGl::make(&why);
    if (!m_gl)
        qCInfo(surfaceLog) << "The processor draws the surface:" << why;
    else if (m_gl->isSoftware() && m_wish != QLatin1String("opengl"))
        m_gl.reset(); // no faster, and a copy more
}

const SurfacePicture& SurfaceDrawer::draw(const SurfaceScene& scene, const SectionMap& map, const QSize& size, double ratio) {
    const Request request{scene, map, size, ratio};
    if (!m_drawn || scene.stamp == 0 || request != m_last) {
        m_drawn = &drawNow(request);
        m_last = request;
        ++m_pictures;
    }
    return *m_drawn;
}

const SurfacePicture& SurfaceDrawer::drawNow(const Request& request) {
    if (!m_decided) decide();
    if (m_gl) {
        if (const SurfacePicture* picture = m_gl->draw(request.scene, request.map, request.size, request.ratio)) return *picture;
        qCWarning(surfaceLog) << "The processor draws the surface from here on:" << m_gl->problem();
        m_gl.reset();
    }
    return m_raster.draw(request.scene, request.map, request.size, request.ratio);
}

} // namespace gauge::app
