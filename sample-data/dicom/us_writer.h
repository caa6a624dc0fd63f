// Writes ultrasound pictures as DICOM: a still as Ultrasound Image (PS3.3 A.6), a cine as Ultrasound Multi-frame
// Image (A.7), with the calibrated regions of C.8.5.5.
#pragma once

#include "core/result.h"
#include "sample-data/dicom/image_facts.h"
#include "sample-data/picture/picture.h"

#include <Eigen/Core>
#include <filesystem>
#include <optional>
#include <vector>

namespace gauge::sample_case {

/// One rectangle with a scale. Numbers are those of the standard's tables.
struct UsRegion {
    enum Format { TwoD = 1, Spectral = 3, WaveForm = 4 };
    enum Data { Tissue = 1, ContinuousWave = 4, Ecg = 10 };
    enum Unit { NoUnit = 0, Centimetre = 3, Second = 4, CentimetrePerSecond = 7 };

    Format format = TwoD;
    Data data = Tissue;
    int x0 = 0, y0 = 0, x1 = 0, y1 = 0; ///< corners included, pixels of the picture
    Unit unitX = Centimetre, unitY = Centimetre;
    double deltaX = 0.0, deltaY = 0.0;            ///< units a pixel
    std::optional<Eigen::Vector2i> referencePixel; ///< of the picture; its value is 0 on both axes
};

struct UsImage {
    ImageFacts facts;
    std::vector<Picture> frames; ///< at least 1, all alike
    std::vector<UsRegion> regions;
    double frameMs = 0.0;        ///< of a cine
    double heartRatePerMin = 0.0;
    std::vector<double> rWavesMs; ///< from the first frame
    std::string typeOfEcho = "0001"; ///< Image Type value 4: 0001 two-dimensional, 0004 continuous-wave Doppler
    std::optional<CodedWord> view;
    bool runLength = false;
};

/// @errors OutputUnwritable.
core::Result<void> writeUsImage(const UsImage& image, const std::filesystem::path& file);

} // namespace gauge::sample_case
