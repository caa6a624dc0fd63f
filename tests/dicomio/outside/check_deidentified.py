# Are these exports without identity? Written against pydicom alone; shares no code with the exporter.
#   check_deidentified.py ORIGINALS EXPORTS         both folders; files are paired by geometry and pixels, not by name
# For every original: all person names, patient attributes, institutions, requests and UIDs that are not the standard's are
# collected; the bytes of every export must hold none of them. Pixels of CT must be those of one original.
import hashlib
import pathlib
import sys

import pydicom

originals, exports = map(pathlib.Path, sys.argv[1:3])
WORDS = {'LO', 'SH', 'LT', 'ST', 'UT', 'DA'}
OTHERS = {'AccessionNumber', 'InstitutionName', 'InstitutionAddress', 'StationName', 'StudyID', 'DeviceSerialNumber',
          'RequestedProcedureID', 'PerformedProcedureStepID', 'InstitutionalDepartmentName'}
texts, pixels, uids = set(), {}, set()


def readable(path):
    try:
        return pydicom.dcmread(path, force=False)
    except Exception:
        return None


def collect(ds):
    for e in ds.iterall():
        if e.VR == 'PN' and e.value:
            for part in str(e.value).replace('=', '^').replace(' ', '^').replace(',', '^').split('^'):
                if len(part) >= 4:
                    texts.add(part)
        elif e.VR in WORDS and (e.tag.group == 0x10 or e.keyword in OTHERS) and len(str(e.value).strip()) >= 4:
            texts.add(str(e.value).strip())
        elif e.VR == 'UI' and e.value:
            for uid in ([e.value] if isinstance(e.value, str) else e.value):
                if not str(uid).startswith('1.2.840.10008.') and len(str(uid)) >= 8:
                    uids.add(str(uid))


def digest(ds):
    return hashlib.sha256(ds.PixelData).hexdigest() if 'PixelData' in ds else None


count = 0
for path in sorted(p for p in originals.rglob('*') if p.is_file()):
    ds = readable(path)
    if ds is not None:
        collect(ds)
        pixels[digest(ds)] = ds
for path in sorted(exports.rglob('*.dcm')):
    count += 1
    data = path.read_bytes()
    ds = pydicom.dcmread(path)
    head = data[:len(data) - len(ds.PixelData)]
    for text in texts | uids:
        raw = text.encode('utf-8')
        assert raw not in (data if len(raw) >= 6 else head), f'{path.name} holds "{text}"'
    assert ds.PatientIdentityRemoved == 'YES', path
    codes = {item.CodeValue for item in ds.DeidentificationMethodCodeSequence}
    assert '113100' in codes, codes
    assert all(item.CodingSchemeDesignator == 'DCM' for item in ds.DeidentificationMethodCodeSequence)
    assert not any(e.tag.is_private for e in ds.iterall()), 'private attribute'
    assert not any(0x6000 <= e.tag.group <= 0x601E for e in ds), 'overlay'
    if ds.Modality == 'CT':
        original = pixels[digest(ds)]  # a KeyError: pixels were changed
        for keyword in ('ImagePositionPatient', 'ImageOrientationPatient', 'PixelSpacing', 'RescaleSlope', 'RescaleIntercept'):
            if keyword in original:
                assert ds[keyword].value == original[keyword].value, keyword
        assert ds.SOPInstanceUID != original.SOPInstanceUID and ds.file_meta.MediaStorageSOPInstanceUID == ds.SOPInstanceUID
print(f'{count} exports, {len(texts)} texts and {len(uids)} UIDs looked for')
assert count > 0
