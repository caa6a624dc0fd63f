#include "sample-data/dicom/us_writer.h"

#include "sample-data/dicom/dicom_object.h"

#include <cassert>
#include <cmath>

namespace gauge::sample_case {
namespace {

void put(ItemWriter item, const UsRegion& region) {
    item.us(DCM_RegionSpatialFormat, region.format);
    item.us(DCM_RegionDataType, region.data);
    item.ul(DCM_RegionFlags, 0); // high priority, scaling not protected, spectra in velocities
    item.ul(DCM_RegionLocationMinX0, static_cast<unsigned long>(region.x0));
    item.ul(DCM_RegionLocationMinY0, static_cast<unsigned long>(region.y0));
    item.ul(DCM_RegionLocationMaxX1, static_cast<unsigned long>(region.x1));
    item.ul(DCM_RegionLocationMaxY1, static_cast<unsigned long>(region.y1));
    if (region.referencePixel) { // counted from the region's corner
        item.sl(DCM_ReferencePixelX0, region.referencePixel->x() - region.x0);
        item.sl(DCM_ReferencePixelY0, region.referencePixel->y() - region.y0);
    }
    item.us(DCM_PhysicalUnitsXDirection, region.unitX);
    item.us(DCM_PhysicalUnitsYDirection, region.unitY);
    if (region.referencePixel) {
        item.fd(DCM_ReferencePixelPhysicalValueX, {0.0});
        item.fd(DCM_ReferencePixelPhysicalValueY, {0.0});
    }
    item.fd(DCM_PhysicalDeltaX, {region.deltaX});
    item.fd(DCM_PhysicalDeltaY, {region.deltaY});
}

} // namespace

core::Result<void> writeUsImage(const UsImage& image, const std::filesystem::path& file) {
    assert(!image.frames.empty());
    const bool cine = image.frames.size() > 1;
    const Picture& first = image.frames.front();
    DicomObject object(cine ? UID_UltrasoundMultiframeImageStorage : UID_UltrasoundImageStorage, image.facts);
    ItemWriter root = object.root();
    root.text(DCM_ImageType, "ORIGINAL\\PRIMARY\\TEE\\" + image.typeOfEcho);
    root.text(DCM_BurnedInAnnotation, "YES");
    root.text(DCM_LossyImageCompression, "00");
    root.text(DCM_AcquisitionDate, image.facts.date);
    root.text(DCM_AcquisitionTime, image.facts.time);
    root.text(DCM_AcquisitionDateTime, image.facts.date + image.facts.time);
    root.text(DCM_PatientOrientation, "");
    root.us(DCM_SamplesPerPixel, first.samplesPerPixel());
    root.text(DCM_PhotometricInterpretation, first.samplesPerPixel() == 3 ? "RGB" : "MONOCHROME2");
    if (first.samplesPerPixel() == 3) root.us(DCM_PlanarConfiguration, 0);
    root.us(DCM_Rows, first.rows());
    root.us(DCM_Columns, first.columns());
    root.us(DCM_BitsAllocated, 8);
    root.us(DCM_BitsStored, 8);
    root.us(DCM_HighBit, 7);
    root.us(DCM_PixelRepresentation, 0);
    root.us(DCM_UltrasoundColorDataPresent, 0);
    if (image.heartRatePerMin > 0.0)
        root.text(DCM_HeartRate, std::to_string(std::lround(image.heartRatePerMin)));
    if (cine) {
        root.text(DCM_NumberOfFrames, std::to_string(image.frames.size()));
        root.at(DCM_FrameIncrementPointer, DCM_FrameTime);
        root.text(DCM_FrameTime, decimalString(image.frameMs));
        root.text(DCM_CineRate, std::to_string(std::lround(1000.0 / image.frameMs)));
        root.text(DCM_PreferredPlaybackSequencing, "");
        if (!image.rWavesMs.empty())
            root.fl(DCM_RWaveTimeVector, {image.rWavesMs.begin(), image.rWavesMs.end()});
    }
    if (image.view) root.code(DCM_ViewCodeSequence, *image.view);
    for (const UsRegion& region : image.regions)
        put(root.item(DCM_SequenceOfUltrasoundRegions), region);
    std::vector<const std::vector<std::uint8_t>*> frames;
    for (const Picture& frame : image.frames)
        frames.push_back(&frame.bytes());
    root.pixels(frames);
    return object.save(file, image.runLength);
}

} // namespace gauge::sample_case
