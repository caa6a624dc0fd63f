#!/usr/bin/env python3
"""Writes the kept inputs of the fuzz targets again: small valid files of every kind that the readers know.

    /usr/bin/python3 tests/fuzz/make_corpus.py          (needs Debian's python3-pydicom, python3-pil and dcmtk)

Run it when a reader learns a new kind. Everything in the files is made up.
"""
import io
import json
import pathlib
import subprocess
import tempfile

import numpy as np
from PIL import Image
from pydicom.dataset import Dataset, FileDataset, FileMetaDataset
from pydicom.encaps import encapsulate
from pydicom.sequence import Sequence
from pydicom.uid import UID

HERE = pathlib.Path(__file__).parent / "corpus"
IMPLICIT, EXPLICIT = "1.2.840.10008.1.2", "1.2.840.10008.1.2.1"
CT, ENHANCED_CT = "1.2.840.10008.5.1.4.1.1.2", "1.2.840.10008.5.1.4.1.1.2.1"
US, US_MULTI, US_VOLUME = ("1.2.840.10008.5.1.4.1.1.6.1", "1.2.840.10008.5.1.4.1.1.3.1",
                           "1.2.840.10008.5.1.4.1.1.6.2")
XA, ENHANCED_XA, RF = ("1.2.840.10008.5.1.4.1.1.12.1", "1.2.840.10008.5.1.4.1.1.12.1.1",
                       "1.2.840.10008.5.1.4.1.1.12.2")
SIDE = 16


def item(**values):
    made = Dataset()
    for key, value in values.items():
        setattr(made, key, value)
    return made


def base(sop_class, syntax=EXPLICIT):
    meta = FileMetaDataset()
    meta.MediaStorageSOPClassUID = sop_class
    meta.MediaStorageSOPInstanceUID = "1.2.3.4.5"
    meta.TransferSyntaxUID = UID(syntax)
    made = FileDataset(None, {}, file_meta=meta, preamble=b"\0" * 128)
    made.is_implicit_VR = syntax == IMPLICIT
    made.is_little_endian = syntax != "1.2.840.10008.1.2.2"
    made.SpecificCharacterSet = "ISO_IR 100"
    made.SOPClassUID, made.SOPInstanceUID = sop_class, "1.2.3.4.5"
    made.StudyInstanceUID, made.SeriesInstanceUID = "1.2.3", "1.2.3.4"
    made.PatientID, made.PatientName = "P1", "Nobody^Invented"
    made.StudyDate, made.AcquisitionDateTime = "20260105", "20260105101500.25"
    made.Rows = made.Columns = SIDE
    return made


def pixels(made, array, photometric="MONOCHROME2", bits=None, signed=False):
    bits = bits or array.dtype.itemsize * 8
    made.SamplesPerPixel = 3 if array.shape[-1] == 3 else 1
    made.PhotometricInterpretation = photometric
    made.BitsAllocated, made.BitsStored, made.HighBit = array.dtype.itemsize * 8, bits, bits - 1
    made.PixelRepresentation = int(signed)
    if made.SamplesPerPixel == 3:
        made.PlanarConfiguration = 0
    order = array if made.is_little_endian else array.byteswap()
    made.PixelData = order.tobytes()
    made["PixelData"].VR = "OB" if array.dtype.itemsize == 1 else "OW"
    return made


def ramp(dtype=np.int16, colours=1, frames=1):
    shape = (frames, SIDE, SIDE) + ((3,) if colours == 3 else ())
    return (np.arange(np.prod(shape)) % 200).reshape(shape).astype(dtype)


def ct(syntax=EXPLICIT):
    made = base(CT, syntax)
    made.Modality, made.FrameOfReferenceUID = "CT", "1.2.9"
    made.ImagePositionPatient, made.ImageOrientationPatient = [0, 0, 0], [1, 0, 0, 0, 1, 0]
    made.PixelSpacing, made.SliceThickness = [0.5, 0.5], 1
    made.RescaleSlope, made.RescaleIntercept = 1, -1024
    made.NominalPercentageOfCardiacPhase = 45.0
    made.TriggerTime = 400
    return pixels(made, ramp(), bits=12, signed=True)


def enhanced_ct():
    made = base(ENHANCED_CT)
    made.Modality, made.FrameOfReferenceUID, made.NumberOfFrames = "CT", "1.2.9", 2
    made.SharedFunctionalGroupsSequence = Sequence([item(
        PixelMeasuresSequence=Sequence([item(PixelSpacing=[0.5, 0.5], SliceThickness=1)]),
        PlaneOrientationSequence=Sequence([item(ImageOrientationPatient=[1, 0, 0, 0, 1, 0])]),
        PixelValueTransformationSequence=Sequence([item(RescaleSlope=1, RescaleIntercept=-1024)]))])
    made.PerFrameFunctionalGroupsSequence = Sequence([item(
        PlanePositionSequence=Sequence([item(ImagePositionPatient=[0, 0, z])]),
        FrameContentSequence=Sequence([item(DimensionIndexValues=[1, z + 1])]),
        CardiacSynchronizationSequence=Sequence([item(NominalPercentageOfCardiacPhase=45.0)])) for z in range(2)])
    return pixels(made, ramp(frames=2), bits=12, signed=True)


