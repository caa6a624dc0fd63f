#include "app/views/surface_drawer.h"

#include <QElapsedTimer>
#include <QLoggingCategory>

namespace gauge::app {

Q_LOGGING_CATEGORY(surfaceLog, "ostium-gauge.surface")

void SurfaceDrawer::setWish(const QString& wish) {
    m_wish = wish;
    m_decided = false;
    m_picture = nullptr;
    m_gl.reset();
}

bool SurfaceDrawer::same(const Wanted& a, const Wanted& b) {
    const auto &f = a.map.frame, &g = b.map.frame;
    const bool cuts = a.cut.has_value() == b.cut.has_value() &&
                      (!a.cut || (a.cut->point.mm == b.cut->point.mm && a.cut->normal.mm == b.cut->normal.mm));
    return a.stamp != 0 && a.stamp == b.stamp && cuts && f.origin.mm == g.origin.mm && f.u.mm == g.u.mm && f.v.mm == g.v.mm &&
           f.normal.mm == g.normal.mm && a.map.zero == b.map.zero && a.map.pixelsPerMm == b.map.pixelsPerMm && a.size == b.size &&
           a.ratio == b.ratio;
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
    if (!m_decided) decide();
    const Wanted wanted{scene.stamp, scene.cut, map, size, ratio};
    if (m_picture && same(wanted, m_last)) return *m_picture;
    QElapsedTimer clock;
    clock.start();
    m_picture = &drawNew(scene, wanted);
    m_lastMs = 1e-6 * static_cast<double>(clock.nsecsElapsed());
    m_last = wanted;
    ++m_pictures;
    return *m_picture;
}

const SurfacePicture& SurfaceDrawer::drawNew(const SurfaceScene& scene, const Wanted& wanted) {
    if (m_gl) {
        if (const SurfacePicture* picture = m_gl->draw(scene, wanted.map, wanted.size, wanted.ratio)) return *picture;
        qCWarning(surfaceLog) << "The processor draws the surface from here on:" << m_gl->problem();
        m_gl.reset();
    }
    return m_raster.draw(scene, wanted.map, wanted.size, wanted.ratio);
}

} // namespace gauge::app
