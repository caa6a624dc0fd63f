// The few values that a meeting looks at, in words; from the record alone.
#pragma once

#include "core/record/case_record.h"

#include <QList>
#include <QString>

namespace gauge::app {

struct KeyValue {
    QString what;      ///< "Landing zone, longest"
    QString value;     ///< "24.3 ± 0.4 mm", or "not measured"
    bool leading = false;
    bool stale = false;
};

/// Ostium, landing zone and depth on CT, in this order.
QList<KeyValue> keyValues(const core::CaseRecord& record);

} // namespace gauge::app
