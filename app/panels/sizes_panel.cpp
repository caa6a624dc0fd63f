#include "app/panels/sizes_panel.h"

#include "app/commands/decision_commands.h"
#include "app/format/core_sentences.h"
#include "app/format/decision_words.h"
#include "app/format/sizing_sentences.h"
#include "app/models/demo_charts.h"
#include "app/panels/editor_parts.h"
#include "app/panels/number_edit.h"
#include "app/panels/sizes_table.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QGridLayout>
#include <QLabel>
#include <QMenu>
#include <QToolButton>
#include <QVBoxLayout>

namespace gauge::app {
namespace {

constexpr double kLeastMmHg = 3.0, kMostMmHg = 60.0; // those of core/sizing
constexpr double kShownChance = 0.05;               // sizes below it say their warnings only when selected

constexpr std::array kCauses{core::PressureChange::Unknown, core::PressureChange::Passing, core::PressureChange::Lasting};

QLabel* wrapped(QWidget* parent, const char* name = "") {
    auto* label = new QLabel(parent);
    label->setObjectName(QString::fromLatin1(name));
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

} // namespace

SizesPanel::SizesPanel(Answers& answers, QWidget* parent)
    : QWidget(parent), m_answers(answers), m_model(this), m_table(new SizesTable(m_model, this)) {
    setAutoFillBackground(true);
    m_load = new QAction(tr("Load a device chart …"), this);
    m_load->setToolTip(tr("Load a chart typed from the device's current instructions"));
    connect(m_load, &QAction::triggered, this, &SizesPanel::askForChart);
    m_choose = new QAction(tr("Choose this size"), this);
    m_choose->setToolTip(tr("Choose the selected size (Enter in the list)"));
    connect(m_choose, &QAction::triggered, this, [this] { choose(m_model.sizeAt(m_table->currentIndex().row())); });
    m_giveUp = new QAction(tr("Give up the chosen size"), this);
    connect(m_giveUp, &QAction::triggered, this, [this] { choose({}); });

    auto* inner = new QWidget;
    inner->setAutoFillBackground(true);
    auto* layout = new QVBoxLayout(inner);
    layout->setContentsMargins(8, 6, 8, 8);
    layout->setSpacing(8);
    layout->addWidget(makeQuestion());
    m_problem = wrapped(this, "warning");
    layout->addWidget(m_problem);
    layout->addWidget(m_table);
    auto* buttons = new QHBoxLayout;
    for (QAction* action : {m_choose, m_giveUp}) {
        auto* button = new QToolButton(this);
        button->setDefaultAction(action);
        button->setFocusPolicy(Qt::TabFocus);
        buttons->addWidget(button);
    }
    buttons->addStretch(1);
    layout->addLayout(buttons);
    m_answer = wrapped(this);
    layout->addWidget(m_answer);
    m_warnings = wrapped(this);
    layout->addWidget(m_warnings);
    layout->addStretch(1);

    auto* scroll = scrolled(inner);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);

    connect(m_table, &SizesTable::chooseRequested, this, &SizesPanel::choose);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this, &SizesPanel::refreshWarnings);
    connect(&answers, &Answers::sizingChanged, this, &SizesPanel::refresh);
    connect(&answers, &Answers::workChanged, this, &SizesPanel::refreshWarnings);
    refresh();
}

QWidget* SizesPanel::makeQuestion() {
    auto* part = new QWidget;
    auto* grid = new QGridLayout(part);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(8);
    m_chart = wrapped(part);
    auto* load = new QToolButton(part);
    load->setText(tr("Chart …"));
    load->setToolTip(tr("Load a device chart from a file, or an invented one"));
    load->setPopupMode(QToolButton::InstantPopup);
    load->setFocusPolicy(Qt::TabFocus);
    auto* menu = new QMenu(load);
    menu->addAction(m_load);
    menu->addSeparator();
    for (const DemoChart& demo : demoCharts())
        menu->addAction(demo.title, this, [this, path = demo.path] { loadChart(path); });
    load->setMenu(menu);
    grid->addWidget(m_chart, 0, 0, 1, 5);
    grid->addWidget(load, 0, 5, Qt::AlignRight | Qt::AlignTop);

    const auto number = [&](const QString& words, const QString& name, int column) {
        auto* label = new QLabel(words, part);
        label->setObjectName("soft");
        label->setWordWrap(true);
        auto* edit = new NumberEdit(kLeastMmHg, kMostMmHg, name, part);
        label->setBuddy(edit);
        connect(edit, &NumberEdit::edited, this, &SizesPanel::setPressures);
        grid->addWidget(label, 1, column, 1, 2, Qt::AlignBottom);
        grid->addWidget(edit, 2, column, 1, 2, Qt::AlignLeft);
        return edit;
    };
    m_decision = number(tr("Decision pressure, mmHg"), tr("Decision pressure in mmHg"), 0);
    m_lowest = number(tr("Lowest to live with, mmHg"), tr("Lowest pressure to live with in mmHg"), 2);
    m_highest = number(tr("Highest to live with, mmHg"), tr("Highest pressure to live with in mmHg"), 4);
    auto* causeLabel = new QLabel(tr("Why the pressures differ"), part);
    causeLabel->setObjectName("soft");
    m_cause = new QComboBox(part);
    m_cause->setAccessibleName(causeLabel->text());
    causeLabel->setBuddy(m_cause);
    for (const core::PressureChange cause : kCauses)
        m_cause->addItem(causeWords(cause));
    m_cause->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_cause->setMinimumContentsLength(24);
    connect(m_cause, &QComboBox::activated, this, &SizesPanel::setCause);
    m_recur = new QCheckBox(tr("Regurgitation may come back"), part);
    m_recur->setToolTip(tr("Then the pressures before the repair stay among those to live with"));
    connect(m_recur, &QCheckBox::clicked, this, &SizesPanel::setCause);
    grid->addWidget(causeLabel, 3, 0, 1, 6);
    grid->addWidget(m_cause, 4, 0, 1, 6);
    grid->addWidget(m_recur, 5, 0, 1, 6);
    for (int column = 0; column < 6; ++column)
        grid->setColumnStretch(column, 1);
    return part;
}

