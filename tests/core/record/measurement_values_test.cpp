#include "core/record/measurement_values.h"

#include "core/record/edit.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace gauge::core;

namespace {

CaseRecord markedRecord() {
    CaseRecord record;
    apply(record, SetImages{ImagesUsed{"2.25.7", 45.0, "45 %", "2.25.9", 1, UnknownFields::object()}});
    apply(record, SetMark{MarkKind::Atrium, Mark{{}, 2, UnknownFields::object()}});
    apply(record, SetMark{MarkKind::Tip, Mark{{}, 3, UnknownFields::object()}});
    apply(record, SetMark{MarkKind::Aorta, Mark{{}, 4, UnknownFields::object()}});
    return record;
}

AppendageMeasurement measurement() {
    AppendageMeasurement m;
    m.landingZones.resize(2);
    m.depthAlongAxisMm = {31.5, {0.4, 0.3, 0, 0}, "axis"};
    m.enhancement.aortaHu = 410.0;
    return m;
}

const RecordedValue& find(const std::vector<RecordedValue>& values, const std::string& id) {
    const auto found = std::find_if(values.begin(), values.end(), [&](const auto& v) { return v.id == id; });
    EXPECT_NE(found, values.end()) << id;
    return *found;
}

} // namespace

TEST(RecordedValues, NamesEveryValueOnce) {
    const auto values = recordedValues(measurement(), markedRecord(), std::make_shared<const Provenance>());
    std::vector<std::string> ids;
    for (const auto& value : values)
        ids.push_back(value.id);
    std::sort(ids.begin(), ids.end());
    EXPECT_EQ(std::adjacent_find(ids.begin(), ids.end()), ids.end());
    EXPECT_EQ(find(values, "depth/along-axis").estimate.value, 31.5);
    find(values, "landing-2/straight-depth");
}

TEST(RecordedValues, APlaneThatWasNotMeasuredLeavesTheOthersTheirNumbers) {
    CaseRecord record = markedRecord();
    record.landing.depthsMm = {10.0, 14.0};
    record.landing.plugMm = 12.0;
    AppendageMeasurement m = measurement();
    m.landingZones.front().depthMm = 14.0; // the one at 10 mm is missing
    m.landingZones.front().straightDepthMm.value = 8.5;
    m.landingZones.back().kind = LandingKind::Plug;
    m.landingZones.back().depthMm = 12.0;
    m.landingZones.back().straightDepthMm.value = 3.5;
    const auto values = recordedValues(m, record, std::make_shared<const Provenance>());
    EXPECT_EQ(find(values, "landing-2/straight-depth").estimate.value, 8.5);
    EXPECT_EQ(find(values, "landing-3/straight-depth").estimate.value, 3.5);
    EXPECT_TRUE(std::none_of(values.begin(), values.end(), [](const auto& v) { return v.id.starts_with("landing-1/"); }))
        << "no other plane stands for the landing zone";
}

TEST(RecordedValues, RestOnTheInputsThatTheyCameFrom) {
    CaseRecord record = markedRecord();
    record.values = recordedValues(measurement(), record, std::make_shared<const Provenance>());
    const RecordedValue ostium = find(record.values, "ostium/area");
    const RecordedValue landing = find(record.values, "landing-1/area");
    const RecordedValue aorta = find(record.values, "enhancement/aorta");
    for (const auto& value : record.values)
        EXPECT_FALSE(isStale(record, value)) << value.id;

    LandingPlanes moved;
    moved.depthsMm = {12.0};
    moved.revision = 5;
    const Edit undo = apply(record, SetLanding{moved});
    EXPECT_TRUE(isStale(record, landing));
    EXPECT_FALSE(isStale(record, ostium));
    apply(record, undo);

    apply(record, SetMark{MarkKind::Aorta, std::nullopt});
    EXPECT_TRUE(isStale(record, aorta));
    EXPECT_FALSE(isStale(record, ostium));

    apply(record, SetMark{MarkKind::Ridge, Mark{{}, 6, UnknownFields::object()}});
    EXPECT_TRUE(isStale(record, ostium)) << "a landmark that was not there before";
}
