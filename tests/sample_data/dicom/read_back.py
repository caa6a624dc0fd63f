"""Prints, as JSON, what pydicom finds in a folder of CT slices written by the sample library."""
import json
import pathlib
import sys

import numpy
import pydicom

slices = [pydicom.dcmread(path) for path in sorted(pathlib.Path(sys.argv[1]).rglob("*.dcm"))]
answer = []
for ds in slices:
    hu = ds.pixel_array.astype(float) * float(ds.RescaleSlope) + float(ds.RescaleIntercept)
    answer.append({
        "class": str(ds.SOPClassUID),
        "file_class": str(ds.file_meta.MediaStorageSOPClassUID),
        "instance": str(ds.SOPInstanceUID),
        "file_instance": str(ds.file_meta.MediaStorageSOPInstanceUID),
        "syntax": str(ds.file_meta.TransferSyntaxUID),
        "study": str(ds.StudyInstanceUID),
        "series": str(ds.SeriesInstanceUID),
        "frame": str(ds.FrameOfReferenceUID),
        "name": str(ds.PatientName),
        "rows": ds.Rows,
        "columns": ds.Columns,
        "representation": ds.PixelRepresentation,
        "position": [str(v) for v in ds[0x00200032].value],
        "orientation": [float(v) for v in ds.ImageOrientationPatient],
        "spacing": [float(v) for v in ds.PixelSpacing],
        "thickness": float(ds.SliceThickness),
        "percent": float(ds[0x00209241].value) if (0x0020, 0x9241) in ds else None,
        "longest_ds": max(len(part) for element in ds if element.VR == "DS"
                          for part in str(element.value.original_string if hasattr(element.value, "original_string")
                                          else "").split("\\")),
        "hu_sum": float(numpy.sum(hu)),
        "hu_first_row": hu[0].tolist(),
        "missing": [word for word in ("PatientBirthDate", "PatientSex", "StudyDate", "StudyTime", "AccessionNumber",
                                      "ReferringPhysicianName", "StudyID", "SeriesNumber", "Modality", "Manufacturer",
                                      "PositionReferenceIndicator", "ImageType", "InstanceNumber", "KVP",
                                      "AcquisitionNumber", "PatientPosition", "WindowCenter", "WindowWidth",
                                      "SamplesPerPixel", "PhotometricInterpretation", "BitsAllocated", "BitsStored",
                                      "HighBit", "SpecificCharacterSet") if word not in ds],
    })
json.dump(answer, sys.stdout)
