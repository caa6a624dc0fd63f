"""Writes with pydicom what the tests then read: a tilted, shuffled CT stack in several transfer syntaxes and one file
with a Japanese name; prints nothing. Usage: make_with_pydicom.py FOLDER. The affine of PS3.3 C.7.6.2.1.1 and the values
go to truth.txt: first a line with the 12 numbers of the affine, then a line with the values of the block."""
import math
import pathlib
import sys

import numpy as np
import pydicom
from pydicom.dataset import Dataset, FileDataset, FileMetaDataset
from pydicom.uid import (CTImageStorage, DeflatedExplicitVRLittleEndian, ExplicitVRBigEndian, ExplicitVRLittleEndian,
                         ImplicitVRLittleEndian, RLELossless)

SYNTAXES = [ExplicitVRLittleEndian, ImplicitVRLittleEndian, ExplicitVRBigEndian, DeflatedExplicitVRLittleEndian, RLELossless]
ROWS, COLUMNS, SLICES = 7, 9, 10
SPACING = (0.41, 0.37)  # between rows, between columns


def slice_file(path, syntax, k, stored, position, orientation):
    meta = FileMetaDataset()
    meta.MediaStorageSOPClassUID = CTImageStorage
    meta.MediaStorageSOPInstanceUID = f"1.2.826.0.1.3680043.8.498.7.{k + 1}"
    meta.TransferSyntaxUID = ExplicitVRLittleEndian if syntax == RLELossless else syntax
    ds = FileDataset(str(path), {}, file_meta=meta, preamble=b"\0" * 128)
    ds.is_little_endian = syntax != ExplicitVRBigEndian
    ds.is_implicit_VR = syntax == ImplicitVRLittleEndian
    ds.SpecificCharacterSet = ["", "ISO 2022 IR 87"]
    ds.SOPClassUID, ds.SOPInstanceUID = CTImageStorage, meta.MediaStorageSOPInstanceUID
    ds.PatientName, ds.PatientID, ds.Modality = "Yamada^Tarou=山田^太郎=やまだ^たろう", "P", "CT"
    ds.StudyInstanceUID, ds.SeriesInstanceUID, ds.FrameOfReferenceUID = "1.2.3", "1.2.3.4", "1.2.3.5"
    ds.InstanceNumber = 1000 - 7 * k
    ds.ImagePositionPatient = [f"{v:.9g}" for v in position]
    ds.ImageOrientationPatient = [f"{v:.9g}" for v in orientation]
    ds.PixelSpacing = list(SPACING)
    ds.SamplesPerPixel, ds.PhotometricInterpretation = 1, "MONOCHROME2"
    ds.Rows, ds.Columns, ds.BitsAllocated, ds.BitsStored, ds.HighBit, ds.PixelRepresentation = ROWS, COLUMNS, 16, 16, 15, 1
    ds.RescaleSlope, ds.RescaleIntercept = "1", str(-k)
    block = stored.astype(">i2" if syntax == ExplicitVRBigEndian else "<i2")
    ds.PixelData = block.tobytes()
    ds["PixelData"].VR = "OW"
    if syntax == RLELossless:
        ds.compress(RLELossless, encoding_plugin="pydicom")
    ds.save_as(str(path), write_like_original=False)


def main(folder):
    folder = pathlib.Path(folder)
    random = np.random.default_rng(1)
    tilt = math.radians(12)
    x = np.array([1.0, 0.0, 0.0])
    y = np.array([0.0, math.cos(tilt), math.sin(tilt)])
    first, step = np.array([-10.5, 20.25, -300.0]), np.array([0.0, 0.0, 0.8])
    stored = random.integers(-2000, 3000, (SLICES, ROWS, COLUMNS), dtype=np.int16)
    hu = stored.astype(int) - np.arange(SLICES)[:, None, None]
    for k in range(SLICES):
        syntax = SYNTAXES[k % len(SYNTAXES)]
        slice_file(folder / f"{(k * 7) % SLICES}.dcm", syntax, k, stored[k], first + k * step, [*x, *y])
    # PS3.3 equation C.7.6.2.1-1, the third column from the positions
    affine = np.column_stack([x * SPACING[1], y * SPACING[0], step, first])
    with open(folder / "truth.txt", "w") as out:
        out.write(" ".join(repr(float(v)) for v in affine.flatten()) + "\n")
        out.write(" ".join(str(v) for v in hu.flatten()) + "\n")


main(sys.argv[1])
