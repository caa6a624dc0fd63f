// Keeps in the record what the drawings on echo views and X-ray runs say together: the groups "echo/" and "fluoroscopy/" of each
// moment (core/record/echo_values.h). Whenever a drawing's value, a probe angle, a stage or a moment changes, exactly the groups
// that follow from it are computed again.
#pragma once

#include "app/document/case_document.h"

#include <QObject>

namespace gauge::app {

class PictureValues : public QObject {
    Q_OBJECT
public:
    explicit PictureValues(CaseDocument& document);

    /// Brings all groups up to date now; else it happens once control is back in the event loop.
    void refresh();

private:
    void refreshKind(core::EvidenceKind kind, std::string_view prefix);

    CaseDocument& m_document;
    bool m_waiting = false;
    bool m_busy = false;
};

} // namespace gauge::app
