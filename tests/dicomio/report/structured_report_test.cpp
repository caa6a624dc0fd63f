// The written report, judged by programs of others: dciodvfy (dicom3tools), dsrdump and dsr2xml (DCMTK),
// pydicom.
#include "dicomio/report/structured_report.h"

#include "dicomio/report/report_codes.h"
#include "tests/dicomio/report/outside_tools.h"
#include "tests/dicomio/report/report_fixture.h"
#include "tests/dicomio/support/dicom_bytes.h"
#include "tests/dicomio/support/result_of.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <gmock/gmock.h>
#include <map>
#include <regex>
#include <set>

using namespace gauge;
using namespace gauge::dicomio;
using namespace gauge::test;
using testing::HasSubstr;
using testing::IsEmpty;
namespace fs = std::filesystem;

namespace {

class StructuredReport : public testing::Test {
protected:
    ReportContent content() const {
        const auto record = fullRecord();
        const auto made = reportFromRecord(record, sourcesOf(record));
        return valueOf(made);
    }
    fs::path written(const ReportContent& content, const std::string& name = "report.dcm") const {
        const fs::path file = m_folder.path() / name;
        const auto made = writeStructuredReport(content, file);
        EXPECT_EQ(valueOf(made).file, file);
        return file;
    }
    void expectNoComplaint(const fs::path& file) const {
        EXPECT_THAT(errorsOfDciodvfy(file, m_folder.path()), IsEmpty());
        for (const std::string tool : {"dsrdump", "dsr2xml"}) {
            const ToolRun run = runTool(tool + " " + quoted(file), m_folder.path());
            EXPECT_EQ(run.code, 0) << tool;
            EXPECT_THAT(run.err, IsEmpty()) << tool;
            EXPECT_THAT(run.out, HasSubstr("Measurement Group")) << tool;
        }
    }
    std::string errorOfWriting(const ReportContent& content) const {
        const fs::path file = m_folder.path() / "refused.dcm";
        const auto error = errorOf(writeStructuredReport(content, file));
        EXPECT_EQ(error.code, core::ErrorCode::InvalidArgument) << error.message;
        EXPECT_FALSE(fs::exists(file));
        EXPECT_THAT(error.message, HasSubstr("Cannot write the structured report: "));
        return error.message;
    }
    TempFolder m_folder;
};

nlohmann::json sourcesJson(const ReportContent& content, const ReportSources& sources) {
    nlohmann::json out{{"frame_of_reference_uid", kFrameOfReference},
                       {"used_images", nlohmann::json::array()},
                       {"contours", nlohmann::json::array()}};
    for (const SourceImage& image : content.images)
        out["used_images"].push_back(
            {image.sopInstanceUid, image.sopClassUid, image.seriesUid, image.studyUid});
    for (const FoundContour& contour : sources.contours) {
        nlohmann::json points = nlohmann::json::array();
        for (const auto& p : contour.points)
            points.push_back({p.mm.x(), p.mm.y(), p.mm.z()});
        out["contours"].push_back({{"id", contour.id}, {"points", points}});
    }
    return out;
}

} // namespace

TEST_F(StructuredReport, OfAFullCaseSatisfiesDciodvfyDsrdumpAndDsr2xml) {
    expectNoComplaint(written(content()));
}

TEST_F(StructuredReport, HasTheTemplatesRowsAndEqualsTheRecordAsPydicomReadsIt) {
    const auto record = fullRecord();
    const auto sources = sourcesOf(record);
    const auto made = reportFromRecord(record, sources);
    const fs::path file = written(valueOf(made));
    std::ofstream(m_folder.path() / "case.json") << core::toJson(record).dump();
    std::ofstream(m_folder.path() / "sources.json") << sourcesJson(*made, sources).dump();
    const ToolRun run = runScript("check_report.py",
                                  quoted(file) + " " + quoted(m_folder.path() / "case.json") + " " +
                                      quoted(m_folder.path() / "sources.json"),
                                  m_folder.path());
    EXPECT_EQ(run.code, 0) << run.out << run.err;
}

TEST_F(StructuredReport, WithoutRegionsInThePatientIsAComprehensiveReport) {
    ReportContent flat = content();
    for (MeasurementGroup& group : flat.groups)
        group.patientRegions.clear();
    const auto made = writeStructuredReport(flat, m_folder.path() / "flat.dcm");
    EXPECT_EQ(valueOf(made).sopClassUid, "1.2.840.10008.5.1.4.1.1.88.33");
    expectNoComplaint(made->file);
    EXPECT_EQ(valueOf(writeStructuredReport(content(), m_folder.path() / "deep.dcm")).sopClassUid,
              "1.2.840.10008.5.1.4.1.1.88.34");
}

