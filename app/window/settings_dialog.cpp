#include "app/window/settings_dialog.h"

#include "app/document/case_document.h"
#include "app/format/language.h"
#include "app/models/demo_charts.h"
#include "app/window/settings_library.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QSpinBox>
#include <QTabWidget>
#include <QToolButton>
#include <QVBoxLayout>

namespace gauge::app {
namespace {

QLabel* softNote(const QString& text) {
    auto* note = new QLabel(text);
    note->setObjectName("soft");
    note->setWordWrap(true);
    return note;
}

/// A page that scrolls where the screen is small, and is never narrower than its texts.
class SettingsPage : public QScrollArea {
public:
    explicit SettingsPage(QWidget* inner) {
        setWidget(inner);
        setWidgetResizable(true);
        setFrameShape(QFrame::NoFrame);
        setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    }
    QSize minimumSizeHint() const override {
        return {widget()->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width(), 160};
    }
    QSize sizeHint() const override { return minimumSizeHint().expandedTo(widget()->sizeHint() + QSize(12, 4)); }

protected:
    void resizeEvent(QResizeEvent* event) override {
        QScrollArea::resizeEvent(event);
        keepHeight();
    }
    bool eventFilter(QObject* object, QEvent* event) override {
        const bool isHandled = QScrollArea::eventFilter(object, event);
        if (object == widget() && event->type() == QEvent::LayoutRequest) {
            keepHeight();
            updateGeometry(); // other rows may be wider
        }
        return isHandled;
    }

private:
    /// Rows that wrap take their height from the width, of which a scroll area knows nothing: it would press them into each other.
    void keepHeight() {
        const QLayout* rows = widget()->layout();
        if (rows->hasHeightForWidth()) widget()->setMinimumHeight(rows->totalHeightForWidth(viewport()->width()));
    }
};

} // namespace

SettingsDialog::SettingsDialog(Settings& settings, ViewState& state, QWidget* parent)
    : QDialog(parent), m_settings(settings), m_state(state), m_parts(new QTabWidget(this)) {
    setWindowTitle(tr("Settings"));
    setObjectName("settings");
    m_parts->setDocumentMode(true);
    m_parts->setUsesScrollButtons(false);
    m_parts->setAccessibleName(tr("Parts of the settings"));
    addScreen(addPart(tr("Screen")));
    addPerson(addPart(tr("Person")));
    QFormLayout& cases = addPart(tr("Cases"));
    addCases(cases);
    new LibrarySettingsPart(cases, this);
    addReports(addPart(tr("Reports")));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::accept);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 14);
    layout->setSpacing(14);
    layout->setSizeConstraint(QLayout::SetMinimumSize);
    layout->addWidget(m_parts, 1);
    layout->addWidget(buttons);
    for (QLineEdit* line : findChildren<QLineEdit*>()) { // what may be written into an empty line can be read
        constexpr int kInnerMarginsPx = 24;
        line->ensurePolished();
        line->setMinimumWidth(line->fontMetrics().horizontalAdvance(line->placeholderText()) + kInnerMarginsPx);
    }
}

QFormLayout& SettingsDialog::addPart(const QString& title) {
    auto* inner = new QWidget;
    auto* form = new QFormLayout(inner);
    form->setRowWrapPolicy(QFormLayout::WrapAllRows); // long words in any language; WrapLongRows lets wide fields lie over each other
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->setContentsMargins(6, 14, 6, 10);
    form->setHorizontalSpacing(18);
    form->setVerticalSpacing(10);
    auto* page = new SettingsPage(inner);
    page->setFocusPolicy(Qt::NoFocus);
    m_parts->addTab(page, title);
    return *form;
}

QLineEdit* SettingsDialog::addPath(QFormLayout& form, const QString& label, const QString& tip,
                                   const std::function<QString()>& choose) {
    auto* line = new QLineEdit;
    auto* browse = new QToolButton;
    browse->setText(tr("Choose …"));
    browse->setToolTip(tip);
    browse->setFocusPolicy(Qt::TabFocus);
    connect(browse, &QToolButton::clicked, this, [line, choose] {
        const QString path = choose();
        if (path.isEmpty()) return;
        line->setText(path);
        emit line->editingFinished();
    });
    auto* row = new QHBoxLayout;
    row->setSpacing(6);
    row->addWidget(line, 1);
    row->addWidget(browse);
    auto* words = new QLabel(label);
    words->setBuddy(line);
    line->setAccessibleName(QString(label).remove(QLatin1Char('&')));
    form.addRow(words, row);
    return line;
}

