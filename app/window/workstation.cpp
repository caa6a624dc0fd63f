#include "app/window/workstation.h"

#include "app/settings/settings.h"
#include "app/format/language.h"
#include "app/window/main_window.h"
#include "app/window/start_watch.h"
#include "app/window/theme.h"

#include <QApplication>
#include <QIcon>

namespace gauge::app {

int runWorkstation(int& argumentCount, char** arguments) {
    QApplication application(argumentCount, arguments);
    QApplication::setApplicationName(QStringLiteral("Ostium Gauge"));
    QApplication::setOrganizationName(QStringLiteral("ostium-gauge"));
    QApplication::setApplicationVersion(QStringLiteral(GAUGE_VERSION));
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/ostium-gauge.svg")));
    useLanguage(application, Settings().language());
    setTextScale(Settings().textPercent() / 100.0);
    applyTheme(application, themeFrom(Settings().theme()));
    MainWindow window;
    if (Settings().autosave()) window.session().document().keepUnsavedIn(unsavedFolder());
    watchStart(window);
    window.show();
    // Qt has taken its own options out by now; what is left names a folder, a case file or a report.
    if (const QStringList rest = QApplication::arguments().mid(1); !rest.isEmpty()) window.openPath(rest.front());
    return QApplication::exec();
}

} // namespace gauge::app
