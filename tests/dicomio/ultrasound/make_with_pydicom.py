"""Writes ultrasound files with pydicom: cines with two bright dots a known distance apart, and one volume.

usage: make_with_pydicom.py FOLDER COUNT

Each cine has a tissue region with pixels of its own width and height (with either sign), a spectral region below, and
two smooth dots at places between pixel centres. truth.json says what a caliper between the dots should read.
"""
import json
import random
import sys

import numpy
from pydicom.dataset import Dataset, FileDataset, FileMetaDataset
from pydicom.sequence import Sequence
from pydicom.uid import ExplicitVRLittleEndian, generate_uid

FOLDER, COUNT = sys.argv[1], int(sys.argv[2])
COLUMNS, ROWS = 400, 300


def new_file(path, sop_class):
    meta = FileMetaDataset()
    meta.MediaStorageSOPClassUID = sop_class
    meta.MediaStorageSOPInstanceUID = generate_uid()
    meta.TransferSyntaxUID = ExplicitVRLittleEndian
    data = FileDataset(path, {}, file_meta=meta, preamble=b"\0" * 128)
    data.is_little_endian, data.is_implicit_VR = True, False
    data.SOPClassUID, data.SOPInstanceUID = sop_class, meta.MediaStorageSOPInstanceUID
    data.Modality = "US"
    data.PatientName, data.PatientID = "Probe^Invented", "P1"
    data.StudyInstanceUID, data.SeriesInstanceUID = generate_uid(), generate_uid()
    data.BitsAllocated = data.BitsStored = 8
    data.HighBit, data.PixelRepresentation = 7, 0
    return data


def region(box, kind, units, deltas, reference, value):
    item = Dataset()
    item.RegionSpatialFormat, item.RegionDataType, item.RegionFlags = kind[0], kind[1], 2
    (item.RegionLocationMinX0, item.RegionLocationMinY0,
     item.RegionLocationMaxX1, item.RegionLocationMaxY1) = box
    item.ReferencePixelX0, item.ReferencePixelY0 = reference
    item.PhysicalUnitsXDirection, item.PhysicalUnitsYDirection = units
    item.ReferencePixelPhysicalValueX, item.ReferencePixelPhysicalValueY = value
    item.PhysicalDeltaX, item.PhysicalDeltaY = deltas
    return item


def cine(seed):
    rng = random.Random(seed)
    path = "%s/cine%d.dcm" % (FOLDER, seed)
    data = new_file(path, "1.2.840.10008.5.1.4.1.1.3.1")
    frames = rng.randint(2, 4)
    min_x, min_y = rng.randint(0, 60), rng.randint(0, 40)
    box = [min_x, min_y, min_x + rng.randint(240, 330), min_y + rng.randint(120, 150)]
    sign = lambda: rng.choice((-1, 1))
    width = rng.uniform(0.01, 0.1)
    deltas = [sign() * width, sign() * width * rng.uniform(0.8, 1.25)]
    below = [min_x, box[3] + 1, box[2], ROWS - 1]
    spectral = [rng.uniform(0.002, 0.01), -rng.uniform(0.5, 3.0)]
    data.SequenceOfUltrasoundRegions = Sequence([
        region(box, (1, 1), (3, 3), deltas, (rng.randint(-300, 300), rng.randint(-50, 50)), (0.0, 1.5)),
        region(below, (3, 4), (4, 7), spectral, (0, 20), (0.0, 0.0))])
    place = lambda: (rng.uniform(box[0] + 8, box[2] - 8), rng.uniform(box[1] + 8, box[3] - 8))
    a, b = place(), place()
    while (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2 < 40 ** 2:
        b = place()
    y, x = numpy.mgrid[0:ROWS, 0:COLUMNS]
    picture = sum(240 * numpy.exp(-((x - p[0]) ** 2 + (y - p[1]) ** 2) / (2 * 1.5 ** 2)) for p in (a, b))
    picture = numpy.clip(numpy.round(picture), 0, 255).astype(numpy.uint8)
    data.SamplesPerPixel = 3
    data.PhotometricInterpretation, data.PlanarConfiguration = "RGB", 0
    data.Rows, data.Columns, data.NumberOfFrames = ROWS, COLUMNS, frames
    steps = [0.0] + [round(rng.uniform(15, 60), 3) for _ in range(frames - 1)]
    if rng.random() < 0.5:
        data.FrameTimeVector, data.FrameIncrementPointer = steps, 0x00181065
    else:
        data.FrameTime, data.FrameIncrementPointer = round(rng.uniform(15, 60), 3), 0x00181063
    data.PixelData = numpy.repeat(picture[None, :, :, None], frames, axis=0).repeat(3, axis=3).tobytes()
    data.save_as(path, write_like_original=False)
    mm = [10 * abs(d) for d in deltas]
    return {"file": path, "near": [a, b], "mm": float(numpy.hypot((a[0] - b[0]) * mm[0], (a[1] - b[1]) * mm[1])),
            "pixel_mm": mm}


def volume():
    path = "%s/volume.dcm" % FOLDER
    data = new_file(path, "1.2.840.10008.5.1.4.1.1.6.2")
    rng = numpy.random.default_rng(7)
    columns, rows, slices, times = 9, 7, 5, 2
    axes, _ = numpy.linalg.qr(rng.normal(size=(3, 3)))
    axes[:, 2] = numpy.cross(axes[:, 0], axes[:, 1])
    spacing, origin = numpy.array([0.45, 0.38, 0.52]), rng.uniform(-40, 40, 3)
    voxels = rng.integers(0, 256, size=(times, slices, rows, columns), dtype=numpy.uint8)
    data.SamplesPerPixel, data.PhotometricInterpretation = 1, "MONOCHROME2"
    data.Rows, data.Columns, data.NumberOfFrames = rows, columns, slices * times
    data.VolumeFrameOfReferenceUID = generate_uid()
    shared, orientation, measures = Dataset(), Dataset(), Dataset()
    orientation.ImageOrientationVolume = [float(v) for v in (*axes[:, 0], *axes[:, 1])]
    measures.PixelSpacing = [float(spacing[1]), float(spacing[0])]
    shared.PlaneOrientationVolumeSequence = Sequence([orientation])
    shared.PixelMeasuresSequence = Sequence([measures])
    data.SharedFunctionalGroupsSequence = Sequence([shared])
    order = rng.permutation(slices * times)
    groups = []
    for index in order:
        group, position, time = Dataset(), Dataset(), Dataset()
        position.ImagePositionVolume = [float(v) for v in origin + axes[:, 2] * spacing[2] * (index % slices)]
        time.TemporalPositionTimeOffset = 0.035 * float(index // slices)
        group.PlanePositionVolumeSequence = Sequence([position])
        group.TemporalPositionSequence = Sequence([time])
        groups.append(group)
    data.PerFrameFunctionalGroupsSequence = Sequence(groups)
    data.PixelData = voxels.reshape(slices * times, rows, columns)[order].tobytes() + b"\0" * (rows * columns * slices * times % 2)
    data.save_as(path, write_like_original=False)
    affine = numpy.eye(4)
    affine[:3, :3], affine[:3, 3] = axes * spacing, origin
    return {"file": path, "affine": affine.tolist(), "voxels": voxels.ravel().tolist(), "size": [columns, rows, slices],
            "offsets_ms": [35.0 * t for t in range(times)], "frame_of_reference": data.VolumeFrameOfReferenceUID}


truth = {"cines": [cine(seed) for seed in range(1, COUNT + 1)], "volume": volume()}
with open(FOLDER + "/truth.json", "w") as out:
    json.dump(truth, out)
