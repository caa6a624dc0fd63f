#include "app/library/ui/library_dialog.h"

#include "app/document/case_document.h"

#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMessageBox>
#include <QPushButton>
#include <QShortcut>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QStyle>
#include <QSysInfo>
#include <QTableView>
#include <QToolButton>

namespace gauge::app {
namespace {

constexpr int kRefreshMs = 5000;
constexpr int kTypingMs = 200; // a search waits until the person pauses
constexpr int kVersionRole = Qt::UserRole, kBranchRole = Qt::UserRole + 1, kDamagedRole = Qt::UserRole + 2;
const char kSuffix[] = ".library-case";

} // namespace

void LibraryDialog::wire() {
    m_timer.setInterval(kRefreshMs);
    m_typing.setSingleShot(true);
    m_typing.setInterval(kTypingMs);
    connect(&m_timer, &QTimer::timeout, this, &LibraryDialog::refresh);
    connect(&m_typing, &QTimer::timeout, this, &LibraryDialog::refresh);
    connect(m_search, &QLineEdit::textChanged, &m_typing, qOverload<>(&QTimer::start));
    connect(m_tags, &QComboBox::currentIndexChanged, this, &LibraryDialog::refresh);
    connect(m_bin, &QToolButton::toggled, this, &LibraryDialog::refresh);
    connect(m_table->selectionModel(), &QItemSelectionModel::selectionChanged, this, &LibraryDialog::showDetails);
    connect(m_table, &QTableView::doubleClicked, this, &LibraryDialog::openSelected);
    connect(m_versions, &QListWidget::currentRowChanged, this, &LibraryDialog::enable);
    connect(m_versions, &QListWidget::itemDoubleClicked, this, &LibraryDialog::openSelectedVersion);
    connect(m_open, &QPushButton::clicked, this, &LibraryDialog::openSelected);
    connect(m_openVersion, &QPushButton::clicked, this, &LibraryDialog::openSelectedVersion);
    connect(m_restore, &QPushButton::clicked, this, &LibraryDialog::restoreVersion);
    connect(m_discard, &QPushButton::clicked, this, &LibraryDialog::discardBranch);
    connect(m_binButton, &QPushButton::clicked, this, &LibraryDialog::binOrTakeBack);
    connect(m_remove, &QPushButton::clicked, this, &LibraryDialog::removeForGood);
    connect(m_undo, &QPushButton::clicked, this, &LibraryDialog::undoBin);
    connect(m_import, &QPushButton::clicked, this, &LibraryDialog::askImport);
    connect(m_export, &QPushButton::clicked, this, &LibraryDialog::askExport);
    connect(m_check, &QPushButton::clicked, this, &LibraryDialog::check);
    connect(m_rescue, &QPushButton::clicked, this, &LibraryDialog::askRescue);
    connect(new QShortcut(QKeySequence::Find, this), &QShortcut::activated, m_search, qOverload<>(&QWidget::setFocus));
    connect(new QShortcut(QKeySequence(Qt::Key_Down), m_search, nullptr, nullptr, Qt::WidgetShortcut), &QShortcut::activated,
            m_table, qOverload<>(&QWidget::setFocus));
    auto* remove = new QShortcut(QKeySequence::Delete, m_table, nullptr, nullptr, Qt::WidgetShortcut);
    connect(remove, &QShortcut::activated, m_binButton, &QPushButton::click);
}

void LibraryDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    m_timer.start();
}

void LibraryDialog::hideEvent(QHideEvent* event) {
    m_timer.stop();
    QDialog::hideEvent(event);
}

QString LibraryDialog::selectedCase() const {
    const ListedCase* listed = m_model.at(m_table->currentIndex().row());
    return listed ? listed->id : QString();
}

void LibraryDialog::select(const QString& caseId) {
    if (const int row = m_model.rowOf(caseId); row >= 0) m_table->selectRow(row);
}

void LibraryDialog::say(const QString& text, bool error) {
    m_message->setText(text);
    m_message->setObjectName(error ? "error" : "soft");
    m_message->style()->unpolish(m_message);
    m_message->style()->polish(m_message);
}

void LibraryDialog::refresh() {
    if (!m_library) {
        m_empty->setText(m_whyNot);
        m_empty->setObjectName("error");
        m_stack->setCurrentWidget(m_empty);
        for (QWidget* widget : std::initializer_list<QWidget*>{m_search, m_tags, m_bin, m_import, m_check}) widget->setEnabled(false);
        showDetails();
        return;
    }
    showTags();
    CaseQuery query;
    query.text = m_search->text();
    query.tag = m_tags->currentData().toString();
    query.binned = m_bin->isChecked();
    auto found = m_library->list(query);
    if (!found) return fail(found.error());
    const QString before = selectedCase();
    const bool narrowed = !query.text.isEmpty() || !query.tag.isEmpty();
    m_empty->setText(narrowed       ? tr("No case matches. Change the words or the tag.")
                     : query.binned ? tr("The bin is empty.")
                                    : tr("No cases yet. Save an open case into the library, or import one from a file."));
    m_stack->setCurrentWidget(found->empty() ? static_cast<QWidget*>(m_empty) : m_table);
    {
        const QSignalBlocker quiet(m_table->selectionModel());
        m_model.show(std::move(*found));
        select(m_model.rowOf(before) >= 0 ? before : m_model.at(0) ? m_model.at(0)->id : QString());
    }
    if (!m_library->damage().isEmpty()) {
        say(m_library->damage(), true);
        m_rescue->show();
    }
    showDetails();
}

