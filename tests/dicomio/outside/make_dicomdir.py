"""Writes with pydicom a file set (PS3.10) with its DICOMDIR: one CT series of five slices and one ultrasound still.
Usage: make_dicomdir.py FOLDER"""
import pathlib
import sys
import tempfile

from pydicom.dataset import FileDataset, FileMetaDataset
from pydicom.fileset import FileSet
from pydicom.uid import CTImageStorage, ExplicitVRLittleEndian, UltrasoundImageStorage


def image(number, sop_class, modality, series):
    meta = FileMetaDataset()
    meta.MediaStorageSOPClassUID = sop_class
    meta.MediaStorageSOPInstanceUID = f"1.2.826.0.1.3680043.8.498.9.{series}.{number + 1}"
    meta.TransferSyntaxUID = ExplicitVRLittleEndian
    ds = FileDataset("", {}, file_meta=meta, preamble=b"\0" * 128)
    ds.is_little_endian, ds.is_implicit_VR = True, False
    ds.SOPClassUID, ds.SOPInstanceUID = sop_class, meta.MediaStorageSOPInstanceUID
    ds.PatientName, ds.PatientID, ds.Modality = "Invented^Patient", "P1", modality
    ds.StudyInstanceUID, ds.SeriesInstanceUID = "1.2.826.0.1.3680043.8.498.9", f"1.2.826.0.1.3680043.8.498.9.{series}"
    ds.StudyID, ds.StudyDate, ds.StudyTime, ds.AccessionNumber = "1", "20260305", "101500", ""
    ds.SeriesNumber, ds.InstanceNumber, ds.FrameOfReferenceUID = series, number + 1, "1.2.3"
    ds.ImagePositionPatient, ds.ImageOrientationPatient = [0, 0, number], [1, 0, 0, 0, 1, 0]
    ds.PixelSpacing, ds.RescaleSlope, ds.RescaleIntercept = [0.5, 0.5], "1", "0"
    ds.SamplesPerPixel, ds.PhotometricInterpretation, ds.Rows, ds.Columns = 1, "MONOCHROME2", 4, 6
    ds.BitsAllocated, ds.BitsStored, ds.HighBit, ds.PixelRepresentation = 16, 16, 15, 0
    ds.PixelData = bytes(range(48))
    return ds


def main(folder):
    files = FileSet()
    with tempfile.TemporaryDirectory() as where:
        for ds in [image(n, CTImageStorage, "CT", 1) for n in range(5)] + [image(0, UltrasoundImageStorage, "US", 2)]:
            path = pathlib.Path(where) / ds.SOPInstanceUID
            ds.save_as(str(path), write_like_original=False)
            files.add(str(path))
        files.write(folder)


main(sys.argv[1])
