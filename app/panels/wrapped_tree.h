// A tree of a few rows whose cells wrap between their words: its columns share the width by what their texts need, and it asks for the
// height of all its rows, so that nothing has to be scrolled while every word has room.
#pragma once

#include <QTreeWidget>
#include <vector>

namespace gauge::app {

class WrappedTree : public QTreeWidget {
    Q_OBJECT
public:
    explicit WrappedTree(QWidget* parent = nullptr);

    /// Shares the width anew: to be called when the rows have changed.
    void fit();

    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    /// Of the columns, when all of them have `width` pixels; never less than their longest words need.
    std::vector<int> columnWidths(int width) const;
};

} // namespace gauge::app
