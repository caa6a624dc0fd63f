#!/usr/bin/python3
"""Compares key images, documents and surfaces with what they were made from:   check_objects.py FOLDER"""
import pathlib
import struct
import sys

import numpy as np
import pydicom

folder = pathlib.Path(sys.argv[1])
faults = []


def expect(what, found, wanted):
    if found != wanted:
        faults.append(f"{what}: {found!r}, {wanted!r} is wanted")


pdf = pydicom.dcmread(folder / "pdf.dcm")
source = (folder / "source.pdf").read_bytes()
expect("pdf", pdf.EncapsulatedDocument[:pdf.EncapsulatedDocumentLength], source)
expect("pdf length", pdf.EncapsulatedDocumentLength, len(source))
expect("pdf type", pdf.MIMETypeOfEncapsulatedDocument, "application/pdf")
expect("pdf modality", pdf.Modality, "DOC")
expect("pdf title", pdf.DocumentTitle, "Größenbericht")

image = pydicom.dcmread(folder / "image.dcm")
rows, columns = np.mgrid[0:5, 0:7]
expect("pixels", image.pixel_array.tolist(), np.stack([rows * 40, columns * 30, rows * columns], axis=-1).tolist())
expect("image type", list(image.ImageType), ["DERIVED", "SECONDARY"])
expect("sources", [r.ReferencedSOPInstanceUID for r in image.SourceImageSequence], ["2.25.7", "2.25.8"])
expect("burned in", image.BurnedInAnnotation, "YES")

stl = pydicom.dcmread(folder / "stl.dcm")
plain = (folder / "plain.stl").read_bytes()
expect("stl", stl.EncapsulatedDocument[:stl.EncapsulatedDocumentLength], plain)
expect("stl type", stl.MIMETypeOfEncapsulatedDocument, "model/stl")
expect("stl unit", stl.MeasurementUnitsCodeSequence[0].CodeValue, "mm")
expect("stl frame", stl.FrameOfReferenceUID, "2.25.1003")
count, = struct.unpack_from("<I", plain, 80)
expect("triangles", (count, len(plain)), (4, 84 + 50 * 4))
# The signed volume of the tetrahedron with legs 1, 2, 3 is 1 when all triangles look outwards.
volume = 0.0
for i in range(count):
    numbers = struct.unpack_from("<12f", plain, 84 + 50 * i)
    normal, a, b, c = (np.array(numbers[j:j + 3]) for j in range(0, 12, 3))
    volume += np.dot(a, np.cross(b, c)) / 6
    cross = np.cross(b - a, c - a)
    if not np.allclose(normal, cross / np.linalg.norm(cross), atol=1e-6):
        faults.append(f"normal of triangle {i}")
expect("volume", round(float(volume), 5), 1.0)
for made in (pdf, image, stl):
    expect("study", made.StudyInstanceUID, "2.25.1001")
    expect("patient", str(made.PatientName), "Beispiel^Änne")
expect("series", len({pdf.SeriesInstanceUID, image.SeriesInstanceUID, stl.SeriesInstanceUID}), 3)
print("\n".join(faults))
sys.exit(bool(faults))
