#!/usr/bin/python3
"""Writes reports that are not ours, with pydicom:   make_foreign.py FOLDER [OURS.dcm]

foreign.dcm   a TID 1500 report with a planar group, a loose number, a retired SRT code and concepts nobody here knows
spatial.dcm   a contour in the patient, with a pressure
echo-lab.dcm  sizes in cm and cm2, inches, other containers, sites told by half, retired codes: what a comparison table must sort out
no-group.dcm  a structured report without any measurement
From OURS.dcm, one fault each: unit-absent, unit-without-code, number-text, number-contradicted, deviation-unit, coordinate-nan, coordinate-odd,
frame-zero, frame-of-reference-absent, deep, ct-class.
"""
import copy
import pathlib
import sys

import pydicom
from pydicom.dataset import Dataset, FileDataset, FileMetaDataset
from pydicom.sequence import Sequence
from pydicom.uid import ExplicitVRLittleEndian, ImplicitVRLittleEndian

COMPREHENSIVE = "1.2.840.10008.5.1.4.1.1.88.33"


def code(value, scheme, meaning):
    made = Dataset()
    made.CodeValue, made.CodingSchemeDesignator, made.CodeMeaning = value, scheme, meaning
    return made


def item(relation, kind, concept=None, children=(), **values):
    made = Dataset()
    if relation:
        made.RelationshipType = relation
    made.ValueType = kind
    if concept:
        made.ConceptNameCodeSequence = Sequence([code(*concept)])
    for key, value in values.items():
        setattr(made, key, value)
    if children:
        made.ContentSequence = Sequence(list(children))
    return made


def coded(relation, concept, value):
    return item(relation, "CODE", concept, ConceptCodeSequence=Sequence([code(*value)]))


def number(concept, value, unit, children=(), relation="CONTAINS"):
    measured = Dataset()
    measured.NumericValue = value
    measured.MeasurementUnitsCodeSequence = Sequence([code(*unit)])
    return item(relation, "NUM", concept, children, MeasuredValueSequence=Sequence([measured]))


def image(relation, uid, concept=None, frame=None):
    reference = Dataset()
    reference.ReferencedSOPClassUID, reference.ReferencedSOPInstanceUID = "1.2.840.10008.5.1.4.1.1.3.1", uid
    if frame:
        reference.ReferencedFrameNumber = frame
    return item(relation, "IMAGE", concept, ReferencedSOPSequence=Sequence([reference]))


MM, CM = ("mm", "UCUM", "millimeter"), ("cm", "UCUM", "centimeter")


def report(content, syntax=ExplicitVRLittleEndian, character_set="ISO_IR 100"):
    meta = FileMetaDataset()
    meta.MediaStorageSOPClassUID, meta.MediaStorageSOPInstanceUID = COMPREHENSIVE, "1.2.3.4.5"
    meta.TransferSyntaxUID = syntax
    made = FileDataset(None, {}, file_meta=meta, preamble=b"\0" * 128)
    made.is_little_endian, made.is_implicit_VR = True, syntax == ImplicitVRLittleEndian
    made.SpecificCharacterSet = character_set
    made.SOPClassUID, made.SOPInstanceUID = COMPREHENSIVE, "1.2.3.4.5"
    made.StudyInstanceUID, made.SeriesInstanceUID, made.Modality = "1.2.3", "1.2.3.4", "SR"
    made.PatientName, made.PatientID = "Müller^Änne", "F-1"
    made.ContentDate, made.ContentTime = "20300102", "030405"
    made.Manufacturer = "Invented Echo Lab"
    made.CompletionFlag, made.VerificationFlag = "PARTIAL", "UNVERIFIED"
    instance = Dataset()
    instance.ReferencedSOPClassUID, instance.ReferencedSOPInstanceUID = "1.2.840.10008.5.1.4.1.1.3.1", "1.2.9.9"
    series = Dataset()
    series.SeriesInstanceUID, series.ReferencedSOPSequence = "1.2.9", Sequence([instance])
    study = Dataset()
    study.StudyInstanceUID, study.ReferencedSeriesSequence = "1.2.3", Sequence([series])
    made.CurrentRequestedProcedureEvidenceSequence = Sequence([study])
    made.ValueType, made.ContinuityOfContent = "CONTAINER", "SEPARATE"
    made.ConceptNameCodeSequence = Sequence([code("126000", "DCM", "Imaging Measurement Report")])
    made.ContentSequence = Sequence(content)
    return made


