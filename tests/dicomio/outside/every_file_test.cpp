// Every file that the pydicom package brings and every real one: it is read like decoders that are not ours
// read it (decode_every_file.py), or refused in words for a reason that is written down here.
#include "dicomio/pixel/colour.h"
#include "dicomio/pixel/frame_reader.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/python.h"
#include "tests/dicomio/support/result_of.h"

#include <cstring>
#include <gmock/gmock.h>
#include <map>
#include <set>
#include <sstream>
#include <zlib.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::HasSubstr;

namespace {

namespace fs = std::filesystem;

/// Two correct decoders of lossy JPEG may differ by their arithmetic (ITU-T T.83 allows one level of the
/// cosine transform, and the smoothing of halved chroma adds one).
constexpr int kLossyLevels = 2;
/// Conversion of colour rounds once on each side, with coefficients of four digits there.
constexpr int kColourLevels = 1;

/// Files with pixels that are not read, and a part of what is said.
const std::map<std::string, std::string> kRefused{
    {"MR_small_padded.dcm", "(7fe0,0010) PixelData holds"},
    {"MR_truncated.dcm", "(7fe0,0010) PixelData claims 8192 bytes at byte 1500, but only 8130 are left"},
    {"rtplan_truncated.dcm", "(300a,00b0) claims 976 bytes at byte 1418, but only 711 are left in the file"},
    {"meta_missing_tsyntax.dcm", "(0002,0010) TransferSyntaxUID is absent"},
    {"DICOMDIR-nooffset", "(fffe,e000) Item claims 248 bytes at byte 10868, but only 224 are left"},
    {"JPEG2000-embedded-sequence-delimiter.dcm", "The JPEG 2000 frame is 3722445056 x 1024"}, // made so
    {"badVR.dcm", "(0028,0008) NumberOfFrames holds \"1A\""},
    {"JLSL_08_07_0_1F.dcm", "JPEG-LS Lossless pixels cannot be decoded"},
    {"emri_small_jpeg_2k_lossless_too_short.dcm", "truncated"},
};

struct Expected {
    fs::path path;
    int number = 0;
    std::string kind;
    int frames = 0;
    struct Frame {
        int frame = 0;
        unsigned long crc = 0;
        bool rgb = false;
    };
    std::vector<Frame> chosen;
};

std::vector<Expected> readManifest(const fs::path& file) {
    std::vector<Expected> all;
    std::istringstream lines(contentOf(file));
    for (std::string line; std::getline(lines, line);) {
        std::istringstream fields(line);
        Expected e;
        std::string path, frames;
        std::getline(fields, path, '\t');
        std::getline(fields, e.kind, '\t');
        std::getline(fields, frames, '\t');
        e.path = path;
        e.number = static_cast<int>(all.size());
        e.frames = std::stoi(frames);
        for (std::string field; e.kind != "none" && std::getline(fields, field, '\t');) {
            Expected::Frame f;
            int rgb = 0;
            if (std::sscanf(field.c_str(), "%d:%lu:%d", &f.frame, &f.crc, &rgb) != 3)
                throw std::runtime_error("manifest: " + line);
            f.rgb = rgb == 1;
            e.chosen.push_back(f);
        }
        all.push_back(e);
    }
    return all;
}

unsigned long crcOf(const std::vector<std::int32_t>& values) {
    return crc32(0, reinterpret_cast<const Bytef*>(values.data()), static_cast<uInt>(values.size() * 4));
}

/// Largest difference to the numbers in a file; -1 when there are not as many.
template <class T> int difference(const std::vector<T>& found, const fs::path& file) {
    const std::string bytes = contentOf(file);
    if (bytes.size() != found.size() * sizeof(T)) return -1;
    int largest = 0;
    for (std::size_t i = 0; i < found.size(); ++i) {
        T expected{};
        std::memcpy(&expected, bytes.data() + i * sizeof(T), sizeof(T));
        largest = std::max(largest, std::abs(static_cast<int>(found[i]) - static_cast<int>(expected)));
    }
    return largest;
}

/// Samples before conversion of colour, by the colour path where it takes the file.
core::Result<std::vector<std::int32_t>> samplesOf(const ScannedFile& scanned, int frame) {
    if (const auto colour = ColourReader::open(scanned)) return colour->readSamples(frame);
    const auto reader = FrameReader::open(scanned);
    if (!reader) return tl::make_unexpected(reader.error());
    return reader->readValues(frame);
}

class EveryFile : public testing::Test {
protected:
    void compareAll(const fs::path& root) {
        ASSERT_TRUE(runPython("decode_every_file.py", {m_folder.path().string(), root.string()},
                              m_folder.path() / "log"))
            << contentOf(m_folder.path() / "log");
        for (const Expected& expected : readManifest(m_folder.path() / "manifest.txt"))
            compare(expected);
    }

