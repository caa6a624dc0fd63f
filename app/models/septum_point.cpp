#include "app/models/septum_point.h"

#include "core/access/septal_face.h"

#include <QCoreApplication>

namespace gauge::app {

QString wordOf(SeptumPoint kind) {
    switch (kind) {
    case SeptumPoint::Annulus:
        return QCoreApplication::translate("SeptumPoint", "mitral annulus");
    case SeptumPoint::Coaptation:
        return QCoreApplication::translate("SeptumPoint", "coaptation of the leaflets");
    case SeptumPoint::Fossa:
        return QCoreApplication::translate("SeptumPoint", "rim of the fossa");
    case SeptumPoint::AorticRoot:
        return QCoreApplication::translate("SeptumPoint", "aortic root");
    }
    return {};
}

QString purposeOf(SeptumPoint kind) {
    switch (kind) {
    case SeptumPoint::Annulus:
        return QCoreApplication::translate("SeptumPoint", "Click points around the mitral annulus, at least three, better eight.");
    case SeptumPoint::Coaptation:
        return QCoreApplication::translate("SeptumPoint", "Click where the mitral leaflets meet in systole, one point or several along the line.");
    case SeptumPoint::Fossa:
        return QCoreApplication::translate("SeptumPoint", "Click points around the rim of the fossa ovalis on the septum, at least four, better eight.");
    case SeptumPoint::AorticRoot:
        return QCoreApplication::translate("SeptumPoint", "Click the middle of the aortic root beside the septum: it tells the side that must not be crossed.");
    }
    return {};
}

std::size_t leastOf(SeptumPoint kind) {
    switch (kind) {
    case SeptumPoint::Annulus:
        return 3;
    case SeptumPoint::Coaptation:
        return 1;
    case SeptumPoint::Fossa:
        return core::kLeastFossaPoints;
    case SeptumPoint::AorticRoot:
        return 0;
    }
    return 0;
}

std::vector<core::PatientPoint> pointsOf(const core::SeptumMarks& marks, SeptumPoint kind) {
    switch (kind) {
    case SeptumPoint::Annulus:
        return marks.annulus;
    case SeptumPoint::Coaptation:
        return marks.coaptation;
    case SeptumPoint::Fossa:
        return marks.fossa;
    case SeptumPoint::AorticRoot:
        break;
    }
    return marks.aorticRoot ? std::vector{*marks.aorticRoot} : std::vector<core::PatientPoint>{};
}

core::SeptumMarks withPoints(core::SeptumMarks marks, SeptumPoint kind, std::vector<core::PatientPoint> points) {
    switch (kind) {
    case SeptumPoint::Annulus:
        marks.annulus = std::move(points);
        break;
    case SeptumPoint::Coaptation:
        marks.coaptation = std::move(points);
        break;
    case SeptumPoint::Fossa:
        marks.fossa = std::move(points);
        break;
    case SeptumPoint::AorticRoot:
        marks.aorticRoot = points.empty() ? std::nullopt : std::optional(points.back());
        break;
    }
    return marks;
}

} // namespace gauge::app
