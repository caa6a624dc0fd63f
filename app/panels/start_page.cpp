#include "app/panels/start_page.h"

#include "app/drawing/palette.h"
#include "app/format/words.h"

#include <QFileInfo>
#include <QFrame>
#include <QHBoxLayout>
#include <QIcon>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace gauge::app {
namespace {

constexpr int kPathRole = Qt::UserRole, kLeftRole = Qt::UserRole + 1;

QLabel* words(const QString& text, const char* name, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setObjectName(QString::fromLatin1(name));
    label->setWordWrap(true);
    return label;
}

QPushButton* way(const QString& text, const QString& tip, QWidget* parent) {
    auto* button = new QPushButton(text, parent);
    button->setToolTip(tip);
    button->setAutoDefault(true);
    return button;
}

} // namespace

StartPage::StartPage(ViewState& state, QWidget* parent) : QWidget(parent), m_state(state) {
    auto* across = new QHBoxLayout;
    across->setSpacing(56);
    across->addStretch(1);
    across->addWidget(makeWays(), 5);
    across->addWidget(makeRecent(), 4);
    across->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(24, 18, 24, 18);
    layout->addStretch(2);
    layout->addLayout(across, 8);
    layout->addStretch(1);
    auto* caution = words(cautionParagraphs().join(QLatin1Char(' ')), "soft", this);
    caution->setAlignment(Qt::AlignHCenter);
    layout->addWidget(caution);
    connect(&state, &ViewState::namesHiddenChanged, this, &StartPage::fillList);
}

QWidget* StartPage::makeWays() {
    auto* part = new QWidget(this);
    auto* icon = new QLabel(part);
    icon->setPixmap(QIcon(QStringLiteral(":/icons/ostium-gauge.svg")).pixmap(72, 72));
    auto* name = new QLabel(tr("Ostium Gauge"), part);
    name->setObjectName("title");
    auto* drop = new QFrame(part);
    drop->setObjectName("drop");
    auto* open = way(tr("Open a folder of DICOM images …"), tr("Ctrl+O"), drop);
    open->setObjectName("primary");
    setFocusProxy(open);
    connect(open, &QPushButton::clicked, this, &StartPage::openRequested);
    auto* inside = new QVBoxLayout(drop);
    inside->setContentsMargins(18, 18, 18, 16);
    inside->setSpacing(10);
    inside->addWidget(open, 0, Qt::AlignLeft);
    inside->addWidget(words(tr("or drop the folder on this window, or a case. Then mark the atrium and the tip of the "
                               "appendage with two clicks."), "soft", drop));

    auto* openCase = way(tr("Open a case …"), tr("A case file that was saved before (Ctrl+Shift+O)"), part);
    connect(openCase, &QPushButton::clicked, this, &StartPage::openCaseRequested);
    auto* library = way(tr("Case library …"), tr("Cases kept in the library of a person or a team"), part);
    connect(library, &QPushButton::clicked, this, &StartPage::libraryRequested);
    auto* sample = way(tr("Try the sample case"), tr("An invented patient with CT, echo and fluoroscopy, marked and measured"), part);
    sample->setObjectName("trySample");
    connect(sample, &QPushButton::clicked, this, &StartPage::sampleRequested);
    auto* begin = way(tr("Begin without images"), tr("Type in readings and pressures, and judge the sizes of a chart"), part);
    connect(begin, &QPushButton::clicked, this, &StartPage::beginRequested);

    auto* layout = new QVBoxLayout(part);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(12);
    layout->addWidget(icon);
    layout->addWidget(name);
    layout->addWidget(words(tr("How wide is the left atrial appendage at which depth, under which pressure, and which size "
                               "fits then: every value with its uncertainty."), "lead", part));
    layout->addSpacing(6);
    layout->addWidget(drop);
    for (const auto& [one, two] : {std::pair(openCase, library), std::pair(sample, begin)}) {
        auto* row = new QHBoxLayout;
        row->setSpacing(10);
        row->addWidget(one, 1);
        row->addWidget(two, 1);
        layout->addLayout(row);
    }
    layout->addStretch(1);
    return part;
}

