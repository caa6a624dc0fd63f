// Device charts: reading a file that the person chose, and the invented charts that come with the program.
#pragma once

#include "core/sizing/chart_reader.h"

#include <QList>
#include <QString>

namespace gauge::app {

struct ChartFile {
    std::string text;
    QString source; ///< the file, or where the invented one stands
    core::ChartReading reading;
};

struct DemoChart {
    QString title; ///< says that it is invented
    QString path;  ///< in the program's resources
};
QList<DemoChart> demoCharts();

/// Reads and checks a chart file. @errors FileUnreadable (with the reason), ChartInvalid as core::readChart.
core::Result<ChartFile> readChartFile(const QString& path);

} // namespace gauge::app
