#pragma once

#include "ui/theme/palette.h"

#include <QHeaderView>
#include <QStyledItemDelegate>

#include <optional>

namespace warmbench::ui {

/// What one row's bar shows, in per cent of the scale it is on.
struct TakeBar {
    double low = 0; ///< of the interval
    double middle = 0;
    double high = 0;
    std::optional<double> recipeLow; ///< the range to compare with, where there is one
    std::optional<double> recipeHigh;
};

/// Draws intervals in a column of a table, on a scale from `least` to `most` per cent that its header shows:
/// a line with a dot for what was got, a bracket for what the recipe says.
class TakeBarColumn : public QStyledItemDelegate {
    Q_OBJECT
public:
    static constexpr int role = Qt::UserRole + 1;
    TakeBarColumn(double least, double most, QObject* parent)
        : QStyledItemDelegate(parent), m_least(least), m_most(most) {}
    void setPalette(const Palette& palette) { m_palette = &palette; }
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    /// Where a per cent lies in a cell.
    [[nodiscard]] double at(const QRect& cell, double percent) const;
    [[nodiscard]] double least() const { return m_least; }
    [[nodiscard]] double most() const { return m_most; }

private:
    double m_least;
    double m_most;
    const Palette* m_palette = nullptr;
};

/// A table's header that has the scale of its bars in their column.
class TakeBarHeader : public QHeaderView {
    Q_OBJECT
public:
    TakeBarHeader(int column, const TakeBarColumn* bars, QWidget* parent);

protected:
    void paintSection(QPainter* painter, const QRect& rect, int column) const override;

private:
    int m_column;
    const TakeBarColumn* m_bars;
};

} // namespace warmbench::ui

Q_DECLARE_METATYPE(warmbench::ui::TakeBar)
