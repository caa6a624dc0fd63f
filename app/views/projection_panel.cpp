#include "app/views/projection_panel.h"

#include "app/commands/projection_commands.h"
#include "app/format/core_sentences.h"
#include "app/format/evidence_words.h"
#include "app/format/projection_words.h"
#include "app/format/quantity.h"
#include "app/format/rich_text.h"
#include "app/panels/editor_parts.h"
#include "app/panels/number_edit.h"
#include "app/views/wrapping_row.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QTableWidget>
#include <QTextDocument>
#include <QToolButton>
#include <QVBoxLayout>

namespace gauge::app {
namespace {

constexpr std::string_view kSections[] = {core::kLandingSection, core::kOstiumSection};

Role roleOfSection(std::string_view section) {
    return section == core::kOstiumSection ? Role::Ostium : Role::Landing;
}

/// Working views carry letters, chosen ones numbers: on the pictures and in the table.
QString letterOf(std::size_t place) {
    return QString(QChar(static_cast<char16_t>(u'a' + place)));
}

} // namespace

ProjectionPanel::ProjectionPanel(Session& session, ViewPlanner& planner, Extent extent, QWidget* parent)
    : QWidget(parent), m_session(session), m_planner(planner), m_extent(extent), m_dome(new ProjectionChart(ProjectionForm::Dome, this)),
      m_sections(new QComboBox(this)), m_words(wrappedLabel({})) {
    setFocusProxy(m_dome);
    m_words->setTextFormat(Qt::RichText);
    m_words->setContentsMargins(12, 8, 12, 8);
    for (const std::string_view section : kSections)
        m_sections->addItem(capitalised(projectionSectionName(section)), QString::fromUtf8(section.data(), static_cast<qsizetype>(section.size())));
    m_sections->setAccessibleName(tr("Views for"));
    m_sections->setToolTip(tr("The plane that the views are planned for"));
    connect(m_sections, &QComboBox::activated, this, [this](int row) { setSection(m_sections->itemData(row).toString().toStdString()); });
    makeActions();

    auto* tools = new WrappingRow;
    tools->setContentsMargins(10, 4, 10, 4);
    tools->addWidget(m_sections);
    for (QAction* action : m_actions) {
        auto* button = new QToolButton(this);
        button->setDefaultAction(action);
        tools->addWidget(button);
    }
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addLayout(tools);
    auto* words = new QScrollArea(this);
    words->setWidget(m_words);
    words->setWidgetResizable(true);
    words->setFrameShape(QFrame::NoFrame);
    words->setAccessibleName(tr("What the view shows"));
    auto* pictures = new QSplitter(Qt::Horizontal, this);
    pictures->setChildrenCollapsible(false);
    pictures->addWidget(m_dome);
    if (extent == Extent::Short) {
        pictures->addWidget(words);
        pictures->setStretchFactor(0, 1);
        pictures->setStretchFactor(1, 1);
        layout->addWidget(pictures, 1);
    } else {
        m_curve = new ProjectionChart(ProjectionForm::Curve, this);
        pictures->addWidget(m_curve);
        pictures->setStretchFactor(0, 3);
        pictures->setStretchFactor(1, 4);
        auto* below = new QSplitter(Qt::Horizontal, this);
        below->setChildrenCollapsible(false);
        below->addWidget(makeTable());
        below->addWidget(makeSettings());
        below->setStretchFactor(0, 3);
        below->setStretchFactor(1, 1);
        auto* whole = new QSplitter(Qt::Vertical, this);
        whole->setChildrenCollapsible(false);
        whole->addWidget(pictures);
        whole->addWidget(words);
        whole->addWidget(below);
        whole->setStretchFactor(0, 5);
        whole->setStretchFactor(1, 2);
        whole->setStretchFactor(2, 4);
        whole->setSizes({330, 110, 300});
        layout->addWidget(whole, 1);
    }
    for (ProjectionChart* chart : {m_dome, m_curve}) {
        if (!chart) continue;
        connect(chart, &ProjectionChart::pointed, this, [this, chart](const auto& view) { pointAt(view, chart); });
        connect(chart, &ProjectionChart::taken, this, [this](const core::CArmAngles& view) {
            std::optional<core::ViewAim> aim;
            for (const Row& row : m_rows)
                if (row.angles == view && !row.chosen) aim = row.aim;
            take(view, aim);
        });
    }
    connect(&planner, &ViewPlanner::changed, this, &ProjectionPanel::refresh);
    connect(&session.document(), &CaseDocument::changed, this, [this](CaseDocument::Part part) {
        using Part = CaseDocument::Part;
        if (part == Part::Projection || part == Part::Everything) refresh();
    });
    refresh();
}

void ProjectionPanel::makeActions() {
    const auto add = [this](const QString& text, const QString& tip, const QKeySequence& key, auto slot) {
        auto* action = new QAction(text, this);
        action->setShortcut(key);
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        action->setToolTip(tr("%1 (key %2)").arg(tip, key.toString(QKeySequence::NativeText)));
        connect(action, &QAction::triggered, this, slot);
        addAction(action);
        m_actions << action;
    };
    add(tr("Take this view"), tr("Take the view that is pointed at, or the row of the table, as a working view"), Qt::SHIFT | Qt::Key_V,
        [this] { m_pointer ? take(*m_pointer, std::nullopt) : takeRow(); });
    if (m_extent == Extent::Whole)
        add(tr("Give up a view"), tr("Give up the chosen view in the row of the table"), Qt::SHIFT | Qt::Key_G, [this] { dropRow(); });
}

QWidget* ProjectionPanel::makeTable() {
    m_table = new QTableWidget(0, 4, this);
    m_table->setHorizontalHeaderLabels({tr("View"), tr("C-arm"), tr("Width seen"), tr("What is lost")});
    m_table->setAccessibleName(tr("Working views"));
    m_table->setToolTip(tr("Enter or a double click takes the view of the row"));
    m_table->verticalHeader()->setVisible(false);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setWordWrap(true);
    m_table->setTabKeyNavigation(false);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_table->horizontalHeader()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    connect(m_table->horizontalHeader(), &QHeaderView::sectionResized, m_table, &QTableWidget::resizeRowsToContents);
    connect(m_table, &QTableWidget::activated, this, &ProjectionPanel::takeRow);
    connect(m_table, &QTableWidget::currentCellChanged, this, [this](int row) {
        if (row >= 0 && static_cast<std::size_t>(row) < m_rows.size() && m_table->hasFocus())
            pointAt(m_rows[static_cast<std::size_t>(row)].angles, nullptr);
    });
    return m_table;
}

QWidget* ProjectionPanel::makeSettings() {
    auto* inner = new QWidget;
    auto* form = new QFormLayout(inner);
    form->setContentsMargins(12, 8, 12, 8);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    const auto number = [&](double least, double most, const QString& name, auto slot) {
        auto* edit = new NumberEdit(least, most, name, inner);
        connect(edit, &NumberEdit::edited, this, slot);
        form->addRow(name, edit);
        return edit;
    };
    form->addRow(wrappedLabel(tr("Reach of the C-arm, degrees"), "heading"));
    m_rao = number(0, 180, tr("RAO up to"), &ProjectionPanel::setReach);
    m_lao = number(0, 180, tr("LAO up to"), &ProjectionPanel::setReach);
    m_cra = number(0, 90, tr("CRA up to"), &ProjectionPanel::setReach);
    m_cau = number(0, 90, tr("CAU up to"), &ProjectionPanel::setReach);
    form->addRow(wrappedLabel(tr("60 and 40 are common practice without a source: set what your room allows."), "soft"));
    form->addRow(wrappedLabel(tr("The patient"), "heading"));
    m_lying = wrappedLabel({}, "soft");
    form->addRow(m_lying);
    m_turned = new QCheckBox(tr("will lie otherwise, turned by"), inner);
    m_turned->setToolTip(tr("By how much the C-arm has to be turned on to see the same as at CT; 0 and 0: as if on the back"));
    connect(m_turned, &QCheckBox::clicked, this, &ProjectionPanel::setTurn);
    form->addRow(m_turned);
    m_primary = number(-core::kMostTurnDeg, core::kMostTurnDeg, tr("LAO + / RAO −"), &ProjectionPanel::setTurn);
    m_secondary = number(-core::kMostTurnDeg, core::kMostTurnDeg, tr("CRA + / CAU −"), &ProjectionPanel::setTurn);
    m_notes = wrappedLabel({}, "soft");
    form->addRow(m_notes);
    return scrolled(inner);
}

void ProjectionPanel::setFluoroscopy(const std::optional<core::CArmAngles>& angles) {
    if (angles == m_fluoroscopy) return;
    m_fluoroscopy = angles;
    refresh();
}

void ProjectionPanel::setSection(const std::string& section) {
    m_section = section;
    refresh();
}

void ProjectionPanel::refresh() {
    if (!m_planner.plan(m_section) && !m_planner.plans().empty()) m_section = m_planner.plans().front().section;
    m_sections->setCurrentIndex(m_sections->findData(QString::fromStdString(m_section)));
    m_sections->setEnabled(m_planner.plans().size() > 1);
    for (ProjectionChart* chart : {m_dome, m_curve}) {
        if (!chart) continue;
        if (!m_planner.plans().empty())
            chart->show(picture());
        else
            chart->setEmptyText(m_planner.problem() ? sentence(m_planner.problem()->message) : tr("The views are being planned …"));
    }
    refreshTable();
    refreshSettings();
    refreshWords();
}

ProjectionPicture ProjectionPanel::picture() const {
    ProjectionPicture picture;
    picture.reach = m_planner.options().reach;
    const auto addLine = [&](const core::SectionPlan& plan) {
        picture.lines.push_back({roleOfSection(plan.section), plan.plan.normal, plan.plan.enFace});
    };
    if (const core::SectionPlan* plan = m_planner.plan(m_section)) addLine(*plan); // first: the keyboard goes to its curve
    for (const core::SectionPlan& plan : m_planner.plans())
        if (plan.section != m_section) addLine(plan);
    if (const core::SectionPlan* plan = m_planner.plan(m_section))
        for (std::size_t i = 0; i < plan->plan.views.size(); ++i)
            picture.marks.push_back({ProjectionMark::Kind::Working, plan->plan.views[i].seen.angles, letterOf(i), roleOfSection(m_section), false});
    if (const auto& choice = m_session.record().projection)
        for (std::size_t i = 0; i < choice->content.views.size(); ++i) {
            const core::ChosenView& view = choice->content.views[i];
            const Role role = view.plane == core::input::kOstium ? Role::Ostium : Role::Landing;
            picture.marks.push_back({ProjectionMark::Kind::Chosen, view.angles, QString::number(i + 1), role, core::isStale(m_session.record(), view)});
        }
    if (m_fluoroscopy)
        picture.marks.push_back({ProjectionMark::Kind::Fluoroscopy, *m_fluoroscopy, tr("this run"), Role::Drawing, false});
    return picture;
}

void ProjectionPanel::refreshTable() {
    m_rows.clear();
    const core::SectionPlan* plan = m_planner.plan(m_section);
    if (plan)
        for (const core::WorkingView& view : plan->plan.views)
            m_rows.push_back({view.seen.angles, view.aim, std::nullopt});
    const auto& choice = m_session.record().projection;
    if (choice)
        for (std::size_t i = 0; i < choice->content.views.size(); ++i)
            m_rows.push_back({choice->content.views[i].angles, choice->content.views[i].aim, i});
    if (!m_table) return;
    const int before = m_table->currentRow();
    m_table->setRowCount(static_cast<int>(m_rows.size()));
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const Row& row = m_rows[i];
        QStringList cells;
        if (!row.chosen) {
            const core::WorkingView& view = plan->plan.views[i];
            QStringList lost = viewLossWords(view);
            if (view.movedDeg >= 0.5) lost << tr("the ideal, %1, is out of reach").arg(viewWords(view.ideal));
            cells = {tr("%1 · %2").arg(letterOf(i), aimName(view.aim)), viewWords(row.angles), viewWidthWords(view.seen), lost.join(QStringLiteral("; "))};
        } else {
            const core::ChosenView& view = choice->content.views[*row.chosen];
            const auto reading = m_planner.read(m_section, view.angles);
            const QString what = view.aim ? aimName(*view.aim) : tr("picked by hand");
            QStringList lost;
            if (core::isStale(m_session.record(), view)) lost << tr("chosen before the plane moved: choose again");
            if (reading && reading->lostOfLongestMm)
                lost << tr("%1 of the longest not shown").arg(quantity(*reading->lostOfLongestMm, Unit::Millimetre));
            if (reading && !reading->withinReach) lost << tr("beyond the reach");
            cells = {tr("%1 · chosen: %2, %3").arg(QString::number(*row.chosen + 1), what, projectionSectionName(view.plane)), viewWords(row.angles),
                     reading ? viewWidthWords(*reading) : QStringLiteral("–"), lost.join(QStringLiteral("; "))};
        }
        for (int column = 0; column < 4; ++column)
            m_table->setItem(static_cast<int>(i), column, new QTableWidgetItem(cells[column]));
    }
    if (before >= 0 && before < m_table->rowCount()) m_table->setCurrentCell(before, 0);
    m_table->resizeRowsToContents();
}

