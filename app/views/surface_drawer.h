// Who draws the surface: OpenGL where there is graphics hardware, else the processor. Both draw the same picture. What was drawn
// last is kept: lines over an unmoved surface need no new one.
#pragma once

#include "app/drawing/surface_raster.h"
#include "app/views/surface_gl.h"

#include <memory>

namespace gauge::app {

class SurfaceDrawer {
public:
    /// "opengl": also where the driver draws on the processor; "processor": never by OpenGL; anything else: the program decides.
    /// Where OpenGL is wished and cannot be had, the processor draws.
    void setWish(const QString& wish);
    const SurfacePicture& draw(const SurfaceScene& scene, const SectionMap& map, const QSize& size, double ratio);
    /// Known after the first picture.
    bool usesOpenGl() const { return m_gl != nullptr; }
    /// How many pictures were drawn, and how long the last one took, ms.
    int pictures() const { return m_pictures; }
    double lastMs() const { return m_lastMs; }

private:
    struct Wanted {
        std::uint64_t stamp = 0;
        std::optional<core::Plane> cut;
        SectionMap map;
        QSize size;
        double ratio = 0.0;
    };
    static bool same(const Wanted& a, const Wanted& b);
    void decide();
    const SurfacePicture& drawNew(const SurfaceScene& scene, const Wanted& wanted);

    QString m_wish;
    bool m_decided = false;
    std::unique_ptr<SurfaceGl> m_gl;
    SurfaceRaster m_raster;
    const SurfacePicture* m_picture = nullptr; ///< of m_last; held by who drew it
    Wanted m_last;
    int m_pictures = 0;
    double m_lastMs = 0.0;
};

} // namespace gauge::app
