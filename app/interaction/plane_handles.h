// The handles of a plane where a section cuts it: the middle one moves the plane along its normal, those at the ends tilt it
// about the section's normal.
//
//     o tilt - - - o move - - - o tilt      along the plane's line in the section
#pragma once

#include "app/drawing/grey_image.h"
#include "app/drawing/palette.h"

#include <QPainter>
#include <array>
#include <optional>

namespace gauge::app {

class PlaneHandles {
public:
    enum class Grip { Move, Tilt };

    /// Nothing where the section is nearly parallel to the plane or passes farther than 25 mm from its point.
    /// @param halfMm  from the middle to the handles at the ends, along the line.
    static std::optional<PlaneHandles> on(const SectionMap& map, const core::Plane& plane, double halfMm);

    std::optional<Grip> gripAt(const QPointF& at) const;
    /// The plane when what was gripped at `from` is at `to`.
    core::Plane dragged(Grip grip, const QPointF& from, const QPointF& to) const;
    /// From one place of the section to another, in the patient.
    core::PatientVector wayBetween(const QPointF& from, const QPointF& to) const { return m_map.patientFrom(to) - m_map.patientFrom(from); }
    const core::Plane& plane() const { return m_plane; }
    QPointF middle() const { return m_places[1]; }
    const std::array<QPointF, 3>& places() const { return m_places; }

    /// The line and its handles; `tilts`: with those at the ends.
    void draw(QPainter& painter, Role role, bool tilts) const;

private:
    PlaneHandles(const SectionMap& map, const core::Plane& plane) : m_map(map), m_plane(plane) {}

    SectionMap m_map;
    core::Plane m_plane;
    core::PatientPoint m_middle;
    std::array<QPointF, 3> m_places;
};

} // namespace gauge::app
