#include "sample-data/dicom/xa_writer.h"

#include "sample-data/dicom/dicom_object.h"

#include <cassert>
#include <cmath>

namespace gauge::sample_case {

core::Result<void> writeXaRun(const XaRun& run, const std::filesystem::path& file) {
    assert(!run.frames.empty());
    const CArm& arm = run.arm;
    DicomObject object(UID_XRayAngiographicImageStorage, run.facts);
    ItemWriter root = object.root();
    root.text(DCM_ImageType, "ORIGINAL\\PRIMARY\\SINGLE PLANE");
    root.text(DCM_AcquisitionDate, run.facts.date);
    root.text(DCM_AcquisitionTime, run.facts.time);
    root.text(DCM_AcquisitionDateTime, run.facts.date + run.facts.time);
    root.text(DCM_BurnedInAnnotation, "YES");
    root.text(DCM_LossyImageCompression, "00");
    root.text(DCM_PatientOrientation, "");
    root.text(DCM_ContrastBolusAgent, "Invented");
    root.us(DCM_SamplesPerPixel, 1);
    root.text(DCM_PhotometricInterpretation, "MONOCHROME2");
    root.us(DCM_Rows, arm.rows);
    root.us(DCM_Columns, arm.columns);
    root.us(DCM_BitsAllocated, 8);
    root.us(DCM_BitsStored, 8);
    root.us(DCM_HighBit, 7);
    root.us(DCM_PixelRepresentation, 0);
    root.text(DCM_PixelIntensityRelationship, "DISP");
    root.text(DCM_NumberOfFrames, std::to_string(run.frames.size()));
    root.at(DCM_FrameIncrementPointer, DCM_FrameTime);
    root.text(DCM_FrameTime, decimalString(run.frameMs));
    root.text(DCM_CineRate, std::to_string(std::lround(1000.0 / run.frameMs)));
    root.text(DCM_RecommendedDisplayFrameRate, std::to_string(std::lround(1000.0 / run.frameMs)));
    root.text(DCM_KVP, "80");
    root.text(DCM_RadiationSetting, "GR");
    root.text(DCM_XRayTubeCurrent, "400");
    root.text(DCM_ExposureTime, "6");
    root.text(DCM_Exposure, "2");
    root.text(DCM_AveragePulseWidth, "6");
    root.text(DCM_ImagerPixelSpacing, decimals({arm.imagerSpacingMm, arm.imagerSpacingMm}));
    root.text(DCM_PositionerMotion, "STATIC");
    root.text(DCM_PositionerPrimaryAngle, decimalString(arm.primaryDeg));
    root.text(DCM_PositionerSecondaryAngle, decimalString(arm.secondaryDeg));
    root.text(DCM_DistanceSourceToDetector, decimalString(arm.sidMm));
    root.text(DCM_DistanceSourceToPatient, decimalString(arm.sodMm));
    root.text(DCM_EstimatedRadiographicMagnificationFactor, decimalString(arm.sidMm / arm.sodMm));
    root.text(DCM_WindowCenter, "128");
    root.text(DCM_WindowWidth, "256");
    std::vector<const std::vector<std::uint8_t>*> frames;
    for (const Picture& frame : run.frames)
        frames.push_back(&frame.bytes());
    root.pixels(frames);
    return object.save(file, run.runLength);
}

} // namespace gauge::sample_case
