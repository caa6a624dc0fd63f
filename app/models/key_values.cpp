#include "app/models/key_values.h"

#include "app/format/quantity.h"

#include <QCoreApplication>
#include <algorithm>

namespace gauge::app {
namespace {

struct Row {
    const char* id;
    const char* what;
    bool leading = false;
};

constexpr Row kRows[] = {
    {"landing-1/perimeter-derived-diameter", QT_TRANSLATE_NOOP("KeyValues", "Landing zone, perimeter-derived diameter"), true},
    {"landing-1/longest-diameter", QT_TRANSLATE_NOOP("KeyValues", "Landing zone, longest diameter")},
    {"landing-1/shortest-diameter", QT_TRANSLATE_NOOP("KeyValues", "Landing zone, shortest diameter")},
    {"ostium/perimeter-derived-diameter", QT_TRANSLATE_NOOP("KeyValues", "Ostium, perimeter-derived diameter")},
    {"depth/from-ostium-plane", QT_TRANSLATE_NOOP("KeyValues", "Depth from the ostium plane")},
};

} // namespace

QList<KeyValue> keyValues(const core::CaseRecord& record) {
    QList<KeyValue> lines;
    for (const Row& row : kRows) {
        KeyValue line{QCoreApplication::translate("KeyValues", row.what),
                      QCoreApplication::translate("Quantity", "not measured"), row.leading, false};
        const auto found = std::find_if(record.values.begin(), record.values.end(), [&](const core::RecordedValue& value) {
            return value.group == core::kCtValues && value.id == row.id;
        });
        if (found != record.values.end()) {
            line.value = estimate(found->estimate, Unit::Millimetre);
            line.stale = core::isStale(record, *found);
        }
        lines.append(line);
    }
    return lines;
}

} // namespace gauge::app
