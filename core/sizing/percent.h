// The three ways in which the trade compares an implant's nominal size N with the diameter D in which it
// sits. They are different numbers of the same pair and are never mixed: N 25.5 mm in D 22.5 mm has a
// compression of 11.76 %, an oversizing of 13.33 % and a ratio of 0.882.
#pragma once

namespace gauge::core {

/// Compression, % of the nominal size: 100 (N - D) / N. Precondition: nominalMm > 0.
inline double compressionPercent(double nominalMm, double diameterMm) {
    return 100.0 * (nominalMm - diameterMm) / nominalMm;
}

/// Oversizing, % of the appendage's diameter: 100 (N - D) / D. Precondition: diameterMm > 0.
inline double oversizingPercent(double nominalMm, double diameterMm) {
    return 100.0 * (nominalMm - diameterMm) / diameterMm;
}

/// Deployed over nominal diameter, as DICOM codes it (PS3.16, 131218). Precondition: nominalMm > 0.
inline double deployedRatio(double nominalMm, double diameterMm) {
    return diameterMm / nominalMm;
}

/// The diameter at which an implant of this nominal size is compressed by so many percent.
inline double diameterAtCompression(double nominalMm, double percent) {
    return nominalMm * (1.0 - percent / 100.0);
}

} // namespace gauge::core
