#include "app/window/settings_library.h"

#include "app/settings/library_settings.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QToolButton>

namespace gauge::app {
namespace {

QString words(const char* text) {
    return QCoreApplication::translate("LibrarySettings", text);
}

} // namespace

void addLibrarySettings(QFormLayout& form, QWidget& dialog) {
    const LibraryPlace place = libraryPlaceOfSettings();
    if (place.kind == LibraryPlace::Kind::Postgres) {
        auto* shown = new QLabel(place.shown());
        shown->setWordWrap(true);
        form.addRow(words(QT_TRANSLATE_NOOP("LibrarySettings", "Server")), shown);
        return;
    }
    auto* file = new QLineEdit(place.path);
    file->setObjectName("libraryFile");
    file->setAccessibleName(words(QT_TRANSLATE_NOOP("LibrarySettings", "File of the library")));
    const auto keep = [file] {
        LibraryPlace chosen = libraryPlaceOfSettings();
        chosen.path = file->text().trimmed().isEmpty() ? usualLibraryPlace().path : file->text().trimmed();
        setLibraryPlaceInSettings(chosen);
    };
    QObject::connect(file, &QLineEdit::editingFinished, file, keep);
    auto* browse = new QToolButton;
    browse->setText(words(QT_TRANSLATE_NOOP("LibrarySettings", "Choose …")));
    browse->setFocusPolicy(Qt::TabFocus);
    browse->setToolTip(words(QT_TRANSLATE_NOOP("LibrarySettings", "Choose the file of the library; it is made where there is none")));
    QObject::connect(browse, &QToolButton::clicked, file, [file, keep, parent = &dialog] {
        const QString path = QFileDialog::getSaveFileName(parent, words(QT_TRANSLATE_NOOP("LibrarySettings", "File of the library")),
                                                          file->text(), QStringLiteral("*.cases"), nullptr,
                                                          QFileDialog::DontConfirmOverwrite);
        if (path.isEmpty()) return;
        file->setText(path);
        keep();
    });
    auto* row = new QHBoxLayout;
    row->addWidget(file, 1);
    row->addWidget(browse);
    form.addRow(words(QT_TRANSLATE_NOOP("LibrarySettings", "&Library")), row);
    auto* note = new QLabel(words(QT_TRANSLATE_NOOP("LibrarySettings", "Another file holds from the next start.")));
    note->setObjectName("soft");
    form.addRow(note);
}

} // namespace gauge::app
