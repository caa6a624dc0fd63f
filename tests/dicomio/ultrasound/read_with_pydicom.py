"""Prints what pydicom reads of ultrasound files: regions, frame times and R waves, as JSON by file.

usage: read_with_pydicom.py FILE ...
"""
import json
import sys

import numpy
import pydicom


def told(path):
    data = pydicom.dcmread(path, stop_before_pixels=True)
    regions = []
    for item in data.get("SequenceOfUltrasoundRegions", []):
        regions.append({
            "box": [item.RegionLocationMinX0, item.RegionLocationMinY0,
                    item.RegionLocationMaxX1, item.RegionLocationMaxY1],
            "format": item.RegionSpatialFormat,
            "type": item.RegionDataType,
            "flags": item.get("RegionFlags", 0),
            "reference": [item.get("ReferencePixelX0"), item.get("ReferencePixelY0")],
            "units": [item.PhysicalUnitsXDirection, item.PhysicalUnitsYDirection],
            "values": [item.get("ReferencePixelPhysicalValueX"), item.get("ReferencePixelPhysicalValueY")],
            "deltas": [item.get("PhysicalDeltaX"), item.get("PhysicalDeltaY")],
        })
    frames = int(data.get("NumberOfFrames", 1))
    times = None
    if frames > 1 and "FrameTimeVector" in data:
        steps = numpy.array([float(v) for v in data.FrameTimeVector])
        times = (numpy.cumsum(steps) - steps[0]).tolist()
    elif frames > 1 and "FrameTime" in data:
        times = (numpy.arange(frames) * float(data.FrameTime)).tolist()
    waves = data.get("RWaveTimeVector", [])
    waves = [float(waves)] if isinstance(waves, float) else [float(w) for w in waves]
    return {"columns": data.Columns, "rows": data.Rows, "frames": frames, "regions": regions,
                      "times": times, "r_waves": waves}


print(json.dumps({path: told(path) for path in sys.argv[1:]}))
