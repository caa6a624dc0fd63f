// Every value of the sample case is traceable: Enter on its cell brings back series, frame, plane and contour from wherever the
// person has gone meanwhile, and what moves makes exactly what rests on it stale.
#include "app/commands/contour_commands.h"
#include "app/commands/course_commands.h"
#include "app/commands/drawing_commands.h"
#include "app/interaction/contour_edit.h"
#include "app/panels/comparison_panel.h"
#include "app/panels/comparison_table.h"
#include "app/views/cine_view.h"
#include "app/views/course_page.h"
#include "app/views/image_view.h"
#include "app/views/cross_section_view.h"
#include "app/views/shown_section.h"
#include "core/record/echo_values.h"
#include "core/record/edit.h"
#include "core/record/fluoro_values.h"
#include "core/record/metric_names.h"
#include "core/record/picture_readings.h"
#include "core/record/projection_values.h"
#include "core/record/septum_values.h"
#include "tests/app/trial/sample_stage.h"

#include <QComboBox>
#include <QTest>
#include <gtest/gtest.h>
#include <iostream>
#include <map>
#include <set>

using namespace gauge;
using namespace gauge::app;

namespace {

/// Opened once: all tests read it, or bring back what they changed.
class SampleCase : public ::testing::Test {
protected:
    struct Stage {
        trial::SampleCopy copy;
        MainWindow window;
    };
    static inline std::unique_ptr<Stage> s_stage;

    static void SetUpTestSuite() {
        s_stage = std::make_unique<Stage>();
        MainWindow& window = s_stage->window;
        window.resize(1440, 900);
        window.show();
        window.openCase(s_stage->copy.caseFile());
        ASSERT_TRUE(trial::settle(window));
        ASSERT_TRUE(window.session().measurement()) << window.session().message().text.toStdString();
        addWhatTheSampleLacks(window.session());
        ASSERT_TRUE(trial::settle(window));
    }
    static void TearDownTestSuite() { s_stage.reset(); }

    /// A typed reading, a contour corrected by hand, a second landing plane, the plug plane, a velocity on the Doppler picture.
    static void addWhatTheSampleLacks(Session& session) {
        CaseDocument& document = session.document();
        core::TypedReading typed;
        typed.observation.quantity = core::Quantity::LandingZoneLongestDiameter;
        typed.observation.modality = core::Modality::Echo3d;
        typed.observation.derivation = core::Derivation::Contour;
        typed.observation.valueMm = 21.5;
        typed.observation.state = document.record().moments.begin()->first;
        for (const char* id : {"r1", "r2"}) {
            document.push(std::make_unique<SetTypedReading>(document, id, typed));
            typed.observation.quantity = core::Quantity::OstiumLongestDiameter;
        }
        const core::Section& ostium = session.measurement()->ostium.section;
        core::CorrectedContour contour{ostium.frame, ContourEdit::handlesOn(ostium.contour), std::string(core::input::kOstium),
                                       core::revisionOf(document.record(), core::input::placeOf(core::input::kOstium))};
        document.push(std::make_unique<CorrectContour>(document, "ostium", contour, 1));
        core::Drawing caliper;
        caliper.role = core::DrawingRole::OstiumWidth;
        caliper.site = core::SectionSite{ostium.frame, std::string(core::input::kOstium),
                                         core::revisionOf(document.record(), core::input::placeOf(core::input::kOstium))};
        caliper.points = {{-9.0, 0.0}, {9.0, 1.0}};
        document.push(std::make_unique<PlaceDrawing>(document, "ct-1", caliper));
        session.setSecondLanding(14.0, 1);
        session.setPlug(12.0, 1);
        for (const auto& [id, evidence] : document.record().evidence) {
            if (evidence.content.kind != core::EvidenceKind::Doppler) continue;
            core::Drawing velocity;
            velocity.kind = core::DrawingKind::Velocity;
            velocity.site = core::PictureSite{evidence.content.sopInstanceUid, 0};
            velocity.points = {{320.0, 240.0}};
            velocity.evidence = id;
            document.push(std::make_unique<PlaceDrawing>(document, "doppler-1", velocity));
            break;
        }
    }