def region(kind, units, delta, box):
    return item(RegionSpatialFormat=kind, RegionDataType=1, RegionFlags=0, RegionLocationMinX0=box[0],
                RegionLocationMinY0=box[1], RegionLocationMaxX1=box[2], RegionLocationMaxY1=box[3],
                ReferencePixelX0=0, ReferencePixelY0=0, PhysicalUnitsXDirection=units[0],
                PhysicalUnitsYDirection=units[1], PhysicalDeltaX=delta[0], PhysicalDeltaY=delta[1])


def ultrasound(sop_class=US, colours=1, photometric="MONOCHROME2", frames=1):
    made = base(sop_class)
    made.Modality = "US"
    if frames > 1:
        made.NumberOfFrames, made.FrameTimeVector = frames, [0] + [33.3] * (frames - 1)
        made.CineRate, made.RecommendedDisplayFrameRate = 30, 30
    made.SequenceOfUltrasoundRegions = Sequence([
        region(1, (3, 3), (0.01, 0.01), (0, 0, 15, 11)), region(3, (4, 7), (0.01, -1.5), (0, 12, 15, 15))])
    return pixels(made, ramp(np.uint8, colours, frames), photometric)


def palette():
    made = ultrasound(photometric="PALETTE COLOR")
    table = np.arange(256, dtype=np.uint16) * 257
    for colour in ("Red", "Green", "Blue"):
        setattr(made, f"{colour}PaletteColorLookupTableDescriptor", [256, 0, 16])
        setattr(made, f"{colour}PaletteColorLookupTableData", table.tobytes())
        made[f"{colour}PaletteColorLookupTableData"].VR = "OW"
    return made


def volume():
    made = base(US_VOLUME)
    made.Modality, made.NumberOfFrames = "US", 2
    made.FrameOfReferenceUID, made.VolumeFrameOfReferenceUID = "1.2.9", "1.2.10"
    made.SharedFunctionalGroupsSequence = Sequence([item(
        PixelMeasuresSequence=Sequence([item(PixelSpacing=[0.5, 0.5], SliceThickness=1)]),
        PlaneOrientationVolumeSequence=Sequence([item(ImageOrientationVolume=[1, 0, 0, 0, 1, 0])]))])
    made.PerFrameFunctionalGroupsSequence = Sequence([item(
        PlanePositionVolumeSequence=Sequence([item(ImagePositionVolume=[0, 0, float(z)])]),
        TemporalPositionSequence=Sequence([item(TemporalPositionTimeOffset=0.0)])) for z in range(2)])
    return pixels(made, ramp(np.uint8, frames=2))


def angiography(sop_class=XA, frames=2):
    made = base(sop_class)
    made.Modality, made.NumberOfFrames = "XA" if sop_class != RF else "RF", frames
    made.PositionerPrimaryAngle, made.PositionerSecondaryAngle = -30, 20
    made.PositionerMotion = "DYNAMIC"
    made.PositionerPrimaryAngleIncrement = [0, 1.5]
    made.ImagerPixelSpacing, made.DistanceSourceToDetector, made.DistanceSourceToPatient = [0.2, 0.2], 1100, 750
    made.EstimatedRadiographicMagnificationFactor = 1.4667
    made.FrameTime = 66.7
    made.WindowCenter, made.WindowWidth = 128, 256
    made.MaskSubtractionSequence = Sequence([item(MaskOperation="AVG_SUB", MaskFrameNumbers=[1],
                                                  ApplicableFrameRange=[1, 2])])
    if sop_class == ENHANCED_XA:
        made.PerFrameFunctionalGroupsSequence = Sequence([item(
            PositionerPositionSequence=Sequence([item(PositionerPrimaryAngle=-30.0,
                                                      PositionerSecondaryAngle=20.0)])) for _ in range(frames)])
    return pixels(made, ramp(np.uint8, frames=frames))


def rle(plane):
    """One byte plane in RLE of PS3.5 annex G, all literal runs."""
    coded = b"".join(bytes([min(128, len(plane) - i) - 1]) + plane[i:i + 128] for i in range(0, len(plane), 128))
    return coded + b"\0" * (len(coded) % 2)


