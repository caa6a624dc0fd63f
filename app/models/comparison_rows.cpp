// The rows of the comparison table.
#include "app/models/comparison_rows.h"

#include <QCoreApplication>

namespace gauge::app {

QString comparisonWords(const char* text) {
    return QCoreApplication::translate("Comparison", text);
}

const std::vector<ComparisonModel::Row>& ComparisonModel::rows() {
    using Q = core::Quantity;
    constexpr auto contour = core::Derivation::Contour;
    constexpr auto views = core::Derivation::LargestOfViews;
    constexpr auto single = core::Derivation::SingleView;
    constexpr auto mm = Unit::Millimetre;
    const auto heading = [](const char* words) {
        Row row{words};
        row.heading = true;
        return row;
    };
    static const std::vector<Row> table = [&] {
        std::vector<Row> t;
        t.push_back(heading(QT_TRANSLATE_NOOP("Comparison", "Landing zone")));
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "perimeter-derived"), "landing-1/perimeter-derived-diameter",
                     "landing/perimeter-derived-diameter", mm, QT_TRANSLATE_NOOP("Comparison", "Perimeter divided by π"),
                     Q::LandingZonePerimeterDerivedDiameter, contour, false, true});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "longest"), "landing-1/longest-diameter", "landing/longest-diameter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Greatest distance between two points of the contour"),
                     Q::LandingZoneLongestDiameter});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "largest of the views"), nullptr, "landing/largest-of-views", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Largest width among the views: no contour's diameter"),
                     Q::LandingZoneLongestDiameter, views});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "single view"), nullptr, "landing/single-view", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Width in one view: no contour's diameter"),
                     Q::LandingZoneLongestDiameter, single});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "shortest"), "landing-1/shortest-diameter", "landing/shortest-diameter",
                     mm, QT_TRANSLATE_NOOP("Comparison", "Widest extent perpendicular to the longest diameter")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "area-derived"), "landing-1/area-derived-diameter",
                     "landing/area-derived-diameter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Diameter of the circle of the same area"),
                     Q::LandingZoneAreaDerivedDiameter});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "mean"), "landing-1/mean-diameter", "landing/mean-diameter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Half the sum of longest and shortest diameter")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "least width"), "landing-1/least-width", "landing/least-width", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Smallest distance between two parallel lines that hold the contour")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "perimeter"), "landing-1/perimeter", "landing/perimeter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Length of the smooth contour")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "area"), "landing-1/area", "landing/area", Unit::SquareMillimetre,
                     QT_TRANSLATE_NOOP("Comparison", "Enclosed area")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "eccentricity index"), "landing-1/eccentricity-index",
                     "landing/eccentricity-index", Unit::Index,
                     QT_TRANSLATE_NOOP("Comparison", "1 − shortest / longest: 0 is round")});
        for (const bool plug : {false, true}) { // they have no counterpart on pictures
            t.push_back(heading(plug ? QT_TRANSLATE_NOOP("Comparison", "Plug plane") : QT_TRANSLATE_NOOP("Comparison", "Second landing plane")));
            t.push_back({QT_TRANSLATE_NOOP("Comparison", "perimeter-derived"),
                         plug ? "plug/perimeter-derived-diameter" : "second/perimeter-derived-diameter", nullptr, mm,
                         QT_TRANSLATE_NOOP("Comparison", "Perimeter divided by π")});
            t.push_back({QT_TRANSLATE_NOOP("Comparison", "longest"), plug ? "plug/longest-diameter" : "second/longest-diameter", nullptr, mm,
                         QT_TRANSLATE_NOOP("Comparison", "Greatest distance between two points of the contour")});
            t.push_back({QT_TRANSLATE_NOOP("Comparison", "shortest"), plug ? "plug/shortest-diameter" : "second/shortest-diameter", nullptr,
                         mm, QT_TRANSLATE_NOOP("Comparison", "Widest extent perpendicular to the longest diameter")});
        }
        t.push_back(heading(QT_TRANSLATE_NOOP("Comparison", "Ostium")));
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "perimeter-derived"), "ostium/perimeter-derived-diameter",
                     "ostium/perimeter-derived-diameter", mm, QT_TRANSLATE_NOOP("Comparison", "Perimeter divided by π"),
                     Q::OstiumPerimeterDerivedDiameter});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "longest"), "ostium/longest-diameter", "ostium/longest-diameter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Greatest distance between two points of the contour"),
                     Q::OstiumLongestDiameter});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "largest of the views"), nullptr, "ostium/largest-of-views", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Largest width among the views: no contour's diameter"),
                     Q::OstiumLongestDiameter, views});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "single view"), nullptr, "ostium/single-view", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Width in one view: no contour's diameter"), Q::OstiumLongestDiameter,
                     single});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "shortest"), "ostium/shortest-diameter", "ostium/shortest-diameter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Widest extent perpendicular to the longest diameter")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "area-derived"), "ostium/area-derived-diameter",
                     "ostium/area-derived-diameter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Diameter of the circle of the same area")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "mean"), "ostium/mean-diameter", "ostium/mean-diameter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Half the sum of longest and shortest diameter")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "least width"), "ostium/least-width", "ostium/least-width", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Smallest distance between two parallel lines that hold the contour")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "perimeter"), "ostium/perimeter", "ostium/perimeter", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Length of the smooth contour")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "area"), "ostium/area", "ostium/area", Unit::SquareMillimetre,
                     QT_TRANSLATE_NOOP("Comparison", "Enclosed area")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "eccentricity index"), "ostium/eccentricity-index",
                     "ostium/eccentricity-index", Unit::Index,
                     QT_TRANSLATE_NOOP("Comparison", "1 − shortest / longest: 0 is round")});
        t.push_back(heading(QT_TRANSLATE_NOOP("Comparison", "Depth to the tip")));
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "from the ostium"), "depth/from-ostium-plane", "depth", mm,
                     QT_TRANSLATE_NOOP("Comparison", "Greatest distance from the ostium plane"), Q::Depth});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "from the landing zone"), "landing-1/straight-depth",
                     "landing/straight-depth", mm,
                     QT_TRANSLATE_NOOP("Comparison", "From the landing zone's centre along the ostium's normal to the "
                                                     "opposite wall")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "along the axis"), "depth/along-axis", "depth/along-axis", mm,
                     QT_TRANSLATE_NOOP("Comparison", "From the ostium along the axis to the tip")});
        t.push_back(heading(QT_TRANSLATE_NOOP("Comparison", "Shape")));
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "volume"), "volume", "volume", Unit::Millilitre,
                     QT_TRANSLATE_NOOP("Comparison", "Blood volume beyond the ostium plane")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "turn of the axis"), "turn/angle", nullptr, Unit::Degree,
                     QT_TRANSLATE_NOOP("Comparison", "Angle between the proximal and distal directions; 0 is straight")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "turns at"), "turn/at", nullptr, mm,
                     QT_TRANSLATE_NOOP("Comparison", "Distance of the sharpest place from the ostium along the axis")});
        t.push_back(heading(QT_TRANSLATE_NOOP("Comparison", "Enhancement")));
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "atrium"), "enhancement/atrium", nullptr, Unit::Hounsfield,
                     QT_TRANSLATE_NOOP("Comparison", "Mean level at the mark")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "appendage"), "enhancement/appendage", nullptr, Unit::Hounsfield,
                     QT_TRANSLATE_NOOP("Comparison", "Mean level beyond the ostium")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "tip"), "enhancement/tip", nullptr, Unit::Hounsfield,
                     QT_TRANSLATE_NOOP("Comparison", "Mean level near the tip")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "aorta"), "enhancement/aorta", nullptr, Unit::Hounsfield,
                     QT_TRANSLATE_NOOP("Comparison", "Mean level at the mark; mark the aorta to see it")});
        t.push_back({QT_TRANSLATE_NOOP("Comparison", "tip to aorta"), "enhancement/tip-to-aorta", nullptr, Unit::Index,
                     QT_TRANSLATE_NOOP("Comparison", "Ratio of the mean levels")});
        return t;
    }();
    return table;
}

} // namespace gauge::app
