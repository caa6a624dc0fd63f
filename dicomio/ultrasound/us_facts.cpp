#include "dicomio/ultrasound/us_facts.h"

#include "dicomio/scan/tag.h"
#include "dicomio/ultrasound/frame_times.h"
#include "dicomio/ultrasound/region_reader.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <string_view>

namespace gauge::dicomio {
namespace {

struct CodedPlane {
    std::string_view code;
    double deg;
};

/// Transoesophageal planes of PS3.16 CID 12343, coding scheme DCM.
constexpr CodedPlane kCodedPlanes[] = {
    {"131100", 0.0}, {"131101", 45.0}, {"131102", 60.0}, {"131103", 90.0}, {"131104", 135.0},
};

/// The angle of a coded view; nullopt without one, or when several disagree.
std::optional<core::ProbeAngle> codedAngle(const Dataset& dataset, std::vector<core::Notice>& notices) {
    std::optional<double> found;
    for (const Dataset& view : dataset.items(tags::ViewCodeSequence)) {
        if (view.text(tags::CodingSchemeDesignator) != "DCM") continue;
        const std::string code = view.text(tags::CodeValue);
        const auto* plane = std::find_if(std::begin(kCodedPlanes), std::end(kCodedPlanes),
                                         [&](const CodedPlane& p) { return p.code == code; });
        if (plane == std::end(kCodedPlanes)) continue;
        if (found && *found != plane->deg) {
            notices.push_back({"probe-angle-contradictory",
                               describe(tags::ViewCodeSequence) +
                                   " names planes of two angles; set the probe's angle by hand.",
                               {}});
            return std::nullopt;
        }
        found = plane->deg;
    }
    if (!found) return std::nullopt;
    return core::probeAngle(*found, core::ProbeAngleSource::File);
}

/// Height of a pixel to its width; 1 when not told.
double aspectOf(const Dataset& dataset, std::vector<core::Notice>& notices) {
    const auto values = dataset.numbers(tags::PixelAspectRatio);
    if (values && !*values) return 1.0;
    if (values && (*values)->size() == 2 && (**values)[0] > 0.0 && (**values)[1] > 0.0) {
        const double aspect = (**values)[0] / (**values)[1]; // vertical size \ horizontal size, C.7.6.3.1.7
        if (aspect >= 1.0 / kImpossibleAspect && aspect <= kImpossibleAspect) return aspect;
    }
    notices.push_back(
        {"pixel-aspect-unusable",
         describe(tags::PixelAspectRatio) + " is \"" + dataset.text(tags::PixelAspectRatio) +
             "\", which cannot be true; pixels are taken as square when a scale is marked by hand.",
         {}});
    return 1.0;
}

void announceScale(UltrasoundFacts& facts) {
    const bool some = std::any_of(facts.regions.begin(), facts.regions.end(),
                                  [](const core::EchoRegion& r) { return r.scale.has_value(); });
    if (!some)
        facts.notices.push_back(
            {"no-length-scale",
             "No part of the picture has a believable length scale: nothing is measured until a "
             "scale of known length is marked in it by hand.",
             {}});
}

} // namespace

UltrasoundFacts usFacts(const Dataset& dataset, int columns, int rows, int frames) {
    UltrasoundFacts facts;
    facts.regions = readRegions(dataset, columns, rows, facts.notices);
    facts.times = readFrameTimes(dataset, frames, facts.notices);
    facts.angle = codedAngle(dataset, facts.notices);
    facts.pixelAspect = aspectOf(dataset, facts.notices);
    announceScale(facts);
    return facts;
}

} // namespace gauge::dicomio