def rle_coded(made, array):
    made.file_meta.TransferSyntaxUID = UID("1.2.840.10008.1.2.5")
    planes = [rle(array.astype(">u2").tobytes()[part::2]) for part in (0, 1)]
    head = [2, 64, 64 + len(planes[0])] + [0] * 13
    made.PixelData = encapsulate([np.array(head, "<u4").tobytes() + b"".join(planes)])
    made["PixelData"].VR, made["PixelData"].is_undefined_length = "OB", True
    return made


def image_coded(made, array, syntax, kind, **options):
    made.file_meta.TransferSyntaxUID = UID(syntax)
    coded = []
    for frame in array:
        out = io.BytesIO()
        Image.fromarray(frame).save(out, kind, **options)
        coded.append(out.getvalue() + b"\0" * (len(out.getvalue()) % 2))
    made.PixelData = encapsulate(coded)
    made["PixelData"].VR, made["PixelData"].is_undefined_length = "OB", True
    return made


def bytes_of(made):
    out = io.BytesIO()
    made.save_as(out, write_like_original=False)
    return out.getvalue()


def by_tool(tool, made, *options):
    with tempfile.TemporaryDirectory() as folder:
        source, target = pathlib.Path(folder, "a.dcm"), pathlib.Path(folder, "b.dcm")
        source.write_bytes(bytes_of(made))
        subprocess.run([tool, *options, source, target], check=True)
        return target.read_bytes()


def case():
    """A case of format version 2 with one entry of each kind; each is set by one edit."""
    frame = {"origin_lps_mm": [1.0, 2.0, 3.0], "u_lps": [1.0, 0.0, 0.0], "v_lps": [0.0, 1.0, 0.0],
             "normal_lps": [0.0, 0.0, 1.0]}
    items = {"age_years": 78.0, "sex": "female", "heart_failure": True, "hypertension": True, "diabetes": False,
             "stroke_or_embolism": False, "vascular_disease": False}
    bleeding = {key: False for key in (
        "uncontrolled_hypertension", "abnormal_renal_function", "abnormal_liver_function", "stroke", "bleeding",
        "takes_vitamin_k_antagonist", "labile_inr", "antiplatelet_or_nsaid", "alcohol")}
    many = {
        "evidence": ("evidence", "2.25.77", {
            "kind": "echo-cine", "series_uid": "2.25.7", "sop_instance_uid": "2.25.77", "stage": "before-repair",
            "moment": "before", "probe_angle_deg": 45.0, "beat_phase": "end-systole", "acquired": "", "description": "a"}),
        "moments": ("moment", "before", {
            "circulation": {"stage": "before-repair", "state": "before", "time": "", "mean_pressure_mmHg": 18.0,
                            "pressure_source": "direct", "v_wave_mmHg": 40.0, "mean_mitral_gradient_mmHg": 3.0,
                            "gradient_source": "typed", "heart_rate_per_minute": 70.0, "rhythm": "paced",
                            "ventilation": "controlled", "regurgitation": "severe", "pulmonary_vein_flow": "reversed"},
            "condition": "mitral-regurgitation", "pressure_uncertainty_mmHg": 1.0}),
        "readings": ("reading", "1", {
            "quantity": "depth", "modality": "echo-2d", "derivation": "largest-of-views", "stage": "before-repair",
            "moment": "before", "condition": "other", "phase": "end-systole", "value_mm": 23.5,
            "standard_uncertainty_mm": 1.0, "pressure_mmHg": None, "pressure_source": None,
            "pressure_uncertainty_mmHg": None, "v_wave_mmHg": None, "contour_per_view": 0.9, "mixed_beats": True,
            "note": "letter"}),
        "drawings": ("drawing", "1", {
            "kind": "straight", "role": "ostium-width", "site": {"picture": {"sop_instance_uid": "2.25.77", "frame": 3}},
            "points": [[10.0, 12.5], [40.0, 13.0]], "evidence": "2.25.77", "label": "x"}),
        "contours": ("contour", "ostium", {
            "frame": frame, "points_mm": [[0.0, 9.0], [8.0, 0.0], [0.0, -9.0], [-8.0, 0.0]], "plane": "ostium",
            "plane_revision": 2}),
        "scales": ("scale", "2.25.78", {
            "origin": "catheter", "frame": 0, "from": [1.0, 2.0], "to": [30.0, 2.0], "known_mm": 2.0,
            "by_edge_profile": True, "within": {"min_x": 0, "min_y": 0, "max_x": 63, "max_y": 63}}),
        "landmarks": ("landmark", "1", {
            "ct_lps_mm": [1.0, 2.0, 3.0], "echo": {"sop_instance_uid": "2.25.77", "frame": 3},
            "echo_point": [10.0, 12.5], "label": "circumflex"}),
        "release": ("release", "1", {
            "stage": "deployed-attached", "time": "", "inner_catheter_withdrawn": False, "findings": [
                {"quantity": "jet-width", "value": 2.0, "standard_uncertainty": 0.5, "view": "45 degrees", "side": "",
                 "seen_by": "reader", "source": ""}]}),
        "stasis": ("stasis", "1", {
            "stage": "after-repair", "echo_contrast_grade": 2, "sludge": False, "thrombus": None,
            "emptying_velocity_cm_per_s": 25.0, "enhancement_ratio": None, "enhancement_phase": "unknown",
            "looked_at_again": True, "seen_by": "reader"}),
    }
    single = {
        "sizing": {"chart_text": "{}", "chart_source": "made up", "decision_pressure_mmHg": 12.0, "lowest_mmHg": 8.0,
                   "highest_mmHg": 20.0, "cause": "lasting", "regurgitation_may_recur": False, "size": "24"},
        "scores": {"stroke": items, "bleeding": {"age_years": 78.0, "systolic_mmHg": 150.0, "drinks_per_week": None,
                                                 **bleeding}},
        "patient": {"name": "Nobody^Invented", "id": "P1", "birth_date": "19480101", "sex": "F", "title": "t",
                    "tags": ["a", "b"]},
        "decision": {"text": "words", "size": "24", "signed_by": "", "time": ""},
    }
    record = {"images": None, "marks": {}, "ostium": None,
              "landing": {"depths_mm": [10.0], "plug_mm": None, "revision": 0},
              "values": {"sources": [], "list": []}}
    journal = []

    def set_entry(identity, content):
        entry = {**content, "revision": len(journal) + 1}
        journal.append({"sequence": len(journal) + 1, "author": "reader", "time": "2031-02-03T10:00:00+01:00",
                        "change": {"edit": "set-entry", "id": identity, "entry": entry}})
        return entry

    for key, (kind, identity, content) in many.items():
        record[key] = {identity: set_entry(f"{kind}/{identity}", content)}
    for key, content in single.items():
        record[key] = set_entry(key, content)
    return {"format": "ostium-gauge/case/2", "journal": journal, "record": record}


