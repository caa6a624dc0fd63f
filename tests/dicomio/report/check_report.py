#!/usr/bin/python3
"""Walks a structured report of ours with pydicom, row by row of its templates, and compares it with the case's JSON.

    check_report.py REPORT.dcm CASE.json SOURCES.json

Templates: PS3.16 TID 1500, 1204, 1001-1004, 1600, 1410, 1501, 300, 310/311, 320, 1502, from memory of the standard and of
highdicom's content items, checked where pydicom knows the codes. Codes that pydicom 2.3.1 does not know yet are listed with
their source. Prints nothing and ends with 0 when all is right; else one line a finding.
"""
import json
import math
import sys

import pydicom
from pydicom.sr._concepts_dict import concepts

OWN = "99OSTIUM"
# C2348792 is in the toolkit's UMLS table. PS3.16 as of 2026b: CID 12344, 12338, 12332 and anatomy codes newer than pydicom's tables; (260753009, SCT) as highdicom has it.
NEWER = {("C2348792", "UMLS"), ("131090", "DCM"), ("131091", "DCM"), ("131092", "DCM"), ("131120", "DCM"), ("131112", "DCM"), ("131219", "DCM"),
         ("131221", "DCM"), ("131222", "DCM"), ("131223", "DCM"), ("131224", "DCM"), ("131225", "DCM"), ("260753009", "SCT"),
         ("105376000", "SCT"), ("77477000", "SCT"), ("255605001", "SCT"), ("56851009", "SCT")}
OTHER = {("en", "RFC5646"), ("GB", "ISO3166_1")}
CID7021 = {"126000", "126001", "126002", "126003"}
CID12344 = {"131090", "131091", "131092"}
CID12338 = {"131217", "131218", "131219", "131220", "131221", "131222", "131223", "131224", "131225"}
# UCUM units that our values may have (references: PS3.16 CID 7460 and following).
UNITS = {"mm": "mm", "mm2": "mm2", "mL": "ml", "deg": "deg", "HU": "[hnsf'U]", "1": "1", "mmHg": "mm[Hg]", "cm/s": "cm/s"}
MILLIMETRE_TOLERANCE = 0.01  # of contours read back; 32-bit coordinates lose 0.00003 mm at 500 mm

findings = []


def wrong(text):
    findings.append(text)


def code(item):
    value = getattr(item, "CodeValue", None) or getattr(item, "LongCodeValue", None)
    return value, item.CodingSchemeDesignator


def name(item):
    return code(item.ConceptNameCodeSequence[0]) if "ConceptNameCodeSequence" in item else None


def known_codes():
    for scheme, words in concepts.items():
        for entries in words.values():
            for value in entries:
                yield value, scheme


KNOWN = set(known_codes())


def check_codes(dataset):
    """Every code of the report is one of the standard's or is ours, and none is too long."""
    for element in dataset.iterall():
        if element.VR != "SQ" or "Code" not in element.keyword or element.keyword == "CodingSchemeIdentificationSequence":
            continue
        for item in element.value:
            value, scheme = code(item)
            if not item.CodeMeaning or len(item.CodeMeaning) > 64:
                wrong(f"code {value} {scheme}: meaning is empty or too long")
            if "CodeValue" in item and len(value) > 16:
                wrong(f"code {value} {scheme} is longer than 16 characters")
            if scheme == "UCUM":
                if not value.startswith("{") and value not in set(UNITS.values()) | {"/min", "%"}:
                    wrong(f"unit {value} is none that was expected")
            elif scheme != OWN and (value, scheme) not in KNOWN | NEWER | OTHER:
                wrong(f"code {value} {scheme} {item.CodeMeaning!r} is not in the standard's tables")


