"""Decodes the pixels of every DICOM file below the given folders with decoders that are not the program's own, in one
process: pydicom and numpy (uncompressed, RLE), Pillow (8-bit JPEG, before any conversion of colour) and GDCM (other JPEG,
JPEG-LS, JPEG 2000). Usage: decode_every_file.py OUTPUT_FOLDER FOLDER...

Writes OUTPUT_FOLDER/manifest.txt, one line a file, tab-separated:
  path  kind  frames  frame:crc:rgb ...
kind: "lossless" (crc = zlib.crc32 of the frame's samples as int32), "lossy" (samples as int32 in INDEX-FRAME.raw, crc 0),
"none" (no pixels, or none that these decoders read; then one field says why). At most three frames of a file. rgb is
"1" where INDEX-FRAME.rgb holds the expected colours in 8 bits, else "0"."""
import io
import pathlib
import sys
import zlib

import numpy as np
import pydicom
from PIL import Image
from pydicom.encaps import encapsulate, generate_pixel_data_frame
from pydicom.pixel_data_handlers import gdcm_handler, numpy_handler, rle_handler
from pydicom.pixel_data_handlers.util import apply_color_lut, convert_color_space, reshape_pixel_array

LOSSY = {"1.2.840.10008.1.2.4.50", "1.2.840.10008.1.2.4.51", "1.2.840.10008.1.2.4.81", "1.2.840.10008.1.2.4.91"}
JPEG = {"1.2.840.10008.1.2.4.50", "1.2.840.10008.1.2.4.51"}
JPEG_LS = {"1.2.840.10008.1.2.4.80", "1.2.840.10008.1.2.4.81"}
RLE = "1.2.840.10008.1.2.5"


def sampling_differs(jpeg):
    """True when the components of a JPEG frame have different sampling factors, as only chroma has."""
    place = 2
    while jpeg[place] == 0xFF:
        marker, length = jpeg[place + 1], int.from_bytes(jpeg[place + 2:place + 4], "big")
        if marker in (0xC0, 0xC1):
            factors = {jpeg[place + 11 + 3 * c] for c in range(jpeg[place + 9])}
            return len(factors) > 1
        place += 2 + length
    return False


def by_pillow(jpeg, samples):
    image = Image.open(io.BytesIO(jpeg))
    if samples == 3:  # the same space on both sides: no conversion
        image.mode = "YCbCr"
        image.tile = [(image.tile[0][0], image.tile[0][1], image.tile[0][2], ("YCbCr", "YCbCr"))]
    return np.asarray(image)


def all_frames(ds, values):
    frames = int(ds.get("NumberOfFrames", 1) or 1)
    return values.reshape(frames, ds.Rows, ds.Columns, ds.SamplesPerPixel)


def stored(ds, words, signed):
    """The stored value within each word (PS3.5 8.1.1)."""
    words = words.astype(np.int64) & ((1 << ds.BitsAllocated) - 1)
    words = (words >> (ds.HighBit + 1 - ds.BitsStored)) & ((1 << ds.BitsStored) - 1)
    if signed:
        words = np.where(words >= 1 << (ds.BitsStored - 1), words - (1 << ds.BitsStored), words)
    return words


def chosen(frames):
    return sorted({0, frames // 2, frames - 1})


def decode(path):
    """kind, number of frames, {frame: stored values}, data set, whether three samples are YCbCr"""
    ds = pydicom.dcmread(path, force=True)
    if "PixelData" not in ds or "Rows" not in ds:
        return None
    if "TransferSyntaxUID" not in ds.file_meta:
        ds.file_meta.TransferSyntaxUID = {(True, True): "1.2.840.10008.1.2", (False, True): "1.2.840.10008.1.2.1",
                                          (False, False): "1.2.840.10008.1.2.2"}[ds.is_implicit_VR, ds.is_little_endian]
    signed = ds.PixelRepresentation == 1  # before a handler changes the data set
    syntax = str(ds.file_meta.TransferSyntaxUID)
    count = int(ds.get("NumberOfFrames", 1) or 1)
    ybr = ds.PhotometricInterpretation.startswith("YBR_FULL")
    if syntax in JPEG:
        wanted, frames = chosen(count), {}
        for index, jpeg in enumerate(generate_pixel_data_frame(ds.PixelData, count)):
            if index not in wanted:
                continue
            ybr = ybr or (ds.SamplesPerPixel == 3 and sampling_differs(jpeg))
            if ds.BitsStored > 8:
                break
            frames[index] = by_pillow(jpeg, ds.SamplesPerPixel).reshape(ds.Rows, ds.Columns, ds.SamplesPerPixel)
        if frames:
            return "lossy", count, {f: v.astype(np.int64) for f, v in frames.items()}, ds, ybr
    if syntax == RLE:
        words = reshape_pixel_array(ds, rle_handler.get_pixeldata(ds))
    elif not ds.file_meta.TransferSyntaxUID.is_compressed or syntax.endswith("1.99"):
        words = reshape_pixel_array(ds, numpy_handler.get_pixeldata(ds))
    else:
        if syntax in JPEG_LS:  # one fragment a frame: GDCM decodes frames of several fragments wrongly
            ds.PixelData = encapsulate(list(generate_pixel_data_frame(ds.PixelData, count)))
        words = reshape_pixel_array(ds, gdcm_handler.get_pixeldata(ds))
    values = all_frames(ds, stored(ds, words, signed))
    return ("lossy" if syntax in LOSSY else "lossless"), count, {f: values[f] for f in chosen(count)}, ds, ybr


def colours(ds, values, ybr):
    """Expected 8-bit RGB, or None where there is nothing to convert."""
    if ds.PhotometricInterpretation == "PALETTE COLOR":
        return (apply_color_lut(values[..., 0].astype(np.uint16), ds) >> 8).astype(np.uint8)
    if ds.SamplesPerPixel != 3 or ds.BitsAllocated != 8:
        return None
    samples = values.astype(np.uint8)
    return convert_color_space(samples, "YBR_FULL", "RGB") if ybr else samples


def main(output, folders):
    output = pathlib.Path(output)
    paths = [p for folder in folders for p in sorted(pathlib.Path(folder).rglob("*")) if p.is_file()]
    with open(output / "manifest.txt", "w") as manifest:
        for number, path in enumerate(paths):
            try:
                decoded = decode(str(path))
                reason = "no pixels"
            except Exception as error:  # whatever a damaged file makes of these decoders
                decoded, reason = None, " ".join(f"{type(error).__name__}: {error}".split())
            if decoded is None:
                manifest.write(f"{path}\tnone\t0\t{reason}\n")
                continue
            kind, count, frames, ds, ybr = decoded
            fields = []
            for frame, values in frames.items():
                samples = values.astype(np.int32)
                rgb = colours(ds, values, ybr)
                if rgb is not None:
                    rgb.tofile(output / f"{number}-{frame}.rgb")
                if kind == "lossy":
                    samples.tofile(output / f"{number}-{frame}.raw")
                crc = zlib.crc32(samples.tobytes()) if kind == "lossless" else 0
                fields.append(f"{frame}:{crc}:{int(rgb is not None)}")
            manifest.write("\t".join([str(path), kind, str(count)] + fields) + "\n")


main(sys.argv[1], sys.argv[2:])
