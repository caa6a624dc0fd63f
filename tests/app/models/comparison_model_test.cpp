#include "app/models/comparison_model.h"

#include "app/commands/course_commands.h"
#include "app/commands/landing_commands.h"
#include "app/format/decision_words.h"
#include "app/models/view_state.h"
#include "core/record/edit.h"
#include "core/record/measurement_values.h"
#include "tests/app/support/decision_case.h"
#include "tests/app/support/synthetic_case.h"
#include "tests/app/support/synthetic_session.h"

#include <QAbstractItemModelTester>
#include <gtest/gtest.h>
#include <set>

namespace gauge {
namespace {

using app::ComparisonModel;

/// The synthetic CT measured in a session, with the course beside it.
class ComparisonModelTest : public testing::Test {
protected:
    ComparisonModelTest() : answers(session) {
        answers.setEffort({512}, {4, 64});
        fixture::openAndMeasure(session);
        fixture::addCourse(session.document());
        fixture::addChart(session.document());
        fixture::waitUntil([&] { return !session.isMeasuring(); });
        answers.finishNow();
        model.setAnswers(answers);
    }

    QModelIndex cell(const std::string& group, const std::string& id) const {
        const QModelIndex found = model.find(group, id);
        EXPECT_TRUE(found.isValid()) << group << " " << id;
        return found;
    }
    std::vector<QModelIndex> cells() const {
        std::vector<QModelIndex> all;
        for (int row = 0; row < model.rowCount(); ++row)
            for (int column = 1; column < model.columnCount(); ++column)
                if (model.placeAt(model.index(row, column))) all.push_back(model.index(row, column));
        return all;
    }
    std::set<std::string> staleCells() {
        model.setAnswers(answers);
        std::set<std::string> stale;
        for (const QModelIndex& at : cells())
            if (at.data(ComparisonModel::IsStaleRole).toBool())
                stale.insert(model.valueAt(at)->group + " " + model.valueAt(at)->id);
        return stale;
    }

