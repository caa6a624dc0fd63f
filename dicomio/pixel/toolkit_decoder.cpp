#include "dicomio/pixel/decoders.h"
#include "dicomio/toolkit.h"

#include <dcmtk/config/osconfig.h>

#include <algorithm>
#include <cstring>
#include <dcmtk/dcmdata/dcpixel.h>
#include <dcmtk/dcmdata/dcpixseq.h>
#include <dcmtk/dcmdata/dcpxitem.h>
#include <dcmtk/dcmdata/dctk.h>
#include <dcmtk/dcmdata/dcxfer.h>
#include <memory>

namespace gauge::dicomio {
namespace {

using core::failure;

Uint16 u16(int value) {
    return static_cast<Uint16>(value);
}

/// A data set that holds nothing but the frame: what the codec needs to know, and one fragment.
OFCondition describeFrame(DcmDataset& dataset, const PixelFormat& format) {
    struct Field {
        DcmTagKey tag;
        int value;
    };
    const Field fields[] = {
        {DCM_SamplesPerPixel, format.samplesPerPixel},
        {DCM_Rows, format.rows},
        {DCM_Columns, format.columns},
        {DCM_BitsAllocated, format.bitsAllocated},
        {DCM_BitsStored, format.bitsStored},
        {DCM_HighBit, format.highBit},
        {DCM_PixelRepresentation, format.isSigned ? 1 : 0},
    };
    for (const Field& field : fields)
        if (const auto status = dataset.putAndInsertUint16(field.tag, u16(field.value)); status.bad())
            return status;
    if (format.samplesPerPixel > 1)
        dataset.putAndInsertUint16(DCM_PlanarConfiguration, format.planar ? 1 : 0);
    dataset.putAndInsertString(DCM_NumberOfFrames, "1");
    return dataset.putAndInsertString(DCM_PhotometricInterpretation, format.photometric.c_str());
}

OFCondition insertFragment(DcmDataset& dataset, std::span<const std::byte> frame, E_TransferSyntax syntax) {
    auto sequence = std::make_unique<DcmPixelSequence>(DCM_PixelSequenceTag);
    OFCondition status = sequence->insert(new DcmPixelItem(DCM_PixelItemTag));
    if (status.bad()) return status;
    auto item = std::make_unique<DcmPixelItem>(DCM_PixelItemTag);
    std::vector<Uint8> even(frame.size() + frame.size() % 2);
    std::transform(frame.begin(), frame.end(), even.begin(),
                   [](std::byte b) { return static_cast<Uint8>(b); });
    status = item->putUint8Array(even.data(), static_cast<unsigned long>(even.size()));
    if (status.good()) status = sequence->insert(item.release());
    if (status.bad()) return status;
    auto pixels = std::make_unique<DcmPixelData>(DCM_PixelData);
    pixels->putOriginalRepresentation(syntax, nullptr, sequence.release());
    return dataset.insert(pixels.release(), OFTrue);
}

/// The decoded samples, turned from planes to pixel by pixel where need be.
template <class T>
DecodedWords interleaved(const std::uint8_t* bytes, const PixelFormat& format, bool planar) {
    const auto pixels = static_cast<std::size_t>(format.pixelsPerFrame());
    const auto samples = static_cast<std::size_t>(format.samplesPerPixel);
    DecodedWords words(pixels * samples);
    for (std::size_t i = 0; i < words.size(); ++i) {
        T word{};
        std::memcpy(&word, bytes + i * sizeof(T),
                    sizeof(T)); // words are in the machine's order, which is little
        words[planar ? i % pixels * samples + i / pixels : i] = static_cast<std::int32_t>(word);
    }
    return words;
}

/// What the codec left in the data set: enough samples of `bits` each.
struct Samples {
    const std::uint8_t* bytes = nullptr;
    int bits = 0;
    bool planes = false;
};

core::Result<Samples> samplesOf(DcmDataset& dataset, const PixelFormat& format) {
    const auto damaged = [](const std::string& finding) {
        return failure(core::ErrorCode::FileDamaged, "Decoding gave " + finding + ".",
                       {{"tag", describe(tags::PixelData)}});
    };
    Uint16 bits = 0, planar = 0;
    DcmElement* element = nullptr;
    dataset.findAndGetUint16(DCM_BitsAllocated, bits);
    dataset.findAndGetUint16(DCM_PlanarConfiguration, planar);
    if (dataset.findAndGetElement(DCM_PixelData, element).bad() || !element) return damaged("no pixels");
    const std::uint64_t wanted = format.pixelsPerFrame() * static_cast<std::uint64_t>(format.samplesPerPixel);
    const auto found = element->getLength(EXS_LittleEndianExplicit);
    if ((bits != 8 && bits != 16 && bits != 32) || found < wanted * bits / 8)
        return damaged(std::to_string(found) + " bytes in " + std::to_string(bits) + "-bit samples for " +
                       std::to_string(wanted) + " samples");
    Samples samples{nullptr, bits, planar == 1 && format.samplesPerPixel > 1};
    if (bits > 8) {
        Uint16* words = nullptr;
        element->getUint16Array(words);
        samples.bytes = reinterpret_cast<const std::uint8_t*>(words);
    } else {
        Uint8* bytes = nullptr;
        element->getUint8Array(bytes);
        samples.bytes = bytes;
    }
    if (!samples.bytes) return damaged("no pixels");
    return samples;
}

/// Decodes the frame within `dataset`.
core::Result<Samples> decodeWithin(DcmDataset& dataset, std::span<const std::byte> frame,
                                   const TransferSyntax& syntax, const PixelFormat& format) {
    initialiseToolkit();
    const bool deep = format.bitsAllocated == 32 && syntax.coding == PixelCoding::Rle;
    if (format.bitsAllocated != 8 && format.bitsAllocated != 16 && !deep)
        return failure(core::ErrorCode::ObjectUnsupported, "Compressed pixels in " +
                                                               std::to_string(format.bitsAllocated) +
                                                               " bits cannot be decoded.");
    OFCondition status = describeFrame(dataset, format);
    if (status.good()) status = insertFragment(dataset, frame, DcmXfer(syntax.uid.c_str()).getXfer());
    if (status.good()) status = dataset.chooseRepresentation(EXS_LittleEndianExplicit, nullptr);
    if (status.bad())
        return failure(core::ErrorCode::FileDamaged,
                       "Its " + syntax.name + " pixels cannot be decoded: " + status.text() + ".",
                       {{"tag", describe(tags::PixelData)}});
    return samplesOf(dataset, format);
}

} // namespace

core::Result<DecodedWords> decodeByToolkit(std::span<const std::byte> frame, const TransferSyntax& syntax,
                                           const PixelFormat& format) {
    DcmDataset dataset;
    const auto samples = decodeWithin(dataset, frame, syntax, format);
    if (!samples) return tl::make_unexpected(samples.error());
    if (samples->bits == 8) return interleaved<std::uint8_t>(samples->bytes, format, samples->planes);
    return samples->bits == 16 ? interleaved<std::uint16_t>(samples->bytes, format, samples->planes)
                               : interleaved<std::uint32_t>(samples->bytes, format, samples->planes);
}

core::Result<void> decodeGreyByToolkit(std::span<const std::byte> frame, const TransferSyntax& syntax,
                                       const PixelFormat& format, std::span<std::uint16_t> out) {
    DcmDataset dataset;
    const auto samples = decodeWithin(dataset, frame, syntax, format);
    if (!samples) return tl::make_unexpected(samples.error());
    if (samples->bits == 16) {
        std::memcpy(out.data(), samples->bytes, out.size_bytes());
        return {};
    }
    const std::size_t size = static_cast<std::size_t>(samples->bits) / 8;
    for (std::size_t i = 0; i < out.size(); ++i) {
        out[i] = samples->bytes[i * size];
        if (size > 1) out[i] = static_cast<std::uint16_t>(out[i] | samples->bytes[i * size + 1] << 8);
    }
    return {};
}

} // namespace gauge::dicomio