    std::set<std::string> refused;
    int identical = 0, lossy = 0, coloured = 0, withoutPixels = 0;

private:
    void compare(const Expected& expected) {
        const std::string name = expected.path.filename();
        SCOPED_TRACE(expected.path.string());
        const auto scanned = scanFile(expected.path);
        if (expected.kind == "none") return compareRefusal(scanned, name);
        for (const Expected::Frame& frame : expected.chosen) {
            const auto samples =
                scanned ? samplesOf(*scanned, frame.frame)
                        : core::Result<std::vector<std::int32_t>>(tl::make_unexpected(scanned.error()));
            if (!samples) return noteRefusal(samples.error(), name);
            EXPECT_EQ(scanned->format->frames, expected.frames);
            const std::string stem = std::to_string(expected.number) + "-" + std::to_string(frame.frame);
            if (expected.kind == "lossless") {
                EXPECT_EQ(crcOf(*samples), frame.crc) << "frame " << frame.frame;
                ++identical;
            } else {
                const int levels = difference(*samples, m_folder.path() / (stem + ".raw"));
                EXPECT_TRUE(levels >= 0 && levels <= kLossyLevels)
                    << "frame " << frame.frame << ": " << levels;
                ++lossy;
            }
            if (frame.rgb) compareColours(*scanned, frame.frame, stem + ".rgb", expected.kind);
        }
    }

    void compareColours(const ScannedFile& scanned, int frame, const std::string& file,
                        const std::string& kind) {
        const core::RgbFrame rgb = valueOf(valueOf(ColourReader::open(scanned)).readRgb(frame));
        const int levels = difference(rgb.samples, m_folder.path() / file);
        // A level of chroma moves blue by 1.772 levels.
        const int allowed = kind == "lossless" ? kColourLevels : kColourLevels + 2 * kLossyLevels;
        EXPECT_TRUE(levels >= 0 && levels <= allowed) << "frame " << frame << " in colour: " << levels;
        ++coloured;
    }

    /// What the others cannot decode either: read or refused, but never without a word.
    void compareRefusal(const core::Result<ScannedFile>& scanned, const std::string& name) {
        const bool pixels = scanned && scanned->pixels;
        if (scanned && !pixels) {
            ++withoutPixels;
            EXPECT_THAT(errorOf(FrameReader::open(*scanned)).message, HasSubstr("holds no image"));
            return;
        }
        const auto samples =
            scanned ? samplesOf(*scanned, 0)
                    : core::Result<std::vector<std::int32_t>>(tl::make_unexpected(scanned.error()));
        if (samples) return;
        if (samples.error().code == core::ErrorCode::NotDicom) {
            ++withoutPixels;
            EXPECT_THAT(samples.error().message, HasSubstr("not DICOM"));
            return;
        }
        noteRefusal(samples.error(), name);
    }

    void noteRefusal(const core::Error& error, const std::string& name) {
        const auto known = kRefused.find(name);
        if (known == kRefused.end())
            ADD_FAILURE() << "refused: " << error.message;
        else
            EXPECT_THAT(error.message, HasSubstr(known->second));
        refused.insert(name);
    }

    TempFolder m_folder;
};

} // namespace

TEST_F(EveryFile, OfThePydicomPackageIsReadAlikeOrRefusedInWords) {
    compareAll(pydicomData());
    EXPECT_EQ(refused, (std::set<std::string>{"DICOMDIR-nooffset", "JPEG2000-embedded-sequence-delimiter.dcm",
                                              "MR_small_padded.dcm", "MR_truncated.dcm", "badVR.dcm",
                                              "meta_missing_tsyntax.dcm", "rtplan_truncated.dcm"}));
    EXPECT_GT(identical, 60);
    EXPECT_GT(lossy, 15);
    EXPECT_GT(coloured, 20);
    RecordProperty("identical", identical);
    RecordProperty("lossy", lossy);
    RecordProperty("coloured", coloured);
}

TEST_F(EveryFile, OfTheRealDataIsReadAlikeOrRefusedInWords) {
    const fs::path root = realDataFolder();
    if (!fs::is_directory(root))
        GTEST_SKIP() << "no real data: " << root << " does not exist; set OSTIUM_GAUGE_REAL_DATA to try them";
    compareAll(root);
    EXPECT_EQ(refused, (std::set<std::string>{"MR_truncated.dcm", "badVR.dcm", "JLSL_08_07_0_1F.dcm",
                                              "emri_small_jpeg_2k_lossless_too_short.dcm"}));
    EXPECT_GT(identical, 200);
    EXPECT_GT(lossy, 20);
    RecordProperty("identical", identical);
    RecordProperty("lossy", lossy);
    RecordProperty("coloured", coloured);
}
