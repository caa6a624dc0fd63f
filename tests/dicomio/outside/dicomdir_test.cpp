// Tables of contents as pydicom writes them, right ones and lying ones.
#include "dicomio/index/series_index.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <cstdlib>
#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::HasSubstr;
namespace fs = std::filesystem;

namespace {

class Dicomdir : public testing::Test {
protected:
    void SetUp() override {
        const std::string command = "/usr/bin/python3 -W ignore '" + std::string(GAUGE_SOURCE_DIR) +
                                    "/tests/dicomio/outside/make_dicomdir.py' '" + folder.path().string() +
                                    "'";
        ASSERT_EQ(std::system(command.c_str()), 0);
    }
    fs::path image(int series, int number) const {
        return folder.path() / "PT000000/ST000000" / ("SE00000" + std::to_string(series)) /
               ("IM00000" + std::to_string(number));
    }
    SeriesIndex listed() const { return valueOf(listFolder(folder.path())); }
    static const SeriesEntry& ct(const SeriesIndex& index) {
        for (const SeriesEntry& series : index.series)
            if (series.kind == "ct") return series;
        throw std::runtime_error("no CT");
    }
    static std::string ignored(const SeriesIndex& index) {
        if (index.tables.size() != 1 || index.tables.front().agrees || index.notices.size() != 1)
            throw std::runtime_error("the table was expected to be ignored");
        EXPECT_EQ(index.notices.front().code, "dicomdir-ignored");
        return index.notices.front().text;
    }
    const TempFolder folder;
};

} // namespace

TEST_F(Dicomdir, AgreesWithTheFilesThatItNames) {
    const SeriesIndex index = listed();
    ASSERT_EQ(index.tables.size(), 1u);
    EXPECT_TRUE(index.tables[0].agrees) << (index.notices.empty() ? "" : index.notices[0].text);
    EXPECT_EQ(index.tables[0].listed, 6u);
    EXPECT_TRUE(index.notices.empty());
    ASSERT_EQ(index.skipped.size(), 1u);
    EXPECT_THAT(index.skipped[0].reason, HasSubstr("It agrees with them: its 6 file(s) are all here"));
    EXPECT_EQ(index.series.size(), 2u);
    EXPECT_EQ(ct(index).imageCount, 5);
}

TEST_F(Dicomdir, StandsForItsFolderWhenItIsChosenItself) {
    const SeriesIndex index = valueOf(listFolder(folder.path() / "DICOMDIR"));
    EXPECT_EQ(index.series.size(), 2u);
    EXPECT_TRUE(index.tables[0].agrees);
}

TEST_F(Dicomdir, FindsItsFilesOnDiscsThatChangeTheCaseOfNames) {
    fs::rename(folder.path() / "PT000000", folder.path() / "pt000000");
    EXPECT_TRUE(listed().tables[0].agrees);
}

TEST_F(Dicomdir, TellsTheSeriesWhoseEndIsMissing) {
    fs::remove(image(0, 4)); // the last slice: the geometry alone cannot show that
    const SeriesIndex index = listed();
    EXPECT_THAT(ignored(index),
                HasSubstr("1 file(s) that it names are not there (PT000000/ST000000/SE000000/IM000004)"));
    EXPECT_TRUE(ct(index).measurable);
    EXPECT_EQ(ct(index).status, SeriesStatus::Notice);
    ASSERT_EQ(ct(index).messages.back().code, "listed-files-missing");
    EXPECT_THAT(ct(index).messages.back().text,
                HasSubstr("names 1 file(s) of this series that are not there"));
}

TEST_F(Dicomdir, IsIgnoredWhenAFileHoldsAnotherObject) {
    fs::rename(image(0, 0), folder.path() / "swap");
    fs::rename(image(0, 1), image(0, 0));
    fs::rename(folder.path() / "swap", image(0, 1));
    fs::remove(image(0, 4));
    const SeriesIndex index = listed();
    EXPECT_THAT(ignored(index), HasSubstr("2 file(s) hold another object than it says"));
    for (const core::Notice& message :
         ct(index).messages) // what it says of missing files counts for nothing then
        EXPECT_NE(message.code, "listed-files-missing");
}

TEST_F(Dicomdir, IsIgnoredWhenItDoesNotNameAFileOfTheFolder) {
    folder.write("extra", CtSlice{}.dataset());
    folder.write("viewer.exe", "no DICOM"); // needs no mention
    const SeriesIndex index = listed();
    EXPECT_THAT(ignored(index), HasSubstr("1 DICOM file(s) of the folder are not in it"));
    EXPECT_EQ(index.series.size(), 3u); // listed all the same
}

TEST(DicomdirOfOurs, MayNotLeadOutOfItsFolder) {
    const TempFolder folder;
    const CtSlice slice;
    folder.write("disc/image", slice.dataset());
    DatasetBytes series, image, table;
    series.text(0x00041430, "CS", "SERIES").text(0x0020000E, "UI", slice.seriesUid);
    image.text(0x00041430, "CS", "IMAGE")
        .text(0x00041500, "CS", "..\\..\\etc\\passwd")
        .text(0x00041511, "UI", slice.sopUid);
    table.text(0x00080016, "UI", "1.2.840.10008.1.3.10").sequence(0x00041220, {series, image});
    folder.write("disc/DICOMDIR", table);
    const SeriesIndex index = valueOf(listFolder(folder.path()));
    ASSERT_EQ(index.notices.size(), 1u);
    EXPECT_THAT(index.notices[0].text, HasSubstr("1 of its names lead out of the folder."));
    EXPECT_FALSE(index.tables[0].agrees);
}