void SizesPanel::askForChart() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Load a device chart"), {},
                                                      tr("Device charts (*.json);;All files (*)"));
    if (!path.isEmpty()) loadChart(path);
}

void SizesPanel::loadChart(const QString& path) {
    const auto chart = readChartFile(path);
    Session& session = m_answers.session();
    if (!chart) {
        session.say(Message::Kind::Error, QString::fromStdString(chart.error().message));
        return;
    }
    const QString source = path.startsWith(QLatin1Char(':')) ? path.mid(2) : QFileInfo(path).fileName();
    session.document().push(std::make_unique<LoadChart>(session.document(), chart->text, source.toStdString()));
}

void SizesPanel::choose(const std::string& size) {
    if (size.empty() && SizingCommand::present(m_answers.session().document()).size.empty()) return;
    CaseDocument& document = m_answers.session().document();
    document.push(std::make_unique<ChooseSize>(document, size));
}

void SizesPanel::setPressures() {
    Session& session = m_answers.session();
    session.document().push(std::make_unique<SetSizingPressures>(session.document(), m_decision->value(),
                                                                 m_lowest->value(), m_highest->value()));
}

void SizesPanel::setCause() {
    CaseDocument& document = m_answers.session().document();
    document.push(std::make_unique<SetPressureCause>(
        document, kCauses[static_cast<std::size_t>(std::max(0, m_cause->currentIndex()))], m_recur->isChecked()));
}

void SizesPanel::refreshQuestion() {
    const core::SizingChoice choice = SizingCommand::present(m_answers.session().document());
    if (const core::ChartReading* chart = m_answers.chart())
        m_chart->setText(tr("%1, version %2 of %3. %4")
                             .arg(QString::fromStdString(chart->chart.name), QString::fromStdString(chart->chart.version),
                                  QString::fromStdString(chart->chart.date), QString::fromStdString(chart->chart.source)));
    else
        m_chart->setText(tr("No device chart is loaded."));
    m_decision->setValue(choice.decisionPressureMmHg);
    m_lowest->setValue(choice.lowestMmHg);
    m_highest->setValue(choice.highestMmHg);
    const auto usual = m_answers.decisionPressureMmHg();
    m_decision->setPlaceholderText(usual ? plainNumber(*usual) : QString());
    const core::LivingRange living = m_answers.livingRange();
    m_lowest->setPlaceholderText(plainNumber(living.lowestMmHg));
    m_highest->setPlaceholderText(plainNumber(living.highestMmHg));
    for (std::size_t i = 0; i < kCauses.size(); ++i)
        if (kCauses[i] == choice.cause) m_cause->setCurrentIndex(static_cast<int>(i));
    m_cause->setToolTip(m_cause->currentText());
    m_recur->setChecked(choice.regurgitationMayRecur);
}

void SizesPanel::refresh() {
    refreshQuestion();
    m_model.setAnswers(m_answers);
    const core::SizingAnswer* answer = m_answers.sizing();
    m_table->setVisible(answer);
    m_answer->setVisible(answer);
    m_problem->setVisible(!m_answers.missing().isEmpty());
    m_problem->setText(m_answers.missing().join(QStringLiteral("\n\n")));
    if (answer)
        m_answer->setText(QStringList{widthSentence(*answer), slopeSentence(*answer), livingSentence(*answer),
                                      leadingSentence(*answer)}
                              .join(QStringLiteral("\n\n")));
    refreshWarnings();
}

void SizesPanel::refreshWarnings() {
    const core::SizingAnswer* answer = m_answers.sizing();
    const core::SizeFit* chosen = m_answers.chosenSize();
    const int row = m_table->currentIndex().row();
    m_choose->setEnabled(answer && row >= 0);
    m_giveUp->setEnabled(!SizingCommand::present(m_answers.session().document()).size.empty());
    m_warnings->setVisible(answer);
    if (!answer) return;
    QStringList lines;
    const auto add = [&](const std::vector<core::Notice>& notices, const QString& title) {
        if (notices.empty()) return;
        lines << title;
        for (const core::Notice& n : notices)
            lines << QStringLiteral("• ") + sentence(n);
    };
    if (m_answers.isWorking() && !m_answers.hasWhatNext()) lines << tr("The sizes are being judged again …");
    add(answer->warnings, tr("Warnings"));
    for (std::size_t i = 0; i < answer->sizes.size(); ++i) {
        const core::SizeFit& fit = answer->sizes[i];
        if (fit.fitChance >= kShownChance || &fit == chosen || static_cast<int>(i) == row)
            add(fit.warnings, tr("Against size %1").arg(QString::fromStdString(fit.name)));
    }
    if (m_answers.chart()) add(m_answers.chart()->notices, tr("About the chart"));
    add(answer->notices, tr("What was assumed"));
    lines << tr("Device choice follows the device's current instructions for use, local protocol and law.");
    m_warnings->setText(lines.join(QStringLiteral("\n\n")));
}

} // namespace gauge::app
