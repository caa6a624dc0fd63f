// Keeps the values of the chosen septal crossing in the record (core/record/septum_values.h): computed anew whenever marks, plan,
// images or the measured appendage change.
#pragma once

#include "app/document/case_document.h"
#include "core/anatomy/appendage.h"

#include <QObject>
#include <functional>

namespace gauge::app {

class SeptumRecorder : public QObject {
    Q_OBJECT
public:
    /// What the values are made from at that moment. Not ready while the appendage is being measured: what stands then stays, stale.
    struct Source {
        bool ready = false;
        const core::AppendageMeasurement* measurement = nullptr; ///< null: heights alone
        core::Provenance provenance;
    };
    SeptumRecorder(CaseDocument& document, std::function<Source()> source);

    /// Brings them up to date now; else it happens once control is back in the event loop.
    void refresh();
    void refreshSoon();

private:
    CaseDocument& m_document;
    std::function<Source()> m_source;
    bool m_waiting = false;
};

} // namespace gauge::app
