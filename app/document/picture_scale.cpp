#include "app/document/picture_scale.h"

#include "app/format/core_sentences.h"
#include "core/fluoro/catheter_profile.h"
#include "core/fluoro/object_scale.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace gauge::app {
namespace {

core::ObjectScaleOptions optionsFor(const CineData& cine, int frame) {
    core::ObjectScaleOptions options;
    options.pixelAspect = cine.pixelAspect;
    if (cine.xray && frame >= 0 && static_cast<std::size_t>(frame) < cine.xray->facts.frames.size())
        if (const auto sod = cine.xray->facts.frames[static_cast<std::size_t>(frame)].sourceToIsocentreMm)
            options.sourceToObjectMm = *sod;
    return options;
}

core::Result<core::HandScale> catheterScale(const core::PictureScale& scale, const CineData& cine) {
    core::ScaleObject object;
    object.outerDiameterMm = scale.knownMm;
    const auto diameter = core::outerDiameter(object);
    if (!diameter) return tl::unexpected(diameter.error());
    core::PixelLength width = core::betweenClicks(scale.from, scale.to, cine.pixelAspect);
    if (scale.byEdgeProfile) {
        const auto grey = cine.frames->grey(scale.frame);
        if (!grey) return tl::unexpected(grey.error());
        const auto profile = core::catheterProfile(*grey, scale.from, scale.to);
        if (!profile) return tl::unexpected(profile.error());
        width = profile->width;
    }
    const auto made = core::objectScale(width, *diameter, optionsFor(cine, scale.frame));
    if (!made) return tl::unexpected(made.error());
    return core::HandScale{made->planar, scale.within};
}

QString words(const core::PlanarScale& scale) {
    return QCoreApplication::translate("PictureScale", "Scale: %1\u00A0mm a pixel ±\u00A0%2\u00A0% (%3)")
        .arg(QString::number(scale.mmPerPixel.x(), 'f', 3),
             QString::number(std::ceil(1000.0 * scale.relativeUncertainty - 1e-9) / 10.0, 'f', 1),
             coreWords(std::string(core::words(scale.origin))));
}

const core::EchoRegion* firstScaled(const CineData& cine) {
    const auto found = std::find_if(cine.regions.begin(), cine.regions.end(),
                                    [](const core::EchoRegion& region) { return region.scale.has_value(); });
    return found == cine.regions.end() ? nullptr : &*found;
}

bool hasSpectrum(const CineData& cine) {
    return std::any_of(cine.regions.begin(), cine.regions.end(), [](const core::EchoRegion& region) {
        return region.kind == core::EchoRegionKind::Spectral && region.y.unit == core::PhysicalUnit::CentimetrePerSecond;
    });
}

/// Where in its volume a slice of 3D echo lies.
QString sliceWords(const EchoStack& stack, int frame) {
    if (frame < 0 || static_cast<std::size_t>(frame) >= stack.placeOfFrame.size()) return {};
    const EchoStack::Place place = stack.placeOfFrame[static_cast<std::size_t>(frame)];
    return QCoreApplication::translate("PictureScale", "3D echo, slice %1 of %2, %3\u00A0mm apart; time point %4 of %5. Lengths hold "
                                                       "within a slice; left, back and head are not known.")
        .arg(place.slice + 1)
        .arg(stack.slices)
        .arg(QString::number(stack.voxelMm.z(), 'f', 2))
        .arg(place.timePoint + 1)
        .arg(stack.timePoints);
}

} // namespace

core::Result<core::HandScale> handScale(const core::PictureScale& scale, const CineData& cine) {
    if (scale.origin == core::ScaleOrigin::Catheter) return catheterScale(scale, cine);
    auto marked = core::markedScale(scale.from, scale.to, scale.knownMm, cine.pixelAspect);
    if (!marked) return tl::unexpected(marked.error());
    marked->origin = scale.origin;
    return core::HandScale{*marked, scale.within};
}

std::optional<core::PlanarScale> scaleOfFile(const CineData& cine, int frame) {
    if (!cine.xray || frame < 0 || static_cast<std::size_t>(frame) >= cine.xray->facts.frames.size()) return std::nullopt;
    const auto& scale = cine.xray->facts.frames[static_cast<std::size_t>(frame)].scale;
    return scale ? std::optional(scale->planar) : std::nullopt;
}

bool hasScale(const CineData& cine, int frame, const std::optional<core::Result<core::HandScale>>& byHand) {
    return (byHand && *byHand) || firstScaled(cine) || scaleOfFile(cine, frame) || hasSpectrum(cine);
}

QString scaleWords(const CineData& cine, int frame, const std::optional<core::Result<core::HandScale>>& byHand) {
    if (byHand && !*byHand) return QString::fromStdString(byHand->error().message);
    if (cine.stack) return sliceWords(*cine.stack, frame) + QLatin1Char('\n') + words(*cine.regions.front().scale);
    const QString spectrum = hasSpectrum(cine)
                                 ? QCoreApplication::translate("PictureScale", "On the spectrum velocities, times and envelopes "
                                                                               "are measured (Alt+6, Alt+7, Alt+8), no lengths.")
                                 : QString();
    const auto with = [&](const QString& scale) { return spectrum.isEmpty() ? scale : scale + QLatin1Char('\n') + spectrum; };
    if (byHand) return with(words((*byHand)->scale));
    if (const core::EchoRegion* region = firstScaled(cine)) return with(words(*region->scale));
    if (!spectrum.isEmpty()) return spectrum;
    if (const auto scale = scaleOfFile(cine, frame)) return words(*scale);
    QString why;
    if (cine.xray)
        why = QString::fromStdString(cine.xray->facts.scaleText);
    else
        for (const core::EchoRegion& region : cine.regions)
            if (!region.scaleFault.empty()) why = QString::fromStdString(region.scaleFault);
    const QString todo = QCoreApplication::translate("PictureScale", "No scale: calibrate by hand before measuring (key K).");
    return why.isEmpty() ? todo : QCoreApplication::translate("PictureScale", "%1 %2").arg(why, todo);
}

} // namespace gauge::app