def foreign():
    deviation = number(("R-10047", "SRT", "Standard Deviation"), "0.4", MM, relation="HAS PROPERTIES")
    region = item("INFERRED FROM", "SCOORD", ("121112", "DCM", "Source of Measurement"),
                  [image("SELECTED FROM", "1.2.9.9", frame=3)], GraphicType="POLYLINE", GraphicData=[10.5, 20.5, 30.5, 40.5])
    group = item("CONTAINS", "CONTAINER", ("125007", "DCM", "Measurement Group"), [
        item("HAS OBS CONTEXT", "TEXT", ("112039", "DCM", "Tracking Identifier"), TextValue="LAA 1"),
        coded("HAS CONCEPT MOD", ("G-C0E3", "SRT", "Finding Site"), ("33626005", "SCT", "Left auricular appendage")),
        number(("131223", "DCM", "Left Atrial Appendage Major Axis"), "23.5", MM, [
            coded("HAS CONCEPT MOD", ("G-C036", "SRT", "Measurement Method"), ("X1", "99ELSE", "Their caliper")),
            coded("HAS CONCEPT MOD", ("121401", "DCM", "Derivation"), ("56851009", "SCT", "Maximum")), deviation, region]),
        number(("QX-7", "99ELSE", "Something that only they measure"), "1.25e1", CM),
        item("CONTAINS", "NUM", ("131224", "DCM", "Left Atrial Appendage Minor Axis"), MeasuredValueSequence=Sequence([])),
        item("CONTAINS", "TEXT", ("121106", "DCM", "Comment"), TextValue="größer als früher"),
    ])
    section = item("CONTAINS", "CONTAINER", ("126010", "DCM", "Imaging Measurements"), [group])
    loose = item("CONTAINS", "CONTAINER", ("126011", "DCM", "Derived Imaging Measurements"),
                 [number(("42798000", "SCT", "Area"), "350", ("mm2", "UCUM", "square millimeter"))])
    person = [coded("HAS OBS CONTEXT", ("121005", "DCM", "Observer Type"), ("121006", "DCM", "Person")),
              item("HAS OBS CONTEXT", "PNAME", ("121008", "DCM", "Person Observer Name"), PersonName="Fremde^Ärztin")]
    return [*person, section, loose]


def spatial():
    """A contour in the patient with the pressure that it was measured at."""
    polygon = item("CONTAINS", "SCOORD3D", ("111030", "DCM", "Image Region"), GraphicType="POLYGON",
                   GraphicData=[0.0, 0.0, 5.0, 10.0, 0.0, 5.0, 10.0, 8.0, 5.0, 0.0, 0.0, 5.0], ReferencedFrameOfReferenceUID="1.2.7")
    pressure = number(("6797001", "SCT", "Mean blood pressure"), "14", ("mm[Hg]", "UCUM", "millimeter of mercury"),
                      [coded("HAS CONCEPT MOD", ("363698007", "SCT", "Finding Site"), ("82471001", "SCT", "Left atrium"))],
                      relation="HAS OBS CONTEXT")
    group = item("CONTAINS", "CONTAINER", ("125007", "DCM", "Measurement Group"), [
        item("HAS OBS CONTEXT", "TEXT", ("112039", "DCM", "Tracking Identifier"), TextValue="ostium"), pressure, polygon,
        number(("131191004", "SCT", "Perimeter"), "34.1", MM)])
    return [item("CONTAINS", "CONTAINER", ("126010", "DCM", "Imaging Measurements"), [group])]


