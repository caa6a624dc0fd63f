// A case that a verb reads without changing it. Neighbours: report_command.cpp, projection_command.cpp.
#pragma once

#include "app/document/picture_drawings.h"
#include "app/document/session.h"
#include "app/document/view_planner.h"

#include <QTemporaryDir>

namespace gauge::app {

/// The case under another name, so that nothing of a verb's own work (values measured anew) ends up in it. Edits that were
/// not folded into it yet lie beside it and come along.
class CopiedCase {
public:
    explicit CopiedCase(const QString& original);
    /// Empty when it could not be made.
    const QString& path() const { return m_path; }

private:
    QTemporaryDir m_folder;
    QString m_path;
};

/// Until images are loaded and measured and, where they are asked for, drawings on pictures and views of the C-arm too.
void waitForWork(Session& session, PictureDrawings* drawings, ViewPlanner* planner = nullptr);

} // namespace gauge::app