# (relationship, value type, concept): (template row, least, most); concept None is no concept name.
DCM, SCT = "DCM", "SCT"
OBSERVER = {
    ("HAS OBS CONTEXT", "CODE", ("121005", DCM)): ("TID 1002 row 1", 0, 99),
    ("HAS OBS CONTEXT", "PNAME", ("121008", DCM)): ("TID 1003 row 1", 0, 99),
    ("HAS OBS CONTEXT", "TEXT", ("121009", DCM)): ("TID 1003 row 2", 0, 99),
}
DEVICE = {
    ("HAS OBS CONTEXT", "UIDREF", ("121012", DCM)): ("TID 1004 row 1", 1, 1),
    ("HAS OBS CONTEXT", "TEXT", ("121013", DCM)): ("TID 1004 row 2", 0, 1),
    ("HAS OBS CONTEXT", "TEXT", ("121014", DCM)): ("TID 1004 row 3", 0, 1),
    ("HAS OBS CONTEXT", "TEXT", ("121015", DCM)): ("TID 1004 row 4", 0, 1),
    ("HAS OBS CONTEXT", "TEXT", ("121016", DCM)): ("TID 1004 row 5", 0, 1),
}
ROOT = {
    ("HAS CONCEPT MOD", "CODE", ("121049", DCM)): ("TID 1204 row 1", 1, 1),
    ("HAS CONCEPT MOD", "CODE", ("121058", DCM)): ("TID 1500 row 4", 1, 99),
    ("CONTAINS", "CONTAINER", ("111028", DCM)): ("TID 1600 row 1", 0, 1),
    ("CONTAINS", "CONTAINER", ("126010", DCM)): ("TID 1500 row 6", 1, 1),
    ("CONTAINS", "TEXT", ("121077", DCM)): ("extension", 0, 99),
    **OBSERVER, **DEVICE,
}
GROUP = {
    ("HAS OBS CONTEXT", "TEXT", ("112039", DCM)): ("TID 4108 row 1", 1, 1),
    ("HAS OBS CONTEXT", "UIDREF", ("112040", DCM)): ("TID 4108 row 2", 1, 1),
    ("CONTAINS", "CODE", ("121071", DCM)): ("finding", 0, 1),
    ("HAS CONCEPT MOD", "CODE", ("363698007", SCT)): ("finding site", 0, 99),
    ("HAS CONCEPT MOD", "CODE", ("272518008", SCT)): ("cardiac cycle point, CID 12233", 0, 1),
    ("HAS OBS CONTEXT", "TEXT", ("C2348792", "UMLS")): ("TID 1502 row 1", 0, 1),
    ("HAS OBS CONTEXT", "CODE", ("126072", DCM)): ("TID 1502 row 2", 0, 1),
    ("HAS OBS CONTEXT", "NUM", ("6797001", SCT)): ("extension: pressure", 0, 1),
    ("HAS OBS CONTEXT", "NUM", ("109034", DCM)): ("extension: v wave", 0, 1),
    ("CONTAINS", "IMAGE", ("260753009", SCT)): ("source image of the group", 0, 99999),
    ("CONTAINS", "SCOORD", ("111030", DCM)): ("TID 1410 region", 0, 99),
    ("CONTAINS", "SCOORD3D", ("111030", DCM)): ("TID 1410 region", 0, 99),
    ("CONTAINS", "TEXT", ("121106", DCM)): ("extension: comment", 0, 99),
    **OBSERVER,
}
NUMBER = {
    ("HAS OBS CONTEXT", "TEXT", ("112039", DCM)): ("TID 4108 row 1", 1, 1),
    ("HAS OBS CONTEXT", "UIDREF", ("112040", DCM)): ("TID 4108 row 2", 1, 1),
    ("HAS CONCEPT MOD", "CODE", ("370129005", SCT)): ("TID 300 method", 0, 1),
    ("HAS CONCEPT MOD", "CODE", ("121401", DCM)): ("TID 300 derivation", 0, 1),
    ("HAS CONCEPT MOD", "CODE", ("363698007", SCT)): ("TID 300 finding site", 0, 1),
    ("HAS PROPERTIES", "NUM", ("386136009", SCT)): ("TID 311 standard deviation", 0, 1),
    ("INFERRED FROM", "IMAGE", ("121112", DCM)): ("TID 320 row 1", 0, 99),
    ("INFERRED FROM", "SCOORD", ("121112", DCM)): ("TID 320 row 3", 0, 99),
}


def check_rows(item, rows, where, extensible=True):
    seen = {}
    for child in item.get("ContentSequence", []):
        key = (child.RelationshipType, child.ValueType, name(child))
        seen[key] = seen.get(key, 0) + 1
        own = key[2] is not None and key[2][1] == OWN
        number = rows is GROUP and key[0:2] == ("CONTAINS", "NUM")
        finding = rows is GROUP and key[0] == "CONTAINS" and key[1] == "CODE" and own
        if key not in rows and not number and not finding and not (extensible and own):
            wrong(f"{where}: {key} has no row in the template")
    for key, (row, least, most) in rows.items():
        if not least <= seen.get(key, 0) <= most:
            wrong(f"{where}: {row} {key} is there {seen.get(key, 0)} times, {least} to {most} are wanted")
    return seen


