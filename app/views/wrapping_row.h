// A row of buttons that goes on below where the window is too narrow for it.
#pragma once

#include <QLayout>
#include <vector>

namespace gauge::app {

/// Items from left to right (from right to left where the language is written so), each at its own size, in as many lines as
/// the width asks for. Its least width is that of the widest item.
class WrappingRow : public QLayout {
    Q_OBJECT
public:
    explicit WrappingRow(QWidget* parent = nullptr);
    ~WrappingRow() override;

    void addItem(QLayoutItem* item) override; ///< takes it
    int count() const override;
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;

    Qt::Orientations expandingDirections() const override;
    bool hasHeightForWidth() const override;
    int heightForWidth(int width) const override;
    QSize minimumSize() const override;
    QSize sizeHint() const override; ///< all in one line
    void setGeometry(const QRect& area) override;

private:
    /// Places the items in `area` when `move`; the height that they need.
    int arrange(const QRect& area, bool move) const;

    std::vector<QLayoutItem*> m_items;
};

} // namespace gauge::app
