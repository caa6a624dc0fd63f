#include "dicomio/pixel/coded_colour.h"

#include "dicomio/pixel/codestream_header.h"

#include <string>

namespace gauge::dicomio {

CodedColour codedColour(const ScannedFile& scanned, std::span<const std::byte> frame,
                        std::vector<core::Notice>& notices) {
    const std::string& declared = scanned.format->photometric;
    if (scanned.format->samplesPerPixel != 3) return CodedColour::None;
    const auto contradicted = [&](const std::string& finding, CodedColour colour) {
        notices.push_back({"colour-contradicted",
                           describe(tags::PhotometricInterpretation) + " is " + declared + ", but " +
                               finding + "; the colours follow the code stream.",
                           {}});
        return colour;
    };
    const StreamColour stream = streamColour(frame, scanned.syntax.coding);
    const bool ybr = declared.starts_with("YBR_FULL");
    if (scanned.syntax.coding == PixelCoding::Jpeg2000) {
        const bool transformed = declared == "YBR_ICT" || declared == "YBR_RCT";
        if (transformed && !stream.multipleComponentTransform)
            return contradicted("the JPEG 2000 code stream transforms no components", CodedColour::Rgb);
        if (ybr && stream.multipleComponentTransform)
            return contradicted("the JPEG 2000 code stream transforms its components itself",
                                CodedColour::Rgb);
        return ybr ? CodedColour::Ybr : CodedColour::Rgb;
    }
    if (ybr && (stream.adobeTransform == 0 || stream.rgbNames))
        return contradicted("the JPEG code stream says that it holds RGB", CodedColour::Rgb);
    if (!ybr && stream.adobeTransform == 1)
        return contradicted("the JPEG code stream says that it holds YCbCr", CodedColour::Ybr);
    if (!ybr && stream.subsampled)
        return contradicted("the JPEG code stream halves two components, as only chroma is",
                            CodedColour::Ybr);
    return ybr ? CodedColour::Ybr : CodedColour::Rgb;
}

} // namespace gauge::dicomio
