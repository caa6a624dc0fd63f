#include "dicomio/angiography/xray_mask.h"

#include "tests/dicomio/angiography/header.h"

#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

struct Read {
    XrayMasks masks;
    std::vector<core::Notice> notices;
};

Read readMask(Header item, int frames = 10) {
    Read read;
    const auto header = Header().sequence(tags::MaskSubtractionSequence, {std::move(item)});
    read.masks = xrayMasks(header.dataset(), frames, read.notices);
    return read;
}

Header average() {
    return Header().text(tags::MaskOperation, "AVG_SUB", "CS").text(tags::MaskFrameNumbers, "1\\2", "IS");
}

} // namespace

TEST(XrayMasks, CountFramesFromZeroAndKeepRanges) {
    const auto read = readMask(average()
                                   .text(tags::ApplicableFrameRange, "3\\5\\7\\10", "IS")
                                   .text(tags::ContrastFrameAveraging, "2", "IS"));
    ASSERT_EQ(read.masks.masks.size(), 1u);
    const auto& mask = read.masks.masks[0];
    EXPECT_EQ(mask.maskFrames, (std::vector<int>{0, 1}));
    EXPECT_TRUE(mask.appliesTo(2) && mask.appliesTo(4) && !mask.appliesTo(5) && mask.appliesTo(9));
    EXPECT_EQ(mask.contrastFrames, 2);
    EXPECT_TRUE(read.notices.empty());
}

TEST(XrayMasks, OfTimeDifferencesKeepTheirOffset) {
    const auto read =
        readMask(Header().text(tags::MaskOperation, "TID", "CS").text(tags::TidOffset, "3", "IS"));
    ASSERT_EQ(read.masks.masks.size(), 1u);
    EXPECT_EQ(read.masks.masks[0].operation, core::MaskOperation::TimeDifference);
    EXPECT_EQ(read.masks.masks[0].timeOffset, 3);
}

TEST(XrayMasks, ThatCannotBeUsedAreLeftOutInWords) {
    const auto why = [](Header item) {
        return noticeText(readMask(std::move(item)).notices, "mask-unusable");
    };
    EXPECT_THAT(why(Header().text(tags::MaskOperation, "REV_TID", "CS")), HasSubstr("REV_TID"));
    EXPECT_THAT(why(Header().text(tags::MaskOperation, "AVG_SUB", "CS")), HasSubstr("nothing to subtract"));
    EXPECT_THAT(
        why(Header().text(tags::MaskOperation, "AVG_SUB", "CS").text(tags::MaskFrameNumbers, "11", "IS")),
        HasSubstr("names frame 11 of 10"));
    EXPECT_THAT(why(average().text(tags::ApplicableFrameRange, "3", "IS")), HasSubstr("no pairs"));
    EXPECT_THAT(why(average().text(tags::ApplicableFrameRange, "5\\3", "IS")), HasSubstr("no pairs"));
    EXPECT_THAT(why(Header().text(tags::MaskOperation, "TID", "CS").text(tags::TidOffset, "10", "IS")),
                HasSubstr("is 10 in a run of 10"));
    EXPECT_TRUE(readMask(Header().text(tags::MaskOperation, "NONE", "CS")).notices.empty());
}
