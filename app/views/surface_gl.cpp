#include "app/views/surface_gl.h"

#include <QGuiApplication>
#include <QOpenGLExtraFunctions>
#include <cstddef>
#include <utility>
#include <vector>

namespace gauge::app {
namespace {

struct Corner {
    float point[3], normal[3], beyond;
};

/// As SurfaceRaster::projectCorners: the picture's first row is the frame's lowest.
constexpr auto kCornerShader = R"(#version 330 core
layout(location = 0) in vec3 point;
layout(location = 1) in vec3 normal;
layout(location = 2) in float beyond;
uniform mat3 axes;        // rows: right, down, away
uniform vec3 origin;
uniform vec3 toPixel;     // zero x, zero y, pixels per mm
uniform vec2 size;        // pixels
uniform vec2 range;       // nearest and farthest depth, mm
uniform vec4 cut;         // what lies above 0 is left out
uniform vec3 lamp;
uniform vec3 between;
uniform vec4 shares;      // base, lamp, facing, gloss
out float depth, front, back, side, cutAt;

float light(vec3 n) {
    float g = max(0.0, dot(n, between));
    float g2 = g * g, g4 = g2 * g2, g8 = g4 * g4;
    return min(1.0, shares.x + shares.y * max(0.0, dot(n, lamp)) + shares.z * max(0.0, -n.z) + shares.w * g8 * g8 * g8);
}

void main() {
    vec3 p = axes * (point - origin);
    vec3 n = axes * normal;
    depth = p.z;
    front = light(n);
    back = light(-n);
    side = beyond;
    cutAt = dot(cut.xyz, point) + cut.w;
    vec2 pixel = toPixel.xy + toPixel.z * p.xy;
    gl_Position = vec4(2.0 * pixel / size - 1.0, 2.0 * (depth - range.x) / (range.y - range.x) - 1.0, 1.0);
}
)";

constexpr auto kPixelShader = R"(#version 330 core
in float depth, front, back, side, cutAt;
layout(location = 0) out vec4 tone;    // light, side, inside, covered: SurfacePicture's bits, byte by byte
layout(location = 1) out float depthMm;

void main() {
    if (cutAt > 0.0) discard;
    bool inside = !gl_FrontFacing;
    tone = vec4(inside ? back : front, side, inside ? 1.0 / 255.0 : 0.0, 1.0 / 255.0);
    depthMm = depth;
}
)";

} // namespace

std::unique_ptr<SurfaceGl> SurfaceGl::make(QString* why) {
    QString unused;
    std::unique_ptr<SurfaceGl> made(new SurfaceGl);
    if (!made->start(why ? why : &unused)) return nullptr;
    return made;
}

bool SurfaceGl::start(QString* why) {
    const QString platform = QGuiApplication::platformName();
    if (platform == QLatin1String("offscreen") || platform == QLatin1String("minimal")) {
        *why = QStringLiteral("The platform has no screen, so no OpenGL is tried.");
        return false;
    }
    QSurfaceFormat format;
    format.setRenderableType(QSurfaceFormat::OpenGL);
    format.setVersion(3, 3);
    format.setProfile(QSurfaceFormat::CoreProfile);
    m_context.setFormat(format);
    if (!m_context.create()) {
        *why = QStringLiteral("No context of OpenGL 3.3 could be made.");
        return false;
    }
    m_surface.setFormat(m_context.format());
    m_surface.create();
    const auto version = m_context.format().version();
    if (m_context.isOpenGLES() || version < std::pair(3, 3) || !m_context.makeCurrent(&m_surface)) {
        *why = QStringLiteral("OpenGL 3.3 is needed, but the driver has less.");
        return false;
    }
    m_gl = m_context.extraFunctions();
    m_renderer = QString::fromLatin1(reinterpret_cast<const char*>(m_gl->glGetString(GL_RENDERER)));
    const bool made = makeProgram(why);
    m_context.doneCurrent();
    return made;
}

bool SurfaceGl::makeProgram(QString* why) {
    m_program = std::make_unique<QOpenGLShaderProgram>();
    if (m_program->addShaderFromSourceCode(QOpenGLShader::Vertex, kCornerShader) &&
        m_program->addShaderFromSourceCode(QOpenGLShader::Fragment, kPixelShader) && m_program->link())
        return true;
    *why = m_program->log();
    return false;
}

SurfaceGl::~SurfaceGl() {
    if (m_gl && m_context.makeCurrent(&m_surface)) {
        m_program.reset();
        m_context.doneCurrent();
    }
}