void ProjectionPanel::refreshSettings() {
    if (!m_rao) return;
    const core::ProjectionChoice choice = ProjectionCommand::present(m_session.document());
    m_rao->setValue(choice.reach.mostRaoDeg);
    m_lao->setValue(choice.reach.mostLaoDeg);
    m_cra->setValue(choice.reach.mostCraDeg);
    m_cau->setValue(choice.reach.mostCauDeg);
    m_lying->setText(tr("At CT: %1.").arg(lyingWords(m_planner.patientPosition())));
    m_turned->setChecked(choice.turn.has_value());
    m_primary->setEnabled(choice.turn.has_value());
    m_secondary->setEnabled(choice.turn.has_value());
    m_primary->setValue(choice.turn ? std::optional(choice.turn->primaryDeg) : std::nullopt);
    m_secondary->setValue(choice.turn ? std::optional(choice.turn->secondaryDeg) : std::nullopt);
    QStringList notes;
    if (const core::SectionPlan* plan = m_planner.plan(m_section))
        for (const core::Notice& notice : plan->plan.notices)
            notes << sentence(notice);
    m_notes->setText(notes.join(QStringLiteral("\n")));
    m_notes->setVisible(!notes.isEmpty());
}

QString ProjectionPanel::readout(const core::CArmAngles& view) const {
    const QString head = m_planner.options().reach.contains(view) ? viewWords(view) : tr("%1 · beyond the reach of the C-arm").arg(viewWords(view));
    QString text = QStringLiteral("<p><b>%1</b></p>").arg(head.toHtmlEscaped());
    std::optional<core::ViewReading> last;
    for (const core::SectionPlan& plan : m_planner.plans()) {
        const auto reading = m_planner.read(plan.section, view);
        if (!reading) continue;
        text += paragraph(tr("%1: %2").arg(capitalised(projectionSectionName(plan.section)), viewReadingWords(*reading).join(QStringLiteral("; "))));
        last = reading;
    }
    QStringList more;
    if (last && last->offProfileDeg) more << tr("%1 off the bend's profile").arg(quantity(*last->offProfileDeg, Unit::Degree));
    if (last && last->hiddenShare) more << tr("%1 of the appendage behind the atrium").arg(quantity(100.0 * *last->hiddenShare, Unit::Percent));
    if (!more.isEmpty()) text += paragraph(more.join(QStringLiteral("; ")));
    return text;
}