void LibraryDialog::showTags() {
    const auto tags = m_library->tags();
    if (!tags) return;
    const QSignalBlocker quiet(m_tags);
    const QString chosen = m_tags->currentData().toString();
    m_tags->clear();
    m_tags->addItem(tr("All tags"), QString());
    for (const QString& tag : *tags) m_tags->addItem(tag, tag);
    m_tags->setCurrentIndex(std::max(0, m_tags->findData(chosen)));
}

void LibraryDialog::showDetails() {
    const ListedCase* listed = m_model.at(m_table->currentIndex().row());
    if (!listed) {
        m_lease->setText(m_library ? tr("Choose a case to see its versions.") : QString());
        m_versions->clear();
        enable();
        return;
    }
    const auto& lease = listed->lease;
    if (!listed->binnedAt.isEmpty())
        m_lease->setText(tr("In the bin since %1.").arg(momentInWords(listed->binnedAt)));
    else if (!lease || lease->dead)
        m_lease->setText(tr("Nobody edits this case."));
    else if (lease->mine)
        m_lease->setText(tr("You are editing this case."));
    else
        m_lease->setText(tr("%1 on %2 is editing this case since %3. You can read it.")
                             .arg(lease->holder, lease->station, momentInWords(lease->takenAt)));
    showVersions(*listed);
    enable();
}

void LibraryDialog::showVersions(const ListedCase& listed) {
    const auto versions = m_library->versions(listed.id);
    const QSignalBlocker quiet(m_versions);
    const qint64 chosen = selectedVersion();
    m_versions->clear();
    if (!versions) return fail(versions.error());
    for (const VersionInfo& version : *versions) {
        QString text = tr("%1 · %2 · %3").arg(version.number).arg(momentInWords(version.savedAt), version.author);
        if (version.damaged) text += QLatin1Char('\n') + tr("Damaged: cannot be read");
        if (version.branch) text += QLatin1Char('\n') + tr("Refused save, made from version %1").arg(version.base);
        if (version.number == listed.version)
            text += QLatin1Char('\n') + (listed.editsSince > 0 ? tr("Present version, and %n edit(s) since", nullptr,
                                                                    static_cast<int>(listed.editsSince))
                                                               : tr("Present version"));
        auto* item = new QListWidgetItem(text, m_versions);
        item->setData(kVersionRole, version.number);
        item->setData(kBranchRole, version.branch);
        item->setData(kDamagedRole, version.damaged);
        if (version.number == chosen) m_versions->setCurrentItem(item);
    }
}

qint64 LibraryDialog::selectedVersion() const {
    const auto* item = m_versions->currentItem();
    return item ? item->data(kVersionRole).toLongLong() : 0;
}

bool LibraryDialog::selectedIsBranch() const {
    const auto* item = m_versions->currentItem();
    return item && item->data(kBranchRole).toBool();
}

void LibraryDialog::enable() {
    const ListedCase* listed = m_model.at(m_table->currentIndex().row());
    const bool binned = m_bin->isChecked();
    const bool others = listed && listed->lease && !listed->lease->mine && !listed->lease->dead;
    const auto* item = m_versions->currentItem();
    const bool readable = item && !item->data(kDamagedRole).toBool();
    m_open->setEnabled(listed && !binned);
    m_open->setText(others ? tr("&Open for reading") : tr("&Open"));
    m_export->setEnabled(listed != nullptr);
    m_binButton->setEnabled(listed && !others);
    m_binButton->setText(binned ? tr("Take &out of the bin") : tr("Move to the bi&n"));
    m_remove->setVisible(binned);
    m_remove->setEnabled(listed != nullptr);
    m_undo->setVisible(!m_lastBinned.isEmpty());
    m_openVersion->setEnabled(readable);
    m_restore->setEnabled(readable && listed && !binned && !others && selectedVersion() != listed->version);
    m_discard->setVisible(selectedIsBranch());
}

void LibraryDialog::openSelected() {
    if (m_open->isEnabled() && !selectedCase().isEmpty()) emit openRequested(selectedCase());
}

void LibraryDialog::openSelectedVersion() {
    if (m_openVersion->isEnabled()) emit openVersionRequested(selectedCase(), selectedVersion());
}

