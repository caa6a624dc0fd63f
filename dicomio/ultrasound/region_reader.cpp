#include "dicomio/ultrasound/region_reader.h"

#include "core/number_text.h"

#include "dicomio/scan/tag.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>

namespace gauge::dicomio {
namespace {

using core::EchoRegion;
using core::EchoRegionKind;
using core::PhysicalUnit;
using core::PixelBox;
using core::RegionAxis;

std::string shown(const PixelBox& box) {
    return "(" + std::to_string(box.minX) + ", " + std::to_string(box.minY) + ") to (" +
           std::to_string(box.maxX) + ", " + std::to_string(box.maxY) + ")";
}

/// RegionSpatialFormat and RegionDataType: C.8.5.5.1.1 and C.8.5.5.1.2.
enum SpatialFormat { kFlat = 1, kMMode = 2, kSpectral = 3, kWaveForm = 4 };
enum DataType { kTissue = 1, kColourFlow = 2, kPulsedDoppler = 3, kContinuousDoppler = 4, kEcgTrace = 10 };

std::optional<EchoRegionKind> kindOf(int format, int type) {
    if (type == kEcgTrace)
        return format == kFlat || format == kSpectral ? std::nullopt : std::optional(EchoRegionKind::Ecg);
    const bool doppler = type == kPulsedDoppler || type == kContinuousDoppler;
    if (format == kFlat) {
        if (doppler) return std::nullopt;
        return type == kTissue       ? EchoRegionKind::Tissue
               : type == kColourFlow ? EchoRegionKind::Colour
                                     : EchoRegionKind::Other;
    }
    if (format == kSpectral) return type == kTissue ? std::nullopt : std::optional(EchoRegionKind::Spectral);
    if (format == kMMode) return EchoRegionKind::MMode;
    return EchoRegionKind::Other;
}

PhysicalUnit unitOf(int code) {
    return code >= 0 && code <= static_cast<int>(PhysicalUnit::Degree) ? static_cast<PhysicalUnit>(code)
                                                                       : PhysicalUnit::Unknown;
}

/// One item of the sequence, with the words for its place in it.
class RegionItem {
public:
    RegionItem(const Dataset& item, const std::string& name, std::vector<core::Notice>& notices)
        : m_item(item), m_name(name), m_notices(notices) {}

    void notice(const char* code, const std::string& text) {
        m_notices.push_back({code, m_name + ": " + text, {}});
    }

    /// A whole number; absent and unreadable ones are announced.
    std::optional<int> needed(Tag tag) {
        const auto value = m_item.integer(tag);
        if (!value) {
            notice("region-unreadable", value.error().message);
            return std::nullopt;
        }
        if (!*value)
            notice("region-unreadable", describe(tag) + (m_item.has(tag) ? " is empty." : " is absent."));
        return *value;
    }

    std::optional<PixelBox> box() {
        const auto minX = needed(tags::RegionLocationMinX0), minY = needed(tags::RegionLocationMinY0),
                   maxX = needed(tags::RegionLocationMaxX1), maxY = needed(tags::RegionLocationMaxY1);
        if (!minX || !minY || !maxX || !maxY) return std::nullopt;
        const PixelBox box{*minX, *minY, *maxX, *maxY};
        if (box.maxX > box.minX && box.maxY > box.minY) return box;
        notice("region-unreadable", "it reaches from " + shown(box) + ", which is no rectangle.");
        return std::nullopt;
    }

    RegionAxis axis(Tag unit, Tag delta, Tag reference, Tag value, int corner, std::string& fault) {
        RegionAxis axis;
        if (const auto code = m_item.integer(unit); code && *code) axis.unit = unitOf(**code);
        const auto step = m_item.number(delta);
        if (step && *step)
            axis.delta = **step;
        else if (fault.empty())
            fault = step ? describe(delta) + (m_item.has(delta) ? " is empty" : " is absent")
                         : withoutStop(step.error().message);
        const auto pixel = m_item.integer(reference);
        if (!pixel)
            notice("region-unreadable", pixel.error().message + " The reference pixel is taken as not told.");
        else if (*pixel)
            axis.referencePixel = static_cast<double>(corner) + **pixel;
        const auto at = m_item.number(value);
        if (at)
            axis.referenceValue = at->value_or(0.0);
        else {
            notice("region-unreadable", at.error().message + " The reference pixel is taken as not told.");
            axis.referencePixel.reset();
        }
        return axis;
    }

    const Dataset& dataset() const { return m_item; }

private:
    static std::string withoutStop(std::string text) {
        if (!text.empty() && text.back() == '.') text.pop_back();
        return text;
    }

