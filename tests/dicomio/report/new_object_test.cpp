// Documents, key images and surfaces, judged by dciodvfy and pydicom.
#include "dicomio/report/new_object.h"

#include "tests/dicomio/report/outside_tools.h"
#include "tests/dicomio/report/report_fixture.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <fstream>
#include <gmock/gmock.h>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::HasSubstr;
using testing::IsEmpty;

namespace {

ObjectContext context() {
    ObjectContext made;
    made.patient = {"Beispiel^Änne", "INV-0001", {}, "19600229", "F"};
    made.study.studyUid = kStudy;
    made.time = "2031-02-04T12:05:06+01:00";
    made.sources = {{kStudy, "2.25.6", "1.2.840.10008.5.1.4.1.1.2", "2.25.7", "CT"},
                    {kStudy, "2.25.6", "1.2.840.10008.5.1.4.1.1.2", "2.25.8", "CT"}};
    return made;
}

std::vector<std::uint8_t> pdf() {
    const std::string text = "%PDF-1.4\n% an odd number of bytes\n%%EOF";
    return {text.begin(), text.end()};
}

RgbPicture picture() {
    RgbPicture made{7, 5, {}, "landing zone"};
    for (int row = 0; row < 5; ++row)
        for (int column = 0; column < 7; ++column)
            for (const int sample : {row * 40, column * 30, row * column})
                made.bytes.push_back(static_cast<std::uint8_t>(sample));
    return made;
}

/// A tetrahedron with three legs of 1, 2 and 3 mm along the axes.
TriangleMesh tetrahedron() {
    TriangleMesh mesh;
    for (const Eigen::Vector3d& p : {Eigen::Vector3d(0, 0, 0), Eigen::Vector3d(1, 0, 0),
                                     Eigen::Vector3d(0, 2, 0), Eigen::Vector3d(0, 0, 3)})
        mesh.corners.push_back({p});
    mesh.triangles = {{0, 2, 1}, {0, 1, 3}, {0, 3, 2}, {1, 2, 3}};
    return mesh;
}

} // namespace

TEST(NewObjects, SatisfyDciodvfyAndEqualTheirSources) {
    const TempFolder folder;
    const auto at = [&](const char* name) { return folder.path() / name; };
    const auto bytes = pdf();
    std::ofstream(at("source.pdf"), std::ios::binary)
        .write(reinterpret_cast<const char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
    valueOf(writeEncapsulatedPdf(context(), bytes, "Größenbericht", at("pdf.dcm")));
    valueOf(writeKeyImage(context(), picture(), at("image.dcm")));
    valueOf(writeEncapsulatedStl(context(), tetrahedron(), kFrameOfReference, "Appendage", at("stl.dcm")));
    ASSERT_TRUE(writeStl(tetrahedron(), at("plain.stl")));
    for (const char* name : {"pdf.dcm", "image.dcm", "stl.dcm"})
        EXPECT_THAT(errorsOfDciodvfy(at(name), folder.path()), IsEmpty()) << name;
    const ToolRun run = runScript("check_objects.py", quoted(folder.path()), folder.path());
    EXPECT_EQ(run.code, 0) << run.out << run.err;
}

TEST(NewObjects, KeyImagesMayShareASeries) {
    const TempFolder folder;
    ObjectContext shared = context();
    const auto first = writeKeyImage(shared, picture(), folder.path() / "1.dcm");
    shared.seriesUid = valueOf(first).seriesUid;
    shared.instanceNumber = 2;
    const auto second = writeKeyImage(shared, picture(), folder.path() / "2.dcm");
    EXPECT_EQ(valueOf(second).seriesUid, first->seriesUid);
    EXPECT_NE(second->sopInstanceUid, first->sopInstanceUid);
}

TEST(NewObjects, SayWhatIsWrong) {
    const TempFolder folder;
    const auto file = folder.path() / "x.dcm";
    const auto message = [](const auto& result, core::ErrorCode code = core::ErrorCode::InvalidArgument) {
        const auto error = errorOf(result);
        EXPECT_EQ(error.code, code);
        return error.message;
    };
    const std::vector<std::uint8_t> text{'h', 'e', 'l', 'l', 'o', '!'};
    EXPECT_THAT(message(writeEncapsulatedPdf(context(), text, "t", file)),
                HasSubstr("do not begin with \"%PDF-\""));
    ObjectContext homeless = context();
    homeless.study.studyUid.clear();
    EXPECT_THAT(message(writeEncapsulatedPdf(homeless, pdf(), "t", file)),
                HasSubstr("Cannot write the Printed report: its study has no UID"));
    ObjectContext timeless = context();
    timeless.time = "noon";
    EXPECT_THAT(message(writeKeyImage(timeless, picture(), file)),
                HasSubstr("\"noon\" is no ISO 8601 date and time"));
    RgbPicture torn = picture();
    torn.bytes.pop_back();
    EXPECT_THAT(message(writeKeyImage(context(), torn, file)),
                HasSubstr("it is 7 x 5 pixels with 104 bytes; three bytes a pixel are needed"));
    EXPECT_THAT(message(writeEncapsulatedStl(context(), tetrahedron(), "", "t", file)),
                HasSubstr("it has no frame of reference"));
    TriangleMesh mesh = tetrahedron();
    mesh.triangles[0][0] = 4;
    EXPECT_THAT(message(stlBytes(mesh)), HasSubstr("a triangle names corner 4 of 4"));
    mesh = tetrahedron();
    mesh.corners[2].mm.y() = NAN;
    EXPECT_THAT(message(stlBytes(mesh)), HasSubstr("corner 2 is no finite point"));
    EXPECT_THAT(message(stlBytes({})), HasSubstr("it has no triangle"));
    EXPECT_THAT(message(writeStl(tetrahedron(), folder.path() / "absent" / "x.stl"),
                        core::ErrorCode::OutputUnwritable),
                HasSubstr("Cannot write "));
    EXPECT_TRUE(std::filesystem::is_empty(folder.path()));
}