def reports():
    """What tests/dicomio/report/make_foreign.py writes: reports of others."""
    maker = pathlib.Path(__file__).parent.parent / "dicomio" / "report" / "make_foreign.py"
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run(["/usr/bin/python3", maker, folder], check=True)
        return {file.stem: file.read_bytes() for file in pathlib.Path(folder).glob("*.dcm")}


def main():
    (HERE / "case_fuzz" / "every-entry.json").write_text(json.dumps(case(), indent=1, ensure_ascii=False) + "\n")
    grey = ultrasound(US_MULTI, frames=2)
    colour = ultrasound(US_MULTI, 3, "RGB", 2)
    jpeg = image_coded(ultrasound(US_MULTI, 3, "YBR_FULL_422", 2), ramp(np.uint8, 3, 2), "1.2.840.10008.1.2.4.50",
                       "JPEG")
    jpeg2000 = image_coded(ultrasound(US_MULTI, 3, "YBR_RCT", 2), ramp(np.uint8, 3, 2), "1.2.840.10008.1.2.4.90",
                           "JPEG2000", irreversible=False, no_jp2=True)
    plain = {
        "ct-explicit": bytes_of(ct()), "ct-implicit": bytes_of(ct(IMPLICIT)),
        "ct-big-endian": bytes_of(ct("1.2.840.10008.1.2.2")), "ct-deflated": bytes_of(ct("1.2.840.10008.1.2.1.99")),
        "ct-enhanced": bytes_of(enhanced_ct()),
    }
    coded = {
        "ct-rle": bytes_of(rle_coded(ct(), ramp())),
        "ct-jpeg-lossless": by_tool("dcmcjpeg", ct(), "+e1"), "ct-jpeg-ls": by_tool("dcmcjpls", ct()),
        "us-jpeg": bytes_of(jpeg), "us-jpeg2000": bytes_of(jpeg2000),
        "us-near-lossless": by_tool("dcmcjpls", grey, "+en", "+md", "2"), "us-rle": by_tool("dcmcrle", colour),
    }
    sound = {"us-still": bytes_of(ultrasound()), "us-grey": bytes_of(grey), "us-rgb": bytes_of(colour),
             "us-palette": bytes_of(palette()), "us-volume": bytes_of(volume())}
    xray = {"xa": bytes_of(angiography()), "xa-enhanced": bytes_of(angiography(ENHANCED_XA)),
            "rf": bytes_of(angiography(RF))}
    for target, files in {"scan_fuzz": {**plain, **sound, **xray}, "pixel_fuzz": {**plain, **coded, **sound},
                          "ct_fuzz": {**plain, **coded}, "ultrasound_fuzz": {**sound, **coded},
                          "angiography_fuzz": {**xray, **coded}, "report_fuzz": reports()}.items():
        folder = HERE / target
        folder.mkdir(parents=True, exist_ok=True)
        for name, content in files.items():
            (folder / f"{name}.dcm").write_bytes(content)


main()