void SettingsDialog::addScreen(QFormLayout& form) {
    auto* language = new QComboBox;
    language->setObjectName("language");
    language->addItem(tr("As the system"), QString());
    for (const QString& one : languages())
        language->addItem(nameOfLanguage(one), one);
    language->setCurrentIndex(std::max(0, language->findData(m_settings.language())));
    connect(language, &QComboBox::currentIndexChanged, this,
            [this, language] { m_settings.setLanguage(language->currentData().toString()); });
    form.addRow(tr("&Language"), language);
    form.addRow(softNote(tr("Another language holds from the next start.")));

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

    auto* size = new QComboBox;
    size->setObjectName("textSize");
    size->addItem(tr("Usual"), 100);
    size->addItem(tr("Larger"), 115);
    size->addItem(tr("Largest"), 130);
    size->setCurrentIndex(std::max(0, size->findData(m_settings.textPercent())));
    connect(size, &QComboBox::currentIndexChanged, this, [this, size] {
        m_settings.setTextPercent(size->currentData().toInt());
        emit textSizeChosen(size->currentData().toInt());
    });
    form.addRow(tr("Si&ze of letters"), size);

    auto* hide = new QCheckBox(tr("&Hide names on screen and in pictures from the start"));
    hide->setObjectName("namesHidden");
    hide->setChecked(m_settings.namesHidden());
    connect(hide, &QCheckBox::toggled, this, [this](bool on) {
        m_settings.setNamesHidden(on);
        m_state.setNamesHidden(on);
    });
    form.addRow(hide); // both columns: in the right one alone it is cut where long rows wrap
    form.addRow(softNote(tr("Lengths are in mm, areas in mm², volumes in mL, pressures in mmHg: always, so that one figure "
                            "looks alike on every screen.")));
}

void SettingsDialog::addPerson(QFormLayout& form) {
    auto* author = new QLineEdit(m_settings.author());
    author->setObjectName("author");
    author->setPlaceholderText(currentAuthor());
    author->setToolTip(tr("Written into the case's journal and its reports"));
    connect(author, &QLineEdit::editingFinished, this, [this, author] { m_settings.setAuthor(author->text().trimmed()); });
    form.addRow(tr("Your &name"), author);
    auto* role = new QLineEdit(m_settings.role());
    role->setObjectName("role");
    role->setPlaceholderText(tr("for example: imaging cardiologist"));
    role->setToolTip(tr("Put behind your name where you sign a decision"));
    connect(role, &QLineEdit::editingFinished, this, [this, role] { m_settings.setRole(role->text().trimmed()); });
    form.addRow(tr("Your &role"), role);
    form.addRow(softNote(tr("Name and role are offered where a decision is signed. They are no proof of who sat here.")));
}

void SettingsDialog::addCases(QFormLayout& form) {
    auto* autosave = new QCheckBox(tr("&Keep unsaved work"));
    autosave->setToolTip(tr("It is offered again when the program ended without saving"));
    autosave->setObjectName("autosave");
    autosave->setChecked(m_settings.autosave());
    form.addRow(autosave);
    QLineEdit* folder = addPath(form, tr("&Unsaved work in"), tr("Choose the folder in which unsaved work is kept"), [this] {
        return QFileDialog::getExistingDirectory(this, tr("Folder for unsaved work"), m_settings.unsavedFolder());
    });
    folder->setObjectName("unsavedFolder");
    folder->setText(m_settings.unsavedFolder());
    folder->setPlaceholderText(tr("your own data folder"));
    folder->setEnabled(autosave->isChecked());
    connect(folder, &QLineEdit::editingFinished, this, [this, folder] {
        m_settings.setUnsavedFolder(folder->text().trimmed());
        emit autosaveChanged(m_settings.autosave());
    });
    connect(autosave, &QCheckBox::toggled, this, [this, folder](bool on) {
        m_settings.setAutosave(on);
        folder->setEnabled(on);
        emit autosaveChanged(on);
    });

    QLineEdit* chart = addPath(form, tr("Size &chart"), tr("Choose the size chart that a new case begins with"), [this] {
        return QFileDialog::getOpenFileName(this, tr("Choose a size chart"), m_settings.defaultChart(), tr("Size charts (*.json)"));
    });
    chart->setObjectName("chart");
    chart->setText(m_settings.defaultChart());
    chart->setPlaceholderText(tr("none: chosen in each case"));
    auto* problem = softNote({});
    problem->setObjectName("warning");
    problem->hide();
    form.addRow(problem);
    connect(chart, &QLineEdit::editingFinished, this, [this, chart, problem] {
        const QString path = chart->text().trimmed();
        const auto read = path.isEmpty() ? core::Result<ChartFile>(ChartFile{}) : readChartFile(path);
        problem->setVisible(!read);
        if (!read)
            problem->setText(QString::fromStdString(read.error().message));
        else
            m_settings.setDefaultChart(path);
    });
}

void SettingsDialog::addReports(QFormLayout& form) {
    auto* dpi = new QSpinBox;
    dpi->setObjectName("dpi");
    dpi->setRange(72, 600);
    dpi->setSingleStep(10);
    dpi->setValue(m_settings.dpi());
    dpi->setSuffix(tr(" dots per inch"));
    connect(dpi, &QSpinBox::valueChanged, this, [this](int value) { m_settings.setDpi(value); });
    form.addRow(tr("&Pictures"), dpi);
    form.addRow(softNote(tr("Of pictures of the window that are copied or saved.")));
}

} // namespace gauge::app
