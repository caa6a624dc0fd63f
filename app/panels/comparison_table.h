// The comparison table on screen: quantities stay in sight on the left while the evidence states scroll beside them. Rows
// without any value are hidden. Every row is as high as its texts need, so that nothing is cut off.
#pragma once

#include "app/models/comparison_model.h"

#include <QTableView>
#include <QWidget>

namespace gauge::app {

class ComparisonTable : public QWidget {
    Q_OBJECT
public:
    explicit ComparisonTable(ComparisonModel& model, QWidget* parent = nullptr);

    /// The part that has the cells and the focus.
    QTableView& cells() { return *m_cells; }
    QModelIndex current() const { return m_cells->currentIndex(); }

    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    /// Enter or a double click on a cell with a value.
    void jumpRequested(const QModelIndex& index);
    void currentChanged();

protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void fitLater();
    void fit();

    ComparisonModel& m_model;
    QTableView* m_names;
    QTableView* m_cells;
    bool m_fitting = false;
    bool m_isUnfit = false; ///< a fitLater() is to come
};

} // namespace gauge::app
