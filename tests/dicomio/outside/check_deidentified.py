# Are these exports without identity? Written against pydicom alone; shares no code with the exporter.
#   check_deidentified.py ORIGINALS EXPORTS         both folders; files are paired by geometry and pixels, not by name
# For every original: every word, date, number and name that somebody may have entered (PN, LO, SH, LT, ST, UC, UT, AE, DA, DT,
# IS of the patient and his study, private attributes of any kind, and all of these in sequences) and every UID that is not the
# standard's is collected; the bytes of every export must hold none of them. Left out of the search are texts that the standard
# itself defines (codes and their meanings from its own schemes) and the words of KEPT. Pixels of CT must be those of one original.
import hashlib
import pathlib
import sys

import pydicom

originals, exports = map(pathlib.Path, sys.argv[1:3])
WORDS = {'LO', 'SH', 'LT', 'ST', 'UC', 'UT', 'AE', 'DA', 'DT'}
NUMBERS = {'PatientID', 'OtherPatientIDs', 'AccessionNumber', 'StudyID', 'DeviceSerialNumber', 'RequestedProcedureID',
           'PerformedProcedureStepID', 'ScheduledProcedureStepID'}
# What exports say of themselves, and what is no text of a person.
KEPT = {'YES', 'NO', 'ORIGINAL', 'PRIMARY'}
texts, pixels, uids = set(), {}, set()


def readable(path):
    try:
        return pydicom.dcmread(path, force=False)
    except Exception:
        return None


def parts(value):
    return [str(one) for one in value] if isinstance(value, (list, tuple)) or type(value).__name__ == 'MultiValue' else [str(value)]


def ours(text):
    """Words of the standard that exports hold for reasons of their own."""
    return text in KEPT or text.startswith('1.2.840.10008.')


def collect(ds, coded=False):
    for e in ds:
        if e.VR == 'SQ':
            for item in e.value:
                collect(item, coded or e.keyword.endswith('CodeSequence'))
        elif e.VR == 'PN' and e.value:
            for part in str(e.value).replace('=', '^').replace(' ', '^').replace(',', '^').split('^'):
                if len(part) >= 4:
                    texts.add(part)
        elif e.VR == 'UI' and e.value:
            for uid in parts(e.value):
                if not uid.startswith('1.2.840.10008.') and len(uid) >= 8:
                    uids.add(uid)
        elif e.tag.is_private and e.VR in ('UN', 'OB') and isinstance(e.value, bytes):
            text = e.value.rstrip(b'\0 ')
            if len(text) >= 6 and text.isascii() and text.decode('ascii').isprintable():
                texts.add(text.decode('ascii'))
        elif e.value is not None and (e.VR in WORDS or e.keyword in NUMBERS) and not coded:
            for text in parts(e.value):
                if len(text.strip()) >= 4 and not ours(text.strip()):
                    texts.add(text.strip())


def digest(ds):
    return hashlib.sha256(ds.PixelData).hexdigest() if 'PixelData' in ds else None


def own(ds, text, data):
    """Whether the text stands nowhere but in what an export says of itself and in meanings of the standard's own codes."""
    said = [str(ds.get(k, '')) for k in ('DeidentificationMethod',)]
    for e in ds.iterall():
        if e.VR == 'SQ' and e.keyword.endswith('CodeSequence'):
            said += [str(i.get('CodeMeaning', '')) for i in e.value if i.get('CodingSchemeDesignator') in ('DCM', 'SCT', 'SRT', 'UCUM')]
    return data.count(text.encode('utf-8')) == sum(one.count(text) for one in said)


def moved(ds, text):
    """A date of an original that is also the date to which another one was moved: not to be told from chance."""
    return len(text) == 8 and text.isdigit() and any(str(e.value)[:8] == text for e in ds.iterall() if e.VR in ('DA', 'DT'))


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
    assert path.name[:-4].isdigit(), f'the name {path.name} may say something'
    for text in texts | uids:
        raw = text.encode('utf-8')
        where = data if len(raw) >= 6 else head
        # A date may be the moved date of another file, and four letters a part of a longer word of the export's own.
        assert raw not in where or moved(ds, text) or own(ds, text, where), f'{path.name} holds "{text}"'
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
