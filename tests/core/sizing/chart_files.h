// The demonstration charts of this repository, and a way to spoil them.
#pragma once

#include "core/sizing/chart_reader.h"

#include <fstream>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <sstream>

namespace gauge::test {

inline std::string chartText(const std::string& name) {
    std::ifstream in(std::string(GAUGE_SOURCE_DIR) + "/resources/charts/" + name);
    EXPECT_TRUE(in) << name;
    std::stringstream text;
    text << in.rdbuf();
    return text.str();
}

inline nlohmann::json chartJson(const std::string& name) {
    return nlohmann::json::parse(chartText(name));
}

inline core::DeviceChart demoChart(const std::string& name) {
    const auto reading = core::readChart(chartText(name), name);
    EXPECT_TRUE(reading) << (reading ? "" : reading.error().message);
    return reading ? reading->chart : core::DeviceChart{};
}

inline core::DeviceChart demoPlug() {
    return demoChart("demo-plug.json");
}
inline core::DeviceChart demoLobeAndDisc() {
    return demoChart("demo-lobe-and-disc.json");
}

} // namespace gauge::test
