#include "dicomio/deidentify/pseudonyms.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

using gauge::dicomio::Pseudonyms;
using gauge::dicomio::shiftedDate;

TEST(Pseudonyms, AreTheSameForTheSameKeyOnly) {
    const Pseudonyms one("a key of enough letters"), same("a key of enough letters"), other("another key of letters");
    EXPECT_EQ(one.uid("1.2.3.4"), same.uid("1.2.3.4"));
    EXPECT_NE(one.uid("1.2.3.4"), other.uid("1.2.3.4"));
    EXPECT_NE(one.uid("1.2.3.4"), one.uid("1.2.3.5"));
    EXPECT_EQ(one.patientId("77"), same.patientId("77"));
    EXPECT_NE(one.patientId("77"), other.patientId("77"));
}

// PS3.5 9.1: at most 64 characters, components of digits without leading zero; B.2: 2.25 and a UUID as one number.
TEST(Pseudonyms, MakeUidsThatTheStandardAllows) {
    const Pseudonyms names("k");
    std::set<std::string> seen;
    for (int n = 0; n < 2000; ++n) {
        const std::string uid = names.uid("1.9." + std::to_string(n));
        EXPECT_LE(uid.size(), 64u);
        EXPECT_TRUE(uid.starts_with("2.25."));
        EXPECT_NE(uid[5], '0');
        EXPECT_EQ(uid.find_first_not_of("0123456789", 5), std::string::npos) << uid;
        seen.insert(uid);
    }
    EXPECT_EQ(seen.size(), 2000u);
    EXPECT_EQ(names.uid("1.2.840.10008.5.1.4.1.1.2"), "1.2.840.10008.5.1.4.1.1.2") << "UIDs of the standard stay";
    EXPECT_EQ(names.uid(""), "");
}

TEST(Pseudonyms, MoveDatesOfOnePatientByTheSameDays) {
    const Pseudonyms names("k");
    EXPECT_EQ(names.dayShift("77"), names.dayShift("77"));
    for (int n = 0; n < 500; ++n) {
        const int days = names.dayShift(std::to_string(n));
        EXPECT_LE(days, -30);
        EXPECT_GE(days, -3650);
    }
}

TEST(ShiftedDate, FollowsTheCalendar) {
    EXPECT_EQ(shiftedDate("20240301", -1), "20240229");
    EXPECT_EQ(shiftedDate("20230301", -1), "20230228");
    EXPECT_EQ(shiftedDate("20240101", -366), "20221231");
    EXPECT_EQ(shiftedDate("20240301101112.5+0100", -1), "20240229101112.5+0100");
    EXPECT_EQ(shiftedDate("2024-03-01T10:11:12+01:00", -1), "2024-02-29T10:11:12+01:00");
}

TEST(ShiftedDate, RefusesWhatIsNoDate) {
    for (const char* text : {"", "2024", "202402", "20240230", "2024ab01", "around 2024"})
        EXPECT_FALSE(shiftedDate(text, -1)) << text;
}
