// How a DICOM file encodes its attributes and its pixels (PS3.5 annex A).
#pragma once

#include <string>
#include <string_view>

namespace gauge::dicomio {

enum class PixelCoding { Native, Rle, Jpeg, JpegLs, Jpeg2000, Unsupported };

struct TransferSyntax {
    std::string uid;
    std::string name; ///< for people
    bool explicitVr = true;
    bool bigEndian = false;
    bool deflated = false;
    PixelCoding coding = PixelCoding::Native;
    bool lossless = true; ///< the coding keeps every bit
    bool encapsulated() const { return coding != PixelCoding::Native; }
};

/// The syntax of a UID. An unknown one is taken as every later syntax of the standard is: explicit little
/// endian with encapsulated pixels, of a coding that we do not know.
TransferSyntax transferSyntax(std::string_view uid);

} // namespace gauge::dicomio