def children(item, *names):
    return [c for c in item.get("ContentSequence", []) if name(c) in names]


def check_reference(reference, instances, where):
    key = (reference.ReferencedSOPClassUID, reference.ReferencedSOPInstanceUID)
    if key not in instances:
        wrong(f"{where} refers to {key}, which the evidence sequence does not list")


def check_number(number, where, instances):
    if number.ValueType != "NUM" or len(number.MeasuredValueSequence) != 1:
        wrong(f"{where}: no single measured value")
    check_rows(number, NUMBER, where)
    measured = number.MeasuredValueSequence[0]
    unit = code(measured.MeasurementUnitsCodeSequence[0])
    if unit[1] != "UCUM":
        wrong(f"{where}: unit {unit} is not UCUM")
    if not math.isclose(float(measured.NumericValue), measured.FloatingPointValue, rel_tol=1e-9, abs_tol=1e-9):
        wrong(f"{where}: NumericValue {measured.NumericValue} and FloatingPointValue {measured.FloatingPointValue}")
    for deviation in children(number, ("386136009", SCT)):
        if code(deviation.MeasuredValueSequence[0].MeasurementUnitsCodeSequence[0]) != unit:
            wrong(f"{where}: its standard deviation has another unit")
    if name(number)[0] in CID12338 and name(number)[1] == DCM and unit[0] != "mm":
        wrong(f"{where}: a CID 12338 length in {unit[0]}")
    check_images(number, where, instances)


def check_images(item, where, instances):
    for child in item.get("ContentSequence", []):
        if child.ValueType == "IMAGE":
            check_reference(child.ReferencedSOPSequence[0], instances, where)
        if child.ValueType == "SCOORD":
            inside = child.ContentSequence
            if len(inside) != 1 or inside[0].RelationshipType != "SELECTED FROM" or inside[0].ValueType != "IMAGE":
                wrong(f"{where}: a region on no image")
            else:
                check_reference(inside[0].ReferencedSOPSequence[0], instances, where)


def check_group(group, instances):
    where = "group " + children(group, ("112039", DCM))[0].TextValue
    if group.ContinuityOfContent != "SEPARATE":
        wrong(f"{where}: continuity")
    regions = children(group, ("111030", DCM))
    template = group.ContentTemplateSequence[0].TemplateIdentifier
    if template != ("1410" if len(regions) == 1 else "1501"):
        wrong(f"{where}: template {template} with {len(regions)} regions")
    check_rows(group, GROUP, where)
    for region in regions:
        if region.ValueType == "SCOORD3D":
            if not region.ReferencedFrameOfReferenceUID:
                wrong(f"{where}: a region without frame of reference")
            if region.GraphicType == "POLYGON" and list(region.GraphicData[:3]) != list(region.GraphicData[-3:]):
                wrong(f"{where}: a polygon that is not closed")
    check_images(group, where, instances)
    for child in group.ContentSequence:
        if child.ValueType == "NUM" and child.RelationshipType == "CONTAINS":
            check_number(child, f"{where}, {child.ConceptNameCodeSequence[0].CodeMeaning}", instances)


def evidence(report):
    found = {}
    for study in report.CurrentRequestedProcedureEvidenceSequence:
        for series in study.ReferencedSeriesSequence:
            for instance in series.ReferencedSOPSequence:
                found[(instance.ReferencedSOPClassUID, instance.ReferencedSOPInstanceUID)] = (
                    study.StudyInstanceUID, series.SeriesInstanceUID)
    return found