QWidget* StartPage::makeRecent() {
    auto* part = new QWidget(this);
    auto* heading = words(tr("Recent cases"), "heading", part);
    m_nothing = words(tr("Cases that you open or save are listed here."), "soft", part);
    m_list = new QListWidget(part);
    m_list->setObjectName("recentCases");
    m_list->setAccessibleName(heading->text());
    m_list->setWordWrap(true);
    m_list->setTextElideMode(Qt::ElideNone);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setSpacing(3);
    m_list->setMinimumWidth(300);
    connect(m_list, &QListWidget::itemActivated, this, &StartPage::open);
    m_forget = new QPushButton(tr("Take it off the list"), part);
    m_forget->setObjectName("link");
    m_forget->setToolTip(tr("The file of the case stays"));
    connect(m_forget, &QPushButton::clicked, this, [this] {
        if (const QListWidgetItem* item = m_list->currentItem()) emit forgetRequested(item->data(kPathRole).toString());
    });
    connect(m_list, &QListWidget::itemSelectionChanged, this, [this] {
        const QListWidgetItem* item = m_list->currentItem();
        m_forget->setEnabled(item && !item->data(kLeftRole).toBool());
    });
    auto* openThis = new QPushButton(tr("Open it"), part);
    openThis->setToolTip(tr("Open the chosen case (Enter, or a double click)"));
    connect(openThis, &QPushButton::clicked, this, [this] { open(m_list->currentItem()); });
    connect(m_list, &QListWidget::itemSelectionChanged, openThis,
            [this, openThis] { openThis->setEnabled(m_list->currentItem() != nullptr); });
    openThis->setEnabled(false);
    m_forget->setEnabled(false);
    m_acts = new QWidget(part);
    auto* buttons = new QHBoxLayout(m_acts);
    buttons->setContentsMargins(0, 0, 0, 0);
    buttons->addWidget(openThis);
    buttons->addWidget(m_forget);
    buttons->addStretch(1);
    auto* layout = new QVBoxLayout(part);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    layout->addWidget(heading);
    layout->addWidget(m_nothing);
    layout->addWidget(m_list, 1);
    layout->addWidget(m_acts);
    layout->addStretch(0);
    return part;
}

void StartPage::showRecent(const QStringList& paths, const QString& unsavedFolder) {
    m_recent.clear();
    for (const QString& path : paths)
        m_recent << RecentCase{path, QFileInfo(path).completeBaseName(), {}, {}, {}, false};
    fillList();
    m_read.start<QList<RecentCase>>(
        [paths, unsavedFolder](const core::WorkContext&) -> core::Result<QList<RecentCase>> {
            return readLeftCases(unsavedFolder) + readRecentCases(paths);
        },
        [this](core::Result<QList<RecentCase>> read) {
            if (!read) return;
            m_recent = std::move(*read);
            fillList();
        });
}

void StartPage::fillList() {
    const int row = m_list->currentRow();
    m_list->clear();
    for (const RecentCase& one : std::as_const(m_recent)) {
        auto* item = new QListWidgetItem(recentWords(one, m_state.namesHidden()), m_list);
        item->setData(kPathRole, one.path);
        item->setData(kLeftRole, one.isLeft);
        if (!m_state.namesHidden() && !one.isLeft) item->setToolTip(one.path);
        if (!one.problem.isEmpty()) item->setForeground(tone::warning);
    }
    m_list->setVisible(!m_recent.isEmpty());
    m_acts->setVisible(!m_recent.isEmpty());
    m_nothing->setVisible(m_recent.isEmpty());
    if (row >= 0 && row < m_list->count()) m_list->setCurrentRow(row);
}

void StartPage::open(const QListWidgetItem* item) {
    if (!item) return;
    const QString path = item->data(kPathRole).toString();
    if (item->data(kLeftRole).toBool())
        emit leftCaseChosen(path);
    else
        emit caseChosen(path);
}

} // namespace gauge::app
