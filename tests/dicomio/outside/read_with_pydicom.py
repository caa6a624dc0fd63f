"""Prints for a DICOM file, as pydicom reads it: its patient's name in UTF-8 on the first line, then every pixel value of
every frame as decoded by pydicom (uncompressed and RLE). Usage: read_with_pydicom.py FILE"""
import sys

import pydicom

ds = pydicom.dcmread(sys.argv[1], force=True)
ds.decode()
print(str(ds.get("PatientName", "")))
print(" ".join(str(v) for v in ds.pixel_array.flatten()))
