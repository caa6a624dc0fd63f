#include "app/window/scanner_page.h"

#include "app/panels/septum_mark_bar.h"
#include "app/views/scanner_section_view.h"

#include <QGridLayout>

namespace gauge::app {

ScannerPage::ScannerPage(Session& session, ViewState& state, QWidget* parent) : QWidget(parent) {
    for (const ScannerAxis axis : {ScannerAxis::Axial, ScannerAxis::Coronal, ScannerAxis::Sagittal})
        m_views.push_back(new ScannerSectionView(axis, session, state));
    m_views[0]->setAccessibleName(tr("Axial section"));
    m_views[1]->setAccessibleName(tr("Coronal section"));
    m_views[2]->setAccessibleName(tr("Sagittal section"));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(1);
    grid->addWidget(m_views[0], 0, 0, 2, 1);
    grid->addWidget(m_views[1], 0, 1);
    grid->addWidget(m_views[2], 1, 1);
    grid->setColumnStretch(0, 3);
    grid->setColumnStretch(1, 2);
    auto* septum = new SeptumMarkBar(session, state);
    grid->addWidget(septum, 2, 0, 1, 2);
    addActions(septum->markActions());
    setFocusProxy(m_views[0]);
}

void ScannerPage::resetViews() {
    for (ScannerSectionView* view : m_views)
        view->resetView();
}

} // namespace gauge::app
