// A CT series in every lossless coding gives the same voxels, bit for bit. The codings are made by gdcmconv
// (GDCM, with encoders of its own), and by the tests' byte writer where no codec is needed.
#include "dicomio/ct/ct_reader.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <cstdlib>
#include <random>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;

namespace {

constexpr int kSlices = 6;
constexpr std::uint16_t kRows = 40, kColumns = 52;

/// Smooth, noisy, and with the extremes of a 12-bit scanner: the codings must keep all of it.
std::vector<CtSlice> series(bool isSigned) {
    std::mt19937 random(7); // seed
    auto slices = ctStack(kSlices, 0.75);
    for (int k = 0; k < kSlices; ++k) {
        CtSlice& slice = slices[static_cast<std::size_t>(k)];
        slice.rows = kRows;
        slice.columns = kColumns;
        slice.pixels.clear();
        for (int y = 0; y < kRows; ++y)
            for (int x = 0; x < kColumns; ++x) {
                int value = 1000 + 30 * x - 17 * y + 100 * k + static_cast<int>(random() % 41) - 20;
                if (x == 0) value = y % 2 ? 4095 : 0;
                if (isSigned) value -= 1024;
                slice.pixels.push_back(static_cast<std::uint16_t>(value));
            }
    }
    return slices;
}

DatasetBytes dataset(const CtSlice& slice, bool isSigned) {
    DatasetBytes d = slice.dataset();
    if (isSigned) return d.us(0x00280103, 1).text(0x00281052, "DS", "0");
    return d.us(0x00280101, 12).us(0x00280102, 11);
}

CtVolume loaded(const std::filesystem::path& folder) {
    const SeriesIndex index = valueOf(listFolder(folder));
    if (index.series.size() != 1) throw std::runtime_error("one series was expected");
    return valueOf(readCtPhase(index.series.front(), 0));
}

std::vector<std::int16_t> voxels(const CtVolume& ct) {
    return {ct.volume->data(), ct.volume->data() + ct.volume->voxelCount()};
}

struct Coding {
    const char* option;
    const char* transferSyntax;
};

class LosslessVoxels : public testing::TestWithParam<bool> {};

} // namespace

TEST_P(LosslessVoxels, AreTheSameInEveryCodingOfGdcm) {
    const bool isSigned = GetParam();
    const TempFolder folder;
    const auto slices = series(isSigned);
    for (std::size_t k = 0; k < slices.size(); ++k)
        folder.write("plain/" + std::to_string(k) + ".dcm", dataset(slices[k], isSigned));
    const auto expected = voxels(loaded(folder.path() / "plain"));
    ASSERT_EQ(expected.size(), std::size_t{kRows} * kColumns * kSlices);
    for (const Coding& coding :
         {Coding{"--jpeg", "1.2.840.10008.1.2.4.70"}, Coding{"--jpegls", "1.2.840.10008.1.2.4.80"},
          Coding{"--j2k", "1.2.840.10008.1.2.4.90"}, Coding{"--rle", "1.2.840.10008.1.2.5"}}) {
        const auto coded = folder.path() / (coding.option + 2);
        std::filesystem::create_directories(coded);
        for (int k = 0; k < kSlices; ++k) {
            const std::string name = std::to_string(k) + ".dcm";
            const std::string command = std::string("gdcmconv ") + coding.option + " '" +
                                        (folder.path() / "plain" / name).string() + "' '" +
                                        (coded / name).string() + "' > /dev/null 2>&1";
            ASSERT_EQ(std::system(command.c_str()), 0) << command << " (Debian: libgdcm-tools)";
        }
        EXPECT_EQ(valueOf(scanFile(coded / "0.dcm")).syntax.uid, coding.transferSyntax); // it is coded indeed
        EXPECT_EQ(voxels(loaded(coded)), expected) << coding.option;
    }
}

TEST_P(LosslessVoxels, AreTheSameInEveryEncodingOfTheDataSet) {
    const bool isSigned = GetParam();
    const TempFolder folder;
    const auto slices = series(isSigned);
    for (std::size_t k = 0; k < slices.size(); ++k) {
        const std::string name = std::to_string(k);
        const DatasetBytes d = dataset(slices[k], isSigned);
        folder.write("explicit/" + name, d);
        folder.write("implicit/" + name, d, Encoding::ImplicitLittle);
        folder.write("big/" + name, d, Encoding::ExplicitBig);
        folder.write("deflated/" + name, part10(kDeflatedUid, deflated(d.encode())));
        DatasetBytes rle = d;
        folder.write("rle/" + name,
                     part10(kRleUid, rle.fragments(0x7FE00010, {"", rle16(slices[k].pixels)}).encode()));
    }
    const auto expected = voxels(loaded(folder.path() / "explicit"));
    for (const char* encoding : {"implicit", "big", "deflated", "rle"})
        EXPECT_EQ(voxels(loaded(folder.path() / encoding)), expected) << encoding;
}

INSTANTIATE_TEST_SUITE_P(SignedAndUnsigned, LosslessVoxels, testing::Bool());
