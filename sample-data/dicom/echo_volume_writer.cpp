#include "sample-data/dicom/echo_volume_writer.h"

#include "sample-data/dicom/dicom_object.h"

#include <cmath>

namespace gauge::sample_case {
namespace {

void putImage(ItemWriter root, const EchoVolumeImage& image, std::size_t frames) {
    root.text(DCM_ImageType, "ORIGINAL\\PRIMARY\\VOLUME\\NONE");
    root.text(DCM_AcquisitionDateTime, image.facts.date + image.facts.time);
    root.fd(DCM_AcquisitionDuration, {image.beatMs});
    root.text(DCM_ContentQualification, "RESEARCH");
    root.us(DCM_SamplesPerPixel, 1);
    root.text(DCM_PhotometricInterpretation, "MONOCHROME2");
    root.text(DCM_NumberOfFrames, std::to_string(frames));
    root.us(DCM_Rows, image.grid.size.y());
    root.us(DCM_Columns, image.grid.size.x());
    root.us(DCM_BitsAllocated, 8);
    root.us(DCM_BitsStored, 8);
    root.us(DCM_HighBit, 7);
    root.us(DCM_PixelRepresentation, 0);
    root.text(DCM_BurnedInAnnotation, "NO");
    root.text(DCM_RecognizableVisualFeatures, "NO");
    root.text(DCM_LossyImageCompression, "00");
    root.text(DCM_PresentationLUTShape, "IDENTITY");
    root.text(DCM_DeviceSerialNumber, "1");
    root.text(DCM_SoftwareVersions, "1");
    root.sequence(DCM_AcquisitionContextSequence);
    root.text(DCM_PatientOrientation, "");
    root.text(DCM_PositionMeasuringDeviceUsed, "RIGID");
    root.text(DCM_RescaleIntercept, "0");
    root.text(DCM_RescaleSlope, "1");
    const Eigen::Vector3d last =
        image.grid.patientFromVoxel() * (image.grid.size.array() - 1).cast<double>().matrix();
    root.text(DCM_DepthOfScanField, std::to_string(std::lround(last.z())));
    root.fd(DCM_DepthsOfFocus, {60.0});
    for (const DcmTagKey& index : {DCM_MechanicalIndex, DCM_BoneThermalIndex, DCM_CranialThermalIndex, DCM_SoftTissueThermalIndex})
        root.text(index, "0.5");
    root.code(DCM_TransducerScanPatternCodeSequence, {"125242", "DCM", "Volume scan pattern"});
    root.code(DCM_TransducerGeometryCodeSequence, {"125254", "DCM", "Sector ultrasound transducer geometry"});
    root.code(DCM_TransducerBeamSteeringCodeSequence, {"125259", "DCM", "Phased beam steering"});
    root.code(DCM_TransducerApplicationCodeSequence, {"125262", "DCM", "Transesophageal Transducer"});
    root.code(DCM_ViewCodeSequence, {"131100", "DCM", "Mid-esophageal TEE 0 degrees"}); // of the x axis
    root.code(DCM_AnatomicRegionSequence, {"80891009", "SCT", "Heart"});
    // Synchronization: the scanner's own clock.
    root.text(DCM_SynchronizationFrameOfReferenceUID, uidFrom(image.facts.seriesText + "/clock"));
    root.text(DCM_SynchronizationTrigger, "NO TRIGGER");
    root.text(DCM_AcquisitionTimeSynchronized, "N");
}

void putFrameOfReference(ItemWriter root, const EchoVolumeImage& image) {
    root.text(DCM_VolumeFrameOfReferenceUID, image.volumeFrameOfReferenceUid);
    root.text(DCM_UltrasoundAcquisitionGeometry, "APEX");
    root.fd(DCM_ApexPosition, {0.0, 0.0, 0.0});
    root.fd(DCM_VolumeToTransducerMappingMatrix, {1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1});
}

void putDimensions(ItemWriter root, const EchoVolumeImage& image) {
    const std::string organization = uidFrom(image.facts.seriesText + "/dimensions");
    root.text(DCM_DimensionOrganizationType, image.volumes.size() > 1 ? "3D_TEMPORAL" : "3D");
    root.item(DCM_DimensionOrganizationSequence).text(DCM_DimensionOrganizationUID, organization);
    const auto dimension = [&](const DcmTagKey& index, const DcmTagKey& group) {
        ItemWriter item = root.item(DCM_DimensionIndexSequence);
        item.text(DCM_DimensionOrganizationUID, organization);
        item.at(DCM_DimensionIndexPointer, index);
        item.at(DCM_FunctionalGroupPointer, group);
    };
    dimension(DCM_TemporalPositionTimeOffset, DCM_TemporalPositionSequence);
    dimension(DCM_ImagePositionVolume, DCM_PlanePositionVolumeSequence);
}

void putShared(ItemWriter shared, const RasterGrid& grid) {
    ItemWriter measures = shared.item(DCM_PixelMeasuresSequence);
    measures.text(DCM_PixelSpacing, decimals({grid.spacingMm.y(), grid.spacingMm.x()}));
    measures.text(DCM_SliceThickness, decimalString(grid.spacingMm.z()));
    measures.text(DCM_SpacingBetweenSlices, decimalString(grid.spacingMm.z()));
    const Eigen::Vector3d row = grid.axes.col(0), column = grid.axes.col(1);
    shared.item(DCM_PlaneOrientationVolumeSequence)
        .fd(DCM_ImageOrientationVolume, {row.x(), row.y(), row.z(), column.x(), column.y(), column.z()});
    ItemWriter type = shared.item(DCM_USImageDescriptionSequence);
    type.text(DCM_FrameType, "ORIGINAL\\PRIMARY\\VOLUME\\NONE");
    type.text(DCM_VolumetricProperties, "VOLUME");
    type.text(DCM_VolumeBasedCalculationTechnique, "NONE");
    ItemWriter data = shared.item(DCM_ImageDataTypeSequence);
    data.text(DCM_DataType, "TISSUE_INTENSITY");
    data.text(DCM_AliasedDataType, "NO");
    ItemWriter window = shared.item(DCM_FrameVOILUTSequence);
    window.text(DCM_WindowCenter, "128");
    window.text(DCM_WindowWidth, "256");
}

} // namespace

core::Result<void> writeEchoVolume(const EchoVolumeImage& image, const std::filesystem::path& file) {
    DicomObject object(UID_EnhancedUSVolumeStorage, image.facts);
    ItemWriter root = object.root();
    const std::size_t planes = static_cast<std::size_t>(image.grid.size.z());
    putImage(root, image, planes * image.volumes.size());
    putFrameOfReference(root, image);
    putDimensions(root, image);
    putShared(root.item(DCM_SharedFunctionalGroupsSequence), image.grid);
    std::vector<const std::vector<std::uint8_t>*> frames;
    for (std::size_t volume = 0; volume < image.volumes.size(); ++volume)
        for (std::size_t plane = 0; plane < planes; ++plane) {
            ItemWriter frame = root.item(DCM_PerFrameFunctionalGroupsSequence);
            ItemWriter content = frame.item(DCM_FrameContentSequence);
            content.ulList(DCM_DimensionIndexValues, {static_cast<unsigned>(volume + 1), static_cast<unsigned>(plane + 1)});
            content.text(DCM_StackID, "1");
            content.ul(DCM_InStackPositionNumber, plane + 1);
            content.ul(DCM_TemporalPositionIndex, volume + 1);
            content.fd(DCM_FrameAcquisitionDuration, {1.0});
            content.text(DCM_FrameAcquisitionDateTime, image.facts.date + image.facts.time);
            content.text(DCM_FrameReferenceDateTime, image.facts.date + image.facts.time);
            const Eigen::Vector3d first =
                image.grid.patientFromVoxel() * Eigen::Vector3d(0, 0, static_cast<double>(plane));
            frame.item(DCM_PlanePositionVolumeSequence).fd(DCM_ImagePositionVolume, {first.x(), first.y(), first.z()});
            frame.item(DCM_TemporalPositionSequence).fd(DCM_TemporalPositionTimeOffset, {image.triggerMs[volume] / 1000.0});
            ItemWriter beat = frame.item(DCM_CardiacSynchronizationSequence);
            beat.fd(DCM_NominalCardiacTriggerDelayTime, {image.triggerMs[volume]});
            beat.fd(DCM_RRIntervalTimeNominal, {image.beatMs});
            beat.fl(DCM_NominalPercentageOfCardiacPhase, {static_cast<float>(100.0 * image.triggerMs[volume] / image.beatMs)});
            frames.push_back(&image.volumes[volume][plane]);
        }
    root.pixels(frames);
    return object.save(file);
}

} // namespace gauge::sample_case
