#include "tests/bench/report.h"

#include <algorithm>
#include <cstdio>
#include <vector>

namespace gauge::bench {
namespace {

struct Line {
    std::string name;
    double value = 0.0;
    std::string unit;
    double goal = 0.0;
};

std::vector<Line>& lines() {
    static std::vector<Line> all;
    return all;
}

} // namespace

void reportLine(const std::string& name, double value, const std::string& unit, double goal) {
    auto& all = lines();
    const auto same = std::find_if(all.begin(), all.end(), [&](const Line& l) { return l.name == name; });
    if (same == all.end())
        all.push_back({name, value, unit, goal});
    else
        *same = {name, value, unit, goal};
}

void printReport() {
    std::printf("\n%-62s %10s %10s\n", "", "measured", "goal");
    for (const Line& l : lines())
        std::printf("%-62s %10.3g %10.3g %s%s\n", l.name.c_str(), l.value, l.goal, l.unit.c_str(),
                    l.value <= l.goal ? "" : "   MISSED");
}

} // namespace gauge::bench
