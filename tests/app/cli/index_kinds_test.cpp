// Ultrasound, X-ray and the course of a patient in the index document and its listing.
#include "app/cli/index_report.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

using namespace gauge;
using namespace gauge::app;
using namespace gauge::test;
using testing::HasSubstr;
using Json = nlohmann::json;

namespace {

DatasetBytes cine(std::string_view sopClass, const std::string& modality, const std::string& series,
                  int frames) {
    CtSlice slice;
    slice.seriesUid = series;
    slice.sopUid = series + ".1";
    slice.rows = 40;
    slice.columns = 60;
    DatasetBytes d = slice.dataset();
    for (const TagNumber tag : {0x00200032u, 0x00200037u, 0x00280030u, 0x00281052u, 0x00281053u})
        d.remove(tag);
    d.text(0x00080016, "UI", sopClass)
        .text(0x00080060, "CS", modality)
        .text(0x0008103E, "LO", modality + " run");
    d.text(0x00080022, "DA", "20260305").text(0x00080032, "TM", "101500");
    if (frames > 1) {
        std::string pointer("\x18\x00\x63\x10", 4);
        d.text(0x00280008, "IS", std::to_string(frames))
            .text(0x00181063, "DS", "40")
            .bytes(0x00280009, "AT", pointer);
    }
    return d.words(0x7FE00010, "OW",
                   std::vector<std::uint16_t>(static_cast<std::size_t>(40 * 60 * frames), 7));
}

DatasetBytes region(std::uint16_t format, std::uint16_t dataType, std::uint16_t units, std::uint32_t y0,
                    std::uint32_t y1, double delta) {
    DatasetBytes item;
    item.us(0x00186012, format)
        .us(0x00186014, dataType)
        .ul(0x00186016, 0)
        .ul(0x00186018, 5)
        .ul(0x0018601A, y0);
    item.ul(0x0018601C, 50).ul(0x0018601E, y1);
    item.bytes(0x00186020, "SL", littleU32(10)).bytes(0x00186022, "SL", littleU32(3));
    item.us(0x00186024, units).us(0x00186026, units).fd(0x00186028, 0.0).fd(0x0018602A, 0.0);
    return item.fd(0x0018602C, delta).fd(0x0018602E, 1.03 * delta);
}

DatasetBytes echo(const std::string& series, int frames) {
    DatasetBytes plane, d = cine("1.2.840.10008.5.1.4.1.1.3.1", "US", series, frames);
    plane.text(0x00080100, "SH", "131101").text(0x00080102, "SH", "DCM").text(0x00080104, "LO", "45");
    return d.sequence(0x00186011, {region(1, 1, 3, 0, 29, 0.02), region(4, 0x0A, 4, 30, 39, 0.01)})
        .sequence(0x00540220, {plane});
}

DatasetBytes run(const std::string& series, int frames) {
    DatasetBytes d = cine("1.2.840.10008.5.1.4.1.1.12.1", "XA", series, frames);
    d.text(0x00181510, "DS", "-32").text(0x00181511, "DS", "2.5").text(0x00181164, "DS", "0.3\\0.3");
    return d.text(0x00181110, "DS", "1200").text(0x00181111, "DS", "800");
}

dicomio::SeriesIndex listed(const TempFolder& folder) {
    return valueOf(dicomio::listFolder(folder.path()));
}

Json onlySeries(const TempFolder& folder) {
    const Json json = Json::parse(indexJson(listed(folder)));
    if (json["series"].size() != 1) throw std::runtime_error("one series was expected: " + json.dump(1));
    return json["series"][0];
}

} // namespace

