#include "app/settings/settings.h"

#include <algorithm>

namespace gauge::app {
namespace {

const QString kGeometry = QStringLiteral("window/geometry");
const QString kSplitter = QStringLiteral("window/splitter/");
const QString kCautions = QStringLiteral("window/cautions-dismissed");
const QString kLastFolder = QStringLiteral("folders/last");
const QString kRecent = QStringLiteral("cases/recent");
const QString kLanguage = QStringLiteral("screen/language");
const QString kTheme = QStringLiteral("screen/theme");
const QString kTextSize = QStringLiteral("screen/text-size");
const QString kNamesHidden = QStringLiteral("screen/names-hidden");
const QString kAutosave = QStringLiteral("cases/autosave");
const QString kUnsavedFolder = QStringLiteral("cases/unsaved-folder");
const QString kLibrary = QStringLiteral("cases/library");
const QString kAuthor = QStringLiteral("person/author");
const QString kRole = QStringLiteral("person/role");
const QString kChart = QStringLiteral("sizing/chart");
const QString kSurface = QStringLiteral("surface/drawing");
const QString kIsocentre = QStringLiteral("c-arm/source-isocentre");
const QString kDetector = QStringLiteral("c-arm/source-detector");
const QString kDpi = QStringLiteral("pictures/dpi");

const QString kStandardTheme = QStringLiteral("dark");
constexpr int kRecentKept = 10;
constexpr int kStandardText = 100, kLargestText = 130;
constexpr int kStandardDpi = 150, kLeastDpi = 72, kMostDpi = 600;

} // namespace

QByteArray Settings::windowGeometry() const {
    return m_store.value(kGeometry).toByteArray();
}
void Settings::setWindowGeometry(const QByteArray& geometry) {
    store(kGeometry, geometry, QByteArray());
}
QByteArray Settings::splitter(const QString& name) const {
    return m_store.value(kSplitter + name).toByteArray();
}
void Settings::setSplitter(const QString& name, const QByteArray& state) {
    store(kSplitter + name, state, QByteArray());
}
QString Settings::cautionsDismissed() const {
    return m_store.value(kCautions).toString();
}
void Settings::setCautionsDismissed(const QString& version) {
    store(kCautions, version, QString());
}
QString Settings::lastFolder() const {
    return m_store.value(kLastFolder).toString();
}
void Settings::setLastFolder(const QString& folder) {
    store(kLastFolder, folder, QString());
}
QStringList Settings::recentCases() const {
    return m_store.value(kRecent).toStringList();
}
void Settings::addRecentCase(const QString& path) {
    QStringList recent = recentCases();
    recent.removeAll(path);
    recent.prepend(path);
    store(kRecent, QStringList(recent.mid(0, kRecentKept)), QStringList());
}
void Settings::removeRecentCase(const QString& path) {
    QStringList recent = recentCases();
    recent.removeAll(path);
    store(kRecent, recent, QStringList());
}
void Settings::clearRecentCases() {
    m_store.remove(kRecent);
}
QString Settings::language() const {
    return m_store.value(kLanguage).toString();
}
void Settings::setLanguage(const QString& language) {
    store(kLanguage, language, QString());
}
QString Settings::theme() const {
    return m_store.value(kTheme, kStandardTheme).toString();
}
void Settings::setTheme(const QString& theme) {
    store(kTheme, theme, kStandardTheme);
}
int Settings::textPercent() const {
    return std::clamp(m_store.value(kTextSize, kStandardText).toInt(), kStandardText, kLargestText);
}
void Settings::setTextPercent(int percent) {
    store(kTextSize, std::clamp(percent, kStandardText, kLargestText), kStandardText);
}
bool Settings::namesHidden() const {
    return m_store.value(kNamesHidden, false).toBool();
}
void Settings::setNamesHidden(bool hidden) {
    store(kNamesHidden, hidden, false);
}
bool Settings::autosave() const {
    return m_store.value(kAutosave, true).toBool();
}
void Settings::setAutosave(bool on) {
    store(kAutosave, on, true);
}
QString Settings::unsavedFolder() const {
    return m_store.value(kUnsavedFolder).toString();
}
void Settings::setUnsavedFolder(const QString& folder) {
    store(kUnsavedFolder, folder, QString());
}
QString Settings::library() const {
    return m_store.value(kLibrary).toString();
}
void Settings::setLibrary(const QString& kind) {
    store(kLibrary, kind, QString());
}
QString Settings::author() const {
    return m_store.value(kAuthor).toString();
}
void Settings::setAuthor(const QString& name) {
    store(kAuthor, name, QString());
}
QString Settings::role() const {
    return m_store.value(kRole).toString();
}
void Settings::setRole(const QString& role) {
    store(kRole, role, QString());
}
QString Settings::defaultChart() const {
    return m_store.value(kChart).toString();
}
void Settings::setDefaultChart(const QString& path) {
    store(kChart, path, QString());
}
QString Settings::surfaceDrawing() const {
    return m_store.value(kSurface).toString();
}
double Settings::sourceToIsocentreMm() const {
    return m_store.value(kIsocentre, 0.0).toDouble();
}
void Settings::setSourceToIsocentreMm(double mm) {
    store(kIsocentre, mm, 0.0);
}
double Settings::sourceToDetectorMm() const {
    return m_store.value(kDetector, 0.0).toDouble();
}
void Settings::setSourceToDetectorMm(double mm) {
    store(kDetector, mm, 0.0);
}
int Settings::dpi() const {
    return std::clamp(m_store.value(kDpi, kStandardDpi).toInt(), kLeastDpi, kMostDpi);
}
void Settings::setDpi(int dpi) {
    store(kDpi, std::clamp(dpi, kLeastDpi, kMostDpi), kStandardDpi);
}

void Settings::store(const QString& key, const QVariant& value, const QVariant& standard) {
    if (value == standard)
        m_store.remove(key);
    else
        m_store.setValue(key, value);
}

} // namespace gauge::app