def check_structure(report, instances):
    title = code(report.ConceptNameCodeSequence[0])
    if title[1] != DCM or title[0] not in CID7021 | CID12344:
        wrong(f"title {title} is neither of CID 7021 nor of CID 12344")
    template = report.ContentTemplateSequence[0]
    if (template.MappingResource, template.TemplateIdentifier) != ("DCMR", "1500"):
        wrong("the root's template is not DCMR 1500")
    check_rows(report, ROOT, "root")
    observer_types = [code(c.ConceptCodeSequence[0])[0] for c in children(report, ("121005", DCM))]
    if observer_types.count("121007") != 1:
        wrong("there is not exactly one device observer")
    if len(children(report, ("121008", DCM))) != observer_types.count("121006"):
        wrong("persons and their names differ in number")
    referenced = set()
    for library in children(report, ("111028", DCM)):
        for group in library.ContentSequence:
            if name(group) != ("126200", DCM):
                wrong(f"{name(group)} in the image library")
            modality = [c for c in group.ContentSequence if c.RelationshipType == "HAS ACQ CONTEXT"]
            if [name(c) for c in modality] != [("121139", DCM)]:
                wrong("a group of the image library without modality")
            for image in group.ContentSequence:
                if image.ValueType == "IMAGE":
                    reference = image.ReferencedSOPSequence[0]
                    referenced.add((reference.ReferencedSOPClassUID, reference.ReferencedSOPInstanceUID))
    if referenced != set(instances):
        wrong("image library and evidence sequence list different images")
    spatial = any(e.value == "SCOORD3D" for e in report.iterall() if e.keyword == "ValueType")
    wanted = "1.2.840.10008.5.1.4.1.1.88.34" if spatial else "1.2.840.10008.5.1.4.1.1.88.33"
    if report.SOPClassUID != wanted:
        wrong(f"SOP class {report.SOPClassUID} with{'' if spatial else 'out'} regions in the patient")
    for group in children(children(report, ("126010", DCM))[0], ("125007", DCM)):
        check_group(group, instances)


def stale(value, record):
    def revision(of):
        if of in ("images", "ostium", "landing"):
            part = record.get(of)
        elif of.startswith("mark/"):
            part = record["marks"].get(of[5:])
        else:
            kind, _, key = of.partition("/")
            part = record.get({"drawing": "drawings", "contour": "contours", "evidence": "evidence"}[kind], {}).get(key)
        return part["revision"] if part else 0
    return any(revision(used["id"]) != used["revision"] for used in value["inputs"])


def compare_values(report, record, instances):
    numbers = {}
    for group in children(children(report, ("126010", DCM))[0], ("125007", DCM)):
        for child in group.ContentSequence:
            if child.ValueType == "NUM" and child.RelationshipType == "CONTAINS":
                key = children(child, ("112039", DCM))[0].TextValue
                if key in numbers:
                    wrong(f"{key} is there twice")
                numbers[key] = (child, group)
    sources = record["values"]["sources"]
    current = 0
    for value in record["values"]["list"]:
        key = value["group"] + ":" + value["id"]
        if stale(value, record):
            if key in numbers:
                wrong(f"{key} is stale and yet reported")
            continue
        current += 1
        if key not in numbers:
            wrong(f"{key} of the record is not in the report")
            continue
        number, group = numbers[key]
        measured = number.MeasuredValueSequence[0]
        if measured.FloatingPointValue != value["value"]:
            wrong(f"{key}: {measured.FloatingPointValue!r} where the record has {value['value']!r}")
        if code(measured.MeasurementUnitsCodeSequence[0])[0] != UNITS[value["unit"]]:
            wrong(f"{key}: unit {code(measured.MeasurementUnitsCodeSequence[0])} where the record has {value['unit']}")
        expected = math.sqrt(sum(c * c for c in value["components"].values()))
        told = [c.MeasuredValueSequence[0].FloatingPointValue for c in children(number, ("386136009", SCT))]
        if expected > 0 and not (told and math.isclose(told[0], expected, rel_tol=1e-12)) or expected == 0 and told:
            wrong(f"{key}: standard deviation {told} where the record has {expected}")
        for part, size in value["components"].items():
            told = [c.MeasuredValueSequence[0].FloatingPointValue for c in children(number, ("u-" + part, OWN))]
            if told != ([size] if size > 0 else []):
                wrong(f"{key}: part {part} is {told}, the record has {size}")
        if [c.TextValue for c in children(number, ("method", OWN))] != [value["method"]]:
            wrong(f"{key}: method")
        source = sources[value["source"]]
        images = [c.ReferencedSOPSequence[0] for c in children(group, ("260753009", SCT))]
        if [i.ReferencedSOPInstanceUID for i in images] != source["sop_instance_uids"]:
            wrong(f"{key}: its source images differ from the record's")
        if source["frame"] is not None and [i.get("ReferencedFrameNumber") for i in images] != [source["frame"] + 1]:
            wrong(f"{key}: frame")
        if [c.TextValue for c in children(group, ("C2348792", "UMLS"))] != [source["state"]]:
            wrong(f"{key}: stage")
        if [c.TextValue for c in children(group, ("image-phase", OWN))] != [source["phase"]]:
            wrong(f"{key}: phase")
        if [str(c.PersonName) for c in children(group, ("121008", DCM))] != [source["author"]]:
            wrong(f"{key}: author")
        moment = source["time"].replace("-", "", 2).replace(":", "").replace("T", "")
        if str(number.ObservationDateTime) != moment:
            wrong(f"{key}: time {number.ObservationDateTime}, the record has {source['time']}")
    if current < 30:
        wrong(f"only {current} current values: this test shows too little")
    return numbers


