#include "app/panels/landing_editor.h"

#include "app/panels/number_edit.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <cmath>

namespace gauge::app {
namespace {

constexpr double kLeastLandingMm = 0.5, kMostLandingMm = 80.0;
constexpr int kOwnStep = 0; // each typed number is a step of undo

} // namespace

LandingEditor::LandingEditor(Session& session, ViewState& state, QWidget* parent)
    : QWidget(parent), m_session(session), m_state(state),
      m_first(new NumberEdit(kLeastLandingMm, kMostLandingMm, tr("Landing zone, mm beyond the ostium"), this)),
      m_second(new NumberEdit(kLeastLandingMm, kMostLandingMm, tr("Second landing plane, mm beyond the ostium"), this)),
      m_plug(new NumberEdit(kLeastLandingMm, kMostLandingMm, tr("Plug plane, mm beyond the ridge"), this)),
      m_showFirst(new QPushButton(this)), m_showSecond(new QPushButton(this)), m_showPlug(new QPushButton(this)) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(4);
    grid->setVerticalSpacing(2);
    grid->setColumnStretch(0, 1);
    int line = 0;
    const auto add = [&](const QString& words, const QString& tip, NumberEdit* edit, QPushButton* show, auto shown) {
        auto* label = new QLabel(words, this);
        label->setBuddy(edit);
        label->setWordWrap(true);
        edit->setPlaceholderText(tr("none"));
        edit->setToolTip(tip);
        show->setText(tr("Show"));
        show->setObjectName("link");
        show->setFocusPolicy(Qt::TabFocus);
        show->setCursor(Qt::PointingHandCursor);
        show->setAccessibleName(tr("Show: %1").arg(words));
        show->setToolTip(tr("Show the cross-section there"));
        connect(show, &QPushButton::clicked, this, [this, shown] {
            shown();
            m_state.setPage(Page::Appendage);
        });
        grid->addWidget(label, line, 0);
        grid->addWidget(edit, line, 1);
        grid->addWidget(new QLabel(tr("mm"), this), line, 2);
        grid->addWidget(show, line++, 3);
    };
    add(tr("Landing zone"), tr("How far beyond the ostium along the axis the implant will hold"), m_first, m_showFirst,
        [this] { m_state.showLanding(); });
    add(tr("Second plane"), tr("One more plane along the axis to compare with; empty: none"), m_second, m_showSecond, [this] {
        if (const auto further = m_session.furtherLandings(); !further.empty()) m_state.showDepth(further.front()->depthMm);
    });
    add(tr("Plug plane"), {}, m_plug, m_showPlug, [this] { m_state.showPlug(); });
    connect(m_first, &NumberEdit::edited, this, [this](std::optional<double> mm) {
        if (mm) m_session.moveLanding(*mm, kOwnStep);
        refresh(); // held on the axis, or left as it was
    });
    connect(m_second, &NumberEdit::edited, this, [this](std::optional<double> mm) {
        m_session.setSecondLanding(mm, kOwnStep);
        refresh();
    });
    connect(m_plug, &NumberEdit::edited, this, [this](std::optional<double> mm) { m_session.setPlug(mm, kOwnStep); });
    const auto again = [this] { refresh(); };
    connect(&session.document(), &CaseDocument::changed, this, again);
    connect(&session, &Session::measurementChanged, this, again);
    connect(&session, &Session::landingChanged, this, again);
    refresh();
}

void LandingEditor::refresh() {
    const core::CaseRecord& record = m_session.record();
    const auto& depths = record.landing.depthsMm;
    const bool measured = m_session.measurement();
    const bool hasMarks = record.marks.contains(core::MarkKind::Circumflex) && record.marks.contains(core::MarkKind::Ridge);
    const auto place = m_session.landingPlace();
    const auto show = [](NumberEdit* edit, std::optional<double> mm) {
        if (!edit->hasFocus() || edit->value() != mm) edit->setValue(mm);
    };
    const auto tenths = [](double mm) { return std::round(10.0 * mm) / 10.0; }; // a drag stops anywhere
    show(m_first, place ? std::optional(tenths(place->depthMm)) : depths.empty() ? std::nullopt : std::optional(depths.front()));
    show(m_second, depths.size() > 1 ? std::optional(depths[1]) : std::nullopt);
    show(m_plug, record.landing.plugMm);
    m_first->setEnabled(measured);
    m_second->setEnabled(measured);
    m_plug->setEnabled(measured && hasMarks);
    m_plug->setToolTip(hasMarks ? tr("Through the circumflex artery and the wall this far beyond the tip of the ridge; empty: none")
                                : tr("Mark the circumflex artery and the ridge first: the plug plane is placed by them"));
    m_showFirst->setEnabled(m_session.landing());
    m_showSecond->setEnabled(!m_session.furtherLandings().empty());
    m_showPlug->setEnabled(m_session.plug());
}

} // namespace gauge::app
