// The JSON that a person loads to choose a size: observations, charts, release findings, haemodynamics.
#include "core/pressure/haemodynamics.h"
#include "core/release/release_json.h"
#include "core/sizing/chart_reader.h"
#include "core/sizing/observations_file.h"

#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace gauge::core;
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    (void)readObservations(text, "input.json");
    (void)readChart(text, "input.json");
    (void)releaseFromJson(text);
    const auto json = nlohmann::json::parse(text.begin(), text.end(), nullptr, false);
    if (!json.is_discarded())
        (void)haemodynamicsFromJson(json);
    return 0;
}
