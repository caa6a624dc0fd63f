#include "dicomio/pixel/decoders.h"

#include <algorithm>
#include <cstring>
#include <memory>
#include <openjpeg.h>
#include <string>

namespace gauge::dicomio {
namespace {

using core::failure;

/// The code stream as OpenJPEG wants to read it.
struct Source {
    std::span<const std::byte> bytes;
    std::size_t place = 0;
};

OPJ_SIZE_T readSource(void* out, OPJ_SIZE_T count, void* user) {
    auto& source = *static_cast<Source*>(user);
    const std::size_t take = std::min<std::size_t>(count, source.bytes.size() - source.place);
    if (take == 0) return static_cast<OPJ_SIZE_T>(-1);
    std::memcpy(out, source.bytes.data() + source.place, take);
    source.place += take;
    return take;
}

OPJ_OFF_T skipSource(OPJ_OFF_T count, void* user) {
    auto& source = *static_cast<Source*>(user);
    if (count < 0) return -1;
    const auto take =
        std::min<std::size_t>(static_cast<std::size_t>(count), source.bytes.size() - source.place);
    source.place += take;
    return static_cast<OPJ_OFF_T>(take);
}

OPJ_BOOL seekSource(OPJ_OFF_T place, void* user) {
    auto& source = *static_cast<Source*>(user);
    if (place < 0 || static_cast<std::size_t>(place) > source.bytes.size()) return OPJ_FALSE;
    source.place = static_cast<std::size_t>(place);
    return OPJ_TRUE;
}

void keepMessage(const char* text, void* user) {
    auto& message = *static_cast<std::string*>(user);
    if (message.empty()) message = text;
    while (!message.empty() && (message.back() == '\n' || message.back() == '.'))
        message.pop_back();
}

/// A decoded number as a word of the attributes' kind. Signed numbers deeper than BitsStored are held at its
/// ends, which loss may exceed; a word that the code stream holds as unsigned is taken bit by bit.
class Held {
public:
    Held(const opj_image_comp_t& component, const PixelFormat& format)
        : m_hold(component.sgnd && format.isSigned && format.highBit + 1 == format.bitsStored),
          m_lowest(-(std::int64_t{1} << (format.bitsStored - 1))),
          m_highest((std::int64_t{1} << (format.bitsStored - 1)) - 1) {}
    std::int32_t operator()(std::int32_t value) const {
        return m_hold ? static_cast<std::int32_t>(std::clamp<std::int64_t>(value, m_lowest, m_highest))
                      : value;
    }

private:
    bool m_hold;
    std::int64_t m_lowest;
    std::int64_t m_highest;
};

} // namespace

core::Result<DecodedWords> decodeJpeg2000(std::span<const std::byte> frame, const PixelFormat& format) {
    Source source{frame, 0};
    std::string message;
    const auto damaged = [&](const std::string& finding) {
        return failure(core::ErrorCode::FileDamaged,
                       "Its JPEG 2000 pixels cannot be decoded: " + (message.empty() ? finding : message) +
                           ".",
                       {{"tag", describe(tags::PixelData)}});
    };

    opj_dparameters_t parameters;
    opj_set_default_decoder_parameters(&parameters);
    const std::unique_ptr<opj_codec_t, void (*)(opj_codec_t*)> codec(
        opj_create_decompress(OPJ_CODEC_J2K), [](opj_codec_t* c) { opj_destroy_codec(c); });
    const std::unique_ptr<opj_stream_t, void (*)(opj_stream_t*)> stream(
        opj_stream_create(64 * 1024, OPJ_TRUE), [](opj_stream_t* s) { opj_stream_destroy(s); });
    if (!codec || !stream) return damaged("the decoder cannot be set up");
    opj_set_error_handler(codec.get(), keepMessage, &message);
    opj_set_warning_handler(codec.get(), keepMessage, &message);
    opj_stream_set_user_data(stream.get(), &source, nullptr);
    opj_stream_set_user_data_length(stream.get(), frame.size());
    opj_stream_set_read_function(stream.get(), readSource);
    opj_stream_set_skip_function(stream.get(), skipSource);
    opj_stream_set_seek_function(stream.get(), seekSource);

    opj_image_t* raw = nullptr;
    bool decoded = opj_setup_decoder(codec.get(), &parameters) &&
                   opj_decoder_set_strict_mode(codec.get(), OPJ_TRUE) &&
                   opj_read_header(stream.get(), codec.get(), &raw);
    const std::unique_ptr<opj_image_t, void (*)(opj_image_t*)> image(raw, [](opj_image_t* i) {
        if (i) opj_image_destroy(i);
    });
    decoded = decoded && image && opj_decode(codec.get(), stream.get(), image.get()) &&
              opj_end_decompress(codec.get(), stream.get());
    if (!decoded) return damaged("the code stream is damaged");

    const auto pixels = static_cast<std::size_t>(format.pixelsPerFrame());
    const auto samples = static_cast<std::size_t>(format.samplesPerPixel);
    if (image->numcomps != samples)
        return damaged("it has " + std::to_string(image->numcomps) + " components");
    DecodedWords words(pixels * samples);
    for (std::size_t c = 0; c < samples; ++c) {
        const opj_image_comp_t& component = image->comps[c];
        if (!component.data || std::size_t{component.w} * component.h != pixels)
            return damaged("a component has another size");
        const Held held(component, format);
        for (std::size_t p = 0; p < pixels; ++p)
            words[p * samples + c] = held(component.data[p]);
    }
    return words;
}

} // namespace gauge::dicomio