def compare_course(record, numbers, report):
    def expect(key, value, unit):
        if key not in numbers:
            return wrong(f"{key} is not in the report")
        measured = numbers[key][0].MeasuredValueSequence[0]
        if (measured.FloatingPointValue, code(measured.MeasurementUnitsCodeSequence[0])[0]) != (value, unit):
            wrong(f"{key}: {measured.FloatingPointValue}, the record has {value} {unit}")
    for key, entry in record["moments"].items():
        state = entry["content"]["circulation"] if "content" in entry else entry["circulation"]
        for field, part, unit in (("mean_pressure_mmHg", "mean-pressure", "mm[Hg]"), ("v_wave_mmHg", "v-wave", "mm[Hg]"),
                                  ("mean_mitral_gradient_mmHg", "mitral-gradient", "mm[Hg]"), ("heart_rate_per_minute", "heart-rate", "/min")):
            if state[field] is not None:
                expect(f"moment/{key}:{part}", state[field], unit)
    for key, entry in record["readings"].items():
        expect(f"reading/{key}:value", (entry.get("content") or entry)["value_mm"], "mm")
    groups = children(children(report, ("126010", DCM))[0], ("125007", DCM))
    echo = [g for g in groups if children(g, ("112039", DCM))[0].TextValue == "drawing/1"][0]
    pressure = [c.MeasuredValueSequence[0].FloatingPointValue for c in children(echo, ("6797001", SCT))]
    if pressure != [14.5]:
        wrong(f"pressure of the echo drawing is {pressure}")


def compare_contours(report, sources):
    groups = {children(g, ("112039", DCM))[0].TextValue: g for g in children(children(report, ("126010", DCM))[0], ("125007", DCM))}
    for contour in sources["contours"]:
        region = children(groups[contour["id"]], ("111030", DCM))[0]
        points = [region.GraphicData[i:i + 3] for i in range(0, len(region.GraphicData), 3)][:-1]
        if len(points) != len(contour["points"]):
            wrong(f"contour {contour['id']}: {len(points)} points for {len(contour['points'])}")
        worst = max(math.dist(a, b) for a, b in zip(points, contour["points"]))
        if worst > MILLIMETRE_TOLERANCE:
            wrong(f"contour {contour['id']} is off by {worst} mm")
        if region.ReferencedFrameOfReferenceUID != sources["frame_of_reference_uid"]:
            wrong(f"contour {contour['id']}: frame of reference")


def main():
    report = pydicom.dcmread(sys.argv[1])
    record = json.load(open(sys.argv[2]))
    sources = json.load(open(sys.argv[3]))
    instances = evidence(report)
    for uid, sop_class, series, study in sources["used_images"]:
        if instances.get((sop_class, uid)) != (study, series):
            wrong(f"evidence does not list {uid} of its study and series")
    if len(instances) != len(sources["used_images"]):
        wrong("evidence lists images that nothing refers to")
    check_structure(report, instances)
    check_codes(report)
    numbers = compare_values(report, record, instances)
    compare_course(record, numbers, report)
    compare_contours(report, sources)
    signed = record["decision"]["content"] if "content" in record["decision"] else record["decision"]
    if (report.CompletionFlag, report.VerificationFlag) != ("COMPLETE", "VERIFIED"):
        wrong("a signed report is not complete and verified")
    if str(report.VerifyingObserverSequence[0].VerifyingObserverName) != signed["signed_by"]:
        wrong("the signature differs from the record's")
    patient = record["patient"].get("content") or record["patient"]
    if (str(report.PatientName), report.PatientID, report.PatientBirthDate, report.PatientSex) != (
            patient["name"], patient["id"], patient["birth_date"], patient["sex"]):
        wrong("the patient differs from the record's")
    for finding in findings:
        print(finding)
    return 1 if findings else 0


sys.exit(main())