void LibraryDialog::restoreVersion() {
    const qint64 version = selectedVersion();
    auto answer = m_library->beginEditing(selectedCase());
    if (!answer) return fail(answer.error());
    if (!answer->editing) return say(tr("%1 is editing this case.").arg(answer->lease.holder), true);
    const auto outcome = m_library->restore(*answer->editing, version);
    m_library->endEditing(*answer->editing);
    refresh();
    if (!outcome) return fail(outcome.error());
    say(tr("Version %1 is now version %2, the present one.").arg(version).arg(outcome->version));
}

void LibraryDialog::discardBranch() {
    const qint64 version = selectedVersion();
    const auto answer = QMessageBox::question(this, tr("Forget a refused version"),
                                              tr("Version %1 was refused because somebody else had saved. Its text is kept "
                                                 "nowhere else. Forget it for good?")
                                                  .arg(version));
    if (answer != QMessageBox::Yes) return;
    const auto done = m_library->discardBranch(selectedCase(), version);
    refresh();
    if (!done) fail(done.error());
}

void LibraryDialog::binOrTakeBack() {
    const QString id = selectedCase();
    const bool back = m_bin->isChecked();
    const auto done = back ? m_library->takeFromBin(id) : m_library->moveToBin(id);
    if (!done) return fail(done.error());
    m_lastBinned = back ? QString() : id;
    say(back ? tr("The case is back in the list.") : tr("The case lies in the bin. Nothing is lost."));
    refresh();
}

void LibraryDialog::undoBin() {
    if (m_lastBinned.isEmpty()) return;
    const QString id = m_lastBinned;
    if (auto done = m_library->takeFromBin(id); !done) return fail(done.error());
    m_lastBinned.clear();
    say(tr("The case is back in the list."));
    refresh();
    select(id);
}

void LibraryDialog::removeForGood() {
    const auto answer = QMessageBox::warning(this, tr("Remove for good"),
                                             tr("This removes the case with all its versions from the library. It cannot be "
                                                "undone. Remove it?"),
                                             QMessageBox::Yes | QMessageBox::Cancel, QMessageBox::Cancel);
    if (answer != QMessageBox::Yes) return;
    const auto done = m_library->removeForGood(selectedCase());
    m_lastBinned.clear();
    refresh();
    if (!done) fail(done.error());
}

bool LibraryDialog::importFrom(const QString& path) {
    const auto id = m_library->importCase(path);
    if (!id) {
        fail(id.error());
        return false;
    }
    m_bin->setChecked(false);
    m_search->clear();
    refresh();
    select(*id);
    say(tr("The case was imported with all its versions."));
    return true;
}

bool LibraryDialog::exportTo(const QString& path) {
    const auto done = m_library->exportCase(selectedCase(), path);
    if (!done) {
        fail(done.error());
        return false;
    }
    say(tr("The case was exported to %1. The file holds the patient's name.").arg(path));
    return true;
}

void LibraryDialog::askImport() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Import a case"), QString(),
                                                      tr("Cases of a library (*%1)").arg(QLatin1String(kSuffix)));
    if (!path.isEmpty()) importFrom(path);
}

void LibraryDialog::askExport() {
    // A name without identity: files travel.
    const QString name = tr("case-%1").arg(selectedCase().left(8)) + QLatin1String(kSuffix);
    const QString path = QFileDialog::getSaveFileName(this, tr("Export the case"), name,
                                                      tr("Cases of a library (*%1)").arg(QLatin1String(kSuffix)));
    if (!path.isEmpty()) exportTo(path);
}

void LibraryDialog::check() {
    const auto found = m_library->check();
    if (!found) return fail(found.error());
    if (found->isEmpty()) return say(tr("The library was read whole: nothing is wrong with it."));
    m_rescue->show();
    say(tr("%n thing(s) are wrong with the library: %1 Copy what is whole into a new library.", nullptr,
           static_cast<int>(found->size()))
            .arg(found->join(QLatin1Char(' '))),
        true);
}

bool LibraryDialog::rescueTo(const QString& path) {
    LibraryPlace place;
    place.path = path;
    auto fresh = CaseLibrary::open(place, currentAuthor(), QSysInfo::machineHostName());
    const auto count = fresh ? m_library->rescueInto(**fresh) : core::Result<int>(tl::make_unexpected(fresh.error()));
    if (!count) {
        fail(count.error());
        return false;
    }
    say(tr("%n case(s) were copied to %1, each with its newest whole version. Choose this file in the settings to work with it.",
           nullptr, *count)
            .arg(QDir::toNativeSeparators(path)));
    return true;
}

void LibraryDialog::askRescue() {
    const QString path = QFileDialog::getSaveFileName(this, tr("A new library for what is whole"), tr("rescued.library"),
                                                      tr("Case libraries (*.library)"), nullptr,
                                                      QFileDialog::DontConfirmOverwrite);
    if (!path.isEmpty()) rescueTo(path);
}

} // namespace gauge::app