    const Dataset& m_item;
    const std::string& m_name;
    std::vector<core::Notice>& m_notices;
};

/// Moves corners that are one pixel out into the picture; false when the region lies further outside.
bool fitInto(PixelBox& box, int columns, int rows) {
    if (box.minX < -kCornerSlack || box.minY < -kCornerSlack || box.maxX > columns - 1 + kCornerSlack ||
        box.maxY > rows - 1 + kCornerSlack)
        return false;
    box = {std::max(box.minX, 0), std::max(box.minY, 0), std::min(box.maxX, columns - 1),
           std::min(box.maxY, rows - 1)};
    return true;
}

std::string outside(const PixelBox& box, int columns, int rows) {
    return "it reaches from " + shown(box) + " in a picture of " + std::to_string(columns) + " x " +
           std::to_string(rows) +
           " pixels: the picture was scaled or cut after it was calibrated, so its scale "
           "cannot be true";
}

/// Why the deltas of a picture with two axes of length cannot be true; empty when they can.
std::string lengthFault(const RegionAxis& x, const RegionAxis& y) {
    const double widthMm = 10.0 * std::abs(x.delta), heightMm = 10.0 * std::abs(y.delta);
    const auto believable = [](double mm) { return mm >= kSmallestPixelMm && mm <= kLargestPixelMm; };
    if (!believable(widthMm) || !believable(heightMm))
        return "its pixels would be " + core::fixed(widthMm, 5) + " x " + core::fixed(heightMm, 5) + " mm, where " +
               core::fixed(kSmallestPixelMm, 2) + " to " + core::fixed(kLargestPixelMm, 0) + " mm can be true";
    const double aspect = std::max(widthMm / heightMm, heightMm / widthMm);
    if (aspect > kImpossibleAspect)
        return "its pixels would be " + core::fixed(widthMm, 4) + " x " + core::fixed(heightMm, 4) + " mm, one side " +
               core::fixed(aspect, 1) + " times the other, which cannot be true";
    return {};
}

std::string spectralFault(const RegionAxis& x, const RegionAxis& y) {
    if (y.unit == PhysicalUnit::CentimetrePerSecond &&
        !(y.delta != 0.0 && std::abs(y.delta) <= kLargestCmPerSAPixel))
        return "a pixel of its velocity axis would be " + core::fixed(y.delta, 5) + " cm/s, which cannot be true";
    if (x.unit == PhysicalUnit::Second && !(x.delta != 0.0 && std::abs(x.delta) <= kLargestSecondsAPixel))
        return "a pixel of its time axis would be " + core::fixed(x.delta, 5) + " s, which cannot be true";
    return {};
}

void addScale(EchoRegion& region, RegionItem& item) {
    core::PlanarScale scale;
    scale.mmPerPixel = {10.0 * std::abs(region.x.delta), 10.0 * std::abs(region.y.delta)};
    scale.relativeUncertainty = core::kRegionScaleUncertainty;
    scale.origin = core::ScaleOrigin::RegionCalibration;
    const double aspect = scale.mmPerPixel.maxCoeff() / scale.mmPerPixel.minCoeff();
    if (aspect > kUnusualAspect)
        item.notice("region-aspect",
                    "its pixels are " + core::fixed(scale.mmPerPixel.x(), 4) + " mm wide and " +
                        core::fixed(scale.mmPerPixel.y(), 4) +
                        " mm high; lengths along and across are measured accordingly. Compare a "
                        "length with the scale in the picture.");
    region.scale = std::move(scale);
}

/// Why no value of this region can be true; empty when they can. `deltaFault`: a pixel's size is not told.
std::string faultOf(const EchoRegion& region, bool flat, bool lengths, std::string deltaFault) {
    if (!flat) return spectralFault(region.x, region.y);
    if (!deltaFault.empty()) return deltaFault;
    return lengths ? lengthFault(region.x, region.y) : std::string();
}

/// @param boxFault  why the rectangle makes every scale untrue; empty when it does not.
void judge(EchoRegion& region, const std::optional<EchoRegionKind>& kind, std::string boxFault,
           std::string deltaFault, RegionItem& item) {
    const bool lengths =
        region.x.unit == PhysicalUnit::Centimetre && region.y.unit == PhysicalUnit::Centimetre;
    const bool flat = region.kind == EchoRegionKind::Tissue || region.kind == EchoRegionKind::Colour;
    std::string& fault = region.scaleFault;
    if (!kind) {
        fault = "its spatial format and its data type contradict each other";
        item.notice("region-contradictory", fault + "; nothing is measured in it.");
        return;
    }
    fault = !boxFault.empty() ? std::move(boxFault) : faultOf(region, flat, lengths, std::move(deltaFault));
    if (fault.empty() && !flat && lengths) {
        fault = "it calls both axes lengths but shows no flat picture (" +
                std::string(core::words(region.kind)) + ")";
        item.notice("region-contradictory", fault + "; no length is measured in it.");
    } else if (!fault.empty() && (flat || region.kind == EchoRegionKind::Spectral)) {
        item.notice("region-scale-refused", fault + ". Nothing is measured on it" +
                                                (flat ? " before a scale is marked by hand." : "."));
    }
    if (fault.empty() && flat && lengths) addScale(region, item);
}

std::optional<EchoRegion> readRegion(RegionItem& item, int columns, int rows) {
    const auto box = item.box();
    if (!box) return std::nullopt;
    const auto format = item.needed(tags::RegionSpatialFormat), type = item.needed(tags::RegionDataType);
    const auto kind = format && type ? kindOf(*format, *type) : std::optional(EchoRegionKind::Other);
    EchoRegion region;
    region.kind = kind.value_or(EchoRegionKind::Other);
    region.box = *box;
    std::string deltaFault, boxFault;
    region.x = item.axis(tags::PhysicalUnitsXDirection, tags::PhysicalDeltaX, tags::ReferencePixelX0,
                         tags::ReferencePixelPhysicalValueX, box->minX, deltaFault);
    region.y = item.axis(tags::PhysicalUnitsYDirection, tags::PhysicalDeltaY, tags::ReferencePixelY0,
                         tags::ReferencePixelPhysicalValueY, box->minY, deltaFault);
    if (const auto flags = item.dataset().number(tags::RegionFlags); flags && *flags)
        region.highPriority = std::fmod(std::floor(std::abs(**flags)), 2.0) == 1.0;
    if (!fitInto(region.box, columns, rows)) boxFault = outside(*box, columns, rows);
    judge(region, kind, std::move(boxFault), std::move(deltaFault), item);
    if (const auto angle = item.dataset().number(tags::DopplerCorrectionAngle);
        region.kind == EchoRegionKind::Spectral && angle && *angle && **angle != 0.0)
        item.notice("region-angle-corrected",
                    "its velocities were corrected by the scanner for an angle of " + core::fixed(**angle, 0) +
                        " degrees between beam and flow.");
    return region;
}

bool overlap(const PixelBox& a, const PixelBox& b) {
    return a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;
}

bool sameAxis(const RegionAxis& a, const RegionAxis& b) {
    return a.unit == b.unit && std::abs(a.delta - b.delta) <= 1e-3 * std::abs(a.delta);
}

/// Regions that share pixels and mean different things by them.
void announceOverlaps(const std::vector<EchoRegion>& regions, const std::vector<std::string>& names,
                      std::vector<core::Notice>& notices) {
    for (std::size_t i = 0; i < regions.size(); ++i)
        for (std::size_t j = i + 1; j < regions.size(); ++j)
            if (overlap(regions[i].box, regions[j].box) &&
                !(sameAxis(regions[i].x, regions[j].x) && sameAxis(regions[i].y, regions[j].y)))
                notices.push_back(
                    {"regions-overlap",
                     names[i] + " and " + names[j] +
                         " share pixels but not their scale; there the one of high priority counts, "
                         "else the smaller one.",
                     {}});
}

} // namespace

/// More regions than this are no picture; the pairs of overlaps grow with their square.
constexpr std::size_t kMostRegions = 256;

std::vector<core::EchoRegion> readRegions(const Dataset& dataset, int columns, int rows,
                                          std::vector<core::Notice>& notices) {
    std::vector<EchoRegion> regions;
    std::vector<std::string> names;
    const auto& items = dataset.items(tags::SequenceOfUltrasoundRegions);
    for (std::size_t i = 0; i < items.size() && i < kMostRegions; ++i) {
        const std::string name =
            "Ultrasound region " + std::to_string(i + 1) + " of " + std::to_string(items.size());
        RegionItem item(items[i], name, notices);
        if (auto region = readRegion(item, columns, rows)) {
            regions.push_back(std::move(*region));
            names.push_back(name);
        }
    }
    if (items.size() > kMostRegions)
        notices.push_back({"region-unreadable",
                           describe(tags::SequenceOfUltrasoundRegions) + " has " +
                               std::to_string(items.size()) + " items; only the first " +
                               std::to_string(kMostRegions) + " were read.",
                           {}});
    announceOverlaps(regions, names, notices);
    return regions;
}

} // namespace gauge::dicomio
