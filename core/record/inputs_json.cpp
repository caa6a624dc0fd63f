// Marks, images, ostium and landing planes.
#include "core/record/record_json.h"

#include <cmath>

namespace gauge::core::record_json {

using namespace json_writer;

Json written(const Mark& mark) {
    return over(mark.unknown, {{"point_lps_mm", triple(mark.point.mm)}, {"revision", mark.revision}});
}

Json written(const ImagesUsed& images) {
    Json json = over(images.unknown, {{"series_uid", images.seriesUid},
                                      {"phase_percent", orNull(images.phasePercent)},
                                      {"phase", images.phaseLabel},
                                      {"frame_of_reference_uid", images.frameOfReferenceUid},
                                      {"revision", images.revision}});
    if (!images.patientPosition.empty()) json["patient_position"] = images.patientPosition;
    return json;
}

Json written(const OstiumPlane& ostium) {
    return over(ostium.unknown, {{"point_lps_mm", triple(ostium.plane.point.mm)},
                                 {"normal_lps", triple(ostium.plane.normal.mm)},
                                 {"confirmed", ostium.confirmed},
                                 {"revision", ostium.revision}});
}

Json written(const LandingPlanes& landing) {
    Json json = over(landing.unknown, {{"depths_mm", landing.depthsMm},
                                       {"plug_mm", orNull(landing.plugMm)},
                                       {"revision", landing.revision}});
    if (landing.normal) json["normal_lps"] = triple(landing.normal->mm);
    return json;
}

namespace {

/// A unit vector.
PatientVector readNormal(Object& o, const char* key) {
    const PatientVector normal{o.triple(key)};
    constexpr double kUnitTolerance = 1e-6; // written with all digits; anything else is another vector
    if (std::abs(normal.norm() - 1.0) > kUnitTolerance)
        throw Finding{o.pathOf(key) + " has the length " + std::to_string(normal.norm()) + " where a unit vector is needed"};
    return normal;
}

} // namespace

Mark readMark(Object o) {
    Mark mark;
    mark.point.mm = o.triple("point_lps_mm");
    mark.revision = o.count("revision");
    mark.unknown = o.unknown();
    return mark;
}

ImagesUsed readImages(Object o) {
    ImagesUsed images;
    images.seriesUid = o.text("series_uid");
    images.phasePercent = o.optionalNumber("phase_percent");
    images.phaseLabel = o.text("phase", true);
    images.frameOfReferenceUid = o.text("frame_of_reference_uid", true);
    images.patientPosition = o.text("patient_position", true);
    images.revision = o.count("revision");
    images.unknown = o.unknown();
    return images;
}

OstiumPlane readOstium(Object o) {
    OstiumPlane ostium;
    ostium.plane.point.mm = o.triple("point_lps_mm");
    ostium.plane.normal = readNormal(o, "normal_lps");
    ostium.confirmed = o.flag("confirmed");
    ostium.revision = o.count("revision");
    ostium.unknown = o.unknown();
    return ostium;
}

LandingPlanes readLanding(Object o) {
    LandingPlanes landing;
    landing.depthsMm = o.numbers("depths_mm");
    if (o.has("normal_lps")) landing.normal = readNormal(o, "normal_lps");
    landing.plugMm = o.optionalNumber("plug_mm");
    landing.revision = o.count("revision");
    landing.unknown = o.unknown();
    return landing;
}

} // namespace gauge::core::record_json
