// The sizes on screen: chances as bars with their number, the chosen size marked by a rule and a word.
#pragma once

#include "app/models/sizes_model.h"

#include <QTableView>

namespace gauge::app {

class SizesTable : public QTableView {
    Q_OBJECT
public:
    explicit SizesTable(SizesModel& model, QWidget* parent = nullptr);
    /// Height that shows every size.
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return {120, sizeHint().height()}; }

signals:
    /// Enter or a double click on a size.
    void chooseRequested(const std::string& size);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QString headingOf(int column) const;
    void fit();
    SizesModel& m_model;
};

} // namespace gauge::app