TEST(IndexJson, TellsRegionsScaleAngleAndTimesOfAnEcho) {
    const TempFolder folder;
    folder.write("echo", echo("1.1", 3));
    const Json series = onlySeries(folder);
    EXPECT_EQ(series["status"], "ok") << series["messages"];
    EXPECT_EQ(series["kind"], "ultrasound");
    ASSERT_EQ(series["regions"].size(), 2u);
    const Json& tissue = series["regions"][0];
    EXPECT_EQ(tissue["kind"], "tissue");
    EXPECT_EQ(tissue["min_px"], Json({5, 0}));
    EXPECT_EQ(tissue["max_px"], Json({50, 29}));
    EXPECT_EQ(tissue["units"], Json({"cm", "cm"}));
    EXPECT_EQ(tissue["delta"], Json({0.02, 1.03 * 0.02}));
    EXPECT_DOUBLE_EQ(tissue["mm_per_pixel"][0].get<double>(), 0.2);
    EXPECT_DOUBLE_EQ(tissue["mm_per_pixel"][1].get<double>(), 0.206);
    EXPECT_EQ(tissue["reference_px"], Json({15.0, 3.0})); // in pixels of the whole picture
    EXPECT_EQ(tissue["image"], 0);
    EXPECT_EQ(series["regions"][1]["kind"], "ecg");
    EXPECT_TRUE(series["regions"][1]["mm_per_pixel"].is_null());
    EXPECT_EQ(series["scale"]["source"], "ultrasound-region");
    EXPECT_EQ(series["scale"]["mm_per_pixel"], tissue["mm_per_pixel"]);
    EXPECT_GT(series["scale"]["standard_uncertainty_percent"].get<double>(), 0.0);
    EXPECT_EQ(series["angles_deg"], Json({45.0}));
    EXPECT_EQ(series["frame_times_ms"], Json({0.0, 40.0, 80.0}));
    EXPECT_TRUE(series["positioner_deg"].is_null());
    EXPECT_EQ(series["acquired"], "2026-03-05T10:15:00");
    EXPECT_TRUE(series["proposed_stage"].is_null());
    EXPECT_EQ(series["during_procedure"], true);
    EXPECT_EQ(series["patient_id"], "P1");
    EXPECT_EQ(series["study_uid"], "1.2.3");
    EXPECT_THAT(
        indexListing(listed(folder)),
        HasSubstr(
            "3 frames in 0.08 s; probe at 45 deg; 0.2000 x 0.2060 mm a pixel (ultrasound-region); regions: "
            "tissue, ecg (no lengths)"));
}

TEST(IndexJson, TellsNoScaleForPicturesThatDiffer) {
    const TempFolder folder;
    DatasetBytes deeper = echo("1.1", 2);
    deeper.text(0x00080018, "UI", "1.1.2").sequence(0x00186011, {region(1, 1, 3, 0, 29, 0.03)});
    folder.write("a", echo("1.1", 3));
    folder.write("b", deeper);
    const Json series = onlySeries(folder);
    EXPECT_TRUE(series["scale"].is_null());
    ASSERT_EQ(series["objects"].size(), 2u);
    EXPECT_DOUBLE_EQ(series["objects"][0]["scale"]["mm_per_pixel"][0].get<double>(), 0.2);
    EXPECT_DOUBLE_EQ(series["objects"][1]["scale"]["mm_per_pixel"][0].get<double>(), 0.3);
    EXPECT_EQ(series["objects"][1]["image"], 3);
    EXPECT_EQ(series["regions"][2]["image"], 3);
    EXPECT_EQ(series["frame_times_ms"], Json({0.0, 40.0, 80.0, 0.0, 40.0}));
}

TEST(IndexJson, SaysThatAnEchoWithoutScaleMustBeCalibrated) {
    const TempFolder folder;
    folder.write("echo", cine("1.2.840.10008.5.1.4.1.1.6.1", "US", "1.1", 1));
    const Json series = onlySeries(folder);
    EXPECT_EQ(series["status"], "notice");
    EXPECT_EQ(series["messages"][0]["code"], "no-length-scale");
    EXPECT_THAT(
        series["messages"][0]["text"].get<std::string>(),
        HasSubstr(
            "It must be calibrated on a scale that is marked in the picture before anything is measured"));
    for (const char* key : {"regions", "scale", "angles_deg", "frame_times_ms", "positioner_deg"})
        EXPECT_TRUE(series[key].is_null()) << key;
    EXPECT_THAT(indexListing(listed(folder)), HasSubstr("a still; no scale: calibrate before measuring"));
}

TEST(IndexJson, AsksForNoScaleOfASpectralTrace) {
    const TempFolder folder;
    DatasetBytes trace = region(3, 4, 4, 0, 29, 0.01),
                 d = cine("1.2.840.10008.5.1.4.1.1.6.1", "US", "1.1", 1);
    trace.us(0x00186026, 7).fd(0x0018602E, -2.0); // seconds along, cm/s upwards
    folder.write("trace", d.sequence(0x00186011, {trace}));
    const Json series = onlySeries(folder);
    EXPECT_EQ(series["regions"][0]["kind"], "spectral");
    EXPECT_EQ(series["regions"][0]["units"], Json({"s", "cm/s"}));
    EXPECT_TRUE(series["scale"].is_null());
    EXPECT_THAT(series["messages"].dump(), testing::Not(HasSubstr("no-length-scale")));
    EXPECT_THAT(indexListing(listed(folder)),
                HasSubstr("a still; velocities and times, no lengths; regions: spectral"));
}

