// Against pydicom, an independent reader and writer of DICOM: files that it wrote are read here bit for bit,
// with its affine by PS3.3 C.7.6.2.1.1, and files that the tests wrote are read alike by both.
#include "dicomio/ct/ct_reader.h"
#include "dicomio/pixel/frame_reader.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <cstdlib>
#include <fstream>
#include <sstream>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;

namespace {

/// Runs a script beside this test; false when it fails.
bool python(const std::string& script, const std::filesystem::path& argument,
            const std::filesystem::path& output) {
    const std::string command = "PYTHONIOENCODING=utf-8 /usr/bin/python3 -W ignore '" +
                                std::string(GAUGE_SOURCE_DIR) + "/tests/dicomio/outside/" + script + "' '" +
                                argument.string() + "' > '" + output.string() + "' 2> '" + output.string() +
                                ".err'";
    return std::system(command.c_str()) == 0;
}

std::string content(const std::filesystem::path& file) {
    std::ifstream in(file);
    std::stringstream text;
    text << in.rdbuf();
    return text.str();
}

struct Read {
    std::string name;
    std::vector<std::int32_t> values;
};

Read byPydicom(const TempFolder& folder, const std::filesystem::path& file) {
    const auto output = folder.path() / "out.txt";
    if (!python("read_with_pydicom.py", file, output))
        throw std::runtime_error("pydicom failed: " + content(output.string() + ".err"));
    std::ifstream in(output);
    Read read;
    std::getline(in, read.name);
    for (std::int32_t v; in >> v;)
        read.values.push_back(v);
    return read;
}

} // namespace

TEST(Pydicom, StackWrittenByItIsReadBitForBitWithItsAffine) {
    const TempFolder folder;
    ASSERT_TRUE(python("make_with_pydicom.py", folder.path(), folder.path() / "log"))
        << content(folder.path() / "log.err");
    const SeriesIndex index = valueOf(listFolder(folder.path()));
    ASSERT_EQ(index.series.size(), 1u);
    EXPECT_EQ(index.series[0].patientName, "Yamada^Tarou=山田^太郎=やまだ^たろう");
    const CtVolume ct = valueOf(readCtPhase(index.series[0], 0));
    ASSERT_EQ(ct.volume->size(), Eigen::Vector3i(9, 7, 10));
    std::ifstream truth(folder.path() / "truth.txt");
    constexpr double kWrittenDigits = 1e-6; // nine significant digits in the file
    for (int row = 0; row < 3; ++row)
        for (int column = 0; column < 4; ++column) {
            double expected = 0.0;
            truth >> expected;
            EXPECT_NEAR(ct.volume->patientFromVoxel().matrix()(row, column), expected, kWrittenDigits);
        }
    std::size_t wrong = 0;
    for (std::size_t i = 0; i < ct.volume->voxelCount(); ++i) {
        int expected = 0;
        truth >> expected;
        wrong += ct.volume->data()[i] != expected;
    }
    EXPECT_TRUE(static_cast<bool>(truth));
    EXPECT_EQ(wrong, 0u);
}

TEST(Pydicom, ReadsTheSamePixelsAndNamesFromTheSameFiles) {
    const TempFolder folder;
    DatasetBytes d = CtSlice{}.dataset();
    d.us(0x00280101, 12).us(0x00280102, 11).us(0x00280103, 1);
    std::vector<std::uint16_t> words(20);
    for (std::size_t i = 0; i < words.size(); ++i)
        words[i] = static_cast<std::uint16_t>((static_cast<int>(i) * 37 - 300) & 0xFFFF);
    d.words(0x7FE00010, "OW", words);
    DatasetBytes rle = d;
    rle.fragments(0x7FE00010, {"", rle16(words)});
    std::vector<std::filesystem::path> files{
        folder.write("explicit", d), folder.write("implicit", d, Encoding::ImplicitLittle),
        folder.write("big", d, Encoding::ExplicitBig), folder.write("rle", part10(kRleUid, rle.encode())),
        folder.write("deflated", part10(kDeflatedUid, deflated(d.encode())))};
    for (const auto& file : files) {
        const auto scanned = scanFile(file);
        ASSERT_TRUE(scanned) << file;
        EXPECT_EQ(valueOf(valueOf(FrameReader::open(*scanned)).readValues(0)), byPydicom(folder, file).values)
            << file;
    }
}

TEST(Pydicom, ReadsTheSameNamesInTheStandardsExamples) {
    struct Example {
        const char* sets;
        const char* name;
    };
    const TempFolder folder;
    for (const Example& e :
         {Example{"\\ISO 2022 IR 87",
                  "Yamada^Tarou=\x1B$B;3ED\x1B(B^\x1B$BB@O:\x1B(B=\x1B$B$d$^$@\x1B(B^\x1B$B$?$m$&\x1B(B"},
          Example{"ISO 2022 IR 13\\ISO 2022 IR 87", "\xD4\xCF\xC0\xDE^\xC0\xDB\xB3=\x1B$B;3ED\x1B(J^\x1B$BB@"
                                                    "O:\x1B(J=\x1B$B$d$^$@\x1B(J^\x1B$B$?$m$&\x1B(J"},
          Example{
              "\\ISO 2022 IR 149",
              "Hong^Gildong=\x1B$)C\xFB\xF3^\x1B$)C\xD1\xCE\xD4\xD7=\x1B$)C\xC8\xAB^\x1B$)C\xB1\xE6\xB5\xBF"},
          Example{"ISO_IR 192", "Wang^XiaoDong=\xE7\x8E\x8B^\xE5\xB0\x8F\xE6\x9D\xB1"},
          Example{"GB18030", "Wang^XiaoDong=\xCD\xF5^\xD0\xA1\xB6\xAB"},
          Example{"ISO_IR 100", "Buc^J\xE9r\xF4me"}, Example{"ISO_IR 144", "\xBB\xEE\xDA"},
          Example{"ISO_IR 126", "\xC4\xE9"}}) {
        DatasetBytes d = CtSlice{}.dataset();
        const auto file =
            folder.write("name", d.text(0x00080005, "CS", e.sets).text(0x00100010, "PN", e.name));
        const SeriesIndex index = valueOf(listFolder(file));
        EXPECT_EQ(index.series.front().patientName, byPydicom(folder, file).name) << e.sets;
    }
}
