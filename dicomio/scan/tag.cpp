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
    bool kept; ///< its value is kept by the scanner
};

// In the order of their numbers, for the binary search below.
constexpr NamedTag kTags[] = {
    {tags::MediaStorageSopClassUid, "MediaStorageSOPClassUID", true},
    {tags::TransferSyntaxUid, "TransferSyntaxUID", true},
    {tags::DirectoryRecordSequence, "DirectoryRecordSequence", true},
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
    {tags::TimezoneOffsetFromUtc, "TimezoneOffsetFromUTC", true},
    {tags::SeriesDescription, "SeriesDescription", true},
    {tags::FrameType, "FrameType", true},
    {tags::PatientName, "PatientName", true},
    {tags::PatientId, "PatientID", true},
    {tags::IssuerOfPatientId, "IssuerOfPatientID", true},
    {tags::SliceThickness, "SliceThickness", true},
    {tags::SpacingBetweenSlices, "SpacingBetweenSlices", true},
    {tags::TriggerTime, "TriggerTime", true},
    {tags::NominalInterval, "NominalInterval", true},
    {tags::LowRRValue, "LowRRValue", true},
    {tags::HighRRValue, "HighRRValue", true},
    {tags::HeartRate, "HeartRate", true},
    {tags::GantryDetectorTilt, "GantryDetectorTilt", true},
    {tags::ImagerPixelSpacing, "ImagerPixelSpacing", true},
    {tags::SequenceOfUltrasoundRegions, "SequenceOfUltrasoundRegions", true},
    {tags::PhysicalUnitsXDirection, "PhysicalUnitsXDirection", true},
    {tags::PhysicalDeltaX, "PhysicalDeltaX", true},
    {tags::CardiacRRIntervalSpecified, "CardiacRRIntervalSpecified", true},
    {tags::FrameAcquisitionDateTime, "FrameAcquisitionDateTime", true},
    {tags::CardiacSynchronizationSequence, "CardiacSynchronizationSequence", true},
    {tags::CtImageFrameTypeSequence, "CTImageFrameTypeSequence", true},
    {tags::StudyInstanceUid, "StudyInstanceUID", true},
    {tags::SeriesInstanceUid, "SeriesInstanceUID", true},
    {tags::AcquisitionNumber, "AcquisitionNumber", true},
    {tags::InstanceNumber, "InstanceNumber", true},
    {tags::ImagePositionPatient, "ImagePositionPatient", true},
    {tags::ImageOrientationPatient, "ImageOrientationPatient", true},
    {tags::FrameOfReferenceUid, "FrameOfReferenceUID", true},
    {tags::TemporalPositionIdentifier, "TemporalPositionIdentifier", true},
    {tags::StackId, "StackID", true},
    {tags::FrameContentSequence, "FrameContentSequence", true},
    {tags::PlanePositionSequence, "PlanePositionSequence", true},
    {tags::PlaneOrientationSequence, "PlaneOrientationSequence", true},
    {tags::TemporalPositionIndex, "TemporalPositionIndex", true},
    {tags::NominalCardiacTriggerDelayTime, "NominalCardiacTriggerDelayTime", true},
    {tags::FrameAcquisitionNumber, "FrameAcquisitionNumber", true},
    {tags::DimensionIndexValues, "DimensionIndexValues", true},
    {tags::DimensionIndexPointer, "DimensionIndexPointer", true},
    {tags::DimensionIndexSequence, "DimensionIndexSequence", true},
    {tags::NominalPercentageOfCardiacPhase, "NominalPercentageOfCardiacPhase", true},
    {tags::RRIntervalTimeNominal, "RRIntervalTimeNominal", true},
    {tags::ActualCardiacTriggerDelayTime, "ActualCardiacTriggerDelayTime", true},
    {tags::TemporalPositionTimeOffset, "TemporalPositionTimeOffset", true},
    {tags::TemporalPositionSequence, "TemporalPositionSequence", true},
    {tags::SamplesPerPixel, "SamplesPerPixel", true},
    {tags::PhotometricInterpretation, "PhotometricInterpretation", true},
    {tags::PlanarConfiguration, "PlanarConfiguration", true},
    {tags::NumberOfFrames, "NumberOfFrames", true},
    {tags::Rows, "Rows", true},
    {tags::Columns, "Columns", true},
    {tags::PixelSpacing, "PixelSpacing", true},
    {tags::BitsAllocated, "BitsAllocated", true},
    {tags::BitsStored, "BitsStored", true},
    {tags::HighBit, "HighBit", true},
    {tags::PixelRepresentation, "PixelRepresentation", true},
    {tags::PixelPaddingValue, "PixelPaddingValue", true},
    {tags::PixelPaddingRangeLimit, "PixelPaddingRangeLimit", true},
    {tags::RescaleIntercept, "RescaleIntercept", true},
    {tags::RescaleSlope, "RescaleSlope", true},
    {tags::RescaleType, "RescaleType", true},
    {tags::RedPaletteDescriptor, "RedPaletteColorLookupTableDescriptor", true},
    {tags::LossyImageCompression, "LossyImageCompression", true},
    {tags::PixelMeasuresSequence, "PixelMeasuresSequence", true},
    {tags::PixelValueTransformationSequence, "PixelValueTransformationSequence", true},
    {tags::SharedFunctionalGroupsSequence, "SharedFunctionalGroupsSequence", true},
    {tags::PerFrameFunctionalGroupsSequence, "PerFrameFunctionalGroupsSequence", true},
    {tags::ExtendedOffsetTable, "ExtendedOffsetTable", true},
    {tags::ExtendedOffsetTableLengths, "ExtendedOffsetTableLengths", true},
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

} // namespace gauge::dicomio