    MainWindow& window() { return s_stage->window; }
    Session& session() { return window().session(); }
    ViewState& state() { return window().state(); }
    const core::CaseRecord& record() { return session().record(); }
    ComparisonPanel& panel() { return *window().findChild<ComparisonPanel*>(); }

    std::vector<QModelIndex> cells() {
        std::vector<QModelIndex> all;
        const ComparisonModel& model = panel().model();
        for (int row = 0; row < model.rowCount(); ++row)
            for (int column = 1; column < model.columnCount(); ++column)
                if (model.placeAt(model.index(row, column))) all.push_back(model.index(row, column));
        return all;
    }
    std::string nameOf(const QModelIndex& cell) {
        const core::RecordedValue* value = panel().model().valueAt(cell);
        return value ? value->group + " " + value->id : "typed in: " + cell.data().toString().toStdString();
    }

    /// Somewhere else entirely: another page, depth, crossing, other views at their first frames, nothing selected.
    void goAway(Page page) {
        state().selectDrawing({});
        state().showDepth(3.0);
        state().setCrossing(session().volume()->patientFrom({Eigen::Vector3d(10, 10, 10)}));
        for (CineView* view : window().findChildren<CineView*>())
            view->showFrame(0);
        state().setPage(page);
        QCoreApplication::processEvents();
    }

    void jumpByEnter(const QModelIndex& cell) {
        QTableView& table = panel().table().cells();
        table.setFocus();
        table.setCurrentIndex(cell);
        QTest::keyClick(&table, Qt::Key_Return);
        QCoreApplication::processEvents();
    }
    void jumpByClick(const QModelIndex& cell) {
        QTableView& table = panel().table().cells();
        table.scrollTo(cell);
        const QPoint at = table.visualRect(cell).center();
        QTest::mouseClick(table.viewport(), Qt::LeftButton, {}, at);
        QTest::mouseDClick(table.viewport(), Qt::LeftButton, {}, at);
        QCoreApplication::processEvents();
    }

    CineView* viewOf(const std::string& evidence) {
        for (CineView* view : window().findChildren<CineView*>())
            if (view->isVisible() && view->evidence().toStdString() == evidence) return view;
        return nullptr;
    }

