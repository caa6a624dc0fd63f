// What the library's window is made of.
#include "app/library/ui/library_dialog.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>
#include <QToolButton>

namespace gauge::app {
namespace {

QLabel* wrapped(const char* name, QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setObjectName(QLatin1String(name));
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

} // namespace

QWidget* LibraryDialog::makeSearch() {
    auto* row = new QWidget(this);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    m_search = new QLineEdit(row);
    m_search->setPlaceholderText(tr("Search name, ID, date, title, tag"));
    m_search->setAccessibleName(tr("Search"));
    m_search->setToolTip(tr("All words must be found. Key Ctrl+F"));
    m_search->setClearButtonEnabled(true);
    m_tags = new QComboBox(row);
    m_tags->setAccessibleName(tr("Tag"));
    m_tags->setToolTip(tr("Show the cases with this tag only"));
    m_tags->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_bin = new QToolButton(row);
    m_bin->setText(tr("Show the &bin"));
    m_bin->setCheckable(true);
    m_bin->setToolTip(tr("Key Alt+B"));
    layout->addWidget(m_search, 1);
    layout->addWidget(m_tags);
    layout->addWidget(m_bin);
    return row;
}

QWidget* LibraryDialog::makeList() {
    m_stack = new QStackedWidget(this);
    m_table = new QTableView(m_stack);
    m_table->setAccessibleName(tr("Cases"));
    m_table->setModel(&m_model);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    m_table->setShowGrid(false);
    m_table->setWordWrap(false);
    m_table->setAlternatingRowColors(true);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setStretchLastSection(true);
    m_empty = wrapped("lead", m_stack);
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setMargin(32);
    m_stack->addWidget(m_table);
    m_stack->addWidget(m_empty);
    return m_stack;
}

QWidget* LibraryDialog::makeDetails() {
    auto* side = new QWidget(this);
    auto* layout = new QVBoxLayout(side);
    layout->setContentsMargins(8, 0, 0, 0);
    m_lease = wrapped("soft", side);
    m_versionsHeading = new QLabel(tr("Versions"), side);
    m_versionsHeading->setObjectName("heading");
    m_versions = new QListWidget(side);
    m_versions->setAccessibleName(tr("Versions"));
    m_versions->setWordWrap(true);
    m_versions->setSpacing(3);
    m_openVersion = new QPushButton(tr("&Read this version"), side);
    m_restore = new QPushButton(tr("Ma&ke it the present one"), side);
    m_discard = new QPushButton(tr("For&get the refused version"), side);
    layout->addWidget(m_lease);
    layout->addWidget(m_versionsHeading);
    layout->addWidget(m_versions, 1);
    for (QPushButton* button : {m_openVersion, m_restore, m_discard}) layout->addWidget(button);
    return side;
}

QWidget* LibraryDialog::makeButtons() {
    auto* row = new QWidget(this);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    m_undo = new QPushButton(tr("&Undo"), row);
    m_undo->setToolTip(tr("Takes the case out of the bin again. Key Ctrl+Z"));
    m_undo->setShortcut(QKeySequence::Undo);
    m_import = new QPushButton(tr("&Import …"), row);
    m_export = new QPushButton(tr("&Export …"), row);
    m_binButton = new QPushButton(tr("Move to the bi&n"), row);
    m_remove = new QPushButton(tr("Remove for &good …"), row);
    m_open = new QPushButton(tr("&Open"), row);
    m_open->setToolTip(tr("Key Enter"));
    m_open->setDefault(true);
    m_check = new QPushButton(tr("&Check …"), row);
    m_check->setToolTip(tr("Read everything in the library and say what is wrong with it"));
    m_rescue = new QPushButton(tr("Copy what is &whole …"), row);
    m_rescue->setToolTip(tr("Copy the newest whole version of each case into a new library"));
    m_rescue->hide();
    layout->addWidget(m_undo);
    layout->addWidget(m_check);
    layout->addWidget(m_rescue);
    layout->addStretch(1);
    for (QPushButton* button : {m_import, m_export, m_remove, m_binButton, m_open}) layout->addWidget(button);
    return row;
}

LibraryDialog::LibraryDialog(CaseLibrary* library, const QString& whyNot, QWidget* parent)
    : QDialog(parent), m_library(library), m_whyNot(whyNot) {
    setWindowTitle(tr("Case library"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 12, 12, 12);
    layout->addWidget(makeSearch());
    auto* middle = new QHBoxLayout;
    middle->addWidget(makeList(), 3);
    middle->addWidget(makeDetails(), 1);
    layout->addLayout(middle, 1);
    m_message = wrapped("soft", this);
    layout->addWidget(m_message);
    layout->addWidget(makeButtons());
    resize(1180, 620);
    wire();
    m_search->setFocus();
    refresh();
}

} // namespace gauge::app