def echo_lab():
    """Echo in centimetres in one group, CT in a container of its own, and numbers that no table can place."""
    cm2, inch = ("cm2", "UCUM", "square centimeter"), ("[in_i]", "UCUM", "inch")
    ostium = ("131120", "DCM", "Ostium of Left Auricular Appendage")
    site = ("363698007", "SCT", "Finding Site")
    deviation = number(("386136009", "SCT", "Standard Deviation"), "0.04", CM, relation="HAS PROPERTIES")
    pressure = number(("6797001", "SCT", "Mean blood pressure"), "14", ("mm[Hg]", "UCUM", "millimeter of mercury"),
                      [coded("HAS CONCEPT MOD", site, ("82471001", "SCT", "Left atrium"))], relation="HAS OBS CONTEXT")
    echo = item("CONTAINS", "CONTAINER", ("125007", "DCM", "Measurement Group"), [
        item("HAS OBS CONTEXT", "TEXT", ("112039", "DCM", "Tracking Identifier"), TextValue="neck"), pressure,
        coded("HAS CONCEPT MOD", ("272518008", "SCT", "Cardiac Cycle Point"), ("416430001", "SCT", "End Systole")),
        coded("HAS CONCEPT MOD", site, ("33626005", "SCT", "Left auricular appendage")),
        image("CONTAINS", "1.2.9.9", ("260753009", "SCT", "Source")),
        number(("131223", "DCM", "Left Atrial Appendage Major Axis"), "2.35", CM, [
            coded("HAS CONCEPT MOD", ("370129005", "SCT", "Measurement Method"), ("X1", "99ELSE", "Their caliper")),
            coded("HAS CONCEPT MOD", ("121401", "DCM", "Derivation"), ("56851009", "SCT", "Maximum")), deviation]),
        number(("131197000", "SCT", "Depth"), "2.81", CM),
        number(("131187009", "SCT", "Major Axis"), "2.2", CM),
        number(("131222", "DCM", "Left Atrial Appendage Landing Zone Major Axis"), "0.9", inch),
        number(("131221", "DCM", "Left Atrial Appendage Depth"), "281", CM),
        number(("QX-7", "99ELSE", "Something that only they measure"), "1.25e1", CM)])
    on_ct = dict(ReferencedSOPClassUID="1.2.840.10008.5.1.4.1.1.2", ReferencedSOPInstanceUID="1.2.8.8")
    reference = Dataset()
    for key, value in on_ct.items():
        setattr(reference, key, value)
    slice_ = item("INFERRED FROM", "IMAGE", ("121112", "DCM", "Source of Measurement"), ReferencedSOPSequence=Sequence([reference]))
    inner = item("CONTAINS", "CONTAINER", ("QX-9", "99ELSE", "What the CT told"), [
        number(("G-A197", "SRT", "Perimeter"), "72", MM, [coded("HAS CONCEPT MOD", ("G-C0E3", "SRT", "Finding Site"), ostium), slice_]),
        number(("42798000", "SCT", "Area"), "3.5", cm2, [
            coded("HAS CONCEPT MOD", site, ("landing-zone", "99OSTIUM", "Landing zone of the left atrial appendage")), slice_])])
    person = [coded("HAS OBS CONTEXT", ("121005", "DCM", "Observer Type"), ("121006", "DCM", "Person")),
              item("HAS OBS CONTEXT", "PNAME", ("121008", "DCM", "Person Observer Name"), PersonName="Fremde^Ärztin")]
    made = report([*person, item("CONTAINS", "CONTAINER", ("126010", "DCM", "Imaging Measurements"), [echo, inner])])
    made.ConceptNameCodeSequence = Sequence([code("131091", "DCM", "Intra-procedural Structural Heart Measurement Report")])
    instance, series, study = Dataset(), Dataset(), Dataset()
    for key, value in on_ct.items():
        setattr(instance, key, value)
    series.SeriesInstanceUID, series.ReferencedSOPSequence = "1.2.8", Sequence([instance])
    study.StudyInstanceUID, study.ReferencedSeriesSequence = "1.2.3.1", Sequence([series])
    made.PertinentOtherEvidenceSequence = Sequence([study])
    return made


