#include "dicomio/angiography/xray_facts.h"

#include "dicomio/angiography/finding_list.h"
#include "dicomio/angiography/frame_scope.h"
#include "dicomio/angiography/positioner.h"
#include "dicomio/angiography/scale_choice.h"
#include "dicomio/angiography/xray_times.h"

#include <algorithm>
#include <cmath>

namespace gauge::dicomio {
namespace {

void readScales(const Dataset& dataset, int longSide, XrayFacts& facts) {
    const bool groups = dataset.has(tags::PerFrameFunctionalGroupsSequence);
    FindingList findings;
    for (std::size_t i = 0; i < facts.frames.size(); ++i) {
        XrayFrame& frame = facts.frames[i];
        if (i > 0 && !groups) { // one geometry for all
            const auto angles = frame.angles, isocentre = frame.isocentreAngles;
            frame = facts.frames.front();
            frame.angles = angles;
            frame.isocentreAngles = isocentre;
            continue;
        }
        ChosenScale chosen = chooseScale(XrayScope(dataset, static_cast<int>(i)), longSide, frame, findings);
        if (i > 0) continue;
        facts.scaleSource = chosen.source;
        facts.scaleText = std::move(chosen.text);
    }
    findings.moveTo(facts.notices, groups);
}

bool differs(const core::CArmAngles& a, const core::CArmAngles& b) {
    constexpr double kStillDeg = 0.01;
    return std::abs(a.primaryDeg - b.primaryDeg) > kStillDeg ||
           std::abs(a.secondaryDeg - b.secondaryDeg) > kStillDeg;
}

} // namespace

XrayFacts xrayFacts(const Dataset& dataset, int columns, int rows, int frames) {
    XrayFacts facts;
    facts.frames.resize(static_cast<std::size_t>(frames));
    facts.times = xrayTimes(dataset, frames, facts.notices);
    const auto angles = positionerAngles(dataset, frames, facts.times.startMs, facts.notices);
    for (std::size_t i = 0; i < angles.size(); ++i) {
        facts.frames[i].angles = angles[i].patient;
        facts.frames[i].isocentreAngles = angles[i].isocentre;
        const auto& first = facts.frames.front().angles;
        if (first && angles[i].patient && differs(*first, *angles[i].patient)) facts.moving = true;
    }
    if (dataset.text(tags::PositionerMotion) == "DYNAMIC") facts.moving = true;
    readScales(dataset, std::max(columns, rows), facts);
    return facts;
}

std::string_view words(XrayScaleSource source) {
    switch (source) {
    case XrayScaleSource::None:
        return "none";
    case XrayScaleSource::Fiducial:
        return "fiducial";
    case XrayScaleSource::Geometry:
        return "geometry";
    case XrayScaleSource::Isocentre:
        return "isocentre";
    case XrayScaleSource::Untold:
        return "not-told";
    }
    return "none";
}

} // namespace gauge::dicomio
