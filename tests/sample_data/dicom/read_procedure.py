"""Prints, as JSON by file, what pydicom finds in the echo and fluoroscopy files of the sample library."""
import json
import pathlib
import sys

import pydicom


def numbers(values):
    return [float(value) for value in values]


def region(item):
    return {
        "format": item.RegionSpatialFormat,
        "data": item.RegionDataType,
        "box": [item.RegionLocationMinX0, item.RegionLocationMinY0, item.RegionLocationMaxX1, item.RegionLocationMaxY1],
        "units": [item.PhysicalUnitsXDirection, item.PhysicalUnitsYDirection],
        "delta": [item.PhysicalDeltaX, item.PhysicalDeltaY],
        "reference": [item.ReferencePixelX0, item.ReferencePixelY0],
    }


def volume(ds, pixels):
    shared = ds.SharedFunctionalGroupsSequence[0]
    frames = ds.PerFrameFunctionalGroupsSequence
    return {
        "frame_of_reference": str(ds.VolumeFrameOfReferenceUID),
        "orientation": numbers(shared.PlaneOrientationVolumeSequence[0].ImageOrientationVolume),
        "spacing": numbers(shared.PixelMeasuresSequence[0].PixelSpacing),
        "positions": [numbers(f.PlanePositionVolumeSequence[0].ImagePositionVolume) for f in frames],
        "percents": [float(f.CardiacSynchronizationSequence[0].NominalPercentageOfCardiacPhase) for f in frames],
        "values": pixels.tolist(),
    }


folder = pathlib.Path(sys.argv[1])
answer = {}
for path in sorted(folder.rglob("*.dcm")):
    ds = pydicom.dcmread(path)
    pixels = ds.pixel_array
    count = int(getattr(ds, "NumberOfFrames", 1))
    frames = pixels if count > 1 else [pixels]
    entry = {
        "class": str(ds.SOPClassUID),
        "syntax": str(ds.file_meta.TransferSyntaxUID),
        "patient": str(ds.PatientID),
        "study": str(ds.StudyInstanceUID),
        "date": str(ds.StudyDate),
        "photometric": str(ds.PhotometricInterpretation),
        "frames": count,
        "sums": [float(frame.sum(dtype="int64")) for frame in frames],
        "regions": [region(item) for item in getattr(ds, "SequenceOfUltrasoundRegions", [])],
        "view_codes": [str(item.CodeValue) for item in getattr(ds, "ViewCodeSequence", [])],
        "frame_time": float(ds.FrameTime) if "FrameTime" in ds else None,
    }
    if "VolumeFrameOfReferenceUID" in ds:
        entry["volume"] = volume(ds, pixels)
    if ds.Modality == "XA":
        entry["positioner"] = [float(ds.PositionerPrimaryAngle), float(ds.PositionerSecondaryAngle)]
        entry["distances"] = [float(ds.DistanceSourceToDetector), float(ds.DistanceSourceToPatient)]
        entry["imager_spacing"] = numbers(ds.ImagerPixelSpacing)
    answer[path.relative_to(folder).as_posix()] = entry
json.dump(answer, sys.stdout)