    void expectPicture(const core::RecordedValue& value, const std::string& what);
    void expectCaliper(const std::string& what);
    void expectCt(const core::RecordedValue& value, const std::string& what);
    void expectBack(const QModelIndex& cell);
    std::set<std::string> restOn(const std::string& input);
};

/// View, frame and drawing are those that the value rests on.
void SampleCase::expectPicture(const core::RecordedValue& value, const std::string& what) {
    EXPECT_EQ(state().page(), value.group.starts_with("fluoroscopy/") ? Page::Fluoroscopy : Page::Echo) << what;
    const auto drawing = record().drawings.find(state().selectedDrawing().toStdString());
    ASSERT_NE(drawing, record().drawings.end()) << what << ": the drawing is pointed out";
    const core::Drawing& drawn = drawing->second.content;
    EXPECT_TRUE(std::any_of(value.inputs.begin(), value.inputs.end(), [&](const auto& input) { return input.id == "drawing/" + drawing->first; })) << what;
    if (!value.group.starts_with("drawing/")) {
        EXPECT_EQ(core::momentKey(record().evidence.at(drawn.evidence).content), std::string(core::momentOfGroup(value.group))) << what;
        EXPECT_EQ(drawn.role, value.id.starts_with("landing")  ? core::DrawingRole::LandingWidth
                              : value.id.starts_with("ostium") ? core::DrawingRole::OstiumWidth
                                                               : core::DrawingRole::Depth)
            << what;
    }
    CineView* view = viewOf(drawn.evidence);
    ASSERT_TRUE(view) << what << ": its view is on screen";
    const auto& site = std::get<core::PictureSite>(drawn.site);
    EXPECT_TRUE(trial::waitFor([&] { return view->data() && view->player().frame() == site.frame; }, 20'000))
        << what << ": frame " << view->player().frame() << " instead of " << site.frame;
    EXPECT_EQ(view->sopInstanceUid(), site.sopInstanceUid) << what;
    EXPECT_TRUE(view->shows(drawn)) << what << ": its line is drawn";
}

void SampleCase::expectCaliper(const std::string& what) {
    EXPECT_EQ(state().selectedDrawing(), QStringLiteral("ct-1")) << what;
    const core::Drawing& drawn = record().drawings.at("ct-1").content;
    bool isSeen = false;
    for (const auto* view : window().findChildren<ImageView*>())
        isSeen = isSeen || (view->isVisible() && view->shows(drawn));
    EXPECT_TRUE(isSeen) << what << ": its line is drawn";
}

/// Plane and contour are those on which the value was read: the shown contour gives the number again.
void SampleCase::expectCt(const core::RecordedValue& value, const std::string& what) {
    if (value.id.starts_with("enhancement/") && value.id != "enhancement/appendage" && value.id != "enhancement/tip") {
        EXPECT_EQ(state().page(), Page::Scanner) << what;
        const auto mark = value.id == "enhancement/atrium" ? core::MarkKind::Atrium : core::MarkKind::Aorta;
        EXPECT_LT(core::distanceMm(state().crossing(), record().marks.at(mark).point), 1e-9) << what;
        return;
    }
    EXPECT_EQ(state().page(), Page::Appendage) << what;
    const auto shown = shownSection(session(), state());
    ASSERT_TRUE(shown) << what;
    const std::string metric = value.id.substr(value.id.find('/') + 1);
    for (const core::MetricName& name : core::kMetricNames) {
        if (metric != name.id || (!value.id.starts_with("landing-") && !value.id.starts_with("ostium/"))) continue;
        if (value.estimate.method == "contour corrected by hand") {
            EXPECT_EQ(shown->role, Role::Ostium) << what;
            auto* view = window().findChild<CrossSectionView*>();
            ASSERT_TRUE(view && view->map()) << what;
            EXPECT_LT(core::distanceMm(view->map()->frame.origin, record().contours.at("ostium").content.frame.origin), 1e-6) << what;
        } else {
            EXPECT_NEAR(core::estimateOf(shown->section->metrics, name.metric).value, value.estimate.value, 1e-9) << what;
        }
    }
    if (value.id.starts_with("turn/")) {
        EXPECT_EQ(shown->role, Role::Section) << what;
    }
}

void SampleCase::expectBack(const QModelIndex& cell) {
    const std::string what = nameOf(cell);
    const core::RecordedValue* value = panel().model().valueAt(cell);
    if (!value) {
        EXPECT_EQ(state().page(), Page::Course) << what;
        auto* course = window().findChild<CoursePage*>();
        ASSERT_TRUE(course && course->isVisible()) << what;
        const QString shown = cell.data().toString().section(QChar(0x00A0), 0, 0).section(QLatin1Char(' '), 0, 0);
        bool isChosen = false;
        for (const auto* box : course->findChildren<QComboBox*>())
            isChosen = isChosen || (box->isVisible() && box->accessibleName() == QStringLiteral("Typed reading") &&
                                    box->currentText().contains(shown) &&
                                    box->currentText().contains(cell.row() < 13 ? QStringLiteral("landing") : QStringLiteral("ostium"), Qt::CaseInsensitive));
        EXPECT_TRUE(isChosen) << what << ": the reading itself is brought up";
        return;
    }
    EXPECT_TRUE(session().images()->used().seriesUid == record().images->seriesUid);
    if (value->group == "drawing/ct-1") return expectCaliper(what);
    value->group == core::kCtValues ? expectCt(*value, what) : expectPicture(*value, what);
}

/// What must be stale when an input moves, from what the input is and not from what the value says of itself.
std::set<std::string> SampleCase::restOn(const std::string& input) {
    std::set<std::string> names;
    const auto add = [&](const auto& fits) {
        for (const core::RecordedValue& value : record().values)
            if (fits(value)) names.insert(value.group + " " + value.id);
    };
    const auto idAfter = [&](const char* kind) { return input.substr(std::string(kind).size()); };
    const auto ofDrawing = [&](const std::string& id, bool itself = true) {
        const core::Drawing& drawing = record().drawings.at(id).content;
        if (drawing.evidence.empty()) return add([&](const auto& v) { return v.group == "drawing/" + id; });
        const core::Evidence& evidence = record().evidence.at(drawing.evidence).content;
        const std::string group = std::string(evidence.kind == core::EvidenceKind::Fluoroscopy ? core::kFluoroValues : core::kEchoValues) +
                                  core::momentKey(evidence);
        const std::string part = drawing.role == core::DrawingRole::LandingWidth  ? "landing/"
                                 : drawing.role == core::DrawingRole::OstiumWidth ? "ostium/"
                                 : drawing.role == core::DrawingRole::Depth       ? "depth"
                                                                                  : "none of them";
        add([&](const auto& v) { return (itself && v.group == "drawing/" + id) || (v.group == group && v.id.starts_with(part)); });
    };
    const auto ct = [&](const auto& fits) { add([&](const auto& v) { return v.group == core::kCtValues && fits(v.id); }); };
    if (input.starts_with("drawing/")) {
        ofDrawing(idAfter("drawing/"));
    } else if (input.starts_with("evidence/") || input.starts_with("scale/")) {
        const std::string evidence = input.substr(input.find('/') + 1);
        for (const auto& [id, drawing] : record().drawings)
            if (drawing.content.evidence == evidence) ofDrawing(id, input.starts_with("scale/")); // an angle changes no length
    } else if (input == core::input::mark(core::MarkKind::Aorta)) {
        ct([](const std::string& id) { return id == "enhancement/aorta" || id == "enhancement/tip-to-aorta"; });
    } else if (input == core::input::kLanding) {
        ct([](const std::string& id) { return id.starts_with("landing-"); });
    } else if (input.starts_with("contour/")) {
        ct([&](const std::string& id) { return id.starts_with(idAfter("contour/") + "/"); });
    } else { // images, ostium plane and the other marks carry all of the CT, and what was drawn on the ostium plane
        add([&](const auto& v) { return v.group == core::kCtValues || v.group == "drawing/ct-1"; });
    }
    return names;
}

} // namespace

TEST_F(SampleCase, HasAColumnForEveryKindOfEvidenceAndMoment) {
    std::set<std::string> groups;
    for (const core::RecordedValue& value : record().values)
        groups.insert(value.group.starts_with("drawing/") ? "drawing" : value.group);
    EXPECT_EQ(groups, (std::set<std::string>{"ct", "drawing", "echo/anaesthesia", "echo/after-repair", "fluoroscopy/after-repair", "projection", "septum"}));
    EXPECT_EQ(panel().model().columnCount(), 7) << "quantity, CT, CT by hand, two echo, fluoroscopy, typed";
    for (const core::RecordedValue& value : record().values)
        EXPECT_FALSE(core::isStale(record(), value)) << value.group << " " << value.id;
}

TEST_F(SampleCase, EnterOnEveryCellBringsBackSeriesFramePlaneAndContour) {
    const auto all = cells();
    EXPECT_GE(all.size(), 50u);
    const Page away[] = {Page::Course, Page::Scanner, Page::Fluoroscopy, Page::Echo, Page::SameCut, Page::Appendage};
    std::size_t turn = 0;
    for (const QModelIndex& cell : all) {
        goAway(away[turn++ % std::size(away)]);
        jumpByEnter(cell);
        expectBack(cell);
    }
    std::cout << all.size() << " cells jumped back from " << std::size(away) << " pages\n";
}

TEST_F(SampleCase, ADoubleClickDoesTheSame) {
    const auto all = cells();
    for (std::size_t i = 0; i < all.size(); i += 5) {
        goAway(Page::Course);
        jumpByClick(all[i]);
        expectBack(all[i]);
    }
}

/// Before any picture of the run has been opened, as after the start of the program.
TEST_F(SampleCase, AJumpToPicturesThatAreNotOpenYetEndsAtItsFrame) {
    for (const QModelIndex& cell : cells()) {
        const core::RecordedValue* value = panel().model().valueAt(cell);
        if (!value || value->group == core::kCtValues || value->group == "drawing/ct-1") continue;
        for (CineView* view : window().findChildren<CineView*>())
            view->setEvidence({});
        goAway(Page::Course);
        emit session().imagesChanged(); // lets go of what is open
        goAway(Page::Course);
        jumpByEnter(cell);
        expectBack(cell);
    }
}

/// On a case of its own, so that nothing measures again by itself. What the values of the working projections and of the septal
/// crossing rest on is tested where they are made (tests/core/record).
TEST_F(SampleCase, MovingEachInputMakesExactlyItsDependentsStale) {
    std::set<std::string> inputs;
    const auto isCell = [](const core::RecordedValue& value) {
        return value.group != core::kProjectionValues && value.group != core::kSeptumValues;
    };
    for (const core::RecordedValue& value : record().values)
        for (const core::InputRevision& input : isCell(value) ? value.inputs : std::vector<core::InputRevision>{})
            if (!input.id.starts_with("plane/")) inputs.insert(input.id); // where a plane lies follows from the others
    EXPECT_GE(inputs.size(), 25u);
    std::map<std::string, int> kinds;
    for (const std::string& input : inputs) {
        ++kinds[input.substr(0, input.find('/'))];
        core::CaseRecord moved = record();
        constexpr core::Revision kNew = 1'000'000;
        const std::string id = input.substr(input.find('/') + 1);
        std::optional<core::Edit> edit;
        if (input == core::input::kImages) {
            auto images = *moved.images;
            images.revision = kNew;
            edit = core::SetImages{images};
        } else if (input == core::input::kOstium) {
            edit = core::SetOstium{core::OstiumPlane{{{Eigen::Vector3d(1, 2, 3)}, {Eigen::Vector3d::UnitX()}}, {}, kNew, {}}};
        } else if (input == core::input::kLanding) {
            auto landing = moved.landing;
            landing.depthsMm.front() += 1.0;
            landing.revision = kNew;
            edit = core::SetLanding{landing};
        } else if (const auto drawing = moved.drawings.find(id); input.starts_with("drawing/") && drawing != moved.drawings.end()) {
            auto entry = drawing->second;
            entry.content.points.front().x() += 3.0;
            entry.revision = kNew;
            edit = core::SetEntry<core::Drawing>{id, entry};
        } else if (const auto evidence = moved.evidence.find(id); input.starts_with("evidence/") && evidence != moved.evidence.end()) {
            auto entry = evidence->second;
            entry.content.probeAngleDeg = entry.content.probeAngleDeg.value_or(0.0) + 5.0;
            entry.revision = kNew;
            edit = core::SetEntry<core::Evidence>{id, entry};
        } else if (const auto scale = moved.scales.find(id); input.starts_with("scale/")) {
            core::Entry<core::PictureScale> entry; // the file's own scale until then
            if (scale != moved.scales.end()) entry = scale->second;
            entry.content.knownMm += 0.2;
            entry.revision = kNew;
            edit = core::SetEntry<core::PictureScale>{id, entry};
        } else if (const auto contour = moved.contours.find(id); input.starts_with("contour/") && contour != moved.contours.end()) {
            auto entry = contour->second;
            entry.content.points.front() *= 1.1;
            entry.revision = kNew;
            edit = core::SetEntry<core::CorrectedContour>{id, entry};
        } else {
            for (const core::MarkKind kind : core::kMarkKinds)
                if (input == core::input::mark(kind)) {
                    auto mark = moved.marks.at(kind);
                    mark.point.mm.x() += 2.0;
                    mark.revision = kNew;
                    edit = core::SetMark{kind, mark};
                }
        }
        ASSERT_TRUE(edit) << "nothing moves " << input;
        const core::Edit inverse = core::apply(moved, *edit);
        std::set<std::string> stale;
        for (const core::RecordedValue& value : moved.values)
            if (isCell(value) && core::isStale(moved, value)) stale.insert(value.group + " " + value.id);
        EXPECT_EQ(stale, restOn(input)) << input;
        EXPECT_FALSE(stale.empty()) << input;
        core::apply(moved, inverse);
        for (const core::RecordedValue& value : moved.values)
            EXPECT_FALSE(core::isStale(moved, value)) << input << " taken back: " << value.id;
    }
    for (const auto& [kind, count] : kinds)
        std::cout << count << " x " << kind << '\n';
}

TEST_F(SampleCase, ADopplerValueKnowsItsPictureToo) {
    bool found = false;
    for (const core::RecordedValue& value : record().values) {
        if (value.group != "drawing/doppler-1") continue;
        found = true;
        goAway(Page::Course);
        state().goTo(placeOf(record(), value));
        QCoreApplication::processEvents();
        expectPicture(value, value.group + " " + value.id);
    }
    EXPECT_TRUE(found) << "a velocity was read";
}
