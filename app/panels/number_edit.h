// Editors of a single number or choice that may be absent: an empty field is "not recorded", never 0.
#pragma once

#include <QComboBox>
#include <QLineEdit>
#include <optional>
#include <utility>
#include <vector>

namespace gauge::app {

/// A number in a line; decimal point or comma. What is no number, or outside its bounds, is said in the tooltip and not taken.
class NumberEdit : public QLineEdit {
    Q_OBJECT
public:
    NumberEdit(double least, double most, const QString& accessibleName, QWidget* parent = nullptr);

    /// Shows a value without a signal; nothing clears the field.
    void setValue(std::optional<double> value);
    /// What the field says; nothing for an empty one. The last good value while what stands there is no number.
    std::optional<double> value() const { return m_value; }
    bool isGood() const { return m_good; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

signals:
    /// The person finished an edit and the value differs from before.
    void edited(std::optional<double> value);

private:
    void take();

    double m_least, m_most;
    std::optional<double> m_value;
    bool m_good = true;
};

/// A choice among named values; the first entry is "not recorded".
template <class Value> class Choice {
public:
    using Items = std::vector<std::pair<Value, QString>>;
    Choice(QComboBox* box, Items items, const QString& none) : m_box(box), m_items(std::move(items)), m_hasNone(!none.isEmpty()) {
        if (m_hasNone) box->addItem(none);
        for (const auto& item : m_items)
            box->addItem(item.second);
        box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    }
    void show(const std::optional<Value>& value) {
        int at = m_hasNone ? 0 : -1;
        for (std::size_t i = 0; value && i < m_items.size(); ++i)
            if (m_items[i].first == *value) at = static_cast<int>(i) + (m_hasNone ? 1 : 0);
        const bool blocked = m_box->blockSignals(true);
        m_box->setCurrentIndex(at);
        m_box->blockSignals(blocked);
    }
    std::optional<Value> value() const {
        const int at = m_box->currentIndex() - (m_hasNone ? 1 : 0);
        if (at < 0) return std::nullopt;
        return m_items[static_cast<std::size_t>(at)].first;
    }
    QComboBox* box() const { return m_box; }

private:
    QComboBox* m_box;
    Items m_items;
    bool m_hasNone;
};

} // namespace gauge::app
