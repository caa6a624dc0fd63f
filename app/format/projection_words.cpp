#include "app/format/projection_words.h"

#include "app/format/quantity.h"

#include <QCoreApplication>

namespace gauge::app {
namespace {

struct ProjectionWords {
    Q_DECLARE_TR_FUNCTIONS(Projection)
};

QString degrees(double deg) {
    return quantity(deg, Unit::Degree);
}
QString millimetres(double mm) {
    return quantity(mm, Unit::Millimetre);
}
QString percent(double share) {
    return quantity(100.0 * share, Unit::Percent);
}

constexpr double kShownMm = 0.05, kShownDeg = 0.5, kShownShare = 0.005; ///< less is nothing once it is rounded

} // namespace

QString aimName(core::ViewAim aim) {
    switch (aim) {
    case core::ViewAim::LongestWidth:
        return ProjectionWords::tr("longest width");
    case core::ViewAim::ShortestWidth:
        return ProjectionWords::tr("shortest width");
    case core::ViewAim::BendInProfile:
        return ProjectionWords::tr("bend in profile");
    case core::ViewAim::LeastOverlap:
        return ProjectionWords::tr("least overlap with the atrium");
    case core::ViewAim::EnFace:
        return ProjectionWords::tr("en face");
    case core::ViewAim::OneForAll:
        return ProjectionWords::tr("one view for all");
    }
    return {};
}

QString projectionSectionName(std::string_view section) {
    return section.starts_with("landing") ? ProjectionWords::tr("landing zone") : ProjectionWords::tr("ostium");
}

QString viewWidthWords(const core::ViewReading& r) {
    if (!r.widthMm) return ProjectionWords::tr("no width");
    if (!r.tolerance) return millimetres(*r.widthMm);
    return ProjectionWords::tr("%1 (%2 to %3 within 5°)").arg(millimetres(*r.widthMm), millimetres(r.tolerance->lowestMm), millimetres(r.tolerance->highestMm));
}

QStringList viewLossWords(const core::WorkingView& v) {
    const core::ViewReading& r = v.seen;
    const bool all = v.aim == core::ViewAim::OneForAll;
    QStringList parts;
    const auto add = [&](bool matters, double amount, double least, const QString& text) {
        if ((matters || all) && amount >= least) parts << text;
    };
    const bool edgeOn = v.aim == core::ViewAim::LongestWidth || v.aim == core::ViewAim::ShortestWidth || v.aim == core::ViewAim::BendInProfile;
    if (r.lostOfLongestMm)
        add(v.aim == core::ViewAim::LongestWidth, *r.lostOfLongestMm, kShownMm,
            ProjectionWords::tr("%1 of the longest not shown").arg(millimetres(*r.lostOfLongestMm)));
    if (r.beyondShortestMm)
        add(v.aim == core::ViewAim::ShortestWidth, *r.beyondShortestMm, kShownMm,
            ProjectionWords::tr("%1 more than the shortest").arg(millimetres(*r.beyondShortestMm)));
    add(edgeOn, r.openingDeg, kShownDeg, ProjectionWords::tr("plane %1 from edge-on").arg(degrees(r.openingDeg)));
    if (r.offProfileDeg)
        add(v.aim == core::ViewAim::BendInProfile, *r.offProfileDeg, kShownDeg,
            ProjectionWords::tr("%1 off the bend's profile").arg(degrees(*r.offProfileDeg)));
    add(v.aim == core::ViewAim::EnFace, r.offNormalDeg, all ? 1e9 : kShownDeg, ProjectionWords::tr("%1 off en face").arg(degrees(r.offNormalDeg)));
    if (v.hiddenBeyondLeast)
        add(false, *v.hiddenBeyondLeast, kShownShare,
            ProjectionWords::tr("%1 more of the appendage behind the atrium than need be").arg(percent(*v.hiddenBeyondLeast)));
    if (r.hiddenShare && v.aim == core::ViewAim::LeastOverlap)
        parts << ProjectionWords::tr("%1 of the appendage behind the atrium").arg(percent(*r.hiddenShare));
    if (parts.isEmpty()) parts << ProjectionWords::tr("nothing");
    return parts;
}

QStringList viewReadingWords(const core::ViewReading& r) {
    QStringList parts{viewWidthWords(r), ProjectionWords::tr("plane %1 from edge-on").arg(degrees(r.openingDeg))};
    if (r.lostOfLongestMm && *r.lostOfLongestMm >= kShownMm)
        parts << ProjectionWords::tr("%1 of the longest not shown").arg(millimetres(*r.lostOfLongestMm));
    return parts;
}

QString lyingWords(const std::string& patientPosition) {
    const QString code = QString::fromStdString(patientPosition);
    switch (core::lyingPosition(patientPosition)) {
    case core::LyingPosition::Unknown:
        return ProjectionWords::tr("not told by the images");
    case core::LyingPosition::Supine:
        return ProjectionWords::tr("on the back (%1)").arg(code);
    case core::LyingPosition::Prone:
        return ProjectionWords::tr("on the face (%1)").arg(code);
    case core::LyingPosition::LeftSideDown:
        return ProjectionWords::tr("on the left side (%1)").arg(code);
    case core::LyingPosition::RightSideDown:
        return ProjectionWords::tr("on the right side (%1)").arg(code);
    case core::LyingPosition::Other:
        return ProjectionWords::tr("in an unusual position (%1)").arg(code);
    }
    return {};
}

} // namespace gauge::app