TEST_F(StructuredReport, OfAnUnsignedDecisionIsPartialAndUnverified) {
    auto record = fullRecord();
    record.decision->content.signedBy.clear();
    const auto made = reportFromRecord(record, sourcesOf(record));
    EXPECT_FALSE(valueOf(made).signature);
    EXPECT_THAT(made->warnings, testing::Contains(HasSubstr("not signed")));
    const fs::path file = written(*made);
    expectNoComplaint(file);
    EXPECT_THAT(runTool("dsrdump " + quoted(file), m_folder.path()).out, HasSubstr("UNVERIFIED"));
}

TEST_F(StructuredReport, OfACaseWithoutImagesOrPersonsIsStillValid) {
    auto record = fullRecord();
    record.decision.reset();
    record.patient.reset();
    auto sources = sourcesOf(record);
    sources.images.clear();
    for (auto& value : record.values) {
        auto anonymous = *value.provenance;
        anonymous.author.clear();
        value.provenance = std::make_shared<const core::Provenance>(anonymous);
    }
    const auto made = reportFromRecord(record, sources);
    EXPECT_THAT(valueOf(made).images, IsEmpty());
    EXPECT_THAT(made->warnings, testing::Contains(HasSubstr("told without its place")));
    expectNoComplaint(written(*made));
}

TEST_F(StructuredReport, DeclaresNoMoreCharactersThanItNeeds) {
    const auto setOf = [&](const ReportContent& content, const std::string& name) {
        const ToolRun run =
            runTool("dcmdump +P 0008,0005 " + quoted(written(content, name)), m_folder.path());
        return run.out;
    };
    ReportContent plain = content();
    plain.patient.name = "Nobody^Invented";
    plain.warnings.clear();
    EXPECT_THAT(setOf(plain, "ascii.dcm"), IsEmpty());
    EXPECT_THAT(setOf(content(), "latin.dcm"), HasSubstr("ISO_IR 100"));
    ReportContent wide = content();
    wide.patient.name = "Örnek^Şükrü";
    EXPECT_THAT(setOf(wide, "wide.dcm"), HasSubstr("ISO_IR 192"));
    EXPECT_THAT(errorsOfDciodvfy(m_folder.path() / "wide.dcm", m_folder.path()), IsEmpty());
}

TEST_F(StructuredReport, SaysWhatIsMissingOrContradictsItself) {
    const auto refused = [&](auto change) {
        ReportContent broken = content();
        change(broken);
        return errorOfWriting(broken);
    };
    EXPECT_THAT(refused([](ReportContent& c) { c.study.studyUid.clear(); }),
                HasSubstr("its study has no UID"));
    EXPECT_THAT(refused([](ReportContent& c) { c.title = {}; }), HasSubstr("it has no title"));
    EXPECT_THAT(refused([](ReportContent& c) { c.time = "yesterday"; }),
                HasSubstr("\"yesterday\" is no ISO 8601 date and time"));
    EXPECT_THAT(refused([](ReportContent& c) { c.procedures.clear(); }), HasSubstr("no procedure"));
    EXPECT_THAT(refused([](ReportContent& c) { c.groups.clear(); }),
                HasSubstr("holds no measurement. Measure something first"));
    EXPECT_THAT(refused([](ReportContent& c) { c.images.pop_back(); }),
                HasSubstr("is not among the report's images"));
    EXPECT_THAT(refused([](ReportContent& c) { c.images[0].seriesUid.clear(); }),
                HasSubstr("lacks its study, series or kind"));
    EXPECT_THAT(refused([](ReportContent& c) { c.groups[0].trackingUid.clear(); }),
                HasSubstr("lacks its tracking identifier or UID"));
    EXPECT_THAT(refused([](ReportContent& c) { c.groups[0].measurements[0].value = NAN; }),
                HasSubstr("Area, is no finite number"));
    EXPECT_THAT(refused([](ReportContent& c) { c.groups[0].measurements[0].unit = {}; }),
                HasSubstr("Area, has no unit"));
    EXPECT_THAT(refused([](ReportContent& c) { c.groups[0].measurements[0].name = {}; }),
                HasSubstr("without a code for what it is"));
    EXPECT_THAT(refused([](ReportContent& c) { c.groups[0].measurements[0].standardUncertainty = -1.0; }),
                HasSubstr("negative uncertainty"));
    EXPECT_THAT(refused([](ReportContent& c) { c.groups[0].patientRegions[0].points.resize(2); }),
                HasSubstr("too few or too many"));
    EXPECT_THAT(refused([](ReportContent& c) { c.groups[0].patientRegions[0].frameOfReferenceUid.clear(); }),
                HasSubstr("without frame of reference"));
    EXPECT_THAT(refused([](ReportContent& c) { c.groups[0].patientRegions[0].points[1].mm.x() = INFINITY; }),
                HasSubstr("coordinate that is no finite number"));
    EXPECT_THAT(refused([](ReportContent& c) { c.groups[0].images[0].frame = -1; }),
                HasSubstr("frames count from 0"));
    EXPECT_THAT(refused([](ReportContent& c) { c.signature->name.clear(); }),
                HasSubstr("Sign the decision again"));
}