bool SurfaceGl::isSoftware() const {
    for (const char* name : {"llvmpipe", "softpipe", "swrast", "Software", "SWR"})
        if (m_renderer.contains(QLatin1String(name), Qt::CaseInsensitive)) return true;
    return false;
}

const SurfacePicture* SurfaceGl::draw(const SurfaceScene& scene, const SectionMap& map, const QSize& size, double ratio) {
    m_picture.start(map, size, ratio);
    if (!m_context.makeCurrent(&m_surface)) {
        m_problem = QStringLiteral("The OpenGL context was lost.");
        return nullptr;
    }
    const bool made = makeBuffers(m_picture.width(), m_picture.height());
    if (made) {
        const float nothing[] = {0.0f, 0.0f, 0.0f, 0.0f}, far[] = {SurfacePicture::kNothing, 0.0f, 0.0f, 0.0f}, one = 1.0f;
        m_gl->glViewport(0, 0, m_width, m_height);
        m_gl->glClearBufferfv(GL_COLOR, 0, nothing);
        m_gl->glClearBufferfv(GL_COLOR, 1, far);
        m_gl->glClearBufferfv(GL_DEPTH, 0, &one);
        if (scene.mesh && !scene.mesh->empty()) {
            const Held& held = hold(scene);
            m_program->bind();
            setCamera(scene, held);
            m_gl->glBindVertexArray(held.array);
            m_gl->glDrawElements(GL_TRIANGLES, held.count, GL_UNSIGNED_INT, nullptr);
            m_gl->glBindVertexArray(0);
            m_program->release();
        }
        read();
    }
    const bool failed = m_gl->glGetError() != GL_NO_ERROR;
    m_context.doneCurrent();
    if (!made || failed) {
        m_problem = QStringLiteral("OpenGL could not draw the surface.");
        return nullptr;
    }
    m_picture.colour();
    return &m_picture;
}

bool SurfaceGl::makeBuffers(int width, int height) {
    if (m_frame != 0 && width == m_width && height == m_height) {
        m_gl->glBindFramebuffer(GL_FRAMEBUFFER, m_frame);
        return true;
    }
    if (m_frame == 0) {
        m_gl->glGenFramebuffers(1, &m_frame);
        m_gl->glGenRenderbuffers(static_cast<int>(m_buffers.size()), m_buffers.data());
    }
    m_width = width;
    m_height = height;
    m_gl->glBindFramebuffer(GL_FRAMEBUFFER, m_frame);
    const std::pair<unsigned, unsigned> parts[] = {
        {GL_RGBA8, GL_COLOR_ATTACHMENT0}, {GL_R32F, GL_COLOR_ATTACHMENT1}, {GL_DEPTH_COMPONENT24, GL_DEPTH_ATTACHMENT}};
    for (std::size_t i = 0; i < m_buffers.size(); ++i) {
        m_gl->glBindRenderbuffer(GL_RENDERBUFFER, m_buffers[i]);
        m_gl->glRenderbufferStorage(GL_RENDERBUFFER, parts[i].first, width, height);
        m_gl->glFramebufferRenderbuffer(GL_FRAMEBUFFER, parts[i].second, GL_RENDERBUFFER, m_buffers[i]);
    }
    const unsigned drawn[] = {GL_COLOR_ATTACHMENT0, GL_COLOR_ATTACHMENT1};
    m_gl->glDrawBuffers(2, drawn);
    return m_gl->glCheckFramebufferStatus(GL_FRAMEBUFFER) == GL_FRAMEBUFFER_COMPLETE;
}