    app::Session session;
    app::Answers answers;
    ComparisonModel model;
};

TEST_F(ComparisonModelTest, KeepsTheRulesOfAModel) {
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setAnswers(answers);
    session.document().clear();
    answers.finishNow();
    model.setAnswers(answers);
    EXPECT_EQ(model.columnCount(), 1);
}

TEST_F(ComparisonModelTest, HasOneColumnForEachEvidenceState) {
    // CT, 2D echo before and after the repair, fluoroscopy after it, the typed 3D echo.
    ASSERT_EQ(model.columnCount(), 6);
    QStringList titles;
    for (int column = 1; column < model.columnCount(); ++column)
        titles << model.headerData(column, Qt::Horizontal, Qt::ToolTipRole).toString();
    EXPECT_EQ(app::plainSpaces(titles.join(" | ")).toStdString(),
              "CT, before the procedure, 17 mmHg, end-systole | 2D echo, before the repair, 19 mmHg, end-systole | "
              "2D echo, after the repair, 9 mmHg, end-systole | 3D echo, typed in, after the repair, 9 mmHg, phase not stated | "
              "fluoroscopy, after the repair, 9 mmHg, phase not stated");
}

TEST_F(ComparisonModelTest, EveryNumberIsTheRecords) {
    int compared = 0;
    for (const core::RecordedValue& value : session.record().values) {
        const QModelIndex at = model.find(value.group, value.id);
        if (!at.isValid()) continue;
        ++compared;
        EXPECT_EQ(at.data(ComparisonModel::NumberRole).toDouble(), value.estimate.value) << value.id;
        const QString shown = at.data().toString();
        EXPECT_TRUE(shown == app::estimate(value.estimate, app::Unit::Millimetre) || value.unit != "mm")
            << value.id << " " << shown.toStdString();
    }
    // All of CT but what has no row, and all of the pictures.
    EXPECT_EQ(compared, 38);
}

TEST_F(ComparisonModelTest, CarriesEachReadingToTheDecisionPressure) {
    const QModelIndex before = cell("echo/start", "landing/longest-diameter");
    const auto& readings = answers.readings();
    bool found = false;
    for (std::size_t i = 0; i < readings.origins.size(); ++i)
        if (readings.origins[i].group == "echo/start" && readings.origins[i].values.front() == "landing/longest-diameter") {
            found = true;
            ASSERT_TRUE(answers.carried()[i]);
            EXPECT_EQ(before.data(ComparisonModel::CarriedRole).toString(), app::carriedWords(*answers.carried()[i]));
            EXPECT_LT(answers.carried()[i]->changeMm, 0.0); // read at 19 mmHg, carried to 12
        }
    EXPECT_TRUE(found);
    EXPECT_TRUE(before.data(ComparisonModel::CarriedRole).toString().endsWith(app::pressureWords(12.0)));
    // An area is no reading of the model.
    EXPECT_EQ(cell("ct", "landing-1/area").data(ComparisonModel::CarriedRole).toString(), QString());
}

TEST_F(ComparisonModelTest, FlagsADifferenceOutsideThePublishedLimitsInWords) {
    // CT longest at the landing zone from the formula: 24 (1 - 10/36)^0.45 = 20.7 mm; echo after the repair 16.1 mm:
    // 4.6 mm less. Published for 2D echo: -2.3 +/- 1.96 * 2.1, so from -6.4 to 1.8 mm: within.
    const QModelIndex after = cell("echo/clipped", "landing/longest-diameter");
    EXPECT_EQ(app::plainSpaces(after.data(ComparisonModel::DifferenceRole).toString()).toStdString(),
              "−4.6 mm from CT, within the published limits");
    EXPECT_FALSE(after.data(ComparisonModel::IsOutsideRole).toBool());
    fixture::recordValues(session.document(), "echo/clipped", {{"landing/longest-diameter", 12.0}}, {});
    model.setAnswers(answers);
    const QModelIndex far = cell("echo/clipped", "landing/longest-diameter");
    EXPECT_EQ(app::plainSpaces(far.data(ComparisonModel::DifferenceRole).toString()).toStdString(),
              "−8.7 mm from CT: outside the published limits");
    EXPECT_TRUE(far.data(ComparisonModel::IsOutsideRole).toBool());
    EXPECT_TRUE(far.data(Qt::ToolTipRole).toString().contains("published differences lie between"));
    // A single view has no published counterpart.
    EXPECT_TRUE(cell("fluoroscopy/clipped", "landing/single-view")
                    .data(ComparisonModel::DifferenceRole)
                    .toString()
                    .isEmpty());
}

TEST_F(ComparisonModelTest, EveryCellKnowsWhereItWasMeasured) {
    app::ViewState state;
    int jumps = 0;
    for (const QModelIndex& at : cells()) {
        state.goTo(*model.placeAt(at));
        ++jumps;
        const core::RecordedValue* value = model.valueAt(at);
        if (!value) { // typed in
            EXPECT_EQ(state.page(), app::Page::Course);
            continue;
        }
        const std::string what = value->group + " " + value->id;
        EXPECT_EQ(state.place(), app::placeOf(session.record(), *value)) << what;
        if (value->group == core::kCtValues) {
            EXPECT_TRUE(state.place().evidence.isEmpty()) << what;
            if (value->id.starts_with("landing-1/")) {
                EXPECT_EQ(state.page(), app::Page::Appendage) << what;
                EXPECT_EQ(state.depthKind(), app::Depth::Landing) << what;
            }
            if (value->id.starts_with("ostium/")) {
                EXPECT_EQ(state.depthKind(), app::Depth::Ostium) << what;
            }
            if (value->id.starts_with("turn/")) {
                EXPECT_EQ(state.depthKind(), app::Depth::Free) << what;
                EXPECT_EQ(state.cursorMm(), 18.5) << what;
            }
            if (value->id == "enhancement/atrium") {
                EXPECT_EQ(state.page(), app::Page::Scanner);
                EXPECT_LT(core::distanceMm(state.crossing(), session.record().marks.at(core::MarkKind::Atrium).point), 1e-9);
            }
            continue;
        }
        // Frame and drawing are those of the drawing that the value rests on, on the page of its modality.
        EXPECT_EQ(state.page(), value->group.starts_with("echo/") ? app::Page::Echo : app::Page::Fluoroscopy) << what;
        const auto drawing = session.record().drawings.find(state.place().drawing.toStdString());
        ASSERT_NE(drawing, session.record().drawings.end()) << what;
        EXPECT_TRUE(std::any_of(value->inputs.begin(), value->inputs.end(), [&](const core::InputRevision& input) {
            return input.id == "drawing/" + drawing->first;
        })) << what;
        const auto& site = std::get<core::PictureSite>(drawing->second.content.site);
        EXPECT_EQ(state.place().frame, site.frame) << what;
        EXPECT_EQ(state.place().evidence.toStdString(), site.sopInstanceUid) << what;
    }
    EXPECT_EQ(jumps, 39); // and the typed reading
}

TEST_F(ComparisonModelTest, ASecondLandingPlaneIsShownAtItsDepth) {
    core::RecordedValue second;
    second.id = "landing-2/longest-diameter";
    core::CaseRecord record;
    record.landing.depthsMm = {10.0, 14.5};
    const app::Place place = app::placeOf(record, second);
    EXPECT_EQ(place.depth, app::Depth::Free);
    EXPECT_EQ(place.depthMm, 14.5);
}

TEST_F(ComparisonModelTest, ThePlugPlaneIsShownItself) {
    core::RecordedValue plug;
    plug.id = "landing-2/longest-diameter";
    core::CaseRecord record;
    record.landing.depthsMm = {10.0};
    record.landing.plugMm = 12.0;
    EXPECT_EQ(app::placeOf(record, plug).depth, app::Depth::Plug) << "and not the plane along the axis";
}

TEST_F(ComparisonModelTest, ACorrectedContourBringsItsPlane) {
    core::RecordedValue value;
    value.id = "ostium/area";
    core::CaseRecord record;
    core::CorrectedContour contour;
    contour.frame.origin = {Eigen::Vector3d(4, 5, 6)};
    record.contours["ostium"] = {contour, 2, {}};
    const app::Place place = app::placeOf(record, value);
    EXPECT_EQ(place.depth, app::Depth::Ostium);
    ASSERT_TRUE(place.plane);
    EXPECT_EQ(*place.plane, contour.frame);
}

TEST_F(ComparisonModelTest, ADrawingOnASectionBringsItsPlane) {
    core::Drawing contour;
    contour.role = core::DrawingRole::LandingContour;
    contour.evidence = "volume";
    core::SectionSite site;
    site.frame.origin = {Eigen::Vector3d(1, 2, 3)};
    contour.site = site;
    core::CaseRecord record;
    record.drawings["c1"] = {contour, 3, {}};
    record.evidence["volume"] = {};
    core::RecordedValue value;
    value.group = "echo-3d/m1";
    value.id = "landing/area-derived-diameter";
    value.inputs = {{"drawing/c1", 3}};
    const app::Place place = app::placeOf(record, value);
    EXPECT_EQ(place.page, app::Page::Echo);
    EXPECT_EQ(place.evidence, "volume");
    ASSERT_TRUE(place.plane);
    EXPECT_EQ(*place.plane, site.frame);
    EXPECT_EQ(place.drawing, "c1");
}

TEST_F(ComparisonModelTest, MovingAnInputMakesExactlyItsDependentsStale) {
    ASSERT_TRUE(staleCells().empty());
    std::set<std::string> inputs;
    for (const core::RecordedValue& value : session.record().values)
        for (const core::InputRevision& input : value.inputs)
            if (input.id.starts_with("drawing/") || input.id.starts_with("evidence/")) inputs.insert(input.id);
    EXPECT_EQ(inputs.size(), 18u); // eight views and a run, each with a drawing
    app::CaseDocument& document = session.document();
    for (const std::string& input : inputs) {
        std::set<std::string> expected;
        for (const QModelIndex& at : cells())
            if (const core::RecordedValue* value = model.valueAt(at))
                if (std::any_of(value->inputs.begin(), value->inputs.end(),
                                [&](const core::InputRevision& used) { return used.id == input; }))
                    expected.insert(value->group + " " + value->id);
        const std::string id = input.substr(input.find('/') + 1);
        if (input.starts_with("drawing/")) {
            core::Drawing moved = document.record().drawings.find(id)->second.content;
            moved.points.front().x() += 3.0;
            document.push(std::make_unique<app::EntryCommand<core::Drawing>>(document, QStringLiteral("move"), id, moved));
        } else {
            core::Evidence turned = document.record().evidence.find(id)->second.content;
            turned.probeAngleDeg = turned.probeAngleDeg.value_or(0.0) + 10.0;
            document.push(std::make_unique<app::EntryCommand<core::Evidence>>(document, QStringLiteral("turn"), id, turned));
        }
        EXPECT_EQ(staleCells(), expected) << input;
        document.undoStack().undo();
        EXPECT_TRUE(staleCells().empty()) << input;
    }
}

/// Every input of CT, each moved without measuring again: the cells that rest on it, and no other, are stale; undo brings them
/// back, and so does confirming them.
TEST_F(ComparisonModelTest, MovingAPlaneALandmarkOrAContourMakesExactlyItsDependentsStale) {
    // A record of its own, so that nothing measures again by itself: corrected contours on both planes, an aorta.
    core::CaseRecord record = session.record();
    const auto frameOf = [&](const std::string& id) {
        return id == "ostium" ? session.measurement()->ostium.section.frame : session.landing()->section.frame;
    };
    for (const std::string id : {"ostium", "landing-1"}) {
        const std::string plane(id == "ostium" ? core::input::kOstium : core::input::kLanding);
        std::vector<Eigen::Vector2d> points;
        for (int i = 0; i < 12; ++i)
            points.emplace_back(11.0 * std::cos(i * M_PI / 6), 8.0 * std::sin(i * M_PI / 6));
        record.contours[id] = {{frameOf(id), points, plane, core::revisionOf(record, core::input::placeOf(plane))}, 900, {}};
    }
    record.marks[core::MarkKind::Aorta] = {{Eigen::Vector3d(9, 9, 9)}, 901, {}};
    core::AppendageMeasurement measurement = *session.measurement();
    measurement.enhancement.aortaHu = 410.0;
    measurement.enhancement.tipToAorta = 0.73;
    record.values = core::recordedValues(measurement, record, record.values.front().provenance);

    const auto staleOf = [](const core::CaseRecord& of) {
        std::set<std::string> ids;
        for (const auto& value : of.values)
            if (core::isStale(of, value)) ids.insert(value.id);
        return ids;
    };
    const auto startingWith = [&](std::initializer_list<std::string> starts) {
        std::set<std::string> ids;
        for (const auto& value : record.values)
            if (std::any_of(starts.begin(), starts.end(), [&](const auto& start) { return value.id.starts_with(start); })) ids.insert(value.id);
        return ids;
    };
    const std::set<std::string> all = startingWith({""});
    ASSERT_TRUE(staleOf(record).empty());
    core::OstiumPlane ostium;
    ostium.plane = session.ostiumPlane().value();
    ostium.revision = 1000;
    core::LandingPlanes deeper = record.landing, tilted = record.landing;
    deeper.depthsMm = {13.0};
    deeper.revision = tilted.revision = 1000;
    tilted.normal = core::PatientVector{Eigen::Vector3d(0.8, 0.6, 0)};
    core::ImagesUsed otherPhase = *record.images;
    otherPhase.phaseLabel = "75 %";
    otherPhase.revision = 1000;
    core::Entry<core::CorrectedContour> corrected = record.contours.at("landing-1");
    corrected.content.points.front().x() += 1.0;
    corrected.revision = 1000;
    const auto mark = [](double x) { return core::Mark{{Eigen::Vector3d(x, 1, 1)}, 1000, {}}; };
    const std::vector<std::tuple<const char*, core::Edit, std::set<std::string>>> moves{
        {"ostium plane", core::SetOstium{ostium}, all},
        {"landing depth", core::SetLanding{deeper}, startingWith({"landing-"})},
        {"landing tilt", core::SetLanding{tilted}, startingWith({"landing-"})},
        {"another phase", core::SetImages{otherPhase}, all},
        {"atrium", core::SetMark{core::MarkKind::Atrium, mark(1)}, all},
        {"tip", core::SetMark{core::MarkKind::Tip, mark(2)}, all},
        {"circumflex", core::SetMark{core::MarkKind::Circumflex, mark(3)}, all},
        {"ridge", core::SetMark{core::MarkKind::Ridge, mark(4)}, all},
        {"aorta", core::SetMark{core::MarkKind::Aorta, mark(5)}, startingWith({"enhancement/aorta", "enhancement/tip-to-aorta"})},
        {"landing contour", core::SetEntry<core::CorrectedContour>{"landing-1", corrected},
         [&] {
             auto ids = startingWith({"landing-1/"});
             ids.erase("landing-1/straight-depth");
             return ids;
         }()},
    };
    for (const auto& [what, edit, expected] : moves) {
        SCOPED_TRACE(what);
        core::CaseRecord moved = record;
        const core::Edit inverse = core::apply(moved, edit);
        EXPECT_EQ(staleOf(moved), expected);
        core::CaseRecord confirmed = moved;
        for (auto& value : confirmed.values)
            for (auto& input : value.inputs)
                input.revision = core::revisionOf(confirmed, input.id);
        EXPECT_TRUE(staleOf(confirmed).empty()) << "until confirmed";
        core::apply(moved, inverse);
        EXPECT_TRUE(staleOf(moved).empty());
    }
}

TEST_F(ComparisonModelTest, StaleCellsSaySoAndCanBeConfirmed) {
    app::CaseDocument& document = session.document();
    core::Drawing moved = document.record().drawings.find("w-start-45")->second.content;
    moved.points.front().x() += 3.0;
    document.push(std::make_unique<app::EntryCommand<core::Drawing>>(document, QStringLiteral("move"), "w-start-45", moved));
    model.setAnswers(answers);
    const QModelIndex at = cell("echo/start", "landing/longest-diameter");
    EXPECT_EQ(at.data(ComparisonModel::StaleWordsRole).toString().toStdString(), "out of date: measure again or confirm");
    EXPECT_TRUE(at.data(ComparisonModel::CarriedRole).toString().isEmpty());
    EXPECT_TRUE(at.data(ComparisonModel::DifferenceRole).toString().isEmpty());
    const auto stale = model.staleIn(at.column());
    EXPECT_EQ(stale.size(), 5u);
    document.push(std::make_unique<app::ConfirmValues>(document, model.groupOf(at.column()), stale));
    EXPECT_TRUE(staleCells().empty());
    document.undoStack().undo();
    EXPECT_EQ(staleCells().size(), 5u);
    document.undoStack().redo();
    EXPECT_TRUE(staleCells().empty());
    model.setMeasuring(true);
    EXPECT_TRUE(cell("echo/start", "landing/longest-diameter").data(ComparisonModel::StaleWordsRole).toString().isEmpty());
}

TEST_F(ComparisonModelTest, APreviewReplacesTheLandingZoneOfCtOnly) {
    const QModelIndex landing = cell("ct", "landing-1/longest-diameter"), ostium = cell("ct", "ostium/longest-diameter");
    const QString before = landing.data().toString(), other = ostium.data().toString();
    core::LandingZone zone = fixture::syntheticMeasurement().landingZones.front();
    zone.section.metrics.longestDiameterMm.value = 33.3;
    model.setPreview(&zone);
    model.setPreview(&zone, false);
    EXPECT_EQ(landing.data().toString(), QStringLiteral("measuring …")) << "a value of another plane is not told";
    EXPECT_EQ(ostium.data().toString(), other);
    model.setPreview(&zone);
    EXPECT_TRUE(landing.data().toString().startsWith("33.3"));
    EXPECT_EQ(ostium.data().toString(), other);
    model.setPreview(nullptr);
    EXPECT_EQ(landing.data().toString(), before);
}

TEST_F(ComparisonModelTest, CopiesAsTabSeparatedLinesThatNoSpreadsheetComputes) {
    const QStringList lines = model.asText().split('\n', Qt::SkipEmptyParts);
    ASSERT_GT(lines.size(), 20);
    const auto columns = lines.front().count('\t');
    EXPECT_EQ(columns, 3 * (model.columnCount() - 1));
    for (const QString& line : lines) {
        EXPECT_EQ(line.count('\t'), columns) << line.toStdString();
        EXPECT_FALSE(line.contains(QChar(0x00A0)));
        for (const QString& field : line.split('\t'))
            EXPECT_FALSE(!field.isEmpty() && QStringLiteral("=+-@").contains(field.front())) << field.toStdString();
    }
    EXPECT_TRUE(model.asText().contains("20.4 ± 0.7 mm"));
}

TEST(SpreadsheetText, LeavesNothingToCompute) {
    EXPECT_EQ(app::spreadsheetText("=1+1"), "'=1+1");
    EXPECT_EQ(app::spreadsheetText("+3.1 mm"), "'+3.1 mm");
    EXPECT_EQ(app::spreadsheetText("@x"), "'@x");
    EXPECT_EQ(app::spreadsheetText("a\tb\nc"), "a b c");
    EXPECT_EQ(app::spreadsheetText(QString("1%2mm").arg(QChar(0x00A0))), "1 mm");
}

} // namespace
} // namespace gauge
