#!/usr/bin/python3
"""All numbers that a structured report contains, as pydicom reads them: a line each, sorted.   list_numbers.py FILE"""
import sys

import pydicom


def numbers(item):
    for child in item.get("ContentSequence", []):
        measured = child.get("MeasuredValueSequence")
        if child.get("ValueType") == "NUM" and child.RelationshipType == "CONTAINS" and measured:
            unit = measured[0].MeasurementUnitsCodeSequence[0].CodeValue
            value = float(measured[0].get("FloatingPointValue", measured[0].NumericValue))
            yield f"{child.ConceptNameCodeSequence[0].CodeValue} {value:.9g} {unit}"
        yield from numbers(child)


print("\n".join(sorted(numbers(pydicom.dcmread(sys.argv[1], force=True)))))
