// The cross-section at the shown depth, seen from the atrium, with its contour and diameters. The contours of the ostium and
// of the landing zone can be corrected by hand (key E): points dragged or moved by arrows, refitted to the image, given up.
#pragma once

#include "app/interaction/contour_edit.h"
#include "app/views/image_view.h"
#include "core/measure/section.h"

namespace gauge::app {

class CrossSectionView : public ImageView {
    Q_OBJECT
public:
    CrossSectionView(Session& session, ViewState& state, QWidget* parent = nullptr);

    std::optional<SectionMap> map() const override;
    void resetView();

    /// Starts or ends editing the contour that is shown; true while it is edited.
    bool editContour(bool on);
    /// Puts an ellipse with handles in the contour's place, as near to it as can be: recorded as a correction unless the contour
    /// is one already.
    bool editEllipse();
    bool isEditingContour() const { return m_edit.has_value(); }
    /// Moves the line that is shown onto the border in the image, and records it as a correction.
    void refitContour();
    /// Gives the correction up.
    void restoreContour();
    /// Says that the corrected contour holds although its plane moved.
    void confirmContour();

    /// The same as actions, with their keys.
    QList<QAction*> contourActions(QObject* parent);

protected:
    void drawOver(QPainter& painter, const SectionMap& map) override;
    QString emptyText() const override;
    std::string planeId() const override;
    bool isDragging() const override { return m_edit.has_value(); }
    void cancelDrag() override;
    void pan(const QPointF& offset) override;
    QPointF panOffset() const override { return m_offset; }
    void zoom(double factor, const QPointF& at) override;
    void scroll(int steps) override;
    void leftPressed(const QPointF& at) override;
    void leftMoved(const QPointF& at) override;
    void leftReleased(const QPointF& at) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;

private:
    std::string contourId() const; ///< "ostium", "landing-1", or empty
    const core::Entry<core::CorrectedContour>* correction() const;
    std::vector<Eigen::Vector2d> pointsToEdit() const;
    void followRecord(CaseDocument::Part part);
    void record(std::vector<Eigen::Vector2d> points, int gesture);
    bool contourKey(QKeyEvent& event);
    const core::Section* corrected(const core::SectionFrame& frame);

    double m_zoom = 1.0;
    QPointF m_offset;
    std::optional<ContourEdit> m_edit;
    std::string m_editId; ///< of the contour that is edited
    int m_gesture = 0;
    std::optional<core::Section> m_corrected; ///< the correction as a section, of m_correctedRevision in m_correctedFrame
    core::Revision m_correctedRevision = 0;
    core::SectionFrame m_correctedFrame;
};

} // namespace gauge::app
