#include "app/format/words.h"

#include "app/format/quantity.h"

#include <gtest/gtest.h>

using namespace gauge::app;
using gauge::core::PatientVector;

// DICOM PS3.3 C.7.6.1.1.1 (Patient Orientation): A anterior, P posterior, R right, L left, H head, F foot;
// oblique directions by more than one letter, the first the nearest.
TEST(DirectionLetters, FollowThePatientOrientationOfDicom) {
    EXPECT_EQ(directionLetters({{1, 0, 0}}), "L");
    EXPECT_EQ(directionLetters({{-1, 0, 0}}), "R");
    EXPECT_EQ(directionLetters({{0, 1, 0}}), "P");
    EXPECT_EQ(directionLetters({{0, -1, 0}}), "A");
    EXPECT_EQ(directionLetters({{0, 0, 1}}), "H");
    EXPECT_EQ(directionLetters({{0, 0, -1}}), "F");
    EXPECT_EQ(directionLetters({{2, 1, 0}}), "LP");
    EXPECT_EQ(directionLetters({{-1, 0, 2}}), "HR");
}

TEST(PlaceWords, NameTheSideOfThePatient) {
    EXPECT_EQ(plainSpaces(placeWords({{12.34, -4.0, -7.06}})), "left 12.3 mm, front 4.0 mm, feet 7.1 mm");
}

TEST(CautionParagraphs, SayThatThisIsNoMedicalDevice) {
    ASSERT_EQ(cautionParagraphs().size(), 3);
    EXPECT_TRUE(cautionParagraphs().front().contains("not a medical device"));
}