void ProjectionPanel::refreshWords() {
    if (m_planner.plans().empty()) {
        m_words->setText(paragraph(m_planner.problem() ? sentence(m_planner.problem()->message) : tr("The views are being planned …")));
        return;
    }
    const auto shown = m_pointer ? m_pointer : m_fluoroscopy;
    m_words->setText(shown ? readout(*shown)
                           : paragraph(tr("Point at a view to see what it shows; click or press Enter to take it. Squares and circles: en face. "
                                          "Letters: working views of the table. Numbers: chosen views.")));
}

void ProjectionPanel::pointAt(const std::optional<core::CArmAngles>& view, const ProjectionChart* from) {
    m_pointer = view;
    for (ProjectionChart* chart : {m_dome, m_curve})
        if (chart && chart != from) chart->setPointer(view);
    refreshWords();
}

void ProjectionPanel::take(const core::CArmAngles& view, std::optional<core::ViewAim> aim) {
    if (m_planner.plans().empty()) return;
    core::ChosenView chosen;
    chosen.angles = view;
    chosen.aim = aim;
    chosen.plane = std::string(core::planeInputOf(m_section));
    chosen.planeRevision = core::revisionOf(m_session.record(), core::input::placeOf(chosen.plane));
    m_session.document().push(std::make_unique<ChooseView>(m_session.document(), chosen));
}