TEST_F(StructuredReport, ThatCannotBeWrittenLeavesNothingBehind) {
    const fs::path folder = m_folder.path() / "absent";
    const auto error = errorOf(writeStructuredReport(content(), folder / "report.dcm"));
    EXPECT_EQ(error.code, core::ErrorCode::OutputUnwritable);
    EXPECT_THAT(error.message, HasSubstr("Choose another folder, or make room."));
    // A folder stands where the file should: the finished file cannot take its place, and is removed again.
    const fs::path taken = m_folder.path() / "taken";
    fs::create_directories(taken / "inside");
    EXPECT_EQ(errorOf(writeStructuredReport(content(), taken)).code, core::ErrorCode::OutputUnwritable);
    const auto left = std::distance(fs::directory_iterator(m_folder.path()), fs::directory_iterator());
    EXPECT_EQ(left, 1);
}

TEST(ReportFromRecord, NeedsAStudyAndATime) {
    const auto record = fullRecord();
    auto sources = sourcesOf(record);
    sources.time.clear();
    EXPECT_THAT(errorOf(reportFromRecord(record, sources)).message,
                HasSubstr("is no ISO 8601 date and time"));
    sources = sourcesOf(record);
    sources.study.studyUid.clear();
    EXPECT_THAT(errorOf(reportFromRecord(record, sources)).message,
                HasSubstr("the study that it becomes part of has no UID"));
}

TEST(ReportFromRecord, LeavesOutStaleAndUnmeasuredValuesAndSaysSo) {
    auto record = fullRecord();
    record.values[0].estimate.value = NAN;
    const auto made = reportFromRecord(record, sourcesOf(record));
    EXPECT_THAT(valueOf(made).warnings,
                testing::Contains(HasSubstr(
                    "1 value is left out: something that it was measured from has been changed since.")));
    EXPECT_THAT(made->warnings, testing::Contains(HasSubstr("1 value is left out: no number was measured.")));
    std::size_t numbers = 0;
    for (const auto& group : made->groups)
        for (const auto& m : group.measurements) {
            const auto colon = m.trackingId.find(':');
            numbers += std::any_of(record.values.begin(), record.values.end(), [&](const auto& v) {
                return v.group == m.trackingId.substr(0, colon) && v.id == m.trackingId.substr(colon + 1);
            });
        }
    EXPECT_EQ(numbers, record.values.size() - 2);
}

TEST(ReportFromRecord, TitleFollowsTheLatestStage) { // CID 12344
    core::CaseRecord record;
    const auto title = [&] { return valueOf(reportFromRecord(record, sourcesOf(record))).title.value; };
    EXPECT_EQ(title(), "126000");
    record.images = core::ImagesUsed{};
    EXPECT_EQ(title(), "131090");
    record.evidence["a"] = {{core::EvidenceKind::EchoCine,
                             "",
                             "",
                             core::Stage::AfterRelease,
                             "",
                             {},
                             core::BeatPhase::Unknown,
                             "",
                             ""},
                            1};
    EXPECT_EQ(title(), "131091");
    record.stasis["1"].content.stage = core::Stage::FollowUp;
    EXPECT_EQ(title(), "131092");
}

