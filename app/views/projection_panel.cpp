#include "app/views/projection_panel.h"

#include "app/commands/projection_commands.h"
#include "app/format/core_sentences.h"
#include "app/format/evidence_words.h"
#include "app/format/projection_words.h"
#include "app/format/quantity.h"
#include "app/format/rich_text.h"
#include "app/panels/c_arm_settings.h"
#include "app/panels/editor_parts.h"
#include "app/views/beside.h"
#include "app/views/radiograph_view.h"
#include "app/views/wrapping_row.h"

#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QTabWidget>
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
    if (extent == Extent::Whole) m_radiograph = new RadiographView(session, this);

    auto* tools = new WrappingRow;
    tools->setContentsMargins(10, 4, 10, 4);
    tools->addWidget(m_sections);
    if (m_radiograph) tools->addWidget(m_radiograph->makeFillingBox(this));
    for (QAction* action : m_actions) {
        auto* button = new QToolButton(this);
        button->setDefaultAction(action);
        tools->addWidget(button);
    }
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addLayout(tools);
    auto* words = scrolled(m_words);
    words->setAccessibleName(tr("What the view shows"));
    layOut(words);
    for (ProjectionChart* chart : {m_dome, m_curve}) {
        if (!chart) continue;
        connect(chart, &ProjectionChart::pointed, this, [this, chart](const auto& view) { pointAt(view, chart); });
        connect(chart, &ProjectionChart::held, this, [this](const core::CArmAngles& view) {
            if (m_radiograph) m_radiograph->turnTo(view);
        });
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
        if (part == Part::Everything) m_isSteered = false;
        if (part == Part::Projection || part == Part::Everything) refresh();
    });
    if (m_radiograph) connectRadiograph();
    refresh();
}

/// Dome beside words; on the page of its own: dome beside the radiograph, curve beside words, below them the tables in turn.
void ProjectionPanel::layOut(QWidget* words) {
    auto* column = static_cast<QVBoxLayout*>(layout());
    if (m_extent == Extent::Short) {
        column->addWidget(beside(m_dome, words, 1, 1), 1);
        return;
    }
    m_curve = new ProjectionChart(ProjectionForm::Curve, this);
    m_settings = new CArmSettings(m_session, m_planner);
    auto* tabs = new QTabWidget(this);
    tabs->setDocumentMode(true);
    tabs->setAccessibleName(tr("Working views, C-arm and patient"));
    tabs->addTab(makeTable(), tr("Working views"));
    tabs->addTab(scrolled(m_settings), tr("C-arm and patient"));
    auto* whole = new QSplitter(Qt::Vertical, this);
    whole->setChildrenCollapsible(false);
    whole->addWidget(beside(m_dome, m_radiograph, 1, 1));
    whole->addWidget(beside(m_curve, words, 1, 1));
    whole->addWidget(tabs);
    whole->setStretchFactor(0, 5);
    whole->setStretchFactor(1, 3);
    whole->setStretchFactor(2, 3);
    whole->setSizes({330, 190, 210});
    column->addWidget(whole, 1);
}

void ProjectionPanel::connectRadiograph() {
    connect(m_radiograph, &RadiographView::anglesChanged, this, [this](const core::CArmAngles& view) {
        m_isSteered = m_isSteered || !m_isSettingArm;
        for (ProjectionChart* chart : {m_dome, m_curve})
            chart->setArm(view);
        refreshWords();
    });
    for (ProjectionChart* chart : {m_dome, m_curve})
        chart->setArm(m_radiograph->angles());
    connect(m_settings, &CArmSettings::distancesChanged, m_radiograph, &RadiographView::setDistances);
    connect(m_settings, &CArmSettings::distancesChanged, this, &ProjectionPanel::distancesChanged);
}

void ProjectionPanel::setSeats(const Seats& seats) {
    if (m_radiograph) m_radiograph->setSeats(seats);
}

void ProjectionPanel::refreshArm() {
    if (!m_radiograph || m_isSteered) return;
    const core::SectionPlan* plan = m_planner.plan(m_section);
    std::optional<core::CArmAngles> home;
    if (plan && !plan->plan.views.empty()) home = plan->plan.views.front().seen.angles;
    if (const auto& choice = m_session.record().projection)
        for (const core::ChosenView& view : choice->content.views)
            if (view.plane == core::planeInputOf(m_section)) home = view.angles;
    if (!home) return;
    m_isSettingArm = true;
    m_radiograph->setAngles(*home);
    m_isSettingArm = false;
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
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents); // also when columns become narrower
    connect(m_table, &QTableWidget::activated, this, &ProjectionPanel::takeRow);
    connect(m_table, &QTableWidget::currentCellChanged, this, [this](int row) {
        if (row < 0 || static_cast<std::size_t>(row) >= m_rows.size() || !m_table->hasFocus()) return;
        pointAt(m_rows[static_cast<std::size_t>(row)].angles, nullptr);
        m_radiograph->turnTo(m_rows[static_cast<std::size_t>(row)].angles);
    });
    return m_table;
}

void ProjectionPanel::setFluoroscopy(const std::optional<core::CArmAngles>& angles) {
    if (angles == m_fluoroscopy) return;
    m_fluoroscopy = angles;
    refresh();
}

void ProjectionPanel::setSection(const std::string& section) {
    m_section = section;
    m_isSteered = false;
    refresh();
}

void ProjectionPanel::bringUpToDate() {
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
    if (m_settings) {
        const core::SectionPlan* plan = m_planner.plan(m_section);
        m_settings->refresh(plan ? plan->plan.notices : std::vector<core::Notice>{});
    }
    refreshArm();
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
    auto shown = m_pointer ? m_pointer : m_fluoroscopy;
    if (!shown && m_radiograph) shown = m_radiograph->angles();
    const QString signs = m_radiograph ? tr("Double ring: the simulated radiograph; drag turns it. Squares and circles: en face. Letters: working views of "
                                            "the table. Numbers: chosen views.")
                                       : tr("Point at a view to see what it shows; click or press Enter to take it. Squares and circles: en face. "
                                            "Letters: working views. Numbers: chosen views.");
    m_words->setText(shown ? readout(*shown) + (m_pointer ? QString() : paragraph(signs)) : paragraph(signs));
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
    if (m_radiograph) m_radiograph->setAngles(view);
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

QString ProjectionPanel::text() const {
    QTextDocument document;
    document.setHtml(m_words->text());
    return document.toPlainText();
}

} // namespace gauge::app