void ProjectionPanel::takeRow() {
    const int row = m_table ? m_table->currentRow() : -1;
    if (row >= 0 && static_cast<std::size_t>(row) < m_rows.size() && !m_rows[static_cast<std::size_t>(row)].chosen)
        take(m_rows[static_cast<std::size_t>(row)].angles, m_rows[static_cast<std::size_t>(row)].aim);
}

void ProjectionPanel::dropRow() {
    const int row = m_table->currentRow();
    if (row >= 0 && static_cast<std::size_t>(row) < m_rows.size() && m_rows[static_cast<std::size_t>(row)].chosen)
        m_session.document().push(std::make_unique<DropView>(m_session.document(), *m_rows[static_cast<std::size_t>(row)].chosen));
}

void ProjectionPanel::setReach() {
    const core::CArmReach usual;
    const core::CArmReach reach{m_rao->value().value_or(usual.mostRaoDeg), m_lao->value().value_or(usual.mostLaoDeg),
                                m_cra->value().value_or(usual.mostCraDeg), m_cau->value().value_or(usual.mostCauDeg)};
    if (const auto valid = core::validate(reach); !valid) {
        m_session.say(Message::Kind::Warning, sentence(valid.error().message));
        refreshSettings();
        return;
    }
    m_session.document().push(std::make_unique<SetCArmReach>(m_session.document(), reach));
}

void ProjectionPanel::setTurn() {
    std::optional<core::PatientTurn> turn;
    if (m_turned->isChecked()) turn = core::PatientTurn{m_primary->value().value_or(0.0), m_secondary->value().value_or(0.0)};
    m_session.document().push(std::make_unique<SetPatientTurn>(m_session.document(), turn));
}

QString ProjectionPanel::text() const {
    QTextDocument document;
    document.setHtml(m_words->text());
    return document.toPlainText();
}

} // namespace gauge::app
