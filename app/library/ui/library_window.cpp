#include "app/library/ui/library_window.h"

#include "app/library/ui/library_dialog.h"
#include "app/settings/library_settings.h"

#include <QDir>
#include <QGuiApplication>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>
#include <QSysInfo>

namespace gauge::app {
namespace {

using Kind = Message::Kind;

} // namespace

LibraryWindow::LibraryWindow(Session& session, QWidget* window)
    : QObject(window), m_session(session), m_window(window), m_show(new QAction(tr("Case &library …"), this)),
      m_put(new QAction(tr("&Put the case into the library"), this)),
      m_save(new QAction(tr("Save a &version in the library"), this)) {
    m_show->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L));
    connect(m_show, &QAction::triggered, this, &LibraryWindow::show);
    connect(m_put, &QAction::triggered, this, &LibraryWindow::put);
    connect(m_save, &QAction::triggered, this, &LibraryWindow::save);
    connect(&session.document(), &CaseDocument::changed, this, &LibraryWindow::enable);
    enable();
}

LibraryWindow::~LibraryWindow() {
    delete m_dialog;
    m_document.reset();
}

bool LibraryWindow::open() {
    if (m_library) return true;
    auto opened = CaseLibrary::open(libraryPlaceOfSettings(), currentAuthor(), QSysInfo::machineHostName());
    if (!opened) {
        m_whyNot = QString::fromStdString(opened.error().message);
        return false;
    }
    m_library = std::move(*opened);
    const QString folder =
        QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).filePath(QStringLiteral("library-open"));
    m_document = std::make_unique<LibraryDocument>(m_session.document(), *m_library, folder);
    m_document->setBusy([] { return QGuiApplication::mouseButtons() != Qt::NoButton; });
    connect(m_document.get(), &LibraryDocument::storingFailed, this, [this](const QString& text) {
        m_session.say(Kind::Error, text);
    });
    // Not from within the library's own call: what was to be stored is put beside the other version first.
    connect(m_document.get(), &LibraryDocument::leaseLost, this, &LibraryWindow::lost, Qt::QueuedConnection);
    return true;
}

void LibraryWindow::show() {
    const bool works = open();
    delete m_dialog;
    m_dialog = new LibraryDialog(works ? m_library.get() : nullptr, m_whyNot, m_window);
    m_dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(m_dialog, &LibraryDialog::openRequested, this, [this](const QString& id) { openCase(id, 0); });
    connect(m_dialog, &LibraryDialog::openVersionRequested, this, &LibraryWindow::openCase);
    m_dialog->show();
}

void LibraryWindow::openCase(const QString& caseId, qint64 version) {
    auto opened = version > 0 ? m_document->openVersion(caseId, version) : m_document->open(caseId);
    const bool damaged = !opened && version == 0 && opened.error().code == core::ErrorCode::FileDamaged;
    if (damaged)
        if (auto whole = m_document->openAsFarAsWhole(caseId)) opened = std::move(whole);
    if (opened) m_session.documentOpened();
    tell(opened);
    if (opened && m_dialog) m_dialog->close();
    enable();
}

void LibraryWindow::tell(const core::Result<std::vector<core::Notice>>& opened) {
    if (!opened) return m_session.say(Kind::Error, QString::fromStdString(opened.error().message));
    QStringList texts;
    for (const core::Notice& notice : *opened) texts << QString::fromStdString(notice.text);
    if (texts.isEmpty())
        m_session.say(Kind::Information, tr("The case was opened from the library. Each edit is stored there as you make it."));
    else
        m_session.say(Kind::Warning, texts.join(QLatin1Char(' ')));
}

void LibraryWindow::put() {
    if (!open()) return m_session.say(Kind::Error, m_whyNot);
    const auto id = m_document->put();
    if (id)
        m_session.say(Kind::Information, tr("The case is in the library. Each edit is stored there as you make it."));
    else
        m_session.say(Kind::Error, QString::fromStdString(id.error().message));
    enable();
}

void LibraryWindow::save() {
    if (!m_document) return;
    const auto outcome = m_document->save();
    if (!outcome) return m_session.say(Kind::Error, QString::fromStdString(outcome.error().message));
    if (outcome->kind == WriteOutcome::Kind::Refused) return refused(*outcome);
    m_session.say(Kind::Information, tr("Saved as version %1 in the library.").arg(outcome->version));
}

void LibraryWindow::lost() {
    if (!m_document) return;
    const auto outcome = m_document->save(); // as a version of its own, since the case is somebody else's now
    if (outcome && outcome->kind == WriteOutcome::Kind::Refused) return refused(*outcome);
    if (!outcome) m_session.say(Kind::Error, QString::fromStdString(outcome.error().message));
}

void LibraryWindow::refused(const WriteOutcome& outcome) {
    const QString who = outcome.by ? outcome.by->holder : tr("Somebody else");
    const QString said = tr("%1 has the case now. Yours is kept as version %2 beside theirs.").arg(who).arg(outcome.branch);
    m_session.say(Kind::Warning, said);
    offerBoth(outcome, said);
    enable();
}

void LibraryWindow::offerBoth(const WriteOutcome& outcome, const QString& said) {
    const QString caseId = m_document->caseId();
    auto* box = new QMessageBox(QMessageBox::Warning, tr("Two versions"), said, QMessageBox::NoButton, m_window);
    box->setInformativeText(tr("Both stay in the case library until you decide there which one is to be the present one."));
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->setObjectName(QStringLiteral("bothVersions"));
    const QPushButton* theirs = box->addButton(tr("Read &theirs"), QMessageBox::ActionRole);
    const QPushButton* ours = box->addButton(tr("Read &yours"), QMessageBox::ActionRole);
    box->addButton(QMessageBox::Close);
    connect(theirs, &QPushButton::clicked, this, [this, caseId, version = outcome.version] { openCase(caseId, version); });
    connect(ours, &QPushButton::clicked, this, [this, caseId, version = outcome.branch] { openCase(caseId, version); });
    box->open();
}

void LibraryWindow::enable() {
    const bool writes = m_document && m_document->mayWrite();
    m_put->setEnabled(!writes && m_session.document().nextRevision() > 1);
    m_save->setEnabled(writes);
}

} // namespace gauge::app
