#include "app/interaction/tool_actions.h"

#include "app/commands/drawing_commands.h"
#include "app/format/drawing_words.h"
#include "core/geometry/plane_moves.h"

#include <QActionGroup>
#include <QCoreApplication>
#include <QElapsedTimer>
#include <algorithm>
#include <array>
#include <memory>
#include <utility>

namespace gauge::app {
namespace {

/// @param further  other keys for the same; the tooltip names the first.
QAction* action(const QString& text, const QKeySequence& key, QObject* parent, const QList<QKeySequence>& further = {}) {
    auto* made = new QAction(text, parent);
    made->setShortcuts(QList<QKeySequence>{key} + further);
    made->setToolTip(key.isEmpty() ? text : QCoreApplication::translate("Tools", "%1 (key %2)").arg(text, key.toString(QKeySequence::NativeText)));
    return made;
}

struct ToolKey {
    core::DrawingKind kind;
    const char* text;
    QKeyCombination key;
};
constexpr std::array<ToolKey, 8> kTools{{
    {core::DrawingKind::Straight, QT_TRANSLATE_NOOP("Tools", "Draw a straight line"), Qt::ALT | Qt::Key_1},
    {core::DrawingKind::Curve, QT_TRANSLATE_NOOP("Tools", "Draw a curved line"), Qt::ALT | Qt::Key_2},
    {core::DrawingKind::Angle, QT_TRANSLATE_NOOP("Tools", "Draw an angle"), Qt::ALT | Qt::Key_3},
    {core::DrawingKind::Area, QT_TRANSLATE_NOOP("Tools", "Draw an area"), Qt::ALT | Qt::Key_4},
    {core::DrawingKind::Ellipse, QT_TRANSLATE_NOOP("Tools", "Draw an ellipse"), Qt::ALT | Qt::Key_5},
    {core::DrawingKind::Velocity, QT_TRANSLATE_NOOP("Tools", "Mark a velocity"), Qt::ALT | Qt::Key_6},
    {core::DrawingKind::Interval, QT_TRANSLATE_NOOP("Tools", "Draw an interval of time"), Qt::ALT | Qt::Key_7},
    {core::DrawingKind::Envelope, QT_TRANSLATE_NOOP("Tools", "Draw an envelope of velocities"), Qt::ALT | Qt::Key_8},
}};

struct Tissue {
    const char* text;
    GreyWindow window;
    QKeyCombination key;
};
// Usual windows: common practice, no source.
constexpr std::array<Tissue, 5> kTissues{{
    {QT_TRANSLATE_NOOP("Tools", "Window: filled blood"), {250.0, 900.0}, Qt::SHIFT | Qt::Key_F1},
    {QT_TRANSLATE_NOOP("Tools", "Window: soft tissue"), {50.0, 400.0}, Qt::SHIFT | Qt::Key_F2},
    {QT_TRANSLATE_NOOP("Tools", "Window: thrombus and slow filling"), {120.0, 350.0}, Qt::SHIFT | Qt::Key_F3},
    {QT_TRANSLATE_NOOP("Tools", "Window: bone, calcium and metal"), {500.0, 2000.0}, Qt::SHIFT | Qt::Key_F4},
    {QT_TRANSLATE_NOOP("Tools", "Window: lung"), {-600.0, 1500.0}, Qt::SHIFT | Qt::Key_F5},
}};

} // namespace

QList<QAction*> drawingToolActions(ViewState& state, QObject* parent) {
    QList<QAction*> actions;
    for (const ToolKey& tool : kTools) {
        QAction* one = action(QCoreApplication::translate("Tools", tool.text), QKeySequence(tool.key), parent);
        one->setCheckable(true);
        QObject::connect(one, &QAction::triggered, &state, [&state, kind = tool.kind](bool on) {
            state.armTool(on ? std::optional(kind) : std::nullopt);
        });
        QObject::connect(&state, &ViewState::toolChanged, one,
                         [one, &state, kind = tool.kind] { one->setChecked(state.tool() == kind); });
        actions << one;
    }
    return actions;
}

QList<QAction*> drawingRoleActions(Session& session, ViewState& state, QObject* parent) {
    using enum core::DrawingRole;
    QList<QAction*> actions;
    int key = Qt::Key_F3;
    for (const auto role : {OstiumWidth, LandingWidth, Depth, OstiumContour, LandingContour, MitralInflow, None}) {
        const QString text = role == None ? QCoreApplication::translate("Tools", "Take the measurement out of the table")
                                          : QCoreApplication::translate("Tools", "Put the measurement into the table as %1").arg(roleName(role));
        QAction* one = action(text, QKeySequence(static_cast<Qt::Key>(key++)), parent);
        const auto enable = [one, &session, &state] {
            one->setEnabled(session.record().drawings.contains(state.selectedDrawing().toStdString()));
        };
        enable();
        QObject::connect(&state, &ViewState::drawingSelected, one, enable);
        QObject::connect(&session.document(), &CaseDocument::changed, one, enable);
        QObject::connect(one, &QAction::triggered, &state, [&session, &state, role] {
            const std::string id = state.selectedDrawing().toStdString();
            if (!session.record().drawings.contains(id)) return;
            session.document().push(std::make_unique<GiveRole>(session.document(), id, role));
            session.say(Message::Kind::Information, QCoreApplication::translate("Tools", "%1: %2").arg(roleName(role), drawingValueText(session.record(), id)));
        });
        actions << one;
    }
    return actions;
}

QList<QAction*> pictureActions(ViewState& state, QObject* parent) {
    QList<QAction*> actions;
    for (const Tissue& tissue : kTissues) {
        QAction* one = action(QCoreApplication::translate("Tools", tissue.text), QKeySequence(tissue.key), parent);
        QObject::connect(one, &QAction::triggered, &state, [&state, window = tissue.window] { state.setWindow(window); });
        actions << one;
    }
    static constexpr double kStepMm = 1.0;
    // Brackets and the backslash stand on the third level of many keyboards (AltGr), where a shortcut does not hear them: each has
    // a key beside them that is on all.
    const auto slab = [&](const QString& text, const QKeySequence& key, const QKeySequence& further, auto change) {
        QAction* one = action(text, key, parent, {further});
        QObject::connect(one, &QAction::triggered, &state, [&state, change] {
            ViewState::Slab next = state.slab();
            change(next);
            state.setSlab(next);
        });
        actions << one;
    };
    slab(QCoreApplication::translate("Tools", "Thicker slab"), QKeySequence(Qt::CTRL | Qt::Key_PageUp), QKeySequence(Qt::Key_BracketRight),
         [](ViewState::Slab& s) { s.thicknessMm += kStepMm; });
    slab(QCoreApplication::translate("Tools", "Thinner slab"), QKeySequence(Qt::CTRL | Qt::Key_PageDown), QKeySequence(Qt::Key_BracketLeft),
         [](ViewState::Slab& s) { s.thicknessMm -= kStepMm; });
    slab(QCoreApplication::translate("Tools", "Slab: mean or maximum"), QKeySequence(Qt::Key_X), QKeySequence(Qt::Key_Backslash), [](ViewState::Slab& s) {
        s.shows = s.shows == core::SlabValue::Mean ? core::SlabValue::Maximum : core::SlabValue::Mean;
    });
    return actions;
}

namespace {

/// Keys held down move on within one gesture; a pause ends it.
class KeyGesture {
public:
    int number() {
        constexpr qint64 kPauseMs = 900;
        if (!m_since.isValid() || m_since.elapsed() > kPauseMs) ++m_number;
        m_since.start();
        return m_number;
    }

private:
    QElapsedTimer m_since;
    int m_number = 1 << 20; // apart from the gestures of mice
};

/// A plane moved along its normal, or the axis, or turned about a direction.
struct PlaneStep {
    double shiftMm;
    core::PatientVector about;
    double deg;
};

void stepOstium(Session& session, const PlaneStep& step, int gesture) {
    const auto plane = session.ostiumPlane();
    if (!plane) return;
    if (step.shiftMm != 0.0)
        session.moveOstium(core::shifted(*plane, step.shiftMm), gesture);
    else
        session.tiltOstium(core::tilted(*plane, step.about, step.deg), gesture);
}

void stepLanding(Session& session, const PlaneStep& step, int gesture) {
    const auto plane = session.landingPlane();
    if (!plane) return;
    if (step.shiftMm != 0.0)
        session.moveLanding(session.landingPlace()->depthMm + step.shiftMm, gesture);
    else
        session.tiltLanding(core::tilted(*plane, step.about, step.deg).normal, gesture);
}

/// The two directions about which the shown plane tilts: square to the long section, and in it.
std::pair<core::PatientVector, core::PatientVector> tiltAxes(const core::AppendageMeasurement& m, double turnDeg) {
    const core::SectionFrame frame = longSectionFrame(m, turnDeg);
    return {frame.normal, frame.v};
}

} // namespace

QList<QAction*> planeActions(Session& session, ViewState& state, QObject* parent) {
    QList<QAction*> actions;
    auto gesture = std::make_shared<KeyGesture>();
    struct Step {
        const char* text;
        QKeyCombination key;
        double shiftMm, inPictureDeg, acrossDeg;
    };
    static constexpr std::array<Step, 12> kSteps{{
        {QT_TRANSLATE_NOOP("Tools", "Shown plane 0.5 mm towards the tip"), Qt::ALT | Qt::Key_Right, 0.5, 0, 0},
        {QT_TRANSLATE_NOOP("Tools", "Shown plane 0.5 mm towards the atrium"), Qt::ALT | Qt::Key_Left, -0.5, 0, 0},
        {QT_TRANSLATE_NOOP("Tools", "Shown plane 0.1 mm towards the tip"), Qt::ALT | Qt::SHIFT | Qt::Key_Right, 0.1, 0, 0},
        {QT_TRANSLATE_NOOP("Tools", "Shown plane 0.1 mm towards the atrium"), Qt::ALT | Qt::SHIFT | Qt::Key_Left, -0.1, 0, 0},
        {QT_TRANSLATE_NOOP("Tools", "Tilt the shown plane 1° clockwise"), Qt::ALT | Qt::Key_Up, 0, 1.0, 0},
        {QT_TRANSLATE_NOOP("Tools", "Tilt the shown plane 1° anticlockwise"), Qt::ALT | Qt::Key_Down, 0, -1.0, 0},
        {QT_TRANSLATE_NOOP("Tools", "Tilt the shown plane 0.2° clockwise"), Qt::ALT | Qt::SHIFT | Qt::Key_Up, 0, 0.2, 0},
        {QT_TRANSLATE_NOOP("Tools", "Tilt the shown plane 0.2° anticlockwise"), Qt::ALT | Qt::SHIFT | Qt::Key_Down, 0, -0.2, 0},
        {QT_TRANSLATE_NOOP("Tools", "Turn the shown plane 1° out of the picture"), Qt::ALT | Qt::Key_PageUp, 0, 0, 1.0},
        {QT_TRANSLATE_NOOP("Tools", "Turn the shown plane 1° into the picture"), Qt::ALT | Qt::Key_PageDown, 0, 0, -1.0},
        {QT_TRANSLATE_NOOP("Tools", "Turn the shown plane 0.2° out of the picture"), Qt::ALT | Qt::SHIFT | Qt::Key_PageUp, 0, 0, 0.2},
        {QT_TRANSLATE_NOOP("Tools", "Turn the shown plane 0.2° into the picture"), Qt::ALT | Qt::SHIFT | Qt::Key_PageDown, 0, 0,
         -0.2},
    }};
    for (const Step& step : kSteps) {
        QAction* one = action(QCoreApplication::translate("Tools", step.text), QKeySequence(step.key), parent);
        QObject::connect(one, &QAction::triggered, &session, [&session, &state, gesture, step] {
            if (!session.measurement()) return;
            const auto [across, inPicture] = tiltAxes(*session.measurement(), state.turnDeg());
            const bool tiltsInPicture = step.inPictureDeg != 0.0;
            const PlaneStep move{step.shiftMm, tiltsInPicture ? across : inPicture, tiltsInPicture ? step.inPictureDeg : step.acrossDeg};
            if (state.depthKind() == ViewState::Depth::Landing)
                stepLanding(session, move, gesture->number());
            else
                stepOstium(session, move, gesture->number());
        });
        actions << one;
    }
    QAction* square = action(QCoreApplication::translate("Tools", "Landing plane square to the axis"), QKeySequence(Qt::ALT | Qt::Key_Home), parent);
    QObject::connect(square, &QAction::triggered, &session, [&session] { session.squareLanding(); });
    actions << square;
    static constexpr double kUsualPlugMm = 10.0, kPlugStepMm = 0.5;
    const auto plug = [&](const QString& text, const QKeySequence& key, auto next) {
        QAction* one = action(text, key, parent);
        QObject::connect(one, &QAction::triggered, &session, [&session, gesture, next] {
            const auto& record = session.record();
            if (!record.marks.contains(core::MarkKind::Circumflex) || !record.marks.contains(core::MarkKind::Ridge)) {
                session.say(Message::Kind::Warning, QCoreApplication::translate("Tools", "The plug plane needs the marks of the circumflex artery and the ridge."));
                return;
            }
            session.setPlug(next(record.landing.plugMm), gesture->number());
        });
        actions << one;
    };
    using Distance = std::optional<double>;
    plug(QCoreApplication::translate("Tools", "Plug plane on or off"), QKeySequence(Qt::ALT | Qt::Key_P),
         [](Distance now) { return now ? Distance() : Distance(kUsualPlugMm); });
    plug(QCoreApplication::translate("Tools", "Plug plane 0.5 mm further"), QKeySequence(Qt::ALT | Qt::Key_Period),
         [](Distance now) { return Distance(now.value_or(kUsualPlugMm) + kPlugStepMm); });
    plug(QCoreApplication::translate("Tools", "Plug plane 0.5 mm nearer"), QKeySequence(Qt::ALT | Qt::Key_Comma),
         [](Distance now) { return Distance(std::max(kPlugStepMm, now.value_or(kUsualPlugMm) - kPlugStepMm)); });
    return actions;
}

} // namespace gauge::app
