// Marks a running program so that another on the same computer can tell whether it still runs.
#pragma once

#include <QString>

namespace gauge::app {

/// Boot, process namespace, number and start of this process (Linux); empty where that cannot be known.
QString processMark();

/// True only when it is certain: marked in this boot and namespace, and no such process any more.
bool hasEnded(const QString& mark);

} // namespace gauge::app