/// The mesh in graphics memory, brought there when its stamp is new.
const SurfaceGl::Held& SurfaceGl::hold(const SurfaceScene& scene) {
    for (const Held& held : m_held)
        if (scene.stamp != 0 && held.stamp == scene.stamp) return held;
    Held& held = m_held[m_next];
    m_next = (m_next + 1) % m_held.size();
    const core::SurfaceMesh& mesh = *scene.mesh;
    std::vector<Corner> corners(mesh.points.size());
    Eigen::AlignedBox3f box;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Eigen::Vector3f &p = mesh.points[i], &n = mesh.normals[i];
        box.extend(p);
        corners[i] = {{p.x(), p.y(), p.z()}, {n.x(), n.y(), n.z()}, scene.beyondOstium && (*scene.beyondOstium)[i] ? 1.0f : 0.0f};
    }
    if (held.array == 0) {
        m_gl->glGenVertexArrays(1, &held.array);
        m_gl->glGenBuffers(1, &held.corners);
        m_gl->glGenBuffers(1, &held.indices);
    }
    m_gl->glBindVertexArray(held.array);
    m_gl->glBindBuffer(GL_ARRAY_BUFFER, held.corners);
    m_gl->glBufferData(GL_ARRAY_BUFFER, static_cast<qopengl_GLsizeiptr>(corners.size() * sizeof(Corner)), corners.data(), GL_STATIC_DRAW);
    m_gl->glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, held.indices);
    m_gl->glBufferData(GL_ELEMENT_ARRAY_BUFFER,
                       static_cast<qopengl_GLsizeiptr>(mesh.triangles.size() * sizeof(core::SurfaceMesh::Triangle)),
                       mesh.triangles.data(), GL_STATIC_DRAW);
    const std::pair<int, std::size_t> parts[] = {{3, offsetof(Corner, point)}, {3, offsetof(Corner, normal)}, {1, offsetof(Corner, beyond)}};
    for (unsigned i = 0; i < 3; ++i) {
        m_gl->glEnableVertexAttribArray(i);
        m_gl->glVertexAttribPointer(i, parts[i].first, GL_FLOAT, GL_FALSE, sizeof(Corner), reinterpret_cast<const void*>(parts[i].second));
    }
    m_gl->glBindVertexArray(0);
    held.stamp = scene.stamp;
    held.count = static_cast<int>(3 * mesh.triangles.size());
    held.middle = box.center();
    held.radius = 0.5f * box.diagonal().norm() + 1.0f;
    return held;
}

void SurfaceGl::setCamera(const SurfaceScene& scene, const Held& held) {
    const SectionMap& map = m_picture.map();
    const auto ratio = static_cast<float>(m_picture.ratio());
    const Eigen::Vector3f u = map.frame.u.mm.cast<float>(), v = map.frame.v.mm.cast<float>(), n = map.frame.normal.mm.cast<float>(),
                          origin = map.frame.origin.mm.cast<float>();
    const float rows[] = {u.x(), u.y(), u.z(), v.x(), v.y(), v.z(), n.x(), n.y(), n.z()};
    m_program->setUniformValue("axes", QMatrix3x3(rows)); // Qt takes rows
    m_program->setUniformValue("origin", origin.x(), origin.y(), origin.z());
    m_program->setUniformValue("toPixel", static_cast<float>(map.zero.x()) * ratio, static_cast<float>(map.zero.y()) * ratio,
                               static_cast<float>(map.pixelsPerMm) * ratio);
    m_program->setUniformValue("size", static_cast<float>(m_width), static_cast<float>(m_height));
    const float middle = n.dot(held.middle - origin);
    m_program->setUniformValue("range", middle - held.radius, middle + held.radius);
    // Without a cut: a plane that everything lies behind.
    const Eigen::Vector3f cut = scene.cut ? Eigen::Vector3f(scene.cut->normal.mm.cast<float>()) : Eigen::Vector3f(0, 0, 0);
    const float cutAt = scene.cut ? static_cast<float>(scene.cut->normal.mm.dot(scene.cut->point.mm)) : 1.0f;
    m_program->setUniformValue("cut", cut.x(), cut.y(), cut.z(), -cutAt);
    const Eigen::Vector3f lamp = surface_light::lamp(), half = surface_light::half();
    m_program->setUniformValue("lamp", lamp.x(), lamp.y(), lamp.z());
    m_program->setUniformValue("between", half.x(), half.y(), half.z());
    m_program->setUniformValue("shares", surface_light::kBase, surface_light::kLamp, surface_light::kFacing, surface_light::kGloss);
    m_gl->glEnable(GL_DEPTH_TEST);
    m_gl->glDepthFunc(GL_LESS);
    m_gl->glDisable(GL_BLEND);
    m_gl->glDisable(GL_DITHER);
    m_gl->glFrontFace(GL_CW); // seen with y downwards
    m_gl->glCullFace(GL_BACK);
    scene.cut ? m_gl->glDisable(GL_CULL_FACE) : m_gl->glEnable(GL_CULL_FACE);
}

void SurfaceGl::read() {
    m_gl->glPixelStorei(GL_PACK_ALIGNMENT, 4);
    m_gl->glReadBuffer(GL_COLOR_ATTACHMENT0);
    m_gl->glReadPixels(0, 0, m_width, m_height, GL_RGBA, GL_UNSIGNED_BYTE, m_picture.tones());
    m_gl->glReadBuffer(GL_COLOR_ATTACHMENT1);
    m_gl->glReadPixels(0, 0, m_width, m_height, GL_RED, GL_FLOAT, m_picture.depths());
}

} // namespace gauge::app
