#include "dicomio/scan/transfer_syntax.h"

namespace gauge::dicomio {
namespace {

struct Known {
    std::string_view uid;
    std::string_view name;
    bool explicitVr;
    bool bigEndian;
    bool deflated;
    PixelCoding coding;
    bool lossless;
};

// PS3.6 table A-1. "(irreversible)" codings may still hold reversible data; only the certain ones count as
// lossless.
constexpr Known kKnown[] = {
    {"1.2.840.10008.1.2", "Implicit VR Little Endian", false, false, false, PixelCoding::Native, true},
    {"1.2.840.10008.1.2.1", "Explicit VR Little Endian", true, false, false, PixelCoding::Native, true},
    {"1.2.840.10008.1.2.1.99", "Deflated Explicit VR Little Endian", true, false, true, PixelCoding::Native,
     true},
    {"1.2.840.10008.1.2.2", "Explicit VR Big Endian", true, true, false, PixelCoding::Native, true},
    {"1.2.840.10008.1.2.5", "RLE Lossless", true, false, false, PixelCoding::Rle, true},
    {"1.2.840.10008.1.2.4.50", "JPEG Baseline", true, false, false, PixelCoding::Jpeg, false},
    {"1.2.840.10008.1.2.4.51", "JPEG Extended", true, false, false, PixelCoding::Jpeg, false},
    {"1.2.840.10008.1.2.4.57", "JPEG Lossless", true, false, false, PixelCoding::Jpeg, true},
    {"1.2.840.10008.1.2.4.70", "JPEG Lossless, first-order prediction", true, false, false, PixelCoding::Jpeg,
     true},
    {"1.2.840.10008.1.2.4.80", "JPEG-LS Lossless", true, false, false, PixelCoding::JpegLs, true},
    {"1.2.840.10008.1.2.4.81", "JPEG-LS Near-Lossless", true, false, false, PixelCoding::JpegLs, false},
    {"1.2.840.10008.1.2.4.90", "JPEG 2000 Lossless", true, false, false, PixelCoding::Jpeg2000, true},
    {"1.2.840.10008.1.2.4.91", "JPEG 2000", true, false, false, PixelCoding::Jpeg2000, false},
};

} // namespace

TransferSyntax transferSyntax(std::string_view uid) {
    for (const Known& k : kKnown)
        if (k.uid == uid)
            return {std::string(k.uid), std::string(k.name), k.explicitVr, k.bigEndian, k.deflated,
                    k.coding,           k.lossless};
    return {std::string(uid),
            "transfer syntax " + std::string(uid),
            true,
            false,
            false,
            PixelCoding::Unsupported,
            false};
}

} // namespace gauge::dicomio
