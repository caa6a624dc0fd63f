// From Hounsfield units to a grey picture.
#pragma once

#include "core/geometry/plane.h"
#include "core/volume/section_image.h"

#include <QImage>
#include <QRectF>

namespace gauge::app {

/// The window of DICOM PS3.3 C.11.2: HU shown as mid-grey, and the span from black to white.
struct GreyWindow {
    double centerHu = 250.0;
    double widthHu = 900.0;

    bool operator==(const GreyWindow&) const = default;
};

/// Linear window (PS3.3 C.11.2.1.2.1); places outside the volume take the image background.
QImage greyImage(const core::SectionImage& section, const GreyWindow& window);

/// Where a section lies on the paint device: section coordinates (0, 0) of `frame` at pixel `zero`, u to the
/// right, v downwards.
struct SectionMap {
    core::SectionFrame frame;
    QPointF zero;
    double pixelsPerMm = 4.0;

    QPointF fromSection(const Eigen::Vector2d& ab) const {
        return {zero.x() + ab.x() * pixelsPerMm, zero.y() + ab.y() * pixelsPerMm};
    }
    QPointF fromPatient(const core::PatientPoint& p) const {
        return fromSection(frame.sectionFromPatient(p));
    }
    Eigen::Vector2d sectionFrom(const QPointF& pixel) const {
        return {(pixel.x() - zero.x()) / pixelsPerMm, (pixel.y() - zero.y()) / pixelsPerMm};
    }
    core::PatientPoint patientFrom(const QPointF& pixel) const {
        return frame.patientFromSection(sectionFrom(pixel));
    }
    bool operator==(const SectionMap&) const = default;
};

/// The values of which cutGrey makes a picture: cut once, shown in any window.
core::SectionImage cutFor(const core::Volume& volume, const SectionMap& map, const QRectF& area, double devicePixelRatio = 1.0,
                          const core::Slab& slab = {});

/// The volume cut so that it fills `area` of the map, one sample for each pixel of a device with the given
/// ratio.
QImage cutGrey(const core::Volume& volume, const SectionMap& map, const QRectF& area,
               const GreyWindow& window, double devicePixelRatio = 1.0);

} // namespace gauge::app
