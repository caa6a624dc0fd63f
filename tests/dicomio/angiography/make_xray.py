# Writes X-ray runs with pydicom, an independent writer, into the folder given: an Enhanced XA in explicit and in implicit
# little endian, and a classic XA that moves, with a mask. What they hold is repeated in xray_pydicom_test.cpp.
import sys
from pathlib import Path

import numpy as np
from pydicom.dataset import Dataset, FileDataset, FileMetaDataset
from pydicom.sequence import Sequence
from pydicom.uid import ExplicitVRLittleEndian, ImplicitVRLittleEndian, generate_uid

FRAMES, ROWS, COLUMNS = 4, 6, 8


def pixels():
    f, r, c = np.meshgrid(range(FRAMES), range(ROWS), range(COLUMNS), indexing="ij")
    return (1000 * f + 10 * r + c).astype("<u2")


def started(path, sop_class, syntax):
    meta = FileMetaDataset()
    meta.MediaStorageSOPClassUID = sop_class
    meta.MediaStorageSOPInstanceUID = generate_uid()
    meta.TransferSyntaxUID = syntax
    ds = FileDataset(str(path), {}, file_meta=meta, preamble=b"\0" * 128)
    ds.is_little_endian, ds.is_implicit_VR = True, syntax == ImplicitVRLittleEndian
    ds.SOPClassUID, ds.SOPInstanceUID = sop_class, meta.MediaStorageSOPInstanceUID
    ds.StudyInstanceUID, ds.SeriesInstanceUID = generate_uid(), generate_uid()
    ds.Modality, ds.PatientName, ds.PatientID = "XA", "Invented^Run", "X1"
    ds.Rows, ds.Columns, ds.NumberOfFrames = ROWS, COLUMNS, FRAMES
    ds.SamplesPerPixel, ds.PhotometricInterpretation = 1, "MONOCHROME2"
    ds.BitsAllocated, ds.BitsStored, ds.HighBit, ds.PixelRepresentation = 16, 12, 11, 0
    ds.PixelData = pixels().tobytes()
    return ds


def item(**values):
    ds = Dataset()
    for key, value in values.items():
        setattr(ds, key, value)
    return ds


def enhanced(path, syntax):
    ds = started(path, "1.2.840.10008.5.1.4.1.1.12.1.1", syntax)
    shared = item(
        FramePixelDataPropertiesSequence=Sequence(
            [item(ImagerPixelSpacing=[0.308, 0.154], PixelIntensityRelationship="LOG")]
        ),
        FrameVOILUTSequence=Sequence([item(WindowCenter="2000", WindowWidth="3000")]),
    )
    ds.SharedFunctionalGroupsSequence = Sequence([shared])
    frames = []
    for f in range(FRAMES):
        frames.append(
            item(
                FrameContentSequence=Sequence(
                    [item(FrameReferenceDateTime="2026010112000%d.%03d000" % (f // 2, 500 * (f % 2)))]
                ),
                PositionerPositionSequence=Sequence(
                    [item(PositionerPrimaryAngle=str(-30 + f), PositionerSecondaryAngle=str(20 - 2 * f))]
                ),
                IsocenterReferenceSystemSequence=Sequence(
                    [item(PositionerIsocenterPrimaryAngle=-29.5 + f, PositionerIsocenterSecondaryAngle=20.25)]
                ),
                XRayGeometrySequence=Sequence(
                    [item(DistanceSourceToDetector=str(1000 + 50 * f), DistanceSourceToIsocenter=765.0)]
                ),
            )
        )
    # The last frame also tells its spacing in the middle of the beam.
    frames[3].ProjectionPixelCalibrationSequence = Sequence([item(ObjectPixelSpacingInCenterOfBeam=[0.2, 0.1])])
    ds.PerFrameFunctionalGroupsSequence = Sequence(frames)
    ds.save_as(path, write_like_original=False)


def classic(path):
    ds = started(path, "1.2.840.10008.5.1.4.1.1.12.1", ExplicitVRLittleEndian)
    ds.FrameIncrementPointer, ds.FrameTime = 0x00181063, "66.7"
    ds.PositionerMotion = "DYNAMIC"
    ds.PositionerPrimaryAngle, ds.PositionerSecondaryAngle = "10", "-5"
    ds.PositionerPrimaryAngleIncrement = ["0", "1.5", "2", "1"]
    ds.PositionerSecondaryAngleIncrement = ["0", "0", "0", "0"]
    ds.ImagerPixelSpacing = ["0.3", "0.3"]
    ds.DistanceSourceToDetector, ds.DistanceSourceToPatient = "1080", "720"
    ds.EstimatedRadiographicMagnificationFactor = "1.5"
    ds.PixelIntensityRelationship, ds.RecommendedViewingMode = "LIN", "SUB"
    ds.WindowCenter, ds.WindowWidth = "1500", "2500"
    ds.MaskSubtractionSequence = Sequence(
        [item(MaskOperation="AVG_SUB", MaskFrameNumbers=1, ApplicableFrameRange=[2, 4], MaskSubPixelShift=[0.5, 0.25])]
    )
    ds.save_as(path, write_like_original=False)


folder = Path(sys.argv[1])
enhanced(folder / "enhanced_explicit.dcm", ExplicitVRLittleEndian)
enhanced(folder / "enhanced_implicit.dcm", ImplicitVRLittleEndian)
classic(folder / "classic.dcm")
