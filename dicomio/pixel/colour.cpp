#include "dicomio/pixel/colour.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;

std::uint8_t held(double value) {
    return static_cast<std::uint8_t>(std::clamp(std::lround(value), 0L, 255L));
}

/// Whole range of the stored bits onto 0 … 255.
class Scale {
public:
    explicit Scale(const PixelFormat& format)
        : m_lowest(format.isSigned ? -std::ldexp(1.0, format.bitsStored - 1) : 0.0),
          m_factor(255.0 / (std::ldexp(1.0, format.bitsStored) - 1.0)) {}
    double operator()(std::int32_t value) const { return (value - m_lowest) * m_factor; }

private:
    double m_lowest;
    double m_factor;
};

/// The inverse of PS3.3 C.7.6.3.1.2 (YBR_FULL), which is that of ITU-R BT.601 at full range.
void rgbFromYbr(double y, double cb, double cr, std::uint8_t* out) {
    constexpr double kMiddle = 128.0;
    constexpr double kRed = 0.299, kGreen = 0.587, kBlue = 0.114; // shares of luminance
    const double b = cb - kMiddle, r = cr - kMiddle;
    out[0] = held(y + 2.0 * (1.0 - kRed) * r);
    out[1] = held(y - 2.0 * (kBlue * (1.0 - kBlue) * b + kRed * (1.0 - kRed) * r) / kGreen);
    out[2] = held(y + 2.0 * (1.0 - kBlue) * b);
}

tl::unexpected<core::Error> noFrame(int frame, int count) {
    return failure(ErrorCode::InvalidArgument, "Frame " + std::to_string(frame + 1) +
                                                   " does not exist; the image has " + std::to_string(count) +
                                                   (count == 1 ? " frame." : " frames."));
}

bool isHalved(const ScannedFile& scanned) {
    return scanned.format->photometric == "YBR_FULL_422" && !scanned.syntax.encapsulated();
}

/// Y1 Y2 Cb Cr of each two pixels to three samples for each.
std::vector<std::int32_t> withFullChroma(const std::vector<std::int32_t>& halved) {
    std::vector<std::int32_t> full(halved.size() / 4 * 6);
    for (std::size_t pair = 0; pair < halved.size() / 4; ++pair) {
        const std::int32_t* in = halved.data() + 4 * pair;
        std::int32_t* out = full.data() + 6 * pair;
        out[0] = in[0], out[3] = in[1];
        out[1] = out[4] = in[2];
        out[2] = out[5] = in[3];
    }
    return full;
}

} // namespace

core::Result<ColourReader> ColourReader::open(const ScannedFile& scanned) {
    auto frames = FrameReader::open(scanned);
    if (!frames) return tl::make_unexpected(frames.error());
    const auto photometric = photometricOf(*scanned.format, scanned.syntax);
    if (!photometric) return tl::make_unexpected(photometric.error());
    if (!isGrey(*photometric) && scanned.format->bitsAllocated > 16)
        return failure(ErrorCode::ObjectUnsupported,
                       describe(tags::BitsAllocated) + " is " +
                           std::to_string(scanned.format->bitsAllocated) +
                           "; colours are read up to 16 bits a sample.",
                       {{"tag", describe(tags::BitsAllocated)}});
    ColourReader reader(scanned, std::move(*frames), *photometric);
    reader.m_notices = reader.m_frames.notices();
    if (*photometric == Photometric::Palette) {
        auto palette = readPalette(scanned.dataset, *scanned.format, reader.m_notices);
        if (!palette) return tl::make_unexpected(palette.error());
        reader.m_palette = std::move(*palette);
    }
    return reader;
}

core::Result<std::vector<std::int32_t>> ColourReader::readSamples(int frame) const {
    if (frame < 0 || frame >= count()) return noFrame(frame, count());
    auto samples = m_frames.readValues(frame);
    if (!samples || !isHalved(*m_scanned)) return samples;
    return withFullChroma(*samples);
}

core::Result<core::RgbFrame> ColourReader::readRgb(int frame) const {
    const auto samples = readSamples(frame);
    if (!samples) return tl::make_unexpected(samples.error());
    core::RgbFrame rgb{columns(), rows(), {}};
    const auto pixels = static_cast<std::size_t>(m_scanned->format->pixelsPerFrame());
    rgb.samples.resize(3 * pixels);
    const Scale scale(*m_scanned->format);
    const bool ybr = m_frames.codedColour() == CodedColour::Ybr;
    for (std::size_t p = 0; p < pixels; ++p) {
        std::uint8_t* out = rgb.samples.data() + 3 * p;
        if (m_palette) {
            const auto& colour = m_palette->at((*samples)[p]);
            std::copy(colour.begin(), colour.end(), out);
        } else if (!isColour()) {
            const std::uint8_t grey = held(scale((*samples)[p]));
            std::fill(out, out + 3,
                      m_photometric == Photometric::Monochrome1 ? static_cast<std::uint8_t>(255 - grey)
                                                                : grey);
        } else {
            const std::int32_t* in = samples->data() + 3 * p;
            if (ybr)
                rgbFromYbr(scale(in[0]), scale(in[1]), scale(in[2]), out);
            else
                for (int s = 0; s < 3; ++s)
                    out[s] = held(scale(in[s]));
        }
    }
    return rgb;
}

} // namespace gauge::dicomio
