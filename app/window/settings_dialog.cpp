#include "app/window/settings_dialog.h"

#include "app/document/case_document.h"
#include "app/window/language.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>
#include <QToolButton>
#include <QVBoxLayout>

namespace gauge::app {

SettingsDialog::SettingsDialog(Settings& settings, ViewState& state, QWidget* parent)
    : QDialog(parent), m_settings(settings), m_state(state) {
    setWindowTitle(tr("Settings"));
    setObjectName("settings");
    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->setHorizontalSpacing(18);
    form->setVerticalSpacing(10);
    addScreen(*form);
    addCases(*form);
    addPictures(*form);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::accept);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(20, 18, 20, 16);
    layout->setSpacing(18);
    layout->setSizeConstraint(QLayout::SetMinimumSize);
    layout->addLayout(form);
    layout->addStretch(1);
    layout->addWidget(buttons);
}

void SettingsDialog::addScreen(QFormLayout& form) {
    auto* language = new QComboBox;
    language->setObjectName("language");
    language->addItem(tr("As the system"), QString());
    for (const QString& one : languages())
        language->addItem(nameOfLanguage(one), one);
    language->setCurrentIndex(std::max(0, language->findData(m_settings.language())));
    auto* later = new QLabel(tr("Holds from the next start."));
    later->setObjectName("soft");
    connect(language, &QComboBox::currentIndexChanged, this,
            [this, language] { m_settings.setLanguage(language->currentData().toString()); });
    form.addRow(tr("&Language"), language);
    form.addRow(later);

    auto* theme = new QComboBox;
    theme->setObjectName("theme");
    theme->addItem(tr("Dark, for the reading room"), QStringLiteral("dark"));
    theme->addItem(tr("Light, for print and bright rooms"), QStringLiteral("light"));
    theme->addItem(tr("As the system"), QStringLiteral("system"));
    theme->setCurrentIndex(std::max(0, theme->findData(m_settings.theme())));
    connect(theme, &QComboBox::currentIndexChanged, this, [this, theme] {
        m_settings.setTheme(theme->currentData().toString());
        emit themeChosen(theme->currentData().toString());
    });
    form.addRow(tr("&Theme"), theme);

    auto* hide = new QCheckBox(tr("&Hide names on screen and in pictures from the start"));
    hide->setObjectName("namesHidden");
    hide->setChecked(m_settings.namesHidden());
    connect(hide, &QCheckBox::toggled, this, [this](bool on) {
        m_settings.setNamesHidden(on);
        m_state.setNamesHidden(on);
    });
    form.addRow(hide); // both columns: in the right one alone it is cut where long rows wrap
}

void SettingsDialog::addCases(QFormLayout& form) {
    auto* author = new QLineEdit(m_settings.author());
    author->setObjectName("author");
    author->setPlaceholderText(currentAuthor());
    author->setToolTip(tr("Written into the case's journal and its reports"));
    connect(author, &QLineEdit::editingFinished, this, [this, author] { m_settings.setAuthor(author->text().trimmed()); });
    form.addRow(tr("Your &name"), author);

    auto* autosave = new QCheckBox(tr("&Keep unsaved work"));
    autosave->setToolTip(tr("It is offered again when the program ended without saving"));
    autosave->setObjectName("autosave");
    autosave->setChecked(m_settings.autosave());
    connect(autosave, &QCheckBox::toggled, this, [this](bool on) {
        m_settings.setAutosave(on);
        emit autosaveChanged(on);
    });
    form.addRow(autosave);

    auto* chart = new QLineEdit(m_settings.defaultChart());
    chart->setObjectName("chart");
    chart->setPlaceholderText(tr("the invented demonstration chart"));
    auto* browse = new QToolButton;
    browse->setText(tr("Choose …"));
    browse->setToolTip(tr("Choose the size chart that a new case begins with"));
    const auto keep = [this, chart] { m_settings.setDefaultChart(chart->text().trimmed()); };
    connect(chart, &QLineEdit::editingFinished, this, keep);
    connect(browse, &QToolButton::clicked, this, [this, chart, keep] {
        const QString file = QFileDialog::getOpenFileName(this, tr("Choose a size chart"), chart->text(),
                                                          tr("Size charts (*.json)"));
        if (file.isEmpty()) return;
        chart->setText(file);
        keep();
    });
    auto* row = new QHBoxLayout;
    row->addWidget(chart, 1);
    row->addWidget(browse);
    auto* label = new QLabel(tr("Size &chart"));
    label->setBuddy(chart);
    form.addRow(label, row);
}

void SettingsDialog::addPictures(QFormLayout& form) {
    auto* dpi = new QSpinBox;
    dpi->setObjectName("dpi");
    dpi->setRange(72, 600);
    dpi->setSingleStep(10);
    dpi->setValue(m_settings.dpi());
    dpi->setSuffix(tr(" dots per inch"));
    connect(dpi, &QSpinBox::valueChanged, this, [this](int value) { m_settings.setDpi(value); });
    form.addRow(tr("&Pictures"), dpi);
}

} // namespace gauge::app
