#include "dicomio/scan/transfer_syntax.h"

#include <algorithm>
#include <iterator>

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

struct Named {
    std::string_view uid;
    std::string_view name;
};

// PS3.6 table A-1 once more: what is recognised, so that it can be refused by its name.
constexpr Named kNamed[] = {
    {"1.2.840.10008.1.2.1.98", "Encapsulated Uncompressed Explicit VR Little Endian"},
    {"1.2.840.10008.1.2.4.52", "JPEG Extended (process 3 and 5, retired)"},
    {"1.2.840.10008.1.2.4.53", "JPEG Spectral Selection (process 6 and 8, retired)"},
    {"1.2.840.10008.1.2.4.54", "JPEG Spectral Selection (process 7 and 9, retired)"},
    {"1.2.840.10008.1.2.4.55", "JPEG Full Progression (process 10 and 12, retired)"},
    {"1.2.840.10008.1.2.4.56", "JPEG Full Progression (process 11 and 13, retired)"},
    {"1.2.840.10008.1.2.4.58", "JPEG Lossless (process 15, retired)"},
    {"1.2.840.10008.1.2.4.59", "JPEG Extended, Hierarchical (process 16 and 18, retired)"},
    {"1.2.840.10008.1.2.4.60", "JPEG Extended, Hierarchical (process 17 and 19, retired)"},
    {"1.2.840.10008.1.2.4.61", "JPEG Spectral Selection, Hierarchical (process 20 and 22, retired)"},
    {"1.2.840.10008.1.2.4.62", "JPEG Spectral Selection, Hierarchical (process 21 and 23, retired)"},
    {"1.2.840.10008.1.2.4.63", "JPEG Full Progression, Hierarchical (process 24 and 26, retired)"},
    {"1.2.840.10008.1.2.4.64", "JPEG Full Progression, Hierarchical (process 25 and 27, retired)"},
    {"1.2.840.10008.1.2.4.65", "JPEG Lossless, Hierarchical (process 28, retired)"},
    {"1.2.840.10008.1.2.4.66", "JPEG Lossless, Hierarchical (process 29, retired)"},
    {"1.2.840.10008.1.2.4.92", "JPEG 2000 Part 2 Multi-component, Lossless"},
    {"1.2.840.10008.1.2.4.93", "JPEG 2000 Part 2 Multi-component"},
    {"1.2.840.10008.1.2.4.94", "JPIP Referenced"},
    {"1.2.840.10008.1.2.4.95", "JPIP Referenced Deflate"},
    {"1.2.840.10008.1.2.4.100", "MPEG-2 Main Profile, Main Level"},
    {"1.2.840.10008.1.2.4.101", "MPEG-2 Main Profile, High Level"},
    {"1.2.840.10008.1.2.4.102", "MPEG-4 AVC/H.264 High Profile"},
    {"1.2.840.10008.1.2.4.103", "MPEG-4 AVC/H.264 BD-compatible High Profile"},
    {"1.2.840.10008.1.2.4.104", "MPEG-4 AVC/H.264 High Profile for 2D Video"},
    {"1.2.840.10008.1.2.4.105", "MPEG-4 AVC/H.264 High Profile for 3D Video"},
    {"1.2.840.10008.1.2.4.106", "MPEG-4 AVC/H.264 Stereo High Profile"},
    {"1.2.840.10008.1.2.4.107", "HEVC/H.265 Main Profile"},
    {"1.2.840.10008.1.2.4.108", "HEVC/H.265 Main 10 Profile"},
    {"1.2.840.10008.1.2.4.110", "JPEG XL Lossless"},
    {"1.2.840.10008.1.2.4.111", "JPEG XL JPEG Recompression"},
    {"1.2.840.10008.1.2.4.112", "JPEG XL"},
    {"1.2.840.10008.1.2.4.201", "High-Throughput JPEG 2000 Lossless"},
    {"1.2.840.10008.1.2.4.202", "High-Throughput JPEG 2000 with RPCL Options, Lossless"},
    {"1.2.840.10008.1.2.4.203", "High-Throughput JPEG 2000"},
    {"1.2.840.10008.1.2.4.204", "JPIP HTJ2K Referenced"},
    {"1.2.840.10008.1.2.4.205", "JPIP HTJ2K Referenced Deflate"},
    {"1.2.840.10008.1.2.6.1", "RFC 2557 MIME Encapsulation (retired)"},
    {"1.2.840.10008.1.2.7.1", "SMPTE ST 2110-20 Uncompressed Progressive Active Video"},
    {"1.2.840.10008.1.2.7.2", "SMPTE ST 2110-20 Uncompressed Interlaced Active Video"},
    {"1.2.840.10008.1.2.7.3", "SMPTE ST 2110-30 PCM Digital Audio"},
};

std::string_view nameOf(std::string_view uid) {
    for (const Named& n : kNamed)
        if (n.uid == uid) return n.name;
    if (uid.ends_with(".1")) return nameOf(uid.substr(0, uid.size() - 2)); // the fragmentable form of a video
    return "no transfer syntax of the standard";
}

// Those whose data set is deflated although they are not read.
constexpr std::string_view kJpipDeflate[] = {"1.2.840.10008.1.2.4.95", "1.2.840.10008.1.2.4.205"};

} // namespace

TransferSyntax transferSyntax(std::string_view uid) {
    for (const Known& k : kKnown)
        if (k.uid == uid)
            return {std::string(k.uid), std::string(k.name), k.explicitVr, k.bigEndian, k.deflated,
                    k.coding,           k.lossless};
    return {std::string(uid),
            std::string(nameOf(uid)),
            true,
            false,
            std::find(std::begin(kJpipDeflate), std::end(kJpipDeflate), uid) != std::end(kJpipDeflate),
            PixelCoding::Unsupported,
            false};
}

} // namespace gauge::dicomio
