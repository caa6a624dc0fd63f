#include "app/models/demo_charts.h"

#include <QCoreApplication>
#include <QFile>

// Resources of a static library must be asked for, and from the global namespace.
static void initialiseCharts() {
    Q_INIT_RESOURCE(charts);
}

namespace gauge::app {
namespace {

constexpr qint64 kMostBytes = 16 * 1024 * 1024; // a chart has a few kilobytes

core::Result<QByteArray> readBytes(const QString& path) {
    QFile file(path);
    const auto unreadable = [&](const QString& reason) {
        return core::failure(core::ErrorCode::FileUnreadable,
                             QCoreApplication::translate("Charts", "Cannot read the device chart %1: %2.")
                                 .arg(path, reason)
                                 .toStdString());
    };
    if (!file.open(QIODevice::ReadOnly)) return unreadable(file.errorString());
    QByteArray bytes = file.read(kMostBytes + 1);
    if (file.error() != QFileDevice::NoError) return unreadable(file.errorString());
    if (bytes.size() > kMostBytes)
        return unreadable(QCoreApplication::translate("Charts", "it is longer than 16 MB"));
    return bytes;
}

} // namespace

QList<DemoChart> demoCharts() {
    initialiseCharts();
    return {{QCoreApplication::translate("Charts", "Demonstration plug (invented)"),
             QStringLiteral(":/charts/demo-plug.json")},
            {QCoreApplication::translate("Charts", "Demonstration lobe and disc (invented)"),
             QStringLiteral(":/charts/demo-lobe-and-disc.json")}};
}

core::Result<ChartFile> readChartFile(const QString& path) {
    initialiseCharts();
    const auto bytes = readBytes(path);
    if (!bytes) return tl::make_unexpected(bytes.error());
    const std::string text = bytes->toStdString();
    auto reading = core::readChart(text, path.toStdString());
    if (!reading) return tl::make_unexpected(reading.error());
    return ChartFile{text, path, std::move(*reading)};
}

} // namespace gauge::app
