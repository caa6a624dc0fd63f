// Who draws the surface: OpenGL where there is graphics hardware, else the processor. Both draw the same picture.
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

private:
    void decide();

    QString m_wish;
    bool m_decided = false;
    std::unique_ptr<SurfaceGl> m_gl;
    SurfaceRaster m_raster;
};

} // namespace gauge::app
