#include "app/window/settings_library.h"

#include "app/jobs/job_runner.h"
#include "app/library/database.h"
#include "app/settings/library_settings.h"

#include <QComboBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QToolButton>

namespace gauge::app {

LibrarySettingsPart::LibrarySettingsPart(QFormLayout& form, QWidget* dialog)
    : QObject(dialog), m_form(form), m_dialog(dialog), m_kind(new QComboBox), m_file(new QLineEdit), m_service(new QLineEdit),
      m_host(new QLineEdit), m_port(new QSpinBox), m_database(new QLineEdit), m_user(new QLineEdit), m_tls(new QComboBox),
      m_outcome(note({})) {
    m_kind->setObjectName("libraryKind");
    m_kind->addItem(tr("A file of your own"), static_cast<int>(LibraryPlace::Kind::Sqlite));
    m_kind->addItem(tr("A server of the team (PostgreSQL)"), static_cast<int>(LibraryPlace::Kind::Postgres));
    m_kind->setMinimumWidth(m_kind->sizeHint().width() + 8); // under a style sheet the hint is a few pixels short of the words
    form.addRow(tr("&Library"), m_kind);
    addFile();
    addServer();
    form.addRow(note(tr("Another library holds from the next start.")));
    show(libraryPlaceOfSettings());
    connect(m_kind, &QComboBox::currentIndexChanged, this, &LibrarySettingsPart::keep);
    connect(m_tls, &QComboBox::currentIndexChanged, this, &LibrarySettingsPart::keep);
    connect(m_port, &QSpinBox::valueChanged, this, &LibrarySettingsPart::keep);
    for (QLineEdit* line : {m_file, m_service, m_host, m_database, m_user})
        connect(line, &QLineEdit::editingFinished, this, &LibrarySettingsPart::keep);
}

/// A server that does not answer is not waited for.
LibrarySettingsPart::~LibrarySettingsPart() {
    JobRunner::letEnd(std::move(m_try));
}

QLabel* LibrarySettingsPart::note(const QString& text) {
    auto* label = new QLabel(text);
    label->setObjectName("soft");
    label->setWordWrap(true);
    return label;
}

void LibrarySettingsPart::addFile() {
    m_file->setObjectName("libraryFile");
    m_file->setAccessibleName(tr("File of the library"));
    auto* browse = new QToolButton;
    browse->setText(tr("Choose …"));
    browse->setFocusPolicy(Qt::TabFocus);
    browse->setToolTip(tr("Choose the file of the library; it is made where there is none"));
    connect(browse, &QToolButton::clicked, this, [this] {
        const QString path = QFileDialog::getSaveFileName(m_dialog, tr("File of the library"), m_file->text(), QStringLiteral("*.cases"),
                                                          nullptr, QFileDialog::DontConfirmOverwrite);
        if (path.isEmpty()) return;
        m_file->setText(path);
        keep();
    });
    auto* row = new QWidget;
    auto* across = new QHBoxLayout(row);
    across->setContentsMargins(0, 0, 0, 0);
    across->addWidget(m_file, 1);
    across->addWidget(browse);
    addRow(tr("&File"), row, m_file, LibraryPlace::Kind::Sqlite);
}

void LibrarySettingsPart::addServer() {
    const auto kind = LibraryPlace::Kind::Postgres;
    addRow(tr("&Host"), m_host, m_host, kind);
    m_host->setObjectName("libraryHost");
    m_host->setPlaceholderText(tr("name or address of the server"));
    m_port->setObjectName("libraryPort");
    m_port->setRange(1, 65535);
    addRow(tr("P&ort"), m_port, m_port, kind);
    m_database->setObjectName("libraryDatabase");
    addRow(tr("&Database"), m_database, m_database, kind);
    m_user->setObjectName("libraryUser");
    m_user->setPlaceholderText(tr("as you are logged in here"));
    addRow(tr("User na&me"), m_user, m_user, kind);
    m_tls->setObjectName("libraryTls");
    m_tls->addItem(tr("Encrypted"), QStringLiteral("require"));
    m_tls->addItem(tr("Encrypted, and the server's certificate is checked"), QStringLiteral("verify-full"));
    m_tls->addItem(tr("Not encrypted: patient data can be read on the way"), QStringLiteral("disable"));
    addRow(tr("&Connection"), m_tls, m_tls, kind);
    m_service->setObjectName("libraryService");
    m_service->setPlaceholderText(tr("none: the server is the one above"));
    m_service->setToolTip(tr("A name in the service file of PostgreSQL (~/.pg_service.conf), which then says all the rest"));
    addRow(tr("&Service file's name"), m_service, m_service, kind);
    auto* password = note(tr("The password is not kept here: PostgreSQL reads it from its own password file (~/.pgpass, readable by "
                             "you alone), one line host:port:database:user:password."));
    m_form.addRow(password);
    m_rows.push_back({password, kind});
    auto* trying = new QPushButton(tr("&Try the connection"));
    trying->setObjectName("tryLibrary");
    trying->setAutoDefault(false);
    connect(trying, &QPushButton::clicked, this, &LibrarySettingsPart::tryConnection);
    m_form.addRow(trying);
    m_rows.push_back({trying, kind});
    m_outcome->setObjectName("libraryOutcome");
    m_form.addRow(m_outcome);
    m_rows.push_back({m_outcome, kind});
}

void LibrarySettingsPart::addRow(const QString& label, QWidget* row, QWidget* field, LibraryPlace::Kind kind) {
    auto* words = new QLabel(label);
    words->setBuddy(field);
    if (field->accessibleName().isEmpty()) field->setAccessibleName(QString(label).remove(QLatin1Char('&')));
    m_form.addRow(words, row);
    m_rows.push_back({row, kind});
}

LibraryPlace LibrarySettingsPart::place() const {
    LibraryPlace chosen = usualLibraryPlace();
    chosen.kind = static_cast<LibraryPlace::Kind>(m_kind->currentData().toInt());
    if (const QString file = m_file->text().trimmed(); !file.isEmpty()) chosen.path = file;
    chosen.service = m_service->text().trimmed();
    chosen.host = m_host->text().trimmed();
    chosen.port = m_port->value();
    chosen.database = m_database->text().trimmed();
    chosen.user = m_user->text().trimmed();
    chosen.tlsMode = m_tls->currentData().toString();
    return chosen;
}

void LibrarySettingsPart::show(const LibraryPlace& place) {
    m_kind->setCurrentIndex(m_kind->findData(static_cast<int>(place.kind)));
    m_file->setText(place.path.isEmpty() ? usualLibraryPlace().path : place.path);
    m_service->setText(place.service);
    m_host->setText(place.host);
    m_port->setValue(place.port);
    m_database->setText(place.database.isEmpty() && place.service.isEmpty() ? QStringLiteral("cases") : place.database);
    m_user->setText(place.user);
    if (m_tls->findData(place.tlsMode) < 0) m_tls->addItem(place.tlsMode, place.tlsMode); // set by hand in the settings file
    m_tls->setCurrentIndex(m_tls->findData(place.tlsMode));
    showRows();
}

void LibrarySettingsPart::showRows() {
    const LibraryPlace::Kind kind = place().kind;
    for (const auto& [widget, of] : m_rows)
        m_form.setRowVisible(widget, of == kind && (widget != m_outcome || !m_outcome->text().isEmpty()));
}

void LibrarySettingsPart::keep() {
    const LibraryPlace chosen = place();
    setLibraryPlaceInSettings(chosen);
    m_outcome->clear();
    showRows();
}

void LibrarySettingsPart::say(const QString& text) {
    m_outcome->setText(text);
    showRows();
}

void LibrarySettingsPart::tryConnection() {
    const LibraryPlace chosen = place();
    if (chosen.host.isEmpty() && chosen.service.isEmpty()) {
        say(tr("Name the server's host first, or a name of the service file."));
        return;
    }
    say(tr("Trying …"));
    m_try->start<bool>(
        [chosen](const core::WorkContext&) -> core::Result<bool> {
            const auto database = Database::open(chosen);
            if (!database) return tl::make_unexpected(database.error());
            return true;
        },
        [this, chosen](core::Result<bool> opened) {
            say(opened ? tr("The server answers: %1.").arg(chosen.shown()) : QString::fromStdString(opened.error().message));
        });
}

} // namespace gauge::app
