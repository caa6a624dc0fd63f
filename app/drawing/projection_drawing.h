// The views of a C-arm as a picture: once as the dome over the patient seen from the detector at LAO 0, CRA 0, once as a curve
// over primary and secondary angle. On both: the reach of the arm, the edge-on views of ostium and landing zone, their en-face
// views, working views, chosen views, the angles of a fluoroscopy, the view under the pointer.
//
//      dome:  .---CRA---.        The patient's left (LAO) is on the right, the head up: as the detector sees the patient. A view
//            /  .-----.  \       stands where its line of sight meets the dome (orthographic). Edge-on views of a plane are a
//          RAO  | reach|  LAO    great circle; it is drawn strong within the reach and faint beyond.
//            \  '-----'  /
//             '---CAU---'
#pragma once

#include "app/drawing/palette.h"
#include "core/fluoro/c_arm_reach.h"

#include <QPainter>
#include <QRectF>
#include <QString>
#include <optional>
#include <vector>

namespace gauge::app {

/// A plane whose edge-on views are drawn.
struct ProjectionLine {
    Role role = Role::Landing; ///< Ostium or Landing
    core::PatientVector normal; ///< in the room's axes
    core::CArmAngles enFace;
};

struct ProjectionMark {
    enum class Kind { Working, Chosen, Fluoroscopy };
    Kind kind = Kind::Working;
    core::CArmAngles angles;
    QString label; ///< one or two letters or a number
    Role role = Role::Landing;
    bool isStale = false; ///< its plane moved since: hollow
};

struct ProjectionPicture {
    std::vector<ProjectionLine> lines;
    core::CArmReach reach;
    std::vector<ProjectionMark> marks;
    std::optional<core::CArmAngles> arm;     ///< where the C-arm of a simulated radiograph stands
    std::optional<core::CArmAngles> pointer; ///< the view under the pointer
};

/// Which of the two pictures.
enum class ProjectionForm { Dome, Curve };

/// Between views and places of a picture of this form in this area.
class ProjectionMap {
public:
    ProjectionMap(ProjectionForm form, const QRectF& area);

    ProjectionForm form() const { return m_form; }
    /// Where the picture itself lies: the dome's square, or the axes' rectangle.
    const QRectF& plot() const { return m_plot; }
    /// Nothing for a view from behind (dome) or outside the axes (curve).
    std::optional<QPointF> placeOf(const core::CArmAngles& view) const;
    /// Whole degrees nothing: the exact view there. Nothing outside.
    std::optional<core::CArmAngles> viewAt(const QPointF& place) const;

    static constexpr double kMostPrimaryDeg = 90.0, kMostSecondaryDeg = 60.0; ///< of the curve's axes

private:
    ProjectionForm m_form;
    QRectF m_plot;
};

/// Paints on a page of the theme in use.
void drawProjection(QPainter& painter, const QRectF& area, ProjectionForm form, const ProjectionPicture& picture);
/// The same in three parts, one over the other: lines and signs; arm and pointer, which move while the rest stays; words.
void drawProjectionGround(QPainter& painter, const QRectF& area, ProjectionForm form, const ProjectionPicture& picture);
void drawProjectionPointers(QPainter& painter, const QRectF& area, ProjectionForm form, const ProjectionPicture& picture);
void drawProjectionWords(QPainter& painter, const QRectF& area, ProjectionForm form, const ProjectionPicture& picture);

/// "LAO 32°, CRA 2°", to the whole degree, in the screen's language.
QString viewWords(const core::CArmAngles& view);

} // namespace gauge::app