TEST(IndexJson, TellsAnglesAndScaleOfARun) {
    const TempFolder folder;
    folder.write("run", run("1.1", 4));
    const Json series = onlySeries(folder);
    EXPECT_EQ(series["positioner_deg"], Json({-32.0, 2.5}));
    EXPECT_FALSE(series.contains("positioner_end_deg"));
    EXPECT_EQ(series["scale"]["source"], "isocentre");
    EXPECT_NEAR(series["scale"]["mm_per_pixel"][0].get<double>(), 0.3 * 800 / 1200,
                1e-12); // ImagerPixelSpacing SOD/SID
    EXPECT_GT(series["scale"]["standard_uncertainty_percent"].get<double>(), 0.0);
    EXPECT_TRUE(series["regions"].is_null());
    EXPECT_EQ(series["frame_times_ms"].size(), 4u);
    EXPECT_THAT(indexListing(listed(folder)), HasSubstr("4 frames in 0.12 s; C-arm RAO 32, CRA 3"));
}

TEST(IndexJson, TellsWhereAMovingArmEnds) {
    const TempFolder folder;
    DatasetBytes d = run("1.1", 3);
    folder.write("run", d.text(0x00181520, "DS", "0\\0.4\\0.4").text(0x00181521, "DS", "0\\0\\0"));
    const Json series = onlySeries(folder);
    EXPECT_EQ(series["positioner_deg"], Json({-32.0, 2.5}));
    ASSERT_TRUE(series.contains("positioner_end_deg")) << series.dump(1);
    EXPECT_DOUBLE_EQ(series["positioner_end_deg"][0].get<double>(), -31.2);
    EXPECT_EQ(series["positioner_end_deg"][1], 2.5);
}

TEST(IndexJson, SaysThatARunWithoutScaleMustBeCalibrated) {
    const TempFolder folder;
    DatasetBytes d = run("1.1", 2);
    folder.write("run", d.remove(0x00181111)); // no distance to the isocentre
    const Json series = onlySeries(folder);
    EXPECT_EQ(series["status"], "notice");
    EXPECT_TRUE(series["scale"].is_null());
    EXPECT_EQ(series["messages"].back()["code"], "no-length-scale");
    EXPECT_THAT(series["messages"].back()["text"].get<std::string>(),
                HasSubstr("on a catheter of known diameter"));
}

TEST(IndexJson, ShowsACtWithItsScaleAndProposedStage) {
    const TempFolder folder;
    for (int k = 0; k < 3; ++k) {
        DatasetBytes d = ctStack(3, 1.0)[static_cast<std::size_t>(k)].dataset();
        folder.write(std::to_string(k), d.text(0x00080022, "DA", "20260301"));
    }
    folder.write("run", run("1.1", 2));
    const Json json = Json::parse(indexJson(listed(folder)));
    const Json& ct = json["series"][0];
    EXPECT_EQ(ct["acquired"], "2026-03-01");
    EXPECT_EQ(ct["proposed_stage"], "before-procedure");
    EXPECT_EQ(ct["scale"]["source"], "pixel-spacing");
    EXPECT_TRUE(ct["regions"].is_null());
    EXPECT_TRUE(ct["objects"].is_null());
    EXPECT_EQ(json["notices"], Json::array());
    EXPECT_THAT(
        indexListing(listed(folder)),
        HasSubstr("stage:   perhaps before-procedure (taken on 2026-03-01, before the day of the procedure"));
}

TEST(IndexJson, CallsScoutsSetAsideAndNoError) {
    const TempFolder folder;
    writeStack(folder, ctStack(3, 1.0));
    DatasetBytes scout = CtSlice{}.dataset();
    folder.write("scout",
                 scout.text(0x00080008, "CS", "ORIGINAL\\PRIMARY\\LOCALIZER").text(0x0020000E, "UI", "1.9"));
    const dicomio::SeriesIndex index = listed(folder);
    EXPECT_EQ(Json::parse(indexJson(index))["series"][1]["status"], "set-aside");
    EXPECT_EQ(whyUnusable(index, "folder"), "");
}
