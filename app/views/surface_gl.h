// Draws the surface by OpenGL 3.3 into a buffer of its own, beside the screen: tones and depths come back, and the picture is
// coloured from them as by the processor (surface_raster.h), so that both show the same and lines know what hides them.
//
// Beside the screen and not in a QOpenGLWidget: one such widget makes Qt compose the whole window by OpenGL, every section
// included, and its depths would have to come back all the same.
#pragma once

#include "app/drawing/surface_picture.h"

#include <QOffscreenSurface>
#include <QOpenGLContext>
#include <QOpenGLShaderProgram>
#include <QString>
#include <array>
#include <memory>

class QOpenGLExtraFunctions;

namespace gauge::app {

class SurfaceGl {
public:
    /// Null where no context of OpenGL 3.3 can be made; `why` then says what was missing. On the platforms "offscreen" and
    /// "minimal" none is tried. On the window's thread only.
    static std::unique_ptr<SurfaceGl> make(QString* why = nullptr);
    ~SurfaceGl();

    /// Null when it cannot be drawn (graphics memory, a lost context); `problem` tells.
    const SurfacePicture* draw(const SurfaceScene& scene, const SectionMap& map, const QSize& size, double ratio = 1.0);
    const QString& problem() const { return m_problem; }

    /// As the driver names itself.
    const QString& renderer() const { return m_renderer; }
    /// The driver draws on the processor itself: no faster than SurfaceRaster.
    bool isSoftware() const;

private:
    SurfaceGl() = default;
    /// A mesh in graphics memory.
    struct Held {
        std::uint64_t stamp = 0;
        unsigned array = 0, corners = 0, indices = 0;
        int count = 0;
        Eigen::Vector3f middle = Eigen::Vector3f::Zero();
        float radius = 0.0f;
    };

    bool start(QString* why);
    bool makeProgram(QString* why);
    bool makeBuffers(int width, int height);
    const Held& hold(const SurfaceScene& scene);
    void setCamera(const SurfaceScene& scene, const Held& held);
    void read();

    QOffscreenSurface m_surface;
    QOpenGLContext m_context;
    std::unique_ptr<QOpenGLShaderProgram> m_program;
    QOpenGLExtraFunctions* m_gl = nullptr;
    std::array<Held, 2> m_held; ///< the fine mesh and the coarse one
    std::size_t m_next = 0;
    unsigned m_frame = 0;
    std::array<unsigned, 3> m_buffers{}; ///< tones, depths in mm, depths to compare
    int m_width = 0, m_height = 0;
    SurfacePicture m_picture;
    QString m_renderer, m_problem;
};

} // namespace gauge::app
