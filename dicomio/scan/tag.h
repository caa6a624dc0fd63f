// Names of the DICOM attributes that the readers use: tag numbers and keywords of PS3.6.
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

namespace gauge::dicomio {

/// The tag of an attribute, (group,element).
struct Tag {
    std::uint16_t group = 0;
    std::uint16_t element = 0;
    constexpr auto operator<=>(const Tag&) const = default;
};

/// "(0028,0030) PixelSpacing"; the number alone for an attribute that the readers do not use.
std::string describe(Tag tag);

/// True for the attributes whose values the scanner keeps; everything else is walked over.
bool isWanted(Tag tag);

/// True for the attributes that are sequences; an implicit file does not say so.
bool isSequence(Tag tag);

/// Value representation of an attribute whose values are binary numbers or a sequence, for files that leave
/// it open: "US", "FD", "SQ"…; "" for text and for attributes that are not known.
std::string_view impliedVr(Tag tag);

namespace tags {
inline constexpr Tag MediaStorageSopClassUid{0x0002, 0x0002};
inline constexpr Tag TransferSyntaxUid{0x0002, 0x0010};
inline constexpr Tag DirectoryRecordSequence{0x0004, 0x1220};
inline constexpr Tag DirectoryRecordType{0x0004, 0x1430};
inline constexpr Tag ReferencedFileId{0x0004, 0x1500};
inline constexpr Tag ReferencedSopInstanceUidInFile{0x0004, 0x1511};
inline constexpr Tag SpecificCharacterSet{0x0008, 0x0005};
inline constexpr Tag ImageType{0x0008, 0x0008};
inline constexpr Tag SopClassUid{0x0008, 0x0016};
inline constexpr Tag SopInstanceUid{0x0008, 0x0018};
inline constexpr Tag StudyDate{0x0008, 0x0020};
inline constexpr Tag SeriesDate{0x0008, 0x0021};
inline constexpr Tag AcquisitionDate{0x0008, 0x0022};
inline constexpr Tag ContentDate{0x0008, 0x0023};
inline constexpr Tag AcquisitionDateTime{0x0008, 0x002A};
inline constexpr Tag StudyTime{0x0008, 0x0030};
inline constexpr Tag SeriesTime{0x0008, 0x0031};
inline constexpr Tag AcquisitionTime{0x0008, 0x0032};
inline constexpr Tag ContentTime{0x0008, 0x0033};
inline constexpr Tag Modality{0x0008, 0x0060};
inline constexpr Tag CodeValue{0x0008, 0x0100};
inline constexpr Tag CodingSchemeDesignator{0x0008, 0x0102};
inline constexpr Tag TimezoneOffsetFromUtc{0x0008, 0x0201};
inline constexpr Tag SeriesDescription{0x0008, 0x103E};
inline constexpr Tag RecommendedDisplayFrameRate{0x0008, 0x2144};
inline constexpr Tag FrameType{0x0008, 0x9007};
inline constexpr Tag PatientName{0x0010, 0x0010};
inline constexpr Tag PatientBirthDate{0x0010, 0x0030};
inline constexpr Tag PatientSex{0x0010, 0x0040};
inline constexpr Tag PatientId{0x0010, 0x0020};
inline constexpr Tag IssuerOfPatientId{0x0010, 0x0021};
inline constexpr Tag CineRate{0x0018, 0x0040};
inline constexpr Tag SliceThickness{0x0018, 0x0050};
inline constexpr Tag EffectiveDuration{0x0018, 0x0072};
inline constexpr Tag SpacingBetweenSlices{0x0018, 0x0088};
inline constexpr Tag TriggerTime{0x0018, 0x1060};
inline constexpr Tag NominalInterval{0x0018, 0x1062};
inline constexpr Tag FrameTime{0x0018, 0x1063};
inline constexpr Tag FrameTimeVector{0x0018, 0x1065};
inline constexpr Tag LowRRValue{0x0018, 0x1081};
inline constexpr Tag HighRRValue{0x0018, 0x1082};
inline constexpr Tag HeartRate{0x0018, 0x1088};
inline constexpr Tag DistanceSourceToDetector{0x0018, 0x1110};
inline constexpr Tag DistanceSourceToPatient{0x0018, 0x1111};
inline constexpr Tag EstimatedRadiographicMagnificationFactor{0x0018, 0x1114};
inline constexpr Tag GantryDetectorTilt{0x0018, 0x1120};
inline constexpr Tag ImagerPixelSpacing{0x0018, 0x1164};
inline constexpr Tag PositionerMotion{0x0018, 0x1500};
inline constexpr Tag PositionerPrimaryAngle{0x0018, 0x1510};
inline constexpr Tag PositionerSecondaryAngle{0x0018, 0x1511};
inline constexpr Tag PositionerPrimaryAngleIncrement{0x0018, 0x1520};
inline constexpr Tag PositionerSecondaryAngleIncrement{0x0018, 0x1521};
inline constexpr Tag PatientPosition{0x0018, 0x5100};
inline constexpr Tag SequenceOfUltrasoundRegions{0x0018, 0x6011};
inline constexpr Tag RegionSpatialFormat{0x0018, 0x6012};
inline constexpr Tag RegionDataType{0x0018, 0x6014};
inline constexpr Tag RegionFlags{0x0018, 0x6016};
inline constexpr Tag RegionLocationMinX0{0x0018, 0x6018};
inline constexpr Tag RegionLocationMinY0{0x0018, 0x601A};
inline constexpr Tag RegionLocationMaxX1{0x0018, 0x601C};
inline constexpr Tag RegionLocationMaxY1{0x0018, 0x601E};
inline constexpr Tag ReferencePixelX0{0x0018, 0x6020};
inline constexpr Tag ReferencePixelY0{0x0018, 0x6022};
inline constexpr Tag PhysicalUnitsXDirection{0x0018, 0x6024};
inline constexpr Tag PhysicalUnitsYDirection{0x0018, 0x6026};
inline constexpr Tag ReferencePixelPhysicalValueX{0x0018, 0x6028};
inline constexpr Tag ReferencePixelPhysicalValueY{0x0018, 0x602A};
inline constexpr Tag PhysicalDeltaX{0x0018, 0x602C};
inline constexpr Tag PhysicalDeltaY{0x0018, 0x602E};
inline constexpr Tag DopplerCorrectionAngle{0x0018, 0x6034};
inline constexpr Tag RWaveTimeVector{0x0018, 0x6060};
inline constexpr Tag CardiacRRIntervalSpecified{0x0018, 0x9070};
inline constexpr Tag FrameAcquisitionDateTime{0x0018, 0x9074};
inline constexpr Tag CardiacSynchronizationSequence{0x0018, 0x9118};
inline constexpr Tag FrameReferenceDateTime{0x0018, 0x9151};
inline constexpr Tag CtImageFrameTypeSequence{0x0018, 0x9329};
inline constexpr Tag ProjectionPixelCalibrationSequence{0x0018, 0x9401};
inline constexpr Tag DistanceSourceToIsocenter{0x0018, 0x9402};
inline constexpr Tag ObjectPixelSpacingInCenterOfBeam{0x0018, 0x9404};
inline constexpr Tag PositionerPositionSequence{0x0018, 0x9405};
inline constexpr Tag IsocenterReferenceSystemSequence{0x0018, 0x9462};
inline constexpr Tag PositionerIsocenterPrimaryAngle{0x0018, 0x9463};
inline constexpr Tag PositionerIsocenterSecondaryAngle{0x0018, 0x9464};
inline constexpr Tag XRayGeometrySequence{0x0018, 0x9476};
inline constexpr Tag UsImageDescriptionSequence{0x0018, 0x9806};
inline constexpr Tag ImageDataTypeSequence{0x0018, 0x9807};
inline constexpr Tag UltrasoundDataType{0x0018, 0x9808};
inline constexpr Tag StudyInstanceUid{0x0020, 0x000D};
inline constexpr Tag SeriesInstanceUid{0x0020, 0x000E};
inline constexpr Tag AcquisitionNumber{0x0020, 0x0012};
inline constexpr Tag InstanceNumber{0x0020, 0x0013};
inline constexpr Tag ImagePositionPatient{0x0020, 0x0032};
inline constexpr Tag ImageOrientationPatient{0x0020, 0x0037};
inline constexpr Tag FrameOfReferenceUid{0x0020, 0x0052};
inline constexpr Tag TemporalPositionIdentifier{0x0020, 0x0100};
inline constexpr Tag StackId{0x0020, 0x9056};
inline constexpr Tag FrameContentSequence{0x0020, 0x9111};
inline constexpr Tag PlanePositionSequence{0x0020, 0x9113};
inline constexpr Tag PlaneOrientationSequence{0x0020, 0x9116};
inline constexpr Tag TemporalPositionIndex{0x0020, 0x9128};
inline constexpr Tag NominalCardiacTriggerDelayTime{0x0020, 0x9153};
inline constexpr Tag FrameAcquisitionNumber{0x0020, 0x9156};
inline constexpr Tag DimensionIndexValues{0x0020, 0x9157};
inline constexpr Tag DimensionIndexPointer{0x0020, 0x9165};
inline constexpr Tag DimensionIndexSequence{0x0020, 0x9222};
inline constexpr Tag NominalPercentageOfCardiacPhase{0x0020, 0x9241};
inline constexpr Tag RRIntervalTimeNominal{0x0020, 0x9251};
inline constexpr Tag ActualCardiacTriggerDelayTime{0x0020, 0x9252};
inline constexpr Tag ImagePositionVolume{0x0020, 0x9301};
inline constexpr Tag ImageOrientationVolume{0x0020, 0x9302};
inline constexpr Tag UltrasoundAcquisitionGeometry{0x0020, 0x9307};
inline constexpr Tag TemporalPositionTimeOffset{0x0020, 0x930D};
inline constexpr Tag PlanePositionVolumeSequence{0x0020, 0x930E};
inline constexpr Tag PlaneOrientationVolumeSequence{0x0020, 0x930F};
inline constexpr Tag TemporalPositionSequence{0x0020, 0x9310};
inline constexpr Tag VolumeFrameOfReferenceUid{0x0020, 0x9312};
inline constexpr Tag SamplesPerPixel{0x0028, 0x0002};
inline constexpr Tag PhotometricInterpretation{0x0028, 0x0004};
inline constexpr Tag PlanarConfiguration{0x0028, 0x0006};
inline constexpr Tag NumberOfFrames{0x0028, 0x0008};
inline constexpr Tag FrameIncrementPointer{0x0028, 0x0009};
inline constexpr Tag Rows{0x0028, 0x0010};
inline constexpr Tag Columns{0x0028, 0x0011};
inline constexpr Tag PixelSpacing{0x0028, 0x0030};
inline constexpr Tag PixelAspectRatio{0x0028, 0x0034};
inline constexpr Tag BitsAllocated{0x0028, 0x0100};
inline constexpr Tag BitsStored{0x0028, 0x0101};
inline constexpr Tag HighBit{0x0028, 0x0102};
inline constexpr Tag PixelRepresentation{0x0028, 0x0103};
inline constexpr Tag PixelPaddingValue{0x0028, 0x0120};
inline constexpr Tag PixelPaddingRangeLimit{0x0028, 0x0121};
inline constexpr Tag PixelSpacingCalibrationType{0x0028, 0x0A02};
inline constexpr Tag PixelSpacingCalibrationDescription{0x0028, 0x0A04};
inline constexpr Tag PixelIntensityRelationship{0x0028, 0x1040};
inline constexpr Tag WindowCenter{0x0028, 0x1050};
inline constexpr Tag WindowWidth{0x0028, 0x1051};
inline constexpr Tag RescaleIntercept{0x0028, 0x1052};
inline constexpr Tag RescaleSlope{0x0028, 0x1053};
inline constexpr Tag RescaleType{0x0028, 0x1054};
inline constexpr Tag WindowExplanation{0x0028, 0x1055};
inline constexpr Tag VoiLutFunction{0x0028, 0x1056};
inline constexpr Tag RecommendedViewingMode{0x0028, 0x1090};
inline constexpr Tag RedPaletteDescriptor{0x0028, 0x1101};
inline constexpr Tag GreenPaletteDescriptor{0x0028, 0x1102};
inline constexpr Tag BluePaletteDescriptor{0x0028, 0x1103};
inline constexpr Tag RedPaletteData{0x0028, 0x1201};
inline constexpr Tag GreenPaletteData{0x0028, 0x1202};
inline constexpr Tag BluePaletteData{0x0028, 0x1203};
inline constexpr Tag SegmentedRedPaletteData{0x0028, 0x1221};
inline constexpr Tag SegmentedGreenPaletteData{0x0028, 0x1222};
inline constexpr Tag SegmentedBluePaletteData{0x0028, 0x1223};
inline constexpr Tag LossyImageCompression{0x0028, 0x2110};
inline constexpr Tag ModalityLutSequence{0x0028, 0x3000};
inline constexpr Tag LutDescriptor{0x0028, 0x3002};
inline constexpr Tag LutExplanation{0x0028, 0x3003};
inline constexpr Tag LutData{0x0028, 0x3006};
inline constexpr Tag VoiLutSequence{0x0028, 0x3010};
inline constexpr Tag RWavePointer{0x0028, 0x6040};
inline constexpr Tag MaskSubtractionSequence{0x0028, 0x6100};
inline constexpr Tag MaskOperation{0x0028, 0x6101};
inline constexpr Tag ApplicableFrameRange{0x0028, 0x6102};
inline constexpr Tag MaskFrameNumbers{0x0028, 0x6110};
inline constexpr Tag ContrastFrameAveraging{0x0028, 0x6112};
inline constexpr Tag MaskSubPixelShift{0x0028, 0x6114};
inline constexpr Tag TidOffset{0x0028, 0x6120};
inline constexpr Tag PixelMeasuresSequence{0x0028, 0x9110};
inline constexpr Tag FrameVoiLutSequence{0x0028, 0x9132};
inline constexpr Tag PixelValueTransformationSequence{0x0028, 0x9145};
inline constexpr Tag FramePixelDataPropertiesSequence{0x0028, 0x9443};
inline constexpr Tag ViewCodeSequence{0x0054, 0x0220};
inline constexpr Tag PresentationLutShape{0x2050, 0x0020};
inline constexpr Tag SharedFunctionalGroupsSequence{0x5200, 0x9229};
inline constexpr Tag PerFrameFunctionalGroupsSequence{0x5200, 0x9230};
inline constexpr Tag ExtendedOffsetTable{0x7FE0, 0x0001};
inline constexpr Tag ExtendedOffsetTableLengths{0x7FE0, 0x0002};
inline constexpr Tag FloatPixelData{0x7FE0, 0x0008};
inline constexpr Tag DoubleFloatPixelData{0x7FE0, 0x0009};
inline constexpr Tag PixelData{0x7FE0, 0x0010};
inline constexpr Tag Item{0xFFFE, 0xE000};
inline constexpr Tag ItemDelimitation{0xFFFE, 0xE00D};
inline constexpr Tag SequenceDelimitation{0xFFFE, 0xE0DD};
} // namespace tags

} // namespace gauge::dicomio
