// The page of the scanner's axes: axial, coronal and sagittal sections, for finding and marking landmarks.
#pragma once

#include "app/document/session.h"
#include "app/models/view_state.h"

#include <QWidget>
#include <vector>

namespace gauge::app {

class ScannerSectionView;

class ScannerPage : public QWidget {
    Q_OBJECT
public:
    ScannerPage(Session& session, ViewState& state, QWidget* parent = nullptr);

    void resetViews();

private:
    std::vector<ScannerSectionView*> m_views;
};

} // namespace gauge::app