TEST(PrivateCodes, AreListedForDevelopersWithTheirMeaningAndFitACodeValue) {
    std::string listed = contentOf(fs::path(GAUGE_SOURCE_DIR) / "DEVELOPERS.md");
    std::replace(listed.begin(), listed.end(), '\n', ' ');
    const std::regex maker(R"re((?:own|words|put)\("([a-z0-9-]+)",\s*"([^"]+)")re");
    std::map<std::string, std::string> meanings;
    for (const auto& entry : fs::directory_iterator(fs::path(GAUGE_SOURCE_DIR) / "dicomio" / "report")) {
        const std::string source = contentOf(entry.path());
        for (std::sregex_iterator it(source.begin(), source.end(), maker), end; it != end; ++it) {
            const std::string code = (*it)[1], meaning = (*it)[2];
            EXPECT_LE(code.size(), 16u) << code;
            EXPECT_LE(meaning.size(), 64u) << meaning;
            EXPECT_EQ(meanings.emplace(code, meaning).first->second, meaning) << code << " has two meanings";
            EXPECT_NE(listed.find("`" + code + "` " + meaning), std::string::npos)
                << code << " is not in DEVELOPERS.md";
        }
    }
    EXPECT_GT(meanings.size(), 70u);
}

TEST(ConceptOf, NamesWhatDrawingsAndSectionsMeasure) {
    using codes::conceptOf;
    EXPECT_EQ(conceptOf("ostium/perimeter", "mm", {}).name.value, "131225");
    EXPECT_EQ(conceptOf("landing-1/longest-diameter", "mm", 12.0).name.value, "131222");
    EXPECT_EQ(conceptOf("landing-1/longest-diameter", "mm", 20.0).name.value,
              "131187009"); // too deep for the standard's zone
    EXPECT_EQ(conceptOf("landing-2/longest-diameter", "mm", {}).name.value, "131187009"); // depth not known
    EXPECT_EQ(conceptOf("depth/from-ostium-plane", "mm", {}).name.value, "131221");
    // PS3.16, CID 12333: from the leaflets, parallel to the septum; over the annulus is another quantity and ours.
    EXPECT_EQ(conceptOf("crossing/over-coaptation", "mm", {}).name.value, "131130");
    EXPECT_EQ(conceptOf("crossing/over-annulus", "mm", {}).name.scheme, codes::kPrivateScheme);
    EXPECT_EQ(conceptOf("crossing/arrival-angle", "deg", {}).site->value, "58095006");
    // A width in a view is no length of its plane; angles tell the plane that they show.
    EXPECT_EQ(conceptOf("landing-1/longest-width/width", "mm", 12.0).name.value, "projected-width");
    EXPECT_EQ(*conceptOf("view-1/ostium-width", "mm", {}).site, codes::kOstium);
    EXPECT_EQ(conceptOf("landing-1/least-width", "mm", 12.0).site->value, codes::kLandingZone.value);
    EXPECT_NE(conceptOf("landing-1/least-width", "mm", 12.0).name.value, "projected-width");
    EXPECT_EQ(conceptOf("landing-1/en-face/primary", "deg", {}).name.value, "112011");
    EXPECT_EQ(conceptOf("landing-1/en-face/primary", "deg", {}).site->value, codes::kLandingZone.value);
    EXPECT_EQ(conceptOf("longest-diameter", "mm", {}).name.value,
              "131187009"); // of a drawing that claims no site
    EXPECT_FALSE(conceptOf("longest-diameter", "mm", {}).site);
    EXPECT_EQ(conceptOf("velocity-time-integral", "cm", {}).name.value, "20354-7");
    EXPECT_EQ(conceptOf("mean-gradient", "mmHg", {}).name.value, "20256-4");
    EXPECT_EQ(conceptOf("heart-rate", "1/min", {}).name.value, "8867-4");
    EXPECT_EQ(conceptOf("something new", "mm2", {}).name.value, "42798000");
    EXPECT_EQ(conceptOf("something new", "furlong", {}).name.scheme, "99OSTIUM");
    EXPECT_EQ(codes::unitCode("furlong"), (Code{"{furlong}", "UCUM", ""}));
    EXPECT_EQ(codes::unitCode("1/min").value, "/min");
    EXPECT_EQ(codes::unitCode("a unit with blanks, of some length").value.size(), 16u);
}

TEST(DerivedUid, IsTheSameForTheSameTextsAndAnotherForOthers) {
    std::set<std::string> seen;
    for (int i = 0; i < 1000; ++i)
        seen.insert(derivedUid("a", std::to_string(i)));
    EXPECT_EQ(seen.size(), 1000u);
    EXPECT_EQ(derivedUid("a", "bc"), derivedUid("a", "bc"));
    EXPECT_NE(derivedUid("a", "bc"), derivedUid("ab", "c"));
    for (const auto& uid : {derivedUid("a", "b"), newUid()}) {
        EXPECT_EQ(uid.rfind("2.25.", 0), 0u);
        EXPECT_LE(uid.size(), 44u); // PS3.5 B.2: 2.25. and at most 39 digits
        EXPECT_NE(uid[5], '0');
    }
    EXPECT_NE(newUid(), newUid());
}
