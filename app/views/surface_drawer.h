// Who draws the surface: OpenGL where there is graphics hardware, else the processor. Both draw the same picture. A picture that
// was just drawn is not drawn again: while depth is scrolled or a plane dragged only the lines over it move.
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
    /// Valid until the next call. A scene with a stamp is drawn again only when anything of it or the view has changed.
    const SurfacePicture& draw(const SurfaceScene& scene, const SectionMap& map, const QSize& size, double ratio);
    /// How many pictures were drawn, those given a second time not counted.
    int pictures() const { return m_pictures; }
    /// Known after the first picture.
    bool usesOpenGl() const { return m_gl != nullptr; }

private:
    struct Request {
        SurfaceScene scene;
        SectionMap map;
        QSize size;
        double ratio = 1.0;
        bool operator==(const Request&) const = default;
    };

    void decide();
    const SurfacePicture& drawNow(const Request& request);

    QString m_wish;
    bool m_decided = false;
    std::unique_ptr<SurfaceGl> m_gl;
    SurfaceRaster m_raster;
    int m_pictures = 0;
    Request m_last;
    const SurfacePicture* m_drawn = nullptr; ///< of m_last; owned by m_gl or m_raster
};

} // namespace gauge::app