def save(made, path):
    made.save_as(path, write_like_original=False)


def broken(ours):
    def change(name, edit):
        made = copy.deepcopy(ours)
        edit(made)
        save(made, FOLDER / f"{name}.dcm")

    def measurements(made):
        return [c for c in made.ContentSequence if c.get("ConceptNameCodeSequence") and
                c.ConceptNameCodeSequence[0].CodeValue == "126010"][0].ContentSequence

    def first(made, kind, relation="CONTAINS", of=lambda _: True):
        def look(items):
            for child in items:
                if child.ValueType == kind and child.RelationshipType == relation and of(child):
                    return child
                found = look(child.get("ContentSequence", []))
                if found is not None:
                    return found
            return None
        return look(measurements(made))

    def drop_unit(made):
        del first(made, "NUM").MeasuredValueSequence[0].MeasurementUnitsCodeSequence

    def code_of_unit(made):
        del first(made, "NUM").MeasuredValueSequence[0].MeasurementUnitsCodeSequence[0].CodeValue

    def as_text(made):
        measured = first(made, "NUM").MeasuredValueSequence[0]
        measured.add_new(0x0040A30A, "LO", "about 20")

    def contradict(made):
        first(made, "NUM").MeasuredValueSequence[0].NumericValue = "34.5"

    def deviation_unit(made):
        first(made, "NUM", "HAS PROPERTIES").MeasuredValueSequence[0].MeasurementUnitsCodeSequence[0].CodeValue = "cm"

    def nan(made):
        data = list(first(made, "SCOORD3D").GraphicData)
        first(made, "SCOORD3D").GraphicData = [float("nan")] + data[1:]

    def odd(made):
        first(made, "SCOORD3D").GraphicData = list(first(made, "SCOORD3D").GraphicData)[:-1]

    def frame_zero(made):
        first(made, "IMAGE", of=lambda i: "ReferencedFrameNumber" in i.ReferencedSOPSequence[0]).ReferencedSOPSequence[0].ReferencedFrameNumber = 0

    def no_frame_of_reference(made):
        del first(made, "SCOORD3D").ReferencedFrameOfReferenceUID

    def deep(made):
        inner = item("CONTAINS", "CONTAINER", ("121070", "DCM", "Findings"))
        for _ in range(25):
            inner = item("CONTAINS", "CONTAINER", ("121070", "DCM", "Findings"), [inner])
        made.ContentSequence.append(inner)

    def ct_class(made):
        made.SOPClassUID = made.file_meta.MediaStorageSOPClassUID = "1.2.840.10008.5.1.4.1.1.2"

    for name, edit in {"unit-absent": drop_unit, "unit-without-code": code_of_unit, "number-text": as_text, "number-contradicted": contradict,
                       "deviation-unit": deviation_unit, "coordinate-nan": nan, "coordinate-odd": odd, "frame-zero": frame_zero,
                       "frame-of-reference-absent": no_frame_of_reference, "deep": deep, "ct-class": ct_class}.items():
        change(name, edit)


FOLDER = pathlib.Path(sys.argv[1])
save(report(foreign()), FOLDER / "foreign.dcm")
save(report(foreign(), ImplicitVRLittleEndian, "ISO_IR 192"), FOLDER / "foreign-implicit.dcm")
save(report(spatial()), FOLDER / "spatial.dcm")
save(echo_lab(), FOLDER / "echo-lab.dcm")
save(report([item("CONTAINS", "TEXT", ("121071", "DCM", "Finding"), TextValue="nothing measured")]), FOLDER / "no-group.dcm")
if len(sys.argv) > 2:
    broken(pydicom.dcmread(sys.argv[2]))
