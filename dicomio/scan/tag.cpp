#include "dicomio/scan/tag.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <iterator>

namespace gauge::dicomio {
namespace {

struct NamedTag {
    Tag tag;
    const char* keyword;
    bool kept;           ///< its value is kept by the scanner
    const char* vr = ""; ///< of binary numbers and sequences: implicit files do not say it
};

// In the order of their numbers, for the binary search below.
constexpr NamedTag kTags[] = {
    {tags::MediaStorageSopClassUid, "MediaStorageSOPClassUID", true},
    {tags::TransferSyntaxUid, "TransferSyntaxUID", true},
    {tags::DirectoryRecordSequence, "DirectoryRecordSequence", true, "SQ"},
    {tags::DirectoryRecordType, "DirectoryRecordType", true},
    {tags::ReferencedFileId, "ReferencedFileID", true},
    {tags::ReferencedSopInstanceUidInFile, "ReferencedSOPInstanceUIDInFile", true},
    {tags::SpecificCharacterSet, "SpecificCharacterSet", true},
    {tags::ImageType, "ImageType", true},
    {tags::SopClassUid, "SOPClassUID", true},
    {tags::SopInstanceUid, "SOPInstanceUID", true},
    {tags::StudyDate, "StudyDate", true},
    {tags::SeriesDate, "SeriesDate", true},
    {tags::AcquisitionDate, "AcquisitionDate", true},
    {tags::ContentDate, "ContentDate", true},
    {tags::AcquisitionDateTime, "AcquisitionDateTime", true},
    {tags::StudyTime, "StudyTime", true},
    {tags::SeriesTime, "SeriesTime", true},
    {tags::AcquisitionTime, "AcquisitionTime", true},
    {tags::ContentTime, "ContentTime", true},
    {tags::Modality, "Modality", true},
    {tags::CodeValue, "CodeValue", true},
    {tags::CodingSchemeDesignator, "CodingSchemeDesignator", true},
    {tags::TimezoneOffsetFromUtc, "TimezoneOffsetFromUTC", true},
    {tags::SeriesDescription, "SeriesDescription", true},
    {tags::RecommendedDisplayFrameRate, "RecommendedDisplayFrameRate", true},
    {tags::FrameType, "FrameType", true},
    {tags::PatientName, "PatientName", true},
    {tags::PatientId, "PatientID", true},
    {tags::IssuerOfPatientId, "IssuerOfPatientID", true},
    {tags::CineRate, "CineRate", true},
    {tags::SliceThickness, "SliceThickness", true},
    {tags::EffectiveDuration, "EffectiveDuration", true},
    {tags::SpacingBetweenSlices, "SpacingBetweenSlices", true},
    {tags::TriggerTime, "TriggerTime", true},
    {tags::NominalInterval, "NominalInterval", true},
    {tags::FrameTime, "FrameTime", true},
    {tags::FrameTimeVector, "FrameTimeVector", true},
    {tags::LowRRValue, "LowRRValue", true},
    {tags::HighRRValue, "HighRRValue", true},
    {tags::HeartRate, "HeartRate", true},
    {tags::DistanceSourceToDetector, "DistanceSourceToDetector", true},
    {tags::DistanceSourceToPatient, "DistanceSourceToPatient", true},
    {tags::EstimatedRadiographicMagnificationFactor, "EstimatedRadiographicMagnificationFactor", true},
    {tags::GantryDetectorTilt, "GantryDetectorTilt", true},
    {tags::ImagerPixelSpacing, "ImagerPixelSpacing", true},
    {tags::PositionerMotion, "PositionerMotion", true},
    {tags::PositionerPrimaryAngle, "PositionerPrimaryAngle", true},
    {tags::PositionerSecondaryAngle, "PositionerSecondaryAngle", true},
    {tags::PositionerPrimaryAngleIncrement, "PositionerPrimaryAngleIncrement", true},
    {tags::PositionerSecondaryAngleIncrement, "PositionerSecondaryAngleIncrement", true},
    {tags::PatientPosition, "PatientPosition", true},
    {tags::SequenceOfUltrasoundRegions, "SequenceOfUltrasoundRegions", true, "SQ"},
    {tags::RegionSpatialFormat, "RegionSpatialFormat", true, "US"},
    {tags::RegionDataType, "RegionDataType", true, "US"},
    {tags::RegionFlags, "RegionFlags", true, "UL"},
    {tags::RegionLocationMinX0, "RegionLocationMinX0", true, "UL"},
    {tags::RegionLocationMinY0, "RegionLocationMinY0", true, "UL"},
    {tags::RegionLocationMaxX1, "RegionLocationMaxX1", true, "UL"},
    {tags::RegionLocationMaxY1, "RegionLocationMaxY1", true, "UL"},
    {tags::ReferencePixelX0, "ReferencePixelX0", true, "SL"},
    {tags::ReferencePixelY0, "ReferencePixelY0", true, "SL"},
    {tags::PhysicalUnitsXDirection, "PhysicalUnitsXDirection", true, "US"},
    {tags::PhysicalUnitsYDirection, "PhysicalUnitsYDirection", true, "US"},
    {tags::ReferencePixelPhysicalValueX, "ReferencePixelPhysicalValueX", true, "FD"},
    {tags::ReferencePixelPhysicalValueY, "ReferencePixelPhysicalValueY", true, "FD"},
    {tags::PhysicalDeltaX, "PhysicalDeltaX", true, "FD"},
    {tags::PhysicalDeltaY, "PhysicalDeltaY", true, "FD"},
    {tags::DopplerCorrectionAngle, "DopplerCorrectionAngle", true, "FD"},
    {tags::RWaveTimeVector, "RWaveTimeVector", true, "FL"},
    {tags::CardiacRRIntervalSpecified, "CardiacRRIntervalSpecified", true, "FD"},
    {tags::FrameAcquisitionDateTime, "FrameAcquisitionDateTime", true},
    {tags::CardiacSynchronizationSequence, "CardiacSynchronizationSequence", true, "SQ"},
    {tags::FrameReferenceDateTime, "FrameReferenceDateTime", true},
    {tags::CtImageFrameTypeSequence, "CTImageFrameTypeSequence", true, "SQ"},
    {tags::ProjectionPixelCalibrationSequence, "ProjectionPixelCalibrationSequence", true, "SQ"},
    {tags::DistanceSourceToIsocenter, "DistanceSourceToIsocenter", true, "FL"},
    {tags::ObjectPixelSpacingInCenterOfBeam, "ObjectPixelSpacingInCenterOfBeam", true, "FL"},
    {tags::PositionerPositionSequence, "PositionerPositionSequence", true, "SQ"},
    {tags::IsocenterReferenceSystemSequence, "IsocenterReferenceSystemSequence", true, "SQ"},
    {tags::PositionerIsocenterPrimaryAngle, "PositionerIsocenterPrimaryAngle", true, "FL"},
    {tags::PositionerIsocenterSecondaryAngle, "PositionerIsocenterSecondaryAngle", true, "FL"},
    {tags::XRayGeometrySequence, "XRayGeometrySequence", true, "SQ"},
    {tags::UsImageDescriptionSequence, "USImageDescriptionSequence", true, "SQ"},
    {tags::ImageDataTypeSequence, "ImageDataTypeSequence", true, "SQ"},
    {tags::UltrasoundDataType, "DataType", true},
    {tags::StudyInstanceUid, "StudyInstanceUID", true},
    {tags::SeriesInstanceUid, "SeriesInstanceUID", true},
    {tags::AcquisitionNumber, "AcquisitionNumber", true},
    {tags::InstanceNumber, "InstanceNumber", true},
    {tags::ImagePositionPatient, "ImagePositionPatient", true},
    {tags::ImageOrientationPatient, "ImageOrientationPatient", true},
    {tags::FrameOfReferenceUid, "FrameOfReferenceUID", true},
    {tags::TemporalPositionIdentifier, "TemporalPositionIdentifier", true},
    {tags::StackId, "StackID", true},
    {tags::FrameContentSequence, "FrameContentSequence", true, "SQ"},
    {tags::PlanePositionSequence, "PlanePositionSequence", true, "SQ"},
    {tags::PlaneOrientationSequence, "PlaneOrientationSequence", true, "SQ"},
    {tags::TemporalPositionIndex, "TemporalPositionIndex", true, "UL"},
    {tags::NominalCardiacTriggerDelayTime, "NominalCardiacTriggerDelayTime", true, "FD"},
    {tags::FrameAcquisitionNumber, "FrameAcquisitionNumber", true, "US"},
    {tags::DimensionIndexValues, "DimensionIndexValues", true, "UL"},
    {tags::DimensionIndexPointer, "DimensionIndexPointer", true},
    {tags::DimensionIndexSequence, "DimensionIndexSequence", true, "SQ"},
    {tags::NominalPercentageOfCardiacPhase, "NominalPercentageOfCardiacPhase", true, "FD"},
    {tags::RRIntervalTimeNominal, "RRIntervalTimeNominal", true, "FD"},
    {tags::ActualCardiacTriggerDelayTime, "ActualCardiacTriggerDelayTime", true, "FD"},
    {tags::ImagePositionVolume, "ImagePositionVolume", true, "FD"},
    {tags::ImageOrientationVolume, "ImageOrientationVolume", true, "FD"},
    {tags::UltrasoundAcquisitionGeometry, "UltrasoundAcquisitionGeometry", true},
    {tags::TemporalPositionTimeOffset, "TemporalPositionTimeOffset", true, "FD"},
    {tags::PlanePositionVolumeSequence, "PlanePositionVolumeSequence", true, "SQ"},
    {tags::PlaneOrientationVolumeSequence, "PlaneOrientationVolumeSequence", true, "SQ"},
    {tags::TemporalPositionSequence, "TemporalPositionSequence", true, "SQ"},
    {tags::VolumeFrameOfReferenceUid, "VolumeFrameOfReferenceUID", true},
    {tags::SamplesPerPixel, "SamplesPerPixel", true, "US"},
    {tags::PhotometricInterpretation, "PhotometricInterpretation", true},
    {tags::PlanarConfiguration, "PlanarConfiguration", true, "US"},
    {tags::NumberOfFrames, "NumberOfFrames", true},
    {tags::FrameIncrementPointer, "FrameIncrementPointer", true},
    {tags::Rows, "Rows", true, "US"},
    {tags::Columns, "Columns", true, "US"},
    {tags::PixelSpacing, "PixelSpacing", true},
    {tags::PixelAspectRatio, "PixelAspectRatio", true},
    {tags::BitsAllocated, "BitsAllocated", true, "US"},
    {tags::BitsStored, "BitsStored", true, "US"},
    {tags::HighBit, "HighBit", true, "US"},
    {tags::PixelRepresentation, "PixelRepresentation", true, "US"},
    {tags::PixelPaddingValue, "PixelPaddingValue", true, "US"},
    {tags::PixelPaddingRangeLimit, "PixelPaddingRangeLimit", true, "US"},
    {tags::PixelSpacingCalibrationType, "PixelSpacingCalibrationType", true},
    {tags::PixelSpacingCalibrationDescription, "PixelSpacingCalibrationDescription", true},
    {tags::PixelIntensityRelationship, "PixelIntensityRelationship", true},
    {tags::WindowCenter, "WindowCenter", true},
    {tags::WindowWidth, "WindowWidth", true},
    {tags::RescaleIntercept, "RescaleIntercept", true},
    {tags::RescaleSlope, "RescaleSlope", true},
    {tags::RescaleType, "RescaleType", true},
    {tags::WindowExplanation, "WindowCenterWidthExplanation", true},
    {tags::VoiLutFunction, "VOILUTFunction", true},
    {tags::RecommendedViewingMode, "RecommendedViewingMode", true},
    {tags::RedPaletteDescriptor, "RedPaletteColorLookupTableDescriptor", true, "US"},
    {tags::GreenPaletteDescriptor, "GreenPaletteColorLookupTableDescriptor", true, "US"},
    {tags::BluePaletteDescriptor, "BluePaletteColorLookupTableDescriptor", true, "US"},
    {tags::RedPaletteData, "RedPaletteColorLookupTableData", true, "US"},
    {tags::GreenPaletteData, "GreenPaletteColorLookupTableData", true, "US"},
    {tags::BluePaletteData, "BluePaletteColorLookupTableData", true, "US"},
    {tags::SegmentedRedPaletteData, "SegmentedRedPaletteColorLookupTableData", true, "US"},
    {tags::SegmentedGreenPaletteData, "SegmentedGreenPaletteColorLookupTableData", true, "US"},
    {tags::SegmentedBluePaletteData, "SegmentedBluePaletteColorLookupTableData", true, "US"},
    {tags::LossyImageCompression, "LossyImageCompression", true},
    {tags::ModalityLutSequence, "ModalityLUTSequence", true, "SQ"},
    {tags::LutDescriptor, "LUTDescriptor", true, "US"},
    {tags::LutExplanation, "LUTExplanation", true},
    {tags::LutData, "LUTData", true, "US"},
    {tags::VoiLutSequence, "VOILUTSequence", true, "SQ"},
    {tags::RWavePointer, "RWavePointer", true, "US"},
    {tags::MaskSubtractionSequence, "MaskSubtractionSequence", true, "SQ"},
    {tags::MaskOperation, "MaskOperation", true},
    {tags::ApplicableFrameRange, "ApplicableFrameRange", true, "US"},
    {tags::MaskFrameNumbers, "MaskFrameNumbers", true, "US"},
    {tags::ContrastFrameAveraging, "ContrastFrameAveraging", true, "US"},
    {tags::MaskSubPixelShift, "MaskSubPixelShift", true, "FL"},
    {tags::TidOffset, "TIDOffset", true, "SS"},
    {tags::PixelMeasuresSequence, "PixelMeasuresSequence", true, "SQ"},
    {tags::FrameVoiLutSequence, "FrameVOILUTSequence", true, "SQ"},
    {tags::PixelValueTransformationSequence, "PixelValueTransformationSequence", true, "SQ"},
    {tags::FramePixelDataPropertiesSequence, "FramePixelDataPropertiesSequence", true, "SQ"},
    {tags::ViewCodeSequence, "ViewCodeSequence", true, "SQ"},
    {tags::PresentationLutShape, "PresentationLUTShape", true},
    {tags::SharedFunctionalGroupsSequence, "SharedFunctionalGroupsSequence", true, "SQ"},
    {tags::PerFrameFunctionalGroupsSequence, "PerFrameFunctionalGroupsSequence", true, "SQ"},
    {tags::ExtendedOffsetTable, "ExtendedOffsetTable", true, "OV"},
    {tags::ExtendedOffsetTableLengths, "ExtendedOffsetTableLengths", true, "OV"},
    {tags::FloatPixelData, "FloatPixelData", false},
    {tags::DoubleFloatPixelData, "DoubleFloatPixelData", false},
    {tags::PixelData, "PixelData", false},
    {tags::Item, "Item", false},
    {tags::ItemDelimitation, "ItemDelimitationItem", false},
    {tags::SequenceDelimitation, "SequenceDelimitationItem", false},
};

constexpr bool inOrder() {
    for (std::size_t i = 1; i < std::size(kTags); ++i)
        if (!(kTags[i - 1].tag < kTags[i].tag)) return false;
    return true;
}
static_assert(inOrder(), "the binary search needs the tags in order");

const NamedTag* find(Tag tag) {
    const auto* end = std::end(kTags);
    const auto* at = std::lower_bound(std::begin(kTags), end, tag,
                                      [](const NamedTag& named, Tag wanted) { return named.tag < wanted; });
    return at != end && at->tag == tag ? at : nullptr;
}

} // namespace

std::string describe(Tag tag) {
    std::array<char, 16> number{};
    std::snprintf(number.data(), number.size(), "(%04x,%04x)", tag.group, tag.element);
    const NamedTag* named = find(tag);
    return named ? std::string(number.data()) + " " + named->keyword : std::string(number.data());
}

bool isWanted(Tag tag) {
    const NamedTag* named = find(tag);
    return named && named->kept;
}

bool isSequence(Tag tag) {
    return impliedVr(tag) == "SQ";
}

std::string_view impliedVr(Tag tag) {
    const NamedTag* named = find(tag);
    return named ? named->vr : std::string_view();
}

} // namespace gauge::dicomio
