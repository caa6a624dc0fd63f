#include "dicomio/pixel/greyscale.h"

#include <algorithm>
#include <cmath>
#include <cstring>
#include <utility>

namespace gauge::dicomio {
namespace {

using core::ErrorCode;
using core::failure;

/// The data set that holds what a functional group says of one frame: per-frame group, shared group, or the
/// data set itself.
const Dataset& groupOf(const Dataset& dataset, int frame, Tag group) {
    const auto& perFrame = dataset.items(tags::PerFrameFunctionalGroupsSequence);
    if (static_cast<std::size_t>(frame) < perFrame.size())
        if (const Dataset* own = perFrame[static_cast<std::size_t>(frame)].firstItem(group)) return *own;
    if (const Dataset* shared = dataset.firstItem(tags::SharedFunctionalGroupsSequence))
        if (const Dataset* own = shared->firstItem(group)) return *own;
    return dataset;
}

core::Result<void> readRescale(const Dataset& dataset, Greyscale& grey) {
    const auto slope = dataset.number(tags::RescaleSlope);
    if (!slope) return tl::make_unexpected(slope.error());
    const auto intercept = dataset.number(tags::RescaleIntercept);
    if (!intercept) return tl::make_unexpected(intercept.error());
    grey.slope = slope->value_or(1.0);
    grey.intercept = intercept->value_or(0.0);
    grey.rescaleType = dataset.text(tags::RescaleType);
    if (grey.slope == 0.0)
        return failure(ErrorCode::AttributeInvalid,
                       describe(tags::RescaleSlope) + " is 0, which makes all values alike.",
                       {{"tag", describe(tags::RescaleSlope)}});
    return {};
}

/// A table, or what is wrong with it.
tl::expected<LookupTable, std::string> tableOf(const Dataset& item, bool signedInput) {
    const Attribute* descriptor = item.find(tags::LutDescriptor);
    const Attribute* data = item.find(tags::LutData);
    if (!descriptor || descriptor->value.size() != 6 || !data)
        return tl::make_unexpected(
            describe(descriptor && descriptor->value.size() == 6 ? tags::LutData : tags::LutDescriptor) +
            " is absent or has not three numbers");
    std::uint16_t words[3];
    std::memcpy(words, descriptor->value.data(), sizeof words);
    LookupTable table;
    table.firstMapped = signedInput ? static_cast<std::int16_t>(words[1]) : int{words[1]};
    table.bits = words[2];
    table.explanation = item.text(tags::LutExplanation);
    const std::size_t count = words[0] == 0 ? 65536u : words[0];
    if (table.bits < 8 || table.bits > 16)
        return tl::make_unexpected(describe(tags::LutDescriptor) + " says entries have " +
                                   std::to_string(table.bits) + " bits");
    const bool wide = table.bits > 8 || data->value.size() >= 2 * count;
    if (data->value.size() < (wide ? 2 : 1) * count)
        return tl::make_unexpected(describe(tags::LutData) + " has " + std::to_string(data->value.size()) +
                                   " bytes for " + std::to_string(count) + " entries");
    table.entries.resize(count);
    for (std::size_t i = 0; i < count; ++i) {
        if (wide)
            std::memcpy(&table.entries[i], data->value.data() + 2 * i, 2);
        else
            table.entries[i] = static_cast<unsigned char>(data->value[i]);
    }
    return table;
}

WindowFunction functionOf(const Dataset& dataset, std::vector<core::Notice>& notices) {
    const std::string name = dataset.text(tags::VoiLutFunction);
    if (name == "LINEAR_EXACT") return WindowFunction::LinearExact;
    if (name == "SIGMOID") return WindowFunction::Sigmoid;
    if (!name.empty() && name != "LINEAR")
        notices.push_back({"window-unusable",
                           describe(tags::VoiLutFunction) + " is " + name + "; a linear window is shown.",
                           {}});
    return WindowFunction::Linear;
}

void readWindows(const Dataset& dataset, Greyscale& grey) {
    const auto leftOut = [&](const std::string& finding) {
        grey.notices.push_back({"window-unusable", finding, {}});
    };
    const auto centres = dataset.numbers(tags::WindowCenter), widths = dataset.numbers(tags::WindowWidth);
    if (!centres || !widths) return leftOut(!centres ? centres.error().message : widths.error().message);
    if (!*centres && !*widths) return;
    if (!*centres || !*widths || (*centres)->size() != (*widths)->size())
        return leftOut(describe(tags::WindowCenter) + " and " + describe(tags::WindowWidth) +
                       " do not hold as many values as each other; they are not used.");
    const auto explanations = dataset.texts(tags::WindowExplanation);
    const WindowFunction function = functionOf(dataset, grey.notices);
    for (std::size_t i = 0; i < (*centres)->size(); ++i) {
        const double width = (**widths)[i];
        // PS3.3 C.11.2.1.2: at least 1 when linear, above 0 else.
        if (width <= 0.0 || (function == WindowFunction::Linear && width < 1.0))
            leftOut(describe(tags::WindowWidth) + " is " + std::to_string(width) +
                    ", which is no width; it is not used.");
        else
            grey.windows.push_back(
                {(**centres)[i], width, function, i < explanations.size() ? explanations[i] : ""});
    }
}

} // namespace

double LookupTable::at(double value) const {
    const auto index = std::llround(std::clamp(value - firstMapped, 0.0, double(entries.size() - 1)));
    return entries[static_cast<std::size_t>(index)];
}

double Greyscale::modalityValue(std::int32_t stored) const {
    return modalityTable ? modalityTable->at(stored) : slope * stored + intercept;
}

core::Result<Greyscale> greyscaleOf(const ScannedFile& scanned, int frame) {
    const Dataset& dataset = scanned.dataset;
    Greyscale grey;
    if (auto read = readRescale(groupOf(dataset, frame, tags::PixelValueTransformationSequence), grey); !read)
        return tl::make_unexpected(read.error());
    const bool isSigned = scanned.format && scanned.format->isSigned;
    grey.inverted = scanned.format && scanned.format->photometric == "MONOCHROME1";
    if (const Dataset* modality = dataset.firstItem(tags::ModalityLutSequence)) {
        auto table = tableOf(*modality, isSigned);
        if (!table)
            return failure(ErrorCode::AttributeInvalid,
                           describe(tags::ModalityLutSequence) + " cannot be used: " + table.error() + ".",
                           {{"tag", describe(tags::ModalityLutSequence)}});
        grey.modalityTable = std::move(*table);
    }
    const Dataset& voi = groupOf(dataset, frame, tags::FrameVoiLutSequence);
    readWindows(voi, grey);
    for (const Dataset& item : voi.items(tags::VoiLutSequence)) {
        // PS3.3 C.11.2.1.1: the first value mapped is signed when the modality step may give negative values.
        const bool negative = !grey.modalityTable && (isSigned || grey.intercept < 0.0 || grey.slope < 0.0);
        auto table = tableOf(item, negative);
        if (table)
            grey.voiTables.push_back(std::move(*table));
        else
            grey.notices.push_back({"window-unusable",
                                    describe(tags::VoiLutSequence) + " is not used: " + table.error() + ".",
                                    {}});
    }
    return grey;
}

double windowed(double value, const Window& window) {
    constexpr double kMost = 255.0;
    switch (window.function) {
    case WindowFunction::Sigmoid:
        return kMost / (1.0 + std::exp(-4.0 * (value - window.centre) / window.width));
    case WindowFunction::LinearExact:
        return kMost * std::clamp((value - window.centre) / window.width + 0.5, 0.0, 1.0);
    case WindowFunction::Linear:
        break;
    }
    const double c = window.centre - 0.5, w = window.width - 1.0;
    if (value <= c - w / 2.0) return 0.0;
    if (value > c + w / 2.0) return kMost;
    return kMost * ((value - c) / w + 0.5);
}

Window firstWindow(const Greyscale& grey, std::span<const std::int32_t> values) {
    if (!grey.windows.empty()) return grey.windows.front();
    if (values.empty()) return {};
    double low = grey.modalityValue(values.front()), high = low;
    for (const std::int32_t stored : values) {
        const double value = grey.modalityValue(stored);
        low = std::min(low, value), high = std::max(high, value);
    }
    return {(low + high) / 2.0, std::max(high - low, 1.0), WindowFunction::LinearExact, {}};
}

std::vector<std::uint8_t> shown(std::span<const std::int32_t> values, const Greyscale& grey,
                                const std::optional<Window>& window) {
    const LookupTable* table = !window && !grey.voiTables.empty() ? &grey.voiTables.front() : nullptr;
    const Window used = window ? *window : firstWindow(grey, values);
    const double tableMost = table ? std::ldexp(1.0, table->bits) - 1.0 : 1.0;
    std::vector<std::uint8_t> out(values.size());
    std::transform(values.begin(), values.end(), out.begin(), [&](std::int32_t stored) {
        const double value = grey.modalityValue(stored);
        const double level = table ? 255.0 * table->at(value) / tableMost : windowed(value, used);
        const auto grey8 = static_cast<std::uint8_t>(std::lround(std::clamp(level, 0.0, 255.0)));
        return grey.inverted ? static_cast<std::uint8_t>(255 - grey8) : grey8;
    });
    return out;
}

} // namespace gauge::dicomio
